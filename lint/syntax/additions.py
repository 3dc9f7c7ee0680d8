"""Where further keys and lines can be written beside those that stand there, in the style of their group."""

from __future__ import annotations

from ..findings.finding import Edit
from ..text.places import line_end_of, line_start, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tree import Mapping, Sequence


def in_braces(group: Mapping | Sequence) -> bool:
    """Whether a group stands in braces or brackets."""
    return group.source.content[group.start : group.start + 1] in ("{", "[")


def before_next_key(group: Mapping, key: str) -> str:
    """What parts a further key from the value of ``key``: a comma in braces, else a line as indented."""
    content, start = group.source.content, group.entries[key].key.start
    if in_braces(group):
        return ", "
    return line_end_of(content) + " " * (start - line_start(content, start))


def key_added(group: Mapping, after: str, words: str, label: str) -> Edit | None:
    """Writes ``sets: 3`` behind a key and its value; None where those are merged from another group."""
    entry = group.entries[after]
    if group.defined is not None or entry.merged:
        return None
    end = entry.value.end if entry.value.end > entry.key.end else _past_colon(group, entry.key.end)
    if not in_braces(group):
        end = line_stop(group.source.content, end)  # behind what the coach remarks there
    place = group.source.place(end, end)
    return Edit(place, before_next_key(group, after) + words, label, certain=False)


def _past_colon(group: Mapping, end: int) -> int:
    return group.source.content.find(":", end) + 1


def item_added(items: Sequence, number: int, keys: dict[str, str], label: str) -> Edit | None:
    """Writes a further group of keys behind the item of a number (-1: before the first), in its style.

    ``keys`` holds words by key. None where the list has no item, or is written elsewhere.
    """
    if items.defined is not None or not items.items:
        return None
    content, neighbour = items.source.content, items.items[max(number, 0)]
    dash = content.rfind("-", items.start, neighbour.start)
    is_braced = content[neighbour.start : neighbour.start + 1] in ("{", "*")
    if in_braces(items):
        words, at = _braced(keys), neighbour.end if number >= 0 else neighbour.start
        words = f", {words}" if number >= 0 else f"{words}, "
    else:
        indent = " " * (dash - line_start(content, dash))
        dashed = content[dash : neighbour.start] if not content[dash + 1 : neighbour.start].strip(" ") else "- "
        inner = line_end_of(content) + indent + " " * len(dashed)
        words = indent + dashed + (_braced(keys) if is_braced else inner.join(_pairs(keys)))
        at = line_stop(content, neighbour.end) if number >= 0 else line_start(content, dash)
        words = line_end_of(content) + words if number >= 0 else words + line_end_of(content)
    return Edit(items.source.place(at, at), words, label, certain=False)


def _pairs(keys: dict[str, str]) -> list[str]:
    return [f"{key}: {value}" for key, value in keys.items()]


def _braced(keys: dict[str, str]) -> str:
    return "{" + ", ".join(_pairs(keys)) + "}"
