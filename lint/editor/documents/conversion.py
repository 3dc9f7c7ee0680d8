"""Plain answers as the protocol's own objects: offsets become positions, paths become addresses."""

from __future__ import annotations

from lsprotocol import types

from ..protocol.document import Document
from ..protocol.uris import uri_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ...text.places import Text
    from ..protocol.client import Client
    from .answers import Completion, Fix, Hint, Hover, Lens, Symbol, Target
    from .open_documents import OpenDocument, OpenDocuments

COMPLETIONS = {
    "key": types.CompletionItemKind.Property,
    "value": types.CompletionItemKind.Value,
    "exercise": types.CompletionItemKind.Value,
    "athlete": types.CompletionItemKind.File,
    "rule": types.CompletionItemKind.Reference,
    "day": types.CompletionItemKind.Value,
    "muscle": types.CompletionItemKind.Value,
}

SYMBOLS = {
    "programme": types.SymbolKind.Module,
    "block": types.SymbolKind.Namespace,
    "session": types.SymbolKind.Class,
    "prescription": types.SymbolKind.Field,
}

WEEK_COMMAND = "spotline.week"


class ProtocolConverter:
    """Writes answers on one open document for one client."""

    def __init__(self, documents: OpenDocuments, opened: OpenDocument, client: Client) -> None:
        self._documents = documents
        self._document = opened.document
        self._name = opened.name
        self._client = client
        self._others: dict[str, Document] = {}

    # Places

    def offset(self, position: types.Position) -> int:
        """The offset of the client's position."""
        return self._document.offset(position.line, position.character)

    def range(self, start: int, end: int) -> types.Range:
        """A stretch of the document."""
        return _range(self._document, start, end)

    def location(self, text: Text, start: int, end: int) -> types.Location:
        """A stretch of this text or another one."""
        document = self._document if text.name == self._name else self._other(text)
        return types.Location(document.uri, _range(document, start, end))

    def _other(self, text: Text) -> Document:
        """Another file: as it is open, or as it was read."""
        if text.name not in self._others:
            opened = self._documents.document_of(text.name)
            self._others[text.name] = (
                opened.document
                if opened is not None
                else Document(uri_of(text.name), 0, text.content, self._documents.encoding)
            )
        return self._others[text.name]

    # Answers

    def fix(self, fix: Fix, diagnostics: list[types.Diagnostic]) -> types.CodeAction:
        """A quick fix."""
        return types.CodeAction(
            fix.title,
            kind=types.CodeActionKind.QuickFix,
            diagnostics=diagnostics,
            is_preferred=fix.preferred or None,
            edit=self._edit(fix),
        )

    def _edit(self, fix: Fix) -> types.WorkspaceEdit:
        by_uri: dict[str, list[types.TextEdit]] = {}
        for edit in fix.edits:
            place = self.location(edit.place.text, edit.place.start, edit.place.end)
            by_uri.setdefault(place.uri, []).append(types.TextEdit(place.range, edit.words))
        if not self._client.document_changes:
            return types.WorkspaceEdit(changes=by_uri)
        return types.WorkspaceEdit(
            document_changes=[
                types.TextDocumentEdit(
                    types.OptionalVersionedTextDocumentIdentifier(uri, self._version(uri)),
                    [self._filled(edit, fix.snippet) for edit in edits],
                )
                for uri, edits in by_uri.items()
            ]
        )

    def _filled(self, edit: types.TextEdit, snippet: str) -> types.TextEdit | types.SnippetTextEdit:
        if not snippet or not self._client.snippets:
            return edit
        return types.SnippetTextEdit(edit.range, types.StringValue(snippet))

    def _version(self, uri: str) -> int | None:
        opened = self._documents.documents.get(uri)
        return None if opened is None else opened.document.version

    def hover(self, hover: Hover) -> types.Hover:
        """A hover."""
        words = _words(hover.markdown, self._client.hover_kind)
        return types.Hover(words, self.range(hover.start, hover.end))

    def completion(self, one: Completion) -> types.CompletionItem:
        """A proposal."""
        documentation = _words(one.documentation, self._client.documentation_kind)
        return types.CompletionItem(
            one.label,
            kind=COMPLETIONS[one.kind],
            detail=one.detail or None,
            documentation=documentation if one.documentation else None,
            sort_text=one.sort,
            filter_text=one.filter,
            text_edit=types.TextEdit(self.range(one.start, one.end), one.insert),
        )

    def hint(self, hint: Hint) -> types.InlayHint:
        """An inlay hint."""
        tooltip = types.MarkupContent(types.MarkupKind.Markdown, hint.tooltip)
        return types.InlayHint(
            types.Position(*self._document.position(hint.offset)),
            hint.label,
            tooltip=tooltip if hint.tooltip else None,
            padding_left=True,
        )

    def symbol(self, symbol: Symbol) -> types.DocumentSymbol:
        """A part of the programme with what it holds."""
        return types.DocumentSymbol(
            symbol.name,
            SYMBOLS[symbol.kind],
            self.range(symbol.start, symbol.end),
            self.range(symbol.name_start, symbol.name_end),
            detail=symbol.detail or None,
            children=[self.symbol(child) for child in symbol.children],
        )

    def flat(self, symbols: Iterable[Symbol], holder: str | None = None) -> Iterator[types.SymbolInformation]:
        """The same parts one by one."""
        for symbol in symbols:
            place = types.Location(self._document.uri, self.range(symbol.start, symbol.end))
            yield types.SymbolInformation(place, symbol.name, SYMBOLS[symbol.kind], container_name=holder)
            yield from self.flat(symbol.children, symbol.name)

    def lens(self, lens: Lens) -> types.CodeLens:
        """A code lens; one without a week can only be read."""
        asked: list[object] = [self._document.uri, lens.week, lens.athlete]
        command = (
            types.Command(lens.title, "")
            if lens.week is None
            else types.Command(lens.title, WEEK_COMMAND, None, asked)
        )
        return types.CodeLens(self.range(lens.start, lens.end), command)

    def target(self, target: Target) -> types.Location:
        """A place to go to."""
        return self.location(target.text, target.start, target.end)


def _words(markdown: str, kind: types.MarkupKind | None) -> types.MarkupContent | str:
    return markdown if kind is None else types.MarkupContent(kind, markdown)


def _range(document: Document, start: int, end: int) -> types.Range:
    return types.Range(
        types.Position(*document.position(start)), types.Position(*document.position(max(start, end)))
    )
