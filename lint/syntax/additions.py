"""Where further keys and lines can be written beside those that stand there, in the style of their group."""

from __future__ import annotations

from ..findings.finding import Edit
from ..text.places import line_end_of, line_start, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from .tree import Mapping, Node, Sequence


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


def items_added(
    items: Sequence, number: int, several: Iterable[dict[str, str]], label: str, like: Node
) -> Edit | None:
    """Writes groups of keys behind the item of a number (-1: before the first), in the style of ``like``.

    Each of ``several`` holds words by key. None where the list holds nothing, or is written elsewhere.
    """
    if items.defined is not None or not items.items:
        return None
    content, neighbour = items.source.content, items.items[max(number, 0)]
    groups = [[f"{key}: {value}" for key, value in one.items()] for one in several]
    if in_braces(items):
        written = ", ".join("{" + ", ".join(group) + "}" for group in groups)
        at, words = (neighbour.end, f", {written}") if number >= 0 else (neighbour.start, f"{written}, ")
        return Edit(items.source.place(at, at), words, label, certain=False)
    dash = content.rfind("-", items.start, neighbour.start)
    blanks = content[dash + 1 : neighbour.start]
    dashed = "-" + (blanks if blanks and not blanks.strip(" ") else " ")
    end, indent = line_end_of(content), " " * (dash - line_start(content, dash))
    if content[like.start : like.start + 1] == "{":
        lines = [f"{indent}{dashed}{{{', '.join(group)}}}" for group in groups]
    else:
        inner = f"{end}{indent}{' ' * len(dashed)}"
        lines = [f"{indent}{dashed}{inner.join(group)}" for group in groups]
    if number < 0:
        at = line_start(content, dash)
        return Edit(items.source.place(at, at), "".join(line + end for line in lines), label, certain=False)
    at = line_stop(content, neighbour.end)
    return Edit(items.source.place(at, at), "".join(end + line for line in lines), label, certain=False)


def words_added(items: Sequence, number: int, several: Iterable[str], label: str) -> Iterator[Edit]:
    """Writes further words behind the item of a number; nothing where the list is written elsewhere."""
    if items.defined is not None:
        return
    content, neighbour = items.source.content, items.items[number]
    if in_braces(items):
        at, between = neighbour.end, ", "
    else:
        dash = content.rfind("-", items.start, neighbour.start)
        at = line_stop(content, neighbour.end)
        between = f"{line_end_of(content)}{' ' * (dash - line_start(content, dash))}- "
    words = "".join(between + one for one in several)
    yield Edit(items.source.place(at, at), words, label, certain=False)
