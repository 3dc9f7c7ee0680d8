"""A week on one page: its sessions, its sets by muscle group against their limits, and what is new in it.

The tables are narrow, since the page stands beside the text.
"""

from __future__ import annotations

from ...body import catalogue
from ...counting.credits import DIRECT
from ...model.naming import day_name
from ...schemas.spellings import plain_spelling
from ...weighing.holdings import WeekHoldings, in_words
from ...wording.words import sets_of
from ..explain.counts import HALF_NOTE, sets_by_exercise
from ..explain.markdown import bullets, md, minutes, name_of, paragraphs, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...counting.ledger import Ledger
    from ...counting.set_group import SetGroup
    from ...counting.week import Week
    from ...weighing.holdings import Bounds, Row

COMPARED_KEYS = ("reps", "load", "rir", "rpe", "rest", "tempo", "hold", "distance")
"""Keys of a line whose values are shown where they differ from the week before."""


def week_table(ledger: Ledger, week_number: int, bounds: Bounds | None = None) -> str:
    """The page of a week (from 1) as Markdown; where the programme has no such week, the page says so.

    ``bounds`` are the limits and floors that hold for the programme: the page judges by those of the tally.
    """
    weeks = ledger.weeks
    if not 1 <= week_number <= len(weeks):
        return f"There is no week {week_number}: the programme runs {len(weeks)}."
    week = weeks[week_number - 1]
    return paragraphs(
        f"# {_title(week)}",
        "\n".join(_sessions_table(week)) if week.visits else "No session this week.",
        "\n".join(_groups_table(week, bounds)),
        _nothing(week),
        f"_{HALF_NOTE} Sets with more than 5 in reserve, and work for speed, do not count for a group._",
        _difference(weeks[week_number - 2], week) if week_number > 1 else "",
        _sources(week),
    )


def _title(week: Week) -> str:
    block = f", {md(week.block.name)}" if week.block.name else ""
    who = f" ({name_of(week.programme)})" if week.programme.athlete else ""
    return f"Week {week.number} of {week.programme.weeks}{block}: {md(week.programme.name)}{who}"


def _sessions_table(week: Week) -> Iterator[str]:
    rows = [
        (
            day_name(week.programme.starts, visit.day) if visit.day else "any day",
            md(visit.session.name),
            minutes(visit.time().total),
            str(visit.all_sets()),
        )
        for visit in week.visits
    ]
    total = ("**week**", "", f"**{minutes(week.time().total)}**", f"**{week.all_sets()}**")
    yield from table(("day", "session", "time", "sets"), [*rows, total])


def _groups(week: Week) -> list[str]:
    """The groups that get sets in a week, the most sets first."""
    return sorted(
        (group for group in week.groups() if week.sets(group)), key=lambda one: -week.sets(one).high
    )


def _groups_table(week: Week, bounds: Bounds | None) -> Iterator[str]:
    held = WeekHoldings(week, (week.number,), bounds).rows("muscle") if bounds is not None else []
    known = {row.name: row for row in held}
    rows = [
        (
            group,
            " ".join([str(week.sets(group)), *_mark(known.get(group))]),
            str(week.sets(group, DIRECT)),
            _wanted(known.get(group)),
            ", ".join(day_name(week.programme.starts, day)[:3] for day in week.sets(group).days()),
        )
        for group in _groups(week)
    ]
    if rows:
        yield from table(("group", "sets", "direct", "wanted", "days"), rows)
    else:
        yield "No set that counts for a muscle group."


def _mark(row: Row | None) -> list[str]:
    return [f"**{row.mark}**"] if row is not None and row.mark else []


def _wanted(row: Row | None) -> str:
    """``4 to 20``, ``at most 20``, ``at least 4``; empty where nothing is wanted."""
    least, most = (in_words(row.values[one]) if row is not None else "" for one in ("floor", "limit"))
    if least and most:
        return f"{least} to {most}"
    return f"at least {least}" if least else f"at most {most}" if most else ""


def _nothing(week: Week) -> str:
    """The groups that get no set, those that lie in another one of them left out."""
    without = [group for group in catalogue.groups if not week.sets(group)]
    members = {group: set(catalogue.groups[group]) for group in without}
    outer = [one for one in without if not any(members[one] < members[other] for other in without)]
    known = ", as far as known," if outer and week.could_hold(areas=tuple(outer)) else ""
    return f"**Nothing{known} for:** {', '.join(outer)}." if outer else ""


def _sources(week: Week) -> str:
    """From which exercises the sets of each group come."""
    lines = [f"{group}: {', '.join(sets_by_exercise(week.sets(group)))}" for group in _groups(week)]
    return paragraphs("**Where they come from**", bullets(lines)) if lines else ""


# Against the week before


def _difference(before: Week, week: Week) -> str:
    if before.visits == week.visits:
        return f"**Against week {before.number}:** the same."
    old, new = before.all_sets(), week.all_sets()
    total = [f"{sets_of(str(new))}, {old} before"] if str(old) != str(new) else []
    groups = [
        f"{group} {new_sets} ({old_sets})"
        for group in dict.fromkeys([*week.groups(), *before.groups()])
        if (new_sets := str(week.sets(group))) != (old_sets := str(before.sets(group)))
    ]
    changed_groups = [", ".join(groups)] if groups else []
    lines = [*total, *changed_groups, *_changed_lines(before, week)]
    head = f"**Against week {before.number}** (what it was in brackets):"
    return paragraphs(head, bullets(lines)) if lines else f"**Against week {before.number}:** the same work."


def _changed_lines(before: Week, week: Week) -> Iterator[str]:
    """Each exercise that is new, gone, or done with other values."""
    old, new = _values_by_exercise(before), _values_by_exercise(week)
    for name, values in new.items():
        if name not in old:
            yield f"new: {md(name)}, {sets_of(values['sets'])}"
            continue
        changed = [
            f"{key} {md(values.get(key, 'none'))} ({md(old[name].get(key, 'none'))})"
            for key in ("sets", *COMPARED_KEYS)
            if values.get(key) != old[name].get(key)
        ]
        if changed:
            yield f"{md(name)}: {', '.join(changed)}"
    for name, values in old.items():
        if name not in new:
            yield f"gone: {md(name)}, {sets_of(values['sets'])}"


def _values_by_exercise(week: Week) -> dict[str, dict[str, str]]:
    """The values of each exercise that is done, by key; several values of a key in turn."""
    found: dict[str, list[SetGroup]] = {}
    for _, entry in week.entries():
        if entry.sets.high:
            found.setdefault(entry.name, []).append(entry)
    return {name: _values(week, name, entries) for name, entries in found.items()}


def _values(week: Week, name: str, entries: list[SetGroup]) -> dict[str, str]:
    values = {"sets": str(week.all_sets().where(lambda entry: entry.name == name))}
    for key in COMPARED_KEYS:
        places = [entry.work.places[key] for entry in entries if key in entry.work.places]
        if places:
            values[key] = ", ".join(dict.fromkeys(_as_meant(key, place.excerpt) for place in places))
    return values


def _as_meant(key: str, words: str) -> str:
    """The words of a key in their plain spelling, where they have one."""
    bare = words[1:-1] if words[:1] in ("'", '"') else words
    return plain_spelling("time" if key == "hold" else key, bare) or words
