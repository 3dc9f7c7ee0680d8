"""Sets above a limit: how many, from where, and since which line."""

from __future__ import annotations

from ..lint.counting.credits import DIRECT
from ..lint.engine.limits import Option
from ..lint.findings.finding import Amount
from ..lint.model.quantities import NOTHING
from ..lint.wording.words import counted_noun, plain, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..lint.counting.counts import Count
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.model.sessions import Prescription

WITHOUT_LIMIT = Option(
    "without limit",
    (
        "gluteals",
        "hip abductors",
        "adductors",
        "hip flexors",
        "abdominals",
        "obliques",
        "lower back",
        "forearms",
    ),
    "muscle groups",
    "common practice: compounds feed them all",
)


class Excess:
    """A muscle group over its limit in a week or on a day, by a kind of count.

    Sets on the clock count only where it is known how hard they are: the clock says when to go on, and many
    such sets leave much in reserve (common practice, no source). As many rounds as possible are an estimate,
    and no estimate is held against a limit. Stations of so many seconds, and what is pushed or carried some
    way, are no sets of a muscle. In a session (``stations`` false) no circuit is: its rounds are all of it.
    """

    def __init__(self, tally: Tally, group: str, kind: str, limit: float, *, stations: bool = True) -> None:
        held = is_held_against if stations else is_no_station
        self.group = group
        self.kind = kind
        self.limit = limit
        self.count = tally.sets(group, kind).where(held)
        self.direct = tally.sets(group, DIRECT).where(held).high
        self.sets = self.count.high - limit

    def words(self) -> str:
        """How many sets, for which group, and how many of them direct."""
        direct = self.direct
        if direct == self.count.high:
            return f"{counted_noun(self.count.most, 'direct set')} for the {self.group}"
        share = f"{plain(direct)} direct, the rest indirect" if direct else "all indirect"
        return f"{sets_of(self.count.most)} for the {self.group} ({share})"

    def amount(self) -> Amount:
        """The number of sets and the limit."""
        return Amount(self.count.high, self.limit)

    def line(self) -> Prescription:
        """The line at which the running sum goes past the limit."""
        return crossing(self.count, self.limit)


def is_held_against(entry: SetGroup) -> bool:
    """Whether its sets are held against a limit: their number and how hard they are is known."""
    if are_rounds_estimated(entry) or entry.work.distance is not None or _goes_by_seconds(entry):
        return False
    return not entry.prescription.on_clock or entry.effort.reserve is not None


def _goes_by_seconds(entry: SetGroup) -> bool:
    """Whether it is a station of a circuit that goes on for so many seconds."""
    paired = entry.prescription.paired
    return paired is not None and paired.clock is not None and paired.clock.on is not None


def is_no_station(entry: SetGroup) -> bool:
    """Whether its sets are held against a limit in a session: they are no rounds of a circuit."""
    paired = entry.prescription.paired
    return is_held_against(entry) and (paired is None or paired.kind != "circuit")


def are_rounds_estimated(entry: SetGroup) -> bool:
    """Whether its sets are as many rounds as possible, which nobody has written."""
    paired = entry.prescription.paired
    return paired is not None and paired.clock is not None and paired.clock.counts_rounds


def standing_out(week: Week, count: Callable[[Week], Count], most: float) -> SetGroup | None:
    """The group of sets by which a week stands out from its neighbours in the block; None where none does.

    Neighbours are the nearest weeks before and after with no more than ``most``; the group of sets is the one
    that has grown the most from them.
    """
    block = week.weeks_of_block()
    lower = [one for one in block if count(one).high <= most]
    if not lower:
        return None
    near = min(lower, key=lambda one: abs(one.number - week.number))
    before, now = count(near).by_line(), count(week).by_line()
    grown = {line: sets.high - before.get(line, NOTHING).high for line, sets in now.items()}
    line = max(grown, key=lambda one: grown[one])
    own = [part for part in count(week).parts if part.entry.prescription is line]
    return max(own, key=lambda part: part.sets.high).entry


def crossing(count: Count, limit: float) -> Prescription:
    """The line at which the running sum goes past a limit."""
    total = 0.0
    for part in count.parts:
        total += part.sets.high
        if total > limit:
            return part.entry.prescription
    return count.parts[-1].entry.prescription
