"""Coverage of regions: what is untrained, pulls and presses, priorities, days per region."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.credits import TOTAL
from ..lint.counting.week import BUILDING, muscles_of
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import counted_noun, first_of, listed
from .beside import is_trained_beside
from .offers import adding_each, dropping, offering
from .shared import (
    added_for_each,
    capital,
    free_day,
    is_cut_short,
    is_for,
    lower,
    suggested,
    unless,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.tally import Tally, Visit
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Term
    from .offers import Offer


@rule(
    "region-untrained",
    family="coverage",
    severity="warning",
    confidence="guideline",
    why="Adults are advised to train all major muscle groups: legs, hips, back, chest, abdomen, shoulders"
    " and arms. A programme that means less can say so in its focus.",
    sources=("us-pag-2018", "who-2020"),
    stands_back=("rehabilitation",),
)
def region_untrained(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A region in focus that gets nothing at all; without a focus, one of the seven major regions.

    Counts every set that trains a muscle of the region, directly or not, over the whole programme, or over
    the block for a focus of its own; wants at least one. Without a focus it speaks where health or size is
    the goal, or none is written, and only where more than half of the body is trained, unless health is the
    goal. A warning where health is, three regions or more are left out, and the athlete spares nothing; else
    a note. Activities that load a region train it; legs and hips are left alone where somebody runs, rides,
    walks or plays beside the sessions. The abdominals are not asked for where the trunk holds something:
    carries, lifts and presses that stand, push-ups, work that hangs; nor by themselves. Silent where every
    week is a deload, and on a region for which nothing suits the athlete.

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
    meant: list[tuple[Tally, Term]] = [(ledger, term) for term in programme.focus]
    meant += [(ledger.of_block(block), term) for block in programme.blocks for term in block.focus]
    for tally, term in meant:
        muscles = catalogue.area(term.words)
        parts = parts_of(muscles) if muscles else {}
        missing = _untrained(tally, parts)
        if missing:
            whole = len(missing) == len(parts)
            yield found(
                term.place,
                f"`{term.words}` is in `focus`; no work for {'it' if whole else _the(missing)}"
                f"{unless(tally, areas=_muscles(parts, missing))}.",
                wanted="a set, direct or indirect",
                change=f"{_added_for(ledger, [term.words] if whole else missing)}, or take {term.words} out"
                " of `focus`.",
                where="focus",
                edits=offering(_lines_for(ledger, [term.words] if whole else missing), dropping(term.place)),
                subject=term.words,
                group=term.words,
                amount=Amount(0, 1),
            )
    if programme.focus or all(block.focus for block in programme.blocks):
        return
    if programme.goal not in (*BUILDING, "general health") or not ledger.typical_weeks():
        return
    left_alone = muscles_of(programme.not_trained)
    regions = {
        region: catalogue.regions[region]
        for region in catalogue.major_regions
        if not left_alone.issuperset(catalogue.regions[region])
    }
    untrained = _untrained(ledger, regions)
    if programme.goal != "general health" and 2 * len(untrained) >= len(regions):
        return  # who leaves out more than half of the body means the rest
    missing = [
        region
        for region in untrained
        if not is_trained_beside(ledger, region) and suggested(ledger.header, _trains(region)).names
    ]
    session = next(programme.sessions(), None)
    if missing == [CARRIED_BY]:
        return  # lifts of all kinds work the trunk
    if missing and session is not None:
        yield found(
            session.place,
            f"No work for {_surely_first(ledger, regions, missing)}.",
            severity="warning" if _is_sure(ledger, missing) else "note",
            wanted="a set for each major region",
            change=f"{_added_for(ledger, missing)}, or name what you train in `focus`.",
            where=session.name,
            edits=_lines_for(ledger, missing),
            amount=Amount(len(regions) - len(missing), len(regions), "regions"),
        )


MANY = 3
"""Regions left out from which a programme for health is surely none of the whole body."""


def _is_sure(ledger: Ledger, missing: list[str]) -> bool:
    """Whether so much is left out of a programme for health that nobody can mean it."""
    spares = ledger.athlete is not None and bool(ledger.athlete.protect)
    return ledger.programme.goal == "general health" and len(missing) >= MANY and not spares


def _added_for(ledger: Ledger, areas: list[str]) -> str:
    return added_for_each(ledger.header, {_called(area): _trains(area) for area in areas})


def _lines_for(ledger: Ledger, areas: list[str]) -> Offer:
    """A line for each area in the session that holds the fewest; none where there is no session.

    Legs get a curl as well: whatever else is first in line for them leaves knee flexion out.
    """
    sessions = sorted(ledger.programme.sessions(), key=lambda one: len(one.prescriptions))[:1]
    wanted = [(_trains(area), area) for area in areas]
    wanted += [(lambda one: "knee flexion" in one.actions, area) for area in areas if area == "legs"]
    return adding_each(ledger.header, [(one, does) for one in sessions for does, _ in wanted])


def _called(region: str) -> str:
    """The trade's word for a region: coaches train abdominals."""
    return "abdominals" if region == "abdomen" else region


