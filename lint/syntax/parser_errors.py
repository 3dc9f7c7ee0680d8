"""Findings for the place where the parser stopped, in a coach's words.

The parser tells where it stopped, and why in half a sentence. Each function that is tried here knows one
fault that makes it stop; the first one that recognises its fault tells the coach what to do. Nothing of this
is loaded for a sound file.
"""

from __future__ import annotations

import re

from . import layout_errors, sign_errors
from .bounds import too_much_nesting
from .faults import file_empty, template
from .parser_stop import ParserStop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from ..text.places import Text


def explain_stop(text: Text, error: Exception, opened: list[int]) -> list[Finding]:
    """Findings for the one place where the parser stopped, or for every line with the same fault.

    ``opened`` are the offsets of the lists and groups of keys that it was inside of, outermost first.
    """
    stop = ParserStop(text, error, opened)
    for fault in _FAULTS:
        found = fault(stop)
        if found:
            return found if isinstance(found, list) else [found]
    return [_unreadable(stop)]


def _empty(stop: ParserStop) -> Finding | None:
    """The text holds nothing but comments and the marks between documents."""
    if re.sub(r"#[^\r\n]*|\.\.\.|---|\s", "", stop.content):
        return None
    return file_empty(stop.text.place(0, 0))


def _template(stop: ParserStop) -> Finding | None:
    """Words stand behind a template in double braces; the braces are the fault."""
    before = stop.before.rstrip()
    start = before.rfind("{{")
    if start < 0 or not before.endswith("}}"):
        return None
    return template(stop.text.place(stop.line_start + start, stop.line_start + len(before)))


def _nesting(stop: ParserStop) -> Finding | None:
    return too_much_nesting(stop.text.place(stop.at, stop.at + 1)) if "nest" in stop.problem else None


def _unreadable(stop: ParserStop) -> Finding:
    return stop.finding(
        "yaml-unreadable",
        "From here on the file cannot be read.",
        "Keys with a colon and a blank, lists with dashes, both neatly in columns.",
        "Check this line and the one above it: colons, dashes, quotes, columns.",
    )


_FAULTS = (
    _empty,
    _template,
    _nesting,
    layout_errors.tabs,
    layout_errors.odd_blank,
    sign_errors.open_quote,
    sign_errors.unknown_escape,
    sign_errors.directive,
    sign_errors.sign_first,
    sign_errors.broken_tag,
    sign_errors.words_after_bar,
    sign_errors.unopened_bracket,
    layout_errors.long_key,
    sign_errors.open_bracket,
    layout_errors.second_colon,
    layout_errors.missing_colon,
    layout_errors.misplaced_dash,
    layout_errors.stray_line,
)
"""In the order in which they are tried."""
