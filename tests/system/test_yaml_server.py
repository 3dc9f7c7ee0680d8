"""The printed schemas in the general YAML language server of the npm package of that name, 1.22.0.

It is set as EDITORS.md says for plain YAML tooling, and knows nothing of spotline but the schemas.
"""

from __future__ import annotations

import json
import subprocess
import threading
from collections.abc import Iterator
from pathlib import Path
from queue import Queue

import pytest

HEADING = "Plain YAML tooling"
EXAMPLES = Path(__file__).parent.parent.parent / "examples"

WRONG = """\
programme: Winter base
athlte: mara.athlete.yaml
sessions:
  - session: Lower A
    exercises:
      - exercise: back squat
        sets: 3
        rets: 3 min
"""


class Client:
    """Speaks to a language server over its pipes; ``settings`` is what it answers when it is asked for them."""

    def __init__(self, command: list[str], folder: Path, settings: dict) -> None:
        self.folder = folder
        self.settings = settings
        self.server = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        self.said: Queue[dict] = Queue()
        self.listener = threading.Thread(target=self._listen)
        self.listener.start()
        self.last = 0
        capabilities = {
            "workspace": {"configuration": True},
            "textDocument": {"hover": {"contentFormat": ["markdown"]}},
        }
        here = {"uri": folder.as_uri(), "name": "team"}
        self.ask(
            "initialize",
            processId=None,
            rootUri=here["uri"],
            workspaceFolders=[here],
            capabilities=capabilities,
        )
        self.tell("initialized")

    def _listen(self) -> None:
        while header := self.server.stdout.readline():
            length = int(header.split(b":")[1])
            assert self.server.stdout.readline() == b"\r\n"
            self.said.put(json.loads(self.server.stdout.read(length)))

    def _send(self, **message: object) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        self.server.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        self.server.stdin.flush()

    def _next(self) -> dict:
        """The next thing that the server says; its own questions are answered on the way."""
        message = self.said.get(timeout=20)
        if "method" in message and "id" in message:
            asked = (
                message["params"].get("items", []) if message["method"] == "workspace/configuration" else []
            )
            self._send(
                id=message["id"], result=[self.settings.get(item["section"]) for item in asked] or None
            )
        return message

    def tell(self, method: str, **params: object) -> None:
        """Sends a notification."""
        self._send(method=method, params=params)

    def ask(self, method: str, **params: object) -> object:
        """Sends a request and returns the result."""
        self.last += 1
        self._send(id=self.last, method=method, params=params)
        while (message := self._next()).get("id") != self.last or "method" in message:
            pass
        assert "error" not in message, message
        return message["result"]

    def open(self, name: str, text: str) -> list[dict]:
        """Opens a file and returns what is wrong with it."""
        uri = (self.folder / name).as_uri()
        self.tell(
            "textDocument/didOpen",
            textDocument={"uri": uri, "languageId": "yaml", "version": 1, "text": text},
        )
        while (message := self._next()).get("method") != "textDocument/publishDiagnostics" or (
            message["params"]["uri"] != uri
        ):
            pass
        return message["params"]["diagnostics"]

    def at(self, method: str, name: str, line: int, character: int) -> object:
        """Asks about a position of an open file; both numbers start at 0."""
        return self.ask(
            method,
            textDocument={"uri": (self.folder / name).as_uri()},
            position={"line": line, "character": character},
        )

    def labels(self, name: str, line: int, character: int) -> set[str]:
        """What completion offers at a position."""
        offered = self.at("textDocument/completion", name, line, character)
        return {item["label"] for item in offered["items"]}

    def close(self) -> None:
        """Ends the server."""
        self.ask("shutdown")
        self.tell("exit")
        self.server.wait(timeout=10)
        self.listener.join(timeout=10)
        self.server.stdin.close()
        self.server.stdout.close()


@pytest.fixture
def client(coach, installed) -> Iterator[Client]:
    subprocess.run(
        ["sh", "-euc", coach.documented(HEADING, "sh")], cwd=coach.folder, env=coach.environment, check=True
    )
    settings = json.loads(coach.documented(HEADING, "json"))
    schemas = settings.pop("yaml.schemas")
    assert settings == {}
    server = installed / "yaml" / "node_modules" / "yaml-language-server" / "bin" / "yaml-language-server"
    # The server's own list of schemas would be fetched from the network.
    told = {"yaml": {"schemas": schemas, "schemaStore": {"enable": False}}}
    client = Client(["node", str(server), "--stdio"], coach.folder, told)
    yield client
    client.close()


def words(diagnostics: list[dict]) -> list[tuple[int, int, str]]:
    """Line and column, from 1, and message of what is wrong, in the order of the file."""
    return sorted(
        (one["range"]["start"]["line"] + 1, one["range"]["start"]["character"] + 1, one["message"])
        for one in diagnostics
    )


def test_wrong_keys_are_marked_where_they_stand(client):
    assert words(client.open("plan.programme.yaml", WRONG)) == [
        (2, 1, "Property athlte is not allowed."),
        (8, 9, "Property rets is not allowed."),
    ]
    assert words(client.open("mara.athlete.yaml", "name: Mara\nleval: novice\n")) == [
        (2, 1, "Property leval is not allowed.")
    ]


def test_completion_offers_the_keys_and_values_of_a_programme(client):
    client.open("plan.programme.yaml", WRONG + "        \n    \ngoal: \n")
    assert {"reps", "load", "rir", "rest", "tempo"} <= client.labels("plan.programme.yaml", 8, 8)
    assert {"day", "note", "preparation"} <= client.labels("plan.programme.yaml", 9, 4)
    assert client.labels("plan.programme.yaml", 10, 6) >= {"hypertrophy", "strength", "general health"}


def test_completion_offers_the_keys_and_values_of_an_athlete(client):
    client.open("mara.athlete.yaml", "name: Mara\nlevel: \n\n")
    assert {"best lifts", "equipment", "days", "protect"} <= client.labels("mara.athlete.yaml", 2, 0)
    assert client.labels("mara.athlete.yaml", 1, 7) >= {"novice", "intermediate", "advanced"}


def test_hover_shows_what_the_schema_says_of_a_key(client):
    client.open("plan.programme.yaml", WRONG + "goal: strength\n")
    sets = client.at("textDocument/hover", "plan.programme.yaml", 6, 9)["contents"]["value"]
    assert "A number of sets, or a range." in sets
    goal = client.at("textDocument/hover", "plan.programme.yaml", 8, 1)["contents"]["value"]
    assert "What the programme is after: hypertrophy, strength, power" in goal


def test_the_schema_named_in_the_first_line_is_used(client, coach):
    first = coach.documented(HEADING, "yaml")
    assert words(client.open("other.yaml", first + WRONG)) == [
        (3, 1, "Property athlte is not allowed."),
        (9, 9, "Property rets is not allowed."),
    ]
    assert words(client.open("another.yaml", WRONG)) == []


def test_nothing_is_wrong_with_the_examples(client):
    files = sorted([*EXAMPLES.glob("programmes/*.yaml"), *EXAMPLES.glob("athletes/*.yaml")])
    assert len(files) > 15
    found = {file.name: client.open(file.name, file.read_text(encoding="utf-8")) for file in files}
    assert {name: words(wrong) for name, wrong in found.items() if wrong} == {}
