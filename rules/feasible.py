"""Whether a load, its repetitions and the effort asked for go together."""

from __future__ import annotations

from math import floor

from ..lint.body import curves
from ..lint.counting.effort import numbers_of
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, plain, says, sets_of
from .offers import fewer_or_lighter, lighter_or_kilograms
from .shared import bests_on_file, in_test, is_of_another, notes_on, of_one_lift

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.model.quantities import Load
    from .offers import Offer

# Loads, repetitions and effort


@rule(
    "more-reps-than-load-allows",
    family="load",
    severity="error",
    confidence="meta-analysis",
    why="Tests on 7,289 people give the mean repetitions at 60 to 90 % of the best lift, and how far lifters"
    " differ; above that a straight line to one repetition is our own choice. Few manage two standard"
    " deviations above the mean; the limit of four is our choice as well. In bench press tests repetitions"
    " fell from set to set; how far, is common practice. At 100 % there is one repetition by definition.",
    sources=("nuzzo-2024", "zourdos-2021", "hackett-2017", "richmond-2004", "willardson-2006"),
    options=(
        Option(
            "few manage",
            2,
            "standard deviations above the mean: a warning past it",
            "mean and spread: Nuzzo and others 2024, read second-hand; that two count is our choice",
        ),
        Condition(
            "nobody manages",
            4,
            "standard deviations above the mean: an error past it",
            "mean and spread: Nuzzo and others 2024, read second-hand; that four count is our choice; 26"
            " repetitions at 70 %, the most on file, lie 3.4 above the mean: Zourdos and others 2021",
        ),
        Condition(
            "some manage",
            1.25,
            "standard deviations above the mean, for the last of several sets: a note past it",
            "mean and spread: Nuzzo and others 2024, read second-hand; about one lifter in ten is above that",
        ),
        Condition(
            "beyond the RM",
            1,
            "repetitions more than a repetition maximum says",
            "common practice, no source: a margin of one, as large as the error of guesses near failure"
            " (Hackett and others 2017)",
        ),
        Option(
            "percent of another lift",
            ("pull", "shrug", "half", "quarter", "partial", "pin", "board", "block", "rack", "floor"),
            "words in names of lifts whose percentages often count from another lift",
            "common practice, no source",
        ),
    ),
    follows=("load-step-large", "table-cell-differs"),
    needs=("load",),
)
def more_reps_than_load_allows(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """More repetitions, those left in reserve included, than the load allows.

    Takes the low end of repetitions and of RIR, and the light end of the load in % of the best lift, set by
    set where they are written so; holds them against the curve that fits the exercise (bench press, leg press
    or the main one). Above the last load that was counted (90 %; bench press 80 %) a straight line leads to
    one repetition at 100 %. Past the mean and two standard deviations is a warning, for the last of several
    sets with what those before it cost; past one and a quarter in such a last set a note; past four in a
    first set an error. Two repetitions at 100 %, or more than 100 %, are an error where it is the lift's own
    best; at pulls and partial lifts a note asks what it is a percentage of; a single above 100 % is left
    alone in test weeks. Where the load comes from a best lift on file, which may have grown, and at RM loads
    it is never more than a warning. Silent below 60 %, where a note says that percentages are of a training
    maximum, for sets broken up (clusters, drop sets, rest-pause), open sets, exercises that only lower the
    load, and, up to 100 %, work for speed.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 20, rir: 2, load: 85 %}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 2, load: 75 %}
    """
    load, reps = entry.work.load, entry.work.reps
    if load is None or load.rough == "up to":  # less will do
        return
    if load.kind == "percent" and is_of_another(entry):
        return  # what took the lift's place may be another, and its % is told as left over
    if load.kind == "percent" and not entry.lowers_only and not entry.broken_up:
        beyond = _beyond_best(entry)
        if beyond is not None:
            more = _more_than_the_best(entry, load.words, *beyond, limits)
            if more is not None:
                yield more
            return
    if reps is None or not reps.sets or not entry.in_one_go:
        return
    least_left = _least_left(entry)
    if load.kind == "rm":
        asked = max(one.low for one in reps.sets) + least_left
        allowed = load.values[0].high
        if asked > allowed + limits.number("beyond the RM"):
            yield _too_many(
                entry,
                load,
                _asked(entry, asked, 1),
                allowed,
                asked,
                f"at most {plain(allowed)}, as {load.words} means",
                "a lighter load",
                excess=asked - allowed,
                edits=fewer_or_lighter(entry, asked, allowed - least_left),
            )
        return
    sets, grown = entry.sets_apart, 1.0 if load.kind == "percent" else entry.programme.growth
    tries = [
        _Try(one.low, least_left, share, number, held)
        for (one, percent), number in zip(sets, numbers_of(entry.work, sets), strict=True)
        if (held := curves.possible(share := percent.low / grown, entry.curve)) is not None
    ]
    if not tries:
        return
    hardest = max(tries, key=_Try.fresh)
    if hardest.fresh() <= limits.number("few manage"):
        hardest = max(tries, key=_Try.tired)
    kinds = ("few manage",) if hardest.number == 1 else ("few manage", "some manage")
    most = next((one for one in kinds if hardest.tired() > limits.number(one)), None)
    is_beyond_all = hardest.fresh() > limits.number("nobody manages")
    if most is None or (not is_beyond_all and _of_a_training_maximum(entry)):
        return
    few = limits.number(most)
    meant = _first_set_for(hardest, tries, entry.curve, limits)
    certain = load.kind == "percent" and is_beyond_all
    yield _too_many(
        entry,
        load,
        _asked(entry, hardest.reps + least_left, hardest.number if hardest.fresh() <= few else 1),
        hardest.held.beyond(few),
        hardest.reps + least_left,
        limits.worked_out(hardest.wanted(few), ("{:standard deviation} above the mean", most)),
        f"{_lighter(meant, entry.curve)},",
        severity="error" if certain else "note" if most == "some manage" else "warning",
        excess=hardest.tired(),
        edits=fewer_or_lighter(entry, meant, min(one.allowed(one.most(limits)) for one in tries)),
    )


TRAINING_MAXIMUM = ("training max", "training maxes", "training maximum", "working max", "TM")
"""Words for a maximum that is set below the true one, so that percentages of it leave room."""


def _of_a_training_maximum(entry: SetGroup) -> bool:
    """Whether a note says so: on what the line stands in, or on the athlete's file."""
    header = entry.programme
    athlete = header.athlete.note if header.athlete else ""
    return says(TRAINING_MAXIMUM, *notes_on(entry.prescription), header.note, athlete)


class _Try:
    """A set by what it asks, which set of its line it is, and what its load allows."""

    def __init__(
        self, reps: float, left: float, percent: float, number: int, held: curves.Repetitions
    ) -> None:
        self.reps = reps
        self.left = left
        self.percent = percent
        self.number = number
        self.held = held

    def cost(self) -> float:
        """What it asks, in repetitions of a first set."""
        return self.reps * curves.tired(self.number) + self.left

    def fresh(self) -> float:
        """By how many standard deviations it asks more than the mean, as a first set."""
        return (self.reps + self.left - self.held.mean) / self.held.spread

    def tired(self) -> float:
        """The same as the set that it is."""
        return (self.cost() - self.held.mean) / self.held.spread

    def most(self, limits: Limits) -> float:
        """The standard deviations above the mean from which on something is said of the set that it is."""
        return limits.number("few manage" if self.number == 1 else "some manage")

    def allowed(self, few: float) -> int:
        """The repetitions that its load allows the set that it is."""
        return floor((self.held.beyond(few) - self.left) / curves.tired(self.number))

    def wanted(self, few: float) -> str:
        """What its load allows: a first set, and this one where that makes the difference."""
        first = f"about {self.held.mean:.0f} at {self.percent:.0f} %"
        if self.fresh() > few:
            return f"{first}, at most {floor(self.held.beyond(few))}"
        tired = floor((self.held.beyond(few) - self.left) / curves.tired(self.number) + self.left)
        return f"{first}, at most {tired} in set {self.number}"


def _first_set_for(hardest: _Try, tries: list[_Try], curve: str, limits: Limits) -> float:
    """The repetitions of a first set that a lighter load is to allow, for the last set to be possible."""
    asked = hardest.reps + hardest.left
    lighter = curves.percent_for(asked, curve)
    held = None if lighter is None else curves.possible(round(lighter), curve)
    last = max(tries, key=_Try.cost)
    if held is None or (last.cost() - held.mean) / held.spread <= last.most(limits):
        return asked
    return last.cost()


def _beyond_best(entry: SetGroup) -> tuple[float, float] | None:
    """Repetitions and load in %, where the load leaves no room for them: two at 100 %, or any above."""
    sets = [(reps.low, percent.low) for reps, percent in entry.sets_apart]
    left = _least_left(entry)
    over = [
        (reps + left, percent)
        for reps, percent in sets or [(1.0, one.low) for one in entry.percents]
        if percent > 100 or (percent == 100 and reps + left > 1)
    ]
    if not over:
        return None
    asked, percent = max(over, key=lambda one: (one[1], one[0]))
    attempt = asked <= 1 and in_test(entry)
    return None if attempt else (asked, percent)


def _more_than_the_best(
    entry: SetGroup, words: str, asked: float, percent: float, limits: Limits
) -> DraftFinding | None:
    if not _own_best(entry, limits):
        return (
            None
            if _says_of_what(entry)
            else found(
                entry.work.places["load"],
                f"{entry.name} at {words}: of which lift?",
                severity="note",
                wanted="one repetition at 100 % of its own best",
                change=f"Write the load in kg, or `{words} of` and the lift that it counts from.",
                where=line_name(entry.prescription),
                subject="percent of another lift",
                excess=percent,
            )
        )
    load = entry.work.places["load"]
    place = load if percent > 100 else entry.work.places.get("reps", load)
    return found(
        place,
        f"{_asked(entry, asked, 1)} at {words}.",
        wanted="one at 100 % of its own best, none above",
        change=f"Take {_lighter(asked, entry.curve)}, or write kg if it is a percentage of something else.",
        where=line_name(entry.prescription),
        edits=lighter_or_kilograms(entry, asked),
        related=(Related(load, words),) if place is not load else (),
        excess=percent + asked,
    )


def _says_of_what(entry: SetGroup) -> bool:
    """Whether a best of the snatch, clean or jerk that it is a part of is on file, or a note says of what."""
    header, exercise = entry.programme, entry.exercise
    bests = header.athlete.best_lifts if header.athlete else ()
    on_file = [header.known.exercise(best.exercise.words) for best in bests]
    if exercise is not None and any(best is not None and of_one_lift(best, exercise) for best in on_file):
        return True
    return any("%" in note or "percent" in note for note in (*notes_on(entry.prescription), header.note))


def _own_best(entry: SetGroup, limits: Limits) -> bool:
    """Whether a percentage can only be meant of the lift's own best."""
    if entry.best:
        return True
    exercise = entry.exercise
    if exercise is None or says(limits.names("percent of another lift"), exercise.name, entry.name):
        return False
    return exercise.pattern in _TESTED or (exercise.kind == "ballistic" and exercise.implement == "barbell")


_TESTED = ("squat", "hip hinge", "horizontal push", "vertical push")
"""Movement patterns whose lifts are tested for one repetition (common practice, no source)."""


def _least_left(entry: SetGroup) -> float:
    """The fewest repetitions in reserve that the coach wrote; 0 where none are written."""
    return entry.written_reserve.low if entry.written_reserve else 0.0


def _lighter(repetitions: float, curve: str) -> str:
    percent = curves.percent_for(repetitions, curve)
    return f"less than {curves.LOWEST:g} %" if percent is None else f"about {percent:.0f} %"


def _asked(entry: SetGroup, asked: float, number: int) -> str:
    """``8 repetitions (1 of them in reserve)``; past set 1 ``4 sets of 8``, of 10/8/8 ``8 in set 3``."""
    left = _least_left(entry)
    in_reserve = f" ({plain(left)} of them in reserve)" if left else ""
    if number == 1:
        return f"{counted_noun(asked, 'repetition')}{in_reserve}"
    alike = len(set(map(str, entry.work.reps.sets if entry.work.reps else ()))) < 2
    done = f"{sets_of(number)} of {plain(asked)}" if alike else f"{plain(asked)} in set {number}"
    return f"{done}{in_reserve}"


def _too_many(
    entry: SetGroup,
    load: Load,
    asked: str,
    most: float,
    repetitions: float,
    allowed: str,
    advice: str,
    severity: Severity = "warning",
    *,
    excess: float,
    edits: Offer,
) -> DraftFinding:
    return found(
        entry.work.places["reps"],
        f"{asked} at {load.words}.",
        severity=severity,
        wanted=allowed,
        change=f"Take {advice} or fewer repetitions.",
        where=line_name(entry.prescription),
        group=entry.name,
        line=entry.prescription.place,
        amount=Amount(repetitions, most, "repetitions"),
        edits=edits,
        related=(Related(entry.work.places["load"], load.words), *bests_on_file(entry)),
        excess=excess,
    )
