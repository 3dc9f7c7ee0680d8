"""What rules look at: each different athlete, programme, week, session and group of sets once."""

from __future__ import annotations

from ..counting.ledger import Lifter
from ..counting.set_group import SetGroup
from ..counting.tally import Visit
from .limits import Situation
from .registry import SCOPES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from collections.abc import Set as AbstractSet

    from ..counting.ledger import Ledger
    from .registry import Subject

    Apart = Mapping[str, frozenset[int]]

NOWHERE: Apart = {}


class Target:
    """One thing that rules look at, its weeks, and the situation.

    ``apart`` holds the numbers of the programme's weeks in each state in which rules may stand back. ``key``
    tells where it stands and what it says, with whatever else a rule that does not look beyond may see of it
    but for what stands outside sessions.
    """

    __slots__ = ("_written", "apart", "key", "situation", "unit", "weeks")

    def __init__(
        self,
        unit: Subject,
        weeks: tuple[int, ...],
        situation: Situation,
        key: tuple[object, ...],
        apart: Apart = NOWHERE,
    ) -> None:
        self.unit = unit
        self.weeks = weeks
        self.situation = situation
        self.apart, self.key = apart, key
        self._written: AbstractSet[str] | None = None
        if apart:
            self.apart = {state: there for state, there in apart.items() if not there.isdisjoint(weeks)}
            self.key = (*key, *(state for state, there in self.apart.items() if there.issuperset(weeks)))

    def holds(self, keys: frozenset[str]) -> bool:
        """Whether all of some keys of lines are written somewhere in it."""
        if self._written is None:
            self._written = _written_in(self.unit)
        return keys <= self._written

    def weeks_but(self, states: tuple[str, ...]) -> tuple[int, ...]:
        """Its weeks but for those in some states."""
        if not self.apart:
            return self.weeks
        left_out = [self.apart[state] for state in states if state in self.apart]
        return tuple(week for week in self.weeks if not any(week in there for there in left_out))


def _written_in(unit: Subject) -> AbstractSet[str]:
    """The keys of lines that are written in something that rules look at."""
    if isinstance(unit, SetGroup):
        return unit.work.written.keys()
    plans = unit.plans if isinstance(unit, Lifter) else (unit,)
    return set().union(*[group.work.written for plan in plans for _, group in plan.entries()])


def targets_of(subject: Ledger | Lifter) -> dict[str, list[Target]]:
    """What rules of each scope look at: each different thing once."""
    fed: dict[str, list[Target]] = {scope: [] for scope in SCOPES.values()}
    if isinstance(subject, Lifter):
        fed["athlete"].append(Target(subject, (), Situation(level=subject.athlete.level), ()))
        return fed
    weeks: dict[str, dict[Subject, tuple[int, ...]]] = {scope: {} for scope in SCOPES.values()}
    keys: dict[Subject, tuple[object, ...]] = {}
    says = {
        block: tuple(one.fingerprint for one in subject.programme.sessions_of(block))
        for block in subject.programme.blocks
    }
    weeks["programme"][subject] = tuple(week.number for week in subject.weeks)
    keys[subject] = tuple(says.values())
    for week, numbers in subject.like_weeks():
        weeks["week"][week] = numbers
        keys[week] = (week.number, says[week.block])
        for visit in week.visits:
            weeks["session"][visit] = (*weeks["session"].get(visit, ()), *numbers)
            session = visit.session
            keys.setdefault(visit, (week.number, visit.day, session.number, session.fingerprint))
    entries = weeks["prescription"]
    for one, numbers in weeks["session"].items():
        assert isinstance(one, Visit)
        key = keys[one]
        for index, entry in enumerate(one.own):
            if entry in entries:
                entries[entry] = (*entries[entry], *numbers)
            else:
                entries[entry], keys[entry] = numbers, (*key, index)
    states = {
        "rehabilitation": frozenset(week.number for week in subject.weeks if week.rehabilitation),
        "peak": frozenset(week.number for week in subject.weeks if week.is_peak),
        "careful return": frozenset(_careful_return(subject)),
    }
    apart = {state: there for state, there in states.items() if there}
    situations: dict[str, Situation] = {}
    phases = [week.phase for week in subject.weeks]
    for scope, units in weeks.items():
        for unit, numbers in units.items():
            numbers = tuple(sorted(set(numbers))) if len(numbers) > 1 else numbers
            phase = subject.programme.phase if scope == "programme" else phases[numbers[0] - 1]
            if phase not in situations:
                situations[phase] = Situation(subject.programme.goal, subject.level, phase)
            fed[scope].append(Target(unit, numbers, situations[phase], keys[unit], apart))
    return fed


def _careful_return(ledger: Ledger) -> list[int]:
    """The weeks in which somebody with something to spare comes back to training."""
    back = [week.number for week in ledger.weeks if week.phase == "return"]
    return back if back and ledger.header.spared() else []
