"""What makes a step in load large: from one set to a later one of the same lift."""

from __future__ import annotations

from functools import lru_cache
from math import nan

from ..lint.counting.set_group import WITH_BODY
from ..lint.engine.limits import Condition, Option
from ..lint.wording.words import plain, says
from .shared import may_be_a_kettlebell

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits, Named
    from ..lint.model.quantities import Load
    from ..lint.model.sessions import Work

STEPS = (
    Condition(
        "like repetitions", 1, "repetitions apart at most: sets that can be compared", "common practice"
    ),
    Option(
        "a repetition",
        4,
        "% more for each repetition fewer, done or left in reserve",
        "a trial's protocol: 2 % for half a point of RPE, which is half a repetition (Helms and others 2023)",
    ),
    Option(
        "smallest step",
        {
            "barbell": 5,
            "trap bar": 5,
            "guided bar": 5,
            "dumbbell": 2,
            "kettlebell": 4,
            "machine": 5,
            "cable": 5,
            "plate": 5,
            "sandbag": 5,
        },
        "kg by implement, for each one held",
        "common practice, no source: what gyms stock; a handbook's steps run from 1 to 7 kg (the"
        " larger from memory)",
    ),
    Option(
        "step of both legs",
        10,
        "kg for a squat, hinge or leg press with a bar or machine",
        "common practice, no source: 10 kg where arms take 5",
    ),
    Option(
        "weeks at a load",
        2,
        "weeks at one load at most for which a step may grow",
        "common practice, no source: who keeps a load for two weeks takes the steps of both at once",
    ),
    Option(
        "other step",
        2.5,
        "kg for any other implement",
        "between the handbook's steps of 1 to 2 kg and 2 to 4 kg (Essentials of Strength Training and"
        " Conditioning, read second-hand)",
    ),
)
"""What makes a step in load large, beside the percentage."""

VARIANTS = (
    ("tempo", "slow", "slowly", "eccentric", "eccentrics", "negative", "negatives"),
    ("paused", "pause", "pauses", "count", "dead stop", "dead-start"),
    ("speed", "fast", "dynamic", "explosive", "dynamic effort"),
    ("back-off", "backoff", "back off", "drop"),
    ("light", "lighter", "easy", "technique", "recovery", "volume"),
    ("heavy", "heavier", "top", "max", "opener", "openers"),
    ("deficit", "block", "blocks", "pin", "pins", "partial", "partials", "board", "half", "quarter"),
    ("band", "bands", "banded", "chain", "chains"),
    ("1 1/4", "1 1/2", "one and a quarter", "one and a half"),
    ("close", "narrow", "wide"),
    ("sling", "belt", "beltless", "no belt", "wraps"),
)
"""Words in a name by which one lift is done otherwise, at other loads (common practice, no source)."""

SLOW = 3
"""Seconds of a phase, from which a tempo is slower than lifting as usual (common practice, no source)."""


STEEP = 1.5
"""Times the step that is allowed, from which one is no plan (common practice, no source)."""


class Step:
    """A step in load from one entry to a later one: ``up`` by so much %, where ``most`` would do.

    ``wanted`` is empty where it is small enough.
    """

    def __init__(self, before: SetGroup, up: float, most: float, wanted: str) -> None:
        self.before = before
        self.up = up
        self.most = most
        self.wanted = wanted


def step_between(
    entry: SetGroup,
    earlier: Iterable[tuple[SetGroup, int]],
    limits: Limits,
    longest: Named = "like repetitions",
) -> Step | None:
    """The step from the heaviest like set among earlier ones, where it is too large from each of them.

    Each comes with the weeks that its load has been lifted for. Where no set is alike, a steep step is told
    from longer ones: ``longest`` is the limit for the repetitions that they may have more.
    """
    near = limits.number("like repetitions")
    like: list[Step] = []
    longer: list[Step] = []
    for before, weeks in earlier:
        fewer, unit = repetitions_fewer(before, entry), unit_of_both(before, entry)
        if unit and before.fast_tempo == entry.fast_tempo and -near <= fewer <= limits.number(longest):
            steps = like if fewer <= near else longer
            steps.append(stepped(before, entry, unit, max(fewer, 0.0), limits, weeks))
    steps = like or longer
    if not all(step.wanted and (like or step.up > STEEP * step.most) for step in steps):
        return None
    return min(steps, key=lambda step: step.up, default=None)


def repetitions_fewer(before: SetGroup, entry: SetGroup) -> float:
    """By how many repetitions sets are shorter than earlier ones, by their middles; NaN if not known."""
    was, now = (one.work.reps.a_set() if one.work.reps else None for one in (before, entry))
    return was.middle - now.middle if was and now else nan


def unit_of_both(before: SetGroup, entry: SetGroup) -> str:
    """The unit in which two loads can be compared; empty where there is none."""
    return next((unit for unit in entry.measured if before.measured.get(unit)), "")


