"""The findings for a text that cannot be read as it was meant: one function for each fault."""

from __future__ import annotations

from ..findings.finding import Edit, Finding, Related
from ..text.files import LONGEST_FILE, NotUtf8Error, OtherEncodingError, TooLargeError
from ..text.places import Place, line_start, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    import re
    from collections.abc import Callable, Iterable, Iterator
    from typing import Any

    from ..text.files import UnreadableError
    from ..text.places import Text
    from .tree import KeyValue, Mapping

MOST_ALIKE = 50
"""How many findings of one kind in one file are listed one by one; the others are only counted."""


class TextFindings:
    """Collects the findings of one text; of many alike only the first are made, the others are counted.

    ``reported`` is how often something was reported.
    """

    __slots__ = ("_counts", "_last", "found", "reported")

    def __init__(self, found: list[Finding]) -> None:
        self.found = found
        self.reported = 0
        self._counts: dict[Callable[..., Finding], int] = {}
        self._last: dict[Callable[..., Finding], Finding] = {}

    def report(self, make: Callable[..., Finding], *about: Any) -> None:
        """Adds the finding that one of the functions below makes, unless there are many of it already."""
        self.reported += 1
        count = self._counts.get(make, 0) + 1
        self._counts[make] = count
        if count <= MOST_ALIKE:
            self._last[make] = make(*about)
            self.add(self._last[make])

    def add(self, finding: Finding) -> None:
        """Adds a finding, unless the one before says the same of the same place."""
        last = self.found[-1] if self.found else None
        if last is None or (last.place, last.counted) != (finding.place, finding.counted):
            self.found.append(finding)

    def finish(self) -> None:
        """Says how many were left out, and puts all findings in the order of the text."""
        for make, count in self._counts.items():
            if count > MOST_ALIKE:
                self.found.append(and_more(self._last[make], count - MOST_ALIKE))
        self.found.sort(key=lambda finding: finding.place.start)


def file_too_large(place: Place, limit: int) -> Finding:
    """The file is too large to be read."""
    return Finding(
        "file-too-large",
        "error",
        place,
        f"The file holds more than {limit // 1_000_000} MB, so it was not read.",
        wanted=f"At most {limit // 1_000_000} MB.",
        change="Split it: one file for each programme.",
    )


def file_empty(place: Place) -> Finding:
    """The file is empty."""
    return Finding(
        "file-empty",
        "error",
        place,
        "Nothing is written in this file.",
        wanted="A list of keys with their values, one on each line.",
        change="Write the first line, such as programme: and its name, or delete the file.",
    )


def top_not_a_list_of_keys(place: Place, is_list: bool) -> Finding:
    """The file holds a list or a single value where keys should stand."""
    found = "The file starts with a list" if is_list else "The file holds one value"
    return Finding(
        "top-not-a-list-of-keys",
        "error",
        Place(place.text, place.start, _line_end(place.text.content, place.start, place.end)),
        f"{found} and has no keys.",
        wanted="Lines such as programme: Winter base, each with a key and a colon.",
        change="Put a key and a colon before it" + (", and indent the list below." if is_list else "."),
    )


def without_line(place: Place) -> Iterator[Edit]:
    """Deletes the whole line of a place."""
    content = place.text.content
    start, stop = line_start(content, place.start), line_stop(content, place.end)
    end = stop + (2 if content[stop : stop + 2] == "\r\n" else 1 if stop < len(content) else 0)
    yield Edit(place.text.place(start, end), "", "delete the line", certain=False)


def second_document(place: Place) -> Finding:
    """A line of three dashes begins a second document."""
    return Finding(
        "second-document",
        "error",
        place,
        "A second document starts here; from here on nothing was read.",
        wanted="One document in each file.",
        change="Move what follows into a file of its own, or delete this line.",
        edits=lambda: without_line(place),
    )


