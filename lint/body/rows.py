"""One exercise as one line of text, so that a catalogue of hundreds is loaded without building anything.

Fields stand apart by tabs, items of a list by "|", parts of an item by "~" and angles by blanks.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_TEXT, _FLAG, _LIST, _PATH, _STATED, _POSITIONS = range(6)

#: The fields of an exercise in order, each with its form.
FIELDS: dict[str, int] = {
    "name": _TEXT,
    "aliases": _LIST,
    "implement": _TEXT,
    "kind": _TEXT,
    "stance": _TEXT,
    "grip": _TEXT,
    "unilateral": _FLAG,
    "pattern": _TEXT,
    "patterns": _LIST,
    "actions": _LIST,
    "assists": _LIST,
    "path": _PATH,
    "stated": _STATED,
    "direct": _LIST,
    "indirect": _LIST,
    "positions": _POSITIONS,
    "axial": _TEXT,
    "level": _TEXT,
    "capacity": _TEXT,
    "station": _LIST,
    "hands": _FLAG,
    "easier": _LIST,
    "harder": _LIST,
    "because": _TEXT,
    "sources": _LIST,
}


def encode(fields: dict[str, Any]) -> str:
    """The line of one exercise. ValueError if a text holds a tab, a line break, "|" or "~"."""
    return "\t".join(_written(form, fields[name]) for name, form in FIELDS.items())


def decode(line: str) -> dict[str, Any]:
    """The fields of one exercise from its line."""
    return {
        name: _read(form, text) for (name, form), text in zip(FIELDS.items(), line.split("\t"), strict=True)
    }


def names(line: str) -> list[str]:
    """The name and the aliases of one exercise from its line."""
    name, aliases, _ = line.split("\t", 2)
    return [name, *aliases.split("|")] if aliases else [name]


def _written(form: int, value: Any) -> str:
    if form == _FLAG:
        return "1" if value else ""
    if form == _TEXT:
        return _clean(value)
    if form == _LIST:
        return "|".join(map(_clean, value))
    if form == _PATH:
        return "|".join(f"{joint}~{' '.join(f'{a:g}' for a in angles)}" for joint, angles in value.items())
    if form == _STATED:
        return "|".join(f"{_clean(who)}~{credit}~{_clean(why)}" for who, (credit, why) in value.items())
    return "|".join(f"{_clean(who)}~{position}" for who, position in value.items())


def _read(form: int, text: str) -> Any:
    if form == _TEXT:
        return text
    if form == _FLAG:
        return text == "1"
    if form == _LIST:
        return tuple(text.split("|")) if text else ()
    if not text:
        return {}
    items = [item.split("~") for item in text.split("|")]
    if form == _PATH:
        return {joint: tuple(map(float, angles.split(" "))) for joint, angles in items}
    if form == _STATED:
        return {who: (credit, why) for who, credit, why in items}
    return {who: float(position) for who, position in items}


def _clean(text: str) -> str:
    for mark in "\t\n|~":
        if mark in text:
            raise ValueError(f"{text!r} holds a mark that the built form needs")
    return text
