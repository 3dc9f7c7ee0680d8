"""``spotline.yaml`` -> team settings, and findings for what cannot be used."""

from __future__ import annotations

import os

from ..body import catalogue
from ..body.known import Known
from ..body.names import without_side
from ..counting.credits import INDIRECT_WEIGHT
from ..counting.team_resources import TeamResources
from ..findings.finding import SEVERITIES, Edit, Finding, Related
from ..model.check import checked
from ..syntax.tree import Mapping, Scalar, Sequence
from ..text.letters import ignores_case, in_other_case
from ..text.repository import is_inside, kind_of
from ..wording.words import did_you_mean, listed, near_names, plain, shortened
from .presets import PRESETS, rules_after, rules_before
from .settings import LIMIT_OPTION, LIMIT_RULE, Choices, Team

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ..engine.limits import Default, Option
    from ..engine.registry import Rule
    from ..syntax.tree import KeyValue, Node, Reading
    from ..text.repository import FileResolver, SourceFile

    Read = Callable[[SourceFile], Reading]

GIVEN_NAMES_RULE = "our-name-unclear"
"""The rule on names that a programme gives; what it says of those in settings bears its name."""

EQUIPMENT_RULE = "equipment-unknown"
"""The rule on an athlete's equipment; what it says of the team's bears its name."""

COUNT_OPTION = "counting"
"""The option of every rule that says what a helping set counts; the team's ``counting`` moves them all."""


MOST_NEAR = 50
"""Findings of one file up to which the nearest known name is looked up for each unknown one."""


def read_team(file: SourceFile, rules: Iterable[Rule], files: FileResolver, read: Read) -> Team:
    """The settings of a file; ``files`` resolves the files that it names, ``read`` gives their trees."""
    reading = read(file)
    team = Team(os.path.dirname(file.real))
    team.findings = checked(reading, "team")
    if isinstance(reading.root, Mapping):
        reader = _SettingsReader(list(rules), team.findings, files, read)
        reader.read(team, reading.root)
    team.broken = any(finding.severity == "error" for finding in team.findings)
    if team.broken:
        broken = Team(team.folder)
        broken.findings, broken.broken = team.findings, True
        return broken
    return team


