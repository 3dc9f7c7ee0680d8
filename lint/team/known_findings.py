"""Known findings: what a team has on record from before, so that only what is new or worse blocks.

``spotline-known.json`` at the root of the repository names each by file, rule and place in the structure
(session, line, key) and never by line number, so that it survives edits elsewhere in the file. It keeps how
much was found. What cannot be read or meant is never on record: behind it, anything could stand.
"""

from __future__ import annotations

import os
import re

from ..findings.finding import SEVERITIES, Finding, Related
from ..syntax.tree import Mapping, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from typing import Any

    from ..syntax.tree import Reading
    from ..text.places import Place
    from ..text.repository import SourceFile

NAME = "spotline-known.json"
FORM = 3
WITHOUT_SIZES = 2
"""The form of records that do not keep how much was found."""
FORMER = 1
"""The form of records of the first version, in which one finding could name several subjects."""

KEYS = ("file", "rule", "where", "subject")
THROUGHOUT = "all"
"""Stands for the number of weeks of a finding that holds in every week of its programme."""
SAME = 1e-6
"""How far two numbers may be apart that are the same."""

Key = tuple[str, str, str, str]
"""File (see `written_path`), rule, place in the coach's words, subject."""


def can_be_known(finding: Finding) -> bool:
    """Whether a finding can be on record: one of a rule, never one of reading or of the schema.

    Only a rule says why.
    """
    return bool(finding.why)


def written_path(path: str) -> str:
    """A path from the root as a record writes it: what is no UTF-8, and backslashes, by numbers."""
    if path.isascii() and "\\" not in path:
        return path
    return "".join(
        f"\\x{ord(char) & 0xFF:02x}" if char == "\\" or "\ud800" <= char <= "\udfff" else char
        for char in path
    )


def path_of(written: str) -> str:
    """The path that stands behind one in a record."""
    return re.sub(r"\\x([0-9a-f]{2})", lambda found: os.fsdecode(bytes([int(found[1], 16)])), written)


def entry_of(finding: Finding, file: str, weeks: int) -> dict[str, Any]:
    """What a record holds of a finding: its key and its size. ``weeks`` are those that its programme has."""
    held = len(finding.weeks)
    entry: dict[str, Any] = dict(zip(KEYS, key_of(finding, file), strict=True))
    entry["severity"] = finding.severity
    entry["weeks"] = THROUGHOUT if held >= weeks or not held else held
    if finding.athletes:
        entry["athletes"] = sorted(finding.athletes)
    if finding.amount is None:
        entry["said"] = finding.counted
    else:
        entry["counted"], entry["wanted"] = finding.amount.counted, finding.amount.wanted
    return entry


def key_of(finding: Finding, file: str) -> Key:
    """What a finding is known by."""
    return (written_path(file), finding.rule, finding.where, finding.subject)


class Entry:
    """An entry of a record at its place; ``values`` are those of `entry_of`."""

    __slots__ = ("place", "values")

    def __init__(self, values: dict[str, Any], place: Place) -> None:
        self.values = values
        self.place = place

    @property
    def key(self) -> Key:
        """What it is known by."""
        return tuple(self.values[name] for name in KEYS)

    @property
    def size(self) -> float:
        """How far what was counted was from what was wanted; 0 where no number was."""
        return abs(float(self.values.get("counted", 0)) - float(self.values.get("wanted", 0)))

    def covers(self, now: dict[str, Any]) -> bool:
        """Whether what is found now, see `entry_of`, is no worse than this."""
        was = self.values
        if "severity" not in was:
            return True  # of a form that kept no sizes
        if SEVERITIES.index(now["severity"]) > SEVERITIES.index(was["severity"]):
            return False
        if was["weeks"] != THROUGHOUT and (now["weeks"] == THROUGHOUT or now["weeks"] > was["weeks"]):
            return False
        if "athletes" in was and not set(now.get("athletes", ("",))) <= set(was["athletes"]):
            return False
        if "said" in was or "said" in now:
            return bool(was.get("said") == now.get("said"))
        return bool(abs(now["counted"] - now["wanted"]) <= self.size + SAME)


