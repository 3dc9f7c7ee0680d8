"""Care: cautions that defer to the athlete's clinician, licensed practice and local rules."""

from __future__ import annotations

import re
from datetime import timedelta
from functools import cache

from ..lint.body import spared
from ..lint.finding import Related, found
from ..lint.ledger import Entry, Ledger, Lifter
from ..lint.registry import Limits, Option, rule
from .words import line_name, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from datetime import date

    from ..lint.body.catalogue import Exercise
    from ..lint.body.spared import Trait
    from ..lint.finding import Finding
    from ..lint.places import Place
    from ..lint.programme import Athlete, Prescription, Programme, Restriction

LEVELS = ("novice", "intermediate", "advanced")
"""Levels of athletes and of exercises, from the first to the last."""

MOST_LINES = 20_000
"""Lines that are remembered as holding no word of a diagnosis."""

MOST_NAMED = 4
"""How many names a message gives before it only counts the rest."""


# What an athlete spares


@rule(
    "protected-area-loaded",
    family="care",
    severity="warning",
    confidence="anatomy",
    why="The athlete's file asks to spare this. Which joints and muscles an exercise loads is anatomy;"
    " whether it may stay is for whoever advised it to say.",
    sources=("anatomy-crossing",),
    stands_back=True,
)
def protected_area_loaded(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise that loads an area, or is a movement, that the athlete protects.

    Looks at every line outside a stated stage of rehabilitation; wants none that moves or trains what the
    athlete's file says to spare, on the side that it names. One finding for each restriction.

    Flags:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: incline bench press, sets: 3, reps: 8}
    """
    for restriction in ledger.athlete.protect if ledger.athlete else ():
        traits, side = spared.read(restriction.subject.words), spared.side_of(restriction.subject.words)
        loading: list[Entry] = []
        weeks = []
        for week in ledger.weeks:
            entries = () if week.rehabilitation else week.entries()
            held = [entry for _, entry in entries if _loads(entry, traits, side)]
            if held:
                loading += held
                weeks.append(week.number)
        if loading:
            yield _loaded(restriction, _each_line(loading), tuple(weeks))


def _loads(entry: Entry, traits: tuple[Trait, ...], side: str) -> bool:
    """Whether an entry loads what is spared; work of the other side alone does not."""
    if entry.exercise is None or (side and entry.side and entry.side != side):
        return False
    return entry.sets.high > 0 and spared.loads(entry.exercise, traits)


def _each_line(entries: Iterable[Entry]) -> list[Entry]:
    """One entry for each line and exercise, in the order of the file."""
    each = {(entry.prescription, entry.name): entry for entry in reversed(list(entries))}
    return sorted(each.values(), key=lambda entry: (entry.prescription.place.start, entry.prescription.order))


def _loaded(restriction: Restriction, loading: list[Entry], weeks: tuple[int, ...]) -> Finding:
    first, *others = loading
    subject = restriction.subject
    adviser = _the(restriction.adviser)
    names = _names(loading)
    return found(
        _named_at(first),
        f"`{subject.words}` is to be spared; {_some(names)} load{'s' if len(names) == 1 else ''} it.",
        wanted=f"only what is agreed with {adviser}",
        change=f"Ask {adviser} which of this may stay; swap or leave out the rest.",
        where=line_name(first.prescription),
        subject=f"{restriction.kind}: {subject.words}",
        related=(
            *_also(others, "loads it too"),
            Related(subject.place, f"what is to be spared, as advised by {adviser}"),
        ),
        weeks=weeks,
    )


def _the(adviser: str) -> str:
    return f"the {adviser}" if adviser else "whoever advised it"


def _named_at(entry: Entry) -> Place:
    """Where the exercise is named, which for one that is swapped is the swap."""
    return entry.work.places["exercise"]


def _also(entries: Iterable[Entry], words: str) -> Iterator[Related]:
    return (Related(_named_at(entry), f"{line_name(entry.prescription)}: {words}") for entry in entries)


def _names(entries: Iterable[Entry]) -> list[str]:
    return list(dict.fromkeys(entry.name for entry in entries))


def _some(names: list[str]) -> str:
    """``a, b and c``; of many the first ones, ``a, b, c, d and 3 more``."""
    if len(names) > MOST_NAMED + 1:
        names = [*names[:MOST_NAMED], f"{len(names) - MOST_NAMED} more"]
    return listed(names)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


@rule(
    "restriction-unclear",
    family="care",
    severity="note",
    confidence="fact",
    why="What is not understood is not looked for: no line will be named as loading it.",
    sources=(),
)
def restriction_unclear(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """A restriction in words that name no part of the body and no movement that can be looked for.

    Reads what the athlete protects; wants a muscle, a joint, a region, an exercise or a movement pattern.

    Flags:
        programme: Press
        athlete: {name: Ida, protect: [{movement: the usual, advised by: physiotherapist}]}  # <- here
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]

    Passes:
        programme: Press
        athlete: {name: Ida, protect: [{movement: overhead pressing, advised by: physiotherapist}]}
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]
    """
    for restriction in lifter.athlete.protect:
        subject = restriction.subject
        if not spared.read(subject.words):
            yield found(
                subject.place,
                f"`{subject.words}` names no part of the body or movement that can be looked for.",
                wanted="words such as left shoulder, lower back, overhead pressing, deep knee bend, jumping",
                change="Write it in such words, and look through the lines yourself until then.",
                where=f"{lifter.athlete.name}, protect",
            )


@rule(
    "restriction-review-past",
    family="care",
    severity="warning",
    confidence="fact",
    why="The file itself says when to ask again. What was right then may be too careful, or not enough, now.",
    sources=(),
)
def restriction_review_past(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """A restriction whose review date is past.

    Looks at the date under `review on` of everything that the athlete protects; wants it today or later.
    Silent where all of the athlete's dated programmes had ended by then: nobody trains by them any more.

    Flags:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {area: left knee, advised by: physiotherapist, review on: 2025-12-01}  # <- here
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]

    Passes:
        programme: Press
        athlete:
          name: Ida
          protect:
            - {area: left knee, advised by: physiotherapist, review on: 2099-12-01}
        sessions: [{session: Upper, exercises: [{exercise: bench press, sets: 3, reps: 8}]}]
    """
    for restriction in lifter.athlete.protect:
        due = restriction.review_on
        if due is not None and due < lifter.today and _trains_after(lifter, due):
            yield found(
                restriction.subject.place,
                f"`{restriction.subject.words}` was to be looked at again on {due},"
                f" {_days((lifter.today - due).days)} ago.",
                wanted="a review date that is still to come",
                change=f"Ask {_the(restriction.adviser)} what holds now, and write the new date or take the"
                " restriction out.",
                where=f"{lifter.athlete.name}, protect",
            )


def _trains_after(lifter: Lifter, day: date) -> bool:
    """Whether a programme of the athlete runs on a later day, or does not say when it ends."""
    ends = [plan.ends for plan in lifter.plans]
    return not ends or any(end is None or end > day for end in ends)


def _days(number: int) -> str:
    return "1 day" if number == 1 else f"{number} days"


# What is on file


@rule(
    "clearance-missing",
    family="care",
    severity="note",
    confidence="guideline",
    why="Before training starts or gets harder, guidelines look at current activity, at signs or known"
    " disease of heart, metabolism or kidneys, and at the effort meant. That is for a clinician; here only"
    " the date is kept.",
    sources=("riebe-2015", "whitfield-2017"),
    options=(Option("age", 65, "years from which a clearance is asked for", "common practice"),),
)
def clearance_missing(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """An athlete with something to spare, coming back, or of 65 and more, with no clearance on file.

    Looks for `protect`, for a programme or block in the phase `return`, and at the age; wants a date under
    `clearance on file`, or the team's statement on screening in spotline.yaml. Asked for once an athlete.

    Flags:
        programme: Legs
        athlete: {name: Ida, age: 70, screening on file: 2026-01-02}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athlete: {name: Ida, age: 70, clearance on file: 2026-01-02}
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    athlete = lifter.athlete
    reasons = list(_reasons_for_clearance(lifter, limits.number("age")))
    if reasons and athlete.clearance is None and not lifter.around.screened:
        yield found(
            athlete.place,
            f"{_capital(listed(reasons))}, and no clearance on file.",
            wanted="the date of a clearance that is kept elsewhere",
            change="Ask the athlete to see a physician or other licensed professional first, keep the paper"
            " elsewhere and write `clearance on file` with its date; or state once in spotline.yaml that the"
            " team screens.",
            where=athlete.name,
        )


