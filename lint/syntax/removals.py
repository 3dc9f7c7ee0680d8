"""What is taken out of a text together with a key or an item: its comma, or its line."""

from __future__ import annotations

from ..findings.finding import Edit
from ..text.places import line_start, line_stop

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place


def removed(place: Place, label: str, *, braced: bool, certain: bool = False) -> Edit | None:
    """Takes out a key with its value, or an item of a list, from its first character to its last.

    ``braced`` says that its group stands in braces or brackets. Remarks stay. None where nothing would be
    left of the group, or what would be left could not be read.
    """
    found = (_in_braces if braced else _in_lines)(place.text.content, place.start, place.end)
    if found is None:
        return None
    return Edit(place.text.place(*found), "", label, certain=certain)


def _in_braces(content: str, start: int, end: int) -> tuple[int, int] | None:
    after = _past(content, end, " \t\r\n")
    if content[after : after + 1] == ",":
        return start, _past(content, after + 1, " \t")
    before = len(content[:start].rstrip(" \t\r\n"))
    return (before - 1, end) if content[before - 1 : before] == "," else None


def _in_lines(content: str, start: int, end: int) -> tuple[int, int] | None:
    first, stop = line_start(content, start), line_stop(content, end)
    rest = content[end:stop]
    if not content[first:start].strip(" "):
        if rest.strip(" \t"):
            return start, stop - len(rest.lstrip(" \t"))  # what is remarked there stays
        if stop < len(content):
            return first, stop + (2 if content[stop : stop + 2] == "\r\n" else 1)
        return len(content[:first].rstrip("\r\n")), stop
    if content[first:start].strip(" -") or rest.strip(" \t"):
        return None
    following = _past(content, stop, " \r\n")  # the next key moves up behind the dash
    column = following - line_start(content, following)
    is_key = column == start - first and content[following : following + 1] not in ("#", "")
    return (start, following) if is_key else None


def _past(content: str, at: int, blanks: str) -> int:
    """The offset past the blanks at an offset."""
    while content[at : at + 1] and content[at] in blanks:
        at += 1
    return at
