"""A coach's own demands on a programme, ``must hold``: counted, and held or not."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.body.catalogue import PATTERNS
from ..lint.body.names import fold, without_side
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import credit
from ..lint.counting.effort import NO_LIFTS
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Edit, Related, found
from ..lint.model.demands import DAYS, SETS
from ..lint.model.naming import day_name
from ..lint.wording.words import counted_noun, did_you_mean, near_names, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.demands import Demand
    from ..lint.model.on_days import Activity
    from ..lint.model.sessions import Session
    from ..lint.text.places import Place, Term

HOURS_A_DAY = 24


@rule(
    "demand-not-held",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="The coach wrote under `must hold` what this programme has to hold. It is counted as everything is,"
    " and no phase, deload or stage of rehabilitation silences it.",
    sources=(),
)
def demand_not_held(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A demand of the coach's own, under `must hold`, that a week does not keep.

    Counts what the demand names, week by week: hard sets (helping sets as half), days, hours between, days
    running. Wants what the demand says, in the weeks that it names, or in all. A range must keep it at its
    unfavourable end; of two amounts the middles are compared. Hours are real where times of day are written,
    else days are 24 h apart.

    Flags:
        programme: Two leg curls
        must hold:
          - {weekly sets of: hamstrings, at least: 6}
        sessions:
          - session: Lower
            exercises: [{exercise: leg curl, sets: 3, reps: 8}]  # <- here

    Passes:
        programme: Two leg curls
        must hold:
          - {weekly sets of: hamstrings, at least: 6}
        sessions:
          - session: Lower
            exercises: [{exercise: leg curl, sets: 6, reps: 8}]
    """
    for demand, weeks, subjects, other in asked_of_weeks(ledger):
        yield from _judged(ledger, weeks, demand, subjects, other)


def asked_of_weeks(ledger: Ledger) -> Iterator[tuple[Demand, list[Week], list[Subject], Subject | None]]:
    """Each demand whose words are known, with the weeks that it is asked of and what it is about."""
    for demand in ledger.programme.demands:
        subjects = [Subject(term, ledger) for term in demand.subjects]
        other = None if demand.other is None else Subject(demand.other, ledger)
        if all(one.known for one in (*subjects, other) if one is not None):
            weeks = [week for week in ledger.weeks if demand.holds_in(week.number)]
            yield demand, weeks, subjects, other


