"""Whether sessions that took too long would fit: as they usually go, not at the least that they can take."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .judge import Judgement, Seen
    from .lines import Plan

ROOM = 1.05
"""How many times the minutes that there are a session may take by the middle of what is estimated."""


def usual_minutes(plan: Plan, seen: Seen, ledgers: Iterable[object] = ()) -> float:
    """The minutes that the session of a finding usually takes, at most; 0 where it is about none."""
    held = next((one for lever in seen.levers if (one := plan.session_at(lever.offset)) is not None), None)
    if seen.unit != "min" or held is None:
        return 0.0
    names = {held.session.name}
    weeks = set(seen.finding.weeks)
    return max(
        (
            visit.time().total.middle / 60
            for ledger in (ledgers or plan.ledgers)
            for week in ledger.weeks  # type: ignore[attr-defined]
            if not weeks or week.number in weeks
            for visit in week.visits
            if visit.session.name in names
        ),
        default=0.0,
    )


def fits(plan: Plan, aims: Iterable[Seen], verdict: Judgement) -> bool:
    """Whether the sessions that were too long fit by what they usually take."""
    return all(
        usual_minutes(plan, one, verdict.ledgers) <= (one.wanted or 0.0) * ROOM
        for one in aims
        if one.unit == "min" and one.over
    )
