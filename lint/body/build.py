"""``python -m spotline.lint.body.build``: reads data/*.yaml, checks it, derives, and writes built.py.

``--check`` writes nothing and exits 1 where built.py is stale. Faults of the data are told by file and line.
"""

from __future__ import annotations

import json
import os
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import yaml
from jsonschema import Draft202012Validator
from jsonschema.exceptions import best_match

from .anatomy import Anatomy, anatomy_of
from .entry import faults as entry_faults
from .entry import fields, profile_of
from .names import fold
from .rows import encode
from .rows import names as names_in

HERE = os.path.dirname(os.path.abspath(__file__))
DATA = os.path.join(HERE, "data")
BUILT = os.path.join(HERE, "built.py")
SCHEMAS = os.path.join(os.path.dirname(os.path.dirname(HERE)), "schema")
TABLES = ("actions", "mechanics", "muscles", "areas", "pairs", "sources")

Row = tuple[Any, ...]
Lines = dict[tuple[Any, ...], int]


class Entry(dict[str, Any]):
    """One entry of a data file that knows its file and the line of each of its keys."""

    def __init__(
        self, data: Mapping[str, Any], file: str, line: int, lines: Mapping[tuple[Any, ...], int]
    ) -> None:
        super().__init__(data)
        self.file = file
        self.line = line
        self.lines = lines

    def fault(self, words: str, *path: Any) -> str:
        """A located fault: the line of the innermost key of ``path`` that has one."""
        for end in range(len(path), 0, -1):
            if path[:end] in self.lines:
                return f"{self.file}:{self.lines[path[:end]]}: {words}"
        return f"{self.file}:{self.line}: {words}"


Data = dict[str, list[Entry]]


def read(folder: str = DATA) -> Data:
    """All tables by name, and the entries of every file below exercises/ in order of file name."""
    data = {name: entries(os.path.join(folder, f"{name}.yaml"), f"{name}.yaml") for name in TABLES}
    below = os.path.join(folder, "exercises")
    files = sorted(file for file in os.listdir(below) if file.endswith(".yaml"))
    data["exercises"] = [e for file in files for e in entries(os.path.join(below, file), f"exercises/{file}")]
    return data


def entries(path: str, name: str) -> list[Entry]:
    """The entries of one data file: a list, each entry with keys."""
    with open(path, encoding="utf-8") as file:
        root = yaml.compose(file, yaml.CSafeLoader)
    if not isinstance(root, yaml.SequenceNode):
        raise ValueError(f"{name}:1: a list of entries is wanted")
    found = []
    for node in root.value:
        line = node.start_mark.line + 1
        if not isinstance(node, yaml.MappingNode):
            raise ValueError(f"{name}:{line}: an entry with keys is wanted")
        lines: Lines = {}
        found.append(Entry(_plain(node, (), lines, name), name, line, lines))
    return found


def _plain(node: Any, path: tuple[Any, ...], lines: Lines, name: str) -> Any:
    if isinstance(node, yaml.SequenceNode):
        for index, item in enumerate(node.value):
            lines[(*path, index)] = item.start_mark.line + 1
        return [_plain(item, (*path, index), lines, name) for index, item in enumerate(node.value)]
    if isinstance(node, yaml.MappingNode):
        plain: dict[Any, Any] = {}
        for key, value in node.value:
            line = key.start_mark.line + 1
            if key.value in plain:
                raise ValueError(f"{name}:{line}: {key.value} stands twice in one entry")
            lines[(*path, key.value)] = line
            plain[key.value] = _plain(value, (*path, key.value), lines, name)
        return plain
    loader = yaml.SafeLoader("")
    return loader.construct_object(node)


def faults(data: Data) -> list[str]:
    """Everything wrong with the data: first what the schemas say, then the tables, then the exercises, each
    looked at only if what it rests on is sound.
    """
    found = [fault for name in (*TABLES, "exercises") for fault in _schema_faults(name, data[name])]
    if found:
        return found
    known = _Known(data)
    for check in (_table_faults, _source_faults, _area_faults):
        found += check(data, known)
    if found:
        return found
    anatomy = _anatomy(data)
    for entry in data["exercises"]:
        found += _exercise_faults(entry, anatomy, known)
    return found + list(_alias_faults(data["exercises"]))