def _the(regions: list[str], last: str = "and") -> str:
    """``the legs, abdominals and back``."""
    return f"the {listed(list(map(_called, regions)), last)}"


def _trains(area: str) -> Callable[[Exercise], bool]:
    return lambda exercise: is_for(exercise, area)


def parts_of(muscles: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """The major regions that an area holds whole, by name; the area itself, as ``it``, where it holds none.

    Whoever writes upper body does not mean the neck, nor the hips by thighs.
    """
    whole = {region: catalogue.regions[region] for region in catalogue.major_regions}
    held = {region: members for region, members in whole.items() if set(members).issubset(muscles)}
    return held or {"it": muscles}


def _untrained(tally: Tally, parts: dict[str, tuple[str, ...]]) -> list[str]:
    """The parts of which no muscle gets a set, so far as sets can be read."""
    return [
        name
        for name, members in parts.items()
        if not any(tally.brings(muscle) for muscle in members) and not tally.leaves_open(areas=members)
    ]


def _surely_first(tally: Tally, parts: dict[str, tuple[str, ...]], missing: list[str]) -> str:
    """``the legs and back, nor for the arms, unless `toe push` does it``."""
    open_still = [name for name in missing if tally.may_train(areas=parts[name])]
    surely = [name for name in missing if name not in open_still]
    words = ", nor for ".join(_the(names) for names in (surely, open_still) if names)
    return f"{words}{unless(tally, areas=_muscles(parts, open_still))}"


def _muscles(parts: dict[str, tuple[str, ...]], names: list[str]) -> list[str]:
    """The muscles of some parts."""
    return [muscle for name in names for muscle in parts[name]]


@rule(
    "days-per-region-few",
    family="coverage",
    severity="note",
    confidence="guideline",
    why="Health guidelines advise adults to train all major muscle groups on two or more days a week. They"
    " are written for the population; an adviser's word for one person comes first.",
    sources=("who-2020", "us-pag-2018", "uk-cmo-2019"),
    options=(
        Option("days", 2, "days a week for each of the seven major regions", "who-2020"),
        Option(
            "loads that count",
            ("moderate", "high"),
            "words for what an activity asks of a muscle, from which its day counts",
            "moderate or greater intensity (WHO 2020, read second-hand); that work of other kinds counts"
            " is common practice, no source",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
    off=True,
)
def days_per_region_few(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A major region that is trained on fewer than two days of the week, where health is the goal.

    Looks at typical weeks whose sessions all have days, over a full turn where they rotate. Counts the days
    with a set that trains a muscle of the region, be it as a helper, days whose activities load it, and for
    the abdomen days with a carry beside others; wants 2 for each region that the focus means. A region that
    gets nothing in the whole programme is left to another rule, and so is a week alone with fewer sessions
    than those around it, a holiday. Off until a team asks for it.

    Flags:
        programme: Two days
        goal: general health
        sessions:
          - session: Monday
            day: monday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: push-up, sets: 2, reps: 10}
              - {exercise: seated cable row, sets: 2, reps: 10}
              - {exercise: plank, sets: 2, hold: 20 s}
          - session: Thursday  # <- here
            day: thursday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: lat pulldown, sets: 2, reps: 10}

    Passes:
        programme: Two days
        goal: general health
        sessions:
          - session: Monday
            day: monday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: push-up, sets: 2, reps: 10}
              - {exercise: seated cable row, sets: 2, reps: 10}
              - {exercise: plank, sets: 2, hold: 20 s}
          - session: Thursday
            day: thursday
            exercises:
              - {exercise: leg press, sets: 2, reps: 10}
              - {exercise: overhead press, sets: 2, reps: 10}
              - {exercise: lat pulldown, sets: 2, reps: 10}
              - {exercise: dead bug, sets: 1, reps: 8}
    """
    if week.programme.goal != "general health" or not week.is_typical() or is_cut_short(week, ledger):
        return
    turn = week.turn()
    if not all(visit.day for visit in turn.tally.visits):
        return
    few = {}
    for region in catalogue.major_regions:
        mean = turn.a_week(sum(len(days_of(one, region, limits)) for one in turn.weeks))
        if mean >= limits.number("days") or not ledger.brings(region) or not week.means(region):
            continue
        if not turn.tally.leaves_open(areas=(region,)):
            few[region] = mean
    lacking: dict[Visit | None, list[str]] = {}
    for region in few:
        days = days_of(week, region, limits)
        other = next((one for one in week.visits if one.day not in days and _holds_lifts(one)), None)
        lacking.setdefault(other, []).append(region)
    if not few:
        return
    session = (next(iter(lacking)) or week.visits[0]).session
    on_average = " on average over a turn" if turn.words else ""
    yield found(
        session.place,
        f"{capital(_on_days(few))}{on_average}{unless(turn.tally, areas=few, does='adds to it')}.",
        wanted=limits.words("{:day} or more for each major region", "days"),
        change=f"{capital('; '.join(_added_to(week, *one) for one in lacking.items()))}.",
        where=session.name,
        edits=adding_each(
            week.programme,
            [(one.session, _trains(region)) for one, several in lacking.items() if one for region in several],
        ),
        subject="days a week",
        group=listed(list(few)),
        amount=Amount(min(few.values()), limits.number("days"), "days"),
        excess=len(few),
    )


def _added_to(week: Week, visit: Visit | None, regions: list[str]) -> str:
    """What to add, and to which session or on which day."""
    to = visit.session.name if visit else free_day(week)
    if not to:
        return "the athlete has no other day: agree on one with them and write it under `days`, or waive this"
    return lower(added_for_each(week.programme, {_called(region): _trains(region) for region in regions}, to))


def _holds_lifts(visit: Visit) -> bool:
    """Whether a session holds lifts: nobody adds one to a session on a machine or track."""
    return any(entry.sets.high > 0 for entry in visit.own)


def days_of(week: Week, region: str, limits: Limits) -> set[int]:
    """The days of a week on which a region is trained, held by a carry, or loaded by an activity."""
    days = {*week.sets(region, TOTAL, hard=False).days(), *_active_days(week, region, limits)}
    return days | _days_of_carries(week) if days and region == CARRIED_BY else days


CARRIED_BY = "abdomen"


def _days_of_carries(week: Week) -> set[int]:
    """Days with a loaded carry: for the trunk it adds to other work (common practice, no source)."""
    return {
        visit.day
        for visit, entry in week.entries()
        if entry.is_done and entry.exercise is not None and "carry" in entry.exercise.patterns
    }


def _active_days(week: Week, region: str, limits: Limits) -> set[int]:
    """Days with an activity that loads a region."""
    muscles, loads = set(catalogue.regions[region]), limits.names("loads that count")
    return {
        day
        for activity in week.activities
        for day in activity.days_in(week.in_block)
        if any(
            load in loads and muscles.intersection(catalogue.area(term.words) or ())
            for term, load in activity.loads
        )
    }


def _on_days(few: dict[str, float]) -> str:
    """``abdominals trained on no day, chest and arms on only 1 day``: the fewest first."""
    by_days: dict[float, list[str]] = {}
    for region in sorted(few, key=lambda one: few[one]):
        by_days.setdefault(few[region], []).append(_called(region))
    said = [
        f"{first_of(names)} {'' if number else 'trained '}on {_days(days)}"
        for number, (days, names) in enumerate(by_days.items())
    ]
    return ", ".join(said)


def _days(number: float) -> str:
    return f"only {counted_noun(number, 'day')} a week" if number else "no day of the week"
