"""What ``mend --solve`` does with its words: proposals shown, or one of them written."""

from __future__ import annotations

from datetime import date

from ..engine.registry import all_rules
from ..mending.rounds import MendedFile
from ..mending.run import write_files
from ..reporters import PROPOSALS, print_as
from ..solving.shown import changed_since_shown, remember_shown
from ..solving.solve import Ask, NothingToSolveError, Solution
from ..solving.solve import solve as worked_out
from ..wording.words import counted_noun, safe_name
from .refused import RefusedError, no_such
from .streams import complain

OPTIONS = ("--solve", "--line", "--rule", "--keep", "--write", "--as")


def solve(chosen: dict[str, str], paths: list[str]) -> int:
    """Shows the proposals for a file, or writes one of them; the exit code.

    That is 0 where something is proposed, or nothing is left to do; 1 where nothing is; 2 where the job could
    not be done. Raises RefusedError.
    """
    others = [one for one in chosen if one not in OPTIONS]
    if others:
        raise RefusedError(f"{others[0]} and --solve exclude one another")
    if "--write" in chosen and "--as" in chosen:
        raise RefusedError("--write and --as exclude one another")
    if len(paths) != 1:
        raise RefusedError("--solve takes one programme: name its file")
    line, write, rule = _number(chosen, "--line"), _number(chosen, "--write"), chosen.get("--rule", "")
    keep = [one.strip() for one in chosen.get("--keep", "").split(",") if one.strip()]
    try:
        solution = worked_out(paths[0], date.today(), Ask(line, rule, keep))
    except NothingToSolveError as fault:
        known = sorted({one.name for one in all_rules()})
        if fault.of_asking and rule and rule not in known:
            raise no_such("rule", rule, known) from fault
        complain(str(fault))
        return 2
    for words in solution.kept_in_vain:
        complain(f"no line and no session is called {words!r}: nothing is kept by that")
    if write:
        return _write(solution, write)
    print_as(chosen.get("--as", "text"), PROPOSALS, solution)
    remember_shown(solution)
    return 0 if solution.cards or not solution.stays else 1


def _number(chosen: dict[str, str], name: str) -> int:
    """The number that an option takes; 0 where it is not given."""
    given = chosen.get(name, "0")
    if name in chosen and not (given.isdecimal() and 0 < int(given) < MOST):
        raise RefusedError(f"{name} takes a number from 1")
    return int(given)


MOST = 1_000_000
"""Lines that no file has."""


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
