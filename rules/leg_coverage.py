"""Coverage of the thighs: hinges, knee flexion, Nordic curls."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.counting.week import BUILDING
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, says, sets_of
from .beside import keeps_up_away
from .fallen_out import fallen_out, held_in, put_back
from .offers import adding
from .shared import (
    add,
    coverage_severity,
    serves,
    suggested,
    unless,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.suggestions import Suggestion
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.model.sessions import Prescription, Session
    from .fallen_out import FallenOut

LEG_WORK = ("knee extension", "hip extension", "knee flexion", "hip hinge", "squat", "lunge")
"""Joint actions and patterns by which a week counts as training the legs."""


@rule(
    "knee-flexion-missing",
    family="coverage",
    severity="warning",
    confidence="anatomy",
    why="The short head of biceps femoris crosses only the knee, so squats and hinges leave it out; in a"
    " trial leg curls grew it by 9 to 10 %. This is about coverage; it forecasts no injury.",
    sources=("anatomy-crossing", "maeo-2021", "kubo-2019", "cp-both"),
    stands_back=("rehabilitation",),
)
def knee_flexion_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Lower-body work without a single set of knee flexion.

    Counts direct sets of knee flexion in the weeks of a block that train the legs hard; wants at least one.
    Four or more weeks of a block with exercises of their own are judged by themselves, blocks of one week
    that follow one another together. Speaks where two lines train the legs, or the focus means them; where
    strength, power, endurance or health is the goal only if focus or priorities name the hamstrings; without
    a goal where some of the leg work has 8 repetitions or more. A warning where size is written as the goal,
    else a note. Silent in season, for up to 6 weeks away from home, and where a note says that it is left
    out. A missing hinge of the same lines is listed with it. Silent where no goal is written for the young,
    for a sport, a return or an event, and where the athlete is to spare what usually trains it: then the gap
    is meant.

    Flags:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}
              - {exercise: seated leg curl, sets: 1, reps: 12}
    """
    if not _legs_lack(week, ledger, "knee flexion") or is_ruled_out(week, ledger, NO_CURL):
        return
    turn, part = week.turn(), _part(week, ledger)
    hinges, legs = turn.tally.for_actions(("hip hinge",)), turn.tally.for_actions(LEG_WORK, hard=True)
    work, called = (hinges, "hip hinges") if hinges else (legs, "leg work")
    curls = suggested(week.programme, serves("knee flexion"))
    if curls.is_spared:
        return
    missing, wanted = "no knee flexion", _wanted(part)
    both = _lacks_hinge(week, ledger) and not (hinge := _hinges(week)).is_spared
    actions = ("knee flexion", "hip hinge") if both else ("knee flexion",)
    lost = [one for action in actions if (one := fallen_out(ledger, action))]
    session = _where_it_was(lost, week) or _for_the_back(work)
    line = _line_in(session, work)
    to = f"{session.name}{_in(part)}"
    advice = put_back(lost, _holding_lines(week), session, _in(part)) if lost else add("leg curl", curls, to)
    if both:
        missing, wanted = "no knee flexion or hinge", f"a set of each{_in(part)}"
        if not lost:
            advice = f"Add {listed([*curls.names[:1], *hinge.names[:1]])} to {to}"
    yield found(
        line.place,
        f"{sets_of(str(work))} of {called}{turn.words}, {missing}{held_in(lost)}"
        f"{_unless_in_block(week, ledger, 'knee flexion')}.",
        severity=coverage_severity(week, "warning" if _is_for_size(week) else "note", curls),
        wanted=wanted,
        change=f"{advice}.",
        where=line_name(line),
        edits=adding(week.programme, session, _first_of(lost, curls), part),
        subject="knee flexion",
        group="knee flexion",
        amount=Amount(0, 1),
        related=counted_lines(work, of=called),
        excess=work.high,
    )


