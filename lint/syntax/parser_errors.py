"""What stopped the parser, in a coach's words.

The parser says where it gave up and in half a sentence why. Each function here knows one way of writing
that leads there; the first that recognises it tells what to do. None of this is loaded for a sound file.
"""

from __future__ import annotations

import re
from functools import partial

from ..findings.finding import Edit, Finding, Related
from .characters import SPACES, odd_blanks
from .faults import capped, file_empty, key_missing, shown, template, too_much_nesting
from .parser_stop import ParserStop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Text

_LONGEST_KEY = 1024
_TAB = re.compile(r"^ *\t[ \t]*", re.MULTILINE)


def explain(text: Text, error: Exception, opened: list[int]) -> list[Finding]:
    """Findings for the one place where the parser gave up (or for every line with the same fault).

    ``opened`` are the offsets of the lists and groups of keys it was inside of, outermost first.
    """
    stop = ParserStop(text, error, opened)
    for kind in _KINDS:
        found = kind(stop)
        if found:
            return found if isinstance(found, list) else [found]
    return [_unreadable(stop)]


def _nothing(stop: ParserStop) -> Finding | None:
    """Nothing but remarks and the marks between documents."""
    if re.sub(r"#[^\r\n]*|\.\.\.|---|\s", "", stop.content):
        return None
    return file_empty(stop.text.place(0, 0))


def _template(stop: ParserStop) -> Finding | None:
    """Words behind double braces: the braces themselves are the fault."""
    before = stop.before.rstrip()
    start = before.rfind("{{")
    if start < 0 or not before.endswith("}}"):
        return None
    return template(stop.text.place(stop.line_start + start, stop.line_start + len(before)))


def _nesting(stop: ParserStop) -> Finding | None:
    return too_much_nesting(stop.text.place(stop.at, stop.at + 1)) if "nest" in stop.problem else None


def _tabs(stop: ParserStop) -> list[Finding]:
    if stop.char != "\t" and "tab character" not in stop.problem:
        return []
    if stop.before.strip():
        return [_tab(stop.text, stop.at, stop.at + 1, "A tab stands here where a blank is meant.")]
    return capped(
        partial(_tab, stop.text), [one.span() for one in _TAB.finditer(stop.content) if one.end() > stop.at]
    )


def _tab(text: Text, start: int, end: int, counted: str = "This line is indented with a tab.") -> Finding:
    place = text.place(start, end)
    return Finding(
        "tab-in-indentation",
        "error",
        place,
        counted,
        wanted="Blanks; a tab is not as wide everywhere.",
        change="Replace the tab by blanks, as many as in the lines beside it.",
        edits=(Edit(place, place.excerpt.replace("\t", "  "), "replace each tab by two blanks"),),
    )


def _odd_blank(stop: ParserStop) -> Finding | None:
    start = stop.at
    if stop.char not in SPACES or not stop.char:
        line = stop.content[stop.line_start : stop.line_end]
        indent = len(line) - len(line.lstrip(" " + SPACES))
        start = next((stop.line_start + i for i in range(indent) if line[i] in SPACES), -1)
    if start < 0:
        return None
    end = start + len(stop.content[start:]) - len(stop.content[start:].lstrip(SPACES))
    return odd_blanks(stop.text, start, end)


def _quote(stop: ParserStop) -> Finding | None:
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


def _escape(stop: ParserStop) -> Finding | None:
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


def _directive(stop: ParserStop) -> Finding | None:
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


def _sign(stop: ParserStop) -> Finding | None:
    if "an alias" in stop.doing or "an anchor" in stop.doing:
        at = stop.began
    elif "cannot start any token" in stop.problem or "mapping keys" in stop.problem:
        at = stop.at
    else:
        return None
    words = stop.content[at : stop.line_end].split(" #")[0].rstrip()
    return stop.finding(
        "sign-needs-quotes",
        f"{shown(words)} begins with {stop.content[at : at + 1]}, which means something else to YAML.",
        "Quotes around words that begin with * & ! ? % @ ` or |.",
        "Put the words in quotes.",
        at=at,
        end=at + len(words),
        edits=() if stop.opened else (_quoting(stop, at, words),),
    )


