"""``python -m spotline`` is the same command as ``spotline``."""

from __future__ import annotations

import sys


def _leave_the_working_folder_out() -> None:
    """Takes the working folder from where Python looks for modules: a ``yaml.py`` of a checkout is not ours.

    Python itself puts it first for ``-m``. Nothing but its own modules is imported by then.
    """
    if sys.flags.safe_path or not sys.path:
        return
    import os

    try:
        is_here = sys.path[0] in ("", os.getcwd())
    except OSError:  # the working folder is no longer there
        is_here = True
    if is_here:
        del sys.path[0]


if __name__ == "__main__":
    _leave_the_working_folder_out()
    from .lint.cli.main import main

    raise SystemExit(main())
