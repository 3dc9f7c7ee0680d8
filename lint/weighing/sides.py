"""The two sides of a comparison: which files, read and reviewed, and which of them is which."""

from __future__ import annotations

import os
from tempfile import TemporaryDirectory

from ..project.discovery import discovered
from ..project.git import Repository
from ..project.review import review_on
from ..project.workspace import Workspace
from ..team.waivers import holding
from ..text.repository import SETTINGS, kind_of, shown
from ..wording.words import counted_noun, plain
from .comparison import Compared, Comparison, compared_programme
from .difference import Difference
from .person import athlete_changes, renamed
from .revision import changed_since, is_record, write_at

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import date

    from ..project.results import FileReview
    from ..team.waivers import Waiver

ALIKE = 0.5
"""The share of lines in common from which a file gone and a file new are one that was renamed."""


class NothingToCompareError(Exception):
    """A side holds nothing that can be compared; says which, and why."""


class ReviewedSide:
    """One side: the ``base`` from which its files are named, and the ``paths`` asked for on it."""

    def __init__(self, base: str, paths: list[str], today: date) -> None:
        self.base = os.path.realpath(base)
        self.paths = paths
        self.workspace = Workspace(today)
        self.reviews: dict[str, FileReview] = {}

    def key(self, real: str) -> str:
        """The path of a file from the base."""
        return os.path.relpath(real, self.base).replace(os.sep, "/")

    def found(self) -> set[str]:
        """The keys of the files that a review of its paths takes in."""
        return (
            {self.key(file.real) for file in discovered(self.workspace, self.paths)} if self.paths else set()
        )

    def add(self, keys: Iterable[str]) -> None:
        """Asks for further files, by their keys, where they are there."""
        known = self.found()
        paths = [shown(os.path.join(self.base, *key.split("/"))) for key in sorted(keys) if key not in known]
        self.paths += [path for path in paths if os.path.isfile(path)]

    def review(self) -> None:
        """Reviews its files."""
        if self.paths:
            self.reviews = {
                self.key(one.file.real): one for one in review_on(self.workspace, self.paths).files
            }


def compare_paths(old: str, new: str, today: date) -> Comparison:
    """Compares two files, or the files of two folders. Raises `NothingToCompareError`."""
    for path in (old, new):
        if not os.path.exists(path):
            raise NothingToCompareError(f"{path}: it is not there")
    if os.path.isdir(old) != os.path.isdir(new):
        raise NothingToCompareError("name two files or two folders, not one of each")
    if os.path.isdir(old):
        sides = ReviewedSide(old, [old], today), ReviewedSide(new, [new], today)
        for path, side in zip((old, new), sides, strict=True):
            if not side.found():
                raise NothingToCompareError(f"{path}: it holds no programme and no athlete file")
            side.add([SETTINGS])
            side.review()
        return _compared(*sides)
    before, after = (
        ReviewedSide(os.path.dirname(old), [old], today),
        ReviewedSide(os.path.dirname(new), [new], today),
    )
    for side in (before, after):
        side.review()
    one, two = (
        side.reviews[side.key(os.path.realpath(path))] for side, path in ((before, old), (after, new))
    )
    result = Comparison()
    result.looked_at = 1
    compare_reviews((before.workspace, one), (after.workspace, two), result)
    return result


def compare_since(revision: str, paths: list[str], today: date) -> Comparison:
    """Compares the files below paths, or all, with what they were at a revision of their repository.

    Raises `GitError` and `NothingToCompareError`.
    """
    first = paths[0] if paths else os.curdir
    folder = first if os.path.isdir(first) else os.path.dirname(first) or os.curdir
    if not os.path.isdir(folder):
        raise NothingToCompareError(f"{first}: it is not there")
    repository = Repository.around(folder)
    commit = repository.commit(revision)
    changed = changed_since(repository, commit)
    asked = [_from_root(repository.root, path) for path in paths]
    if asked:
        for path, inside in zip(paths, asked, strict=True):
            if not os.path.exists(path) and not any(_is_below(one, inside) for one in changed):
                raise NothingToCompareError(f"{path}: neither side has it")
        changed = [one for one in changed if any(_is_below(one, path) for path in asked)]
    changed = [one for one in changed if kind_of(one) or is_record(one)]
    if not changed:
        return Comparison()
    with TemporaryDirectory(prefix="spotline-") as past:
        write_at(repository, commit, past)
        sides = ReviewedSide(past, [], today), ReviewedSide(repository.root, [], today)
        for side in sides:
            if any(kind_of(one) not in ("programme", "athlete") for one in changed):
                side.paths = [shown(side.base)]
            side.add(one for one in changed if kind_of(one))
        keys = set().union(*(side.found() for side in sides))
        for side in sides:
            side.add(keys)
            side.review()
        return _compared(*sides)


def _from_root(root: str, path: str) -> str:
    inside = os.path.relpath(os.path.realpath(path), root).replace(os.sep, "/")
    if inside.split("/")[0] == "..":
        raise NothingToCompareError(f"{path}: it lies outside the repository")
    return inside


def _is_below(path: str, folder: str) -> bool:
    return folder == "." or path == folder or path.startswith(f"{folder}/")


def _compared(old: ReviewedSide, new: ReviewedSide) -> Comparison:
    result = Comparison()
    for one, two in _pairs(old, new):
        result.looked_at += 1
        if one is None:
            assert two is not None
            result.new.append((two.name, _in_short(two)))
            _fault(two, result)
        elif two is None:
            result.gone.append((old.key(one.file.real), _in_short(one)))
        else:
            compare_reviews((old.workspace, one), (new.workspace, two), result)
    _once_a_person(result)
    return result