class _Known:
    """Names that entries may use."""

    def __init__(self, data: Data) -> None:
        self.actions = {entry["name"]: entry for entry in data["actions"]}
        self.muscles = {entry["name"] for entry in data["muscles"]}
        self.groups = {group for entry in data["muscles"] for group in entry["groups"]}
        self.regions = {entry["region"] for entry in data["muscles"]}
        self.curves = {entry["name"]: entry for entry in data["mechanics"]}
        self.sources = {entry["id"] for entry in data["sources"]}
        self.exercises = {entry["name"] for entry in data["exercises"]}
        self.areas = {entry["name"] for entry in data["areas"]}


def _schema_faults(name: str, table: list[Entry]) -> Iterator[str]:
    with open(os.path.join(SCHEMAS, f"body-{name}.json"), encoding="utf-8") as file:
        schema = json.load(file)
    validator = Draft202012Validator({**schema["items"], "$defs": schema.get("$defs", {})})
    for entry in table:
        error = best_match(validator.iter_errors(dict(entry)))
        if error is not None:
            label = entry.get("name", entry.get("id", "this entry"))
            yield entry.fault(f"{label}: {error.message}", *error.absolute_path)


def _table_faults(data: Data, known: _Known) -> Iterator[str]:
    for name in ("actions", "mechanics", "muscles", "areas", "pairs"):
        yield from _twice(data[name], "name")
    yield from _twice(data["sources"], "id")
    for entry in data["actions"]:
        if "opposes" in entry and entry["opposes"] not in known.actions:
            yield entry.fault(f"{entry['opposes']} is no joint action", "opposes")
    for entry in data["muscles"]:
        if "mechanics" in entry and entry["mechanics"] not in known.curves:
            yield entry.fault(f"{entry['mechanics']} is no length curve", "mechanics")
        for action in entry["acts"]:
            if action not in known.actions:
                yield entry.fault(f"{action} is no joint action", "acts", action)
            elif known.actions[action]["joint"] not in entry["crosses"]:
                yield entry.fault(f"{entry['name']} does not cross the joint of {action}", "acts", action)
    for entry in data["pairs"]:
        for index, side in enumerate(entry["sides"]):
            for action in side.get("actions", ()):
                if action not in known.actions:
                    yield entry.fault(f"{action} is no joint action", "sides", index, "actions")
            if side["area"] not in known.areas:
                yield entry.fault(f"{side['area']} is no area", "sides", index, "area")


def _twice(table: list[Entry], key: str) -> Iterator[str]:
    seen: dict[str, Entry] = {}
    for entry in table:
        first = seen.setdefault(entry[key], entry)
        if first is not entry:
            yield entry.fault(f"{entry[key]} stands already at {first.file}:{first.line}", key)


def _source_faults(data: Data, known: _Known) -> Iterator[str]:
    for table in data.values():
        for entry in table:
            for index, id in enumerate(entry.get("sources", ())):
                if id not in known.sources:
                    yield entry.fault(f"there is no source {id}", "sources", index)
    for entry in data["mechanics"]:
        if entry["source"] not in known.sources:
            yield entry.fault(f"there is no source {entry['source']}", "source")


def _area_faults(data: Data, known: _Known) -> Iterator[str]:
    own = known.muscles | known.groups | known.regions
    taken: dict[str, str] = {}
    for name in sorted(own):
        taken[fold(name)] = name
    for entry in data["areas"]:
        if "of" not in entry and entry["name"] not in own:
            yield entry.fault(
                f"{entry['name']} is no muscle, group or region: say what it is made `of`", "name"
            )
        for index, name in enumerate(entry.get("of", ())):
            if name not in own and name not in known.areas:
                yield entry.fault(f"{name} is no muscle, group, region or area", "of", index)
        for word in (entry["name"], *entry.get("also", ())):
            other = taken.setdefault(fold(word), entry["name"])
            if other != entry["name"]:
                yield entry.fault(f"{word} already means {other}", "also")


