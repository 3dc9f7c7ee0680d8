"""What stands at a place of a text: the keys that lead there, and the part of the programme it belongs to.

The tree tells which words stand at an offset; the programme and its ledgers, which know their places, tell
what these words mean. Offsets count code points of the text that was read, which may be an older one than the
document's: a `MappedReading` takes them over.
"""

from __future__ import annotations

from functools import lru_cache

from ...model import quantities
from ...model.sessions import WORK_KEYS
from ...syntax.builder import parse
from ...syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from typing import Literal

    from ...counting.ledger import Ledger
    from ...counting.set_group import SetGroup
    from ...counting.tally import Visit
    from ...counting.week import Week
    from ...model.sessions import Block, Prescription, Session
    from ...project.results import FileReview
    from ...syntax.tree import Node, Reading
    from ...text.places import Place
    from ..documents.view import View

    Key = str | int

    PathPart = Literal["key", "value", "merged", ""]

    Span = tuple[int, int]

BY_WEEK = frozenset({*WORK_KEYS, "rounds"})
"""Keys whose value may be one for each week or run of weeks."""


# In the tree


class TreePath:
    """What stands at an offset.

    ``keys`` lead from the top to it, list positions as numbers; ``nodes`` are what stands at each of them,
    the top first, so that the last is the value there. ``part`` says whether the offset is in the last key,
    in its single value (for an alias: in ``*name``), in the alias or group that ``<<`` merges into the last
    node, or, "", between these. ``start`` and ``end`` are those of the words.
    """

    __slots__ = ("end", "keys", "nodes", "part", "start")

    def __init__(
        self, keys: tuple[Key, ...], nodes: tuple[Node, ...], part: PathPart, start: int, end: int
    ) -> None:
        self.keys = keys
        self.nodes = nodes
        self.part: PathPart = part
        self.start = start
        self.end = end

    @property
    def node(self) -> Node:
        """The value there."""
        return self.nodes[-1]

    @property
    def words(self) -> str:
        """The words of a single value, without quotes; "" for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    @property
    def path(self) -> tuple[str, ...]:
        """The keys that are words, those of a value by week left out."""
        named = [key for key in self.keys if isinstance(key, str)]
        if self.by_week is not None:
            named.pop()
        return tuple(named)

    @property
    def name(self) -> str:
        """The key that the words stand under; "" at the top."""
        return self.path[-1] if self.path else ""

    @property
    def owner(self) -> str:
        """The key above that; "" where there is none."""
        return self.path[-2] if len(self.path) > 1 else ""

    @property
    def by_week(self) -> tuple[int, int] | None:
        """First and last week of the value by week that this is; None where it is none."""
        if len(self.keys) < 2 or self.keys[-2] not in BY_WEEK or not isinstance(self.keys[-1], str):
            return None
        return quantities.weeks(self.keys[-1])

    def around(self, key: str) -> Mapping | None:
        """The innermost group of keys around it that has a key."""
        for node in reversed(self.nodes):
            if isinstance(node, Mapping) and key in node.entries:
                return node
        return None


def path_at(root: Node, offset: int) -> TreePath:
    """What stands at an offset of a tree; just behind a word still counts as in it."""
    keys: list[Key] = []
    nodes = [root]
    while True:
        node = nodes[-1]
        if len(nodes) > 1 and node.defined is not None:
            return TreePath(tuple(keys), tuple(nodes), "value", node.start, node.end)
        if isinstance(node, Sequence):
            inside = next((at for at, item in enumerate(node.items) if _holds(item, offset)), None)
            if inside is None:
                return TreePath(tuple(keys), tuple(nodes), "", offset, offset)
            keys.append(inside)
            nodes.append(node.items[inside])
        elif isinstance(node, Mapping):
            for key, entry in node.entries.items():
                merged = entry.merged[0] if entry.merged else None
                if merged is not None and not _in(merged, entry.key.start):
                    if _in(merged, offset):
                        return TreePath(tuple(keys), tuple(nodes), "merged", merged.start, merged.end)
                elif _holds(entry.key, offset):
                    return TreePath(
                        (*keys, key), (*nodes, entry.value), "key", entry.key.start, entry.key.end
                    )
                elif _holds(entry.value, offset):
                    keys.append(key)
                    nodes.append(entry.value)
                    break
            else:
                return TreePath(tuple(keys), tuple(nodes), "", offset, offset)
        else:
            return TreePath(tuple(keys), tuple(nodes), "value", node.start, node.end)


def _holds(node: Node, offset: int) -> bool:
    return node.start <= offset <= node.end


def _in(place: Place, offset: int) -> bool:
    return place.start <= offset <= place.end


# In the programme


class ProgrammeIndex:
    """Where the parts of a file's programme stand: lines, sessions, blocks and what each week holds of them.

    Everything is looked up by the start and end of the words; words that several lines share by an alias
    belong to all of them.
    """

    __slots__ = ("_blocks", "_entries", "_lines", "_sessions", "_visits", "blocks", "ledgers", "weeks")

    def __init__(self, ledgers: list[Ledger]) -> None:
        self.ledgers = tuple(ledgers)
        self.blocks: tuple[Block, ...] = ledgers[0].programme.blocks if ledgers else ()
        self.weeks: dict[SetGroup, tuple[int, ...]] = {}
        self._entries: dict[tuple[str, int, int], list[SetGroup]] = {}
        self._lines: dict[Span, list[Prescription]] = {}
        self._sessions: dict[Span, list[Session]] = {}
        self._blocks: dict[Block, list[tuple[Week, int, tuple[int, ...]]]] = {}
        self._visits: dict[Session, list[tuple[Visit, int, tuple[int, ...]]]] = {}
        for block in self.blocks:
            for session in self.sessions_of(block):
                self._sessions.setdefault(_span(session.place), []).append(session)
                for line in session.prescriptions:
                    self._lines.setdefault(_span(line.place), []).append(line)
        for at, ledger in enumerate(ledgers):
            self._take(ledger, at)

    def _take(self, ledger: Ledger, at: int) -> None:
        held: dict[SetGroup, set[int]] = {}
        for week, numbers in ledger.like_weeks():
            self._blocks.setdefault(week.block, []).append((week, at, numbers))
            for visit in week.visits:
                self._visits.setdefault(visit.session, []).append((visit, at, numbers))
                for entry in visit.own:
                    held.setdefault(entry, set()).update(numbers)
        for entry, weeks in held.items():
            self.weeks[entry] = tuple(sorted(weeks))
            for key, place in entry.work.places.items():
                self._entries.setdefault((key, place.start, place.end), []).append(entry)

    def ledger_of(self, entry: SetGroup) -> Ledger:
        """The ledger that a group of sets is counted in."""
        return next(ledger for ledger in self.ledgers if ledger.header is entry.programme)

    def sessions_of(self, block: Block) -> tuple[Session, ...]:
        """The sessions of a block."""
        return self.ledgers[0].programme.sessions_of(block)

    def entries(self, key: str, start: int, end: int) -> list[SetGroup]:
        """What is done by the value of a key that stands there, athlete by athlete and week by week."""
        return self._entries.get(("sets" if key == "rounds" else key, start, end), [])

    def weeks_of(self, blocks: Iterable[Block]) -> list[tuple[Week, int, tuple[int, ...]]]:
        """Each different week of some blocks, the athlete (by position) and the numbers of all its likes."""
        return [held for block in blocks for held in self._blocks.get(block, ())]

    def visits_of(self, sessions: Iterable[Session]) -> list[tuple[Visit, int, tuple[int, ...]]]:
        """Each visit of some sessions, the athlete (by position) and the weeks it falls in."""
        return [held for session in sessions for held in self._visits.get(session, ())]

    def loads(self) -> Iterator[tuple[Span, list[SetGroup]]]:
        """Every load that is written, with what is done by it."""
        for (key, start, end), entries in self._entries.items():
            if key == "load":
                yield (start, end), entries

    def lines(self, at_path: TreePath) -> list[Prescription]:
        """The lines that the words belong to: one, or all that use them by an alias; none elsewhere."""
        held = at_path.around("exercise")
        if held is None:
            return []
        lines = self._lines.get(_span(held.entries["exercise"].value), [])
        within = [
            line for line in lines if any(_in_node(held, one) for one in (line.place, *line.place.through))
        ]
        return within or lines

    def sessions(self, at_path: TreePath) -> list[Session]:
        """The sessions that the words belong to, as for lines."""
        held = at_path.around("session")
        return self._sessions.get(_span(held.entries["session"].value), []) if held else []

    def block(self, at_path: TreePath) -> Block | None:
        """The block that the words belong to; the programme itself where it has no blocks."""
        held = at_path.around("sessions")
        if held is None:
            return None
        if held is at_path.nodes[0]:
            return self.blocks[0] if self.blocks else None
        name = held.entries.get("name")
        place = _span(name.value) if name else (held.start, held.end)
        return next((block for block in self.blocks if _span(block.place) == place), None)


def _span(at: Place | Node) -> Span:
    return (at.start, at.end)


def _in_node(node: Node, place: Place) -> bool:
    return node.start <= place.start and place.end <= node.end


@lru_cache(maxsize=4)
def programme_index(review: FileReview) -> ProgrammeIndex:
    """Where everything stands in a review's programme, worked out once for each review."""
    return ProgrammeIndex(review.ledgers)