class Record:
    """The findings on record of one repository; ``broken`` says why the file cannot be used, if it cannot.

    ``form`` is that of the file: former ones still hold, but keep no sizes.
    """

    __slots__ = ("_left", "_of_file", "broken", "form")

    def __init__(
        self, entries: Iterable[Entry] = (), broken: tuple[Finding, ...] = (), form: int = FORM
    ) -> None:
        self.broken = broken
        self.form = form
        self._left: dict[Key, list[Entry]] = {}
        self._of_file: dict[str, list[Entry]] = {}
        for entry in sorted(entries, key=lambda one: one.size):
            self._left.setdefault(entry.key, []).append(entry)
            self._of_file.setdefault(entry.key[0], []).append(entry)

    def copy(self) -> Record:
        """A copy for one review, which uses up its entries."""
        other = Record(broken=self.broken, form=self.form)
        other._left = {key: list(entries) for key, entries in self._left.items()}
        other._of_file = self._of_file
        return other

    def left(self, file: str) -> tuple[int, ...]:
        """The numbers, among all entries of a file, of those that stand for no finding yet."""
        entries = self._of_file.get(written_path(file), ())
        return tuple(number for number, one in enumerate(entries) if one in self._left[one.key])

    def leave(self, file: str, left: tuple[int, ...]) -> None:
        """Leaves only these entries of a file, as `left` has numbered them."""
        entries = self._of_file.get(written_path(file), ())
        for key in {one.key for one in entries}:
            self._left[key] = []
        for number in left:
            self._left[entries[number].key].append(entries[number])

    def split(self, findings: list[Finding], file: str, weeks: int) -> tuple[list[Finding], list[Finding]]:
        """New findings of a file, and known ones; each entry stands for one finding that is no worse.

        What is on record, but worse now, is new, and tells of it. ``weeks`` are those of the programme.
        """
        new: list[Finding] = []
        known: list[Finding] = []
        for finding in findings:
            entries = self._left.get(key_of(finding, file), []) if can_be_known(finding) else []
            now = entry_of(finding, file, weeks) if entries else {}
            covering = next((entry for entry in entries if entry.covers(now)), None)
            if covering is not None:
                entries.remove(covering)
                known.append(finding)
            elif entries:
                new.append(_worse(finding, entries.pop()))
            else:
                new.append(finding)
        if self.form == FORMER:
            rules = [one for one in new if can_be_known(one)]
            known += [one for one in rules if self._names_in_former_words(key_of(one, file))]
            new = [one for one in new if one not in known]
        return new, known

    def _names_in_former_words(self, key: Key) -> bool:
        """Whether an entry of the first version stands for a finding: at its place, or among its subjects."""
        file, rule, where, subject = key
        for entry in self._left:
            same = entry[2] == where or (subject and subject in re.split(", | and ", entry[3]))
            if entry[:2] == (file, rule) and same:
                self._left[entry] = []
                return True
        return False

    @property
    def has_left(self) -> bool:
        """Whether an entry stands for no finding yet."""
        return any(self._left.values())

    def stale(self, files: Iterable[str], root: str, rules: Iterable[str]) -> Iterator[Finding]:
        """A note for each entry that nothing was found for, of these files, all of them reviewed by now.

        Entries of files that are no longer there are stale too. Only those of ``rules`` were looked for.
        """
        reviewed = {written_path(file) for file in files}
        looked_for = set(rules)
        gone: dict[str, bool] = {}
        for key, entries in self._left.items():
            if not entries or key[1] not in looked_for:
                continue
            if key[0] not in reviewed and key[0] not in gone:
                gone[key[0]] = is_gone(root, key[0])
            if key[0] in reviewed or gone[key[0]]:
                where = f" ({key[2]})" if key[2] else ""
                yield Finding(
                    "known-finding-gone",
                    "note",
                    entries[-1].place,
                    f"{key[1]} in {path_of(key[0])}{where} is on record, but no longer found.",
                    change="Good. Record anew with `spotline review --record-known`.",
                )


