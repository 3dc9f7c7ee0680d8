"""Finds the parts of a programme, and what its weeks hold of them, by where they stand in the text."""

from __future__ import annotations

from functools import lru_cache

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ...counting.ledger import Ledger
    from ...counting.set_group import SetGroup
    from ...counting.tally import Visit
    from ...counting.week import Week
    from ...model.sessions import Block, Prescription, Session
    from ...project.results import FileReview
    from ...syntax.tree import Node
    from ...text.places import Place
    from ..documents.offset_map import Span
    from .node_path import NodePath

    WeekNumbers = tuple[int, ...]
    """WeekNumbers of weeks, from 1."""


class ProgrammeIndex:
    """The lines, sessions and blocks of a file's programme, and what each week holds of them.

    Athletes go by their index among the ``ledgers``. Everything is looked up by start and end of its text.
    Text that several lines share through an alias belongs to all of them. ``weeks`` holds, for each group of
    sets, the weeks in which it is done.
    """

    __slots__ = ("_blocks", "_entries", "_lines", "_sessions", "_visits", "blocks", "ledgers", "weeks")

    def __init__(self, ledgers: list[Ledger]) -> None:
        self.ledgers = tuple(ledgers)
        self.blocks: tuple[Block, ...] = ledgers[0].programme.blocks if ledgers else ()
        self.weeks: dict[SetGroup, WeekNumbers] = {}
        self._entries: dict[tuple[str, int, int], list[SetGroup]] = {}
        self._lines: dict[Span, list[Prescription]] = {}
        self._sessions: dict[Span, list[Session]] = {}
        self._blocks: dict[Block, list[tuple[Week, int, WeekNumbers]]] = {}
        self._visits: dict[Session, list[tuple[Visit, int, WeekNumbers]]] = {}
        for block in self.blocks:
            for session in self.sessions_of(block):
                self._sessions.setdefault(_span(session.place), []).append(session)
                for line in session.prescriptions:
                    self._lines.setdefault(_span(line.place), []).append(line)
        for athlete, ledger in enumerate(ledgers):
            self._add_ledger(ledger, athlete)

    def _add_ledger(self, ledger: Ledger, athlete: int) -> None:
        weeks_of: dict[SetGroup, set[int]] = {}
        for week, numbers in ledger.like_weeks():
            self._blocks.setdefault(week.block, []).append((week, athlete, numbers))
            for visit in week.visits:
                self._visits.setdefault(visit.session, []).append((visit, athlete, numbers))
                for entry in visit.own:
                    weeks_of.setdefault(entry, set()).update(numbers)
        for entry, weeks in weeks_of.items():
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
        """The groups of sets that the value of a key at a place sets out, by athlete and by week."""
        return self._entries.get(("sets" if key == "rounds" else key, start, end), [])

    def weeks_of(self, blocks: Iterable[Block]) -> list[tuple[Week, int, WeekNumbers]]:
        """Each different week of some blocks: the week, the athlete, the numbers of all weeks like it."""
        return [week for block in blocks for week in self._blocks.get(block, ())]

    def visits_of(self, sessions: Iterable[Session]) -> list[tuple[Visit, int, WeekNumbers]]:
        """Each different visit of some sessions: the visit, the athlete, the weeks in which it falls."""
        return [visit for session in sessions for visit in self._visits.get(session, ())]

    def loads(self) -> Iterator[tuple[Span, list[SetGroup]]]:
        """Where each load is written, and the groups of sets that are done with it."""
        for (key, start, end), entries in self._entries.items():
            if key == "load":
                yield (start, end), entries

    def lines(self, path: NodePath) -> list[Prescription]:
        """The lines that a path leads to: one, or all that share the text through an alias."""
        mapping = path.enclosing("exercise")
        if mapping is None:
            return []
        lines = self._lines.get(_span(mapping.entries["exercise"].value), [])
        within = [
            line
            for line in lines
            if any(_is_within(one, mapping) for one in (line.place, *line.place.through))
        ]
        return within or lines

    def sessions(self, path: NodePath) -> list[Session]:
        """The sessions that a path leads to, as for lines."""
        mapping = path.enclosing("session")
        return self._sessions.get(_span(mapping.entries["session"].value), []) if mapping else []

    def block(self, path: NodePath) -> Block | None:
        """The block that a path leads to; the programme itself counts as one where it has no blocks."""
        mapping = path.enclosing("sessions")
        if mapping is None:
            return None
        if mapping is path.nodes[0]:
            return self.blocks[0] if self.blocks else None
        name = mapping.entries.get("block") or mapping.entries.get("name")
        span = _span(name.value) if name else (mapping.start, mapping.end)
        return next((block for block in self.blocks if _span(block.place) == span), None)


def _span(part: Place | Node) -> Span:
    return (part.start, part.end)


def _is_within(place: Place, node: Node) -> bool:
    return node.start <= place.start and place.end <= node.end


@lru_cache(maxsize=4)
def programme_index(review: FileReview) -> ProgrammeIndex:
    """The index of a review's programme, made once for each review."""
    return ProgrammeIndex(review.ledgers)
