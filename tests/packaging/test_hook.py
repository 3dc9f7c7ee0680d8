"""The pre-commit hook, for real: installed from a scratch clone of the work tree, stopping real commits."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ATHLETE = "name: Orla\nlevel: intermediate\n"

SOUND = """\
programme: Legs before the season
athlete: ../athletes/orla.athlete.yaml
goal: hypertrophy
focus: [legs]
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower A
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5-8, rir: 2, rest: 3 min}
      - {exercise: seated leg curl, sets: 4, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: standing calf raise, sets: 4, reps: 8-12, rir: 2, rest: 90 s}
  - session: Lower B
    day: thursday
    exercises:
      - {exercise: stiff-leg deadlift, sets: 4, reps: 6-10, rir: 2, rest: 3 min}
      - {exercise: leg extension, sets: 4, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: seated calf raise, sets: 4, reps: 10-15, rir: 2, rest: 90 s}
"""

CARELESS = SOUND.replace("seated leg curl", "leg extension")
PROGRAMME = "programmes/legs.programme.yaml"


def place(text: str, words: str) -> str:
    """``line:column`` of the first occurrence of some words."""
    before = text.partition(words)[0]
    return f"{before.count(chr(10)) + 1}:{len(before) - before.rfind(chr(10))}"


class Team:
    """A coaching team's repository with the hook in it."""

    def __init__(self, folder: Path, environment: dict[str, str], hook: Path) -> None:
        self.folder = folder
        self.environment = environment
        self.sound("git", "init", "--quiet")
        revision = subprocess.run(
            ["git", "rev-parse", "HEAD"],
            cwd=hook,
            env=environment,
            check=True,
            capture_output=True,
            text=True,
        ).stdout.strip()
        self.write(
            ".pre-commit-config.yaml",
            f"repos:\n  - repo: {hook}\n    rev: {revision}\n    hooks:\n      - id: spotline\n",
        )
        self.sound(sys.executable, "-m", "pre_commit", "install")
        self.write("athletes/orla.athlete.yaml", ATHLETE)
        self.write(PROGRAMME, SOUND)
        self.sound("git", "commit", "--quiet", "--message", "Legs before the season")

    def run(self, *words: str) -> tuple[int, str]:
        """Exit code and all that was printed."""
        done = subprocess.run(
            words,
            cwd=self.folder,
            env=self.environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            timeout=300,
        )
        return done.returncode, done.stdout

    def program(self, *words: str) -> tuple[int, str]:
        """Exit code and print of the program that the hook has installed."""
        (found,) = Path(self.environment["PRE_COMMIT_HOME"]).glob("repo*/py_env*/bin/spotline")
        return self.run(str(found), *words)

    def sound(self, *words: str) -> str:
        """What a command printed that must succeed."""
        code, printed = self.run(*words)
        assert code == 0, printed
        return printed

    def write(self, name: str, text: str) -> None:
        """Writes a file and stages it."""
        (self.folder / name).parent.mkdir(exist_ok=True)
        (self.folder / name).write_text(text, encoding="utf-8")
        self.sound("git", "add", "--", name)

    def head(self) -> str:
        return self.sound("git", "rev-parse", "HEAD").strip()

    def commit_passes(self) -> None:
        before = self.head()
        self.sound("git", "commit", "--message", "An edit")
        assert self.head() != before

    def commit_is_blocked(self) -> str:
        """What the blocked commit printed."""
        before = self.head()
        code, printed = self.run("git", "commit", "--message", "An edit")
        assert code != 0, printed
        assert self.head() == before
        return printed


