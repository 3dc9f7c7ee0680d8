"""Team settings: what a team sets for all of its programmes in ``spotline.yaml``."""

from __future__ import annotations

import os

from ..counting.team_resources import NO_RESOURCES
from ..engine.limits import Limits

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..counting.team_resources import TeamResources
    from ..engine.limits import Default, Situation
    from ..engine.registry import Rule
    from ..findings.finding import Finding, Severity
    from .own_exercises import ExercisesFile

BLOCKING = ("warning", "error")
"""Severities that block unless the team says otherwise; a note never does by default."""

LIMIT_RULE, LIMIT_OPTION = "weekly-sets-over-limit", "groups"
"""Where the short form ``weekly limits`` goes."""


class Choices:
    """What a team chose: limits moved by rule and option, severities, rules on and off, what blocks.

    ``preset`` holds the limits of the preset that it names, by rule and option.
    """

    __slots__ = ("blocking", "moved", "preset", "severities", "switched")

    def __init__(self) -> None:
        self.moved: dict[str, dict[str, Default]] = {}
        self.preset: dict[str, dict[str, Default]] = {}
        self.severities: dict[str, Severity] = {}
        self.switched: dict[str, bool] = {}
        self.blocking: tuple[str, ...] | None = None

    def move(self, rule: str, option: str, value: Default) -> None:
        """Sets a limit; in one that gives numbers to names, names that are not given stay as they were."""
        options = self.moved.setdefault(rule, {})
        before = options.get(option)
        if isinstance(before, dict) and isinstance(value, dict):
            value = {**before, **value}
        options[option] = value

    def limits(self, rule: Rule, situation: Situation | None = None) -> Limits:
        """The limits of a rule in a situation."""
        return Limits(rule.options, self.moved.get(rule.name, {}), situation, self.preset.get(rule.name, {}))

    def over(self, below: Choices) -> Choices:
        """These choices where they are made, those below where they are not."""
        both = Choices()
        for one in (below, self):
            for rule, options in one.moved.items():
                for option, value in options.items():
                    both.move(rule, option, value)
            both.severities.update(one.severities)
            both.switched.update(one.switched)
            both.preset = one.preset or both.preset
            both.blocking = one.blocking if one.blocking is not None else both.blocking
        return both


class Team:
    """The settings that hold for a folder.

    ``folder`` is where they stand; ``findings`` say what is wrong with them, in which case nothing of them is
    applied and ``broken`` is True. ``exercises`` are the files of the team's own exercises, by real path;
    ``rules`` are rules of its own; ``rule_pages`` is the address, ending in /, below which each rule has a
    page, "" where there is none.
    """

    __slots__ = (
        "broken",
        "choices",
        "exercises",
        "findings",
        "folder",
        "folders",
        "left_out",
        "resources",
        "rule_pages",
        "rules",
    )

    def __init__(self, folder: str = "") -> None:
        self.folder = folder
        self.findings: list[Finding] = []
        self.broken = False
        self.choices = Choices()
        self.folders: list[tuple[str, Choices]] = []
        self.left_out: tuple[str, ...] = ()
        self.resources: TeamResources = NO_RESOURCES
        self.exercises: dict[str, ExercisesFile] = {}
        self.rules: list[Rule] = []
        self.rule_pages = ""

    @property
    def blocking(self) -> tuple[str, ...]:
        """Severities that block."""
        return BLOCKING if self.choices.blocking is None else self.choices.blocking

    def runs(self, rule: Rule) -> bool:
        """Whether a rule is run."""
        return self.choices.switched.get(rule.name, not rule.off)

    def chosen(self, rules: Iterable[Rule]) -> list[Rule]:
        """Those of some rules that are run."""
        switched = self.choices.switched
        return [rule for rule in rules if switched.get(rule.name, not rule.off)]

    def within(self, folder: str) -> Team:
        """The settings as they hold in a folder (a real path) below."""
        fitting = [choices for pattern, choices in self.folders if _matches(self.folder, folder, (pattern,))]
        if not fitting:
            return self
        other = Team(self.folder)
        for name in Team.__slots__:
            setattr(other, name, getattr(self, name))
        for choices in fitting:
            other.choices = choices.over(other.choices)
        return other

    def leaves_out(self, path: str) -> bool:
        """Whether a search through folders passes over a file or folder (a real path)."""
        return _matches(self.folder, path, self.left_out)


def _matches(folder: str, path: str, patterns: tuple[str, ...]) -> bool:
    """Whether a path lies at or below one that a pattern names, all from a folder."""
    if not patterns:
        return False
    from fnmatch import fnmatchcase

    parts = os.path.relpath(path, folder).replace(os.sep, "/").split("/")
    heads = ["/".join(parts[: length + 1]) for length in range(len(parts))]
    return any(fnmatchcase(head, pattern.rstrip("/")) for head in heads for pattern in patterns)
