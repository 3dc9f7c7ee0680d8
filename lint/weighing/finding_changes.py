"""Which findings an edit brings and clears: compared by their data, never by their words."""

from __future__ import annotations

from ..findings.finding import SEVERITIES
from ..wording.words import plain
from .difference import Difference

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from ..findings.finding import Finding

WEIGHTS = {"error": 64.0, "warning": 34.0, "note": 14.0}
"""How telling a finding is that an edit brings; half as much where it clears it."""


def finding_changes(
    old: Iterable[Finding], new: Iterable[Finding], names: Mapping[str, str], athlete: str
) -> list[Difference]:
    """Findings brought, cleared, and with another number, for one athlete ("" for a programme of nobody's).

    ``names`` leads from the old names of sessions to the new ones, so that a session that was renamed brings
    nothing.
    """
    before, after = _of(old, athlete, names), _of(new, athlete, {})
    same = set(before) & set(after)
    gone = {key: one for key, one in before.items() if key not in same}
    brought = {key: one for key, one in after.items() if key not in same}
    found = []
    for key, one in brought.items():
        earlier = next((other for other in gone if other[:3] == key[:3]), None)
        if earlier is None:
            found.append(_change("finding brought", "brings", one, WEIGHTS[one.severity]))
        else:
            found += _moved(gone.pop(earlier), one)
    found += [_change("finding cleared", "clears", one, WEIGHTS[one.severity] / 2) for one in gone.values()]
    return sorted(found, key=lambda one: -one.weight)


Key = tuple[str, str, str, "tuple[int, ...]", "tuple[float, float, str] | None", int]


def _of(findings: Iterable[Finding], athlete: str, names: Mapping[str, str]) -> dict[Key, Finding]:
    """Findings by their data; the number behind tells those apart that are alike in all of it."""
    found: dict[Key, Finding] = {}
    for listed in findings:
        for one in (listed, *listed.follows):
            if one.athletes and athlete not in one.athletes:
                continue
            amount = one.amount
            data = None if amount is None else (amount.counted, amount.wanted, amount.unit)
            number = 0
            subject = names.get(one.subject, one.subject)
            group = names.get(one.group, one.group)
            while (key := (one.rule, subject, group, one.weeks, data, number)) in found:
                number += 1
            found[key] = one
    return found


def _change(kind: str, does: str, one: Finding, weight: float) -> Difference:
    said = _amount(one)
    about = one.subject or one.where
    if said and one.amount and one.amount.wanted:
        told = f"{f', {about}' if about else ''}: {said}"
    else:
        at = one.where if one.where and one.where not in one.counted else ""
        told = f"{f', {at}' if at else ''}: {one.counted.rstrip('.')}"
    words = f"{does} {one.severity} {one.rule}{told}"
    before, after = (said, "") if kind == "finding cleared" else ("", said)
    return Difference(kind, words, weight, weeks=one.weeks, subject=one.rule, before=before, after=after)


def _moved(was: Finding, now: Finding) -> Iterator[Difference]:
    """That a finding's number, weeks or severity differ; nothing where they are the same."""
    before, after = _amount(was), _amount(now)
    if (before, was.weeks, was.severity) == (after, now.weeks, now.severity):
        return
    worse = SEVERITIES.index(now.severity) - SEVERITIES.index(was.severity)
    if not worse and was.amount and now.amount:
        worse = (now.amount.apart > was.amount.apart) - (now.amount.apart < was.amount.apart)
    how = "worsens" if worse > 0 else "eases" if worse < 0 else "moves"
    number = f": {before} -> {after}" if before != after else ""
    words = f"{how} {now.severity} {now.rule}{f', {now.subject}' if now.subject else ''}{number}"
    weight = WEIGHTS[now.severity] * (0.8 if worse > 0 else 0.3)
    yield Difference(
        "finding moved", words, weight, weeks=now.weeks, subject=now.rule, before=before, after=after
    )


def _amount(one: Finding) -> str:
    amount = one.amount
    if amount is None:
        return ""
    unit = amount.unit.removesuffix("s") if amount.counted == 1 else amount.unit
    return f"{plain(amount.counted)} {unit}, wanted {plain(amount.wanted)}"
