"""Edits of findings put into texts: which are certain, which exclude one another."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..findings.finding import Edit, Finding


class Mend:
    """One edit that mends a finding."""

    __slots__ = ("edit", "finding")

    def __init__(self, finding: Finding, edit: Edit) -> None:
        self.finding = finding
        self.edit = edit

    @property
    def key(self) -> tuple[str, int, int, str]:
        """File, place and words: two findings can ask for one edit."""
        place = self.edit.place
        return (place.text.name, place.start, place.end, self.edit.words)

    @property
    def replaced(self) -> str:
        """The words that stand there now."""
        return self.edit.place.excerpt


def certain(findings: Iterable[Finding]) -> list[Mend]:
    """A mend for each finding with one right answer."""
    return [
        Mend(finding, finding.edits[0])
        for finding in findings
        if len(finding.edits) == 1 and finding.edits[0].certain
    ]


def with_a_choice(findings: Iterable[Finding]) -> list[Finding]:
    """The findings that say how they could be mended, where that is for the coach to choose."""
    return [one for one in findings if len(one.edits) > 1 or any(not edit.certain for edit in one.edits)]


def apart(mends: Iterable[Mend]) -> list[Mend]:
    """Mends of one file that leave each other alone, in the order of the file; each edit once.

    Of two that overlap, or touch so that their order would matter, the first stands.
    """
    kept: list[Mend] = []
    for mend in sorted({mend.key: mend for mend in mends}.values(), key=lambda one: one.key[1:]):
        if not kept or mend.edit.place.start > kept[-1].edit.place.end:
            kept.append(mend)
    return kept


def applied(content: str, mends: Iterable[Mend]) -> str:
    """The text with all of these mends, which must be `apart`. New lines end as those of the text do."""
    line_end = "\r\n" if "\r\n" in content else "\n"
    parts: list[str] = []
    done = 0
    for mend in mends:
        place = mend.edit.place
        parts += [content[done : place.start], mend.edit.words.replace("\n", line_end)]
        done = place.end
    return "".join([*parts, content[done:]])
