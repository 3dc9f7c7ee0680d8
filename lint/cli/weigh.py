"""What ``compare`` and ``tally`` do with their words."""

from __future__ import annotations

import sys

from ..reporters import CHANGES, TALLY, print_as
from ..wording.words import safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date


def compare(chosen: dict[str, str], paths: list[str], today: date) -> int:
    """Compares what is asked for and prints it; the exit code: 2 where a part of it could not be compared."""
    from ..project.git import GitError
    from ..weighing.sides import NothingToCompareError, compare_paths, compare_since

    try:
        if "--since" in chosen:
            result = compare_since(chosen["--since"], paths, today)
        else:
            result = compare_paths(paths[0], paths[1], today)
    except (GitError, NothingToCompareError) as fault:
        print(f"spotline: nothing was compared ({safe(str(fault))})", file=sys.stderr)
        return 2
    print_as(chosen.get("--as", "text"), CHANGES, result)
    return 2 if result.faults else 0


def show_tally(chosen: dict[str, str], week: int, paths: list[str], today: date) -> int:
    """Prints the tables that are asked for; the exit code: 2 where something could not be counted."""
    from ..weighing.tally import tally

    result = tally(paths, today, chosen.get("--by", ""), week)
    if result.tallied or chosen.get("--as") == "json":
        print_as(chosen.get("--as", "table"), TALLY, result)
    for fault in result.faults:
        print(f"spotline: {safe(fault)}", file=sys.stderr)
    return 2 if result.faults else 0


def report(paths: list[str], today: date) -> None:
    """Says in five lines at most what files change against the last commit, or why that cannot be said."""
    from ..project.git import GitError
    from ..reporters.changes_text import in_few_lines
    from ..weighing.sides import NothingToCompareError, compare_since

    try:
        result = compare_since("HEAD", paths, today)
    except (GitError, NothingToCompareError) as fault:
        print(f"spotline: no report on what changed ({safe(str(fault))})", file=sys.stderr)
        return
    print("\n".join(in_few_lines(result)))
