"""The programme in outline: its parts as symbols, and what its weeks hold as lenses above them."""

from __future__ import annotations

from ...syntax.tree import Mapping, Scalar, Sequence
from ...wording.words import counted_noun, sets_of
from ..caret.readable_review import ReadableReview
from ..documents.answers import Lens, Symbol
from ..explain.counts import session_in_short
from ..explain.markdown import Statement, merged, total_of, uncapitalised, unmarked
from ..explain.programme import capitalised

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...model.sessions import Block, Session
    from ...syntax.tree import KeyValue, Node
    from ..documents.answers import SymbolKind
    from ..documents.offset_map import Span
    from ..documents.snapshot import Snapshot

MOST_LENSES = 3
"""Lenses above one block or session: more would push the text away."""

UNNAMED = "(no name)"


# Symbols


def symbols(snapshot: Snapshot) -> list[Symbol]:
    """The outline of a document; where it cannot be read, that of its last readable text."""
    readable = ReadableReview(snapshot)
    root = readable.reading.root
    if not isinstance(root, Mapping):
        return []
    outline = _Outline(readable)
    by_kind = {
        "programme": lambda: outline.symbol(root, root, "programme", "programme", outline.parts(root, root)),
        "athlete": lambda: outline.symbol(root, root, "name", "programme", outline.best_lifts(root)),
        "team": lambda: outline.symbol(root, root, "", "programme", outline.settings(root), "settings"),
        "exercises": lambda: outline.symbol(
            root, root, "", "programme", outline.own_exercises(root), "exercises"
        ),
    }
    make = by_kind.get(readable.review.kind)
    top = make() if make is not None else None
    return [] if top is None else [top]


class _Outline:
    """Makes symbols of the tree, at their places in the document."""

    def __init__(self, readable: ReadableReview) -> None:
        self.readable = readable

    def symbol(
        self,
        node: Node,
        whole: Node,
        name_key: str,
        kind: SymbolKind,
        children: Iterator[Symbol],
        name: str = "",
        detail: str = "",
    ) -> Symbol | None:
        """A symbol over ``whole``, named by a key of ``node``; None where its text was rewritten since."""
        entry = node.entries.get(name_key) if isinstance(node, Mapping) else None
        if entry is not None:
            name = _as_written(entry.value)
        name_node = entry.value if entry is not None else whole
        is_inside = whole.start <= name_node.start and name_node.end <= whole.end
        outer = self.readable.remains_in_document(whole.start, whole.end)
        inner_node = name_node if is_inside else whole
        inner = self.readable.span_in_document(inner_node.start, inner_node.end)
        inside = list(children)
        if outer is None:
            return None
        if inner is None or not outer[0] <= inner[0] <= inner[1] <= outer[1]:
            inner = outer
        return Symbol(name or UNNAMED, detail, kind, outer[0], outer[1], inner[0], inner[1], inside)

    # A programme

    def parts(self, node: Mapping, root: Mapping) -> Iterator[Symbol]:
        """The blocks of a programme, or its sessions; the sessions of a block."""
        for block in _items(node.entries.get("blocks")) if node is root else ():
            if isinstance(block, Mapping):
                weeks = block.entries.get("weeks")
                number = _as_written(weeks.value) if weeks else ""
                detail = counted_noun(number, "week") if number else ""
                key = "block" if "block" in block.entries else "name"
                yield from _if_any(
                    self.symbol(block, block, key, "block", self.parts(block, root), detail=detail)
                )
        for item in _items(node.entries.get("sessions")):
            if isinstance(item, Mapping):
                key = "activity" if "activity" in item.entries else "session"
                day = item.entries.get("day")
                detail = _as_written(day.value) if day else ""
                yield from _if_any(self.symbol(item, item, key, "session", self.lines(item), detail=detail))

    def lines(self, session: Mapping) -> Iterator[Symbol]:
        """The lines of a session, those of supersets and circuits too."""
        for item in _items(session.entries.get("exercises")):
            if isinstance(item, Mapping):
                yield from self.line(item)

    def line(self, item: Mapping) -> Iterator[Symbol]:
        """One line, or those of a superset, circuit or complex."""
        circuit = item.entries.get("circuit")
        whole_work = next((key for key in ("superset", "complex") if key in item.entries), "")
        if whole_work:
            members = _items(item.entries[whole_work])
        elif circuit is not None and isinstance(circuit.value, Mapping):
            members = _items(circuit.value.entries.get("exercises"))
        else:
            members = [item]
        for member in members:
            if isinstance(member, Mapping):
                whole = member if member.defined is None else item
                detail = _work_of(member)
                name = next((key for key in ("intervals", "own choice") if key in member.entries), "exercise")
                yield from _if_any(self.symbol(member, whole, name, "prescription", iter(()), detail=detail))

    # Other files

    def best_lifts(self, root: Mapping) -> Iterator[Symbol]:
        """The best lifts of an athlete."""
        yield from self.pairs_below(root.entries.get("best lifts"))

    def settings(self, root: Mapping) -> Iterator[Symbol]:
        """The settings of a team."""
        for key, entry in root.entries.items():
            has_parts = key in ("rules", "weekly limits", "folders")
            yield from _if_any(
                self.pair(key, entry, "block", list(self.pairs_below(entry)) if has_parts else [])
            )

    def own_exercises(self, root: Mapping) -> Iterator[Symbol]:
        """A team's own exercises."""
        for item in _items(root.entries.get("exercises")):
            if isinstance(item, Mapping):
                yield from _if_any(self.symbol(item, item, "name", "prescription", iter(())))

    def pairs_below(self, entry: KeyValue | None) -> Iterator[Symbol]:
        """A symbol for each key below a key."""
        if entry is not None and isinstance(entry.value, Mapping):
            for key, one in entry.value.entries.items():
                yield from _if_any(self.pair(key, one, "prescription", []))

    def pair(self, key: str, entry: KeyValue, kind: SymbolKind, children: list[Symbol]) -> Symbol | None:
        """A symbol over a key and its value."""
        if entry.merged:
            return None
        outer = self.readable.remains_in_document(entry.key.start, max(entry.key.end, entry.value.end))
        if outer is None:
            return None
        inner = self.readable.span_in_document(entry.key.start, entry.key.end) or outer
        detail = _as_written(entry.value)
        return Symbol(key or UNNAMED, detail, kind, outer[0], outer[1], inner[0], inner[1], children)


