"""How many repetitions a load allows, the 1RM that a set shows, and repetitions in reserve for an RPE.

Loads are in % of 1RM, or in any one unit of mass. Repetitions are to failure unless it says otherwise.
"""

from __future__ import annotations

from bisect import bisect_left
from functools import lru_cache
from math import exp

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

#: (%1RM, mean repetitions to failure, spread between lifters as one SD); nuzzo-2024, read second-hand. One
#: repetition at 100 % is the definition. Its spread of half a repetition is this project's choice, for form
#: on the day.
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

#: Curves of single lifts: (%1RM, mean repetitions); nuzzo-2024, second-hand. Their spread is that of MAIN.
LIFTS: dict[str, tuple[tuple[float, float], ...]] = {
    "bench press": ((70, 14.1), (80, 8.82), (100, 1.0)),
    "leg press": ((70, 19.0), (80, 13.05), (90, 8.69), (100, 1.0)),
}

#: (%1RM, repetitions) as the handbook prints them (nsca-table, second-hand; 67 % from memory). At 60 to 75 %
#: these are fewer than the trials found, so they are only shown and never make a set impossible.
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
        """The mean plus so many standard deviations: repetitions that few lifters manage."""
        return self.mean + deviations * self.spread


def curve_of(exercise: str) -> str:
    """The lift whose curve fits an exercise: "bench press", "leg press", or "" for the main curve.

    The end of the name decides: a single-leg leg press is a leg press, a leg press calf raise is not.
    """
    named = exercise.partition(" with ")[0]
    return next((lift for lift in LIFTS if named.endswith(lift)), "")


def possible(percent: float, lift: str = "") -> Repetitions | None:
    """Repetitions to failure at a load in %1RM, on the curve of a lift (see curve_of) or the main curve.

    None below 60 %, where the table ends, and above 100 %. Below its own rows, the curve of a lift keeps its
    distance from the main curve.
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

    100 for one repetition. None for less than one, and for more than the curve allows at 60 %.
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
    """Repetitions for a load by the handbook, with straight lines between rows. None outside 65-100 %."""
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
    """1RM after brzycki-1993. ValueError from 37 repetitions on, where the equation breaks down."""
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
    """1RM after lander-1985. ValueError from about 37.9 repetitions on, where it breaks down."""
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
    """For one repetition the load itself, which is the 1RM; else 0. ValueError if no equation can be used."""
    if load <= 0:
        raise ValueError("a load above nothing is wanted")
    if not 1 <= repetitions < below:
        raise ValueError(f"{repetitions:g} repetitions are outside the equation")
    return load if repetitions == 1 else 0.0


def reserve_of(rpe: float) -> float | None:
    """Repetitions in reserve at an RPE (zourdos-2016): none at 10, one at 9; half points from memory.

    None below 5, where the scale no longer counts repetitions.
    """
    return 10 - rpe if 5 <= rpe <= 10 else None


def rpe_of(reserve: float) -> float | None:
    """The RPE for up to 5 repetitions in reserve (zourdos-2016). None for more."""
    return 10 - reserve if 0 <= reserve <= 5 else None