def stepped(
    before: SetGroup, entry: SetGroup, unit: str, fewer: float, limits: Limits, weeks: int = 1
) -> Step:
    """The step to a set that is ``fewer`` repetitions shorter, after so many weeks at the load before."""
    was, now = before.measured[unit], entry.measured[unit]
    harder = fewer + _nearer_to_failure(before, entry)
    share = limits.number("step") * max(min(weeks, limits.number("weeks at a load")), 1)
    share += limits.number("a repetition") * harder
    by_share = was * share / 100
    smallest, pieces = smallest_step(entry, limits), load_in_words(entry.work).pieces
    kilograms = limits.number(smallest) * pieces if unit in ("mass", WITH_BODY) else 0.0
    stock = entry.programme.stock(entry.implement) if unit == "mass" else None
    if stock and (following := stock.after(was / pieces)):
        kilograms = max(kilograms, following * pieces - was)
    up = 100 * (now / was - 1)
    most = 100 * max(by_share, kilograms) / was
    if round(now - was - max(by_share, kilograms), 6) <= 0:
        return Step(before, up, most, "")
    if by_share < kilograms:
        allowed = f"{plain(kilograms / pieces)} kg{' each' if pieces > 1 else ''}"
        return Step(before, up, most, _wanted(allowed, limits, of_pieces(smallest, pieces)))
    of: list[tuple[str, Named]] = [("{:%}", "step")]
    if weeks > 1:
        of.append(("{:week}", "weeks at a load"))
    if harder:
        of.append(("{:%} for each repetition fewer", "a repetition"))
    return Step(before, up, most, _wanted(f"{plain(share)} %", limits, *of))


def of_pieces(smallest: Named, pieces: float) -> tuple[str, Named]:
    """How the limit for a step in kg is said of so many things held."""
    return "{:kg}" if pieces == 1 else "{:kg} for each one held", smallest


def _wanted(allowed: str, limits: Limits, *of: tuple[str, Named]) -> str:
    return limits.worked_out(f"at most {allowed} more", *of)


def _nearer_to_failure(before: SetGroup, entry: SetGroup) -> float:
    """By how many repetitions less are left in reserve, where both are written."""
    was, now = before.written_reserve, entry.written_reserve
    return max(was.middle - now.middle, 0.0) if was is not None and now is not None else 0.0


def smallest_step(entry: SetGroup, limits: Limits) -> Named:
    """The limit for a step from one time to the next, in kg; both legs take larger ones than arms."""
    named = smallest_of_implement(entry, limits)
    if entry.implement in LOADED_FOR_LEGS and is_on_both_legs(entry):
        return max("step of both legs", named, key=limits.number)
    return named


def smallest_of_implement(entry: SetGroup, limits: Limits) -> Named:
    """The limit for the smallest step, in kg, of each thing that is held.

    What is usually done with a dumbbell may be done with a kettlebell.
    """
    steps = limits.table("smallest step")
    implement = entry.implement or next((one for one in steps if says((one,), entry.name)), "")
    if implement == "dumbbell" and may_be_a_kettlebell(entry):
        implement = "kettlebell"
    return ("smallest step", implement) if implement in steps else "other step"


LOADED_FOR_LEGS = ("barbell", "trap bar", "guided bar", "machine", "plate")
"""What is loaded for both legs at once."""


def is_on_both_legs(entry: SetGroup) -> bool:
    """Whether both legs lift it together: a squat, a hinge, a press with the legs."""
    exercise = entry.exercise
    if exercise is None or exercise.unilateral or entry.side:
        return False
    return exercise.pattern in ("squat", "hip hinge", "hip thrust")


def is_light(entry: SetGroup, limits: Limits) -> bool:
    """Whether a load is light for the lifter, by the best lift on file, or else by body mass."""
    if entry.percent is not None:
        return entry.percent.high < limits.number("light")
    body_mass, kilograms = entry.programme.body_mass, entry.measured.get("mass")
    if kilograms is None:
        return False
    if kilograms <= FOR_ANYBODY and _is_held_on_one_leg(entry):
        return True
    if body_mass is None:
        return False
    return kilograms < body_mass * (1 if is_on_both_legs(entry) else HALF)


FOR_ANYBODY = 20
"""Kilograms held on one leg that are light, whoever lifts them (common practice, no source)."""
HALF = 0.5
"""Share of body mass below which what arms or one leg lift is light (common practice, no source)."""


def _is_held_on_one_leg(entry: SetGroup) -> bool:
    """Whether one leg works at a time, with something in the hands: held first of all to stand well."""
    exercise = entry.exercise if entry.implement in ("dumbbell", "kettlebell") and entry.compound else None
    return exercise is not None and (
        exercise.pattern == "lunge" or exercise.stance in ("split", "single leg")
    )


def variant_of(entry: SetGroup) -> tuple[bool, ...]:
    """How an entry's lift is done, by its name and tempo: a paused squat is no earlier form of a squat."""
    slow, *others = _said_of(entry.name)
    return (slow or any(phase and phase >= SLOW for phase in entry.work.tempo or ()), *others)


@lru_cache(maxsize=4000)
def _said_of(name: str) -> tuple[bool, ...]:
    return tuple(says(words, name) for words in VARIANTS)


def load_in_words(work: Work) -> Load:
    """The load of a line that has one."""
    assert work.load is not None
    return work.load
