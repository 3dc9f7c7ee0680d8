"""Sets for every muscle and muscle group at once."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from .set_group import SetGroup

    Totals = dict[str, "Total"]
    """By the name of the muscle or muscle group; what no exercise trains is left out."""


class Total:
    """The low and the high end of the direct sets for an area, and of the indirect ones, before they are weighted."""

    __slots__ = ("helping_high", "helping_low", "high", "low")

    def __init__(self) -> None:
        self.low: float = 0
        self.high: float = 0
        self.helping_low: float = 0
        self.helping_high: float = 0

    def counted(self, indirect: float) -> tuple[float, float]:
        """Both ends of the number of sets, an indirect one counted as ``indirect``."""
        return self.low + self.helping_low * indirect, self.high + self.helping_high * indirect


def totals_of(groups: Iterable[tuple[SetGroup, Mapping[str, float]]]) -> Totals:
    """The totals of groups of sets, each with how much one set of it counts for each area: 1 direct, 0.5 indirect."""
    totals: Totals = {}
    for group, credited in groups:
        low, high = group.sets.low, group.sets.high
        for area, weight in credited.items():
            total = totals.get(area)
            if total is None:
                total = totals[area] = Total()
            if weight == 1.0:
                total.low += low
                total.high += high
            else:
                total.helping_low += low
                total.helping_high += high
    return totals


def together(several: list[Totals]) -> Totals:
    """The sums of totals."""
    if len(several) == 1:
        return several[0]
    sums: Totals = {}
    for totals in several:
        for area, one in totals.items():
            total = sums.get(area)
            if total is None:
                total = sums[area] = Total()
            total.low += one.low
            total.high += one.high
            total.helping_low += one.helping_low
            total.helping_high += one.helping_high
    return sums
