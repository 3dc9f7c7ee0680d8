"""Runs the command on cases, each in a process of its own, which starts as a copy of this small one.

Reads a line of JSON a case from its input, ``[folder, words]``, and prints one for each: exit code, seconds of CPU,
megabytes at the most, output and error output. Where the word is ``editor``, it speaks to the language server as
an editor does that opens every file of the folder and asks all that it may ask.
"""

from __future__ import annotations

import json
import os
import resource
import select
import sys
from collections.abc import Callable, Iterator
from importlib import import_module
from pathlib import Path
from typing import Any

from spotline.lint.cli.main import main
from spotline.lint.engine.registry import all_rules

NEEDED = (
    "jsonschema",
    "spotline.lint.project.review",
    "spotline.lint.schemas.explain",
    "spotline.lint.body.names",
    "spotline.lint.cli.reviewing",
    "spotline.lint.cli.mends",
    "spotline.lint.cli.weigh",
    "spotline.lint.cli.sheets",
    "spotline.lint.cli.solving",
    "spotline.lint.editor.server",
)
"""What cases need is there before the copies are made: what is measured is the work."""

PATIENCE = 8
"""Seconds of CPU after which a process is ended: a hang, far beyond what is allowed."""


class Child:
    """A copy of this process that runs the command; what it says is read as it comes."""

    def __init__(self, folder: str, words: list[str]) -> None:
        given, out, err = os.pipe(), os.pipe(), os.pipe()
        self.number = os.fork()
        if self.number == 0:
            _become(folder, words, given, out, err)
        for end in (given[0], out[1], err[1]):
            os.close(end)
        self.input = given[1]
        self.said = {out[0]: b"", err[0]: b""}
        self.out, self.err = out[0], err[0]
        self.open = {out[0], err[0]}

    def send(self, data: bytes) -> None:
        """Gives it bytes, and reads on meanwhile, so that neither waits for the other."""
        os.set_blocking(self.input, False)
        while data and self.open:
            ready = select.select(list(self.open), [self.input], [])
            self._take(ready[0])
            if ready[1]:
                try:
                    data = data[os.write(self.input, data) :]
                except BrokenPipeError:
                    return

    def read(self) -> bool:
        """Reads what has come; False once it has closed both streams."""
        if self.open:
            self._take(select.select(list(self.open), [], [])[0])
        return bool(self.open)

    def _take(self, ready: list[int]) -> None:
        for handle in ready:
            part = os.read(handle, 1 << 16)
            self.said[handle] += part
            if not part:
                self.open.discard(handle)
                os.close(handle)

    def end(self) -> dict[str, Any]:
        """Waits for its end, and says what came of it."""
        os.close(self.input)
        while self.read():
            pass
        _, status, used = os.wait4(self.number, 0)
        return {
            "code": os.waitstatus_to_exitcode(status),
            "cpu": used.ru_utime + used.ru_stime,
            "megabytes": used.ru_maxrss / 1024,
            "out": self.said[self.out].decode(errors="replace"),
            "err": self.said[self.err].decode(errors="replace"),
        }


def _become(
    folder: str, words: list[str], given: tuple[int, int], out: tuple[int, int], err: tuple[int, int]
) -> None:
    """Turns the copy into the command; never returns."""
    code = 99
    try:
        os.chdir(folder)
        for end, stream in ((given[0], 0), (out[1], 1), (err[1], 2)):
            os.dup2(end, stream)
        for end in (*given, *out, *err):
            os.close(end)
        sys.stdin = os.fdopen(0, encoding="utf-8")
        sys.stdout, sys.stderr = os.fdopen(1, "w", encoding="utf-8"), os.fdopen(2, "w", encoding="utf-8")
        resource.setrlimit(resource.RLIMIT_CPU, (PATIENCE, PATIENCE))
        os.environ["XDG_STATE_HOME"] = os.path.join(os.path.dirname(folder), "state")
        sys.argv[1:] = words
        code = main()  # as in a process of its own
        sys.stdout.flush()
        sys.stderr.flush()
    finally:
        os._exit(code)


def run(folder: str, words: list[str]) -> dict[str, Any]:
    if words == ["editor"]:
        return edit(folder)
    return Child(folder, words).end()


# An editor


