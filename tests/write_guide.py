"""Writes the coach's guide, lint/guide/pages.md, from the schema, the examples and the topics beside it.

    python tests/write_guide.py [--check]

Run it after a description in schema/programme.json, an example or a topic has changed. With --check it writes
nothing. Exit code 0 if the pages are as they are made, 1 if --check found something to write.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from spotline.lint.syntax.builder import parse

ROOT = Path(__file__).resolve().parent.parent
TOPICS = ROOT / "lint" / "guide" / "topics.yaml"
PAGES = ROOT / "lint" / "guide" / "pages.md"

MOST_LETTERS = 110
"""Letters of a line of an example that is shown."""

MOST_EXAMPLES = 4
"""Lines of the examples that a topic shows."""

HEAD = """\
# What to write for what one has on paper

How a programme file is written, topic by topic: for each kind of notation what to write, then what each key
means, then lines of the examples. `spotline guide TOPIC` shows the same in a terminal. A line stands in braces as
an item of `exercises`; keys without braces go to a line, a session or the head of the file, as the table says.
"""

WHERE = {"line": "a line", "session": "a session", "programme": "the head", "athlete": "the athlete's file"}


def schema(file: str = "programme") -> dict[str, Any]:
    read: dict[str, Any] = json.loads((ROOT / "schema" / f"{file}.json").read_text(encoding="utf-8"))
    return read


def topics() -> list[dict[str, Any]]:
    root = parse(TOPICS.name, TOPICS.read_text(encoding="utf-8")).root
    assert root is not None
    read: list[dict[str, Any]] = root.plain
    return read


def descriptions(kind: str, file: str) -> dict[str, str]:
    """What each key of a kind of the schema means."""
    whole = schema(file)
    properties = (whole["$defs"][kind] if kind else whole)["properties"]
    return {key: part.get("description", "") for key, part in properties.items() if part is not False}


def lines_of_examples() -> list[tuple[str, set[str]]]:
    """Items of one line in the sound examples, as written, each with its keys."""
    found = []
    for path in sorted((ROOT / "examples" / "programmes").glob("*.programme.yaml")):
        for line in path.read_text(encoding="utf-8").splitlines():
            words = line.strip().removeprefix("- ")
            if (
                not words.startswith("{")
                or not words.endswith("}")
                or len(words) > MOST_LETTERS
                or "*" in words
            ):
                continue
            reading = parse(path.name, words)
            if reading.root is not None and not reading.findings and isinstance(reading.root.plain, dict):
                found.append((words, set(reading.root.plain)))
    return found


def examples_of(keys: set[str], lines: list[tuple[str, set[str]]]) -> list[str]:
    """A few lines that hold these keys, each showing one that no line before it shows."""
    shown: list[str] = []
    left = set(keys)
    for words, held in sorted(lines, key=lambda one: (-len(one[1] & keys), len(one[0]), one[0])):
        if held & left and words not in shown:
            shown.append(words)
            left -= held
        if len(shown) == MOST_EXAMPLES:
            break
    return shown


def page(topic: dict[str, Any], lines: list[tuple[str, set[str]]]) -> str:
    """The page of one topic."""
    parts = [f"## {topic['topic']}", "", topic["about"], ""]
    parts += ["| on paper | write | in |", "|---|---|---|"]
    parts += [
        f"| {row['paper']} | `{row['write']}` | {WHERE[row.get('in', 'line')]} |" for row in topic["rows"]
    ]
    if "notes" in topic:
        parts += ["", "### Good to know", "", *(f"- {words}" for words in topic["notes"])]
    parts += ["", "### Keys", ""]
    told: dict[str, str] = {}
    for kind, keys in topic["keys"].items():
        for key in keys:
            told.setdefault(key, descriptions(kind, topic.get("file", "programme"))[key])
    parts += [f"- `{key}`: {words}" for key, words in told.items()]
    of_lines = "file" not in topic
    shown = of_lines and examples_of(set(told) - {"exercise", "sets", "reps", "note"} or set(told), lines)
    if shown:
        parts += ["", "### From the examples", "", "```yaml", *(f"- {line}" for line in shown), "```"]
    return "\n".join([*parts, ""])


def guide() -> str:
    """The whole guide."""
    lines = lines_of_examples()
    return "\n".join([HEAD, *(page(topic, lines) for topic in topics())])


def main(words: list[str]) -> int:
    made = guide()
    if PAGES.exists() and PAGES.read_text(encoding="utf-8") == made:
        return 0
    if "--check" in words:
        print(f"{PAGES.relative_to(ROOT)} is not as it is made: run python tests/write_guide.py")
        return 1
    PAGES.write_text(made, encoding="utf-8")
    print(f"{PAGES.relative_to(ROOT)} is written")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
