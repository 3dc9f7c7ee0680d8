"""Lifts and stages that call for a caution: spotters, signs to stop."""

from __future__ import annotations

import re
from datetime import timedelta

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of
from .files_words import of_athlete, of_programme, plans_review
from .offers import adding_key, in_one_edit, writing
from .shared import also, beginning, capital, each_line, in_test, named_at, names_of, notes_on, with_the

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from .offers import Offer


@rule(
    "failure-without-spotter",
    family="care",
    severity="note",
    confidence="common practice",
    why="A barbell above the lifter can pin them when the last repetition fails; spotters, pins or safety"
    " bars are the usual answer.",
    sources=(),
    options=(
        Option(
            "words",
            ("spot", "pins", "safet", "catch", "partner", "stands by"),
            "beginnings of words that say how it is made safe",
            "common practice",
        ),
    ),
    follows=("more-reps-than-load-allows", "load-step-large", "week-out-of-line"),
)
def failure_without_spotter(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Sets to failure on a lift that can pin the lifter, without a word on spotting, pins or safety bars.

    Looks at barbell presses on the back and squats from a rack with no repetition in reserve, RPE 10, amrap
    or an open last set; wants a word on safety in a note of the line, session, block, programme or athlete,
    under the athlete's supervision, or in the list of equipment. Silent on the day of an event, which has
    spotters of its own.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 0}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            note: spotters for every last set
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 0}
    """
    said = beginning((*limits.names("words"), *WAYS_OUT))
    unsaid = each_line(
        entry
        for entry in _in_training(ledger)
        if _can_pin(entry) and entry.to_failure and not said(_words_on(entry, ledger)) and not _leaves(entry)
    )
    if unsaid:
        to_leave = [one for one in unsaid if not _finds_a_best(one)]
        words = "" if in_test(unsaid[0]) else unsaid[0].worked_out_in_words
        worked_out = f" ({words})" if words else ""
        yield found(
            named_at(unsaid[0]),
            f"{capital(first_of(names_of(unsaid)))} {_how_hard(unsaid)}{worked_out} with no spotter or"
            " safety bars noted.",
            wanted="a way out of a failed lift",
            change=f"Note the spotters, pins or safety bars{', or leave 1 in reserve' if to_leave else ''}.",
            where=line_name(unsaid[0].prescription),
            edits=in_one_edit("leave 1 in reserve", map(_leaving_one, to_leave)),
            related=tuple(also(unsaid[1:], "here too")),
        )


_LEAVING = (
    r"(?i)\b(?:leav\w+|keep\w*|hold\w*|stop\w*|with|always)\b[^.;]{0,20}\b(?:one|1|two|2|1-2|a rep)\b"
    r"|\b(?:one|1|two|2|1-2) (?:left|in the tank|in reserve|short|before failure|shy)\b|\bRIR ?[1-9]|\(-\d\)"
    r"|\b(?:in reserve|in the tank|not to failure|no failure|before (?:failure|it slows|form)|stops? clean"
    r"|clean (?:reps?|only)|no grind\w*)\b"
)
"""Words for an open set that stops before the last repetition fails: ``AMRAP leave one in``."""


def _leaves(entry: SetGroup) -> bool:
    """Whether a line says when its open set stops, or a note on it that the set leaves something."""
    line = entry.prescription
    return bool(line.stop_when) or any(re.search(_LEAVING, text) for text in (line.note, line.cue))


def _in_training(ledger: Ledger) -> Iterator[SetGroup]:
    """What is lifted on the days that are no event's."""
    events = {number for number, _ in ledger.events()}
    for week in ledger.weeks:
        for visit in week.visits:
            if not visit.day or 7 * (week.number - 1) + visit.day not in events:
                yield from (entry for _, entry in visit.entries() if entry.is_done or in_test(entry))


def _leaving_one(entry: SetGroup) -> Offer:
    places = entry.work.places
    for key, value in (("rir", "1"), ("rpe", "9")):
        if key in places:
            return writing(places[key], value)
    return adding_key(entry.prescription.place, "rir: 1")


def _how_hard(entries: list[SetGroup]) -> str:
    """``to failure``, or ``for a maximal single``, which is no set to failure: or both."""
    singles = [_is_single(entry) for entry in entries]
    if all(singles):
        return "for a maximal single"
    return "to failure or for a maximal single" if any(singles) else "to failure"


def _is_single(entry: SetGroup) -> bool:
    reps, done = entry.work.reps, entry.a_set
    return done is not None and done.high == 1 and not (reps and reps.open_last)


def _finds_a_best(entry: SetGroup) -> bool:
    """Whether it is a maximal single, a repetition maximum or another test, which a reserve would spoil."""
    load = entry.work.load
    return _is_single(entry) or in_test(entry) or (load is not None and load.kind == "rm")


