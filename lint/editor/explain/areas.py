"""A muscle, group, region or joint action in words, and its week."""

from __future__ import annotations

from ...body import catalogue
from ...counting.credits import DIRECT
from ...engine.limits import Situation
from ...reporters.exercises_text import gathered
from ...wording.words import first_of, listed, sets_of
from .counts import HALF, by_name, days_of
from .markdown import Statement, bullets, md, paragraphs, several

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ...counting.ledger import Ledger
    from ...counting.week import Week
    from ...engine.limits import Limits
    from ...project.workspace import Workspace
    from ...team.settings import Team

MOST_LINES = 8
"""Lines that are named as where sets come from."""

OVER, UNDER = "weekly-sets-over-limit", "weekly-sets-under-floor"


def area(name: str, ledgers: Sequence[Ledger], workspace: Workspace, team: Team) -> str:
    """An area by any word for it; with ledgers, how many sets it gets in each week and from where."""
    muscles = catalogue.area(name)
    if muscles is None:
        near = catalogue.nearest_areas(name)
        offered = f" Nearest: {listed(near)}." if near else ""
        return f"**{md(name)}** is no muscle or area that is known.{offered}"
    if not ledgers:
        return paragraphs(f"**{md(name)}**: {_members(name)}", in_force(name, team, workspace))
    told = [
        Statement(_week(week, name), at, numbers, short=_in_short(week, name))
        for at, ledger in enumerate(ledgers)
        for week, numbers in ledger.like_weeks()
    ]
    limits = in_force(name, team, workspace, ledgers[0])
    return paragraphs(f"**{md(name)}** ({_members(name)})", several(told, ledgers), HALF, limits)


def _members(name: str) -> str:
    muscles = catalogue.area(name) or ()
    inside = gathered(muscles)
    return ", ".join(muscles) if inside == name else inside


def _week(week: Week, name: str) -> str:
    count = week.sets(name)
    if not count:
        return _in_short(week, name)
    days = days_of(week, count.days())
    return (
        f"{_in_short(week, name)[:-1]}{f', {days}' if days else ''}: {first_of(by_name(count), MOST_LINES)}."
    )


def _in_short(week: Week, name: str) -> str:
    """``12 sets a week, 9 direct.``"""
    count, direct = week.sets(name), week.sets(name, DIRECT)
    if not count:
        return f"no hard set{' as far as known' if week.could_hold(areas=(name,)) else ''}."
    return f"**{sets_of(str(count))}** a week, {'all' if str(count) == str(direct) else direct} direct."


def in_force(name: str, team: Team, workspace: Workspace, ledger: Ledger | None = None) -> str:
    """The limits that the week of a muscle group is held against."""
    if not catalogue.is_group(name):
        return ""
    rules = {rule.name: rule for rule in workspace.rules if rule.name in (OVER, UNDER) and team.runs(rule)}
    situation = Situation()
    if ledger is not None:
        situation = Situation(ledger.programme.goal, ledger.level, ledger.programme.phase)
    lines = []
    if OVER in rules:
        lines.append(_most(name, team.choices.limits(rules[OVER], situation)))
    if UNDER in rules and (ledger is None or _is_held_to_floor(name, ledger)):
        least = team.choices.limits(rules[UNDER], situation).number("least")
        lines.append(f"at least {least:g} a week where it is meant to grow (`{UNDER}`)")
    return bullets(line for line in lines if line)


def _most(name: str, limits: Limits) -> str:
    muscles = catalogue.area(name)
    own = [sets for group, sets in limits.table("groups").items() if catalogue.area(group) == muscles]
    if own:
        return f"at most {own[-1]:g} a week (your team's limit, `{OVER}`)"
    if any(catalogue.area(group) == muscles for group in limits.names("without limit")):
        return f"no limit a week (`{OVER}`)"
    return f"at most {limits.number('most'):g} a week (`{OVER}`)"


def _is_held_to_floor(name: str, ledger: Ledger) -> bool:
    """Whether a programme for size names an area in its focus or priorities."""
    programme = ledger.programme
    named = [*programme.focus, *programme.priority, *(term for one in programme.blocks for term in one.focus)]
    muscles = catalogue.area(name)
    return programme.goal == "hypertrophy" and any(catalogue.area(term.words) == muscles for term in named)


def action(name: str) -> str:
    """A joint action: the muscles that do it and those that help."""
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
