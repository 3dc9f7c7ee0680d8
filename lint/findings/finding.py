"""Findings: what a rule or the reader says about a place in a file."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from typing import Any, Final, Literal

    from ..text.places import Place

    Edits = tuple["Edit", ...] | Callable[[], Iterable["Edit"]]
    """Edits, or what works them out once somebody asks for them: a plain review never does."""

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


class Amount:
    """The number that a finding states: how much was ``counted``, how much ``wanted``, both in ``unit``.

    Of a range, ``counted`` is the end that was judged; ``wanted`` is the nearest number that would do. The
    unit is a noun in the plural (``sets``) or a symbol (``kg``).
    """

    __slots__ = ("counted", "unit", "wanted")

    def __init__(self, counted: float, wanted: float, unit: str = "sets") -> None:
        self.counted: Final = counted
        self.wanted: Final = wanted
        self.unit: Final = unit

    @property
    def apart(self) -> float:
        """How far the two numbers are apart."""
        return abs(self.counted - self.wanted)


class Related:
    """Another place that a finding mentions, with a few words about it.

    ``share`` holds the low and the high end of what the place brings to a number that the finding states,
    None where it brings nothing; ``of`` says to which number, where that is not the finding's `Amount`.
    """

    __slots__ = ("of", "place", "share", "words")

    def __init__(
        self, place: Place, words: str, share: tuple[float, float] | None = None, of: str = ""
    ) -> None:
        self.place: Final = place
        self.words: Final = words
        self.share: Final = share
        self.of: Final = of


class Edit:
    """Replaces the text at a place with ``words``. ``label`` tells the coach what the edit does.

    Several edits of one finding are different ways to mend it. One alone is the right answer, unless it is
    not ``certain``: then it is offered, but never made without a question. ``further`` edits of the same text
    are made together with it.
    """

    __slots__ = ("certain", "further", "label", "place", "words")

    def __init__(
        self, place: Place, words: str, label: str, *, certain: bool = True, further: tuple[Edit, ...] = ()
    ) -> None:
        self.place: Final = place
        self.words: Final = words
        self.label: Final = label
        self.certain: Final = certain
        self.further: Final = further

    @property
    def parts(self) -> tuple[Edit, ...]:
        """The edit and its further ones, in the order of the text."""
        return tuple(sorted((self, *self.further), key=lambda one: (one.place.start, one.place.end)))


class _Once:
    """Works edits out when it is first called, and keeps them."""

    __slots__ = ("_edits", "_work")

    def __init__(self, work: Callable[[], Iterable[Edit]]) -> None:
        self._work = work
        self._edits: tuple[Edit, ...] | None = None

    def __call__(self) -> tuple[Edit, ...]:
        if self._edits is None:
            self._edits = tuple(self._work())
        return self._edits


class DraftFinding:
    """A finding as a rule yields it; the engine makes the `Finding` from it, with what is the rule's own.

    It is as serious as the rule is, unless a lesser ``severity`` is given, and holds for the weeks that the
    rule looked at, unless ``weeks`` are given. ``where`` names the place in the coach's words; ``subject`` is
    what the finding is about where that can turn up in several places (a muscle, a pair): drafts of one rule
    on one subject become one finding, in the words of the one with the largest ``excess``. ``group`` is the
    muscle, lift or pair that was counted, ``amount`` the number in the words, ``line`` the line that is to
    blame, by the place of its exercise, where ``place`` is another. ``why`` stands in for the rule's reason.
    ``once`` says that it is about the text, or one decision for all, and so one thing to say whoever of a
    squad it is told for.
    """

    __slots__ = (
        "amount",
        "change",
        "counted",
        "edits",
        "excess",
        "group",
        "line",
        "once",
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
        edits: Edits = (),
        weeks: tuple[int, ...] = (),
        excess: float = 0.0,
        why: str = "",
        group: str = "",
        amount: Amount | None = None,
        line: Place | None = None,
        once: bool = False,
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
        self.group: Final = group
        self.amount: Final = amount
        self.line: Final = line or place
        self.once: Final = once


found = DraftFinding
"""What a rule says of a place: ``yield found(place, "12 sets.", change="Take one out.")``."""


class Finding:
    """A located statement: what was counted, what was wanted, what to change. It never changes once made.

    ``rule`` is the name of the rule, or of the reader's own check; ``where``, ``subject``, ``group``,
    ``amount`` and ``line`` are those of a `DraftFinding`. ``weeks`` are the week numbers it holds for (none:
    not bound to weeks), ``told`` those of which its words hold where other weeks hold other numbers,
    ``is_worst`` whether those weeks hold the worst. ``athletes`` names those whom it holds for where that is
    not all who are on the programme. ``why``, ``sources`` and ``confidence`` are the rule's; ``causes``
    names the rules whose findings on the same lines it may follow from, ``follows`` holds the findings that
    follow from it. ``once`` says that it is one thing to say, whoever of a squad it is told for.
    """

    __slots__ = (
        "_edits",
        "amount",
        "athletes",
        "causes",
        "change",
        "confidence",
        "counted",
        "follows",
        "group",
        "is_worst",
        "line",
        "once",
        "place",
        "related",
        "rule",
        "severity",
        "sources",
        "subject",
        "told",
        "wanted",
        "weeks",
        "where",
        "why",
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
        edits: Edits = (),
        weeks: tuple[int, ...] = (),
        told: tuple[int, ...] = (),
        is_worst: bool = False,
        athletes: tuple[str, ...] = (),
        why: str = "",
        sources: tuple[str, ...] = (),
        confidence: Confidence = "fact",
        group: str = "",
        amount: Amount | None = None,
        line: Place | None = None,
        causes: tuple[str, ...] = (),
        follows: tuple[Finding, ...] = (),
        once: bool = False,
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
        self._edits: Final = edits if isinstance(edits, tuple) else _Once(edits)
        self.weeks: Final = weeks
        self.told: Final = told
        self.is_worst: Final = is_worst
        self.athletes: Final = athletes
        self.why: Final = why
        self.sources: Final = sources
        self.confidence: Final[Confidence] = confidence
        self.group: Final = group
        self.amount: Final = amount
        self.line: Final = line or place
        self.causes: Final = causes
        self.follows: Final = follows
        self.once: Final = once

    @property
    def edits(self) -> tuple[Edit, ...]:
        """The edits that would mend it; those that are worked out when asked for are kept."""
        return self._edits if isinstance(self._edits, tuple) else self._edits()

    @property
    def surely(self) -> Edit | None:
        """The edit that is the one right answer; None where there is none. Nothing is worked out for it."""
        edits = self._edits
        return edits[0] if isinstance(edits, tuple) and len(edits) == 1 and edits[0].certain else None

    def but(self, **changes: Any) -> Finding:
        """This finding with some values changed."""
        own: dict[str, Any] = {name.lstrip("_"): getattr(self, name) for name in self.__slots__}
        return Finding(**{**own, **changes})
