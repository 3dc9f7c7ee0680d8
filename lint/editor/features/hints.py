"""What is shown behind the coach's words: sets by muscle group behind sessions and weeks, kg behind loads."""

from __future__ import annotations

from ...syntax.tree import Mapping, Sequence
from ..caret.tree_path import MappedReading
from ..documents.answers import Hint
from ..explain.counts import HALF, in_full, in_short
from ..explain.effort import Settable, on_file, percent_of_best
from ..explain.markdown import Statement, md, name_of, paragraphs, several, together

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...counting.header import ProgrammeHeader
    from ...counting.set_group import SetGroup
    from ...counting.tally import Tally
    from ...model.sessions import Block, Session
    from ...syntax.tree import Node
    from ..documents.answers import HintKind
    from ..documents.view import View

    Made = tuple[int, str, str, HintKind]
    """Offset in the text that was read, label, tooltip, kind."""

SETS, KILOGRAMS = "sets", "kg"

MOST_NAMES = 3
"""Athletes, or lifts that share a load, that are told one by one."""


def hints(view: View, start: int, end: int, shown: frozenset[str]) -> list[Hint]:
    """The hints of the kinds ``shown`` (sets, kg) from ``start`` to ``end`` of the document, in order."""
    mapped = MappedReading(view)
    root = mapped.reading.root
    if not mapped.review.ledgers or root is None:
        return []
    made: list[Made] = []
    if SETS in shown:
        made += _Sets(mapped).of_programme(root)
    if KILOGRAMS in shown:
        made += _loads(view, mapped)
    found = []
    for held, label, tooltip, kind in sorted(made, key=lambda one: one[0]):
        offset = _behind(mapped, held)
        if offset is not None and start <= offset <= end:
            found.append(Hint(offset, label, tooltip, kind))
    return found


def _behind(mapped: MappedReading, offset: int) -> int | None:
    """Where the character before an offset ends in the document's text."""
    there = mapped.there(max(0, offset - 1))
    return None if there is None else there + min(1, offset)


# Sets


class _Sets:
    """Hints on what sessions and weeks hold."""

    def __init__(self, mapped: MappedReading) -> None:
        self.text = mapped.reading.text
        self.standing = mapped.standing
        self.ledgers = mapped.review.ledgers
        self.sessions: dict[tuple[Block, int, int], list[Session]] = {}
        for block in mapped.standing.blocks:
            for session in mapped.standing.sessions_of(block):
                key = (block, session.place.start, session.place.end)
                self.sessions.setdefault(key, []).append(session)
        self.blocks = mapped.standing.blocks

    def of_programme(self, root: Node) -> Iterator[Made]:
        if not isinstance(root, Mapping):
            return
        listed = root.entries.get("blocks")
        if listed is None:
            yield from self.of_block(root, self.blocks[0], root)
        elif isinstance(listed.value, Sequence):
            # As many as were read: those past the longest programme were not.
            for item, block in zip(listed.value.items, self.blocks, strict=False):
                if isinstance(item, Mapping):
                    yield from self.of_block(item, block, root)

    def of_block(self, held: Mapping, block: Block, root: Node) -> Iterator[Made]:
        """The week's hint at the head of its sessions, and one behind each session.

        Behind the last session, where the week ends, most editors would cut the second of two hints off.
        """
        entry = held.entries.get("sessions")
        if entry is None:
            return
        label, tooltip = self.week(block)
        if label:
            head = held.end if held.defined is not None else entry.key.end
            yield self.line_end(head), label, tooltip, "sets"
        items = entry.value.items if isinstance(entry.value, Sequence) else []
        if held.defined is not None or entry.value.defined is not None:
            return
        for at, item in enumerate(items):
            name = item.entries.get("session") if isinstance(item, Mapping) else None
            sessions = self.sessions.get((block, name.value.start, name.value.end)) if name else None
            if sessions is None:
                continue
            label, tooltip = self.session(sessions)
            if label:
                end = self.line_end(item.end)
                crowded = at + 1 < len(items) and items[at + 1].start < end
                yield item.end if crowded else end, label, tooltip, "sets"

    def line_end(self, offset: int) -> int:
        """The end of the line that holds an offset, its comment included."""
        line, column = self.text.position(offset)
        return offset - column + 1 + len(self.text.whole_line(line))

    def week(self, block: Block) -> tuple[str, str]:
        """Label and tooltip for the weeks of a block."""
        weeks = self.standing.weeks_of((block,))
        told = [Statement(in_short(week), at, numbers) for week, at, numbers in weeks]
        return self.label(told, weeks[0][0], block.weeks, "a week") if weeks else ("", "")

    def session(self, sessions: list[Session]) -> tuple[str, str]:
        """Label and tooltip for a session."""
        visits = self.standing.visits_of(sessions)
        told = [Statement(in_short(visit), at, numbers) for visit, at, numbers in visits]
        weeks = len({week for _, _, numbers in visits for week in numbers})
        return self.label(told, visits[0][0], weeks, "") if visits else ("", "")

    def label(self, told: list[Statement], first: Tally, whole: int, usual: str) -> tuple[str, str]:
        """What is told first, and all of it with a table of the first; two times "" where nothing is."""
        head, one = together(told, self.ledgers, whole)[0]
        if not one.words:
            return "", ""
        head = _small(head) or usual
        label = f"{head}: {one.words}" if head else one.words
        return label, paragraphs(several(told, self.ledgers, whole), in_full(first), HALF)


def _small(head: str) -> str:
    """A head within a label: ``weeks 1-3``; names keep their capital."""
    return f"w{head[1:]}" if head.startswith("Week") else head


# Kilograms


def _loads(view: View, mapped: MappedReading) -> Iterator[Made]:
    settable = Settable(view.workspace, mapped.review.team)
    for (_, end), entries in mapped.standing.loads():
        told = [(entry, words) for entry in entries if (words := _worth(entry, settable))]
        if told:
            yield end, f"= {_named(told, entries)}", _reckoned(told), "kg"


def _worth(entry: SetGroup, settable: Settable) -> str:
    """A load in % in kg, one in kg in %; "" where no best lift is on file."""
    percent = percent_of_best(entry)
    return f"{percent} 1RM" if percent else settable.kilograms(entry)


def _named(told: list[tuple[SetGroup, str]], entries: list[SetGroup]) -> str:
    """The worth of a load: once where it is the same for all, else by athlete or lift."""
    worths = dict.fromkeys(words for _, words in told)
    if len(worths) == 1 and len(told) == len(entries):
        return next(iter(worths))
    athletes = len({entry.programme for entry in entries}) > 1
    lifts = len({entry.exercise for entry in entries}) > 1
    said = dict.fromkeys(
        " ".join([*([_name(entry.programme)] if athletes else []), *([entry.name] if lifts else []), words])
        for entry, words in told
    )
    more = ", ..." if len(said) > MOST_NAMES else ""
    return f"{', '.join([*said][:MOST_NAMES])}{more}"


def _name(programme: ProgrammeHeader) -> str:
    return programme.athlete.name if programme.athlete else ""


def _reckoned(told: list[tuple[SetGroup, str]]) -> str:
    """What each was reckoned from."""
    lines: dict[str, None] = {}
    for entry, words in told:
        if entry.strongest is not None and entry.work.load is not None:
            who = f"{name_of(entry.programme)}: " if entry.programme.athlete else ""
            best = on_file(entry.strongest[0])
            lines[f"{who}{md(entry.work.load.words)} = {md(words)}; best on file: {best}"] = None
    return "\n\n".join(lines)