def is_gone(root: str, written: str) -> bool:
    """Whether a file of a record is surely no longer there: not where that cannot be looked up."""
    try:
        os.lstat(os.path.join(root, path_of(written)))
    except (FileNotFoundError, NotADirectoryError):
        return True
    except (OSError, ValueError):
        return False
    return False


def _worse(finding: Finding, entry: Entry) -> Finding:
    """A finding that is on record, but worse than that."""
    was = entry.values.get("counted")
    unit = f" {finding.amount.unit}" if finding.amount and was is not None else ""
    words = (
        f"on record with {was:g}{unit}: worse now" if was is not None else "on record with less: worse now"
    )
    return finding.but(related=(*finding.related, Related(entry.place, words)))


def read_record(file: SourceFile, read: Callable[[SourceFile], Reading]) -> Record:
    """The record in a file, whose tree ``read`` gives; empty where there is no file."""
    return record_of(read(file)) if os.path.lexists(file.name) else Record()


def record_of(reading: Reading) -> Record:
    """The record in a text."""
    entries = list(entries_in(reading))
    plain = reading.root.plain if reading.root is not None else None
    form = plain.get("form") if isinstance(plain, dict) else None
    ours = isinstance(plain, dict) and isinstance(plain.get("known"), list)
    is_known_form = type(form) is int and form in (FORMER, WITHOUT_SIZES, FORM)
    if not (ours and is_known_form) or reading.findings or not all(map(_is_sound, entries)):
        return Record(broken=(_broken(reading),))
    return Record(entries, form=form or FORM)


def entries_in(reading: Reading) -> Iterator[Entry]:
    """The entries in a text, sound or not."""
    root = reading.root
    entry = root.entries.get("known") if isinstance(root, Mapping) else None
    if entry is None or not isinstance(entry.value, Sequence):
        return
    for item in entry.value.items:
        yield Entry(item.plain if isinstance(item, Mapping) else {}, item.place)


def _is_sound(entry: Entry) -> bool:
    values = entry.values
    if not all(isinstance(values.get(name), str) for name in KEYS):
        return False
    if "severity" not in values:
        return True
    weeks, athletes = values.get("weeks"), values.get("athletes", [])
    return (
        values["severity"] in SEVERITIES
        and (weeks == THROUGHOUT or _is_number(weeks))
        and isinstance(athletes, list)
        and all(isinstance(name, str) for name in athletes)
        and (
            isinstance(values.get("said"), str)
            or all(_is_number(values.get(n)) for n in ("counted", "wanted"))
        )
    )


def _is_number(value: object) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


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
    if not data:
        return {}
    import json

    try:
        found: dict[str, list[str]] = {}
        for entry in json.loads(data)["known"]:
            found.setdefault(path_of(entry["file"]), []).append(json.dumps(entry, sort_keys=True))
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None
    return {file: sorted(said) for file, said in found.items()}


def record_text(entries: Iterable[dict[str, Any]]) -> str:
    """The text of a record: an entry a line, in order, so that two that were made apart can be merged."""
    lines = sorted(_line(entry) for entry in entries)
    return f'{{"form": {FORM}, "known": [' + ",".join(f"\n{line}" for line in lines) + "\n]}\n"


def _line(entry: dict[str, Any]) -> str:
    """An entry as JSON that is YAML, too: what does not print is given by its number."""
    import json

    line = json.dumps(entry, ensure_ascii=False, allow_nan=False)
    return "".join(
        char if char.isprintable() or ord(char) > 0xFFFF else f"\\u{ord(char):04x}" for char in line
    )
