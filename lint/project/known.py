"""Findings on record, set apart from those that are new."""

from __future__ import annotations

import os

from ..team import known_findings
from ..team.settings import Team
from .results import FileReview

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .workspace import Workspace


def set_known_apart(workspace: Workspace, files: list[FileReview]) -> None:
    """Moves findings on record out of the way; the record's own findings come as one more file."""
    reviewed: dict[str, list[str]] = {}
    records: dict[str, known_findings.Record] = {}
    for one in files:
        name, root = workspace.from_root(one.name), workspace.root_of(one.name)
        reviewed.setdefault(root, []).append(name)
        if root not in records:
            records[root] = workspace.record_of(root).anew()
        one.findings, one.known = records[root].split(one.findings, name)
    for root, names in reviewed.items():
        path = os.path.relpath(os.path.join(root, known_findings.NAME))
        record = records[root]
        findings = [*record.broken, *record.stale(names, root)]
        if findings:
            whole = FileReview(path, "record", Team())
            whole.findings = findings
            whole.opened = not record.broken
            files.append(whole)
