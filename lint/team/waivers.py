"""Waivers: a coach's written decision that a finding does not apply here, with a reason.

Two ways to write one: a comment at the place, ``# spotline: waive RULE until 2026-03-01 because REASON``, and
an entry of the file's own ``waivers:`` list. A comment holds for its line, or for the line below it where it
stands alone; where a session, a line or another item begins there, for all of that item.

A waiver may name its subject, ``waive RULE for pulling because REASON``. One whose reason names the subjects
of some findings there holds for these alone: what is said of pulling waives nothing on thighs.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from datetime import date

from ..findings.finding import Finding
from ..model.values import calendar_day
from ..syntax.tree import Mapping, Scalar, Sequence
from ..wording.words import did_you_mean, first_of, near_names

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ..findings.finding import DraftFinding, Severity
    from ..syntax.tree import Node, Reading
    from ..text.places import Place

    Located = Finding | DraftFinding

MARK = "spotline:"
MOST_NEAR = 50
"""Waivers of one file for whose unknown rules the nearest known one is looked up."""

PLACEHOLDER = "REASON"
"""Stands where a reason is still to be written; it is none itself."""

_FORM = (
    r"waive\s+(?P<rule>[^\s,]+)"
    r"(?:\s+for\s+(?P<subject>(?:(?!\s(?:until|because)\b).)+))?"
    r"(?:\s+until\s+(?P<until>\S+))?(?:\s+because(?:\s+(?P<reason>\S.*?))?)?\s*"
)
_DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}"
_DATE_OF_SCHEMA = "20[0-9]{2}-[0-9]{2}-[0-9]{2}"


class Waiver:
    """A decision: which ``rule``, why (``reason``), by ``who``, until which day (none: for good).

    ``subject`` is what of the rule's findings it is about, empty where it does not say.
    ``covers`` says whether a finding lies where it holds; ``used`` turns True when one does.
    """

    __slots__ = ("covers", "place", "reason", "rule", "subject", "until", "used", "who")

    def __init__(
        self,
        place: Place,
        rule: str,
        reason: str,
        who: str,
        until: date | None,
        covers: Callable[[Located], bool],
        subject: str = "",
    ) -> None:
        self.place = place
        self.subject = subject
        self.rule = rule
        self.reason = reason
        self.who = who
        self.until = until
        self.covers = covers
        self.used = False

    def holds(self, today: date) -> bool:
        """Whether it has not ended."""
        return self.until is None or self.until >= today


class Waived:
    """A finding that is waived, and the waiver that does it."""

    __slots__ = ("finding", "waiver")

    def __init__(self, finding: Finding, waiver: Waiver) -> None:
        self.finding = finding
        self.waiver = waiver


def holding(reading: Reading, rules: Iterable[str], today: date) -> list[Waiver]:
    """The waivers of these rules in a file that have not ended."""
    names = set(rules)
    return [one for one in _all_waivers(reading)[0] if one.rule in names and one.holds(today)]


def waive(
    reading: Reading, findings: list[Finding], rules: Iterable[str], today: date
) -> tuple[list[Finding], list[Waived]]:
    """The findings that are left, with what is wrong with the waivers themselves; and those that are waived.

    Only findings of ``rules`` can be waived: a file that cannot be read cannot be wished readable.
    """
    waivers, left = _all_waivers(reading)
    if not waivers:
        return findings + left, []
    known = set(rules)
    holding = [one for one in waivers if one.rule in known and one.holds(today)]
    waived: list[Waived] = []
    by_rule: dict[str, list[Finding]] = {}
    for finding in findings:
        by_rule.setdefault(finding.rule, []).append(finding)
    fits: dict[int, list[Waiver]] = {}
    for one in holding:
        for finding in _held_by(one, by_rule.get(one.rule, [])):
            fits.setdefault(id(finding), []).append(one)
    for finding in findings:
        fitting = fits.get(id(finding), [])
        for waiver in fitting:
            waiver.used = True
        if fitting:
            waived.append(Waived(finding, fitting[0]))
        else:
            left.append(finding)
    for number, waiver in enumerate(waivers):
        left.extend(_against(waiver, known, today, by_rule.get(waiver.rule, []), number < MOST_NEAR))
    return left, waived


def _held_by(waiver: Waiver, findings: list[Finding]) -> list[Finding]:
    """What a waiver is about: findings of its subject, else those that its reason names, else all."""
    covered = [one for one in findings if one.rule == waiver.rule and waiver.covers(one)]
    about = [one for one in covered if _names(waiver.subject or waiver.reason, one.subject)]
    return about if about or waiver.subject else covered


def _names(words: str, subject: str) -> bool:
    """Whether words name the subject of a finding: ``pull-ups at home`` is about pressing and pulling."""
    said = re.findall(r"\w+", words.casefold())
    stems = [word.removesuffix("s").removesuffix("ing") for word in re.findall(r"\w+", subject.casefold())]
    return any(one.startswith(stem) for stem in stems if stem not in _SIDES and len(stem) > 2 for one in said)


_SIDES = ("and", "the", "back", "front", "outer", "inner", "bend", "straighten", "week", "day")
"""Words of subjects that tell nothing of what they are about."""


def _against(
    waiver: Waiver, rules: set[str], today: date, elsewhere: list[Finding], look_up: bool
) -> Iterator[Finding]:
    if waiver.rule not in rules:
        near = near_names(waiver.rule, rules, 1) if look_up else []
        hint = did_you_mean(near) or "Write the rule's name as the finding gives it."
        yield _said("waiver-rule-unknown", "error", waiver, f"There is no rule `{waiver.rule}`.", hint)
    elif waiver.until is not None and waiver.until < today:
        yield _said(
            "waiver-expired",
            "warning",
            waiver,
            f"This waiver of {waiver.rule} ended on {waiver.until}.",
            "Decide again: give it a new date, or take it out and mend what it waived.",
        )
    elif not waiver.used:
        places = [f"line {one.place.line}" + (f" ({one.where})" if one.where else "") for one in elsewhere]
        why, change = "nothing of it is found in this file any more", "Take it out."
        if places:
            why = f"it is found at {first_of(places)}, not here"
            change = "Move the waiver there if it is meant for that, else take it out."
        yield _said(
            "waiver-unused", "note", waiver, f"This waiver of {waiver.rule} waives nothing: {why}.", change
        )


def _said(rule: str, severity: Severity, waiver: Waiver, counted: str, change: str) -> Finding:
    return Finding(rule, severity, waiver.place, counted, change=change, where="waiver")


def _all_waivers(reading: Reading) -> tuple[list[Waiver], list[Finding]]:
    wrong: list[Finding] = []
    waivers = list(_listed(reading, wrong))
    if MARK in reading.text.content and reading.root is not None:
        waivers += _comments(reading, reading.root, wrong)
    return waivers, wrong


# The list in the file


def _listed(reading: Reading, wrong: list[Finding]) -> Iterator[Waiver]:
    """The entries of ``waivers:``; what is wrong with their form, the schema says."""
    root = reading.root
    entry = root.entries.get("waivers") if isinstance(root, Mapping) else None
    if entry is None or not isinstance(entry.value, Sequence):
        return
    for item in entry.value.items:
        words = _words(item)
        if not isinstance(item, Mapping) or "rule" not in words or "reason" not in words:
            continue
        until = _day(words.get("until", ""))
        if until is None and "until" in item.entries:
            if re.fullmatch(_DATE_OF_SCHEMA, words.get("until", "")):  # else the schema says it
                wrong.append(_no_such_day(item.entries["until"].value.place, words["until"]))
            continue
        place = item.entries["rule"].value.place
        if words["reason"] == PLACEHOLDER:
            wrong.append(_unreadable(item.entries["reason"].value.place, no_reason=True))
            continue
        where = _lies_in(words.get("place", ""))
        subject = words.get("subject", "")
        yield Waiver(place, words["rule"], words["reason"], words.get("who", ""), until, where, subject)


def _no_such_day(at: Place, day: str) -> Finding:
    return Finding(
        "date-impossible",
        "error",
        at,
        f"{day} is not in the calendar, so this waiver waives nothing.",
        change="Write the date as year-month-day, a day that the month has.",
        where="waiver",
    )


def _words(item: Node) -> dict[str, str]:
    if not isinstance(item, Mapping):
        return {}
    return {key: entry.value.text for key, entry in item.entries.items() if isinstance(entry.value, Scalar)}


def _lies_in(where: str) -> Callable[[Located], bool]:
    """Whether a finding lies in a place given in words, ``Lower A, back squat``; empty: anywhere."""
    asked = [part.strip().casefold() for part in where.split(",") if part.strip()]
    return lambda finding: (
        [part.strip().casefold() for part in finding.where.split(",")][: len(asked)] == asked
    )


def _day(words: str) -> date | None:
    if not re.fullmatch(_DATE, words):
        return None
    return calendar_day(words)


# Comments


def _comments(reading: Reading, root: Node, wrong: list[Finding]) -> Iterator[Waiver]:
    """Waivers in real comments: a mark inside a value is text like any other."""
    text = reading.text
    scalars, groups = spans(root)
    starts = [start for start, _ in scalars]
    for found in re.finditer(rf"(?<!\S)#[ \t]*{MARK}[ \t]*([^\r\n]*)", text.content):
        before = bisect_right(starts, found.start()) - 1
        if before >= 0 and found.start() < scalars[before][1]:
            continue
        place = text.place(found.start(), found.start() + len(found.group().rstrip()))
        form = re.fullmatch(_FORM, found.group(1).strip())
        until = form and form["until"]
        no_reason = form is not None and form["reason"] in (None, PLACEHOLDER)
        if form is None or no_reason or (until and _day(until) is None):
            wrong.append(_unreadable(place, no_reason))
            continue
        covers = _within(*_extent(text.content, found.start(), groups))
        ends = _day(until) if until else None
        yield Waiver(place, form["rule"], form["reason"], "", ends, covers, form["subject"] or "")


def comment(rule: str, reason: str = PLACEHOLDER) -> str:
    """A waiver of a rule as a comment."""
    return f"# {MARK} waive {rule} because {reason}"


def _unreadable(place: Place, no_reason: bool) -> Finding:
    counted = "This waiver gives no reason." if no_reason else "This waiver cannot be read."
    form = f"# {MARK} waive RULE until 2026-03-01 because {PLACEHOLDER}"
    change = f"Write it like: {form} (the date may be left out)."
    rule = "waiver-without-reason" if no_reason else "waiver-unreadable"
    return Finding(rule, "error", place, counted, change=change, where="waiver")


def spans(root: Node) -> tuple[list[tuple[int, int]], list[tuple[int, int]]]:
    """Start and end of every single value and key, and of every group of keys, each in order."""
    scalars: set[tuple[int, int]] = set()
    groups: set[tuple[int, int]] = set()
    waiting = [root]
    while waiting:
        node = waiting.pop()
        span = (node.start, node.end)
        if isinstance(node, Scalar):
            scalars.add(span)
        elif isinstance(node, Sequence):
            waiting.extend(node.items)
        elif isinstance(node, Mapping) and span not in groups:
            groups.add(span)
            for entry in node.entries.values():
                waiting += (entry.key, entry.value)
    return sorted(scalars), sorted(groups)


def _extent(content: str, comment: int, groups: list[tuple[int, int]]) -> tuple[int, int]:
    """From where to where a comment holds: its line, and all of the largest item that begins on it."""
    start = max(content.rfind("\n", 0, comment), content.rfind("\r", 0, comment)) + 1
    if not content[start:comment].strip():
        below = re.compile(r"[ \t]*(?:#[^\r\n]*)?(?:\r\n|\r|\n)").match
        while line := below(content, start):
            start = line.end()
    end = _line_end(content, start)
    return start, max([end, *(stop for begin, stop in groups if start <= begin < end)])


def _line_end(content: str, start: int) -> int:
    ends = [at for at in (content.find("\n", start), content.find("\r", start)) if at >= 0]
    return min(ends, default=len(content))


def _within(start: int, end: int) -> Callable[[Located], bool]:
    """Whether a finding lies in a stretch, or what it lies in is used there by an alias."""
    return lambda finding: any(
        start <= place.start < end for place in (finding.place, *finding.place.through, finding.line)
    )
