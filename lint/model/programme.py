"""A programme as the coach wrote it: typed values and their places, nothing counted yet."""

from __future__ import annotations

from .sessions import Slice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date
    from typing import Literal

    from ..text.places import Place, Term
    from .athlete import Athlete
    from .demands import Demand
    from .everything import EveryLine
    from .sessions import Block, Phase, Prescription, Session
    from .where import Where

    Goal = Literal["hypertrophy", "strength", "power", "muscular endurance", "general health", ""]
    """What a programme is for, "" if it does not say. A test holds the schemas to the same words."""


class Rehabilitation:
    """A stage of rehabilitation that a licensed professional advises, and the day it ends.

    ``places`` holds the place of each value by its key.
    """

    __slots__ = ("adviser", "place", "places", "stage", "until")

    def __init__(
        self, place: Place, stage: str, adviser: str, until: date | None, places: dict[str, Place]
    ) -> None:
        self.place = place
        self.places = places
        self.stage = stage
        self.adviser = adviser
        self.until = until


class Event:
    """A dated event: a match, a regatta, a test."""

    __slots__ = ("date", "name", "note", "place")

    def __init__(self, name: str, place: Place, date: date | None, note: str) -> None:
        self.name = name
        self.place = place
        self.date = date
        self.note = note


SAID_ONCE = (("rir", "rpe"), ("rpe", "rir"))
"""Efforts of which the one for an athlete stands in place of the other of the line."""


class Adjustment:
    """How an exercise differs for one athlete: another exercise, left out, or with other values.

    ``swap`` is the exercise in its place; ``values`` are sets, load and the like by week of the programme.
    ``session`` names the one session in which it is so, None for all; ``in_weeks`` are the runs of weeks of
    the programme in which it is, none for all.
    """

    __slots__ = ("exercise", "in_weeks", "leave_out", "note", "session", "swap", "values")

    def __init__(
        self,
        exercise: Term,
        swap: Term | None,
        leave_out: bool,
        values: dict[str, tuple[Slice, ...]],
        note: str,
        session: Term | None = None,
        in_weeks: tuple[tuple[int, int], ...] = (),
    ) -> None:
        self.session = session
        self.in_weeks = in_weeks
        self.exercise = exercise
        self.swap = swap
        self.leave_out = leave_out
        self.values = values
        self.note = note

    def version(self, week: int) -> list[int]:
        """Numbers that are equal for weeks of the programme in which it has the same values."""
        return [self.holds_in(week), *(held.first for held in self.in_week(week).values())]

    def holds_in(self, week: int) -> bool:
        """Whether anything is different in a week of the programme."""
        return not self.in_weeks or any(first <= week <= last for first, last in self.in_weeks)

    def in_week(self, week: int) -> dict[str, Slice]:
        """The values that replace the line's own in a week of the programme."""
        if not self.holds_in(week):
            return {}
        held = {
            key: one for key, slices in self.values.items() for one in slices if one.first <= week <= one.last
        }
        for key, other in SAID_ONCE:
            if key in held and other not in held:
                held[other] = held[key].with_value(None)
        if self.swap is not None:
            held["exercise"] = Slice(1, week, self.swap.words, self.swap.place)
        return held


class Member:
    """An athlete on a programme, with the adjustments for them: of one exercise, or of ``everything``."""

    __slots__ = ("adjustments", "athlete", "everything")

    def __init__(
        self,
        athlete: Athlete,
        adjustments: tuple[Adjustment, ...] = (),
        everything: tuple[EveryLine, ...] = (),
    ) -> None:
        self.athlete = athlete
        self.adjustments = adjustments
        self.everything = everything


class Programme:
    """A whole programme: what and whom it is for, and its blocks in order.

    ``not_trained`` are areas left alone on purpose, ``maintain`` those that are kept and not built.
    ``our_names`` are pairs of a name that the coach gives to an exercise and what it means. ``places`` holds
    the places of goal, phase and start by key, where they are written. ``working_best`` is the share of each
    best lift, in %, from which percentages count; None where they count from the whole.
    """

    __slots__ = (
        "blocks",
        "demands",
        "events",
        "everything",
        "focus",
        "goal",
        "held_at",
        "maintain",
        "members",
        "name",
        "not_trained",
        "note",
        "our_names",
        "phase",
        "place",
        "places",
        "priority",
        "rehabilitation",
        "sessions_by_block",
        "starts",
        "weeks",
        "working_best",
    )

    def __init__(self, name: str, place: Place) -> None:
        self.name = name
        self.place = place
        self.places: dict[str, Place] = {}
        self.members: tuple[Member, ...] = ()
        self.goal: Goal = ""
        self.phase: Phase = ""
        self.focus: tuple[Term, ...] = ()
        self.priority: tuple[Term, ...] = ()
        self.not_trained: tuple[Term, ...] = ()
        self.maintain: tuple[Term, ...] = ()
        self.starts: date | None = None
        self.weeks = 1
        self.working_best: float | None = None
        self.events: tuple[Event, ...] = ()
        self.note = ""
        self.blocks: tuple[Block, ...] = ()
        self.sessions_by_block: dict[Block, tuple[Session, ...]] = {}
        self.rehabilitation: Rehabilitation | None = None
        self.our_names: tuple[tuple[Term, Term], ...] = ()
        self.held_at: Where | None = None
        self.everything: tuple[EveryLine, ...] = ()
        self.demands: tuple[Demand, ...] = ()

    @property
    def names(self) -> dict[str, str]:
        """What the names mean that the coach gives to exercises."""
        return {name.words: meant.words for name, meant in self.our_names}

    @property
    def athletes(self) -> tuple[Athlete, ...]:
        """All athletes on the programme."""
        return tuple(member.athlete for member in self.members)

    def sessions_of(self, block: Block) -> tuple[Session, ...]:
        """The sessions of one of its blocks, in the order of the file."""
        return self.sessions_by_block[block]

    def sessions(self) -> Iterator[Session]:
        """Every session, in the order of the file."""
        for block in self.blocks:
            yield from self.sessions_of(block)

    def wheres(self) -> Iterator[Where]:
        """What is written on where sessions take place: of the programme, its blocks, its sessions."""
        parts: list[Programme | Block | Session] = [self, *self.blocks, *self.sessions()]
        for part in parts:
            if part.held_at is not None:
                yield part.held_at

    def prescriptions(self) -> Iterator[Prescription]:
        """Every prescription, in the order of the file."""
        for session in self.sessions():
            yield from session.prescriptions
