"""The review of what differs from a revision, and of all that leans on it."""

from __future__ import annotations

import os

from .discovery import discovered
from .leaning import leaning_on_changes
from .results import Review
from .review import review_files
from .workspace import Workspace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..text.repository import SourceFile

HEAD = "HEAD"


def review_changed(revision: str, paths: list[str], today: date) -> Review:
    """The review of what `changed_files` finds. Nothing to review is a sound outcome. Raises GitError."""
    workspace = Workspace(today, asks_git=True)
    review = review_files(workspace, changed_files(workspace, revision, paths))
    return Review(review.files, may_be_empty=True)


def changed_files(workspace: Workspace, revision: str, paths: list[str]) -> list[SourceFile]:
    """The files to review for what differs between a revision and the work tree; ``paths``, too.

    An empty ``revision`` stands for the last commit. Where pre-commit runs us, what git was never told of is
    no part of the commit and does not count, and a range of commits that it is run over begins where the two
    part. Raises GitError.
    """
    root = workspace.files.root_of(workspace.files.folder(""))
    by_hook = "PRE_COMMIT" in os.environ
    if by_hook and not revision and (begin := os.environ.get("PRE_COMMIT_FROM_REF")):
        from .git import Repository

        end = os.environ.get("PRE_COMMIT_TO_REF") or HEAD
        revision = Repository(root).common_ancestor(begin, end)
    found = leaning_on_changes(workspace, root, revision or HEAD, unknown=not by_hook)
    known = {one.real for one in found}
    return found + ([one for one in discovered(workspace, paths) if one.real not in known] if paths else [])
