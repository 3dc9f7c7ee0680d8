"""Upper-body work by direction: pulls and presses, to the front and overhead."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT
from ..lint.counting.week import BUILDING
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import listed, says, sets_of
from .beside import in_the_sport, is_on_the_road
from .leg_coverage import is_in_focus
from .offers import adding_each
from .shared import (
    added_for_each,
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
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


PRESSES_AND_PULLS = {
    "vertical pull": "lats",
    "horizontal pull": "upper back",
    "vertical push": "front shoulder",
    "horizontal push": "chest",
}
"""The four directions in which the arms press and pull, and what each is for."""


@rule(
    "pull-or-push-missing",
    family="coverage",
    severity="note",
    confidence="common practice",
    why="In a study of muscle activity the side of the shoulder worked at 5 % of its maximum in a bench press"
    " and at 28 % in an overhead press; drawing the shoulder blades back is work for rows. No trial says"
    " that a block needs all four.",
    sources=("anatomy-crossing", "campos-2020"),
    options=(
        Condition(
            "fewest together",
            6,
            "sets of presses and pulls a week from which the upper body counts as trained",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation",),
)
def pull_or_push_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Upper-body training that leaves out vertical or horizontal pulling or pressing.

    Counts hard sets of presses and pulls in typical weeks; from 6 on it wants each of vertical pull,
    horizontal pull, vertical push and horizontal push somewhere in the block, as far as the focus means what
    it trains. Where strength, power or endurance is the goal it looks at what focus or priorities name; where
    health is, one vertical direction will do, and for novices and from 65 years on none. Work for the side of
    the shoulder will do for a vertical push. Silent in a return, in season, and where the athlete spares
    something of the upper body; on a direction that nothing serves which the athlete's equipment and
    restrictions allow, that a throw serves, or the athlete's sport (swimming, rowing, climbing), or that a
    note rules out (no bar, nothing overhead), on vertical ones of a programme for weeks away from home, and
    on horizontal pulls where somebody rows on a machine.

    Flags:
        programme: Upper
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}  # <- here
              - {exercise: bent-over row, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 2, reps: 8}

    Passes:
        programme: Upper
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
              - {exercise: bent-over row, sets: 3, reps: 8}
              - {exercise: overhead press, sets: 2, reps: 8}
              - {exercise: lat pulldown, sets: 2, reps: 8}
    """
    turn = week.turn()
    upper = turn.tally.for_actions(PRESSES_AND_PULLS, hard=True)
    if not week.is_typical() or turn.a_week(upper.high) < limits.number("fewest together"):
        return
    goals = (*BUILDING, "general health")
    block = ledger.judged_with(week)
    missing = [
        direction
        for direction, area in PRESSES_AND_PULLS.items()
        if not (block.for_actions((direction,)) or block.leaves_open((direction,)))
        and week.builds(area, goals)
        and not any(goes_fast(entry, direction) for _, entry in block.entries())
    ]
    pressing = block.for_actions(PRESSES_AND_PULLS, hard=True)
    if not missing or (not is_in_focus(week) and pressing.from_one_line()):
        return
    if "horizontal pull" in missing and rows_on_a_machine(block, ledger):
        missing.remove("horizontal pull")
    if ledger.programme.goal == "general health" and not is_vertical_asked(missing, ledger):
        missing = [direction for direction in missing if not direction.startswith("vertical")]
    if "vertical push" in missing and block.brings("side shoulder", DIRECT):
        missing.remove("vertical push")
    is_kept_up = week.phase == "in-season" and not is_in_focus(week)
    if week.phase == "return" or is_kept_up or spares_an_arm(ledger):
        return
    if not is_in_focus(week):
        in_sport = in_the_sport(ledger)
        missing = [direction for direction in missing if direction not in in_sport]
    missing = [direction for direction in missing if can_be_had(direction, week, ledger)]
    if missing:
        wanted = {one: serves(one) for one in missing}
        open_still = unless(block, missing, does="is one")
        yield found(
            where_to_add(upper),
            f"{sets_of(str(upper))} of presses and pulls{turn.words or ' a week'};"
            f" no {listed(missing, 'or')}{open_still}.",
            wanted="a set of each",
            change=f"{added_for_each(ledger.header, wanted, session_named(upper))}.",
            where=where_named(upper),
            edits=adding_each(ledger.header, [(session_of(upper), does) for does in wanted.values()]),
            subject=listed(missing),
            group=listed(missing),
            amount=Amount(len(PRESSES_AND_PULLS) - len(missing), len(PRESSES_AND_PULLS), "directions"),
            related=counted_lines(upper, of="presses and pulls"),
            excess=len(missing) * upper.high,
        )


