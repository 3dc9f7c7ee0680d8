"""The command that editors start."""

from __future__ import annotations

import sys

import pytest

from spotline.lint.cli.main import main


@pytest.mark.parametrize(
    ("words", "reason"),
    [
        (["--port", "1"], "there is no option '--port'"),
        (["--stdio=yes"], "--stdio takes no value"),
        (["plan.programme.yaml"], "the editor command takes no names"),
    ],
)
def test_words_that_cannot_be_followed(
    words: list[str], reason: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["editor", *words]) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.startswith(f"spotline: {reason}\nusage: ")


@pytest.mark.parametrize("missing", ["pygls", "lsprotocol"])
def test_the_extra_is_named_where_it_is_missing(
    missing: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    loaded = [name for name in sys.modules if name.startswith(("spotline.lint.editor.", f"{missing}."))]
    for name in loaded:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, missing, None)
    assert main(["editor", "--stdio"]) == 2
    said = capsys.readouterr()
    assert (said.out, said.err.count("\n")) == ("", 1)
    assert said.err.endswith('pip install "spotline[editor]"\n')


def test_a_module_of_ours_that_is_missing_is_no_missing_extra(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setitem(sys.modules, "spotline.lint.editor.server", None)
    assert main(["editor"]) == 2
    said = capsys.readouterr().err
    assert "by a fault of our own (ModuleNotFoundError: import of spotline.lint.editor.server" in said
    assert "pip install" not in said
    monkeypatch.setenv("SPOTLINE_TRACEBACK", "1")
    with pytest.raises(ModuleNotFoundError):
        main(["editor"])


def test_the_command_is_in_the_help(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--help"]) == 0
    assert "       spotline editor" in capsys.readouterr().out
