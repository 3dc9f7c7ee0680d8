"""``python -m spotline.lint.body.build`` writes the form of the data that the command loads.

That is built.py, and built_names.py for the words of names. It reads data/*.yaml, checks it and works out
what each exercise trains. Each fault of the data is printed with its file and line. With ``--check`` it
writes nothing, and exits with 1 if a built file is out of date.
"""

from __future__ import annotations

import os
import sys

import yaml

from .build_data import HERE, read
from .build_elsewhere import names_elsewhere
from .build_faults import faults
from .build_names import alone_of, carried_by, heads_of, kinds_of, names_by_word, spellings_of
from .build_rows import action_rows, anatomy_from, areas, curve_rows, encode, muscle_rows, pair_rows, pieces
from .exercise_fields import fields
from .names import fold
from .rows import names as names_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence
    from typing import Any

    from .build_data import Data
    from .build_rows import Row

BUILT = os.path.join(HERE, "built.py")
BUILT_NAMES = os.path.join(HERE, "built_names.py")

HEAD = (
    '"""Written by python -m spotline.lint.body.build from data/*.yaml: change those, not this."""\n',
    "# ruff: noqa\n# fmt: off\n",
    "from __future__ import annotations\n",
)


def render(data: Data) -> str:
    """The text of built.py. The data must have no faults.

    An exercise has one line in EXERCISES, one in NAMES for each of its names, and one in ORDER. EXERCISES
    and NAMES are sorted; ORDER has the order of the data. So adding an exercise changes no line of another
    one, and branches that add exercises can be merged.
    """
    anatomy = anatomy_from(data)
    exercises = [encode(fields(entry, anatomy)) for entry in data["exercises"]]
    called = [names_in(line) for line in exercises]
    carried = carried_by(data)
    names = [
        f"{fold(name)}\t{own}\t{carried.get(name, '')}".rstrip("\t")
        for own, *aliases in called
        for name in (own, *aliases)
    ]
    names += [f"{key}\t{meant}" for key, meant in names_elsewhere(data)]
    area_table, area_names = areas(data, anatomy)
    parts = [
        *HEAD,
        "TYPE_CHECKING = False\nif TYPE_CHECKING:\n    from typing import Any\n",
        _rows("ACTIONS", action_rows(data)),
        _rows("CURVES", curve_rows(data)),
        _rows("MUSCLES", muscle_rows(data)),
        _table("GROUPS", "tuple[str, ...]", {group: tuple(who) for group, who in anatomy.groups.items()}),
        _table("REGIONS", "tuple[str, ...]", {region: tuple(who) for region, who in anatomy.regions.items()}),
        _table("AREAS", "tuple[str, ...]", area_table),
        _rows("AREA_NAMES", area_names, "str"),
        _rows("PIECES", pieces(data), "str"),
        _rows("PAIRS", pair_rows(data)),
        _table(
            "SOURCES",
            "tuple[str, str, str, str, str]",
            {
                e["id"]: tuple(e[k] for k in ("short", "reference", "kind", "grade", "read"))
                for e in data["sources"]
            },
        ),
        _lines("EXERCISES", sorted(exercises)),
        _lines("NAMES", sorted(names)),
        _lines("ORDER", [own for own, *_ in called]),
    ]
    return "\n".join(parts)


def render_names(data: Data) -> str:
    """The text of built_names.py. The data must have no faults.

    NAMES has one line for each name of an exercise, sorted: the word by which the name is found, its words,
    and the exercise. So an exercise that is added changes only its own lines and those of words that are new.
    """
    spellings = spellings_of(data)
    kinds = kinds_of(data, spellings)
    parts = [
        *HEAD,
        _table("SPELLINGS", "tuple[str, ...]", spellings),
        _table("KINDS", "tuple[str, ...]", kinds),
        _table("ALONE", "str", alone_of(data, spellings)),
        _lines("HEADS", heads_of(data, spellings, kinds)),
        _lines("NAMES", sorted(set(names_by_word(data, spellings, kinds)))),
    ]
    return "\n".join(parts)


def _rows(name: str, rows: Sequence[Row | str], kind: str = "tuple[Any, ...]") -> str:
    lines = "".join(f"    {row!r},\n" for row in rows)
    return f"{name}: tuple[{kind}, ...] = (\n{lines})\n"


def _lines(name: str, lines: Sequence[str]) -> str:
    """One text that holds all lines, with a line break before and after each.

    Python loads it as one object.
    """
    text = "".join(f"    {line + chr(10)!r}\n" for line in lines)
    return f'{name}: str = (\n    "\\n"\n{text})\n'


def _table(name: str, kind: str, table: Mapping[str, Any]) -> str:
    lines = "".join(f"    {key!r}: {value!r},\n" for key, value in table.items())
    return f"{name}: dict[str, {kind}] = {{\n{lines}}}\n"


def current(path: str) -> str:
    """The text of the built file that is there now, or "" if there is none."""
    if not os.path.exists(path):
        return ""
    with open(path, encoding="utf-8") as file:
        return file.read()


def main(arguments: Sequence[str], say: Callable[[str], object] = print) -> int:
    """Builds, or compares if ``--check`` is given.

    Returns the exit code: 1 for faults or an outdated built file.
    """
    try:
        data = read()
        found = faults(data)
    except (ValueError, yaml.YAMLError) as error:
        found = [str(error)]
    for fault in found:
        say(fault)
    if found:
        return 1
    texts = {BUILT: render(data), BUILT_NAMES: render_names(data)}
    if "--check" in arguments:
        stale = [os.path.basename(path) for path, text in texts.items() if text != current(path)]
        for name in stale:
            say(f"{name} is stale: run python -m spotline.lint.body.build")
        if not stale:
            say("built.py and built_names.py are up to date")
        return int(bool(stale))
    for path, text in texts.items():
        with open(path, "w", encoding="utf-8", newline="\n") as file:
            file.write(text)
    say(f"{len(data['exercises'])} exercises, {len(data['muscles'])} muscles, {len(data['sources'])} sources")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
