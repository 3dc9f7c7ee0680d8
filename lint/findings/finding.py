"""Findings: what a rule or the reader says about a place in a file."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Final, Literal

    from ..text.places import Place

    Severity = Literal["error", "warning", "note"]

    Confidence = Literal[
        "meta-analysis",
        "growth trial",
        "training trial",
        "acute study",
        "EMG study",
        "biomechanics study",
        "cohort study",
        "survey",
        "guideline",
        "anatomy",
        "model",
        "convention",
        "common practice",
        "fact",
    ]

SEVERITIES: tuple[Severity, ...] = ("note", "warning", "error")
"""From the least to the most serious."""


class Related:
    """Another place that a finding mentions, with a few words about it."""

    __slots__ = ("place", "words")

    def __init__(self, place: Place, words: str) -> None:
        self.place: Final = place
        self.words: Final = words


class Edit:
    """Replaces the text at a place with ``words``. ``label`` tells the coach what the edit does.

    Several edits of one finding are different ways to mend it. One alone is the right answer, unless it is
    not ``certain``: then it is offered, but never made without a question.
    """

    __slots__ = ("certain", "label", "place", "words")

    def __init__(self, place: Place, words: str, label: str, *, certain: bool = True) -> None:
        self.place: Final = place
        self.words: Final = words
        self.label: Final = label
        self.certain: Final = certain


class DraftFinding:
    """A finding as a rule yields it; the engine makes the `Finding` from it, with what is the rule's own.

    It is as serious as the rule is, unless a lesser ``severity`` is given, and holds for the weeks that the
    rule looked at, unless ``weeks`` are given. ``where`` names the place in the coach's words; ``subject`` is
    what the finding is about where that can turn up in several places (a muscle, a pair): drafts of one rule
    on one subject become one finding, in the words of the one with the largest ``excess``. ``why`` stands in
    for the rule's reason.
    """

    __slots__ = (
        "change",
        "counted",
        "edits",
        "excess",
        "place",
        "related",
        "severity",
        "subject",
        "wanted",
        "weeks",
        "where",
        "why",
    )

    def __init__(
        self,
        place: Place,
        counted: str,
        *,
        severity: Severity = "error",
        wanted: str = "",
        change: str = "",
        where: str = "",
        subject: str = "",
        related: tuple[Related, ...] = (),
        edits: tuple[Edit, ...] = (),
        weeks: tuple[int, ...] = (),
        excess: float = 0.0,
        why: str = "",
    ) -> None:
        self.place: Final = place
        self.counted: Final = counted
        self.severity: Final[Severity] = severity
        self.wanted: Final = wanted
        self.change: Final = change
        self.where: Final = where
        self.subject: Final = subject
        self.related: Final = related
        self.edits: Final = edits
        self.weeks: Final = weeks
        self.excess: Final = excess
        self.why: Final = why


found = DraftFinding
"""What a rule says of a place: ``yield found(place, "12 sets.", change="Take one out.")``."""


class Finding:
    """A located statement: what was counted, what was wanted, what to change. It never changes once made.

    ``rule`` is the name of the rule, or of the reader's own check; ``where`` and ``subject`` are those of a
    `DraftFinding`. ``weeks`` are the week numbers it holds for (none: not bound to weeks), ``worst`` those of
    which its words hold where other weeks hold less. ``athletes`` names those whom it holds for where that is
    not all who are on the programme. ``why``, ``sources`` and ``confidence`` are the rule's.
    """

    __slots__ = (
        "athletes",
        "change",
        "confidence",
        "counted",
        "edits",
        "place",
        "related",
        "rule",
        "severity",
        "sources",
        "subject",
        "wanted",
        "weeks",
        "where",
        "why",
        "worst",
    )

    def __init__(
        self,
        rule: str,
        severity: Severity,
        place: Place,
        counted: str,
        *,
        wanted: str = "",
        change: str = "",
        where: str = "",
        subject: str = "",
        related: tuple[Related, ...] = (),
        edits: tuple[Edit, ...] = (),
        weeks: tuple[int, ...] = (),
        worst: tuple[int, ...] = (),
        athletes: tuple[str, ...] = (),
        why: str = "",
        sources: tuple[str, ...] = (),
        confidence: Confidence = "fact",
    ) -> None:
        self.rule: Final = rule
        self.severity: Final[Severity] = severity
        self.place: Final = place
        self.counted: Final = counted
        self.wanted: Final = wanted
        self.change: Final = change
        self.where: Final = where
        self.subject: Final = subject
        self.related: Final = related
        self.edits: Final = edits
        self.weeks: Final = weeks
        self.worst: Final = worst
        self.athletes: Final = athletes
        self.why: Final = why
        self.sources: Final = sources
        self.confidence: Final[Confidence] = confidence
