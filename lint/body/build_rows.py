"""Turns the data of the body into the plain rows and lines that built.py holds."""

from __future__ import annotations

from typing import Any

from .anatomy import anatomy_of
from .mechanics import BAND
from .names import fold
from .rows import FIELDS, read_list, read_path, read_positions, read_stated

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from .anatomy import Anatomy
    from .build_data import Data

Row = tuple[Any, ...]


def anatomy_from(data: Data) -> Anatomy:
    """The anatomy that the data describes."""
    return anatomy_of(action_rows(data), muscle_rows(data), curve_rows(data))


def action_rows(data: Data) -> list[Row]:
    """Rows of joint actions: name, joint, opposite action, (joint angle, +1 or -1) that it turns."""
    return [
        (e["name"], e["joint"], e.get("opposes"), next(iter(e["turns"].items())) if "turns" in e else None)
        for e in data["actions"]
    ]


def curve_rows(data: Data) -> list[Row]:
    """Rows of length curves: name, source, cubic of each joint, least and most (cm), trusted angles."""
    return [
        (
            e["name"],
            e["source"],
            _frozen(e["angles"]),
            e.get("least"),
            e.get("most"),
            _frozen(e.get("trusted", {})),
            e.get("band", BAND),
            e.get("doubt", 0.0),
        )
        for e in data["mechanics"]
    ]


def muscle_rows(data: Data) -> list[Row]:
    """Rows of muscles: name, region, groups, joints crossed, length curve, roles by action, sources."""
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
        part = {"role": part}
    return (
        part["role"],
        tuple(part.get("patterns", ())),
        _frozen(part.get("when", {})),
        part.get("because", ""),
        tuple(part.get("sources", ())),
    )


def _frozen(data: Mapping[str, Sequence[float]]) -> Row:
    return tuple((key, tuple(value)) for key, value in data.items())


def pair_rows(data: Data) -> list[Row]:
    """Rows of opposing pairs: name, both sides, whether a finding may be more than a note, sources."""
    return [
        (e["name"], tuple(map(_side_row, e["sides"])), e["more than a note"], tuple(e["sources"]))
        for e in data["pairs"]
    ]


def _side_row(side: Mapping[str, Any]) -> Row:
    return (side["words"], side["area"], tuple(side.get("actions", ())), tuple(side.get("patterns", ())))


def areas(data: Data, anatomy: Anatomy) -> tuple[dict[str, tuple[str, ...]], tuple[str, ...]]:
    """Two tables of areas: {folded name or alias: muscles}, and the names as they are written, in order."""
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


# Exercises: each is a line, which rows.py reads


def pieces(data: Data) -> list[str]:
    """Every implement and station of an exercise, in alphabetical order."""
    return sorted({piece for one in data["exercises"] for piece in (one["implement"], *one["station"])})


def encode(fields: Mapping[str, Any]) -> str:
    """The line of one exercise. ValueError if a text holds a tab, a line break, "|" or "~"."""
    return "\t".join(_WRITE[read](fields[name]) for name, read in FIELDS.items())


def _clean(text: str) -> str:
    for mark in "\t\n|~":
        if mark in text:
            raise ValueError(f"{text!r} holds a mark that the built form needs")
    return text


def _flag(value: bool) -> str:
    return "1" if value else ""


def _list(items: Iterable[str]) -> str:
    return "|".join(map(_clean, items))


def _path(path: Mapping[str, Iterable[float]]) -> str:
    return "|".join(f"{joint}~{' '.join(f'{angle:g}' for angle in angles)}" for joint, angles in path.items())


def _stated(stated: Mapping[str, tuple[str, str]]) -> str:
    return "|".join(f"{_clean(who)}~{credit}~{_clean(why)}" for who, (credit, why) in stated.items())


def _positions(positions: Mapping[str, float]) -> str:
    return "|".join(f"{_clean(who)}~{position}" for who, position in positions.items())


_WRITE: dict[Any, Any] = {
    str: _clean,
    bool: _flag,
    read_list: _list,
    read_path: _path,
    read_stated: _stated,
    read_positions: _positions,
}
"""What writes a field, by what reads it."""
