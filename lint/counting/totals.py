"""Sets for every muscle group at once."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from .set_group import SetGroup

    Total = list[float]
    """Both ends of the number of direct sets for a group; then of the indirect ones, not yet weighted."""

    Totals = dict[str, Total]
    """By the name of the muscle group; what no exercise trains is left out."""


def counted(total: Total, indirect: float) -> tuple[float, float]:
    """Both ends of the number of sets, an indirect one counted as ``indirect``."""
    low, high, helping_low, helping_high = total
    return low + helping_low * indirect, high + helping_high * indirect


def totals_of(groups: Iterable[tuple[SetGroup, Mapping[str, float]]]) -> Totals:
    """The totals of groups of sets; each comes with what a set of it counts for each muscle group."""
    totals: Totals = {}
    for group, credited in groups:
        low, high = group.sets.low, group.sets.high
        for area, weight in credited.items():
            total = totals.get(area)
            if total is None:
                total = totals[area] = [0, 0, 0, 0]
            if weight == 1.0:
                total[0] += low
                total[1] += high
            else:
                total[2] += low
                total[3] += high
    return totals


def together(several: list[Totals]) -> Totals:
    """The sums of totals, of one at the least."""
    first, *others = several
    sums = {area: list(total) for area, total in first.items()}
    for totals in others:
        for area, (low, high, helping_low, helping_high) in totals.items():
            known = sums.get(area)
            if known is None:
                sums[area] = [low, high, helping_low, helping_high]
            else:
                known[0] += low
                known[1] += high
                known[2] += helping_low
                known[3] += helping_high
    return sums
