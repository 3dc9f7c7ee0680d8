"""Counts the sets that visits bring to an area, a joint action or a movement pattern.

A `Tally` holds visits and answers questions about them. Every answer is a `Count`, which knows the lines it
came from.
"""

from __future__ import annotations

from functools import partial

from ..body import catalogue
from ..body.names import fold
from ..model.quantities import NOTHING
from .counts import NO_SETS, Count, CountedSets, in_full, on_side
from .credits import (
    FRACTIONAL,
    INDIRECT_WEIGHT,
    TOTAL,
    chosen_for,
    credit,
    credits_of,
    group_credits_of,
    is_in_complex,
    once_a_set,
    once_each,
    trains,
)
from .session_time import CHANGE_OVER, PREPARATION, seconds_around, session_time
from .totals import counted, together, totals_of
from .unknown import are_many, may_be, meant_by

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Sequence
    from typing import Any

    from ..body.catalogue import Exercise
    from ..model.quantities import Range
    from ..model.sessions import Prescription, Session
    from .header import ProgrammeHeader
    from .session_time import Group, Line, SessionTime
    from .set_group import SetGroup
    from .totals import Totals


class Tally:
    """Visits, and how many sets they bring to whatever a rule asks about.

    The answer for several visits is put together from the answers of each. Answers are kept, so each is
    worked out once. ``one_sided`` says whether any of it is done with one side only, ``has_complexes``
    whether lifts of it make up one set.
    """

    __slots__ = ("_answers", "has_complexes", "one_sided", "visits")
    has_complexes: bool
    one_sided: bool

    def __init__(self, visits: tuple[Visit, ...]) -> None:
        self.visits = visits
        self.one_sided = any(visit.one_sided for visit in visits)
        self.has_complexes = any(visit.has_complexes for visit in visits)
        self._answers: dict[object, Any] = {}

    def entries(self) -> list[tuple[Visit, SetGroup]]:
        """Every group of sets with its visit."""
        entries: list[tuple[Visit, SetGroup]] | None = self._answers.get("entries")
        if entries is None:
            entries = [(visit, group) for visit in self.visits for group in visit.own]
            self._answers["entries"] = entries
        return entries

    def _once(self, asked: str, answer: Callable[[], Any]) -> Any:
        """The kept answer to ``asked``. The first time, ``answer`` works it out."""
        found = self._answers.get(asked)
        if found is None:
            found = self._answers[asked] = answer()
        return found

    def sets(self, area: str, count: str = FRACTIONAL, *, hard: bool = True, side: str = "") -> Count:
        """The work sets for a muscle, a muscle group or any other area, by the kind of count (see `credits`).

        ``hard`` leaves out easy and fast work. One-sided work counts for its side only. Without ``side``, the
        side with more sets is counted.
        """
        asked = (area, count, hard, side)
        found: Count | None = self._answers.get(asked)
        if found is None:
            found = self._answers[asked] = self._count_sets(area, count, hard, side)
        return found

    def _count_sets(self, area: str, count: str, hard: bool, side: str) -> Count:
        if self.one_sided:
            return on_side(_for_area(self.visits, area, count, hard), side)
        if area not in catalogue.groups:
            return Count(_for_area(self.visits, area, count, hard))
        total = self.totals(hard).get(area)
        if total is None:
            return NO_SETS
        low, high = counted(total, INDIRECT_WEIGHT[count])
        return Count.of(low, high, partial(_for_area, self.visits, area, count, hard))

    def totals(self, hard: bool) -> Totals:
        """The sets for each muscle group, all at once; ``hard`` leaves out easy and fast work."""
        asked = "hard totals" if hard else "totals"
        found: Totals | None = self._answers.get(asked)
        if found is None:
            found = self._answers[asked] = self._add_up(hard)
        return found

    def _add_up(self, hard: bool) -> Totals:
        if hard and all(visit.is_all_hard() for visit in self.visits):
            return self.totals(False)
        if self.has_complexes:
            return together([visit.totals(hard) for visit in self.visits])
        return totals_of(
            [
                (group, group_credits_of(group.exercise))
                for visit in self.visits
                for group in visit.own
                if group.exercise is not None and (not hard or group.hard)
            ]
        )

    def brings(self, area: str, count: str = TOTAL, test: Callable[[SetGroup], bool] | None = None) -> bool:
        """Whether any set, hard or not, counts for an area.

        With a test, the set must come from a group of sets that passes it.
        """
        indirect = INDIRECT_WEIGHT[count]
        if test is None and indirect and area in catalogue.credited:
            return area in self._once("brought", self._brought)
        return any(
            group.sets.high and (weight == 1.0 or indirect) and (test is None or test(group))
            for visit in self.visits
            for group, weight in visit.training(area)
        )

    def _brought(self) -> set[str]:
        """The areas that any set counts for, be it in part."""
        return set().union(*[credits_of(lift) for lift in self.lifts() if not isinstance(lift, str)])

    def groups(self) -> list[str]:
        """The muscle groups that get any sets, direct or indirect, in the order of the body."""
        groups: list[str] = self._once("groups", self._groups)
        return groups

    def groups_from(self, least: float, count: str = FRACTIONAL) -> list[str]:
        """The muscle groups whose hard sets come to ``least`` or more, by the high end of a range."""
        if self.one_sided:
            return [group for group in self.groups() if self.sets(group, count).high >= least]
        weight, totals = INDIRECT_WEIGHT[count], self.totals(True).items()
        enough = {group for group, (_, high, _, more) in totals if high + more * weight >= least}
        return [group for group in catalogue.groups if group in enough] if enough else []

    def _groups(self) -> list[str]:
        got = self.totals(False)
        return [group for group in catalogue.groups if group in got]

    def for_actions(self, actions: Iterable[str], *, hard: bool = False, side: str = "") -> Count:
        """Direct sets of joint actions or patterns. An exercise that serves several of them counts once."""
        asked = (tuple(actions), hard, side)
        found: Count | None = self._answers.get(asked)
        if found is None:
            found = self._answers[asked] = self._count_actions(*asked)
        return found

    def _count_actions(self, actions: tuple[str, ...], hard: bool, side: str) -> Count:
        if self.one_sided or self.has_complexes:
            parts = _serving(self.visits, actions, hard)
            return on_side(parts, side) if self.one_sided else Count(parts)
        low: float = 0
        high: float = 0
        found = False
        for serves, sets in self._serves(hard):
            if not serves.isdisjoint(actions):
                low, high, found = low + sets.low, high + sets.high, True
        return Count.of(low, high, partial(_serving, self.visits, actions, hard)) if found else NO_SETS

    def _serves(self, hard: bool) -> list[tuple[frozenset[str], Range]]:
        """The sets of each group of a known exercise, with the joint actions and patterns that it is for."""
        asked = "hard serving" if hard else "serving"
        found: list[tuple[frozenset[str], Range]] | None = self._answers.get(asked)
        if found is None:
            found = self._answers[asked] = self._list_served(hard)
        return found

    def _list_served(self, hard: bool) -> list[tuple[frozenset[str], Range]]:
        return [one for visit in self.visits for one in visit._serves(hard)]

    def all_sets(self, *, hard: bool = False) -> Count:
        """Every work set, whatever it trains."""
        asked = "all hard sets" if hard else "all sets"
        all_sets: Count = self._once(asked, lambda: self.sets_where(lambda group: True, hard=hard))
        return all_sets

    def sets_where(self, test: Callable[[SetGroup], bool], *, hard: bool = False) -> Count:
        """Every work set from groups of sets that pass a test, whatever it trains."""
        return Count(
            [
                CountedSets(visit, group, group.sets)
                for visit in self.visits
                for group in once_each(visit.own)
                if (not hard or group.hard) and test(group)
            ]
        )

    def how_often(self, test: Callable[[SetGroup], bool]) -> int:
        """The number of visits with at least one set from a group of sets that passes a test."""
        return sum(any(group.sets.high and test(group) for group in visit.own) for visit in self.visits)

    def by_exercise(self, test: Callable[[SetGroup], bool]) -> list[Count]:
        """The sets of each known exercise, from groups of sets that pass a test.

        Of one-sided work, the side with more sets is counted.
        """
        groups: dict[Exercise, list[tuple[Visit, SetGroup]]] = {}
        for visit, group in self.entries():
            if group.exercise is not None and test(group):
                groups.setdefault(group.exercise, []).append((visit, group))
        parts = [in_full(of_one) for of_one in groups.values()]
        return [on_side(one, "") if self.one_sided else Count(one) for one in parts]

    def lifts(self) -> dict[Exercise | str, list[SetGroup]]:
        """The groups of sets of each exercise. Groups of 0 sets are left out.

        An unknown exercise stands under its name, folded for comparison.
        """
        lifts: dict[Exercise | str, list[SetGroup]] = self._once("lifts", self._lifts)
        return lifts

    def _lifts(self) -> dict[Exercise | str, list[SetGroup]]:
        found: dict[Exercise | str, list[SetGroup]] = {}
        for _, group in self.entries():
            if group.sets.high:
                found.setdefault(group.exercise or fold(group.name), []).append(group)
        return found

    def unsure(self) -> list[SetGroup]:
        """Groups of sets that cannot be counted, because the exercise or the number of sets is unknown."""
        return [group for visit in self.visits for group in visit.own_unsure]

    def could_hold(self, actions: Collection[str] = (), areas: Collection[str] = ()) -> bool:
        """Whether a group of sets that cannot be counted may train one of these."""
        return self.leaves_open(actions, areas) or bool(self.may_train(actions, areas))

    def leaves_open(self, actions: Iterable[str] = (), areas: Iterable[str] = ()) -> bool:
        """Whether a line trains one of these, if it is an own choice, or nobody knows how much or which."""
        wanted, muscles = tuple(actions), tuple(areas)
        if any(trains(exercise, wanted, muscles) for exercise in self._once("open", self._open)):
            return True
        chosen = any(chosen_for(line, wanted, muscles) for line in self._once("chosen", self._chosen))
        return chosen or are_many(self.may_train(wanted, muscles))

    def _open(self) -> list[Exercise]:
        """What unread sets and slips may be, and what goes over a distance, nobody knows how hard."""
        carried = [one.exercise for _, one in self.entries() if one.exercise and one.is_carried]
        return [*meant_by(self.unsure()), *carried]

    def _chosen(self) -> list[Prescription]:
        """The lines that are no exercise, as what is the athlete's own choice."""
        return [group.prescription for _, group in self.entries() if group.prescription.kind]

    def may_train(self, actions: Collection[str] = (), areas: Collection[str] = ()) -> list[str]:
        """Names of unknown exercises that may train one of these, as far as their words tell."""
        return self.may_be(lambda exercise: trains(exercise, tuple(actions), tuple(areas)))

    def may_be(self, test: Callable[[Exercise], bool]) -> list[str]:
        """Names of unknown exercises that may be one that passes a test, as far as their words tell.

        Slips are left out: it is known what they mean.
        """
        return may_be(self.unsure(), test)


