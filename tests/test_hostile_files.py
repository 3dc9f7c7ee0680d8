"""At least 430 hostile files through the command: located words, no traceback, no hang, bounded memory, right exit."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from spotline.tests.hostile_files import Case, cases

CASES = cases()
SECONDS = 5.0
"""Seconds of CPU that a case may take: no clock on the wall, so a busy machine changes nothing."""
MEGABYTES = 300

LOCATED = re.compile(r"(?m)^.+?:[0-9]+:[0-9]+: (error|warning|note): [a-z0-9-]+: \S")


@pytest.fixture(scope="module")
def server(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[subprocess.Popen[str]]:
    home = tmp_path_factory.mktemp("home")
    (home / "spotline").symlink_to(root, target_is_directory=True)
    environment = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    with subprocess.Popen(
        [sys.executable, str(root / "tests" / "hostile_server.py")],
        env={**environment, "PYTHONPATH": str(home), "HOME": str(home)},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    ) as process:
        yield process
        assert process.stdin is not None
        process.stdin.close()


def result_of(case: Case, folder: Path, server: subprocess.Popen[str]) -> dict[str, Any]:
    """What came of a case; its files are gone afterwards, as there are many and some are large."""
    root = folder / "team"
    (root / ".git").mkdir(parents=True)
    (folder.parent / "outside.yaml").write_text("name: Outside\n")
    for name, made in case.files.items():
        path = root / name
        if callable(made):
            made(path)
        else:
            path.write_bytes(made)
    assert server.stdin is not None
    assert server.stdout is not None
    print(json.dumps([str(root), case.words]), file=server.stdin, flush=True)
    return json.loads(server.stdout.readline())


def test_there_are_430_of_them_each_once() -> None:
    names = [case.name for case in CASES]
    assert len(names) == len(set(names)) >= 430


@pytest.mark.parametrize("case", CASES, ids=lambda case: re.sub(r"[^\w .:-]", "_", case.name))
def test_a_hostile_file_is_handled(case: Case, tmp_path: Path, server: subprocess.Popen[str]) -> None:
    result = result_of(case, tmp_path, server)
    told = f"{result['out'][-1500:]}\n{result['err'][-1500:]}"
    assert "Traceback" not in told
    assert "fault of our own" not in told
    assert "rule-failed" not in told
    assert result["cpu"] < SECONDS, told
    assert result["megabytes"] < MEGABYTES
    assert result["code"] in case.codes, told
    assert LOCATED.search(result["out"]) or not case.located, told
    assert "root:" not in told  # nothing of a file outside is shown
    assert "Outside" not in told
