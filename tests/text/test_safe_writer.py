"""A file is replaced whole or not at all, and never outside the repository."""

from __future__ import annotations

import os
import signal
from pathlib import Path

import pytest

from spotline.lint.text import safe_writer
from spotline.lint.text.safe_writer import NotWrittenError, replace

OLD, NEW = b"old: 1\n" * 40, b"new: 2\n" * 40


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "plan.programme.yaml"
    path.write_bytes(OLD)
    return path


def refusal(path: Path, root: Path, before: bytes | None = OLD) -> str:
    with pytest.raises(NotWrittenError) as caught:
        replace(str(path), before, NEW, str(root))
    return str(caught.value)


def test_the_file_holds_the_new_bytes_and_keeps_its_mode(file: Path) -> None:
    file.chmod(0o640)
    replace(str(file), OLD, NEW, str(file.parent))
    assert (file.read_bytes(), file.stat().st_mode & 0o777) == (NEW, 0o640)
    assert os.listdir(file.parent) == [file.name]


def test_a_new_file_is_made_once(tmp_path: Path) -> None:
    path = tmp_path / "new.yaml"
    replace(str(path), None, NEW, str(tmp_path))
    assert path.read_bytes() == NEW
    assert "it has changed since it was read" in refusal(path, tmp_path, None)


@pytest.mark.parametrize("now", [OLD + b"# more\n", OLD[:-1], b""])
def test_what_has_changed_since_stays(file: Path, now: bytes) -> None:
    file.write_bytes(now)
    assert "it has changed since it was read" in refusal(file, file.parent)
    assert file.read_bytes() == now
    assert os.listdir(file.parent) == [file.name]


def test_a_link_is_followed_inside_the_repository_and_stays_a_link(file: Path) -> None:
    link = file.parent / "link.programme.yaml"
    link.symlink_to(file.name)
    replace(str(link), OLD, NEW, str(file.parent))
    assert link.is_symlink()
    assert file.read_bytes() == NEW


@pytest.mark.parametrize("by_folder", [False, True])
def test_a_link_out_of_the_repository_is_not_followed(file: Path, by_folder: bool) -> None:
    inside = file.parent / "repository"
    inside.mkdir()
    link = inside / "link"
    link.symlink_to(file.parent if by_folder else file)
    path = link / file.name if by_folder else link
    assert "a link that leads out of the repository" in refusal(path, inside)
    assert file.read_bytes() == OLD


def test_a_file_that_may_not_be_written_stays(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(
        os, "access", lambda path, mode: False
    )  # the tests may run as root, who may write all
    assert "this account may not write it" in refusal(file, file.parent)


def test_a_folder_is_no_file(tmp_path: Path) -> None:
    folder = tmp_path / "folder.programme.yaml"
    folder.mkdir()
    assert "it is no file" in refusal(folder, tmp_path)


def test_a_planted_file_of_the_same_name_is_not_written_into(
    file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    planted = file.parent / "planted"
    (file.parent / "victim").write_bytes(b"kept")
    planted.symlink_to("victim")
    monkeypatch.setattr(safe_writer, "_partial", lambda real: str(planted))
    assert "was not written" in refusal(file, file.parent)
    assert (file.parent / "victim").read_bytes() == b"kept"
    assert file.read_bytes() == OLD


def test_an_open_file_on_windows_is_told_in_words(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def held(*paths: str) -> None:
        raise PermissionError(13, "Access is denied")

    monkeypatch.setattr(os, "replace", held)
    assert "another program holds it open" in refusal(file, file.parent)
    assert os.listdir(file.parent) == [file.name]


def _write_for_ever(path: str, root: str, told: int) -> None:
    """What a child does until it is killed: one text in the place of the other; a byte for each."""
    os.fsync = lambda handle: None  # a killed process loses nothing that the system holds
    old, new = (OLD, NEW) if Path(path).read_bytes() == OLD else (NEW, OLD)
    while True:
        replace(path, old, new, root)
        old, new = new, old
        os.write(told, b".")


def test_300_kills_while_writing_leave_the_old_file_or_the_new_one(file: Path) -> None:
    """Each child is killed once it has replaced the file a few times, at whatever moment it has come to."""
    for number in range(300):
        listens, told = os.pipe()
        child = os.fork()
        if not child:
            try:
                _write_for_ever(str(file), str(file.parent), told)
            finally:
                os._exit(1)
        os.close(told)
        os.read(listens, 1)
        for _ in range(number % 3):
            os.read(listens, 1)
        os.kill(child, signal.SIGKILL)
        _, how = os.waitpid(child, 0)
        os.close(listens)
        assert os.WTERMSIG(how) == signal.SIGKILL
        assert file.read_bytes() in (OLD, NEW)
    assert all(path.suffix == ".part" for path in file.parent.iterdir() if path != file)
