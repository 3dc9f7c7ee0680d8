"""Faults of layout that stop the parser: tabs, columns, blanks, colons and dashes.

Each function knows one fault. It gives a finding where the parser stopped because of it, else nothing.
"""

from __future__ import annotations

import re
from functools import partial

from ..findings.finding import Edit, Finding, Related
from ..text.places import line_end_of
from .characters import SPACES, odd_blanks
from .faults import capped, key_missing, shown

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..text.places import Text
    from .parser_stop import ParserStop

_LONGEST_KEY = 1024
"""Characters of a key without quotes that the parser still reads."""

_TAB = re.compile(r"^ *\t[ \t]*", re.MULTILINE)
_NO_BLANK_BEHIND = r"[^:#'\"]+:[^ \t]|-[^- \t]"
"""A key whose colon, or a line whose dash, has no blank behind it."""


def tabs(stop: ParserStop) -> list[Finding]:
    """Tabs in the indentation, or a tab between words."""
    if stop.char != "\t" and "tab character" not in stop.problem:
        return []
    if stop.before.strip():
        return [_tab(stop.text, stop.at, stop.at + 1, "A tab stands here where a blank is meant.")]
    return capped(
        partial(_tab, stop.text), [one.span() for one in _TAB.finditer(stop.content) if one.end() > stop.at]
    )


def _blanks(text: Text, start: int, end: int) -> tuple[str, str]:
    """What to write for a tab, with a label: two blanks between words, else as the lines above are indented.

    Lines with tabs that follow one another keep their steps, two blanks a tab.
    """
    content = text.content
    if content[:start].rpartition("\n")[2].rpartition("\r")[2]:
        return content[start:end].replace("\t", "  "), "replace the tab by two blanks"
    above = content[:start].splitlines()
    run = len(above)
    while run and (not above[run - 1].strip() or _TAB.match(above[run - 1])):
        run -= 1
    first = next((line for line in above[run:] if line.strip()), content[start:end])
    lead = _TAB.match(first)
    steps = content[start:end].count("\t") - (lead[0].count("\t") if lead else 0)
    wide = _next_column(above[run - 1] if run else "") + 2 * steps
    wide += content[start:end].count(" ")
    return " " * max(wide, 0), f"indent the line by {max(wide, 0)} blanks"


def _next_column(line: str) -> int:
    """Where the line below one begins: deeper where that opens a group, else below its key."""
    found = re.match("[ -]*", line)
    column = found.end() if found and "-" in found[0] else len(line) - len(line.lstrip(" "))
    return column + 2 if line.split(" #")[0].rstrip().endswith(":") else column


def _tab(text: Text, start: int, end: int, counted: str = "This line is indented with a tab.") -> Finding:
    place = text.place(start, end)
    blanks, label = _blanks(text, start, end)
    return Finding(
        "tab-in-indentation",
        "error",
        place,
        counted,
        wanted="Blanks; a tab is not as wide everywhere.",
        change="Replace the tab by blanks, as many as in the lines beside it.",
        edits=(Edit(place, blanks, label),),
    )


def odd_blank(stop: ParserStop) -> Finding | None:
    """A blank that only looks like an ordinary one."""
    start = stop.at
    if stop.char not in SPACES or not stop.char:
        line = stop.content[stop.line_start : stop.line_end]
        indent = len(line) - len(line.lstrip(" " + SPACES))
        start = next((stop.line_start + i for i in range(indent) if line[i] in SPACES), -1)
    if start < 0:
        return None
    end = start + len(stop.content[start:]) - len(stop.content[start:].lstrip(SPACES))
    return odd_blanks(stop.text, start, end, stops=True)


def long_key(stop: ParserStop) -> Finding | None:
    """A key that is too long for YAML."""
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


def second_colon(stop: ParserStop) -> Finding | None:
    """A second colon in a line, or a key below a key that has a value already."""
    if "mapping values" not in stop.problem:
        return None
    key = re.compile(r"[ \t]*(?:- +)*[^#]*?:[ \t]+").match(stop.content, stop.line_start, stop.at)
    if key is None:
        return _indented(stop)
    words = stop.content[key.end() : stop.line_end].split(" #")[0].rstrip()
    is_plain = words[:1] not in ("'", '"', "{", "[")
    several = tuple(_several_keys(stop, key[0], key.end(), words)) if is_plain else ()
    is_text = not several or key[0].strip(" -\t").rstrip(": \t") in TEXT_KEYS
    quoted = (stop.quoting(key.end(), words),) if is_text and words[:1] not in ("'", '"') else ()
    braces = "braces around all of it, or " if several else ""
    return stop.finding(
        "colon-needs-quotes",
        f"A second colon with a blank behind it stands in this line, inside {shown(words)}.",
        "One key and one value in a line.",
        f"Put {braces}quotes around the value, or start a new line.",
        edits=several + quoted,
    )


