"""``python -m spotline`` is the same command as ``spotline``."""

from .lint.cli import main

if __name__ == "__main__":
    raise SystemExit(main())
