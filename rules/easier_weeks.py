"""Easier weeks: deloads, returns and tapers."""

from __future__ import annotations

from ..lint.counting.change import Change
from ..lint.counting.counts import counted_lines
from ..lint.counting.set_group import UNITS_OF_LOAD
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, listed, plain, says, sets_of
from .load_steps import load_in_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.change import PartChange
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Prescription
    from ..lint.text.places import Place

CLEAR_CUT = (
    Option(
        "volume",
        20,
        "% fewer sets or repetitions in the week",
        "common practice, no source: 20 %; coaches cut mainly volume (Bell and others 2022)",
    ),
    Option("load", 10, "% less load in most of the hard work", "common practice"),
    Option("effort", 2, "repetitions more in reserve in most of the hard work", "common practice"),
)
"""What makes a lift, or all work of a week, clearly easier than in another; any one of them does."""

EASY = ("half", "light", "lighter", "easy", "easier", "fewer", "less", "lower", "reduce", "reduced", "cut")

THOUGHT_OF = (
    "deload", "deloads", "breather", "easy week", "easier week", "easy one", "easier one", "light week",
    "lighter week", "back-off week", "down week", "unload",
)  # fmt: skip
"""Words in the note of a programme by which its coach has thought of easier weeks (common practice)."""

EASY_WORDS = Option(
    "easy words",
    EASY,
    "words in a note that say that a week is easier",
    "common practice",
)


def is_easier(week: Tally, before: Tally, limits: Limits) -> bool:
    """Whether a week is clearly easier than one before: in its volume, or in most of its hard work.

    Most of it is eased where more than half of the hard sets before belong to lifts that are clearly easier,
    each in sets, repetitions, load or effort; of all sets where less than half of these are hard, as in
    circuits.
    """
    change = Change(before, week)
    if _is_cut(change, limits):
        return True
    is_hard = 2 * sum(part.hard for part in change.parts) >= sum(part.held for part in change.parts)
    work = [(part, part.hard if is_hard else part.held) for part in change.parts]
    eased = sum(sets for part, sets in work if not part.is_none and _is_eased(part, limits))
    return 2 * eased > sum(sets for _, sets in work)


def _is_cut(change: Change | PartChange, limits: Limits) -> bool:
    """Whether sets or repetitions are clearly fewer."""
    volume = 100 - limits.number("volume")
    return any(share is not None and share <= volume for share in (change.sets, change.repetitions))


def _is_eased(part: PartChange, limits: Limits) -> bool:
    if _is_cut(part, limits):
        return True
    load, reserve = part.load, part.reserve
    return (load is not None and load <= 100 - limits.number("load")) or (
        reserve is not None and reserve >= limits.number("effort")
    )


def further(change: Change) -> str:
    """What is known of load and effort: ``, 97 % of the load and 1 more in reserve``."""
    parts = []
    if change.load is not None:
        share = f"{change.load:.0f} % of the" if round(change.load) != 100 else "the same"
        parts.append(f"{share} load")
    if change.reserve is not None:
        more = round(2 * change.reserve) / 2
        less = f"{plain(-more)} less in reserve" if more else "the same effort"
        parts.append(f"{plain(more)} more in reserve" if more > 0 else less)
    return f", {listed(parts)}" if parts else ""


def notes_on_week(week: Week) -> list[str]:
    """What the coach has written beside the numbers of a week."""
    sessions = [visit.session.note for visit in week.visits]
    return [week.block.note, *sessions, *(entry.prescription.note for _, entry in week.entries())]


@rule(
    "deload-missing",
    family="progression",
    severity="note",
    confidence="convention",
    why="Strength and physique athletes who were asked take an easier week about every five or six (a figure"
    " from memory); coaches make it mainly with fewer sets and repetitions. No trial says how often.",
    sources=("bell-2022", "bell-2023", "rogerson-2024"),
    options=(
        Option(
            "weeks",
            8,
            "weeks of rising load at most",
            "a survey, from memory: every 5.6 weeks with a spread of 2.3, so 8 is at its end (Rogerson"
            " and others 2024)",
        ),
        Option("phases", ("in-season", "return"), "phases that are left alone", "common practice"),
        Option("levels", ("novice",), "levels that are left alone", "common practice"),
        *map(Condition.like, CLEAR_CUT),
    ),
    stands_back=("rehabilitation",),
    needs=("load",),
)
def deload_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """More than eight weeks of rising load without an easier one.

    Follows typical weeks in a row, as long as none is clearly easier than the one before: 20 % fewer sets or
    repetitions, or most of the hard work eased, lift by lift, in sets or repetitions by 20 %, in load by
    10 %, or with 2 more repetitions in reserve. One lightened load makes no easier week. Wants no more than 8
    such weeks where the heaviest load of a lift rises from the first to the last, or is to rise by so
    much every week or session. Off for novices, in season, in a return, where the lifter chooses the load,
    and where the programme's note speaks of easier weeks.

    Flags:
        programme: Squat
        weeks: 9
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1-3: 75 %, 4-6: 77.5 %, 7-9: 80 %}  # <- here

    Passes:
        programme: Squat
        weeks: 9
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: {1-4: 3, 5: 2, 6-9: 3}
                reps: 5
                load: {1-3: 75 %, 4-6: 77.5 %, 7-9: 80 %}
    """
    if ledger.level in limits.names("levels") or len(ledger.weeks) <= limits.number("weeks"):
        return
    if says(THOUGHT_OF, ledger.programme.note):
        return
    for run in _unbroken(ledger, limits):
        risen = _risen(run[0], run[-1]) if len(run) > limits.number("weeks") else []
        if not risen:
            continue
        first, last, words = risen[0]
        at = run[int(limits.number("weeks")) - 1].number
        yield found(
            last.work.places["load"],
            f"{counted_noun(len(run), 'week')} without an easier one: {last.name} goes up {words}.",
            wanted=limits.words("a deload after at most {:week}", "weeks"),
            change=f"Make week {at} or an earlier one a deload.",
            where=line_name(last.prescription),
            subject="deload",
            amount=Amount(len(run), limits.number("weeks"), "weeks"),
            related=(
                Related(
                    first.work.places["load"], f"week {run[0].number}: {load_in_words(first.work).words}"
                ),
            ),
            weeks=tuple(week.number for week in run),
            excess=len(run),
        )