def _reasons_for_clearance(lifter: Lifter, age: float) -> Iterator[str]:
    programmes = [plan.programme for plan in lifter.plans]
    if lifter.athlete.protect:
        yield "something to spare"
    if any("return" in (one.phase, *(block.phase for block in one.blocks)) for one in programmes):
        yield "a return to training"
    if lifter.athlete.age is not None and lifter.athlete.age >= age:
        yield f"an age of {lifter.athlete.age:g}"


@rule(
    "screening-missing",
    family="care",
    severity="note",
    confidence="guideline",
    why="Guidelines want a short screening by activity, symptoms and intended effort before anyone starts."
    " Only its date belongs here; a team can state once for all that it screens.",
    sources=("riebe-2015", "whitfield-2017"),
)
def screening_missing(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """An athlete with no screening on file, in a team that does not say that it screens.

    Looks at athletes of whom more than name and level is written; wants a date under `screening on file`
    or `clearance on file`, or the team's statement on screening in spotline.yaml. Asked for once an athlete.

    Flags:
        programme: Legs
        athlete: {name: Ida, age: 30}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athlete: {name: Ida, age: 30, screening on file: 2026-01-02}
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    athlete = lifter.athlete
    on_file = athlete.screening or athlete.clearance or lifter.around.screened
    if _is_kept(athlete) and not on_file:
        yield found(
            athlete.place,
            "No screening on file.",
            wanted="the date of a health screening that is kept elsewhere",
            change="Have the athlete answer the screening that your practice uses and write"
            " `screening on file` with its date; or state once in spotline.yaml that the team screens.",
            where=athlete.name,
        )


def _is_kept(athlete: Athlete) -> bool:
    """Whether more than a name and a level is written of somebody: a person, no placeholder."""
    told = (athlete.age, athlete.body_mass, athlete.days, athlete.minutes)
    return any(told) or bool(athlete.best_lifts or athlete.equipment or athlete.protect)


@rule(
    "junior-unsupervised",
    family="care",
    severity="note",
    confidence="guideline",
    why="Lifting suits young people well under qualified supervision; statements on it name that first.",
    sources=("faigenbaum-2009",),
    options=(Option("age", 18, "years below which supervision is asked for", "faigenbaum-2009"),),
)
def junior_unsupervised(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """An athlete under 18 with nothing written about who supervises.

    Looks at the age; wants words under `supervision`.

    Flags:
        programme: Legs
        athlete: {name: Ida, age: 16}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: goblet squat, sets: 2, reps: 10}]}]

    Passes:
        programme: Legs
        athlete: {name: Ida, age: 16, supervision: a qualified coach is in the room}
        sessions: [{session: Lower, exercises: [{exercise: goblet squat, sets: 2, reps: 10}]}]
    """
    athlete = lifter.athlete
    if athlete.age is not None and athlete.age < limits.number("age") and not athlete.supervision:
        yield found(
            athlete.place,
            f"Aged {athlete.age:g}, and nothing written about who supervises.",
            wanted="qualified supervision, written down",
            change="Have a qualified coach watch the sessions and write it under `supervision`; your local"
            " rules on young people come first.",
            where=athlete.name,
        )


# What a line asks for


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
)
def failure_without_spotter(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Sets to failure on a lift that can pin the lifter, without a word on spotting, pins or safety bars.

    Looks at barbell presses on the back and squats from a rack with no repetition in reserve, RPE 10, amrap
    or an open last set; wants a word on safety in a note of the line, session, block or programme, or under
    the athlete's supervision.

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
    said = _beginning(limits.names("words"))
    unsaid = _each_line(
        entry
        for _, entry in ledger.entries()
        if _can_pin(entry.exercise) and _goes_to_failure(entry) and not said(_words_on(entry, ledger))
    )
    if unsaid:
        yield found(
            _named_at(unsaid[0]),
            f"{_capital(_some(_names(unsaid)))} to failure, and no word on spotters, pins or safety bars.",
            wanted="a way out of a failed repetition, written down",
            change="Note who spots or where the safety bars stand, or leave a repetition in reserve.",
            where=line_name(unsaid[0].prescription),
            related=tuple(_also(unsaid[1:], "to failure too")),
        )


def _can_pin(exercise: Exercise | None) -> bool:
    """Whether a failed repetition leaves the bar on the lifter, with nothing there to catch it."""
    if exercise is None or exercise.implement != "barbell" or exercise.name.startswith("pin "):
        return False
    if "horizontal push" in exercise.patterns:
        return exercise.stance in ("lying", "incline")
    return "squat" in exercise.patterns and "rack" in exercise.station and exercise.kind != "isometric"


def _goes_to_failure(entry: Entry) -> bool:
    reps = entry.work.reps
    return entry.to_failure or (entry.reserve is None and reps is not None and reps.open_last)


def _words_on(entry: Entry, ledger: Ledger) -> Iterator[str]:
    """What is noted on the line and on all that it stands in."""
    yield from _notes_on(entry.prescription)
    yield ledger.programme.note
    yield ledger.athlete.supervision if ledger.athlete else ""


def _notes_on(line: Prescription) -> Iterator[str]:
    yield line.note
    yield line.paired.note if line.paired else ""
    yield line.session.note
    yield line.session.block.note


def _beginning(words: Iterable[str]) -> Callable[[Iterable[str]], bool]:
    """A test whether one of several texts holds a word that begins so, whatever the case."""
    pattern = re.compile("|".join(rf"\b{re.escape(word)}" for word in words) or r"(?!)", re.IGNORECASE)
    return lambda texts: any(pattern.search(text) for text in texts)


@rule(
    "lift-beyond-level",
    family="care",
    severity="note",
    confidence="common practice",
    why="Hard lifts are usually reached by way of their easier forms; the levels are this catalogue's.",
    sources=(),
    options=(Option("steps", 2, "levels above the athlete's own", "common practice"),),
)
def lift_beyond_level(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise two levels above the athlete's, none of whose easier forms comes before or beside it.

    Compares the catalogue's level with the athlete's; wants an easier form of the exercise in that week or
    an earlier one, or named as an alternative. A best lift on file shows that the athlete knows the lift.

    Flags:
        programme: Hamstrings
        athlete: {name: Ida, level: novice}
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: Nordic curl, sets: 2, reps: 5}  # <- here

    Passes:
        programme: Hamstrings
        athlete: {name: Ida, level: novice}
        sessions:
          - session: Lower
            exercises:
              - {exercise: assisted Nordic curl, sets: 2, reps: 10}
              - {exercise: Nordic curl, sets: 2, reps: 5}
    """
    if ledger.level not in LEVELS:
        return
    beyond = LEVELS.index(ledger.level) + limits.number("steps")
    trained: set[Exercise | str | None] = set()
    for week in ledger.weeks:
        trained.update(entry.exercise for _, entry in week.entries() if entry.sets.high)
        for _, entry in week.entries():
            if entry.exercise is None or LEVELS.index(entry.exercise.level) < beyond or entry.best:
                continue
            offered = {ledger.named(term.words) for term in entry.prescription.alternates}
            if _easier(ledger, entry.exercise).isdisjoint(trained | offered):
                yield _beyond(entry, entry.exercise)


