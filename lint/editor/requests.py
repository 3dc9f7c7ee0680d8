"""What the client asks of an open document: each request goes to its feature, the answer is converted."""

from __future__ import annotations

import asyncio

from lsprotocol import types
from pygls.exceptions import JsonRpcException

from ..team.settings import Team
from .documents.conversion import ProtocolConverter
from .features.diagnostics import diagnostic

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from .documents.open_documents import OpenDocuments
    from .documents.snapshot import Snapshot
    from .features.changes import Past
    from .protocol.client import Client

TRIGGER_CHARACTERS = [" ", "/", "[", "{", "*"]
"""Typing one of these asks for completions: behind a key, in a path, in a list, for an alias."""

BEFORE_VALUES = frozenset(":,[{-")
"""A space asks for completions only behind one of these; elsewhere it stands between words."""


CHANGED_MEANWHILE = "The file has changed meanwhile: ask again."


class DocumentRequests:
    """Answers requests on open documents; the answer is None where a document is none of ours.

    ``tell`` shows the coach a sentence.
    """

    def __init__(self, documents: OpenDocuments, client: Client, tell: Callable[[str], None]) -> None:
        self._documents = documents
        self._client = client
        self._tell = tell
        self._past: dict[str, Past] = {}

    def handlers(self) -> Iterator[tuple[str, Callable[[Any], object], object]]:
        """The method of each request, its handler, and what the server announces of it."""
        actions = types.CodeActionOptions([types.CodeActionKind.QuickFix], resolve_provider=True)
        completions = types.CompletionOptions(trigger_characters=TRIGGER_CHARACTERS)
        yield types.TEXT_DOCUMENT_CODE_ACTION, self.code_action, actions
        yield types.CODE_ACTION_RESOLVE, self.resolved, None
        yield types.TEXT_DOCUMENT_HOVER, self.hover, None
        yield types.TEXT_DOCUMENT_COMPLETION, self.completion, completions
        yield types.TEXT_DOCUMENT_DEFINITION, self.definition, None
        yield types.TEXT_DOCUMENT_REFERENCES, self.references, None
        yield types.TEXT_DOCUMENT_INLAY_HINT, self.hints, None
        yield types.TEXT_DOCUMENT_DOCUMENT_SYMBOL, self.symbols, None
        yield types.TEXT_DOCUMENT_CODE_LENS, self.lenses, None
        yield types.TEXT_DOCUMENT_DOCUMENT_HIGHLIGHT, self.highlights, None
        yield types.TEXT_DOCUMENT_RENAME, self.rename, types.RenameOptions(prepare_provider=True)
        yield types.TEXT_DOCUMENT_PREPARE_RENAME, self.prepare_rename, None
        yield types.WORKSPACE_SYMBOL, self.workspace_symbols, None

    def _find(self, document: types.TextDocumentIdentifier) -> tuple[Snapshot, ProtocolConverter] | None:
        """The present state of a document, and the converter for it; None where it is none of ours."""
        snapshot = self._documents.snapshot(document.uri)
        if snapshot is None:
            return None
        opened = self._documents.by_uri[document.uri]
        return snapshot, ProtocolConverter(self._documents, opened, self._client)

    def code_action(self, params: types.CodeActionParams) -> list[types.CodeAction] | None:
        """Fixes for the findings that a range touches."""
        from .features.fixes import fixes

        only = params.context.only
        if only and not any(types.CodeActionKind.QuickFix.startswith(kind) for kind in only):
            return None
        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        start, end = converter.offset(params.range.start), converter.offset(params.range.end)
        asked_about = [
            (converter.offset(one.range.start), converter.offset(one.range.end))
            for one in params.context.diagnostics
        ]
        return [
            converter.fix(fix, [diagnostic(one, snapshot, self._client, converter) for one in fix.findings])
            for fix in fixes(
                snapshot,
                min(start, end),
                max(start, end),
                asked_about,
                resolves=self._client.resolves_edits,
            )
        ]

    async def resolved(self, action: types.CodeAction) -> types.CodeAction:
        """The action with the edit that clears its finding; the coach is told what it does, or why none does.

        Other messages are answered meanwhile, and the client may cancel it.
        """
        from .features.solving import WorkedOut, work_out

        aim = action.data if isinstance(action.data, dict) else {}
        uri, version = str(aim.get("uri", "")), aim.get("version")
        found = self._find(types.TextDocumentIdentifier(uri))
        if found is None or action.edit is not None:
            return action
        snapshot, converter = found
        line = aim.get("line")
        about = (line if isinstance(line, int) else 0, str(aim.get("rule", "")), str(aim.get("about", "")))
        work, answer = work_out(snapshot, about), WorkedOut(None, CHANGED_MEANWHILE)
        while self._documents.version(uri) == version:
            try:
                next(work)
            except StopIteration as end:
                answer = end.value
                break
            await asyncio.sleep(0)
        self._tell(answer.words)
        if answer.edit is not None:
            action.edit = converter.workspace_edit(answer.edit.parts)
        return action

    def hover(self, params: types.HoverParams) -> types.Hover | None:
        """The explanation of what stands under the pointer."""
        from .features.hover import hover

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        answer = hover(snapshot, converter.offset(params.position))
        return None if answer is None else converter.hover(answer)

    def completion(self, params: types.CompletionParams) -> types.CompletionList | None:
        """What may stand at the caret."""
        from .features.completion import complete

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        offset = converter.offset(params.position)
        proposals = complete(snapshot, offset, templates=self._client.snippets)
        has_exercises = any(one.kind == "exercise" for one in proposals)
        has_numbers = any(one.kind == "value" and one.filter_text != one.label for one in proposals)
        typed = params.context.trigger_character if params.context else None
        if typed == " " and not has_exercises:
            before_space = snapshot.text.content[max(0, offset - 2)]
            if before_space not in BEFORE_VALUES:
                return None
        is_incomplete = has_exercises or has_numbers  # what is typed next decides which are offered
        return types.CompletionList(is_incomplete, [converter.completion(one) for one in proposals])

    def definition(self, params: types.DefinitionParams) -> list[types.Location] | None:
        """Where the name at the caret is defined."""
        from .features.links import definition

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        return [converter.location(one) for one in definition(snapshot, converter.offset(params.position))]

    def references(self, params: types.ReferenceParams) -> list[types.Location] | None:
        """Where the name at the caret is used."""
        from .features.links import references

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        offset = converter.offset(params.position)
        uses = references(snapshot, offset, params.context.include_declaration)
        return [converter.location(one) for one in uses]

    def hints(self, params: types.InlayHintParams) -> list[types.InlayHint] | None:
        """The labels shown between the words of a range."""
        from .features.hints import hints

        found = self._find(params.text_document)
        if found is None:
            return None
        if not self._client.hint_kinds:
            return []  # and not None: some clients would go on showing the hints that they have
        snapshot, converter = found
        start, end = converter.offset(params.range.start), converter.offset(params.range.end)
        return [converter.hint(one) for one in hints(snapshot, start, end, self._client.hint_kinds)]

    def symbols(
        self, params: types.DocumentSymbolParams
    ) -> list[types.DocumentSymbol] | list[types.SymbolInformation] | None:
        """The document in outline."""
        from .features.outline import symbols

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        outline = symbols(snapshot)
        if self._client.hierarchical_symbols:
            return [converter.symbol(symbol) for symbol in outline]
        return list(converter.flat_symbols(outline))

    def lenses(self, params: types.CodeLensParams) -> list[types.CodeLens] | None:
        """The lines shown above blocks and sessions."""
        from .features.outline import lenses

        found = self._find(params.text_document)
        if found is None:
            return None
        if not self._client.lenses:
            return []
        from .features.changes import change_lenses

        snapshot, converter = found
        shown = [*change_lenses(snapshot, self._past), *lenses(snapshot)]
        return [converter.lens(lens) for lens in sorted(shown, key=lambda lens: lens.start)]

    def highlights(self, params: types.DocumentHighlightParams) -> list[types.DocumentHighlight] | None:
        """Where the exercise or anchor at the caret stands in the document."""
        from .features.rename import highlights

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        places = highlights(snapshot, converter.offset(params.position))
        return [types.DocumentHighlight(converter.range(*place)) for place in places]

    def prepare_rename(self, params: types.PrepareRenameParams) -> types.PrepareRenamePlaceholder | None:
        """The name at the caret that can be renamed."""
        from .features.rename import renamable

        found = self._find(params.text_document)
        name = None if found is None else renamable(found[0], found[1].offset(params.position))
        if found is None or name is None:
            return None
        return types.PrepareRenamePlaceholder(found[1].range(name[0], name[1]), name[2])

    def rename(self, params: types.RenameParams) -> types.WorkspaceEdit | None:
        """Edits that give what stands at the caret another name; an error says why there are none."""
        from .features.rename import CannotRenameError, renamed

        found = self._find(params.text_document)
        if found is None:
            return None
        snapshot, converter = found
        try:
            edits = renamed(snapshot, converter.offset(params.position), params.new_name)
        except CannotRenameError as error:
            raise JsonRpcException(str(error), types.LSPErrorCodes.RequestFailed) from None
        return converter.workspace_edit(edits)

    def workspace_symbols(self, params: types.WorkspaceSymbolParams) -> list[types.SymbolInformation]:
        """Programmes, sessions, lines, athletes and own exercises of the folder, by name."""
        from .documents.conversion import symbol_information
        from .features.workspace_symbols import workspace_symbols

        documents = self._documents
        found = workspace_symbols(documents.workspace(), documents.folder, params.query)
        return [symbol_information(one, documents.encoding) for one in found]

    # Pages, which commands answer: a title and Markdown

    def rule_page(self, name: str, uri: str = "") -> tuple[str, str]:
        """The page of a rule, with the limits that the settings of a document give it."""
        from .explain.rules import rule_markdown

        snapshot = self._documents.snapshot(uri)
        return name, rule_markdown(name, Team() if snapshot is None else snapshot.review.team)

    def week_page(self, uri: str, week: int, athlete: int = 0) -> tuple[str, str]:
        """The table of a programme's week (from 1), for the athlete at an index."""
        from .features.week_table import week_table

        snapshot = self._documents.snapshot(uri)
        if snapshot is None or snapshot.last_good is None:
            raise ValueError(f"there is no programme to be counted in {uri}")
        from ..weighing.holdings import Bounds

        review = snapshot.last_good
        if not 0 <= athlete < len(review.ledgers) or not 1 <= week <= len(review.ledgers[athlete].weeks):
            raise ValueError(f"there is no week {week} of an athlete {athlete} in {uri}")
        bounds = Bounds(snapshot.workspace.rules, review.team)
        return f"week {week}", week_table(review.ledgers[athlete], week, bounds)

    def changes_page(self, uri: str) -> tuple[str, str]:
        """What changed in a document since the last commit, in training terms."""
        from .features.changes import changes_page

        snapshot = self._documents.snapshot(uri)
        if snapshot is None or not snapshot.path:
            raise ValueError(f"there is no file of ours in {uri}")
        return "since the last commit", changes_page(snapshot, self._past)