class _SettingsReader:
    """Reads the settings as far as it can, and adds a finding for each name that is not known."""

    def __init__(
        self, rules: list[Rule], findings: list[Finding], files: FileResolver, read_file: Read
    ) -> None:
        self.rules = {rule.name: rule for rule in rules}
        self.files = files
        self.read_file = read_file
        self.findings = findings

    def near(self, name: str, known: Iterable[str]) -> list[str]:
        """The known names that are most like an unknown one; none where a lot is wrong already."""
        return near_names(name, known, 2) if len(self.findings) < MOST_NEAR else []

    def say(self, rule: str, at: Node, counted: str, near: list[str]) -> None:
        """A finding on a name that nobody knows, with the nearest known ones."""
        self.findings.append(
            Finding(
                rule,
                "error",
                at.place,
                counted,
                change=did_you_mean(near) or "Correct it, or take it out.",
                where="team settings",
                edits=tuple(Edit(at.place, word, f"write {word}", certain=False) for word in near),
            )
        )

    def read(self, team: Team, root: Mapping) -> None:
        team.choices = self.choices(root)
        preset = root.entries.get("preset")
        if preset is not None:
            _start_from(team.choices, str(preset.value.plain))
        for pattern, entry in _entries(root, "folders"):
            if isinstance(entry.value, Mapping):
                team.folders.append((pattern, self.choices(entry.value)))
        team.left_out = _words(root, "leave out")
        pages = root.entries.get("rule pages")
        team.rule_pages = pages.value.text if pages is not None and isinstance(pages.value, Scalar) else ""
        for node in _nodes(root, "exercises"):
            if kind_of(str(node.plain)) == "exercises":
                self.exercises(team, node)
        self.team_rules(team, root)
        known = Known([one for file in team.exercises.values() for one in file.exercises])
        team.resources = _resources(root, self.with_names(root, known))
        self.kits(root, team.resources)
        self.equipment(root)

    def with_names(self, root: Mapping, known: Known) -> Known:
        """What is known, with the names that the team gives; says what is unclear about them."""
        entries = list(_entries(root, "our names"))
        names = [(name, entry.value.text) for name, entry in entries if isinstance(entry.value, Scalar)]
        if not names or len(names) < len(entries):
            return known
        from ..body.given_names import name_faults

        for fault in name_faults(names, known):
            _, entry = entries[fault.index]
            first = () if fault.first is None else (Related(entries[fault.first][1].key.place, "here"),)
            at = entry.value if fault.of_meaning else entry.key
            self.findings.append(
                Finding(
                    GIVEN_NAMES_RULE,
                    "warning",
                    at.place,
                    fault.counted,
                    change=did_you_mean(fault.near) or fault.change,
                    where="team settings",
                    related=first,
                    edits=tuple(Edit(at.place, word, f"write {word}", certain=False) for word in fault.near),
                )
            )
        return known.with_names(dict(names))

    def kits(self, root: Mapping, resources: TeamResources) -> None:
        """The places of the team, and what there is of the pieces in its equipment sets."""
        if not {"equipment", "places"} & root.entries.keys():
            return
        from ..model.kits import read_kits
        from ..model.values import LocatedNode, Reader

        reader, at = Reader(self.findings), LocatedNode(root, root.source)
        sets = read_kits(reader, at.get("equipment"))
        resources.kits = (*read_kits(reader, at.get("places")), *sets)
        resources.equipment = {kit.name.words: tuple(term.words for term in kit.terms) for kit in sets}
        resources.stocks = {kit.name.words: kit.stocks for kit in sets if kit.stocks}

    def equipment(self, root: Mapping) -> None:
        """Says which pieces in the team's sets of equipment, and which stations, nobody knows."""
        sets = [entry.value for key in ("equipment", "places") for _, entry in _entries(root, key)]
        listed = [node for one in sets if isinstance(one, Sequence) for node in one.items]
        named = {key for key, _ in _entries(root, "equipment")}
        nodes = [
            node
            for one in listed
            for node in ([entry.key for entry in one.entries.values()] if isinstance(one, Mapping) else [one])
            if not isinstance(node, Scalar) or node.text not in named
        ]
        nodes += [entry.key for _, entry in _entries(root, "stations")]
        if not nodes:
            return
        from ..body import equipment

        unknown = [one for one in nodes if isinstance(one, Scalar) and not equipment.is_known(one.text)]
        for number, node in enumerate(unknown):
            near = equipment.like(node.text) if number < MOST_NEAR else []
            self.findings.append(
                Finding(
                    EQUIPMENT_RULE,
                    "note",
                    node.place,
                    equipment.unknown(node.text),
                    change=did_you_mean(near) or equipment.REMEDY,
                    where="team settings",
                    edits=tuple(Edit(node.place, word, f"write {word}") for word in near),
                )
            )

    def team_rules(self, team: Team, root: Mapping) -> None:
        """Takes in the rules that the team declares, those whose form is sound."""
        entry = root.entries.get("team rules")
        for item in entry.value.items if entry is not None and isinstance(entry.value, Sequence) else ():
            if not isinstance(item, Mapping) or not {"rule", "weekly sets of", "message"} <= set(
                item.entries
            ):
                continue
            from .own_rules import is_action, is_known, near, team_rule

            name, subject, within = (item.entries.get(key) for key in ("rule", "weekly sets of", "in"))
            if name and any(name.value.plain == one.name for one in (*team.rules, *self.rules.values())):
                self.say("rule-twice", name.value, f"There is a rule `{name.value.plain}` already.", [])
            elif subject and not is_known(str(subject.value.plain)):
                words = str(subject.value.plain)
                self.say("area-unknown", subject.value, f"Sets cannot be counted for `{words}`.", near(words))
            elif within and not is_action(str(within.value.plain)):
                words = str(within.value.plain)
                self.say(
                    "area-unknown", within.value, f"`{words}` is no joint action or pattern.", near(words)
                )
            elif not any(item.start <= one.place.start < item.end for one in self.findings):
                team.rules.append(team_rule(item.plain))

    def exercises(self, team: Team, node: Node) -> None:
        """Takes in a file of the team's own exercises."""
        from .own_exercises import ExercisesFile, written_in_other_case

        file = self.files.named(team.folder, str(node.plain))
        if not is_inside(team.folder, file.real):
            self.say(
                "exercises-outside", node, f"{node.plain} lies outside the folder of these settings.", []
            )
            return
        reading = self.read_file(file)
        if reading.opened or os.path.isfile(file.name):
            team.exercises[file.real] = ExercisesFile(file, reading)
            if ignores_case():
                self.findings += written_in_other_case(team.folder, node)
        else:
            alike = in_other_case(os.path.realpath(team.folder), file.real)
            near = [os.path.relpath(alike, team.folder).replace(os.sep, "/")] if alike else []
            self.say("exercises-missing", node, f"There is no file {node.plain}.", near)

    def choices(self, root: Mapping) -> Choices:
        """The part of the settings that may differ from folder to folder."""
        choices = Choices()
        for group, entry in _entries(root, "weekly limits"):
            if self.is_group(group, entry.key) and isinstance(entry.value.plain, (int, float)):
                choices.move(LIMIT_RULE, LIMIT_OPTION, {group: float(entry.value.plain)})
        counting = root.entries.get("counting")
        if counting is not None and isinstance(counting.value, Scalar):
            for rule in self.rules.values():
                if any(option.name == COUNT_OPTION for option in rule.options):
                    choices.move(rule.name, COUNT_OPTION, (counting.value.text,))
        if "block commit on" in root.entries:
            choices.blocking = _words(root, "block commit on")
        for name, entry in _entries(root, "rules"):
            self.rule(choices, name, entry)
        return choices

    def rule(self, choices: Choices, name: str, entry: KeyValue) -> None:
        rule = self.rules.get(name)
        if rule is None:
            self.say("rule-unknown", entry.key, f"There is no rule `{name}`.", self.near(name, self.rules))
            return
        if isinstance(entry.value, Scalar):
            _switch(choices, name, entry.value.text)
            return
        if not isinstance(entry.value, Mapping):
            return
        choices.switched[name] = True  # who sets a limit of a rule wants it run
        known = {option.name: option for option in rule.options}
        for key, held in entry.value.entries.items():
            if key == "severity":
                self.severity(choices, name, held.value)
            elif key not in known:
                counted = f"The rule {name} has no limit `{key}`."
                self.say("limit-unknown", held.key, counted, self.near(key, known))
            else:
                self.limit(choices, rule, known[key], held.value)

    def severity(self, choices: Choices, rule: str, node: Node) -> None:
        """How serious a rule is; says so where the word is none of those that there are."""
        word = node.text if isinstance(node, Scalar) else ""
        if word in (*SEVERITIES, "skip"):
            _switch(choices, rule, word)
        elif not self.is_said(node):
            near = near_names(word, SEVERITIES, 1)
            said = f"`{shortened(word)}` is no severity: {listed(SEVERITIES, 'or')}."
            self.say("severity-unknown", node, said, near)

    def is_group(self, name: str, at: Node) -> bool:
        """Whether a name is that of an area of the body; says so where it is none."""
        if catalogue.area(name) is None or without_side(name):
            from ..body.near_areas import nearest_areas

            self.say("area-unknown", at, f"`{name}` is no muscle group that is known.", nearest_areas(name))
            return False
        return True

    def limit(self, choices: Choices, rule: Rule, option: Option, node: Node) -> None:
        value = _value_like(option.default, node)
        if option.name == COUNT_OPTION and value not in [(kind,) for kind in INDIRECT_WEIGHT]:
            value = None
        if (rule.name, option.name) == (LIMIT_RULE, LIMIT_OPTION) and isinstance(node, Mapping):
            for group, entry in node.entries.items():
                self.is_group(group, entry.key)
        if value is None and not self.is_said(node):
            self.findings.append(
                Finding(
                    "limit-unreadable",
                    "error",
                    node.place,
                    f"`{option.name}` of {rule.name} takes {_form(option.default)} ({option.unit}).",
                    wanted=f"something like {shown(option.default)}",
                    change="Correct it, or take it out.",
                    where="team settings",
                )
            )
        elif value is not None:
            choices.move(rule.name, option.name, value)

    def is_said(self, node: Node) -> bool:
        """Whether something is known to be wrong with a value already."""
        wrong = (finding.place.start for finding in self.findings if finding.severity == "error")
        return any(node.start <= start < node.end for start in wrong)


