"""A muscle, group, region or joint action in words, and the sets that it gets in each week."""

from __future__ import annotations

from ...body import catalogue
from ...body.near_areas import nearest_areas
from ...counting.credits import DIRECT
from ...engine.limits import Situation
from ...reporters.exercises_text import gathered
from ...wording.words import first_of, listed, sets_of
from .counts import HALF_NOTE, days_of, sets_by_exercise
from .markdown import Statement, bullets, md, merged_text, paragraphs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ...counting.ledger import Ledger
    from ...counting.week import Week
    from ...engine.limits import Limits
    from ...project.workspace import Workspace
    from ...team.settings import Team

MOST_LINES = 8
"""Lines that are named as sources of sets."""

OVER_LIMIT, UNDER_FLOOR = "weekly-sets-over-limit", "weekly-sets-under-floor"
"""The rules whose limits are shown with a group."""


def area_page(name: str, ledgers: Sequence[Ledger], workspace: Workspace, team: Team) -> str:
    """An area by any of its names; with ledgers, its sets in each week and where they come from."""
    muscles = catalogue.area(name)
    if muscles is None:
        near = nearest_areas(name)
        offered = f" Nearest: {listed(near)}." if near else ""
        return f"**{md(name)}** is no muscle or area that is known.{offered}"
    if not ledgers:
        return paragraphs(f"**{md(name)}**: {_members(name)}", limits_of_group(name, team, workspace))
    statements = [
        Statement(_week(week, name), athlete, numbers, short=_week_in_short(week, name))
        for athlete, ledger in enumerate(ledgers)
        for week, numbers in ledger.like_weeks()
    ]
    limits = limits_of_group(name, team, workspace, ledgers[0])
    return paragraphs(
        f"**{md(name)}** ({_members(name)})", merged_text(statements, ledgers), HALF_NOTE, limits
    )


def _members(name: str) -> str:
    muscles = catalogue.area(name) or ()
    inside = gathered(muscles)
    return ", ".join(muscles) if inside == name else inside


def _week(week: Week, name: str) -> str:
    count = week.sets(name)
    if not count:
        return _week_in_short(week, name)
    days = days_of(week, count.days())
    sources = first_of(sets_by_exercise(count), MOST_LINES)
    return f"{_week_in_short(week, name)[:-1]}{f', {days}' if days else ''}: {sources}."


def _week_in_short(week: Week, name: str) -> str:
    """``12 sets a week, 9 direct.``"""
    count, direct = week.sets(name), week.sets(name, DIRECT)
    if not count:
        return f"no hard set{' as far as known' if week.could_hold(areas=(name,)) else ''}."
    return f"**{sets_of(str(count))}** a week, {'all' if str(count) == str(direct) else direct} direct."


def limits_of_group(name: str, team: Team, workspace: Workspace, ledger: Ledger | None = None) -> str:
    """The limits on the weekly sets of a muscle group; empty for any other area."""
    if not catalogue.is_group(name):
        return ""
    limits, lines = _limits(team, workspace, ledger), []
    if OVER_LIMIT in limits:
        most, is_own = _most(name, limits[OVER_LIMIT])
        whose = "your team's limit, " if is_own else ""
        words = "no limit" if most is None else f"at most {most:g}"
        lines.append(f"{words} a week ({whose}`{OVER_LIMIT}`)")
    if UNDER_FLOOR in limits and (ledger is None or _is_held_to_floor(name, ledger)):
        least = limits[UNDER_FLOOR].number("least")
        lines.append(f"at least {least:g} a week where it is meant to grow (`{UNDER_FLOOR}`)")
    return bullets(lines)


def _limits(team: Team, workspace: Workspace, ledger: Ledger | None) -> dict[str, Limits]:
    """The limits of the two rules on weekly sets, those that the team runs."""
    situation = Situation()
    if ledger is not None:
        situation = Situation(ledger.programme.goal, ledger.level, ledger.programme.phase)
    names = (OVER_LIMIT, UNDER_FLOOR)
    running = [rule for rule in workspace.rules if rule.name in names and team.runs(rule)]
    return {rule.name: team.choices.limits(rule, situation) for rule in running}


def _most(name: str, limits: Limits) -> tuple[float | None, bool]:
    """The most sets a week for a group, and whether that is the team's own limit for it."""
    muscles = catalogue.area(name)
    own = [sets for group, sets in limits.table("groups").items() if catalogue.area(group) == muscles]
    if own:
        return own[-1], True
    is_free = any(catalogue.area(group) == muscles for group in limits.names("without limit"))
    return None if is_free else limits.number("most"), False


def _is_held_to_floor(name: str, ledger: Ledger) -> bool:
    """Whether a programme for muscle size names an area in its focus or priorities."""
    programme = ledger.programme
    named = [*programme.focus, *programme.priority, *(term for one in programme.blocks for term in one.focus)]
    muscles = catalogue.area(name)
    return programme.goal == "hypertrophy" and any(catalogue.area(term.words) == muscles for term in named)


def action_page(name: str) -> str:
    """A joint action: the muscles that do it and those that help; empty for any other word."""
    known = catalogue.actions().get(name)
    if known is None:
        return ""
    roles: dict[str, list[str]] = {"prime": [], "helper": []}
    for muscle in catalogue.muscles().values():
        for part in muscle.acts.get(name, ())[:1]:
            roles.setdefault(part.role, []).append(muscle.name)
    return paragraphs(
        f"**{name}**: {gathered(roles['prime']) or 'no prime mover'}",
        f"helping: {gathered(roles['helper'])}" if roles["helper"] else "",
        f"opposed by {known.opposes}" if known.opposes else "",
    )
