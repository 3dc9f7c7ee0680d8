"""A comparison as JSON, to its own schema (``spotline schema changes``)."""

from __future__ import annotations

import json

from ..version import VERSION

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..weighing.comparison import Compared, Comparison
    from ..weighing.difference import Difference


def report(result: Comparison) -> None:
    """Prints it."""
    print(changes_json(result))


def changes_json(result: Comparison) -> str:
    """The whole comparison as one JSON object."""
    whole = {
        "spotline": VERSION,
        "files": result.looked_at,
        "changed": [_compared(one) for one in result.changed],
        "new files": [{"file": name, "holds": what} for name, what in result.new],
        "files gone": [{"file": name, "held": what} for name, what in result.gone],
        "faults": result.faults,
    }
    return json.dumps(whole, indent=2, ensure_ascii=True, allow_nan=False)


def _compared(one: Compared) -> dict[str, object]:
    return {
        "file": one.file,
        "programme": one.title,
        "athletes": one.who,
        "weeks": list(one.weeks),
        "first": [sentence for _, sentence in one.first()],
        "changes": [_change(change) for change in one.changes],
    }


def _change(change: Difference) -> dict[str, object]:
    return {
        "part": change.part,
        "kind": change.kind,
        "subject": change.subject,
        "session": change.session,
        "weeks": list(change.weeks),
        "before": change.before,
        "after": change.after,
        "words": change.words,
        "weight": round(change.weight, 1),
    }
