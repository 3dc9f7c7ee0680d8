"""What is said of names that nobody knows: what they may be, whether that may load what is spared."""

from __future__ import annotations

import re

from ..lint.body.names import fold, words
from ..lint.counting.unknown import is_no_lift
from ..lint.wording.words import did_you_mean, first_of, listed, shortened

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence

    from ..lint.body.catalogue import Exercise
    from ..lint.body.name_suggestions import Suggestions
    from ..lint.counting.ledger import Ledger
    from ..lint.model.athlete import Restriction


def spared_where_done(ledger: Ledger, name: str, spared: list[Restriction]) -> list[Restriction]:
    """The restrictions that hold in a week in which an exercise of this name is done.

    None of whoever agreed to it by this name: nobody looked at it for the restrictions of others. An
    alternative or a swap stands in no week of its own: for it all restrictions count.
    """
    agreed_by = {one.adviser for one in spared if fold(name) in map(fold, one.may_stay)}
    spared = [one for one in spared if one.adviser not in agreed_by]
    if all(not (one.in_weeks or one.begins or one.ends) for one in spared):
        return spared
    done = {
        (week.number, visit.day)
        for week in ledger.weeks
        for visit, entry in week.entries()
        if entry.is_done and fold(entry.name) == fold(name)
    }
    return [one for one in spared if not done or any(ledger.header.is_spared(one, *when) for when in done)]


def may_load(ledger: Ledger, meant: Iterable[Exercise], spared: Collection[Restriction]) -> str:
    """``bottoms-up press, which loads `overhead pressing```: the first that may be meant; or empty."""
    from ..lint.body.restriction_traits import loads
    from ..lint.body.restrictions import read

    for exercise in meant:
        for one in spared:
            if loads(exercise, read(one.subject.words, ledger.known).traits):
                return f"{exercise.name}, which loads `{one.subject.words}`"
    return ""


def not_counted(
    name: str,
    suggested: Suggestions,
    spared: Collection[Restriction],
    may_be: str,
    muscle: str,
    *,
    clear: bool,
) -> str:
    """What of a name is unknown, and what follows; ``clear`` is whether it surely loads nothing spared."""
    is_what = "names several lifts" if suggested.lifts else "is not in the catalogue"
    unknown = f"`{shortened(name)}` {'names no exercise' if muscle else is_what}"
    if muscle and not spared:
        return f"{unknown}, so its sets are not counted."
    if not spared:
        return f"{unknown}, so its sets count for no muscle."
    if may_be:
        return f"{unknown}, so it counts for no muscle; it may be {may_be}."
    subjects = first_of([f"`{one.subject.words}`" for one in spared])
    if clear:
        return f"{unknown}, so it counts for no muscle; nothing that it may be loads {subjects}."
    return f"{unknown}, so it counts for no muscle and cannot be checked against {subjects}."


def are_throws(meant: Sequence[Exercise]) -> bool:
    """Whether all that a name may be is thrown: whichever it is, no set of it counts for a muscle."""
    return bool(meant) and all("throw" in exercise.patterns for exercise in meant)


def are_no_lifts(ledger: Ledger, names: Collection[str]) -> bool:
    """Whether names are surely no lifts, by their words, and nothing is lifted where they are done."""
    done = (entry for week in ledger.weeks for _, entry in week.entries() if entry.name in names)
    return all(map(ledger.known.is_no_lift, names)) and all(map(is_no_lift, done))


def is_clear(ledger: Ledger, spared: Collection[Restriction]) -> bool:
    """Whether all that is spared is understood, word by word."""
    from ..lint.body.restrictions import read

    said = [read(one.subject.words, ledger.known) for one in spared]
    return all(one.traits and not one.unknown for one in said)


def is_one_of(name: str, meant: Sequence[Exercise]) -> bool:
    """Whether the words of a name all stand in the names of what it may be: then it is nothing else."""
    said = {fold(word) for one in meant for known in (one.name, *one.aliases) for word in words(known)}
    return bool(meant) and said.issuperset(map(fold, words(name)))


def what_to_write(name: str, suggested: Suggestions) -> str:
    """The question with the names that may be meant, and how to teach the programme a name."""
    if suggested.lifts:
        apart = "+".join("1" for _ in suggested.names)
        return f"Write a line for each: {listed(suggested.names)}; or a complex, as `reps: {apart}`."
    if suggested.slip:
        return did_you_mean(suggested.names)
    shown = shortened(name)
    key = shown if re.fullmatch(_PLAIN, shown) else "'" + shown.replace("'", "''") + "'"
    meant = suggested.names[0] if suggested.names else "EXERCISE"
    taught = f"teach it: `our names: {{{key}: {meant}}}`."
    asked = did_you_mean(suggested.names)
    return f"{asked} Or {taught}" if asked else f"Write its usual name, or {taught}"


RESTS = frozenset(
    [
        "rest",
        "resting",
        "pause",
        "break",
        "breather",
        "off",
        "recover",
        "recovery",
        "repos",
        "pausa",
        "ruhe",
        "riposo",
        "descanso",
        "nothing",
    ]
)
"""Words for a station or minute without work (common practice, no source)."""

BESIDE_A_REST = frozenset(
    [
        "min",
        "mins",
        "minute",
        "minutes",
        "s",
        "sec",
        "secs",
        "station",
        "full",
        "easy",
        "of",
        "de",
        "a",
        "the",
        "complete",
    ]
)


def is_a_rest(name: str) -> bool:
    """Whether a name says no more than that nothing is done: "rest", "1 min repos"."""
    said = {word.strip("(),.'0123456789") for word in words(name)} - {""}
    return not said.isdisjoint(RESTS) and not said - RESTS - BESIDE_A_REST


REST_INSTEAD = (
    "Take the line out; write `rest: 60 s` beside the circuit's `change every` or `rounds`, or `rest after`"
    " on the line before."
)
"""What to write where a rest stands as an exercise."""


_PLAIN = r"[^\W\d_][\w ()-]*"
"""Names that YAML takes as they are."""
