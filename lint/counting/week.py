"""A week of the programme."""

from __future__ import annotations

from datetime import timedelta

from ..body import catalogue
from .session_time import NO_TIME
from .tally import Tally, Visit

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Sequence

    from ..model.on_days import Activity
    from ..model.sessions import Block, Phase
    from ..text.places import Term
    from .header import ProgrammeHeader
    from .session_time import SessionTime

    Together = Callable[[tuple[Visit, ...]], Tally]
    """Gives the tally of several visits. The same visits give the same object."""

    WeeksOf = Callable[[Block], tuple["Week", ...]]
    """Gives the weeks of a block."""


BUILDING = ("", "hypertrophy")
"""Goals that ask for every part of a muscle; a programme without a goal is read as if it had this one."""


def muscles_of(terms: Sequence[Term]) -> set[str]:
    """The muscles of some areas."""
    return {muscle for term in terms for muscle in catalogue.area(term.words) or ()}


class FullTurn:
    """A full turn of a rotation: the ``weeks`` after which it starts afresh; one where nothing rotates.

    ``tally`` holds all its visits, so its counts are sums over those weeks.
    """

    __slots__ = ("tally", "weeks")

    def __init__(self, tally: Tally, weeks: tuple[Week, ...]) -> None:
        self.tally = tally
        self.weeks = weeks

    def a_week(self, number: float) -> float:
        """The mean of a week, for a number over the whole turn."""
        return number / len(self.weeks)

    @property
    def words(self) -> str:
        """How a finding says that its numbers are of a whole turn; empty where that is a week."""
        several = len(self.weeks)
        return f" in the {several} weeks of a turn" if several > 1 else ""


