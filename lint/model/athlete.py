"""The athlete: level, best lifts, equipment, days, restrictions."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..text.places import Place, Term
    from .quantities import Load


class BestLift:
    """A best lift on file: the exercise as written, the load, for how many repetitions, the day tested.

    The load is a mass, or what was added to the lifter's own body (kind ``bodyweight``).
    """

    __slots__ = ("exercise", "load", "reps", "tested")

    def __init__(self, exercise: Term, load: Load, reps: int, tested: date | None) -> None:
        self.exercise = exercise
        self.load = load
        self.reps = reps
        self.tested = tested

    @property
    def kilograms(self) -> float:
        """The load in kilograms; where the body itself is lifted, what was added to it."""
        span = self.load.span
        return span.middle if span else 0.0


class Restriction:
    """An area or movement that an athlete protects, on whose advice, and when that is looked at again."""

    __slots__ = ("adviser", "kind", "note", "review_on", "subject")

    def __init__(self, kind: str, subject: Term, adviser: str, review_on: date | None, note: str) -> None:
        self.kind = kind
        self.subject = subject
        self.adviser = adviser
        self.review_on = review_on
        self.note = note


class Athlete:
    """A lifter, as far as the programme needs to know; body mass in kg, minutes a session.

    ``extent`` is all that is written of them: the whole of their file, or their part of a programme.
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
