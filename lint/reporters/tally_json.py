"""The tables of a tally as JSON, to its own schema (``spotline schema tally``)."""

from __future__ import annotations

import json

from ..version import VERSION
from .tally_rows import ends

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..weighing.holdings import Row, WeekHoldings
    from ..weighing.tally import Tallied, Tallies


def report(result: Tallies) -> None:
    """Prints them."""
    print(tally_json(result))


def tally_json(result: Tallies) -> str:
    """All tables as one JSON object."""
    whole = {
        "spotline": VERSION,
        "programmes": [_programme(one, result.tables) for one in result.tallied],
        "faults": result.faults,
    }
    return json.dumps(whole, indent=2, ensure_ascii=True, allow_nan=False)


def _programme(one: Tallied, tables: tuple[str, ...]) -> dict[str, object]:
    return {
        "file": one.file,
        "programme": one.programme,
        "athlete": one.athlete,
        "weeks": [_weeks(part, tables) for part in one.weeks],
    }


def _weeks(part: WeekHoldings, tables: tuple[str, ...]) -> dict[str, object]:
    low, high = part.minutes.ends
    return {
        "weeks": list(part.numbers),
        "days": len(part.week.occasions()),
        "minutes": {"low": low, "high": high},
        "tables": [{"by": by, "rows": [_row(row) for row in part.rows(by)]} for by in tables],
        "nothing for": part.untrained(),
    }


def _row(row: Row) -> dict[str, object]:
    spans = {name: both for name, value in row.values.items() if (both := ends(value)) is not None}
    words = {name: value for name, value in row.values.items() if name not in spans and value}
    values = {name: {"low": low, "high": high} for name, (low, high) in spans.items()}
    return {"name": row.name, "mark": row.mark, "values": values, "words": words}
