"""Steps in load from week to week."""

from __future__ import annotations

from functools import lru_cache

from ..lint.counting.change import slip_in, weeks_of_lines
from ..lint.counting.set_group import WITH_BODY
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import load as read_load
from ..lint.wording.words import counted_noun, plain, says
from .offers import writing
from .shared import is_test, may_be_a_kettlebell

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits, Named
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.progression import Progression
    from ..lint.model.quantities import Load
    from ..lint.model.sessions import Prescription, Work

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
        "other step",
        2.5,
        "kg for any other implement",
        "between the handbook's steps of 1 to 2 kg and 2 to 4 kg (Essentials of Strength Training and"
        " Conditioning, read second-hand)",
    ),
)
"""What makes a step in load large, beside the percentage."""

"""Words for what an athlete has to hold in one hand."""

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


class Step:
    """A step in load from one entry to a later one: ``up`` by so much %, where ``most`` would do.

    ``wanted`` is empty where it is small enough.
    """

    def __init__(self, before: SetGroup, up: float, most: float, wanted: str) -> None:
        self.before = before
        self.up = up
        self.most = most
        self.wanted = wanted


def step_between(entry: SetGroup, earlier: Iterable[SetGroup], limits: Limits) -> Step | None:
    """The step from the heaviest like set among earlier ones, where it is too large from each of them."""
    steps = []
    for before in earlier:
        if before.fast_tempo != entry.fast_tempo:
            continue
        was, now = _reps(before.work), _reps(entry.work)
        if was is None or now is None or abs(now - was) > limits.number("like repetitions"):
            continue
        unit = next((unit for unit in entry.measured if before.measured.get(unit)), "")
        if unit:
            steps.append(_stepped(before, entry, unit, max(was - now, 0.0), limits))
            if not steps[-1].wanted:
                return None
    return min(steps, key=lambda step: step.up, default=None)


def _stepped(before: SetGroup, entry: SetGroup, unit: str, fewer: float, limits: Limits) -> Step:
    """The step to a set that is ``fewer`` repetitions shorter."""
    was, now = before.measured[unit], entry.measured[unit]
    harder = fewer + _nearer_to_failure(before, entry)
    share = limits.number("step") + limits.number("a repetition") * harder
    by_share = was * share / 100
    smallest, pieces = _smallest(entry, limits), load_in_words(entry.work).pieces
    kilograms = limits.number(smallest) * pieces if unit in ("mass", WITH_BODY) else 0.0
    stock = entry.programme.stock(entry.implement) if unit == "mass" else None
    following = stock.after(was / pieces) if stock else None
    if following is not None:
        kilograms = max(kilograms, following * pieces - was)
    up = 100 * (now / was - 1)
    most = 100 * max(by_share, kilograms) / was
    if round(now - was - max(by_share, kilograms), 6) <= 0:
        return Step(before, up, most, "")
    if by_share < kilograms:
        allowed = f"{plain(kilograms)} kg"
        each = "{:kg}" if pieces == 1 else "{:kg} for each one held"
        return Step(before, up, most, _wanted(allowed, limits, (each, smallest)))
    of: list[tuple[str, Named]] = [("{:%}", "step")]
    if harder:
        of.append(("{:%} for each repetition fewer", "a repetition"))
    return Step(before, up, most, _wanted(f"{plain(share)} %", limits, *of))


def _wanted(allowed: str, limits: Limits, *of: tuple[str, Named]) -> str:
    return limits.worked_out(f"at most {allowed} more", *of)


def _reps(work: Work) -> float | None:
    """The middle of the repetitions of a set."""
    reps = work.reps.a_set() if work.reps else None
    return reps.middle if reps else None


def _nearer_to_failure(before: SetGroup, entry: SetGroup) -> float:
    """By how many repetitions less are left in reserve, where both are written."""
    was, now = before.written_reserve, entry.written_reserve
    return max(was.middle - now.middle, 0.0) if was is not None and now is not None else 0.0


def _smallest(entry: SetGroup, limits: Limits) -> Named:
    """The limit for the smallest step, in kg, of each thing that is held.

    What is usually done with a dumbbell may be done with a kettlebell.
    """
    steps = limits.table("smallest step")
    implement = entry.implement or next((one for one in steps if says((one,), entry.name)), "")
    if implement == "dumbbell" and may_be_a_kettlebell(entry):
        implement = "kettlebell"
    return ("smallest step", implement) if implement in steps else "other step"


def load_in_words(work: Work) -> Load:
    """The load of a line that has one."""
    assert work.load is not None
    return work.load


