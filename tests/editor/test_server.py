"""The server at the end of a pipe: what a client may get wrong, byte by byte, and how the conversation ends."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

PLAN = """\
programme: A
xyzzy: 1
focus: [legs]
sessions:
  - session: B
    exercises:
      - {exercise: back squat, sets: 3, reps: 8, rir: 2}
      - {exercise: seated leg curl, sets: 3, reps: 8, rir: 2}
      - {exercise: stiff-leg deadlift, sets: 3, reps: 8, rir: 2}
"""

SERVER = (sys.executable, "-m", "spotline", "editor")

ANY = {"textDocument": {"uri": "file:///nowhere/x.programme.yaml"}}


def framed(message: object) -> bytes:
    body = message if isinstance(message, bytes) else json.dumps(message).encode()
    return b"Content-Length: %d\r\n\r\n%s" % (len(body), body)


class Client:
    """Writes bytes, reads messages."""

    def __init__(self, folder: Path, *command: str) -> None:
        self.folder = folder
        self.process = subprocess.Popen(
            command,
            cwd=folder,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )
        assert self.process.stdin is not None
        assert self.process.stdout is not None
        self.to, self.of = self.process.stdin, self.process.stdout
        self.number = 0

    def write(self, *data: bytes) -> None:
        self.to.write(b"".join(data))
        self.to.flush()

    def notify(self, method: str, params: object = None) -> bytes:
        return framed({"jsonrpc": "2.0", "method": method, "params": params})

    def request(self, method: str, params: object = None) -> bytes:
        self.number += 1
        return framed({"jsonrpc": "2.0", "id": self.number, "method": method, "params": params})

    def read(self) -> dict[str, Any]:
        length = 0
        while line := self.of.readline().strip():
            name, _, value = line.partition(b":")
            if name.lower() == b"content-length":
                length = int(value)
        assert length, "the server has gone"
        message: dict[str, Any] = json.loads(self.of.read(length))
        return message

    def ask(self, method: str, params: object = None) -> dict[str, Any]:
        """Sends a request and gives the answer; what comes before it is passed over."""
        self.write(self.request(method, params))
        return self.answer()

    def answer(self) -> dict[str, Any]:
        message = self.read()
        while message.get("id") != self.number or "method" in message:
            message = self.read()
        return message

    def heard(self, method: str) -> dict[str, Any]:
        """The parameters of the next notification or request of a kind."""
        message = self.read()
        while message.get("method") != method:
            message = self.read()
        params: dict[str, Any] = message.get("params", {})
        return params

    def start(self, **announced: object) -> dict[str, Any]:
        """Initializes; gives what the server can do."""
        answer = self.ask(
            "initialize",
            {"processId": None, "rootUri": self.folder.as_uri(), "capabilities": announced},
        )
        self.write(self.notify("initialized", {}))
        result: dict[str, Any] = answer["result"]
        return result

    def opening(self, text: str = PLAN, name: str = "a.programme.yaml", version: int = 1) -> bytes:
        document = {
            "uri": (self.folder / name).as_uri(),
            "languageId": "yaml",
            "version": version,
            "text": text,
        }
        return self.notify("textDocument/didOpen", {"textDocument": document})

    def changing(self, version: int, text: str, name: str = "a.programme.yaml") -> bytes:
        document = {"uri": (self.folder / name).as_uri(), "version": version}
        change = {"textDocument": document, "contentChanges": [{"text": text}]}
        return self.notify("textDocument/didChange", change)

    def codes(self) -> list[str]:
        """The rules of the next diagnostics."""
        found = self.heard("textDocument/publishDiagnostics")["diagnostics"]
        return [one["code"] for one in found]

    def end(self) -> tuple[int, str]:
        """Closes the pipe; the exit code, and what was written to the log."""
        self.to.close()
        code = self.process.wait(20)
        assert self.process.stderr is not None
        log = self.process.stderr.read().decode()
        assert "Traceback" not in log
        return code, log

    def clear(self) -> None:
        """Leaves nothing behind."""
        self.process.kill()
        self.process.wait()
        for stream in (self.to, self.of, self.process.stderr):
            assert stream is not None
            stream.close()


@pytest.fixture
def client(tmp_path: Path) -> Iterator[Client]:
    client = Client(tmp_path, *SERVER)
    yield client
    client.clear()


@pytest.fixture(scope="module")
def running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Client]:
    """A server that outlives many tests, and has a document open; in the end it has logged lines, no more."""
    client = Client(tmp_path_factory.mktemp("running"), *SERVER)
    client.start()
    yield client
    client.ask("shutdown")
    code, log = client.end()
    assert code == 0
    assert all(line.startswith("spotline: ") for line in log.splitlines())
    client.clear()


# How it ends


def test_it_ends_in_due_form(client: Client) -> None:
    client.start()
    assert client.ask("shutdown")["result"] is None
    client.write(client.notify("exit"))
    assert client.process.wait(20) == 0
    assert client.end() == (0, "")


def test_a_client_that_just_goes(client: Client) -> None:
    client.start()
    client.write(client.opening())
    assert "key-unknown" in client.codes()
    assert client.end() == (1, "")


def test_a_client_that_goes_after_shutdown(client: Client) -> None:
    client.start()
    client.ask("shutdown")
    assert client.end() == (0, "")


def test_exit_without_shutdown(client: Client) -> None:
    client.start()
    client.write(client.notify("exit"))
    assert client.process.wait(20) == 1


def test_a_client_that_never_says_a_word(client: Client) -> None:
    assert client.end() == (1, "")


def test_a_client_that_goes_in_the_midst_of_a_message(client: Client) -> None:
    client.start()
    client.write(client.opening()[:-20])
    assert client.end() == (1, "")


def test_a_client_that_goes_in_the_midst_of_a_head(client: Client) -> None:
    client.write(b"Content-Len")
    assert client.end() == (1, "")


def test_a_client_that_no_longer_listens(client: Client) -> None:
    client.start()
    client.of.close()
    client.write(client.opening())
    assert client.process.wait(20) == 1
    assert client.end() == (1, "")


# What is no message


@pytest.mark.parametrize(
    "garbage",
    [
        framed(b"{"),
        framed(b"hello"),
        framed(b"\xff\xfe"),
        framed(b"[]"),
        framed(b"5"),
        framed(b"{}"),
        framed({"jsonrpc": "1.0", "method": "initialized"}),
        framed({"jsonrpc": "2.0"}),
        framed({"jsonrpc": "2.0", "id": 77}),
        framed({"jsonrpc": "2.0", "id": 77, "result": None}),
        framed({"jsonrpc": "2.0", "id": 77, "error": {"code": 1, "message": "x"}}),
        framed({"jsonrpc": "2.0", "method": 5}),
        framed(b"[" * 100_000),
        b"Content-Length: 0\r\n\r\n",
        b"Content-Length: -5\r\n\r\n",
        b"Content-Length: x\r\n\r\n",
        b"hello\r\n\r\n",
        b"\r\n\r\n",
        b"x" * 100_000 + b"\r\n",
    ],
)
def test_garbage_is_survived(running: Client, garbage: bytes) -> None:
    running.write(garbage, running.opening())
    assert "key-unknown" in running.codes()


def test_messages_come_in_pieces(running: Client) -> None:
    data = running.opening()
    for at in range(0, len(data), 7):
        running.write(data[at : at + 7])
    assert "key-unknown" in running.codes()


# Out of turn


def test_nothing_is_answered_before_the_beginning(client: Client) -> None:
    client.write(client.opening(), client.request("textDocument/codeLens", ANY))
    assert client.answer()["error"]["code"] == -32002
    client.start()
    client.write(client.opening())
    assert "key-unknown" in client.codes()


def test_nothing_is_answered_after_the_end(client: Client) -> None:
    client.start()
    client.ask("shutdown")
    assert client.ask("shutdown")["error"]["code"] == -32600


def test_unknown_methods(running: Client) -> None:
    running.write(running.notify("textDocument/xyzzy", {"a": 1}), running.notify("$/xyzzy"))
    assert running.ask("textDocument/xyzzy", {"a": 1})["error"]["code"] == -32601
    running.write(running.opening())
    assert "key-unknown" in running.codes()


@pytest.mark.parametrize("params", [None, 5, [], {}, {"textDocument": 5}, {"textDocument": {"uri": 5}}])
@pytest.mark.parametrize("method", ["hover", "codeAction"])
def test_wrong_parameters_are_refused(running: Client, method: str, params: object) -> None:
    answer = running.ask(f"textDocument/{method}", params)
    assert answer["error"]["code"] == -32602
    assert "Traceback" not in str(answer)


@pytest.mark.parametrize("data", [{"method": "shutdown"}, {"jsonrpc2": "2.0"}, {"params": {"id": 8}}])
def test_a_request_that_is_none_of_the_protocol_is_refused(running: Client, data: dict[str, Any]) -> None:
    running.write(framed({"id": running.number, **data}))
    assert running.answer()["error"]["code"] == -32600


@pytest.mark.parametrize(
    ("command", "arguments"),
    [
        ("week", []),
        ("week", ["file:///a.programme.yaml"]),
        ("week", ["file:///a.programme.yaml", "1"]),
        ("week", ["file:///a.programme.yaml", True]),
        ("week", ["file:///a.programme.yaml", 1, 0, 0]),
        ("rule", [5]),
        ("changes", [None]),
    ],
)
def test_wrong_arguments_of_a_command_are_refused(
    running: Client, command: str, arguments: list[object]
) -> None:
    params = {"command": f"spotline.{command}", "arguments": arguments}
    assert running.ask("workspace/executeCommand", params)["error"]["code"] == -32602


@pytest.mark.parametrize(("week", "athlete"), [(0, 0), (99, 0), (1, 1), (1, -1)])
def test_a_week_that_is_not_there_has_no_page(running: Client, week: int, athlete: int) -> None:
    running.write(running.opening())
    arguments = [(running.folder / "a.programme.yaml").as_uri(), week, athlete]
    params = {"command": "spotline.week", "arguments": arguments}
    assert running.ask("workspace/executeCommand", params)["result"] is None


def test_a_position_beyond_the_text(running: Client) -> None:
    running.write(running.opening())
    far = {"line": 2**31 - 1, "character": 2**31 - 1}
    uri = (running.folder / "a.programme.yaml").as_uri()
    document = {"textDocument": {"uri": uri}}
    context = {"context": {"diagnostics": []}}
    asked = {**document, "range": {"start": far, "end": far}, **context}
    assert running.ask("textDocument/codeAction", asked)["result"] == []
    assert running.ask("textDocument/hover", {**document, "position": far})["result"] is None


@pytest.mark.parametrize("method", ["hover", "codeAction", "documentSymbol", "codeLens", "inlayHint"])
def test_documents_that_are_not_open(running: Client, method: str) -> None:
    place = {"line": 0, "character": 0}
    asked = {
        "textDocument": {"uri": "file:///nowhere/x.programme.yaml"},
        "position": place,
        "range": {"start": place, "end": place},
        "context": {"diagnostics": []},
    }
    assert running.ask(f"textDocument/{method}", asked)["result"] is None


def test_changes_and_closing_of_what_is_not_open(client: Client) -> None:
    client.start()
    uri = (client.folder / "b.programme.yaml").as_uri()
    closing = client.notify("textDocument/didClose", {"textDocument": {"uri": uri}})
    saving = client.notify("textDocument/didSave", {"textDocument": {"uri": uri}})
    client.write(client.changing(2, PLAN, "b.programme.yaml"), closing, saving, client.opening())
    assert "key-unknown" in client.codes()
    code, log = client.end()
    assert (code, log) == (1, f"spotline: a change to a document that is not open: {uri}\n")


# What is told, and when


def test_what_queues_up_is_taken_together(client: Client) -> None:
    client.start(textDocument={"publishDiagnostics": {"versionSupport": True}})
    changes = [client.changing(version, PLAN + f"note: {version}\n") for version in range(2, 200)]
    client.write(client.opening(), *changes)
    versions = [client.heard("textDocument/publishDiagnostics")["version"]]
    while versions[-1] < 199:
        versions.append(client.heard("textDocument/publishDiagnostics")["version"])
    assert len(versions) < 50
    assert versions == sorted(versions)


def test_a_question_is_answered_on_the_latest_text(running: Client) -> None:
    uri = (running.folder / "a.programme.yaml").as_uri()
    whole = {"start": {"line": 0, "character": 0}, "end": {"line": 99, "character": 0}}
    asked = {"textDocument": {"uri": uri}, "range": whole, "context": {"diagnostics": []}}
    text = PLAN.replace("xyzzy", "goaal").replace(": 1", ": strength")
    running.write(
        running.opening(), running.changing(2, text), running.request("textDocument/codeAction", asked)
    )
    titles = [action["title"] for action in running.answer()["result"]]
    assert "Write goal" in titles


def test_closing_takes_back_what_was_told(running: Client) -> None:
    running.write(running.opening())
    assert "key-unknown" in running.codes()
    uri = (running.folder / "a.programme.yaml").as_uri()
    running.write(running.notify("textDocument/didClose", {"textDocument": {"uri": uri}}))
    while running.codes():
        pass  # told once more before the closing was read


def test_without_version_support_no_version_is_sent(running: Client) -> None:
    running.write(running.opening())
    assert "version" not in running.heard("textDocument/publishDiagnostics")


def test_a_new_file_on_the_disk_is_taken_into_account(client: Client) -> None:
    watching = {"workspace": {"didChangeWatchedFiles": {"dynamicRegistration": True}}}
    client.start(**watching)
    registered = client.heard("client/registerCapability")["registrations"]
    assert [one["method"] for one in registered] == ["workspace/didChangeWatchedFiles"]
    patterns = [one["globPattern"] for one in registered[0]["registerOptions"]["watchers"]]
    assert "**/*.athlete.yaml" in patterns
    assert "**/spotline.yaml" in patterns
    client.write(client.opening(PLAN.replace("xyzzy: 1", "athlete: ann.athlete.yaml")))
    assert "athlete-missing" in client.codes()
    athlete = client.folder / "ann.athlete.yaml"
    athlete.write_text("name: Ann\n")
    changed = {"changes": [{"uri": athlete.as_uri(), "type": 1}]}
    client.write(client.notify("workspace/didChangeWatchedFiles", changed))
    assert "athlete-missing" not in client.codes()


def test_hints_are_asked_for_anew_when_settings_change(client: Client) -> None:
    client.start(workspace={"inlayHint": {"refreshSupport": True}, "codeLens": {"refreshSupport": True}})
    uri = (client.folder / "a.programme.yaml").as_uri()
    whole = {"start": {"line": 0, "character": 0}, "end": {"line": 99, "character": 0}}
    asked = {"textDocument": {"uri": uri}, "range": whole}
    client.write(client.opening(PLAN.replace("xyzzy: 1", "note: n")))
    assert client.ask("textDocument/inlayHint", asked)["result"]
    assert client.ask("textDocument/codeLens", asked)["result"]
    off = {"settings": {"spotline": {"hints": {"sets": False, "kilograms": False}, "lenses": False}}}
    client.write(client.notify("workspace/didChangeConfiguration", off))
    client.heard("workspace/inlayHint/refresh")
    client.heard("workspace/codeLens/refresh")
    assert client.ask("textDocument/inlayHint", asked)["result"] == []
    assert client.ask("textDocument/codeLens", asked)["result"] == []


def test_settings_that_do_not_come_along_are_asked_for(client: Client) -> None:
    client.start(workspace={"configuration": True})
    client.write(client.notify("workspace/didChangeConfiguration", {"settings": None}))
    message = client.read()
    assert (message["method"], message["params"]) == (
        "workspace/configuration",
        {"items": [{"section": "spotline"}]},
    )
    client.write(framed({"jsonrpc": "2.0", "id": message["id"], "result": [{"lenses": False}]}))
    client.write(client.opening(PLAN.replace("xyzzy: 1", "note: n")))
    uri = (client.folder / "a.programme.yaml").as_uri()
    assert client.ask("textDocument/codeLens", {"textDocument": {"uri": uri}})["result"] == []


PROGRAM = """\
import sys
from spotline.lint.cli.main import main
from importlib import import_module
module = import_module("spotline.lint.editor.{module}")
before = module.{name}
def other(*words, **named):
    {does}
    return before(*words, **named)
