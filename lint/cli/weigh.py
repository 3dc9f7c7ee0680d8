"""What ``compare`` and ``tally`` do with their words."""

from __future__ import annotations

import sys

from ..reporters import CHANGES, print_as

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..weighing.comparison import Comparison


def compare(chosen: dict[str, str], paths: list[str], today: date) -> int:
    """Compares what is asked for and prints it; the exit code: 2 where a part of it could not be compared."""
    from ..weighing.revision import RevisionError
    from ..weighing.sides import NothingToCompareError, compare_paths, compare_since

    try:
        if "--since" in chosen:
            result = compare_since(chosen["--since"], paths, today)
        else:
            result = compare_paths(paths[0], paths[1], today)
    except (RevisionError, NothingToCompareError) as fault:
        print(f"spotline: nothing was compared ({fault})", file=sys.stderr)
        return 2
    print_as(chosen.get("--as", "text"), CHANGES, result)
    return 2 if result.faults else 0
