"""Mending from the command: what is certain is written, all else stays, and a run can be taken back."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from ruamel.yaml import YAML

from spotline.lint.cli.ask import ask
from spotline.lint.cli.main import main
from spotline.lint.findings.finding import Edit
from spotline.lint.mending.edits import Mend, apart, applied, with_edits
from spotline.lint.mending.rounds import Rounds
from spotline.lint.mending.run import write
from spotline.lint.text.places import Text
from spotline.tests.conftest import TODAY

PLAN = "programme: Quarry\ngoal: stregnth  # five\nfocus: [quadriceps]\nsessions:\n  - session: Lower\n    exercises:\n      - {lines}\n"
LINE = "{exercise: back squat, sets: 3, reps: 5, rets: 3 min}   # first"


@pytest.fixture(autouse=True)
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty repository, which is the working folder, and a home of its own for the state."""
    (tmp_path / "here" / ".git").mkdir(parents=True)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.chdir(tmp_path / "here")
    return tmp_path / "here"


def plan(text: str = PLAN.format(lines=LINE), name: str = "plan.programme.yaml") -> Path:
    path = Path(name)
    path.write_bytes(text.encode())
    return path


def test_what_is_certain_is_written_and_all_else_stays(capsys: pytest.CaptureFixture[str]) -> None:
    path = plan()
    assert main(["mend"]) == 0
    assert path.read_text() == PLAN.format(lines=LINE.replace("rets", "rest")).replace("stregnth", "strength")
    said = capsys.readouterr().out
    assert said == (
        "plan.programme.yaml: 2 places mended\n  line 2: stregnth -> strength\n  line 7: rets -> rest\n"
    )


def test_a_second_run_changes_nothing(capsys: pytest.CaptureFixture[str]) -> None:
    path = plan()
    main(["mend"])
    before = (path.read_bytes(), path.stat().st_mtime_ns)
    capsys.readouterr()
    assert main(["mend"]) == 0
    assert (path.read_bytes(), path.stat().st_mtime_ns) == before
    assert capsys.readouterr().out == ""


def test_show_prints_the_difference_and_writes_nothing(capsys: pytest.CaptureFixture[str]) -> None:
    path = plan()
    before = path.read_bytes()
    assert main(["mend", "--show"]) == 0
    assert path.read_bytes() == before
    said = capsys.readouterr().out.splitlines()
    assert [line for line in said if line[0] in "+-" and line[:3] not in ("---", "+++")] == [
        "-goal: stregnth  # five",
        "+goal: strength  # five",
        f"-      - {LINE}",
        f"+      - {LINE.replace('rets', 'rest')}",
    ]


def test_a_run_can_be_taken_back_once(capsys: pytest.CaptureFixture[str]) -> None:
    path = plan()
    before = path.read_bytes()
    main(["mend"])
    assert main(["mend", "--undo"]) == 0
    assert path.read_bytes() == before
    assert main(["mend", "--undo"]) == 2
    assert "no run of mend is known here" in capsys.readouterr().err


def test_a_file_that_was_changed_since_is_not_taken_back(capsys: pytest.CaptureFixture[str]) -> None:
    path = plan()
    main(["mend"])
    path.write_text(path.read_text() + "# mine\n")
    after = path.read_bytes()
    assert main(["mend", "--undo"]) == 2
    assert path.read_bytes() == after
    assert "it has changed since it was mended" in capsys.readouterr().err


