"""What ``mend`` does with its words, and what puts findings on record."""

from __future__ import annotations

import sys

from ..mending.edits import plainly
from ..mending.record import record_known
from ..mending.rounds import Rounds
from ..mending.run import write
from ..mending.undo import take_back
from ..reporters import mends
from ..text.repository import FileResolver, shown
from ..text.safe_writer import NotWrittenError
from ..wording.words import counted_noun, safe, safe_name
from .streams import complain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date


def mend(chosen: dict[str, str], paths: list[str], today: date) -> int:
    """Mends what is certain, or shows or asks first; the exit code."""
    rounds = Rounds(paths, today)
    rounds.run()
    if "--spelling" in chosen:
        rounds.run(lambda one: plainly(one.reading, one.kind))
    if "--show" in chosen:
        mends.report_difference(rounds)
        return rounds.review.exit_code
    if "--ask" in chosen and sys.stdin.isatty():
        from .ask import ask

        ask(rounds)
    elif "--ask" in chosen:
        mends.report_choices(rounds)
    written, refused = write(rounds)
    mends.report_written(written, rounds, refused)
    return 2 if refused else rounds.review.exit_code


def undo(folder: str) -> int:
    """Takes the last run of mending in the repository of a folder back; the exit code."""
    files = FileResolver()
    try:
        back, refused = take_back(files.root_of(files.folder(folder)))
    except LookupError:
        complain("no run of mend is known here that could be taken back")
        return 2
    for path in back:
        print(f"{safe_name(shown(path))}: as it was before")
    for fault in refused:
        complain(str(fault))
    return 2 if refused else 0


def record(paths: list[str], today: date) -> int:
    """Puts what is found now on record, and says what could not be; the exit code."""
    try:
        result = record_known(paths, today)
    except NotWrittenError as fault:
        complain(f"nothing was recorded: {fault}")
        return 2
    if not result.written:
        complain("there is nothing to record: no programme or athlete file found")
    for path in result.written:
        print(f"On record in {safe(path)}; from now on only what is new or worse blocks.")
    if result.kept_off:
        kept = counted_noun(len(result.kept_off), "finding")
        words = "cannot be on record, as what cannot be read or meant could hide anything: spotline review"
        complain(f"{kept} of reading {words}")
    for name in result.not_judged:
        complain(f"nothing new of {name} is on record: it could not be read")
    return result.exit_code