def _exercise_faults(entry: Entry, anatomy: Anatomy, known: _Known) -> Iterator[str]:
    name = entry["name"]
    found = [entry.fault(f"{name}: {words}", *path) for words, path in entry_faults(entry, anatomy)]
    yield from found
    for key in ("easier", "harder"):
        for index, other in enumerate(entry[key]):
            if other not in known.exercises or other == name:
                words = f"{name}: {other} is no other exercise of the catalogue"
                yield entry.fault(words, key, index)
    if not found:
        credits = profile_of(entry, anatomy).credits
        for who in entry.get("credit", {}):
            if all(credits[m].derived == credits[m].credit for m in anatomy.groups.get(who, [who])):
                words = f"{name}: credit for {who} is what derivation gives anyway"
                yield entry.fault(words, "credit", who)


def _alias_faults(table: list[Entry]) -> Iterator[str]:
    taken: dict[str, Entry] = {}
    for entry in table:
        for name in (entry["name"], *entry.get("also", ())):
            first = taken.setdefault(fold(name), entry)
            if first is not entry:
                yield entry.fault(
                    f"{entry['name']}: {name} also means {first['name']} ({first.file}:{first.line})", "also"
                )
        own = [fold(name) for name in (entry["name"], *entry.get("also", ()))]
        for name, folded in zip(entry.get("also", ()), own[1:], strict=True):
            if own.count(folded) > 1:
                yield entry.fault(f"{entry['name']}: {name} is the same name again", "also")


def _anatomy(data: Data) -> Anatomy:
    return anatomy_of(_action_rows(data), _muscle_rows(data), _curve_rows(data))


def _action_rows(data: Data) -> list[Row]:
    return [
        (e["name"], e["joint"], e.get("opposes"), next(iter(e["turns"].items())) if "turns" in e else None)
        for e in data["actions"]
    ]


def _curve_rows(data: Data) -> list[Row]:
    return [
        (
            e["name"],
            e["source"],
            _frozen(e["angles"]),
            e.get("least"),
            e.get("most"),
            _frozen(e.get("trusted", {})),
        )
        for e in data["mechanics"]
    ]


def _muscle_rows(data: Data) -> list[Row]:
    return [
        (
            e["name"],
            e["region"],
            tuple(e["groups"]),
            tuple(e["crosses"]),
            e.get("mechanics", ""),
            tuple((action, tuple(map(_part_row, _listed(parts)))) for action, parts in e["acts"].items()),
            tuple(e["sources"]),
        )
        for e in data["muscles"]
    ]


def _listed(parts: Any) -> list[Any]:
    return parts if isinstance(parts, list) else [parts]


def _part_row(part: Any) -> Row:
    if isinstance(part, str):
        return (part, (), "")
    return (part["role"], _frozen(part.get("when", {})), part.get("because", ""))


def _frozen(data: Mapping[str, Sequence[float]]) -> Row:
    return tuple((key, tuple(value)) for key, value in data.items())


def _pair_rows(data: Data) -> list[Row]:
    return [
        (e["name"], tuple(map(_side_row, e["sides"])), e["more than a note"], tuple(e["sources"]))
        for e in data["pairs"]
    ]


def _side_row(side: Mapping[str, Any]) -> Row:
    return (side["words"], side["area"], tuple(side.get("actions", ())), tuple(side.get("patterns", ())))


