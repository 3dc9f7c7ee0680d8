"""How hard a set is: repetitions left in reserve, as one range that is worked out here and nowhere else.

What the coach wrote comes first: RIR, then RPE as the published scale reads it (zourdos-2016). Else it
follows from repetitions at a repetition maximum, or from repetitions at a load in % of 1RM by the curve of
the lift (nuzzo-2024), one standard deviation to either side. Else it is unknown.
"""

from __future__ import annotations

from ..body import curves
from ..model.quantities import NOTHING, Range

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..model.sessions import Work

EASY_ABOVE = 5
"""A set that surely leaves more repetitions in reserve than this is not a hard set."""

FAST_KINDS = ("plyometric", "ballistic")
"""Kinds of exercise done for speed, of which the curves of repetitions know nothing. Lifts and throws among
them are hard sets only where a written effort or an RM says so (common practice, no source)."""

NEVER_HARD = ("plyometric", "endurance")
"""Kinds of exercise whose sets never count as hard ones: jumps, rowing (common practice, no source)."""

NO_LIFTS = (*FAST_KINDS, *NEVER_HARD)
"""Kinds of exercise whose load and order say nothing of how a lift is trained."""


class Effort:
    """How hard a group of sets is.

    - ``reserve``: repetitions left in reserve, from the fewest to the most; None if unknown.
    - ``ground``: where it comes from: ``rir``, ``rpe``, ``rm`` or ``load``; empty if unknown.
    - ``failing``: whether all that is asked leaves no repetition: RIR 0, RPE 10, or none worked out.
    - ``light``: whether it is easy by an RPE so low that the scale counts no repetitions.
    """

    __slots__ = ("failing", "ground", "light", "reserve")

    def __init__(
        self, ground: str, reserve: Range | None, *, failing: bool = False, light: bool = False
    ) -> None:
        self.ground = ground
        self.reserve = reserve
        self.failing = failing
        self.light = light

    @property
    def written(self) -> bool:
        """Whether the coach wrote it, as RIR or RPE; else it was worked out, or is unknown."""
        return self.ground in ("rir", "rpe")

    def within(self, work: Work, together: float) -> Effort:
        """The same within a complex of this many repetitions: the other lifts may take as much as its own."""
        own = work.reps.a_set() if work.reps else None
        if self.reserve is None or own is None:
            return self
        least = max(self.reserve.low - max(together - own.high, 0.0), 0.0)
        return Effort(self.ground, Range(least, self.reserve.high), failing=self.failing, light=self.light)

    @property
    def easy(self) -> bool:
        """Whether the sets surely leave more in reserve than hard sets do."""
        return self.light if self.reserve is None else self.reserve.low > EASY_ABOVE


def written(work: Work) -> Effort | None:
    """What RIR or RPE say; RIR wins. None where neither counts repetitions."""
    if work.rir is not None:
        return Effort("rir", work.rir, failing=work.rir.high == 0)
    left = reserve_of(work.rpe)
    return None if work.rpe is None or left is None else Effort("rpe", left, failing=work.rpe.low >= 10)


def reserve_of(rpe: Range | None) -> Range | None:
    """Repetitions in reserve at an RPE, by the part of it that the published scale counts; None without."""
    if rpe is None or rpe.high < curves.RPE_SCALE[0][0]:
        return None
    ends = [curves.reserve_of(min(max(end, curves.RPE_SCALE[0][0]), 10)) for end in (rpe.low, rpe.high)]
    return Range(ends[1][0], ends[0][1])


def rpe_of(reserve: Range) -> Range | None:
    """The RPE to write for repetitions in reserve, in whole points; None beyond what the scale counts."""
    from math import ceil, floor

    least, most = floor(reserve.low), ceil(reserve.high)
    if most > 6:
        return None
    return Range(5 if most > 3 else 10 - most, max(10 - least, 6))


def at_rm(work: Work) -> Effort | None:
    """What repetitions at a repetition maximum leave: 6 at 8RM leave 2; without a number they are all."""
    load = work.load
    if load is None or load.kind != "rm":
        return None
    sets = each_set(work, load.values)
    if not sets:
        return _worked_out("rm", work, 0.0, 0.0)
    return _worked_out(
        "rm", work, min(rm.low - done.high for done, rm in sets), max(rm.high - done.low for done, rm in sets)
    )


def at_load(work: Work, sets: Sequence[tuple[Range, Range]], lift: str) -> Effort | None:
    """What the curve of a lift (see `curves.curve_of`) says of repetitions at loads in % (see `each_set`).

    The low end is that of the hardest set, tired by those before it, for a lifter one standard deviation
    below the mean, by the lower of the lift's curve and the main one; the high end that of the easiest,
    fresh, for one as far above. Below 60 %, where the curve ends, lifters manage at least what they manage
    there. A load with no upper end may leave none. None where nothing is known, and above 100 %.
    """
    low, high = [], []
    for (reps, percent), number in zip(sets, numbers_of(work, sets), strict=True):
        light, heavy = curves.at_least(percent.low, lift), curves.fewest(percent.high, lift)
        if light is None or heavy is None:
            return None
        low.append(heavy.beyond(-1) - reps.high * curves.tired(number))
        high.append(light.beyond(1) - reps.low)
    if not sets:
        return None
    least = 0.0 if work.load is not None and work.load.rough == "from" else min(low)
    return _worked_out("load", work, least, max(high))


def unknown(work: Work) -> Effort:
    """What is left to say where nothing else says how hard the sets are."""
    return Effort("", None, light=work.rpe is not None)


def _worked_out(ground: str, work: Work, low: float, high: float) -> Effort:
    """``low`` and ``high`` may be below 0: more is asked than there is. The last of open sets leaves none."""
    least = 0.0 if work.reps is not None and work.reps.open_last else max(low, 0.0)
    return Effort(ground, Range(least, max(high, least)), failing=high < 1)


def each_set(work: Work, loads: Sequence[Range]) -> list[tuple[Range, Range]]:
    """Repetitions and load of each set; once where all are alike, none where either is not known."""
    reps = work.reps.sets if work.reps else ()
    if not reps or not loads:
        return []
    number = max(len(reps), len(loads))
    return [(reps[min(at, len(reps) - 1)], loads[min(at, len(loads) - 1)]) for at in range(number)]


def numbers_of(work: Work, sets: Sequence[tuple[Range, Range]]) -> Sequence[int]:
    """Which set each of these is, from 1; like sets, which stand here once, count as their last."""
    if len(sets) != 1:
        return range(1, len(sets) + 1)
    return (max(int((work.sets or NOTHING).high), 1),)
