"""``python -m spotline`` is the same command as ``spotline``."""

from __future__ import annotations

from .lint.cli.main import main

if __name__ == "__main__":
    raise SystemExit(main())
