"""A command is declared in one place: the usage and the help are put together from what stands beside it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from spotline.lint.cli.commands import COMMANDS, EXAMPLES, HELP, _command
from spotline.lint.cli.main import main


@pytest.fixture
def shout() -> Iterator[None]:
    """One more command, declared as the others are."""

    @_command(
        "shout [WORD ...]",
        """
        says it louder
        than before.
        """,
    )
    def _shout(words: list[str]) -> int:
        print(*map(str.upper, words))
        return 0

    yield
    del COMMANDS["shout"], HELP["shout"], EXAMPLES["shout"]


def test_the_help_shows_every_command_in_one_order(capsys: pytest.CaptureFixture[str]) -> None:
    main(["--help"])
    usage, paragraphs, _ = capsys.readouterr().out.split("\n\n")
    *calls, others = usage.splitlines()
    assert [call.removeprefix("usage: ").split()[1] for call in calls] == list(COMMANDS)
    assert others == "       spotline [COMMAND] --help | --version"
    assert [line.split()[0] for line in paragraphs.splitlines() if line[0] != " "] == list(COMMANDS)


@pytest.mark.usefixtures("shout")
def test_a_new_command_is_run_and_helped_with(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["shout", "up", "--now"]) == 0
    assert capsys.readouterr().out == "UP --NOW\n"
    main(["help"])
    said = capsys.readouterr().out
    assert "\n       spotline shout [WORD ...]\n" in said
    assert "\nshout    says it louder\n         than before.\n" in said
    assert main(["shuot"]) == 2
    assert capsys.readouterr().err.startswith("spotline: there is no command 'shuot'; did you mean shout?\n")


@pytest.mark.parametrize("name", COMMANDS)
@pytest.mark.parametrize("words", [["{}", "--help"], ["{}", "-h"], ["help", "{}"], ["{}", "x", "--help"]])
def test_each_command_has_a_help_of_its_own(
    name: str, words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([word.format(name) for word in words]) == 0
    said = capsys.readouterr().out
    usage, about, *_, closing = said.rstrip().split("\n\n")
    assert usage.startswith(f"usage: spotline {name}")
    assert about[0].isupper()
    assert about.endswith(".")
    assert closing.startswith("Exit code: ")
    assert "{" not in said
    assert "usage: spotline" not in about


@pytest.mark.parametrize("name", COMMANDS)
def test_the_examples_of_a_command_can_be_followed(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    """Each begins with the command and takes options that it has."""
    main([name, "--help"])
    said = capsys.readouterr().out
    for example in EXAMPLES[name]:
        assert f"\n  spotline {example}\n" in said
        first, *words = example.split()
        assert first == name
        assert all(word in HELP[name][0] for word in words if word.startswith("--"))


def test_behind_the_end_of_the_options_help_is_the_name_of_a_file(
    capsys: pytest.CaptureFixture[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["review", "--", "--help"]) == 2
    assert "usage" not in capsys.readouterr().out


def test_the_help_of_a_command_that_there_is_not_is_refused(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["help", "revew"]) == 2
    assert capsys.readouterr().err.startswith("spotline: there is no command 'revew'; did you mean review?\n")
