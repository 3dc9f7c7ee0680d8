"""What a programme says outside its sessions: whom it is for, what for, and when."""

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
    from ..text.places import Place, Term
    from .team_resources import TeamResources


class ProgrammeHeader:
    """Goal, athlete, focus, dates and resources, for those who may see a part of a programme only.

    A week, a session or a group of sets holds this and no way to the rest of the programme. So what is worked
    out from it stays true as long as the part itself and this header say the same. There is one for each
    athlete on a programme; `take` renews it when the programme is read again. ``today`` stands in where the
    programme does not say when it starts.
    """

    __slots__ = (
        "athlete",
        "events",
        "focus",
        "goal",
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
        self.athlete: Athlete | None = member.athlete if member else None
        self.take(programme)

    def take(self, programme: Programme) -> None:
        """Takes over what a later state of the programme says."""
        self.name: str = programme.name
        self.place: Place = programme.place
        self.places: dict[str, Place] = programme.places
        self.goal: str = programme.goal
        self.phase: str = programme.phase
        self.focus: tuple[Term, ...] = programme.focus
        self.priority: tuple[Term, ...] = programme.priority
        self.starts: date | None = programme.starts
        self.weeks: int = programme.weeks
        self.events: tuple[Event, ...] = programme.events
        self.note: str = programme.note
        self.rehabilitation: Rehabilitation | None = programme.rehabilitation

    @property
    def level(self) -> str:
        """The athlete's level; empty where none is written."""
        return self.athlete.level if self.athlete else ""

    @property
    def body_mass(self) -> float | None:
        """The athlete's body mass in kg; None where none is written."""
        return self.athlete.body_mass if self.athlete else None

    @property
    def known(self) -> Known:
        """The exercises that the programme may name."""
        return self.resources.known

    def named(self, name: str) -> Exercise | str:
        """What a name stands for: the exercise, or the name as it is compared where nobody knows it."""
        return self.known.exercise(name) or fold(name)

    @property
    def equipment(self) -> frozenset[str] | None:
        """What the athlete has to train with, the team's sets by name spelled out; None where not written."""
        if self.athlete is None or not self.athlete.equipment:
            return None
        pieces = (self.resources.equipment.get(term.words, (term.words,)) for term in self.athlete.equipment)
        return frozenset(piece.casefold() for several in pieces for piece in several)