def _for_area(visits: tuple[Visit, ...], area: str, count: str, hard: bool) -> list[CountedSets]:
    """All sets of some visits for an area, whichever side does them."""
    indirect = INDIRECT_WEIGHT[count]
    return [
        CountedSets(visit, group, group.sets if weight == 1.0 else group.sets * indirect)
        for visit in visits
        for group, weight in visit.training(area)
        if (not hard or group.hard) and (weight == 1.0 or indirect)
    ]


def _serving(visits: tuple[Visit, ...], actions: tuple[str, ...], hard: bool) -> list[CountedSets]:
    """The sets of some visits for joint actions or patterns, each set once."""
    return [
        CountedSets(visit, group, group.sets)
        for visit in visits
        for group in visit.serving(actions)
        if not hard or group.hard
    ]


class Visit(Tally):
    """A session on one day of a week. ``day`` is 1 to 7, counted from the start day; 0 if none is stated.

    ``own`` are its groups of sets, ``own_unsure`` those of them that cannot be counted. ``at`` names the
    place, "" where none is written; ``hour`` is the time of day at which it begins, ``minutes`` how long the
    coach says that it goes on; None where that is not written.
    """

    __slots__ = (
        "at",
        "day",
        "hour",
        "minutes",
        "own",
        "own_unsure",
        "programme",
        "session",
    )

    def __init__(
        self,
        programme: ProgrammeHeader,
        session: Session,
        day: int,
        own: tuple[SetGroup, ...],
        at: str = "",
        hour: float | None = None,
        minutes: Range | None = None,
    ) -> None:
        self.one_sided = any(group.side for group in own)
        self.has_complexes = any(is_in_complex(one) for one in own if one.prescription.paired is not None)
        super().__init__((self,))
        self.programme = programme
        self.session = session
        self.day, self.at, self.hour = day, at, hour
        self.minutes = minutes
        self.own = own
        self.own_unsure = [group for group in own if not group.sure]

    def let_go(self) -> None:
        """Drops the kept answers and the link to itself.

        Both point back at the visit. Without them it is freed at once, not by the garbage collector.
        """
        self.visits = ()
        self._answers.clear()

    def is_all_hard(self) -> bool:
        """Whether it holds no easy and no fast work."""
        all_hard: bool | None = self._answers.get("all hard")
        if all_hard is None:
            all_hard = self._answers["all hard"] = all(group.hard for group in self.own)
        return all_hard

    def _list_served(self, hard: bool) -> list[tuple[frozenset[str], Range]]:
        if hard and self.is_all_hard():
            return self._serves(False)
        known = [(group, group.exercise) for group in self.own if group.exercise is not None]
        return [(one.serves, group.sets) for group, one in known if not hard or group.hard]

    def _add_up(self, hard: bool) -> Totals:
        if not self.has_complexes:
            return super()._add_up(hard)
        known = [group.exercise for group in self.own if group.exercise is not None]
        areas = dict.fromkeys(area for exercise in known for area in group_credits_of(exercise))
        trained = [(group, {area: weight}) for area in areas for group, weight in self.training(area)]
        return totals_of([one for one in trained if one[0].hard] if hard else trained)

    def training(self, area: str) -> list[tuple[SetGroup, float]]:
        """The groups of sets that train an area of any kind, with the weight of a set."""
        known = [(group, group.exercise) for group in self.own if group.exercise is not None]
        if area in catalogue.credited:
            found = [(group, weight) for group, one in known if (weight := credits_of(one).get(area))]
        else:
            found = [(group, weight) for group, one in known if (weight := credit(one, area))]
        return once_a_set(found) if self.has_complexes else found

    def serving(self, actions: tuple[str, ...]) -> Sequence[SetGroup]:
        """Groups of sets whose exercise is for one of these joint actions or patterns, each set once."""
        return once_each([group for group in self.own if group.trains(actions)])

    def time(self, *, prepared: bool = False, change_over: Range = CHANGE_OVER) -> SessionTime:
        """How long it takes. ``prepared`` and ``change_over`` (s) replace what is otherwise assumed."""
        named = [one for one in (self.session.preparation, self.session.cool_down) if one]
        around = sum(map(seconds_around, named), NOTHING)
        if prepared and not self.session.preparation:
            around += PREPARATION
        return session_time(self._timed(), around=around, change_over=change_over)

    def time_of(self, line: Prescription) -> SessionTime:
        """How long one of its lines takes. In a superset or circuit, this is the time of the whole."""
        together = [
            timed
            for timed in self._timed()
            if timed[0] is line or (line.paired is not None and timed[0].paired is line.paired)
        ]
        return session_time(together)

    def _timed(self) -> list[Line]:
        lines: dict[Prescription, list[Group]] = {}
        for group in self.own:
            if group.meant:
                timed = (group.work, group.slot, group.seconds_said)
                lines.setdefault(group.prescription, []).append(timed)
        return [(line, tuple(works)) for line, works in lines.items()]
