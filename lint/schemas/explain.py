"""Why a tree does not fit its schema, said at the very key or value in a coach's words.

The schema library is the judge. A misspelt key is corrected in a copy, and the copy judged again, so that
one slip never looks like several; what is then left becomes one finding each.
"""

from __future__ import annotations

from ... import schema as schemas
from ..findings.finding import Edit, Finding
from ..syntax.scalars import OutOfRangeError, core_value
from ..syntax.tree import Mapping, Scalar, Sequence
from .kinds import SchemaKinds, name_key
from .slips import effort, nearest, repairs, sets_and_reps, with_units
from .violation import ValuePlace, Violation, last_key

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from ..syntax.tree import Node
    from ..text.places import Place
    from .kinds import Path, Schema


def explain(root: Node, schema_name: str) -> list[Finding]:
    """Findings for all that breaks the schema of that name, by place; none where the tree fits.

    A root that is no Mapping gives none: reading the tree has told so already.
    """
    if not isinstance(root, Mapping):
        return []
    return _Explainer(root, SchemaKinds(schemas.load(schema_name))).findings()


class _Explainer:
    """Judges one tree."""

    def __init__(self, root: Mapping, kinds: SchemaKinds) -> None:
        from copy import deepcopy

        from jsonschema import Draft202012Validator

        self.root = root
        self.kinds = kinds
        self.validator = Draft202012Validator
        self.data: dict[str, Any] = deepcopy(root.plain)
        self.written: dict[int, dict[str, str]] = {}
        """For each corrected group of the copy: the corrected keys and how they were written."""

    def findings(self) -> list[Finding]:
        found = []
        while True:
            errors = [Violation(error) for error in self.validator(self.kinds.root).iter_errors(self.data)]
            slips = [
                slip
                for error in errors
                if error.keyword == "additionalProperties"
                for slip in self.slips(error)
            ]
            if not slips:
                break
            found += slips
        for error in errors:
            found += self.told(error)
        kept = {(finding.place.key, finding.rule, finding.subject): finding for finding in reversed(found)}
        return sorted(kept.values(), key=lambda one: (one.place.start, one.rule, one.subject))

    # Places

    def spot(self, path: Path) -> ValuePlace:
        """The node at a path of the copy."""
        data: Any = self.data
        spot = ValuePlace(self.root, self.root.place, ())
        for step in path:
            node = spot.node
            if isinstance(step, int):
                assert isinstance(node, Sequence)
                spot = ValuePlace(node.items[step], spot.entry_place, spot.inner)
            else:
                assert isinstance(node, Mapping)
                entry = node.entries[self.written.get(id(data), {}).get(step, step)]
                through = spot.inner + entry.merged
                spot = ValuePlace(entry.value, entry.key.place.reached(through), through)
            data = data[step]
        return spot

    def value(self, path: Path) -> Any:
        data: Any = self.data
        for step in path:
            data = data[step]
        return data

    def where(self, path: Path) -> str:
        """The place in the coach's words: Lower A, stiff-leg deadlift, reps."""
        data: Any = self.data
        named: list[str] = []
        tail: list[str] = []
        for depth, step in enumerate(path):
            data = data[step]
            name = _name(data) if isinstance(data, dict) else ""
            if name:
                named.append(name)
                tail = []
            elif isinstance(step, str):
                tail.append(f"week {step}" if depth and step[:1].isdigit() else step)
            elif tail:
                tail[-1] += f" {step + 1}"
        return ", ".join(named + tail)

    # Keys that are not known

    def slips(self, error: Violation) -> Iterator[Finding]:
        """Findings for misspelt keys, each then corrected in the copy."""
        path = error.path
        for key in error.unknown():
            meant = self.meant(path, key)
            if meant is not None and meant not in error.value:
                yield self.misspelt(path, key, meant)
                self.correct(error.value, key, meant)

    def meant(self, path: Path, key: str) -> str | None:
        """The key of this place that was most likely meant, whether it is here already or not."""
        keys = self.value(path)
        kind = self.kinds.group(path, keys)
        possible = dict.fromkeys(kind.get("properties", ()))
        if name_key(kind) not in keys:
            for other in self.kinds.groups(path):
                possible |= dict.fromkeys(other["properties"])
        if self.kinds.owners(key):
            meant = nearest(key, possible, 0.85)
            return meant if meant is not None and self.takes((*path, meant), keys[key]) else None
        absent = [one for one in possible if one not in keys]
        return nearest(key, absent) or nearest(key, possible, 0.8)

    def takes(self, path: Path, value: Any) -> bool:
        """Whether a value is of a kind that may stand at a path."""
        parts = (self.kinds.whole(part) for part in self.kinds.at(path)[:1])
        errors = (error for part in parts for error in self.validator(part).iter_errors(value))
        return not any(error.validator == "type" and not error.path for error in errors)

    def misspelt(self, path: Path, key: str, meant: str) -> Finding:
        kind = self.kinds.group(path, {**self.value(path), meant: None})
        place = self.spot((*path, key)).entry_place
        return self.finding(
            "key-unknown",
            place,
            f"{_a(kind['title']).capitalize()} has no `{key}`.",
            path,
            wanted=f"The nearest that it has is `{meant}`.",
            change=f"Write `{meant}`.",
            edits=(Edit(place, meant, f"Write {meant}"),),
        )

    def correct(self, keys: dict[str, Any], key: str, meant: str) -> None:
        """Renames a key of the copy in its place."""
        entries = [(meant if one == key else one, value) for one, value in keys.items()]
        keys.clear()
        keys.update(entries)
        written = self.written.setdefault(id(keys), {})
        written[meant] = written.pop(key, key)

    def unknown(self, error: Violation) -> Iterator[Finding]:
        path = error.path
        kind = self.kinds.group(path, error.value)
        for key in error.unknown():
            meant = self.meant(path, key)
            near = [other["title"] for other in self.kinds.groups(path) if key in other["properties"]]
            owners = near or self.kinds.owners(key)
            if meant is not None:
                wanted, change = f"`{meant}` stands here already.", "Take one of the two out."
            elif owners:
                owned = " or ".join(_a(owner) for owner in owners[:2])
                wanted, change = f"`{key}` belongs to {owned}.", "Move it there, or take it out."
            else:
                wanted = f"It may have {_listed([f'`{one}`' for one in kind['properties']])}."
                change = (
                    "Take it out, or say it in a `note`." if "note" in kind["properties"] else "Take it out."
                )
            place = self.spot((*path, key)).entry_place
            counted = f"{_a(kind['title']).capitalize()} has no `{key}`."
            yield self.finding("key-unknown", place, counted, path, wanted=wanted, change=change)

    # All else

    def finding(
        self,
        rule: str,
        place: Place,
        counted: str,
        path: Path,
        *,
        wanted: str = "",
        change: str = "",
        subject: str = "",
        edits: tuple[Edit, ...] = (),
    ) -> Finding:
        where = self.where(path)
        return Finding(
            rule,
            "error",
            place,
            counted,
            wanted=wanted,
            change=change,
            where=where,
            subject=subject,
            edits=edits,
        )

    def told(self, error: Violation) -> Iterator[Finding]:
        """The findings for one error of the library."""
        if error.keyword == "additionalProperties":
            yield from self.unknown(error)
        elif not error.keyword:
            yield self.at_odds(error)
        elif error.keyword in ("required", "dependentRequired"):
            yield self.missing(error)
        elif "propertyNames" in error.steps:
            yield self.key_name(error)
        else:
            spot = self.spot(error.path)
            if not spot.told:
                yield self.bad_value(error, spot)

    def missing(self, error: Violation) -> Finding:
        path = error.path
        keys = error.value
        kind = self.kinds.group(path, keys)
        spot = self.spot(path)
        first = next((key for key in (name_key(kind), *keys) if key in keys), None)
        place = spot.place if first is None else self.spot((*path, first)).entry_place
        if error.keyword == "dependentRequired":
            given, names = next((key, names) for key, names in error.wants.items() if key in keys)
            absent = [name for name in names if name not in keys]
            counted = f"`{given}` needs `{absent[0]}` beside it."
            place = self.spot((*path, given)).entry_place
        else:
            absent = _absent(error, self.kinds.route(error.steps, self.kinds.root) or [])
            neither = " nor ".join(f"`{name}`" for name in absent)
            counted = (
                f"This {kind['title']} has {f'no {neither}' if len(absent) == 1 else f'neither {neither}'}."
            )
        about = kind.get("properties", {}).get(absent[0], {})
        return self.finding(
            "key-missing",
            place,
            counted,
            path,
            wanted=f"`{absent[0]}`: {about.get('description', '')}",
            change=f"Add `{absent[0]}`{self.example((*path, absent[0]))}.",
            subject=absent[0],
        )

    def example(self, path: Path) -> str:
        """``, like `sets: 3```, where the schema has an example."""
        for part in self.kinds.at(path):
            if "examples" in part and part.get("type") != "object":
                return f", like `{path[-1]}: {part['examples'][0]}`"
        return ""

    def at_odds(self, error: Violation) -> Finding:
        """Keys that exclude each other; the library names the group they stand in, not the keys."""
        steps = self.kinds.route(error.steps, self.kinds.root) or []
        part = steps[-1][1]["properties"]
        group = self.value(error.path)
        keys = [key for key in group if part.get(key, True) is False]
        before = [step for step, _ in steps[:-1]]
        if before[-1] == "then":
            beside = f"beside `{steps[-2][1]['if']['required'][0]}`"
        elif "dependentSchemas" in before[-2:]:
            beside = f"beside `{before[-1]}`"
        else:
            beside = "on an exercise whose rounds give its sets"
        stand = f"{_listed([f'`{key}`' for key in keys])} {'stands' if len(keys) == 1 else 'stand'}"
        return self.finding(
            "keys-at-odds",
            self.spot((*error.path, keys[0])).entry_place,
            f"{stand} {beside}.",
            error.path,
            wanted="Only one of the two can hold.",
            change="Take one of them out.",
        )

    def key_name(self, error: Violation) -> Finding:
        """A key that should be a week, or a name, and is not."""
        path = error.path
        key = str(error.value)
        place = self.spot((*path, key)).entry_place
        if error.keyword == "minLength":
            return self.finding(
                "key-empty", place, "The name before the colon is empty.", path, change="Write it."
            )
        return self.unreadable(error, place, key, path, "weeks")

    def bad_value(self, error: Violation, spot: ValuePlace) -> Finding:
        path = error.path
        value = error.value
        if value is None or error.keyword in ("minLength", "minProperties") or value == []:
            like = self.example(path)
            return self.finding(
                "value-missing",
                spot.place,
                f"{_called(path)} is empty.",
                path,
                change=f"Write it{like}, or take it out.",
            )
        if error.keyword == "enum":
            return self.unknown_word(error, spot, path)
        if error.keyword == "pattern":
            return self.unreadable(error, spot.place, spot.words, path)
        if error.keyword in ("minimum", "maximum", "multipleOf"):
            return self.out_of_range(error, spot, path)
        if error.keyword == "minItems":
            return self.finding(
                "value-out-of-range",
                spot.place,
                f"`{last_key(path)}` holds {len(value)}; it takes at least {error.wants}.",
                path,
                change="Add what is missing, or write what is there as a line of its own.",
            )
        if isinstance(spot.node, Scalar) and "examples" in error.part:
            return self.unreadable(error, spot.place, spot.words, path)
        return self.wrong_kind(error, spot, path)

    def unknown_word(self, error: Violation, spot: ValuePlace, path: Path) -> Finding:
        known: list[str] = error.wants
        words = spot.words or "this"
        meant = nearest(words, known) if spot.words else None
        return self.finding(
            "value-unknown",
            spot.place,
            f"`{words}` is no {error.title}.",
            path,
            wanted=f"It is one of {_listed(known, 'or')}.",
            change=f"Write `{meant}`." if meant else "Write one of these.",
            edits=(Edit(spot.place, meant, f"Write {meant}"),) if meant else (),
        )

    def out_of_range(self, error: Violation, spot: ValuePlace, path: Path) -> Finding:
        limits = error.part
        step = "whole and half numbers" if "multipleOf" in limits else "numbers"
        return self.finding(
            "value-out-of-range",
            spot.place,
            f"{_called(path)} is {spot.words}.",
            path,
            wanted=f"It takes {step} from {limits['minimum']} to {limits['maximum']}.",
            change="Correct the number.",
        )

    def unreadable(self, error: Violation, place: Place, words: str, path: Path, key: str = "") -> Finding:
        """A value, or a key that names weeks, that does not read as the quantity it should be."""
        title = error.title

        def readable(text: str) -> bool:
            return bool(text) and self.reads(error.part, text, bool(key))

        change, meant = _reading(words, key or _subject(path), readable)
        likes = [str(example) for example in error.part.get("examples", ())][:4]
        return self.finding(
            "value-unreadable",
            place,
            f"`{words}` is no {title}.",
            path,
            wanted=f"Write it like {_listed(likes, 'or')}." if likes else "",
            change=change,
            edits=(Edit(place, meant, f"Write {meant}"),) if meant else (),
        )

    def reads(self, part: Schema, text: str, as_key: bool) -> bool:
        """Whether these words, written plain, would be read as this quantity; keys are always text."""
        try:
            value: Any = text if as_key else core_value(text)
        except OutOfRangeError:
            return False
        return self.validator(self.kinds.whole(part)).is_valid(value)

    def wrong_kind(self, error: Violation, spot: ValuePlace, path: Path) -> Finding:
        value, wanted = error.value, error.wants
        kinds = [wanted] if isinstance(wanted, str) else wanted
        words = spot.words
        change, edit = "", ""
        if "boolean" in kinds:
            edit = {"yes": "true", "on": "true", "no": "false", "off": "false"}.get(words.lower(), "")
            change = f"Write `{edit}`." if edit else "Write `true` or `false`."
        elif "string" in kinds and words:
            edit = f"'{words}'"
            change = f"Write {edit}, in quotes."
        elif "array" in kinds and isinstance(spot.node, Scalar) and self.reads_list(error.part, value):
            edit = f"[{spot.place.excerpt}]"
            change = f"Write `{edit}`."
        elif "array" in kinds:
            change = "Start each line below it with a dash."
        elif "object" in kinds and isinstance(spot.node, Scalar):
            name = name_key(error.part)
            change = (
                f"Write `{name}: {words}`, with what belongs to it below."
                if name
                else "Write it in lines below."
            )
        elif "object" in kinds:
            change = "Take the dashes out, or the list apart."
        else:
            change = "Write a single value."
        return self.finding(
            "value-wrong-kind",
            spot.place,
            f"{_called(path)} is {_kind(value)}.",
            path,
            wanted=f"It takes {_wanted(kinds, error.part)}.",
            change=change,
            edits=(Edit(spot.place, edit, f"Write {edit}"),) if edit else (),
        )

    def reads_list(self, part: Schema, value: Any) -> bool:
        return self.validator(self.kinds.whole(part)).is_valid([value])


