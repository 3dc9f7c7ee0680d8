"""Files in, findings out: the same review behind the command, the hook and the editor."""

from __future__ import annotations

import os
from functools import partial

from . import known_findings, registry, repository
from .desk import Desk
from .finding import SEVERITIES
from .gathering import gathered, kind_of, programmes_naming
from .lasting import Lasting
from .ledger import Lifter
from .reader import checked, read_programme
from .team import Team
from .waivers import Waived, waive

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from .finding import Finding
    from .ledger import Ledger
    from .programme import Athlete
    from .registry import Fault, Rule
    from .yaml_tree import Reading


class FileReview:
    """What a review says of one file.

    ``opened`` is False where the file could not be read at all; ``ledgers`` are those of a programme, one for
    each athlete on it, none where it could not be counted. ``waived`` and ``known`` are findings kept back by
    waivers and by the record of known findings.
    """

    __slots__ = (
        "faults",
        "findings",
        "kind",
        "known",
        "ledgers",
        "name",
        "opened",
        "reading",
        "team",
        "waived",
    )

    def __init__(self, name: str, kind: str, team: Team) -> None:
        self.name = name
        self.kind = kind
        self.team = team
        self.opened = True
        self.reading: Reading | None = None
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

    def take_fault(self, fault: Fault) -> None:
        """Notes that a rule failed, once a rule."""
        if fault.rule not in {known.rule for known in self.faults}:
            self.faults.append(fault)


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


def review(paths: list[str], today: date) -> Review:
    """The review of files, and of the files of ours in folders.

    An athlete file brings the programmes along that name it; broken settings come last, whether asked for or
    not. ``today`` stands in where a programme does not say when it starts.
    """
    return review_on(Desk(today), paths)


def review_on(desk: Desk, paths: list[str]) -> Review:
    """The same review on a desk that may have served others before, and finds texts on its shelf."""
    files = _found_now(desk, paths)
    _set_known_apart(desk, files)
    return Review(files)


def record_known(paths: list[str], today: date) -> list[str]:
    """Records all that is found now as known, for each repository; returns the files written."""
    desk = Desk(today)
    found: dict[str, list[tuple[Finding, str]]] = {}
    for one in _found_now(desk, paths):
        entries = found.setdefault(desk.root_of(one.name), [])
        entries.extend((finding, desk.from_root(one.name)) for finding in one.findings)
    return [os.path.relpath(known_findings.write_record(root, one)) for root, one in found.items()]


def _found_now(desk: Desk, paths: list[str]) -> list[FileReview]:
    """All files with what is found in them, waivers heeded, the record of known findings not yet."""
    files = [_reviewed(desk, path) for path in gathered(desk, paths)]
    seen = {repository.real(one.name) for one in files}
    broken = [path for path in desk.broken_settings() if repository.real(path) not in seen]
    files += [_reviewed(desk, path) for path in broken]
    _judge_athletes(desk, files)
    for one in files:
        one.findings = _in_order(one.findings)
        if one.reading is not None:
            names = [rule.name for rule in (*desk.rules, *one.team.rules)]
            found, one.waived = waive(one.reading, one.findings, names, desk.today)
            one.findings = _in_order(found)
    return files


def _reviewed(desk: Desk, path: str) -> FileReview:
    """One file with what is found in it by itself; a failure of ours is told and leaves the others alone."""
    try:
        return _review_file(desk, path)
    except Exception as fault:
        one = FileReview(path, kind_of(path), Team())
        one.take_fault(registry.Fault("review", f"{type(fault).__name__}: {fault}"))
        return one


def _review_file(desk: Desk, path: str) -> FileReview:
    kind = kind_of(path)
    if kind == "team":
        one = FileReview(path, kind, desk.team_at(path))
        one.findings = list(one.team.findings)
        return one
    one = FileReview(path, kind, desk.team_of(path))
    if kind == "athlete":
        file = desk.athlete_at(path)
        one.reading = file.reading
        one.findings = list(file.findings)
    elif kind == "exercises":
        own = desk.exercises_at(path)
        one.reading = own.reading
        one.findings = list(own.findings)
    else:
        one.reading = desk.shelf.read(path)
        one.findings = checked(one.reading, "programme")
        lasting = desk.lasting_of(path)
        one.ledgers, meant = _laid_out(desk, path, one.reading, lasting)
        one.findings += meant
        one.findings += _ruled(desk, one, lasting)
    one.opened = one.reading.opened
    return one


def _laid_out(
    desk: Desk, path: str, reading: Reading, lasting: Lasting
) -> tuple[list[Ledger], list[Finding]]:
    """The programme of a file laid out for each athlete on it, and what cannot be meant in it."""
    if reading.root is None:
        return [], []
    open_athlete = partial(desk.named_athlete, path)
    programme, meant = read_programme(reading.root, open_athlete, lasting.kept)
    if programme is None:
        return [], meant
    return lasting.lay_out(programme, reading.root.plain, desk.today, desk.team_of(path).around), meant


def _counted(desk: Desk, path: str) -> list[Ledger]:
    """The ledgers of a programme that nothing is said about; counted anew when its text has changed."""
    mark = desk.shelf.mark(repository.real(path))
    held = desk.counted.get(path)
    if held is None or held[0] != mark:
        held = desk.counted[path] = (mark, _laid_out(desk, path, desk.shelf.read(path), Lasting())[0])
    return held[1]


