"""A comparison as Markdown for a pull request: the summary open, details folded, no larger than a comment."""

from __future__ import annotations

import re

from ..weighing.comparison import MOST_LINES, shared_out
from ..weighing.difference import PARTS
from ..wording.words import counted_noun, safe
from .changes_text import NOTHING, heading, label

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..weighing.comparison import Compared, Comparison

LARGEST = 60_000
"""Characters at most: the hosts of pull requests take comments of 65,536."""

ENTITIES = {"<": "&lt;", ">": "&gt;", "&": "&amp;", "@": "&#64;", "#": "&#35;"}
"""Signs that are written as entities: a backslash before them does nothing inside HTML."""

_MARKUP = re.compile(r"[\\`*_\[\]<>|~&@#!]|:(?=//)|(?<=[Ww]{3})\.")
"""What Markdown would read as markup: emphasis, links, pictures, tables, addresses, headings, mentions."""


def report(result: Comparison) -> None:
    """Prints it."""
    print(markdown(result))


def markdown(result: Comparison, largest: int = LARGEST) -> str:
    """The comparison, at most so many characters; what is left out is said."""
    if result.is_nothing:
        return NOTHING
    lines = list(_summary(result))
    room = largest - len("\n".join(lines)) - 200
    folded: list[str] = []
    several = result.changed
    for at, one in enumerate(several):
        block = "\n".join(_details(one))
        if len(block) > room:
            left = len(several) - at
            folded.append(
                f"\nDetails of {counted_noun(left, 'more programme or file')} are too long for here."
            )
            break
        room -= len(block)
        folded.append(block)
    return "\n".join([*lines, *folded])[:largest]


def _summary(result: Comparison) -> Iterator[str]:
    yield "### What this changes in training"
    several = result.changed
    for one, said in zip(several, shared_out(several, MOST_LINES), strict=False):
        yield f"\n**{md(heading(one))}**\n"
        for number, (change, sentence) in enumerate(said):
            yield f"- {'' if not number else label(change) + ': '}{_strong(md(sentence), not number)}"
    if len(several) > MOST_LINES:
        yield f"\nAnd {counted_noun(len(several) - MOST_LINES, 'more programme or file')}."
    listed = [
        *(f"new file {md(name)}: {md(what)}" for name, what in result.new[:MOST_LINES]),
        *(f"file gone {md(name)}: {md(what)}" for name, what in result.gone[:MOST_LINES]),
        *(f"cannot be compared: {md(fault)}" for fault in result.faults[:MOST_LINES]),
    ]
    if listed:
        yield ""
        yield from (f"- {line}" for line in listed)


def _strong(words: str, is_first: bool) -> str:
    return f"**{words}**" if is_first else words


def _details(one: Compared) -> Iterator[str]:
    yield f"\n<details><summary>{html(heading(one))}: {counted_noun(len(one.changes), 'change')}</summary>\n"
    for part in PARTS:
        for change in one.details(part):
            yield f"- {label(change)}: {md(change.sentence(one.weeks))}"
    yield "\n</details>"


def md(words: str) -> str:
    """A coach's words as Markdown that shows exactly these words, on one line."""
    return _MARKUP.sub(_spelled, safe(" ".join(words.split())))


def html(words: str) -> str:
    """A coach's words inside an element of HTML, where Markdown is not read."""
    return "".join(ENTITIES.get(sign, sign) for sign in safe(" ".join(words.split())))


def _spelled(found: re.Match[str]) -> str:
    """A sign as an entity where a backslash does not do inside HTML; else behind a backslash."""
    sign = found[0]
    return ENTITIES.get(sign, f"\\{sign}")
