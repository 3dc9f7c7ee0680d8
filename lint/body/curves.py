"""Repetitions that a load allows, the 1RM estimated from a set, and the published scale of effort.

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
#: on which lifters differ less and less, since at 100 % nobody has a second one; and half a repetition of
#: spread at its end, to allow for form on the day.
MAIN: tuple[tuple[float, float, float], ...] = (
    (60, 19.53, 4.37),
    (65, 17.11, 3.80),
    (70, 14.80, 3.31),
    (75, 12.37, 2.88),
    (80, 9.75, 2.51),
    (85, 7.15, 2.19),
    (90, 4.94, 1.90),
    (97.5, 1.985, 0.5),
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

#: What a repetition takes out of a lifter in the first set, the second and so on, in repetitions of the
#: first; the last holds for all further sets. In bench press tests repetitions fell from set to set even
#: after minutes of rest (richmond-2004, willardson-2006: abstracts, no counts). How far is common practice,
#: no source: after two or three minutes of rest about one repetition in five, then less and less each time.
FATIGUE = (1.0, 1.2, 1.3, 1.35, 1.4)

#: The published scale of effort (zourdos-2016; 10, 9 and 8 as printed, the rest from memory). Each row: RPE,
#: fewest and most repetitions in reserve. At 9.5 none is left, but a little more load would have gone.
#: Below 5 the scale counts no repetitions: 3 to 4 are light, 1 to 2 hardly any effort.
RPE_SCALE: tuple[tuple[float, int, int], ...] = (
    (5, 4, 6),
    (6, 4, 6),
    (7, 3, 3),
    (7.5, 2, 3),
    (8, 2, 2),
    (8.5, 1, 2),
    (9, 1, 1),
    (9.5, 0, 0),
    (10, 0, 0),
)


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


@lru_cache(maxsize=512)
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


def at_least(percent: float, lift: str = "") -> Repetitions | None:
    """Repetitions to failure as in `possible`; below 60 % those at 60 %, since a lifter has no fewer there.

    None above 100 %.
    """
    return possible(max(percent, LOWEST), lift)


def fewest(percent: float, lift: str = "") -> Repetitions | None:
    """The same by the curve of a lift or the main one, whichever gives fewer: what is surely possible.

    The mean of the leg press is known only from 14 to 26 at 70 % (nuzzo-2024), its 95 % interval.
    """
    own, main = at_least(percent, lift), at_least(percent)
    return own if own is None or main is None or own.mean <= main.mean else main


def tired(number: int) -> float:
    """What a repetition of a set takes out of a lifter, in repetitions of a first set; sets count from 1."""
    return FATIGUE[min(number, len(FATIGUE)) - 1]


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


def reserve_of(rpe: float) -> tuple[int, int]:
    """Fewest and most repetitions in reserve at an RPE from 5 to 10: ``(1, 2)`` at 8.5 (zourdos-2016).

    Between two points that the scale prints they are those of both. ValueError outside the scale.
    """
    if not RPE_SCALE[0][0] <= rpe <= RPE_SCALE[-1][0]:
        raise ValueError(f"the scale counts no repetitions at RPE {rpe:g}")
    above = next(row for row in RPE_SCALE if row[0] >= rpe)
    below = next(row for row in reversed(RPE_SCALE) if row[0] <= rpe)
    return above[1], below[2]