@rule(
    "hip-hinge-missing",
    family="coverage",
    severity="warning",
    confidence="growth trial",
    why="In one trial hip extension grew the long head of biceps femoris more than Nordic curls did, and only"
    " hip extension grew the semimembranosus. Squats and hip thrusts grew the hamstrings little or not at"
    " all.",
    sources=("bourne-2017", "kubo-2019", "plotkin-2023", "cp-both"),
    stands_back=("rehabilitation",),
    follows=("knee-flexion-missing",),
)
def hip_hinge_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Lower-body work without a hip hinge: hip extension with a nearly straight knee.

    Counts sets of exercises that hinge, in the weeks of a block that train the legs hard; wants at least one.
    A warning where the goal is size, else a note. Four or more weeks of a block with exercises of
    their own are judged by themselves, blocks of one week that follow one another together. Speaks where two
    lines train the legs, or the focus means them; where power, endurance or health is the goal only if focus
    or priorities name the hamstrings. Curls alone are no training of the legs. Silent in season, for up to 6
    weeks away from home, where a note says that hinges are left out, and where the athlete is to spare usual
    ones: then the gap is meant.

    Flags:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: leg curl, sets: 3, reps: 8}  # <- here
              - {exercise: leg press, sets: 2, reps: 8}

    Passes:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: leg curl, sets: 3, reps: 8}
              - {exercise: Romanian deadlift, sets: 2, reps: 8}
    """
    if not _lacks_hinge(week, ledger):
        return
    turn, part = week.turn(), _part(week, ledger)
    curls = turn.tally.for_actions(("knee flexion",))
    legs = turn.tally.for_actions(LEG_WORK, hard=True)
    if all(part.entry.trains(("knee flexion",)) for part in legs.parts):
        return
    held = turn.tally.for_actions(("hip extension",)).where(_is_held)
    hinges = _hinges(week)
    if hinges.is_spared:
        return
    serious: Severity = "warning" if _is_for_size(week) else "note"
    lost = [one for one in (fallen_out(ledger, "hip hinge"),) if one]
    session = _where_it_was(lost, week) or _for_the_back(legs)
    line = _line_in(session, curls, legs)
    to = f"{session.name}{_in(part)}"
    advice = (
        put_back(lost, _holding_lines(week), session, _in(part)) if lost else add("hip hinge", hinges, to)
    )
    yield found(
        line.place,
        f"{sets_of(str(legs))} of leg work{turn.words}, no hip hinge{' that moves' if held else ''}"
        f"{held_in(lost)}"
        f"{_unless_in_block(week, ledger, 'hip hinge')}.",
        severity=coverage_severity(week, serious, hinges),
        wanted=_wanted(part),
        change=f"{advice}.",
        where=line_name(line),
        edits=adding(week.programme, session, _first_of(lost, hinges), part),
        subject="hip hinge",
        group="hip hinge",
        amount=Amount(0, 1),
        related=counted_lines(legs, of="leg work"),
        excess=legs.high,
    )


def _lacks_hinge(week: Week, ledger: Ledger) -> bool:
    """Whether a week that trains the legs lacks a hinge, and no note leaves it out."""
    return _legs_lack(week, ledger, "hip hinge", (*BUILDING, "strength")) and not is_ruled_out(
        week, ledger, NO_HINGE
    )


def _hinges(week: Week) -> Suggestion:
    return suggested(week.programme, serves("hip hinge"))


def _is_for_size(week: Week) -> bool:
    """Whether size is the goal by the coach's own word: only then is a gap surely none that is meant."""
    return week.programme.goal == "hypertrophy"


def _part(week: Week, ledger: Ledger) -> str:
    """The weeks that are judged by themselves, ``5-8``; empty where that is the block."""
    weeks = ledger.with_same_exercises(week)
    return f"{weeks[0].number}-{weeks[-1].number}" if weeks else ""


def _wanted(part: str) -> str:
    return f"a set in weeks {part}" if part else "a set in the block"


def _in(part: str) -> str:
    return f" in weeks {part}" if part else ""


def _where_it_was(lost: list[FallenOut], week: Week) -> Session | None:
    """The session of a week that is called like the one in which other weeks hold what is missing."""
    return lost[0].session(_holding_lines(week)) if lost else None


def _holding_lines(week: Week) -> list[Session]:
    return [visit.session for visit in week.visits if visit.session.prescriptions]


def _first_of(lost: list[FallenOut], suggestion: Suggestion) -> Suggestion:
    """What is suggested, after what other weeks hold."""
    return lost[0].before(suggestion) if lost else suggestion


