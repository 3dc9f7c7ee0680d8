"""The language server: pygls speaks the protocol, this module says what happens on each message."""

from __future__ import annotations

import asyncio
import gc
import logging
import os
import sys
from contextlib import suppress
from importlib import import_module
from inspect import signature
from threading import Event

from lsprotocol import types
from pygls.capabilities import ServerCapabilitiesBuilder
from pygls.exceptions import JsonRpcException, JsonRpcInvalidParams
from pygls.io_ import run_async
from pygls.lsp.server import LanguageServer

from ..team.known_findings import NAME as KNOWN_FINDINGS
from ..text.repository import ENDINGS, SETTINGS
from ..version import VERSION
from .documents.conversion import CHANGES_COMMAND, WEEK_COMMAND, ProtocolConverter
from .documents.open_documents import OpenDocuments
from .explain.plain_text import plain_text
from .features.diagnostics import SOURCE, diagnostics
from .protocol.client import Client
from .protocol.streams import InputStream, OutputStream, claim_standard_streams
from .protocol.strict_protocol import StrictProtocol, quick_converter
from .protocol.uris import path_of, uri_of
from .requests import DocumentRequests

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from concurrent.futures import Future
    from typing import Any, TypeVar

    from .documents.open_documents import OpenDocument

    ParamsT = TypeVar("ParamsT")

    ResultT = TypeVar("ResultT")

WATCHED_FILES = (*(f"**/*{ending}" for ending in ENDINGS), f"**/{SETTINGS}", f"**/{KNOWN_FINDINGS}")
"""Patterns of the files on the disk that reviews depend on."""

RULE_COMMAND = "spotline.rule"
"""The command that opens the page of a rule."""

IDLE_IMPORTS = (
    "jsonschema",
    ".features.fixes",
    ".features.hover",
    ".features.completion",
    ".features.links",
    ".features.hints",
    ".features.outline",
    ".features.rename",
    ".features.workspace_symbols",
    ".features.week_table",
    ".features.changes",
    ".features.solving",
)
"""Modules imported in the first pause: the first findings need not wait for them, nor the first request."""

GARBAGE_IN_PAUSE, GARBAGE_AT_MOST = 50_000, 200_000
"""New objects after which unused memory is freed: in a pause, and at the latest."""


