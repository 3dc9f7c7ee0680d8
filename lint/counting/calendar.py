"""Lays a programme out: which sessions fall on which days of which weeks."""

from __future__ import annotations

from datetime import timedelta

from ..body import catalogue
from ..syntax.cache import GenerationCache
from .session_time import NO_TIME
from .set_group import SetGroup
from .tally import Tally, Visit

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..body.catalogue import Exercise
    from ..model.athlete import BestLift
    from ..model.programme import Adjustment, Programme
    from ..model.sessions import Block, Phase, Prescription, Session, Work
    from .ledger import Ledger
    from .session_time import SessionTime


class Week(Tally):
    """A week of the programme: its number, its block and its visits in order."""

    __slots__ = ("block", "ledger", "number", "rehabilitation")
    block: Block
    number: int
    rehabilitation: bool

    def __init__(self, ledger: Ledger, visits: tuple[Visit, ...]) -> None:
        super().__init__(visits)
        self.ledger = ledger

    def set_in(self, block: Block, number: int) -> None:
        """Puts it where it stands in the programme as it is now."""
        self.block = block
        self.number = number
        self.rehabilitation = in_rehabilitation(self.ledger, number)

    @property
    def programme(self) -> Programme:
        """The programme it belongs to."""
        return self.ledger.programme

    @property
    def phase(self) -> Phase:
        """The phase of its block, else of the programme."""
        return self.block.phase or self.programme.phase

    def is_typical(self) -> bool:
        """Whether its dose is what the block is about: no deload, taper or test, and no first week back."""
        return not self.block.deload and self.phase not in ("taper", "test") and not self.is_first_back()

    def is_first_back(self) -> bool:
        """Whether it is the week in which an athlete returns."""
        before = self.ledger.weeks[self.number - 2].phase if self.number > 1 else ""
        return self.phase == "return" and before != "return"

    def time(self) -> SessionTime:
        """How long its sessions take together."""
        return sum((visit.time() for visit in self.visits), NO_TIME)

    def means(self, area: str) -> bool:
        """Whether its block, or the programme, means to train an area; without a focus it means all."""
        terms = self.block.focus or self.programme.focus
        if not terms:
            return True
        wanted = set(catalogue.area(area) or ())
        return any(wanted.intersection(catalogue.area(term.words) or ()) for term in terms)

    def days(self) -> list[tuple[int, Tally]]:
        """Each training day with all its visits."""
        return [(day, self.ledger.together(visits)) for day, visits in self.by_day()]

    def by_day(self) -> list[tuple[int, tuple[Visit, ...]]]:
        """The visits of each training day, in order."""
        found: dict[int, tuple[Visit, ...]] = {}
        for visit in self.visits:
            if visit.day:
                found[visit.day] = (*found.get(visit.day, ()), visit)
        return sorted(found.items())


class Calendar:
    """Lays a programme out: which sessions fall on which days of which weeks, and what they hold."""

    def __init__(self, ledger: Ledger) -> None:
        self.ledger = ledger
        self.best = best_lifts_of(ledger)
        self.adjusted: dict[Exercise | str, list[Adjustment]] = {}
        for one in ledger.member.adjustments if ledger.member else ():
            self.adjusted.setdefault(ledger.named(one.exercise.words), []).append(one)
        self.lines = GenerationCache()
        self.own = GenerationCache()
        self.seen = GenerationCache()
        self.made: dict[tuple[Visit, ...], list[Week]] = {}

    def weeks(self) -> Iterator[Week]:
        """The weeks in order; those that hold what a week held before are the same objects."""
        for remembered in (self.lines, self.own, self.seen):
            remembered.turn()
        before, self.made = self.made, {}
        for block in self.ledger.programme.blocks:
            turn = 0
            for number in range(block.first, block.first + block.weeks):
                visits, turn = self.visits(block, number - block.first + 1, turn)
                alike = before.get(visits)
                week = alike.pop(0) if alike else Week(self.ledger, visits)
                week.set_in(block, number)
                self.made.setdefault(visits, []).append(week)
                yield week

    def visits(self, block: Block, week: int, turn: int) -> tuple[tuple[Visit, ...], int]:
        """The visits of a week of a block, and whose turn it is next in its rotation."""
        visits = []
        rotating = [session for session in block.sessions if not session.days] if block.rotation else []
        for session in block.sessions:
            days = session.days or ((0,) if session not in rotating else ())
            visits += [self.visit(session, day, week) for day in days]
        if rotating:
            for day in block.rotation:
                session = rotating[turn % len(rotating)]
                visits.append(self.visit(session, day, week))
                turn += 1
        visits.sort(key=lambda visit: visit.day or 8)
        return tuple(visits), turn

    def visit(self, session: Session, day: int, week: int) -> Visit:
        """A session on its day; one and the same object for all weeks in which it holds the same."""
        own = self.entries(session, week)
        key = (session, day, own)
        visit: Visit = self.seen.get(key, lambda: Visit(self.ledger, session, day, own))
        return visit

    def entries(self, session: Session, week: int) -> tuple[SetGroup, ...]:
        """The entries of a session in a week of its block."""
        number = session.block.first + week - 1
        turns = tuple(
            turn for several in self.adjusted.values() for one in several for turn in one.version(number)
        )
        entries: tuple[SetGroup, ...] = self.own.get(
            (session, week, turns),
            lambda: tuple(
                entry for line in session.prescriptions for entry in self.of_line(line, week, number, turns)
            ),
        )
        return entries

    def of_line(
        self, line: Prescription, week: int, number: int, turns: tuple[int, ...]
    ) -> tuple[SetGroup, ...]:
        """The entries of a line in a week; the same objects for all weeks in which it reads the same."""
        key = (line, line.version(week), turns)
        entries: tuple[SetGroup, ...] = self.lines.get(key, lambda: self.entries_of(line, week, number))
        return entries

    def entries_of(self, line: Prescription, week: int, number: int) -> tuple[SetGroup, ...]:
        """The entries of a line in a week of its block, and the number of that week in the programme."""
        entries = (self.entry(line, work, number) for work in line.in_week(week))
        return tuple(entry for entry in entries if entry is not None)

    def entry(self, line: Prescription, work: Work, week: int) -> SetGroup | None:
        """The entry of a group of sets as the athlete does it; None where it is left out for them."""
        adjusted = self.adjusted.get(self.ledger.named(work.exercise), ()) if self.adjusted else ()
        for adjustment in adjusted:
            if adjustment.leave_out:
                return None
            work = work.with_values(adjustment.in_week(week))
        exercise = self.ledger.known.exercise(work.exercise)
        return SetGroup(self.ledger, line, work, exercise, self.best.get(exercise, ()) if exercise else ())


def best_lifts_of(ledger: Ledger) -> dict[Exercise, tuple[BestLift, ...]]:
    """The athlete's best lifts on file, by exercise."""
    best: dict[Exercise, tuple[BestLift, ...]] = {}
    for lift in ledger.athlete.best_lifts if ledger.athlete else ():
        exercise = ledger.known.exercise(lift.exercise.words)
        if exercise is not None:
            best[exercise] = (*best.get(exercise, ()), lift)
    return best


def in_rehabilitation(ledger: Ledger, week: int) -> bool:
    """Whether stage, adviser and end date are written down and the week begins before that is past."""
    stage = ledger.programme.rehabilitation
    if stage is None or not (stage.stage and stage.adviser and stage.until):
        return False
    starts = ledger.programme.starts
    begins = ledger.today if starts is None else starts + timedelta(days=7 * (week - 1))
    return begins <= stage.until
