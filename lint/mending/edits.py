"""Edits of findings put into texts: which are certain, which exclude one another."""

from __future__ import annotations

import re

from ..text.places import line_end_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..findings.finding import Edit, Finding
    from ..syntax.tree import Reading
    from ..text.places import Place, Text


class Mend:
    """One edit that mends a finding; without one it says the same in a plainer spelling."""

    __slots__ = ("edit", "finding")

    def __init__(self, finding: Finding | None, edit: Edit) -> None:
        self.finding = finding
        self.edit = edit

    @property
    def key(self) -> tuple[tuple[str, int, int, str], ...]:
        """File, place and words of each part: two findings can ask for one edit."""
        return tuple((*part.place.key, part.words) for part in self.edit.parts)

    @property
    def replaced(self) -> str:
        """The words that stand there now."""
        return self.edit.place.excerpt


def certain(findings: Iterable[Finding]) -> list[Mend]:
    """A mend for each finding with one right answer."""
    return [Mend(finding, edit) for finding in findings if (edit := finding.surely) is not None]


def plainly(reading: Reading | None, kind: str) -> list[Mend]:
    """A mend for each value of a file that is valid, but not in its plain spelling."""
    from ..schemas.plain_spellings import plain_spellings

    root = None if reading is None else reading.root
    return [] if root is None else [Mend(None, edit) for edit in plain_spellings(root, kind)]


def with_a_choice(findings: Iterable[Finding]) -> list[Finding]:
    """The findings that say how they could be mended, where that is for the coach to choose."""
    return [one for one in findings if one.surely is None and one.edits]


def apart(mends: Iterable[Mend]) -> list[Mend]:
    """Mends that leave each other alone, in the order of each file; each edit once.

    Of two that overlap, or touch so that their order would matter, the first stands.
    """
    kept: list[Mend] = []
    taken: list[Place] = []
    for mend in sorted({mend.key: mend for mend in mends}.values(), key=lambda one: one.key):
        places = [part.place for part in mend.edit.parts]
        if not any(_touch(one, other) for one in places for other in taken):
            kept.append(mend)
            taken += places
    return kept


def _touch(one: Place, other: Place) -> bool:
    return one.text.name == other.text.name and one.start <= other.end and other.start <= one.end


def by_text(mends: Iterable[Mend]) -> dict[Text, list[Mend]]:
    """The mends of each text; a finding may be mended in another file than it is found in."""
    found: dict[Text, list[Mend]] = {}
    for mend in mends:
        found.setdefault(mend.edit.place.text, []).append(mend)
    return found


def applied(content: str, mends: Iterable[Mend]) -> str:
    """The text with all of these mends, which must be `apart`. New lines end as those of the text do."""
    return with_edits(content, [mend.edit for mend in mends])


def with_edits(content: str, edits: Iterable[Edit]) -> str:
    """The text with edits that leave each other alone. New lines end as those of the text do."""
    line_end = line_end_of(content)
    parts: list[str] = []
    done = 0
    for part in sorted((part for edit in edits for part in edit.parts), key=lambda one: one.place.start):
        words = re.sub("\r\n|\r|\n", lambda _: line_end, part.words)
        parts += [content[done : part.place.start], words]
        done = part.place.end
    return "".join([*parts, content[done:]])
