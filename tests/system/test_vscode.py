"""The extension in VS Code itself: code-server in Chromium, driven as a coach would by vscode/drive.mjs.

Its pictures are kept in the folder of screens, under vscode.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import socket
import subprocess
import sys
import zipfile
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlunsplit

import pytest

from spotline.lint.version import VERSION
from spotline.schema import text

HERE = Path(__file__).parent
ROOT = HERE.parent.parent
EXTENSION = ROOT / "lint" / "editor" / "vscode"
COMMAND = Path(sys.prefix) / "bin" / "spotline"

SETTINGS = {
    "chat.commandCenter.enabled": False,
    "editor.fontFamily": "DejaVu Sans Mono",
    "editor.minimap.enabled": False,
    "extensions.autoCheckUpdates": False,
    "extensions.autoUpdate": False,
    "files.autoSave": "off",
    "telemetry.telemetryLevel": "off",
    "update.mode": "none",
    "workbench.colorTheme": "Default Light Modern",
    "workbench.secondarySideBar.defaultVisibility": "hidden",
    "workbench.startupEditor": "none",
    "workbench.tips.enabled": False,
}
"""What keeps the window quiet; nothing that the extension needs."""


@pytest.fixture(scope="module")
def package() -> Path:
    """The extension as it stands, packaged."""
    subprocess.run(["node", "package.js"], cwd=EXTENSION, check=True, capture_output=True)
    return EXTENSION / "dist" / "spotline.vsix"


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A team's folder under git, with programmes that are wrong on purpose."""
    folder = tmp_path_factory.mktemp("team") / "coaching"
    shutil.copytree(ROOT / "examples" / "faulty", folder)
    (folder / ".gitignore").write_text(".venv\n", encoding="utf-8")
    subprocess.run(["git", "init", "--quiet", str(folder)], check=True)
    return folder


def review(folder: Path, name: str) -> list[dict]:
    """What the command finds in a file as it lies on disk."""
    command = [str(COMMAND), "review", name, "--as", "json"]
    printed = subprocess.run(command, cwd=folder, stdout=subprocess.PIPE, check=False).stdout
    return json.loads(printed)["findings"]


@pytest.fixture(scope="module")
def found(folder: Path) -> list[dict]:
    """What the command found in the programme before anybody mended it."""
    return review(folder, "slips.programme.yaml")


def surroundings(base: Path) -> dict[str, str]:
    """An environment from which no spotline is found: not on PATH, and no home of the tester's."""
    kept = {name: os.environ[name] for name in ("LANG", "TMPDIR") if name in os.environ}
    named = os.environ["PATH"].split(os.pathsep)
    path = os.pathsep.join(one for one in named if not (Path(one) / "spotline").exists())
    return kept | {"HOME": str(base), "PATH": path}


def free_port() -> int:
    with socket.create_server(("127.0.0.1", 0)) as listener:
        return listener.getsockname()[1]


