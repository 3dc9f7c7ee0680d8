"""Numbers that can hardly be meant."""

from __future__ import annotations

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import Range
from ..lint.wording.words import counted_noun, plain
from .shared import in_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.model.athlete import BestLift
    from ..lint.model.quantities import Load
    from ..lint.text.places import Place
    from .offers import Offer


@rule(
    "number-implausible",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="Numbers like these are nearly always slips of the pen.",
    sources=(),
    options=(
        Option("most sets", 12, "sets in one line", "common practice"),
        Option("most repetitions", 100, "repetitions in one set", "common practice"),
        Option("shortest rest", 10, "seconds", "common practice"),
        Option("longest rest", 900, "seconds", "common practice"),
        Option("heaviest", 105, "percent of the best lift", "common practice"),
        Option("lightest", 10, "percent of the best lift", "common practice"),
    ),
    takes_out=True,
)
def number_implausible(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """Sets, repetitions, rest or load that can hardly be meant.

    Looks at one line at a time; wants at most 12 hard sets and 100 repetitions (of jumps 500), between 10
    seconds and 15 minutes of rest, where sets are not broken up, no load in kg above 105 % of the best lift
    on file and what the weeks may add to that (8 % a week for novices, 3 %, 2 % for advanced lifters), and no
    percentage under 10. Those above 100 are looked at by more-reps-than-load-allows. More sets are left alone
    up to 30 of one or two repetitions, and of intervals where other weeks hold more than half of them.
    Until it is mended such a line counts nowhere.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 30, reps: 5}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5}
    """
    work = entry.work
    if work.sets is not None and work.sets.high > limits.number("most sets"):
        yield from _too_many_sets(entry, work.sets, limits)
    reps = work.reps.a_set() if work.reps else None
    if reps and reps.high > limits.number("most repetitions"):
        yield from _too_many_repetitions(entry, reps, limits)
    if work.rest:
        low, high = limits.number("shortest rest"), limits.number("longest rest")
        short = work.rest.low < low
        if (short or work.rest.high > high) and not _paired(entry) and not _broken_up(entry):
            words = in_words(work.places["rest"], f"{work.rest} s")
            between = limits.words("between {:s} and {:duration}", "shortest rest", "longest rest")
            amount = Amount(work.rest.low if short else work.rest.high, low if short else high, "s")
            yield _slip(entry, "rest", f"{words} of rest.", between, amount, (low, high))
    if work.load is not None and work.load.span is not None:
        yield from _too_heavy(entry, work.load, work.load.span, limits)


FEW, MANY = 2, 30
"""Repetitions of a set up to which so many sets are usual: singles and doubles (common practice)."""
JUMPED = 5
"""Times the repetitions of a lift that a rope or small hops may have in a set (common practice)."""
TIMES = 2
"""Times what other weeks hold, from which the rounds of intervals stand out (common practice)."""


def _too_many_sets(entry: SetGroup, sets: Range, limits: Limits) -> Iterator[DraftFinding]:
    """Sets that can hardly be meant, with what the line holds in other weeks, where it does."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    if not entry.hard or entry.prescription.on_clock or _is_timed(entry):
        return
    if reps is not None and reps.high <= FEW and sets.high <= MANY:
        return
    others = _in_other_weeks(entry) or [sets.high]
    fewest, fullest = min(others), max(others)
    by_rounds = entry.prescription.kind == "intervals"
    most = TIMES * fullest - 1 if by_rounds else limits.number("most sets")
    if sets.high <= most:
        return
    alike = ""
    if fullest < sets.high:
        several = "" if fewest == fullest else f"{plain(fewest)} to "
        alike = f"; {several}{plain(fullest)} in other weeks"
    yield _slip(
        entry,
        "sets",
        f"{sets} {'rounds' if by_rounds else 'sets'} in one line{alike}.",
        "fewer than twice as many as in other weeks"
        if by_rounds
        else limits.words("at most {:set}", "most sets"),
        Amount(sets.high, most),
        (0, most),
    )


def _is_timed(entry: SetGroup) -> bool:
    """Whether it goes by time or distance, as climbs do; rounds of intervals have a limit of their own."""
    if entry.prescription.kind == "intervals":
        return False
    return entry.work.timed is not None or entry.work.distance is not None


def _in_other_weeks(entry: SetGroup) -> list[float]:
    """The sets that its line holds in other weeks, as they are written.

    What others do in the same weeks is left out, and so is all where one athlete's value stands elsewhere.
    """
    here = entry.work.places.get("sets")
    for held in (group.get("sets", ()) for group in entry.prescription.groups):
        for own in (one for one in held if one.place == here):
            apart = (one for one in held if one.first < own.first or one.last > own.last)
            return [one.value.high for one in apart if one.place != here and isinstance(one.value, Range)]
    return []


def _too_many_repetitions(entry: SetGroup, reps: Range, limits: Limits) -> Iterator[DraftFinding]:
    """More repetitions than a set can have: hundreds are usual of what is hopped, run or rowed."""
    most = limits.number("most repetitions")
    wanted = limits.words("at most {:repetition}", "most repetitions")
    if entry.exercise is not None and entry.exercise.kind in ("plyometric", "endurance"):
        most *= JUMPED
        said = f"at most {counted_noun(most, 'repetition')}"
        wanted = limits.worked_out(said, ("{:repetition} of a lift", "most repetitions"))
    if reps.high > most:
        amount = Amount(reps.high, most, "repetitions")
        yield _slip(entry, "reps", f"{reps} repetitions in one set.", wanted, amount, (0, most))


def _broken_up(entry: SetGroup) -> bool:
    """Whether its sets are broken up, by seconds of rest between their parts."""
    return bool(entry.prescription.method) or entry.broken_up


def _paired(entry: SetGroup) -> bool:
    """Whether the line stands in a superset or circuit, where going on at once is usual."""
    return entry.prescription.paired is not None


def _too_heavy(entry: SetGroup, load: Load, span: Range, limits: Limits) -> Iterator[DraftFinding]:
    least, most = limits.number("lightest"), limits.number("heaviest")
    if load.kind == "percent" and span.high < least:
        wanted = limits.words("at least {:%}", "lightest")
        yield _slip(
            entry,
            "load",
            f"{load.words} of the best lift.",
            wanted,
            Amount(span.high, least, "%"),
            (least, most),
        )
    if load.kind != "mass":
        return
    for best in entry.best:
        if best.load.kind != "mass" or not _comparable(entry, best):
            continue
        held = best.kilograms * most / 100 * entry.programme.growth
        if span.high <= held:
            continue
        yield _slip(
            entry,
            "load",
            f"{load.words} where the best on file is {best.load.words}.",
            limits.words("at most {:%} of it", "heaviest"),
            Amount(span.high, held, "kg"),
            (0, held),
            (Related(best.exercise.place, f"best lift on file: {best.load.words}"),),
        )


def _comparable(entry: SetGroup, best: BestLift) -> bool:
    """Whether a set is at least as long as the best one: a heavier load for fewer repetitions is no slip."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    return best.reps == 1 or (reps is not None and reps.low >= best.reps)


def _slip(
    entry: SetGroup,
    key: str,
    counted: str,
    wanted: str,
    amount: Amount,
    bounds: tuple[float, float],
    related: tuple[Related, ...] = (),
) -> DraftFinding:
    return found(
        entry.work.places[key],
        counted,
        wanted=wanted,
        change="If it is a slip, correct it.",
        where=f"{line_name(entry.prescription)}, {key}",
        edits=_corrected(entry.work.places[key], *bounds),
        group=entry.name,
        amount=amount,
        line=entry.prescription.place,
        related=related,
    )


def _corrected(place: Place, least: float, most: float) -> Offer:
    """What the number could have been, and the nearest number that would do."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.values import slips

        unit = 60 if "min" in place.excerpt else 1
        return slips(place, least / unit, most / unit)

    return work_out
