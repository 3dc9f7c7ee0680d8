"""Whether demands can be met at once: by any sets of the lines that there are and of any lift that would do.

The answer is sound one way. Where it says that they cannot, no number of sets meets them; half sets, lines of
any length and lifts in any order are let pass, so what it lets through need not be a programme.
"""

from __future__ import annotations

from ..body.catalogue import COMPOUND
from ..counting.session_time import CHANGE_OVER, ONE_WAY, REST, work_time
from ..counting.suggestions import SLOW_KINDS
from ..engine.demands import TINY, Minutes, SetSum
from .amounts import FEWEST, MOST
from .minutes import ROOM
from .simplex import least

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ..body.catalogue import Exercise
    from ..counting.set_group import SetGroup
    from ..counting.week import Week
    from ..engine.demands import Quantity, RuleDemand
    from ..model.quantities import Range
    from ..model.sessions import Prescription, Session
    from .lines import Plan

SECONDS = 60.0
"""Of a minute."""

REPETITIONS = 8
"""Repetitions of a set of a new lift, as few as such a line is given."""


class OpenSets:
    """Sets of a lift in a session: of the ``line`` that is there, or of a new one.

    ``entry`` is what the line holds in the week, ``minutes`` what a set takes. They are as many as one likes,
    or at ``most`` so many: the first of a line may save time, as changing over stands for the last rest.
    """

    __slots__ = ("entry", "exercise", "line", "minutes", "most", "session")

    def __init__(
        self,
        session: Session,
        exercise: Exercise,
        minutes: float,
        entry: SetGroup | None = None,
        most: float | None = None,
    ) -> None:
        self.session = session
        self.exercise = exercise
        self.minutes = minutes
        self.entry = entry
        self.most = most
        self.line: Prescription | None = None if entry is None else entry.prescription


