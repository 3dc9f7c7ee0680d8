"""Sets above a limit: how many, from where, and since which line."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.credits import DIRECT
from ..lint.engine.limits import Option
from ..lint.wording.words import plain, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lint.counting.tally import Count, Tally
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
    """A muscle group over its limit in a week or on a day.

    ``bound`` is that limit in words, ``mean`` what a week of a full turn holds in the mean.
    """

    def __init__(
        self, tally: Tally, group: str, count: Count, limit: float, bound: str = "", mean: float = 0.0
    ) -> None:
        self.group = group
        self.count = count
        self.limit = limit
        self.bound = bound
        self.mean = mean
        self.sets = count.high - limit
        self.direct = tally.sets(group, DIRECT).high

    def words(self) -> str:
        """How many sets, for which group, and how many of them direct."""
        if self.direct == self.count.high:
            share = "all direct"
        else:
            share = (
                f"{plain(self.direct)} direct, the rest as a helper" if self.direct else "as a helper only"
            )
        return f"{sets_of(self.count.most)} for the {self.group} ({share})"

    def line(self) -> Prescription:
        """The line at which the running sum goes past the limit."""
        return crossing(self.count, self.limit)


def group_of(name: str) -> str:
    """The muscle group that a coach's word stands for; the word itself where it stands for anything else."""
    muscles = set(catalogue.area(name) or ())
    return next((group for group, members in catalogue.groups.items() if set(members) == muscles), name)


def crossing(count: Count, limit: float) -> Prescription:
    """The line at which the running sum goes past a limit."""
    total = 0.0
    for part in count.parts:
        total += part.sets.high
        if total > limit:
            return part.entry.prescription
    return count.parts[-1].entry.prescription
