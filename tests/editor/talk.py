"""A client of the language server of a few lines, over the pipe: it says and hears what is on the wire, no more.

It announces what it is told to announce and does what a client must: it answers the server's requests. All is
done in one thread, in the order in which things are asked for, so that times can be measured with it.
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
"""Seconds after which an answer is not waited for any longer, on a busy machine."""

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
"""What a client can do that can do everything."""


class SilenceError(Exception):
    """The server has gone, or has not said what it should have said in time."""


class Talk:
    """A server that was started for a folder (None: for none), and what has been heard from it.

    ``published`` is the newest list of findings for each document, with the version it was published for;
    ``heard`` is every notification but those, and every request that the server made, in order.
    """

    def __init__(
        self, folder: Path | None, *, command: tuple[str, ...] = SERVER, cwd: Path | None = None
    ) -> None:
        self.folder = folder
        self.published: dict[str, tuple[int | None, list[Json]]] = {}
        self.publications = 0
        self.heard: list[Json] = []
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

    def __enter__(self) -> Talk:
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

    def raw(self, data: bytes) -> None:
        """Sends bytes as they are."""
        assert self.process.stdin is not None
        left = memoryview(data)
        while left:
            left = left[os.write(self.process.stdin.fileno(), left) :]

    def send(self, message: Json) -> None:
        """Sends a message."""
        body = json.dumps({"jsonrpc": "2.0", **message}, ensure_ascii=False).encode()
        self.raw(b"Content-Length: %d\r\n\r\n" % len(body) + body)

    def tell(self, method: str, params: Any = None) -> None:
        """Sends a notification."""
        self.send({"method": method, "params": params if params is not None else {}})

    def demand(self, method: str, params: Any = None) -> int:
        """Sends a request, whose `answer` is asked for later."""
        self._asked += 1
        self.send({"id": self._asked, "method": method, "params": params if params is not None else {}})
        return self._asked

    def answer(self, number: object, within: float = PATIENCE) -> Json:
        """The whole answer to a request, ``result`` or ``error``."""
        end = monotonic() + within
        while number not in self._answers:
            self.hear(end)
        return self._answers.pop(number)

    def ask(self, method: str, params: Any = None) -> Any:
        """The result of a request, which must not fail."""
        answer = self.answer(self.demand(method, params))
        assert "error" not in answer, (method, answer["error"])
        return answer["result"]

    def hear(self, end: float) -> Json:
        """Takes in the next message; `SilenceError` where none comes until a time."""
        message = self._next(end)
        if "method" not in message:
            self._answers[message["id"]] = message
        elif message["method"] == "textDocument/publishDiagnostics":
            told = message["params"]
            self.published[told["uri"]] = told.get("version"), told["diagnostics"]
            self.publications += 1
        else:
            self.heard.append(message)
            if "id" in message:
                items = message.get("params", {}).get("items") if message.get("params") else None
                self.send({"id": message["id"], "result": [None] * len(items) if items else None})
        return message

    def quiet(self, seconds: float) -> None:
        """Takes in messages until none has come for some time."""
        while True:
            try:
                self.hear(monotonic() + seconds)
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

    def greet(
        self, encoding: Encoding = "utf-16", capabilities: Json = CAPABILITIES, options: Json | None = None
    ) -> Json:
        """Initializes the server; returns what it can do."""
        result: Json = self.answer(self.demand_greeting(encoding, capabilities, options))["result"]
        return result["capabilities"]

    def demand_greeting(
        self, encoding: Encoding = "utf-16", capabilities: Json = CAPABILITIES, options: Json | None = None
    ) -> int:
        """Initializes the server without waiting for its answer; the number of the request."""
        given = capabilities | {"general": {"positionEncodings": [encoding, "utf-16"]}}
        params: Json = {"processId": os.getpid(), "rootUri": None, "capabilities": given}
        if self.folder is not None:
            params["rootUri"] = self.folder.as_uri()
            params["workspaceFolders"] = [{"uri": self.folder.as_uri(), "name": "team"}]
        if options is not None:
            params["initializationOptions"] = options
        number = self.demand("initialize", params)
        self.tell("initialized")
        return number

    def uri(self, name: str) -> str:
        """The address of a file in the folder."""
        assert self.folder is not None
        return (self.folder / name).as_uri()

    def open(self, uri: str, text: str, version: int = 1) -> None:
        """Opens a document."""
        document = {"uri": uri, "languageId": "yaml", "version": version, "text": text}
        self.tell("textDocument/didOpen", {"textDocument": document})

    def change(self, uri: str, version: int, *changes: Json) -> None:
        """Changes a document."""
        document = {"uri": uri, "version": version}
        self.tell("textDocument/didChange", {"textDocument": document, "contentChanges": list(changes)})

    def close(self, uri: str) -> None:
        """Closes a document."""
        self.tell("textDocument/didClose", {"textDocument": {"uri": uri}})

    def findings(self, uri: str, version: int, within: float = PATIENCE) -> list[Json]:
        """What is published for a version of a document, once it is."""
        end = monotonic() + within
        while (got := self.published.get(uri)) is None or got[0] != version:
            self.hear(end)
        return got[1]

    def bid_farewell(self) -> int:
        """Shuts the server down in due form; its exit code."""
        self.ask("shutdown")
        self.tell("exit")
        return self.process.wait(PATIENCE)
