"""Values that are written, keys that are added or taken out, words that are dropped from a list."""

from __future__ import annotations

from itertools import pairwise

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..wording.words import listed
from .additions import in_braces, key_added, words_added
from .enclosing import way_to
from .removals import removed
from .tree import Mapping, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.places import Place
    from .enclosing import WayStep


def one_of(place: Place | None, several: Iterable[str], about: str = "") -> Iterator[Edit]:
    """Edits that write one of several words at a place; none where other lines are written there, too."""
    if place is None or place.through:
        return
    for words in several:
        yield Edit(place, words, f"write {words}{about}", certain=False)


def swapped(offered: Iterable[tuple[Place, list[str]]]) -> Iterator[Edit]:
    """Edits that each write the first, the second ... of what is offered in each place."""
    given = [(place, names) for place, names in offered if names and not place.through]
    for number in range(max((len(names) for _, names in given), default=0)):
        edits = [
            Edit(place, names[min(number, len(names) - 1)], "swap", certain=False) for place, names in given
        ]
        swaps = [f"{edit.place.excerpt} for {edit.words}" for edit in edits]
        whole = in_one(f"swap {listed(swaps)}", edits)
        if whole is not None:
            yield whole


def added(place: Place, words: str) -> Iterator[Edit]:
    """Writes ``rir: 2`` behind what stands at a place, in the same group."""
    key = words.partition(":")[0]
    for step in reversed(way_to(place)):
        if isinstance(step.group, Mapping) and isinstance(step.key, str):
            edit = (
                None if key in step.group.entries else key_added(step.group, step.key, words, f"add {words}")
            )
            if edit is not None:
                yield edit
            return


def listed_too(place: Place, several: Iterable[str], label: str) -> Iterator[Edit]:
    """Writes further words into the list whose item stands at a place, or begins with a key there."""
    for step in way_to(place)[:-3:-1]:
        if isinstance(step.group, Sequence) and isinstance(step.key, int):
            yield from words_added(step.group, step.key, several, label)
            return


def dropped(place: Place | None) -> Iterator[Edit]:
    """Takes out the word of a list at a place; the whole key where it is the last one or no list."""
    steps = [] if place is None else way_to(place)
    last = steps[-1] if steps else None
    if place is None or last is None or place.start not in _starts(last):
        return
    if isinstance(last.group, Sequence) and len(last.group.items) > 1:
        yield from _item_out(last.group, last.node.start, last.node.end)
        return
    holder = next(step for step in reversed(steps) if isinstance(step.group, Mapping))
    yield from key_out(holder.group, str(holder.key))


def whole_key_out(place: Place, key: str, label: str) -> Iterator[Edit]:
    """Takes out a key whose whole value stands at a place; not one by week, nor one that lines share."""
    steps = [] if place.through else way_to(place)
    if steps and str(steps[-1].key) == key and place.start in _starts(steps[-1]):
        for edit in key_out(steps[-1].group, key):
            yield Edit(edit.place, edit.words, label, further=edit.further)


def _starts(step: WayStep) -> tuple[int, ...]:
    """Where a value starts, and its key."""
    entry = step.group.entries[str(step.key)] if isinstance(step.group, Mapping) else None
    return (step.node.start,) if entry is None else (step.node.start, entry.key.start)


def item_dropped(place: Place, key: str) -> Iterator[Edit]:
    """Takes out the item of the list under a key that holds a place."""
    steps = way_to(place)
    for step, below in pairwise(steps):
        if step.key == key and isinstance(below.group, Sequence):
            if len(below.group.items) > 1:
                yield from _item_out(below.group, below.node.start, below.node.end)
            elif isinstance(step.group, Mapping):
                yield from key_out(step.group, key)
            return


def _item_out(group: Sequence, start: int, end: int) -> Iterator[Edit]:
    source = group.source
    braced = in_braces(group)
    words = " ".join(source.content[start:end].split())
    if not braced:
        start = source.content.rfind("-", group.start, start)
    edit = removed(source.place(start, end), f"take out {words[:40]}", braced=braced)
    if edit is not None:
        yield edit


def key_out(group: Mapping | Sequence, key: str) -> Iterator[Edit]:
    """Takes out a key with its value."""
    entry = group.entries.get(key) if isinstance(group, Mapping) else None
    if entry is None or entry.merged or len(group.entries) < 2:  # type: ignore[union-attr]
        return
    place = group.source.place(entry.key.start, max(entry.value.end, entry.key.end))
    edit = removed(place, f"take out {key}", braced=in_braces(group))
    if edit is not None:
        yield edit
