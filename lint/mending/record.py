"""Puts what is found on record, and keeps what the record holds of other files."""

from __future__ import annotations

import os

from ..project.discovery import discovered
from ..project.review import reviewed
from ..project.workspace import Workspace
from ..syntax import builder
from ..team import known_findings
from ..team.known_findings import can_be_known, entries_in, entry_of, is_gone, path_of, record_of
from ..text import files, repository
from ..text.safe_writer import NotWrittenError, replace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date
    from typing import Any

    from ..findings.finding import Finding
    from ..project.results import FileReview


class Recorded:
    """What a run has put on record: ``number`` findings, in the files ``written`` (paths as shown).

    ``kept_off`` are findings of reading, ``blocks`` says whether one of them blocks; ``not_judged`` are the
    files that could not be reviewed as they should, of which the record says what it said before.
    """

    __slots__ = ("blocks", "kept_off", "not_judged", "number", "written")

    def __init__(self) -> None:
        self.written: list[str] = []
        self.number = 0
        self.kept_off: list[Finding] = []
        self.blocks = False
        self.not_judged: list[str] = []

    @property
    def exit_code(self) -> int:
        """2 where the job was not done for every file, else 1 where what is kept off blocks, else 0."""
        return 2 if self.not_judged or not self.written else int(self.blocks)


def record_known(paths: list[str], today: date) -> Recorded:
    """Records what is found now in files and folders, for each repository. Raises NotWrittenError."""
    workspace = Workspace(today)
    result = Recorded()
    found: dict[str, list[FileReview]] = {}
    for one in reviewed(workspace, discovered(workspace, paths)):
        found.setdefault(one.file.root, []).append(one)
    asked = {workspace.files.folder(path) for path in paths}
    for root, several in found.items():
        _record(result, root, several, whole=root in asked)
    return result


def _record(result: Recorded, root: str, several: list[FileReview], *, whole: bool) -> None:
    """Writes the record of one repository; ``whole`` says whether all of it was asked for."""
    path = os.path.join(root, known_findings.NAME)
    shown = repository.shown(path)
    before, held = _held(path, shown, root, whole=whole)
    judged: set[str] = set()
    entries: list[dict[str, Any]] = []
    for one in several:
        file = one.file.path_from_root
        if not one.is_judged:
            result.not_judged.append(one.name)
            continue
        judged.add(known_findings.written_path(file))
        for finding in one.findings:
            if can_be_known(finding):
                entries.append(entry_of(finding, file, one.weeks))
            else:
                result.kept_off.append(finding)
                result.blocks = result.blocks or finding.severity in one.team.blocking
    result.number += len(entries)
    entries += [one for one in held if one["file"] not in judged and not is_gone(root, one["file"])]
    text = known_findings.record_text(entries)
    _read_back(shown, text, entries)
    if text.encode() != before:
        replace(path, before, text.encode(), root)
    result.written.append(shown)


def _held(path: str, shown: str, root: str, *, whole: bool) -> tuple[bytes | None, list[dict[str, Any]]]:
    """The bytes of the record as it is, None where there is none, and its entries.

    One that cannot be read may give way only to one of the whole repository: else it would be lost what it
    holds of the other files.
    """
    real = os.path.realpath(path)
    if not repository.is_inside(root, real):
        raise NotWrittenError(shown, "it is a link that leads out of the repository")
    if not os.path.lexists(path):
        return None, []
    try:
        before = files.data(path)
        reading = builder.parse(shown, files.decoded(shown, before))
    except files.NotOpenedError as fault:
        raise NotWrittenError(shown, str(fault)) from fault
    except files.UnreadableError as fault:
        raise NotWrittenError(shown, "what stands there now is no text of ours; move it away") from fault
    if not record_of(reading).broken:
        return before, [one.values for one in entries_in(reading)]
    if whole:
        return before, []
    reason = "it cannot be read, so what it holds of other files would be lost. Mend it, or record them all"
    raise NotWrittenError(shown, reason)


def _read_back(shown: str, text: str, entries: list[dict[str, Any]]) -> None:
    """Makes sure, before anything is written, that the record will be read as it is meant."""
    record = record_of(builder.parse(shown, text))
    if record.broken:
        reason = record.broken[0].counted.partition("used. ")[2]
        raise NotWrittenError(shown, f"it could not be read back. {reason}")
    read = [one.values for one in entries_in(builder.parse(shown, text))]
    if sorted(map(repr, read)) != sorted(map(repr, entries)):
        names = sorted({path_of(one["file"]) for one in entries if one not in read})
        raise NotWrittenError(shown, f"it could not be read back as it is meant, because of {names[0]}")
