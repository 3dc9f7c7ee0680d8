"""What all outlets share: safe text, week numbers, a finding as one sentence, the closing line."""

from __future__ import annotations

from ..body import catalogue
from ..findings.finding import SEVERITIES
from ..wording.words import counted_noun, listed, safe, week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from ..project.results import Verdict

MOST_SOURCES = 4
"""Sources that are named with a finding before its rule's page is pointed at."""

FILES = {
    "programme": "programme",
    "athlete": "athlete file",
    "exercises": "exercises file",
    "team": "settings file",
    "record": "record of known findings",
}
"""Kinds of files, as the closing line calls them."""

OTHER = "other file"


def weeks_of(finding: Finding) -> str:
    """``Weeks 1-6, worst in week 4``: the weeks that a finding holds for; empty where it is bound to none.

    Where other weeks hold other numbers, but none that is worse: ``Weeks 1-6, in weeks 1-4``.
    """
    if not finding.weeks:
        return ""
    weeks = week_list(finding.weeks)
    told = f", {'worst ' if finding.is_worst else ''}in {week_list(finding.told)}" if finding.told else ""
    return f"{weeks[0].upper()}{weeks[1:]}{told}"


def statement(finding: Finding) -> str:
    """What was counted, with the athletes it holds for in front: ``For Bo and Cas: 12 sets.``"""
    return f"For {listed(finding.athletes)}: {finding.counted}" if finding.athletes else finding.counted


def counted(finding: Finding) -> str:
    """The statement, with the weeks it holds for in front."""
    weeks = weeks_of(finding)
    return f"{weeks}: {statement(finding)}" if weeks else statement(finding)


def sentence(finding: Finding) -> str:
    """The whole finding in one line: what was counted, what was wanted, what to change."""
    return _joined(counted(finding), finding)


def sentence_by_the_line(finding: Finding) -> str:
    """The same for where little room is beside the line it is about: the weeks follow what was counted."""
    weeks = weeks_of(finding)
    return _joined(f"{statement(finding)} {weeks}." if weeks else statement(finding), finding)


def _joined(start: str, finding: Finding) -> str:
    wanted = f"Wanted: {finding.wanted.rstrip('.')}." if finding.wanted else ""
    return safe(" ".join(part for part in (start, wanted, finding.change) if part))


def ground(finding: Finding) -> str:
    """How sure the ground of a finding is, and the published work it rests on."""
    sources = [catalogue.source(name) for name in finding.sources]
    published = list(dict.fromkeys(one.short for one in sources if one.kind != "common practice"))
    if finding.confidence == "fact":
        return "Ground: fact."
    if len(published) > MOST_SOURCES:
        more = f"and {len(published) - MOST_SOURCES} more: spotline rules {finding.rule}"
        published = [*published[:MOST_SOURCES], more]
    return f"Ground: {finding.confidence} ({'; '.join(published) or 'no source'})."


def closing(verdict: Verdict) -> str:
    """The line that sums a review up."""
    outcomes = verdict.outcomes
    called = [FILES.get(one.kind, OTHER) for one in outcomes]
    files = ", ".join(
        counted_noun(number, word) for word in (*FILES.values(), OTHER) if (number := called.count(word))
    )
    found = ", ".join(
        counted_noun(number, severity)
        for severity in reversed(SEVERITIES)
        if (number := verdict.count(severity))
    )
    if not outcomes and verdict.may_be_empty:
        return "Nothing to review: nothing of ours has changed, nor anything that it leans on."
    if not outcomes:
        return "Nothing to review: no programme or athlete file found."
    judged = "Blocked." if verdict.blocked else "Nothing blocks."
    waived, known = verdict.suppressed()
    kept = [f"{waived} waived"] if waived else []
    kept += [f"{known} known from before"] if known else []
    found = ", ".join(part for part in (found, *kept) if part)
    faults = sum(one.faults for one in outcomes)
    broken = f" {counted_noun(faults, 'rule')} failed; the rest was reviewed." if faults else ""
    return f"Reviewed {files}: {found or 'nothing found'}. {judged}{broken}"
