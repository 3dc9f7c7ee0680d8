"""What changed in a document since the last commit: a page, and a lens on each session that changed."""

from __future__ import annotations

import os
from contextlib import suppress
from tempfile import TemporaryDirectory

from ...project.git import GitError, Repository
from ...project.review import review_on
from ...project.workspace import Workspace
from ...reporters.changes_markdown import markdown
from ...text.files import UnreadableError, content
from ...text.repository import real
from ...weighing.comparison import Comparison
from ...weighing.revision import write_at
from ...weighing.sessions import session_changes, week_pairs
from ...weighing.sides import compare_reviews
from ..caret.readable_review import ReadableReview
from ..documents.answers import Lens

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...project.results import FileReview
    from ...weighing.difference import Difference
    from ...weighing.sessions import Matched
    from ..documents.snapshot import Snapshot

REVISION = "HEAD"

MOST_CHANGES = 2
"""Changes that a lens names."""


class Past:
    """A file as it was at the last commit: its ``review`` and the workspace of that, None where git does not
    hold it. ``stamp`` tells whether there is another commit by now, ``matched`` which weeks were matched for
    the last lenses.
    """

    __slots__ = ("matched", "repository", "review", "stamp", "workspace")

    def __init__(
        self, repository: Repository, workspace: Workspace | None, review: FileReview | None
    ) -> None:
        self.repository = repository
        self.matched: Matched = {}
        self.stamp = repository.stamp()
        self.workspace = workspace
        self.review = review

    @property
    def is_last(self) -> bool:
        """Whether no commit has come since."""
        return self.stamp is not None and self.stamp == self.repository.stamp()


def changes_page(snapshot: Snapshot, known: dict[str, Past]) -> str:
    """The page as Markdown. Says so where there is no commit to compare with."""
    try:
        past = _past_of(snapshot, known)
    except GitError as fault:
        return f"Nothing can be compared: {fault}."
    if past.review is None or past.workspace is None:
        return "The last commit does not hold this file: all of it is new."
    result = Comparison()
    result.looked_at = 1
    compare_reviews((past.workspace, past.review), (snapshot.workspace, snapshot.review), result)
    return markdown(result)


def change_lenses(snapshot: Snapshot, known: dict[str, Past]) -> list[Lens]:
    """A lens above each session that differs from the last commit; none where there is nothing to compare."""
    good = snapshot.last_good
    if good is None or not good.ledgers or not snapshot.path:
        return []
    try:
        past = _past_of(snapshot, known)
    except GitError:
        return []
    if past.review is None or not past.review.ledgers:
        return []
    return list(_lenses(ReadableReview(snapshot), past, past.review, good))


def _lenses(readable: ReadableReview, past: Past, old: FileReview, new: FileReview) -> Iterator[Lens]:
    matched: Matched = {}
    told: set[tuple[int, int]] = set()
    before = {ledger.athlete.name if ledger.athlete else "": ledger for ledger in old.ledgers}
    for athlete, ledger in enumerate(new.ledgers):
        earlier = before.get(ledger.athlete.name if ledger.athlete else "", old.ledgers[0])
        pairs = week_pairs(earlier, ledger, past.matched)
        matched |= {(pair.old.visits, pair.new.visits): pair.visits for pair in pairs}
        by_session: dict[str, list[Difference]] = {}
        for change in session_changes(pairs):
            by_session.setdefault(change.session, []).append(change)
        for session in ledger.programme.sessions():
            changes = by_session.get(session.name, [])
            span = readable.span_in_document(session.place.start, session.place.end)
            if changes and span is not None and span not in told:
                told.add(span)
                yield Lens(*span, f"since the last commit: {_in_short(session.name, changes)}", None, athlete)
    past.matched = matched


def _in_short(session: str, changes: list[Difference]) -> str:
    """The first changes, without the name of the session, which stands below."""
    words = [
        change.words.removeprefix(f"{session}, ").removeprefix(f"{session}: ").removeprefix(f"{session} ")
        for change in changes
    ]
    more = len(words) - MOST_CHANGES
    return "; ".join([*words[:MOST_CHANGES], *([f"{more} more"] if more > 0 else [])])


def _past_of(snapshot: Snapshot, known: dict[str, Past]) -> Past:
    """The file at the last commit; kept until there is another one."""
    path = real(snapshot.path)
    if path in known and known[path].is_last:
        return known[path]
    folder = os.path.dirname(path)
    if not _is_in_repository(snapshot.workspace.files.root_of(folder)):
        raise GitError("there is no git repository around this file")
    repository = Repository.around(folder)
    commit = repository.commit(REVISION)
    workspace = review = None
    with TemporaryDirectory(prefix="spotline-") as at:
        write_at(repository, commit, at)
        old = os.path.join(at, os.path.relpath(path, repository.root))
        if os.path.isfile(old):
            workspace = Workspace(snapshot.workspace.today, snapshot.workspace.rules)
            with suppress(UnreadableError):
                workspace.overlay.open(old, content(old))  # so that it can be read when the folder is gone
            files = review_on(workspace, [old]).files
            review = next(one for one in files if one.file.real == real(old))
    known[path] = Past(repository, workspace, review)
    return known[path]


def _is_in_repository(root: str) -> bool:
    """Whether git marks a folder as a repository's root: an empty ``.git`` is none."""
    mark = os.path.join(root, ".git")
    return os.path.isfile(mark) or os.path.isfile(os.path.join(mark, "HEAD"))
