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
    values: dict[str, object] = {}
    for name, value in row.values.items():
        both = ends(value)
        if both is not None:
            values[name] = {"low": both[0], "high": both[1]}
        elif value:
            values[name] = value
    return {"name": row.name, "mark": row.mark, "values": values}
