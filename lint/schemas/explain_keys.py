"""Findings for keys: misspelt, unknown, missing, or excluded by one another."""

from __future__ import annotations

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..syntax.additions import key_added
from ..syntax.rewrites import key_out
from ..syntax.tree import Mapping
from ..wording.words import listed, with_article
from .lookup import name_key
from .readings import ways
from .slips import meant_elsewhere, nearest

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..findings.finding import Edits, Finding
    from ..text.places import Place
    from .corrected_data import CorrectedData
    from .lookup import SchemaLookup
    from .violation import DataPath, Schema, Violation

MOST_LIKELY = 2
"""Values of neighbours that a missing key is offered with, at most."""


def is_single(value: Any) -> bool:
    """Whether a value is one number or one word, as a key has it on most lines."""
    return isinstance(value, (int, float, str)) and not isinstance(value, bool)


class KeyExplainer:
    """Makes the findings for the keys of one file."""

    def __init__(self, data: CorrectedData, schema: SchemaLookup) -> None:
        self.data = data
        self.schema = schema

    def correct_misspelt(self, violation: Violation) -> Iterator[Finding]:
        """A finding for each misspelt key of the violation; each is then corrected in the data."""
        if violation.keyword != "additionalProperties":
            return
        path = violation.path
        for key in violation.unknown_keys():
            meant = self._meant(path, key)
            if meant is not None and meant not in violation.value:
                yield self._misspelt(path, key, meant)
                self.data.correct_key(violation.value, key, meant)

    def unknown(self, violation: Violation) -> Iterator[Finding]:
        """A finding for each unknown key that is left when misspelt keys are corrected."""
        path = violation.path
        kind = self.schema.kind(path, violation.value)
        for key in violation.unknown_keys():
            meant = self._meant(path, key)
            near = [other["title"] for other in self.schema.kinds(path) if key in other["properties"]]
            owners = near or self.schema.owners(key)
            called = key
            for one in () if owners else meant_elsewhere(key):
                called, owners = one, owners or self.schema.owners(one)
            if meant is not None:
                wanted, change = f"`{meant}` stands here already.", "Take one of the two out."
            elif owners:
                owned = " or ".join(with_article(owner) for owner in owners[:2])
                wanted, change = f"`{called}` belongs to {owned}.", "Move it there, or take it out."
                if called != key:
                    change = f"Write `{called}` there, or take it out."
            else:
                wanted = f"It may have {listed([f'`{one}`' for one in kind['properties']])}."
                change = (
                    "Take it out, or say it in a `note`." if "note" in kind["properties"] else "Take it out."
                )
            place = self.data.node((*path, key)).entry_place
            counted = f"{with_article(kind['title']).capitalize()} has no `{key}`."
            out = self._taking_out(path, [key], meant)
            yield self.data.finding(
                "key-unknown", path, place, counted, wanted=wanted, change=change, edits=out
            )

    def missing(self, violation: Violation) -> Finding:
        """A required key is missing."""
        path = violation.path
        keys = violation.value
        kind = self.schema.kind(path, keys)
        if violation.keyword == "dependentRequired":
            given, names = next((key, names) for key, names in violation.wants.items() if key in keys)
            absent = [name for name in names if name not in keys]
            counted = f"`{given}` needs `{absent[0]}` beside it."
            place = self.data.node((*path, given)).entry_place
        else:
            absent = self._absent(violation)
            neither = " nor ".join(f"`{name}`" for name in absent)
            counted = (
                f"This {kind['title']} has {f'no {neither}' if len(absent) == 1 else f'neither {neither}'}."
            )
            first = next((key for key in (name_key(kind), *keys) if key in keys), None)
            place = self.data.node(path).place if first is None else self._entry(path, first, keys)
        about = kind.get("properties", {}).get(absent[0], {})
        return self.data.finding(
            "key-missing",
            path,
            place,
            counted,
            wanted=f"`{absent[0]}`: {about.get('description', '')}",
            change=f"Add `{absent[0]}`{self.schema.example((*path, absent[0]))}.",
            subject=absent[0],
            edits=self._adding(path, absent[0], name_key(kind)),
        )

    def _adding(self, path: DataPath, key: str, name: str) -> Edits:
        """Writes a missing key as its neighbours have it, most often first, else as the example has it."""

        def work_out() -> Iterator[Edit]:
            group = self.data.node(path).node
            examples = self.schema.examples((*path, key))
            if not isinstance(group, Mapping) or not group.entries or not examples:
                return  # a name is the coach's own
            around = self.data.value(path[:-1]) if path and isinstance(path[-1], int) else ()
            parts = self.schema.at((*path, key))
            values = [one[key] for one in around if isinstance(one, dict) and is_single(one.get(key))]
            values = [one for one in values if any(self.schema.accepts(part, one) for part in parts)]
            values = [one for one in values if len(ways(str(one), key)) < 2]
            likely = sorted(dict.fromkeys(values), key=lambda one: -values.count(one))[:MOST_LIKELY]
            after = name if name in group.entries else list(group.entries)[-1]
            for value in likely or examples[:1]:
                words = f"{key}: {value}"
                edit = key_added(group, after, words, f"add {words}")
                if edit is not None:
                    yield edit

        return work_out

    def _taking_out(self, path: DataPath, keys: list[str], instead: str | None = None) -> Edits:
        """Takes keys out, with their values; or the key that the only one is a slip of, which it becomes."""

        def work_out() -> Iterator[Edit]:
            group = self.data.node(path).node
            if not isinstance(group, Mapping) or group.defined is not None:
                return
            edits = [edit for key in keys for edit in key_out(group, self.data.as_written(path, key))]
            whole = in_one(f"take out {listed(keys)}", edits)
            if whole is not None:
                yield whole
            if instead is not None:
                slip = Edit(self.data.node((*path, keys[0])).entry_place, instead, "write")
                other = key_out(group, self.data.as_written(path, instead))
                whole = in_one(f"write {instead} for {keys[0]}, in its place", [slip, *other])
                if whole is not None:
                    yield whole

        return work_out

    def _entry(self, path: DataPath, first: str, keys: dict[str, Any]) -> Place:
        """Where a key is missing: all that stands of an exercise on one line of text, as the key may come
        anywhere in it; else the key by which the mapping is known.
        """
        start = self.data.node((*path, first)).entry_place
        if "exercises" not in path or not isinstance(path[-1], int):
            return start
        ends = [node.place for key in keys if not (node := self.data.node((*path, key))).through]
        on_its_line = [end for end in ends if end.text is start.text and end.finish[0] == start.line]
        last = max(on_its_line, key=lambda end: end.end, default=start)
        begins = [self.data.node((*path, key)).entry_place for key in keys]
        head = min(
            (one for one in begins if one.line == start.line), key=lambda one: one.start, default=start
        )
        return head.up_to(last) if last.end > head.end else start

    def at_odds(self, violation: Violation) -> Finding:
        """Two keys exclude each other. The library names only the mapping that they stand in."""
        route = self.schema.route(violation)
        forbidden = route[-1][1]["properties"]
        keys = [key for key in self.data.value(violation.path) if forbidden.get(key, True) is False]
        before = [step for step, _ in route[:-1]]
        if before[-1] == "then":
            beside = f"beside `{route[-2][1]['if']['required'][0]}`"
        elif "dependentSchemas" in before[-2:]:
            beside = f"beside `{before[-1]}`"
        elif "complex" in violation.path:
            beside = "on one lift of a complex, which has it for all of them"
        elif before[-1] == "else":
            return self._without_its_key(violation, route, keys[0])
        else:
            beside = "on an exercise whose rounds give its sets"
        stand = f"{listed([f'`{key}`' for key in keys])} {'stands' if len(keys) == 1 else 'stand'}"
        return self.data.finding(
            "keys-at-odds",
            violation.path,
            self.data.node((*violation.path, keys[0])).entry_place,
            f"{stand} {beside}.",
            wanted="Only one of the two can hold.",
            change="Take one of them out.",
            edits=self._taking_out(violation.path, keys),
        )

    def _without_its_key(self, violation: Violation, route: list[tuple[Any, Schema]], key: str) -> Finding:
        """A key that can hold only beside one of others, of which none is there."""
        wanted: list[str] = []
        for step, part in reversed(route[:-1]):
            if step != "else":
                break
            wanted = part["if"]["required"] + wanted
        needs = listed([f"`{one}`" for one in wanted], "or")
        return self.data.finding(
            "keys-at-odds",
            violation.path,
            self.data.node((*violation.path, key)).entry_place,
            f"`{key}` stands without {needs}.",
            change=f"Write {needs} beside it, or take it out.",
            edits=self._taking_out(violation.path, [key]),
        )

    def _meant(self, path: DataPath, key: str) -> str | None:
        """The key that an unknown one most likely stands for, even where that key is there already."""
        keys = self.data.value(path)
        kind = self.schema.kind(path, keys)
        possible = dict.fromkeys(kind.get("properties", ()))
        if name_key(kind) not in keys:
            for other in self.schema.kinds(path):
                possible |= dict.fromkeys(other["properties"])
        if self.schema.owners(key):
            # Another kind has this key, so it is a slip only where it is very near to a key of this kind.
            meant = nearest(key, possible, 0.85)
            fits = meant is not None and self.schema.accepts_type((*path, meant), keys[key])
            return meant if fits else None
        absent = [one for one in possible if one not in keys]
        return nearest(key, absent) or nearest(key, possible, 0.8)

    def _misspelt(self, path: DataPath, key: str, meant: str) -> Finding:
        kind = self.schema.kind(path, {**self.data.value(path), meant: None})
        place = self.data.node((*path, key)).entry_place
        return self.data.finding(
            "key-unknown",
            path,
            place,
            f"{with_article(kind['title']).capitalize()} has no `{key}`.",
            wanted=f"The nearest that it has is `{meant}`.",
            change=f"Write `{meant}`.",
            edits=(Edit(place, meant, f"Write {meant}"),),
        )

    def _absent(self, violation: Violation) -> list[str]:
        """The missing key, and the keys that could stand in its place, from the conditions above it."""
        instead: list[str] = []
        for step, part in reversed(self.schema.route(violation)[:-1]):
            if step != "else" or "type" in part["if"]:
                break
            if "properties" in part["if"]:
                continue  # the key stands for this one only where its value says so
            instead = part["if"]["required"] + instead
        return [violation.missing, *instead]
