"""Sheets as an athlete meets them: in Chromium on a phone, at a desk and on paper, and to a validator of HTML.

Accessibility and contrast by axe-core, HTML by html-validate (both npm). Screens are kept for people to look at.
"""

from __future__ import annotations

import json
import re
import subprocess
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.reporters.sheet_html import text
from spotline.lint.sheets.request import sheets

HERE = Path(__file__).parent
ROOT = HERE.parent.parent
TODAY = date(2026, 12, 1)

NAMED = (
    "mara-lower-body-first",
    "kester-calf-loading",
    "boathouse-circuit",
    "bram-winter-strength",
    "ottilie-strong-seventies",
)

LONG = "athlete: {name: Bo, best lifts: {back squat: 100 kg}}\nsessions:\n  - session: A\n    day: monday\n    exercises:\n"
LINE = (
    "      - {exercise: back squat, sets: 4, reps: 6-8, load: 70-75 %, rir: 2, rest: 3 min, tempo: 3-1-X-0,"
    " warm-up sets: 3, note: A note of some length that says what to feel and where to look while lifting.}\n"
)

RULES = {
    "extends": ["html-validate:standard"],
    "rules": {"no-inline-style": "off", "long-title": "off", "no-redundant-role": "off"},
}
"""The size of print is a style of its own on each page."""


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Sheets of examples, of a session of many lines, and of hostile words."""
    folder = tmp_path_factory.mktemp("sheets")
    (folder / ".git").mkdir()
    waived = "waivers: [{rule: exercise-twice, reason: ours}]\n"
    (folder / "long.programme.yaml").write_text(
        "programme: Long\n" + waived + LONG + LINE * 9, encoding="utf-8"
    )
    hostile = LONG.replace("session: A", 'session: "</style><script>x()</script> & größe"') + LINE
    (folder / "hostile.programme.yaml").write_text('programme: "<b onload=x>"\n' + hostile, encoding="utf-8")
    programmes = [*folder.glob("*.programme.yaml"), *(ROOT / "examples" / "programmes").iterdir()]
    for path in programmes:
        name = path.name.partition(".")[0]
        if path.parent == folder or name in NAMED:
            (folder / f"{name}.html").write_text(text(sheets(str(path), TODAY)[0]), encoding="utf-8")
    return folder


@pytest.fixture(scope="module")
def looked(folder: Path, installed: Path, screens: Path) -> list[dict]:
    """What Chromium says of each."""
    shots = screens / "sheets"
    shots.mkdir(parents=True, exist_ok=True)
    command = ["node", str(HERE / "sheets" / "look.mjs"), str(installed / "sheets"), str(shots)]
    done = subprocess.run(
        [*command, *map(str, sorted(folder.glob("*.html")))],
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stderr
    said = [json.loads(line) for line in done.stdout.splitlines()]
    assert len(said) == len(NAMED) + 2
    for one in said:
        for paper in ("A4", "Letter"):
            info = subprocess.run(
                ["pdfinfo", str(shots / f"{one['sheet']}-{paper}.pdf")],
                capture_output=True,
                check=True,
                encoding="utf-8",
            ).stdout
            one["pages"][paper] = int(re.search(r"Pages:\s+(\d+)", info)[1])  # type: ignore[index]
    return said


def test_the_console_is_silent(looked: list[dict]) -> None:
    assert {one["sheet"]: one["console"] for one in looked if one["console"]} == {}


def test_nothing_is_asked_of_anybody_but_the_file_itself(looked: list[dict], folder: Path) -> None:
    for one in looked:
        assert set(one["requests"]) == {(folder / f"{one['sheet']}.html").as_uri()}


def test_axe_finds_no_fault(looked: list[dict]) -> None:
    found = [
        (one["sheet"], size, fault)
        for one in looked
        for size, faults in one["faults"].items()
        for fault in faults
    ]
    assert found == []


def test_nothing_is_wider_than_the_screen(looked: list[dict]) -> None:
    assert all(wider <= 0 for one in looked for wider in one["wider"].values())


def test_a_session_is_one_page_and_can_be_read(looked: list[dict]) -> None:
    for one in looked:
        assert one["pages"] == dict.fromkeys(("A4", "Letter"), one["sections"]), one["sheet"]
        assert min(one["small"]) >= 6, f"print of {one['sheet']} is no less than 6 points"


def test_the_html_is_valid(folder: Path, installed: Path) -> None:
    (folder / ".htmlvalidate.json").write_text(json.dumps({"root": True, **RULES}), encoding="utf-8")
    command = installed / "sheets" / "node_modules" / "html-validate" / "bin" / "html-validate.mjs"
    done = subprocess.run(
        ["node", str(command), *sorted(one.name for one in folder.glob("*.html"))],
        cwd=folder,
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
