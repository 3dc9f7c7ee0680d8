"""Finds programmes, sessions, lines, athletes and own exercises by name in all files of the folder."""

from __future__ import annotations

import os
from itertools import islice

from ...project.discovery import searched
from ...syntax.tree import Mapping, Scalar, Sequence
from ..documents.answers import FoundSymbol
from .links import MOST_FILES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...project.workspace import Workspace
    from ...syntax.tree import Node
    from ..documents.answers import SymbolKind

MOST_SYMBOLS = 200
"""Names that are found at once."""

NAMED: dict[str, dict[str, SymbolKind]] = {
    "programme": {
        "programme": "programme",
        "name": "block",
        "session": "session",
        "activity": "session",
        "exercise": "prescription",
    },
    "athlete": {"name": "programme"},
    "exercises": {"name": "prescription"},
}
"""For each kind of file: the keys whose values are names, and what they name."""


def workspace_symbols(workspace: Workspace, folder: str, query: str) -> list[FoundSymbol]:
    """The names that hold all words of a query; without a word, programmes and athletes."""
    words = query.lower().split()
    found = _symbols(workspace, folder, words)
    return list(islice(found, MOST_SYMBOLS))


def _symbols(workspace: Workspace, folder: str, words: list[str]) -> Iterator[FoundSymbol]:
    for file in islice(searched(workspace, os.path.relpath(folder)), MOST_FILES):
        named = NAMED.get(file.kind)
        if named is None:
            continue
        reading = workspace.overlay.read(file)
        seen: set[tuple[str, str]] = set()
        container = os.path.basename(file.name)
        for kind, session, node in _names(reading.root, named):
            name = " ".join(node.text.split())
            is_wanted = all(word in name.lower() for word in words) if words else kind == "programme"
            if name and is_wanted and (name, session) not in seen:
                seen.add((name, session))
                where = f"{session}, {container}" if session else container
                yield FoundSymbol(name, kind, where, reading.text, node.start, node.end)


def _names(root: Node | None, named: dict[str, SymbolKind]) -> Iterator[tuple[SymbolKind, str, Scalar]]:
    """The names of a file in its order, each with what it names and the session that it stands in."""
    waiting: list[tuple[Node, str]] = [(root, "")] if root is not None else []
    while waiting:
        node, session = waiting.pop()
        if node.defined is not None:
            continue
        if isinstance(node, Sequence):
            waiting.extend((item, session) for item in reversed(node.items))
        elif isinstance(node, Mapping):
            own = node.entries.get("session")
            inner = own.value.text if own is not None and isinstance(own.value, Scalar) else session
            below: list[tuple[Node, str]] = []
            for key, entry in node.entries.items():
                if entry.merged:
                    continue
                if key in named and isinstance(entry.value, Scalar):
                    if entry.value.defined is None:
                        yield named[key], "" if key == "session" else inner, entry.value
                else:
                    below.append((entry.value, inner))
            waiting.extend(reversed(below))