def _reading(words: str, key: str, readable: Callable[[str], bool]) -> tuple[str, str]:
    """What to write instead, and the new words where there is no doubt."""
    pair = sets_and_reps(words)
    if pair is not None and key in ("sets", "reps"):
        return f"Write `sets: {pair[0]}` and `reps: {pair[1]}`, each on its own.", ""
    stated = effort(words)
    if stated is not None and stated[0] != key:
        return f"Effort stands on its own: write `{stated[0]}: {stated[1]}`.", ""
    for repaired in (words, *repairs(words, key)):
        if readable(repaired):
            return f"Write `{repaired}`.", repaired
        units = with_units(repaired, readable)
        if len(units) == 1:
            return f"Write `{units[0]}`.", units[0]
        if units:
            return f"Say the unit: {_listed([f'`{one}`' for one in units[:3]], 'or')}.", ""
    return "Correct it.", ""


def _absent(error: Violation, steps: list[tuple[Any, Schema]]) -> list[str]:
    """The missing key, and the ones that would have spared it, from the conditions it stands under."""
    # the library makes one error for each missing key; its message starts with the key
    key = next(name for name in error.wants if error.says.startswith(repr(name)))
    spared: list[str] = []
    for step, part in reversed(steps[:-1]):
        if step != "else" or "type" in part["if"]:
            break
        spared = part["if"]["required"] + spared
    return [key, *spared]


