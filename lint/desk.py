"""What one run shares between its files: settings, athletes and records already read, the rules, the day."""

from __future__ import annotations

import os

from . import known_findings, registry, repository
from .finding import Finding, Related
from .reader import checked, read_athlete
from .team import Team, read_team
from .yaml_tree import read

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from .programme import Athlete, Term
    from .registry import Rule
    from .team_exercises import ExercisesFile
    from .yaml_tree import Reading


class AthleteFile:
    """An athlete file as read: ``athlete`` is None where it holds none that can be read."""

    __slots__ = ("athlete", "findings", "reading")

    def __init__(self, path: str) -> None:
        self.reading: Reading = read(path)
        self.athlete: Athlete | None = None
        self.findings: list[Finding] = checked(self.reading, "athlete")
        if self.reading.root is not None:
            self.athlete, meant = read_athlete(self.reading.root)
            self.findings += meant


class Desk:
    """Reads each settings file, athlete and record once; paths are as shown, files are told apart really."""

    def __init__(self, today: date, rules: list[Rule] | None = None) -> None:
        self.today = today
        self.rules = registry.all_rules() if rules is None else rules
        self._roots: dict[str, str] = {}
        self._teams: dict[str, Team] = {}
        self._team_of: dict[str, Team] = {}
        self._athletes: dict[str, AthleteFile] = {}
        self._records: dict[str, known_findings.Record] = {}

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
            settings = repository.settings_above(folder, self.root_of(path))
            team = Team() if settings is None else self.team_at(settings)
            self._team_of[folder] = team.within(repository.real(folder))
        return self._team_of[folder]

    def team_at(self, path: str) -> Team:
        """The settings of a settings file."""
        real = repository.real(path)
        if real not in self._teams:
            self._teams[real] = read_team(os.path.relpath(path), self.rules)
        return self._teams[real]

    def exercises_at(self, path: str) -> ExercisesFile:
        """A file of a team's own exercises, whether the team's settings name it or not."""
        from .team_exercises import ExercisesFile

        known = self.team_of(path).exercises.get(repository.real(path))
        return ExercisesFile(path) if known is None else known

    def broken_settings(self) -> list[str]:
        """Paths of the settings, and of the team's exercises, that could not be used as they are."""
        broken = [path for path, team in self._teams.items() if team.broken]
        for team in self._teams.values():
            broken += [path for path, file in team.exercises.items() if file.broken]
        return [os.path.relpath(path) for path in broken]

    def record_of(self, path: str) -> known_findings.Record:
        """The findings on record in the repository of a file."""
        root = self.root_of(path)
        if root not in self._records:
            self._records[root] = known_findings.read_record(root)
        return self._records[root]

    def athlete_at(self, path: str) -> AthleteFile:
        """An athlete file."""
        real = repository.real(path)
        if real not in self._athletes:
            self._athletes[real] = AthleteFile(path)
        return self._athletes[real]

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
        if not os.path.exists(path):
            return _no_athlete(
                "athlete-missing",
                term,
                f"There is no file {term.words} (paths start at the folder of this file).",
                "Correct the path, or add the athlete file; only the name is required in it.",
            )
        file = self.athlete_at(os.path.relpath(path))
        if file.athlete is not None:
            return file.athlete
        finding = _no_athlete(
            "athlete-unreadable",
            term,
            f"{term.words} cannot be read as an athlete file.",
            "Review that file on its own and mend it.",
        )
        finding.related = tuple(Related(one.place, one.counted) for one in file.findings[:1])
        return finding


def _no_athlete(rule: str, term: Term, counted: str, change: str) -> Finding:
    return Finding(rule, "error", term.place, counted, change=change, where="athlete")
