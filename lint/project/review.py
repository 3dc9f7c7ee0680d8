"""Files in, findings out: the same review behind the command, the hook and the editor."""

from __future__ import annotations

import os
from functools import partial

from ..counting.ledger import Lifter
from ..engine.hits import findings_of
from ..engine.run import Fault, run
from ..findings.finding import SEVERITIES
from ..model.check import checked, further
from ..model.read_programme import read_programme
from ..syntax.faults import MOST_ALIKE, and_more
from ..team.settings import Team
from ..team.waivers import holding, waive
from ..text.letters import ignores_case
from .discovery import discovered, programmes_naming
from .incremental import IncrementalState
from .known import KnownApart
from .results import FileReview, Review
from .workspace import MISSING, Workspace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from ..counting.ledger import Ledger
    from ..counting.set_group import SetGroup, Slip
    from ..engine.hits import Hit
    from ..engine.registry import Rule
    from ..findings.finding import Finding
    from ..model.athlete import Athlete
    from ..syntax.tree import Reading
    from ..team.settings import Choices
    from ..team.waivers import Waiver
    from ..text.places import Term
    from ..text.repository import SourceFile


def review(paths: list[str], today: date) -> Review:
    """The review of files, and of the files of ours in folders.

    An athlete file brings along the programmes that name it; broken settings come last, whether asked for or
    not. ``today`` stands in where a programme does not say when it starts.
    """
    return review_on(Workspace(today, asks_git=True), paths)


def review_on(workspace: Workspace, paths: list[str]) -> Review:
    """The same review in a workspace that may have served others before; open texts come first."""
    return review_files(workspace, discovered(workspace, paths))


def review_files(workspace: Workspace, found: list[SourceFile]) -> Review:
    """The review of these files."""
    known = KnownApart(workspace)
    files = [*reviewed_group(workspace, found, known), *remaining(workspace, found, known)]
    return Review(files)


def reviewed_group(workspace: Workspace, found: list[SourceFile], known: KnownApart) -> list[FileReview]:
    """The whole reviews of files that lean on no others but those of athletes whom they name."""
    files = _judged(workspace, [_review_file(workspace, file) for file in found])
    for one in files:
        known.split(one)
        _draw_together(one)
        known.note(one.file, known.left(one.file), judged=one.is_judged)
    if any(len(one.ledgers) > 1 for one in files):
        from .squads import say_once

        say_once(files)
    return files


def remaining(workspace: Workspace, found: list[SourceFile], known: KnownApart) -> list[FileReview]:
    """What is to be said when files are reviewed: of settings that are broken, and of the records."""
    files = reviewed_group(workspace, _broken(workspace, found), known)
    for one in (remarks := known.remarks()):
        _draw_together(one)
    return files + remarks


def _draw_together(one: FileReview) -> None:
    """Leaves of findings with one cause the one that leads, and a few of very many of a rule."""
    if any(finding.causes for finding in one.findings):
        from ..findings.causes import by_cause

        one.findings = by_cause(one.findings)
    if len(one.findings) > MOST_ALIKE:
        one.findings = _capped(one.findings)


def counted(workspace: Workspace, paths: list[str]) -> list[FileReview]:
    """The programmes among files and in folders, counted; of findings only what reading them brings."""
    found = []
    for file in discovered(workspace, paths):
        if file.kind not in ("athlete", "exercises", "team"):
            reading = workspace.overlay.read(file)
            one = _with_reading(
                FileReview(file, workspace.team_of(file)), reading, checked(reading, "programme")
            )
            one.ledgers, meant = _ledgers(workspace, file, reading, IncrementalState())
            one.findings += further(one.findings, meant)
            found.append(one)
    return found


def reviewed(workspace: Workspace, found: list[SourceFile]) -> list[FileReview]:
    """The reviews of these files with waivers applied, but not the record of known findings."""
    files = [_review_file(workspace, file) for file in found]
    return _judged(workspace, files + [_review_file(workspace, file) for file in _broken(workspace, found)])


def _broken(workspace: Workspace, found: list[SourceFile]) -> list[SourceFile]:
    """The settings that could not be used as they are, but for those reviewed anyway."""
    seen = {file.real for file in found}
    return [file for file in workspace.broken_settings() if file.real not in seen]


