"""The programme in outline: its blocks, sessions and lines as symbols, and what each week holds as lenses."""

from __future__ import annotations

from ...syntax.tree import Mapping, Scalar, Sequence
from ...wording.words import counted_noun, sets_of
from ..caret.tree_path import MappedReading
from ..documents.answers import Lens, Symbol
from ..explain.counts import session_in_short
from ..explain.markdown import Statement, together

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...model.sessions import Block, Session
    from ...syntax.tree import KeyValue, Node
    from ..documents.answers import SymbolKind
    from ..documents.view import View

MOST_LENSES = 3
"""Lenses on one block or session: more would push the text away."""

UNNAMED = "(no name)"


# Symbols


def symbols(view: View) -> list[Symbol]:
    """The outline of the document; of its last readable text where it cannot be read."""
    mapped = MappedReading(view)
    root = mapped.reading.root
    if not isinstance(root, Mapping):
        return []
    outline = _Outline(mapped)
    top = {
        "programme": lambda: outline.symbol(root, root, "programme", "programme", outline.parts(root, root)),
        "athlete": lambda: outline.symbol(root, root, "name", "programme", outline.best_lifts(root)),
        "team": lambda: outline.symbol(root, root, "", "programme", outline.settings(root), "settings"),
        "exercises": lambda: outline.symbol(root, root, "", "programme", outline.own(root), "exercises"),
    }.get(mapped.review.kind)
    made = top() if top is not None else None
    return [] if made is None else [made]


class _Outline:
    """Makes symbols of the tree, at places of the document's text."""

    def __init__(self, mapped: MappedReading) -> None:
        self.mapped = mapped

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
            name = _written(entry.value)
        named = entry.value if entry is not None else whole
        within = whole.start <= named.start and named.end <= whole.end
        return self.place(whole, named if within else whole, name or UNNAMED, kind, list(children), detail)

    def place(
        self, whole: Node, named: Node, name: str, kind: SymbolKind, children: list[Symbol], detail: str
    ) -> Symbol | None:
        outer = self.mapped.around(whole.start, whole.end)
        inner = self.mapped.stretch(named.start, named.end)
        if outer is None:
            return None
        if inner is None or not outer[0] <= inner[0] <= inner[1] <= outer[1]:
            inner = outer
        return Symbol(name, detail, kind, outer[0], outer[1], inner[0], inner[1], children)

    # A programme

    def parts(self, node: Mapping, root: Mapping) -> Iterator[Symbol]:
        """The blocks of a programme, or its sessions; those of a block."""
        for block in _items(node.entries.get("blocks")) if node is root else ():
            if isinstance(block, Mapping):
                weeks = block.entries.get("weeks")
                number = _written(weeks.value) if weeks else ""
                detail = counted_noun(number, "week") if number else ""
                yield from _made(
                    self.symbol(block, block, "name", "block", self.parts(block, root), detail=detail)
                )
        for item in _items(node.entries.get("sessions")):
            if isinstance(item, Mapping):
                key = "activity" if "activity" in item.entries else "session"
                day = item.entries.get("day")
                detail = _written(day.value) if day else ""
                yield from _made(self.symbol(item, item, key, "session", self.lines(item), detail=detail))

    def lines(self, session: Mapping) -> Iterator[Symbol]:
        """The lines of a session, those of supersets and circuits too."""
        for item in _items(session.entries.get("exercises")):
            yield from self.line(item)

    def line(self, item: Node) -> Iterator[Symbol]:
        if not isinstance(item, Mapping):
            return
        circuit = item.entries.get("circuit")
        if "superset" in item.entries:
            members = _items(item.entries["superset"])
        elif circuit is not None and isinstance(circuit.value, Mapping):
            members = _items(circuit.value.entries.get("exercises"))
        else:
            yield from _made(
                self.symbol(item, item, "exercise", "prescription", iter(()), detail=_detail(item))
            )
            return
        for member in members:
            if isinstance(member, Mapping):
                whole = member if item.defined is None else item
                yield from _made(
                    self.symbol(member, whole, "exercise", "prescription", iter(()), detail=_detail(member))
                )

    # Other files

    def best_lifts(self, root: Mapping) -> Iterator[Symbol]:
        yield from self.keys(root.entries.get("best lifts"))

    def settings(self, root: Mapping) -> Iterator[Symbol]:
        for key, entry in root.entries.items():
            held = list(self.keys(entry)) if key in ("rules", "weekly limits", "folders") else []
            yield from _made(self.pair(key, entry, "block", held))

    def own(self, root: Mapping) -> Iterator[Symbol]:
        for item in _items(root.entries.get("exercises")):
            if isinstance(item, Mapping):
                yield from _made(self.symbol(item, item, "name", "prescription", iter(())))

    def keys(self, entry: KeyValue | None) -> Iterator[Symbol]:
        if entry is not None and isinstance(entry.value, Mapping):
            for key, one in entry.value.entries.items():
                yield from _made(self.pair(key, one, "prescription", []))

    def pair(self, key: str, entry: KeyValue, kind: SymbolKind, children: list[Symbol]) -> Symbol | None:
        if entry.merged:
            return None
        outer = self.mapped.around(entry.key.start, max(entry.key.end, entry.value.end))
        if outer is None:
            return None
        inner = self.mapped.stretch(entry.key.start, entry.key.end) or outer
        detail = _written(entry.value)
        return Symbol(key or UNNAMED, detail, kind, outer[0], outer[1], inner[0], inner[1], children)