def _for_the_back(count: Count) -> Session:
    """The session that a curl or hinge fits best: its name says so, or it extends the hips most.

    What extends the knee as well, as squats do, belongs to the front of the legs.
    """

    def for_back(session: Session) -> float:
        own = [part for part in count.parts if part.entry.prescription.session is session]
        return sum(-part.sets.middle if part.entry.trains(FRONT) else part.sets.middle for part in own)

    sessions = list(dict.fromkeys(line.session for line, _ in count.lines()))
    named = [one for one in sessions if says(BACK_IN_WORDS, one.name)]
    return max(named or sessions, key=for_back)


FRONT = ("knee extension",)
BACK_IN_WORDS = ("posterior", "hamstring", "hamstrings", "hinge", "back of the legs", "hinten", "Beinbeuger",
                 "ischios", "ischio", "isquios", "femoral", "femorales")  # fmt: skip
"""Words in the name of a session for the back of the legs, as coaches write them."""


def _line_in(session: Session, *counts: Count) -> Prescription:
    """Its first line in the first of some counts that has one, else its first: what is missing could stand
    beside it.
    """
    lines = (line for count in counts for line, _ in count.lines() if line.session is session)
    return next(lines, session.prescriptions[0])


def is_ruled_out(week: Week, ledger: Ledger, words: Collection[str]) -> bool:
    """Whether a note says that something is left out on purpose."""
    athlete = ledger.athlete.note if ledger.athlete else ""
    return says(
        tuple(words), ledger.programme.note, week.block.note, athlete, *(v.session.note for v in week.visits)
    )


NO_HINGE = tuple(
    f"{said} {lift}"
    for said in ("no", "without", "not", "never")
    for lift in (
        "deadlift",
        "deadlifts",
        "deadlifting",
        "RDL",
        "RDLs",
        "hinge",
        "hinges",
        "hinging",
        "good mornings",
    )
) + tuple(f"{lift} out" for lift in ("deadlift", "deadlifts", "RDL", "RDLs", "hinge", "hinges"))
NO_CURL = (
    "no leg curl", "no leg curls", "no hamstring curls", "no hamstring curl", "no hamstrings",
    "no hamstring work", "without leg curls", "hamstrings rest", "no knee flexion", "leg curls out",
)  # fmt: skip
"""What notes say where hinges, or curls, are left out on purpose."""


def _is_held(entry: SetGroup) -> bool:
    assert entry.exercise is not None
    return entry.exercise.kind == "isometric"


def _legs_lack(week: Week, ledger: Ledger, action: str, goals: Collection[str] = BUILDING) -> bool:
    """Whether a typical week trains the legs, hamstrings to be built, and its whole block lacks an action.

    Two lines train the legs, or one where focus or priorities name them: a single exercise beside other work
    is no training of the legs.
    """
    block = ledger.judged_with(week)
    if block.for_actions((action,)) or not asks_for_hamstrings(week, goals):
        return False
    legs = week.turn().tally.for_actions(LEG_WORK, hard=True)
    if not legs or block.leaves_open(actions=(action,)):
        return False
    if action == "knee flexion" and not week.programme.goal and _is_heavy(legs):
        return False
    if keeps_up_away(ledger) and not week.names("hamstrings"):
        return False
    return is_in_focus(week) or not block.for_actions(LEG_WORK, hard=True).from_one_line()


def asks_for_hamstrings(week: Week, goals: Collection[str]) -> bool:
    """Whether a week is typical, and hamstrings are to be built in it: in season keeping up is enough."""
    if week.phase == "in-season" and not (week.programme.priority or week.programme.focus):
        return False
    return week.is_typical() and week.builds("hamstrings", goals)


def is_in_focus(week: Week) -> bool:
    """Whether the block or the programme names anything in its focus or among its priorities."""
    return bool(week.block.focus or week.programme.focus or week.programme.priority)


def _is_heavy(legs: Count) -> bool:
    """Whether the legs are trained with few repetitions throughout, as for strength."""
    return all(part.entry.slot == "heavy" for part in legs.parts)


def _unless_in_block(week: Week, ledger: Ledger, action: str) -> str:
    return unless(ledger.judged_with(week), actions=(action,))
