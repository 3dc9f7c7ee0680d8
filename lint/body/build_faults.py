"""What is wrong with the data of the body, by file and line."""

from __future__ import annotations

import json
import os

from jsonschema import Draft202012Validator

from .build_data import SCHEMAS, TABLES
from .build_elsewhere import elsewhere_faults
from .build_names import ALONE, SPELLING, listed_words, spellings_of
from .build_rows import anatomy_from
from .exercise_fields import faults as entry_faults
from .exercise_fields import profile_of
from .name_tokens import key_of, tokens_of
from .names import fold
from .nearest import nearest

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from jsonschema.exceptions import ValidationError

    from .anatomy import Anatomy
    from .build_data import Data, DataEntry


def faults(data: Data) -> list[str]:
    """Everything wrong with the data: first what the schemas say, then the tables, then the exercises, each
    looked at only if what it rests on is sound.
    """
    found = [fault for name in (*TABLES, "exercises") for fault in _schema_faults(name, data[name])]
    if found:
        return found
    known = _KnownNames(data)
    for check in (_table_faults, _source_faults, _area_faults, _word_faults):
        found += check(data, known)
    if found:
        return found
    anatomy = anatomy_from(data)
    for entry in data["exercises"]:
        found += _exercise_faults(entry, anatomy, known)
    return [*found, *_alias_faults(data["exercises"]), *elsewhere_faults(data)]


class _KnownNames:
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
        fields = _schema("exercises")["items"]["properties"]
        self.stands_for = {
            "implement": set(fields["implement"]["enum"]),
            "held": set(fields["implement"]["enum"]),
            "position": set(fields["stance"]["enum"]),
            "grip": set(fields["grip"]["enum"]),
        }


def _schema(name: str) -> dict[str, Any]:
    with open(os.path.join(SCHEMAS, f"body-{name}.json"), encoding="utf-8") as file:
        schema: dict[str, Any] = json.load(file)
    return schema


def _schema_faults(name: str, table: list[DataEntry]) -> Iterator[str]:
    """All that the schema says against the entries of a table, by line: each key missing or wrong."""
    schema = _schema(name)
    validator = Draft202012Validator({**schema["items"], "$defs": schema.get("$defs", {})})
    for entry in table:
        told = [said for error in validator.iter_errors(dict(entry)) for said in _told(error)]
        said = [(entry.line_of(*path), words) for path, words in told]
        said += [(line, f"{key} stands here a second time: take it out") for key, line in entry.twice]
        for line, words in sorted(set(said)):
            yield f"{entry.file}:{line}: {entry.label}: {words}"


def _told(error: ValidationError) -> Iterator[tuple[tuple[str | int, ...], str]]:
    """The keys at fault: where each stands, or would stand, and what is wrong with it."""
    path = tuple(error.absolute_path)
    held: Any = error.instance
    wants: Any = error.validator_value
    if error.validator == "required":
        slips = _slips(error).values()
        for key in wants:
            if key not in held and key not in slips:
                yield path, f"{key} is missing: add it"
    elif error.validator == "additionalProperties":
        for key, meant in _slips(error).items():
            yield (*path, key), f"{key} is no key here: {f'write {meant}' if meant else 'take it out'}"
    elif error.validator == "anyOf":
        yield path, f"{' or '.join(one['required'][0] for one in wants)} is missing: add one"
    else:
        keys = [step for step in path if isinstance(step, str)]
        yield path, ": ".join([*keys[-1:], error.message])


def _slips(error: ValidationError) -> dict[str, str]:
    """Each key that does not belong where the schema is broken, with the absent one nearest to it, or ""."""
    held: Any = error.instance
    schema: Any = error.schema
    known = schema.get("properties", held)
    absent = [(key, key) for key in known if key not in held]
    return {key: "".join(nearest(key, absent, 1)) for key in held if key not in known}


def _table_faults(data: Data, known: _KnownNames) -> Iterator[str]:
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


def _twice(table: list[DataEntry], key: str) -> Iterator[str]:
    seen: dict[str, DataEntry] = {}
    for entry in table:
        first = seen.setdefault(entry[key], entry)
        if first is not entry:
            yield entry.fault(f"{entry[key]} stands already at {first.file}:{first.line}", key)


def _source_faults(data: Data, known: _KnownNames) -> Iterator[str]:
    for table in data.values():
        for entry in table:
            for path, ids in _cited(entry):
                for index, id in enumerate(ids):
                    if id not in known.sources:
                        yield entry.fault(f"there is no source {id}", *path, "sources", index)
    for entry in data["mechanics"]:
        if entry["source"] not in known.sources:
            yield entry.fault(f"there is no source {entry['source']}", "source")


def _cited(entry: DataEntry) -> Iterator[tuple[tuple[str | int, ...], list[str]]]:
    """The sources of an entry, and of the lines on what a muscle does: the keys that lead there, the ids."""
    yield (), entry.get("sources", [])
    for action, lines in entry.get("acts", {}).items():
        for index, line in enumerate(lines if isinstance(lines, list) else [lines]):
            if isinstance(line, dict):
                where = ("acts", action, index) if isinstance(lines, list) else ("acts", action)
                yield where, line.get("sources", [])


def _area_faults(data: Data, known: _KnownNames) -> Iterator[str]:
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


def _word_faults(data: Data, known: _KnownNames) -> Iterator[str]:
    """Words of names that are several words, stand twice, or stand for something that no exercise has."""
    spellings = spellings_of(data)
    taken: dict[str, tuple[str, str]] = {}
    for entry in data["name-words"]:
        kind = entry["kind"]
        for word, meant in listed_words(entry):
            spells = kind == SPELLING
            compared = key_of(word) if spells else " ".join(t.word for t in tokens_of(word, spellings))
            table = kind if kind in (SPELLING, ALONE) else "words"
            first = taken.setdefault(f"{table} {compared}", (kind, meant))
            if table == "words" and " " in compared:
                yield entry.fault(f"{word} is several words: join them by hyphens", "words")
            elif first != (kind, meant) and (spells or first[0] != kind or not meant):
                yield entry.fault(f"{word} stands already under {first[1] or first[0]}", "words")
            elif meant and meant not in known.stands_for.get(kind, {meant}):
                yield entry.fault(f"no exercise has the {kind} {meant}", "words", meant)


def _exercise_faults(entry: DataEntry, anatomy: Anatomy, known: _KnownNames) -> Iterator[str]:
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


def _alias_faults(table: list[DataEntry]) -> Iterator[str]:
    taken: dict[str, DataEntry] = {}
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
