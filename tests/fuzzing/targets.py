"""What is fuzzed: each target takes bytes, does with them what a user may do, and raises where that goes wrong.

A target works in a folder of its own that holds a sound programme, athlete, settings, exercises and record, and puts
the bytes in the place of one of these; that of the server takes lines of messages instead.
"""

from __future__ import annotations

import asyncio
import json
import os
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

from pygls.exceptions import JsonRpcException

from spotline.lint.editor.server import Server
from spotline.lint.engine import registry
from spotline.lint.mending.rounds import Rounds
from spotline.lint.project.results import Review
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.reporters import cards, review_json
from spotline.lint.syntax.builder import read
from spotline.lint.syntax.tree import Reading
from spotline.lint.team.known_findings import FORM, entries_in, record_of, record_text
from spotline.lint.team.known_findings import NAME as KNOWN_FINDINGS

TODAY = date(2026, 1, 5)

SOUND = {
    "plan.programme.yaml": """\
programme: Legs and back
athlete: orla.athlete.yaml
goal: hypertrophy
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 6-8, load: 75 %, rest: 2 min}
      - exercise: seated leg curl
        sets: {1-3: 3, 4: 2}
        reps: 8-12
        rir: 2
      - {exercise: club row, sets: 3, reps: 10, rir: 2}  # spotline: waive session-empty because of the hall
""",
    "orla.athlete.yaml": "name: Orla\nlevel: intermediate\nbest lifts: {back squat: 100 kg}\n",
    "spotline.yaml": """\
preset: 2026-12
exercises: [ours.exercises.yaml]
our names: {hall squat: back squat}
weekly limits: {hamstrings: 16}
rules: {rest-too-short-heavy: note, weekly-sets-under-floor: skip}
team rules:
  - {rule: team-own, weekly sets of: knee flexion, at least: 9, message: Add leg curls.}
""",
    "ours.exercises.yaml": """\
exercises:
  - name: club row
    also: [pier row]
    implement: sandbag
    path: {hip: [90, 0], knee: 15, ankle: 0}
""",
    KNOWN_FINDINGS: f'{{"form": {FORM}, "known": []}}\n',
}
"""A folder in which all is read, by the names of its files."""

PLAN = "plan.programme.yaml"


class Folder:
    """The folder that a target works in; each trial takes the bytes of one file, the others are sound."""

    def __init__(self, path: Path) -> None:
        self.path = path
        (path / ".git").mkdir(parents=True, exist_ok=True)
        for name, text in SOUND.items():
            (path / name).write_text(text, encoding="utf-8")

    def paths(self) -> list[str]:
        return [str(self.path / name) for name in SOUND if name.endswith(("programme.yaml", "athlete.yaml"))]

    def review(self, name: str, data: bytes) -> Review:
        """The review of the folder with these bytes in the place of a file."""
        (self.path / name).write_bytes(data)
        return review_on(Workspace(TODAY, registry.all_rules()), self.paths())


def told(review: Review) -> None:
    """Every finding lies in its text and can be told in every form; no rule raised."""
    for one in review.files:
        assert not one.faults, one.faults
        for finding in one.findings:
            length = len(finding.place.text.content)
            assert 0 <= finding.place.start <= finding.place.end <= length + 1, finding
    for line in cards.cards(review, 80, bold=False):
        line.encode()
    json.loads(review_json.review_json(review))


def _mended(folder: Folder) -> None:
    """Mending leads to a text that is read no worse, and of which nothing certain is left to mend."""
    rounds = Rounds(folder.paths(), TODAY)
    rounds.run()
    for mended in rounds.files.values():
        assert mended.before != mended.after
        mended.after.encode()


Target = Callable[[Folder, bytes], None]
"""Tries an input; raises where something goes wrong."""


def file_target(name: str) -> Target:
    """Reviews with the bytes in the place of a file."""

    def run(folder: Folder, data: bytes) -> None:
        told(folder.review(name, data))

    return run


def mend_target(folder: Folder, data: bytes) -> None:
    """Mends a programme."""
    (folder.path / PLAN).write_bytes(data)
    _mended(folder)


def record_target(folder: Folder, data: bytes) -> None:
    """Reads a record and, where it is one, writes it: it holds the same."""
    name = KNOWN_FINDINGS
    told(folder.review(name, data))
    reading = read(str(folder.path / name))
    if not record_of(reading).broken:
        (folder.path / name).write_text(record_text(_entries(reading)), encoding="utf-8")
        assert _said(again := read(str(folder.path / name))) == _said(reading)
        assert not record_of(again).broken


def _entries(reading: Reading) -> list[dict[str, Any]]:
    return [entry.values for entry in entries_in(reading)]


def _said(reading: Reading) -> list[str]:
    return sorted(map(repr, _entries(reading)))


MOST_STEPS = 20
"""Steps of work that a request may take, of those that are done between messages, before the next one comes."""


