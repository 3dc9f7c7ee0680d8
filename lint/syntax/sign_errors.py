"""Faults of signs that stop the parser: quotes, brackets, tags and other signs that mean something to YAML.

Each function knows one fault. It gives a finding where the parser stopped because of it, else nothing.
"""

from __future__ import annotations

import re

from ..findings.finding import Edit, Related
from .faults import key_missing, shown

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from .parser_stop import ParserStop


def open_quote(stop: ParserStop) -> Finding | None:
    """A quote that is not closed."""
    if "quoted scalar" not in stop.doing or not (
        "end of stream" in stop.problem or "document" in stop.problem
    ):
        return None
    quote = stop.content[stop.began : stop.began + 1]
    return stop.finding(
        "quote-not-closed",
        f"The text ends here, but the {quote} from line {stop.text.position(stop.began)[0]} is not closed.",
        f"A second {quote} at the end of the quoted words.",
        f"Close it, or leave both out. A {quote} inside the quotes is written "
        + ("twice." if quote == "'" else 'as \\".'),
        related=(Related(stop.text.place(stop.began, stop.began + 1), "the quote opens here"),),
    )


def unknown_escape(stop: ParserStop) -> Finding | None:
    """A backslash in double quotes that stands for no character."""
    if "quoted scalar" not in stop.doing:
        return None
    slash = stop.content.rfind("\\", stop.began, stop.at + 1)
    pair = re.compile(r"\\u(d[89ab]..)\\u(d[c-f]..)", re.IGNORECASE).match(stop.content, max(slash, 0))
    if pair:
        high, low = (int(half, 16) - 0xD800 for half in pair.groups())
        char = chr(0x10000 + (high << 10) + low - 0x400)
        place = stop.text.place(*pair.span())
        return stop.finding(
            "escape-unknown",
            "These two codes stand for one character together in JSON, but not in YAML.",
            "The character itself.",
            f"Write {char} here.",
            at=slash,
            end=pair.end(),
            edits=(Edit(place, char, f"write {char}"),),
        )
    code = re.compile(r"\\(?:x.{,2}|u.{,4}|U.{,8}|.)?").match(stop.content, max(slash, 0))
    end = code.end() if code else stop.at + 1
    return stop.finding(
        "escape-unknown",
        f"{stop.content[slash:end]} inside double quotes stands for no character.",
        'A backslash only before n, t, ", \\ or a code such as u00e9.',
        "Use single quotes if the backslash is meant as such, or write it twice.",
        at=slash,
        end=end,
    )


def directive(stop: ParserStop) -> Finding | None:
    """A line that begins with %."""
    at = stop.began if "directive" in stop.doing else stop.line_start
    if stop.content[at : at + 1] != "%":
        return None
    end = stop.content.find("\n", at)
    return stop.finding(
        "directive-unsupported",
        "This line asks for another version or extension of YAML.",
        "YAML 1.2, which needs no such line.",
        "Delete the line; if it is meant as words, put quotes around them.",
        at=at,
        end=end if end >= 0 else len(stop.content),
    )


def sign_first(stop: ParserStop) -> Finding | None:
    """Words that begin with a sign that means something to YAML."""
    if "an alias" in stop.doing or "an anchor" in stop.doing:
        at = stop.began
    elif "cannot start any token" in stop.problem or "mapping keys" in stop.problem:
        at = stop.at
    else:
        return None
    words = stop.content[at : stop.line_end].split(" #")[0].rstrip()
    effort = re.compile(r"([\w ]+):[ \t]+@ ?([0-9]{1,3}(?:\.5)?)(?=[ \t]*(?:[,}\r\n]|$))").match(
        stop.content, stop.content.rfind(" ", 0, max(stop.content.rfind(":", 0, at), 0)) + 1
    )
    if effort is not None and effort.start(2) > at:
        return _at_number(stop, at, effort)
    return stop.finding(
        "sign-needs-quotes",
        f"{shown(words)} begins with {stop.content[at : at + 1]}, which means something else to YAML.",
        "Quotes around words that begin with * & ! ? % @ ` or |.",
        "Put the words in quotes.",
        at=at,
        end=at + len(words),
        edits=() if stop.opened else (stop.quoting(at, words),),
    )


