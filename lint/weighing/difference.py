"""One difference between two versions of a programme, in training terms."""

from __future__ import annotations

from ..wording.words import first_of, week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from typing import Final

PARTS = ("person", "out of line", "dose", "time", "findings", "lines")
"""The parts of a comparison, in the order in which people read them: the limits of the person, single values
out of line, the dose and what was done by half, days with hours and minutes, findings, and each line."""

PART_OF = {
    "restriction": "person",
    "best lift": "person",
    "equipment": "person",
    "demand": "person",
    "waiver": "person",
    "athlete": "person",
    "setting": "person",
    "rehabilitation": "person",
    "doubled": "out of line",
    "lost side": "out of line",
    "week missed": "out of line",
    "one week": "out of line",
    "sets": "dose",
    "repetitions": "dose",
    "action": "dose",
    "by half": "dose",
    "deload": "dose",
    "easier week": "dose",
    "programme": "time",
    "session": "time",
    "moved": "time",
    "hours": "time",
    "minutes": "time",
    "activity": "time",
    "finding brought": "findings",
    "finding cleared": "findings",
    "finding moved": "findings",
    "line": "lines",
    "line moved": "lines",
    "order": "lines",
}
"""The kinds of changes, and the part that each stands in."""


MOST_JOINED = 4
"""Sessions or groups that are named in one sentence."""


class Difference:
    """A difference: its ``kind``, what it is about, the value ``before`` and ``after``, and its ``words``.

    ``weeks`` are those in which it holds, none where it is not bound to weeks. ``session`` is the session it
    lies in, "" where it is no session's. ``weight``, from 0 to 100, says how telling it is. ``lead`` is what
    the words begin with where several changes may differ by that alone: a session, a day, a muscle group.
    """

    __slots__ = ("after", "before", "kind", "lead", "session", "subject", "weeks", "weight", "words")

    def __init__(
        self,
        kind: str,
        words: str,
        weight: float,
        *,
        weeks: Iterable[int] = (),
        session: str = "",
        subject: str = "",
        before: str = "",
        after: str = "",
        lead: str = "",
    ) -> None:
        self.lead: Final = lead
        self.kind: Final = kind
        self.words: Final = words
        self.weight: Final = weight
        self.weeks: Final = tuple(weeks)
        self.session: Final = session
        self.subject: Final = subject
        self.before: Final = before
        self.after: Final = after

    @property
    def part(self) -> str:
        """The part of a comparison that it stands in."""
        return PART_OF[self.kind]

    def sentence(self, all_weeks: Sequence[int]) -> str:
        """Its words, with the weeks where these are not all that there are."""
        weeks = week_list(self.weeks)
        is_said = weeks in self.words or " in week" in self.words
        if not self.weeks or set(self.weeks) >= set(all_weeks) or is_said:
            return self.words
        return f"{self.words} ({weeks})"


def joined(changes: Iterable[Difference]) -> list[Difference]:
    """Changes that differ by what they begin with alone as one, at the place of the first."""
    alike: dict[tuple[object, ...], list[Difference]] = {}
    for one in changes:
        rest = one.words[len(one.lead) :] if one.lead else id(one)
        alike.setdefault((one.kind, one.weeks, rest), []).append(one)
    return [several[0] if len(several) == 1 else _as_one(several) for several in alike.values()]


def _as_one(several: list[Difference]) -> Difference:
    first = several[0]
    leads = first_of(list(dict.fromkeys(one.lead for one in several)), MOST_JOINED)
    return Difference(
        first.kind,
        leads + first.words[len(first.lead) :],
        first.weight,
        weeks=first.weeks,
        session=first.session,
        subject=first.subject,
        before=first.before,
        after=first.after,
        lead=leads,
    )


class Collector:
    """Collects changes that are alike from week to week, so that each is said once for all its weeks."""

    __slots__ = ("_found",)

    def __init__(self) -> None:
        self._found: dict[tuple[str, str, str, str, str, str, str], tuple[float, list[int]]] = {}

    def add(
        self,
        week: int,
        kind: str,
        words: str,
        weight: float,
        *,
        session: str = "",
        subject: str = "",
        before: str = "",
        after: str = "",
        lead: str = "",
    ) -> None:
        """Adds what holds in a week."""
        key = (kind, words, session, subject, before, after, lead)
        known, weeks = self._found.setdefault(key, (weight, []))
        if week not in weeks:
            weeks.append(week)
        self._found[key] = (max(known, weight), weeks)

    def changes(self) -> list[Difference]:
        """What was added, the most telling first."""
        made = [
            Difference(
                kind,
                words,
                weight,
                weeks=weeks,
                session=session,
                subject=subject,
                before=before,
                after=after,
                lead=lead,
            )
            for (kind, words, session, subject, before, after, lead), (weight, weeks) in self._found.items()
        ]
        return sorted(made, key=lambda one: (-one.weight, one.weeks))
