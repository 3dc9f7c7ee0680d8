"""Findings for values of another shape: keys or a list where one value is meant, and the other way round."""

from __future__ import annotations

from functools import partial

from ..findings.finding import Edit
from ..syntax.rewrites import key_out
from ..syntax.tree import Mapping, Scalar, Sequence
from ..wording.words import listed
from .doses import told_apart
from .lookup import name_key
from .spellings import plain_spelling
from .violation import last_key

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..findings.finding import Finding
    from .corrected_data import CorrectedData, NodeAtPath
    from .lookup import SchemaLookup
    from .violation import DataPath, Schema, Violation

    Change = tuple[str, tuple[str, ...]]
    """What to write, in a sentence; and the new words, of which one is meant."""

NOTHING = frozenset({"none", "nothing", "nil", "no", "n/a", "-", "keine", "ninguno", "nessuno"})
"""Words for nothing at all, which a key that is left out says as well."""

_BOOLEANS = {"yes": "true", "on": "true", "no": "false", "off": "false"}


class ShapeExplainer:
    """Makes the findings for the shapes of the values of one file."""

    def __init__(self, data: CorrectedData, schema: SchemaLookup) -> None:
        self.data = data
        self.schema = schema

    def wrong(self, violation: Violation, at: NodeAtPath) -> Finding:
        """A value of another shape than its key takes."""
        wants = ["word"] if violation.keyword == "enum" else violation.wants
        types = [wants] if isinstance(wants, str) else wants
        if isinstance(at.node, Scalar):
            change, new = self._for_one(violation, types, at)
        elif "array" in types or "object" in types:
            change, new = self._for_several(violation, types, at)
        else:
            change, new = self._to_one(violation, at)
        taken = _taken(types, violation.part)
        return self.data.finding(
            "value-wrong-kind",
            violation.path,
            at.place,
            f"{called(violation.path)} {_described(violation.value)}; it takes {taken}.",
            change=change,
            edits=tuple(Edit(at.place, one, f"Write {one}") for one in new)
            or partial(self._without, violation.path, at),
        )

    # One value, where keys or a list stand

    def _to_one(self, violation: Violation, at: NodeAtPath) -> Change:
        """Several values where a key takes one."""
        value, path = violation.value, violation.path
        one = value[0] if isinstance(value, list) and len(value) == 1 else None
        if isinstance(one, (str, int, float)) and self.schema.accepts(violation.part, one):
            return f"Write `{one}`.", (str(one),)
        says_when = last_key(path) in ("weeks", "in weeks", "not in weeks")
        if is_by_week(value) and not says_when and (apart := self._by_week(path)):
            return apart, ()
        if violation.keyword == "enum":
            words = violation.wants
            return f"Write {listed([f'`{one}`' for one in words], 'or')}.", tuple(words)
        if isinstance(value, dict) and "exercise" in value:
            name = value["exercise"]
            rest = "the note of the line takes the rest" if len(value) > 1 else "without braces"
            return f"Write the name alone, `{name}`; {rest}.", ()
        if isinstance(value, list) and all(isinstance(one, str) for one in value) and value:
            joined = ", ".join(value)
            if self.schema.accepts(violation.part, joined):
                quoted = "'" + joined.replace("'", "''") + "'"
                return f"Write {quoted}, in quotes.", (quoted,)
        like = examples_of(violation.part)
        return (f"Write it like {listed(like, 'or')}." if like else "Write it in words, as one value."), ()

    def _by_week(self, path: DataPath) -> str:
        """How to say by week what a key says once: lines apart, or blocks."""
        key = last_key(path)
        if "exercises" in path and any(
            "in weeks" in one["properties"] for one in self.schema.kinds(path[:-1])
        ):
            return f"Write the line once for each `{key}`, with `in weeks` on each."
        block = self.schema.root.get("$defs", {}).get("block", {})
        if len(path) == 1 and key in block.get("properties", ()):
            return f"Write `blocks`, each with its `weeks` and its `{key}`."
        return ""

    # A single value, where several belong

    def _for_one(self, violation: Violation, types: list[str], at: NodeAtPath) -> Change:
        """A single value of another kind."""
        words, part = at.words, violation.part
        if "boolean" in types:
            new = _BOOLEANS.get(words.lower(), "")
            return (f"Write `{new}`.", (new,)) if new else ("Write `true` or `false`.", ("true", "false"))
        if "string" in types and words:
            return f"Write '{words}', in quotes.", (f"'{words}'",)
        if words.lower() in NOTHING and not self._is_item(violation.path):
            return f"Where there is nothing to say, take `{last_key(violation.path)}` out.", ()
        if "array" in types:
            if self.schema.accepts(part, [violation.value]):
                return f"Write `[{at.place.excerpt}]`.", (f"[{at.place.excerpt}]",)
            return self._as_list(part), ()
        if "object" in types:
            return self._as_keys(part, words)
        like = examples_of(part)
        return (f"Write it like {listed(like, 'or')}." if like else "Write it as one value."), ()

    def _as_list(self, part: Schema) -> str:
        """How a list is written: what it holds."""
        items = self.schema.items_of(part)
        like = examples_of(items)
        if like:
            return f"Write a list in brackets, of values like {listed(like, 'or')}."
        keys = items.get("required", ())
        if keys:
            return f"Write a list, each item with {listed([f'`{one}`' for one in keys])}."
        return "Write a list: start each line below it with a dash."

    def _as_keys(self, part: Schema, words: str) -> Change:
        """How a group of keys is written that stands as one value."""
        name = name_key(part)
        if name == "exercise" and (lines := _as_line(words)):
            return f"Write {', or '.join(f'`{one}`' for one in lines)}.", lines
        if "movement" in part.get("properties", ()):
            new = f"movement: {words}, advised by: physiotherapist"
            return f"Write who advised it: `{{{new}}}`.", ()
        required = list(part.get("required", ()))
        fits = [one for one in required if self.schema.accepts(part["properties"][one], words)]
        if not fits:
            known = [f"`{one}`" for one in part.get("properties", ())][:6]
            return (
                f"Write it in lines with names, such as {listed(known, 'or')}." if known else _named(part)
            ), ()
        others = [f"`{one}`" for one in required if one != fits[0]]
        beside = f"with {listed(others)} beside it" if others else "with what belongs to it below"
        return f"Write `{fits[0]}: {words}`, {beside}.", ()

    # A list where keys belong, or keys where a list does

    def _for_several(self, violation: Violation, types: list[str], at: NodeAtPath) -> Change:
        node, is_flow = at.node, at.place.excerpt[:1] in ("{", "[")
        if "array" in types and isinstance(node, Mapping):
            if self.schema.accepts(violation.part, [violation.value]):
                return "Put brackets around it." if is_flow else "Start it with a dash.", ()
            return (
                "Start each line below it with a dash." if not is_flow else self._as_list(violation.part)
            ), ()
        if isinstance(node, Sequence) and not is_flow:
            return "Take the dashes out, or the list apart.", ()
        return _named(violation.part), ()

    @staticmethod
    def _is_item(path: DataPath) -> bool:
        return bool(path) and isinstance(path[-1], int)

    def _without(self, path: DataPath, at: NodeAtPath) -> Iterator[Edit]:
        """The key taken out, where its value says that there is nothing."""
        group = None if self._is_item(path) else self.data.node(path[:-1]).node
        if at.words.lower() in NOTHING and isinstance(group, Mapping) and group.defined is None:
            yield from key_out(group, self.data.as_written(path[:-1], str(path[-1])))


