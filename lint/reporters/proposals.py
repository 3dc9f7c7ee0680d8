"""Proposals that clear findings, as cards: the lines before and after, what they cost, what stays and why."""

from __future__ import annotations

from difflib import SequenceMatcher
from itertools import chain

from ..wording.words import counted_noun, listed, safe, safe_name
from .layout import bold, paragraph, row, strong, terminal_width
from .sentences import sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..solving.solve import Card, Solution, Stays

WIDEST = 80
"""Columns of a card at most."""

INDENT = "   "
"""What stands before the further lines of a card's title, under its number."""

MOST_LINES = 12
"""Changed lines that a card shows before it only says how many more there are."""


def report(solution: Solution) -> None:
    """Prints the cards, what stays, and how to write one."""
    for line in cards(solution, min(terminal_width(), WIDEST), bold=bold()):
        print(line)


def cards(solution: Solution, width: int, *, bold: bool) -> Iterator[str]:
    """The cards of a solution, ``width`` in columns."""
    yield strong(safe_name(solution.review.name), bold)
    yield ""
    for number, card in enumerate(solution.cards, start=1):
        yield from _card(number, card, solution.before, width, bold)
    for one in solution.stays:
        yield from _stays(one, width)
    yield from paragraph(_closing(solution), width)


def title(card: Card) -> str:
    """What a proposal does, in words."""
    words = listed([one.label for one in card.steps])
    return f"{words[:1].upper()}{words[1:]}"


def _card(number: int, card: Card, before: str, width: int, bold: bool) -> Iterator[str]:
    first, *rest = paragraph(title(card), width - len(INDENT))
    yield strong(f"{number}  {first}", bold)
    yield from (f"{INDENT}{line}" for line in rest)
    changed = list(_changed(before, card.after))
    for label, line in changed[:MOST_LINES]:
        yield from row(label, line, width)
    if len(changed) > MOST_LINES:
        yield from row("", f"and {counted_noun(len(changed) - MOST_LINES, 'more line')}", width)
    for said in (one.said for one in card.steps):
        if said:
            yield from row("written", said, width)
    yield from row("costs", "; ".join(card.costs), width)
    for finding in card.clears:
        yield from row("clears", f"line {finding.place.line}, {finding.rule}", width)
    if card.caution:
        yield from row("mind", card.caution, width)
    yield ""


def _changed(before: str, after: str) -> Iterator[tuple[str, str]]:
    """The lines that are lost, ``now``, and those that stand there ``then``, with their numbers."""
    old, new = before.splitlines(), after.splitlines()
    for what, first, last, start, end in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if what != "equal":
            gone = [("now", f"{at + 1}: {old[at].strip()}") for at in range(first, last)]
            come = [("then", f"{at + 1}: {new[at].strip()}") for at in range(start, end)]
            in_turn = chain.from_iterable(zip(gone, come, strict=False))
            yield from in_turn if len(gone) == len(come) else gone + come


def _stays(one: Stays, width: int) -> Iterator[str]:
    yield from row(
        "stays", f"line {one.finding.place.line}: {one.finding.rule}: {sentence(one.finding)}", width
    )
    for words in one.why:
        yield from row("", words, width)
    yield ""


def _closing(solution: Solution) -> str:
    if not solution.cards:
        notes = len(solution.review.findings)
        left = f" {counted_noun(notes, 'note')}: ask for one by its --line." if notes else ""
        return "No proposal." if solution.stays else f"Nothing that blocks.{left}"
    number = len(solution.cards)
    which = "--write 1" if number == 1 else f"--write 1 to {number}"
    singly = "" if solution.at_once else " Worked out one after another: all at once may cost less."
    singly += "" if solution.to_the_end else " The search was cut short: others may cost less."
    return safe(
        f"{counted_noun(number, 'proposal')}, each reviewed. Nothing is written without {which}.{singly}"
    )
