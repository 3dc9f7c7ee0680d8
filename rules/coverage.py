"""Coverage: what the programme means to train and leaves out."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.finding import found
from ..lint.ledger import TOTAL, Ledger, Week
from ..lint.registry import Limits, rule
from .words import counted_lines, line_name, listed, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding, Severity
    from ..lint.ledger import Count, Tally
    from ..lint.places import Place
    from ..lint.programme import Term

LEG_WORK = ("knee extension", "hip extension", "knee flexion", "hip hinge", "squat", "lunge")
"""Joint actions and patterns by which a week counts as training the legs."""


@rule(
    "knee-flexion-missing",
    family="coverage",
    severity="warning",
    confidence="trial",
    why="The short head of biceps femoris crosses only the knee, so squats and hinges leave it out, and the"
    " hamstrings near the knee answer to bending it. This is about coverage; it forecasts no injury.",
    sources=("bourne-2017", "kubo-2019", "maeo-2021", "cp-both"),
    stands_back=True,
)
def knee_flexion_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Lower-body work without a single set of knee flexion.

    Counts direct sets of knee flexion in the weeks of a block that train the legs hard; wants at least one.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: stiff-leg deadlift, sets: 3, reps: 8}
              - {exercise: seated leg curl, sets: 1, reps: 12}
    """
    if not _legs_lack(week, "knee flexion"):
        return
    hamstrings = week.for_actions(("hip hinge",))
    legs = week.for_actions(LEG_WORK, hard=True)
    if hamstrings:
        counted = (
            f"{sets_of(str(hamstrings))} for the hamstrings, all hinges; nothing bends the knee against load."
        )
    else:
        counted = f"{sets_of(str(legs))} for the legs; nothing bends the knee against load."
    yield found(
        _where_to_add(hamstrings or legs),
        counted,
        wanted="at least one set of knee flexion in the block: hinges and squats leave out the short head of"
        " biceps femoris",
        change=f"Add a leg curl of any kind or a Nordic curl to {_sessions(hamstrings or legs)}.",
        where=_where(hamstrings or legs),
        subject="knee flexion",
        related=counted_lines(legs),
        excess=legs.high,
    )


@rule(
    "hip-hinge-missing",
    family="coverage",
    severity="warning",
    confidence="trial",
    why="Extending the hip with a nearly straight knee is the hamstrings' other job, and the one that"
    " trains them long; squats and hip thrusts leave it to the gluteals.",
    sources=("bourne-2017", "kubo-2019", "cp-both"),
    stands_back=True,
)
def hip_hinge_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """Lower-body work without a hip hinge: hip extension with a nearly straight knee.

    Counts sets of exercises that hinge, in the weeks of a block that train the legs hard; wants at least
    one. A warning where the goal is size or strength, else a note.

    Flags:
        programme: Legs
        goal: strength
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}  # <- here
              - {exercise: hip thrust, sets: 3, reps: 8}
              - {exercise: leg press, sets: 2, reps: 8}

    Passes:
        programme: Legs
        goal: strength
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 5}
              - {exercise: Romanian deadlift, sets: 3, reps: 8}
              - {exercise: leg press, sets: 2, reps: 8}
    """
    if not _legs_lack(week, "hip hinge"):
        return
    curls = week.for_actions(("knee flexion",))
    legs = week.for_actions(LEG_WORK, hard=True)
    serious: Severity = "warning" if week.programme.goal in ("hypertrophy", "strength") else "note"
    yield found(
        _where_to_add(curls or legs),
        f"{sets_of(str(legs))} for the legs; none extends the hip with a nearly straight knee.",
        severity=serious,
        wanted="at least one set of a hip hinge in the block",
        change=f"Add a hinge, such as a Romanian deadlift, to {_sessions(curls or legs)}.",
        where=_where(curls or legs),
        subject="hip hinge",
        related=counted_lines(legs),
        excess=legs.high,
    )


def _legs_lack(week: Week, action: str) -> bool:
    """Whether a typical week trains the legs, hamstrings meant, and its whole block lacks an action."""
    if not week.is_typical() or not week.means("hamstrings"):
        return False
    block = week.ledger.of_block(week.block)
    return bool(week.for_actions(LEG_WORK, hard=True)) and not (
        block.for_actions((action,)) or block.could_hold(actions=(action,))
    )


def _where_to_add(count: Count) -> Place:
    return count.lines()[0][0].place


def _where(count: Count) -> str:
    return line_name(count.lines()[0][0])


def _sessions(count: Count) -> str:
    """The sessions that a count falls on, ``Lower A or Lower B``."""
    names = list(dict.fromkeys(line.session.name for line, _ in count.lines()))
    return " or ".join(names[:2])


@rule(
    "region-untrained",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="Adults are advised to train all major muscle groups: legs, hips, back, chest, abdomen, shoulders"
    " and arms. A programme that means less can say so in its focus.",
    sources=("us-pag-2018", "who-2020"),
    stands_back=True,
)
def region_untrained(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A region in focus that gets nothing at all; without a focus, one of the seven major regions.

    Counts every set that trains a muscle of the region, directly or not, over the whole programme, or over
    the block for a focus of its own; wants at least one. A note where the programme names neither a focus
    nor general health as its goal.

    Flags:
        programme: Push
        goal: general health
        sessions:
          - session: Gym  # <- here
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}

    Passes:
        programme: Push
        goal: general health
        focus: [chest]
        sessions:
          - session: Gym
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}
    """
    programme = ledger.programme
    if any(not entry.sure for _, entry in ledger.entries()):
        return
    meant: list[tuple[Tally, Term]] = [(ledger, term) for term in programme.focus]
    meant += [(ledger.of_block(block), term) for block in programme.blocks for term in block.focus]
    for tally, term in meant:
        missing = _untrained(tally, catalogue.area(term.words) or ())
        if missing:
            whole = len(missing) == len(_by_region(catalogue.area(term.words) or ()))
            yield found(
                term.place,
                f"{term.words} stands in the focus; nothing trains {'it' if whole else listed(missing)}.",
                wanted="at least one set, directly or as a helper",
                change="Add an exercise for it, or take it out of the focus.",
                where="focus",
                subject=term.words,
            )
    if programme.focus or all(block.focus for block in programme.blocks):
        return
    missing = _untrained(
        ledger, tuple(muscle for region in catalogue.major_regions for muscle in catalogue.area(region) or ())
    )
    session = next(programme.sessions(), None)
    if missing and session is not None:
        yield found(
            session.place,
            f"Nothing trains {listed(missing)}, not even as a helper.",
            severity="warning" if programme.goal == "general health" else "note",
            wanted="at least one set for each of the seven major regions",
            change="Add an exercise for each, or say in `focus` what this programme means to train.",
            where=session.name,
        )


def _by_region(muscles: tuple[str, ...]) -> dict[str, list[str]]:
    regions: dict[str, list[str]] = {}
    for muscle in muscles:
        regions.setdefault(catalogue.muscles()[muscle].region, []).append(muscle)
    return regions


def _untrained(tally: Tally, muscles: tuple[str, ...]) -> list[str]:
    """The regions of which none of these muscles gets a set."""
    return [
        region
        for region, members in _by_region(muscles).items()
        if not any(tally.sets(muscle, TOTAL, hard=False) for muscle in members)
    ]