def _judged(workspace: Workspace, files: list[FileReview]) -> list[FileReview]:
    """The reviews with what is found of athletes over all their programmes, in order, waivers applied."""
    _add_athlete_findings(workspace, files)
    for one in files:
        one.findings = _in_order(one.findings)
        if one.reading is not None:
            names = (rule.name for rule in (*workspace.rules, *one.team.rules))
            kept, one.waived = waive(one.reading, one.findings, names, workspace.today)
            one.findings = _in_order(kept)
    return files


def _review_file(workspace: Workspace, file: SourceFile) -> FileReview:
    """The review of one file by itself; a failure of ours becomes a fault and leaves the others alone."""
    try:
        one = REVIEWS.get(file.kind, _review_programme)(workspace, file)
        if file.real in workspace.twins and one.reading is not None:
            from .letters import one_of_two

            name = os.path.basename(file.name)
            one.findings.append(one_of_two(one.reading, name, workspace.twins[file.real]))
        return one
    except Exception as fault:
        one = FileReview(file, Team())
        one.add_fault(Fault("review", f"{type(fault).__name__}: {fault}"))
        return one


def _review_settings(workspace: Workspace, file: SourceFile) -> FileReview:
    one = FileReview(file, workspace.team_at(file))
    one.findings = list(one.team.findings)
    return one


def _review_athlete(workspace: Workspace, file: SourceFile) -> FileReview:
    read = workspace.athlete_at(file)
    return _with_reading(FileReview(file, workspace.team_of(file)), read.reading, read.findings)


def _review_exercises(workspace: Workspace, file: SourceFile) -> FileReview:
    own = workspace.exercises_at(file)
    return _with_reading(FileReview(file, workspace.team_of(file)), own.reading, own.findings)


def _review_programme(workspace: Workspace, file: SourceFile) -> FileReview:
    """The review of a programme, which any other file is taken for, too."""
    team, reading = workspace.team_of(file), workspace.overlay.read(file)
    one = _with_reading(FileReview(file, team), reading, checked(reading, "programme"))
    if one.findings:
        from ..schemas.lookup import has_many_faults

        if has_many_faults(one.findings):
            return one  # whatever were counted of it would be wrong
    state = workspace.state_of(file)
    one.ledgers, meant = _ledgers(workspace, file, reading, state)
    one.findings += further(one.findings, meant)
    if reading.root is not None and ignores_case():
        from .letters import written_in_other_case

        one.findings += written_in_other_case(workspace, file, reading.root)
    one.findings += _run_rules(workspace, one, state)
    return one


REVIEWS = {"team": _review_settings, "athlete": _review_athlete, "exercises": _review_exercises}
"""How files of each kind are reviewed; others like a programme."""


def _with_reading(one: FileReview, reading: Reading, findings: Iterable[Finding]) -> FileReview:
    one.reading = reading
    one.opened = reading.opened
    one.findings = list(findings)
    return one


def _ledgers(
    workspace: Workspace, file: SourceFile, reading: Reading, state: IncrementalState
) -> tuple[list[Ledger], list[Finding]]:
    """The ledger of a programme for each athlete on it, and what cannot be meant in the programme."""
    if reading.root is None:
        return [], []
    open_athlete = partial(_named_athlete, workspace, file)
    programme, meant = read_programme(reading.root, open_athlete, state.parts)
    if programme is None:
        return [], meant
    team = workspace.team_of(file)
    judges = [rule for rule in workspace.rules_for(team) if rule.takes_out]
    waivers = holding(reading, [rule.name for rule in judges], workspace.today)
    slip = _slip(judges, team.choices, waivers)
    decided = [(one.rule, one.reason, one.place.line) for one in waivers]
    return state.ledgers(
        programme, reading.root.plain, workspace.today, team.resources, slip, repr(decided)
    ), meant


def _named_athlete(workspace: Workspace, file: SourceFile, term: Term) -> Athlete | Finding:
    """The athlete whose file a programme names; where that is missing, it is looked for."""
    found = workspace.named_athlete(file, term)
    if getattr(found, "rule", "") != MISSING:
        return found
    from .moved import named_athlete

    return named_athlete(workspace, file, term)


def _slip(judges: list[Rule], choices: Choices, waivers: list[Waiver]) -> Slip:
    """A test whether a group of sets holds a value that cannot be meant, and one that is not waived.

    What is waived is meant.
    """
    tests = [
        (rule.check, choices.limits(rule), [one.covers for one in waivers if one.rule == rule.name])
        for rule in judges
    ]

    def slips(group: SetGroup) -> tuple[bool, bool]:
        found = False
        for check, limits, waived in tests:
            for draft in check(group, limits):
                found = True
                if not any(covers(draft) for covers in waived):
                    return True, True
        return found, False

    return slips


