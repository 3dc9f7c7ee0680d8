"""Files in, findings out: the same review behind the command, the hook and the editor."""

from __future__ import annotations

import os

from . import known_findings, registry, repository
from .finding import SEVERITIES, Finding, Related
from .ledger import Ledger
from .reader import checked, read_athlete, read_programme
from .team import Team, read_team
from .waivers import Waived, waive
from .yaml_tree import read

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from .programme import Athlete, Term
    from .registry import Fault, Rule
    from .yaml_tree import Reading

ENDINGS = {
    ".programme.yaml": "programme",
    ".programme.yml": "programme",
    ".athlete.yaml": "athlete",
    ".athlete.yml": "athlete",
}


def kind_of(path: str) -> str:
    """``programme``, ``athlete``, ``team``, or empty for any other file."""
    name = os.path.basename(path)
    if name == repository.SETTINGS:
        return "team"
    return next((kind for ending, kind in ENDINGS.items() if name.endswith(ending)), "")


class FileReview:
    """What a review says of one file.

    ``opened`` is False where the file could not be read at all; ``ledgers`` are those of a programme, one for
    each athlete on it, none where it could not be counted. ``waived`` and ``known`` are findings kept back by
    waivers and by the record of known findings.
    """

    __slots__ = ("faults", "findings", "kind", "known", "ledgers", "name", "opened", "team", "waived")

    def __init__(self, name: str, kind: str, team: Team) -> None:
        self.name = name
        self.kind = kind
        self.team = team
        self.opened = True
        self.findings: list[Finding] = []
        self.faults: list[Fault] = []
        self.ledgers: list[Ledger] = []
        self.waived: list[Waived] = []
        self.known: list[Finding] = []

    @property
    def ledger(self) -> Ledger | None:
        """The ledger of the first athlete, or None."""
        return self.ledgers[0] if self.ledgers else None

    @property
    def blocked(self) -> bool:
        """Whether one of its findings blocks under the team's settings."""
        return any(finding.severity in self.team.blocking for finding in self.findings)


class Review:
    """The reviews of all files, in order, and what they come to."""

    __slots__ = ("files",)

    def __init__(self, files: list[FileReview]) -> None:
        self.files = files

    def count(self, severity: str) -> int:
        """How many findings of a severity there are."""
        return sum(finding.severity == severity for one in self.files for finding in one.findings)

    @property
    def blocked(self) -> bool:
        """Whether any finding blocks."""
        return any(one.blocked for one in self.files)

    def kept_back(self) -> tuple[int, int]:
        """How many findings waivers keep back, and how many are on record."""
        return sum(len(one.waived) for one in self.files), sum(len(one.known) for one in self.files)

    @property
    def failed(self) -> bool:
        """Whether the job could not be done: no file, a file unread, settings broken, a rule failed."""
        return not self.files or any(not one.opened or one.faults or one.team.broken for one in self.files)

    @property
    def exit_code(self) -> int:
        """2 where the job could not be done, else 1 where a finding blocks, else 0."""
        return 2 if self.failed else int(self.blocked)


