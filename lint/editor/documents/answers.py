"""What features answer: plain objects. Their offsets count code points of the document's current text."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal

    from ...findings.finding import Edit, Finding
    from ...text.places import Text

    CompletionKind = Literal["key", "value", "exercise", "athlete", "rule", "day", "muscle", "template"]

    HintKind = Literal["sets", "kg"]

    SymbolKind = Literal["programme", "block", "session", "prescription"]


class Hover:
    """What is shown, as Markdown, for the text from ``start`` to ``end``."""

    __slots__ = ("end", "markdown", "start")

    def __init__(self, start: int, end: int, markdown: str) -> None:
        self.start = start
        self.end = end
        self.markdown = markdown


class Completion:
    """A proposal: ``insert`` replaces the text from ``start`` to ``end``.

    The list shows ``label``, with ``detail`` beside it; ``documentation`` is Markdown. The list is sorted by
    ``sort_text``. The client compares what is typed with ``filter_text``. A ``snippet`` is inserted in place
    of ``insert`` and has stops to fill in; it is "" where there are none.
    """

    __slots__ = (
        "detail",
        "documentation",
        "end",
        "filter_text",
        "insert",
        "kind",
        "label",
        "snippet",
        "sort_text",
        "start",
    )

    def __init__(
        self,
        label: str,
        insert: str,
        start: int,
        end: int,
        detail: str,
        documentation: str,
        kind: CompletionKind,
        sort_text: str,
        filter_text: str,
        snippet: str = "",
    ) -> None:
        self.label = label
        self.insert = insert
        self.start = start
        self.end = end
        self.detail = detail
        self.documentation = documentation
        self.kind: CompletionKind = kind
        self.sort_text = sort_text
        self.filter_text = filter_text
        self.snippet = snippet


class Hint:
    """A label shown at ``offset`` that is no part of the text; ``tooltip`` is Markdown."""

    __slots__ = ("kind", "label", "offset", "tooltip")

    def __init__(self, offset: int, label: str, tooltip: str, kind: HintKind) -> None:
        self.offset = offset
        self.label = label
        self.tooltip = tooltip
        self.kind: HintKind = kind


class Symbol:
    """A part of a file from ``start`` to ``end``; its name stands from ``name_start`` to ``name_end``."""

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


class FoundSymbol:
    """A name from ``start`` to ``end`` of a text, what it names, and where: ``container``."""

    __slots__ = ("container", "end", "kind", "name", "start", "text")

    def __init__(self, name: str, kind: SymbolKind, container: str, text: Text, start: int, end: int) -> None:
        self.name = name
        self.kind: SymbolKind = kind
        self.container = container
        self.text = text
        self.start = start
        self.end = end


class Lens:
    """A line shown above the text from ``start`` to ``end``.

    A click on it opens the table of the ``week`` (from 1) for the athlete at index ``athlete`` of the
    programme's. Where ``week`` is None, it opens what changed since the last commit.
    """

    __slots__ = ("athlete", "end", "start", "title", "week")

    def __init__(self, start: int, end: int, title: str, week: int | None, athlete: int) -> None:
        self.start = start
        self.end = end
        self.title = title
        self.week = week
        self.athlete = athlete


class Location:
    """A place to go to: from ``start`` to ``end`` of ``text``, the text of the file at ``path``."""

    __slots__ = ("end", "path", "start", "text")

    def __init__(self, path: str, start: int, end: int, text: Text) -> None:
        self.path = path
        self.start = start
        self.end = end
        self.text = text


class Fix:
    """Edits that mend what some ``findings`` say; without any, they are worked out once it is chosen.

    ``preferred`` marks a fix that is the only one for its finding. ``snippet`` is what its one edit inserts
    where the client lets the coach fill in words; "" where there is nothing to fill in.
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
