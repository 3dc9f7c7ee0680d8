"""What the tests share that run git and install the package: a settled environment, the work tree as it is."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent.parent

GIT_SETTINGS = """\
[user]
    name = Scratch
    email = scratch@example.invalid
[init]
    defaultBranch = main
[safe]
    directory = *
"""


@pytest.fixture(scope="session")
def environment(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """The environment without what steers git, Python or pre-commit, and with an identity of its own for git."""
    settings = tmp_path_factory.mktemp("git") / "settings"
    settings.write_text(GIT_SETTINGS)
    steering = ("GIT_", "PYTHON", "PRE_COMMIT", "VIRTUAL_ENV", "SKIP")
    kept = {name: value for name, value in os.environ.items() if not name.startswith(steering)}
    return {**kept, "GIT_CONFIG_GLOBAL": str(settings), "GIT_CONFIG_NOSYSTEM": "1"}


@pytest.fixture(scope="session")
def work_tree(environment: dict[str, str]) -> list[str]:
    """Every file of the work tree as it is, committed or not, but for what git ignores; paths from the root."""
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        env=environment,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    return sorted(name for name in set(listed.split("\0")) if name and (ROOT / name).is_file())


@pytest.fixture(scope="session")
def scratch(
    tmp_path_factory: pytest.TempPathFactory, environment: dict[str, str], work_tree: list[str]
) -> Path:
    """A repository with one commit that holds the work tree as it is."""
    folder = tmp_path_factory.mktemp("scratch") / "spotline"
    for name in work_tree:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / name, folder / name)
    for words in (["init", "--quiet"], ["add", "--all"], ["commit", "--quiet", "--message", "As it is"]):
        subprocess.run(["git", *words], cwd=folder, env=environment, check=True)
    return folder
