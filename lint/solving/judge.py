"""The judge of every edit: the real review of the edited text, compared with the one before by its data."""

from __future__ import annotations

import re

from ..findings.finding import SEVERITIES
from ..project.discovery import discovered
from ..project.overlay import Overlay
from ..project.review import reviewed
from ..project.workspace import Workspace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from datetime import date

    from ..counting.ledger import Ledger
    from ..findings.finding import Finding
    from ..project.results import FileReview
    from ..text.places import Place

    Mark = tuple[str, str, tuple[str, ...], int]
    """A rule, what it speaks of, the athletes it holds for, and a week (0: not bound to weeks)."""

TINY = 1e-6


class Lever:
    """A place that a finding speaks of, as an offset of the text before the edits.

    ``share`` is the high end of what it brings to the number that the finding states; None where it brings
    nothing. ``aside`` says that it brings to another number.
    """

    __slots__ = ("aside", "offset", "share")

    def __init__(self, offset: int, share: float | None, *, aside: bool) -> None:
        self.offset = offset
        self.share = share
        self.aside = aside


class Seen:
    """A finding as data: it stays as it is, whatever text is reviewed next."""

    __slots__ = (
        "counted",
        "finding",
        "group",
        "levers",
        "rule",
        "severity",
        "unit",
        "wanted",
        "words",
    )

    def __init__(self, finding: Finding, spans: Spans = ()) -> None:
        self.finding = finding
        self.rule = finding.rule
        self.severity = finding.severity
        self.group = finding.group or finding.subject
        self.words = finding.counted
        amount = finding.amount
        self.counted: float | None = None if amount is None else amount.counted
        self.wanted: float | None = None if amount is None else amount.wanted
        self.unit = "" if amount is None else amount.unit
        places: list[tuple[Place, float | None, bool]] = [
            (finding.line, None, False),
            (finding.place, None, False),
        ]
        places += [
            (one.place, one.share[1] if one.share else None, bool(one.of))
            for one in finding.related
            if one.place.text.name == finding.place.text.name
        ]
        self.levers = [
            Lever(unshifted(place.start, spans), share, aside=aside) for place, share, aside in places
        ]

    @property
    def over(self) -> bool:
        """Whether less is wanted."""
        return self.counted is not None and self.wanted is not None and self.counted > self.wanted

    @property
    def apart(self) -> float:
        """How far what was counted is from what is wanted; 0 where no number is stated."""
        return 0.0 if self.counted is None or self.wanted is None else abs(self.counted - self.wanted)

    @property
    def parts(self) -> list[str]:
        """What it speaks of, each by itself: it can stand for several groups."""
        named = self.group or self.finding.where
        return [one for one in re.split(r", | and ", named) if one] or [""]


if TYPE_CHECKING:
    Spans = tuple[tuple[int, int, str], ...]
    """Where words are written in place of others, in order: start, end, new words."""


def unshifted(offset: int, spans: Spans) -> int:
    """The offset in the text before some edits of an offset in the text after them."""
    moved = 0
    for start, end, words in spans:
        if offset < start + moved:
            break
        if offset < start + moved + len(words):
            return start
        moved += len(words) - (end - start)
    return offset - moved


def with_spans(content: str, spans: Spans) -> str:
    """The text with words written in place of others; the places must be apart and in order."""
    parts: list[str] = []
    done = 0
    for start, end, words in spans:
        parts += [content[done:start], words]
        done = end
    return "".join([*parts, content[done:]])


class Judgement:
    """What the review finds in a text: ``seen`` by mark, whether it could be ``judged``, its ``ledgers``."""

    __slots__ = ("judged", "ledgers", "seen")

    def __init__(self, one: FileReview | None, spans: Spans) -> None:
        self.seen: dict[Mark, Seen] = {}
        self.judged = one is not None and one.is_judged
        self.ledgers: list[Ledger] = [] if one is None else one.ledgers
        for finding in [] if one is None else one.findings:
            seen = Seen(finding, spans)
            for mark in marks_of(seen):
                worst = self.seen.get(mark)
                if worst is None or _worse(seen, worst):
                    self.seen[mark] = seen

    def brought(self, before: Judgement, *, again: bool = False) -> list[Seen]:
        """What it finds that was not found before, or that is worse than before; each finding once.

        Where some weeks only hold ``again`` what the coach wrote for others, a note on these goes with it.
        """
        known = {mark[:3]: seen for mark, seen in before.seen.items()} if again else {}
        found = []
        for mark, seen in self.seen.items():
            earlier = before.seen.get(mark)
            if earlier is None and seen.severity == SEVERITIES[0]:
                earlier = known.get(mark[:3])
            if earlier is None or _worse(seen, earlier):
                found.append(seen)
        return _once(found)

    def left(self, aims: Iterable[Mark]) -> list[Seen]:
        """What it still finds of some marks."""
        return _once(self.seen[one] for one in aims if one in self.seen)


def marks_of(seen: Seen) -> list[Mark]:
    """By what a finding is known again after an edit: never by its words or its place."""
    finding = seen.finding
    return [
        (finding.rule, part, finding.athletes, week) for part in seen.parts for week in finding.weeks or (0,)
    ]


def _once(several: Iterable[Seen]) -> list[Seen]:
    return list({id(one): one for one in several}.values())


def _worse(one: Seen, other: Seen) -> bool:
    graver = SEVERITIES.index(one.severity) - SEVERITIES.index(other.severity)
    return graver > 0 or (graver == 0 and one.apart > other.apart + TINY)


class Judge:
    """Reviews edited texts of one file, as they would be reviewed on the disk; nothing is written.

    ``file`` is the path as asked for; ``reviews`` counts what was reviewed so far. ``opened`` are texts that
    stand in front of files, by path.
    """

    __slots__ = ("_overlay", "_paths", "_workspace", "file", "opened", "reviews", "today")

    def __init__(self, file: str, today: date, opened: Mapping[str, str]) -> None:
        self.file = file
        self.today = today
        self.opened = opened
        self._overlay = Overlay(opened)
        self._workspace = Workspace(today, overlay=self._overlay, incremental=True)
        self._paths = [file]
        self.reviews = 0

    def look(self, content: str, spans: Spans = ()) -> Judgement:
        """The verdict on a text; ``spans`` are the edits that led to it."""
        self.reviews += 1
        self._overlay.open(self.file, with_spans(content, spans))
        found = reviewed(self._workspace, discovered(self._workspace, self._paths))
        real = self._workspace.files.file(self.file).real
        return Judgement(next((one for one in found if one.file.real == real), None), spans)
