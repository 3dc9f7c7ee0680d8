"""From nothing to the first own review, the hook and the editor: the README's commands, as they stand there."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent.parent


def beginning() -> str:
    """The commands of the section, one block after the other, as one who reads them types them."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    section = readme.partition("\n## From nothing to your first review\n")[2].partition("\n## ")[0]
    return "".join(re.findall(r"^```sh\n(.*?)^```$", section, re.MULTILINE | re.DOTALL))


@pytest.fixture(scope="module")
def clone(scratch: Path, environment: dict[str, str], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A clone in a folder that holds nothing else."""
    folder = tmp_path_factory.mktemp("empty") / "spotline"
    subprocess.run(["git", "clone", "--quiet", str(scratch), str(folder)], env=environment, check=True)
    return folder


def test_the_readmes_commands_lead_from_an_empty_folder_to_a_reviewed_commit(
    clone: Path, environment: dict[str, str]
) -> None:
    commands = beginning()
    for words in (
        "pip install",
        "spotline set-up",
        "spotline review",
        "pre-commit install",
        "git commit",
        "editor",
    ):
        assert words in commands
    home = {"PRE_COMMIT_HOME": str(clone.parent / "hooks"), "HOME": str(clone.parent)}
    done = subprocess.run(
        ["bash", "-e", "-o", "pipefail", "-c", commands],
        cwd=clone,
        env={**environment, **home},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        timeout=600,
    )
    assert done.returncode == 0, done.stdout
    assert re.search(r"^Reviewed 1 programme, 1 athlete file: .*Nothing blocks\.$", done.stdout, re.MULTILINE)
    assert "Passed" in done.stdout
    assert re.search(r"^spotline [0-9.]+$", done.stdout, re.MULTILINE)
    team = clone.parent / "my-team"
    listed = subprocess.run(
        ["git", "ls-files"], cwd=team, env=environment, check=True, capture_output=True, text=True
    ).stdout.split()
    assert "programmes/alex-first.programme.yaml" in listed
    assert "athletes/alex.athlete.yaml" in listed
    spoilt = team / "programmes" / "alex-first.programme.yaml"
    spoilt.write_text(spoilt.read_text(encoding="utf-8").replace("reps:", "resp:", 1), encoding="utf-8")
    path = f"{clone / '.venv' / 'bin'}:{environment['PATH']}"
    blocked = subprocess.run(
        ["git", "commit", "--all", "--message", "A slip"],
        cwd=team,
        env={**environment, **home, "PATH": path},
        capture_output=True,
        text=True,
    )
    assert blocked.returncode == 1
    assert "key-unknown" in blocked.stdout + blocked.stderr
    assert (blocked.stdout + blocked.stderr).rstrip().endswith("Blocked. Nothing was committed.")
    for words in (["git", "checkout", "--quiet", "HEAD", "."], ["spotline", "sheet", str(spoilt)]):
        subprocess.run(words, cwd=team, env={**environment, "PATH": path}, check=True, capture_output=True)
    assert (spoilt.parent / "alex-first.sheet.html").is_file()
    status = ["git", "status", "--porcelain"]
    left = subprocess.run(status, cwd=team, env=environment, check=True, capture_output=True, text=True)
    assert left.stdout == ""
