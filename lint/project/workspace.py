"""What reviews share between files: settings, athletes and records already read, the rules, the day."""

from __future__ import annotations

import os

from ..engine import registry
from ..findings.finding import Finding, Related
from ..team import known_findings
from ..team.settings import Team
from ..text import repository
from ..text.repository import FileResolver
from .athlete_file import AthleteFile
from .incremental import IncrementalState
from .overlay import Overlay

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import date
    from typing import Any, TypeVar

    from ..counting.ledger import Ledger
    from ..engine.registry import Rule
    from ..model.athlete import Athlete
    from ..syntax.tree import Node, Reading
    from ..team.own_exercises import ExercisesFile
    from ..text.places import Term
    from ..text.repository import SourceFile
    from .beside import Beside
    from .listing import Listing
    from .overlay import FileVersion

    T = TypeVar("T")

MISSING = "athlete-missing"
"""What is found where a programme names an athlete file that is not there."""


class Workspace:
    """Reads each settings file, athlete and record once, whatever names lead to it.

    One workspace serves many reviews, until it is `stale`. ``files`` resolves paths, ``overlay`` reads files;
    an ``incremental`` workspace lets each review of a programme build on the last one. ``searches`` caches
    which programmes a search found for some athletes, ``unreviewed`` the ledgers of programmes that are
    counted but not reviewed. ``listing`` stands in for searches of the disk below its root, where git was
    asked; ``renamed`` are files that git knows to be renamed, old and new real path. Git is asked for these
    only where ``asks_git`` is set; ``not_in_git`` are real paths of files that a commit would lack. ``twins``
    are files beside which another differs in the case of its name alone: real path, name of the other.
    """

    def __init__(
        self,
        today: date,
        rules: list[Rule] | None = None,
        overlay: Overlay | None = None,
        *,
        incremental: bool = False,
        asks_git: bool = False,
    ) -> None:
        self.today = today
        self._rules = rules
        self.overlay = Overlay() if overlay is None else overlay
        self.files = FileResolver()
        self.searches: dict[tuple[frozenset[str], frozenset[str]], list[SourceFile]] = {}
        self.unreviewed: dict[SourceFile, tuple[FileVersion, list[Ledger]]] = {}
        self.listing: Listing | None = None
        self.beside: dict[str, Beside] = {}
        self.renamed: dict[str, str] = {}
        self.asks_git = asks_git
        self.not_in_git: set[str] = set()
        self.twins: dict[str, str] = {}
        self._states: dict[SourceFile, IncrementalState] | None = {} if incremental else None
        self._dependencies: dict[SourceFile, FileVersion] = {}
        self._answers: dict[tuple[str, str], tuple[Callable[[], Any], Any]] = {}
        self._named: dict[SourceFile, tuple[FileVersion, tuple[str, ...]]] = {}
        self._settings: dict[str, tuple[SourceFile, Team]] = {}
        self._teams: dict[str, Team] = {}
        self._athletes: dict[str, AthleteFile] = {}
        self._records: dict[str, known_findings.Record] = {}
        self._chosen: dict[Team, list[Rule]] = {}

    @property
    def rules(self) -> list[Rule]:
        """The rules that it was given, else all: a process that leaves the reviews to others needs none."""
        if self._rules is None:
            self._rules = registry.all_rules()
        return self._rules

    def rules_for(self, team: Team) -> list[Rule]:
        """The rules that settings run, those of the team among them."""
        if team not in self._chosen:
            self._chosen[team] = team.chosen((*self.rules, *team.rules))
        return self._chosen[team]

    def read(self, file: SourceFile) -> Reading:
        """The tree of a file on which other reviews depend: once it changes, the workspace is stale."""
        self._depend_on(file)
        return self.overlay.read(file)

    def _depend_on(self, file: SourceFile) -> None:
        """Notes the version of a file as it is now, or that it is not there."""
        if file not in self._dependencies:
            self._dependencies[file] = self.overlay.version(file)

    def answer(self, question: tuple[str, str], search: Callable[[], T]) -> T:
        """What a search of folders finds, made once; as soon as it finds another, the workspace is stale."""
        if question not in self._answers:
            self._answers[question] = search, search()
        found: T = self._answers[question][1]
        return found

    def stale(self) -> bool:
        """Whether a file that reviews depend on has changed: time for a new workspace."""
        return any(
            self.overlay.version(file) != version for file, version in self._dependencies.items()
        ) or any(search() != found for search, found in self._answers.values())

    def state_of(self, file: SourceFile) -> IncrementalState:
        """What the last review of a programme, shown by this very name, has left to the next one."""
        if self._states is None:
            return IncrementalState()
        return self._states.setdefault(file, IncrementalState())

    def forget(self) -> None:
        """Lets go of what was read of athletes and programmes; settings, records and searches stay."""
        for _, ledgers in self.unreviewed.values():
            for ledger in ledgers:
                ledger.end()
        for one in (self.searches, self.unreviewed, self._athletes, self._dependencies):
            one.clear()

    # Settings

    def team_of(self, file: SourceFile) -> Team:
        """The settings that hold for a file."""
        return self.team_in(file.folder)

    def team_in(self, folder: str) -> Team:
        """The settings that hold in a folder (a real path): those of the nearest settings file."""
        if folder not in self._teams:
            self._teams[folder] = self._team_above(folder).within(folder)
        return self._teams[folder]

    def _team_above(self, folder: str) -> Team:
        for above in repository.folders_up(folder, self.files.root_of(folder)):
            settings = self.files.named(above, repository.SETTINGS)
            self._depend_on(settings)
            if self.overlay.is_file(settings):
                return self.team_at(settings)
        return Team()

    def team_at(self, file: SourceFile) -> Team:
        """The settings of a settings file, shown from the working folder."""
        if file.real not in self._settings:
            shown = self.files.file(repository.shown(file.name))
            from ..team.read_settings import read_team

            self._settings[file.real] = (shown, read_team(shown, self.rules, self.files, self.read))
        return self._settings[file.real][1]

    def exercises_at(self, file: SourceFile) -> ExercisesFile:
        """A file of a team's own exercises, whether the team's settings name it or not."""
        from ..team.own_exercises import ExercisesFile

        known = self.team_of(file).exercises.get(file.real)
        return ExercisesFile(file, self.read(file)) if known is None else known

    def broken_settings(self) -> list[SourceFile]:
        """The settings files, and files of the teams' exercises, that could not be used as they are."""
        broken = [file for file, team in self._settings.values() if team.broken]
        for _, team in self._settings.values():
            broken += [one.file for one in team.exercises.values() if one.broken]
        return broken

    # The record of known findings

    def record_file(self, root: str) -> SourceFile:
        """The record of a repository, be it there or not."""
        return self.files.named(root, known_findings.NAME)

    def record_of(self, root: str) -> known_findings.Record:
        """The findings on record in a repository."""
        if root not in self._records:
            file = self.record_file(root)
            self._depend_on(file)
            self._records[root] = known_findings.read_record(file, self.overlay.read)
        return self._records[root]

    # Athletes

    def athlete_at(self, file: SourceFile) -> AthleteFile:
        """An athlete file."""
        if file.real not in self._athletes:
            self._athletes[file.real] = AthleteFile(self.read(file))
        return self._athletes[file.real]

    def athletes_in(self, programme: SourceFile) -> tuple[str, ...]:
        """Real paths of the athlete files that a programme file names."""
        version = self.overlay.version(programme)
        cached = self._named.get(programme)
        if cached is None or cached[0] != version:
            named = tuple(
                self.named_in(programme, words).real
                for words in athletes_named(self.overlay.read(programme).root)
            )
            cached = self._named[programme] = (version, named)
        return cached[1]

    def named_athlete(self, programme: SourceFile, term: Term) -> Athlete | Finding:
        """The athlete whose file a programme file names, or the finding that says why not."""
        file = self.named_in(programme, term.words)
        if not repository.is_inside(programme.root, file.real):
            return _no_athlete(
                "athlete-outside",
                term,
                f"{term.words} lies outside the repository.",
                "Name an athlete file inside it.",
            )
        if not self.overlay.exists(file):
            self._depend_on(file)
            return _no_athlete(
                MISSING,
                term,
                f"There is no file {term.words} (paths start at the folder of this file).",
                "Correct the path, or add the athlete file; only the name is required in it.",
            )
        if file.real in self.not_in_git:
            return _no_athlete(
                "athlete-not-in-git",
                term,
                f"{term.words} is on this disk alone: git does not hold it, so the commit would lack it.",
                f"Add it: git add {term.words}",
            )
        read = self.athlete_at(file)
        if read.athlete is not None:
            return read.athlete
        return _no_athlete(
            "athlete-unreadable",
            term,
            f"{term.words} cannot be read as an athlete file.",
            "Review that file on its own and mend it.",
            tuple(Related(one.place, one.counted) for one in read.findings[:1]),
        )

    def named_in(self, programme: SourceFile, words: str) -> SourceFile:
        """The file that a programme file names; paths start at its folder."""
        return self.files.named(os.path.dirname(programme.name), words)


def athletes_named(root: Node | None) -> Iterator[str]:
    """The paths of athlete files that a programme names, as written."""
    plain = root.plain if root is not None else None
    if not isinstance(plain, dict):
        return
    listed = plain.get("athletes")
    for one in [plain.get("athlete"), *(listed if isinstance(listed, list) else [])]:
        named = one.get("athlete") if isinstance(one, dict) else one
        if isinstance(named, str):
            yield named


def _no_athlete(
    rule: str, term: Term, counted: str, change: str, related: tuple[Related, ...] = ()
) -> Finding:
    return Finding(rule, "error", term.place, counted, change=change, where="athlete", related=related)
