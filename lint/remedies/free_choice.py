"""A line that names a muscle, written as work of the athlete's own choice for it."""

from __future__ import annotations

import re
from itertools import pairwise

from ..findings.finding import Edit
from ..syntax.additions import in_braces
from ..syntax.enclosing import way_to
from ..syntax.tree import Mapping

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..syntax.tree import Node
    from ..text.places import Place

MINUTES_A_SET = 2
"""With its rest (common practice, no source)."""
SETS = 3
"""Where a line does not say how many (common practice, no source)."""
KEPT = ("in weeks",)


def freely_chosen(place: Place, area: str) -> Iterator[Edit]:
    """Writes ``own choice`` in the place of the line of a session that holds a place.

    What else the line says goes to its note, so that nothing is lost. Lines of several rows are left alone.
    """
    for step, below in pairwise(way_to(place)):
        line = below.node
        in_session = (
            step.key == "exercises" and isinstance(step.group, Mapping) and "session" in step.group.entries
        )
        if in_session and isinstance(line, Mapping) and _is_in_a_row(line) and "exercise" in line.entries:
            yield Edit(line.place, _words(line, area), f"leave the exercise for {area} free", certain=False)
            return


def _is_in_a_row(line: Mapping) -> bool:
    return in_braces(line) and "\n" not in line.source.content[line.start : line.end]


def _words(line: Mapping, area: str) -> str:
    said = {key: _said(one.value) for key, one in line.entries.items() if key != "exercise"}
    sets = line.entries.get("sets")
    minutes = MINUTES_A_SET * (_most(sets.value.plain) if sets else SETS)
    kept = "".join(f"{key}: {said.pop(key)}, " for key in KEPT if key in said)
    said.pop("note", "")
    note = str(line.entries["note"].value.plain) if "note" in line.entries else ""
    rest = "; ".join(filter(None, (*(f"{key} {words}" for key, words in said.items()), note)))
    quoted = rest.replace("'", "''")
    choice = (
        f"own choice: {_said(line.entries['exercise'].value)}, {kept}minutes: {minutes}, trains: [{area}]"
    )
    return f"{{{choice}, note: '{quoted}'}}" if rest else f"{{{choice}}}"


def _said(value: Node) -> str:
    written = value.source.content[value.start : value.end]
    return str(value.plain) if written.startswith("*") else written


def _most(sets: object) -> int:
    """The most sets of any week."""
    numbers = re.findall(r"\d+", " ".join(map(str, sets.values() if isinstance(sets, dict) else [sets])))
    return max(map(int, numbers), default=SETS)