def _made(symbol: Symbol | None) -> Iterator[Symbol]:
    if symbol is not None:
        yield symbol


def _items(entry: KeyValue | None) -> list[Node]:
    return entry.value.items if entry is not None and isinstance(entry.value, Sequence) else []


def _written(node: Node) -> str:
    """A value as written, on one line; those by week in turn: ``3 → 4 → 2``; "" for other groups."""
    if isinstance(node, Scalar):
        return " ".join(node.text.split())
    if isinstance(node, Sequence):
        return ", ".join(item.text for item in node.items if isinstance(item, Scalar))
    if isinstance(node, Mapping) and all(key[:1].isdigit() for key in node.entries):
        return " → ".join(_written(entry.value) for entry in node.entries.values())
    if isinstance(node, Mapping) and "load" in node.entries:
        return _written(node.entries["load"].value)
    return ""


def _detail(line: Mapping) -> str:
    """``3 x 8-10, 75 %, 2 RIR``."""
    work = line.entries.get("work")
    if work is not None:
        return "; ".join(_detail(group) for group in _items(work) if isinstance(group, Mapping))
    said = {key: _written(entry.value) for key, entry in line.entries.items()}
    sets, each = said.get("sets", ""), said.get("reps") or said.get("hold") or said.get("distance") or ""
    parts = [
        f"{sets} x {each}" if sets and each else (sets and f"{sets} sets") or each,
        said.get("load", ""),
        f"{said['rir']} RIR" if said.get("rir") else "",
        f"RPE {said['rpe']}" if said.get("rpe") else "",
    ]
    return ", ".join(part for part in parts if part)


# Lenses


def lenses(view: View) -> list[Lens]:
    """What the weeks of each block and each session hold; a click opens the week's table."""
    mapped = MappedReading(view)
    found: list[Lens] = []
    for block in mapped.standing.blocks:
        found += _on(mapped, (block.place.start, block.place.end), _weeks(mapped, block), 0)
    seen: set[tuple[int, int]] = set()
    for block in mapped.standing.blocks:
        for session in mapped.standing.sessions_of(block):
            span = (session.place.start, session.place.end)
            if span not in seen:
                seen.add(span)
                told = _visits(mapped, session)
                found += _on(mapped, span, told, len({week for one in told for week in one.weeks}))
    return sorted(found, key=lambda lens: lens.start)


def _on(mapped: MappedReading, span: tuple[int, int], told: list[Statement], whole: int) -> Iterator[Lens]:
    """Lenses on a name; weeks are named where there are not as many as in the ``whole``."""
    stretch = mapped.stretch(*span)
    if stretch is None:
        return
    for head, one in together(told, mapped.review.ledgers, whole)[:MOST_LENSES]:
        title = f"{head}: {one.words}" if head else one.words
        yield Lens(stretch[0], stretch[1], title, min(one.weeks), one.athlete)


def _weeks(mapped: MappedReading, block: Block) -> list[Statement]:
    return [
        Statement(
            f"{sets_of(str(week.all_sets()))}, {counted_noun(len(week.groups()), 'group')}", at, numbers
        )
        for week, at, numbers in mapped.standing.weeks_of((block,))
        if week.all_sets()
    ]


def _visits(mapped: MappedReading, session: Session) -> list[Statement]:
    return [
        Statement(session_in_short(visit), at, numbers)
        for visit, at, numbers in mapped.standing.visits_of((session,))
    ]
