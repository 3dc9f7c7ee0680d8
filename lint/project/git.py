"""What git says of a repository: what has changed, what it holds. It is only asked, never told to change.

Git's own program is run, never one that lies in the checkout, and no helper program that the checkout's
settings name for watching files, showing differences or fetching what is missing.
"""

from __future__ import annotations

import os

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

_QUIET = ("--no-optional-locks", "-c", "core.fsmonitor=false", "-c", "diff.relative=false")
"""No lock is taken for a mere question, no watching program started; paths are those from the root."""

_DIFF = ("-z", "-M", "--no-ext-diff", "--no-textconv", "--ignore-submodules=all")

LINK = "120000"
"""The mode by which git notes a link."""


class GitError(Exception):
    """Git could not answer; the message says why, in one line."""


class Changes:
    """What differs between a revision and the work tree, as paths from the root with / between folders.

    ``there`` are files changed or added, ``gone`` those deleted or renamed, ``renamed`` the new path of each
    that git takes for renamed; ``unknown`` are files that git was never told of. Those ``not_staged`` are not
    as git holds them.
    """

    __slots__ = ("gone", "not_staged", "renamed", "there", "unknown")

    def __init__(self) -> None:
        self.there: list[str] = []
        self.gone: list[str] = []
        self.renamed: dict[str, str] = {}
        self.unknown: list[str] = []
        self.not_staged: set[str] = set()


class Repository:
    """A git repository, by the root of its work tree. All its methods raise GitError."""

    __slots__ = ("_log", "_program", "root")

    def __init__(self, root: str) -> None:
        self.root = root
        self._program = _program()
        self._log = ""

    def commit(self, revision: str) -> str:
        """The commit that a revision names, which may be a branch, a tag or ``HEAD~3``.

        ``HEAD`` before the first commit gives a tree that holds nothing.
        """
        try:
            return self._line(
                "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}"
            )
        except GitError:
            if revision == "HEAD" and self._line("rev-parse", "--git-dir"):
                return self._line("hash-object", "-t", "tree", "--stdin")
            raise GitError(f"there is no revision {revision!r} in this repository") from None

    @classmethod
    def around(cls, folder: str) -> Repository:
        """The repository that a folder lies in."""
        return cls(os.path.realpath(cls(folder)._line("rev-parse", "--show-toplevel")))

    def stamp(self) -> tuple[int, int] | None:
        """What differs once there is another commit; None where git keeps no log that would tell."""
        if not self._log:
            self._log = self._line("rev-parse", "--path-format=absolute", "--git-path", "logs/HEAD")
        try:
            found = os.stat(self._log)
        except OSError:
            return None
        return found.st_mtime_ns, found.st_size

    def common_ancestor(self, one: str, other: str) -> str:
        """The commit from which two revisions part; the first one where git does not know."""
        try:
            return self._line("merge-base", "--end-of-options", one, other)
        except GitError:
            return self.commit(one)

    def changes(self, commit: str) -> Changes:
        """What differs between a commit and the work tree; see `commit`."""
        found = Changes()
        words = iter(self._names("diff", "--cached", "--name-status", *_DIFF, commit, "--"))
        for status in words:
            path = next(words)
            if status[0] in "RC":
                new = next(words)
                found.there.append(new)
                if status[0] == "R":
                    found.gone.append(path)
                    found.renamed[path] = new
            else:
                (found.gone if status == "D" else found.there).append(path)
        for status, path in self._not_staged():
            found.not_staged.add(path)
            if status == "?":
                found.unknown.append(path)
            else:
                (found.gone if status == "D" else found.there).append(path)
        return found

    def _not_staged(self) -> Iterator[tuple[str, str]]:
        """How each file of the work tree differs from what is staged: a letter, and the path.

        Git compares what the files hold where it must, and writes nothing down of it.
        """
        options = ("--porcelain=v2", "-z", "--untracked-files=all", "--no-renames", "--ignore-submodules=all")
        for line in self._names("status", *options):
            if line.startswith("? "):
                yield "?", line[2:]
            elif line[0] in "1u":
                *about, path = line.split(" ", 8 if line[0] == "1" else 10)
                if about[1][1] != ".":
                    yield about[1][1], path

    def held(self) -> dict[str, tuple[str, str]]:
        """Mode and fingerprint of each file that git holds, by path; none where git sees no change."""
        held: dict[str, tuple[str, str]] = {}
        for line in self._names("ls-files", "--stage", "-v", "-z"):
            about, _, path = line.partition("\t")
            tag, mode, fingerprint, _ = about.split(" ")
            held[path] = mode, fingerprint if tag == "H" else ""
        return held

    def files_at(self, commit: str) -> Iterator[tuple[str, str, int, str]]:
        """Mode, id, size in bytes and path of each file of a commit."""
        for entry in self._names("ls-tree", "-r", "-l", "-z", "--full-tree", commit):
            about, _, path = entry.partition("\t")
            mode, kind, identity, size = about.split()
            if kind == "blob":
                yield mode, identity, int(size), path

    def blobs(self, identities: list[str]) -> Iterator[bytes]:
        """What files held, by their ids, in this order."""
        printed = self._run("cat-file", "--batch", given="".join(f"{one}\n" for one in identities).encode())
        at = 0
        for _ in identities:
            end = printed.index(b"\n", at)
            size = int(printed[at:end].split()[2])
            yield printed[end + 1 : end + 1 + size]
            at = end + size + 2

    def contents(self, commit: str, paths: Iterable[str], most: int) -> Iterator[tuple[str, bytes]]:
        """What files held in a commit, with their paths, but for those of more than ``most`` bytes."""
        asked = [path for path in paths if "\n" not in path]
        if not asked:
            return
        words = "".join(f"{commit}:{path}\n" for path in asked)
        printed = self._run("cat-file", "--batch", given=os.fsencode(words))
        at = 0
        for path in asked:
            end = printed.index(b"\n", at)
            about = printed[at:end].rsplit(b" ", 2)
            at = end + 1
            if about[-1] == b"missing":
                continue
            size = int(about[-1])
            if about[-2] == b"blob" and size <= most:
                yield path, printed[at : at + size]
            at += size + 1

    def _names(self, *words: str) -> list[str]:
        return [os.fsdecode(name) for name in self._run(*words).split(b"\0") if name]

    def _line(self, *words: str) -> str:
        return self._run(*words).decode().strip()

    def _run(self, *words: str, given: bytes = b"") -> bytes:
        import subprocess

        environment = {**os.environ, "GIT_NO_LAZY_FETCH": "1", "GIT_TERMINAL_PROMPT": "0", "LC_ALL": "C"}
        command = [self._program, "-C", self.root, *_QUIET, *words]
        try:
            done = subprocess.run(command, input=given, capture_output=True, env=environment)
        except OSError as fault:
            raise GitError(f"git could not be run ({(fault.strerror or str(fault)).lower()})") from fault
        if done.returncode:
            said = done.stderr.decode(errors="replace").strip().splitlines()
            raise GitError(f"git says: {said[0]}" if said else f"git {words[0]} failed")
        return done.stdout


def _program() -> str:
    """The path of git's program. Never one of the working folder, which some systems would take first."""
    name = "git.exe" if os.name == "nt" else "git"
    for folder in os.environ.get("PATH", os.defpath).split(os.pathsep):
        path = os.path.join(folder, name)
        if os.path.isabs(folder) and os.path.isfile(path) and os.access(path, os.X_OK):
            return path
    raise GitError("there is no git on this computer, or not on its path")
