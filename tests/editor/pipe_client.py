"""A small client of the language server, over the pipe: it sends and reads messages, no more.

It announces the capabilities that it is given, and answers the server's requests. Everything is done in one
thread, in the order of the calls, so that times can be measured with it.
"""

from __future__ import annotations

import json
import os
import select
import subprocess
import sys
import tempfile
from pathlib import Path
from time import monotonic
from typing import Any, Literal

Encoding = Literal["utf-8", "utf-16", "utf-32"]
Json = dict[str, Any]

SERVER = (sys.executable, "-m", "spotline", "editor")

PATIENCE = 60.0
"""Seconds for which an answer is waited for, on a busy machine."""

CAPABILITIES: Json = {
    "workspace": {
        "configuration": True,
        "didChangeWatchedFiles": {"dynamicRegistration": True},
        "didChangeConfiguration": {"dynamicRegistration": True},
        "inlayHint": {"refreshSupport": True},
        "codeLens": {"refreshSupport": True},
        "workspaceEdit": {"documentChanges": True},
    },
    "textDocument": {
        "publishDiagnostics": {
            "relatedInformation": True,
            "versionSupport": True,
            "codeDescriptionSupport": True,
            "dataSupport": True,
            "tagSupport": {"valueSet": [1, 2]},
        },
        "hover": {"contentFormat": ["markdown", "plaintext"]},
        "documentSymbol": {"hierarchicalDocumentSymbolSupport": True},
    },
}
"""The capabilities of a client that can do everything."""


class SilenceError(Exception):
    """The server has gone, or has not sent what it should have sent in time."""


