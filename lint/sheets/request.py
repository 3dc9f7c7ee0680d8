"""Sheets asked for: the programme reviewed, its athletes' sheets built, and written where nothing is lost."""

from __future__ import annotations

import os
import re

from ..project.results import FileReview, Review
from ..project.review import review_on
from ..project.workspace import Workspace
from ..text.files import UnreadableError, data
from ..text.repository import shown
from ..text.safe_writer import NotWrittenError, replace
from ..wording.words import did_you_mean, listed, near_names, safe
from .build import build
from .seal import is_untouched

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..counting.ledger import Ledger
    from .sheet import Sheet

STEPS = ("load-not-settable", "steps")
"""Where a team writes what its implements go up by: the rule, and its limit."""

PRIVATE = "care"
"""The family of rules on what is nobody's business: a note that one of them points into is not told."""


class NoSheetError(Exception):
    """No sheet can be made; the message says why. ``review`` holds the findings that stand in the way."""

    def __init__(self, reason: str, review: Review | None = None) -> None:
        super().__init__(reason)
        self.review = review


def sheets(path: str, today: date, athlete: str = "", week: int = 0) -> list[Sheet]:
    """The sheets of a programme, one for each athlete or for the one of a name, of all weeks or of one.

    Raises NoSheetError where the programme, or the file of one of its athletes, has errors.
    """
    workspace = Workspace(today)
    asked = workspace.files.file(path)
    named = workspace.athletes_in(asked) if asked.kind == "programme" else ()
    athletes = [shown(real) for real in named if os.path.isfile(real)]
    review = review_on(workspace, [path, *athletes])
    files = [one for one in review.files if one.kind != "programme" or one.file.real == asked.real]
    _refuse_errors(files)
    one = files[0]
    if not one.ledgers:
        raise NoSheetError(f"{safe(path)} is no programme that could be laid out")
    chosen = _of_athlete(one.ledgers, athlete)
    last = len(one.ledgers[0].weeks)
    if week and not 1 <= week <= last:
        raise NoSheetError(f"there is no week {week}: the programme has weeks 1 to {last}")
    steps = one.team.choices.moved.get(STEPS[0], {}).get(STEPS[1])
    told = _Told(workspace, files)
    return [
        build(ledger, steps if isinstance(steps, dict) else {}, told, frozenset((week,) if week else ()))
        for ledger in chosen
    ]


def _of_athlete(ledgers: list[Ledger], name: str) -> list[Ledger]:
    if not name:
        return ledgers
    named = {ledger.athlete.name: ledger for ledger in ledgers if ledger.athlete}
    for known, ledger in named.items():
        if known.casefold() == name.casefold():
            return [ledger]
    near = did_you_mean(near_names(name, named, 1)) or f"There is {listed(sorted(named)) or 'nobody'}."
    raise NoSheetError(f"nobody on the programme is called {name!r}. {near}")


def _refuse_errors(files: list[FileReview]) -> None:
    """Refuses where anything read for the sheet has errors, on record or not, or could not be reviewed."""
    wrong = [_only_errors(one) for one in files]
    wrong = [one for one in wrong if one.findings or one.faults]
    if wrong or Review(files).failed:
        raise NoSheetError("no sheet was made: mend the errors first", Review(wrong))


def _only_errors(one: FileReview) -> FileReview:
    """A review of the file that holds its errors and what failed, and nothing else."""
    other = FileReview(one.file, one.team, one.kind)
    found = [*one.findings, *one.known]
    other.findings = [finding for finding in found if finding.severity == "error" or not one.opened]
    other.faults = one.faults
    return other


class _Told:
    """Tells a coach's words to the athlete, unless a finding says that part of them is nobody's business."""

    def __init__(self, workspace: Workspace, files: list[FileReview]) -> None:
        rules = (*workspace.rules, *(rule for one in files for rule in one.team.rules))
        private = {rule.name for rule in rules if rule.family == PRIVATE}
        self.words = {
            place.excerpt
            for one in files
            for finding in (*one.findings, *one.known)
            if finding.rule in private
            for place in (finding.place, *(related.place for related in finding.related))
            if place.excerpt.strip()
        }

    def __call__(self, note: str) -> str:
        line = " ".join(note.split())
        return "" if any(word in note or word in line for word in self.words) else safe(line)


# Where a sheet goes


def paths(path: str, all_of_them: list[Sheet], ending: str, week: int) -> list[str]:
    """Where the sheets of a programme go: beside it, named after it and, of several, after the athletes."""
    stem = re.sub(r"\.programme\.ya?ml$", "", path)
    part = f"-week-{week}" if week else ""
    if len(all_of_them) == 1:
        return [f"{stem}{part}.sheet.{ending}"]
    taken: dict[str, int] = {}
    found = []
    for sheet in all_of_them:
        name = _plain_name(sheet.athlete)
        taken[name] = taken.get(name, 0) + 1
        number = f"-{taken[name]}" if taken[name] > 1 else ""
        found.append(f"{stem}-{name}{number}{part}.sheet.{ending}")
    return found


def _plain_name(name: str) -> str:
    """A name for a file: letters and digits of any script, hyphens between."""
    return re.sub(r"[\W_]+", "-", name.casefold()).strip("-") or "athlete"


def write(path: str, text: str, *, overwrite: bool = False) -> None:
    """Writes a sheet: over an earlier one that nobody has touched, over anything else only if told to.

    Raises NotWrittenError.
    """
    before = _there(path)
    if before is not None and not overwrite and not is_untouched(before.decode("utf-8", "replace")):
        there = "there is a file already, and it is no sheet that nobody has changed; --overwrite replaces it"
        raise NotWrittenError(path, there)
    replace(path, before, text.encode(), os.path.realpath(os.path.dirname(path)))


def _there(path: str) -> bytes | None:
    """What is in a file now; None where there is none. Raises NotWrittenError for what is no file."""
    if not os.path.lexists(path):
        return None
    try:
        return data(path)
    except UnreadableError as error:
        raise NotWrittenError(path, str(error)) from error
