"""What rules have found, hit by hit, and the findings that it comes to."""

from __future__ import annotations

from ..findings.finding import SEVERITIES, Finding, Related
from ..wording.words import week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from typing import Any

    from ..findings.finding import DraftFinding, Edits, Severity
    from .registry import Rule


class Hit:
    """What a rule has found for one athlete ("" where nobody is named): its draft, how serious, which weeks.

    ``told`` are the weeks of which the draft's words hold where other weeks hold other numbers; ``is_worst``
    says whether those weeks hold the worst. ``exercise`` is that of the group of sets looked at, "" where the
    rule looks at more. ``edits`` are those of all drafts that it stands for.
    """

    __slots__ = ("athlete", "draft", "edits", "exercise", "is_worst", "rule", "severity", "told", "weeks")

    def __init__(
        self,
        rule: Rule,
        draft: DraftFinding,
        severity: Severity,
        athlete: str,
        weeks: tuple[int, ...],
        exercise: str = "",
        told: tuple[int, ...] = (),
        is_worst: bool = False,
        edits: tuple[Edits, ...] = (),
    ) -> None:
        self.rule = rule
        self.draft = draft
        self.severity: Severity = severity
        self.athlete = athlete
        self.weeks = weeks
        self.exercise = exercise
        self.told = told
        self.is_worst = is_worst
        self.edits = edits

    def but(self, **changes: Any) -> Hit:
        """This hit with some values changed."""
        return Hit(**{**{name: getattr(self, name) for name in self.__slots__}, **changes})

    def places(self) -> set[object]:
        """What the places that it names are looked up by."""
        return {self.draft.place.key, *(one.place.key for one in self.draft.related)}

    def with_place_of(self, other: Hit, named: set[object]) -> Hit:
        """This hit, which also names the place of another with the same words; ``named`` are those it has."""
        place, draft = other.draft.place, self.draft
        if place.key in named:
            return self
        named.add(place.key)
        values: dict[str, Any] = {name: getattr(draft, name) for name in type(draft).__slots__}
        values["related"] = (
            *draft.related,
            Related(place, f"{other.draft.where or place.excerpt}: here too"),
        )
        return self.but(draft=type(draft)(**values))


def merged(known: Hit, hit: Hit, named: set[object] | None = None) -> Hit:
    """One hit for two on one subject, else at one place: the weeks of both, the words of the worse.

    A muscle that lacks work in each of three blocks is one thing to say, not three. Of two that are as bad,
    the words are those that hold for more weeks. ``named`` are the places that the first names, where many
    are drawn together.
    """
    if known.draft.counted == hit.draft.counted:
        places = known.places() if named is None else named
        worse, is_worst = known.with_place_of(hit, places), known.is_worst
        told = {*(known.told or known.weeks), *hit.weeks}
    else:
        worse = max(known, hit, key=lambda one: (_badness(one), len(one.told or one.weeks)))
        told = set(worse.told or worse.weeks)
        is_worst = _badness(known) != _badness(hit) and (worse.is_worst or not worse.told)
    weeks = tuple(sorted({*known.weeks, *hit.weeks}))
    first, second = (hit, known) if worse is hit else (known, hit)
    edits = (*first.edits, *second.edits)
    if len(told) == len(weeks):
        return worse.but(edits=edits, weeks=weeks, told=(), is_worst=False)
    return worse.but(edits=edits, weeks=weeks, told=tuple(sorted(told)), is_worst=is_worst)


def _badness(hit: Hit) -> tuple[int, float]:
    """How serious a hit is, and how far it goes past its limit."""
    return SEVERITIES.index(hit.severity), hit.draft.excess


def findings_of(hits: Iterable[Hit], athletes: int) -> list[Finding]:
    """The findings that hits come to: what several athletes share is one finding.

    One that does not hold for all ``athletes`` of the programme names those whom it holds for.
    """
    alike: dict[tuple[object, ...], list[Hit]] = {}
    for hit in hits:
        draft = hit.draft
        key: tuple[object, ...] = (hit.rule.name, draft.place.key, draft.subject)
        if not draft.once:
            key = (*key, draft.counted, hit.weeks)
        alike.setdefault(key, []).append(hit)
    return [_finding(several, athletes) for several in alike.values()]


def _finding(hits: list[Hit], athletes: int) -> Finding:
    """One finding of one thing to say; it lists those for whom other numbers, or other weeks, were found."""
    hit = max(hits, key=_badness)
    rule, draft = hit.rule, hit.draft
    place, related = draft.place, draft.related
    if draft.amount is not None:
        told = (draft.counted, hit.weeks)
        others = [one for one in hits if (one.draft.counted, one.weeks) != told]
        related += tuple(Related(one.draft.place, _of_another(one)) for one in others)
    if place.through and any(one.share is not None for one in related):
        # What several lines come to is said where they are used; a slip of the pen where it is written.
        place, related = place.through[0], (Related(place, "written here, used there"), *related)
    return Finding(
        rule.name,
        hit.severity,
        place,
        draft.counted,
        wanted=draft.wanted,
        change=draft.change,
        where=draft.where,
        subject=draft.subject,
        related=related,
        edits=_edits_of(hit),
        weeks=hit.weeks,
        told=hit.told,
        is_worst=hit.is_worst,
        athletes=tuple(one.athlete for one in hits) if len(hits) < athletes else (),
        why=draft.why or rule.why,
        sources=rule.sources,
        confidence=rule.confidence,
        group=draft.group,
        amount=draft.amount,
        line=draft.line,
        causes=rule.follows,
        once=draft.once,
    )


def _of_another(hit: Hit) -> str:
    """``for Len in weeks 3-5: what was counted``."""
    weeks = f" in {week_list(hit.weeks)}" if hit.weeks else ""
    return f"for {hit.athlete}{weeks}: {hit.draft.counted}"


def _edits_of(hit: Hit) -> Edits:
    if len(hit.edits) < 2:
        return hit.edits[0] if hit.edits else ()
    from ..findings.edits import together

    return together(hit.edits)
