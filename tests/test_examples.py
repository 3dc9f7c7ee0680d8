"""The examples as a coach meets them: the sound ones pass, the faulty ones say what is pinned here."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.results import Review
from spotline.lint.project.review import review

ROOT = Path(__file__).parent.parent
EXAMPLES = ROOT / "examples"
PINNED = Path(__file__).parent / "faulty.txt"
TODAY = date(2026, 11, 25)


def reviewed(*paths: str, on: date = TODAY) -> Review:
    before = os.getcwd()
    os.chdir(ROOT)
    try:
        return review(list(paths), on)
    finally:
        os.chdir(before)


def spotline(*words: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "spotline", *words]
    width = {**os.environ, "COLUMNS": "96"}
    return subprocess.run(
        command, cwd=ROOT, env=width, capture_output=True, text=True, timeout=120, check=False
    )


@pytest.mark.parametrize("on", [TODAY, date(2031, 1, 1)])
def test_a_search_through_the_examples_passes_and_leaves_the_faulty_ones_out(on: date) -> None:
    found = reviewed("examples", on=on)
    assert found.exit_code == 0
    assert not [
        finding.counted for one in found.files for finding in one.findings if finding.severity != "note"
    ]
    assert not any("faulty" in one.name for one in found.files)
    kinds = [one.kind for one in found.files]
    assert kinds.count("programme") >= 8
    assert kinds.count("athlete") >= 8


def test_every_example_is_counted() -> None:
    for one in reviewed("examples").files:
        if one.kind == "programme":
            assert one.ledger is not None
            assert one.ledger.all_sets(), one.name
            assert all(entry.sure for _, entry in one.ledger.entries()), one.name


def test_the_faulty_examples_say_what_is_pinned() -> None:
    said = spotline("review", "examples/faulty", "--as", "lines")
    assert said.returncode == 1
    assert said.stdout == PINNED.read_text(encoding="utf-8")


def test_what_is_pinned_does_not_change_with_the_day() -> None:
    now, later = (reviewed("examples/faulty", on=on) for on in (TODAY, date(2031, 1, 1)))
    said = [
        [(one.rule, one.counted) for file in result.files for one in file.findings] for result in (now, later)
    ]
    assert said[0] == said[1]


def test_the_readmes_files_are_sound(tmp_path: Path) -> None:
    """Every YAML text in the README is what a reader may copy: a programme, the settings, lines of both."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    texts = re.findall(r"```yaml\n(.*?)```", readme, re.DOTALL)
    programme, settings = (
        next(one for one in texts if one.startswith(head)) for head in ("programme:", "preset:")
    )
    (tmp_path / "athletes").mkdir()
    (tmp_path / "plans").mkdir()
    (tmp_path / "athletes" / "mara.athlete.yaml").write_text("name: Mara\n", encoding="utf-8")
    (tmp_path / "boathouse.exercises.yaml").write_text(
        "exercises: [{name: boathouse hinge, implement: sandbag, path: {hip: [90, 0], knee: 15}}]\n",
        encoding="utf-8",
    )
    (tmp_path / "spotline.yaml").write_text(settings, encoding="utf-8")
    waiver = next(one for one in texts if one.startswith("waivers:"))
    (tmp_path / "plans" / "a.programme.yaml").write_text(programme + waiver, encoding="utf-8")
    found = review([str(tmp_path)], TODAY)
    unread = [one.counted for file in found.files for one in file.findings if one.severity == "error"]
    assert unread == []
    assert not found.failed


def test_the_faulty_examples_meet_most_rules() -> None:
    leading = [lead for one in reviewed("examples/faulty").files for lead in one.findings]
    rules = {finding.rule for lead in leading for finding in (lead, *lead.follows)}
    assert {
        "antagonist-imbalance",
        "exercise-unknown",
        "hip-hinge-missing",
        "knee-flexion-missing",
        "number-implausible",
        "rir-rpe-contradict",
        "sessions-too-close",
        "weekly-sets-over-limit",
        "key-unknown",
        "value-unreadable",
        "date-impossible",
        "duplicate-key",
    } <= rules


def test_the_readme_quotes_a_real_card() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    quoted = re.search(r"```text\n(.*?)```", readme, re.DOTALL)
    assert quoted is not None
    said = spotline("review", "examples/faulty/unbalanced.programme.yaml", "--as", "cards")
    assert quoted.group(1).strip() in said.stdout


@pytest.mark.parametrize("mended", [False, True])
def test_a_hand_written_lower_body_programme_lacks_a_curl_until_it_has_one(
    tmp_path: Path, mended: bool
) -> None:
    curl = "      - {exercise: seated leg curl, sets: 3, reps: 10-12}\n" if mended else ""
    path = tmp_path / "legs.programme.yaml"
    path.write_text(
        "programme: Legs\ngoal: hypertrophy\nfocus: [legs]\nweeks: 6\nsessions:\n"
        "  - session: Lower\n    day: monday\n    exercises:\n"
        "      - {exercise: back squat, sets: 3, reps: 6-8}\n"
        "      - {exercise: leg extension, sets: 2, reps: 10-12}\n"
        "      - {exercise: stiff-leg deadlift, sets: 3, reps: 6-8}\n" + curl,
        encoding="utf-8",
    )
    found = [
        one for one in review([str(path)], TODAY).files[0].findings if one.rule == "knee-flexion-missing"
    ]
    assert bool(found) is not mended
    for finding in found:
        assert finding.severity == "warning"
        assert finding.place.excerpt == "stiff-leg deadlift"
        assert finding.counted == "3 sets of hip hinges, no knee flexion."
        assert finding.weeks == (1, 2, 3, 4, 5, 6)