@rule(
    "demand-unclear",
    family="upkeep",
    severity="error",
    confidence="fact",
    why="A demand that names nothing that is known would never be judged.",
    sources=(),
)
def demand_unclear(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A demand under `must hold` about something that nothing here is called.

    Wants a muscle, a joint action or movement pattern, an exercise, a session, an activity, or a word that
    stands under `kind` in this file.

    Flags:
        programme: Jumps
        must hold:
          - {never two days running: impct}  # <- here
        sessions:
          - session: Jumps
            kind: impact
            exercises: [{exercise: box jump, sets: 3, reps: 5}]

    Passes:
        programme: Jumps
        must hold:
          - {never two days running: impact}
        sessions:
          - session: Jumps
            kind: impact
            exercises: [{exercise: box jump, sets: 3, reps: 5}]
    """
    for demand in ledger.programme.demands:
        for term in (*demand.subjects, *((demand.other,) if demand.other else ())):
            if not Subject(term, ledger).known:
                names = [*_own_words(ledger), *PATTERNS, *catalogue.actions(), *catalogue.area_names()]
                near = near_names(term.words, names, 2)
                yield found(
                    term.place,
                    f"`{term.words}` is no muscle, movement, exercise, session or `kind` here.",
                    change=did_you_mean(near) or "Write one of these, or give lines or sessions this `kind`.",
                    where="must hold",
                    subject=term.words,
                    edits=tuple(Edit(term.place, one, f"write {one}", certain=False) for one in near),
                )


def _own_words(ledger: Ledger) -> list[str]:
    """The kinds, sessions and activities that the programme names."""
    programme = ledger.programme
    activities = [one for block in programme.blocks for one in block.activities]
    words = [kind.words for one in (*programme.sessions(), *activities) for kind in one.kinds]
    words += [kind.words for line in programme.prescriptions() for kind in line.kinds]
    words += [*(one.name for one in programme.sessions()), *(one.name for one in activities)]
    return list(dict.fromkeys(words))


class Subject:
    """What a demand is about: a kind, a session or an activity of this file, else what the trade knows."""

    def __init__(self, term: Term, ledger: Ledger) -> None:
        self.words, self.ledger, folded = term.words, ledger, fold(term.words)
        self.folded = folded
        self.is_own = folded in map(fold, _own_words(ledger))
        self.action = next((one for one in (*PATTERNS, *catalogue.actions()) if fold(one) == folded), "")
        self.is_area = catalogue.area(term.words) is not None and not without_side(term.words)
        self.exercise = ledger.header.known.exercise(term.words)
        self.known = self.is_own or bool(self.action) or self.is_area or self.exercise is not None

    def counted(self, tally: Tally) -> Count:
        """Its hard sets among visits; all sets of work that is never hard, such as jumps."""
        hard, every = (self.sets(tally, hard=one) for one in (True, False))
        never = every.where(lambda entry: entry.exercise is not None and entry.exercise.kind in NO_LIFTS)
        return every if never.high == every.high else hard

    def sets(self, tally: Tally, *, hard: bool) -> Count:
        """Its sets among visits."""
        if self.is_own:
            return tally.all_sets(hard=hard).where(self._is_of_kind)
        if self.action:
            return tally.for_actions((self.action,), hard=hard)
        if self.is_area:
            return tally.sets(self.words, hard=hard)
        return tally.all_sets(hard=hard).where(lambda entry: entry.exercise is self.exercise)

    def weight(self, exercise: Exercise) -> float:
        """What a set of an exercise brings to it; a kind of this file is given to lines, not to exercises."""
        if self.is_own:
            return 0.0
        if self.action:
            return float(self.action in (*exercise.actions, *exercise.patterns))
        return credit(exercise, self.words) if self.is_area else float(exercise is self.exercise)

    def _is_of_kind(self, entry: SetGroup) -> bool:
        line = entry.prescription
        return self._says(line.session) or self._names(line.kinds)

    def _names(self, kinds: Iterable[Term]) -> bool:
        return any(fold(one.words) == self.folded for one in kinds)

    def _says(self, what: Session | Activity) -> bool:
        return fold(what.name) == self.folded or self._names(what.kinds)

    def does(self, activity: Activity) -> bool:
        """Whether an activity is of the kind, or loads what is named."""
        if self._says(activity):
            return True
        muscles = set(catalogue.area(self.words) or ()) if not self.is_own else set()
        return any(muscles.intersection(catalogue.area(area.words) or ()) for area, _ in activity.loads)

    def times(self) -> list[_Time]:
        """When it comes, in order."""
        times = [
            _Time(7 * (week.number - 1) + visit.day, visit.hour, week, visit.session)
            for week in self.ledger.weeks
            for visit in week.visits
            if visit.day and (self._says(visit.session) or self.sets(visit, hard=False))
        ]
        times += [
            _Time(day, activity.hour(week.in_block, (day - 1) % 7 + 1), week, activity)
            for day, week, activity in self.ledger.activities()
            if self.does(activity)
        ]
        return sorted(times, key=lambda one: one.at)


class _Time:
    """A session or an activity on a day, counted from the start, with its hour where that is written."""

    def __init__(self, day: int, hour: float | None, week: Week, what: Session | Activity) -> None:
        self.day = day
        self.hour = hour
        self.week = week
        self.what = what

    @property
    def at(self) -> tuple[int, float]:
        """Its place in time; without an hour before all of its day."""
        return self.day, self.hour or 0.0

    def hours_to(self, later: _Time) -> float:
        """The hours from its beginning to that of another."""
        days = HOURS_A_DAY * (later.day - self.day)
        if self.hour is None or later.hour is None:
            return days
        return days + later.hour - self.hour

    def on(self, ledger: Ledger) -> str:
        """``Upper on Monday``."""
        return f"{self.what.name} on {day_name(ledger.programme.starts, self.day)}"


def _judged(
    ledger: Ledger, weeks: list[Week], demand: Demand, subjects: list[Subject], other: Subject | None
) -> Iterator[DraftFinding]:
    if demand.form == SETS:
        for week in weeks:
            yield from _sets(week, demand, subjects[0], other)
    elif demand.form == DAYS:
        for week in weeks:
            yield from _days(week, demand, subjects[0])
    else:
        yield from _spacing(ledger, demand, subjects)


def _change(demand: Demand, otherwise: str) -> str:
    return f"{otherwise.rstrip('.')}: {demand.because.rstrip('.')}." if demand.because else otherwise


def _told(
    demand: Demand,
    week: Week,
    count: Count,
    said: str,
    wanted: str,
    change: str,
    excess: float,
    amount: Amount | None,
) -> DraftFinding:
    lines = count.lines()
    first = week.visits[0].session if week.visits else None
    place: Place = lines[0][0].place if lines else first.place if first else demand.place
    where = lines[0][0].session.name if lines else first.name if first else ""
    return found(
        place,
        said,
        wanted=f"{wanted} (`must hold`)",
        change=_change(demand, change),
        where=where,
        subject=demand.words,
        group=demand.subjects[0].words,
        related=counted_lines(count) if lines else (Related(demand.place, "asked here"),),
        weeks=(week.number,),
        excess=excess,
        amount=amount,
    )


def _sets(week: Week, demand: Demand, subject: Subject, other: Subject | None) -> Iterator[DraftFinding]:
    """What a week holds of it, against the bounds, and against what it must be as much as."""
    turn = week.turn()
    count = subject.counted(turn.tally)
    low, high = turn.a_week(count.low), turn.a_week(count.high)
    a_week = plain(low) if low == high else f"{plain(low)}-{plain(high)}"
    said = f"{a_week} sets a week of {subject.words}"
    if demand.least is not None and low < demand.least:
        amount = Amount(low, demand.least, "sets")
        wanted = f"at least {plain(demand.least)}"
        yield _told(demand, week, count, f"{said}.", wanted, "Add sets.", demand.least - low, amount)
    elif demand.most is not None and high > demand.most:
        amount = Amount(high, demand.most, "sets")
        wanted = f"at most {plain(demand.most)}"
        yield _told(demand, week, count, f"{said}.", wanted, "Take sets off.", high, amount)
    if other is not None:
        against = other.sets(turn.tally, hard=True)
        if count.middle < against.middle:
            yield _told(
                demand,
                week,
                count if count.parts else against,
                f"{said}, {plain(turn.a_week(against.middle))} of {other.words}.",
                "at least as many",
                f"Add {subject.words}, or take {other.words} off.",
                against.middle - count.middle,
                None,
            )


def _days(week: Week, demand: Demand, subject: Subject) -> Iterator[DraftFinding]:
    """The days of a week on which it comes, against the bounds."""
    count, days = subject.sets(week, hard=False), days_with(week, subject)
    said = f"{counted_noun(days, 'day')} a week with {subject.words}."
    if demand.least is not None and days < demand.least:
        wanted = f"at least {plain(demand.least)}"
        yield _told(demand, week, count, said, wanted, "Add it on another day.", demand.least - days, None)
    elif demand.most is not None and days > demand.most:
        wanted = f"at most {plain(demand.most)}"
        yield _told(demand, week, count, said, wanted, "Take it off a day.", days, None)


def days_with(week: Week, subject: Subject) -> int:
    """The days of a week on which it comes; a session without a day counts for one."""
    on = {time.day for time in subject.times() if time.week is week}
    parts = subject.sets(week, hard=False).parts
    return len(on) + len({part.visit for part in parts if not part.visit.day and part.sets.high})


def _spacing(ledger: Ledger, demand: Demand, subjects: list[Subject]) -> Iterator[DraftFinding]:
    """Two times of it, or of two kinds, that are too near each other."""
    least = demand.least  # None where it is days running
    for before, after in near_times(subjects):
        hours, days = before.hours_to(after), after.day - before.day
        near = days == 1 if least is None else hours < least
        if not near or not demand.holds_in(after.week.number):
            continue
        wanted = "never two days running" if least is None else f"at least {plain(least)} h"
        apart = f", {plain(hours)} h apart" if least is not None and hours else ""
        yield found(
            after.what.place,
            f"{before.on(ledger)} and {after.on(ledger)}{apart}.",
            wanted=f"{wanted} (`must hold`)",
            change=_change(demand, "Move one of them."),
            where=after.what.name,
            subject=f"{demand.words}: {before.on(ledger)} {after.on(ledger)}",
            related=(Related(before.what.place, "this is near it"), Related(demand.place, "asked here")),
            weeks=(after.week.number,),
        )


def near_times(subjects: list[Subject]) -> Iterator[tuple[_Time, _Time]]:
    """Each time of one subject with the next of the other, in order."""
    return _neighbours(subjects[0].times(), subjects[-1].times())


def _neighbours(first: list[_Time], second: list[_Time]) -> Iterator[tuple[_Time, _Time]]:
    """Each time of one with the next of the other, in either order; never a time with itself."""
    pairs: dict[frozenset[tuple[int, Session | Activity]], tuple[_Time, _Time]] = {}
    for one, others in ((first, second), (second, first)):
        for before in one:
            for after in others:
                is_same = before.what is after.what and before.day == after.day
                if not is_same and before.at <= after.at:
                    both = frozenset({(before.day, before.what), (after.day, after.what)})
                    pairs.setdefault(both, (before, after))
                    break
    yield from pairs.values()
