"""Texts that are open in an editor stand in front of their files."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spotline.lint.project.overlay import Overlay
from spotline.lint.text.repository import FileResolver, SourceFile

PLAN = "plan.programme.yaml"


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The working folder, with a programme in it."""
    (tmp_path / PLAN).write_text("on: disk\n", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def file(name: str = PLAN) -> SourceFile:
    return FileResolver().file(name)


def test_a_text_is_read_in_front_of_its_file_until_it_is_closed() -> None:
    overlay = Overlay()
    overlay.open(PLAN, "on: desk\n")
    assert overlay.read(file()).text.content == "on: desk\n"
    overlay.close(PLAN)
    assert overlay.read(file()).text.content == "on: disk\n"


def test_whatever_way_leads_to_the_file(folder: Path) -> None:
    os.symlink(PLAN, "also.programme.yaml")
    overlay = Overlay()
    overlay.open(str(folder / "also.programme.yaml"), "a: 1\n")
    assert overlay.read(file()).text.content == "a: 1\n"
    assert overlay.read(file("./also.programme.yaml")).text.name == "./also.programme.yaml"
    assert list(overlay.opened()) == [os.path.realpath(PLAN)]


def test_a_text_without_a_file_is_there() -> None:
    overlay = Overlay()
    new = file("new.athlete.yaml")
    assert not overlay.exists(new)
    assert not overlay.is_file(new)
    overlay.open("new.athlete.yaml", "name: Mara\n")
    assert overlay.exists(new)
    assert overlay.is_file(new)
    assert overlay.exists(file())


def test_a_folder_is_there_but_no_file(folder: Path) -> None:
    (folder / "mara.athlete.yaml").mkdir()
    assert Overlay().exists(file("mara.athlete.yaml"))
    assert not Overlay().is_file(file("mara.athlete.yaml"))


@pytest.mark.parametrize("change", ["text", "file", "none"])
def test_the_version_changes_with_the_text_and_the_file(folder: Path, change: str) -> None:
    overlay = Overlay()
    before = overlay.version(file())
    if change == "text":
        overlay.open(PLAN, "on: disk\n")
    elif change == "file":
        (folder / PLAN).write_text("on: disk still\n", encoding="utf-8")
    assert (overlay.version(file()) == before) == (change == "none")


def test_the_version_changes_when_a_link_leads_elsewhere(folder: Path) -> None:
    (folder / "other.programme.yaml").write_text("on: disk\n", encoding="utf-8")
    link = folder / "link.programme.yaml"
    link.symlink_to(PLAN)
    linked = file("link.programme.yaml")
    before = Overlay().version(linked)
    link.unlink()
    link.symlink_to("other.programme.yaml")
    assert Overlay().version(linked) != before


def test_no_file_and_no_text_have_no_version() -> None:
    assert Overlay().version(file("nowhere.yaml")) == Overlay().version(file("a\0b")) == ()
