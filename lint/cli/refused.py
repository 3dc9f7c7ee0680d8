"""Words of the command line that cannot be followed."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable


class RefusedError(Exception):
    """Words of the command line that cannot be followed; says why."""


def no_such(kind: str, name: str, known: Iterable[str]) -> RefusedError:
    """Says that nothing of a kind has a name, and the nearest of those that have one."""
    from ..wording.words import near_names

    near = near_names(name, known, 1)
    return RefusedError(f"there is no {kind} {name!r}{f'; did you mean {near[0]}?' if near else ''}")


def no_such_command(name: str, known: Iterable[str]) -> RefusedError:
    """The same of a command. The name of a file or folder was meant to be reviewed."""
    import os

    if os.path.exists(name) or name.endswith((".yaml", ".yml")):
        return RefusedError(f"{name!r} is the name of a file or folder, no command: spotline review {name}")
    return no_such("command", name, known)
