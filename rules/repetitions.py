"""Repetitions and effort: spread over heavy and light work, and said without contradiction."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT
from ..lint.counting.effort import reserve_of, rpe_of
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, Related, found
from ..lint.model.naming import day_name, line_name
from ..lint.model.quantities import Range
from ..lint.wording.words import first_of, listed, sets_of
from .offers import exchanging, in_one_edit, offering, without, writing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Block, Prescription
    from .offers import Offer


@rule(
    "rep-range-narrow",
    family="repetitions",
    severity="note",
    confidence="convention",
    why="A position stand on many reviews finds that the load does not decide growth, and sources on fibre"
    " types conflict, so nothing speaks against heavy or light sets. Keeping some of both is a convention.",
    sources=("cp-spread", "acsm-2026-load", "fibre-36", "fibre-ham"),
    options=(
        Condition(
            "least sets",
            8,
            "direct sets a week for a muscle group",
            "common practice, no source: enough sets for two slots of 4",
        ),
        Condition(
            "least days",
            2,
            "days a week on which it is trained",
            "common practice, no source: enough days for two slots",
        ),
        Condition(
            "weeks",
            8,
            "weeks of a block, or of the programme, from which both are asked for",
            "common practice, no source: a short block may have one aim",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
    off=True,
)
def rep_range_narrow(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Only heavy or only light slots for a muscle group that has sets enough for both.

    Where the goal is size, looks at each block and at muscle groups with 8 or more direct hard sets on 2 or
    more days a week; wants a heavy slot (middle of the repetitions below 8) and a light one (8 or more)
    somewhere in the block. Short blocks may have one aim: a programme from 8 weeks on is looked at, block by
    block where they are as long. One note for all groups alike. Silent for novices, in season and under
    rehabilitation. Off until a team asks for it.

    Flags:
        programme: Legs
        goal: hypertrophy
        weeks: 8
        sessions:
          - session: Lower
            day: [monday, thursday]
            exercises:
              - {exercise: leg extension, sets: 4, reps: 10-12}  # <- here
              - {exercise: seated leg curl, sets: 3, reps: 10}

    Passes:
        programme: Legs
        goal: hypertrophy
        weeks: 8
        sessions:
          - session: Lower
            day: [monday, thursday]
            exercises:
              - {exercise: leg extension, sets: 2, reps: 10-12}
              - {exercise: leg extension, sets: 2, reps: 6}
              - {exercise: seated leg curl, sets: 3, reps: 10}
    """
    for block in blocks_for_both(ledger, limits):
        one_slot: dict[str, list[tuple[str, Count]]] = ledger.recall(
            _one_slot, ledger.weeks_of(block), limits
        )
        for slot, lacking in (("heavy", "light"), ("light", "heavy")):
            narrow = one_slot[slot]
            if not narrow:
                continue
            groups = [group for group, _ in sorted(narrow, key=lambda one: -one[1].middle)]
            line = narrow[0][1].lines()[0][0]
            yield found(
                line.place,
                f"No direct set {'under 8' if lacking == 'heavy' else 'from 8'} repetitions for the"
                f" {first_of(groups)}.",
                wanted=f"some {lacking} sets in the block",
                change=f"Write `reps: {'4-7' if lacking == 'heavy' else '8-20'}` for one exercise on one"
                " day.",
                where=line_name(line),
                subject=slot,
                edits=_widened(narrow, lacking),
                related=tuple(_first_lines(narrow)),
                weeks=tuple(range(block.first, block.first + block.weeks)),
            )


def blocks_for_both(ledger: Ledger, limits: Limits) -> Iterator[Block]:
    """The blocks that are asked for heavy and for light slots."""
    programme, long = ledger.programme, limits.number("weeks")
    if programme.goal != "hypertrophy" or ledger.level == "novice" or programme.weeks < long:
        return
    for block in programme.blocks:
        if not (block.weeks < long or block.deload or (block.phase or programme.phase) == "in-season"):
            yield block


def _first_lines(narrow: list[tuple[str, Count]]) -> Iterator[Related]:
    """The first line of each group."""
    for group, count in narrow:
        line = count.lines()[0][0]
        yield Related(line.place, f"{line_name(line)}, for the {group}")


def _widened(narrow: list[tuple[str, Count]], lacking: str) -> Offer:
    """Other repetitions on one of the lines of each group, of two and more."""
    words = "4-7" if lacking == "heavy" else "8-20"
    chosen: dict[Prescription, SetGroup] = {}
    for _, count in narrow:
        entries = {part.entry.prescription: part.entry for part in count.parts}
        if len(entries) > 1:
            likely = max(entries.values(), key=lambda one: one.compound == (lacking == "heavy"))
            chosen[likely.prescription] = likely
    return in_one_edit(
        f"write reps: {words} on {first_of([entry.name for entry in chosen.values()])}",
        [writing(entry.work.places.get("reps"), words) for entry in chosen.values()],
    )


