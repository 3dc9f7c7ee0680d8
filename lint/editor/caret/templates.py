"""Templates of what is often written: programmes, blocks, sessions, lines. Their stops are filled in in turn.

What the line above holds is what the next one begins with, in the same style; without one, usual numbers
stand in (common practice, no source). Every value is a stop, to be typed over.
"""

from __future__ import annotations

import re
from functools import lru_cache

from ...model.sessions import WEEKDAYS
from ...syntax.builder import parse
from ...syntax.tree import Mapping
from .applicable_schema import ApplicableSchema
from .catalogue_candidates import exercises
from .yaml_words import as_yaml

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from .candidates import CandidateScope
    from .context import KeyPath

    Pairs = tuple[tuple[str, str], ...]
    """Keys of a line with their values."""

USUAL: Pairs = (("sets", "3"), ("reps", "8"), ("rir", "2"), ("rest", "2 min"))
"""What a line begins with where none stands above it (common practice, no source)."""

OF_ONE_LIFT = frozenset({"exercise", "or", "swap", "note"})
"""Keys whose values are not those of the next exercise; nor is a load in kilograms."""

OF_THE_ROUND = frozenset({"sets", "work", "rest"})
"""Keys that lines in rounds do not carry."""

LISTS = ("blocks", "sessions", "exercises", "superset")
"""Keys of lists whose items have templates."""

NAME = "\0"
"""Stands in for the name of an exercise in a line that is written for many of them."""

SEARCHED_LINES = 200
"""Lines above the caret in which a line is looked for."""


class Stop:
    """A place to fill in: what stands there at first, and what may be chosen instead."""

    __slots__ = ("choices", "words")

    def __init__(self, words: str, choices: Iterable[str] = ()) -> None:
        self.words = words
        self.choices = tuple(choices)


class Template:
    """A text with stops. ``label`` and ``detail`` are shown in the list; ``typed`` is what finds it.

    Further lines are indented from the first one's blanks on. ``takes_line`` says that the text comes in
    place of the whole line up to the caret, its blanks included.
    """

    __slots__ = ("detail", "is_exercise", "label", "plain", "snippet", "takes_line", "typed")

    def __init__(
        self,
        label: str,
        detail: str,
        written: Written,
        typed: str,
        *,
        is_exercise: bool = False,
        takes_line: bool = False,
    ) -> None:
        self.label = label
        self.detail = detail
        self.plain = written.plain
        self.snippet = written.snippet
        self.typed = typed
        self.is_exercise = is_exercise
        self.takes_line = takes_line


class Written:
    """A text with stops: as ``plain`` text with what stands there at first, and as a ``snippet``.

    The caret ends at the empty stop, else behind the text.
    """

    __slots__ = ("plain", "snippet")

    def __init__(self, parts: Iterable[str | Stop]) -> None:
        plain, snippet, number, end = [], [], 0, "$0"
        for part in parts:
            plain.append(part if isinstance(part, str) else part.words)
            if isinstance(part, str):
                snippet.append(_literal(part))
            elif not part.words:
                snippet.append("$0")
                end = ""
            else:
                number += 1
                snippet.append(_as_stop(number, part))
        self.plain = "".join(plain)
        self.snippet = "".join([*snippet, end])

    def with_name(self, name: str) -> Written:
        """The same text with a name where ``NAME`` stands."""
        written = Written(())
        written.plain = self.plain.replace(NAME, name)
        written.snippet = self.snippet.replace(NAME, _literal(name))
        return written


def _literal(words: str) -> str:
    return re.sub(r"[\\$}]", r"\\\g<0>", words)


def _as_stop(number: int, stop: Stop) -> str:
    if stop.choices:
        choices = ",".join(re.sub(r"[\\,|]", r"\\\g<0>", one) for one in stop.choices)
        return f"${{{number}|{choices}|}}"
    return f"${{{number}:{_literal(stop.words)}}}"


def templates(scope: CandidateScope) -> Iterator[Template]:
    """The templates that may be written at the caret of a programme."""
    context, path = scope.context, scope.key_path
    if scope.snapshot.review.kind != "programme" or context.in_flow or context.quote or context.has_colon:
        return
    if not path:
        if context.takes_key and not context.sibling_keys[-1]:
            yield Template(
                "new programme", "programme with a first session", Written(_programme()), "programme"
            )
        return
    begins_list = path[-1] in LISTS and context.takes_key and context.takes_value
    if begins_list:
        path = (*path, 0)
    if not isinstance(path[-1], int) or context.sibling_keys[-1]:
        return
    dash = "- " if begins_list or context.item_path is not None else ""
    above = _lines_above(scope)
    list_key = next((step for step in reversed(path) if isinstance(step, str)), "")
    if list_key == "blocks":
        yield Template("new block", "block with a first session", Written([dash, *_block(above)]), "block")
    elif list_key == "sessions":
        yield Template(
            "new session", "session with its day", Written([dash, *_session(above, "  ")]), "session"
        )
    elif list_key in ("exercises", "superset"):
        yield from _of_exercises(scope, path, dash, above)


