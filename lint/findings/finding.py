"""Findings: what a rule or the reader says about a place in a file."""

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
    """Another place that a finding mentions, with a few words about it."""

    __slots__ = ("place", "words")

    def __init__(self, place: Place, words: str) -> None:
        self.place = place
        self.words = words


class Edit:
    """Replaces the text at a place with ``words``. ``label`` tells the coach what the edit does."""

    __slots__ = ("label", "place", "words")

    def __init__(self, place: Place, words: str, label: str) -> None:
        self.place = place
        self.words = words
        self.label = label


class Finding:
    """What was counted at a place, what was wanted, and what to change.

    - ``rule``: the name of the rule, or of the reader's own check.
    - ``where``: the place in the coach's words.
    - ``subject``: what the finding is about, if that can turn up in several places (a muscle, a pair).
      Findings of one rule on one subject are merged into one; without a subject, those at one place.
    - ``weeks``: the numbers of the weeks it is about; empty if it does not depend on weeks.
    - ``excess``: ranks findings that are merged. The most severe is printed, and of those the one with the
      largest excess.
    - ``worst``: the weeks for which its numbers hold, if they do not hold for all of ``weeks``.
    - ``why``, ``sources`` and ``confidence``: set from the rule when the rule is run.
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
    """A finding for a rule to yield. It gets the rule's severity, unless ``severity`` is lower."""
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
