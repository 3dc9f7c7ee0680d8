"""What comes a server's way on an ordinary day: half a line typed, odd places, odd texts, a great many documents."""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path
from typing import Any

import pytest

from spotline.tests.benchmark import programme

from .pipe_client import Json, PipeClient

PLAN = """\
programme: Frühling 🌱
athlete: {name: Mara, best lifts: {back squat: 100 kg}}
focus: [legs]
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, load: 80 %, rest: 3 min}
      - {exercise: seated leg curl, sets: 3, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: stiff-leg deadlift, sets: 3, reps: 8, rir: 2, rest: 2 min}
"""

FAULTY = PLAN.replace("back squat,", "back sqat,")

Rules = list[str]


@pytest.fixture(scope="module")
def client(tmp_path_factory: pytest.TempPathFactory) -> Iterator[PipeClient]:
    """A server that outlives all of this without a word in its log."""
    folder = tmp_path_factory.mktemp("team")
    (folder / ".git").mkdir()
    with PipeClient(folder) as client:
        client.initialize()
        yield client
        assert client.shut_down() == 0
        assert client.log() == ""


@pytest.fixture
def opened(client: PipeClient) -> Iterator[Callable[..., list[Json]]]:
    """Opens a text, or gives one that is open a new text, and returns its findings."""
    versions: dict[str, Iterator[int]] = {}

    def become(text: str, name: str = "plan.programme.yaml", uri: str = "") -> list[Json]:
        uri = uri or client.uri(name)
        if uri not in versions:
            versions[uri] = count(1)
            client.open(uri, text, next(versions[uri]))
            return client.findings(uri, 1)
        version = next(versions[uri])
        client.change(uri, version, {"text": text})
        return client.findings(uri, version)

    yield become
    for uri in versions:
        client.close(uri)
        client.findings(uri, None)


def rules(findings: list[Json]) -> Rules:
    return [one["code"] for one in findings]


def asked(client: PipeClient, method: str, uri: str, line: int, character: int) -> Any:
    place = {"line": line, "character": character}
    stretch = {"start": {"line": 0, "character": 0}, "end": {"line": line, "character": character}}
    document = {"textDocument": {"uri": uri}, "position": place, "range": stretch}
    return client.result_of(f"textDocument/{method}", document | {"context": {"diagnostics": []}})


# Half typed


@pytest.mark.parametrize(
    ("last", "rule", "line"),
    [
        ("      - {exercise: plank, sets: ", "bracket-not-closed", 10),
        ("      - {exercise: 'plank", "quote-not-closed", 10),
        ("      - exercise: plank\n       sets: 3\n", None, None),
        ("      - {exercise: plank, sets: 3, note: [a", "bracket-not-closed", 10),
        ("note: a: b", None, 10),
    ],
)
def test_a_half_typed_line_is_one_finding_and_the_tally_stays(
    client: PipeClient, opened: Callable[..., list[Json]], last: str, rule: str | None, line: int | None
) -> None:
    uri = client.uri("plan.programme.yaml")
    opened(PLAN)
    hints = asked(client, "inlayHint", uri, 20, 0)
    assert hints
    whole = opened(PLAN + last)
    (finding,) = (one for one in whole if one["severity"] == 1)
    assert rule in (None, finding["code"])
    assert line in (None, finding["range"]["start"]["line"])
    lines = (PLAN + last).count("\n")
    assert 10 <= finding["range"]["start"]["line"] <= finding["range"]["end"]["line"] <= lines
    assert asked(client, "hover", uri, 7, 22)["contents"]["value"].startswith("**back squat**")
    kept = asked(client, "inlayHint", uri, 20, 0)
    assert [(one["label"], one["position"]) for one in kept] == [
        (one["label"], one["position"]) for one in hints
    ]
    assert rules(opened(PLAN)) == rules(opened(PLAN))


# Odd places


def start(folder: Path | None, cwd: Path) -> PipeClient:
    client = PipeClient(folder, cwd=cwd)
    client.initialize()
    return client


