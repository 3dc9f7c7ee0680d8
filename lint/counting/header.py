"""What a programme says outside its sessions: the athlete, the goal, the dates."""

from __future__ import annotations

from ..body.names import fold
from .team_resources import NO_RESOURCES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..body.catalogue import Exercise
    from ..body.known import Known
    from ..model.athlete import Athlete
    from ..model.programme import Event, Member, Programme, Rehabilitation
    from ..model.sessions import Phase
    from ..text.places import Place, Term
    from .team_resources import TeamResources


GROWTH = {"novice": 8.0, "intermediate": 3.0, "": 3.0, "advanced": 2.0}
"""Percent a week by which best lifts may grow in a programme (common practice, no source)."""


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
        "events",
        "focus",
        "goal",
        "known",
        "name",
        "note",
        "phase",
        "place",
        "places",
        "priority",
        "rehabilitation",
        "resources",
        "starts",
        "today",
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
        self.name: str = programme.name
        self.place: Place = programme.place
        self.places: dict[str, Place] = programme.places
        self.goal: str = programme.goal
        self.phase: Phase = programme.phase
        self.focus: tuple[Term, ...] = programme.focus
        self.priority: tuple[Term, ...] = programme.priority
        self.starts: date | None = programme.starts
        self.weeks: int = programme.weeks
        self.working_best: float | None = programme.working_best
        self.events: tuple[Event, ...] = programme.events
        self.note: str = programme.note
        self.rehabilitation: Rehabilitation | None = programme.rehabilitation

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

    def named(self, name: str) -> Exercise | str:
        """The exercise of this name; for an unknown exercise the name itself, folded for comparison."""
        return self.known.exercise(name) or fold(name)

    @property
    def equipment(self) -> frozenset[str] | None:
        """The equipment that the athlete has, or None if none is written.

        The name of an equipment set of the team is replaced by the pieces in that set.
        """
        if self.athlete is None or not self.athlete.equipment:
            return None
        pieces = (self.resources.equipment.get(term.words, (term.words,)) for term in self.athlete.equipment)
        return frozenset(piece.casefold() for several in pieces for piece in several)
