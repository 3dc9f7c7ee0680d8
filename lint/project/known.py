"""Findings on record, told apart from those that are new."""

from __future__ import annotations

from ..team.settings import Team
from .results import FileReview

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..team import known_findings
    from .workspace import Workspace


def set_known_apart(workspace: Workspace, files: list[FileReview]) -> None:
    """Moves findings on record to ``known``; what is wrong with a record comes as one more file."""
    reviewed: dict[str, list[str]] = {}
    records: dict[str, known_findings.Record] = {}
    for one in files:
        path, root = one.file.path_from_root, one.file.root
        reviewed.setdefault(root, []).append(path)
        if root not in records:
            records[root] = workspace.record_of(root).copy()
        one.findings, one.known = records[root].split(one.findings, path)
    for root, paths in reviewed.items():
        record = records[root]
        findings = [*record.broken, *record.stale(paths, root)]
        if findings:
            whole = FileReview(workspace.record_file(root), Team(), kind="record")
            whole.findings = findings
            whole.opened = not record.broken
            files.append(whole)