def duplicate_key(group: Mapping, one: KeyValue, other: KeyValue) -> Finding:
    """A key stands twice in one group of keys; the first one counts."""
    first, second, key = one.key.place, other.key.place, one.key.text

    def work_out() -> Iterator[Edit]:
        from .additions import in_braces
        from .removals import removed

        says_the_same = one.value.plain == other.value.plain
        for pair, which in ((other, "second"), (one, "first")):
            place = first.text.place(pair.key.start, max(pair.value.end, pair.key.end))
            label = f"take out the {which}, {shown(place.excerpt)}"
            edit = removed(place, label, braced=in_braces(group))
            if edit is not None and not (says_the_same and pair is one):
                yield edit

    return Finding(
        "duplicate-key",
        "error",
        second,
        f"{shown(key)} is written a second time here; it stands on line {first.line} already.",
        wanted="Each key once in a group.",
        change="Delete or rename one of the two. Until then the first one counts.",
        edits=work_out,
        related=(Related(first, f"{shown(key)} stands here first"),),
    )


def key_missing(place: Place) -> Finding:
    """A colon without a key before it."""
    return Finding(
        "key-missing",
        "error",
        place,
        "No key stands before this colon in its line.",
        wanted="A key, a colon, a value.",
        change="Write the key, or delete the line.",
        edits=lambda: without_line(place),
    )


def key_not_text(place: Place) -> Finding:
    """A list or a group of keys stands where a key should stand."""
    content = place.text.content
    if content[place.start - 1 : place.start + 1] == "{{":
        end = place.end + (content[place.end : place.end + 1] == "}")
        return template(place.text.place(place.start - 1, end))
    return Finding(
        "key-not-text",
        "error",
        place,
        "A list or a group of keys stands before the colon.",
        wanted="A key is one word or a few, without brackets.",
        change="Write the key as plain words; if the brackets are meant as words, put quotes around them.",
    )


def template(place: Place) -> Finding:
    """Double braces that another tool should have filled in."""
    return Finding(
        "template-not-filled",
        "error",
        place,
        "These double braces look like a template that nobody has filled in yet.",
        wanted="The value itself.",
        change="Fill the template in before the review, or put quotes around it if it is meant as words.",
    )


def merge_of_no_keys(place: Place) -> Finding:
    """The value of ``<<`` holds no keys."""
    return Finding(
        "merge-of-no-keys",
        "error",
        place,
        "<< takes over the keys of another group, but this is no group of keys.",
        wanted="<<: *name, where &name stands before a group of keys, or a list of such names.",
        change="Point it at a group of keys, or delete the line.",
        edits=lambda: without_line(place),
    )


def alias_unknown(place: Place, known: Iterable[str]) -> Finding:
    """``*name`` without ``&name`` before it."""
    name = place.excerpt[1:]
    names = sorted(set(known))
    listed = ", ".join(f"*{other}" for other in names[:6]) + (" ..." if len(names) > 6 else "")
    return Finding(
        "alias-unknown",
        "error",
        place,
        f"*{name} repeats the part named &{name}, but nothing above this line is named so.",
        wanted=f"One of the names given above: {listed}." if names else f"&{name} before the part to repeat.",
        change=f"Correct the name, write &{name} before the part meant, or put quotes around the words.",
    )


def alias_loop(place: Place, anchor: Place) -> Finding:
    """A part that repeats itself inside itself."""
    return Finding(
        "alias-loop",
        "error",
        place,
        f"{shown(place.excerpt)} repeats a part inside that very part; it would never end.",
        wanted="A part repeats only what is finished above it.",
        change="Write out here what is meant.",
        related=(Related(anchor, "the part starts here and is not finished yet"),),
    )


def number_out_of_range(place: Place) -> Finding:
    """A number that is too long or not finite; it is read as text."""
    return Finding(
        "number-out-of-range",
        "error",
        place,
        f"{shown(place.excerpt)} is no number that can be reckoned with.",
        wanted="A number of at most 18 digits.",
        change="Write the number that is meant, or put quotes around it if it is meant as words.",
    )


def quote_this(place: Place, elsewhere: str) -> Finding:
    """Words that programs of the older YAML 1.1 read as something else."""
    words = place.excerpt
    return Finding(
        "quote-this",
        "note",
        place,
        f"Other programs read {shown(words)} as {elsewhere}.",
        wanted="Words that every program reads alike.",
        change=f"Write '{shown(words)}' in quotes.",
        edits=(Edit(place, f"'{words}'", f"put quotes around {shown(words)}"),),
    )


def tag_unsupported(place: Place) -> Finding:
    """A ``!tag`` that is not in the core schema, or that its value does not fit."""
    return Finding(
        "tag-unsupported",
        "error",
        place,
        f"{shown(place.excerpt)} is a tag that does not fit here.",
        wanted="Values without tags; words, numbers, lists and keys are told apart by how they are written.",
        change="Delete the tag; if the ! is meant as part of the words, put quotes around them.",
        edits=(Edit(place, "", "delete the tag"),),
    )