def _areas(data: Data, anatomy: Anatomy) -> tuple[dict[str, tuple[str, ...]], tuple[str, ...]]:
    made = {entry["name"]: entry.get("of") for entry in data["areas"]}

    def members(name: str) -> list[str]:
        if made.get(name):
            return [muscle for part in made[name] or () for muscle in members(part)]
        return [name] if name in anatomy.muscles else anatomy.groups.get(name) or anatomy.regions[name]

    order = list(anatomy.muscles)
    names = list(dict.fromkeys([*made, *anatomy.groups, *anatomy.regions, *anatomy.muscles]))
    also = {entry["name"]: entry.get("also", ()) for entry in data["areas"]}
    areas = {}
    for name in names:
        found = tuple(sorted(set(members(name)), key=order.index))
        for word in (name, *also.get(name, ())):
            areas[fold(word)] = found
    return areas, tuple(names)


def render(data: Data) -> str:
    """The text of built.py. The data must be without faults."""
    anatomy = _anatomy(data)
    exercises = [encode(fields(entry, anatomy)) for entry in data["exercises"]]
    names = {fold(name): index for index, line in enumerate(exercises) for name in names_in(line)}
    areas, area_names = _areas(data, anatomy)
    parts = [
        '"""Written by python -m spotline.lint.body.build from data/*.yaml: change those, not this."""\n',
        "# ruff: noqa\n# fmt: off\n",
        "from __future__ import annotations\n",
        "TYPE_CHECKING = False\nif TYPE_CHECKING:\n    from typing import Any\n",
        _rows("ACTIONS", _action_rows(data)),
        _rows("CURVES", _curve_rows(data)),
        _rows("MUSCLES", _muscle_rows(data)),
        _table("GROUPS", "tuple[str, ...]", {group: tuple(who) for group, who in anatomy.groups.items()}),
        _table("REGIONS", "tuple[str, ...]", {region: tuple(who) for region, who in anatomy.regions.items()}),
        _table("AREAS", "tuple[str, ...]", areas),
        f"AREA_NAMES: tuple[str, ...] = {area_names!r}\n",
        _rows("PAIRS", _pair_rows(data)),
        _table(
            "SOURCES",
            "tuple[str, str, str, str, str]",
            {
                e["id"]: tuple(e[k] for k in ("short", "reference", "kind", "grade", "read"))
                for e in data["sources"]
            },
        ),
        _rows("EXERCISES", exercises, "str"),
        _lines("NAMES", [f"{name}\t{index}" for name, index in names.items()]),
    ]
    return "\n".join(parts)


def _rows(name: str, rows: Sequence[Row | str], kind: str = "tuple[Any, ...]") -> str:
    lines = "".join(f"    {row!r},\n" for row in rows)
    return f"{name}: tuple[{kind}, ...] = (\n{lines})\n"


def _lines(name: str, lines: Sequence[str]) -> str:
    """One text of all lines, each between line breaks: finding a line in it needs no table."""
    text = "".join(f"    {line + chr(10)!r}\n" for line in lines)
    return f'{name}: str = (\n    "\\n"\n{text})\n'


def _table(name: str, kind: str, table: Mapping[str, Any]) -> str:
    lines = "".join(f"    {key!r}: {value!r},\n" for key, value in table.items())
    return f"{name}: dict[str, {kind}] = {{\n{lines}}}\n"


def current() -> str:
    """The text of built.py as it stands, "" if there is none."""
    if not os.path.exists(BUILT):
        return ""
    with open(BUILT, encoding="utf-8") as file:
        return file.read()


def main(arguments: Sequence[str], say: Callable[[str], object] = print) -> int:
    """Builds or, with --check, compares. Returns the exit code: 1 for faults or a stale built.py."""
    try:
        data = read()
        found = faults(data)
    except (ValueError, yaml.YAMLError) as error:
        found = [str(error)]
    for fault in found:
        say(fault)
    if found:
        return 1
    text = render(data)
    if "--check" in arguments:
        stale = text != current()
        say(
            "built.py is stale: run python -m spotline.lint.body.build" if stale else "built.py is up to date"
        )
        return int(stale)
    with open(BUILT, "w", encoding="utf-8", newline="\n") as file:
        file.write(text)
    say(f"{len(data['exercises'])} exercises, {len(data['muscles'])} muscles, {len(data['sources'])} sources")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
