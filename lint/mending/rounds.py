"""Mends files round by round: what is certain is tried on the text, reviewed, and kept or refused.

Nothing is written here. A file's new text is in the overlay of the rounds, and `write` puts it on the disk.
"""

from __future__ import annotations

import gc
from collections import Counter

from ..project.overlay import Overlay
from ..project.review import review_on
from ..project.workspace import Workspace
from ..schemas.lookup import has_many_faults
from ..text.repository import FileResolver
from .edits import Mend, apart, applied, by_text, certain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterator
    from datetime import date

    from ..engine.registry import Rule
    from ..findings.finding import Finding
    from ..project.results import FileReview, Review
    from ..text.places import Text
    from ..text.repository import SourceFile

    Chooser = Callable[[FileReview], list[Mend]]
    """Picks the mends of one reviewed file."""

UPKEEP = "upkeep"
"""The family of rules on what is written otherwise than it is meant."""

MOST_ROUNDS = 50
"""Rounds after which mending stops: each mends at least one place, and a mend can uncover the next fault."""


MOST_TRIED = 1_000_000
"""Letters of a file that are reviewed to try its mends one by one, where all of them together do not pass."""


class MendedFile:
    """A file that was mended: its text before and after, and the mends in the order of their rounds."""

    __slots__ = ("after", "before", "file", "mends")

    def __init__(self, file: SourceFile, before: str) -> None:
        self.file = file
        self.before = before
        self.after = before
        self.mends: list[Mend] = []


class Rounds:
    """Rounds of mending over what a review of some paths takes in.

    ``review`` is the last one, of the mended texts; ``files`` what was mended, by real path; ``refused`` the
    mends that the review would not have, or that were not tried by themselves in a large file.
    """

    def __init__(self, paths: list[str], today: date) -> None:
        self.paths = paths
        self.today = today
        self.overlay = Overlay()
        self.files: dict[str, MendedFile] = {}
        self.refused: dict[tuple[tuple[str, int, int, str], ...], Mend] = {}
        self._files = FileResolver()
        self._rules: list[Rule] | None = None
        self.review: Review = self._review(self.overlay, paths)

    def run(self, choose: Chooser = lambda one: certain(one.findings)) -> None:
        """Mends what ``choose`` picks, until nothing is left that it picks and the review lets pass."""
        waiting = self.review.files
        for _ in range(MOST_ROUNDS):
            changed = self._round(waiting, choose)
            if not changed:
                break
            waiting = self._review(self.overlay, changed).files
        if waiting is not self.review.files:
            del waiting
            self.review = self._review(self.overlay, self.paths)

    def _review(self, overlay: Overlay, paths: list[str]) -> Review:
        if not gc.isenabled():
            gc.collect(0)  # the last one, which is not needed any more: there may be thousands
        workspace = Workspace(self.today, self._rules, overlay, asks_git=True)
        self._rules = workspace.rules
        return review_on(workspace, paths)

    def _round(self, files: list[FileReview], choose: Chooser) -> list[str]:
        """One round over some files; the files whose texts were mended."""
        changed: dict[str, None] = {}
        for one in files:
            picked = self._picked(one, choose)
            if not picked:
                continue
            kept = picked if self._passes(one, picked) else self._one_by_one(one, picked)
            changed.update(dict.fromkeys(self._keep(one, kept)))
        return list(changed)

    def _picked(self, one: FileReview, choose: Chooser) -> list[Mend]:
        """What can be done in this round in the file itself; a choice may be of a file that it leans on."""
        if one.reading is None or not one.kind or not one.opened:
            return []
        return apart(
            mend for mend in choose(one) if mend.key not in self.refused and self._may_be_done(one, mend)
        )

    def _may_be_done(self, one: FileReview, mend: Mend) -> bool:
        """Whether a mend is of the text as it is now: of the file's own, or of another that nobody mended yet
        in this round.
        """
        assert one.reading is not None
        text = mend.edit.place.text
        if text.name == one.reading.text.name:
            return True
        known = self.files.get(self._files.file(text.name).real)
        is_choice = mend.finding is not None and mend.finding.surely is None
        return is_choice and (known is None or known.after == text.content)

    def _one_by_one(self, one: FileReview, picked: list[Mend]) -> list[Mend]:
        """The mends that pass, each by itself and all of them together; the others are refused."""
        kept: list[Mend] = []
        length = len(one.reading.text.content) if one.reading else 0
        tries = 0 if has_many_faults(one.findings) else MOST_TRIED // max(1, length)
        for number, mend in enumerate(picked):
            if number < tries and self._passes(one, [*kept, mend]):
                kept.append(mend)
            else:
                self.refused[mend.key] = mend
        return kept

    def _passes(self, one: FileReview, mends: list[Mend]) -> bool:
        """Whether the review of the mended text finds nothing of what was mended, and nothing new to read."""
        tried = Overlay()
        for path, content in self.overlay.opened().items():
            tried.open(path, content)
        for text, several in by_text(mends).items():
            tried.open(self._file(one, text).real, applied(text.content, several))
        files = self._review(tried, [one.file.name]).files
        after = next((file for file in files if file.file.real == one.file.real), None)
        return after is not None and not _is_worse(one, after, mends, self._uncovering(one))

    def _uncovering(self, one: FileReview) -> set[str]:
        """The rules on what was written otherwise than meant: others see it once it is written as meant."""
        return {rule.name for rule in (*(self._rules or ()), *one.team.rules) if rule.family == UPKEEP}

    def _file(self, one: FileReview, text: Text) -> SourceFile:
        """The file of a text that was read in the review of another."""
        assert one.reading is not None
        return one.file if text.name == one.reading.text.name else self._files.file(text.name)

    def _keep(self, one: FileReview, mends: list[Mend]) -> Iterator[str]:
        """Takes mends over into the overlay; the files whose texts they change."""
        for text, several in by_text(mends).items():
            file = self._file(one, text)
            known = self.files.setdefault(file.real, MendedFile(file, text.content))
            known.after = applied(text.content, several)
            known.mends += several
            self.overlay.open(file.real, known.after)
            yield file.name