class Week(Tally):
    """A week of the programme: its number, its block and its visits in order.

    ``in_block`` is its number within its block, from 1; ``phase`` that of its block, or else of the
    programme; ``is_deload`` says whether it is there to recover. ``first_back`` says whether it is the first
    week after a break (phase "return"). ``is_peak`` says whether it leads up to an event or test (see
    `mark_peaks`). ``rehabilitation`` says whether it begins before a stage of rehabilitation ends.
    ``turn_weeks`` are the weeks of its `turn`. Of the programme it knows only its own block.
    """

    __slots__ = (
        "_together",
        "_weeks_of",
        "block",
        "first_back",
        "in_block",
        "is_deload",
        "is_peak",
        "number",
        "phase",
        "programme",
        "rehabilitation",
        "turn_weeks",
    )
    block: Block
    number: int
    in_block: int
    phase: Phase
    turn_weeks: int
    is_deload: bool
    first_back: bool
    is_peak: bool
    rehabilitation: bool

    def __init__(
        self,
        programme: ProgrammeHeader,
        visits: tuple[Visit, ...],
        together: Together,
        weeks_of: WeeksOf,
    ) -> None:
        super().__init__(visits)
        self.programme = programme
        self._together = together
        self._weeks_of = weeks_of

    def set_in(self, block: Block, number: int, phase_before: str, turn_weeks: int) -> None:
        """Sets where the week stands in the programme as last read.

        ``phase_before`` is the phase of the week before, empty for the first; ``turn_weeks`` the weeks of a
        full turn of the block's rotation.
        """
        self.turn_weeks = turn_weeks
        self.block = block
        self.number = number
        self.in_block = number - block.first + 1
        self.phase = block.phase or self.programme.phase
        self.is_deload = block.is_deload(self.in_block)
        self.first_back = self.phase == "return" and phase_before != "return"
        self.rehabilitation = _in_rehabilitation(self.programme, number)

    def is_typical(self) -> bool:
        """Whether it holds the usual training of its phase: no deload, and no first week back."""
        return not self.is_deload and not self.first_back

    @property
    def activities(self) -> list[Activity]:
        """What takes place in it beside its sessions."""
        return [one for one in self.block.activities if one.takes_place(self.in_block)]

    def time(self) -> SessionTime:
        """How long its sessions take together."""
        return sum((visit.time() for visit in self.visits), NO_TIME)

    def means(self, area: str) -> bool:
        """Whether its block, or else the programme, has an area in its focus.

        No focus means all areas, but in a peak week none: what is not named may rest there. What the
        programme leaves alone on purpose is meant by nobody.
        """
        terms, left_alone = self.block.focus or self.programme.focus, self.programme.not_trained
        if left_alone and (muscles := catalogue.area(area)) and muscles_of(left_alone).issuperset(muscles):
            return False
        if not terms:
            return not self.is_peak
        wanted = set(catalogue.area(area) or ())
        return any(wanted.intersection(catalogue.area(term.words) or ()) for term in terms)

    def names(self, area: str) -> bool:
        """Whether focus or priorities, its block's or else the programme's, name an area or a part of it.

        A region among the priorities, such as legs, says what comes first, and names no part of it.
        """
        wanted = set(catalogue.area(area) or ())
        first = (term for term in self.programme.priority if catalogue.is_group(term.words))
        named = (*(self.block.focus or self.programme.focus), *first)
        return any(wanted.intersection(catalogue.area(term.words) or ()) for term in named)

    def builds(self, area: str, goals: Collection[str] = BUILDING) -> bool:
        """Whether an area is to be built: the focus means it, and the goal is size, or is not written.

        With any other goal it must be named: a lifter who trains for strength, for a sport or for health
        builds no part for its own sake; so must it where no goal is written, but a sport, an event or a
        youth says what for. What is to be maintained is not built.
        """
        kept = self.programme.maintain
        if kept and muscles_of(kept).issuperset(catalogue.area(area) or ()):
            return False
        goal = self.programme.goal
        by_goal = goal in goals and (bool(goal) or not self.programme.serves_else)
        return self.means(area) and (by_goal or self.names(area))

    def days(self) -> list[tuple[int, Tally]]:
        """Each training day in order, with a tally of all its visits."""
        return [(day, self._together(visits)) for day, visits in self.by_day()]

    def by_day(self) -> list[tuple[int, tuple[Visit, ...]]]:
        """Each training day in order, with its visits. Visits without a day are left out."""
        days: list[tuple[int, tuple[Visit, ...]]] = self._once("days", self._by_day)
        return days

    def _by_day(self) -> list[tuple[int, tuple[Visit, ...]]]:
        found: dict[int, tuple[Visit, ...]] = {}
        for visit in self.visits:
            if visit.day:
                found[visit.day] = (*found.get(visit.day, ()), visit)
        return sorted(found.items())

    def turn(self) -> FullTurn:
        """The full turn of its rotation that it stands in, counted from the first week of the block.

        Where the block ends inside a turn, the turn is made full with the weeks before; a block that is
        shorter than a turn is judged as a whole. A turn never crosses a block.
        """
        block, length = self.block, self.turn_weeks
        if length == 1:
            return FullTurn(self, (self,))
        at = self.number - block.first
        first = min(at - at % length, block.weeks - length)
        weeks = self.weeks_of_block()[first : first + length]
        return FullTurn(self._together(tuple(visit for week in weeks for visit in week.visits)), weeks)

    def occasions(self) -> list[Tally]:
        """What one recovers from as a whole: each day with all its visits; each visit without a day."""
        return [tally for _, tally in self.days()] + [visit for visit in self.visits if not visit.day]

    def weeks_of_block(self) -> tuple[Week, ...]:
        """All weeks of its block in order, this one included."""
        return self._weeks_of(self.block)


PEAKS = ("taper", "test")
"""Phases that lead up to something."""

DAYS_BEFORE_EVENT = 14
"""Days before a dated event on which a week that leads up to it begins (common practice, no source)."""


def mark_peaks(weeks: Sequence[Week]) -> None:
    """Marks the weeks that lead up to an event or test: tapers, tests, and the two weeks before an event.

    These are the weeks that begin on one of the 14 days before it, or on its day. No phase hides a whole
    programme: where no other week is left, none is marked; nor is the only week of a programme a first week
    back.
    """
    for week in weeks:
        week.is_peak = week.phase in PEAKS or _leads_up_to_event(week)
    if not any(week.is_typical() and not week.is_peak for week in weeks):
        for week in weeks:
            week.is_peak = False
            week.first_back = week.first_back and len(weeks) > 1


def _leads_up_to_event(week: Week) -> bool:
    starts = week.programme.starts
    if starts is None:
        return False
    first = starts + timedelta(days=7 * (week.number - 1))
    for event in week.programme.events:
        if event.date is not None:
            before = (event.date - first).days
            if 0 <= before <= DAYS_BEFORE_EVENT:
                return True
    return False


def _in_rehabilitation(programme: ProgrammeHeader, week: int) -> bool:
    """Whether the week begins on or before the end date. False unless stage, adviser and end are written."""
    stage = programme.rehabilitation
    if stage is None or not (stage.stage and stage.adviser and stage.until):
        return False
    starts = programme.starts
    begins = programme.today if starts is None else starts + timedelta(days=7 * (week - 1))
    return begins <= stage.until
