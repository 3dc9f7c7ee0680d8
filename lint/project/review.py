"""Files in, findings out: the same review behind the command, the hook and the editor."""

from __future__ import annotations

import os
from functools import partial

from ..counting.ledger import Lifter
from ..engine.run import Fault, run
from ..findings.finding import SEVERITIES
from ..model.check import checked
from ..model.read_programme import read_programme
from ..team import known_findings
from ..team.settings import Team
from ..team.waivers import waive
from ..text import repository
from ..wording.words import listed
from .discovery import discovered, kind_of, programmes_naming
from .incremental import IncrementalState
from .known import set_known_apart
from .results import FileReview, Review
from .workspace import Workspace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from ..counting.ledger import Ledger
    from ..engine.registry import Rule
    from ..findings.finding import Finding
    from ..model.athlete import Athlete
    from ..syntax.tree import Reading


def review(paths: list[str], today: date) -> Review:
    """The review of files, and of the files of ours in folders.

    An athlete file brings the programmes along that name it; broken settings come last, whether asked for or
    not. ``today`` stands in where a programme does not say when it starts.
    """
    return review_on(Workspace(today), paths)


def review_on(workspace: Workspace, paths: list[str]) -> Review:
    """The same review in a workspace that may have served others before; open texts come first."""
    files = _found_now(workspace, paths)
    set_known_apart(workspace, files)
    return Review(files)


def record_known(paths: list[str], today: date) -> list[str]:
    """Records all that is found now as known, for each repository; returns the files written."""
    workspace = Workspace(today)
    found: dict[str, list[tuple[Finding, str]]] = {}
    for one in _found_now(workspace, paths):
        entries = found.setdefault(workspace.root_of(one.name), [])
        entries.extend((finding, workspace.from_root(one.name)) for finding in one.findings)
    return [os.path.relpath(known_findings.write_record(root, one)) for root, one in found.items()]


def _found_now(workspace: Workspace, paths: list[str]) -> list[FileReview]:
    """All files with what is found in them, waivers heeded, the record of known findings not yet."""
    files = [_reviewed(workspace, path) for path in discovered(workspace, paths)]
    seen = {repository.real(one.name) for one in files}
    broken = [path for path in workspace.broken_settings() if repository.real(path) not in seen]
    files += [_reviewed(workspace, path) for path in broken]
    _judge_athletes(workspace, files)
    for one in files:
        one.findings = _in_order(one.findings)
        if one.reading is not None:
            names = [rule.name for rule in (*workspace.rules, *one.team.rules)]
            found, one.waived = waive(one.reading, one.findings, names, workspace.today)
            one.findings = _in_order(found)
    return files


def _reviewed(workspace: Workspace, path: str) -> FileReview:
    """One file with what is found in it by itself; a failure of ours is told and leaves the others alone."""
    try:
        return _review_file(workspace, path)
    except Exception as fault:
        one = FileReview(path, kind_of(path), Team())
        one.take_fault(Fault("review", f"{type(fault).__name__}: {fault}"))
        return one


def _review_file(workspace: Workspace, path: str) -> FileReview:
    kind = kind_of(path)
    if kind == "team":
        one = FileReview(path, kind, workspace.team_at(path))
        one.findings = list(one.team.findings)
        return one
    one = FileReview(path, kind, workspace.team_of(path))
    if kind == "athlete":
        file = workspace.athlete_at(path)
        one.reading = file.reading
        one.findings = list(file.findings)
    elif kind == "exercises":
        own = workspace.exercises_at(path)
        one.reading = own.reading
        one.findings = list(own.findings)
    else:
        one.reading = workspace.overlay.read(path)
        one.findings = checked(one.reading, "programme")
        state = workspace.state_of(path)
        one.ledgers, meant = _laid_out(workspace, path, one.reading, state)
        one.findings += meant
        one.findings += _ruled(workspace, one, state)
    one.opened = one.reading.opened
    return one


