"""Tree -> athlete, and findings for what cannot be meant."""

from __future__ import annotations

from ..syntax.tree import Mapping
from ..text.places import Term
from . import quantities
from .athlete import Athlete, BestLift, Restriction
from .quantities import Range
from .values import (
    MOST_WEEKS,
    LocatedNode,
    Reader,
    equipment_of,
    items_of,
    number_of,
    once,
    place_of,
    share_of,
    term_of,
    terms_of,
    text_of,
    weekdays_of,
    whole_number,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..findings.finding import Finding
    from ..syntax.tree import Node


def read_athlete(root: Node) -> tuple[Athlete | None, list[Finding]]:
    """The athlete of a tree and what cannot be meant in it; None where the root is no mapping."""
    if not isinstance(root, Mapping):
        return None, []
    reader = AthleteReader([])
    athlete = reader.athlete(LocatedNode(root, root.source))
    text = athlete.extent.text
    athlete.extent = text.place(0, len(text.content))
    return athlete, once(reader.findings)


class AthleteReader(Reader):
    """Reads an athlete from a group of keys."""

    def athlete(self, at: LocatedNode) -> Athlete:
        """The athlete."""
        name = at.get("name")
        athlete = Athlete(text_of(name), name.place if name else at.place)
        athlete.extent = at.written
        athlete.level = text_of(at.get("level"))
        athlete.sport = text_of(at.get("sport"))
        athlete.age = number_of(at.get("age"), OLDEST)
        athlete.body_mass = self.body_mass(at.get("body mass"))
        athlete.best_lifts = tuple(self.best_lifts(at.get("best lifts")))
        self.equipment(at, athlete)
        athlete.days = weekdays_of(at.get("days"))
        athlete.minutes = number_of(at.get("minutes"), LONGEST)
        athlete.protect = tuple(self.restriction(item) for item in items_of(at.get("protect")))
        athlete.clearance = self.day(at.get("clearance on file"))
        athlete.screening = self.day(at.get("screening on file"))
        athlete.supervision = text_of(at.get("supervision"))
        athlete.note = text_of(at.get("note"))
        return athlete

    def body_mass(self, at: LocatedNode | None) -> float | None:
        """A body mass in kg; reports one that nobody can have."""
        known = None if at is None else quantities.mass(at.plain)
        if at is None or known is None or HEAVIEST.low <= known <= HEAVIEST.high:
            return known
        self.report(
            "value-out-of-range",
            at.place,
            f"The body mass is {at.words}; it takes 10 to 500 kg, or 23 to 1100 lb.",
            change="Correct the number or its unit.",
        )
        return None

    def equipment(self, at: LocatedNode, athlete: Athlete) -> None:
        """The athlete's equipment, and that of the places where they train."""
        listed, places = at.get("equipment"), at.get("places")
        athlete.equipment = equipment_of(listed)
        if listed is not None and len(athlete.equipment) < len(listed.items()):
            from .kits import read_kit

            kit = read_kit(self, term_of(listed), listed)
            athlete.equipment, athlete.stocks = kit.terms, kit.stocks
        if places is not None:
            from .kits import read_kits

            athlete.kits = read_kits(self, places)

    def best_lifts(self, at: LocatedNode | None) -> Iterator[BestLift]:
        """The best lifts whose load can be read."""
        if at is None:
            return
        for exercise, place, value in at.pairs():
            stated = value.get("load") or value
            load = quantities.load(stated.plain)
            tested = self.day(value.get("tested"))
            if load is not None and not self.within("load", stated, load):
                continue
            if load is not None and load.kind == "mass" and load.span is not None and load.span.high <= 0:
                self.beyond(stated, "more than 0 kg")
            elif load is not None and load.kind in ("mass", "bodyweight"):
                reps, working = whole_number(value.get("reps"), 1), share_of(value.get("working best"))
                yield BestLift(Term(exercise, place), load, reps, tested, working)

    def restriction(self, at: LocatedNode) -> Restriction:
        """An area or a movement that the athlete protects."""
        kind = "movement" if "movement" in at else "area"
        subject = at.get(kind) or at
        restriction = Restriction(
            kind,
            term_of(subject),
            text_of(at.get("advised by")),
            self.day(at.get("review on")),
            text_of(at.get("note")),
            terms_of(at.get("agreed")),
        )
        restriction.in_weeks = self.in_weeks(at.get("in weeks"), MOST_WEEKS)
        first, last = self.day(at.get("from")), self.day(at.get("until"))
        if first is not None and last is not None and last < first:
            self.report(
                "range-backwards",
                place_of(at, "until"),
                f"It ends on {last}, before it begins on {first}; it was read as spared throughout.",
                change="Correct one of the two dates.",
            )
        else:
            restriction.begins, restriction.ends = first, last
        return restriction


OLDEST = Range(5, 110)
"""Years of age that the schema allows."""

LONGEST = Range(5, 300)
"""Minutes a session that the schema allows."""

HEAVIEST = Range(10, 500)
"""Body mass in kg that is taken: common practice, no source; what lies outside is a slip or a wrong unit."""