def capped(make: Callable[..., Finding], about: list[Any]) -> list[Finding]:
    """A finding for each of the first in a list, and one that counts the others."""
    findings = [make(*one) for one in about[:MOST_ALIKE]]
    if len(about) > MOST_ALIKE:
        findings.append(and_more(findings[-1], len(about) - MOST_ALIKE))
    return findings


def and_more(last: Finding, count: int) -> Finding:
    """One finding for all those of a kind that are too many to list."""
    return Finding(
        last.rule, last.severity, last.place, f"And {count} more of this kind in this file.", subject="more"
    )


def shown(words: str) -> str:
    """Words on one line, cut to 40 characters."""
    one_line = " ".join(words.split())
    return one_line if len(one_line) <= 40 else one_line[:37] + "..."


def _line_end(content: str, start: int, limit: int) -> int:
    """Where the line at ``start`` ends, at most ``limit``."""
    ends = [at for at in (content.find("\n", start, limit), content.find("\r", start, limit)) if at >= 0]
    return min(ends, default=limit)


def merge_conflicts(text: Text) -> list[Finding]:
    """A finding for each place where version control left two versions side by side."""
    import re
    from functools import partial

    lines = re.compile(r"^(<{7}|\|{7}|={7}|>{7})(?: ([^\r\n]*))?\r?$", re.MULTILINE)
    pairs: list[tuple[re.Match[str] | None, re.Match[str] | None]] = []
    opened: re.Match[str] | None = None
    for found in lines.finditer(text.content):
        sign = found[1][0]
        if sign == "<":
            opened = found
        elif sign == ">":
            pairs.append((opened, found))
            opened = None
    if opened is not None:
        pairs.append((opened, None))
    return capped(partial(_conflict, text), pairs)


def _conflict(text: Text, ours: re.Match[str] | None, theirs: re.Match[str] | None) -> Finding:
    first = ours or theirs
    assert first is not None
    sides = " and ".join(shown(side[2] or "a version without a name") for side in (ours, theirs) if side)
    related = (Related(text.place(*theirs.span()), "the other version ends here"),) if ours and theirs else ()
    return Finding(
        "merge-conflict",
        "error",
        text.place(*first.span()),
        f"Two versions were left side by side here: {sides}.",
        wanted="One version, without the lines of <, = and >.",
        change="Keep the right lines, and delete the others together with the marks.",
        related=related,
    )


def unreadable(error: UnreadableError) -> Finding:
    """The finding for a file that cannot be read, by the reason."""
    if isinstance(error, TooLargeError):
        return file_too_large(error.place, LONGEST_FILE)
    if isinstance(error, OtherEncodingError):
        return other_encoding(error.place, error.encoding)
    if isinstance(error, NotUtf8Error):
        return not_utf8(error.place, error.byte, error.whole)
    return file_not_opened(error.place, str(error))


def file_not_opened(place: Place, reason: str) -> Finding:
    """The file could not be opened."""
    return Finding(
        "file-not-opened",
        "error",
        place,
        f"The file could not be opened: {reason}.",
        wanted="A file that can be read.",
        change="Check the name and who may read it.",
    )


def other_encoding(place: Place, encoding: str) -> Finding:
    """The file is text in another encoding, such as UTF-16."""
    return Finding(
        "not-utf-8",
        "error",
        place,
        f"The file is saved as {encoding}, so it was not read.",
        wanted="Text saved as UTF-8.",
        change="Save it again with the encoding UTF-8.",
    )


def not_utf8(place: Place, byte: int, whole: bool) -> Finding:
    """A byte that is not UTF-8; ``whole`` is False where the file ends within a character."""
    likely = bytes([byte]).decode("cp1252", "replace") if whole else ""
    guess = f" (it would be {likely} in Windows-1252)" if likely and likely not in "\ufffd\xa0\xad" else ""
    return Finding(
        "not-utf-8",
        "error",
        place,
        f"The byte {byte:02X} here is not UTF-8{guess}, so the file was not read.",
        wanted="Text saved as UTF-8.",
        change="Save the file again with the encoding UTF-8.",
    )
