"""Steps in load from week to week."""

from __future__ import annotations

from itertools import accumulate, pairwise

from ..lint.counting.change import is_a_digit_too_high, slip_in, visits_of_lines
from ..lint.counting.set_group import WITH_BODY
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import load as read_load
from ..lint.wording.words import counted_noun, plain
from .load_steps import (
    STEEP,
    STEPS,
    Step,
    is_light,
    load_in_words,
    of_pieces,
    repetitions_fewer,
    smallest_of_implement,
    step_between,
    stepped,
    unit_of_both,
    variant_of,
)
from .offers import writing
from .shared import is_test

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits, Named
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.progression import Progression
    from ..lint.model.sessions import Prescription


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
        Condition(
            "longer by",
            3,
            "repetitions at most by which an earlier set is longer, where none is alike",
            "common practice",
        ),
        Condition("light", 60, "% of the best lift, below which a step asks little", "common practice"),
        Condition("doubled", 80, "% more, from which a step is a slip whatever the load", "common practice"),
    ),
    follows=("table-cell-differs",),
)
def load_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A load that rises by more than a tenth from one week to the next, like repetitions with like.

    Compares each load with the loads of the same exercise in all earlier weeks, at repetitions no more than
    one apart; where there are none, with sets up to three repetitions longer, and tells steep steps alone,
    half as large again as allowed; sets lifted as fast as possible (X), and lines whose name or tempo says
    that the lift is done otherwise (paused, tempo, light, back-off), only with others of their kind. Wants it
    no more than 10 % above the heaviest of them, 20 % after two weeks at that load, and 4 % more for each
    repetition that it is shorter or nearer to failure; or no more than the next step, where that is larger:
    that of the implement, 10 kg for both legs. A step after one odd week is held against both weeks. Left
    alone are like steps that are not steep, loads that go up and down in turn, loads that are light for the
    lifter (under 60 % of the best lift; else under body mass, for arms and one leg half of it), unless they
    nearly double or are a digit too high in a line that only rises, repetition maxima, labels, bodyweight
    loads without a body mass, maximal singles, and all singles in a phase `test`. What leaves and returns is
    one finding each, all other steps are one together: a note in a return, and where the step is not steep
    and nobody knows how heavy it is. A stated progression is held against the same limit. No rehabilitation
    hides a step.

    Flags:
        programme: Squat
        weeks: 3
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 100 kg, 2: 105 kg, 3: 125 kg}  # <- here

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
    stay: list[_Large] = []
    for large in ledger.recall(_large_steps, ledger.weeks, limits):
        around = _around(ledger, large.entry, large.week)
        if _after_a_slip(around, limits) or _is_meant(large, around, limits):
            continue
        if back := _back_to(around, limits):
            yield _too_large(ledger, [large], back)
        else:
            stay.append(large)
    if stay:
        yield _too_large(ledger, sorted(stay, key=lambda large: large.step.most - large.step.up))
    yield from _stated_steps(ledger, limits)


class _Large:
    """A step that is too large, with the entry that it leads to and the number of its week."""

    def __init__(self, step: Step, entry: SetGroup, week: int) -> None:
        self.step = step
        self.entry = entry
        self.week = week

    def words(self) -> str:
        """``bench press goes from 60 kg to 75 kg at 5 repetitions, 25 % up``."""
        was, now = load_in_words(self.step.before.work).words, load_in_words(self.entry.work).words
        assert self.entry.work.reps is not None
        reps = counted_noun(str(self.entry.work.reps.a_set()), "repetition")
        return f"{self.entry.name} goes from {was} to {now} at {reps}, {self.step.up:.0f} % up"


def _large_steps(weeks: tuple[Week, ...], limits: Limits) -> list[_Large]:
    """Steps that are too large, each with its entry and the number of its week."""
    if not any(entry.work.load for week in weeks for _, entry in week.entries()):
        return []
    earlier: dict[object, dict[SetGroup, tuple[bool, ...]]] = {}
    held: dict[object, set[int]] = {}  # the weeks of each load
    slips: set[object] = set()  # of the week before: what should stand there, nobody knows
    large = []
    for week in weeks:
        for name, entries in week.lifts().items():
            known = earlier.setdefault(name, {})
            so_far = dict(known)  # what went up within the week went up in steps, too
            for entry in entries:
                load = tuple(entry.measured.items())
                if load and entry not in so_far:
                    variant = variant_of(entry)
                    alike = [one for one, other in so_far.items() if other == variant]
                    if known and name not in slips and not is_test(entry):
                        lasting = [(one, len(held[name, *one.measured.items()])) for one in alike]
                        step = step_between(entry, lasting, limits, "longer by")
                        if step and not _follows_its_line(entry, alike, limits):
                            large.append(_Large(step, entry, week.number))
                    so_far[entry] = variant
                held.setdefault((name, *load), set()).add(week.number)
            if not week.is_deload:
                earlier[name] = so_far
        slips = {entry.exercise for _, entry in week.entries() if not entry.meant}
    return large