def _of_exercises(scope: CandidateScope, path: KeyPath, dash: str, above: list[str]) -> Iterator[Template]:
    """Lines of a session, of a superset or of a circuit, by the exercise's name."""
    is_in_round = "circuit" in path or ("superset" in path and "rounds" in _keys_beside(scope, path))
    frame = Written([dash, *_Neighbour.above(above).line(NAME, is_in_round)])
    for one in exercises(scope):
        written = frame.with_name(one.written or _plain_name(one.name))
        yield Template(one.name, one.detail, written, one.filter_text, is_exercise=True)
    if path[-2] == "exercises" and "circuit" not in path:
        pair = [_Neighbour.above(above, flow=True).line(Stop(f"exercise {one}"), False) for one in "AB"]
        both = [part for line in pair for part in ("\n    - ", *line)]
        yield Template("new superset", "exercises in turn", Written([dash, "superset:", *both]), "superset")
        line = _Neighbour.above(above, flow=True).line(Stop("exercise"), True)
        rounds = ["circuit:\n    rounds: ", Stop("3"), "\n    exercises:\n      - ", *line]
        yield Template("new circuit", "rounds of exercises", Written([dash, *rounds]), "circuit")
        indent = _indent_of_session(above)
        if indent is not None and not dash:
            session = [f"{indent}- ", *_session(above, f"{indent}  ")]
            yield Template("new session", "the next session", Written(session), "- session", takes_line=True)


@lru_cache(maxsize=4000)
def _plain_name(name: str) -> str:
    return as_yaml(name, "", in_flow=True)


def _keys_beside(scope: CandidateScope, path: KeyPath) -> frozenset[str]:
    at = len(path) - 1 - path[::-1].index("superset")
    siblings = scope.context.sibling_keys
    return siblings[at] if at < len(siblings) else frozenset()


# The parts of a programme


def _programme() -> list[str | Stop]:
    none: frozenset[str] = frozenset()
    goals = [str(one.data) for one in ApplicableSchema("programme", ("goal",), (none, none)).values()]
    head: list[str | Stop] = [
        "programme: ",
        Stop("Name"),
        "\ngoal: ",
        Stop(goals[0], goals),
        "\nweeks: ",
        Stop("4"),
    ]
    return [*head, "\nsessions:\n  - ", *_session([], "    ")]


def _block(above: list[str]) -> list[str | Stop]:
    head: list[str | Stop] = ["name: ", Stop("Name"), "\n  weeks: ", Stop("4"), "\n  sessions:\n    - "]
    return [*head, *_session(above, "      ")]


def _session(above: list[str], indent: str) -> list[str | Stop]:
    days = _days_from(above)
    head: list[str | Stop] = ["session: ", Stop("Name"), f"\n{indent}day: ", Stop(days[0], days)]
    return [*head, f"\n{indent}exercises:\n{indent}  - ", Stop("")]


_DAY = re.compile(r"\s*(?:- )?day:\s*(\w+)")
_SESSION = re.compile(r"(\s*)- (?:session|activity):")


def _days_from(above: list[str]) -> tuple[str, ...]:
    """The weekdays, from the second day after the last one written above on."""
    written = (found[1].lower() for line in above if (found := _DAY.match(line)))
    last = next((day for day in written if day in WEEKDAYS), None)
    days = tuple(WEEKDAYS)
    at = 0 if last is None else (days.index(last) + 2) % len(days)
    return days[at:] + days[:at]


def _indent_of_session(above: list[str]) -> str | None:
    """The blanks before the dash of the session above; None where it has no such dash."""
    return next((found[1] for line in above if (found := _SESSION.match(line))), None)


def _lines_above(scope: CandidateScope) -> list[str]:
    """The lines above the caret's, the nearest first."""
    content = scope.snapshot.text.content[: scope.context.start]
    return [line.rstrip("\r") for line in reversed(content.split("\n")[:-1][-SEARCHED_LINES:])]


# A line like the one above


class _Neighbour:
    """The keys and values of the line above, and whether they stand in braces."""

    __slots__ = ("in_braces", "pairs")

    def __init__(self, pairs: Pairs, in_braces: bool) -> None:
        self.pairs = pairs
        self.in_braces = in_braces

    @classmethod
    def above(cls, above: list[str], *, flow: bool = False) -> _Neighbour:
        """The nearest line with an exercise; the usual numbers where there is none."""
        for at, line in enumerate(above):
            found = re.match(r"(\s*- )(?:&\S+ )?(\{)?exercise:", line)
            if found is None:
                continue
            rows = [line[len(found[1]) :]]
            if not found[2]:
                rows += [row[len(found[1]) :] for row in _deeper_below(above[:at], len(found[1]))]
            pairs = tuple(_pairs("\n".join(rows)))
            if pairs:
                return cls(pairs, flow or bool(found[2]))
        return cls(USUAL, True)

    def line(self, name: str | Stop, is_in_round: bool) -> list[str | Stop]:
        """A line with an exercise and stops for the values."""
        left_out = OF_ONE_LIFT | OF_THE_ROUND if is_in_round else OF_ONE_LIFT
        pairs = [
            (key, Stop(value))
            for key, value in self.pairs
            if key not in left_out and (key != "load" or "%" in value)
        ]
        between, start, end = (", ", "{", "}") if self.in_braces else ("\n  ", "", "")
        written: list[str | Stop] = [f"{start}exercise: ", name]
        for key, stop in pairs:
            written += [f"{between}{key}: ", stop]
        return [*written, *([end] if end else [])]


def _deeper_below(nearer: list[str], column: int) -> Iterator[str]:
    """The lines below one, from it on, that belong to its group: those indented as far as its keys."""
    for row in reversed(nearer):
        if row.strip() and len(row) - len(row.lstrip()) < column:
            return
        yield row


def _pairs(item: str) -> Iterator[tuple[str, str]]:
    """The keys of a line with their values as written; those on several lines are left out."""
    root = parse("", item).root
    for key, entry in root.entries.items() if isinstance(root, Mapping) else ():
        words = item[entry.value.start : entry.value.end]
        if words and not entry.merged and entry.value.defined is None and "\n" not in words:
            yield key, words
