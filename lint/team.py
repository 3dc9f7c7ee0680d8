"""Team settings: what a team sets for all of its programmes in ``spotline.yaml``."""

from __future__ import annotations

import os

from .body import catalogue
from .finding import Edit, Finding
from .reader import checked
from .yaml_tree import Mapping, read

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .registry import Default
    from .yaml_tree import Node

BLOCKING = ("warning", "error")
"""Severities that block unless the team says otherwise; a note never does by default."""


class Team:
    """The settings that hold for a file: the limits moved, by rule and option, what blocks, what is left out.

    ``folder`` is where the settings stand; ``findings`` say what is wrong with them, in which case nothing
    of them is applied and ``broken`` is True.
    """

    __slots__ = ("blocking", "broken", "findings", "folder", "left_out", "moved")

    def __init__(self, folder: str = "") -> None:
        self.folder = folder
        self.findings: list[Finding] = []
        self.broken = False
        self.moved: dict[str, dict[str, Default]] = {}
        self.blocking: tuple[str, ...] = BLOCKING
        self.left_out: tuple[str, ...] = ()

    def leaves_out(self, path: str) -> bool:
        """Whether a search through folders passes over a file or folder (a real path)."""
        if not self.left_out:
            return False
        from fnmatch import fnmatchcase

        below = os.path.relpath(path, self.folder).replace(os.sep, "/")
        parts = below.split("/")
        heads = ["/".join(parts[: length + 1]) for length in range(len(parts))]
        return any(fnmatchcase(head, pattern.rstrip("/")) for head in heads for pattern in self.left_out)


def read_team(path: str) -> Team:
    """The settings of a file, which is shown by the path given."""
    reading = read(path)
    team = Team(os.path.dirname(os.path.realpath(path)))
    team.findings = checked(reading, "team") + list(_unknown_groups(reading.root))
    team.broken = any(finding.severity == "error" for finding in team.findings)
    if team.broken or not isinstance(reading.root, Mapping):
        return team
    plain = reading.root.plain
    assert isinstance(plain, dict)
    limits = {str(group): float(sets) for group, sets in plain.get("weekly limits", {}).items()}
    if limits:
        team.moved["weekly-sets-over-limit"] = {"groups": limits}
    team.blocking = tuple(plain.get("block commit on", BLOCKING))
    team.left_out = tuple(plain.get("leave out", ()))
    return team


def _unknown_groups(root: Node | None) -> Iterator[Finding]:
    """Limits for what is no part of the body: they would hold for nothing."""
    limits = root.entries.get("weekly limits") if isinstance(root, Mapping) else None
    if limits is None or not isinstance(limits.value, Mapping):
        return
    for group, entry in limits.value.entries.items():
        if catalogue.area(group) is not None:
            continue
        near = catalogue.nearest_areas(group)
        yield Finding(
            "muscle-group-unknown",
            "error",
            entry.key.place,
            f"`{group}` is no muscle group or region that is known, so its limit would hold for nothing.",
            change=f"Did you mean {' or '.join(near)}?" if near else "Name a muscle group: hamstrings, lats.",
            edits=tuple(Edit(entry.key.place, other, f"write {other}") for other in near),
        )