@rule(
    "load-step-large",
    family="progression",
    severity="warning",
    confidence="guideline",
    why="Guidelines raise a load by 2 to 10 % once one or two more repetitions are possible. A larger step is"
    " often a slip of the pen, or more than the next session can bear.",
    sources=("acsm-2009", "nsca-2for2", "nsca-increments", "helms-2023-adj"),
    options=(
        Option("step", 10, "% from one week to the next", "acsm-2009"),
        *STEPS,
    ),
)
def load_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A load that rises by more than a tenth from one week to the next, like repetitions with like.

    Compares each load with the loads of the same exercise in all earlier weeks, at repetitions no more than
    one apart; sets lifted as fast as possible (X), and lines whose name or tempo says that the lift is done
    otherwise (paused, tempo, light, back-off), only with others of their kind. Wants it no more than 10 %
    above the heaviest of them, and 4 % more for each repetition that it is shorter or nearer to failure; or
    no more than the next step of the implement, where that is larger. A step after one odd week is held
    against both weeks. A stated progression is held against the same limit. Repetition maxima, labels, and
    bodyweight loads without a body mass are left alone, as are maximal singles, and all singles in a phase
    `test`; no other phase and no rehabilitation hides a step.

    Flags:
        programme: Squat
        weeks: 3
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 100 kg, 2: 105 kg, 3: 120 kg}  # <- here

    Passes:
        programme: Squat
        weeks: 3
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 100 kg, 2: 105 kg, 3: 115 kg}
    """
    for step, entry, number in ledger.recall(_large_steps, ledger.weeks, limits):
        around = _around(ledger, entry, number)
        if not _after_a_slip(around, limits):
            yield _too_large(step, entry, number, _back_to(around, limits))
    yield from _stated_steps(ledger, limits)


def _large_steps(weeks: tuple[Week, ...], limits: Limits) -> list[tuple[Step, SetGroup, int]]:
    """Steps that are too large, each with its entry and the number of its week."""
    if not any(entry.work.load for week in weeks for _, entry in week.entries()):
        return []
    earlier: dict[object, dict[SetGroup, tuple[bool, ...]]] = {}
    slips: set[object] = set()  # of the week before: what should stand there, nobody knows
    large = []
    for week in weeks:
        lifts = week.lifts()
        for name, entries in lifts.items():
            known = earlier.setdefault(name, {})
            so_far = dict(known)  # what went up within the week went up in steps, too
            for entry in entries:
                variant = known[entry] if entry in known else _variant(entry)
                is_new = known and entry not in known and name not in slips
                if is_new and entry.measured and not is_test(entry):
                    alike = [one for one, other in so_far.items() if other == variant]
                    step = step_between(entry, alike, limits)
                    if step and not _follows_its_line(entry, alike, limits):
                        large.append((step, entry, week.number))
                so_far[entry] = variant
            if not week.is_deload:
                earlier[name] = so_far
        slips = {entry.exercise for _, entry in week.entries() if not entry.meant}
    return large


def _variant(entry: SetGroup) -> tuple[bool, ...]:
    """How an entry's lift is done, by its name and tempo: a paused squat is no earlier form of a squat."""
    slow, *others = _said_of(entry.name)
    return (slow or any(phase and phase >= SLOW for phase in entry.work.tempo or ()), *others)


@lru_cache(maxsize=4000)
def _said_of(name: str) -> tuple[bool, ...]:
    return tuple(says(words, name) for words in VARIANTS)


def _follows_its_line(entry: SetGroup, earlier: Iterable[SetGroup], limits: Limits) -> bool:
    """Whether the step is small from longer sets of its own line, where only another line has sets alike."""
    for before in earlier:
        was, now = _reps(before.work), _reps(entry.work)
        unit = next((unit for unit in entry.measured if before.measured.get(unit)), "")
        if not unit or was is None or now is None or was < now or _line(before) != _line(entry):
            continue
        if (
            before.fast_tempo == entry.fast_tempo
            and not _stepped(before, entry, unit, was - now, limits).wanted
        ):
            return True
    return False


def _line(entry: SetGroup) -> tuple[str, str]:
    return entry.prescription.session.name, entry.name.casefold()


