"""Plain answers as the protocol's own objects: offsets become positions, paths become URIs."""

from __future__ import annotations

from lsprotocol import types

from ..explain.plain_text import plain_text
from ..protocol.text_document import TextDocument
from ..protocol.uris import uri_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ...findings.finding import Edit, Finding
    from ...text.places import Text
    from ..protocol.client import Client
    from ..protocol.text_document import Encoding
    from .answers import Completion, Fix, FoundSymbol, Hint, Hover, Lens, Location, Symbol
    from .open_documents import OpenDocument, OpenDocuments

COMPLETION_KINDS = {
    "key": types.CompletionItemKind.Property,
    "value": types.CompletionItemKind.Value,
    "exercise": types.CompletionItemKind.Value,
    "athlete": types.CompletionItemKind.File,
    "rule": types.CompletionItemKind.Reference,
    "day": types.CompletionItemKind.Value,
    "muscle": types.CompletionItemKind.Value,
    "template": types.CompletionItemKind.Snippet,
}

SYMBOL_KINDS = {
    "programme": types.SymbolKind.Module,
    "block": types.SymbolKind.Namespace,
    "session": types.SymbolKind.Class,
    "prescription": types.SymbolKind.Field,
}

CHANGES_COMMAND = "spotline.changes"
"""The command that says what changed since the last commit."""

WEEK_COMMAND = "spotline.week"
"""The command that opens a week's table."""


