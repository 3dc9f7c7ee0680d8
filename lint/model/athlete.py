"""The athlete: level, best lifts, equipment, days, restrictions."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..text.places import Place, Term
    from .kits import Kit, Stock
    from .quantities import Load
    from .sessions import Weeks


class BestLift:
    """A best lift on file: the exercise as written, the load, its repetitions, and the day it was tested.

    The load is a mass, or the mass added to the athlete's own body (kind ``bodyweight``). ``working`` is the
    share of it, in %, from which percentages count; None where they count from the whole.
    """

    __slots__ = ("exercise", "load", "reps", "tested", "working")

    def __init__(
        self, exercise: Term, load: Load, reps: int, tested: date | None, working: float | None = None
    ) -> None:
        self.exercise = exercise
        self.load = load
        self.reps = reps
        self.tested = tested
        self.working = working

    @property
    def kilograms(self) -> float:
        """The load in kilograms; for kind ``bodyweight`` only the mass that was added."""
        span = self.load.span
        return span.middle if span else 0.0


class Restriction:
    """An area or a movement that an athlete protects, who advised it, and the day of the next check.

    It holds in ``in_weeks``, runs of weeks of each programme, or from the day it ``begins`` to the day it
    ``ends``; where nothing is written, always. ``agreed`` are exercises and movements that may stay all the
    same.
    """

    __slots__ = ("adviser", "agreed", "begins", "ends", "in_weeks", "kind", "note", "review_on", "subject")

    def __init__(
        self,
        kind: str,
        subject: Term,
        adviser: str,
        review_on: date | None,
        note: str,
        agreed: tuple[Term, ...] = (),
    ) -> None:
        self.in_weeks: Weeks = ()
        self.begins: date | None = None
        self.ends: date | None = None
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
    part of a programme. ``stocks`` says what there is of some pieces of the ``equipment``, ``kits`` what the
    places have that the athlete trains at.
    """

    __slots__ = (
        "age",
        "best_lifts",
        "body_mass",
        "clearance",
        "days",
        "equipment",
        "extent",
        "kits",
        "level",
        "minutes",
        "name",
        "note",
        "place",
        "protect",
        "screening",
        "sport",
        "stocks",
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
        self.stocks: tuple[Stock, ...] = ()
        self.kits: tuple[Kit, ...] = ()
        self.days: tuple[str, ...] | int | None = None
        self.minutes: float | None = None
        self.protect: tuple[Restriction, ...] = ()
        self.clearance: date | None = None
        self.screening: date | None = None
        self.supervision = ""
        self.note = ""