def _start_from(choices: Choices, preset: str) -> None:
    """Puts the limits of a preset under the team's own, leaves out newer rules and runs its old ones."""
    choices.preset = PRESETS.get(preset, {})
    as_then = {**dict.fromkeys(rules_after(preset), False), **dict.fromkeys(rules_before(preset), True)}
    choices.switched = {**as_then, **choices.switched}


def _resources(root: Mapping, known: Known) -> TeamResources:
    resources = TeamResources(known)
    resources.screened = "screening" in root.entries
    stations = [(name, entry.value.plain) for name, entry in _entries(root, "stations")]
    resources.stations = {name: number for name, number in stations if isinstance(number, int)}
    together = root.entries.get("training together")
    if together is not None and isinstance(together.value.plain, int):
        resources.together = together.value.plain
    return resources


def _switch(choices: Choices, rule: str, word: str) -> None:
    choices.switched[rule] = word != "skip"
    for severity in SEVERITIES:
        if word == severity:
            choices.severities[rule] = severity


def _value_like(default: Default, node: Node) -> Default | None:
    """The value of a limit in the form of its default; None where it has another form."""
    if isinstance(default, (int, float)):
        return _number(node)
    if isinstance(default, tuple):
        words = isinstance(node, Sequence) and all(isinstance(item, Scalar) for item in node.items)
        return _listed(node) if words else None
    if not isinstance(node, Mapping):
        return None
    numbers = {key: _number(entry.value) for key, entry in node.entries.items()}
    sound = {key: number for key, number in numbers.items() if number is not None}
    return sound if len(sound) == len(numbers) else None