def _is_worse(
    before: FileReview, after: FileReview, mends: list[Mend], uncovering: Collection[str] = ()
) -> bool:
    """Whether a mended text still has what was mended, or has as many faults of reading as before.

    What a rule finds in words that could not be read before was there all the time, and is no fault of a
    mend. So is what stands behind a place at which the file could not be read further.
    """
    if not _is_read(before):
        start = mends[0].edit.place.start
        return not _is_read(after) and any(one.place.start <= start for one in after.findings)
    mended = {id(one): one for mend in mends if (one := mend.finding) is not None}.values()
    was, now = Counter(map(_key, before.findings)), Counter(map(_key, after.findings))
    gone = Counter(map(_key, mended))
    if not _is_read(after) or any(now[key] > was[key] - number for key, number in gone.items()):
        return True
    chosen = [one for one in mended if one.surely is None and not _is_of_reading(one)]
    if chosen and _brings(before, after, chosen, uncovering):
        return True
    if not mended and now - was:
        return True  # a plainer spelling says the same, so nothing may be found that was not
    of_reading = sum(_is_of_reading(one) for one in mended)
    return _faults(after) > _faults(before) - of_reading


def _brings(
    before: FileReview, after: FileReview, mended: Collection[Finding], uncovering: Collection[str]
) -> bool:
    """Whether what a choice was to mend is found still, or an error or warning that was not found before.

    Words and numbers may change with an edit, so rules are counted, with what each finding is about. What
    may follow from the mended finding was there all the time: without a curl, no balance was judged.
    """
    was, now = (Counter((one.rule, one.subject) for one in review.findings) for review in (before, after))
    if any(now[one.rule, one.subject] >= was[one.rule, one.subject] for one in mended):
        return True
    if any(one.rule in uncovering for one in mended):
        return False
    rules = {one.rule for one in mended}
    serious = [one for one in after.findings if one.severity != "note" and rules.isdisjoint(one.causes)]
    return any(now[one.rule, one.subject] > was[one.rule, one.subject] for one in serious)


def _is_read(one: FileReview) -> bool:
    return one.reading is not None and one.reading.root is not None


def _key(finding: Finding) -> tuple[str, str]:
    """What a finding is recognised by after an edit: never its place, which may have moved."""
    return (finding.rule, finding.counted)


def _is_of_reading(finding: Finding) -> bool:
    """Whether a finding is of reading or of the schema: a rule always says why."""
    return not finding.why


def _faults(one: FileReview) -> int:
    return sum(map(_is_of_reading, one.findings))