def test_a_file_outside_any_workspace_and_git(tmp_path: Path) -> None:
    elsewhere = tmp_path / "notes"
    elsewhere.mkdir()
    with start(None, tmp_path) as client:
        uri = (elsewhere / "plan.programme.yaml").as_uri()
        client.open(uri, FAULTY)
        assert "exercise-unknown" in rules(client.findings(uri, 1))
        assert client.shut_down() == 0
        assert client.log() == ""


def test_a_file_beside_the_workspace(opened: Callable[..., list[Json]], tmp_path: Path) -> None:
    (tmp_path / "ana.athlete.yaml").write_text("name: Ana\n")
    text = FAULTY.replace("{name: Mara, best lifts: {back squat: 100 kg}}", "ana.athlete.yaml")
    found = rules(opened(text, uri=(tmp_path / "plan.programme.yaml").as_uri()))
    assert "exercise-unknown" in found
    assert "athlete-missing" not in found


def test_an_untitled_buffer(client: PipeClient, opened: Callable[..., list[Json]]) -> None:
    uri = "untitled:Untitled-1"
    assert rules(opened(FAULTY, uri=uri)) == rules(opened(FAULTY))
    assert asked(client, "hover", uri, 7, 50) is not None


def test_a_folder_that_cannot_be_written(opened: Callable[..., list[Json]], tmp_path: Path) -> None:
    shut = tmp_path / "shut"
    shut.mkdir()
    plan = shut / "plan.programme.yaml"
    plan.write_text(FAULTY, encoding="utf-8")
    plan.chmod(0o444)
    shut.chmod(0o555)
    assert "exercise-unknown" in rules(opened(FAULTY, uri=plan.as_uri()))
    shut.chmod(0o755)
    assert os.listdir(shut) == ["plan.programme.yaml"]


def test_a_workspace_behind_a_link(tmp_path: Path) -> None:
    team, link = tmp_path / "team", tmp_path / "link"
    (team / ".git").mkdir(parents=True)
    link.symlink_to(team, target_is_directory=True)
    (team / "ana.athlete.yaml").write_text("name: Ana\nlevel: novice\n")
    text = PLAN.replace("{name: Mara, best lifts: {back squat: 100 kg}}", "ana.athlete.yaml")
    with start(link, tmp_path) as client:
        plan, athlete = client.uri("plan.programme.yaml"), client.uri("ana.athlete.yaml")
        client.open(plan, text)
        assert "best-lift-missing" in rules(client.findings(plan, 1))
        client.open(athlete, "name: Ana\nlevel: novice\nbest lifts: {back squat: 100 kg}\n")
        client.change(plan, 2, {"text": f"{text}# one\n"})
        assert "best-lift-missing" not in rules(client.findings(plan, 2))
        client.read_until_quiet(0.2)
        assert set(client.published) == {plan, athlete}
        assert client.shut_down() == 0


def test_a_document_by_two_ways(
    client: PipeClient, opened: Callable[..., list[Json]], tmp_path: Path
) -> None:
    (tmp_path / "link").symlink_to(tmp_path, target_is_directory=True)
    one, other = ((tmp_path / way / "plan.programme.yaml").as_uri() for way in (".", "link"))
    faulty = rules(opened(FAULTY, uri=one))
    assert "exercise-unknown" not in rules(opened(PLAN, uri=other))
    assert rules(opened(f"{FAULTY}# still\n", uri=one)) == faulty


def test_a_document_that_is_deleted_on_the_disk(
    client: PipeClient, opened: Callable[..., list[Json]], tmp_path: Path
) -> None:
    plan = tmp_path / "plan.programme.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    before = rules(opened(FAULTY, uri=plan.as_uri()))
    plan.unlink()
    changes = {"changes": [{"uri": plan.as_uri(), "type": 3}]}
    client.notify("workspace/didChangeWatchedFiles", changes)
    assert rules(opened(f"{FAULTY}\n", uri=plan.as_uri())) == before
    tmp_path.rmdir()
    assert rules(opened(FAULTY, uri=plan.as_uri())) == before