def _easier(ledger: Ledger, exercise: Exercise) -> set[Exercise | str]:
    """The easier forms of an exercise, those of these, and so on."""
    forms: set[Exercise | str] = set()
    waiting = [exercise]
    while waiting:
        for name in waiting.pop().easier:
            form = ledger.known.exercise(name)
            if form is not None and form not in forms:
                forms.add(form)
                waiting.append(form)
    return forms


def _beyond(entry: Entry, exercise: Exercise) -> Finding:
    first = " or ".join(exercise.easier) or "an easier form"
    return found(
        _named_at(entry),
        f"{_capital(entry.name)} is a lift for {exercise.level} lifters, the athlete is"
        f" {entry.ledger.level}; no easier form of it comes before.",
        wanted=f"{first} first, or beside it",
        change=f"Start with {first}, name it under `or`, or correct the athlete's level.",
        where=line_name(entry.prescription),
        subject=exercise.name,
    )


# Rehabilitation


@rule(
    "stop-signs-missing",
    family="care",
    severity="note",
    confidence="trial",
    why="Rehabilitation trials say what pain is let pass and when to take the easier form; leaflets for"
    " patients name the signs to stop for. The clinician's own limits come first.",
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
def stop_signs_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Rehabilitation without a word on what to do about pain.

    Looks for pain, stop and the like in every note and in how lines progress; wants them said once.

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
    if stage is None or _beginning(limits.names("words"))(_all_notes(ledger.programme)):
        return
    yield found(
        stage.places.get("stage", stage.place),
        "Rehabilitation, and no word on what to do about pain.",
        wanted="what pain may pass, and the signs to stop for, in a note",
        change=f"Ask {_the(stage.adviser)} and note it, for instance: take the easier form when pain goes"
        " past 3 of 10; stop and ring a doctor for chest pain, dizziness or breath too short to speak.",
        where=f"rehabilitation, {stage.stage}",
    )


def _all_notes(programme: Programme) -> Iterator[str]:
    yield programme.note
    for line in programme.prescriptions():
        yield from _notes_on(line)
        if line.progression is not None:
            yield line.progression.when
            yield line.progression.note


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
def rehabilitation_open(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A stage of rehabilitation that ends before the programme does, is past, or lasts over half a year.

    Compares its end with the day on which the last week begins, or with today where the programme does not
    say when it starts; wants that day no later than the end, and the end no further off than 26 weeks.

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
    longest = limits.number("longest")
    weeks = (stage.until - (starts or ledger.today)).days / 7
    last = starts + timedelta(weeks=len(ledger.weeks) - 1) if starts else ledger.today
    counted = ""
    if last > stage.until:
        counted = f"the last week begins on {last}" if starts else "that is past"
    elif weeks > longest:
        counted = f"that is {weeks:.0f} weeks from {'the start' if starts else 'now'}"
    if counted:
        yield found(
            stage.places["until"],
            f"The stage ends on {stage.until}; {counted}.",
            wanted=f"an end that covers the programme, no more than {longest:g} weeks ahead",
            change=f"Ask {_the(stage.adviser)} which stage comes next and until when, and write that.",
            where=f"rehabilitation, {stage.stage}",
        )


# Privacy

_DIAGNOSES = """
ACL, PCL, ADHD, COPD, angina, anorexia, anticoagulant, antidepressant, anxiety disorder, arrhythmia,
arthritis, asthma, atrial fibrillation, beta blocker, blood pressure, blood thinner, bulimia, bursitis,
cancer, chemotherapy, concussion, coronary, depression, diabetes, diabetic, dialysis, disc bulge,
dislocation, eating disorder, epilepsy, epileptic, fasciitis, fracture, fractured, frozen shoulder, golfer's
elbow, hamstring strain, heart attack, heart disease, heart failure, hernia, herniated, hypertension,
hypertensive, ibuprofen, impingement, insulin, kidney disease, labrum tear, ligament tear, meniscus,
migraine, muscle strain, osteoarthritis, osteopenia, osteoporosis, pacemaker, Parkinson's, post-op,
postpartum, pregnancy, pregnant, rheumatoid, rupture, ruptured, sciatica, scoliosis, shin splints, slipped
disc, spondylolisthesis, spondylolysis, sprain, sprained, statin, stenosis, surgery, tendinitis,
tendinopathy, tendonitis, tendonopathy, tennis elbow, torn, warfarin
"""

PRIVATE = Option(
    "words",
    tuple(" ".join(word.split()) for word in _DIAGNOSES.split(",")),
    "words that read like a diagnosis, a treatment or a medicine",
    "common practice",
)

_NO_MOVEMENT = r"(?<!scapular )(?<!shoulder )(?<!blade )"
"""Depression of the shoulder blade is a joint action."""


@rule(
    "diagnosis-in-programme",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms; what lies"
    " behind them belongs with the clinician.",
    sources=(),
    options=(PRIVATE,),
    looks_beyond=True,
)
def diagnosis_in_programme(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A diagnosis, treatment or medicine written into a programme, be it in a note or a comment.

    Looks for the words of a list in the whole file, but for athletes who are written in it; wants none. The
    list is the team's to change.

    Flags:
        programme: Calf
        note: tendinopathy since March  # <- here
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]

    Passes:
        programme: Calf
        note: loaded since March
        sessions: [{session: Daily, exercises: [{exercise: heel drop, sets: 3, reps: 15}]}]
    """
    text = ledger.programme.place.text
    extents = [athlete.extent for athlete in ledger.programme.athletes if athlete.extent.text is text]
    places = [
        place
        for place in _private(text.place(0, len(text.content)), limits.names("words"))
        if not any(extent.start <= place.start < extent.end for extent in extents)
    ]
    if places:
        yield _told(places, ledger.programme.name)


@rule(
    "diagnosis-in-athlete-file",
    family="care",
    severity="warning",
    confidence="fact",
    why="Files in git are read by many and forget nothing. Restrictions belong in movement terms; what lies"
    " behind them belongs with the clinician.",
    sources=(),
    options=(PRIVATE,),
)
def diagnosis_in_athlete_file(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """A diagnosis, treatment or medicine in an athlete's file, or where a programme describes an athlete.

    Looks for the words of a list in all that is written of the athlete, comments too; wants none. The list
    is the team's to change.

    Flags:
        programme: Knee
        athlete:
          name: Ida
          note: meniscus in May  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Knee
        athlete:
          name: Ida
          note: lighter since May
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    places = _private(lifter.athlete.extent, limits.names("words"))
    if places:
        yield _told(places, lifter.athlete.name)


def _private(extent: Place, words: tuple[str, ...]) -> list[Place]:
    """Where one of the words stands by itself, in the singular or plural, in a stretch of text."""
    # A quick look first, at lines not seen before: nearly every text holds none of them.
    clean = _clean_lines(words)
    new = [line for line in extent.excerpt.casefold().splitlines() if line not in clean]
    content = "\n".join(new)
    alike = [alike for first, alike in _patterns(words) if first in content]
    if not alike:
        if len(clean) > MOST_LINES:
            clean.clear()
        clean.update(new)
        return []
    pattern = re.compile(rf"{_NO_MOVEMENT}(?<![\w-])(?:{'|'.join(alike)})s?(?![\w-])", re.IGNORECASE)
    matches = pattern.finditer(extent.text.content, extent.start, extent.end)
    return [extent.text.place(*match.span()) for match in matches]


@cache
def _clean_lines(words: tuple[str, ...]) -> set[str]:
    """Lines of texts looked through before in which none of some words begins."""
    return set()


@cache
def _patterns(words: tuple[str, ...]) -> list[tuple[str, str]]:
    """The beginning of each of some words, and a pattern for all of it, hyphens and blanks alike."""
    parts = [re.split(r"[\s-]", word) for word in words]
    return [(each[0].casefold(), r"[\s-]+".join(map(re.escape, each))) for each in parts]


def _told(places: list[Place], where: str) -> Finding:
    first, *others = places
    words = list(dict.fromkeys(f"`{place.excerpt}`" for place in places))
    read = "reads" if len(words) == 1 else "read"
    return found(
        first,
        f"{_some(words)} {read} like a diagnosis, a treatment or a medicine.",
        wanted="restrictions in movement terms, such as: no overhead pressing until 1 June",
        change="Take it out, say what movement to spare and who advised it, and ask whoever keeps the"
        " repository about its history. If it means something else, take the word off the list in"
        " spotline.yaml.",
        where=where,
        related=tuple(Related(place, "here too") for place in others),
    )
