"""Paths are resolved to files: how they are shown, what they really are, and whose they are."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spotline.lint.text.repository import FileResolver, kind_of

PLAN = "plan.programme.yaml"


@pytest.fixture(autouse=True)
def root(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A repository with a folder of plans, and the working folder in it."""
    root = Path(os.path.realpath(tmp_path)) / "team"
    (root / "plans").mkdir(parents=True)
    (root / ".git").mkdir()
    (root / "plans" / PLAN).write_text("", encoding="utf-8")
    monkeypatch.chdir(root)
    return root


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("a.programme.yaml", "programme"),
        ("b/a.programme.yml", "programme"),
        ("a.athlete.yaml", "athlete"),
        ("a.athlete.yml", "athlete"),
        ("x/spotline.yaml", "team"),
        ("a.yaml", ""),
        ("programme.yaml", ""),
        ("a.programme.yaml.orig", ""),
        ("a.Programme.yaml", ""),
    ],
)
def test_the_kind_of_a_file(path: str, kind: str) -> None:
    assert kind_of(path) == kind


@pytest.mark.parametrize("name", [f"plans/{PLAN}", f"./plans/{PLAN}", f"plans/../plans/{PLAN}"])
def test_a_file_is_shown_as_it_was_named(root: Path, name: str) -> None:
    file = FileResolver().file(name)
    assert (file.name, file.kind) == (name, "programme")
    assert (file.real, file.folder) == (str(root / "plans" / PLAN), str(root / "plans"))
    assert (file.root, file.path_from_root) == (str(root), f"plans/{PLAN}")


def test_a_link_belongs_where_it_is_shown_but_is_the_file_it_leads_to(root: Path) -> None:
    os.symlink(f"plans/{PLAN}", "link.programme.yaml")
    files = FileResolver()
    link = files.file("link.programme.yaml")
    assert (link.real, link.folder) == (str(root / "plans" / PLAN), str(root))
    assert files.file(f"plans/{PLAN}").real == link.real


def test_one_name_is_one_value() -> None:
    files = FileResolver()
    assert files.file(PLAN) is files.file(PLAN)
    assert files.named("plans", f"../{PLAN}") is files.file(PLAN)


def test_entries_of_a_folder_are_the_files_of_their_names(root: Path) -> None:
    os.symlink(PLAN, "plans/link.programme.yaml")
    files = FileResolver()
    for folder in ("plans", "./plans"):
        with os.scandir(folder) as entries:
            found = [files.entry(entry, str(root / "plans")) for entry in entries]
        for one in found:
            assert one is files.file(one.name)
            fresh = FileResolver().file(one.name)
            assert (one.real, one.folder, one.kind) == (fresh.real, fresh.folder, fresh.kind)
        assert {one.name for one in found} == {f"plans/{PLAN}", "plans/link.programme.yaml"}


@pytest.mark.parametrize(
    ("folder", "path", "name"),
    [
        ("plans", "mara.athlete.yaml", "plans/mara.athlete.yaml"),
        ("plans", "../athletes/mara.athlete.yaml", "athletes/mara.athlete.yaml"),
        ("", "../mara.athlete.yaml", "../mara.athlete.yaml"),
        ("plans", "", "plans"),
        ("", "", "."),
        ("plans", "a\0b", "plans/a\0b"),
    ],
)
def test_a_path_that_is_named_in_a_file(folder: str, path: str, name: str) -> None:
    assert FileResolver().named(folder, path).name == name


def test_what_no_file_can_be_called_is_told_apart_all_the_same(root: Path) -> None:
    file = FileResolver().file("plans/a\0.programme.yaml")
    assert file.real == str(root / "plans" / "a\0.programme.yaml")
    assert not os.path.exists(file.real)


@pytest.mark.parametrize(
    ("marks", "at"),
    [
        (["team/.git"], "team"),
        (["team/.git", "team/plans/spotline.yaml"], "team"),
        (["team/spotline.yaml"], "team"),
        (["team/spotline.yaml", "team/plans/spotline.yaml"], "team/plans"),
        ([], "team"),  # the working folder
    ],
)
def test_the_root_of_a_repository(root: Path, marks: list[str], at: str) -> None:
    (root / ".git").rmdir()
    for mark in marks:
        (root.parent / mark).write_text("", encoding="utf-8")
    assert FileResolver().file(f"plans/{PLAN}").root == str(root.parent / at)


def test_elsewhere_without_a_mark_it_is_the_folder_above(root: Path) -> None:
    other = root.parent / "other" / "plans"
    other.mkdir(parents=True)
    assert FileResolver().file(str(other / PLAN)).root == str(other.parent)
