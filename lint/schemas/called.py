"""Keys by other words that coaches have for them: kit for equipment, restrictions for what to spare."""

from __future__ import annotations

CALLED = {
    "protect": (
        "restrictions", "restriction", "limitations", "limits", "injury", "injuries", "avoid", "avoids",
        "forbidden", "not allowed", "must not", "no go", "contraindications", "spare", "spares", "cautions",
    ),
    "equipment": ("kit", "gear", "tools", "gym", "has"),
    "best lifts": ("maxes", "max", "bests", "best", "1RM", "one rep max", "PB", "PBs", "PR", "PRs"),
    "body mass": ("weight", "body weight", "bodyweight", "BW", "mass"),
    "minutes": ("time", "session time", "session length", "duration", "length"),
    "days": ("training days", "when", "available", "availability"),
    "level": ("experience", "training age", "status"),
    "load": ("weight", "kg", "%", "percent", "intensity"),
    "reps": ("rep", "repetitions", "wdh"),
    "sets": ("set", "series"),
    "note": ("notes", "comment", "comments", "remark", "remarks"),
    "starts": ("start", "start date", "from", "begins"),
    "weeks": ("length", "duration", "week count"),
    "goal": ("aim", "purpose", "objective", "target"),
}  # fmt: skip
"""Keys, each with other words that coaches have for it (common practice, no source)."""


def keys_called(word: str) -> list[str]:
    """The keys that a word may stand for; none for most words."""
    plain = _plain(word)
    return [key for key, words in CALLED.items() if any(_plain(one) == plain for one in words)]


def _plain(word: str) -> str:
    return word.strip().replace("_", " ").replace("-", " ").casefold()
