"""Whether demands can be met at once: by any sets of the lines that there are and of any lift that would do.

The answer is sound one way. Where it says that they cannot, no number of sets meets them; half sets, lines of
any length and lifts in any order are let pass, so what it lets through need not be a programme.
"""

from __future__ import annotations

from ..counting.session_time import CHANGE_OVER, ONE_WAY, REST, work_time
from ..counting.suggestions import SLOW_KINDS
from ..engine.demands import TINY, Minutes, SetSum
from .amounts import FEWEST, MOST
from .simplex import least

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ..body.catalogue import Exercise
    from ..counting.ledger import Ledger
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
    """Sets of a lift in a session, as many as one likes: of the ``line`` that is there, or of a new one.

    ``entry`` is what the line holds in the week, ``minutes`` what a set takes at the least.
    """

    __slots__ = ("entry", "exercise", "line", "minutes", "session")

    def __init__(
        self, session: Session, exercise: Exercise, minutes: float, entry: SetGroup | None = None
    ) -> None:
        self.session = session
        self.exercise = exercise
        self.minutes = minutes
        self.entry = entry
        self.line: Prescription | None = None if entry is None else entry.prescription


class AtOnce:
    """A week of a programme with sets of lines to choose: which demands on it can be met together."""

    def __init__(self, plan: Plan, ledger: Ledger, week: Week, demands: Iterable[RuleDemand]) -> None:
        self._plan = plan
        self._week = week
        self._visits = frozenset(week.visits)
        self.demands = [one for one in demands if self._is_of_week(one)]
        self._lines = self._own(ledger)
        self._work = [*self._lines, *self._new()]
        self._rows = {id(one): self._row(one) for one in self.demands}

    @property
    def visits(self) -> int:
        """How many sessions the week holds."""
        return len(self._visits)

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
        answer = least([0.0] * len(self._work), [row for row, _ in rows], [bound for _, bound in rows])
        if answer.value is not None or not answer.is_known:
            return []
        return [one for one, weight in zip(several, answer.blame, strict=True) if weight > TINY]

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
        answer = least([0.0] * len(self._work) + [-1.0 if absolute else 1.0], rows, bounds)
        return None if answer.value is None else abs(answer.value)

    def _is_of_week(self, demand: RuleDemand) -> bool:
        """Whether it is a plain bound on sets or minutes of this week alone."""
        if demand.unless or not demand.firm:
            return False
        return all(self._is_counted(one) for _, one in demand.terms)

    def _is_counted(self, quantity: Quantity) -> bool:
        if isinstance(quantity, SetSum):
            return self._visits.issuperset(quantity.tally.visits) and not quantity.tally.one_sided
        return isinstance(quantity, Minutes) and quantity.visit in self._visits

    def _own(self, ledger: Ledger) -> list[OpenSets]:
        """The lines of the week whose sets may be changed."""
        found: dict[Prescription, list[SetGroup]] = {}
        for visit in dict.fromkeys(self._week.visits):
            for entry in visit.own:
                if entry not in found.setdefault(entry.prescription, []):
                    found[entry.prescription].append(entry)
        work = []
        for line, (entry, *more) in found.items():
            written = self._plan.line_at(line.place.start)
            plain = written is not None and written.is_plain and self._plan.may_touch(written)
            if plain and not more and entry.exercise is not None and entry.sets.high and line.every is None:
                work.append(OpenSets(line.session, entry.exercise, _minutes_of(entry), entry))
        return work

    def _new(self) -> list[OpenSets]:
        """A new line in each session of each kind of lift that suits everybody and serves some demand."""
        rests = [
            one.work.rest.low for _, one in self._week.entries() if one.work.rest is not None and one.hard
        ]
        rest = min(rests, default=REST["light"].low)
        minutes = _a_set(REPETITIONS * (ONE_WAY + ONE_WAY).low, rest)
        suiting = [
            one
            for one in self._plan.header.known.by_rank()
            if one.kind in SLOW_KINDS and not self._plan.obstacle(one)
        ]
        work: dict[tuple[object, ...], OpenSets] = {}
        for session in dict.fromkeys(visit.session for visit in self._week.visits):
            for exercise in suiting:
                one = OpenSets(session, exercise, minutes)
                sums = tuple(self._brings(demand, one) for demand in self.demands)
                if any(sums):
                    work.setdefault((session, sums), one)
        return list(work.values())

    def _brings(self, demand: RuleDemand, work: OpenSets) -> float:
        """What a set of some work brings to a demand, in its favour where nobody knows."""
        return sum(factor * self._a_set(demand, one, work, factor) for factor, one in demand.terms)

    def _a_set(self, demand: RuleDemand, quantity: Quantity, work: OpenSets, factor: float) -> float:
        if isinstance(quantity, Minutes):
            return work.minutes if quantity.visit.session is work.session else 0.0
        assert isinstance(quantity, SetSum)
        if work.entry is not None:
            parts = [part for part in quantity.count.parts if part.entry.prescription is work.line]
            return sum(part.sets.high / part.entry.sets.high for part in parts)
        helps = (factor > 0) == (demand.most is None)
        if not quantity.takes_any and not helps:
            return 0.0
        often = sum(visit.session is work.session for visit in quantity.tally.visits)
        return quantity.weight(work.exercise) * often

    def _row(self, demand: RuleDemand) -> tuple[list[float], float]:
        """A demand as a sum that is at most its bound: what every work brings, and what is left for it."""
        fixed = demand.now - sum(self._takes(demand, one) for one in self._lines) - _ramps(demand)
        sums = [self._brings(demand, one) for one in self._work]
        if demand.most is None:
            return [-one for one in sums], fixed - (demand.least or 0.0)
        slack = sum(one.slack for _, one in demand.terms if isinstance(one, Minutes))
        return sums, demand.most + slack - fixed

    def _takes(self, demand: RuleDemand, work: OpenSets) -> float:
        """What a line brings to a demand now, with all its sets."""
        assert work.entry is not None
        found = 0.0
        for factor, one in demand.terms:
            if isinstance(one, SetSum):
                parts = [part for part in one.count.parts if part.entry.prescription is work.line]
                found += factor * sum(float(getattr(part.sets, one.end)) for part in parts)
            elif isinstance(one, Minutes) and one.visit.session is work.session and work.line is not None:
                found += factor * (one.visit.time_of(work.line).total.low + CHANGE_OVER.low) / SECONDS
        return found


def _ramps(demand: RuleDemand) -> float:
    """Minutes of warm-up sets that nobody wrote: other lifts may not ask for them."""
    times = [(factor, one) for factor, one in demand.terms if isinstance(one, Minutes)]
    return sum(factor * (one.now - one.visit.time().total.low / SECONDS) for factor, one in times)


def _minutes_of(entry: SetGroup) -> float:
    """The least minutes of a set of a line, with its share of changing over to it."""
    work, sets = entry.work, entry.sets.low or 1.0
    rest: Range = work.rest if work.rest is not None else REST.get(entry.slot, REST["light"])
    return _a_set(work_time(work, entry.seconds_said).low / sets, rest.low)


def _a_set(seconds: float, rest: float) -> float:
    """Minutes of a set in the line that makes it shortest: changing over stands for its last rest."""
    spared = [(CHANGE_OVER.low - rest) / sets for sets in (FEWEST, MOST)]
    return (seconds + rest + min(spared)) / SECONDS
