"""How a name is written, so that YAML reads the same name back."""

from __future__ import annotations

import re

from ...syntax.scalars import OutOfRangeError, core_value, taken_elsewhere

_PLAIN = re.compile(r"(?![-?:](?:\s|$)|[\s,\[\]{}#&*!|>'\"%@`=])(?:(?!:(?:\s|$)|\s#)[^\r\n])+(?<!\s)")


def as_yaml(name: str, quote: str, in_flow: bool) -> str:
    """A name as YAML reads it back: inside the quotes that are there, plain, or in quotes of its own."""
    if quote == "'":
        return name.replace("'", "''")
    if quote == '"':
        return name.replace("\\", "\\\\").replace('"', '\\"')
    if _PLAIN.fullmatch(name) and not (in_flow and re.search(r"[,\[\]{}]", name)):
        try:
            if isinstance(core_value(name), str) and not taken_elsewhere(name):
                return name
        except OutOfRangeError:
            pass
    return f"'{name.replace(chr(39), chr(39) * 2)}'"
