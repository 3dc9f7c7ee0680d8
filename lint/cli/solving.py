"""What ``mend --solve`` does with its words: proposals shown, or one of them written."""

from __future__ import annotations

from ..engine.registry import all_rules
from ..mending.rounds import MendedFile
from ..mending.run import write_files
from ..reporters import proposals
from ..solving.shown import changed_since_shown, remember_shown
from ..solving.solve import Ask, NothingToSolveError, Solution
from ..solving.solve import solve as worked_out
from ..wording.words import counted_noun, safe_name
from .commands import no_such
from .streams import complain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date


def solve(path: str, line: int, rule: str, keep: list[str], write: int, today: date) -> int:
    """Shows the proposals for a file, or writes the one of a number (0: none); the exit code.

    That is 0 where something is proposed, or nothing is left to do; 1 where nothing is; 2 where the job could
    not be done.
    """
    try:
        solution = worked_out(path, today, Ask(line, rule, keep))
    except NothingToSolveError as fault:
        known = {one.name for one in all_rules()}
        if rule and rule not in known and not str(fault).startswith(path):
            raise no_such("rule", rule, sorted(known)) from fault
        complain(str(fault))
        return 2
    for words in solution.kept_in_vain:
        complain(f"no line and no session is called {words!r}: nothing is kept by that")
    if write:
        return _write(solution, write)
    proposals.report(solution)
    remember_shown(solution)
    return 0 if solution.cards or not solution.stays else 1


def _write(solution: Solution, number: int) -> int:
    """Writes one of the proposals, if the file still is what they were shown for."""
    file = solution.review.file
    if changed_since_shown(solution):
        complain(f"{safe_name(file.name)} has changed since proposals for it were shown: look at them again")
        return 2
    if number > len(solution.cards):
        there = counted_noun(len(solution.cards), "proposal")
        complain(f"there is no proposal {number}: {there if solution.cards else 'there is none'}")
        return 2
    card = solution.cards[number - 1]
    mended = MendedFile(file, solution.before)
    mended.after = card.after
    written, refused = write_files([mended])
    for fault in refused:
        complain(str(fault))
    for one in written:
        print(f"{safe_name(one.file.name)}: {'; '.join(step.label for step in card.steps)}")
        print("Written. To take it back: spotline mend --undo")
    return 2 if refused else 0
