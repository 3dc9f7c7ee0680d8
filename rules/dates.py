"""Dates that do not go together."""

from __future__ import annotations

from datetime import timedelta

from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.wording.words import counted_noun, listed
from .offers import dropping, dropping_item, writing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.programme import Event


# Dates, goal and phase


@rule(
    "programmes-overlap",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What one programme leaves for recovery the other fills; each is judged by itself, their sum by"
    " nobody.",
    sources=(),
)
def programmes_overlap(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """Two programmes for one athlete on the same dates.

    Compares the days from start to end of all programmes that name the athlete; wants each to start after the
    one before has ended. Programmes without a start, and those of a stage of rehabilitation, are left alone.

    Flags:
        programme: Winter
        athlete: ida.athlete.yaml
        starts: 2026-02-02  # <- here
        weeks: 4
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Winter
        athlete: ida.athlete.yaml
        starts: 2026-02-09
        weeks: 4
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Beside ida.athlete.yaml:
        name: Ida

    Beside autumn.programme.yaml:
        programme: Autumn
        athlete: ida.athlete.yaml
        starts: 2026-01-05
        weeks: 5
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    dated = [plan for plan in lifter.plans if plan.programme.starts and not plan.programme.rehabilitation]
    for index, later in enumerate(dated):
        starts, _ = _dates(later)
        for earlier in dated[:index]:
            _, ends = _dates(earlier)
            if ends >= starts and earlier.programme is not later.programme:
                yield found(
                    later.programme.places["starts"],
                    f"{later.programme.name} starts on {starts}, but {earlier.programme.name} runs until"
                    f" {ends}.",
                    wanted="one programme at a time",
                    change=f"Start it on {ends + timedelta(days=1)}, end the other sooner, or merge the two.",
                    where="starts",
                    edits=writing(later.programme.places["starts"], str(ends + timedelta(days=1))),
                    related=(
                        Related(earlier.programme.places["starts"], f"{earlier.programme.name} starts here"),
                    ),
                    amount=Amount((ends - starts).days + 1, 0, "days"),
                    excess=(ends - starts).days,
                )


def _dates(plan: Ledger) -> tuple[date, date]:
    """The first and the last day of a programme that says when it starts."""
    starts, ends = plan.programme.starts, plan.ends
    assert starts is not None
    assert ends is not None
    return starts, ends


@rule(
    "dates-at-odds",
    family="upkeep",
    severity="note",
    confidence="common practice",
    why="Dates, goal and phase decide what other rules look at; where they do not fit together, one is a"
    " slip.",
    sources=(),
    options=(
        Condition(
            "days after",
            91,
            "days between the programme's last day and an event it leads to",
            "common practice: a block may lead to an event of the next quarter",
        ),
        Option(
            "longest peak", 4, "weeks of taper and test, where a programme is nothing else", "common practice"
        ),
    ),
)
def dates_at_odds(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An event outside the programme's dates, or a phase that does not go with its length or goal.

    Wants events between the first day and a quarter of a year past the last; phases of taper or test that
    fill a whole programme to last 4 weeks at most; and neither of them where the goal is general health.

    Flags:
        programme: Spring
        starts: 2026-01-05
        weeks: 4
        events: [{date: 2027-03-14, event: regatta}]  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Spring
        starts: 2026-01-05
        weeks: 9
        events: [{date: 2026-03-14, event: regatta}]
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    for number, event in ledger.events():
        if number < 1 or number > 7 * len(ledger.weeks) + limits.number("days after"):
            yield _outside(ledger, event)
    programme = ledger.programme
    phases = dict.fromkeys(week.phase for week in ledger.weeks)
    peaks = [phase for phase in phases if phase in ("taper", "test")]
    longest = limits.number("longest peak")
    if peaks and programme.goal == "general health":
        yield found(
            programme.places["goal"],
            f"The goal is general health, but there is a {listed(peaks)} phase.",
            wanted="a goal and phases that match",
            change="Correct the goal, or delete the phase.",
            where="goal",
            edits=dropping(programme.places.get("phase")),
        )
    elif len(peaks) == len(phases) and len(ledger.weeks) > longest:
        yield found(
            programme.places.get("phase", programme.place),
            f"All {len(ledger.weeks)} weeks are marked {listed(peaks)}.",
            wanted=limits.words("at most {:week}", "longest peak"),
            change="Mark the building weeks `phase: build`, or shorten the programme.",
            where="phase",
        )


def _outside(ledger: Ledger, event: Event) -> DraftFinding:
    starts, ends = _dates(ledger)
    assert event.date is not None
    apart, which = max(
        ((starts - event.date).days, "before the programme starts"),
        ((event.date - ends).days, "after the programme ends"),
    )
    return found(
        event.place,
        f"{event.name} on {event.date} is {counted_noun(apart, 'day')} {which}.",
        wanted="events it leads up to",
        change="Correct the dates, or delete the event.",
        where=f"events, {event.name}",
        edits=dropping_item(event.place, "events"),
    )