@pytest.fixture(scope="module")
def hook_environment(environment: dict[str, str], tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """With a home of its own for what pre-commit installs, once for all tests here."""
    return {**environment, "PRE_COMMIT_HOME": str(tmp_path_factory.mktemp("pre-commit"))}


@pytest.fixture
def team(tmp_path: Path, hook_environment: dict[str, str], scratch: Path) -> Team:
    return Team(tmp_path, hook_environment, scratch)


def test_a_bad_edit_is_blocked_until_it_is_mended(team: Team) -> None:
    team.write(PROGRAMME, CARELESS)
    printed = team.commit_is_blocked()
    assert f"{PROGRAMME}:{place(CARELESS, 'stiff-leg')}: warning: knee-flexion-missing: " in printed
    assert "Lower B" in printed
    assert printed.rstrip().endswith("Blocked. Nothing was committed.")
    team.write(PROGRAMME, CARELESS.replace("leg extension", "lying leg curl", 1))
    team.commit_passes()


def test_an_edit_of_an_athlete_file_reviews_the_programmes_that_name_it(team: Team) -> None:
    team.write(PROGRAMME, CARELESS)
    team.sound("git", "commit", "--no-verify", "--message", "Past the hook")
    team.write("athletes/orla.athlete.yaml", ATHLETE + "age: 31\n")
    printed = team.commit_is_blocked()
    assert f"{PROGRAMME}:{place(CARELESS, 'stiff-leg')}: warning: knee-flexion-missing: " in printed
    assert "Reviewed 1 programme, 1 athlete file" in printed


@pytest.mark.parametrize("name", ["-legs.programme.yaml", "--as.programme.yml", "two words.programme.yaml"])
def test_an_awkward_file_name_is_still_a_file_name(team: Team, name: str) -> None:
    text = CARELESS.replace("../athletes/orla.athlete.yaml", "{name: Nia}")
    team.write(name, text)
    assert f"{name}:{place(text, 'stiff-leg')}: warning: knee-flexion-missing: " in team.commit_is_blocked()
    team.write(name, text.replace("leg extension", "seated leg curl", 1))
    team.commit_passes()


def test_other_files_are_no_business_of_the_hook(team: Team) -> None:
    team.write("menu.yaml", "porridge: [oats, milk\n")
    team.commit_passes()


def test_the_mending_hook_writes_what_is_certain_and_stops_that_commit(team: Team) -> None:
    hooks = (team.folder / ".pre-commit-config.yaml").read_text(encoding="utf-8")
    team.write(
        ".pre-commit-config.yaml",
        hooks.replace("- id: spotline\n", "- id: spotline-mend\n      - id: spotline\n"),
    )
    team.write(
        PROGRAMME,
        SOUND.replace("seated leg curl", "seated leg crul").replace("rest: 2 min", "rets: 2 min", 1),
    )
    assert "files were modified by this hook" in team.commit_is_blocked()
    assert (team.folder / PROGRAMME).read_text(encoding="utf-8") == SOUND
    team.write("athletes/orla.athlete.yaml", ATHLETE + "age: 31\n")
    team.write(PROGRAMME, SOUND.replace("Legs before", "Legs long before"))
    team.commit_passes()


DESK = """\
programme: At the desk
athlete: ../athletes/pim.athlete.yaml
goal: general health
focus: [trunk]
starts: 2026-01-05
weeks: 4
sessions:
  - session: A
    exercises: [{exercise: front plank, sets: 3, hold: 30 s, rest: 1 min}]
  - session: B
    exercises: [{exercise: side plank, sets: 3, hold: 30 s, side: each, rest: 1 min}, {exercise: quay press, sets: 2}]
"""
OWN = "exercises:\n  - name: quay squat\n    implement: barbell\n    path: {hip: [90, 0], knee: [100, 0], ankle: 20}\n"


def test_twelve_commits(team: Team) -> None:
    """What a season brings: each is passed or blocked for what it does to the files that lean on it."""
    athlete = "athletes/orla.athlete.yaml"
    done: list[str] = []

    def passes(what: str) -> str:
        printed = team.sound("git", "commit", "--message", what)
        done.append(what)
        return printed

    def blocked(what: str) -> str:
        done.append(what)
        return team.commit_is_blocked()

    team.write("menu.txt", "porridge\n")
    assert "Reviewed" not in passes("1 an unrelated change: nothing is reviewed")

    team.sound("git", "mv", athlete, "athletes/orla-b.athlete.yaml")
    printed = blocked("2 an athlete's file is renamed: its programmes no longer find it")
    assert f"{PROGRAMME}:2:10: error: athlete-missing: " in printed
    assert "Write ../athletes/orla-b.athlete.yaml" in printed
    team.write(PROGRAMME, SOUND.replace("orla.", "orla-b."))
    assert "Reviewed 1 programme, 1 athlete file" in passes("3 the path is mended, and the rename passes")

    team.sound("git", "rm", "--quiet", "athletes/orla-b.athlete.yaml")
    assert "athlete-missing" in blocked("4 the athlete's file is deleted, and nothing else")
    team.sound("git", "reset", "--quiet", "--hard")

    team.write("spotline.yaml", "weekly limits: {quadriceps: 4}\n")
    printed = blocked("5 a limit is lowered below what programmes hold")
    assert PROGRAMME in printed
    assert "weekly-sets-over-limit" in printed
    team.write("spotline.yaml", "weekly limits: {quadriceps: 18}\nexercises: [quay.exercises.yaml]\n")
    team.write("quay.exercises.yaml", OWN)
    team.write(PROGRAMME, SOUND.replace("orla.", "orla-b.").replace("back squat", "quay squat"))
    passes("6 exercises of the team's own are used")

    team.write("quay.exercises.yaml", OWN.replace("quay squat", "dock squat"))
    printed = passes("7 the exercises file changes: a note says which lift is no longer known")
    assert f"{PROGRAMME}:11:20: note: exercise-unknown: `quay squat`" in printed
    team.sound("git", "reset", "--quiet", "--hard", "HEAD~1")

    team.write("athletes/orla-b.athlete.yaml", ATHLETE + "equipment: [dumbbells]\n")
    printed = passes("8 equipment is taken away: a note says what lacks")
    assert "equipment-missing" in printed
    assert PROGRAMME in printed
    team.sound("git", "reset", "--quiet", "--hard")

    team.write("athletes/pim.athlete.yaml", "name: Pim\nlevel: novice\n")
    team.write("programmes/desk.programme.yaml", DESK)
    printed = passes("9 a programme of another athlete: its notes are shown, and nothing of Orla's")
    assert ": note: " in printed
    assert PROGRAMME not in printed

    team.write(
        PROGRAMME, SOUND.replace("orla.", "orla-b.").replace("sets: 4, reps: 5-8", "sets: 40, reps: 5-8")
    )
    team.sound("git", "commit", "--quiet", "--no-verify", "--message", "Past the hook")
    record = team.program("review", "--record-known")
    assert record[0] == 0, record[1]
    team.sound("git", "add", "--all")
    passes("10 what is found is put on record")
    team.write(
        PROGRAMME, SOUND.replace("orla.", "orla-b.").replace("sets: 4, reps: 5-8", "sets: 44, reps: 5-8")
    )
    assert "number-implausible" in blocked("11 what is on record gets worse")
    team.sound("git", "reset", "--quiet", "--hard")

    team.sound("git", "revert", "--no-commit", "HEAD")
    assert "number-implausible" in blocked("12 the record is taken back: what it held blocks again")
    team.sound("git", "reset", "--quiet", "--hard")

    team.sound("git", "checkout", "--quiet", "-b", "side", "HEAD")
    team.write(
        "programmes/more.programme.yaml", DESK.replace("pim", "lou").replace("athlete:", "note: x\nathlete:")
    )
    team.write("athletes/lou.athlete.yaml", "name: Lou\nlevel: novice\n")
    team.sound("git", "commit", "--quiet", "--message", "A programme of Lou's")
    team.sound("git", "checkout", "--quiet", "main")
    team.sound("git", "rm", "--quiet", "-r", "programmes/desk.programme.yaml")
    team.sound("git", "commit", "--quiet", "--message", "Desk work is over")
    team.sound("git", "merge", "--no-commit", "--no-ff", "side")
    team.sound("git", "mv", "athletes/lou.athlete.yaml", "athletes/lu.athlete.yaml")
    assert "programmes/more.programme.yaml" in blocked("13 a merge that breaks what it brings")
    team.sound("git", "mv", "athletes/lu.athlete.yaml", "athletes/lou.athlete.yaml")
    passes("14 a merge")
    assert len(done) == 14


def test_over_all_files_and_over_a_range_as_ci_does(team: Team) -> None:
    team.write(PROGRAMME, CARELESS)
    team.sound("git", "commit", "--no-verify", "--message", "Past the hook")
    base = team.head()
    assert "Reviewed" not in team.sound(sys.executable, "-m", "pre_commit", "run")
    code, printed = team.run(sys.executable, "-m", "pre_commit", "run", "--all-files")
    assert code == 1
    assert "Reviewed 1 programme, 1 athlete file" in printed
    team.write("athletes/pim.athlete.yaml", "name: Pim\n")
    team.sound("git", "commit", "--quiet", "--message", "Pim")
    words = ["-m", "pre_commit", "run", "--from-ref", base, "--to-ref", "HEAD"]
    assert "Reviewed 1 athlete file" in team.sound(sys.executable, *words)
    code, printed = team.run(sys.executable, *[base + "~1" if word == base else word for word in words])
    assert code == 1
    assert "Reviewed 1 programme, 2 athlete files" in printed


def test_what_git_does_not_hold_is_no_part_of_a_commit(team: Team) -> None:
    (team.folder / "programmes/draft.programme.yaml").write_text(CARELESS)
    (team.folder / "athletes/pim.athlete.yaml").write_text("name: Pim\n")
    team.write("menu.txt", "porridge\n")
    team.commit_passes()
    team.write("programmes/desk.programme.yaml", DESK)
    assert "athlete-not-in-git" in team.commit_is_blocked()
