"""How many repetitions a load allows, what a set says about the 1RM, and RPE against repetitions in reserve.

Loads are in % of 1RM or in any one unit of mass; repetitions are to failure unless said otherwise.
"""

from __future__ import annotations

from bisect import bisect_left
from functools import lru_cache
from math import exp

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

#: Repetitions to failure by %1RM: mean and spread between lifters (one SD); nuzzo-2024, read second-hand. At
#: 100 % there is one repetition by definition; half a repetition of spread there is a choice of this project,
#: for form on the day.
MAIN: tuple[tuple[float, float, float], ...] = (
    (60, 19.53, 4.37),
    (65, 17.11, 3.80),
    (70, 14.80, 3.31),
    (75, 12.37, 2.88),
    (80, 9.75, 2.51),
    (85, 7.15, 2.19),
    (90, 4.94, 1.90),
    (100, 1.0, 0.5),
)

#: The curves of single lifts: mean repetitions only; the spread is the main one's (nuzzo-2024, second-hand).
LIFTS: dict[str, tuple[tuple[float, float], ...]] = {
    "bench press": ((70, 14.1), (80, 8.82), (100, 1.0)),
    "leg press": ((70, 19.0), (80, 13.05), (90, 8.69), (100, 1.0)),
}

#: Repetitions by %1RM as the handbook prints them (nsca-table, second-hand; 67 % from memory). Fewer
#: repetitions than the trials at 60 to 75 %: for display, never for calling a set impossible.
HANDBOOK: tuple[tuple[float, int], ...] = (
    (65, 15),
    (67, 12),
    (70, 11),
    (75, 10),
    (77, 9),
    (80, 8),
    (83, 7),
    (85, 6),
    (87, 5),
    (90, 4),
    (93, 3),
    (95, 2),
    (100, 1),
)

LOWEST = MAIN[0][0]


class Repetitions:
    """Repetitions that a load allows: ``mean`` and ``spread`` (one SD between lifters)."""

    __slots__ = ("mean", "spread")

    def __init__(self, mean: float, spread: float) -> None:
        self.mean = mean
        self.spread = spread

    def beyond(self, deviations: float) -> float:
        """The mean and so many standard deviations: what few lifters manage."""
        return self.mean + deviations * self.spread


def curve_of(exercise: str) -> str:
    """The lift whose curve fits an exercise of this name: "bench press", "leg press" or "" (the main one).

    What the name ends with decides: a single-leg leg press is one, a leg press calf raise is none.
    """
    named = exercise.partition(" with ")[0]
    return next((lift for lift in LIFTS if named.endswith(lift)), "")


def possible(percent: float, lift: str = "") -> Repetitions | None:
    """Repetitions to failure at a load in %1RM, on the curve of a lift (see curve_of) or the main one.

    None below 60 %, where the table ends, and above 100 %. Below the rows of a single lift its curve runs
    beside the main one.
    """
    if not LOWEST <= percent <= 100:
        return None
    loads = [row[0] for row in MAIN]
    mean = _between(percent, loads, [row[1] for row in MAIN])
    spread = _between(percent, loads, [row[2] for row in MAIN])
    if lift:
        rows = LIFTS[lift]
        own_loads, own_means = [row[0] for row in rows], [row[1] for row in rows]
        if percent >= own_loads[0]:
            mean = _between(percent, own_loads, own_means)
        else:
            mean += own_means[0] - _between(own_loads[0], loads, [row[1] for row in MAIN])
    return Repetitions(mean, spread)


@lru_cache(maxsize=512)
def percent_for(repetitions: float, lift: str = "") -> float | None:
    """The load in %1RM at which the mean lifter manages so many repetitions: what "10RM" is in %.

    100 for one repetition; None for fewer, and for more than the curve holds at 60 %.
    """
    low, high = LOWEST, 100.0
    easiest = possible(low, lift)
    if easiest is None or not 1 <= repetitions <= easiest.mean:
        return None
    for _ in range(40):
        middle = (low + high) / 2
        held = possible(middle, lift)
        if held is not None and held.mean >= repetitions:
            low = middle
        else:
            high = middle
    return round(low, 6)


def handbook_repetitions(percent: float) -> float | None:
    """Repetitions that the handbook prints for a load, straight lines between rows; None outside 65-100 %."""
    loads = [row[0] for row in HANDBOOK]
    if not loads[0] <= percent <= loads[-1]:
        return None
    return _between(percent, loads, [row[1] for row in HANDBOOK])


def _between(x: float, xs: Sequence[float], ys: Sequence[float]) -> float:
    right = bisect_left(xs, x)
    if xs[right] == x:
        return ys[right]
    part = (x - xs[right - 1]) / (xs[right] - xs[right - 1])
    return ys[right - 1] + part * (ys[right] - ys[right - 1])


def epley(load: float, repetitions: float) -> float:
    """1RM after epley-1985."""
    return _one(load, repetitions) or load * (1 + repetitions / 30)


def brzycki(load: float, repetitions: float) -> float:
    """1RM after brzycki-1993; ValueError at 37 repetitions or more, where the equation has its pole."""
    return _one(load, repetitions, below=37) or load * 36 / (37 - repetitions)


def lombardi(load: float, repetitions: float) -> float:
    """1RM after lombardi-1989."""
    return _one(load, repetitions) or load * repetitions**0.10


def mayhew(load: float, repetitions: float) -> float:
    """1RM after mayhew-1992."""
    return _one(load, repetitions) or 100 * load / (52.2 + 41.9 * exp(-0.055 * repetitions))


def oconnor(load: float, repetitions: float) -> float:
    """1RM after oconnor-1989."""
    return _one(load, repetitions) or load * (1 + 0.025 * repetitions)


def wathan(load: float, repetitions: float) -> float:
    """1RM after wathan-1994."""
    return _one(load, repetitions) or 100 * load / (48.8 + 53.8 * exp(-0.075 * repetitions))


def lander(load: float, repetitions: float) -> float:
    """1RM after lander-1985; ValueError from about 37.9 repetitions on, where the equation has its pole."""
    return _one(load, repetitions, below=101.3 / 2.67123) or 100 * load / (101.3 - 2.67123 * repetitions)


EQUATIONS: dict[str, Callable[[float, float], float]] = {
    "epley-1985": epley,
    "brzycki-1993": brzycki,
    "lombardi-1989": lombardi,
    "mayhew-1992": mayhew,
    "oconnor-1989": oconnor,
    "wathan-1994": wathan,
    "lander-1985": lander,
}


def _one(load: float, repetitions: float, below: float = float("inf")) -> float:
    """The load at one repetition, the 1RM by definition; else 0. ValueError where no equation goes."""
    if load <= 0:
        raise ValueError("a load above nothing is wanted")
    if not 1 <= repetitions < below:
        raise ValueError(f"{repetitions:g} repetitions are outside the equation")
    return load if repetitions == 1 else 0.0


def reserve_of(rpe: float) -> float | None:
    """Repetitions in reserve at an RPE (zourdos-2016): 10 is none, 9 is one; half points from memory. None
    below 5, where the scale no longer counts repetitions.
    """
    return 10 - rpe if 5 <= rpe <= 10 else None


def rpe_of(reserve: float) -> float | None:
    """The RPE of so many repetitions in reserve, up to 5; None beyond (zourdos-2016)."""
    return 10 - reserve if 0 <= reserve <= 5 else None