def _ruled(desk: Desk, one: FileReview, lasting: Lasting) -> list[Finding]:
    """What the rules find for each athlete of a programme; what holds for several is said once."""
    found = _Gathered()
    choices, rules = one.team.choices, _rules_for(desk, one.team)
    for ledger in one.ledgers:
        silence = lasting.silences[ledger]
        ruled, faults = registry.run(rules, ledger, choices.moved, choices.severities, silence)
        for fault in faults:
            one.take_fault(fault)
        for finding in ruled:
            found.take(finding, ledger.athlete.name if ledger.athlete else "")
    return found.said(of=len(one.ledgers))


class _Gathered:
    """Findings for several athletes: what is found for more than one of them is said once."""

    def __init__(self) -> None:
        self._found: dict[tuple[object, ...], tuple[Finding, list[str]]] = {}

    def take(self, finding: Finding, name: str) -> None:
        """Takes in a finding for an athlete."""
        key = (finding.rule, finding.place, finding.subject, finding.counted, finding.weeks)
        self._found.setdefault(key, (finding, []))[1].append(name)

    def said(self, of: int) -> list[Finding]:
        """Each finding once; one that does not hold for all athletes ``of`` a programme names them."""
        for finding, names in self._found.values():
            if len(names) < of:
                named = " and ".join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)
                finding.counted = f"For {named}: {finding.counted}"
        return [finding for finding, _ in self._found.values()]


def _rules_for(desk: Desk, team: Team) -> list[Rule]:
    return [rule for rule in (*desk.rules, *team.rules) if team.runs(rule)]


# Athletes over all their programmes


def _judge_athletes(desk: Desk, files: list[FileReview]) -> None:
    """Runs the rules that look at an athlete with all of their programmes, and files what they find.

    Programmes of the repository that were not asked for are counted too, but nothing is said about them.
    """
    by_file = {repository.real(one.name): one for one in files}
    plans = _plans(files)
    athletes = {file: one for one in plans if (file := _file_of(one))}
    others = [ledger for path in _others(desk, athletes, by_file) for ledger in _counted(desk, path)]
    for one in files:
        if one.kind == "athlete" and (athlete := desk.athlete_at(one.name).athlete) is not None:
            plans.setdefault(athlete, [])
    said: dict[FileReview, _Gathered] = {}
    for athlete, ledgers in plans.items():
        ledgers += [one for one in others if one.athlete is athlete]
        home = by_file.get(repository.real(athlete.place.text.name))
        if home is None:
            home = by_file[repository.real(ledgers[0].programme.place.text.name)]
        lifter = Lifter(athlete, ledgers, desk.today, home.team.around)
        choices = home.team.choices
        found, faults = registry.run(_rules_for(desk, home.team), lifter, choices.moved, choices.severities)
        for fault in faults:
            home.take_fault(fault)
        for finding in found:
            where = by_file.get(repository.real(finding.place.text.name))
            if where is not None:
                said.setdefault(where, _Gathered()).take(finding, athlete.name)
    for where, gathered_there in said.items():
        where.findings += gathered_there.said(of=len(where.ledgers))


def _plans(files: Iterable[FileReview]) -> dict[Athlete, list[Ledger]]:
    """The ledgers of each athlete named."""
    plans: dict[Athlete, list[Ledger]] = {}
    for one in files:
        for ledger in one.ledgers:
            if ledger.athlete is not None:
                plans.setdefault(ledger.athlete, []).append(ledger)
    return plans


def _file_of(athlete: Athlete) -> str:
    """The real path of an athlete's own file; empty for one written in a programme."""
    name = athlete.place.text.name
    return repository.real(name) if kind_of(name) == "athlete" else ""


def _others(desk: Desk, athletes: Iterable[str], seen: Iterable[str]) -> list[str]:
    return list(programmes_naming(desk, set(athletes), seen))


# Order and record


def _in_order(findings: list[Finding]) -> list[Finding]:
    """By place, the more serious first where two share one; no advice on quoting what is wrong anyway."""
    wrong = {finding.place for finding in findings if finding.severity == "error"}
    return sorted(
        (one for one in findings if one.rule != "quote-this" or one.place not in wrong),
        key=lambda one: (one.place.start, -SEVERITIES.index(one.severity), one.rule, one.subject),
    )


def _set_known_apart(desk: Desk, files: list[FileReview]) -> None:
    """Moves findings on record out of the way; the record's own findings come as one more file."""
    reviewed: dict[str, list[str]] = {}
    records: dict[str, known_findings.Record] = {}
    for one in files:
        name, root = desk.from_root(one.name), desk.root_of(one.name)
        reviewed.setdefault(root, []).append(name)
        if root not in records:
            records[root] = desk.record_of(root).anew()
        one.findings, one.known = records[root].split(one.findings, name)
    for root, names in reviewed.items():
        path = os.path.relpath(os.path.join(root, known_findings.NAME))
        record = records[root]
        findings = [*record.broken, *record.stale(names, root)]
        if findings:
            whole = FileReview(path, "record", Team())
            whole.findings = findings
            whole.opened = not record.broken
            files.append(whole)
