"""The page of a rule: what stands beside its code, taken apart for reading."""

from __future__ import annotations

from textwrap import dedent

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .registry import Rule

MARK = "# <- here"
"""Ends the line of an example at which the rule points."""


class Page:
    """``finds``: the rule in a line; ``counts``: what it counts and wants; two programmes beside them."""

    __slots__ = ("counts", "finds", "flags", "passes")

    def __init__(self, rule: Rule) -> None:
        head, _, examples = dedent(f"    {rule.page}").strip().partition("\nFlags:\n")
        flags, _, passes = examples.partition("\nPasses:\n")
        finds, _, counts = head.partition("\n\n")
        self.finds = _joined(finds)
        self.counts = [_joined(part) for part in counts.split("\n\n") if part.strip()]
        self.flags = dedent(flags).strip() + "\n"
        self.passes = dedent(passes).strip() + "\n"


def _joined(words: str) -> str:
    return " ".join(words.split())
