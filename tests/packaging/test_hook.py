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
    assert "Blocked." in printed
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
    text = CARELESS.replace("../athletes", "athletes")
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
