"""For which text of a file proposals were shown last, so that none is written that nobody has seen."""

from __future__ import annotations

from ..text.safe_writer import NotWrittenError
from ..text.state import fingerprint, read_state, state_file, write_state

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .solve import Solution

WHAT = "proposed"


def remember_shown(solution: Solution) -> None:
    """Keeps for which text proposals were shown; where that cannot be kept, they can still be written."""
    path = state_file(WHAT, solution.review.file.root)
    try:
        write_state(path, {**_known(path), **_entry(solution)})
    except (OSError, NotWrittenError):
        return


def changed_since_shown(solution: Solution) -> bool:
    """Whether proposals were shown for another text of the file than it holds now."""
    known = _known(state_file(WHAT, solution.review.file.root))
    return any(known.get(path, seen) != seen for path, seen in _entry(solution).items())


def _known(path: str) -> dict[str, str]:
    known = read_state(path)
    return known if isinstance(known, dict) else {}


def _entry(solution: Solution) -> dict[str, str]:
    return {solution.review.file.real: fingerprint(solution.before.encode())}