def _laid_out(
    workspace: Workspace, path: str, reading: Reading, state: IncrementalState
) -> tuple[list[Ledger], list[Finding]]:
    """The programme of a file laid out for each athlete on it, and what cannot be meant in it."""
    if reading.root is None:
        return [], []
    open_athlete = partial(workspace.named_athlete, path)
    programme, meant = read_programme(reading.root, open_athlete, state.kept)
    if programme is None:
        return [], meant
    return state.lay_out(
        programme, reading.root.plain, workspace.today, workspace.team_of(path).around
    ), meant


def _counted(workspace: Workspace, path: str) -> list[Ledger]:
    """The ledgers of a programme that nothing is said about; counted anew when its text has changed."""
    mark = workspace.overlay.mark(repository.real(path))
    held = workspace.counted.get(path)
    if held is None or held[0] != mark:
        held = workspace.counted[path] = (
            mark,
            _laid_out(workspace, path, workspace.overlay.read(path), IncrementalState())[0],
        )
    return held[1]


def _ruled(workspace: Workspace, one: FileReview, state: IncrementalState) -> list[Finding]:
    """What the rules find for each athlete of a programme; what holds for several is said once."""
    found = _MergedFindings()
    choices, rules = one.team.choices, _rules_for(workspace, one.team)
    for ledger in one.ledgers:
        cache = state.caches[ledger]
        ruled, faults = run(rules, ledger, choices.moved, choices.severities, cache)
        for fault in faults:
            one.take_fault(fault)
        for finding in ruled:
            found.take(finding, ledger.athlete.name if ledger.athlete else "")
    return found.said(of=len(one.ledgers))


class _MergedFindings:
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
                finding.counted = f"For {listed(names)}: {finding.counted}"
        return [finding for finding, _ in self._found.values()]


def _rules_for(workspace: Workspace, team: Team) -> list[Rule]:
    return [rule for rule in (*workspace.rules, *team.rules) if team.runs(rule)]


# Athletes over all their programmes


def _judge_athletes(workspace: Workspace, files: list[FileReview]) -> None:
    """Runs the rules that look at an athlete with all of their programmes, and files what they find.

    Programmes of the repository that were not asked for are counted too, but nothing is said about them.
    """
    by_file = {repository.real(one.name): one for one in files}
    plans = _plans(files)
    athletes = {file: one for one in plans if (file := _file_of(one))}
    others = [
        ledger for path in _others(workspace, athletes, by_file) for ledger in _counted(workspace, path)
    ]
    for one in files:
        if one.kind == "athlete" and (athlete := workspace.athlete_at(one.name).athlete) is not None:
            plans.setdefault(athlete, [])
    said: dict[FileReview, _MergedFindings] = {}
    for athlete, ledgers in plans.items():
        ledgers += [one for one in others if one.athlete is athlete]
        home = by_file.get(repository.real(athlete.place.text.name))
        if home is None:
            home = by_file[repository.real(ledgers[0].programme.place.text.name)]
        lifter = Lifter(athlete, ledgers, workspace.today, home.team.around)
        choices = home.team.choices
        found, faults = run(_rules_for(workspace, home.team), lifter, choices.moved, choices.severities)
        for fault in faults:
            home.take_fault(fault)
        for finding in found:
            where = by_file.get(repository.real(finding.place.text.name))
            if where is not None:
                said.setdefault(where, _MergedFindings()).take(finding, athlete.name)
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


def _others(workspace: Workspace, athletes: Iterable[str], seen: Iterable[str]) -> list[str]:
    return list(programmes_naming(workspace, set(athletes), seen))


# Order and record


def _in_order(findings: list[Finding]) -> list[Finding]:
    """By place, the more serious first where two share one; no advice on quoting what is wrong anyway."""
    wrong = {finding.place for finding in findings if finding.severity == "error"}
    return sorted(
        (one for one in findings if one.rule != "quote-this" or one.place not in wrong),
        key=lambda one: (one.place.start, -SEVERITIES.index(one.severity), one.rule, one.subject),
    )
