"""Values of a line in some weeks of its block alone: written, read, taken out with the line.

Weeks are those of the block, from 1. Only values that the line holds itself are changed: where one is merged,
used elsewhere too, or goes by visit, by athlete or again and again, there is no edit.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..model.week_edits import WeekMap, runs
from ..model.weeks import weeks as weeks_of
from ..syntax.additions import in_braces, key_added
from ..syntax.rewrites import key_out
from ..syntax.tree import Mapping, Scalar

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterator

    from ..syntax.tree import Node

BY_WEEK = ("exercise", "sets", "reps", "load", "rir", "rpe", "rest", "tempo", "hold", "distance")
"""Keys of a line that take values by week."""

OTHER = "other"

CHANGES = ("+", "-", "x", "half")
"""How a value begins that hangs on that of the week before."""


def value_in(
    group: Mapping, key: str, weeks: Collection[int], done: Collection[int], words: str
) -> list[Edit] | None:
    """Edits that write a value of a line in some of the weeks in which it is ``done``; None where there are
    none that leave the other weeks as they are.
    """
    entry = group.entries.get(key)
    if entry is None or entry.merged or entry.value.defined is not None or group.defined is not None:
        return None
    value = entry.value
    if isinstance(value, Scalar):
        others = set(done) - set(weeks)
        if not others:
            return [Edit(value.place, words, "", certain=False)]
        old = _in_words(value)
        if old is None or _hangs_on_others(old):
            return None
        text = f"{{{runs(weeks)}: {within_braces(words)}, {OTHER}: {within_braces(old)}}}"
        return [Edit(value.place, text, "", certain=False)]
    held = own_map(value)
    return None if held is None else _in_map(held, weeks, done, words)


def own_map(value: Node) -> WeekMap | None:
    """A map of values by week that stands for itself; None for any other value."""
    if not isinstance(value, Mapping) or value.defined is not None or not value.entries:
        return None
    for key, entry in value.entries.items():
        words = _in_words(entry.value)
        if entry.merged or words is None or _hangs_on_others(words) or not (weeks_of(key) or key == OTHER):
            return None
    return WeekMap(value)


def _in_map(held: WeekMap, weeks: Collection[int], done: Collection[int], words: str) -> list[Edit] | None:
    """The values of some weeks, written anew; a key for these and other weeks is parted."""
    content = held.group.source.content[held.group.start : held.group.end]
    if in_braces(held.group) and "\n" not in content and "#" not in content:
        return [Edit(held.group.place, _map_in_words(held, weeks, done, words), "", certain=False)]
    edits: list[Edit] = []
    parted: list[int] = []
    after = ""
    for key, own in _weeks_of_keys(held, done).items():
        entry = held.group.entries[key]
        meant = own & set(weeks)
        if meant and meant == own:
            edits.append(Edit(entry.value.place, words, "", certain=False))
        elif meant:
            if key != OTHER:
                edits.append(_renamed(held, key, own - meant))
            parted += meant
            after = after or key
    if after:
        edit = key_added(held.group, after, f"{runs(parted)}: {within_braces(words)}", "")
        if edit is None:
            return None
        edits.append(edit)
    return edits or None


def _weeks_of_keys(held: WeekMap, done: Collection[int]) -> dict[str, set[int]]:
    """The weeks of each key of a map, those of all others as well."""
    named = {week for several in held.weeks.values() for week in several}
    return {key: set(several) if key != OTHER else set(done) - named for key, several in held.weeks.items()}


def _renamed(held: WeekMap, key: str, weeks: Collection[int]) -> Edit:
    node = held.group.entries[key].key
    return Edit(node.place, f"{node.style}{runs(weeks)}{node.style}", "", certain=False)


def _map_in_words(held: WeekMap, weeks: Collection[int], done: Collection[int], words: str) -> str:
    """The map with another value for some weeks; weeks of the same value stand under one key where a key of
    them is changed, and a value that holds in all of them stands alone.
    """
    words = within_braces(words)
    parts: list[tuple[set[int], str, bool]] = []
    for key, own in _weeks_of_keys(held, done).items():
        value = _in_words(held.group.entries[key].value) or ""
        if own - set(weeks):
            parts.append((own - set(weeks), value, key == OTHER))
    same = next((part for part in parts if part[1] == words), None)
    if same is None:
        parts.append((set(weeks), words, False))
    else:
        parts[parts.index(same)] = (same[0] | set(weeks), words, same[2])
    return _written(parts)


def _written(parts: list[tuple[set[int], str, bool]]) -> str:
    """Values with their weeks, in order; one that holds in all other weeks comes last."""
    if len(parts) == 1:
        return parts[0][1]
    parts = sorted(parts, key=lambda one: (one[2], min(one[0])))
    return "{" + ", ".join(f"{OTHER if last else runs(own)}: {words}" for own, words, last in parts) + "}"


def value_of(group: Mapping, key: str, weeks: Collection[int]) -> str | None:
    """The words of a value in some weeks: ``3``, or ``{5: 3, 6-8: 4}`` where they differ; None if unknown."""
    entry = group.entries.get(key)
    if entry is None:
        return None
    value = entry.value
    if isinstance(value, Scalar):
        return _in_words(value)
    held = own_map(value)
    if held is None:
        return None
    found: dict[str, set[int]] = {}
    for one, own in _weeks_of_keys(held, weeks).items():
        words = _in_words(held.group.entries[one].value)
        if own & set(weeks) and words is not None:
            found.setdefault(words, set()).update(own & set(weeks))
    return _written([(own, within_braces(words), False) for words, own in found.items()]) if found else None


def kept_to(group: Mapping, weeks: Collection[int], name: str = "exercise") -> list[Edit] | None:
    """Edits that keep a line, or a session, to some of its weeks; its values for other weeks are taken out.

    None where that cannot be written. ``name`` is the key that names it.
    """
    if group.defined is not None or not weeks:
        return None
    edits = list(_in_weeks(group, weeks, name))
    if not edits:
        return None
    for key, entry in group.entries.items():
        if key not in BY_WEEK or not isinstance(entry.value, Mapping):
            continue
        held = own_map(entry.value)
        if held is None or entry.merged:
            return None
        trimmed = _trimmed(held, weeks)
        if trimmed is None:
            return None
        edits += trimmed
    return edits


def carried_on(
    group: Mapping, done: Collection[int], weeks: Collection[int], every: Collection[int]
) -> list[Edit] | None:
    """Edits by which a line that is ``done`` in some weeks goes on in further ones, as in the nearest.

    ``every`` are the weeks of its session. None where that cannot be written.
    """
    written = group.entries.get("in weeks")
    if group.defined is not None or written is None or written.merged:
        return None
    if not isinstance(written.value, Scalar):
        return None
    edits = [Edit(written.value.place, runs({*done, *weeks}), "", certain=False)]
    if {*done, *weeks} >= set(every):
        edits = list(key_out(group, "in weeks"))
    for key, entry in group.entries.items():
        if key not in BY_WEEK or not isinstance(entry.value, Mapping):
            continue
        held = own_map(entry.value)
        if held is None or entry.merged:
            return None
        if OTHER in held.group.entries:
            continue  # it stands for the further weeks, too
        wanted = {one: set(several) for one, several in held.weeks.items()}
        known = {week: one for one, several in held.weeks.items() for week in several}
        for week in set(weeks) - set(known):
            nearest = min(known, key=lambda one, week=week: (abs(one - week), one))  # type: ignore[misc]
            wanted[known[nearest]].add(week)
        for one, several in wanted.items():
            if several != set(held.weeks[one]):
                edits.append(_renamed(held, one, several))
    return edits


def _in_weeks(group: Mapping, weeks: Collection[int], name: str) -> Iterator[Edit]:
    entry = group.entries.get("in weeks")
    if entry is not None:
        if not entry.merged and isinstance(entry.value, Scalar) and entry.value.defined is None:
            yield Edit(entry.value.place, runs(weeks), "", certain=False)
        return
    edit = key_added(group, name, f"in weeks: {runs(weeks)}", "") if name in group.entries else None
    if edit is not None:
        yield edit


def _trimmed(held: WeekMap, weeks: Collection[int]) -> list[Edit] | None:
    """A map without the values of other weeks than some."""
    kept = {key: own & set(weeks) for key, own in _weeks_of_keys(held, weeks).items()}
    if not any(kept.values()):
        return None
    if all(kept.values()):
        own = _weeks_of_keys(held, weeks)
        return [_renamed(held, key, kept[key]) for key in kept if key != OTHER and kept[key] != own[key]]
    if not in_braces(held.group):
        edits = [edit for key, several in kept.items() if not several for edit in key_out(held.group, key)]
        return edits if len(edits) == sum(not several for several in kept.values()) else None
    parts = [
        (several, _in_words(held.group.entries[key].value) or "", key == OTHER)
        for key, several in kept.items()
        if several
    ]
    return [Edit(held.group.place, _written(parts), "", certain=False)]


def _in_words(node: Node) -> str | None:
    """A value as it is written, in quotation marks where it has some; None for one of several rows."""
    if not isinstance(node, Scalar) or node.defined is not None or node.style in ("|", ">", "*"):
        return None
    return node.source.content[node.start : node.end]


def within_braces(words: str) -> str:
    """Words as they can stand in braces."""
    if words[:1] in "'\"{[" or (not any(one in words for one in ",[]{}#") and ": " not in words):
        return words
    return '"' + words.replace("\\", "\\\\").replace('"', '\\"') + '"'


def _hangs_on_others(words: str) -> bool:
    return words.strip("'\"").startswith(CHANGES)
