"""Findings on record, told apart from those that are new."""

from __future__ import annotations

from ..findings.finding import Finding
from ..team.known_findings import FORM
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
        if root not in records:
            records[root] = workspace.record_of(root).copy()
            reviewed[root] = []
        if one.is_judged:
            reviewed[root].append(path)
        one.findings, one.known = records[root].split(one.findings, path, one.weeks)
    for root, paths in reviewed.items():
        record = records[root]
        names = [rule.name for rule in workspace.rules]
        findings = [*record.broken, *record.stale(paths, root, names)]
        if record.form != FORM and not record.broken:
            findings.append(_without_sizes(workspace, root))
        if findings:
            whole = FileReview(workspace.record_file(root), Team(), kind="record")
            whole.findings = findings
            whole.opened = not record.broken
            files.append(whole)


def _without_sizes(workspace: Workspace, root: str) -> Finding:
    place = workspace.overlay.read(workspace.record_file(root)).text.place(0, 0)
    return Finding(
        "known-findings-without-sizes",
        "note",
        place,
        "This record does not keep how much was found, so what is on it can get worse unseen.",
        change="Record anew with `spotline review --record-known`.",
    )