@pytest.mark.parametrize("ends", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", ["", "\ufeff"])
@pytest.mark.parametrize("last", ["", "# last"])
def test_line_ends_the_mark_and_the_last_line_stay(ends: str, mark: str, last: str) -> None:
    text = (mark + PLAN.format(lines=LINE) + last).replace("\n", ends)
    path = plan(text)
    main(["mend"])
    assert path.read_bytes().decode() == text.replace("stregnth", "strength").replace("rets", "rest")


def test_a_fault_behind_another_is_mended_in_the_next_round() -> None:
    path = plan(
        "programme: Quarry\nsessions:\n\t- session: A\n\t  exercises:\n\t  - {exercise: back squat, sets: 3, reps: 5}\n"
    )
    main(["mend"])
    assert "\t" not in path.read_text()


def test_what_leaves_a_choice_is_listed_and_not_written(capsys: pytest.CaptureFixture[str]) -> None:
    line = "{exercise: leg extension, sets: 3, reps: 5, rir: 0, rpe: 7}"
    path = plan(PLAN.format(lines=line).replace("stregnth", "strength"))
    before = path.read_bytes()
    assert main(["mend", "--ask"]) == 1
    assert path.read_bytes() == before
    said = capsys.readouterr()
    assert re.search(r"rpe.*\n  1  write R.*\n  2  write R", said.out, re.IGNORECASE)
    assert "1 finding leaves a choice: spotline mend --ask" in said.err


@pytest.mark.parametrize(
    ("answers", "kept"),
    [(["2"], "rir: 3"), (["1"], "rpe: 10"), (["", ""], ""), (["9", "x", "2"], "rir: 3"), (["q"], "")],
)
def test_a_choice_that_is_made_is_written(answers: list[str], kept: str) -> None:
    line = "{exercise: leg extension, sets: 3, reps: 5, rir: 0, rpe: 7}"
    path = plan(PLAN.format(lines=line))
    rounds = Rounds(["."], TODAY)
    rounds.run()
    said = iter(answers)
    ask(rounds, lambda question: next(said))
    write(rounds)
    now = path.read_text()
    assert "strength" in now
    assert (kept in now) if kept else (line in now)


def test_the_end_of_the_input_stops_the_questions() -> None:
    plan(PLAN.format(lines="{exercise: leg extension, sets: 3, reps: 5, rir: 0, rpe: 7}"))
    rounds = Rounds(["."], TODAY)

    def gone(question: str) -> str:
        raise EOFError

    ask(rounds, gone)
    assert rounds.files == {}


def test_a_file_that_changes_meanwhile_is_left_as_it_is() -> None:
    path = plan()
    rounds = Rounds(["."], TODAY)
    rounds.run()
    path.write_text("programme: Another\n")
    written, refused = write(rounds)
    assert (written, [str(one) for one in refused]) == (
        [],
        ["plan.programme.yaml was not written: it has changed since it was read"],
    )
    assert path.read_text() == "programme: Another\n"


def test_a_link_out_of_the_repository_is_not_written(
    repository: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    outside = repository.parent / "other.programme.yaml"
    outside.write_text(PLAN.format(lines=LINE))
    Path("link.programme.yaml").symlink_to(outside)
    assert main(["mend", "link.programme.yaml"]) == 2
    assert outside.read_text() == PLAN.format(lines=LINE)


@pytest.mark.parametrize("text", ["", "%%%", "- a\n- b\n", "programme: [", "\x00", "programme: Q\n"])
def test_a_text_that_cannot_be_mended_is_left(text: str) -> None:
    path = plan(text)
    assert main(["mend"]) == 1
    assert path.read_bytes() == text.encode()


@pytest.mark.parametrize("words", [["--show", "--ask"], ["--undo", "a", "b"], ["--nope"], ["--show=1"]])
def test_words_that_cannot_be_followed_are_refused(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["mend", *words]) == 2
    assert capsys.readouterr().err.startswith("spotline: ")


def test_the_faulty_examples_lose_what_is_certain_and_no_more(root: Path) -> None:
    for path in sorted((root / "examples" / "faulty").iterdir()):
        Path(path.name).write_bytes(path.read_bytes())
    before = Rounds(["."], TODAY)
    count = before.review.count("error")
    before.run()
    write(before)
    after = Rounds(["."], TODAY)
    assert after.review.count("error") <= count - 6
    assert not before.refused


SLIPS = {
    "rest: 2 min": "rets: 2 min",
    "sets: 3": "stes: 3",
    "back squat": "back sqaut",
    "goal: strength": "goal: stregnth",
    "day: monday": "day: mondya",
}
STYLES: tuple[Callable[[list[str]], str], ...] = (
    lambda pairs: "{" + ", ".join(pairs) + "}",
    lambda pairs: "{ " + " , ".join(pairs) + " }  # why not",
    lambda pairs: ("\n" + 8 * " ").join(pairs),
    lambda pairs: ("   # a note\n" + 8 * " ").join(pairs),
)


@given(st.sets(st.sampled_from(sorted(SLIPS)), min_size=1), st.sampled_from(STYLES), st.booleans())
def test_outside_the_edits_every_byte_stays(
    slips: set[str], style: Callable[[list[str]], str], tight: bool
) -> None:
    """ruamel.yaml as the independent reader: the comments and the structure are those of the sound text."""
    pairs = ["exercise: back squat", "sets: 3", "reps: 5", "rest: 2 min", "load: 80 kg"]
    sound = (
        f"# head\nprogramme: Quarry\ngoal: strength\n{'' if tight else chr(10)}sessions:\n  - session: A\n    day: monday\n"
        f"    exercises:\n      - {style(pairs)}\n# foot\n"
    )
    text = sound
    for right in slips:
        text = text.replace(right, SLIPS[right], 1)
    path = plan(text)
    main(["mend"])
    now = path.read_text()
    assert now == sound
    reader = YAML()
    assert reader.load(now) == reader.load(sound)


# Bad input


def test_a_file_that_cannot_be_written_is_told_and_stays(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    path = plan()
    before = path.read_bytes()
    monkeypatch.setattr("os.access", lambda path, mode: False)  # the tests may run as root, who may write all
    assert main(["mend"]) == 2
    assert path.read_bytes() == before
    assert "plan.programme.yaml was not written: this account may not write it" in capsys.readouterr().err


def test_a_link_inside_the_repository_is_mended_where_it_leads() -> None:
    path = plan(name="real.yaml")
    Path("plan.programme.yaml").symlink_to("real.yaml")
    assert main(["mend", "plan.programme.yaml"]) == 0
    assert Path("plan.programme.yaml").is_symlink()
    assert "stregnth" not in path.read_text()


def test_a_folder_that_is_no_repository_is_mended_all_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "bare").mkdir()
    monkeypatch.chdir(tmp_path / "bare")
    path = plan()
    before = path.read_bytes()
    assert main(["mend"]) == 0
    assert b"stregnth" not in path.read_bytes()
    assert main(["mend", "--undo"]) == 0
    assert path.read_bytes() == before


def test_a_folder_that_is_not_there_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["mend", "nowhere"]) == 2
    assert "Traceback" not in capsys.readouterr().err


def test_a_slip_that_stands_twice_is_left_to_the_coach() -> None:
    """Renamed, it would leave the other of the two, of which nobody knows what is meant."""
    line = "{exercise: back squat, sets: 3, reps: 5, rets: 3 min, rets: 2 min}"
    path = plan(PLAN.format(lines=line))
    assert main(["mend"]) == 1
    assert line in path.read_text()


def test_edits_of_several_parts_keep_apart_from_others() -> None:
    text = Text("a", "0123456789")
    both = Edit(text.place(1, 2), "x", "both", further=(Edit(text.place(6, 7), "y", "both"),))
    inside = Edit(text.place(6, 8), "z", "inside")
    other = Edit(text.place(3, 4), "w", "other")
    kept = apart([Mend(None, one) for one in (other, inside, both)])
    assert [mend.edit for mend in kept] == [both, other]
    assert applied(text.content, kept) == "0x2w45y789"


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_new_lines_end_as_those_of_the_text(end: str) -> None:
    text = Text("a", f"one{end}two{end}")
    for words in ("\nnew", "\r\nnew", "\rnew"):
        assert with_edits(text.content, [Edit(text.place(3, 3), words, "add")]) == f"one{end}new{end}two{end}"


def test_spelling_and_undo_exclude_one_another(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["mend", "--spelling", "--undo"]) == 2
    assert "--spelling and --undo exclude one another" in capsys.readouterr().err


def test_a_plainer_spelling_is_shown_and_written_only_when_asked_for(
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = plan(PLAN.format(lines="{exercise: back squat, sets: 3, reps: 5, rest: 1:30}"))
    main(["mend"])
    assert "rest: 1:30" in path.read_text()
    main(["mend", "--spelling", "--show"])
    assert "rest: 1:30" in path.read_text()
    assert "rest: 90 s}" in capsys.readouterr().out
    main(["mend", "--spelling"])
    assert "rest: 90 s}" in path.read_text()


# A choice in another file

AT_HOME = """\
programme: Home
athlete: ../athletes/mara.athlete.yaml
weeks: 4
focus: [chest]
sessions:
  - session: Home
    exercises:
      - {exercise: dumbbell bench press, sets: 3, reps: 10, rir: 2}
      - {exercise: barbell back squat, sets: 3, reps: 10, rir: 2}
"""
LISTS = {
    "brackets": (
        "equipment: [dumbbells, flat bench]  # at home\n",
        "equipment: [dumbbells, flat bench, barbell]  # at home\n",
    ),
    "lines": (
        "equipment:\n  - dumbbells\n  - flat bench   # old\n",
        "equipment:\n  - dumbbells\n  - flat bench   # old\n  - barbell\n",
    ),
    "with what there is": (
        "equipment:\n  - flat bench\n  - dumbbells: {up to: 24 kg}\n",
        "equipment:\n  - flat bench\n  - dumbbells: {up to: 24 kg}\n  - barbell\n",
    ),
}


@pytest.mark.parametrize("form", LISTS)
def test_what_the_room_has_is_written_into_the_athletes_file(
    form: str, capsys: pytest.CaptureFixture[str]
) -> None:
    before, after = LISTS[form]
    for folder in ("athletes", "programmes"):
        Path(folder).mkdir()
    athlete, programme = Path("athletes/mara.athlete.yaml"), Path("programmes/home.programme.yaml")
    athlete.write_text(f"name: Mara\n{before}days: 3\n")
    programme.write_text(AT_HOME)
    rounds = Rounds(["programmes"], TODAY)
    rounds.run()
    assert rounds.files == {}

    def answer(question: str) -> str:
        said = capsys.readouterr().out
        label = "the room has it: add barbell to `equipment` in athletes/mara.athlete.yaml"
        (number,) = re.findall(rf"^  (\d)  {re.escape(label)}$", said, re.MULTILINE)
        return str(number)

    ask(rounds, answer)
    assert [str(one) for one in write(rounds)[1]] == []
    assert programme.read_text() == AT_HOME
    assert athlete.read_text() == f"name: Mara\n{after}days: 3\n"
    assert main(["review"]) == 0
    assert main(["mend", "--undo"]) == 0
    assert athlete.read_text() == f"name: Mara\n{before}days: 3\n"


def test_nothing_in_another_file_is_mended_without_a_choice() -> None:
    """The same edit, called certain by whoever made it, stays undone: a run writes into the files it names."""
    Path("athletes").mkdir()
    Path("athletes/mara.athlete.yaml").write_text("name: Mara\nequipment: [dumbbells, flat bench]\n")
    plan(AT_HOME.replace("../", ""))
    rounds = Rounds(["plan.programme.yaml"], TODAY)

    def choose(one: object) -> list[Mend]:
        found = [finding for finding in rounds.review.files[0].findings if finding.edits]
        return [
            Mend(finding.but(edits=(Edit(edit.place, edit.words, edit.label),)), edit)
            for finding in found
            for edit in finding.edits
            if edit.place.text.name.startswith("athletes")
        ]

    rounds.run(choose)
    assert rounds.files == {}
