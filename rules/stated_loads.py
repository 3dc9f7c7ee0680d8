"""Loads that are missing, or lean on something that is missing or old."""

from __future__ import annotations

import re

from ..lint.body.equipment import LOADED
from ..lint.counting.effort import NO_LIFTS
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, plain, says
from .files_words import of_athlete
from .offers import in_one_edit, writing
from .shared import of_one_lift

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.model.athlete import Athlete, BestLift
    from ..lint.model.programme import Programme
    from ..lint.model.quantities import Load
    from .offers import Offer


# Best lifts and top sets


@rule(
    "best-lift-missing",
    family="load",
    severity="note",
    confidence="common practice",
    why="A percentage says nothing to the lifter until it is known of what.",
    sources=(),
    needs=("load",),
)
def best_lift_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Loads in % of a best lift that is not on the athlete's file.

    Looks at athletes who have best lifts on file, or a file of their own; wants the lift there, or a near
    relative of it: the same movement pattern with the same implement, or the snatch, clean or jerk that it is
    a part of. A load in % of another lift, `65 % of back squat`, wants that very lift. One note a programme.

    Flags:
        programme: Press
        athlete: {name: Mara, best lifts: {back squat: 100 kg}}
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}  # <- here

    Passes:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: 60 kg}}
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}
    """
    athlete = ledger.athlete
    if athlete is None:
        return
    if not athlete.best_lifts and athlete.place.text.name == ledger.programme.place.text.name:
        return
    on_file = [ledger.known.exercise(best.exercise.words) for best in athlete.best_lifts]
    known = [exercise for exercise in on_file if exercise is not None]
    if len(known) < len(on_file):
        return
    lacking: dict[str, tuple[SetGroup, Load, str]] = {}
    for exercise, entry, load, other in _by_percentage(ledger):
        if exercise in known or (not other and any(_near(best, exercise) for best in known)):
            continue
        lacking.setdefault(exercise.name, (entry, load, other or entry.name))
    if not lacking:
        return
    (first, load, _), *rest = lacking.values()
    names, others = [name for *_, name in lacking.values()], [entry for entry, *_ in rest]
    share = load.words.removesuffix(f" of {names[0]}")
    yield found(
        first.work.places["load"],
        f"{share} of {first_of(names)}, but no best on file for {athlete.name}.",
        wanted="the best lift on file",
        change=_without_a_best(ledger.programme, athlete, [first, *others], names),
        where=line_name(first.prescription),
        amount=Amount(len(names), 0, "lifts"),
        related=tuple(Related(entry.work.places["load"], line_name(entry.prescription)) for entry in others),
    )


_NO_BEST = (
    r"(?i)\b(?:no|not|never|without|nothing in)\b[^.;]{0,15}(?:%|\bper ?cent\w*|\bmax(?:es|imum|imal|ing)?\b"
    r"|\b1 ?RM\b|\btest(?:s|ing)?\b|\bbests?\b|\bPBs?\b)"
)
"""Words of a coach who wants no maximum of an athlete: ``No % for him, no maxes``."""


def _without_a_best(programme: Programme, athlete: Athlete, lines: list[SetGroup], names: list[str]) -> str:
    """What to write: nobody files a best of whom none is wanted, and none there is of the body alone."""
    texts = (*of_athlete(athlete), programme.note)
    if any(re.search(_NO_BEST, text) for text in texts):
        return "The % is left over: write an effort instead, such as `rir: 3`; no best is wanted here."
    if all(entry.implement in ("bodyweight", "none") for entry in lines):
        return "The body alone has no best in kg: write an effort such as `rir: 3`, or leave the load out."
    it = "it" if len(names) == 1 else "them"
    return f"Write {it} under `best lifts`, or write a load in kg or an effort."


def _by_percentage(ledger: Ledger) -> Iterator[tuple[Exercise, SetGroup, Load, str]]:
    """Entries with a load in % of a best lift, with that lift, the load, and the lift's name where it is
    another one.
    """
    for _, entry in ledger.entries():
        load = entry.work.load
        if load is None or load.kind not in ("percent", "lift") or not entry.sets.high:
            continue
        other = load.whole if load.kind == "lift" else ""
        exercise = ledger.known.exercise(other) if other else entry.exercise
        if exercise is not None:
            yield exercise, entry, load, other


def _near(one: Exercise, other: Exercise) -> bool:
    """Whether two exercises are variants of one lift."""
    alike = bool(one.pattern) and one.pattern == other.pattern and one.implement == other.implement
    return alike or of_one_lift(one, other)


@rule(
    "best-lift-old",
    family="load",
    severity="note",
    confidence="common practice",
    why="A best lift moves, so percentages of an old one may by now be too light or too heavy.",
    sources=(),
    options=(
        Option("oldest", 12, "weeks between the test and the start", "common practice"),
        Condition(
            "oldest between meets",
            30,
            "weeks, where the sport tests its lifts at meets",
            "common practice, no source: two or three meets a year",
        ),
        Condition(
            "sports of meets",
            ("weightlifting", "weightlifter", "powerlifting", "powerlifter", "Olympic lifting", "strongman"),
            "words in the name of a sport that tests its lifts at meets",
            "common practice",
        ),
    ),
    needs=("load",),
)
def best_lift_old(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Loads in % of a best lift that was tested long before the programme starts.

    Counts the weeks from the test to the first day of the programme (to today where no start is written);
    wants 12 at most, and 30 in a sport that lives off its last meet. Silent where no day of the test is
    written. One note a programme.

    Flags:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: {load: 60 kg, tested: 2025-06-02}}}
        starts: 2026-01-05
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}  # <- here

    Passes:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: {load: 60 kg, tested: 2025-12-01}}}
        starts: 2026-01-05
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}
    """
    starts = ledger.programme.starts or ledger.today
    sport = ledger.athlete.sport if ledger.athlete else ""
    by_meets = says(limits.names("sports of meets"), sport)
    most = limits.number("oldest between meets") if by_meets else limits.number("oldest")
    old: dict[Exercise, tuple[SetGroup, BestLift, float]] = {}
    for exercise, entry, _, other in _by_percentage(ledger):
        tested = [(best.tested, best) for best in entry.best if best.tested is not None and not other]
        if not tested or len(tested) < len(entry.best):
            continue
        day, best = max(tested, key=lambda one: one[0])
        weeks = (starts - day).days / 7
        if weeks > most:
            old.setdefault(exercise, (entry, best, weeks))
    if not old:
        return
    (first, best, _), *others = old.values()
    said = [f"{entry.name} {weeks:.0f} weeks before the start" for entry, _, weeks in old.values()]
    yield found(
        first.work.places["load"],
        f"Last tested: {first_of(said)}.",
        wanted=limits.words("a test no older than {:week}", "oldest between meets" if by_meets else "oldest"),
        change="Test again, estimate it from a hard set, or go by RIR or RPE.",
        where=line_name(first.prescription),
        group=first.name,
        amount=Amount(max(weeks for _, _, weeks in old.values()), most, "weeks"),
        related=(
            Related(best.exercise.place, f"tested {best.tested}"),
            *(Related(lift.exercise.place, f"tested {lift.tested}") for _, lift, _ in others),
        ),
    )