module.{name} = other
sys.argv[1:] = ["editor"]
sys.exit(main())
"""


@pytest.fixture
def changed(tmp_path: Path) -> Iterator[Callable[[str, str, str], Client]]:
    """A server in which a function does something else first."""
    clients: list[Client] = []

    def start(module: str, name: str, does: str) -> Client:
        program = PROGRAM.format(module=module, name=name, does=does)
        clients.append(Client(tmp_path, sys.executable, "-c", program))
        clients[0].start()
        return clients[0]

    yield start
    clients[0].clear()


def test_what_is_printed_does_not_get_between(changed: Callable[[str, str, str], Client]) -> None:
    client = changed("documents.open_documents", "review_on", "print('loud', flush=True)")
    client.write(client.opening())
    assert "key-unknown" in client.codes()
    assert client.end() == (1, "loud\n")


def test_a_failure_to_tell_what_is_found_is_one_line_in_the_log(
    changed: Callable[[str, str, str], Client],
) -> None:
    client = changed("server", "diagnostics", "raise KeyError('x')")
    for version in (1, 2, 3):
        client.write(client.opening(version=version))
        assert client.codes() == []
    code, log = client.end()
    assert (code, log.count("\n")) == (1, 1)
    assert log.startswith("spotline: nothing is told of file:")


def test_a_failure_to_answer_is_one_line_in_the_log(changed: Callable[[str, str, str], Client]) -> None:
    client = changed("features.fixes", "fixes", "raise KeyError('x')")
    client.write(client.opening())
    uri = (client.folder / "a.programme.yaml").as_uri()
    whole = {"start": {"line": 0, "character": 0}, "end": {"line": 9, "character": 0}}
    asked = {"textDocument": {"uri": uri}, "range": whole, "context": {"diagnostics": []}}
    assert client.ask("textDocument/codeAction", asked)["result"] is None
    assert client.end() == (1, "spotline: code_action failed (KeyError: 'x')\n")


# Pages


def test_a_page_is_answered_and_shown(client: Client) -> None:
    client.start(window={"showDocument": {"support": True}})
    client.write(
        client.request("workspace/executeCommand", {"command": "spotline.rule", "arguments": ["units-mixed"]})
    )
    shown = client.heard("window/showDocument")
    page = Path(shown["uri"].removeprefix("file://"))
    answer = client.answer()["result"]
    assert answer == page.read_text(encoding="utf-8")
    assert "Kilograms and pounds in one programme." in answer
    client.ask("shutdown")
    client.end()
    assert not page.exists()


def test_a_page_is_a_message_where_documents_cannot_be_shown(running: Client) -> None:
    running.write(running.opening(PLAN.replace("xyzzy: 1", "note: n")))
    uri = (running.folder / "a.programme.yaml").as_uri()
    week = {"command": "spotline.week", "arguments": [uri, 1, 0]}
    running.write(running.request("workspace/executeCommand", week))
    shown = running.heard("window/showMessage")
    assert shown["type"] == 3
    assert running.answer()["result"] == shown["message"]


@pytest.mark.parametrize(
    ("command", "words"),
    [
        ("spotline.week", ["file:///nowhere/x.programme.yaml", 1, 0]),
        ("spotline.week", []),
        ("spotline.week", [5, [], {}]),
        ("spotline.rule", []),
        ("spotline.rule", [1, 2, 3, 4]),
    ],
)
def test_a_page_that_is_none(running: Client, command: str, words: list[object]) -> None:
    asked = {"command": command, "arguments": words}
    assert running.ask("workspace/executeCommand", asked).get("result") is None


# Positions


@pytest.mark.parametrize(
    ("offered", "agreed", "start"),
    [
        (["utf-8", "utf-16"], "utf-8", 12),
        (["utf-32", "utf-16"], "utf-32", 9),
        (["utf-7", "utf-16"], "utf-16", 10),
        (["utf-7"], "utf-16", 10),
        (None, "utf-16", 10),
    ],
)
def test_positions_are_in_the_units_agreed_on(
    client: Client, offered: list[str] | None, agreed: str, start: int
) -> None:
    able = client.start(**({"general": {"positionEncodings": offered}} if offered else {}))
    assert able["capabilities"]["positionEncoding"] == agreed
    client.write(client.opening("{note: 😀, xyzzy: 1}\n"))
    found = client.heard("textDocument/publishDiagnostics")["diagnostics"]
    (one,) = [one for one in found if one["code"] == "key-unknown"]
    assert one["range"]["start"] == {"line": 0, "character": start + 1}
    end = {"line": 0, "character": start + 6}
    assert one["range"]["end"] == end
