"""What features answer: plain objects whose offsets count code points of the document's current text."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal

    from ...findings.finding import Edit, Finding
    from ...text.places import Text

    CompletionKind = Literal["key", "value", "exercise", "athlete", "rule", "day", "muscle"]

    HintKind = Literal["sets", "kg"]

    SymbolKind = Literal["programme", "block", "session", "prescription"]


class Hover:
    """What is shown of the words from ``start`` to ``end``, as Markdown."""

    __slots__ = ("end", "markdown", "start")

    def __init__(self, start: int, end: int, markdown: str) -> None:
        self.start = start
        self.end = end
        self.markdown = markdown


class Completion:
    """A proposal: ``insert`` takes the place of the words from ``start`` to ``end``.

    ``label`` is what the list shows, ``detail`` a few words beside it, ``documentation`` Markdown; the list
    is ordered by ``sort``, and what is typed is compared with ``filter``.
    """

    __slots__ = ("detail", "documentation", "end", "filter", "insert", "kind", "label", "sort", "start")

    def __init__(
        self,
        label: str,
        insert: str,
        start: int,
        end: int,
        detail: str,
        documentation: str,
        kind: CompletionKind,
        sort: str,
        filter: str,
    ) -> None:
        self.label = label
        self.insert = insert
        self.start = start
        self.end = end
        self.detail = detail
        self.documentation = documentation
        self.kind: CompletionKind = kind
        self.sort = sort
        self.filter = filter


class Hint:
    """A few words shown behind ``offset``, no part of the text; ``tooltip`` is Markdown."""

    __slots__ = ("kind", "label", "offset", "tooltip")

    def __init__(self, offset: int, label: str, tooltip: str, kind: HintKind) -> None:
        self.offset = offset
        self.label = label
        self.tooltip = tooltip
        self.kind: HintKind = kind


class Symbol:
    """A part of the programme from ``start`` to ``end``; ``name_start`` and ``name_end`` hold its name."""

    __slots__ = ("children", "detail", "end", "kind", "name", "name_end", "name_start", "start")

    def __init__(
        self,
        name: str,
        detail: str,
        kind: SymbolKind,
        start: int,
        end: int,
        name_start: int,
        name_end: int,
        children: list[Symbol],
    ) -> None:
        self.name = name
        self.detail = detail
        self.kind: SymbolKind = kind
        self.start = start
        self.end = end
        self.name_start = name_start
        self.name_end = name_end
        self.children = children


class Lens:
    """A line above the words from ``start`` to ``end``.

    With a ``week`` it opens that week's table for the athlete at ``athlete`` among the programme's; without,
    it only says something.
    """

    __slots__ = ("athlete", "end", "start", "title", "week")

    def __init__(self, start: int, end: int, title: str, week: int | None, athlete: int) -> None:
        self.start = start
        self.end = end
        self.title = title
        self.week = week
        self.athlete = athlete


class Target:
    """A place to go to: offsets ``start`` to ``end`` of ``text``, which is that of the file at ``path``."""

    __slots__ = ("end", "path", "start", "text")

    def __init__(self, path: str, start: int, end: int, text: Text) -> None:
        self.path = path
        self.start = start
        self.end = end
        self.text = text


class Fix:
    """Edits, taken together, that mend what some ``findings`` say.

    ``preferred`` marks the only way there is; ``snippet`` is what the one edit inserts for a client that lets
    the coach fill in words, "" where there is nothing to fill in.
    """

    __slots__ = ("edits", "findings", "preferred", "snippet", "title")

    def __init__(
        self,
        title: str,
        findings: list[Finding],
        edits: list[Edit],
        preferred: bool = False,
        snippet: str = "",
    ) -> None:
        self.title = title
        self.findings = findings
        self.edits = edits
        self.preferred = preferred
        self.snippet = snippet
