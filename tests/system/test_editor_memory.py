"""The server stays as large as it is, however long the coach types."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import count
from pathlib import Path
from random import Random

from spotline.tests.benchmark import programme
from spotline.tests.editor.edits import change, edited
from spotline.tests.editor.pipe_client import PipeClient

CHANGES = 20_000
WARM = 2_000
"""Changes after which all that is kept for good is there."""

AT_ONCE = 5
"""Changes that are sent before the findings of the last of them are waited for."""

GROWTH, LATER = 15.0, 6.0
"""Megabytes that may be added at all, and in the second half: more comes in when much is edited between two pauses."""


def texts(first: str, chance: Random) -> Iterator[str]:
    """A programme again and again, each time after one more edit; from time to time as it was at first."""
    text, before = first, [first]
    for number in count(1):
        text = edited(text, chance, before)
        if number % 50 == 0 or not 0.7 < len(text) / len(first) < 1.3:
            text = first
        before = [*before[-99:], text]
        yield text


def megabytes(client: PipeClient) -> float:
    """The memory that the server holds."""
    status = Path(f"/proc/{client.process.pid}/status").read_text(encoding="ascii")
    line = next(line for line in status.splitlines() if line.startswith("VmRSS:"))
    return int(line.split()[1]) / 1024


def sizes(folder: Path, changes: int, at_once: int, every: int) -> list[float]:
    """The size of the server, at rest, after every so many changes of a programme of 400 lines."""
    found = []
    (folder / ".git").mkdir()
    text = programme(400)
    with PipeClient(folder) as client:
        client.initialize()
        uri = client.uri("plan.programme.yaml")
        client.open(uri, text)
        client.findings(uri, 1)
        typed = texts(text, Random(7))
        for version in range(2, changes + 2):
            new = next(typed)
            client.change(uri, version, change(text, new, "utf-16"))
            text = new
            if version % at_once == 0:
                client.findings(uri, version)
            if (version - 1) % every == 0:
                client.read_until_quiet(1.0)  # the coach thinks: time to tidy up
                found.append(megabytes(client))
        assert client.shut_down() == 0
        assert client.log() == ""
    return found


def test_it_does_not_grow(tmp_path: Path) -> None:
    found = sizes(tmp_path, CHANGES, AT_ONCE, WARM)
    shown = f"MB after every {WARM} changes: {found}"
    assert found[-1] < found[0] + GROWTH, shown
    assert found[-1] < found[len(found) // 2] + LATER, shown