class Server(LanguageServer):
    """The server of one client."""

    protocol: StrictProtocol

    def __init__(self) -> None:
        super().__init__(SOURCE, VERSION, protocol_cls=StrictProtocol, converter_factory=quick_converter)
        self.documents = OpenDocuments(self.log)
        self.client = Client(types.ClientCapabilities())
        self.requests = DocumentRequests(self.documents, self.client, self.tell)
        self.protocol.connect(self.documents, self.clear_findings, self.stop)
        self._stop_requested = Event()
        self._input: InputStream | None = None
        self._refresh_wanted = False
        self._refresh_requests: list[Future[None]] = []
        self._rules_imported = False
        self._features_imported = False
        self._objects_in_use = 0
        self._pages_folder = ""
        self._last_log_line = ""
        self._handle(types.INITIALIZE, self.initialize)
        self._handle(types.INITIALIZED, self.initialized)
        self._handle(types.SHUTDOWN, self.shutdown_requested)
        self._handle(types.TEXT_DOCUMENT_DID_SAVE, self.saved)
        self._handle(types.WORKSPACE_DID_CHANGE_WATCHED_FILES, self.files_changed)
        self._handle(types.WORKSPACE_DID_CHANGE_CONFIGURATION, self.configured)
        for method, handler, options in self.requests.handlers():
            self._handle(method, handler, options)
        self._handle_command(RULE_COMMAND, self.requests.rule_page)
        self._handle_command(WEEK_COMMAND, self.requests.week_page)
        self._handle_command(CHANGES_COMMAND, self.requests.changes_page)

    def _handle(self, method: str, handler: Callable[[ParamsT], ResultT], options: object = None) -> None:
        """Lets a handler answer the messages of a method; if it fails, logs that and answers None."""

        def answer(params: ParamsT) -> ResultT | None:
            try:
                return handler(params)
            except JsonRpcException:
                raise  # the coach is told why
            except Exception as error:
                self.log(f"{handler.__name__} failed ({type(error).__name__}: {error})")
                return None

        async def answer_later(params: ParamsT) -> ResultT | None:
            work = answer(params)
            try:
                return None if work is None else await work  # type: ignore[misc]
            except Exception as error:
                self.log(f"{handler.__name__} failed ({type(error).__name__}: {error})")
                return None

        self.feature(method, options)(answer_later if asyncio.iscoroutinefunction(handler) else answer)

    # The connection

    def serve(self) -> int:
        """Answers messages until the client has gone; returns 0 if it asked for shutdown first, else 1."""

        read, write = claim_standard_streams()
        self._input = InputStream(read, self.work_while_idle, self.work_in_pause)
        self.protocol.set_writer(OutputStream(write, self.stop))
        gc.freeze()
        asyncio.run(
            run_async(self._stop_requested, self._input, self.protocol, None, self.report_server_error)
        )
        if self._pages_folder:
            from shutil import rmtree

            rmtree(self._pages_folder, ignore_errors=True)
        return 0 if self.protocol.was_shut_down else 1

    def stop(self) -> None:
        """Ends the connection after the current message."""
        self._stop_requested.set()
        if self._input is not None:
            self._input.end()

    def log(self, words: str) -> None:
        """Writes a line to standard error, which clients keep as the server's log."""
        line = " ".join(words.split())
        if line != self._last_log_line:  # what fails at every key is logged once
            self._last_log_line = line
            with suppress(OSError):
                print(f"spotline: {line}", file=sys.stderr, flush=True)

    def tell(self, words: str) -> None:
        """Shows the coach a sentence."""
        self.window_show_message(types.ShowMessageParams(types.MessageType.Info, words))

    def report_server_error(self, error: Exception, source: Any) -> None:
        """Logs what went wrong outside a handler; the coach is not shown any of it."""
        self.log(f"{type(error).__name__}: {error}")

    # What is done between messages

    def work_while_idle(self) -> bool:
        """Does one step of the work that waits; returns whether there may be more."""
        unpublished = self.documents.unpublished()
        if unpublished:
            self._publish_findings(unpublished[0])
            return True
        if self._refresh_wanted and all(request.done() for request in self._refresh_requests):
            self._refresh_wanted = False
            self._refresh_requests = list(self._request_refresh())
        if not self._rules_imported and self.protocol.initialized:
            self._rules_imported = True
            self._import_rules()
            return True
        if gc.get_count()[0] > max(GARBAGE_AT_MOST, self._objects_in_use):
            self._free_memory()
        return False

    def work_in_pause(self) -> None:
        """Tidies up while nothing is typed, and imports what the next requests will need."""
        if not self._features_imported:
            self._features_imported = True
            for name in IDLE_IMPORTS:
                import_module(name, __package__)
        if gc.get_count()[0] > GARBAGE_IN_PAUSE:
            self._free_memory()

    def _publish_findings(self, document: OpenDocument) -> None:
        """Reviews a document again if it is stale, and publishes its findings unless it changes meanwhile."""
        before = document.snapshot
        uri = document.text_document.uri
        try:
            snapshot = self.documents.refresh(document)
            if self._input is not None and self._input.has_more:
                return
            converter = ProtocolConverter(self.documents, document, self.client)
            found = [] if snapshot is None else diagnostics(snapshot, self.client, converter)
        except Exception as error:
            self.log(f"nothing is told of {uri} ({type(error).__name__}: {error})")
            found = []
        self._publish(uri, document.text_document.version, found)
        document.published = True
        self._refresh_wanted = self._refresh_wanted or not document.edited
        del before  # freeing a large review takes time, so it is only done once the client has the findings

    def clear_findings(self, uri: str) -> None:
        """Takes back the findings of a closed document."""
        self._publish(uri, None, [])

    def _publish(self, uri: str, version: int | None, found: list[types.Diagnostic]) -> None:
        sent_version = version if self.client.diagnostic_versions else None
        self.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri, found, sent_version))

    def _request_refresh(self) -> Iterator[Future[None]]:
        """Asks the client to request hints and lenses again, after a change outside their document."""
        if self.client.refreshes_hints:
            yield self.workspace_inlay_hint_refresh(None)
        if self.client.refreshes_lenses:
            yield self.workspace_code_lens_refresh(None)

    def _import_rules(self) -> None:
        from ..engine.registry import all_rules

        all_rules()

    def _free_memory(self) -> None:
        """Frees unused objects; Python is kept from doing so during a review."""
        gc.collect()
        self._objects_in_use = len(gc.get_objects())

    # Start, end and settings

    def initialize(self, params: types.InitializeParams) -> None:
        """Notes what the client can do and in which folder it works."""
        self.protocol.initialized = True
        self.client.read_capabilities(params.capabilities)
        self.client.apply_settings(params.initialization_options)
        chosen = ServerCapabilitiesBuilder.choose_position_encoding(params.capabilities)
        encoding = chosen.value if isinstance(chosen, types.PositionEncodingKind) else chosen
        # Some clients count the columns of a line in bytes and neither say so nor can be told otherwise.
        self.documents.encoding = "utf-8" if self.client.counts_bytes else encoding  # type: ignore[assignment]
        folders = [folder.uri for folder in params.workspace_folders or ()]
        paths = [path_of(uri) for uri in (*folders, params.root_uri or "")] + [params.root_path or ""]
        folder = next((path for path in paths if path and os.path.isdir(path)), "")
        if folder:
            self.documents.folder = folder
            os.chdir(folder)

    def initialized(self, params: types.InitializedParams) -> None:
        """Asks the client to report changes of files and settings."""
        wanted = []
        if self.client.registers_watchers:
            watchers = [types.FileSystemWatcher(pattern) for pattern in WATCHED_FILES]
            options = types.DidChangeWatchedFilesRegistrationOptions(watchers)
            wanted.append(types.Registration("files", types.WORKSPACE_DID_CHANGE_WATCHED_FILES, options))
        if self.client.registers_configuration:
            section = types.DidChangeConfigurationRegistrationOptions(SOURCE)
            wanted.append(types.Registration("settings", types.WORKSPACE_DID_CHANGE_CONFIGURATION, section))
        if wanted:
            self.client_register_capability(types.RegistrationParams(wanted))

    def shutdown_requested(self, params: None) -> None:
        """Notes that the client has asked for the end; after that only ``exit`` may come."""
        self.protocol.was_shut_down = True

    def configured(self, params: types.DidChangeConfigurationParams) -> None:
        """Applies changed settings; asks for them if they were not sent along."""
        sent = params.settings
        if isinstance(sent, dict) and sent:
            self._apply_settings(sent.get(SOURCE, sent))
        elif self.client.answers_configuration:
            wanted = types.ConfigurationParams([types.ConfigurationItem(section=SOURCE)])
            self.workspace_configuration(
                wanted, lambda answers: self._apply_settings(next(iter(answers), None))
            )

    def _apply_settings(self, settings: Any) -> None:
        self.client.apply_settings(settings)
        self._refresh_wanted = True

    def saved(self, params: types.DidSaveTextDocumentParams) -> None:
        """Looks for changes on the disk, for clients that do not report them."""
        self.documents.check_disk()

    def files_changed(self, params: types.DidChangeWatchedFilesParams) -> None:
        """Marks every document as stale if a file has changed that is not open itself."""
        if any(self.documents.at_path(path_of(change.uri)) is None for change in params.changes):
            self.documents.refresh_all()

    # Pages

    def _handle_command(self, command: str, page: Callable[..., tuple[str, str]]) -> None:
        """Lets a command answer a page, Markdown or plain text, and shows it where the client would not."""

        def answer(ls: Server, *arguments: object) -> str | None:  # pygls passes the server by this name
            if not _are_of(page, arguments):
                raise JsonRpcInvalidParams(f"{command} does not take these arguments")
            try:
                title, markdown = page(*arguments)
                if ls.client.shows_text:
                    markdown = plain_text(markdown)
                if not ls.client.shows_markdown:
                    ls._show(title, markdown)
            except ValueError as error:
                ls.log(f"{command}: {error}")
                return None
            except Exception as error:
                ls.log(f"{command} failed ({type(error).__name__}: {error})")
                return None
            return markdown

        self.command(command)(answer)

    def _show(self, title: str, page: str) -> None:
        """Shows a page to the coach, as a document or as a message."""
        if not self.client.shows_documents:
            self.tell(page)
            return
        from tempfile import mkdtemp

        self._pages_folder = self._pages_folder or mkdtemp(prefix="spotline-")
        path = os.path.join(self._pages_folder, f"{title}.{'txt' if self.client.shows_text else 'md'}")
        with open(path, "w", encoding="utf-8") as file:
            file.write(page)
        self.window_show_document(types.ShowDocumentParams(uri_of(path), take_focus=True))


def _are_of(page: Callable[..., object], arguments: tuple[object, ...]) -> bool:
    """Whether a function takes these arguments, by their number and their types."""
    asked = signature(page)
    try:
        given = asked.bind(*arguments).arguments
    except TypeError:
        return False
    return all(type(value).__name__ == asked.parameters[name].annotation for name, value in given.items())


def serve() -> int:
    """Runs the language server on standard input and output; returns the exit code."""
    for name in ("pygls", "asyncio", "concurrent.futures"):  # their long reports are a line in our log
        logging.getLogger(name).setLevel(logging.CRITICAL + 1)
    return Server().serve()