def _can_pin(entry: SetGroup) -> bool:
    """Whether a failed repetition leaves the bar on the lifter, with nothing there to catch it."""
    exercise = entry.exercise
    if exercise is None or entry.implement != "barbell" or exercise.name.startswith("pin "):
        return False
    if "horizontal push" in exercise.patterns:
        return exercise.stance in ("lying", "incline")
    return "squat" in exercise.patterns and "rack" in exercise.station and exercise.kind != "isometric"


def _words_on(entry: SetGroup, ledger: Ledger) -> Iterator[str]:
    """What is noted on the line and on all that it stands in."""
    yield from notes_on(entry.prescription)
    yield ledger.programme.note
    yield entry.name
    if ledger.athlete:
        yield ledger.athlete.supervision
        yield ledger.athlete.note
    yield from (term.words for visit in ledger.visits for term in ledger.header.listed(visit.at))


WAYS_OUT = (
    "bail", "dump", "drop the bar", "collars off", "no collars", "monolift", "powerlifting", "combo rack",
    "comp rack", "competition rack", "competition bench", "power rack", "power cage", "half rack",
)  # fmt: skip
"""Further beginnings of words for a way out of a failed lift; such racks have pins."""


# Rehabilitation


@rule(
    "stop-signs-missing",
    family="care",
    severity="note",
    confidence="guideline",
    why="A published groin programme takes the easier form when pain is above 3 of 10, and a health service's"
    " leaflet says to stop and ring a doctor for chest pain, dizziness or breath too short to speak. The"
    " clinician's own limits come first.",
    sources=("haroy-pain", "otago-stop"),
    options=(
        Option(
            "words",
            ("pain", "hurt", "ache", "aching", "sore", "discomfort", "stop", "symptom"),
            "beginnings of words that say what to do about pain",
            "common practice",
        ),
    ),
)
def stop_signs_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Rehabilitation without a word on what to do about pain.

    Looks for pain, stop and the like in every note, of the athlete too, and in how lines progress; wants them
    said once.

    Flags:
        programme: Calf
        rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-03-01}  # <- here
        note: Slowly down on one leg, up with both.
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]

    Passes:
        programme: Calf
        rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-03-01}
        note: Slowly down on one leg, up with both. Stop when pain goes past 3 of 10.
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]
    """
    stage = ledger.programme.rehabilitation
    if stage is None:
        return
    texts = [*of_programme(ledger.programme), *(of_athlete(ledger.athlete) if ledger.athlete else ())]
    says_when = beginning((*limits.names("words"), *COMPLAINTS))
    if says_when(texts) or any(re.search(OUT_OF_TEN, text) for text in texts):
        return
    yield found(
        stage.places.get("stage", stage.place),
        "Rehabilitation without a word on pain or when to stop.",
        wanted="a pain limit and stop signs in a note",
        change=f"Ask {with_the(stage.adviser)}, and note both.",
        where=f"rehabilitation, {stage.stage}",
    )


COMPLAINTS = ("grumbl", "niggl", "flare", "swell", "swollen", "irritat", "twinge", "ease off", "back off")
"""Further beginnings of words for what to look out for."""

OUT_OF_TEN = r"\b\d{1,2} ?(?:/|of|out of) ?10\b"
"""A limit on a scale to ten."""


@rule(
    "rehabilitation-open",
    family="care",
    severity="note",
    confidence="common practice",
    why="Rules on volume and spacing stand back while a stage lasts. A stage that is past, or has no end in"
    " sight, is for its adviser to look at again.",
    sources=(),
    options=(Option("longest", 26, "weeks from the start, or from today, to the end", "common practice"),),
)
def rehabilitation_open(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A stage of rehabilitation that ends before the programme does, is past, or lasts over half a year.

    Compares its end with the day on which the last week begins, or with today where the programme does not
    say when it starts; wants that day no later than the end, the end within 26 weeks, or a review planned.

    Flags:
        programme: Calf
        rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-01-20}  # <- here
        starts: 2026-01-05
        weeks: 4
        note: Stop when pain goes past 3 of 10.
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]

    Passes:
        programme: Calf
        rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-02-01}
        starts: 2026-01-05
        weeks: 4
        note: Stop when pain goes past 3 of 10.
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]
    """
    stage = ledger.programme.rehabilitation
    if stage is None or stage.until is None:
        return
    starts = ledger.programme.starts
    weeks = (stage.until - (starts or ledger.today)).days / 7
    last = starts + timedelta(weeks=len(ledger.weeks) - 1) if starts else ledger.today
    counted = ""
    if last > stage.until:
        counted = f"ended on {stage.until}"
        if starts:
            counted = f"ends on {stage.until}, but the last week begins on {last}"
        later = "a later end, within {:week}"
    elif weeks > limits.number("longest"):
        counted = f"ends on {stage.until}, {weeks:.0f} weeks from {'the start' if starts else 'now'}"
        later = "an end within {:week}"
    if counted and not plans_review(ledger):
        yield found(
            stage.places["until"],
            f"The stage {counted}.",
            wanted=limits.words(later, "longest"),
            change=f"Ask {with_the(stage.adviser)} for the next stage, and write it.",
            where=f"rehabilitation, {stage.stage}",
        )
