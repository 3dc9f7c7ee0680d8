"""The rules of the connection: which messages are refused, and who is told of changed documents.

Only public names of pygls are used, so that its minor versions can change without harm.
"""

from __future__ import annotations

import json

from lsprotocol import types
from pygls.exceptions import (
    JsonRpcException,
    JsonRpcInvalidParams,
    JsonRpcInvalidRequest,
    JsonRpcServerNotInitialized,
)
from pygls.protocol import LanguageServerProtocol, default_converter, lsp_method

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from cattrs import Converter

    from ..documents.open_documents import OpenDocuments
    from .text_document import TextChange


class StrictProtocol(LanguageServerProtocol):
    """Answers every request that goes wrong, and keeps documents in `OpenDocuments` only.

    pygls by itself would keep a second copy of each document, and would not answer requests that come too
    early or too late. ``initialized`` and ``was_shut_down`` are set by the server.
    """

    initialized = False
    was_shut_down = False

    def connect(
        self, documents: OpenDocuments, on_closed: Callable[[str], None], on_exit: Callable[[], None]
    ) -> None:
        """Sets what the messages lead to.

        Changes go to ``documents``. ``on_closed`` gets the URI of a reviewed document that was closed;
        ``on_exit`` is called when the client ends the connection.
        """
        self._documents = documents
        self._on_closed = on_closed
        self._on_exit = on_exit

    def handle_message(self, message: Any) -> None:
        """Refuses what is no message, and requests too early or too late; ignores such notifications."""
        refusal = self._refusal_of(message)
        if refusal is None:
            super().handle_message(message)
            return
        is_data = isinstance(message, dict)
        number = message.get("id") if is_data else getattr(message, "id", None)
        if is_data or number is not None:
            self._refuse(number if isinstance(number, (int, str)) else None, refusal)

    def _refusal_of(self, message: Any) -> JsonRpcException | None:
        if not hasattr(message, "jsonrpc"):
            return JsonRpcInvalidRequest("this is no message of JSON-RPC 2.0")
        method = getattr(message, "method", None)
        if method is None or method == types.EXIT:
            return None
        if self.was_shut_down:
            return JsonRpcInvalidRequest("the server has been shut down")
        if not self.initialized and method != types.INITIALIZE:
            return JsonRpcServerNotInitialized("the server has not been initialized")
        return None

    def structure_message(self, data: dict[str, Any]) -> Any:
        """The typed message that some data stands for; a request with wrong parameters is refused."""
        try:
            return super().structure_message(data)
        except JsonRpcException:
            if "id" in data and "method" in data:
                self._refuse(data["id"], JsonRpcInvalidParams())
            raise

    def _refuse(self, request_id: Any, error: JsonRpcException) -> None:
        if self.writer is None:
            return
        described = {"code": error.code, "message": error.message}
        body = json.dumps({"error": described, "jsonrpc": self.VERSION, "id": request_id})
        content_type = f"{self.CONTENT_TYPE}; charset={self.CHARSET}"
        head = f"Content-Length: {len(body)}\r\nContent-Type: {content_type}\r\n\r\n"
        self.writer.write((head + body).encode(self.CHARSET))

    @lsp_method(types.EXIT)
    def lsp_exit(self, *params: Any) -> None:  # type: ignore[override]
        """Ends the connection."""
        self._on_exit()

    @lsp_method(types.TEXT_DOCUMENT_DID_OPEN)
    def lsp_text_document__did_open(self, params: types.DidOpenTextDocumentParams) -> None:
        """Takes in a document."""
        document = params.text_document
        self._documents.open(document.uri, document.version, document.text)

    @lsp_method(types.TEXT_DOCUMENT_DID_CHANGE)
    def lsp_text_document__did_change(self, params: types.DidChangeTextDocumentParams) -> None:
        """Changes the text of a document."""
        document = params.text_document
        self._documents.change(document.uri, document.version, map(_text_change, params.content_changes))

    @lsp_method(types.TEXT_DOCUMENT_DID_CLOSE)
    def lsp_text_document__did_close(self, params: types.DidCloseTextDocumentParams) -> None:
        """Forgets a document and takes back its findings."""
        uri = params.text_document.uri
        if self._documents.close(uri):
            self._on_closed(uri)


def _text_change(change: types.TextDocumentContentChangeEvent) -> TextChange:
    if isinstance(change, types.TextDocumentContentChangeWholeDocument):
        return None, change.text
    start, end = change.range.start, change.range.end
    return ((start.line, start.character), (end.line, end.character)), change.text


def quick_converter() -> Converter:
    """The converter between data and typed messages.

    It only says that a message is wrong, not where, and so is ready sooner.
    """
    converter: Converter = default_converter()  # type: ignore[no-untyped-call]
    converter.detailed_validation = False
    return converter
