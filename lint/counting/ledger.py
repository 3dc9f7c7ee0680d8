"""Counts what each week of a programme holds. All counting is done here; rules read the numbers and judge.

A `Tally` holds visits (sessions on their days). It answers how many sets they bring to an area, a joint
action or a movement pattern. A visit, a day, a week, a block and the whole programme are all tallies, so each
answers the same questions. Every answer is a `Count`, which knows the lines it came from.
"""

from __future__ import annotations

from datetime import timedelta

from ..syntax.cache import GenerationCache
from ..wording.words import says
from .calendar import Calendar
from .header import ProgrammeHeader
from .tally import Tally
from .team_resources import NO_RESOURCES
from .week import mark_peaks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from datetime import date
    from typing import Any

    from ..body.catalogue import Exercise
    from ..body.known import Known
    from ..model.athlete import Athlete
    from ..model.on_days import Activity
    from ..model.programme import Event, Member, Programme
    from ..model.sessions import Block
    from .set_group import Slip
    from .tally import Visit
    from .team_resources import TeamResources
    from .week import Week


class Ledger(Tally):
    """A whole programme on its calendar, as one athlete is to train it.

    ``today`` is used if the programme states no start date. ``resources`` are what the team provides.
    ``member`` is the athlete with their adjustments, None if no athlete is named. Groups of sets that are a
    ``slip``, since one of their values cannot be meant, count nowhere.
    """

    __slots__ = ("_calendar", "_judged", "_recalled", "_tallies", "header", "member", "programme", "weeks")

    def __init__(
        self,
        programme: Programme,
        today: date,
        resources: TeamResources = NO_RESOURCES,
        member: Member | None = None,
        slip: Slip | None = None,
    ) -> None:
        self.member = member
        self.header = ProgrammeHeader(programme, today, resources, member)
        self._calendar = Calendar(
            self.header,
            member.adjustments if member else (),
            member.everything if member else (),
            self.together,
            self.weeks_of,
        )
        self._tallies = GenerationCache()
        self._recalled = GenerationCache()
        super().__init__(())
        self.lay_out(programme, slip)

    def lay_out(self, programme: Programme, slip: Slip | None = None) -> None:
        """Lays out a newer reading of the programme.

        Visits and weeks whose sessions are unchanged are reused as the same objects, with their counts.
        """
        self.programme = programme
        self.header.take(programme)
        self._calendar.slip = slip
        self.weeks: tuple[Week, ...] = tuple(self._calendar.weeks(programme))
        mark_peaks(self.weeks)
        self._judged: dict[Week, Tally] = {}
        visits = tuple(visit for week in self.weeks for visit in week.visits)
        if visits != self.visits:
            for gone in set(self.visits).difference(visits):
                gone.let_go()
            super().__init__(visits)
            self._tallies.start_generation()
            self._recalled.start_generation()

    def end(self) -> None:
        """Parts it from its weeks and visits, which hold ways back, so that all goes once nobody asks for it.

        Nothing can be asked of it afterwards.
        """
        for visit in self.visits:
            visit.let_go()
        for session in self.programme.sessions():
            session.prescriptions = ()
        self.weeks = ()
        super().__init__(())
        del self._calendar, self._judged, self._tallies, self._recalled

    def of_weeks(self, weeks: Iterable[Week]) -> Tally:
        """A tally of all visits of these weeks."""
        return self.together(tuple(visit for week in weeks for visit in week.visits))

    def recall(self, work: Callable[..., Any], *of: Any) -> Any:
        """The result of ``work(*of)``, kept until one of the arguments changes.

        The arguments are parts of this ledger, and limits.
        """
        return self._recalled.get((work, *of), lambda: work(*of))

    def together(self, visits: tuple[Visit, ...]) -> Tally:
        """A tally of several visits. The same visits give the same object."""
        if len(visits) == 1:
            return visits[0]
        tally: Tally = self._tallies.get(visits, lambda: Tally(visits))
        return tally

    @property
    def today(self) -> date:
        """The day that is used if the programme states no start date."""
        return self.header.today

    @property
    def resources(self) -> TeamResources:
        """What the team provides: its exercises, equipment and room."""
        return self.header.resources

    @property
    def athlete(self) -> Athlete | None:
        """The athlete who trains it; None if none is written."""
        return self.header.athlete

    @property
    def level(self) -> str:
        """The athlete's level; empty if none is written."""
        return self.header.level

    @property
    def known(self) -> Known:
        """The exercises that the programme may name."""
        return self.header.known

    def named(self, name: str) -> Exercise | str:
        """The exercise of this name; see `ProgrammeHeader.named`."""
        return self.header.named(name)

    @property
    def equipment(self) -> frozenset[str] | None:
        """The equipment that the athlete has; see `ProgrammeHeader.equipment`."""
        return self.header.equipment

    def of_block(self, block: Block) -> Tally:
        """A tally of all visits of a block."""
        return self.of_weeks(self.weeks_of(block))

    def of_rota(self, block: Block) -> Tally:
        """A tally of all visits of a block; of a block of one week, with the one-week blocks around it.

        Blocks of one week that follow one another are a rota: what one leaves out the next may hold.
        """
        if block.weeks > 1:
            return self.of_block(block)
        blocks = self.programme.blocks
        first = last = blocks.index(block)
        while first > 0 and blocks[first - 1].weeks == 1:
            first -= 1
        while last + 1 < len(blocks) and blocks[last + 1].weeks == 1:
            last += 1
        return self.of_weeks(week for one in blocks[first : last + 1] for week in self.weeks_of(one))

    def weeks_of(self, block: Block) -> tuple[Week, ...]:
        """The weeks of a block."""
        return self.weeks[block.first - 1 : block.first - 1 + block.weeks]

    def typical_weeks(self) -> list[Week]:
        """The weeks with the programme's usual training: no deload, no peak, no first week back, and none
        under a stated stage of rehabilitation.
        """
        return [
            week for week in self.weeks if week.is_typical() and not week.is_peak and not week.rehabilitation
        ]

    def judged_with(self, week: Week) -> Tally:
        """What is judged where a week lacks something: its block or rota; all before it for a peak week.

        Of a block in which other exercises come after some weeks, it is the weeks with the same ones.
        """
        tally = self._judged.get(week)
        if tally is None:
            tally = self._judged[week] = self._judge_with(week)
        return tally

    def _judge_with(self, week: Week) -> Tally:
        if not week.is_peak:
            alike = self.with_same_exercises(week)
            return self.of_weeks(alike) if alike else self.of_rota(week.block)
        return self.of_weeks(self.weeks[: week.block.first - 1 + week.block.weeks])

    def with_same_exercises(self, week: Week) -> tuple[Week, ...]:
        """The weeks around a week with the same exercises, if they are many; none where that is its block."""
        weeks = self.weeks_of(week.block)
        if len(weeks) <= MANY_WEEKS:
            return ()
        held: list[frozenset[str]] = self.recall(_exercises_of, weeks)
        first = last = week.number - week.block.first
        while first > 0 and held[first - 1] == held[first]:
            first -= 1
        while last + 1 < len(held) and held[last + 1] == held[last]:
            last += 1
        return weeks[first : last + 1] if MANY_WEEKS <= last - first + 1 < len(weeks) else ()

    def like_weeks(self) -> list[tuple[Week, tuple[int, ...]]]:
        """One week for each different content, with the numbers of all weeks that have this content.

        Where sessions rotate, the other weeks of its turn are content, too.
        """
        alike: dict[tuple[object, ...], list[Week]] = {}
        for week in self.weeks:
            others = sorted(week.turn().tally.visits, key=id) if week.turn_weeks > 1 else ()
            states = (week.is_typical(), week.is_peak, week.rehabilitation, *week.activities)
            alike.setdefault((week.block, *states, (week.visits, *others)), []).append(week)
        return [(weeks[0], tuple(week.number for week in weeks)) for weeks in alike.values()]

    @property
    def ends(self) -> date | None:
        """The last day of the programme; None if no start date is written."""
        starts = self.programme.starts
        return None if starts is None else starts + timedelta(days=7 * len(self.weeks) - 1)

    def day_number(self, day: date) -> int | None:
        """The number of a date, counted from the start date as day 1; None if no start date is written."""
        starts = self.programme.starts
        return None if starts is None else (day - starts).days + 1

    def activities(self) -> list[tuple[int, Week, Activity]]:
        """Every activity outside the gym on each of its days: (day number from the start, week, activity)."""
        return [
            ((week.number - 1) * 7 + day, week, activity)
            for week in self.weeks
            for activity in week.activities
            for day in activity.days_in(week.in_block)
        ]

    def events(self) -> list[tuple[int, Event]]:
        """The events with a date by day number from the start, in order; exams and the like left out."""
        dated = [
            (number, event)
            for event in self.programme.events
            if event.date is not None
            and (number := self.day_number(event.date)) is not None
            and not says(NO_SPORT, event.name)
        ]
        return sorted(dated, key=lambda pair: pair[0])

    def training_days(self) -> list[tuple[int, Week, Tally]]:
        """Every day with a session, in order: (day number from the start, week, tally of the day)."""
        return [
            ((week.number - 1) * 7 + day, week, tally) for week in self.weeks for day, tally in week.days()
        ]


NO_SPORT = (
    "blood", "eye test", "hearing", "doctor", "hospital", "scan", "appointment", "driving", "school", "exam",
    "exams", "maths", "theory test", "birthday", "wedding",
)  # fmt: skip
"""Words in the name of an event for which nobody trains (common practice)."""

MANY_WEEKS = 4
"""Weeks from which the same exercises make a part of a block that is judged by itself: what these leave out,
others do not make up for (common practice, no source)."""


def _exercises_of(weeks: tuple[Week, ...]) -> list[frozenset[str]]:
    """The names of what each week holds."""
    return [frozenset(group.name for visit in week.visits for group in visit.own) for week in weeks]


class Lifter:
    """An athlete and all their known programmes, sorted by start date; those without one come last."""

    __slots__ = ("athlete", "plans", "resources", "today")

    def __init__(
        self, athlete: Athlete, plans: Iterable[Ledger], today: date, resources: TeamResources = NO_RESOURCES
    ) -> None:
        self.athlete = athlete
        self.plans = sorted(
            plans, key=lambda plan: (plan.programme.starts is None, plan.programme.starts or today)
        )
        self.today = today
        self.resources = resources