def _quoting(stop: ParserStop, at: int, words: str) -> Edit:
    quoted = "'" + words.replace("'", "''") + "'"
    return Edit(stop.text.place(at, at + len(words)), quoted, "put quotes around the words")


def _tag(stop: ParserStop) -> Finding | None:
    if "tag" not in stop.problem and " tag" not in stop.doing:
        return None
    return stop.finding(
        "tag-unsupported",
        "The ! here begins a tag that cannot be read.",
        "Values without tags.",
        "Delete it; if the ! is meant as part of the words, put quotes around them.",
        at=stop.began,
    )


def _block_words(stop: ParserStop) -> Finding | None:
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


def _bracket_left_over(stop: ParserStop) -> Finding | None:
    if stop.char not in ("]", "}") or stop.opened:
        return None
    return stop.finding(
        "bracket-not-opened",
        f"This {stop.char} closes nothing.",
        "As many opening as closing brackets.",
        "Delete it, or open the bracket where the list begins.",
        edits=(Edit(stop.text.place(stop.at, stop.at + 1), "", "delete the bracket"),),
    )


def _bracket(stop: ParserStop) -> Finding | None:
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
    return (Edit(end, closing, f"close with {closing} at the end of the line"),)


def _long_key(stop: ParserStop) -> Finding | None:
    start = stop.began if "simple key" in stop.doing else stop.line_start
    length = stop.content.find(":", start) - start
    if length <= _LONGEST_KEY:
        return None
    return stop.finding(
        "key-too-long",
        f"{length} characters stand before this colon.",
        f"A key of at most {_LONGEST_KEY} characters.",
        "Shorten the key, or put quotes around the whole text if it is no key.",
        at=start + length,
    )


def _colon(stop: ParserStop) -> Finding | None:
    if "mapping values" not in stop.problem:
        return None
    key = re.compile(r"[ \t]*(?:- +)*[^#]*?:[ \t]+").match(stop.content, stop.line_start, stop.at)
    if key is None:
        return _indented(stop)
    words = stop.content[key.end() : stop.line_end].split(" #")[0].rstrip()
    return stop.finding(
        "colon-needs-quotes",
        f"A second colon with a blank behind it stands in this line, inside {shown(words)}.",
        "One key and one value in a line.",
        "Put quotes around the value, or start a new line.",
        edits=() if words[:1] in ("'", '"') else (_quoting(stop, key.end(), words),),
    )


def _indented(stop: ParserStop) -> Finding:
    above = _line_above(stop)
    line = stop.content[above[0] : above[1]]
    if re.match(r"[^:#'\"]+:[^ \t]|-[^- \t]", line):
        return _blank_missing(stop, *above)
    start = stop.line_start + len(stop.before) - len(stop.before.lstrip())
    if ":" not in line and stop.text.position(start)[1] <= stop.text.position(above[0])[1]:
        return _colon_missing(stop, *above)
    return stop.finding(
        "indentation-uneven",
        "This line goes on with the value of the line above, but holds a key of its own.",
        "Keys of one group in one column; below a key with a value nothing is indented further.",
        "Move it to the column of the key above, or put quotes around words that hold a colon.",
        at=start,
        end=stop.at + 1,
    )


def _line_above(stop: ParserStop) -> tuple[int, int]:
    """Start and end of the words in the nearest line above that is neither blank nor a remark."""
    above = re.compile(r"^[ \t]*(?:- +)*([^ \t\r\n#][^\r\n]*)", re.MULTILINE)
    spans = [found.span(1) for found in above.finditer(stop.content, 0, stop.line_start)]
    return spans[-1] if spans else (stop.line_start, stop.at)


def _blank_missing(stop: ParserStop, start: int, end: int) -> Finding:
    words = stop.content[start:end]
    at = start if words[0] == "-" else start + words.index(":")
    sign = stop.content[at]
    return stop.finding(
        "blank-missing",
        f"No blank stands behind the {sign} of {shown(words)}.",
        "A blank behind a colon and behind a dash.",
        "Put a blank there.",
        at=at,
        end=at + 1,
        edits=(Edit(stop.text.place(at + 1, at + 1), " ", "put a blank there"),),
    )


