"""An earlier version of a repository, as git holds it: read by git's own command, the checkout untouched."""

from __future__ import annotations

import os
import subprocess

from ..team.known_findings import NAME as KNOWN_FINDINGS
from ..text.files import LONGEST_FILE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

ENDINGS = (".yaml", ".yml")
"""Ends of the names of files that a review may read."""

SAFE = ("-c", "core.fsmonitor=false", "-c", "core.quotePath=false")
"""Settings that keep a repository's own from running a program."""

PATIENCE = 60
"""Seconds that git may take."""

LINK = "120000"
"""The mode of a symbolic link in git's tree."""


class RevisionError(Exception):
    """git cannot give an earlier version; says why."""


class Repository:
    """A git repository: ``root`` is the real path of its top folder. Raises `RevisionError`."""

    __slots__ = ("_log", "root")

    def __init__(self, folder: str) -> None:
        out = _git(folder or os.curdir, "rev-parse", "--show-toplevel", "--absolute-git-dir")
        top, own = (os.fsdecode(line) for line in out.rstrip(b"\n").split(b"\n"))
        self.root = os.path.realpath(top)
        self._log = os.path.join(own, "logs", "HEAD")

    def stamp(self) -> tuple[int, int] | None:
        """What differs once there is another commit; None where git keeps no log that would tell."""
        try:
            found = os.stat(self._log)
        except OSError:
            return None
        return found.st_mtime_ns, found.st_size

    def commit(self, revision: str) -> str:
        """The id of the commit that a revision names. Raises `RevisionError`."""
        try:
            out = _git(
                self.root, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}"
            )
        except RevisionError as fault:
            raise RevisionError(f"there is no revision {revision!r} in this repository") from fault
        return out.decode().strip()

    def changed_since(self, commit: str) -> list[str]:
        """Paths from the root of files that differ from a commit, and of those that git does not know yet."""
        # Named by the commit's id, so none of these can be taken for an option.
        known = _git(
            self.root,
            *["diff", "--name-only", "--no-renames", "--no-ext-diff", "--no-textconv", "-z"],
            commit,
            "--",
        )
        others = _git(self.root, "ls-files", "--others", "--exclude-standard", "-z")
        listed = [*known.split(b"\0"), *others.split(b"\0")]
        paths = [os.fsdecode(one) for one in listed if one]
        return sorted({one for one in paths if one.endswith(ENDINGS) or is_record(one)})

    def write_at(self, commit: str, folder: str) -> None:
        """Writes the files of a commit that a review may read into an empty folder, as a root."""
        os.mkdir(os.path.join(folder, ".git"))
        wanted = list(self._files_at(commit))
        asked = b"".join(identity.encode() + b"\n" for _, identity, _ in wanted)
        out = _git(self.root, "cat-file", "--batch", given=asked)
        at = 0
        for mode, _, path in wanted:
            head_end = out.index(b"\n", at)
            size = int(out[at:head_end].split()[2])
            content = out[head_end + 1 : head_end + 1 + size]
            at = head_end + size + 2
            _write(folder, path, content, is_link=mode == LINK)

    def _files_at(self, commit: str) -> Iterator[tuple[str, str, str]]:
        """Mode, id and path from the root of each file that a review may read."""
        out = _git(self.root, "ls-tree", "-r", "-l", "-z", "--full-tree", commit)
        for entry in out.split(b"\0"):
            about, tab, name = entry.partition(b"\t")
            if not tab:
                continue
            mode, kind, identity, size = about.decode().split()
            path = os.fsdecode(name)
            readable = path.endswith(ENDINGS) or is_record(path)
            if kind == "blob" and readable and int(size) <= LONGEST_FILE and _is_plain(path):
                yield mode, identity, path


def is_record(path: str) -> bool:
    """Whether a path is that of the record of known findings."""
    return os.path.basename(path) == KNOWN_FINDINGS


def _is_plain(path: str) -> bool:
    """Whether a path stays in the folder that it starts from."""
    return not os.path.isabs(path) and not {"..", ".", ".git", ""}.intersection(path.split("/"))


def _write(folder: str, path: str, content: bytes, *, is_link: bool) -> None:
    to = os.path.join(folder, *path.split("/"))
    os.makedirs(os.path.dirname(to), exist_ok=True)
    if not is_link:
        with open(to, "xb") as file:
            file.write(content)
        return
    target = os.fsdecode(content)
    inside = os.path.normpath(os.path.join(os.path.dirname(path), target))
    if not os.path.isabs(target) and _is_plain(inside.replace(os.sep, "/")):
        os.symlink(target, to)


def _git(folder: str, *words: str, given: bytes = b"") -> bytes:
    """What git prints when it is run in a folder. Raises `RevisionError`."""
    try:
        done = subprocess.run(
            ["git", *SAFE, "-C", folder, *words], input=given, capture_output=True, timeout=PATIENCE
        )
    except FileNotFoundError as fault:
        raise RevisionError("git is not installed here") from fault
    except subprocess.TimeoutExpired as fault:
        raise RevisionError(f"git {words[0]} takes longer than {PATIENCE} s") from fault
    if done.returncode:
        lines = done.stderr.decode(errors="replace").strip().splitlines()
        raise RevisionError(lines[0] if lines else f"git {words[0]} failed")
    return done.stdout
