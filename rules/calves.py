"""Coverage of the calves: work with a straight knee, and any at all."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import TOTAL
from ..lint.counting.week import muscles_of
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import sets_of
from .leg_coverage import LEG_WORK
from .offers import adding
from .shared import (
    add,
    coverage_severity,
    serves,
    session_named,
    session_of,
    suggested,
    unless,
    where_named,
    where_to_add,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "straight-knee-calf-missing",
    family="coverage",
    severity="warning",
    confidence="growth trial",
    why="With the knee bent the gastrocnemius is slack: seated raises grew it by 1 to 2 % where standing ones"
    " gave 9 to 12 %, and the soleus grew by as much in both.",
    sources=("kinoshita-2023", "anatomy-crossing"),
    stands_back=("rehabilitation",),
)
def straight_knee_calf_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Calf work with the knee bent only, which leaves the gastrocnemius out.

    Looks at typical weeks that hold hard sets of calf raises, where size is the goal, none is written, or the
    calves are named; wants at least one set in the block that trains the gastrocnemius, be it as a helper or
    in jumps; in any block where nobody names the calves. A warning where focus or priorities name them, else
    a note.

    Flags:
        programme: Calves
        focus: [calves]
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated calf raise, sets: 3, reps: 15}  # <- here
              - {exercise: seated calf raise, sets: 2, reps: 8}

    Passes:
        programme: Calves
        focus: [calves]
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated calf raise, sets: 3, reps: 15}
              - {exercise: standing calf raise, sets: 2, reps: 8}
    """
    if not week.is_typical() or not week.builds("gastrocnemius"):
        return
    turn = week.turn()
    raises = turn.tally.for_actions(("plantarflexion",), hard=True)
    block = ledger.judged_with(week)
    if not raises or block.brings("gastrocnemius") or block.leaves_open(areas=("gastrocnemius",)):
        return
    in_sight = are_calves_named(week)
    if not in_sight and ledger.brings("gastrocnemius"):
        return  # another block holds it: lifts change from block to block
    standing = suggested(week.programme, _straight_calf)
    yield found(
        where_to_add(raises),
        f"{sets_of(str(raises))} of calf raises{turn.words}, none with the knee straight"
        f"{unless(block, areas=('gastrocnemius',))}.",
        severity=coverage_severity(week, "warning" if in_sight else "note", standing),
        wanted="a set in the block",
        change=f"{add('straight-knee calf raise', standing, session_named(raises))}.",
        where=where_named(raises),
        edits=adding(week.programme, session_of(raises), standing),
        subject="gastrocnemius",
        group="gastrocnemius",
        amount=Amount(0, 1),
        related=counted_lines(raises, of="calf raises"),
        excess=raises.high,
    )


def are_calves_named(week: Week) -> bool:
    """Whether a muscle group in the focus, or a priority, holds the gastrocnemius."""
    named = [*(week.block.focus or week.programme.focus), *week.programme.priority]
    return any(catalogue.is_group(term.words) and "gastrocnemius" in muscles_of([term]) for term in named)


def _straight_calf(exercise: Exercise) -> bool:
    """Whether it trains the gastrocnemius directly: of the slow ones, straight-knee calf raises."""
    return exercise.weight("gastrocnemius") == 1.0


@rule(
    "calf-work-missing",
    family="coverage",
    severity="note",
    confidence="anatomy",
    why="Squats, hinges and leg curls hardly move the ankle against load, so the calves are left out where"
    " nothing else trains them. That a programme for the legs should hold some is common practice.",
    sources=("anatomy-crossing",),
    options=(
        Option(
            "goals",
            ("hypertrophy", "muscular endurance", "general health"),
            "goals of programmes that are looked at, beside those that name none",
            "common practice: for strength and power the lifts come first",
        ),
    ),
    stands_back=("rehabilitation",),
)
def calf_work_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Legs in the focus, and nothing trains the calves.

    Looks at typical weeks with hard leg work where the focus, or a priority, means the legs as a whole; wants
    a set in the block that trains the calves, be it as a helper or in jumps.

    Flags:
        programme: Legs
        focus: [legs]
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}  # <- here
              - {exercise: seated leg curl, sets: 3, reps: 10}

    Passes:
        programme: Legs
        focus: [legs]
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}
              - {exercise: seated leg curl, sets: 3, reps: 10}
              - {exercise: standing calf raise, sets: 2, reps: 12}
    """
    if week.programme.goal not in ("", *limits.names("goals")) or not week.is_typical():
        return
    if not means_whole_legs(week):
        return
    legs, block = week.for_actions(LEG_WORK, hard=True), ledger.judged_with(week)
    if not legs or block.brings("calves", TOTAL) or block.could_hold(areas=("calves",)):
        return
    raises = suggested(week.programme, serves("plantarflexion"))
    yield found(
        where_to_add(legs),
        f"{sets_of(str(legs))} for the legs, none for the calves.",
        wanted="a set in the block",
        change=f"{add('calf raise', raises, session_named(legs))}.",
        where=where_named(legs),
        edits=adding(week.programme, session_of(legs), raises),
        subject="calves",
        related=counted_lines(legs),
        excess=legs.high,
    )


def means_whole_legs(week: Week) -> bool:
    """Whether an area in the focus, or a priority, holds the thighs and the calves."""
    named = [*(week.block.focus or week.programme.focus), *week.programme.priority]
    wanted = {*catalogue.groups["quadriceps"], *catalogue.groups["calves"]}
    return any(wanted.issubset(muscles_of([term])) for term in named)
