"""What ``review`` does with its words: files are found, reviewed by one process or several, and told."""

from __future__ import annotations

import sys
from importlib import import_module

from .. import reporters
from ..engine.registry import has_foreign_rules
from ..project.discovery import discovered
from ..project.groups import grouped
from ..project.results import Outcome, Verdict
from ..project.telling import Teller
from ..project.workspace import Workspace
from .shelf import Shelf

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date
    from typing import Any

    from ..project.groups import Group
    from ..project.telling import Told
    from ..text.repository import SourceFile

WORTH_WORKERS = 400_000
"""Bytes of files from which on further processes are worth while: each takes as long to begin as a tenth of
these take to review."""


def review(paths: list[str], today: date, form: str, jobs: int | None = None) -> Verdict:
    """Reviews files, and the files of ours in folders, and prints it.

    ``jobs`` processes share the work; where nobody says, as many as there are cores, if it is much.
    """
    workspace = Workspace(today, asks_git=True)
    return Run(workspace, discovered(workspace, paths), form).printed(jobs)


def review_changed(
    revision: str, paths: list[str], today: date, form: str, jobs: int | None = None
) -> Verdict:
    """Reviews what differs from a revision. Nothing to review is a sound outcome. Raises GitError."""
    from ..project.changed import changed_files

    workspace = Workspace(today, asks_git=True)
    found = changed_files(workspace, revision, paths)
    return Run(workspace, found, form).printed(jobs, may_be_empty=True)


MANY_FILES = 200
"""Files from which on a terminal shows how many are done."""

PROGRESS_EVERY = 20
"""Files between two such words, where each is a group of its own."""


class Run:
    """One run of the command over some files."""

    def __init__(self, workspace: Workspace, found: list[SourceFile], form: str) -> None:
        self.workspace = workspace
        self.found = found
        self.form = form
        self.module = import_module(f".{reporters.REVIEW[form]}", reporters.__name__)
        self.look = self.module.look() if hasattr(self.module, "look") else ()
        self.teller = Teller(workspace, lambda one: self.module.part(one, self.look))
        self.numbers = {file: number for number, file in enumerate(found)}
        self.outcomes: list[Outcome | None] = [None] * len(found)
        self.parts = Shelf(len(found))
        self.done = 0

    def printed(self, jobs: int | None, *, may_be_empty: bool = False) -> Verdict:
        """Reviews all files and prints what is told of them; the verdict."""
        self._review(jobs)
        verdict = Verdict([one for one in self.outcomes if one is not None], may_be_empty=may_be_empty)
        self.module.report(self.parts, verdict)
        return verdict

    def _review(self, jobs: int | None) -> None:
        """Reviews all files, and what is to be said when they are."""
        for file in self.found:
            self.workspace.team_of(file)  # settings are met in the order of the files, whoever reviews these
        groups = grouped(self.workspace, self.found)
        workers = self._workers(groups, jobs)
        if workers > 1:
            from .workers import Job, review_by_workers

            job = Job(self.workspace, self.teller, self.start(), self.take)
            review_by_workers(job, groups, workers)
        else:
            for group in groups:
                self.take(group.files, self.teller.group(group.files))
        self._end_progress()
        for told in self.teller.rest(self.found):
            self._keep(len(self.outcomes), told)

    def start(self) -> tuple[Any, ...]:
        """What a worker is told at first, as plain data; see `worker`."""
        workspace = self.workspace
        beside = {root: one.plain() for root, one in workspace.beside.items()}
        today = workspace.today.toordinal()
        not_in_git = sorted(workspace.not_in_git)
        return today, self.form, self.look, workspace.renamed, not_in_git, workspace.twins, beside

    def take(self, files: list[SourceFile], several: Iterable[Told]) -> None:
        """Takes in what is told of files."""
        for file, told in zip(files, several, strict=True):
            _, left, judged, _ = told
            self.teller.known.note(file, left, judged=judged)
            self._keep(self.numbers[file], told)
        self.done += len(files)
        self._show_progress()

    def _keep(self, number: int, told: Told) -> None:
        outcome = Outcome.of(told[0])
        if number == len(self.outcomes):
            self.outcomes.append(outcome)
        else:
            self.outcomes[number] = outcome
        self.parts.put(number, told[3])

    def _workers(self, groups: list[Group], jobs: int | None) -> int:
        """How many processes share the work. What a team's own Python rules look at, nobody knows: one."""
        if jobs == 1 or has_foreign_rules() or not sys.executable:
            return 1
        size = sum(group.size for group in groups)
        if jobs is None:
            import os

            jobs = os.cpu_count() or 1 if size >= WORTH_WORKERS else 1
        return min(jobs, len(groups))

    # Progress

    def _show_progress(self) -> None:
        many = len(self.found)
        if (
            many >= MANY_FILES
            and sys.stderr.isatty()
            and (self.done % PROGRESS_EVERY < 1 or self.done == many)
        ):
            print(f"\rReviewed {self.done} of {many} files", end="", file=sys.stderr, flush=True)

    def _end_progress(self) -> None:
        if len(self.found) >= MANY_FILES and sys.stderr.isatty():
            print("\r" + " " * 40 + "\r", end="", file=sys.stderr, flush=True)