def _if_any(symbol: Symbol | None) -> Iterator[Symbol]:
    if symbol is not None:
        yield symbol


def _items(entry: KeyValue | None) -> list[Node]:
    return entry.value.items if entry is not None and isinstance(entry.value, Sequence) else []


def _as_written(node: Node) -> str:
    """A value as written, on one line; values by week in turn: ``3 → 4 → 2``; "" for other groups."""
    if isinstance(node, Scalar):
        return " ".join(node.text.split())
    if isinstance(node, Sequence):
        return ", ".join(item.text for item in node.items if isinstance(item, Scalar))
    if isinstance(node, Mapping) and all(key[:1].isdigit() for key in node.entries):
        return " → ".join(_as_written(entry.value) for entry in node.entries.values())
    if isinstance(node, Mapping) and "load" in node.entries:
        return _as_written(node.entries["load"].value)
    return ""


def _work_of(line: Mapping) -> str:
    """``3 x 8-10, 75 %, 2 RIR``."""
    work = line.entries.get("work")
    if work is not None:
        return "; ".join(_work_of(group) for group in _items(work) if isinstance(group, Mapping))
    values = {key: _as_written(entry.value) for key, entry in line.entries.items()}
    if "own choice" in values:
        return f"{values.get('minutes', '')} min"
    sets = values.get("sets") or values.get("rounds", "")
    each = next((values[key] for key in ("reps", "hold", "distance", "on") if values.get(key)), "")
    parts = [
        f"{sets} x {each}" if sets and each else (sets and f"{sets} sets") or each,
        f"test {values['test']}" if values.get("test") else "",
        values.get("load", ""),
        f"{values['rir']} RIR" if values.get("rir") else "",
        f"RPE {values['rpe']}" if values.get("rpe") else "",
    ]
    return ", ".join(part for part in parts if part)


# Lenses


def lenses(snapshot: Snapshot) -> list[Lens]:
    """What the weeks of each block and of each session hold; a click opens the week's table."""
    readable = ReadableReview(snapshot)
    found: list[Lens] = []
    for block in readable.index.blocks:
        span = (block.place.start, block.place.end)
        found += _lenses_at(readable, span, _week_statements(readable, block), 0, "a week")
    seen: set[Span] = set()
    for block in readable.index.blocks:
        for session in readable.index.sessions_of(block):
            span = (session.place.start, session.place.end)
            if span not in seen:
                seen.add(span)
                statements = _visit_statements(readable, session)
                weeks = {week for one in statements for week in one.weeks}
                found += _lenses_at(readable, span, statements, len(weeks), "session")
    return sorted(found, key=lambda lens: lens.start)


def _lenses_at(
    readable: ReadableReview, name: Span, statements: list[Statement], all_weeks: int, of: str
) -> Iterator[Lens]:
    """Lenses above the name of a week or session; weeks are named unless it holds for ``all_weeks``."""
    span = readable.span_in_document(*name)
    if span is None:
        return
    for head, one in merged(statements, readable.review.ledgers, all_weeks)[:MOST_LENSES]:
        title = f"{capitalised(total_of(of, uncapitalised(head)))}: {one.words}"
        yield Lens(span[0], span[1], unmarked(title), min(one.weeks), one.athlete)


def _week_statements(readable: ReadableReview, block: Block) -> list[Statement]:
    return [
        Statement(
            f"{sets_of(str(week.all_sets()))}, {counted_noun(len(week.groups()), 'group')}", athlete, numbers
        )
        for week, athlete, numbers in readable.index.weeks_of((block,))
        if week.all_sets()
    ]


def _visit_statements(readable: ReadableReview, session: Session) -> list[Statement]:
    return [
        Statement(session_in_short(visit), athlete, numbers)
        for visit, athlete, numbers in readable.index.visits_of((session,))
        if visit.all_sets()
    ]
