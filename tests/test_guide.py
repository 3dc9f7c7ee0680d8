"""The coach's guide: its pages are as they are made, every key has its topic, and all that it says is read."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from spotline.lint.guide.show import page, pages, topics
from spotline.lint.syntax.builder import parse
from spotline.tests import write_guide

HEAD = {"programme": "P", "athlete": "{name: Ada}", "weeks": "4"}
LINE = "{exercise: back squat, sets: 3, reps: 5}"
TOPICS = write_guide.topics()
ROWS = [row for topic in TOPICS for row in topic["rows"]]


def spotline(*words: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "spotline", *words]
    return subprocess.run(
        command,
        env={**os.environ, "COLUMNS": "80"},
        cwd=Path(__file__).parent.parent,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


def programme(row: dict[str, str]) -> str:
    """A whole file with what a row writes."""
    words, at = row["write"], row.get("in", "line")
    head, session, line = dict(HEAD), f"{{session: Lower A, exercises: [{LINE}]}}", LINE
    more = ""
    if at == "line":
        line = words if words.startswith("{") else _line(words)
        session = f"{{session: Lower A, exercises: [{line}]}}"
    elif at == "session":
        more = f"  - {words}\n" if words.startswith("{") else ""
        session = session if more else f"{{session: Lower A, {words}, exercises: [{LINE}]}}"
    if at == "athlete":
        name = "" if "name" in parse("row", f"{{{words}}}").root.plain else "name: Ada, "
        head["athlete"] = f"{{{name}{words}}}"
    if at == "programme":
        said = parse("row", f"{{{words}}}").root.plain
        head = {key: value for key, value in head.items() if key not in said}
        if "athletes" in said:
            head.pop("athlete")
        more_head = words if len(said) == 1 else ""
        head_text = "".join(f"{key}: {value}\n" for key, value in head.items())
        if more_head:
            return f"{head_text}{more_head}\nsessions:\n  - {session}\n"
        keys = "".join(f"{key}: {value}\n" for key, value in said.items())
        return f"{head_text}{keys}sessions:\n  - {session}\n"
    return "".join(f"{key}: {value}\n" for key, value in head.items()) + f"sessions:\n  - {session}\n{more}"


def _line(words: str) -> str:
    """A whole line from some of its keys."""
    said = parse("row", f"{{{words}}}").root.plain
    needs_sets = not {"sets", "work", "every"} & said.keys()
    return f"{{exercise: back squat, {'sets: 3, ' if needs_sets else ''}{words}}}"


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["paper"])
def test_what_the_guide_says_to_write_is_read_without_a_finding(row, reviewed) -> None:
    text = programme(row)
    found = [finding for file in reviewed(text).files for finding in file.findings]
    assert [one.counted for one in found if not one.why] == [], text
    named = {one.rule for one in found}
    assert not named & {
        "exercise-unknown",
        "read-two-ways",
        "demand-unclear",
        "waiver-unused",
        "sets-not-read",
    }


def test_the_pages_are_as_they_are_made() -> None:
    assert write_guide.PAGES.read_text(encoding="utf-8") == write_guide.guide(), (
        "run python tests/write_guide.py"
    )
    assert write_guide.main(["--check"]) == 0


def test_a_page_that_is_stale_is_told_and_written(tmp_path, monkeypatch, capsys) -> None:
    stale = tmp_path / "pages.md"
    stale.write_text("old", encoding="utf-8")
    monkeypatch.setattr(write_guide, "PAGES", stale)
    monkeypatch.setattr(write_guide, "ROOT", tmp_path)
    monkeypatch.setattr(write_guide, "guide", lambda: "new")
    assert write_guide.main(["--check"]) == 1
    assert stale.read_text(encoding="utf-8") == "old"
    assert write_guide.main([]) == 0
    assert stale.read_text(encoding="utf-8") == "new"


@pytest.mark.parametrize("file", ["programme", "athlete"])
def test_every_key_of_a_programme_or_athlete_file_has_its_topic(file: str) -> None:
    whole = write_guide.schema(file)
    kinds = {"": whole, **whole["$defs"]}
    told: dict[str, set[str]] = {}
    for topic in TOPICS:
        if topic.get("file", "programme") != file:
            continue
        for kind, keys in topic["keys"].items():
            told.setdefault(kind, set()).update(keys)
    for kind, part in kinds.items():
        if part.get("additionalProperties") is False:
            assert told.get(kind, set()) == set(part["properties"]), kind


@pytest.mark.parametrize("kind", ["weeks", "clocks", "pairs"])
def test_lines_of_the_examples_are_examples(kind: str) -> None:
    examples = "".join(
        path.read_text(encoding="utf-8") for path in (write_guide.ROOT / "examples" / "programmes").iterdir()
    )
    shown = [line[2:] for line in pages()[kind] if line.startswith("- {")]
    assert shown
    assert all(line in examples for line in shown)


@pytest.mark.parametrize("name", [topic["topic"] for topic in TOPICS])
def test_a_page_reads_well_in_80_columns(name: str) -> None:
    lines = list(page(name, 80, bold=False))
    assert max(map(len, lines)) <= 80, max(lines, key=len)
    assert not any("\x1b" in line or line.startswith(("|", "#", "```")) for line in lines)
    assert next(page(name, 80, bold=True)) == f"\x1b[1m{name.capitalize()}\x1b[0m"


def test_the_command_lists_topics_and_shows_pages() -> None:
    listed = spotline("guide")
    assert listed.returncode == 0
    assert all(topic["topic"] in listed.stdout for topic in TOPICS)
    assert listed.stdout.splitlines() == list(topics(80))
    shown = spotline("guide", "Weeks")
    assert shown.returncode == 0
    assert "load: {1-2: 70 %, 3-4: 75 %}" in shown.stdout
    assert "\x1b" not in shown.stdout
    assert len(spotline("guide", "all").stdout) > 8 * len(shown.stdout)


@pytest.mark.parametrize(("word", "meant"), [("wekes", "weeks"), ("clock", "clocks"), ("loads", "load")])
def test_an_unknown_topic_is_told_with_the_nearest(word: str, meant: str) -> None:
    done = spotline("guide", word)
    assert done.returncode == 2
    assert f"there is no topic '{word}'; did you mean {meant}?" in done.stderr