# Odd texts


@pytest.mark.parametrize(
    "sign", ["\0", "\x07", "\x1b[2J", "\x7f", "\x9b", "\ufffe", "\x85", "\u2028", "\u202e"]
)
def test_signs_that_nobody_sees(opened: Callable[..., list[Json]], sign: str) -> None:
    found = opened(PLAN.replace("Lower", f"Lo{sign}wer") + f"# {sign}\n")
    assert all(one["message"].isprintable() for one in found)
    assert opened(PLAN) is not None


@pytest.mark.parametrize(
    "text",
    [
        f"programme: {'A' * 1_000_000}\n",
        f"programme: {'🏋️ ' * 300_000}\n",
        f"programme: A\nsessions: [{'{session: A}, ' * 500}]\n",
        "[" * 100_000,
        "- " * 50_000,
        "a: " * 50_000,
        "programme: " + "x\n" * 100_000,
        f"programme: {'B' * 5_000_000}\n",
    ],
    ids=[
        "a long line",
        "of long signs",
        "many sessions",
        "brackets",
        "dashes",
        "colons",
        "lines",
        "too much",
    ],
)
def test_enormous_texts(opened: Callable[..., list[Json]], text: str) -> None:
    assert opened(text)
    assert opened(PLAN) is not None


@pytest.mark.parametrize("half", ["\\ud83d", "\\udc00"])
def test_half_a_character(client: PipeClient, opened: Callable[..., list[Json]], half: str) -> None:
    uri = client.uri("plan.programme.yaml")
    opened(PLAN)
    text = json.dumps(PLAN.replace("Lower", "Lo?wer")).replace("?", half)
    document = json.dumps({"uri": uri, "version": 2})
    params = f'{{"textDocument": {document}, "contentChanges": [{{"text": {text}}}]}}'
    body = f'{{"jsonrpc": "2.0", "method": "textDocument/didChange", "params": {params}}}'.encode()
    client.send_bytes(b"Content-Length: %d\r\n\r\n%s" % (len(body), body))
    (broken,) = (one for one in client.findings(uri, 2) if one["code"] == "broken-character")
    assert broken["range"] == {"start": {"line": 4, "character": 15}, "end": {"line": 4, "character": 16}}


@pytest.mark.parametrize("marks", [1, 2])
def test_byte_order_marks(opened: Callable[..., list[Json]], marks: int) -> None:
    """The first is none of the text's, another one is; the client counts them all."""
    found = {
        one["code"]: one["range"]["start"]
        for one in opened("\ufeff" * marks + PLAN.replace("focus", "fokus"))
    }
    assert found["key-unknown"] == {"line": 2, "character": 0}
    assert found.get("hidden-character") == (None if marks == 1 else {"line": 0, "character": 1})


def test_a_long_programme_pasted_at_once(opened: Callable[..., list[Json]]) -> None:
    long = programme(3000)
    assert opened("") is not None
    found = rules(opened(long))
    assert found
    assert rules(opened(PLAN)) != found
    assert rules(opened(long)) == found


# A great many


def test_two_hundred_documents_that_are_never_closed(client: PipeClient) -> None:
    uris = [client.uri(f"plan-{number}.programme.yaml") for number in range(200)]
    for uri in uris:
        client.open(uri, FAULTY)
    first = rules(client.findings(uris[0], 1))
    assert "exercise-unknown" in first
    assert all(rules(client.findings(uri, 1)) == first for uri in uris)
    client.change(uris[77], 2, {"text": PLAN})
    assert "exercise-unknown" not in rules(client.findings(uris[77], 2))
    client.open(uris[77], FAULTY, 3)
    assert rules(client.findings(uris[77], 3)) == first
    for uri in uris:
        client.close(uri)
        assert client.findings(uri, None) == []
