"""The page of a rule: what stands beside its code, taken apart for reading."""

from __future__ import annotations

from textwrap import dedent

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .registry import Rule

MARK = "# <- here"
"""Ends the line of an example at which the rule points."""


class Page:
    """``finds``: the rule in a line; ``counts``: what it counts and wants; two programmes beside them.

    ``beside`` are files that stand next to either programme, by name, where the rule looks at more than one.
    """

    __slots__ = ("beside", "counts", "finds", "flags", "passes")

    def __init__(self, rule: Rule) -> None:
        head, _, examples = dedent(f"    {rule.page}").strip().partition("\nFlags:\n")
        flags, _, after = examples.partition("\nPasses:\n")
        passes, *others = after.split("\nBeside ")
        finds, _, counts = head.partition("\n\n")
        self.finds = _joined(finds)
        self.counts = [_joined(part) for part in counts.split("\n\n") if part.strip()]
        self.flags = _example(flags)
        self.passes = _example(passes)
        named = (other.partition(":\n") for other in others)
        self.beside = {name: _example(text) for name, _, text in named}


def _example(text: str) -> str:
    return dedent(text).strip() + "\n"


def _joined(words: str) -> str:
    return " ".join(words.split())