class AtOnce:
    """A week of a programme with sets of lines to choose: which demands on it can be met together.

    ``weeks`` are that week as each athlete has it: a set of a line is one of all who do the line.
    Sessions are taken at the least that they can take, which is sure; with ``usual`` as they usually go.
    What hangs on no minutes is the same as in one ``alike``, of the same demands on the same week.
    """

    def __init__(
        self,
        plan: Plan,
        weeks: Sequence[Week],
        demands: Iterable[RuleDemand],
        *,
        usual: bool = False,
        alike: AtOnce | None = None,
    ) -> None:
        self._plan = plan
        self._usual = usual
        self._weights: dict[tuple[int, int], float] = {} if alike is None else alike._weights
        self._weeks = weeks
        self._visits = {
            visit: {entry.prescription for entry in visit.own} for week in weeks for visit in week.visits
        }
        self.demands = [one for one in demands if self._is_of_week(one)]
        self._floors = [one for one in self.demands if one.least is not None]
        self._kinds: list[list[Exercise]] = self._kinds_of_lifts() if alike is None else alike._kinds
        self._columns: dict[OpenSets, tuple[float, ...]] = {}
        self._lines = self._own()
        self._work = [*self._lines, *self._further(), *self._new()]
        self._capped = [
            ([float(other is one) for other in self._work], one.most)
            for one in self._work
            if one.most is not None
        ]
        self._rows = {id(one): self._row(number) for number, one in enumerate(self.demands)}

    @property
    def visits(self) -> int:
        """How many sessions the week holds."""
        return max(len(set(week.visits)) for week in self._weeks)

    def has_small(self, floors: Iterable[RuleDemand]) -> bool:
        """Whether lifts over one joint, which pair well, bring something to some demands."""
        several = list(floors)
        return any(
            one.exercise.pattern not in COMPOUND and any(self._brings(floor, one) for floor in several)
            for one in self._work
        )

    def core(self, wanted: Sequence[RuleDemand], others: Sequence[RuleDemand]) -> list[RuleDemand]:
        """The fewest of these demands that cannot be met together; none if they can.

        Left out one after another: those that are wanted are kept longest.
        """
        several = [one for one in (*others, *wanted) if id(one) in self._rows]
        blamed = self._blamed(several)
        for one in list(blamed):
            without = [other for other in blamed if other is not one]
            if self._blamed(without):
                blamed = without
        return blamed

    def _blamed(self, several: list[RuleDemand]) -> list[RuleDemand]:
        """Those that are in each other's way, not always the fewest; none if all can be met."""
        rows = [self._rows[id(one)] for one in several]
        rows += self._capped
        answer = least([0.0] * len(self._work), [row for row, _ in rows], [bound for _, bound in rows])
        if answer.value is not None or not answer.is_known:
            return []
        return [one for one, weight in zip(several, answer.blame, strict=False) if weight > TINY]

    def most_for_each(self, core: Sequence[RuleDemand], floors: Sequence[RuleDemand]) -> float | None:
        """How much all of some floors can have alike, the rest of a core being kept; None where not known."""
        return self._loosened(core, floors, absolute=True)

    def more_for(self, core: Sequence[RuleDemand], limits: Sequence[RuleDemand]) -> float | None:
        """By how much some limits of a core must be wider, all alike, for the rest; None where not known."""
        return self._loosened(core, limits, absolute=False)

    def _loosened(
        self, core: Sequence[RuleDemand], some: Sequence[RuleDemand], *, absolute: bool
    ) -> float | None:
        rows, bounds = [], []
        for one in core:
            row, bound = self._rows[id(one)]
            if one not in some:
                rows.append([*row, 0.0])
            elif absolute:  # a floor of its own, as high as can be
                rows.append([*row, 1.0])
                bound += one.least or 0.0
            else:
                rows.append([*row, -1.0])
            bounds.append(bound)
        for row, bound in self._capped:
            rows.append([*row, 0.0])
            bounds.append(bound)
        answer = least([0.0] * len(self._work) + [-1.0 if absolute else 1.0], rows, bounds)
        return None if answer.value is None else abs(answer.value)

    def _is_of_week(self, demand: RuleDemand) -> bool:
        """Whether it is a plain bound on sets or minutes of this week alone."""
        if demand.unless or not demand.firm:
            return False
        return all(self._is_counted(one) for _, one in demand.terms)

    def _is_counted(self, quantity: Quantity) -> bool:
        if isinstance(quantity, SetSum):
            return self._visits.keys() >= {*quantity.tally.visits} and not quantity.tally.one_sided
        return isinstance(quantity, Minutes) and quantity.visit in self._visits

    def _own(self) -> list[OpenSets]:
        """The lines of the week whose sets may be changed: those that are the same for all who do them."""
        found: dict[Prescription, list[SetGroup]] = {}
        for visit in self._visits:
            for entry in visit.own:
                known = found.setdefault(entry.prescription, [])
                if not any(entry is one or _is_alike(entry, one) for one in known):
                    known.append(entry)
        work = []
        for line, (entry, *more) in found.items():
            written = self._plan.line_at(line.place.start)
            plain = written is not None and written.is_plain and self._plan.may_touch(written)
            if plain and not more and entry.exercise is not None and entry.sets.high and line.every is None:
                first, each = self._minutes_of(entry)
                most = None if first == each else float(FEWEST)
                work.append(OpenSets(line.session, entry.exercise, first, entry, most))
        return work

    def _further(self) -> list[OpenSets]:
        """The sets of its lines after the first ones."""
        return [
            OpenSets(one.session, one.exercise, self._minutes_of(one.entry)[1], one.entry)
            for one in self._lines
            if one.most is not None and one.entry is not None
        ]

    def _new(self) -> list[OpenSets]:
        """A new line in each session of each kind of lift that suits everybody and serves some demand."""
        rests = [
            one.work.rest.low
            for week in self._weeks
            for _, one in week.entries()
            if one.work.rest is not None and one.hard
        ]
        rest = min(rests, default=self._end(REST["light"]))
        minutes, _ = self._a_set_of(REPETITIONS * self._end(ONE_WAY + ONE_WAY), rest)
        work: dict[tuple[object, ...], OpenSets] = {}
        for session in dict.fromkeys(visit.session for visit in self._visits):
            there = {one.exercise for one in self._lines if one.session is session}
            for alike in self._kinds:
                others = [one for one in alike if one not in there]  # a lift stands on one line of a session
                if others:
                    new = OpenSets(session, others[0], minutes)
                    work.setdefault((session, *self._column(new)), new)
        return list(work.values())

    def _kinds_of_lifts(self) -> list[list[Exercise]]:
        """The lifts that suit everybody and serve some demand; those that bring the same to all, together."""
        suiting = [
            one
            for one in self._plan.header.known.by_rank()
            if one.kind in SLOW_KINDS and self._serves(one) and not self._plan.obstacle(one)
        ]
        sums = [one for demand in self.demands for _, one in demand.terms if isinstance(one, SetSum)]
        kinds: dict[tuple[float, ...], list[Exercise]] = {}
        for exercise in suiting:
            kinds.setdefault(tuple(self._weight(one, exercise) for one in sums), []).append(exercise)
        return list(kinds.values())

    def _column(self, work: OpenSets) -> tuple[float, ...]:
        """What a set of some work brings to each demand."""
        if work not in self._columns:
            self._columns[work] = tuple(self._brings(one, work) for one in self.demands)
        return self._columns[work]

    def _brings(self, demand: RuleDemand, work: OpenSets) -> float:
        """What a set of some work brings to a demand, in its favour where nobody knows."""
        return sum(factor * self._a_set(demand, one, work, factor) for factor, one in demand.terms)

    def _a_set(self, demand: RuleDemand, quantity: Quantity, work: OpenSets, factor: float) -> float:
        if isinstance(quantity, Minutes):
            is_done = work.line is None or work.line in self._visits[quantity.visit]
            return work.minutes if quantity.visit.session is work.session and is_done else 0.0
        assert isinstance(quantity, SetSum)
        if work.entry is not None:
            parts = [part for part in quantity.count.parts if part.entry.prescription is work.line]
            return sum(part.sets.high / part.entry.sets.high for part in parts)
        helps = (factor > 0) == (demand.most is None)
        if not quantity.takes_any and not helps:
            return 0.0
        often = sum(visit.session is work.session for visit in quantity.tally.visits)
        return self._weight(quantity, work.exercise) * often if often else 0.0

    def _weight(self, sets: SetSum, exercise: Exercise) -> float:
        key = id(sets), id(exercise)
        if key not in self._weights:
            self._weights[key] = sets.weight(exercise)
        return self._weights[key]

    def _serves(self, exercise: Exercise) -> bool:
        """Whether an exercise brings something to a demand for at least so much."""
        return any(
            isinstance(one, SetSum) and factor * self._weight(one, exercise) > 0
            for floor in self._floors
            for factor, one in floor.terms
        )

    def _row(self, number: int) -> tuple[list[float], float]:
        """A demand as a sum that is at most its bound: what every work brings, and what is left for it."""
        demand = self.demands[number]
        fixed = self._now(demand) - sum(self._takes(demand, one) for one in self._lines)
        sums = [self._column(one)[number] for one in self._work]
        if demand.most is None:
            return [-one for one in sums], fixed - (demand.least or 0.0)
        return sums, self.bound(demand) - fixed

    def bound(self, demand: RuleDemand) -> float:
        """The most that a demand lets pass once nothing is written: of minutes as they are counted here."""
        times = [one for _, one in demand.terms if isinstance(one, Minutes)]
        if times and self._usual:
            return max(one.has for one in times) * ROOM
        return (demand.most or 0.0) + sum(one.slack for one in times)

    def _end(self, seconds: Range) -> float:
        """The seconds that count: the fewest, or those in the middle."""
        return seconds.middle if self._usual else seconds.low

    def _now(self, demand: RuleDemand) -> float:
        """How much there is of a demand's sum; warm-up sets that nobody wrote other lifts may not ask for."""
        return sum(
            factor * (self._end(one.visit.time().total) / SECONDS if isinstance(one, Minutes) else one.now)
            for factor, one in demand.terms
        )

    def _takes(self, demand: RuleDemand, work: OpenSets) -> float:
        """What a line brings to a demand now, with all its sets."""
        assert work.entry is not None
        found = 0.0
        for factor, one in demand.terms:
            if isinstance(one, SetSum):
                parts = [part for part in one.count.parts if part.entry.prescription is work.line]
                found += factor * sum(float(getattr(part.sets, one.end)) for part in parts)
            elif isinstance(one, Minutes) and work.line in self._visits[one.visit]:
                assert work.line is not None
                time = one.visit.time_of(work.line)
                taken = time.work + time.rest if self._usual else time.total  # warm-up sets usually stay
                seconds = self._end(taken) + self._end(CHANGE_OVER)
                found += factor * seconds / SECONDS
        return found

    def _minutes_of(self, entry: SetGroup) -> tuple[float, float]:
        """The minutes of a set of a line, of the first and of the further ones."""
        work, sets = entry.work, entry.sets.low or 1.0
        rest: Range = work.rest if work.rest is not None else REST.get(entry.slot, REST["light"])
        return self._a_set_of(self._end(work_time(work, entry.seconds_said)) / sets, self._end(rest))

    def _a_set_of(self, seconds: float, rest: float) -> tuple[float, float]:
        """Minutes of a set, of the first and of the further ones: changing over stands for the last rest.

        Where it takes longer than the rest, all take their share of it in the longest line.
        """
        longer = self._end(CHANGE_OVER) - rest
        if longer >= 0:
            return ((seconds + rest + longer / MOST) / SECONDS,) * 2
        return (seconds + rest + longer / FEWEST) / SECONDS, (seconds + rest) / SECONDS


def _is_alike(one: SetGroup, other: SetGroup) -> bool:
    """Whether two athletes do a line alike."""
    return one.exercise is other.exercise and one.work is other.work
