"""The calendar of a programme: which sessions fall on which days of which weeks."""

from __future__ import annotations

from math import gcd

from ..body.names import fold
from ..model.weeks import sessions_in
from ..syntax.cache import GenerationCache
from .set_group import SetGroup
from .tally import Visit
from .week import Week

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..body.catalogue import Exercise
    from ..model.athlete import BestLift
    from ..model.programme import Adjustment, Programme
    from ..model.sessions import Block, ChangeOfLines, Prescription, Session, Work
    from .header import ProgrammeHeader
    from .set_group import Slip
    from .week import Together, WeeksOf

    Versions = tuple[int | tuple[ChangeOfLines, int], ...]
    """What differs between weeks in which a line says the same: adjustments, and changes of all lines."""


BY_MACHINE = ("row",)
"""Names that without repetitions mean work on a machine, for a time, a distance or calories: no lift."""


class Calendar:
    """The calendar of a programme: its sessions on their days, with the groups of sets they hold.

    It keeps what it has made. A line, session or week that is unchanged is reused as the same object.
    """

    def __init__(
        self,
        header: ProgrammeHeader,
        adjustments: tuple[Adjustment, ...],
        everything: tuple[ChangeOfLines, ...],
        together: Together,
        weeks_of: WeeksOf,
    ) -> None:
        self.header = header
        self.slip: Slip | None = None
        self.programme: Programme
        self.moves: bool
        self.together = together
        self.weeks_of = weeks_of
        self.best = _best_lifts(header)
        self.own_changes = everything
        self.who = header.athlete.name if header.athlete else ""
        self.adjusted: dict[Exercise | str, list[Adjustment]] = {}
        for one in adjustments:
            self.adjusted.setdefault(header.named(one.exercise.words), []).append(one)
        self.lines = GenerationCache()
        self.own = GenerationCache()
        self.seen = GenerationCache()
        self.made: dict[tuple[Visit, ...], list[Week]] = {}

    def weeks(self, programme: Programme) -> Iterator[Week]:
        """The weeks in order. A week whose visits are unchanged is reused as the same object."""
        for remembered in (self.lines, self.own, self.seen):
            remembered.start_generation()
        before, self.made = self.made, {}
        self.programme = programme
        self.moves = next(programme.wheres(), None) is not None
        phase = ""
        for block in programme.blocks:
            turn = 0
            self.times: dict[Session, int] = {}
            sessions = programme.sessions_of(block)
            turn_weeks = _turn_weeks(block, sessions)
            for number in range(block.first, block.first + block.weeks):
                visits, turn = self.visits(block, sessions, number - block.first + 1, turn)
                alike = before.get(visits)
                week = alike.pop(0) if alike else Week(self.header, visits, self.together, self.weeks_of)
                week.set_in(block, number, phase, turn_weeks)
                phase = week.phase
                self.made.setdefault(visits, []).append(week)
                yield week

    def visits(
        self, block: Block, sessions: tuple[Session, ...], week: int, turn: int
    ) -> tuple[tuple[Visit, ...], int]:
        """The visits of one week of a block, in order of their days, and the next turn of its rotation.

        ``week`` is counted from 1 within the block. ``turn`` counts the turns that the rotation has taken.
        """
        visits = []
        sessions = sessions_in(sessions, week)
        rotating = _rotating(block, sessions)
        for session in sessions:
            days = sorted(session.days_in(week)) or ((0,) if session not in rotating else ())
            visits += [self.visit(session, day, week) for day in days]
        if rotating:
            for day in block.rotation:
                session = rotating[turn % len(rotating)]
                visits.append(self.visit(session, day, week))
                turn += 1
        visits.sort(key=lambda visit: visit.day or 8)
        if self.own_changes:
            visits = [one for one in visits if not self.is_left_out(one.session, week)]
        return tuple(visits), turn

    def is_left_out(self, session: Session, week: int) -> bool:
        """Whether the athlete does nothing of a session in a week of its block."""
        number = session.block.first + week - 1
        return any(
            one.leaves_out and one.holds_in(number) and one.exercise is None
            for one in self.own_changes
            if one.session is None or fold(one.session.words) == fold(session.name)
        )

    def visit(self, session: Session, day: int, week: int) -> Visit:
        """A session on its day. All weeks in which it holds the same sets share one object."""
        time = 0
        if session.by_visit:
            time = self.times[session] = self.times.get(session, 0) + 1
        own = self.groups(session, week, time)
        at = self.place(session, day, week) if self.moves else ""
        hour = session.hour(week, day) if session.hours or session.by_week else None
        if hour is None and not session.days:
            hour = session.block.hours.get(day)
        minutes = session.lasts(week) if session.minutes else None
        key = (session, day, own, at, hour, minutes)
        visit: Visit = self.seen.get(key, lambda: Visit(self.header, session, day, own, at, hour, minutes))
        return visit

    def place(self, session: Session, day: int, week: int) -> str:
        """Where a session takes place on a day of a week of its block; empty where nothing is written."""
        block, number = session.block, session.block.first + week - 1
        written = ((session.held_at, week), (block.held_at, week), (self.programme.held_at, number))
        for where, number in written:
            if where is not None and (found := where.on(number, day)):
                return found
        return ""

    def groups(self, session: Session, week: int, time: int) -> tuple[SetGroup, ...]:
        """The groups of sets of a session in a week of its block; ``time`` counts its visits in the block.

        It is 0 for sessions without values by visit.
        """
        number = session.block.first + week - 1
        versions: Versions = tuple(
            version
            for several in self.adjusted.values()
            for one in several
            for version in one.version(number)
        )
        if self.programme.everything or session.block.everything or self.own_changes:
            versions = (*versions, *self.changes(session.block, week))
        groups: tuple[SetGroup, ...] = self.own.get(
            (session, week, versions, time),
            lambda: self.counted(
                session,
                tuple(
                    [
                        group
                        for line in session.prescriptions
                        for group in self.of_line(line, week, number, versions, time)
                    ]
                ),
            ),
        )
        return groups

    def counted(self, session: Session, groups: tuple[SetGroup, ...]) -> tuple[SetGroup, ...]:
        """The groups of sets of a session, with as many rounds as the time of some of them allows."""
        if not session.counts_rounds:
            return groups
        from .open_rounds import with_rounds

        counted: tuple[SetGroup, ...] = self.lines.get(groups, lambda: with_rounds(groups))
        return counted

    def of_line(
        self, line: Prescription, week: int, number: int, versions: Versions, time: int
    ) -> tuple[SetGroup, ...]:
        """The groups of sets of a line in a week. Weeks in which it reads the same share the objects.

        ``week`` is counted in the block, ``number`` in the programme, ``time`` in visits. ``versions`` tell
        which of the athlete's adjustments hold in that week.
        """
        key = (line, line.version(week), versions, time if line.by_visit else 0)
        groups: tuple[SetGroup, ...] = self.lines.get(
            key, lambda: self.groups_of(line, week, number, versions, time)
        )
        return groups

    def groups_of(
        self, line: Prescription, week: int, number: int, versions: Versions, time: int
    ) -> tuple[SetGroup, ...]:
        """The groups of sets of a line. ``week`` is counted within the block, ``number`` in the programme."""
        changes: tuple[tuple[ChangeOfLines, int], ...] = ()
        if versions:
            changes = tuple(
                [one for one in versions if isinstance(one, tuple) and self.is_meant(one[0], line)]
            )
        own = None
        if line.by_athlete:
            from ..model.by_athlete import values_of

            own = values_of(line, self.who)
        groups = [self.group(line, work, number) for work in line.in_week(week, time, changes, own)]
        return tuple([group for group in groups if group is not None])

    def changes(self, block: Block, week: int) -> Iterator[tuple[ChangeOfLines, int]]:
        """What changes for all lines in a week, each with the weeks before the block that it counts.

        What a block says comes after what the programme says, and what is said for the athlete last.
        """
        before = block.first - 1
        for several, earlier in (
            (self.programme.everything, before),
            (block.everything, 0),
            (self.own_changes, before),
        ):
            yield from ((one, earlier) for one in several if one.holds_in(week + earlier))

    def is_meant(self, change: ChangeOfLines, line: Prescription) -> bool:
        """Whether a change is about a line: about its session and exercise, where it names any."""
        if change.session is not None and fold(change.session.words) != fold(line.session.name):
            return False
        named = self.header.named
        return change.exercise is None or named(change.exercise.words) in [
            named(term.words) for term in line.names()
        ]

    def group(self, line: Prescription, work: Work, week: int) -> SetGroup | None:
        """A group of sets with the athlete's adjustments; None if the athlete leaves the exercise out."""
        adjusted = self.adjusted.get(self.header.named(work.exercise), ()) if self.adjusted else ()
        for adjustment in adjusted:
            of = adjustment.session
            if of is not None and fold(of.words) != fold(line.session.name):
                continue
            if adjustment.leave_out and adjustment.holds_in(week):
                return None
            work = work.with_values(adjustment.in_week(week))
        named = self.header.known.reading(work.exercise)
        exercise = named.exercise if named else None
        if not work.reps and fold(work.exercise) in BY_MACHINE:
            exercise = None
        best = self.best.get(exercise, ()) if exercise and self.best else ()
        group = SetGroup(self.header, line, work, named, exercise, best)
        if line.kind and (line.kind == "own choice" or exercise is None or self._is_endurance(work)):
            group.count_nowhere()
        elif self.slip is not None:
            group.slips, is_told = self.slip(group)
            if is_told:
                group.take_out()
        return group

    def _is_endurance(self, work: Work) -> bool:
        """Whether what is done in intervals is a machine's or the like, and no lift."""
        from .endurance import endurance_named

        return endurance_named(work.exercise, self.header.known) is not None


def _rotating(block: Block, sessions: tuple[Session, ...]) -> list[Session]:
    """The sessions that take turns on the days of a block's rotation."""
    return [session for session in sessions if not session.days] if block.rotation else []


def _turn_weeks(block: Block, sessions: tuple[Session, ...]) -> int:
    """After how many weeks a block's rotation starts afresh; no more than the block has, 1 without one."""
    several = len(_rotating(block, sessions))
    return min(several // gcd(several, len(block.rotation)), block.weeks) if several else 1


def _best_lifts(header: ProgrammeHeader) -> dict[Exercise, tuple[BestLift, ...]]:
    """The athlete's best lifts on file, by exercise."""
    best: dict[Exercise, tuple[BestLift, ...]] = {}
    for lift in header.athlete.best_lifts if header.athlete else ():
        exercise = header.known.exercise(lift.exercise.words)
        if exercise is not None:
            best[exercise] = (*best.get(exercise, ()), lift)
    return best