def _too_large(step: Step, entry: SetGroup, week: int, back: str) -> DraftFinding:
    was, now = load_in_words(step.before.work).words, load_in_words(entry.work).words
    assert entry.work.reps is not None
    reps = counted_noun(str(entry.work.reps.a_set()), "repetition")
    return found(
        entry.work.places["load"],
        f"{entry.name} goes from {was} to {now} at {reps}, {step.up:.0f} % up{back}.",
        wanted=step.wanted,
        change="Correct it if it is a slip, or take smaller steps."
        if back
        else "Take smaller steps, or correct a slip.",
        where=line_name(entry.prescription),
        group=entry.name,
        line=entry.prescription.place,
        amount=Amount(step.up, step.most, "% more"),
        related=(Related(step.before.work.places["load"], f"before: {was}"),),
        weeks=(week,),
        edits=writing(entry.work.places["load"], step.before.work.places["load"].excerpt) if back else (),
        excess=step.up,
    )


class _Around:
    """An entry with what its line holds in the two weeks before, the latest first, and in the week after."""

    def __init__(self, entry: SetGroup, before: list[SetGroup], after: tuple[Week, SetGroup] | None) -> None:
        self.entry = entry
        self.before = before
        self.after = after


def _around(ledger: Ledger, entry: SetGroup, week: int) -> _Around:
    for line in ledger.recall(weeks_of_lines, ledger.weeks):
        for index, (at, one) in enumerate(line):
            if one is entry and at.number == week:
                before = [group for _, group in reversed(line[max(index - 2, 0) : index])]
                return _Around(entry, before, line[index + 1] if index + 1 < len(line) else None)
    return _Around(entry, [], None)


def _after_a_slip(around: _Around, limits: Limits) -> bool:
    """Whether the week before is a slip of the pen, and no step is left where it is read as it is meant."""
    if len(around.before) < 2:
        return False
    last, first = around.before
    slip = slip_in(first, last, around.entry)
    return slip is not None and slip[1] <= slip[0] * (1 + limits.number("step") / 100)


def _back_to(around: _Around, limits: Limits) -> str:
    """``, and back to 72.5 % in week 3``, where the load stands in one week alone."""
    if around.after is None or step_between(around.entry, (around.after[1],), limits) is None:
        return ""
    week, after = around.after
    return f", and back to {load_in_words(after.work).words} in week {week.number}"


def _stated_steps(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Stated progressions whose every addition is too large a step."""
    lines: dict[Prescription, SetGroup] = {}
    for _, entry in ledger.entries():
        if entry.prescription.progression is not None:
            lines.setdefault(entry.prescription, entry)
    for line, entry in lines.items():
        stated = line.progression
        assert stated is not None
        step = _stated_step(stated, entry, limits)
        if step is None:
            continue
        how_often = f" every {stated.every.removeprefix('1 ')}" if stated.every else " at a time"
        share = "" if stated.add.endswith("%") else f", {step.up:.0f} % of {load_in_words(entry.work).words}"
        yield found(
            stated.place,
            f"{entry.name} is to go up by {stated.add}{how_often}{share}.",
            wanted=step.wanted,
            change="Add less at a time, or correct a slip.",
            where=line_name(line),
            excess=step.up,
        )


def _stated_step(stated: Progression, entry: SetGroup, limits: Limits) -> Step | None:
    """The step that a progression adds, where it is too large; None where it is not, or not known."""
    added = read_load(stated.add)
    if added is None or added.span is None:
        return None
    reps = entry.work.reps.a_set() if entry.work.reps else None
    fewer = reps.high - reps.low if reps and stated.when else 0.0  # it starts again at the low end
    share = limits.number("step") + limits.number("a repetition") * fewer
    of: list[tuple[str, Named]] = [("{:%}", "step")]
    if fewer:
        of.append(("{:%} for each repetition fewer", "a repetition"))
    wanted = limits.worked_out(f"at most {plain(share)} % at a time", *of)
    if added.kind == "percent":
        return Step(entry, added.span.low, share, wanted) if added.span.low > share else None
    base = _kilograms(entry)
    if added.kind != "mass" or not base:
        return None
    smallest, pieces = _smallest(entry, limits), load_in_words(entry.work).pieces
    most = max(base * share / 100, limits.number(smallest) * pieces)
    up, allowed = (100 * kilograms / base for kilograms in (added.span.low, most))
    return Step(entry, up, allowed, wanted) if added.span.low > most else None


def _kilograms(entry: SetGroup) -> float:
    """The load in kg, all pieces together; 0 where it is not known."""
    load = entry.work.load
    if load is None or load.span is None:
        return 0.0
    known = entry.kilograms_at(entry.percent) if load.kind == "percent" and entry.percent else None
    return known.middle if known else entry.measured.get("mass") or entry.measured.get(WITH_BODY, 0.0)