def _unreviewed_ledgers(workspace: Workspace, file: SourceFile) -> list[Ledger]:
    """The ledgers of a programme that is only counted; made anew when its text has changed."""
    version = workspace.overlay.version(file)
    cached = workspace.unreviewed.get(file)
    if cached is None or cached[0] != version:
        ledgers, _ = _ledgers(workspace, file, workspace.overlay.read(file), IncrementalState())
        cached = workspace.unreviewed[file] = (version, ledgers)
    return cached[1]


def _run_rules(workspace: Workspace, one: FileReview, state: IncrementalState) -> list[Finding]:
    """What the rules find for each athlete of a programme; what holds for several is said once."""
    hits: list[Hit] = []
    choices, rules = one.team.choices, workspace.rules_for(one.team)
    for ledger in one.ledgers:
        cache = state.caches[ledger]
        found, faults = run(rules, ledger, choices.moved, choices.severities, cache, choices.preset)
        hits += found
        for fault in faults:
            one.add_fault(fault)
    return findings_of(hits, len(one.ledgers))


# Athletes over all their programmes


def _add_athlete_findings(workspace: Workspace, files: list[FileReview]) -> None:
    """Runs the rules on each athlete with all of their programmes; adds what they find to its files.

    Programmes of the repository that were not asked for are counted too, but nothing is said about them.
    """
    by_file = {one.file.real: one for one in files}
    plans = _plans(files)
    own_files = {file.real for athlete in plans if (file := _file_of(workspace, athlete)).kind == "athlete"}
    others = [
        ledger
        for file in programmes_naming(workspace, own_files, by_file)
        for ledger in _unreviewed_ledgers(workspace, file)
    ]
    for one in files:
        if one.kind == "athlete" and (athlete := workspace.athlete_at(one.file).athlete) is not None:
            plans.setdefault(athlete, [])
    hits: dict[FileReview, list[Hit]] = {}
    for athlete, ledgers in plans.items():
        ledgers += [one for one in others if one.athlete is athlete]
        home = by_file.get(_file_of(workspace, athlete).real)
        if home is None:
            home = by_file[workspace.files.file(ledgers[0].programme.place.text.name).real]
        lifter = Lifter(athlete, ledgers, workspace.today, home.team.resources)
        choices = home.team.choices
        rules = workspace.rules_for(home.team)
        found, faults = run(rules, lifter, choices.moved, choices.severities, preset=choices.preset)
        for fault in faults:
            home.add_fault(fault)
        for hit in found:
            where = by_file.get(workspace.files.file(hit.draft.place.text.name).real)
            if where is not None:
                hits.setdefault(where, []).append(hit)
    for where, several in hits.items():
        where.findings += findings_of(several, len(where.ledgers))


def _plans(files: Iterable[FileReview]) -> dict[Athlete, list[Ledger]]:
    """The ledgers of each athlete named."""
    plans: dict[Athlete, list[Ledger]] = {}
    for one in files:
        for ledger in one.ledgers:
            if ledger.athlete is not None:
                plans.setdefault(ledger.athlete, []).append(ledger)
    return plans


def _file_of(workspace: Workspace, athlete: Athlete) -> SourceFile:
    """The file that an athlete is written in: their own, or a programme."""
    return workspace.files.file(athlete.place.text.name)


# Order


def _in_order(findings: list[Finding]) -> list[Finding]:
    """By place, the more serious first where two share one; no advice on quoting what is wrong anyway."""
    wrong = {finding.place.key for finding in findings if finding.severity == "error"}
    return sorted(
        (one for one in findings if one.rule != "quote-this" or one.place.key not in wrong),
        key=lambda one: (one.place.start, -SEVERITIES.index(one.severity), one.rule, one.subject),
    )


def _capped(findings: list[Finding]) -> list[Finding]:
    """The findings in their order; of many of one rule the first, and one that tells how many more there are.

    That one is as serious as the worst that it stands for, so that what blocks still does.
    """
    several: dict[str, list[Finding]] = {}
    for one in findings:
        several.setdefault(one.rule, []).append(one)
    shown: list[Finding] = []
    for alike in several.values():
        shown += alike[:MOST_ALIKE]
        if more := alike[MOST_ALIKE:]:
            worst = max(more, key=lambda one: SEVERITIES.index(one.severity))
            shown.append(and_more(worst, len(more)))
    return _in_order(shown)
