"""The first files of a team: they pass, they are what was answered, and nothing that is there is touched."""

from __future__ import annotations

import re
from itertools import cycle, product
from pathlib import Path

import pytest

from spotline.lint.cli.main import main
from spotline.lint.project.review import review
from spotline.lint.starting.answers import GOALS, QUESTIONS, answered
from spotline.lint.starting.first_files import first_files, write
from spotline.lint.starting.first_programme import apart
from spotline.tests.conftest import TODAY

ROOMS = (
    "gym",
    "dumbbells, bench",
    "kettlebells, bands",
    "bands",
    "barbell, rack, bench, plates, pull-up bar",
    "chair",
    "dumbbells, pulldown, leg press, cable row, seated leg curl",
)


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


def answers(**given: str) -> dict[str, str]:
    return {question.name: given.get(question.name, question.usual) for question in QUESTIONS}


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("level", ["novice", "intermediate", "advanced"])
def test_the_first_programme_passes_in_every_room_at_every_level(folder: Path, room: str, level: str) -> None:
    times = cycle(("30", "60"))
    for goal, days in product(GOALS, ("wednesday", "mon thu", "tue thu sat")):
        minutes = next(times)
        read = answered(
            answers(equipment=room, level=level, goal=goal, days=days, minutes=minutes), None, print
        )
        where = folder / "-".join((goal, days, minutes)).replace(" ", "_")
        where.mkdir()
        write(str(where), first_files(str(where), read, TODAY))
        done = review([str(where)], TODAY)
        said = [
            f"{one.rule}: {one.counted}"
            for file in done.files
            for one in file.findings
            if one.severity != "note"
        ]
        assert (done.exit_code, said) == (0, []), (goal, days, minutes)


def test_without_a_terminal_and_options_the_usual_holds(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["set-up"]) == 0
    said = capsys.readouterr().out
    written = [line.split()[-1] for line in said.splitlines() if line.startswith("written")]
    assert written == [
        "spotline.yaml",
        "athletes/alex.athlete.yaml",
        "programmes/alex-first.programme.yaml",
        ".pre-commit-config.yaml",
        ".editorconfig",
        ".gitignore",
    ]
    assert all((folder / path).is_file() for path in written)
    assert main(["review"]) == 0


def test_each_remark_of_the_athletes_file_is_a_line_that_can_be_taken(folder: Path) -> None:
    assert main(["set-up"]) == 0
    path = folder / "athletes" / "alex.athlete.yaml"
    lines = path.read_text().splitlines()
    remarks = [line for line in lines if line.startswith("# ")]
    assert [line.split(":")[0] for line in remarks] == ["# age", "# best lifts", "# screening on file"]
    path.write_text("\n".join(line.removeprefix("# ") for line in lines) + "\n")
    done = review([str(folder)], TODAY)
    assert done.exit_code == 0
    (ledger,) = [ledger for file in done.files for ledger in file.ledgers]
    assert ledger.athlete is not None
    assert (ledger.athlete.age, len(ledger.athlete.best_lifts)) == (34, 1)


@pytest.mark.parametrize(
    ("words", "is_git", "has_hooks", "commands"),
    [
        ([], False, False, "git init, pip install pre-commit, pre-commit install"),
        ([], True, True, "pre-commit install"),
        (["team"], False, True, "cd team, git init, pre-commit install"),
        (["team"], True, True, "cd team, pre-commit install"),
    ],
)
def test_what_is_left_to_do_for_the_hook_is_told(
    words: list[str],
    is_git: bool,
    has_hooks: bool,
    commands: str,
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setattr("spotline.lint.cli.beginning.which", lambda name: name if has_hooks else None)
    if is_git:
        (folder / ".git").mkdir()
    assert main(["set-up", *words]) == 0
    review = f"Now: spotline review{''.join(f' {word}' for word in words)}"
    assert capsys.readouterr().out.splitlines()[-2:] == [review, f"So that no commit breaks it: {commands}"]


def test_what_is_shown_in_the_settings_can_be_written(folder: Path) -> None:
    assert main(["set-up"]) == 0
    path = folder / "spotline.yaml"
    head, _, shown = path.read_text().partition("\n\n# weekly")
    lines = f"# weekly{shown}".splitlines()
    path.write_text(head + "\n" + "\n".join(line.removeprefix("# ") for line in lines) + "\n")
    done = review([str(folder)], TODAY)
    assert [one.counted for file in done.files for one in file.findings] == []


def test_sheets_are_kept_out_of_git(folder: Path) -> None:
    from spotline.lint.cli.sheets import ENDINGS

    assert main(["set-up"]) == 0
    ignored = (folder / ".gitignore").read_text().splitlines()
    assert ignored[1:] == [f"*.sheet.{ending}" for ending in ENDINGS.values()]


def test_what_is_there_is_never_overwritten(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / ".pre-commit-config.yaml").write_text("repos: []\n")
    (folder / "spotline.yaml").symlink_to("nowhere")
    assert main(["set-up"]) == 0
    assert (folder / ".pre-commit-config.yaml").read_text() == "repos: []\n"
    assert not (folder / "nowhere").exists()
    assert len(re.findall("kept as it is", capsys.readouterr().out)) == 2
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    assert main(["set-up", "--name", "Alex"]) == 0
    assert {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()} == before


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--level", "begginer"], "--level takes one of novice, intermediate, advanced"),
        (["--days", "someday"], "--days takes weekdays"),
        (["--minutes", "ages"], "--minutes takes minutes from 15 to 300"),
        (["--name", "..."], "--name takes a first name or initials"),
        (["one", "two"], "set-up takes one folder"),
        (["--goal"], "--goal takes a name"),
    ],
)
def test_an_answer_that_cannot_be_read_is_refused_and_nothing_is_written(
    folder: Path, capsys: pytest.CaptureFixture[str], words: list[str], said: str
) -> None:
    assert main(["set-up", *words]) == 2
    assert said in capsys.readouterr().err
    assert list(folder.iterdir()) == []