def _name(group: dict[str, Any]) -> str:
    """The name that a coach knows a group by, or nothing."""
    for key in ("session", "activity", "exercise", "name", "event", "area", "movement"):
        name = group.get(key)
        if isinstance(name, dict):
            name = next(iter(name.values()), None)
        if isinstance(name, str):
            return name
    return ""


def _subject(path: Path) -> str:
    """The last key of a path that does not name weeks."""
    return next((step for step in reversed(path) if isinstance(step, str) and not step[:1].isdigit()), "")


def _called(path: Path) -> str:
    """What stands at a path, as the start of a sentence."""
    if path and isinstance(path[-1], int):
        return f"Item {path[-1] + 1} under `{last_key(path)}`"
    return f"`{last_key(path)}`"


def _a(noun: str) -> str:
    return f"{'an' if noun[:1] in 'aeiou' else 'a'} {noun}"


def _listed(words: list[str], last: str = "and") -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} {last} {words[-1]}"


def _kind(value: Any) -> str:
    if isinstance(value, dict):
        return "a group of lines with names"
    if isinstance(value, list):
        return "a list"
    if isinstance(value, bool):
        return "true or false"
    return f"a number, {value}" if isinstance(value, (int, float)) else f"the text `{value}`"


def _wanted(kinds: list[str], part: Schema) -> str:
    if "array" in kinds:
        return "a list"
    if "object" in kinds:
        return f"{_a(part['title'])} with its own lines" if "title" in part else "lines with names"
    if "boolean" in kinds:
        return "true or false"
    return "text" if kinds == ["string"] and "examples" not in part else "one value"
