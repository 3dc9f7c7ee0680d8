"""Quick fixes for findings: the edits that they carry, those of all findings of a rule at once, waivers."""

from __future__ import annotations

import re

from ...findings.finding import Edit
from ...schemas.plain_spellings import plain_spellings
from ...team import waivers
from ..documents.answers import Fix
from ..documents.snapshot import underlined
from .solving import fixes_to_work_out

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...findings.finding import Finding
    from ..documents.offset_map import Span
    from ..documents.snapshot import Snapshot

_LINE_END = re.compile(r"\r\n|\r|\n")


def fixes(
    snapshot: Snapshot,
    start: int,
    end: int,
    asked_about: list[Span] | None = None,
    *,
    resolves: bool = False,
) -> list[Fix]:
    """Fixes for the findings that a part of the text touches, the most likely ones first.

    Where it touches none, the findings on its lines are meant: some clients miscount the columns of a caret.
    Where it touches several, only those that also touch a part ``asked_about`` are meant: some clients name
    one finding and ask for the whole text. ``resolves`` says that a fix may be worked out after it is chosen.
    """
    findings = snapshot.review.findings
    touched = [one for one in findings if _touches(snapshot, one, start, end)]
    if not touched:
        lines = _whole_lines(snapshot.text.content, start, end)
        touched = [one for one in findings if _touches(snapshot, one, *lines)]
    meant = [one for one in touched if any(_touches(snapshot, one, *span) for span in asked_about or ())]
    touched = meant or touched
    offered = [fix for finding in touched for fix in _own_edits(finding)]
    offered += _edits_of_all(snapshot, touched)
    offered += fixes_to_work_out(snapshot.review, touched) if resolves else []
    offered += _plain_spellings(snapshot, start, end)
    offered += _waivers(snapshot, touched)
    return list({(fix.title, _edit_key(fix)): fix for fix in reversed(offered)}.values())[::-1]


def _touches(snapshot: Snapshot, finding: Finding, start: int, end: int) -> bool:
    first, last = underlined(snapshot.text.content, finding.place.start, finding.place.end)
    return first <= end and start <= last


def _whole_lines(content: str, start: int, end: int) -> Span:
    """The whole lines that a part of the text lies on, without the end of the last one."""
    line_end = _LINE_END.search(content, end)
    return _line_start(content, start), line_end.start() if line_end else len(content)


def _line_start(content: str, offset: int) -> int:
    return max(content.rfind("\n", 0, offset), content.rfind("\r", 0, offset)) + 1


def _edit_key(fix: Fix) -> tuple[tuple[int, int, str], ...]:
    return tuple((edit.place.start, edit.place.end, edit.words) for edit in fix.edits)


def _own_edits(finding: Finding) -> Iterator[Fix]:
    """A fix for each edit that a finding carries; they are different ways to mend it."""
    for edit in finding.edits:
        title = f"{edit.label[:1].upper()}{edit.label[1:]}"
        yield Fix(title, [finding], list(edit.parts), preferred=edit is finding.surely)


# All findings of a rule


def _edits_of_all(snapshot: Snapshot, touched: list[Finding]) -> Iterator[Fix]:
    """For each rule touched, one fix for all its findings that leave no choice, if there are several."""
    for rule in dict.fromkeys(finding.rule for finding in touched if finding.surely):
        mended: list[Finding] = []
        edits: list[Edit] = []
        last_end = -1
        of_rule = [
            (one, edit) for one in snapshot.review.findings if one.rule == rule and (edit := one.surely)
        ]
        for finding, edit in sorted(of_rule, key=lambda pair: (pair[1].place.start, pair[1].place.end)):
            if edit.place.text.name == snapshot.text.name and edit.place.start > last_end:
                mended.append(finding)
                edits += edit.parts
                last_end = edits[-1].place.end
        if len(edits) > 1:
            yield Fix(f"Mend all {len(edits)} of {rule} in this file", mended, edits)


# Spellings


def _plain_spellings(snapshot: Snapshot, start: int, end: int) -> Iterator[Fix]:
    """The plain spelling of what a part of the text touches, and of the whole file; both mean the same."""
    reading, kind = snapshot.review.reading, snapshot.review.kind
    if reading is None or reading.root is None:
        return
    here = list(plain_spellings(reading.root, kind, (start, end)))
    edits = list(plain_spellings(reading.root, kind)) if here else []
    for edit in here:
        yield Fix(f"{edit.label[:1].upper()}{edit.label[1:]}, the plain spelling", [], [edit])
    if here and len(edits) > 1:
        yield Fix(f"Write all {len(edits)} values of this file in plain spelling", [], edits)


# Waivers


def _waivers(snapshot: Snapshot, touched: list[Finding]) -> Iterator[Fix]:
    """For each rule touched, a waiver whose reason the coach fills in, where a comment can stand."""
    reading = snapshot.review.reading
    if reading is None or reading.root is None:
        return
    known = {rule.name for rule in (*snapshot.workspace.rules, *snapshot.review.team.rules)}
    waivable = [one for one in touched if one.rule in known and one.place.text.name == snapshot.text.name]
    scalars = waivers.spans(reading.root)[0] if waivable else []
    for finding in waivable:
        edit = _waiver(snapshot, finding, scalars)
        if edit is not None:
            tab_stop = f"${{1:{waivers.PLACEHOLDER}}}"
            snippet = tab_stop.join(_snippet_text(part) for part in edit.words.split(waivers.PLACEHOLDER))
            yield Fix(edit.label, [finding], [edit], snippet=snippet)


def _waiver(snapshot: Snapshot, finding: Finding, scalars: list[Span]) -> Edit | None:
    """A comment on a line of its own above the finding, else behind its line; None inside a value."""
    text, content, offset = snapshot.text, snapshot.text.content, finding.place.start
    comment = waivers.comment(finding.rule)
    label = f"Waive {finding.rule} here, with a reason"
    start = _line_start(content, offset)
    if not _is_inside(start, scalars):
        line_end = _LINE_END.search(content)
        indent = re.compile(" *").match(content, start)
        assert indent is not None
        line = f"{indent[0]}{comment}{line_end[0] if line_end else chr(10)}"
        return Edit(text.place(start, start), line, label)
    found = _LINE_END.search(content, offset)
    end = found.start() if found else len(content)
    if not _is_inside(end, scalars):
        return Edit(text.place(end, end), f"  {comment}", label)
    return None


def _is_inside(offset: int, scalars: list[Span]) -> bool:
    """Whether an offset lies inside a key or a value, where a comment would become part of it."""
    return any(start < offset < end for start, end in scalars)


def _snippet_text(words: str) -> str:
    """The snippet that inserts exactly these words."""
    return re.sub(r"[\\$}]", r"\\\g<0>", words)
