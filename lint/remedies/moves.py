"""Lines that move within their session, and lines that are taken out."""

from __future__ import annotations

from itertools import pairwise

from ..findings.finding import Edit
from ..syntax.additions import in_braces, items_added
from ..syntax.enclosing import way_to
from ..syntax.rewrites import item_dropped
from ..syntax.tree import Mapping, Sequence
from ..text.places import line_end_of, line_start, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..syntax.tree import Node
    from ..text.places import Place

    Item = tuple[Sequence, int, Node]


def _item(place: Place, key: str) -> Item | None:
    """The item of the list under a key that holds a place: the list, its number and the item."""
    steps = way_to(place)
    for step, below in pairwise(steps):
        if step.key == key and isinstance(below.group, Sequence):
            return below.group, int(below.key), below.node
    return None


def before(place: Place, other: Place, label: str) -> Iterator[Edit]:
    """Moves the line that holds a place, with what is remarked behind it, before the line of another."""
    moving, target = _item(place, "exercises"), _item(other, "exercises")
    if moving is None or target is None or moving[0] is not target[0] or in_braces(moving[0]):
        return
    group = moving[0]
    if moving[1] <= target[1]:
        return
    content = group.source.content
    start, stop = _lines_of(group, moving[2])
    at, _ = _lines_of(group, target[2])
    if content[start:stop].lstrip(" ")[:1] != "-" or content[at : at + 400].lstrip(" ")[:1] != "-":
        return
    end = line_end_of(content)
    taken = Edit(group.source.place(start - len(end), stop), "", label, certain=False)
    place = group.source.place(at, at)
    yield Edit(place, content[start:stop] + end, label, certain=False, further=(taken,))


def exchanged(place: Place, other: Place, label: str) -> Iterator[Edit]:
    """Puts the lines of two places in each other's place; what is remarked behind them stays."""
    one, two = _item(place, "exercises"), _item(other, "exercises")
    if one is None or two is None:
        return
    first, second = one[2], two[2]
    words = [node.source.content[node.start : node.end] for node in (first, second)]
    if any("\n" in one or "\r" in one for one in words):
        return  # lines of several rows stand as they are indented
    further = Edit(second.place, words[0], label, certain=False)
    yield Edit(first.place, words[1], label, certain=False, further=(further,))


def _lines_of(group: Sequence, item: Node) -> tuple[int, int]:
    """Where the lines of an item begin and end, without the last line end."""
    content = group.source.content
    dash = content.rfind("-", group.start, item.start)
    return line_start(content, dash), line_stop(content, item.end)


def dropped(place: Place) -> Iterator[Edit]:
    """Takes the line that holds a place out of its session."""
    return item_dropped(place, "exercises")


def set_above(place: Place, exercise: str, keys: dict[str, str]) -> Iterator[Edit]:
    """Writes a group of sets before all others of a line, or a line of its own before a line."""
    for key, own in (("work", keys), ("exercises", {"exercise": exercise, **keys})):
        found = _item(place, key)
        if found is not None and isinstance(found[2], Mapping):
            group, number, _ = found
            at = -1 if key == "work" else number - 1
            label = f"put {keys['sets']} set of {keys['reps']} before it"
            edit = items_added(group, at, [own], label, found[2])
            if edit is not None:
                yield edit
            return
