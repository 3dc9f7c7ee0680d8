"""YAML text -> tree: a plain text at once, any other by the YAML library."""

from __future__ import annotations

from ..text import files
from ..text.files import LONGEST_FILE
from ..text.places import Text
from . import faults
from .plain_builder import PlainBuilder
from .tree import Reading
from .tree_builder import without_surrogates

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..text.repository import SourceFile


def parse(name: str, content: str) -> Reading:
    """The tree of a text, with findings for all that is wrong in it; no text makes this raise.

    ``name`` is the path that the findings show. A byte order mark at the beginning is left out.
    """
    return _parsed(name, content.removeprefix("\ufeff"))


def _parsed(name: str, content: str) -> Reading:
    if len(content) > LONGEST_FILE:
        reading = Reading(Text(name, ""))
        reading.findings.append(faults.file_too_large(reading.text.place(0, 0), LONGEST_FILE))
        return reading
    # Few texts hold characters that do not print; one fast test finds them.
    prints = content.replace("\n", " ").replace("\t", " ").replace("\r", " ").isprintable()
    text = Text(name, content if prints else without_surrogates(content))
    torn = faults.merge_conflicts(text) if "<<<<<<<" in content or ">>>>>>>" in content else []
    if prints and not torn:
        plain = PlainBuilder(text)
        if plain.build():
            plain.findings.finish()
            return plain.reading
    from .event_builder import EventBuilder

    builder = EventBuilder(text)
    builder.reading.findings += torn
    if not torn:
        build = builder.build if prints else builder.build_odd
        build(content)
    builder.findings.finish()
    return builder.reading


def read(path: str) -> Reading:
    """The tree of the file at ``path``; where the file cannot be read, a finding says why."""
    return _read(path, lambda: files.content(path))


def read_file(file: SourceFile) -> Reading:
    """The tree of a file of a repository, as `read`; a link that leads out of it is not followed."""
    return _read(file.name, lambda: files.content_of(file))


def _read(path: str, content_at: Callable[[], str]) -> Reading:
    try:
        content = content_at()
    except files.UnreadableError as error:
        reading = Reading(error.place.text, opened=error.opened)
        reading.findings.append(faults.unreadable(error))
        return reading
    return _parsed(path, content)
