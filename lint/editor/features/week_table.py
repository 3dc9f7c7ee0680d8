"""A week on one page: its sessions, its sets by muscle group, and its differences from the week before."""

from __future__ import annotations

from ...reporters.tally_text import in_joints
from ...schemas.spellings import plain_spelling
from ...weighing.holdings import WeekHoldings, in_words
from ...wording.words import sets_of
from ..explain.counts import HALF_NOTE, sets_by_exercise
from ..explain.markdown import bullets, md, name_of, paragraphs, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...counting.ledger import Ledger
    from ...counting.set_group import SetGroup
    from ...counting.week import Week
    from ...weighing.holdings import Bounds

COMPARED_KEYS = ("reps", "load", "rir", "rpe", "rest", "tempo", "hold", "distance")
"""Keys of a line whose values are shown where they differ from the week before."""


def week_table(ledger: Ledger, week_number: int, bounds: Bounds) -> str:
    """The page of a week (from 1) as Markdown; where the programme has no such week, the page says so.

    ``bounds`` are the limits and floors that hold for the programme.
    """
    weeks = ledger.weeks
    if not 1 <= week_number <= len(weeks):
        return f"There is no week {week_number}: the programme runs {len(weeks)}."
    week = weeks[week_number - 1]
    held = WeekHoldings(week, (week_number,), bounds)
    return paragraphs(
        f"### {_title(week)}",
        "\n".join(_sessions_table(held)) if week.visits else "No session this week.",
        "\n".join(_groups_table(held)),
        f"_{HALF_NOTE} Sets with more than 5 in reserve, and work for speed, do not count for a group._",
        f"**No set for** {in_joints(held.untrained())}." if week.visits else "",
        _difference(weeks[week_number - 2], week) if week_number > 1 else "",
    )


def _title(week: Week) -> str:
    block = f", {md(week.block.name)}" if week.block.name else ""
    who = f" ({name_of(week.programme)})" if week.programme.athlete else ""
    return f"Week {week.number} of {week.programme.weeks}{block}: {md(week.programme.name)}{who}"


def _sessions_table(held: WeekHoldings) -> Iterator[str]:
    rows = [
        (
            in_words(row.values["day"]),
            md(row.name),
            f"{row.values['minutes']} min",
            in_words(row.values["sets"]),
        )
        for row in held.rows("session")
    ]
    total = ("**week**", "", f"**{held.minutes} min**", f"**{held.week.all_sets()}**")
    yield from table(("day", "session", "time", "sets"), [*rows, total])


GROUP_COLUMNS = ("sets", "direct", "under 8", "from 8", "floor", "limit")
"""What is said of each group, between its name and its days; a column that says nothing is left out."""


def _groups_table(held: WeekHoldings) -> Iterator[str]:
    known = held.rows("muscle")
    columns = [name for name in GROUP_COLUMNS if any(in_words(row.values[name]) for row in known)]
    rows = [
        (
            f"**{row.name}: {row.mark}**" if row.mark else row.name,
            *(in_words(row.values[name]) for name in columns),
            in_words(row.values["days"]).replace(" ", ", "),
            ", ".join(sets_by_exercise(held.week.sets(row.name))),
        )
        for row in known
        if held.week.sets(row.name) or row.mark
    ]
    if rows:
        yield from table(("group", *columns, "days", "from"), rows)
    else:
        yield "No set that counts for a muscle group."


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
