"""Repetitions and effort: spread over heavy and light work, and said without contradiction."""

from __future__ import annotations

from ..lint.finding import Edit, Related, found
from ..lint.ledger import DIRECT, Entry, Ledger
from ..lint.quantities import Range, plain
from ..lint.registry import Limits, Option, rule
from .words import counted_lines, line_name, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding
    from ..lint.ledger import Count
    from ..lint.programme import Block


@rule(
    "rep-range-narrow",
    family="repetitions",
    severity="note",
    confidence="convention",
    why="Muscles grow from heavy and from light sets, and nothing in their fibres gives a reason to leave"
    " either out. A convention: sources on fibre types conflict.",
    sources=("cp-spread",),
    options=(
        Option("least sets", 8, "direct sets a week for a muscle group", "cp-spread"),
        Option("least days", 2, "days a week on which it is trained", "cp-spread"),
    ),
    stands_back=True,
)
def rep_range_narrow(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Only heavy or only light slots for a muscle group that has sets enough for both.

    Where the goal is size, looks at each block and at muscle groups with 8 or more direct hard sets on 2 or
    more days a week; wants a heavy slot (middle of the repetitions below 8) and a light one (8 or more)
    somewhere in the block. One note for all groups alike. Off for novices, in season and under
    rehabilitation.

    Flags:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            day: [monday, thursday]
            exercises:
              - {exercise: leg extension, sets: 4, reps: 10-12}  # <- here
              - {exercise: seated leg curl, sets: 3, reps: 10}

    Passes:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower
            day: [monday, thursday]
            exercises:
              - {exercise: leg extension, sets: 2, reps: 10-12}
              - {exercise: leg extension, sets: 2, reps: 6}
              - {exercise: seated leg curl, sets: 3, reps: 10}
    """
    programme = ledger.programme
    if programme.goal != "hypertrophy" or ledger.level == "novice":
        return
    for block in programme.blocks:
        if (block.phase or programme.phase) == "in-season" or block.deload:
            continue
        for slot, lacking in (("heavy", "light"), ("light", "heavy")):
            narrow = list(_only(ledger, block, slot, limits))
            if not narrow:
                continue
            groups = [group for group, _ in narrow]
            line = narrow[0][1].lines()[0][0]
            yield found(
                line.place,
                f"Every direct set for {listed(groups)} is {slot}"
                f" ({'fewer than 8' if slot == 'heavy' else '8 or more'} repetitions).",
                wanted=f"some {lacking} work in the block too",
                change=f"Make one of the exercises {lacking}"
                f" ({'4-7' if lacking == 'heavy' else '8-20'} repetitions) on one of the days.",
                where=line_name(line),
                subject=slot,
                related=counted_lines(*(count for _, count in narrow)),
                weeks=tuple(range(block.first, block.first + block.weeks)),
            )


def _only(ledger: Ledger, block: Block, slot: str, limits: Limits) -> Iterator[tuple[str, Count]]:
    """Groups whose direct sets in a block all fall into one slot, with the count of their fullest week."""
    weeks = [week for week in ledger.weeks if week.block is block]
    for group in ledger.of_block(block).groups():
        counts = [week.sets(group, DIRECT) for week in weeks]
        fullest = max(counts, key=lambda count: count.middle)
        enough = fullest.middle >= limits.number("least sets")
        if not enough or len(fullest.days()) < limits.number("least days"):
            continue
        if all(part.entry.slot == slot for count in counts for part in count.parts):
            yield group, fullest


@rule(
    "rir-rpe-contradict",
    family="repetitions",
    severity="error",
    confidence="trial",
    why="On the scale of repetitions in reserve an RPE is 10 less the repetitions left: RPE 10 leaves none,"
    " RPE 8 leaves two.",
    sources=("zourdos-2016",),
)
def rir_rpe_contradict(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """RIR and RPE of one line that cannot both hold.

    Takes 10 less the RPE as repetitions in reserve; wants the two ranges to share a number.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, rir: 2, rpe: 10}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, rir: 1-2, rpe: 8-9}
    """
    work = entry.work
    if work.rir is None or work.rpe is None:
        return
    left = Range(10 - work.rpe.high, 10 - work.rpe.low)
    if left.meets(work.rir):
        return
    fitting = Range(10 - work.rir.high, 10 - work.rir.low)
    choices = [("rpe", "RPE", fitting)] if fitting.low >= 1 else []
    choices.append(("rir", "RIR", left))
    yield found(
        work.places["rpe"],
        f"RPE {work.rpe} leaves {_repetitions(left)}; the same line says RIR {work.rir}.",
        wanted="RPE and RIR that agree (RPE is 10 less the repetitions in reserve)",
        change=f"Write {' or '.join(f'{name} {span}' for _, name, span in choices)}, whichever you mean, or"
        " state only one of them.",
        where=line_name(entry.prescription),
        related=(Related(work.places["rir"], f"RIR {work.rir}"),),
        edits=tuple(Edit(work.places[key], str(span), f"write {name} {span}") for key, name, span in choices),
    )


def _repetitions(left: Range) -> str:
    if left.high == 0:
        return "no repetition"
    return f"{left} repetition{'' if plain(left.high) == '1' else 's'}"
