"""Loads that an implement cannot be set to, or does not suit."""

from __future__ import annotations

from ..lint.body import curves
from ..lint.body.equipment import LOADED, USUAL_STEPS
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import NOTHING
from ..lint.wording.words import counted_noun, plain, says
from .offers import writing, writing_number
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


# What can be set, and with what


WITH_PLATES = ("barbell", "trap bar", "guided bar")

FINE_STEP = 1.25
"""kg between loads on a bar with a pair of discs of 0.625 kg (common practice, no source)."""

SMALL_PLATES = (
    "fractional plates", "fractional plate", "fractional discs", "fractional disc", "fractionals",
    "micro plates", "micro plate", "microplates", "microplate", "micro discs", "change plates",
    "change discs", "small discs", "small plates", "0.625", "0.5 kg discs", "0.25",
)  # fmt: skip
"""Words for plates that are smaller than those of every gym."""

SMALLEST = 0.25
"""kg from one load to the next with such plates: a pair of 0.125 kg (common practice, no source)."""


@rule(
    "load-not-settable",
    family="load",
    severity="note",
    confidence="common practice",
    why="A load that no plates or bells make is rounded on the spot, by everybody in their own way.",
    sources=(),
    options=(
        Option(
            "steps",
            {
                "barbell": 0.5,
                "trap bar": 0.5,
                "guided bar": 0.5,
                "dumbbell": 0.5,
                "kettlebell": 0.5,
                "plate": 0.25,
            },
            "kg from one load to the next, by implement",
            "common practice: the smallest plates in use weigh 0.25 kg; write your own steps",
        ),
    ),
    needs=("load",),
)
def load_not_settable(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """A load in kg that the implement cannot be set to.

    Takes each kg of a line, one bell of a pair at a time; wants a whole number of the implement's steps. By
    default only odd fractions such as 61.3 kg are spoken of, and on a bar multiples of 1.25 kg are as good
    (a pair of 0.625 kg discs); a team whose bars go up by 2.5 kg writes so. A load that follows from a factor
    or a step is rounded as a matter of course. Who has fractional plates on
    their list goes up by 0.25 kg.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 61.3 kg}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 61.5 kg}
    """
    load = entry.work.load
    implement = entry.implement
    step = limits.table("steps").get(implement)
    if load is None or not step or load.unit != "kg":
        return
    has_small = implement in WITH_PLATES and says(SMALL_PLATES, *(entry.programme.equipment or ()))
    step = SMALLEST if has_small else step
    usual = step
    if limits.is_default("steps") and not has_small:
        usual = FINE_STEP if implement in WITH_PLATES else USUAL_STEPS.get(implement, step)
    odd = [
        value
        for one in load.values
        for value in (one.low, one.high)
        if _between_steps(value, step) and _between_steps(value, usual) and _is_written(value, entry)
    ]
    if not odd:
        return
    first = abs(odd[0])
    below = first // usual * usual
    yield found(
        entry.work.places["load"],
        f"{capital(entry.name)}: no {implement} comes to {plain(first)} kg.",
        wanted=limits.words("steps of {:kg}", ("steps", implement))
        if not limits.is_default("steps") and not has_small
        else f"a load that there is, such as in steps of {plain(usual)} kg",
        change=f"Write {f'{plain(below)} or ' if below else ''}{plain(below + usual)} kg.",
        where=line_name(entry.prescription),
        edits=writing_number(
            entry.work.places["load"], first, [one for one in (below, below + usual) if one]
        ),
        group=entry.name,
        amount=Amount(first, below + usual, "kg"),
    )


def _is_written(kilograms: float, entry: SetGroup) -> bool:
    """Whether the coach wrote the number, with a point or a comma."""
    said = entry.work.places["load"].excerpt
    number = plain(abs(kilograms))
    return number in said or number.replace(".", ",") in said


def _between_steps(kilograms: float, step: float) -> bool:
    return not round(abs(kilograms) / step, 2).is_integer()


@rule(
    "light-implement-heavy",
    family="load",
    severity="note",
    confidence="common practice",
    why="Coaches use dumbbells for hinges of many repetitions; heavy hinges are easier to load and to hold"
    " with a bar. Bells, bands and cables are treated like dumbbells here.",
    sources=("cp-implement",),
    options=(
        Option(
            "implements",
            ("dumbbell", "kettlebell", "band", "cable"),
            "light implements",
            "common practice, no source: dumbbells; bells, bands and cables are treated alike by choice",
        ),
        Option(
            "fewest",
            6,
            "repetitions a set, the high end of a range",
            "common practice, no source: our choice",
        ),
    ),
    off=True,
)
def light_implement_heavy(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """A heavy hinge with a light implement.

    Looks at hinges with dumbbells, bells, bands or cables; wants 6 repetitions or more. Off until a team asks
    for it.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: dumbbell Romanian deadlift, sets: 3, reps: 4-5}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: dumbbell Romanian deadlift, sets: 3, reps: 8-10}
    """
    reps = entry.a_set
    if reps is None or not entry.hard or not entry.trains(("hip hinge",)):
        return
    if entry.implement not in limits.names("implements") or reps.high >= limits.number("fewest"):
        return
    yield found(
        entry.prescription.place,
        f"Heavy for a {entry.implement}: {entry.name} for {counted_noun(str(reps), 'repetition')}.",
        wanted=limits.words("{:repetition} or more", "fewest"),
        change="Use a bar for the heavy sets, or a lighter load for more repetitions.",
        where=line_name(entry.prescription),
        group=entry.name,
        amount=Amount(reps.high, limits.number("fewest"), "repetitions"),
    )


@rule(
    "stiff-hinge-too-heavy",
    family="load",
    severity="note",
    confidence="common practice",
    why="Past what the hamstrings can own, the back and the gluteals do a stiff-leg hinge; control and range"
    " come before load.",
    sources=("cp-heavy-hinge",),
    options=(
        Option(
            "fewest",
            4,
            "repetitions that the load must allow",
            "common practice, no source: our choice of what the hamstrings can own",
        ),
        Condition(
            "straight",
            30,
            "degrees of knee bend up to which a hinge is stiff-legged",
            "no source: our choice; a Romanian deadlift bends the knee by about 15 degrees",
        ),
    ),
    stands_back=("rehabilitation",),
)
def stiff_hinge_too_heavy(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """Stiff-leg hinges loaded for fewer than 4 repetitions.

    Looks at deep hinges whose knee stays nearly straight (stiff-leg and Romanian deadlifts, good mornings);
    takes the low end of the repetitions and what is left in reserve, or what the load allows where it is
    known in % of the best lift; wants 4 or more.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: stiff-leg deadlift, sets: 4, reps: 3, rir: 0}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: stiff-leg deadlift, sets: 4, reps: 4, rir: 0}
    """
    if not _stiff(entry, limits) or entry.broken_up or not entry.hard:
        return
    reps = entry.a_set
    if reps is None:
        return
    allowed = reps.low + (entry.reserve or NOTHING).low
    load = entry.work.load
    if load is not None and load.kind == "rm":
        allowed = load.values[0].low
    elif entry.percent is not None:
        held = curves.possible(entry.percent.high, entry.curve)
        allowed = held.mean if held else float("inf")
    if allowed >= limits.number("fewest"):
        return
    reserve = entry.written_reserve
    left = f" with {reserve} in reserve" if reserve and reserve.high else ""
    yield found(
        entry.prescription.place,
        f"Heavy on straight legs: {entry.name} for {counted_noun(str(reps), 'repetition')}{left}"
        f"{f' at {load.words}' if load else ''}.",
        wanted=limits.words("a load for {:repetition} or more", "fewest"),
        change="Go lighter, or do the heavy sets as deadlifts.",
        edits=writing(entry.work.places["exercise"], "deadlift"),
        where=line_name(entry.prescription),
        group=entry.name,
        amount=Amount(allowed, limits.number("fewest"), "repetitions"),
    )


FOLDED = 60
"""Degrees of the hip from which a hinge folds deep; a pull from blocks does not (common practice)."""


def _stiff(entry: SetGroup, limits: Limits) -> bool:
    """Whether a hinge folds deep, loaded from outside, with the knee nearly straight all the way."""
    exercise = entry.exercise
    if exercise is None or "hip hinge" not in exercise.serves or entry.implement not in LOADED:
        return False
    knee, hip = (exercise.path.get(joint, ()) for joint in ("knee", "hip"))
    return bool(knee) and max(knee) <= limits.number("straight") and any(bend >= FOLDED for bend in hip)
