"""How a week, or any other tally, differs from an earlier one."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .set_group import SetGroup
    from .tally import Tally


class Change:
    """How a week, or any other tally, differs from an earlier one.

    ``sets``, ``repetitions`` and ``load`` are in % of the earlier value. ``load`` is the mean over the
    exercises in both tallies whose loads can be compared. ``reserve`` is the change in repetitions in
    reserve, the mean over the exercises in both: above 0 it has become easier. Each is None if it cannot be
    known.
    """

    __slots__ = ("load", "repetitions", "reserve", "sets")

    def __init__(self, before: Tally, after: Tally) -> None:
        was, now = before.all_sets(), after.all_sets()
        self.sets = _in_percent(now.middle, was.middle)
        self.repetitions = _in_percent(now.repetitions().middle, was.repetitions().middle)
        earlier = before.lifts()
        both = [(earlier[name], later) for name, later in after.lifts().items() if name in earlier]
        self.load = _mean([_load_change(*pair) for pair in both])
        self.reserve = _mean([_reserve_change(*pair) for pair in both])


def _in_percent(now: float, was: float) -> float | None:
    return round(100 * now / was, 6) if was else None


def _mean(numbers: Iterable[float | None]) -> float | None:
    known = [number for number in numbers if number is not None]
    return sum(known) / len(known) if known else None


def _load_change(before: list[SetGroup], after: list[SetGroup]) -> float | None:
    for unit in ("mass", "share", "percent"):
        was, now = (_mean([group.measured.get(unit) for group in groups]) for groups in (before, after))
        if was and now is not None:
            return _in_percent(now, was)
    return None


def _reserve_change(before: list[SetGroup], after: list[SetGroup]) -> float | None:
    was, now = (
        _mean([group.reserve.middle if group.reserve else None for group in groups])
        for groups in (before, after)
    )
    return None if was is None or now is None else now - was