def _follows_its_line(entry: SetGroup, earlier: Iterable[SetGroup], limits: Limits) -> bool:
    """Whether the step is small from longer sets of its own line, where only another line has sets alike."""
    for before in earlier:
        fewer, unit = repetitions_fewer(before, entry), unit_of_both(before, entry)
        if (
            unit
            and fewer > limits.number("like repetitions")
            and _line(before) == _line(entry)
            and before.fast_tempo == entry.fast_tempo
            and not stepped(before, entry, unit, fewer, limits).wanted
        ):
            return True
    return False


def _line(entry: SetGroup) -> tuple[str, str]:
    return entry.prescription.session.name, entry.name.casefold()


def _is_meant(large: _Large, around: _Around, limits: Limits) -> bool:
    """Whether a step is part of a plan, or on a light load: neither a slip nor more than can be borne.

    What comes near to doubling is a slip all the same.
    """
    if large.step.up >= max(limits.number("doubled"), 2 * large.step.most):
        return False
    if is_light(large.entry, limits):
        return not _back_to(around, limits)
    if around.is_a_wave():
        return True
    return large.step.up <= STEEP * large.step.most and around.has_like_steps(large)


def _is_sure(ledger: Ledger, large: _Large) -> bool:
    """Whether a step is steep, or heavy for all that is known, and no way back to old strength."""
    if ledger.weeks[large.week - 1].phase == "return":
        return large.step.up >= 2 * large.step.most
    is_known = large.entry.percent is not None or ledger.header.body_mass is not None
    return is_known or large.step.up > STEEP * large.step.most


def _too_large(ledger: Ledger, steps: list[_Large], back: str = "") -> DraftFinding:
    """One finding on some steps, the worst of them first."""
    first, *others = steps
    step, entry = first.step, first.entry
    also = f"; {counted_noun(len(others), 'more step')} as large" if others else ""
    return found(
        entry.work.places["load"],
        f"{first.words()}{back}{also}.",
        severity="warning" if back or any(_is_sure(ledger, one) for one in steps) else "note",
        wanted=step.wanted,
        change="Correct it if it is a slip, or take smaller steps."
        if back
        else "Take smaller steps, or correct a slip.",
        where=line_name(entry.prescription),
        group=entry.name,
        line=entry.prescription.place,
        amount=Amount(step.up, step.most, "% more"),
        related=(
            Related(step.before.work.places["load"], f"before: {load_in_words(step.before.work).words}"),
            *(Related(one.entry.work.places["load"], one.words()) for one in others),
        ),
        weeks=tuple(sorted({one.week for one in steps})),
        edits=writing(entry.work.places["load"], step.before.work.places["load"].excerpt) if back else (),
        excess=step.up,
    )


class _Around:
    """An entry with what its line holds in the two visits before, the latest first, and in the one after.

    ``line`` is what it holds in all weeks, in order: one group for each week, unless its visits differ.
    """

    def __init__(self, entry: SetGroup, at: int, line: list[tuple[Week, SetGroup]]) -> None:
        self.entry = entry
        self.at = at
        self.line = line
        self.before = [group for _, group in reversed(line[max(at - 2, 0) : at])]
        self.after = line[at + 1] if at + 1 < len(line) else None

    def _values(self) -> list[float]:
        """The loads of the line from week to week, so far as they compare with this one."""
        units = ((group, unit_of_both(group, self.entry)) for _, group in self.line)
        return [group.measured[unit] if unit else 0.0 for group, unit in units]

    def is_a_wave(self) -> bool:
        """Whether the line goes down after this week, and is up again at like repetitions a week later."""
        ahead, values = self.line[self.at + 1 :], self._values()
        if len(ahead) < 2 or not -1 <= repetitions_fewer(self.entry, ahead[1][1]) <= 1:
            return False
        return values[self.at + 1] < values[self.at] and values[self.at + 2] >= WAVE * values[self.at]

    def breaks_a_rise(self, after: SetGroup) -> bool:
        """Whether the line never goes down but for this number, which fits in with one digit less."""
        others = self._values()
        del others[self.at]
        if len(others) < A_RISE or others != sorted(others):
            return False
        return bool(self.before) and is_a_digit_too_high(self.before[0], self.entry, after)

    def has_like_steps(self, large: _Large) -> bool:
        """Whether the line goes up about as much in another week, too."""
        unit = unit_of_both(large.step.before, self.entry)
        highest = list(
            accumulate((value for value in self._values() if value), max)
        )  # what a dip regains is no step
        here = self.entry.measured[unit] - large.step.before.measured[unit]
        return sum(after - before >= LIKE * here for before, after in pairwise(highest)) > 1


