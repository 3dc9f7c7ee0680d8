"""The pages of the guide for people: the list of topics, or the pages of some, as wide as the terminal."""

from __future__ import annotations

from importlib.resources import files
from textwrap import wrap

from ..reporters.layout import bold, strong, terminal_width

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

INDENT = 4
"""Columns before what to write."""


def pages() -> dict[str, list[str]]:
    """The lines of each topic's page, by its name, in order."""
    text = files(__package__).joinpath("pages.md").read_text(encoding="utf-8")
    _, *parts = text.split("\n## ")
    return {name: body.splitlines() for name, _, body in (part.partition("\n") for part in parts)}


def report(asked: list[str], no_such: Callable[[str, str, list[str]], Exception]) -> int:
    """Prints the list of topics, or the pages of those that are asked for; all of them by ``all``.

    Raises what ``no_such`` makes of a topic that there is none of.
    """
    known, width = list(pages()), min(terminal_width(), 96)
    wanted = known if asked == ["all"] else [one.lower() for one in asked]
    for name in wanted:
        if name not in known:
            raise no_such("topic", name, [*known, "all"])
    shown = [page(name, width, bold=bold()) for name in wanted] or [topics(width)]
    print("\n\n".join("\n".join(lines).rstrip() for lines in shown))
    return 0


def topics(width: int) -> Iterator[str]:
    """Each topic with what it is about."""
    every = pages()
    column = max(map(len, every)) + 2
    yield "What to write for what one has on paper, by topic:"
    yield ""
    for name, lines in every.items():
        about = next(line for line in lines if line)
        yield from _hanging(f"  {name:<{column}}", about, width)
    yield ""
    yield "`spotline guide TOPIC` shows one, `spotline guide all` the whole."


def page(name: str, width: int, *, bold: bool) -> Iterator[str]:
    """The page of a topic: what to write for what one has on paper, the keys, lines of the examples."""

    yield strong(name.capitalize(), bold)
    in_code = False
    for line in pages()[name]:
        if line.startswith("```"):
            in_code = not in_code
        elif in_code:
            yield from _hanging("  - ", line.removeprefix("- "), width)
        elif line.startswith("### "):
            yield strong(line.removeprefix("### "), bold)
        elif line.startswith("- ") and "`: " not in line:
            yield from _hanging("  - ", line.removeprefix("- "), width)
        elif line.startswith("- `"):
            key, _, words = line.removeprefix("- `").partition("`: ")
            yield from _hanging(f"  {key:<12} ", words, width)
        elif line.startswith("| on paper"):
            yield strong("On paper, and what to write", bold)
        elif line.startswith("| "):
            paper, written, where = line.strip("| ").split(" | ")
            yield f"  {paper}" + ("" if where == "a line" else f"  ({where})")
            yield from _hanging(" " * INDENT, written.strip("`"), width)
        elif not line.startswith("|"):
            yield from wrap(line, width) or [""]


def _hanging(head: str, words: str, width: int) -> Iterator[str]:
    """Words behind a head; their further lines begin below their first."""
    column = len(head)
    lines = wrap(words, max(width - column, 30), break_on_hyphens=False, break_long_words=False)
    yield f"{head}{lines[0] if lines else ''}".rstrip()
    for line in lines[1:]:
        yield " " * column + line