class Editor:
    """What an editor sends, and how it waits for the answers."""

    def __init__(self, folder: str) -> None:
        self.folder = Path(folder)
        self.child = Child(folder, ["editor"])
        self.asked = 0
        self.answers: dict[int, Any] = {}
        self.published: dict[str, list[Any]] = {}
        self._read = 0

    def send(self, method: str, params: Any, *, wants: bool = True) -> int:
        """Sends a request, or a notification where no answer is wanted."""
        self.asked += wants
        number = {"id": self.asked} if wants else {}
        body = json.dumps({"jsonrpc": "2.0", **number, "method": method, "params": params}).encode()
        self.child.send(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        return self.asked

    def wait(self, done: Callable[[], bool]) -> None:
        """Reads messages until something is so, or the server has gone."""
        while not done() and self.child.read():
            for message in self._messages():
                if "method" not in message:
                    self.answers[message["id"]] = message
                elif message["method"] == "textDocument/publishDiagnostics":
                    self.published[message["params"]["uri"]] = message["params"]["diagnostics"]
                elif "id" in message:
                    body = json.dumps({"jsonrpc": "2.0", "id": message["id"], "result": None}).encode()
                    self.child.send(b"Content-Length: %d\r\n\r\n" % len(body) + body)

    def _messages(self) -> Iterator[Any]:
        said = self.child.said[self.child.out]
        while (head := said.find(b"\r\n\r\n", self._read)) >= 0:
            length = int(said[self._read : head].rpartition(b"Content-Length:")[2].split()[0])
            if len(said) < head + 4 + length:
                return
            self._read = head + 4 + length
            yield json.loads(said[head + 4 : self._read])


def _places(text: str) -> Iterator[dict[str, int]]:
    """Places at which a coach may point: first, in the middle and last, and beyond the end."""
    lines = text.split("\n")
    for line in sorted({0, len(lines) // 2, len(lines) - 1}):
        yield {"line": line, "character": min(8, len(lines[line]))}
    yield {"line": len(lines) + 5, "character": 99}


def edit(folder: str) -> dict[str, Any]:
    """Opens every file that is one, asks all that an editor asks, and closes the connection in good order."""
    editor = Editor(folder)
    about = {"processId": None, "rootUri": Path(folder).as_uri(), "capabilities": {}}
    editor.send("initialize", about)
    editor.send("initialized", {}, wants=False)
    texts: dict[str, str] = {}
    for name in sorted(os.listdir(folder)):
        path = editor.folder / name
        is_ours = name.endswith(".yaml") and path.is_file() and not path.is_symlink()
        if is_ours and path.stat().st_size < 5_000_000:
            texts[path.as_uri()] = path.read_bytes().decode(errors="replace")
    for uri, text in texts.items():
        document = {"uri": uri, "languageId": "yaml", "version": 1, "text": text}
        editor.send("textDocument/didOpen", {"textDocument": document}, wants=False)
    editor.wait(lambda: texts.keys() <= editor.published.keys())
    asked = 0
    for uri, text in texts.items():
        whole = {"start": {"line": 0, "character": 0}, "end": {"line": text.count("\n") + 1, "character": 0}}
        document = {"textDocument": {"uri": uri}}
        for what in ("documentSymbol", "codeLens"):
            asked = editor.send(f"textDocument/{what}", document)
        asked = editor.send("textDocument/inlayHint", document | {"range": whole})
        found = {"diagnostics": editor.published.get(uri, [])}
        asked = editor.send("textDocument/codeAction", document | {"range": whole, "context": found})
        for place in _places(text):
            for what in ("hover", "completion", "definition", "documentHighlight", "prepareRename"):
                asked = editor.send(f"textDocument/{what}", document | {"position": place})
            more = {"position": place, "context": {"includeDeclaration": True}}
            asked = editor.send("textDocument/references", document | more)
        change = {"textDocument": {"uri": uri, "version": 2}, "contentChanges": [{"text": text + "#"}]}
        editor.send("textDocument/didChange", change, wants=False)
    asked = editor.send("workspace/symbol", {"query": "a"}) or asked
    asked = editor.send("shutdown", None)
    editor.wait(lambda: asked in editor.answers)
    editor.send("exit", None, wants=False)
    result = editor.child.end()
    failed = [one["error"] for one in editor.answers.values() if "error" in one]
    places = [
        f"{uri}:{one['range']['start']['line'] + 1}:{one['range']['start']['character'] + 1}: error: {one['code']}: -"
        for uri, several in editor.published.items()
        for one in several
    ]
    answered = len(editor.answers) == editor.asked and texts.keys() <= editor.published.keys()
    result["out"] = "\n".join([*places, "" if answered else "the server has not answered", *map(str, failed)])
    return result


if __name__ == "__main__":
    for needed in NEEDED:
        import_module(needed)
    all_rules()
    for line in sys.stdin:
        print(json.dumps(run(*json.loads(line))), flush=True)
