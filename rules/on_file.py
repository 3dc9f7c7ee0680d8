"""What should be on file: clearance, screening, supervision of juniors."""

from __future__ import annotations

import re

from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import found
from .files_words import (
    is_doctor,
    is_professional,
    is_word_of_a_professional,
    of_lifter,
    says_screened,
    says_who_cleared,
    who_cleared,
)
from .shared import beginning

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Lifter
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.athlete import Athlete, Restriction


# What is on file


@rule(
    "clearance-missing",
    family="care",
    severity="note",
    confidence="guideline",
    why="A guideline looks at current activity, at signs or known disease of heart, metabolism or kidneys,"
    " and at the effort meant. That this rule asks at a restriction, at a return and from 65 on is common"
    " practice; judging is for a clinician, and only the date is kept here.",
    sources=("riebe-2015", "whitfield-2017"),
    options=(Condition("age", 65, "years from which a clearance is asked for", "common practice"),),
)
def clearance_missing(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """An athlete with something to spare, coming back, or of 65 and more, with no clearance on file.

    Looks for `protect`, for a programme or block in the phase `return`, and at the age; wants a date under
    `clearance on file`, or a note that says which professional was asked, and when. What a licensed
    professional advised, with a date, is such a word on the restriction itself, on a return as well, and what
    a physician advised at any age. A movement that a coach leaves out is a choice of exercises. A team that
    screens is not asked about `protect`, which names its adviser; a screening is no clearance at a return or
    from 65 on. Asked for once an athlete.

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
    if reasons and athlete.clearance is None and not says_who_cleared(of_lifter(lifter)):
        is_asked = any(who_cleared(of_lifter(lifter)))
        yield found(
            athlete.place,
            f"{'A clearance without a date' if is_asked else 'No clearance on file'} ({', '.join(reasons)}).",
            wanted="its date",
            change="Write the day under `clearance on file`."
            if is_asked
            else "Ask a physician or other licensed professional, then write `clearance on file`.",
            where=athlete.name,
            once=True,
        )


def _reasons_for_clearance(lifter: Lifter, age: float) -> Iterator[str]:
    protect = lifter.athlete.protect
    if not lifter.resources.screened and not all(map(_needs_no_clearance, protect)):
        yield "a restriction"
    if _comes_back(lifter) and not any(map(is_word_of_a_professional, protect)):
        yield "a return to training"
    was_seen = any(is_doctor([one.adviser]) and is_word_of_a_professional(one) for one in protect)
    if lifter.athlete.age is not None and lifter.athlete.age >= age and not was_seen:
        yield f"age {lifter.athlete.age:g}"


def _needs_no_clearance(restriction: Restriction) -> bool:
    """Whether a professional gave it, or it is a movement that a coach leaves out: a choice of exercises."""
    by_coach = restriction.kind == "movement" and not is_professional([restriction.adviser])
    return by_coach or is_word_of_a_professional(restriction)


@rule(
    "screening-missing",
    family="care",
    severity="note",
    confidence="guideline",
    why="A guideline screens by current activity, symptoms and intended effort before anyone starts. Only the"
    " date belongs here; a team can state once for all that it screens.",
    sources=("riebe-2015", "whitfield-2017"),
    options=(
        Condition("adult", 18, "years from which a young beginner is not asked about", "common practice"),
        Condition(
            "middle age",
            40,
            "years from which beginners are asked about again",
            "whitfield-2017",
        ),
    ),
    follows=("clearance-missing", "junior-unsupervised"),
)
def screening_missing(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """An athlete with no screening on file, in a team that does not say that it screens.

    Looks at those who start or come back, of whom more than name and level is written: novices, but for
    those of 18 to 39, and returns to training; at no group of people that stands as one. Wants a date under
    `screening on file` or `clearance on file`, a note that says it, what a licensed professional advised with
    a date, or the team's statement on screening in spotline.yaml. Asked for once an athlete.

    Flags:
        programme: Legs
        athlete: {name: Ida, level: novice, age: 45}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athlete: {name: Ida, level: novice, age: 45, screening on file: 2026-01-02}
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    athlete = lifter.athlete
    on_file = athlete.screening or athlete.clearance or lifter.resources.screened
    if _is_kept(athlete) and _begins(lifter, limits) and not (on_file or _is_said(lifter)):
        yield found(
            athlete.place,
            "No health screening on file.",
            wanted="its date",
            change="Screen the athlete and write `screening on file`, or say it once: `screening` in"
            " spotline.yaml.",
            where=athlete.name,
            once=True,
        )


def _is_said(lifter: Lifter) -> bool:
    """Whether somebody looked at the athlete's health, by what is noted."""
    texts = list(of_lifter(lifter))
    advised = any(map(is_word_of_a_professional, lifter.athlete.protect))
    return advised or says_screened(texts) or says_who_cleared(texts)


def _begins(lifter: Lifter, limits: Limits) -> bool:
    """Whether somebody starts to train, or comes back: who has trained with a plan was screened before.

    Of young adults with nothing to spare only those who come back: a note on each would be read by nobody.
    """
    athlete = lifter.athlete
    young = athlete.age is not None and limits.number("adult") <= athlete.age < limits.number("middle age")
    starts = athlete.level == "novice" and not (young and not athlete.protect)
    return starts or _comes_back(lifter)


def _comes_back(lifter: Lifter) -> bool:
    """Whether a programme of theirs, or a block of one, is a return to training."""
    programmes = [plan.programme for plan in lifter.plans]
    return any("return" in (one.phase, *(block.phase for block in one.blocks)) for one in programmes)


def _is_kept(athlete: Athlete) -> bool:
    """Whether more than a name and a level is written of somebody: one person, and no placeholder."""
    if re.search(_SEVERAL, athlete.note):
        return False
    told = (athlete.age, athlete.body_mass, athlete.days, athlete.minutes)
    return any(told) or bool(athlete.best_lifts or athlete.equipment or athlete.protect)


_SEVERAL = (
    r"(?i)\b(?:crew|squad|group|team|class|party|unit) of \d|\b\d{1,3} (?:girls|boys|women|men|people|kids"
    r"|lads|children|pupils|students|players|athletes|members|juniors|seniors|swimmers|rowers|runners|lifters)\b"
)
"""Words of a note by which an athlete stands for several people, of whom no one date can be on file."""


@rule(
    "junior-unsupervised",
    family="care",
    severity="note",
    confidence="guideline",
    why="A position statement on lifting for young people asks for qualified supervision.",
    sources=("faigenbaum-2009",),
    options=(
        Condition(
            "age",
            18,
            "years below which supervision is asked for",
            "common practice, no source: the usual age of majority (from memory)",
        ),
    ),
)
def junior_unsupervised(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """An athlete under 18 with nothing written about who supervises.

    Looks at the age; wants words under `supervision`, or a name or note of the athlete, the programme or a
    session that says who leads.

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
    young = athlete.age is not None and athlete.age < limits.number("age")
    if young and not athlete.supervision and not _leads(_names_and_notes(lifter)):
        yield found(
            athlete.place,
            "No supervision of a junior written down.",
            wanted="a qualified coach at each session",
            change="Follow your local rules on young people, and write under `supervision` who it is.",
            where=athlete.name,
            once=True,
        )


_leads = beginning(
    (
        "coach", "teacher", "trainer", "instructor", "supervis", "PE", "physical education", "parent", "mum",
        "mom", "dad", "father", "mother", "adult", "led by", "taken by", "leads", "staff", "I am there",
        "I'm there", "I am with", "I'm with", "with me", "watched", "physio", "captain", "academy",
        "school gym", "school hall", "school sport", "school team", "school squad",
        "school lesson", "at school",
    )
)  # fmt: skip
"""Beginnings of words for who leads or watches; a school's camp or holiday is nobody."""


def _names_and_notes(lifter: Lifter) -> Iterator[str]:
    yield from of_lifter(lifter)
    for plan in lifter.plans:
        yield plan.programme.name
        yield from (session.name for session in plan.programme.sessions())
