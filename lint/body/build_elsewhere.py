"""Makes the lines by which the names of other languages are found, and says what is wrong with them.

They stand among the names of built.py only. So they are found as they are written, and are no aliases: no
list shows them, and no word of theirs is read, offered or compared.
"""

from __future__ import annotations

from .names import fold, unaccented

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .build_data import Data

SPELLED_OUT = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ø": "oe", "å": "aa"})
"""How these letters are typed where the keyboard has none of them."""


def names_elsewhere(data: Data) -> Iterator[tuple[str, str]]:
    """Each key of a name of another language with the exercise that it means, once, in order of the keys."""
    meant = {
        key: exercise
        for entry in data["names-elsewhere"]
        for exercise, names in entry["names"].items()
        for name in names
        for key in _keys(name)
    }
    yield from sorted(meant.items())


def _keys(name: str) -> set[str]:
    """What a name is found by, in plain letters: "Überzug" by "uberzug" and "ueberzug"."""
    folded = fold(name)
    return {unaccented(folded), unaccented(folded.translate(SPELLED_OUT))}


def elsewhere_faults(data: Data) -> Iterator[str]:
    """Names of other languages that mean no exercise, mean two, or say what the catalogue says already."""
    own = {entry["name"] for entry in data["exercises"]}
    taken = {
        fold(name): entry["name"]
        for entry in data["exercises"]
        for name in (entry["name"], *entry.get("also", ()))
    }
    said: dict[str, str] = {}
    for entry in data["names-elsewhere"]:
        here: set[str] = set()
        for exercise, names in entry["names"].items():
            if exercise not in own:
                yield entry.fault(f"{exercise} is no exercise of the catalogue", "names", exercise)
            for index, name in enumerate(names):
                keys, at = _keys(name), ("names", exercise, index)
                listed = [taken[key] for key in sorted(keys) if key in taken]
                others = {said.setdefault(key, exercise) for key in keys} - {exercise}
                if listed:
                    yield entry.fault(f"{name} is a name of {listed[0]} already", *at)
                elif others:
                    yield entry.fault(f"{name} also means {min(others)}", *at)
                elif fold(name) in here:
                    yield entry.fault(f"{name} is the same name again", *at)
                here.add(fold(name))
