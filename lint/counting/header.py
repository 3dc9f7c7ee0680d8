"""What a programme says outside its sessions: the athlete, the goal, the dates."""

from __future__ import annotations

from datetime import timedelta

from ..body.names import fold
from .team_resources import NO_RESOURCES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date
    from typing import Any

    from ..body.catalogue import Exercise
    from ..body.known import Known
    from ..model.athlete import Athlete, Restriction
    from ..model.demands import Demand
    from ..model.kits import Kit, Stock
    from ..model.programme import Event, Member, Programme, Rehabilitation
    from ..model.sessions import Phase
    from ..text.places import Place, Term
    from .not_loaded import NotLoaded
    from .team_resources import TeamResources


GROWTH = {"novice": 8.0, "intermediate": 3.0, "": 3.0, "advanced": 2.0}
"""Percent a week by which best lifts may grow in a programme (common practice, no source)."""

GROWN_UP = 18
"""Years below which an athlete is young (common practice, no source)."""


class ProgrammeHeader:
    """A programme's goal, athlete, focus, dates and resources, without its sessions.

    A week, a visit and a group of sets hold this header and no link to the rest of the programme. So a result
    that is worked out from one of them stays valid as long as that part and the header are unchanged. Each
    athlete on a programme has a header of their own; `take` updates it when the programme is read again.
    ``today`` is used if the programme states no start date.
    ``known`` are the exercises that the programme may name.
    """

    __slots__ = (
        "athlete",
        "demands",
        "events",
        "focus",
        "goal",
        "known",
        "maintain",
        "name",
        "not_loaded",
        "not_trained",
        "note",
        "phase",
        "place",
        "places",
        "priority",
        "rehabilitation",
        "resources",
        "starts",
        "suggested",
        "today",
        "usual_place",
        "weeks",
        "working_best",
    )

    def __init__(
        self,
        programme: Programme,
        today: date,
        resources: TeamResources = NO_RESOURCES,
        member: Member | None = None,
    ) -> None:
        self.today = today
        self.resources = resources
        self.known: Known = resources.known.with_names(programme.names)
        self.athlete: Athlete | None = member.athlete if member else None
        self.take(programme)

    def take(self, programme: Programme) -> None:
        """Updates the header from a newer reading of the programme."""
        self.not_loaded: NotLoaded | None = None
        self.suggested: dict[object, Any] = {}  # what `suggest` keeps
        self.name: str = programme.name
        self.place: Place = programme.place
        self.places: dict[str, Place] = programme.places
        self.goal: str = programme.goal
        self.phase: Phase = programme.phase
        self.focus: tuple[Term, ...] = programme.focus
        self.priority: tuple[Term, ...] = programme.priority
        self.not_trained: tuple[Term, ...] = programme.not_trained
        self.maintain: tuple[Term, ...] = programme.maintain
        self.starts: date | None = programme.starts
        self.weeks: int = programme.weeks
        self.working_best: float | None = programme.working_best
        self.events: tuple[Event, ...] = programme.events
        self.note: str = programme.note
        self.demands: tuple[Demand, ...] = programme.demands
        self.rehabilitation: Rehabilitation | None = programme.rehabilitation
        self.usual_place: str = programme.held_at.throughout(self.weeks) if programme.held_at else ""

    @property
    def level(self) -> str:
        """The athlete's level; empty if none is written."""
        return self.athlete.level if self.athlete else ""

    @property
    def growth(self) -> float:
        """By how much a best lift on file may have grown when the programme ends, as a factor.

        A load that leads there by steps is no slip. In % a week by level (common practice, no source).
        """
        return 1 + GROWTH.get(self.level, GROWTH[""]) * max(self.weeks - 1, 0) / 100

    @property
    def body_mass(self) -> float | None:
        """The athlete's body mass in kg; None if none is written."""
        return self.athlete.body_mass if self.athlete else None

    @property
    def serves_else(self) -> bool:
        """Whether it serves something else than muscles one by one: a sport, an event, a return, a youth."""
        athlete = self.athlete
        young = athlete is not None and athlete.age is not None and athlete.age < GROWN_UP
        sport = athlete is not None and bool(athlete.sport)
        return young or sport or bool(self.events) or self.phase in ("return", "in-season")

    def is_spared(self, restriction: Restriction, week: int, day: int = 0) -> bool:
        """Whether a restriction holds in a week, or on a day of it (1 to 7 from the start day).

        Where dates say when, and the programme has no start, it holds unless it is over today.
        """
        if restriction.in_weeks:
            return any(first <= week <= last for first, last in restriction.in_weeks)
        begins, ends = restriction.begins, restriction.ends
        if begins is None and ends is None:
            return True
        if self.starts is None:
            return ends is None or ends >= self.today
        first = self.starts + timedelta(days=7 * (week - 1) + max(day - 1, 0))
        last = first if day else first + timedelta(days=6)
        return (begins is None or begins <= last) and (ends is None or first <= ends)

    def spared(self) -> list[Restriction]:
        """What the athlete spares in any week of the programme."""
        weeks = range(1, self.weeks + 1)
        return [
            one
            for one in (self.athlete.protect if self.athlete else ())
            if any(self.is_spared(one, week) for week in weeks)
        ]

    def named(self, name: str) -> Exercise | str:
        """The exercise of this name; for an unknown exercise the name itself, folded for comparison."""
        return self.known.exercise(name) or fold(name)

    @property
    def equipment(self) -> frozenset[str] | None:
        """The equipment where the programme takes place throughout; see `pieces`."""
        return self.pieces(self.usual_place)

    def kit(self, place: str) -> Kit | None:
        """The equipment of a place, as the athlete or else the team lists it; None where nobody does."""
        wanted = place.casefold()
        listed = (*(self.athlete.kits if self.athlete else ()), *self.resources.kits)
        return next((kit for kit in listed if kit.name.words.casefold() == wanted), None)

    def listed(self, place: str = "") -> tuple[Term, ...]:
        """The equipment of a place, or without one the athlete's, as it is written."""
        if place:
            kit = self.kit(place)
            return kit.terms if kit else ()
        return self.athlete.equipment if self.athlete else ()

    def pieces(self, place: str = "") -> frozenset[str] | None:
        """The equipment of a place, or without one the athlete's; None if none is written.

        The name of an equipment set of the team is replaced by the pieces in that set.
        """
        terms = self.listed(place)
        if not terms:
            return None
        pieces = (self.resources.equipment.get(term.words, (term.words,)) for term in terms)
        return frozenset(piece.casefold() for several in pieces for piece in several)

    def stock(self, piece: str, place: str = "") -> Stock | None:
        """What there is of a piece at a place, or of the athlete's own; None where it is not said."""
        stocks = self.stocks(place)
        if not stocks:
            return None
        from ..body.equipment import weighs_as

        return next((one for one in stocks if weighs_as(piece, one.term.words)), None)

    def stocks(self, place: str = "") -> tuple[Stock, ...]:
        """What there is of all pieces at a place, or of the athlete's own, as far as it is said."""
        if place:
            kit = self.kit(place)
            terms, stocks = (kit.terms, kit.stocks) if kit else ((), ())
        else:
            athlete = self.athlete
            terms, stocks = (athlete.equipment, athlete.stocks) if athlete else ((), ())
        for term in terms if self.resources.stocks else ():
            stocks = (*stocks, *self.resources.stocks.get(term.words, ()))
        return stocks