def _at_number(stop: ParserStop, at: int, found: re.Match[str]) -> Finding:
    """``load: @8``, an effort or a load: without quotes it stops the parser before anybody can ask which."""
    key, number = found.groups()
    place = stop.text.place(found.start(1), found.end())
    if key.strip() in ("rpe", "rir"):
        return stop.finding(
            "sign-needs-quotes",
            f"{shown(f'@{number}')} begins with @, which means something else to YAML.",
            "",
            f"Write `{key.strip()}: {number}`.",
            at=at,
            end=found.end(),
            edits=(Edit(stop.text.place(at, found.end()), number, f"write {number}"),),
        )
    share = f"rpe: {number}" if float(number) <= 10 else f"load: {number} %"
    written = (share, f"load: {number} kg")
    return stop.finding(
        "two-readings",
        f"`@{number}` under `{key}` has two readings: `{written[0]}`, or `{written[1]}`.",
        "",
        f"Write `{written[0]}`, or `{written[1]}`.",
        at=at,
        end=found.end(),
        edits=tuple(Edit(place, one, f"write {one}") for one in written),
    )


def broken_tag(stop: ParserStop) -> Finding | None:
    """A tag that cannot be read."""
    if "tag" not in stop.problem and " tag" not in stop.doing:
        return None
    return stop.finding(
        "tag-unsupported",
        "The ! here begins a tag that cannot be read.",
        "Values without tags.",
        "Delete it; if the ! is meant as part of the words, put quotes around them.",
        at=stop.began,
    )


def words_after_bar(stop: ParserStop) -> Finding | None:
    """Words behind | or > on the same line."""
    if "block scalar" not in stop.doing:
        return None
    return stop.finding(
        "words-after-bar",
        "Words stand behind the | or > on the same line.",
        "The words on the lines below, further indented.",
        "Start them on the next line, or put quotes around all of them.",
        at=stop.began,
        end=stop.line_end,
    )


def unopened_bracket(stop: ParserStop) -> Finding | None:
    """A closing bracket that closes nothing."""
    if stop.char not in ("]", "}") or stop.opened:
        return None
    return stop.finding(
        "bracket-not-opened",
        f"This {stop.char} closes nothing.",
        "As many opening as closing brackets.",
        "Delete it, or open the bracket where the list begins.",
        edits=(Edit(stop.text.place(stop.at, stop.at + 1), "", "delete the bracket", certain=False),),
    )


def open_bracket(stop: ParserStop) -> Finding | None:
    """A bracket that is not closed, or is closed by one of the other kind."""
    if not stop.opened:
        return None
    if stop.char == ":" and stop.before.rstrip()[-1:] in "{,":
        return key_missing(stop.text.place(stop.at, stop.at + 1))
    opened = stop.opened[-1]
    bracket = stop.content[opened]
    closing = "]" if bracket == "[" else "}"
    related = (Related(stop.text.place(opened, opened + 1), f"the {bracket} opens here"),)
    if opened >= stop.line_start and stop.char and stop.char not in "\r\n":
        if stop.char in "]}":
            counted = f"This {stop.char} does not fit the {bracket} that is open."
            change = f"Close with {closing}."
        else:
            counted = f"A comma is missing between the {bracket} and this place, or a value that holds signs."
            change = "Put a comma between two values, and quotes around words that hold : , [ ] { or }."
        wanted = f"Values with commas between them, then {closing}."
        return stop.finding("bracket-not-fitting", counted, wanted, change, related=related)
    line = stop.text.position(opened)[0]
    return stop.finding(
        "bracket-not-closed",
        f"The {bracket} from line {line} is not closed before this place.",
        f"A {closing} behind the last value.",
        f"Close it with {closing} on line {line}, or where the last value ends.",
        related=related,
        edits=_closing(stop, opened, closing),
    )


def _closing(stop: ParserStop, opened: int, closing: str) -> tuple[Edit, ...]:
    """The bracket at the end of the line that opens it, unless the list visibly goes on below."""
    found = re.compile(r"[^\r\n]*").match(stop.content, opened)
    words = found[0].split(" #")[0].rstrip() if found else ""
    if len(words) < 2 or words[-1] in ",[{":
        return ()
    end = stop.text.place(opened + len(words), opened + len(words))
    return (Edit(end, closing, f"close with {closing} at the end of the line", certain=False),)
