"""What reviews share between files: settings, athletes and records already read, the rules, the day."""

from __future__ import annotations

import os

from ..engine import registry
from ..findings.finding import Finding, Related
from ..team import known_findings
from ..team.read_settings import read_team
from ..team.settings import Team
from ..text import repository
from .athlete_file import AthleteFile
from .incremental import IncrementalState
from .overlay import Overlay

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from ..counting.ledger import Ledger
    from ..engine.registry import Rule
    from ..model.athlete import Athlete
    from ..syntax.tree import Node, Reading
    from ..team.own_exercises import ExercisesFile
    from ..text.places import Term
    from .overlay import FileVersion


class Workspace:
    """Reads each settings file, athlete and record once; paths are as shown, files are told apart really.

    One workspace serves many reviews, as long as it is not `stale`. ``overlay`` is where it finds files; an
    ``incremental`` one lets each review of a file build on the last. ``naming`` remembers
    which programme files, but for some, name some athletes; ``counted`` the ledgers of programmes that are
    not reviewed themselves.
    """

    def __init__(
        self,
        today: date,
        rules: list[Rule] | None = None,
        overlay: Overlay | None = None,
        *,
        incremental: bool = False,
    ) -> None:
        self.today = today
        self.rules = registry.all_rules() if rules is None else rules
        self.overlay = Overlay() if overlay is None else overlay
        self.naming: dict[tuple[frozenset[str], frozenset[str]], list[str]] = {}
        self._states: dict[str, IncrementalState] | None = {} if incremental else None
        self.counted: dict[str, tuple[FileVersion, list[Ledger]]] = {}
        self._marks: dict[str, FileVersion] = {}
        self._named: dict[str, tuple[FileVersion, tuple[str, ...]]] = {}
        self._roots: dict[str, str] = {}
        self._teams: dict[str, Team] = {}
        self._team_of: dict[str, Team] = {}
        self._athletes: dict[str, AthleteFile] = {}
        self._records: dict[str, known_findings.Record] = {}

    def read(self, path: str) -> Reading:
        """The tree of a file that others lean on: once it changes, the workspace is stale."""
        self._lean_on(path)
        return self.overlay.read(path)

    def _lean_on(self, path: str) -> None:
        """Notes how a file is now, or that it is not there."""
        path = repository.real(path)
        if path not in self._marks:
            self._marks[path] = self.overlay.mark(path)

    def stale(self) -> bool:
        """Whether a file that has been leant on is not what it was: time for a new workspace."""
        return any(self.overlay.mark(path) != mark for path, mark in self._marks.items())

    def state_of(self, path: str) -> IncrementalState:
        """What the last review of a programme, shown by this very path, has left to the next one."""
        if self._states is None:
            return IncrementalState()
        return self._states.setdefault(path, IncrementalState())

    def root_of(self, path: str) -> str:
        """The root of the repository that holds a file."""
        folder = os.path.dirname(path) or os.curdir
        if folder not in self._roots:
            self._roots[folder] = repository.root_of(folder)
        return self._roots[folder]

    def from_root(self, path: str) -> str:
        """The path of a file from the root of its repository, with / between folders."""
        return os.path.relpath(repository.real(path), self.root_of(path)).replace(os.sep, "/")

    def team_of(self, path: str) -> Team:
        """The settings that hold for a file."""
        folder = os.path.dirname(path) or os.curdir
        if folder not in self._team_of:
            settings = None
            for one in repository.settings_above(folder, self.root_of(path)):
                self._lean_on(one)
                if self.overlay.is_file(one):
                    settings = one
                    break
            team = Team() if settings is None else self.team_at(settings)
            self._team_of[folder] = team.within(repository.real(folder))
        return self._team_of[folder]

    def team_at(self, path: str) -> Team:
        """The settings of a settings file."""
        real = repository.real(path)
        if real not in self._teams:
            self._teams[real] = read_team(os.path.relpath(path), self.rules, self.read)
        return self._teams[real]

    def exercises_at(self, path: str) -> ExercisesFile:
        """A file of a team's own exercises, whether the team's settings name it or not."""
        from ..team.own_exercises import ExercisesFile

        known = self.team_of(path).exercises.get(repository.real(path))
        return ExercisesFile(self.read(path)) if known is None else known

    def broken_settings(self) -> list[str]:
        """Paths of the settings, and of the team's exercises, that could not be used as they are."""
        broken = [path for path, team in self._teams.items() if team.broken]
        for team in self._teams.values():
            broken += [path for path, file in team.exercises.items() if file.broken]
        return [os.path.relpath(path) for path in broken]

    def record_of(self, root: str) -> known_findings.Record:
        """The findings on record in a repository."""
        if root not in self._records:
            self._lean_on(os.path.join(root, known_findings.NAME))
            self._records[root] = known_findings.read_record(root, self.overlay.read)
        return self._records[root]

    def athlete_at(self, path: str) -> AthleteFile:
        """An athlete file."""
        real = repository.real(path)
        if real not in self._athletes:
            self._athletes[real] = AthleteFile(self.read(path))
        return self._athletes[real]

    def athletes_in(self, programme: str) -> tuple[str, ...]:
        """Real paths of the athlete files that a programme file names."""
        mark = self.overlay.mark(repository.real(programme))
        held = self._named.get(programme)
        if held is None or held[0] != mark:
            held = (mark, tuple(_athletes_in(programme, self.overlay.read(programme).root)))
            self._named[programme] = held
        return held[1]

    def named_athlete(self, programme: str, term: Term) -> Athlete | Finding:
        """The athlete whose file a programme file names, or the finding that says why not."""
        path = os.path.join(os.path.dirname(programme), *term.words.split("/"))
        if not repository.is_inside(self.root_of(programme), repository.real(path)):
            return _no_athlete(
                "athlete-outside",
                term,
                f"{term.words} lies outside the repository.",
                "Name an athlete file inside it.",
            )
        if not self.overlay.exists(path):
            self._lean_on(path)
            return _no_athlete(
                "athlete-missing",
                term,
                f"There is no file {term.words} (paths start at the folder of this file).",
                "Correct the path, or add the athlete file; only the name is required in it.",
            )
        file = self.athlete_at(os.path.relpath(path))
        if file.athlete is not None:
            return file.athlete
        return _no_athlete(
            "athlete-unreadable",
            term,
            f"{term.words} cannot be read as an athlete file.",
            "Review that file on its own and mend it.",
            tuple(Related(one.place, one.counted) for one in file.findings[:1]),
        )


def _athletes_in(programme: str, root: Node | None) -> Iterator[str]:
    """Real paths of the athlete files that a programme names."""
    plain = root.plain if root is not None else None
    if not isinstance(plain, dict):
        return
    listed = plain.get("athletes")
    for one in [plain.get("athlete"), *(listed if isinstance(listed, list) else [])]:
        named = one.get("athlete") if isinstance(one, dict) else one
        if isinstance(named, str):
            yield repository.real(os.path.join(os.path.dirname(programme), *named.split("/")))


def _no_athlete(
    rule: str, term: Term, counted: str, change: str, related: tuple[Related, ...] = ()
) -> Finding:
    return Finding(rule, "error", term.place, counted, change=change, where="athlete", related=related)