def test_questions_are_asked_again_until_they_are_answered() -> None:
    said: list[str] = []
    replies = iter(
        ["Zoë O'Neill: 2", "nov", "strength", "blue", "mon, fri", "an hour", "45", "dumbbells, bench"]
    )
    read = answered({}, lambda question: next(replies), said.append)
    assert (read.name, read.level, read.goal, read.days, read.minutes, read.equipment) == (
        "Zoë O'Neill: 2",
        "novice",
        "strength",
        ("monday", "friday"),
        45,
        ("dumbbells", "bench"),
    )
    assert "Enter takes what stands in brackets" in said[0]
    assert len(said) == 3
    assert len(QUESTIONS) <= 6


@pytest.mark.parametrize("name", ["Zoë O'Neill: 2", "{a}", "- b", "李", "# c", "null", "../../up", "a\tb"])
def test_any_name_is_written_so_that_it_reads_as_it_is(folder: Path, name: str) -> None:
    read = answered(answers(name=name), None, print)
    write(str(folder), first_files(str(folder), read, TODAY))
    done = review([str(folder)], TODAY)
    assert done.exit_code == 0
    athletes = {ledger.athlete.name for file in done.files for ledger in file.ledgers if ledger.athlete}
    assert athletes == {" ".join(name.split())} or athletes == {name}


@pytest.mark.parametrize(("end", "code"), [(EOFError, 2), (KeyboardInterrupt, 130)])
def test_an_interrupt_writes_nothing(
    end: type[BaseException],
    code: int,
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    answers = iter(["Mara", "novice"])

    def gone(question: str) -> str:
        for answer in answers:
            return answer
        raise end

    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    monkeypatch.setattr("builtins.input", gone)
    assert main(["set-up"]) == code
    assert "nothing was written" in capsys.readouterr().err
    assert list(folder.iterdir()) == []


def test_a_folder_that_cannot_be_made_is_told(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "file").write_text("")
    assert main(["set-up", "file"]) == 2
    assert capsys.readouterr().err.startswith("spotline: file was not written: ")


@pytest.mark.parametrize(
    ("days", "chosen"),
    [
        (("monday",), ("monday",)),
        (("monday", "tuesday"), ("monday",)),
        (("monday", "wednesday", "friday", "sunday"), ("monday", "wednesday", "friday")),
        (("monday", "thursday", "sunday"), ("monday", "thursday")),
        (("tuesday", "wednesday", "thursday", "friday", "saturday"), ("tuesday", "thursday", "saturday")),
    ],
)
def test_there_is_a_day_between_two_days(days: tuple[str, ...], chosen: tuple[str, ...]) -> None:
    assert apart(days) == chosen


# Bad input


def test_a_folder_that_holds_things_keeps_them(folder: Path) -> None:
    (folder / "programmes").mkdir()
    (folder / "programmes" / "old.programme.yaml").write_text("programme: Old\n")
    (folder / "notes.txt").write_text("mine\n")
    assert main(["set-up"]) == 0
    assert (folder / "programmes" / "old.programme.yaml").read_text() == "programme: Old\n"
    assert (folder / "notes.txt").read_text() == "mine\n"


def test_a_repository_with_another_hook_set_up_keeps_it(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    hooks = folder / ".git" / "hooks"
    hooks.mkdir(parents=True)
    (hooks / "pre-commit").write_text("#!/bin/sh\nexit 0\n")
    (folder / ".pre-commit-config.yaml").write_text("repos: []  # ours\n")
    assert main(["set-up"]) == 0
    assert (hooks / "pre-commit").read_text() == "#!/bin/sh\nexit 0\n"
    assert (folder / ".pre-commit-config.yaml").read_text() == "repos: []  # ours\n"
    assert "kept as it is .pre-commit-config.yaml" in capsys.readouterr().out


def test_it_needs_no_git(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PATH", "")
    assert main(["set-up"]) == 0
    assert main(["review"]) == 0


def test_a_name_that_is_a_file_where_a_folder_should_be_is_told(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "athletes").write_text("a file\n")
    assert main(["set-up"]) == 2
    said = capsys.readouterr().err
    assert said.startswith("spotline: ")
    assert said.count("\n") == 1
    assert (folder / "athletes").read_text() == "a file\n"


def test_a_stop_while_the_files_are_written_leaves_whole_files(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from spotline.lint.starting import first_files as module

    done: list[str] = []

    def stopped(path: str, before: bytes | None, after: bytes, root: str) -> None:
        if len(done) == 2:
            raise KeyboardInterrupt
        done.append(path)
        Path(path).write_bytes(after)

    monkeypatch.setattr(module, "replace", stopped)
    assert main(["set-up"]) == 130
    assert "spotline: call set-up again" in capsys.readouterr().err
    monkeypatch.undo()
    monkeypatch.chdir(folder)
    before = {path: Path(path).read_bytes() for path in done}
    assert main(["set-up"]) == 0
    assert {path: Path(path).read_bytes() for path in done} == before
    assert main(["review"]) == 0
