"""Guesses what a coach most likely meant by a mistyped quantity, key or name."""

from __future__ import annotations

import re

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

_OTHER_WORDS = {
    "weight": ("load", "body mass"),
    "intensity": ("load",),
    "repetitions": ("reps",),
    "warm-up": ("preparation", "warm-up sets"),
    "warmup": ("preparation", "warm-up sets"),
    "comment": ("note",),
    "name": ("session", "activity", "exercise", "programme"),
    "title": ("programme", "name", "session"),
    "duration": ("minutes", "hold", "weeks"),
    "when": ("day", "days"),
    "weekday": ("day",),
    "days": ("rotation",),
    "bodyweight": ("body mass",),
    "restrictions": ("protect",),
    "limitations": ("protect",),
    "limits": ("protect",),
    "injuries": ("protect",),
    "avoid": ("protect",),
    "must not": ("protect",),
    "cooldown": ("cool-down",),
    "warm-down": ("cool-down",),
    "coaching cue": ("cue",),
    "cues": ("cue",),
    "stop if": ("stop when",),
    "stop": ("stop when",),
    "alternatives": ("or",),
    "start": ("starts",),
    "beginner": ("novice",),
    "expert": ("advanced",),
    "size": ("hypertrophy",),
    "both": ("each",),
    "alternating": ("each",),
    "medium": ("moderate",),
    "dropset": ("drop set",),
    "restriction": ("protect",),
    "injury": ("protect",),
    "avoids": ("protect",),
    "forbidden": ("protect",),
    "not allowed": ("protect",),
    "no go": ("protect",),
    "contraindications": ("protect",),
    "spare": ("protect",),
    "spares": ("protect",),
    "cautions": ("protect",),
    "kit": ("equipment",),
    "gear": ("equipment",),
    "tools": ("equipment",),
    "gym": ("equipment",),
    "has": ("equipment",),
    "maxes": ("best lifts",),
    "max": ("best lifts",),
    "bests": ("best lifts",),
    "best": ("best lifts",),
    "1rm": ("best lifts",),
    "one rep max": ("best lifts",),
    "training max": ("working best",),
    "tm": ("working best",),
    "pb": ("best lifts",),
    "pbs": ("best lifts",),
    "pr": ("best lifts",),
    "prs": ("best lifts",),
    "body weight": ("body mass",),
    "bw": ("body mass",),
    "mass": ("body mass",),
    "time": ("minutes",),
    "session time": ("minutes",),
    "session length": ("minutes",),
    "length": ("minutes", "weeks"),
    "training days": ("days",),
    "available": ("days",),
    "availability": ("days",),
    "experience": ("level",),
    "training age": ("level",),
    "status": ("level",),
    "kg": ("load",),
    "%": ("load",),
    "percent": ("load",),
    "rep": ("reps",),
    "wdh": ("reps",),
    "set": ("sets",),
    "series": ("sets",),
    "notes": ("note",),
    "comments": ("note",),
    "remark": ("note",),
    "remarks": ("note",),
    "start date": ("starts",),
    "from": ("starts",),
    "begins": ("starts",),
    "week count": ("weeks",),
    "aim": ("goal",),
    "purpose": ("goal",),
    "objective": ("goal",),
    "target": ("goal",),
}
"""Words that coaches write -> the schema's words for them; common practice, no source."""

_STEPS: tuple[tuple[str, str], ...] = (
    (r"[\u2010-\u2015\u2212]", "-"),
    ("\u00d7", "x"),
    (r"\s+", " "),
    (r"(?<=\d),(?=\d)", "."),
    (r"(?<=[0-9]) ?(?:-|to|till|until) ?(?=[0-9])", "-"),
    (r"(?i) ?\b(?:percent|per cent|pct)\b", " %"),
    (r"(?i)(?<=[0-9 ])(?:kgs?|kilos?|kilograms?)\b", "kg"),
    (r"(?i)(?<=[0-9 ])(?:lbs?|pounds?)\b", "lb"),
    (r"(?i)(?<=[0-9 ])(?:seconds?|secs?|s)\b", "s"),
    (r"(?i)(?<=[0-9 ])(?:minutes?|mins?|mn)\b", "min"),
    (r"(?i)(?<=[0-9 ])(?:metres?|meters?|m)$", "m"),
)
"""Pattern and replacement, applied in turn; the first result that can be read is what was meant."""