def is_by_week(value: Any) -> bool:
    """Whether keys are weeks, as values by week have them."""
    keys = list(value) if isinstance(value, dict) else []
    return bool(keys) and all(one in ("other", "again") or plain_spelling("weekNumbers", one) for one in keys)


def examples_of(part: Schema, most: int = 4) -> list[str]:
    """The examples of a part of the schema, as they are written."""
    return [f"`{_in_braces(one)}`" for one in part.get("examples", ())][:most]


def _in_braces(value: Any) -> str:
    if not isinstance(value, dict):
        return str(value)
    return "{" + ", ".join(f"{key}: {_in_braces(one)}" for key, one in value.items()) + "}"


def called(path: DataPath) -> str:
    """What stands at a path, as the start of a sentence."""
    if path and isinstance(path[-1], int):
        return f"Item {path[-1] + 1} under `{last_key(path)}`"
    return f"`{last_key(path)}`"


def _as_line(words: str) -> tuple[str, ...]:
    """A line that is written as on paper, with its keys: one for each way in which it can be read."""
    lift, several = told_apart(words)
    return tuple(
        "{" + ", ".join([f"exercise: {lift}", *(f"{key}: {value}" for key, value in keys.items())]) + "}"
        for keys in several
    )


def _named(part: Schema) -> str:
    """How keys are written whose names are the coach's own."""
    example = next(iter(examples_of(part, 1)), "")
    return f"Write it like {example}." if example else "Write it in lines with names, each with a colon."


def _described(value: Any) -> str:
    """What a value is, behind its name: ``is a list``, ``is a number, 3``, ``goes by week here``."""
    if is_by_week(value):
        return "goes by week here"
    if isinstance(value, dict):
        return "is a group of lines with names"
    if isinstance(value, list):
        return "is a list"
    if isinstance(value, bool):
        return "is true or false"
    return f"is a number, {value}" if isinstance(value, (int, float)) else f"is the text `{value}`"


def _taken(types: list[str], part: Schema) -> str:
    """The types that a part of the schema takes, in words: ``a list``, ``true or false``."""
    for kind, words in _SHAPES.items():
        if kind in types:
            return words
    return "text" if types == ["string"] and "examples" not in part else "one value"


_SHAPES = {
    "array": "a list",
    "object": "lines with names",
    "boolean": "true or false",
    "word": "one word",
}