@rule(
    "top-set-missing",
    family="load",
    severity="warning",
    confidence="fact",
    why="A share of the top set can only be worked out once there is one.",
    sources=(),
)
def top_set_missing(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A load in % of a top set, and no top set before it.

    Looks for earlier sets of the same exercise in the session, in the same line or one above; wants one whose
    load is no share of a top set itself.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                work:
                  - {sets: 3, reps: 5, load: 90 % of top set}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                work:
                  - {sets: 1, reps: 3, rpe: 8}
                  - {sets: 3, reps: 5, load: 90 % of top set}
    """
    lifted: set[Exercise | str] = set()
    for entry in visit.own:
        lift = entry.exercise or entry.name
        load = entry.work.load
        if load is None or load.kind != "top set":
            if entry.sets.high:
                lifted.add(lift)
        elif entry.sets.high and lift not in lifted:
            yield found(
                entry.work.places["load"],
                f"{load.words}, but no set of {entry.name} comes before.",
                wanted="a top set before it",
                change="Put one above, such as `{sets: 1, reps: 3, rpe: 8}`, or write the load itself.",
                where=line_name(entry.prescription),
                edits=_top_set(entry),
            )


def _top_set(entry: SetGroup) -> Offer:
    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.moves import set_above

        keys = {"sets": "1", "reps": "3", "rpe": "8"}
        return set_above(entry.work.places["load"], entry.name, keys)

    return work_out


@rule(
    "reserve-hard-to-judge",
    family="repetitions",
    severity="note",
    confidence="acute study",
    why="Lifters guess the repetitions they have left to about one where few are left, and are more than two"
    " out where many are.",
    sources=("hackett-2017",),
    options=(Option("most", 5, "repetitions in reserve", "hackett-2017"),),
    stands_back=("rehabilitation",),
    needs=("rir",),
)
def reserve_hard_to_judge(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Loads that the lifter is to find by more repetitions in reserve than anybody can judge.

    Looks at lines with a RIR and no load by which to set it; wants at most 5 repetitions in reserve, judged
    on the low end of a range. One note a programme. Leaves work for speed and deloads alone.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 7-8}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 4-5}
    """
    far: dict[object, SetGroup] = {}
    for _, entry in (one for week in ledger.weeks if not week.is_deload for one in week.entries()):
        rir = entry.work.rir
        if rir is None or rir.low <= limits.number("most"):
            continue
        if _found_by_feel(entry):
            far.setdefault((entry.work.places["rir"].key, entry.name), entry)
    if not far:
        return
    lines = sorted(far.values(), key=lambda entry: entry.work.places["rir"].start)
    first, most = lines[0], plain(limits.number("most"))
    place = first.work.places["rir"]
    others = {at.key: entry for entry in lines if (at := entry.work.places["rir"]) != place}
    yield found(
        place,
        f"RIR {first.work.rir} and no load: {first_of(list(dict.fromkeys(entry.name for entry in lines)))}.",
        wanted=limits.words("a load, or at most {:repetition} in reserve", "most"),
        change="Write a load in kg or % of the best lift, or a lower RIR.",
        where=line_name(first.prescription),
        edits=in_one_edit(f"write rir: {most}", [writing(entry.work.places["rir"], most) for entry in lines]),
        related=tuple(
            Related(entry.work.places["rir"], f"{entry.name}: RIR {entry.work.rir}")
            for entry in others.values()
        ),
    )


def _found_by_feel(entry: SetGroup) -> bool:
    """Whether effort alone tells the lifter what to load: something is lifted, and no load is written."""
    exercise = entry.exercise
    lifted = exercise is not None and entry.implement in LOADED and exercise.kind not in NO_LIFTS
    return lifted and entry.work.load is None
