"""Labels shown behind the coach's words: sets by muscle group behind sessions and weeks, kg behind loads."""

from __future__ import annotations

from ...syntax.tree import Mapping, Sequence
from ..caret.readable_review import ReadableReview
from ..documents.answers import Hint
from ..explain.counts import HALF_NOTE, groups_in_short, groups_table
from ..explain.effort import LoadSteps, best_lift_in_words, best_used, percent_of_best
from ..explain.markdown import (
    Statement,
    md,
    merged,
    merged_text,
    name_of,
    paragraphs,
    total_of,
    uncapitalised,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...counting.header import ProgrammeHeader
    from ...counting.set_group import SetGroup
    from ...counting.tally import Tally
    from ...model.sessions import Block, Session
    from ...syntax.tree import Node
    from ..documents.answers import HintKind
    from ..documents.snapshot import Snapshot

    LabelAndTooltip = tuple[str, str]

    ReadHint = tuple[int, str, str, HintKind]
    """A hint at an offset of the text that was read: offset, label, tooltip, kind."""

SETS, KILOGRAMS = "sets", "kg"

MOST_NAMES = 3
"""Athletes, or lifts that share a load, that are named one by one."""


def hints(snapshot: Snapshot, start: int, end: int, kinds: frozenset[str]) -> list[Hint]:
    """The hints of some kinds (sets, kg) from ``start`` to ``end`` of the document, in order."""
    readable = ReadableReview(snapshot)
    root = readable.reading.root
    if not readable.review.ledgers or root is None:
        return []
    made: list[ReadHint] = []
    if SETS in kinds:
        made += _SetHints(readable).of_programme(root)
    if KILOGRAMS in kinds:
        made += _load_hints(snapshot, readable)
    found = []
    for read_offset, label, tooltip, kind in sorted(made, key=lambda one: one[0]):
        offset = _offset_behind(readable, read_offset)
        if offset is not None and start <= offset <= end:
            found.append(Hint(offset, label, tooltip, kind))
    return found


def _offset_behind(readable: ReadableReview, offset: int) -> int | None:
    """Where, in the document, the character before an offset ends."""
    character = readable.to_document(max(0, offset - 1))
    return None if character is None else character + min(1, offset)


# Sets


class _SetHints:
    """Hints on what sessions and weeks hold."""

    def __init__(self, readable: ReadableReview) -> None:
        self.text = readable.reading.text
        self.index = readable.index
        self.ledgers = readable.review.ledgers
        self.sessions: dict[tuple[Block, int, int], list[Session]] = {}
        self.blocks = readable.index.blocks
        for block in self.blocks:
            for session in readable.index.sessions_of(block):
                key = (block, session.place.start, session.place.end)
                self.sessions.setdefault(key, []).append(session)

    def of_programme(self, root: Node) -> Iterator[ReadHint]:
        """The hints of all blocks; those of the programme where it has none."""
        if not isinstance(root, Mapping):
            return
        listed = root.entries.get("blocks")
        if listed is None:
            yield from self.of_block(root, self.blocks[0])
        elif isinstance(listed.value, Sequence):
            # Only blocks that were read: those past the longest programme were not.
            for item, block in zip(listed.value.items, self.blocks, strict=False):
                if isinstance(item, Mapping):
                    yield from self.of_block(item, block)

    def of_block(self, mapping: Mapping, block: Block) -> Iterator[ReadHint]:
        """The hint of the week behind the key of its sessions, and that of each session behind its name.

        Nothing stands behind the last line, where the next one is about to be written.
        """
        entry = mapping.entries.get("sessions")
        if entry is None:
            return
        label, tooltip = self.week(block)
        if label:
            head = mapping.end if mapping.defined is not None else entry.key.end
            yield self.line_end(head), label, tooltip, "sets"
        items = entry.value.items if isinstance(entry.value, Sequence) else []
        if mapping.defined is not None or entry.value.defined is not None:
            return
        for item in items:
            name = item.entries.get("session") if isinstance(item, Mapping) else None
            sessions = self.sessions.get((block, name.value.start, name.value.end)) if name else None
            if name is None or sessions is None:
                continue
            label, tooltip = self.session(sessions)
            if label:
                at = name.value.end if item.defined is None else item.end
                yield self.behind(at), label, tooltip, "sets"

    def behind(self, offset: int) -> int:
        """The end of the line of a name that ends at an offset; the offset if more than a comment follows."""
        end = self.line_end(offset)
        rest = self.text.content[offset:end].strip()
        return offset if rest and not rest.startswith("#") else end

    def line_end(self, offset: int) -> int:
        """The end of the line that holds an offset, its comment included."""
        line, column = self.text.position(offset)
        return offset - column + 1 + len(self.text.whole_line(line))

    def week(self, block: Block) -> LabelAndTooltip:
        """Label and tooltip for the weeks of a block."""
        weeks = self.index.weeks_of((block,))
        statements = [Statement(groups_in_short(week), athlete, numbers) for week, athlete, numbers in weeks]
        return self.merged(statements, weeks[0][0], block.weeks, "a week") if weeks else ("", "")

    def session(self, sessions: list[Session]) -> LabelAndTooltip:
        """Label and tooltip for a session."""
        visits = self.index.visits_of(sessions)
        statements = [
            Statement(groups_in_short(visit), athlete, numbers) for visit, athlete, numbers in visits
        ]
        weeks = len({week for _, _, numbers in visits for week in numbers})
        return self.merged(statements, visits[0][0], weeks, "session") if visits else ("", "")

    def merged(self, statements: list[Statement], first: Tally, all_weeks: int, of: str) -> LabelAndTooltip:
        """The first statement as the label; all statements, with a table of the ``first``, as the tooltip.

        Two times "" where the first statement is empty.
        """
        head, one = merged(statements, self.ledgers, all_weeks)[0]
        if not one.words:
            return "", ""
        label = f"{total_of(of, uncapitalised(head))}: {one.words}"
        text = merged_text(statements, self.ledgers, all_weeks)
        return label, paragraphs(text, groups_table(first), HALF_NOTE)


# Kilograms


def _load_hints(snapshot: Snapshot, readable: ReadableReview) -> Iterator[ReadHint]:
    steps = LoadSteps(snapshot.workspace, readable.review.team)
    for (_, end), entries in readable.index.loads():
        converted = [(entry, words) for entry in entries if (words := _converted(entry, steps))]
        if converted:
            yield end, f"= {_load_label(converted, entries)}", _load_tooltip(converted), "kg"


def _converted(entry: SetGroup, steps: LoadSteps) -> str:
    """A load in % as kg, one in kg as %; "" where no best lift is on file."""
    percent = percent_of_best(entry)
    return f"{percent} 1RM" if percent else steps.kilograms(entry)


def _load_label(converted: list[tuple[SetGroup, str]], entries: list[SetGroup]) -> str:
    """The converted load: once where it is the same for all, else by athlete or lift."""
    loads = dict.fromkeys(words for _, words in converted)
    if len(loads) == 1 and len(converted) == len(entries):
        return next(iter(loads))
    athletes = len({entry.programme for entry in entries}) > 1
    lifts = len({entry.exercise for entry in entries}) > 1
    labels = dict.fromkeys(
        " ".join([*([_name(entry.programme)] if athletes else []), *([entry.name] if lifts else []), words])
        for entry, words in converted
    )
    more = ", ..." if len(labels) > MOST_NAMES else ""
    return f"{', '.join([*labels][:MOST_NAMES])}{more}"


def _name(programme: ProgrammeHeader) -> str:
    return programme.athlete.name if programme.athlete else ""


def _load_tooltip(converted: list[tuple[SetGroup, str]]) -> str:
    """The best lift from which each load was worked out."""
    lines: dict[str, None] = {}
    for entry, words in converted:
        best_lift = best_used(entry)
        if best_lift is not None and entry.work.load is not None:
            who = f"{name_of(entry.programme)}: " if entry.programme.athlete else ""
            best = best_lift_in_words(best_lift[0])
            lines[f"{who}{md(entry.work.load.words)} = {md(words)}; best on file: {best}"] = None
    return "\n\n".join(lines)