def _one_slot(weeks: tuple[Week, ...], limits: Limits) -> dict[str, list[tuple[str, Count]]]:
    """By slot the groups whose direct sets in some weeks all fall into it, with their fullest count."""
    found: dict[str, list[tuple[str, Count]]] = {"heavy": [], "light": []}
    for group in catalogue.groups:
        counts = [week.sets(group, DIRECT) for week in weeks]
        fullest = max(counts, key=lambda count: count.middle)
        enough = fullest.middle >= limits.number("least sets")
        if not enough or len(fullest.days()) < limits.number("least days"):
            continue
        slots = {part.entry.slot for count in counts for part in count.parts}
        for slot, narrow in found.items():
            if slots == {slot}:
                narrow.append((group, fullest))
    return found


@rule(
    "rir-rpe-contradict",
    family="repetitions",
    severity="error",
    confidence="model",
    why="On the published scale RPE 10 leaves no repetition in reserve, RPE 9 one and RPE 8 two. Half points"
    " (from memory): 9.5 leaves none but allows more load, 8.5 one or two, 7.5 two or three; 5 to 6 leave"
    " four to six, and lighter sets are not counted in repetitions.",
    sources=("zourdos-2016",),
    asks=True,
    needs=("rir", "rpe"),
)
def rir_rpe_contradict(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """RIR and RPE of one line that cannot both hold.

    Takes the RPE as the published scale reads it, half points as ranges; wants that and the RIR to share a
    number. An error between whole points from 7 up, else a warning; silent below RPE 5.

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
    left = reserve_of(work.rpe)
    if left is None or left.meets(work.rir):
        return
    fitting = rpe_of(work.rir)
    choices = [*([("rpe", "RPE", fitting)] if fitting else []), ("rir", "RIR", left)]
    printed = all(end >= 7 and end % 1 == 0 for end in (work.rpe.low, work.rpe.high))
    yield found(
        work.places["rpe"],
        f"RPE {work.rpe} leaves {_repetitions(left)}, but RIR is {work.rir}.",
        severity="error" if printed else "warning",
        wanted="RPE and RIR that agree",
        change=f"Write {' or '.join(f'{name} {span}' for _, name, span in choices)}, or only one of the two.",
        where=line_name(entry.prescription),
        related=(Related(work.places["rir"], f"RIR {work.rir}"),),
        edits=offering(
            lambda: (
                Edit(work.places[key], str(span), f"write {name} {span}") for key, name, span in choices
            ),
            without(work.places["rir"], "rir", f"keep only RPE {work.rpe}"),
            without(work.places["rpe"], "rpe", f"keep only RIR {work.rir}"),
        ),
    )


def _repetitions(left: Range) -> str:
    return f"{left if left.high else 'no'} repetition{'s' if left.high > 1 else ''}"


@rule(
    "heavy-light-not-crossed",
    family="repetitions",
    severity="note",
    confidence="common practice",
    why="Where hinge and leg curl share their days, coaches cross heavy and light: no day is all heavy for"
    " the hamstrings, and both lifts see both.",
    sources=("cp-cross",),
    options=(Condition("least days", 2, "days a week on which both are trained", "cp-cross"),),
    stands_back=("rehabilitation", "peak"),
)
def heavy_light_not_crossed(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """Hinge and leg curl heavy on the same day and light on the same day.

    Where the goal is size, looks at the days of a typical week with hard sets of both; wants one day with the
    hinge heavy and the curl light and another the other way round. Speaks only where each of the two has
    both slots (middle of the repetitions below 8; 8 or more), each day one, and always the same. Off for
    novices.

    Flags:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower A
            day: monday
            exercises:
              - {exercise: Romanian deadlift, sets: 3, reps: 6}
              - {exercise: seated leg curl, sets: 3, reps: 6}  # <- here
          - session: Lower B
            day: thursday
            exercises:
              - {exercise: Romanian deadlift, sets: 3, reps: 12}
              - {exercise: seated leg curl, sets: 3, reps: 12}

    Passes:
        programme: Legs
        goal: hypertrophy
        sessions:
          - session: Lower A
            day: monday
            exercises:
              - {exercise: Romanian deadlift, sets: 3, reps: 6}
              - {exercise: seated leg curl, sets: 3, reps: 12}
          - session: Lower B
            day: thursday
            exercises:
              - {exercise: Romanian deadlift, sets: 3, reps: 12}
              - {exercise: seated leg curl, sets: 3, reps: 6}
    """
    if week.programme.goal != "hypertrophy" or week.programme.level == "novice":
        return
    if not week.is_typical() or not week.means("hamstrings"):
        return
    both = list(_hamstring_days(week))
    if len(both) < limits.number("least days") or week.could_hold(HAMSTRING_LIFTS):
        return
    slots = {day: _slots(hinge) | _slots(curl) for day, hinge, curl in both}
    heavy = [day_name(week.programme.starts, day) for day, one in slots.items() if one == {"heavy"}]
    light = [day_name(week.programme.starts, day) for day, one in slots.items() if one == {"light"}]
    if not heavy or not light or len(heavy) + len(light) < len(both):
        return
    curl, easy = (next(curl for day, _, curl in both if slots[day] == {one}) for one in ("heavy", "light"))
    line = curl.lines()[0][0]
    yield found(
        line.place,
        f"Hinges and leg curls both heavy on {listed(heavy)}, both light on {listed(light)}.",
        wanted="one heavy and one light on each day",
        change=f"Swap the curls: light on {heavy[0]}, heavy on {light[0]}.",
        where=line_name(line),
        edits=exchanging(line, easy.lines()[0][0], f"swap the curls of {heavy[0]} and {light[0]}"),
        related=counted_lines(*(count for _, *counts in both for count in counts)),
    )


HAMSTRING_LIFTS = ("hip hinge", "knee flexion")
"""The two jobs of the hamstrings, as a pattern and a joint action."""


def _hamstring_days(week: Week) -> Iterator[tuple[int, Count, Count]]:
    """Each day with hard sets of both hinges and leg curls, and these."""
    hinges, curls = HAMSTRING_LIFTS
    for day, tally in week.days():
        hinge = tally.for_actions((hinges,), hard=True)
        if hinge and (curl := tally.for_actions((curls,), hard=True)):
            yield day, hinge, curl


def _slots(count: Count) -> set[str]:
    return {part.entry.slot for part in count.parts}


@rule(
    "sets-against-reps",
    family="repetitions",
    severity="error",
    confidence="fact",
    why="Where every set has a number of its own there are as many numbers as sets; else nobody knows which"
    " of the two is meant.",
    sources=(),
)
def sets_against_reps(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """Repetitions or loads written set by set that do not agree with the number of sets.

    Counts the numbers in repetitions like 12/10/8 and in loads like 70/75/80 %; wants as many as there are
    sets, and as many of the one as of the other. A range of sets will do with any number in it.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 4, reps: 12/10/8}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 12/10/8}
    """
    work = entry.work
    reps = len(work.reps.sets) if work.reps and work.reps.each_set else 0
    loads = len(work.load.values) if work.load and len(work.load.values) > 1 else 0
    sets = work.sets
    if not (reps or loads) or sets is None or not sets.high:
        return
    written = [(key, number) for key, number in (("reps", reps), ("load", loads)) if number]
    wrong = [(key, number) for key, number in written if not sets.low <= number <= sets.high]
    if wrong:
        yield _disagreeing(entry, sets, wrong)
    elif reps and loads and reps != loads:
        yield found(
            work.places["load"],
            f"{loads} loads for {reps} numbers of repetitions.",
            wanted="one number for each set",
            change="Correct one of them.",
            where=line_name(entry.prescription),
            related=(Related(work.places["reps"], f"{reps} numbers of repetitions"),),
        )


def _disagreeing(entry: SetGroup, sets: Range, wrong: list[tuple[str, int]]) -> DraftFinding:
    """What is said of keys that hold another number of values than there are sets."""
    places = entry.work.places
    key, number = wrong[0]
    agreed = {other for _, other in wrong} == {number}
    own = places["sets"].excerpt == str(sets) and entry.prescription.paired is None
    fewer = Edit(places["sets"], str(number), f"write {sets_of(number)}", certain=False)
    return found(
        places[key],
        f"{sets_of(str(sets))}, but {listed([f'{number} {_NUMBERS[key]}' for key, number in wrong])}.",
        wanted="one number for each set",
        change=f"Write {sets_of(number)}, or give each set its number." if agreed else "Correct them.",
        where=line_name(entry.prescription),
        related=(Related(places["sets"], sets_of(str(sets))),),
        edits=(fewer,) if agreed and own else (),
    )


_NUMBERS = {"reps": "numbers of repetitions", "load": "loads"}