class Desk:
    """What one run shares between its files: the settings and athletes already read, the rules, the day."""

    def __init__(self, today: date) -> None:
        self.today = today
        self.rules: list[Rule] = registry.all_rules()
        self._roots: dict[str, str] = {}
        self._teams: dict[str, Team] = {}
        self._team_of: dict[str, Team] = {}
        self._athletes: dict[str, tuple[Reading, Athlete | None, list[Finding]]] = {}
        self._records: dict[str, known_findings.Record] = {}

    def root_of(self, folder: str) -> str:
        """The root of the repository that holds a folder."""
        if folder not in self._roots:
            self._roots[folder] = repository.root_of(folder)
        return self._roots[folder]

    def team_of(self, folder: str) -> Team:
        """The settings that hold for the files of a folder."""
        if folder not in self._team_of:
            path = repository.settings_above(folder, self.root_of(folder))
            team = Team() if path is None else self.team_at(path)
            self._team_of[folder] = team.within(os.path.realpath(folder))
        return self._team_of[folder]

    def team_at(self, path: str) -> Team:
        """The settings of a file, read once."""
        real = os.path.realpath(path)
        if real not in self._teams:
            self._teams[real] = read_team(os.path.relpath(path), self.rules)
        return self._teams[real]

    def broken_settings(self) -> list[str]:
        """Paths of the settings that were asked for and could not be applied."""
        return [os.path.relpath(path) for path, team in self._teams.items() if team.broken]

    def athlete_at(self, path: str) -> tuple[Reading, Athlete | None, list[Finding]]:
        """Reading, athlete and findings of an athlete file, read once."""
        real = os.path.realpath(path)
        if real not in self._athletes:
            reading = read(path)
            athlete, findings = read_athlete(reading.root) if reading.root else (None, [])
            self._athletes[real] = (reading, athlete, checked(reading, "athlete") + findings)
        return self._athletes[real]

    def named_athlete(self, folder: str, term: Term) -> Athlete | Finding:
        """The athlete whose file a programme of a folder names, or the finding that says why not."""
        path = os.path.join(folder, *term.words.split("/"))
        if not repository.is_inside(self.root_of(folder), repository.real(path)):
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
        reading, athlete, _ = self.athlete_at(os.path.relpath(path))
        if athlete is None:
            first = tuple(Related(finding.place, finding.counted) for finding in reading.findings[:1])
            finding = _no_athlete(
                "athlete-unreadable",
                term,
                f"{term.words} cannot be read as an athlete file.",
                "Review that file on its own and mend it.",
            )
            finding.related = first
            return finding
        return athlete

    def review_file(self, path: str) -> FileReview:
        """The review of one file, which is shown by the path given."""
        folder = os.path.dirname(path) or os.curdir
        kind = kind_of(path)
        if kind == "team":
            team = self.team_at(path)
            one = FileReview(path, kind, team)
            one.findings = _in_order(team.findings)
            return one
        one = FileReview(path, kind, self.team_of(folder))
        if kind == "athlete":
            reading, _, findings = self.athlete_at(path)
            one.opened = reading.opened
            one.findings = _in_order(findings)
            return one
        self._review_programme(one, read(path), folder)
        return one

    def _review_programme(self, one: FileReview, reading: Reading, folder: str) -> None:
        one.opened = reading.opened
        found = checked(reading, "programme")
        if reading.root is not None:
            programme, meant = read_programme(reading.root, lambda term: self.named_athlete(folder, term))
            found += meant
            if programme is not None:
                members = programme.members or (None,)
                around = one.team.around
                one.ledgers = [Ledger(programme, self.today, around, member) for member in members]
                found += self._ruled(one)
        names = [rule.name for rule in self.rules]
        found, one.waived = waive(reading, _in_order(found), names, self.today)
        one.findings = _in_order(found)

    def _ruled(self, one: FileReview) -> list[Finding]:
        """What the rules find for each athlete of a programme; what holds for all is said once."""
        rules = [rule for rule in self.rules if one.team.runs(rule)]
        choices = one.team.choices
        found: dict[tuple[object, ...], tuple[Finding, list[str]]] = {}
        for ledger in one.ledgers:
            ruled, faults = registry.run(rules, ledger, choices.moved, choices.severities)
            one.faults += [
                fault for fault in faults if fault.rule not in {known.rule for known in one.faults}
            ]
            for finding in ruled:
                key = (finding.rule, finding.place, finding.subject, finding.counted, finding.weeks)
                names = found.setdefault(key, (finding, []))[1]
                names.append(ledger.athlete.name if ledger.athlete else "")
        for finding, names in found.values():
            if len(names) < len(one.ledgers):
                finding.counted = f"For {' and '.join(names)}: {finding.counted}"
        return [finding for finding, _ in found.values()]

    def set_known_apart(self, files: list[FileReview]) -> None:
        """Moves findings on record out of the way; the record's own findings come as one more file."""
        names: dict[str, list[str]] = {}
        for one in files:
            root, name = self.from_root(one.name)
            names.setdefault(root, []).append(name)
            if root not in self._records:
                self._records[root] = known_findings.read_record(root)
            one.findings, one.known = self._records[root].split(one.findings, name)
        for root, reviewed in names.items():
            record = self._records[root]
            findings = [*record.broken, *record.stale(reviewed)]
            if findings:
                path = os.path.relpath(os.path.join(root, known_findings.NAME))
                whole = FileReview(path, "record", Team())
                whole.findings = findings
                whole.opened = not record.broken
                files.append(whole)

    def from_root(self, path: str) -> tuple[str, str]:
        """The root of a file's repository, and its path from there, with / between folders."""
        root = self.root_of(os.path.dirname(path) or os.curdir)
        return root, os.path.relpath(os.path.realpath(path), root).replace(os.sep, "/")


