"""Lines that name a muscle where an exercise is looked for."""

from __future__ import annotations

import re

from ..lint.body import catalogue
from ..lint.wording.words import shortened
from .shared import is_for, suggested

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.findings.finding import Edit
    from ..lint.text.places import Term
    from .offers import Offer

BESIDE = frozenset((
    "accessory", "any", "choice", "choose", "extra", "exercise", "exercises", "free", "isolation", "machine",
    "of", "or", "own", "pick", "pump", "some", "something", "training", "work", "your",
))  # fmt: skip
"""Words beside a muscle that name no exercise: "triceps work", "abs of choice" (common practice)."""


def muscle_named(name: str) -> str:
    """The muscle, or region, that is all a name says; empty where it says more, or none."""
    area = " ".join(word for word in re.findall(r"[\w'-]+", name.lower()) if word not in BESIDE)
    return area if catalogue.area(area) is not None else ""


def what_to_write_for_a_muscle(ledger: Ledger, name: str, area: str) -> str:
    """How to name an exercise for a muscle, or to leave it open."""
    names = suggested(ledger.header, lambda exercise: is_for(exercise, area)).names
    named = f"Name one, such as {names[0]}," if names else "Name one,"
    return f"{named} or write `own choice: {shortened(name)}` to leave it free."


def naming_or_leaving_free(ledger: Ledger, term: Term, area: str) -> Offer:
    """Exercises for a muscle in the place of its name, or the line as a free choice for it."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.free_choice import freely_chosen
        from ..lint.remedies.values import one_of

        yield from freely_chosen(term.place, area)
        yield from one_of(term.place, suggested(ledger.header, lambda exercise: is_for(exercise, area)).names)

    return work_out
