"""Repetitions that a load allows, the 1RM estimated from a set, and RPE against repetitions in reserve.

Loads are in % of 1RM, or in any one unit of mass. Repetitions are to failure unless stated otherwise.
"""

from __future__ import annotations

from bisect import bisect_left
from functools import lru_cache
from math import exp

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

#: Repetitions to failure (nuzzo-2024, read second-hand; counted from 60 to 90 %). Each row: %1RM, mean,
#: spread between lifters (one SD). At 100 % there is one repetition by definition. Two things are choices of
#: this project: the straight line from 90 to 100 % (at 95 % it gives three repetitions, the handbook two),
#: and half a repetition of spread at 100 %, to allow for form on the day.
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

#: The curves of single lifts (nuzzo-2024, read second-hand). Each row: %1RM, mean. The spread is MAIN's.
#: The last load counted is 80 % for the bench press and 90 % for the leg press; above it runs the same line.
LIFTS: dict[str, tuple[tuple[float, float], ...]] = {
    "bench press": ((70, 14.1), (80, 8.82), (100, 1.0)),
    "leg press": ((70, 19.0), (80, 13.05), (90, 8.69), (100, 1.0)),
}

#: Repetitions as the handbook prints them (nsca-table, read second-hand; 67 % from memory). Each row: %1RM,
#: repetitions. At 60 to 75 % they are fewer than in the trials. So they are for display only: no set is
#: called impossible because of them.
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
    """The repetitions that a load allows: ``mean`` and ``spread`` (one SD between lifters)."""

    __slots__ = ("mean", "spread")

    def __init__(self, mean: float, spread: float) -> None:
        self.mean = mean
        self.spread = spread

    def beyond(self, deviations: float) -> float:
        """The mean plus this many standard deviations: a number that few lifters manage."""
        return self.mean + deviations * self.spread


def curve_of(exercise: str) -> str:
    """The lift whose curve fits an exercise of this name: "bench press", "leg press" or "" (the main curve).

    The end of the name decides, any " with ..." left out. So a single-leg leg press is a leg press, and a leg
    press calf raise is not.
    """
    named = exercise.partition(" with ")[0]
    return next((lift for lift in LIFTS if named.endswith(lift)), "")


def possible(percent: float, lift: str = "") -> Repetitions | None:
    """Repetitions to failure at a load in %1RM, by the curve of a lift (see `curve_of`) or the main curve.

    None below 60 %, where the table ends, and above 100 %. Below its first row, the curve of a lift runs
    parallel to the main curve.
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
    """The load in %1RM at which the mean lifter manages this many repetitions: for 10, the load of "10RM".

    100 for one repetition. None for fewer than one, and for more than the curve allows at 60 %.
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
    """The handbook's repetitions at a load in %1RM, in straight lines between rows; None outside 65-100 %."""
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
    """1RM after brzycki-1993. ValueError from 37 repetitions on, where the divisor is not above 0."""
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
    """1RM after lander-1985. ValueError from about 37.9 repetitions on, where the divisor is not above 0."""
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
    """The load at one repetition (the 1RM by definition), else 0. ValueError outside the equation."""
    if load <= 0:
        raise ValueError("a load above nothing is wanted")
    if not 1 <= repetitions < below:
        raise ValueError(f"{repetitions:g} repetitions are outside the equation")
    return load if repetitions == 1 else 0.0


def reserve_of(rpe: float) -> float | None:
    """Repetitions in reserve at an RPE (zourdos-2016; half points from memory): 0 at RPE 10, 1 at RPE 9.

    None below 5, where the scale no longer counts repetitions, and above 10, where it ends.
    """
    return 10 - rpe if 5 <= rpe <= 10 else None


def rpe_of(reserve: float) -> float | None:
    """The RPE at this many repetitions in reserve, from 0 to 5; None outside of that (zourdos-2016)."""
    return 10 - reserve if 0 <= reserve <= 5 else None