WAVE = 0.95
"""Share of a load from which a line is back at it (common practice, no source)."""
A_RISE = 4
"""Loads of a line, from which it is known to rise throughout (common practice, no source)."""
LIKE = 0.6
"""Share of a step from which another one is like it (common practice, no source)."""


def _around(ledger: Ledger, entry: SetGroup, week: int) -> _Around:
    return next(
        _Around(entry, at, line)
        for line in ledger.recall(visits_of_lines, ledger.weeks)
        for at, (when, one) in enumerate(line)
        if one is entry and when.number == week
    )


def _after_a_slip(around: _Around, limits: Limits) -> bool:
    """Whether the week before is a slip of the pen, and no step is left where it is read as it is meant."""
    if len(around.before) < 2:
        return False
    last, first = around.before
    slip = slip_in(first, last, around.entry)
    return slip is not None and slip[1] <= slip[0] * (1 + limits.number("step") / 100)


def _back_to(around: _Around, limits: Limits) -> str:
    """``, and back to 72.5 % in week 3``, where the load stands in one week alone."""
    if around.after is None or around.is_a_wave():
        return ""
    week, after = around.after
    if step_between(around.entry, ((after, 1),), limits) is None and not around.breaks_a_rise(after):
        return ""
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
        if step is None or len({term.words for term in line.names()}) > 1:
            continue  # of several exercises, which one it is for only the coach knows
        up, wanted = step
        how_often = f" every {stated.every.removeprefix('1 ')}" if stated.every else " at a time"
        share = "" if stated.add.endswith("%") else f", {up:.0f} % of {load_in_words(entry.work).words}"
        yield found(
            stated.place,
            f"{entry.name} is to go up by {stated.add}{how_often}{share}.",
            wanted=wanted,
            change="Add less at a time, or correct a slip.",
            where=line_name(line),
            excess=up,
        )


def _stated_step(stated: Progression, entry: SetGroup, limits: Limits) -> tuple[float, str] | None:
    """What a progression adds, in %, where that is too large a step, and what is wanted; else None."""
    added = read_load(stated.add)
    base = {"percent": 100, "mass": _kilograms(entry)}.get(added.kind) if added else None
    if not base:
        return None
    assert added is not None
    assert added.span is not None
    reps = entry.work.reps.a_set() if entry.work.reps else None
    fewer = reps.high - reps.low if reps and stated.when else 0.0  # it starts again at the low end
    share = limits.number("step") + limits.number("a repetition") * fewer
    of: list[tuple[str, Named]] = [("{:%}", "step")]
    if fewer:
        of.append(("{:%} for each repetition fewer", "a repetition"))
    most, wanted = base * share / 100, limits.worked_out(f"at most {plain(share)} % at a time", *of)
    if added.kind == "mass":
        smallest, pieces = smallest_of_implement(entry, limits), load_in_words(entry.work).pieces
        kilograms = limits.number(smallest) * pieces
        if kilograms > most:
            most, allowed = kilograms, f"at most {plain(kilograms)} kg at a time"
            wanted = limits.worked_out(allowed, of_pieces(smallest, pieces))
    return (100 * added.span.low / base, wanted) if added.span.low > most else None


def _kilograms(entry: SetGroup) -> float | None:
    """The load in kg, all pieces together; None or 0 where it is not known."""
    at_percent = entry.kilograms_at(entry.percent) if entry.percent else None
    measured = entry.measured.get("mass") or entry.measured.get(WITH_BODY)
    return measured or (at_percent.middle if at_percent else None)