class ProtocolConverter:
    """Converts positions and answers for one open document and one client."""

    def __init__(self, documents: OpenDocuments, document: OpenDocument, client: Client) -> None:
        self._documents = documents
        self._text_document = document.text_document
        self._reviewed_as = document.reviewed_as
        self._client = client
        self._other_files: dict[str, TextDocument] = {}

    # Places

    def offset(self, position: types.Position) -> int:
        """The offset of one of the client's positions."""
        return self._text_document.offset(position.line, position.character)

    def range(self, start: int, end: int) -> types.Range:
        """The range from one offset of the document to another."""
        return _range(self._text_document, start, end)

    def location_in(self, text: Text, start: int, end: int) -> types.Location:
        """The range from one offset to another, in the text of this document or of another file."""
        of = self._text_document if text.name == self._reviewed_as else self._other_file(text)
        return types.Location(of.uri, _range(of, start, end))

    def _other_file(self, text: Text) -> TextDocument:
        """Another file: the open document if there is one, else the text as it was read."""
        if text.name not in self._other_files:
            document = self._documents.at_path(text.name)
            self._other_files[text.name] = (
                document.text_document
                if document is not None
                else TextDocument(uri_of(text.name), 0, text.content, self._documents.encoding)
            )
        return self._other_files[text.name]

    # Answers

    def fix(self, fix: Fix, diagnostics: list[types.Diagnostic]) -> types.CodeAction:
        """A fix as a code action that mends some diagnostics."""
        return types.CodeAction(
            fix.title,
            kind=types.CodeActionKind.QuickFix,
            diagnostics=diagnostics,
            is_preferred=fix.preferred or None,
            edit=self.workspace_edit(fix.edits, fix.snippet) if fix.edits else None,
            data=None if fix.edits else self._aim(fix.findings[0]),
        )

    def _aim(self, finding: Finding) -> dict[str, object]:
        """By what a finding is known again when the fix for it is to be worked out."""
        return {
            "uri": self._text_document.uri,
            "version": self._text_document.version,
            "line": finding.place.line,
            "rule": finding.rule,
            "about": finding.group or finding.subject,
        }

    def workspace_edit(self, edits: Iterable[Edit], snippet: str = "") -> types.WorkspaceEdit:
        """Edits of this document and others; a ``snippet`` takes the place of the words of a single one."""
        by_uri: dict[str, list[types.TextEdit]] = {}
        for edit in edits:
            location = self.location_in(edit.place.text, edit.place.start, edit.place.end)
            by_uri.setdefault(location.uri, []).append(types.TextEdit(location.range, edit.words))
        if not self._client.document_changes:
            return types.WorkspaceEdit(changes=by_uri)
        return types.WorkspaceEdit(
            document_changes=[
                types.TextDocumentEdit(
                    types.OptionalVersionedTextDocumentIdentifier(uri, self._documents.version(uri)),
                    [self._with_snippet(edit, snippet) for edit in edits_of_file],
                )
                for uri, edits_of_file in by_uri.items()
            ]
        )

    def _with_snippet(self, edit: types.TextEdit, snippet: str) -> types.TextEdit | types.SnippetTextEdit:
        if not snippet or not self._client.snippet_edits:
            return edit
        return types.SnippetTextEdit(edit.range, types.StringValue(snippet))

    def hover(self, hover: Hover) -> types.Hover:
        """A hover."""
        content = self._markup(hover.markdown, self._client.hover_kind)
        return types.Hover(content, self.range(hover.start, hover.end))

    def completion(self, completion: Completion) -> types.CompletionItem:
        """A completion item."""
        documentation = self._markup(completion.documentation, self._client.documentation_kind)
        return types.CompletionItem(
            completion.label,
            kind=COMPLETION_KINDS[completion.kind],
            detail=completion.detail or None,
            documentation=documentation if completion.documentation else None,
            sort_text=completion.sort_text,
            filter_text=completion.filter_text,
            insert_text_format=types.InsertTextFormat.Snippet if completion.snippet else None,
            insert_text_mode=types.InsertTextMode.AdjustIndentation
            if completion.snippet and self._client.adjusts_indentation
            else None,
            text_edit=types.TextEdit(
                self.range(completion.start, completion.end), completion.snippet or completion.insert
            ),
        )

    def hint(self, hint: Hint) -> types.InlayHint:
        """An inlay hint."""
        tooltip = self._markup(hint.tooltip, types.MarkupKind.Markdown)
        return types.InlayHint(
            types.Position(*self._text_document.position(hint.offset)),
            hint.label,
            tooltip=tooltip if hint.tooltip else None,
            padding_left=True,
        )

    def symbol(self, symbol: Symbol) -> types.DocumentSymbol:
        """A symbol with the symbols inside it."""
        return types.DocumentSymbol(
            symbol.name,
            SYMBOL_KINDS[symbol.kind],
            self.range(symbol.start, symbol.end),
            self.range(symbol.name_start, symbol.name_end),
            detail=symbol.detail or None,
            children=[self.symbol(child) for child in symbol.children],
        )

    def flat_symbols(
        self, symbols: Iterable[Symbol], container: str | None = None
    ) -> Iterator[types.SymbolInformation]:
        """The same symbols as one list, for clients that cannot show them one inside the other."""
        for symbol in symbols:
            location = types.Location(self._text_document.uri, self.range(symbol.start, symbol.end))
            yield types.SymbolInformation(
                location, symbol.name, SYMBOL_KINDS[symbol.kind], container_name=container
            )
            yield from self.flat_symbols(symbol.children, symbol.name)

    def lens(self, lens: Lens) -> types.CodeLens:
        """A code lens, which opens the table of its week; without one, what changed since the last commit."""
        uri = self._text_document.uri
        week: list[object] = [uri, lens.week, lens.athlete]
        command = (
            types.Command(lens.title, CHANGES_COMMAND, None, [uri])
            if lens.week is None
            else types.Command(lens.title, WEEK_COMMAND, None, week)
        )
        return types.CodeLens(self.range(lens.start, lens.end), command)

    def _markup(self, markdown: str, kind: types.MarkupKind | None) -> types.MarkupContent | str:
        """Markdown in the form that the client shows: as text where it would show the signs."""
        if kind is not types.MarkupKind.Markdown or self._client.shows_text:
            kind = types.MarkupKind.PlainText if kind is not None else None
            markdown = plain_text(markdown)
        return markdown if kind is None else types.MarkupContent(kind, markdown)

    def location(self, location: Location) -> types.Location:
        """A place to go to."""
        return self.location_in(location.text, location.start, location.end)


def symbol_information(found: FoundSymbol, encoding: Encoding) -> types.SymbolInformation:
    """A symbol of any file of the workspace."""
    document = TextDocument(uri_of(found.text.name), 0, found.text.content, encoding)
    location = types.Location(document.uri, _range(document, found.start, found.end))
    return types.SymbolInformation(
        location, found.name, SYMBOL_KINDS[found.kind], container_name=found.container
    )


def _range(document: TextDocument, start: int, end: int) -> types.Range:
    return types.Range(
        types.Position(*document.position(start)), types.Position(*document.position(max(start, end)))
    )
