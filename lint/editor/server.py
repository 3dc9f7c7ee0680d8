"""The language server: pygls speaks the protocol, this module says what happens on each message."""

from __future__ import annotations

import asyncio
import gc
import logging
import os
import sys
from contextlib import suppress
from importlib import import_module
from threading import Event

from lsprotocol import types
from pygls.capabilities import ServerCapabilitiesBuilder
from pygls.exceptions import (
    JsonRpcException,
    JsonRpcInvalidParams,
    JsonRpcInvalidRequest,
    JsonRpcServerNotInitialized,
)
from pygls.io_ import run_async
from pygls.lsp.server import LanguageServer
from pygls.protocol import LanguageServerProtocol, default_converter, lsp_method

from ..team.known_findings import NAME as RECORD
from ..team.settings import Team
from ..text.repository import ENDINGS, SETTINGS
from ..version import VERSION
from .documents.conversion import WEEK_COMMAND, ProtocolConverter
from .documents.open_documents import OpenDocuments
from .features.diagnostics import SOURCE, diagnostic, diagnostics
from .protocol.client import Client
from .protocol.streams import Input, Output, taken_over
from .protocol.uris import path_of, uri_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from concurrent.futures import Future
    from typing import Any, TypeVar

    from cattrs import Converter

    from .documents.open_documents import OpenDocument
    from .documents.view import View

    Params = TypeVar("Params")

    Answer = TypeVar("Answer")

    Opened = types.TextDocumentIdentifier

WATCHED = (*(f"**/*{ending}" for ending in ENDINGS), f"**/{SETTINGS}", f"**/{RECORD}")
"""Files on the disk that reviews lean on."""

TRIGGERS = [" ", "/", "[", "{", "*"]
"""What calls for proposals when it has been typed: behind a key, in a path, in a list, for an anchor."""

AWAITING = frozenset(":,[{-")
"""Behind what a blank calls for proposals; elsewhere it only sets words apart."""

RULE_COMMAND = "spotline.rule"

LATER = (
    "jsonschema",
    ".features.fixes",
    ".features.hover",
    ".features.completion",
    ".features.links",
    ".features.hints",
    ".features.outline",
    ".features.week_table",
)
"""Modules that the first finding, or the first question, would have to wait for."""

LITTER, MOST_LITTER = 50_000, 200_000
"""Objects that may pile up before what is no longer used is freed: in a pause, and while changes come."""


class Protocol(LanguageServerProtocol):
    """The protocol, with documents kept by `OpenDocuments` and an answer to everything that goes wrong."""

    _server: Server

    def handle_message(self, message: Any) -> None:
        """Messages out of turn are refused, or left alone where nobody waits for an answer."""
        method = getattr(message, "method", None)
        if method is not None and method != types.EXIT:
            refusal: JsonRpcException | None = None
            if self._shutdown:
                refusal = JsonRpcInvalidRequest("the server has been shut down")
            elif self._workspace is None and method != types.INITIALIZE:
                refusal = JsonRpcServerNotInitialized("the server has not been initialized")
            if refusal is not None:
                if hasattr(message, "id"):
                    self._send_response(message.id, error=refusal.to_response_error())
                return
        super().handle_message(message)

    def structure_message(self, data: dict[str, Any]) -> Any:
        """The message that some data stands for; a request that is none is answered with why not."""
        try:
            return super().structure_message(data)
        except JsonRpcException:
            if "id" in data and "method" in data:
                self._send_response(data["id"], error=JsonRpcInvalidParams().to_response_error())
            raise

    @lsp_method(types.EXIT)
    def lsp_exit(self, *params: Any) -> None:  # type: ignore[override]
        """Ends the conversation."""
        self._server.stop()

    @lsp_method(types.TEXT_DOCUMENT_DID_OPEN)
    def lsp_text_document__did_open(self, params: types.DidOpenTextDocumentParams) -> None:
        """Takes in a document."""
        opened = params.text_document
        self._server.documents.open(opened.uri, opened.version, opened.text)

    @lsp_method(types.TEXT_DOCUMENT_DID_CHANGE)
    def lsp_text_document__did_change(self, params: types.DidChangeTextDocumentParams) -> None:
        """Applies changes."""
        changed = params.text_document
        self._server.documents.change(changed.uri, changed.version, map(_change, params.content_changes))

    @lsp_method(types.TEXT_DOCUMENT_DID_CLOSE)
    def lsp_text_document__did_close(self, params: types.DidCloseTextDocumentParams) -> None:
        """Lets go of a document, and of what was said of it."""
        uri = params.text_document.uri
        if self._server.documents.close(uri):
            self._server.publish(uri, None, [])

    @property
    def was_shut_down(self) -> bool:
        """Whether the client has asked for the end in due form."""
        return self._shutdown


