"""The review of many files, group by group: each is told at once, and nothing of it is kept but what is told."""

from __future__ import annotations

import gc

from .known import KnownApart
from .results import FileReview, Outcome
from .review import remaining, reviewed_group

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from ..engine.run import Fault
    from ..text.repository import SourceFile
    from .workspace import Workspace

    Told = tuple[tuple[Any, ...], tuple[int, ...], bool, Any]
    """Plain data of one file: its outcome, what it leaves of the record, whether it was judged, its part."""

FILES_A_COLLECTION = 200
"""After so many files, garbage is collected: what leans on itself in a circle would else stay."""


class Teller:
    """Reviews files group by group. ``part`` makes of the review of a file what is told of it, as plain data."""

    __slots__ = ("_part", "_since", "_workspace", "known")

    def __init__(self, workspace: Workspace, part: Callable[[FileReview], Any]) -> None:
        self._workspace = workspace
        self._part = part
        self.known = KnownApart(workspace)
        self._since = 0

    def group(self, files: list[SourceFile]) -> list[Told]:
        """What is told of the files of a group; their trees and ledgers are let go."""
        told = [self._told(one) for one in reviewed_group(self._workspace, files, self.known)]
        self._workspace.forget()
        self._since += len(files)
        if self._since >= FILES_A_COLLECTION:
            self._since = 0
            gc.collect()
        return told

    def failed(self, files: list[SourceFile], fault: Fault) -> list[Told]:
        """What is told of files whose review has failed altogether."""
        reviews = [FileReview(file, self._workspace.team_of(file)) for file in files]
        for one in reviews:
            one.add_fault(fault)
        return [self._told(one) for one in reviews]

    def rest(self, files: list[SourceFile]) -> list[Told]:
        """What is told besides when all files are reviewed: of settings, and of the records."""
        return [self._told(one) for one in remaining(self._workspace, files, self.known)]

    def _told(self, one: FileReview) -> Told:
        left = () if one.kind == "record" else self.known.left(one.file)
        return one.outcome.plain(), left, one.is_judged, self._part(one)
