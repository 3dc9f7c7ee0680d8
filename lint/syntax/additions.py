"""Where a further key can be written beside one that stands there, in the style of its group."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tree import Mapping


def before_next_key(group: Mapping, key: str) -> str:
    """What parts a further key from the value of ``key``: a comma in braces, else a line as indented."""
    content, start = group.source.content, group.entries[key].key.start
    if content[group.start : group.start + 1] == "{":
        return ", "
    line_start = max(content.rfind("\n", 0, start), content.rfind("\r", 0, start)) + 1
    line_end = "\r\n" if "\r\n" in content else "\n"
    return line_end + " " * (start - line_start)
