"""The quick fix that is worked out once it is chosen: at the end of the pipe, as a client asks for it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from spotline.tests.editor.pipe_client import CAPABILITIES, PipeClient
from spotline.tests.solving.faulty import FAULTS, SOUND, faulty

NAME = "plan.programme.yaml"

RESOLVES = {"dataSupport": True, "resolveSupport": {"properties": ["edit"]}}

CANCELLED = -32800
"""The protocol's number for a request that its client has taken back."""


def able(code_action: dict[str, Any]) -> dict[str, Any]:
    """The capabilities of a client that says so of code actions."""
    document = CAPABILITIES["textDocument"] | {"codeAction": code_action}
    return CAPABILITIES | {"textDocument": document}


@pytest.fixture
def client(tmp_path: Path) -> Iterator[PipeClient]:
    (tmp_path / ".git").mkdir()
    with PipeClient(tmp_path) as one:
        yield one


def actions(client: PipeClient, text: str, rule: str) -> list[dict[str, Any]]:
    """The titles of what a client is offered for the first finding of a rule."""
    uri = client.uri(NAME)
    client.open(uri, text)
    found = next(one for one in client.findings(uri, 1) if one["code"] == rule)
    params = {"textDocument": {"uri": uri}, "range": found["range"], "context": {"diagnostics": [found]}}
    answer: list[dict[str, Any]] = client.result_of("textDocument/codeAction", params)
    return answer


def to_work_out(found: list[dict[str, Any]], rule: str) -> dict[str, Any]:
    """The one that is to be worked out."""
    (one,) = [action for action in found if action["title"].endswith(f"that clears {rule}")]
    assert "edit" not in one
    return one


def applied(text: str, edit: dict[str, Any], uri: str) -> str:
    """The text, of ASCII only, after a client has made an edit of it alone."""
    (changes,) = edit["documentChanges"]
    assert changes["textDocument"]["uri"] == uri
    starts = [0]
    for line in text.splitlines(keepends=True):
        starts.append(starts[-1] + len(line))
    for one in sorted(changes["edits"], key=lambda one: -one["range"]["start"]["line"]):
        start, end = (
            starts[one["range"][at]["line"]] + one["range"][at]["character"] for at in ("start", "end")
        )
        text = text[:start] + one["newText"] + text[end:]
    return text


def told(client: PipeClient) -> list[str]:
    """What the coach was told."""
    return [one["params"]["message"] for one in client.messages if one["method"] == "window/showMessage"]


@pytest.mark.parametrize("fault", ["much pressing", "one heavy week", "no knee flexion"])
def test_the_edit_comes_after_the_choice_and_clears_the_finding(client: PipeClient, fault: str) -> None:
    text, rule = FAULTS[fault]
    client.initialize(capabilities=able(RESOLVES))
    chosen = to_work_out(actions(client, text, rule), rule)
    resolved = client.result_of("codeAction/resolve", chosen)
    after = applied(text, resolved["edit"], client.uri(NAME))
    client.change(client.uri(NAME), 2, {"text": after})
    assert rule not in {one["code"] for one in client.findings(client.uri(NAME), 2)}
    (words,) = told(client)
    assert "Costs: " in words


def test_open_texts_of_other_files_are_what_counts(client: PipeClient) -> None:
    athlete = "name: Bo\nlevel: intermediate\ndays: [monday, tuesday, thursday, friday, saturday]\n"
    path = client.uri("bo.athlete.yaml")
    assert client.folder is not None
    (client.folder / "bo.athlete.yaml").write_text(athlete, encoding="utf-8")
    client.initialize(capabilities=able(RESOLVES))
    text, rule = FAULTS["legs two days running"]
    text = text.replace(text.split("\n")[1], "athlete: bo.athlete.yaml")
    free = athlete.replace(", saturday", ", sunday")
    client.open(path, free)
    chosen = to_work_out(actions(client, text, rule), rule)
    after = applied(text, client.result_of("codeAction/resolve", chosen)["edit"], client.uri(NAME))
    assert "day: sunday" in after


def test_a_client_that_cannot_wait_is_offered_none(client: PipeClient) -> None:
    text, rule = FAULTS["much pressing"]
    client.initialize(capabilities=able({"dataSupport": True}))
    assert not [one for one in actions(client, text, rule) if "Work out" in one["title"]]


def test_what_only_the_coach_knows_is_not_worked_out(client: PipeClient) -> None:
    text, rule = faulty(("back squat, sets: 3", "back sqat, sets: 3")), "exercise-unknown"
    client.initialize(capabilities=able(RESOLVES))
    assert not [one for one in actions(client, text, rule) if "Work out" in one["title"]]


def test_where_nothing_is_found_the_coach_is_told_why(client: PipeClient) -> None:
    text, rule = faulty(("minutes: 70", "minutes: 5")), "session-too-long"
    client.initialize(capabilities=able(RESOLVES))
    resolved = client.result_of("codeAction/resolve", to_work_out(actions(client, text, rule), rule))
    assert "edit" not in resolved
    (words,) = told(client)
    assert words.startswith(f"No change was found that clears {rule}. ")


def test_a_change_meanwhile_ends_it(client: PipeClient) -> None:
    text, rule = FAULTS["much pressing"]
    client.initialize(capabilities=able(RESOLVES))
    chosen = to_work_out(actions(client, text, rule), rule)
    number = client.request("codeAction/resolve", chosen)
    client.change(client.uri(NAME), 2, {"text": SOUND})
    assert "edit" not in client.response(number)["result"]
    assert told(client) == ["The file has changed meanwhile: ask again."]


def test_it_can_be_cancelled_and_others_are_answered_meanwhile(client: PipeClient) -> None:
    text, rule = FAULTS["little time"]
    client.initialize(capabilities=able(RESOLVES))
    number = client.request("codeAction/resolve", to_work_out(actions(client, text, rule), rule))
    place = {"textDocument": {"uri": client.uri(NAME)}, "position": {"line": 9, "character": 24}}
    assert client.result_of("textDocument/hover", place)
    assert number not in client._answers
    client.notify("$/cancelRequest", {"id": number})
    assert client.response(number)["error"]["code"] == CANCELLED


@pytest.mark.parametrize("data", [None, {}, {"uri": 3, "version": "x", "line": "y"}, "x", [1]])
def test_an_action_that_is_none_of_ours_comes_back_as_it_is(client: PipeClient, data: object) -> None:
    client.initialize(capabilities=able(RESOLVES))
    actions(client, *FAULTS["much pressing"])
    foreign = {"title": "x"} if data is None else {"title": "x", "data": data}
    assert client.result_of("codeAction/resolve", foreign) == foreign
    assert told(client) == []
