"""Known findings: what a team has on record from before, so that only what is new blocks.

``spotline-known.json`` at the root of the repository names each by file, rule and place in the structure
(session, line, key) and never by line number, so that it survives edits elsewhere in the file.
"""

from __future__ import annotations

import os
import re
from collections import Counter

from ..findings.finding import Finding
from ..syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ..syntax.tree import Node, Reading
    from ..text.places import Place
    from ..text.repository import SourceFile

NAME = "spotline-known.json"
FORM = 2
FORMER = 1
"""The form of records of the first version, in which one finding could name several subjects."""

KEYS = ("file", "rule", "where", "subject")

Key = tuple[str, str, str, str]
"""File (from the root, with / between folders), rule, place in the coach's words, subject."""


def key_of(finding: Finding, file: str) -> Key:
    """What a finding is known by."""
    return (file, finding.rule, finding.where, finding.subject)


class Record:
    """The findings on record of one repository; ``broken`` says why the file cannot be used, if it cannot.

    ``is_former`` says whether it has the form of the first version, which still holds.
    """

    __slots__ = ("_left", "_places", "broken", "is_former")

    def __init__(
        self,
        entries: Iterable[tuple[Key, Place]] = (),
        broken: tuple[Finding, ...] = (),
        is_former: bool = False,
    ) -> None:
        self.broken = broken
        self.is_former = is_former
        self._left: Counter[Key] = Counter()
        self._places: dict[Key, Place] = {}
        for key, place in entries:
            self._left[key] += 1
            self._places[key] = place

    def copy(self) -> Record:
        """A copy for one review, which uses up its entries."""
        other = Record(broken=self.broken, is_former=self.is_former)
        other._left, other._places = self._left.copy(), self._places
        return other

    def split(self, findings: list[Finding], file: str) -> tuple[list[Finding], list[Finding]]:
        """New findings of a file, and known ones; each entry of the record stands for one finding."""
        new: list[Finding] = []
        known: list[Finding] = []
        for finding in findings:
            key = key_of(finding, file)
            if self._left[key] > 0:
                self._left[key] -= 1
                known.append(finding)
            else:
                new.append(finding)
        if self.is_former:
            known += [one for one in new if self._names_in_former_words(key_of(one, file))]
            new = [one for one in new if one not in known]
        return new, known

    def _names_in_former_words(self, key: Key) -> bool:
        """Whether an entry of the first version stands for a finding: at its place, or among its subjects."""
        file, rule, where, subject = key
        for entry in self._places:
            same = entry[2] == where or (subject and subject in re.split(", | and ", entry[3]))
            if entry[:2] == (file, rule) and same:
                self._left[entry] = 0
                return True
        return False

    def stale(self, files: Iterable[str], root: str) -> Iterator[Finding]:
        """A note for each entry that nothing was found for, of these files, all of them reviewed by now.

        Entries of files that are no longer there are stale too.
        """
        reviewed = set(files)
        for key, left in self._left.items():
            if left > 0 and (key[0] in reviewed or not os.path.exists(os.path.join(root, key[0]))):
                where = f" ({key[2]})" if key[2] else ""
                yield Finding(
                    "known-finding-gone",
                    "note",
                    self._places[key],
                    f"{key[1]} in {key[0]}{where} is on record, but no longer found.",
                    change="Good. Record anew with `spotline review --record-known`.",
                )


def read_record(file: SourceFile, read: Callable[[SourceFile], Reading]) -> Record:
    """The record in a file, whose tree ``read`` gives; empty where there is no file."""
    if not os.path.exists(file.name):
        return Record()
    reading = read(file)
    entries = list(_entries(reading))
    whole = reading.root is not None and _is_ours(reading.root) and all(key for key, _ in entries)
    if not whole or reading.findings:
        return Record(broken=(_broken(reading),))
    is_former = _form(reading.root) == FORMER
    return Record(((key, place) for key, place in entries if key), is_former=is_former)


def _is_ours(root: Node) -> bool:
    plain = root.plain
    return isinstance(plain, dict) and isinstance(plain.get("known"), list) and _form(root) in (FORMER, FORM)


def _form(root: Node | None) -> object:
    plain = root.plain if root is not None else None
    return plain.get("form") if isinstance(plain, dict) else None


def _entries(reading: Reading) -> Iterator[tuple[Key | None, Place]]:
    root = reading.root
    entry = root.entries.get("known") if isinstance(root, Mapping) else None
    if entry is None or not isinstance(entry.value, Sequence):
        return
    for item in entry.value.items:
        values = [item.entries.get(key) if isinstance(item, Mapping) else None for key in KEYS]
        words = [one.value.text for one in values if one and isinstance(one.value, Scalar)]
        yield ((words[0], words[1], words[2], words[3]) if len(words) == len(KEYS) else None), item.place


def _broken(reading: Reading) -> Finding:
    first = reading.findings[0] if reading.findings else None
    place = first.place if first else reading.text.place(0, 0)
    why = first.counted if first else f"It is no record of known findings of form {FORM}."
    return Finding(
        "known-findings-unreadable",
        "error",
        place,
        f"The record of known findings cannot be used. {why}",
        change="Mend it, or record anew with `spotline review --record-known`.",
    )


def files_on_record(data: bytes) -> dict[str, list[str]] | None:
    """What the bytes of a record say of each file, by its path; None where they are no record."""
    import json

    if not data:
        return {}
    try:
        entries = json.loads(data)["known"]
        found: dict[str, list[str]] = {}
        for entry in entries:
            found.setdefault(entry["file"], []).append(json.dumps(entry, sort_keys=True))
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None
    return {file: sorted(said) for file, said in found.items()}


def write_record(root: str, found: Iterable[tuple[Finding, str]]) -> str:
    """Records findings, each with its file from the root; returns the path written. Replaces it whole."""
    import json

    keys = sorted(key_of(finding, file) for finding, file in found)
    text = json.dumps({"form": FORM, "known": [dict(zip(KEYS, key, strict=True)) for key in keys]}, indent=1)
    path = os.path.join(root, NAME)
    partial = f"{path}.{os.getpid()}"
    try:
        with open(partial, "w", encoding="utf-8") as file:
            file.write(text + "\n")
        os.replace(partial, path)
    except OSError:
        if os.path.exists(partial):
            os.remove(partial)
        raise
    return path
