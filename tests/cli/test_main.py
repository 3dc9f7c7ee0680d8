"""The command, in processes of its own: arguments, exit codes, what is printed where, hostile names and files."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.reporters import REVIEW

CLEAN = "programme: Clean\nfocus: [chest]\nsessions: [{session: A, exercises: [{exercise: box push-up, sets: 3}]}]\n"
WARNED = CLEAN.replace("sets: 3", "sets: 3, reps: 200")
WRONG = CLEAN.replace("sets: 3", "sets: 3, rir: 2, rpe: 10")

FORMS = ", ".join(REVIEW)

PEAK = """\
import re, sys
from spotline.lint.cli.main import main
sys.argv[1:] = ["review"]
main()
with open("/proc/self/status") as file:
    print(re.search(r"VmHWM:\\s*([0-9]+)", file.read())[1], file=sys.stderr)
"""
"""Reviews, and tells the most memory that this very program held, in kB."""

Result = subprocess.CompletedProcess[bytes]
Run = Callable[..., Result]
Write = Callable[[str, str | bytes], Path]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / ".git").mkdir()
    return tmp_path


@pytest.fixture
def write(folder: Path) -> Write:
    def put(name: str, content: str | bytes) -> Path:
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content.encode() if isinstance(content, str) else content)
        return path

    return put


@pytest.fixture
def run(folder: Path, root: Path) -> Run:
    """Runs the command in the folder; ``settings`` are further variables of its environment."""

    def command(*words: str | bytes, **settings: str) -> Result:
        environment = {
            key: value
            for key, value in os.environ.items()
            if not key.startswith(("PYTHON", "LC_", "NO_COLOR"))
        }
        environment |= {"PYTHONPATH": str(root.parent) if root.name == "spotline" else "", **settings}
        return subprocess.run(
            [sys.executable, "-m", "spotline", *words],
            cwd=folder,
            env=environment,
            capture_output=True,
            timeout=60,
            check=False,
        )

    return command


def lines(result: Result) -> list[str]:
    return result.stdout.decode().splitlines()


class TestArguments:
    @pytest.mark.parametrize("word", ["--help", "-h", "help"])
    def test_help(self, run: Run, word: str) -> None:
        result = run(word)
        assert result.returncode == 0
        text = result.stdout.decode()
        assert text.startswith("usage: spotline review")
        assert all(name in text for name in schemas.names())
        assert "clears nobody to train" in text
        assert result.stderr == b""

    def test_version(self, run: Run) -> None:
        result = run("--version")
        assert result.returncode == 0
        assert re.fullmatch(r"spotline \d+(\.\d+)+\n", result.stdout.decode())

    @pytest.mark.parametrize(
        ("words", "reason"),
        [
            (["revue"], "there is no command 'revue'"),
            (["review", "--colour"], "there is no option '--colour'"),
            (["review", "--chnged"], "there is no option '--chnged'; did you mean --changed?"),
            (["review", "-x"], "there is no option '-x'"),
            (["review", "--as", "poem"], f"--as takes one of {FORMS}"),
            (["review", "--as=poem"], f"--as takes one of {FORMS}"),
            (["review", "--as"], f"--as takes one of {FORMS}"),
            (["review", "--as="], f"--as takes one of {FORMS}"),
            (["schema"], "name one schema"),
            (["schema", "poem"], "name one schema"),
            (["schema", "programme", "athlete"], "name one schema"),
        ],
    )
    def test_words_that_cannot_be_followed(self, run: Run, words: list[str], reason: str) -> None:
        result = run(*words)
        assert (result.returncode, result.stdout) == (2, b"")
        first, *rest = result.stderr.decode().splitlines()
        assert first.startswith(f"spotline: {reason}")
        if words == ["revue"]:
            (others,) = rest
            assert others.startswith("Commands: review, ")
        else:
            usage, example = rest
            assert usage.startswith(f"usage: spotline {words[0]}")
            assert re.match(rf"Such as: spotline {words[0]}.*\. More: spotline {words[0]} --help$", example)

    @pytest.mark.parametrize("name", ["plan.programme.yaml", "."])
    def test_a_file_in_the_place_of_a_command_was_meant_to_be_reviewed(self, run: Run, name: str) -> None:
        result = run(name)
        assert (result.returncode, result.stdout) == (2, b"")
        first = result.stderr.decode().splitlines()[0]
        assert (
            first == f"spotline: {name!r} is the name of a file or folder, no command: spotline review {name}"
        )

    def test_no_words_at_all(self, run: Run) -> None:
        assert run().returncode == 2

    @pytest.mark.parametrize("form", [["--as", "json"], ["--as=json"]])
    @pytest.mark.parametrize("place", [0, 1])
    def test_both_ways_of_giving_an_option(self, run: Run, write: Write, form: list[str], place: int) -> None:
        write("a.programme.yaml", CLEAN)
        words = ["a.programme.yaml"]
        words[place:place] = form
        assert json.loads(run("review", *words).stdout)["files"] == 1

    def test_two_dashes_end_the_options(self, run: Run, write: Write) -> None:
        write("--as.programme.yaml", CLEAN)
        write("-x.programme.yaml", WRONG)
        assert run("review", "--", "--as.programme.yaml").returncode == 0
        assert run("review", "--as.programme.yaml").returncode == 2
        result = run("review", "--as", "lines", "--", "-x.programme.yaml")
        assert result.returncode == 1
        assert lines(result)[0].startswith("./-x.programme.yaml:3:")

    def test_a_second_pair_of_dashes_is_a_name(self, run: Run, write: Write) -> None:
        write("a.programme.yaml", CLEAN)
        assert run("review", "--", "a.programme.yaml", "--").returncode == 2

    @pytest.mark.parametrize("name", schemas.names())
    def test_schemas_are_printed_whole(self, run: Run, name: str) -> None:
        result = run("schema", name)
        assert result.returncode == 0
        assert json.loads(result.stdout) == schemas.load(name)

    def test_the_command_and_the_module_are_one(self, folder: Path, write: Write) -> None:
        write("a.programme.yaml", WRONG)
        script = Path(sys.executable).parent / "spotline"
        words = (
            [str(script)]
            if script.exists()
            else [sys.executable, "-c", "from spotline.lint.cli.main import main; raise SystemExit(main())"]
        )
        result = subprocess.run([*words, "review"], cwd=folder, capture_output=True, timeout=60, check=False)
        assert result.returncode == 1
        assert b"rir-rpe-contradict" in result.stdout


class TestExitCodes:
    @pytest.mark.parametrize(("text", "code"), [(CLEAN, 0), (WARNED, 1), (WRONG, 1), ("", 1), ("- a\n", 1)])
    def test_of_a_review(self, run: Run, write: Write, text: str, code: int) -> None:
        write("a.programme.yaml", text)
        assert run("review").returncode == code

    def test_nothing_to_review(self, run: Run) -> None:
        result = run("review")
        assert result.returncode == 2
        assert result.stderr.decode() == "Nothing to review: no programme or athlete file found.\n"

    def test_a_file_that_is_not_there_outweighs_what_blocks(self, run: Run, write: Write) -> None:
        write("a.programme.yaml", WRONG)
        result = run("review", "a.programme.yaml", "gone.programme.yaml")
        assert result.returncode == 2
        assert len(lines(result)) == 2

    def test_broken_settings(self, run: Run, write: Write) -> None:
        write("a.programme.yaml", CLEAN)
        write("spotline.yaml", "block commit on: [eror]\n")
        result = run("review")
        assert result.returncode == 2
        assert lines(result)[0].startswith("spotline.yaml:1:19: error: value-unknown: ")


class TestPrinting:
    def test_lines_where_there_is_no_terminal(self, run: Run, write: Write) -> None:
        write("a.programme.yaml", WRONG)
        result = run("review")
        assert re.fullmatch(
            r"a\.programme\.yaml:3:83: error: rir-rpe-contradict: RPE 10 leaves .+", lines(result)[0]
        )
        assert len(lines(result)) == 1
        assert result.stderr.decode() == "Reviewed 1 programme: 1 error. Blocked.\n"

    @pytest.mark.parametrize("form", REVIEW)
    def test_no_escapes_where_there_is_no_terminal(self, run: Run, write: Write, form: str) -> None:
        write("a.programme.yaml", WRONG)
        result = run("review", "--as", form)
        assert b"\x1b" not in result.stdout + result.stderr

    @pytest.mark.parametrize(("settings", "bold"), [({}, True), ({"NO_COLOR": "1"}, False)])
    def test_cards_on_a_terminal(
        self, folder: Path, write: Write, settings: dict[str, str], bold: bool
    ) -> None:
        import pty

        write("a.programme.yaml", WRONG)
        environment = {key: value for key, value in os.environ.items() if key != "NO_COLOR"} | {
            "TERM": "xterm",
            "COLUMNS": "80",
            **settings,
        }
        ours, theirs = pty.openpty()
        process = subprocess.Popen(
            [sys.executable, "-m", "spotline", "review"],
            cwd=folder,
            env=environment,
            stdout=theirs,
            stderr=theirs,
        )
        os.close(theirs)
        shown = b""
        try:
            while part := os.read(ours, 65536):
                shown += part
        except OSError:  # the other end is closed
            pass
        os.close(ours)
        assert process.wait(timeout=60) == 1
        assert "Error: rir-rpe-contradict" in shown.decode()
        assert (b"\x1b[1m" in shown) is bold
        assert (b"\x1b" in shown) is bold

    def test_a_reader_that_goes_away(self, folder: Path, write: Write) -> None:
        for number in range(400):
            write(f"{number}.programme.yaml", WRONG)
        process = subprocess.Popen(
            [sys.executable, "-m", "spotline", "review", "--as", "cards"],  # more than a pipe holds
            cwd=folder,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )
        assert process.stdout is not None
        assert process.stderr is not None
        assert process.stdout.readline() == b"0.programme.yaml\n"
        process.stdout.close()
        said = process.stderr.read()
        process.stderr.close()
        assert process.wait(timeout=60) == 2  # not all was told
        assert b"Traceback" not in said
        assert b"BrokenPipe" not in said

    def test_head_in_a_real_shell(self, folder: Path, write: Write) -> None:
        for number in range(50):
            write(f"{number}.programme.yaml", WRONG)
        result = subprocess.run(
            f'"{sys.executable}" -m spotline review --as cards | head -1',
            shell=True,
            cwd=folder,
            capture_output=True,
            timeout=60,
            check=False,
        )
        assert result.stdout == b"0.programme.yaml\n"
        assert b"Traceback" not in result.stderr

    @pytest.mark.parametrize("form", REVIEW)
    @pytest.mark.parametrize(
        "settings",
        [
            {"PYTHONIOENCODING": "ascii"},
            {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
            {"PYTHONIOENCODING": "latin-1"},
            {"PYTHONIOENCODING": "cp1252"},
            {"PYTHONIOENCODING": "cp437"},
        ],
    )
    def test_letters_that_the_terminal_does_not_know(
        self, run: Run, write: Write, form: str, settings: dict[str, str]
    ) -> None:
        write("a.programme.yaml", WRONG.replace("session: A", "session: Übung 深蹲"))
        result = run("review", "--as", form, **settings)
        assert result.returncode == 1
        assert result.stderr.count(b"Traceback") == 0
        assert b"rir-rpe-contradict" in result.stdout
        if form in ("json", "sarif", "code-quality"):
            json.loads(result.stdout)  # what a code page has not is escaped as JSON does


class TestJson:
    def test_it_fits_its_schema(self, run: Run, write: Write) -> None:
        write(
            "a.programme.yaml",
            WRONG.replace("box push-up", "moon walk").replace("focus", "athlete: gone.athlete.yaml\nfocus"),
        )
        write(
            "b.programme.yaml",
            WARNED.replace("sets: 3", "sets: {1: 3, 2: 30}").replace("focus", "weeks: 2\nfocus"),
        )
        write("c.athlete.yaml", "name: C\nlevel: begginer\n")
        write("d.programme.yaml", "[")
        result = run("review", "--as", "json", ".", "gone.programme.yaml")
        whole = json.loads(result.stdout)
        Draft202012Validator(schemas.load("review")).validate(whole)
        assert result.returncode == 2
        assert whole["files"] == 5
        assert {finding["file"] for finding in whole["findings"]} == {
            "a.programme.yaml",
            "b.programme.yaml",
            "c.athlete.yaml",
            "d.programme.yaml",
            "gone.programme.yaml",
        }
        assert sum(whole["summary"][severity] for severity in ("error", "warning", "note")) == len(
            whole["findings"]
        )
        assert whole["summary"]["blocked"] is True
        assert [fault["file"] for fault in whole["faults"]] == ["gone.programme.yaml"]

    def test_nothing_found_is_json_too(self, run: Run, write: Write) -> None:
        empty = json.loads(run("review", "--as", "json").stdout)
        Draft202012Validator(schemas.load("review")).validate(empty)
        assert (empty["files"], empty["findings"]) == (0, [])
        write("a.programme.yaml", CLEAN)
        clean = json.loads(run("review", "--as", "json").stdout)
        assert (clean["files"], clean["findings"], clean["summary"]["blocked"]) == (1, [], False)

    @pytest.mark.parametrize("form", REVIEW)
    def test_two_runs_print_the_same(self, run: Run, root: Path, form: str) -> None:
        words = ["review", "--as", form, str(root / "examples"), str(root / "examples" / "faulty")]
        first, second = run(*words, PYTHONHASHSEED="1"), run(*words, PYTHONHASHSEED="2")
        assert first.stdout == second.stdout
        assert first.stdout
        assert first.returncode == second.returncode == 1


class TestNames:
    """File names that could pass for something else."""

    def check(self, run: Run, name: bytes, shown: str, folder: Path) -> None:
        (folder / os.fsdecode(name)).write_text(WRONG)
        for words in (["review", "--as", "lines"], ["review", "--as", "lines", "--", name]):
            result = run(*words)
            assert result.returncode == 1, result.stderr
            (line,) = lines(result)
            assert line.startswith(f"{shown}:3:83: error: ")
        for form in ("cards", "json"):
            result = run("review", "--as", form)
            assert result.returncode == 1
            assert result.stderr == b""
        Draft202012Validator(schemas.load("review")).validate(json.loads(result.stdout))

    @pytest.mark.parametrize(
        ("name", "shown"),
        [
            (b"-a.programme.yaml", "./-a.programme.yaml"),
            (b"--help.programme.yaml", "./--help.programme.yaml"),
            (b":a.programme.yaml", "./:a.programme.yaml"),
            (b"a b.programme.yaml", "a b.programme.yaml"),
            (b"a\nb.programme.yaml", "a\\u000ab.programme.yaml"),
            (b"a\x1b[31mb.programme.yaml", "a\\u001b[31mb.programme.yaml"),
            ("a\u202eb.programme.yaml".encode(), "a\\u202eb.programme.yaml"),
            ("größe.programme.yaml".encode(), "größe.programme.yaml"),
            (b"gr\xf6\xdfe.programme.yaml", "gr\\udcf6\\udcdfe.programme.yaml"),  # not UTF-8
        ],
    )
    def test_names(self, run: Run, folder: Path, name: bytes, shown: str) -> None:
        self.check(run, name, shown, folder)

    def test_a_folder_with_such_a_name(self, run: Run, write: Write) -> None:
        write("-a\nb/c.programme.yaml", WRONG)
        (line,) = lines(run("review", "--", "-a\nb"))
        assert line.startswith("./-a\\u000ab/c.programme.yaml:3:83: error: ")


BOMB = "shared:\n  - &a [x, x, x, x, x, x, x, x, x, x]\n" + "".join(
    f"  - &{name} [{', '.join([f'*{before}'] * 10)}]\n"
    for before, name in zip("abcdefghij", "bcdefghijk", strict=True)
)

BAD: dict[str, tuple[str | bytes, str, int, int]] = {
    "latin": (CLEAN.encode().replace(b"Clean", b"F\xfcr Anna"), "not-utf-8", 1, 13),
    "utf-16": (CLEAN.encode("utf-16"), "not-utf-8", 1, 1),
    "empty": ("", "file-empty", 1, 1),
    "comment": ("# nothing yet\n", "file-empty", 1, 1),
    "two": (CLEAN + "---\n" + CLEAN, "second-document", 4, 1),
    "list": ("- programme: Clean\n", "top-not-a-list-of-keys", 1, 1),
    "digits": (CLEAN.replace("sets: 3", "sets: " + "9" * 5000), "number-out-of-range", 3, 67),
    "bomb": (CLEAN + BOMB, "too-much-repetition", 9, 33),
    "brackets": ("[" * 300_000, "too-much-nesting", 1, 1001),
    "nul": (CLEAN.replace("Clean", "Cl\0ean"), "control-character", 1, 14),
    "tab": (CLEAN.replace("sessions:", "note:\n\ta: b\nsessions:"), "tab-in-indentation", 4, 1),
    "conflict": (
        CLEAN.replace(
            "focus: [chest]\n", "<<<<<<< ours\nfocus: [chest]\n=======\nfocus: [legs]\n>>>>>>> theirs\n"
        ),
        "merge-conflict",
        2,
        1,
    ),
    "february": (CLEAN.replace("focus", "starts: 2026-02-30\nfocus"), "date-impossible", 2, 9),
    "missing": (CLEAN.replace("focus", "athlete: nobody.athlete.yaml\nfocus"), "athlete-missing", 2, 10),
    "climbing": (CLEAN.replace("focus", "athlete: ../../out.athlete.yaml\nfocus"), "athlete-outside", 2, 10),
    "zero-path": (CLEAN.replace("focus", 'athlete: "a\\0b.athlete.yaml"\nfocus'), "athlete-missing", 2, 10),
}
"""Content, and the one finding that it must give with its line and column."""


class TestBadInput:
    @pytest.fixture
    def everything(self, folder: Path, write: Write) -> Path:
        for name, (content, *_) in BAD.items():
            write(f"{name}.programme.yaml", content)
        (folder / "a-folder.programme.yaml").mkdir()
        os.symlink("nowhere", folder / "a-link.programme.yaml")
        os.mkfifo(folder / "a-pipe.programme.yaml")
        write("zz-sound.programme.yaml", WRONG)
        return folder

    def test_each_gives_one_located_finding_and_stops_no_other(self, run: Run, everything: Path) -> None:
        result = run("review")
        expected = {
            f"{name}.programme.yaml": (line, column, rule) for name, (_, rule, line, column) in BAD.items()
        }
        expected |= {
            f"a-{kind}.programme.yaml": (1, 1, "file-not-opened") for kind in ("folder", "link", "pipe")
        }
        expected["zz-sound.programme.yaml"] = (3, 83, "rir-rpe-contradict")
        found: dict[str, list[tuple[int, int, str]]] = {}
        for line in lines(result):
            match = re.fullmatch(r"([^:]+):(\d+):(\d+): error: ([a-z0-9-]+): .+", line)
            assert match, line
            found.setdefault(match[1], []).append((int(match[2]), int(match[3]), match[4]))
        assert found == {name: [one] for name, one in expected.items()}
        assert result.returncode == 2  # some could not be opened
        assert b"Traceback" not in result.stderr
        assert all(len(line) < 1000 for line in lines(result))

    @pytest.mark.parametrize("form", ["cards", "json"])
    def test_the_other_forms_stand_it_too(self, run: Run, everything: Path, form: str) -> None:
        result = run("review", "--as", form)
        assert result.returncode == 2
        assert result.stderr == b""
        if form == "json":
            whole = json.loads(result.stdout)
            Draft202012Validator(schemas.load("review")).validate(whole)
            assert len(whole["faults"]) == 3
        assert len(result.stdout) < 200_000

    def test_memory_is_bounded(self, folder: Path, write: Write) -> None:
        write("bomb.programme.yaml", BAD["bomb"][0])
        write("brackets.programme.yaml", BAD["brackets"][0])
        write("sizes.programme.yaml", "a: " + "x" * 5_000_000 + "\n")
        write("long.programme.yaml", CLEAN + "note: " + "x" * 3_000_000 + "\n")
        result = subprocess.run(
            [sys.executable, "-c", PEAK], cwd=folder, capture_output=True, text=True, check=True
        )
        assert "sizes.programme.yaml:1:1: error: file-too-large" in result.stdout
        assert int(result.stderr.split()[-1]) < 200_000

    def test_a_file_that_nobody_may_read(self, folder: Path, write: Write, run: Run) -> None:
        path = write("a.programme.yaml", CLEAN)
        path.chmod(0)
        result = run("review")
        if os.geteuid() == 0:  # whom no mode keeps out
            assert result.returncode == 0
        else:
            assert result.returncode == 2
            assert b"this account may not read it" in result.stdout
