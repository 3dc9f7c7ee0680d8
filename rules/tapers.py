"""Lighter weeks before a test or competition."""

from __future__ import annotations

from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import says, sets_of
from .easier_weeks import CLEAR_CUT, is_easier

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Place


@rule(
    "taper-missing",
    family="progression",
    severity="note",
    confidence="survey",
    why="Nearly all strength athletes who were asked lower the work for about a week before a competition, by"
    " fewer sets with the load kept.",
    sources=("taper-strength", "helms-taper", "taper-endurance", "bell-2023", "bell-2022"),
    options=(
        Condition(
            "days",
            14,
            "days before the event within which a lighter week begins",
            "common practice, no source: strength athletes say about 7 days (in Bell and others 2023),"
            " endurance tapers take 2 weeks (Bosquet and others 2007, from memory)",
        ),
        Option(
            "events",
            (
                "test",
                "tests",
                "testing",
                "competition",
                "regatta",
                "meet",
                "race",
                "championship",
                "championships",
                "contest",
                "trials",
            ),
            "words in the name of an event to be ready for",
            "common practice",
        ),
        Condition(
            "left",
            3,
            "days that can be a taper: between the programme's end and the event, or of the event's own week",
            "common practice",
        ),
        Condition(
            "weeks", 3, "typical weeks before it, from which a lighter week is wanted", "common practice"
        ),
        Option(
            "goals",
            ("strength", "power"),
            "goals",
            "strength: athletes' own reports (in Bell and others 2023); power: common practice, no source",
        ),
        Option("levels", ("novice",), "levels that are left alone", "common practice"),
        Option("phases", ("in-season",), "phases that are left alone", "common practice"),
        Option(
            "on purpose",
            ("train through", "trained through", "no taper"),
            "words in the event's note",
            "common practice",
        ),
        *map(Condition.like, CLEAR_CUT),
    ),
    stands_back=("rehabilitation",),
)
def taper_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A test or competition with no lighter week before it, where the goal is strength or power.

    Looks at dated events that are called a test, competition, regatta or the like, and at the first week of a
    phase `test`, after three typical weeks or more. Wants a week that begins in the last 14 days before it,
    or the test week itself, to be a deload, a taper, or clearly easier than the last typical week before
    them: 20 % fewer sets or repetitions, or most of the hard work with 10 % less load or 2 more repetitions
    in reserve. It names the last of these weeks, or the one before where the event is on one of the first 3
    days of its week. Off for novices, in season, where the event's note says that it is trained through, and
    where days after the programme's last one are left for it.

    Flags:
        programme: To the test
        goal: strength
        starts: 2026-01-05
        weeks: 5
        events:
          - {date: 2026-02-07, event: strength test}  # <- here
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: 5, reps: 4, rir: 2}]

    Passes:
        programme: To the test
        goal: strength
        starts: 2026-01-05
        weeks: 5
        events:
          - {date: 2026-02-07, event: strength test}
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: {1-4: 5, 5: 3}, reps: 4, rir: 2}]
    """
    for near, before, eve, place, name in before_events(ledger, limits):
        yield from _untapered(ledger, near, before, eve, place, name, limits)


def before_events(ledger: Ledger, limits: Limits) -> Iterator[tuple[Sequence[Week], Week, int, Place, str]]:
    """The weeks near each event, one of which is to be lighter than the last typical one before them.

    With these two comes the index of the one to make lighter, and place and name of the event.
    """
    for near, eve, place, name in _events(ledger, limits):
        if not near or near[-1].phase in limits.names("phases"):
            continue
        before = [week for week in ledger.typical_weeks() if week.number < near[0].number]
        if len(before) >= max(limits.number("weeks"), 1):
            yield near, before[-1], eve, place, name


def _events(ledger: Ledger, limits: Limits) -> Iterator[tuple[Sequence[Week], int, Place, str]]:
    if ledger.programme.goal not in limits.names("goals") or ledger.level in limits.names("levels"):
        return
    days = limits.number("days")
    for day, event in ledger.events():
        if day > 7 * len(ledger.weeks) + limits.number("left"):
            continue
        if not says(limits.names("events"), event.name) or says(limits.names("on purpose"), event.note):
            continue
        near = [week for week in ledger.weeks if 0 < day - _first_day(week) <= days]
        is_early = len(near) > 1 and day - _first_day(near[-1]) < limits.number("left")
        yield near, -2 if is_early else -1, event.place, event.name
    for eve, week in zip(ledger.weeks, ledger.weeks[1:], strict=False):
        if week.phase == "test" and eve.phase != "test":
            near = [one for one in ledger.weeks if 0 <= _first_day(week) - _first_day(one) <= days]
            yield near, -2, week.block.place, week.block.name


def _first_day(week: Week) -> int:
    return 7 * (week.number - 1) + 1


def _untapered(
    ledger: Ledger,
    near: Sequence[Week],
    before: Week,
    eve: int,
    place: Place,
    name: str,
    limits: Limits,
) -> Iterator[DraftFinding]:
    """The finding where none of the weeks near an event is lighter than the last typical one before them.

    ``eve`` is the index of the one to make lighter.
    """
    for week in near:
        if week.is_deload or week.phase == "taper" or ledger.recall(is_easier, week, before, limits):
            return
    last = near[eve]
    yield found(
        place,
        f"No taper before {name}: {sets_of(str(last.all_sets()))} in week {last.number} against"
        f" {before.all_sets()} in week {before.number}.",
        wanted="a lighter week before it",
        change=f"Cut week {last.number} to about half the sets at the same load.",
        where=name,
        subject=f"week {near[-1].number}",
        amount=Amount(last.all_sets().middle, before.all_sets().middle / 2),
        weeks=tuple(week.number for week in near),
    )
