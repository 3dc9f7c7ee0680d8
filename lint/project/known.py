"""Findings on record, told apart from those that are new."""

from __future__ import annotations

from ..findings.finding import Finding
from ..team.known_findings import FORM
from ..team.settings import Team
from .results import FileReview

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..team.known_findings import Record
    from ..text.repository import SourceFile
    from .workspace import Workspace


class KnownApart:
    """The records of one review, whose entries it uses up, and the files that were judged."""

    __slots__ = ("_judged", "_records", "_workspace")

    def __init__(self, workspace: Workspace) -> None:
        self._workspace = workspace
        self._records: dict[str, Record] = {}
        self._judged: dict[str, list[str]] = {}

    def split(self, one: FileReview) -> None:
        """Moves the findings of a file that are on record to ``known``."""
        record = self._record(one.file)
        one.findings, one.known = record.split(one.findings, one.file.path_from_root, one.weeks)

    def left(self, file: SourceFile) -> tuple[int, ...]:
        """The numbers of the entries of a file that stand for no finding yet."""
        return self._record(file).left(file.path_from_root)

    def note(self, file: SourceFile, left: tuple[int, ...], *, judged: bool) -> None:
        """Notes what a review of a file, which another process may have made, has left of its entries."""
        path = file.path_from_root
        self._record(file).leave(path, left)
        if judged:
            self._judged[file.root].append(path)

    def remarks(self) -> list[FileReview]:
        """What is wrong with the records: each that something is to be said of, as one more file."""
        found = []
        for root, record in self._records.items():
            findings = [*record.broken]
            if record.has_left:
                names = [rule.name for rule in self._workspace.rules]
                findings += record.stale(self._judged[root], root, names)
            if record.form != FORM and not record.broken:
                findings.append(self._without_sizes(root))
            if findings:
                whole = FileReview(self._workspace.record_file(root), Team(), kind="record")
                whole.findings = findings
                whole.opened = not record.broken
                found.append(whole)
        return found

    def _record(self, file: SourceFile) -> Record:
        root = file.root
        if root not in self._records:
            self._records[root] = self._workspace.record_of(root).copy()
            self._judged[root] = []
        return self._records[root]

    def _without_sizes(self, root: str) -> Finding:
        file = self._workspace.record_file(root)
        return Finding(
            "known-findings-without-sizes",
            "note",
            self._workspace.overlay.read(file).text.place(0, 0),
            "This record does not keep how much was found, so what is on it can get worse unseen.",
            change="Record anew with `spotline review --record-known`.",
        )
