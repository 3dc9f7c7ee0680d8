"""A comparison as text for people: what is most telling first, then the details."""

from __future__ import annotations

from ..weighing.comparison import MOST_LINES, shared_out
from ..weighing.difference import PARTS, joined
from ..wording.words import counted_noun, safe, week_list
from .layout import bold, row, strong, terminal_width

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..weighing.comparison import Compared, Comparison
    from ..weighing.difference import Difference

NOTHING = "Nothing changes in training."

COLUMN = 12
"""Columns that the name of a part takes."""

WIDEST = 80
"""Columns that a comparison takes at most."""


def report(result: Comparison) -> None:
    """Prints it, as wide as the terminal."""
    print("\n".join(text(result, min(terminal_width(), WIDEST), bold=bold())))


def text(result: Comparison, width: int, *, bold: bool = False) -> Iterator[str]:
    """The lines of a comparison: a summary of at most 12 lines, then details."""
    if result.is_nothing:
        yield NOTHING
        return
    yield from summary(result, width, bold=bold)
    details = list(_details(result, width, bold))
    if details:
        yield ""
        yield strong("Details", bold)
        yield from details


def summary(result: Comparison, width: int, *, most: int = MOST_LINES, bold: bool = False) -> Iterator[str]:
    """What changed, in at most ``most`` changes, files gone and new among them; the most telling first."""
    left = most
    several = result.changed
    for one, said in zip(several, shared_out(several, most), strict=False):
        left -= len(said)
        yield strong(safe(heading(one)), bold)
        before = ""
        for number, (change, sentence) in enumerate(said):
            part = label(change) if number else "first"
            yield from row(part if part != before else "", sentence, width, COLUMN)
            before = part
    if len(several) > most:
        yield f"and {counted_noun(len(several) - most, 'more programme or file')}"
    for name, what in result.new[: max(left, 1)]:
        yield from row("new file", f"{name}: {what}", width, COLUMN)
    for name, what in result.gone[: max(left, 1)]:
        yield from row("file gone", f"{name}: {what}", width, COLUMN)
    for fault in result.faults:
        yield from row("left out", fault, width, COLUMN)


def heading(one: Compared) -> str:
    """``plan.programme.yaml, Mara, weeks 1-6``"""
    weeks = week_list(one.weeks) if one.weeks else ""
    return ", ".join(part for part in (one.file, one.who, weeks) if part)


MOST_IN_FEW = 5
"""Lines at most of a report on a commit that passes."""


def in_few_lines(result: Comparison, most: int = MOST_IN_FEW) -> list[str]:
    """What changed in so many lines at most, none of them wrapped; who or what changes most comes first."""
    if result.is_nothing:
        return [NOTHING]
    several = result.changed
    rest = [
        *(f"new file {name}: {what}" for name, what in result.new),
        *(f"file gone {name}: {what}" for name, what in result.gone),
        *(f"cannot be compared: {fault}" for fault in result.faults),
    ]
    lines = [f"{heading(one)}: {sentence}" for one in several for _, sentence in one.first(1)] + rest
    if len(several) == 1 and not rest:
        said = several[0].first(most - 1)
        lines = [heading(several[0]), *(f"  {label(change)}: {sentence}" for change, sentence in said)]
    if len(lines) > most:
        lines = [*lines[: most - 1], f"and {len(lines) - most + 1} more: spotline compare --since HEAD"]
    return [safe(line) for line in lines]


LABELS = {
    "person": "person",
    "out of line": "out of line",
    "dose": "dose",
    "time": "days",
    "findings": "findings",
    "lines": "lines",
}


def label(change: Difference) -> str:
    """The name of the part that a change stands in."""
    return "settings" if change.kind == "setting" else LABELS[change.part]


def _details(result: Comparison, width: int, bold: bool) -> Iterator[str]:
    """All changes of what the summary does not say in full."""
    for one in result.changed:
        if len(one.first()) < len(joined(one.changes)) or len(result.changed) > 1:
            yield strong(safe(heading(one)), bold)
            for part in PARTS:
                for number, change in enumerate(one.details(part)):
                    name = label(change) if not number else ""
                    yield from row(name, change.sentence(one.weeks), width, COLUMN)
