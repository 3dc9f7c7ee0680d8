"""What mending has done, or would do: the mends of each file, or the lines that it loses and gains."""

from __future__ import annotations

import sys

from ..findings.finding import SEVERITIES
from ..mending.edits import with_a_choice
from ..mending.run import difference
from ..wording.words import counted_noun, safe, safe_name, shortened
from .sentences import closing, sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Finding
    from ..mending.edits import Mend
    from ..mending.rounds import MendedFile, Rounds
    from ..text.safe_writer import NotWrittenError


def report_written(files: Iterable[MendedFile], rounds: Rounds, refused: list[NotWrittenError]) -> None:
    """Prints each mend that is in a file now, what was not written, and what is left."""
    for one in files:
        print(f"{safe_name(one.file.name)}: {counted_noun(len(one.mends), 'place')} mended")
        for mend in one.mends:
            print(f"  line {mend.edit.place.line}: {_in_words(mend)}")
    _report_left(rounds, refused)


def report_difference(rounds: Rounds) -> None:
    """Prints what would be mended, as a unified difference, and what would be left."""
    for one in rounds.files.values():
        for line in difference(one).splitlines():
            print(safe(line))
    _report_left(rounds, [])


def report_choices(rounds: Rounds) -> None:
    """Prints each finding that leaves a choice, with the edits to choose from."""
    for line in choices(rounds):
        print(line)


def choices(rounds: Rounds) -> Iterator[str]:
    """The findings that leave a choice, a line each, with the edits below."""
    for file, finding in findings_to_choose(rounds):
        yield f"{safe_name(file)}:{finding.place.line}:{finding.place.column}: {sentence(finding)}"
        for number, edit in enumerate(finding.edits, start=1):
            yield f"  {number}  {safe(edit.label)}"


def findings_to_choose(rounds: Rounds) -> Iterator[tuple[str, Finding]]:
    """The findings that leave a choice, each with the name of its file; the most serious of each first."""
    for one in rounds.review.files:
        found = with_a_choice(one.findings)
        for finding in sorted(found, key=lambda each: -SEVERITIES.index(each.severity)):
            yield one.name, finding


def _report_left(rounds: Rounds, refused: list[NotWrittenError]) -> None:
    for mend in rounds.refused.values():
        place = mend.edit.place
        words = f"not mended, as the file would be no better for it: {_in_words(mend)}"
        print(f"{safe_name(place.text.name)}:{place.line}: {words}", file=sys.stderr)
    for fault in refused:
        print(f"spotline: {safe(str(fault))}", file=sys.stderr)
    for name, finding in _unread(rounds):
        place = finding.place
        print(f"{safe_name(name)}:{place.line}:{place.column}: {sentence(finding)}", file=sys.stderr)
    open_still = sum(1 for _ in findings_to_choose(rounds))
    if open_still:
        leave = "leaves" if open_still == 1 else "leave"
        print(f"{counted_noun(open_still, 'finding')} {leave} a choice: spotline mend --ask", file=sys.stderr)
    print(closing(rounds.review), file=sys.stderr)


def _unread(rounds: Rounds) -> Iterator[tuple[str, Finding]]:
    """The first error of each file that could not be read or used, so that little in it can be mended."""
    for one in rounds.review.files:
        first = next((found for found in one.findings if found.severity == "error"), None)
        if first is not None and not one.is_judged:
            yield one.name, first


def _in_words(mend: Mend) -> str:
    """``rets -> rest``; what the edit says of itself where it only adds or takes away, or for several."""
    was, now = mend.replaced.strip(), mend.edit.words.strip()
    is_plain = was and now and not mend.edit.further
    return safe(f"{shortened(was)} -> {shortened(now)}" if is_plain else mend.edit.label)
