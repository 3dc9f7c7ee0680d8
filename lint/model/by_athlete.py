"""Values by athlete: ``load: {Sanne: 16 kg, Tobi: 24 kg}``.

Nothing here is needed where all athletes have the same, so that other modules import it only when not.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..wording.words import did_you_mean, listed, near_names
from .bounds import NONE
from .sessions import Slice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Protocol

    from ..findings.finding import Finding
    from ..text.places import Place
    from .programme import Programme
    from .sessions import Prescription, Weeks
    from .values import LocatedNode, Reader

    Values = dict[str, tuple[Slice, ...]]

    class SquadReader(Protocol):
        """What is needed here of the reader of a line."""

        findings: list[Finding]
        spans: Weeks
        unread: set[str]
        by_athlete: bool

        def read_parts(self, key: str, parts: list[tuple[int, int, LocatedNode]]) -> tuple[Slice, ...]:
            """The values of a key that can be read."""

        def report(self, rule: str, place: Place, counted: str, *, change: str) -> None:
            """Adds a finding."""


OTHER = "other"
"""Stands for all athletes that no other key names."""


class AthleteSlice(Slice):
    """A value of one athlete; ``who`` is their name in small letters, "" for all others. ``named`` is the
    place of the name, ``whole`` that of the values of all.
    """

    __slots__ = ("named", "who", "whole")

    def __init__(self, held: Slice, who: str, named: Place, whole: Place) -> None:
        super().__init__(held.first, held.last, held.value, held.place)
        self.who = who
        self.named = named
        self.whole = whole

    def with_value(self, value: object) -> AthleteSlice:
        """The same with another value."""
        return AthleteSlice(Slice(self.first, self.last, value, self.place), self.who, self.named, self.whole)


def names_in(at: LocatedNode) -> bool:
    """Whether the keys of a mapping are names, and no weeks."""
    return any(map(_is_name, at.keys()))


def _is_name(key: str) -> bool:
    return bool(key) and key != OTHER and not any(map(str.isdecimal, key))


def read_by_athlete(reader: SquadReader, key: str, at: LocatedNode) -> tuple[Slice, ...]:
    """The values of a key by athlete, those of all others as well where they are written."""
    found: list[Slice] = []
    before = len(reader.findings)
    for name, place, value in at.pairs():
        if name != OTHER and not _is_name(name):
            reader.report(
                "keys-at-odds",
                place,
                f"`{name}` stands beside names: a value goes by athlete or by week.",
                change="Write all of its keys as names, or as weeks; `adjust` takes both.",
            )
            continue
        who = "" if name == OTHER else name.casefold()
        parts = [(first, last, value) for first, last in reader.spans]
        read = reader.read_parts(key, parts)
        if value.plain == "none" and key in NONE:
            read = (Slice(1, 0, None, value.place),)  # in no week at all: nothing for this athlete
        found += [AthleteSlice(one, who, place, at.place) for one in read]
    if len(reader.findings) > before:
        reader.unread.add(key)
        return ()
    reader.by_athlete = True
    return tuple(found)


def values_of(line: Prescription, name: str) -> tuple[Values, ...]:
    """The groups of a line with the values of one athlete; those of all others where they have none."""
    who = name.casefold()
    return tuple(
        {key: kept for key, slices in group.items() if (kept := tuple(_of(slices, who)))}
        for group in line.groups
    )


def _of(slices: tuple[Slice, ...], who: str) -> Iterator[Slice]:
    owners = [one.who if isinstance(one, AthleteSlice) else "" for one in slices]
    wanted = who if who in owners else ""
    yield from (one for one, owner in zip(slices, owners, strict=True) if owner == wanted)


def check_athletes(reader: Reader, programme: Programme) -> None:
    """Says of values by athlete which names are none of this programme, and whose value is missing."""
    names = [member.athlete.name for member in programme.members if member.athlete.name]
    known = {name.casefold(): name for name in names}
    seen = set()
    for line in programme.prescriptions():
        for group in line.groups if line.by_athlete else ():
            for key, slices in group.items():
                held = [one for one in slices if isinstance(one, AthleteSlice)]
                if held and held[0].whole.key not in seen:
                    seen.add(held[0].whole.key)
                    _check(reader, key, held, known)


def _check(reader: Reader, key: str, held: list[AthleteSlice], known: dict[str, str]) -> None:
    given = {one.who for one in held}
    unknown = {one.who: one for one in held if one.who and one.who not in known}
    for one in unknown.values():
        words = one.named.excerpt
        near = near_names(words, [*known.values(), OTHER], 2)
        reader.report(
            "athlete-unknown",
            one.named,
            f"`{words}` is neither a week nor an athlete of this programme.",
            change=did_you_mean(near) or "Write the name of an athlete, a week, or `other`.",
            edits=tuple(Edit(one.named, name, f"write {name}", certain=False) for name in near),
        )
    missing = [name for who, name in known.items() if who not in given]
    if missing and "" not in given and not unknown:
        reader.report(
            "athletes-left-out",
            held[0].whole,
            f"No `{key}` for {listed(missing)}.",
            change=f"Add {'it' if len(missing) == 1 else 'them'}, or `other:` for all who are not named.",
        )
