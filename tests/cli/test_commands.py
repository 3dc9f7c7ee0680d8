"""A command is declared in one place: the usage and the help are put together from what stands beside it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from spotline.lint.cli.commands import COMMANDS, HELP, _command
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
    del COMMANDS["shout"], HELP["shout"]


def test_the_help_shows_every_command_in_one_order(capsys: pytest.CaptureFixture[str]) -> None:
    main(["--help"])
    usage, paragraphs, _ = capsys.readouterr().out.split("\n\n")
    *calls, others = usage.splitlines()
    assert [call.removeprefix("usage: ").split()[1] for call in calls] == list(COMMANDS)
    assert others == "       spotline --help | --version"
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