def _number(node: Node) -> float | None:
    """A number that can be a limit."""
    value = node.plain
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return None
    return float(value) if 0 <= value <= MOST_LIMIT else None


MOST_LIMIT = 10_000
"""The most that a limit can be: past any count, so that it stands for none."""

_FORM = f"a number from 0 to {MOST_LIMIT}"


def _form(default: Default) -> str:
    if isinstance(default, dict):
        return f"names, each with {_FORM}"
    return "a list of words" if isinstance(default, tuple) else _FORM


def shown(value: Default) -> str:
    """A limit's value as a settings file writes it."""
    if isinstance(value, (int, float)):
        return plain(value)
    if isinstance(value, tuple):
        return f"[{', '.join(value)}]"
    return f"{{{', '.join(f'{name}: {plain(number)}' for name, number in value.items())}}}"


def _entries(root: Mapping, key: str) -> Iterator[tuple[str, KeyValue]]:
    entry = root.entries.get(key)
    if entry is not None and isinstance(entry.value, Mapping):
        yield from entry.value.entries.items()


def _words(root: Mapping, key: str) -> tuple[str, ...]:
    entry = root.entries.get(key)
    return () if entry is None else _listed(entry.value)


def _nodes(root: Mapping, key: str) -> list[Scalar]:
    entry = root.entries.get(key)
    items = entry.value.items if entry is not None and isinstance(entry.value, Sequence) else []
    return [item for item in items if isinstance(item, Scalar)]


def _listed(node: Node) -> tuple[str, ...]:
    if not isinstance(node, Sequence):
        return ()
    return tuple(item.text for item in node.items if isinstance(item, Scalar))