_OWN_WORDS = {
    "sets": "sets?",
    "warm-up sets": "(?:warm-up )?sets?",
    "reps": "reps?|repetitions?",
    "rounds": "rounds?",
    "rir": "rir|in reserve",
    "rpe": "rpe|@",
    "effort": "rpe",
    "minutes": "minutes?|mins?",
    "weeks": "weeks?|wk|w",
    "days": "days?|days? a week",
    "age": "years?|years old|y",
}
"""For each key: words that its value may repeat and that can be left out."""


def repairs(words: str, key: str) -> Iterator[str]:
    """Corrected forms of the ``words`` of a key, to be tried in this order; no unit is ever added."""
    yield words.lower()
    yield words.upper()
    own = _OWN_WORDS.get(key, "$^")
    for pattern, replacement in (*_STEPS, (f"(?i)^(?:{own}) ?| ?(?:{own})$", "")):
        simpler = re.sub(pattern, replacement, words).strip()
        if simpler != words:
            words = simpler
            yield words
            yield words.lower()


_UNITS = (" %", " kg", " lb", " s", " min", " m", " km", " m/s", " weeks", " sessions", " reps", " sets")


def with_units(words: str, readable: Callable[[str], bool]) -> list[str]:
    """Words that are a number without a unit, with each unit that makes them readable; common units first."""
    if not re.fullmatch(r"[0-9.]+(?:[-/][0-9.]+)*", words):
        return []
    return [words + unit for unit in _UNITS if readable(words + unit)]


def effort(words: str) -> tuple[str, str] | None:
    """``@8``, ``RPE 7-8`` and ``2 RIR`` as key and value."""
    number = r"(?:[0-9](?:\.5)?|10)"
    found = re.fullmatch(rf"(?i)(?:@ ?|(rpe|rir) ?)?({number}(?: ?- ?{number})?)(?: ?(rpe|rir))?", words)
    if found is None or not (found[1] or found[3] or words.startswith("@")):
        return None
    return (found[1] or found[3] or "rpe").lower(), found[2].replace(" ", "")


def meant_elsewhere(word: str) -> tuple[str, ...]:
    """The schema's words for a coach's word, wherever they stand."""
    return _OTHER_WORDS.get(word.casefold().replace("_", " ").strip(), ())


LONGEST_SLIP = 60
"""Letters of a word up to which it is compared with those that are known."""


def nearest(word: str, known: Iterable[str], likeness: float = 0.7) -> str | None:
    """The known word that ``word`` most likely stands for; None where none is similar enough.

    ``likeness`` is the least similarity, from 0 to 1.
    """
    from difflib import SequenceMatcher

    known = list(known)
    if len(word) > LONGEST_SLIP:
        return None
    plain = word.casefold().replace("_", " ").strip()
    spellings = {one: one for one in known}
    for said, meant in _OTHER_WORDS.items():
        target = next((one for one in meant if one in spellings), None)
        if target is not None:
            spellings.setdefault(said, target)
    if plain in spellings:
        return spellings[plain]
    if meant_elsewhere(word):
        return None  # a word for something that has no place here is no slip of another word
    if len(plain) >= 2:
        begun = [one for one in known if one.startswith(plain) or plain.rstrip("s") == one.rstrip("s")]
        if len(begun) == 1:
            return begun[0]
    letters = sorted(plain)  # swapped letters are the commonest slip

    def likeness_of(spelling: str) -> float:
        if sorted(spelling) == letters:
            return 1.0
        matcher = SequenceMatcher(None, plain, spelling)
        if matcher.real_quick_ratio() < likeness or matcher.quick_ratio() < likeness:
            return 0.0  # the ratio is no larger
        return matcher.ratio()

    best = max(spellings, default="", key=likeness_of)
    return spellings[best] if best and likeness_of(best) >= likeness else None
