"""What a rule, or the reader, says about a place in a file."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal

    from ..text.places import Place

    Severity = Literal["error", "warning", "note"]

    Confidence = Literal["trial", "guideline", "anatomy", "convention", "common practice", "fact"]

SEVERITIES: tuple[Severity, ...] = ("note", "warning", "error")
"""From the least to the most serious."""


class Related:
    """A further place that a finding speaks of, with a few words on it."""

    __slots__ = ("place", "words")

    def __init__(self, place: Place, words: str) -> None:
        self.place = place
        self.words = words


class Edit:
    """Replaces the words at a place by others; ``label`` says what that does, in the coach's words."""

    __slots__ = ("label", "place", "words")

    def __init__(self, place: Place, words: str, label: str) -> None:
        self.place = place
        self.words = words
        self.label = label


class Finding:
    """A located statement: what was counted, what was wanted, what to change.

    ``rule`` is the name of the rule, or of the reader's own check; ``where`` names the place in the coach's
    words; ``subject`` is what a finding is about where that can turn up in several places (a muscle, a pair):
    findings of one rule on one subject are one. ``weeks`` are the week numbers it holds for (none: not bound
    to weeks); ``excess`` orders findings of one subject, the largest being the one to print, and ``worst``
    are the weeks of which its words hold where other weeks hold less.
    ``why``, ``sources`` and ``confidence`` are the rule's own; the registry sets them.
    """

    __slots__ = (
        "change",
        "confidence",
        "counted",
        "edits",
        "excess",
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
        excess: float = 0.0,
        why: str = "",
        sources: tuple[str, ...] = (),
        confidence: Confidence = "fact",
    ) -> None:
        self.rule = rule
        self.severity: Severity = severity
        self.place = place
        self.counted = counted
        self.wanted = wanted
        self.change = change
        self.where = where
        self.subject = subject
        self.related = related
        self.edits = edits
        self.weeks = weeks
        self.worst: tuple[int, ...] = ()
        self.excess = excess
        self.why = why
        self.sources = sources
        self.confidence: Confidence = confidence


def found(
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
) -> Finding:
    """A finding as a rule yields it: as serious as the rule is, unless a lesser ``severity`` is given."""
    return Finding(
        "",
        severity,
        place,
        counted,
        wanted=wanted,
        change=change,
        where=where,
        subject=subject,
        related=related,
        edits=edits,
        weeks=weeks,
        excess=excess,
    )