def _colon_missing(stop: ParserStop, start: int, end: int) -> Finding:
    return stop.finding(
        "colon-missing",
        f"No colon stands behind {shown(stop.content[start:end])}.",
        "A key, a colon, a blank, a value.",
        "Put a colon and a blank behind the key; words that go on from the line above are indented further.",
        at=start,
        end=end,
    )


def _no_colon(stop: ParserStop) -> Finding | None:
    if "expected ':'" not in stop.problem:
        return None
    found = re.compile(r"[^\r\n]*").match(stop.content, stop.began)
    end = found.end() if found else stop.at
    if re.match(r"[^:#'\"]+:[^ \t]|-[^- \t]", stop.content[stop.began : end]):
        return _blank_missing(stop, stop.began, end)
    return _colon_missing(stop, stop.began, end)


def _dash(stop: ParserStop) -> Finding | None:
    if "sequence entries" not in stop.problem:
        return None
    return stop.finding(
        "dash-out-of-place",
        "A list begins here on the line of its key, or in another column than the rest of it.",
        "Each dash on a line of its own, all of one list in one column.",
        "Start the list on the next line, or write it in brackets: [a, b].",
    )


def _stray(stop: ParserStop) -> Finding | None:
    """A line, or the rest of one, that fits neither the list nor the keys around it."""
    if not stop.problem.startswith(("did not find expected", "expected")):
        return None
    behind = stop.before.strip()
    if stop.char == ":" and re.search(r"[*&][\w-]+$", behind):
        return _blank_missing_before(stop)
    if stop.char == ":":
        return key_missing(stop.text.place(stop.at, stop.at + 1))
    if behind and behind[-1:] in "'\"]}" and stop.char not in "-":
        return stop.finding(
            "words-after-quote" if behind[-1] in "'\"" else "words-after-bracket",
            f"Words stand behind the closing {behind[-1]}.",
            "Nothing more in the line, or a blank and # before a remark.",
            "Move the words inside, or put one pair of quotes around all of it.",
            end=stop.line_end,
        )
    column = stop.text.position(stop.at)[1]
    if behind or column == stop.text.position(stop.began)[1]:
        return _mixed(stop)
    above = _line_above(stop)
    line, other = stop.text.position(above[0])
    return stop.finding(
        "indentation-uneven",
        f"This line begins in column {column}; no group of keys and no list above stands in that column.",
        f"Column {other}, as on line {line}, or that of another line it belongs to.",
        "Move it under the line it belongs to.",
        related=(Related(stop.text.place(*above), f"this stands in column {other}"),),
    )


def _blank_missing_before(stop: ParserStop) -> Finding:
    return stop.finding(
        "blank-missing",
        "No blank stands before this colon; a name after * or & ends only at a blank.",
        "A blank between the name and the colon.",
        "Put a blank there.",
        edits=(Edit(stop.text.place(stop.at, stop.at), " ", "put a blank there"),),
    )


def _mixed(stop: ParserStop) -> Finding:
    list_around = stop.content[stop.began : stop.began + 1] == "-"
    here = "a dash" if stop.char == "-" else "words"
    wanted = "a dash before each value of the list" if list_around else "a key with a colon"
    return stop.finding(
        "list-and-keys-mixed",
        f"Here stand {here}, where {wanted} should be.".replace("stand a", "stands a"),
        "In one column either a list, each line with a dash, or keys, each with a colon.",
        "Write the line as the others around it, or indent it below the key it belongs to.",
        end=stop.line_end,
        related=(Related(stop.text.place(stop.began, stop.began + 1), "the lines around it begin here"),),
    )


def _unreadable(stop: ParserStop) -> Finding:
    return stop.finding(
        "yaml-unreadable",
        "From here on the file cannot be read.",
        "Keys with a colon and a blank, lists with dashes, both neatly in columns.",
        "Check this line and the one above it: colons, dashes, quotes, columns.",
    )


_KINDS = (
    _nothing,
    _template,
    _nesting,
    _tabs,
    _odd_blank,
    _quote,
    _escape,
    _directive,
    _sign,
    _tag,
    _block_words,
    _bracket_left_over,
    _long_key,
    _bracket,
    _colon,
    _no_colon,
    _dash,
    _stray,
)
