"""The athlete: level, best lifts, equipment, days, restrictions."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..text.places import Place, Term
    from .quantities import Load


class BestLift:
    """A best lift on file: the exercise as written, the load, its repetitions, and the day it was tested.

    The load is a mass, or the mass added to the athlete's own body (kind ``bodyweight``).
    """

    __slots__ = ("exercise", "load", "reps", "tested")

    def __init__(self, exercise: Term, load: Load, reps: int, tested: date | None) -> None:
        self.exercise = exercise
        self.load = load
        self.reps = reps
        self.tested = tested

    @property
    def kilograms(self) -> float:
        """The load in kilograms; for kind ``bodyweight`` only the mass that was added."""
        span = self.load.span
        return span.middle if span else 0.0


class Restriction:
    """An area or a movement that an athlete protects, who advised it, and the day of the next check.

    ``agreed`` are exercises and movements that may stay all the same.
    """

    __slots__ = ("adviser", "agreed", "kind", "note", "review_on", "subject")

    def __init__(
        self,
        kind: str,
        subject: Term,
        adviser: str,
        review_on: date | None,
        note: str,
        agreed: tuple[Term, ...] = (),
    ) -> None:
        self.kind = kind
        self.subject = subject
        self.adviser = adviser
        self.review_on = review_on
        self.note = note
        self.agreed = agreed

    @property
    def may_stay(self) -> list[str]:
        """The words for what was agreed."""
        return [one.words for one in self.agreed]


class Athlete:
    """What the review knows of an athlete; age in years, body mass in kg, minutes for each session.

    ``place`` is the place of the name. ``extent`` is all that is written of them: their whole file, or their
    part of a programme.
    """

    __slots__ = (
        "age",
        "best_lifts",
        "body_mass",
        "clearance",
        "days",
        "equipment",
        "extent",
        "level",
        "minutes",
        "name",
        "note",
        "place",
        "protect",
        "screening",
        "sport",
        "supervision",
    )

    def __init__(self, name: str, place: Place) -> None:
        self.name = name
        self.place = place
        self.extent = place
        self.level = ""
        self.sport = ""
        self.age: float | None = None
        self.body_mass: float | None = None
        self.best_lifts: tuple[BestLift, ...] = ()
        self.equipment: tuple[Term, ...] = ()
        self.days: tuple[str, ...] | int | None = None
        self.minutes: float | None = None
        self.protect: tuple[Restriction, ...] = ()
        self.clearance: date | None = None
        self.screening: date | None = None
        self.supervision = ""
        self.note = ""
