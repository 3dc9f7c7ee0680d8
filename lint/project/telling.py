"""The review of many files, group by group: nothing is kept of a file but what is told of it."""

from __future__ import annotations

import gc

from .known import KnownApart
from .results import FileReview
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


class Teller:
    """Reviews files group by group. ``part`` makes of a review what is told of it, as plain data."""

    __slots__ = ("_groups", "_part", "_workspace", "known")

    def __init__(self, workspace: Workspace, part: Callable[[FileReview], Any]) -> None:
        self._workspace = workspace
        self._part = part
        self._groups = 0
        self.known = KnownApart(workspace)

    def group(self, files: list[SourceFile]) -> list[Told]:
        """What is told of the files of a group, whose trees and ledgers go with the next one at the latest.

        Nearly all of it goes at once. What is left are circles in what could not be read to its end; at this
        moment nothing else is young, so that a look at the young costs next to nothing.
        """
        self._groups += 1
        if self._groups > 1 and not gc.isenabled():
            if self._groups == 2:  # once: to ask how much is frozen goes through all of it
                gc.freeze()
            gc.collect(0)
        reviews = reviewed_group(self._workspace, files, self.known)
        told = [self._told(one) for one in reviews]
        for one in reviews:
            for ledger in one.ledgers:
                ledger.end()
        self._workspace.forget()
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
