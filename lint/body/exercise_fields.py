"""Turns an exercise as it is written in a file into the fields of rows.FIELDS, and checks it.

It serves the catalogue and a team's own exercises. An entry is the plain data of a file. It needs a name, and
joint actions or a joint path. Everything else has a default.
"""

from __future__ import annotations

from .derive import actions_of, derive, is_hinge, patterns_of
from .mechanics import full_path

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping
    from typing import Any

    from .anatomy import Anatomy
    from .derive import Profile
    from .mechanics import Path

    Fault = tuple[str, tuple[str | int, ...]]

DEFAULTS: dict[str, Any] = {
    "implement": "none",
    "kind": "dynamic",
    "stance": "standing",
    "grip": "",
    "unilateral": False,
    "pattern": "",
    "axial": "none",
    "level": "novice",
    "rank": "usual",
    "capacity": "heavy",
    "hands": False,
}
"""The value of each field that an entry may leave out."""


def profile_of(entry: Mapping[str, Any], anatomy: Anatomy) -> Profile:
    """What the exercise trains. ValueError, in plain words, if its path or a stated credit is impossible."""
    path = full_path(entry.get("path", {}))
    main, assists = loaded(entry, path)
    return derive(anatomy, main, assists, path, *_how(entry), stated(entry))


def _how(entry: Mapping[str, Any]) -> tuple[str, str]:
    """Kind and movement pattern, as written or by default."""
    return entry.get("kind", DEFAULTS["kind"]), entry.get("pattern", DEFAULTS["pattern"])


def loaded(entry: Mapping[str, Any], path: Path) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Main and assisting joint actions: as written, or from the path if no actions are written."""
    if "actions" in entry:
        return tuple(entry["actions"]), tuple(entry.get("assists", ()))
    main, assists = actions_of(path)
    return main, (*assists, *(action for action in entry.get("assists", ()) if action not in main))


def stated(entry: Mapping[str, Any]) -> dict[str, tuple[str, str]]:
    """The credit that is stated by hand: {muscle or group: (credit, reason)}."""
    return {name: (given["as"], given["because"]) for name, given in entry.get("credit", {}).items()}


def fields(entry: Mapping[str, Any], anatomy: Anatomy) -> dict[str, Any]:
    """The fields of the exercise by name, for catalogue.Exercise."""
    path = full_path(entry.get("path", {}))
    main, assists = loaded(entry, path)
    profile = profile_of(entry, anatomy)
    return {
        **{name: entry.get(name, default) for name, default in DEFAULTS.items()},
        **{name: tuple(entry.get(name, ())) for name in ("station", "easier", "harder", "sources")},
        "name": entry["name"],
        "aliases": tuple(entry.get("also", ())),
        "patterns": patterns_of(entry.get("pattern", ""), profile),
        "actions": main,
        "assists": assists,
        "path": path,
        "stated": stated(entry),
        "direct": profile.muscles("direct"),
        "indirect": profile.muscles("indirect"),
        "positions": profile.positions,
        "because": entry.get("because", entry.get("note", "")),
    }


def faults(entry: Mapping[str, Any], anatomy: Anatomy) -> Iterator[Fault]:
    """The faults of an entry that fits its schema: (what is wrong, path to the place).

    These are: unknown joint actions, an action that is both main and assisting, an impossible path, credit
    for something that is no muscle or has none of the actions, a hip hinge whose path is no hinge, and an
    exercise that trains no muscle directly.
    """
    wrong = False
    for key in ("actions", "assists"):
        for index, action in enumerate(entry.get(key, ())):
            if action not in anatomy.actions:
                wrong = True
                yield f"{action} is no joint action", (key, index)
    for action in sorted(set(entry.get("actions", ())) & set(entry.get("assists", ()))):
        yield f"{action} is both a main and an assisting action", ("assists",)
    try:
        path = full_path(entry.get("path", {}))
    except ValueError as error:
        yield str(error), ("path",)
        return
    if wrong:
        return
    kind, pattern = _how(entry)
    for name, given in stated(entry).items():
        try:
            derive(anatomy, *loaded(entry, path), path, kind, pattern, {name: given})
        except ValueError as error:
            wrong = True
            yield str(error), ("credit", name)
    if pattern == "hip hinge" and kind != "isometric" and not is_hinge(path):
        yield "called a hip hinge, but its joint path is none", ("pattern",)
    if not wrong and not profile_of(entry, anatomy).muscles("direct"):
        yield "trains no muscle directly", ("actions",) if "actions" in entry else ("path",)
