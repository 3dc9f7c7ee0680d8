"""A week as one page: its sessions, its sets by muscle group, and what is different from the week before."""

from __future__ import annotations

from ...counting.credits import DIRECT
from ...model.naming import day_name
from ...wording.words import sets_of
from ..explain.counts import HALF, by_name
from ..explain.markdown import bullets, md, minutes, name_of, paragraphs, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...counting.ledger import Ledger
    from ...counting.set_group import SetGroup
    from ...counting.week import Week

VALUES = ("reps", "load", "rir", "rpe", "rest", "tempo", "hold", "distance")
"""Values of a line that are told where they differ from the week before."""


def week_table(ledger: Ledger, week_number: int) -> str:
    """The page of a week, counted from 1, as Markdown; for a week that is none, a word on that."""
    weeks = ledger.weeks
    if not 1 <= week_number <= len(weeks):
        return f"There is no week {week_number}: the programme runs {len(weeks)}."
    week = weeks[week_number - 1]
    return paragraphs(
        f"### {_title(week)}",
        "\n".join(_sessions(week)) if week.visits else "No session this week.",
        "\n".join(_groups(week)),
        f"_{HALF} Sets with more than 5 in reserve, and work for speed, do not count for a group._",
        _difference(weeks[week_number - 2], week) if week_number > 1 else "",
    )


def _title(week: Week) -> str:
    block = f", {md(week.block.name)}" if week.block.name else ""
    who = f" ({name_of(week.programme)})" if week.programme.athlete else ""
    return f"Week {week.number} of {week.programme.weeks}{block}: {md(week.programme.name)}{who}"


def _sessions(week: Week) -> Iterator[str]:
    rows = [
        (
            day_name(week.programme.starts, visit.day) if visit.day else "any day",
            md(visit.session.name),
            minutes(visit.time().total),
            str(visit.all_sets()),
        )
        for visit in week.visits
    ]
    whole = ("**week**", "", f"**{minutes(week.time().total)}**", f"**{week.all_sets()}**")
    yield from table(("day", "session", "time", "sets"), [*rows, whole])


def _groups(week: Week) -> Iterator[str]:
    groups = sorted(week.groups(), key=lambda group: -week.sets(group).high)
    rows = [
        (
            group,
            str(week.sets(group)),
            str(week.sets(group, DIRECT)),
            ", ".join(day_name(week.programme.starts, day)[:3] for day in week.sets(group).days()),
            ", ".join(by_name(week.sets(group))),
        )
        for group in groups
        if week.sets(group)
    ]
    if rows:
        yield from table(("group", "sets", "direct", "days", "from"), rows)
    else:
        yield "No set that counts for a muscle group."


# Against the week before


def _difference(before: Week, week: Week) -> str:
    if before.visits == week.visits:
        return f"**Against week {before.number}:** the same."
    was, now = before.all_sets(), week.all_sets()
    total = [f"{sets_of(str(now))}, {was} before"] if str(was) != str(now) else []
    groups = [
        f"{group} {now_sets} ({was_sets})"
        for group in dict.fromkeys([*week.groups(), *before.groups()])
        if (now_sets := str(week.sets(group))) != (was_sets := str(before.sets(group)))
    ]
    changed = [f"{', '.join(groups)}"] if groups else []
    lines = [*total, *changed, *_lines(before, week)]
    head = f"**Against week {before.number}** (what it was in brackets):"
    return paragraphs(head, bullets(lines)) if lines else f"**Against week {before.number}:** the same work."


def _lines(before: Week, week: Week) -> Iterator[str]:
    """Each exercise that is new, gone, or done otherwise."""
    was, now = _by_exercise(before), _by_exercise(week)
    for name, values in now.items():
        if name not in was:
            yield f"new: {md(name)}, {sets_of(values['sets'])}"
            continue
        told = [
            f"{key} {md(values.get(key, 'none'))} ({md(was[name].get(key, 'none'))})"
            for key in ("sets", *VALUES)
            if values.get(key) != was[name].get(key)
        ]
        if told:
            yield f"{md(name)}: {', '.join(told)}"
    for name, values in was.items():
        if name not in now:
            yield f"gone: {md(name)}, {sets_of(values['sets'])}"


def _by_exercise(week: Week) -> dict[str, dict[str, str]]:
    """What is written of each exercise that is done, by key; several values of a key in turn."""
    found: dict[str, list[SetGroup]] = {}
    for _, entry in week.entries():
        if entry.sets.high:
            found.setdefault(entry.name, []).append(entry)
    return {name: _values(week, name, entries) for name, entries in found.items()}


def _values(week: Week, name: str, entries: list[SetGroup]) -> dict[str, str]:
    values = {"sets": str(week.all_sets().where(lambda entry: entry.name == name))}
    for key in VALUES:
        said = dict.fromkeys(entry.work.places[key].excerpt for entry in entries if key in entry.work.places)
        if said:
            values[key] = ", ".join(said)
    return values
