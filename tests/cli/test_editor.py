"""The editor command before a server runs: whether it can, and how to get what it lacks."""

from __future__ import annotations

import subprocess
import sys

import pytest

from spotline.lint.version import VERSION

LACKING = 'spotline: the editor needs one thing more: pip install "spotline[editor]"\n'


def run(*words: str, without: str = "") -> subprocess.CompletedProcess[str]:
    """Runs the command in a process of its own, one module of which can be missing."""
    program = (
        "import sys; sys.modules.update(dict.fromkeys(sys.argv.pop(1).split()));"
        "from spotline.lint.cli.main import main; sys.exit(main(sys.argv[1:]))"
    )
    command = [sys.executable, "-c", program, without, *words]
    return subprocess.run(
        command, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False, timeout=60
    )


def test_an_editor_can_ask_for_the_version_before_it_starts_the_server() -> None:
    done = run("editor", "--version")
    assert (done.returncode, done.stdout, done.stderr) == (0, f"spotline {VERSION}\n", "")


@pytest.mark.parametrize("words", [["editor", "--version"], ["editor"], ["editor", "--stdio"]])
def test_without_the_extra_one_sentence_says_how_to_get_it(words: list[str]) -> None:
    done = run(*words, without="pygls")
    assert (done.returncode, done.stdout, done.stderr) == (2, "", LACKING)


def test_names_are_refused() -> None:
    done = run("editor", "plan.programme.yaml")
    assert done.returncode == 2
    assert "takes no names" in done.stderr