def _unbroken(ledger: Ledger, limits: Limits) -> Iterator[list[Week]]:
    """Typical weeks in a row of which none is clearly easier than the one before."""
    run: list[Week] = []
    typical = ledger.typical_weeks()
    for week in ledger.weeks:
        counts = week in typical and week.phase not in limits.names("phases")
        if run and not (counts and not ledger.recall(is_easier, week, run[-1], limits)):
            yield run
            run = []
        if counts:
            run.append(week)
    yield run


def _risen(first: Week, last: Week) -> list[tuple[SetGroup, SetGroup, str]]:
    """Lifts whose heaviest load is higher in the last week than in the first, or is to rise, in words."""
    before, risen = first.lifts(), []
    for name, entries in last.lifts().items():
        pair = _heaviest(before.get(name, ()), entries)
        if pair is None:
            continue
        was, now, more = pair
        if more:
            risen.append(
                (was, now, f"from {load_in_words(was.work).words} to {load_in_words(now.work).words}")
            )
        elif added := _added_by_turn(now.prescription):
            risen.append((was, now, added))
    return risen


def _heaviest(
    before: Iterable[SetGroup], after: Iterable[SetGroup]
) -> tuple[SetGroup, SetGroup, bool] | None:
    """The heaviest sets of an exercise in two weeks, and whether the later is heavier; None if not known."""
    for unit in UNITS_OF_LOAD:
        was, now = ([entry for entry in entries if unit in entry.measured] for entries in (before, after))
        if was and now:
            most = [max(entries, key=lambda entry: entry.measured[unit]) for entries in (was, now)]
            return most[0], most[1], most[1].measured[unit] > most[0].measured[unit]
    return None


def _added_by_turn(line: Prescription) -> str:
    """``by 2.5 kg every week``, where a line adds load by the calendar and on no condition."""
    stated = line.progression
    if stated is None or not stated.every or stated.when or not stated.add.endswith(("kg", "lb", "%")):
        return ""
    return f"by {stated.add} every {stated.every.removeprefix('1 ')}"


@rule(
    "return-week-not-lighter",
    family="progression",
    severity="note",
    confidence="common practice",
    why="An army manual keeps the first two or three workouts very light, and coaches treat a return alike."
    " How light, and whether to start at all, is for the athlete, the coach and whoever treats them to"
    " say.",
    sources=("fm21-20-prep",),
    options=(
        Condition("volume", 10, "% fewer sets or repetitions than later", "common practice"),
        Condition("load", 5, "% less load than later in most of the hard work", "common practice"),
        Condition(
            "effort", 1, "repetitions more in reserve than later in most of the hard work", "common practice"
        ),
        EASY_WORDS,
    ),
    stands_back=("rehabilitation",),
)
def return_week_not_lighter(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A return whose first week is no lighter than those that follow.

    Compares the first week of a phase `return` with the later ones of it, or with the week after where it is
    only one; wants it lighter than at least one of them: 10 % fewer sets or repetitions, or most of the hard
    work with 5 % less load, or one more repetition in reserve. Silent where a note says that it is easier.

    Flags:
        programme: Back after the summer
        phase: return
        weeks: 3
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: 3, reps: 8, rir: 3}]  # <- here

    Passes:
        programme: Back after the summer
        phase: return
        weeks: 3
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: {1: 2, 2-3: 3}, reps: 8, rir: 3}]
    """
    for week, later in returns(ledger):
        if any(ledger.recall(is_easier, week, other, limits) for other in later):
            continue
        if says(limits.names("easy words"), ledger.programme.note, *notes_on_week(week)):
            continue
        fullest = max(later, key=lambda other: other.all_sets().middle)
        count = week.all_sets()
        yield found(
            _sets_place(count),
            f"The first week back is hardly lighter than week {fullest.number}: {sets_of(str(count))} against"
            f" {fullest.all_sets()}{further(Change(fullest, week))}.",
            wanted="a lighter start",
            change="Cut sets or load, or leave more in reserve.",
            where="first week back",
            amount=Amount(count.middle, fullest.all_sets().middle - 1),
            related=counted_lines(count),
            weeks=(week.number,),
        )


def returns(ledger: Ledger) -> Iterator[tuple[Week, list[Week]]]:
    """Each first week back that holds any sets, with the weeks that it is held against."""
    for week in ledger.weeks:
        if week.first_back and not week.rehabilitation and week.all_sets():
            later = _rest_of_return(ledger, week)
            if later:
                yield week, later


def _rest_of_return(ledger: Ledger, first: Week) -> list[Week]:
    """The later weeks of a return, else the week after it."""
    after = list(ledger.weeks[first.number :])
    later = []
    for week in after:
        if week.phase != "return":
            break
        later.append(week)
    return later or after[:1]


def _sets_place(count: Count) -> Place:
    """Where the sets of the first line that brings any are written."""
    entry = next(part.entry for part in count.parts if part.sets.high)
    return entry.work.places.get("sets", entry.prescription.place)