class PipeClient:
    """A server started for a folder (None: for none), and the messages that have come from it.

    ``published`` is the newest list of findings for each document, with the version it was published for;
    ``messages`` is every other notification, and every request of the server, in order.
    """

    def __init__(
        self, folder: Path | None, *, command: tuple[str, ...] = SERVER, cwd: Path | None = None
    ) -> None:
        self.folder = folder
        self.published: dict[str, tuple[int | None, list[Json]]] = {}
        self.publications = 0
        self.messages: list[Json] = []
        self._buffer = bytearray()
        self._asked = 0
        self._answers: dict[object, Json] = {}
        with tempfile.TemporaryFile() as errors:
            self._errors = os.dup(errors.fileno())
            self.process = subprocess.Popen(
                command,
                cwd=cwd or folder,
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=errors,
                bufsize=0,
            )

    def __enter__(self) -> PipeClient:
        return self

    def __exit__(self, *failure: object) -> None:
        if self.process.poll() is None:
            self.process.kill()
        self.process.wait()
        for pipe in (self.process.stdin, self.process.stdout):
            assert pipe is not None
            pipe.close()
        os.close(self._errors)

    # On the wire

    def send_bytes(self, data: bytes) -> None:
        """Sends bytes as they are."""
        assert self.process.stdin is not None
        left = memoryview(data)
        while left:
            left = left[os.write(self.process.stdin.fileno(), left) :]

    def send(self, message: Json) -> None:
        """Sends a message."""
        body = json.dumps({"jsonrpc": "2.0", **message}, ensure_ascii=False).encode()
        self.send_bytes(b"Content-Length: %d\r\n\r\n" % len(body) + body)

    def notify(self, method: str, params: Any = None) -> None:
        """Sends a notification."""
        self.send({"method": method, "params": params if params is not None else {}})

    def request(self, method: str, params: Any = None) -> int:
        """Sends a request and returns its number; `response` gives the answer later."""
        self._asked += 1
        self.send({"id": self._asked, "method": method, "params": params if params is not None else {}})
        return self._asked

    def response(self, number: object, within: float = PATIENCE) -> Json:
        """The whole answer to a request, ``result`` or ``error``."""
        end = monotonic() + within
        while number not in self._answers:
            self.read(end)
        return self._answers.pop(number)

    def result_of(self, method: str, params: Any = None) -> Any:
        """The result of a request, which must not fail."""
        answer = self.response(self.request(method, params))
        assert "error" not in answer, (method, answer["error"])
        return answer["result"]

    def read(self, end: float) -> Json:
        """Reads the next message; raises `SilenceError` where none comes until ``end``."""
        message = self._next(end)
        if "method" not in message:
            self._answers[message["id"]] = message
        elif message["method"] == "textDocument/publishDiagnostics":
            told = message["params"]
            self.published[told["uri"]] = told.get("version"), told["diagnostics"]
            self.publications += 1
        else:
            self.messages.append(message)
            if "id" in message:
                items = message.get("params", {}).get("items") if message.get("params") else None
                self.send({"id": message["id"], "result": [None] * len(items) if items else None})
        return message

    def read_until_quiet(self, seconds: float) -> None:
        """Reads messages until none has come for some time."""
        while True:
            try:
                self.read(monotonic() + seconds)
            except SilenceError:
                if self.process.poll() is not None:
                    raise
                return

    def _next(self, end: float) -> Json:
        head = self._until(end, lambda: self._buffer.find(b"\r\n\r\n") + 1) + 3
        length = next(
            int(line.partition(b":")[2])
            for line in bytes(self._buffer[:head]).splitlines()
            if line.lower().startswith(b"content-length:")
        )
        self._until(end, lambda: len(self._buffer) >= head + length)
        body = bytes(self._buffer[head : head + length])
        del self._buffer[: head + length]
        message: Json = json.loads(body)
        return message

    def _until(self, end: float, there: Any) -> int:
        """Reads until something is there, and returns it."""
        assert self.process.stdout is not None
        handle = self.process.stdout.fileno()
        while not (found := there()):
            ready = select.select([handle], [], [], max(0.0, end - monotonic()))[0]
            data = os.read(handle, 1 << 20) if ready else b""
            if not data:
                raise SilenceError(f"nothing more was heard; the server's log:\n{self.log()}")
            self._buffer += data
        return int(found)

    def log(self) -> str:
        """What the server has written to its log."""
        return os.pread(self._errors, os.fstat(self._errors).st_size, 0).decode()

    # What clients do

    def initialize(
        self, encoding: Encoding = "utf-16", capabilities: Json = CAPABILITIES, options: Json | None = None
    ) -> Json:
        """Initializes the server; returns what it can do."""
        result: Json = self.response(self.request_initialize(encoding, capabilities, options))["result"]
        return result["capabilities"]

    def request_initialize(
        self, encoding: Encoding = "utf-16", capabilities: Json = CAPABILITIES, options: Json | None = None
    ) -> int:
        """Initializes the server without waiting for its answer; returns the number of the request."""
        given = capabilities | {"general": {"positionEncodings": [encoding, "utf-16"]}}
        params: Json = {"processId": os.getpid(), "rootUri": None, "capabilities": given}
        if self.folder is not None:
            params["rootUri"] = self.folder.as_uri()
            params["workspaceFolders"] = [{"uri": self.folder.as_uri(), "name": "team"}]
        if options is not None:
            params["initializationOptions"] = options
        number = self.request("initialize", params)
        self.notify("initialized")
        return number

    def uri(self, name: str) -> str:
        """The address of a file in the folder."""
        assert self.folder is not None
        return (self.folder / name).as_uri()

    def open(self, uri: str, text: str, version: int = 1) -> None:
        """Opens a document."""
        document = {"uri": uri, "languageId": "yaml", "version": version, "text": text}
        self.notify("textDocument/didOpen", {"textDocument": document})

    def change(self, uri: str, version: int, *changes: Json) -> None:
        """Changes a document."""
        document = {"uri": uri, "version": version}
        self.notify("textDocument/didChange", {"textDocument": document, "contentChanges": list(changes)})

    def close(self, uri: str) -> None:
        """Closes a document."""
        self.notify("textDocument/didClose", {"textDocument": {"uri": uri}})

    def findings(self, uri: str, version: int, within: float = PATIENCE) -> list[Json]:
        """Waits for what is published for a version of a document, and returns it."""
        end = monotonic() + within
        while (got := self.published.get(uri)) is None or got[0] != version:
            self.read(end)
        return got[1]

    def shut_down(self) -> int:
        """Shuts the server down as the protocol asks; returns its exit code."""
        self.result_of("shutdown")
        self.notify("exit")
        return self.process.wait(PATIENCE)
