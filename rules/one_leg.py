"""Leg work on one leg, for sports that load one at a time."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import sets_of
from .leg_coverage import LEG_WORK
from .offers import adding
from .shared import add, serves, suggested, unless

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


SEATED = ("kayak", "canoe", "paddl", "rowing", "rower", "luge", "sledge", "wheelchair")
"""Beginnings of words for sports that are done sitting, sprints among them."""


@rule(
    "two-legged-only",
    family="balance",
    severity="note",
    confidence="common practice",
    why="Running, cutting and kicking are done on one leg at a time; coaches give such athletes some leg work"
    " on one leg. This is about coverage and forecasts no injury.",
    sources=(),
    options=(
        Option(
            "sports",
            (
                "running",
                "sprint",
                "football",
                "soccer",
                "hockey",
                "rugby",
                "basketball",
                "handball",
                "netball",
                "skating",
                "fencing",
            ),
            "words in the name of a sport that loads one leg at a time",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
)
def two_legged_only(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Leg work on two legs only, for an athlete whose sport loads one leg at a time.

    Looks at the athlete's `sport` and at each block that trains the legs hard; wants one exercise on one leg,
    or a line with a `side`, somewhere in the programme. Jumps, holds and sprints on one leg will do. Silent
    in season.

    Flags:
        programme: Legs
        athlete: {name: Saskia, sport: field hockey}
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 6}  # <- here
              - {exercise: seated leg curl, sets: 3, reps: 10}

    Passes:
        programme: Legs
        athlete: {name: Saskia, sport: field hockey}
        sessions:
          - session: Lower
            exercises:
              - {exercise: split squat, sets: 3, reps: 6}
              - {exercise: seated leg curl, sets: 3, reps: 10}
    """
    sport = ledger.athlete.sport if ledger.athlete else ""
    if not is_for_one_leg(ledger, limits) or any(is_on_one_leg(entry) for _, entry in ledger.entries()):
        return
    for block in ledger.programme.blocks:
        meant = [week for week in ledger.typical_weeks() if week.block is block and week.means("legs")]
        turns = [week.turn() for week in meant if week.phase != "in-season"]
        trained = [(legs, turn) for turn in turns if (legs := turn.tally.for_actions(LEG_WORK, hard=True))]
        whole = ledger.of_block(block)
        if not trained or whole.leaves_open(LEG_WORK):
            continue
        legs, turn = max(trained, key=lambda one: one[0].high)
        line, one_leg = legs.lines()[0][0], suggested(ledger.header, _trains_one_leg)
        yield found(
            line.place,
            f"{sets_of(str(legs))} of leg work{turn.words or ' a week'} for {sport}, none on one leg"
            f"{unless(whole, LEG_WORK)}.",
            wanted="a set on one leg in the block",
            change=f"{add('lift on one leg', one_leg, line.session.name)}.",
            where=line_name(line),
            edits=adding(ledger.header, line.session, one_leg),
            subject="one leg",
            amount=Amount(0, 1, "exercises on one leg"),
            related=counted_lines(legs, of="leg work"),
            weeks=tuple(week.number for week in meant),
            excess=legs.high,
        )


def is_for_one_leg(ledger: Ledger, limits: Limits) -> bool:
    """Whether the athlete's sport loads one leg at a time, and is not done sitting."""
    said = ledger.athlete.sport.casefold() if ledger.athlete else ""
    is_seated = any(part.startswith(SEATED) for part in said.replace("-", " ").split())
    return not is_seated and any(word in said for word in limits.names("sports"))


def _trains_one_leg(exercise: Exercise) -> bool:
    return exercise.unilateral and serves(*LEG_WORK)(exercise)


def is_on_one_leg(entry: SetGroup) -> bool:
    """Whether one side works alone, in the legs or through the hips."""
    exercise = entry.exercise
    if exercise is None or not entry.is_done:
        return False
    return (entry.work.side != "" or exercise.unilateral) and bool(LOWER.intersection(exercise.direct))


LOWER = frozenset((*catalogue.regions["legs"], *catalogue.regions["hips"]))