def _change(change: types.TextDocumentContentChangeEvent) -> Any:
    if isinstance(change, types.TextDocumentContentChangeWholeDocument):
        return None, change.text
    start, end = change.range.start, change.range.end
    return ((start.line, start.character), (end.line, end.character)), change.text


def _converter() -> Converter:
    """What reads and writes messages: it may say no more than that one is wrong, and so starts sooner."""
    converter: Converter = default_converter()  # type: ignore[no-untyped-call]
    converter.detailed_validation = False
    return converter


class Server(LanguageServer):
    """One conversation with one client."""

    protocol: Protocol

    def __init__(self) -> None:
        super().__init__(SOURCE, VERSION, protocol_cls=Protocol, converter_factory=_converter)
        self.documents = OpenDocuments(self.log)
        self.client = Client(types.ClientCapabilities())
        self._over = self._stop_event = Event()
        self._input: Input | None = None
        self._refresh = False
        self._refreshing: list[Future[None]] = []
        self._warm = False
        self._ready = False
        self._in_use = 0
        self._pages = ""
        self._logged = ""
        self._on(types.INITIALIZE, self.initialize)
        self._on(types.INITIALIZED, self.initialized)
        self._on(types.TEXT_DOCUMENT_DID_SAVE, self.saved)
        self._on(types.WORKSPACE_DID_CHANGE_WATCHED_FILES, self.files_changed)
        self._on(types.WORKSPACE_DID_CHANGE_CONFIGURATION, self.configured)
        actions = types.CodeActionOptions([types.CodeActionKind.QuickFix])
        self._on(types.TEXT_DOCUMENT_CODE_ACTION, self.code_action, actions)
        self._on(types.TEXT_DOCUMENT_HOVER, self.hover)
        proposals = types.CompletionOptions(trigger_characters=TRIGGERS)
        self._on(types.TEXT_DOCUMENT_COMPLETION, self.completion, proposals)
        self._on(types.TEXT_DOCUMENT_DEFINITION, self.definition)
        self._on(types.TEXT_DOCUMENT_REFERENCES, self.references)
        self._on(types.TEXT_DOCUMENT_INLAY_HINT, self.hints)
        self._on(types.TEXT_DOCUMENT_DOCUMENT_SYMBOL, self.symbols)
        self._on(types.TEXT_DOCUMENT_CODE_LENS, self.lenses)
        self.command(RULE_COMMAND)(self._page_maker(RULE_COMMAND, self._rule_page))
        self.command(WEEK_COMMAND)(self._page_maker(WEEK_COMMAND, self._week_page))

    # The conversation

    def serve(self) -> int:
        """Answers until the client is done; the exit code: 0 where it has said so in due form, else 1."""
        read, write = taken_over()
        self._input = Input(read, self.step, self._pause)
        self.protocol.set_writer(Output(write, self.stop))
        gc.freeze()
        asyncio.run(run_async(self._over, self._input, self.protocol, None, self.report_server_error))
        if self._pages:
            from shutil import rmtree

            rmtree(self._pages, ignore_errors=True)
        return 0 if self.protocol.was_shut_down else 1

    def stop(self) -> None:
        """Ends the conversation after the message at hand."""
        self._over.set()
        if self._input is not None:
            self._input.end()

    def log(self, words: str) -> None:
        """One line on standard error, where clients keep their logs."""
        line = " ".join(words.split())
        if line != self._logged:  # what fails at every key is told once
            self._logged = line
            with suppress(OSError):
                print(f"spotline: {line}", file=sys.stderr, flush=True)

    def report_server_error(self, error: Exception, source: Any) -> None:
        """What went wrong outside of a handler; nothing of it reaches the coach."""
        self.log(f"{type(error).__name__}: {error}")

    def _on(self, method: str, handler: Callable[[Params], Answer], options: Any = None) -> None:
        """Has a handler take the messages of a method; its failure is a line in the log and no answer."""

        def answer(params: Params) -> Answer | None:
            try:
                return handler(params)
            except Exception as fault:
                self.log(f"{handler.__name__} failed ({type(fault).__name__}: {fault})")
                return None

        self.feature(method, options)(answer)

    # What is done while nothing comes

    def step(self) -> bool:
        """One step of what there is to do; says whether there may be more."""
        waiting = self.documents.waiting()
        if waiting:
            self._tell(waiting[0])
            return True
        if self._refresh and all(asked.done() for asked in self._refreshing):
            self._refresh = False
            self._refreshing = list(self._asked_to_refresh())
        if not self._warm and self.protocol._workspace is not None:
            self._warm = True
            self._warm_up()
            return True
        if gc.get_count()[0] > max(MOST_LITTER, self._in_use):
            self._collect()
        return False

    def _tell(self, opened: OpenDocument) -> None:
        """Reviews a document, and publishes what is found unless there is news of it meanwhile."""
        before = opened.view
        try:
            view = self.documents.reviewed(opened)
            if self._input is not None and self._input.waiting:
                return
            found = [] if view is None else diagnostics(view, self.client, self._wire(opened))
        except Exception as fault:
            self.log(f"nothing is told of {opened.document.uri} ({type(fault).__name__}: {fault})")
            found = []
        self.publish(opened.document.uri, opened.document.version, found)
        opened.told = True
        self._refresh = self._refresh or opened.moved
        del before  # to let go of a large one takes time: not before the client has been told

    def publish(self, uri: str, version: int | None, found: list[types.Diagnostic]) -> None:
        """Tells the client what is found in a document."""
        known = version if self.client.versions else None
        self.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri, found, known))

    def _asked_to_refresh(self) -> Iterator[Future[None]]:
        """Has the client ask anew for what has changed without a change of the text it stands in."""
        if self.client.hints_refresh:
            yield self.workspace_inlay_hint_refresh(None)
        if self.client.lenses_refresh:
            yield self.workspace_code_lens_refresh(None)

    def _warm_up(self) -> None:
        """Imports what the first review needs."""
        from ..engine.registry import all_rules

        all_rules()

    def _pause(self) -> None:
        """Tidies up while the coach thinks, and gets ready what has not been asked for yet."""
        if not self._ready:
            self._ready = True
            for name in LATER:
                import_module(name, __package__)
        if gc.get_count()[0] > LITTER:
            self._collect()

    def _collect(self) -> None:
        """Frees what is no longer used; Python is not left to do so in the midst of a review."""
        gc.collect()
        self._in_use = len(gc.get_objects())

    # The client itself

    def initialize(self, params: types.InitializeParams) -> None:
        """Takes in what the client can do and where it works."""
        self.client = Client(params.capabilities)
        self.client.set(params.initialization_options)
        chosen = ServerCapabilitiesBuilder.choose_position_encoding(params.capabilities)
        encoding = chosen.value if isinstance(chosen, types.PositionEncodingKind) else chosen
        # Some clients count the columns of a line in bytes and neither say so nor can be told otherwise.
        self.documents.encoding = "utf-8" if self.client.counts_bytes else encoding  # type: ignore[assignment]
        folders = [folder.uri for folder in params.workspace_folders or ()]
        paths = [path_of(uri) for uri in (*folders, params.root_uri or "")] + [params.root_path or ""]
        home = next((path for path in paths if path and os.path.isdir(path)), "")
        if home:
            self.documents.home = home
            os.chdir(home)

    def initialized(self, params: types.InitializedParams) -> None:
        """Asks to be told of changes on the disk and of settings."""
        wanted = []
        if self.client.watches:
            watchers = [types.FileSystemWatcher(pattern) for pattern in WATCHED]
            options = types.DidChangeWatchedFilesRegistrationOptions(watchers)
            wanted.append(types.Registration("files", types.WORKSPACE_DID_CHANGE_WATCHED_FILES, options))
        if self.client.listens:
            section = types.DidChangeConfigurationRegistrationOptions(SOURCE)
            wanted.append(types.Registration("settings", types.WORKSPACE_DID_CHANGE_CONFIGURATION, section))
        if wanted:
            self.client_register_capability(types.RegistrationParams(wanted))

    def configured(self, params: types.DidChangeConfigurationParams) -> None:
        """Takes over settings, or asks for them where they have not come along."""
        told = params.settings
        if isinstance(told, dict) and told:
            self._set(told.get(SOURCE, told))
        elif self.client.configuration:
            asked = types.ConfigurationParams([types.ConfigurationItem(section=SOURCE)])
            self.workspace_configuration(asked, lambda answers: self._set(next(iter(answers), None)))

    def _set(self, settings: Any) -> None:
        self.client.set(settings)
        self._refresh = True

    def saved(self, params: types.DidSaveTextDocumentParams) -> None:
        """Looks at the disk: a good moment for clients that do not watch it."""
        self.documents.look()

    def files_changed(self, params: types.DidChangeWatchedFilesParams) -> None:
        """Reviews all that is open anew where a file has changed that is not open itself."""
        if any(self.documents.document_of(path_of(change.uri)) is None for change in params.changes):
            self.documents.renew()

    # What the client asks of a document

    def _wire(self, opened: OpenDocument) -> ProtocolConverter:
        return ProtocolConverter(self.documents, opened, self.client)

    def _opened(self, document: Opened) -> tuple[View, ProtocolConverter] | None:
        """The reviewed state of a document and the way to write answers on it; None for none of ours."""
        view = self.documents.view(document.uri)
        return None if view is None else (view, self._wire(self.documents.documents[document.uri]))

    def code_action(self, params: types.CodeActionParams) -> list[types.CodeAction] | None:
        """Quick fixes for the findings that a range touches, whatever the client says they are."""
        from .features.fixes import fixes

        only = params.context.only
        if only and not any(types.CodeActionKind.QuickFix.startswith(kind) for kind in only):
            return None
        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        start, end = wire.offset(params.range.start), wire.offset(params.range.end)
        named = [
            (wire.offset(one.range.start), wire.offset(one.range.end)) for one in params.context.diagnostics
        ]
        return [
            wire.fix(fix, [diagnostic(one, view, self.client, wire) for one in fix.findings])
            for fix in fixes(view, min(start, end), max(start, end), named)
        ]

    def hover(self, params: types.HoverParams) -> types.Hover | None:
        """What stands under the pointer, explained."""
        from .features.hover import hover

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        found = hover(view, wire.offset(params.position))
        return None if found is None else wire.hover(found)

    def completion(self, params: types.CompletionParams) -> types.CompletionList | None:
        """What may stand at the caret."""
        from .features.completion import complete

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        offset = wire.offset(params.position)
        found = complete(view, offset)
        searched = any(one.kind == "exercise" for one in found)
        typed = params.context.trigger_character if params.context else None
        if typed == " " and not searched and view.text.content[max(0, offset - 2)] not in AWAITING:
            return None
        return types.CompletionList(searched, [wire.completion(one) for one in found])

    def definition(self, params: types.DefinitionParams) -> list[types.Location] | None:
        """Where the words at the caret are defined."""
        from .features.links import definition

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        return [wire.target(target) for target in definition(view, wire.offset(params.position))]

    def references(self, params: types.ReferenceParams) -> list[types.Location] | None:
        """Where the words at the caret are used."""
        from .features.links import references

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        offset = wire.offset(params.position)
        found = references(view, offset, params.context.include_declaration)
        return [wire.target(target) for target in found]

    def hints(self, params: types.InlayHintParams) -> list[types.InlayHint] | None:
        """What is shown between the words."""
        from .features.hints import hints

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        if not self.client.hints:
            return []  # and not None, at which some clients keep what they show
        view, wire = opened
        start, end = wire.offset(params.range.start), wire.offset(params.range.end)
        return [wire.hint(hint) for hint in hints(view, start, end, self.client.hints)]

    def symbols(
        self, params: types.DocumentSymbolParams
    ) -> list[types.DocumentSymbol] | list[types.SymbolInformation] | None:
        """Blocks, sessions and lines."""
        from .features.outline import symbols

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        view, wire = opened
        found = symbols(view)
        return [wire.symbol(symbol) for symbol in found] if self.client.hierarchy else list(wire.flat(found))

    def lenses(self, params: types.CodeLensParams) -> list[types.CodeLens] | None:
        """The lines above sessions and blocks."""
        from .features.outline import lenses

        opened = self._opened(params.text_document)
        if opened is None:
            return None
        if not self.client.lenses:
            return []
        view, wire = opened
        return [wire.lens(lens) for lens in lenses(view)]

    # Pages

    def _page_maker(self, command: str, page: Callable[..., tuple[str, str]]) -> Callable[..., str | None]:
        """A command that answers a page of Markdown, and shows it where the client would not."""

        def answer(ls: Server, *words: object) -> str | None:  # pygls knows the server by this name
            try:
                title, markdown = page(*words)
                if not ls.client.shows_markdown:
                    ls._show(title, markdown)
            except Exception as fault:
                ls.log(f"{command} failed ({type(fault).__name__}: {fault})")
                return None
            return markdown

        return answer

    def _rule_page(self, name: str, uri: str = "") -> tuple[str, str]:
        """A rule, as the settings for a document have it."""
        from .explain.rules import rule_markdown

        view = self.documents.view(uri)
        return name, rule_markdown(name, Team() if view is None else view.review.team)

    def _week_page(self, uri: str, week: int, athlete: int = 0) -> tuple[str, str]:
        """What a week of a programme holds for one of its athletes."""
        from .features.week_table import week_table

        view = self.documents.view(uri)
        if view is None or view.good is None:
            raise ValueError(f"there is no programme to be counted in {uri}")
        return f"week {week}", week_table(view.good.ledgers[athlete], week)

    def _show(self, title: str, page: str) -> None:
        """Shows a page to a coach whose client does nothing with what a command answers."""
        if not self.client.show_document:
            self.window_show_message(types.ShowMessageParams(types.MessageType.Info, page))
            return
        from tempfile import mkdtemp

        self._pages = self._pages or mkdtemp(prefix="spotline-")
        path = os.path.join(self._pages, f"{title}.md")
        with open(path, "w", encoding="utf-8") as file:
            file.write(page)
        self.window_show_document(types.ShowDocumentParams(uri_of(path), take_focus=True))


def serve() -> int:
    """Runs the language server on standard input and output; returns the exit code."""
    for name in ("pygls", "asyncio", "concurrent.futures"):  # what they tell at length, we tell in a line
        logging.getLogger(name).setLevel(logging.CRITICAL + 1)
    return Server().serve()