def _pairs(old: ReviewedSide, new: ReviewedSide) -> Iterator[tuple[FileReview | None, FileReview | None]]:
    """The files of both sides: of one path, else of one kind and mostly the same lines; then the others."""
    before, after = dict(old.reviews), dict(new.reviews)
    for key in [key for key in before if key in after]:
        yield before.pop(key), after.pop(key)
    likely = sorted(
        (
            (share, key, other)
            for key, one in before.items()
            for other, two in after.items()
            if one.kind == two.kind and (share := _share(one, two)) >= ALIKE
        ),
        reverse=True,
    )
    for _, key, other in likely:
        if key in before and other in after:
            yield before.pop(key), after.pop(other)
    for one in before.values():
        yield one, None
    for two in after.values():
        yield None, two


def _share(one: FileReview, two: FileReview) -> float:
    """The share of lines that two files have in common."""
    lines = [
        set(map(str.strip, side.reading.text.content.splitlines())) if side.reading else set()
        for side in (one, two)
    ]
    most = max(map(len, lines))
    return len(lines[0] & lines[1]) / most if most else 1.0


def compare_reviews(
    past: tuple[Workspace, FileReview], present: tuple[Workspace, FileReview], result: Comparison
) -> None:
    """Adds what changed in one file to a comparison; each version comes with the workspace that read it."""
    (were, old), (are, new) = past, present
    if _fault(old, result, "the old side") or _fault(new, result, "the new side"):
        return
    if old.kind != new.kind:
        result.faults.append(f"{new.name}: {old.kind or 'other'} file against {new.kind or 'other'} file")
    elif new.kind == "athlete":
        before, after = were.athlete_at(old.file).athlete, are.athlete_at(new.file).athlete
        changes = [*renamed(before, after), *athlete_changes(before, after)]
        result.compared.append(Compared(new.name, "", after.name if after else "", (), changes))
    elif new.kind in ("team", "exercises"):
        changes = list(_settings(_plain(were, old), _plain(are, new)))
        result.compared.append(Compared(new.name, "", "", (), changes))
    else:
        result.compared += compared_programme(old, _waivers(were, old), new, _waivers(are, new))


def _plain(workspace: Workspace, one: FileReview) -> object:
    """The plain data of a file."""
    root = workspace.overlay.read(one.file).root
    return None if root is None else root.plain


def _waivers(workspace: Workspace, one: FileReview) -> list[Waiver]:
    """The waivers that hold in a file."""
    if one.reading is None:
        return []
    rules = [rule.name for rule in (*workspace.rules, *one.team.rules)]
    return holding(one.reading, rules, workspace.today)


def _fault(one: FileReview, result: Comparison, side: str = "") -> bool:
    """Notes that a file cannot be compared, and why; whether that is so."""
    counted = bool(one.ledgers) if one.kind not in ("athlete", "team", "exercises") else _is_read(one)
    if counted:
        return False
    first = next((finding for finding in one.findings if finding.severity == "error"), None)
    why = f"line {first.place.line}: {first.counted}" if first else "it cannot be read"
    result.faults.append(f"{one.name}{f' ({side})' if side else ''}: {why}")
    return True


def _is_read(one: FileReview) -> bool:
    """Whether a file of another kind than a programme could be taken in."""
    if one.kind == "team":
        return one.opened and not one.team.broken
    return one.opened and one.reading is not None and one.reading.root is not None


def _settings(old: object, new: object) -> Iterator[Difference]:
    """What differs in settings or own exercises, by the path of its key."""
    before, after = dict(_flat(old)), dict(_flat(new))
    for key in {**before, **after}:
        was, now = before.get(key, ""), after.get(key, "")
        if was != now:
            words = f"{key}: {was or 'none'} -> {now or 'none'}"
            yield Difference("setting", words, 73, subject=key, before=was, after=now)


def _flat(value: object, path: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from _flat(inner, f"{path}, {key}" if path else str(key))
    elif isinstance(value, list) and any(isinstance(one, dict) for one in value):
        for number, inner in enumerate(value, 1):
            name = inner.get("name", number) if isinstance(inner, dict) else number
            yield from _flat(inner, f"{path}, {name}" if path else str(name))
    else:
        said = ", ".join(map(str, value)) if isinstance(value, list) else value
        yield path, plain(said) if isinstance(said, float) else str(said)


def _in_short(one: FileReview) -> str:
    """``Winter base, 6 weeks, for Mara``: what a file holds that one side alone has."""
    if not one.ledgers:
        return one.kind or "file"
    ledger = one.ledgers[0]
    names = [known.name for other in one.ledgers if (known := other.athlete) is not None]
    who = f", for {', '.join(names)}" if names else ""
    return f"{ledger.programme.name}, {counted_noun(len(ledger.weeks), 'week')}{who}"


def _once_a_person(result: Comparison) -> None:
    """Says what changed in a person's file once: in their first programme, else by itself."""
    told: set[tuple[str, str, str]] = set()
    for one in sorted(result.compared, key=lambda one: not one.weeks):
        kept = []
        for change in one.changes:
            key = (one.who, change.kind, change.words)
            if change.part == "person" and change.kind != "waiver":
                if key in told:
                    continue
                told.add(key)
            kept.append(change)
        one.changes = kept