@pytest.fixture(scope="module")
def window(
    installed: Path, package: Path, folder: Path, screens: Path, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[str]:
    """The address of a window on the folder, with the extension installed and no spotline to be found."""
    base = tmp_path_factory.mktemp("vscode")
    (base / "data" / "User").mkdir(parents=True)
    (base / "data" / "User" / "settings.json").write_text(json.dumps(SETTINGS), encoding="utf-8")
    (base / "config.yaml").write_text("auth: none\n", encoding="utf-8")
    program = installed / "vscode" / "node_modules" / "code-server" / "out" / "node" / "entry.js"
    command = ["node", str(program), "--config", str(base / "config.yaml")]
    command += ["--user-data-dir", str(base / "data"), "--extensions-dir", str(base / "extensions")]
    env = surroundings(base)
    subprocess.run([*command, "--install-extension", str(package)], env=env, check=True, capture_output=True)
    port = free_port()
    command += ["--bind-addr", f"127.0.0.1:{port}", "--disable-telemetry", "--disable-update-check"]
    command += ["--disable-workspace-trust", "--disable-getting-started-override"]
    shutil.rmtree(screens / "vscode", ignore_errors=True)
    (screens / "vscode").mkdir(parents=True)
    with (screens / "vscode" / "code-server.txt").open("w", encoding="utf-8") as log:
        server = subprocess.Popen(command, env=env, stdout=log, stderr=subprocess.STDOUT)
    yield urlunsplit(("http", f"127.0.0.1:{port}", "/", f"folder={folder}", ""))
    server.terminate()
    server.wait(timeout=20)


@pytest.fixture(scope="module")
def seen(window: str, found: list[dict], installed: Path, folder: Path, screens: Path) -> dict:
    """What the coach saw, from the first look without a server to the table of a week."""
    told = {
        "url": window,
        "browser": shutil.which("chromium"),
        "installed": str(installed / "vscode"),
        "environment": sys.prefix,
        "folder": str(folder),
        "screens": str(screens / "vscode"),
    }
    command = ["node", str(HERE / "vscode" / "drive.mjs"), json.dumps(told)]
    done = subprocess.run(command, stdout=subprocess.PIPE, encoding="utf-8", check=False, timeout=1200)
    seen = json.loads(done.stdout)
    (screens / "vscode" / "seen.json").write_text(
        json.dumps(seen, indent=2, ensure_ascii=False), encoding="utf-8"
    )
    assert "fault" not in seen, seen["fault"]
    return seen


# The parts that need no editor


def test_the_parts_that_need_no_editor(package: Path) -> None:
    env = os.environ | {
        "SCHEMAS": str(EXTENSION / "dist" / "extension" / "schemas"),
        "SPOTLINE": str(COMMAND),
    }
    command = ["node", "--test", "--test-reporter=tap", *map(str, (HERE / "vscode").glob("*.test.mjs"))]
    done = subprocess.run(command, env=env, capture_output=True, encoding="utf-8", check=False)
    assert done.returncode == 0, done.stdout
    assert "# skipped 0" in done.stdout
    assert "# todo 0" in done.stdout


def test_the_package_holds_what_stands_elsewhere_in_the_project(package: Path) -> None:
    with zipfile.ZipFile(package) as packed:
        names = {name.removeprefix("extension/") for name in packed.namelist()}
        manifest = json.loads(packed.read("extension/package.json"))
        schemas = {
            Path(one["url"]).stem: packed.read(f"extension/{one['url'].removeprefix('./')}").decode()
            for one in manifest["contributes"]["yamlValidation"]
        }
        icon = packed.read("extension/icon.png")
    assert manifest["version"] == VERSION
    assert schemas == {name: text(name) for name in ("programme", "athlete", "exercises", "team")}
    assert icon[:8] == b"\x89PNG\r\n\x1a\n"
    assert names >= {"LICENSE.txt", "THIRD-PARTY-NOTICES.txt", "extension.cjs", "readme.md"}
    assert not any(name.startswith(("node_modules", "src")) for name in names)


def test_the_listing_has_its_pictures_where_the_repository_has_an_address(
    package: Path, tmp_path: Path
) -> None:
    address = urlunsplit(("https", "example.org", "/team/spotline", "", ""))
    subprocess.run(
        ["node", "package.js", "--repository", address, "--to", str(tmp_path / "listed")],
        cwd=EXTENSION,
        check=True,
        capture_output=True,
    )
    with zipfile.ZipFile(tmp_path / "listed" / "spotline.vsix") as packed:
        manifest = json.loads(packed.read("extension/package.json"))
        listing = packed.read("extension/readme.md").decode()
    assert manifest["repository"]["url"] == f"{address}.git"
    pictures = re.findall(r"!\[.+\]\((.*)\)", listing)
    assert pictures
    for picture in pictures:
        local = picture.removeprefix(f"{address}/raw/main/")
        assert (ROOT / local).read_bytes()[:8] == b"\x89PNG\r\n\x1a\n"
    with zipfile.ZipFile(package) as packed:
        assert "![" not in packed.read("extension/readme.md").decode()
        assert "repository" not in json.loads(packed.read("extension/package.json"))


def test_the_walkthrough_shows_what_is_there(package: Path) -> None:
    with zipfile.ZipFile(package) as packed:
        names = set(packed.namelist())
        manifest = json.loads(packed.read("extension/package.json"))
        changes = packed.read("extension/changelog.md").decode()
        (walkthrough,) = manifest["contributes"]["walkthroughs"]
        commands = {one["command"] for one in manifest["contributes"]["commands"]}
        for step in walkthrough["steps"]:
            assert f"extension/{step['media']['image']}" in names
            assert len(packed.read(f"extension/{step['media']['image']}")) > 2000
            assert set(re.findall(r"\(command:([\w.]+)\)", step["description"])) <= commands
    assert f"\n## {VERSION}\n" in changes, "what is new in this version"


def test_every_setting_is_described_there_and_in_its_readme() -> None:
    manifest = json.loads((EXTENSION / "package.json").read_text(encoding="utf-8"))
    properties = manifest["contributes"]["configuration"]["properties"]
    readme = (EXTENSION / "README.md").read_text(encoding="utf-8")
    assert all(one.get("description") or one.get("markdownDescription") for one in properties.values())
    assert {name for name in properties if f"`{name}`" in readme} == set(properties)
    titles = [f"**{one['category']}: {one['title']}**" for one in manifest["contributes"]["commands"]]
    assert [title for title in titles if title not in readme] == []


# No server yet


def test_one_sentence_says_how_to_get_the_server_and_says_it_once(seen: dict) -> None:
    assert seen["absence"] == (
        'spotline is not found: run pip install "spotline[editor]" in this workspace\'s Python environment, '
        "or set its path."
    )
    assert seen["absenceButtons"] == ["Open the setting"]
    assert seen["absenceAgain"] == 0


def test_keys_and_values_come_from_the_schema_meanwhile(seen: dict) -> None:
    assert next(label.split(",")[0] for label in seen["schemaKeys"]) == "phase"
    assert {label.split(",")[0] for label in seen["schemaValues"]} == {
        "build",
        "in-season",
        "taper",
        "test",
        "return",
    }


# With the server


def test_the_list_of_problems_is_what_the_command_finds(seen: dict, found: list[dict]) -> None:
    rows = [row for row in seen["problems"] if " spotline " in row][: len(found)]
    for finding in found:
        place = f"spotline {finding['rule']} [Ln {finding['line']}, Col {finding['column']}]"
        words = [finding[part] for part in ("counted", "wanted", "change") if finding[part]]
        said = [row for row in rows if place in row and all(word in row for word in words)]
        assert len(said) == 1, f"{place} {words}\n{rows}"


def test_what_is_wrong_is_underlined(seen: dict, found: list[dict]) -> None:
    assert seen["squiggles"] >= 10


def test_a_finding_is_read_where_it_stands(seen: dict) -> None:
    assert "`back sqat` is not in the catalogue" in seen["findingHover"]
    assert "exercise-unknown" in seen["findingHover"]


def test_a_quick_fix_mends_the_file(seen: dict, found: list[dict], folder: Path) -> None:
    assert seen["fixed"]
    before = [one for one in found if "back sqat" in one["counted"]]
    after = [one for one in review(folder, "slips.programme.yaml") if "back sqat" in one["counted"]]
    assert before
    assert not after
    assert "exercise: back squat, sets: 3, reps: 6-8" in (folder / "slips.programme.yaml").read_text(
        encoding="utf-8"
    )


def test_a_waiver_waits_for_its_reason(seen: dict, folder: Path) -> None:
    assert seen["waiver"].strip() == "# spotline: waive number-implausible because it is a test of grip"
    after = review(folder, "slips.programme.yaml")
    assert not [one for one in after if one["rule"] == "number-implausible" and "40 sets" in one["counted"]]


def test_a_rules_name_opens_its_page(seen: dict) -> None:
    assert "more-reps-than-load-allows" in seen["rulePage"]
    assert {"exercise-sets-high", "antagonist-imbalance"} <= set(seen["rulePicks"])
    assert "exercise-sets-high" in seen["chosenPage"]


HINTS = (
    "- session: Chest and legs session: chest 13, upper chest 8.5",
    "load: 140 kg = 156 % 1RM",
    "sessions: a week: chest 20, ",
)


def test_the_week_is_counted_in_the_text(seen: dict) -> None:
    assert [hint for hint in HINTS if not any(hint in line for line in seen["lines"])] == []
    assert "load: 75 % = 90 kg" in seen["kilograms"]


def test_an_exercise_says_what_it_trains(seen: dict) -> None:
    assert "quadriceps" in seen["exerciseHover"].lower()


def test_exercises_are_completed(seen: dict) -> None:
    labels = [label.partition(",")[0] for label in seen["exercises"]]
    assert {"hamstring walkout", "glute-ham raise"} <= set(labels)


def test_a_click_shows_the_weeks_table(seen: dict) -> None:
    assert seen["lenses"]
    assert "Week 1 of 5" in seen["table"]
    assert re.search(r"quadriceps\s+12\s+12\s+at most 20\s+Mon, Tue", seen["table"])
    assert re.search(r"Nothing.*: hamstrings, ", seen["table"])
    assert re.search(r"chest\s+21 over\s+21\s+at most 20\s+Mon, Tue", seen["tableAfter"]), (
        "it follows what is typed"
    )
    assert not any("Untitled" in tab for tab in seen["tabs"])


def test_settings_are_followed_at_once(seen: dict) -> None:
    assert seen["quiet"]["lenses"] == []
    assert [hint for hint in HINTS if any(hint in line for line in seen["quiet"]["lines"])] == []
    assert any("load: 140 kg, rest" in line for line in seen["quiet"]["lines"])
    assert seen["wrongPath"].startswith("No spotline answers at nowhere/spotline: ")


def test_a_text_without_a_name_is_reviewed(seen: dict) -> None:
    assert "`power lifting` is not a goal" in seen["unnamed"]


def test_a_value_typed_in_full_ends_its_line(seen: dict) -> None:
    assert {"phase: build", "weeks: 4"} <= set(seen["unnamedLines"])


# Writing

WRITTEN = """\
programme: Base
goal: hypertrophy
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5, rir: 2, rest: 3 min}
      - {exercise: Romanian deadlift, sets: 3, reps: 8, rir: 2, rest: 2 min}
      - {exercise: leg extension, sets: 3, reps: 12, rir: 2, rest: 2 min}
      - {exercise: seated leg curl, sets: 3, reps: 12, rir: 2, rest: 2 min}"""


def test_a_session_from_nothing_takes_a_key_for_two_characters(seen: dict, folder: Path) -> None:
    assert (folder / "written.programme.yaml").read_text(encoding="utf-8") == WRITTEN
    assert seen["pressed"] <= len(WRITTEN) / 2, f"{seen['pressed']} keys for {len(WRITTEN)} characters"
    assert not [one for one in review(folder, "written.programme.yaml") if one["severity"] == "error"]


def test_totals_stand_at_their_own_line(seen: dict) -> None:
    lines = [line for line in seen["written"] if "quadriceps" in line]
    assert [line.partition(" quadriceps")[0] for line in lines] == [
        "sessions: a week:",
        "  - session: Lower session:",
    ]


def test_enter_leaves_a_list_and_the_next_session_begins(seen: dict) -> None:
    assert seen["afterTheList"] == "  - "
    assert seen["nextSession"][-4:] == [
        "  - session: Name",
        "    day: wednesday",
        "    exercises:",
        "      - ",
    ]


def test_the_status_bar_names_the_version(seen: dict) -> None:
    assert seen["absentStatus"].strip() == "spotline is not running"
    assert seen["status"].strip() == f"spotline {VERSION}"
    assert seen["oldStatus"].strip() == "spotline 0.0.1 is old"
    assert f"spotline 0.0.1 is older than this extension ({VERSION}): run " in seen["oldSaid"]
    assert 'install --upgrade "spotline[editor]"' in seen["oldSaid"]


def test_a_list_of_values_opens_once_a_key_is_taken(seen: dict) -> None:
    assert {"build", "in-season", "taper"} <= {label.partition(",")[0] for label in seen["valuesAfterKey"]}


def test_no_words_are_guessed_in_a_note(seen: dict) -> None:
    assert seen["guessed"] == 0


def test_an_exercise_is_renamed_throughout(seen: dict) -> None:
    assert any("our names: {the big one: back squat}" in line for line in seen["renamed"])
    assert any("{exercise: the big one, sets: 4" in line for line in seen["renamed"])


def test_symbols_of_the_folder_are_found(seen: dict) -> None:
    assert any("Chest and legs" in label for label in seen["symbols"])