def rows_on_a_machine(block: Tally, ledger: Ledger) -> bool:
    """Whether intervals are rowed: no hard sets, but all that coaches ask of a horizontal pull for health."""
    from ..lint.counting.endurance import endurance_named

    rowed = (
        endurance_named(entry.name, ledger.known)
        for _, entry in block.entries()
        if entry.prescription.kind == "intervals"
    )
    return any(exercise is not None and exercise.name == ROWED for exercise in rowed)


def goes_fast(entry: SetGroup, direction: str) -> bool:
    """Whether a throw presses or pulls in a direction: it counts as one where a pattern is asked for."""
    exercise = entry.exercise
    if exercise is None or exercise.pattern != "throw" or not entry.is_done:
        return False
    return THROWN.get(direction) in (*exercise.actions, *exercise.assists)


THROWN = {
    "horizontal push": "shoulder horizontal adduction",
    "vertical push": "shoulder flexion",
    "vertical pull": "shoulder extension",
}
"""What a throw does in each direction: chest passes press to the front, slams pull down."""

ARM_WORDS = (
    "shoulder", "shoulders", "elbow", "wrist", "neck", "overhead", "press", "pressing", "hanging", "pulling",
    "pull-up", "chin-up", "chest", "rib", "ribs", "arm", "arms", "hand", "rotator cuff", "collarbone",
)  # fmt: skip
"""Words in a restriction by which somebody spares the upper body: what is left out is left out for that."""


def spares_an_arm(ledger: Ledger) -> bool:
    """Whether the athlete spares something of the upper body in the programme."""
    return any(says(ARM_WORDS, one.subject.words) for one in ledger.header.spared())


ROWED = "rowing ergometer"

RULED_OUT = {
    "vertical pull": ("no bar", "no pull-up bar", "nothing to hang from", "no pulldown", "no pull-downs",
                      "no pull-ups", "no chin-ups", "no hanging"),
    "vertical push": ("no overhead", "nothing overhead", "not overhead", "no work overhead",
                      "no pressing overhead", "below shoulder height"),
    "horizontal pull": ("no rows", "no rowing"),
    "horizontal push": ("no bench", "no pressing", "no push-ups"),
}  # fmt: skip
"""What notes say where a direction is left out on purpose."""

OLDER = 65
"""Years from which health guidelines speak of older adults."""


def is_vertical_asked(missing: Iterable[str], ledger: Ledger) -> bool:
    """Whether health asks for a vertical direction: not of novices and older people; one of two will do."""
    age = ledger.athlete.age if ledger.athlete else None
    both = sum(direction.startswith("vertical") for direction in missing) > 1
    return both and ledger.level != "novice" and not (age is not None and age >= OLDER)


def can_be_had(direction: str, week: Week, ledger: Ledger) -> bool:
    """Whether no note rules a direction out, and something serves it that the athlete has and may do."""
    programme, header = ledger.programme, ledger.header
    if direction.startswith("vertical") and is_on_the_road(ledger):
        return False
    athlete = ledger.athlete.note if ledger.athlete else ""
    sessions = [visit.session.note for visit in week.visits]
    if says(RULED_OUT[direction], programme.note, week.block.note, athlete, *sessions):
        return False
    return bool(suggested(header, serves(direction)).names)
