"""The review as workflow commands, a line each, which a hosted runner shows as annotations beside the lines.

``::warning file=F,line=1,endLine=1,col=3,endColumn=9,title=RULE::MESSAGE``. Words of a file can neither end
a command nor begin another: per cent signs, line ends and, before the message, colons and commas are escaped.
"""

from __future__ import annotations

import sys

from ..wording.words import safe
from .identities import RootPaths
from .sentences import closing, sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Finding
    from ..project.results import FileReview, Review, Verdict
    from ..text.places import Place

COMMANDS = {"error": "error", "warning": "warning", "note": "notice"}
"""What the runner calls each severity."""


def report(parts: Iterable[list[str]], verdict: Verdict) -> None:
    """Prints the commands, and the closing line where it is not taken for one."""
    for part in parts:
        for line in part:
            print(line)
    sys.stdout.flush()
    print(closing(verdict), file=sys.stderr)


def part(one: FileReview, look: tuple[object, ...] = ()) -> list[str]:
    """Every finding of a file, then every rule that raised, a line each."""
    paths = RootPaths(one.file)
    lines = [_annotation(finding, paths.of(finding.place.text.name)) for finding in one.findings]
    for fault in one.faults:
        said = {"file": paths.of(one.name), "line": "1", "title": "rule-failed"}
        lines.append(_command("error", said, f"{fault.rule} failed: {fault.words}"))
    return lines


def commands(review: Review) -> Iterator[str]:
    """The commands of all files."""
    for one in review.files:
        yield from part(one)


def _annotation(finding: Finding, path: str) -> str:
    said = {"file": path, **_lines(finding.place), "title": finding.rule}
    return _command(COMMANDS[finding.severity], said, sentence(finding))


def _lines(place: Place) -> dict[str, str]:
    """First and last line; where they are one, the columns of the first and the last character, too."""
    line, column = place.finish
    lines = {"line": str(place.line), "endLine": str(line)}
    if line != place.line:
        return lines
    last = max(column - 1, place.column)
    return {**lines, "col": str(place.column), "endColumn": str(last)}


def _command(name: str, properties: dict[str, str], message: str) -> str:
    said = ",".join(f"{key}={_property(value)}" for key, value in properties.items())
    return f"::{name} {said}::{_message(message)}"


def _message(words: str) -> str:
    return safe(words).replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _property(words: str) -> str:
    return _message(words).replace(":", "%3A").replace(",", "%2C")