# From the document's text to the text that was read, and back


class MappedReading:
    """The reading that a feature goes by, and how its offsets lie in the document's current text.

    That is the current text where it can be read (a programme: counted), else the last that could: then
    ``current`` is False, and words that were rewritten since have no place.
    """

    __slots__ = ("_view", "current", "reading", "review")

    def __init__(self, view: View) -> None:
        self._view = view
        reading = _reading(view.review, view)
        counted = view.review.kind != "programme" or bool(view.review.ledgers)
        self.current = view.good is None or (reading.root is not None and counted)
        self.review = view.review if self.current or view.good is None else view.good
        self.reading = reading if self.current else _reading(self.review, view)

    @property
    def standing(self) -> ProgrammeIndex:
        """Where the parts of the programme stand; empty where there is none."""
        return programme_index(self.review)

    def back(self, offset: int) -> int | None:
        """An offset of the document's text in the text that was read; None in what is new since."""
        if self.current:
            return offset
        return next((offset - by for start, end, by in self._view.kept if start <= offset - by < end), None)

    def there(self, offset: int) -> int | None:
        """An offset of the text that was read in the document's text; None in what was rewritten since."""
        return offset if self.current else self._view.moved(offset)

    def stretch(self, start: int, end: int) -> Span | None:
        """A stretch of the text that was read in the document's text; None where any of it was rewritten."""
        if self.current:
            return (start, end)
        first, last = self._view.moved(start), self._view.moved(max(start, end - 1))
        if first is None or last is None:
            return None
        stop = last + min(1, end - start)
        return (first, stop) if stop - first == end - start else None

    def around(self, start: int, end: int) -> Span | None:
        """The stretch from the first to the last that is left of one; None where all was rewritten."""
        if self.current:
            return (start, end)
        left = [
            (max(start, first) + by, min(end, last) + by)
            for first, last, by in self._view.kept
            if max(start, first) < min(end, last)
        ]
        return (left[0][0], left[-1][1]) if left else None

    def at(self, offset: int) -> TreePath | None:
        """What stands at an offset of the document's text; None in what is new since it could be read."""
        held = self.back(offset)
        root = self.reading.root
        return None if held is None or root is None else path_at(root, held)


@lru_cache(maxsize=4)
def _parsed(path: str, content: str) -> Reading:
    return parse(path, content)


def _reading(review: FileReview, view: View) -> Reading:
    """The tree of a review; settings come without one."""
    return review.reading or _parsed(view.path, view.text.content)