def _no_athlete(rule: str, term: Term, counted: str, change: str) -> Finding:
    return Finding(rule, "error", term.place, counted, change=change, where="athlete")


def _in_order(findings: list[Finding]) -> list[Finding]:
    """By place, the more serious first where two share one; no advice on quoting what is wrong anyway."""
    wrong = {finding.place for finding in findings if finding.severity == "error"}
    return sorted(
        (one for one in findings if one.rule != "quote-this" or one.place not in wrong),
        key=lambda one: (one.place.start, -SEVERITIES.index(one.severity), one.rule, one.subject),
    )


def review(paths: list[str], today: date) -> Review:
    """The review of files, and of the programme and athlete files in folders.

    An athlete file brings the programmes along that name it; broken settings come last, whether asked for or
    not. ``today`` stands in where a programme does not say when it starts.
    """
    desk = Desk(today)
    files = [desk.review_file(path) for path in _gathered(desk, paths)]
    seen = {repository.real(one.name) for one in files}
    broken = [path for path in desk.broken_settings() if os.path.realpath(path) not in seen]
    files += [desk.review_file(path) for path in broken]
    desk.set_known_apart(files)
    return Review(files)


def record_known(paths: list[str], today: date) -> list[str]:
    """Records all that is found now as known, for each repository; returns the files written."""
    desk = Desk(today)
    found: dict[str, list[tuple[Finding, str]]] = {}
    for path in _gathered(desk, paths):
        root, name = desk.from_root(path)
        findings = desk.review_file(path).findings
        found.setdefault(root, []).extend((finding, name) for finding in findings)
    return [os.path.relpath(known_findings.write_record(root, one)) for root, one in found.items()]


def _gathered(desk: Desk, paths: list[str]) -> list[str]:
    """Every file to review, each once, in the order asked for; folders in the order of their names."""
    found: dict[str, str] = {}
    for path in paths:
        is_folder = os.path.isdir(path) and not kind_of(path)
        for one in _searched(desk, path, asked=repository.real(path)) if is_folder else [path]:
            found.setdefault(repository.real(one), one)
    for one in list(found.values()):
        if kind_of(one) == "athlete":
            for naming in _naming(desk, one):
                found.setdefault(os.path.realpath(naming), naming)
    return list(found.values())


def _searched(desk: Desk, folder: str, asked: str) -> Iterator[str]:
    """Programme and athlete files below a folder, but for hidden folders and what the team leaves out.

    What was ``asked`` for by name is searched even where it is left out.
    """
    try:
        entries = sorted(os.scandir(folder), key=lambda entry: entry.name)
    except OSError:
        yield folder
        return
    team = desk.team_of(folder)
    for entry in entries:
        path = entry.path.removeprefix("./")
        if team.leaves_out(os.path.realpath(path)) and not team.leaves_out(asked):
            continue
        if kind_of(path) in ("programme", "athlete"):
            yield path
        elif entry.is_dir(follow_symlinks=False) and not entry.name.startswith("."):
            yield from _searched(desk, path, asked)


def _naming(desk: Desk, athlete: str) -> Iterator[str]:
    """Programme files of the repository that name an athlete file."""
    real = os.path.realpath(athlete)
    root = desk.root_of(os.path.dirname(athlete) or os.curdir)
    for path in _searched(desk, os.path.relpath(root), asked=root):
        if kind_of(path) != "programme" or not os.path.isfile(path):
            continue
        with open(path, "rb") as file:
            text = file.read()
        if os.fsencode(os.path.basename(athlete)) in text and _names(path, real):
            yield path


def _names(path: str, athlete: str) -> bool:
    """Whether a programme names the athlete file with this real path."""
    reading = read(path)
    folder = os.path.dirname(path)
    plain = reading.root.plain if reading.root else None
    if not isinstance(plain, dict):
        return False
    listed = plain.get("athletes")
    named = [plain.get("athlete"), *(listed if isinstance(listed, list) else [])]
    return any(
        isinstance(one, str) and repository.real(os.path.join(folder, *one.split("/"))) == athlete
        for one in named
    )