class _Writer:
    def __init__(self) -> None:
        self.said = b""

    def write(self, data: bytes) -> None:
        self.said += data

    def close(self) -> None:
        """Nothing to close."""


class FuzzedServer(Server):
    """A server in this process, whose log says what failed."""

    def __init__(self) -> None:
        self.failures: list[str] = []
        super().__init__()
        self.protocol.set_writer(_Writer())

    def log(self, words: str) -> None:
        if " failed (" in words or "nothing is told of" in words:
            self.failures.append(words)


def server_target(folder: Folder, data: bytes) -> None:
    """Handles lines of messages, as an editor sends them; FOLDER in them stands for the folder's address."""
    address = folder.path.as_uri().encode()
    asyncio.run(_served(data.replace(b"FOLDER", address).split(b"\n")))


async def _served(lines: list[bytes]) -> None:
    server = FuzzedServer()
    here = os.getcwd()
    try:
        for line in lines:
            _take(server, line)
            while server.work_while_idle():
                pass
            for _ in range(MOST_STEPS):
                await asyncio.sleep(0)
            assert not server.failures, server.failures
    finally:
        os.chdir(here)
        for task in asyncio.all_tasks() - {asyncio.current_task()}:
            task.cancel()


def handle(server: Server, method: str, params: Any, number: int | None = None) -> None:
    """Takes a message, a request where it has a number."""
    named = {} if number is None else {"id": number}
    _take(server, json.dumps({"jsonrpc": "2.0", "method": method, "params": params, **named}))


def _take(server: Server, body: bytes | str) -> None:
    """Takes a message as the library does that reads the connection; what it refuses is answered there."""
    try:
        message = json.loads(body, object_hook=server.protocol.structure_message)
    except (ValueError, RecursionError, JsonRpcException):
        return
    server.protocol.handle_message(message)


TARGETS: dict[str, Target] = {
    "programme": file_target(PLAN),
    "athlete": file_target("orla.athlete.yaml"),
    "settings": file_target("spotline.yaml"),
    "exercises": file_target("ours.exercises.yaml"),
    "record": record_target,
    "mend": mend_target,
    "server": server_target,
}

_TEXT = {"uri": f"FOLDER/{PLAN}"}
_AT = {"position": {"line": 9, "character": 22}}
_RANGE = {"range": {"start": {"line": 0, "character": 0}, "end": {"line": 20, "character": 0}}}
_OPENED = {"textDocument": _TEXT | {"languageId": "yaml", "version": 1, "text": SOUND[PLAN]}}
_CHANGE = {
    "range": {"start": {"line": 9, "character": 18}, "end": {"line": 9, "character": 22}},
    "text": "sqat",
}

SESSION = b"\n".join(
    json.dumps(
        {"jsonrpc": "2.0", "method": method, "params": params} | ({"id": number} if wants else {})
    ).encode()
    for number, (method, params, wants) in enumerate(
        (
            ("initialize", {"processId": None, "rootUri": "FOLDER", "capabilities": {}}, True),
            ("initialized", {}, False),
            ("textDocument/didOpen", _OPENED, False),
            *(
                (f"textDocument/{what}", {"textDocument": _TEXT} | _AT, True)
                for what in ("hover", "completion")
            ),
            *(
                (f"textDocument/{what}", {"textDocument": _TEXT}, True)
                for what in ("documentSymbol", "codeLens")
            ),
            ("textDocument/inlayHint", {"textDocument": _TEXT} | _RANGE, True),
            (
                "textDocument/didChange",
                {"textDocument": _TEXT | {"version": 2}, "contentChanges": [_CHANGE]},
                False,
            ),
            (
                "textDocument/codeAction",
                {"textDocument": _TEXT, "context": {"diagnostics": []}} | _RANGE,
                True,
            ),
            ("textDocument/rename", {"textDocument": _TEXT, "newName": "front squat"} | _AT, True),
            (
                "textDocument/references",
                {"textDocument": _TEXT, "context": {"includeDeclaration": True}} | _AT,
                True,
            ),
            ("textDocument/documentHighlight", {"textDocument": _TEXT} | _AT, True),
            ("textDocument/definition", {"textDocument": _TEXT} | _AT, True),
            ("workspace/symbol", {"query": "squat"}, True),
            ("workspace/executeCommand", {"command": "spotline.week", "arguments": [_TEXT["uri"], 1]}, True),
            (
                "workspace/didChangeWatchedFiles",
                {"changes": [{"uri": "FOLDER/orla.athlete.yaml", "type": 2}]},
                False,
            ),
            ("textDocument/didClose", {"textDocument": _TEXT}, False),
            ("shutdown", None, True),
        )
    )
)
"""The messages of a short day, a line each."""


def sound_input(name: str) -> bytes:
    """An input of a target with which nothing is wrong."""
    if name == "server":
        return SESSION
    place = {"record": KNOWN_FINDINGS, "mend": PLAN, "settings": "spotline.yaml"}
    file = place.get(name) or next(file for file in SOUND if f".{name}" in file)
    return SOUND[file].encode()
