"""What can be done about findings: the edits that they carry, a waiver, all of one kind at once."""

from __future__ import annotations

import re

from ...findings.finding import Edit
from ...team import waivers
from ..documents.answers import Fix
from ..documents.view import widened

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...findings.finding import Finding
    from ..documents.view import View

    Span = tuple[int, int]

_LINE_END = re.compile(r"\r\n|\r|\n")


def fixes(view: View, start: int, end: int, named: list[Span] | None = None) -> list[Fix]:
    """What can be done about the findings that a stretch of the text touches, the likeliest first.

    Where it touches none, those on its lines are meant: some clients miscount the columns of a caret. Of
    several, only those that touch a stretch ``named`` by the client are meant: some ask about one finding,
    and of the whole text.
    """
    touched = [one for one in view.review.findings if _touches(view, one, start, end)]
    if not touched:
        lines = _lines(view.text.content, start, end)
        touched = [one for one in view.review.findings if _touches(view, one, *lines)]
    meant = [one for one in touched if any(_touches(view, one, *span) for span in named or ())]
    touched = meant or touched
    offered = [fix for finding in touched for fix in _edits(finding)]
    offered += _everywhere(view, touched)
    offered += _waivers(view, touched)
    return list({(fix.title, _key(fix)): fix for fix in reversed(offered)}.values())[::-1]


def _touches(view: View, finding: Finding, start: int, end: int) -> bool:
    first, last = widened(view.text.content, finding.place.start, finding.place.end)
    return first <= end and start <= last


def _lines(content: str, start: int, end: int) -> Span:
    """The whole lines that a stretch lies on, without the last one's end."""
    line_end = _LINE_END.search(content, end)
    first = max(content.rfind("\n", 0, start), content.rfind("\r", 0, start)) + 1
    return first, line_end.start() if line_end else len(content)


def _key(fix: Fix) -> tuple[tuple[int, int, str], ...]:
    return tuple((edit.place.start, edit.place.end, edit.words) for edit in fix.edits)


def _edits(finding: Finding) -> Iterator[Fix]:
    """Each edit that a finding carries, as one of several ways to mend it."""
    for edit in finding.edits:
        title = f"{edit.label[:1].upper()}{edit.label[1:]}"
        yield Fix(title, [finding], [edit], preferred=len(finding.edits) == 1)


# All of one rule


def _everywhere(view: View, touched: list[Finding]) -> Iterator[Fix]:
    """For each rule touched, the edits of all its findings that leave no choice, where there are several."""
    for rule in dict.fromkeys(finding.rule for finding in touched if len(finding.edits) == 1):
        mended: list[Finding] = []
        edits: list[Edit] = []
        done = -1
        alike = [one for one in view.review.findings if one.rule == rule and len(one.edits) == 1]
        for finding in sorted(alike, key=lambda one: (one.edits[0].place.start, one.edits[0].place.end)):
            place = finding.edits[0].place
            if place.text.name == view.text.name and place.start > done:
                mended.append(finding)
                edits += finding.edits
                done = place.end
        if len(edits) > 1:
            yield Fix(f"Mend all {len(edits)} of {rule} in this file", mended, edits)


# Waivers


def _waivers(view: View, touched: list[Finding]) -> Iterator[Fix]:
    """A waiver to be reasoned for each rule touched, where its place can hold a comment."""
    reading = view.review.reading
    if reading is None or reading.root is None:
        return
    known = {rule.name for rule in (*view.workspace.rules, *view.review.team.rules)}
    asked = [one for one in touched if one.rule in known and one.place.text.name == view.text.name]
    scalars = waivers.spans(reading.root)[0] if asked else []
    for finding in asked:
        edit = _waiver(view, finding, scalars)
        if edit is not None:
            blank = f"${{1:{waivers.PLACEHOLDER}}}"
            snippet = blank.join(_literal(words) for words in edit.words.split(waivers.PLACEHOLDER))
            yield Fix(edit.label, [finding], [edit], snippet=snippet)


def _waiver(view: View, finding: Finding, scalars: list[Span]) -> Edit | None:
    """A comment on a line of its own above the finding, or else behind its line; None inside a value."""
    content, at = view.text.content, finding.place.start
    words = waivers.comment(finding.rule)
    label = f"Waive {finding.rule} here, with a reason"
    start = max(content.rfind("\n", 0, at), content.rfind("\r", 0, at)) + 1
    if not _is_inside(start, scalars):
        line_end = _LINE_END.search(content)
        blanks = re.compile(" *").match(content, start)
        assert blanks is not None
        above = f"{blanks[0]}{words}{line_end[0] if line_end else chr(10)}"
        return Edit(view.text.place(start, start), above, label)
    found = _LINE_END.search(content, at)
    end = found.start() if found else len(content)
    if not _is_inside(end, scalars):
        return Edit(view.text.place(end, end), f"  {words}", label)
    return None


def _is_inside(at: int, scalars: list[Span]) -> bool:
    """Whether a place lies within a key or a value, where a comment would be part of it."""
    return any(start < at < end for start, end in scalars)


def _literal(words: str) -> str:
    """Words as a snippet that holds just these."""
    return re.sub(r"[\\$}]", r"\\\g<0>", words)