TEXT_KEYS = ("note", "cue", "stop when")
"""Keys of sentences, in which a comma and a colon may be part of what is said."""

_FURTHER_KEY = re.compile(r" *, *(?=[A-Za-z][\w -]*:[ \t])")
"""What parts a value from the key behind it, as if the line stood in braces."""


def _several_keys(stop: ParserStop, before: str, at: int, words: str) -> Iterator[Edit]:
    """``exercise: back squat, sets: 3`` in braces; a key a line where further keys stand below it."""
    if not _FURTHER_KEY.search(words):
        return
    start = stop.line_start + re.match("[ -]*", before).end()  # type: ignore[union-attr]
    column = start - stop.line_start
    below = stop.content[stop.line_end :].lstrip("\r\n").partition("\n")[0]
    if below.strip() and len(below) - len(below.lstrip(" ")) >= column:
        indent = line_end_of(stop.content) + " " * column
        place = stop.text.place(at, at + len(words))
        yield Edit(place, _FURTHER_KEY.sub(indent, words), "write a key a line", certain=False)
    else:
        place = stop.text.place(start, at + len(words))
        yield Edit(place, f"{{{place.excerpt}}}", "put braces around all of it", certain=False)


def missing_colon(stop: ParserStop) -> Finding | None:
    """A line without the colon that it needs."""
    if "expected ':'" not in stop.problem:
        return None
    found = re.compile(r"[^\r\n]*").match(stop.content, stop.began)
    end = found.end() if found else stop.at
    if re.match(_NO_BLANK_BEHIND, stop.content[stop.began : end]):
        return _blank_missing(stop, stop.began, end)
    return _colon_missing(stop, stop.began, end)


def _indented(stop: ParserStop) -> Finding:
    """A key stands where the value of the line above goes on, or that line is faulty itself."""
    above = _line_above(stop)
    line = stop.content[above[0] : above[1]]
    if re.match(_NO_BLANK_BEHIND, line):
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
    """Start and end of the words in the nearest line above that is neither blank nor a comment."""
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


def misplaced_dash(stop: ParserStop) -> Finding | None:
    """A dash where no list can begin."""
    if "sequence entries" not in stop.problem:
        return None
    return stop.finding(
        "dash-out-of-place",
        "A list begins here on the line of its key, or in another column than the rest of it.",
        "Each dash on a line of its own, all of one list in one column.",
        "Start the list on the next line, or write it in brackets: [a, b].",
    )


def stray_line(stop: ParserStop) -> Finding | None:
    """A line, or the rest of one, that fits neither the list nor the keys around it."""
    if not stop.problem.startswith(("did not find expected", "expected")):
        return None
    behind = stop.before.strip()
    if stop.char == "-" and not behind and (outdented := _outdented(stop)) is not None:
        return outdented
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


_LINE = re.compile(r"(?:^|(?<=\r))([ \t]*)((?:- +)*)([^\s#][^\r\n]*)", re.MULTILINE)
"""A line of the text: its indentation, its dashes, its words."""


def _outdented(stop: ParserStop) -> Finding | None:
    """A key too far to the left, which ended the list that goes on where the parser stops."""
    column = stop.at - stop.line_start
    lines = list(_LINE.finditer(stop.content, 0, stop.line_start))
    at = next((at for at in range(len(lines) - 1, 0, -1) if len(lines[at][1]) <= column), 0)
    if not at:
        return None
    above, key = lines[at - 1], lines[at]
    meant = len(above[1]) + len(above[2])
    if key[2] or meant <= len(key[1]) or not re.fullmatch(r"[^:]+:[ \t]*(?:#.*)?", key[3]):
        return None
    name = key[3].partition(":")[0]
    line, goes_on = (stop.text.position(offset)[0] for offset in (above.start(3), stop.at))
    return stop.finding(
        "indentation-uneven",
        f"`{name}` stands in column {len(key[1]) + 1} and ends the list above it, which goes on in line"
        f" {goes_on}.",
        f"Column {meant + 1}, as on line {line}.",
        "Indent it as far as the line above it.",
        at=key.start(3),
        end=key.start(3) + len(name),
        edits=(Edit(stop.text.place(*key.span(1)), " " * meant, "indent it like the line above"),),
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
    """A dash among keys, or a key among dashes."""
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
