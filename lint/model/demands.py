"""A coach's own demands on a programme, ``must hold``: tree -> what is asked of which weeks.

Nothing here is needed where none are written, so that `read_programme` imports it only when there are.
"""

from __future__ import annotations

from ..wording.words import listed, plain, week_list
from .quantities import Range
from .values import items_of, number_of, place_of, term_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place, Term
    from .sessions import Weeks
    from .values import LocatedNode, Reader

SETS, DAYS, HOURS, RUNNING = FORMS = ("weekly sets of", "days of", "hours between", "never two days running")
"""The forms of a demand, each the key that names what it is about."""

BOUND = Range(0, 1000)


class Demand:
    """What must hold: ``form`` is one of `FORMS`, ``subjects`` what it is about, ``least`` and ``most`` the
    bounds in sets or days a week or in hours; ``other`` is what there must be at least as many sets as of.
    ``in_weeks`` are the runs of weeks of the programme in which it is asked; empty for all.
    """

    __slots__ = ("because", "form", "in_weeks", "least", "most", "other", "place", "subjects")

    def __init__(self, form: str, place: Place, subjects: tuple[Term, ...]) -> None:
        self.form = form
        self.place = place
        self.subjects = subjects
        self.least: float | None = None
        self.most: float | None = None
        self.other: Term | None = None
        self.because = ""
        self.in_weeks: Weeks = ()

    def holds_in(self, week: int) -> bool:
        """Whether it is asked in a week of the programme."""
        return not self.in_weeks or any(first <= week <= last for first, last in self.in_weeks)

    @property
    def words(self) -> str:
        """``weekly sets of hamstrings: at least 8 in weeks 1-4``."""
        bounds = [
            f"{word} {plain(number)}"
            for word, number in (("at least", self.least), ("at most", self.most))
            if number is not None
        ]
        bounds += [f"at least as many as {self.other.words}"] if self.other is not None else []
        asked = f"{self.form} {listed([one.words for one in self.subjects])}"
        weeks = [week for first, last in self.in_weeks for week in range(first, last + 1)]
        when = f" in {week_list(weeks)}" if weeks else ""
        return f"{asked}{': ' if bounds else ''}{listed(bounds)}{when}"


def read_demands(reader: Reader, at: LocatedNode, weeks: int) -> tuple[Demand, ...]:
    """The demands of a list, on a programme of so many weeks; what cannot be read is left out."""
    found = []
    for item in items_of(at):
        form = next((one for one in FORMS if one in item), "")
        about = item.get(form) if form else None
        if about is None:
            continue
        demand = Demand(
            form, place_of(item, form), tuple(term_of(one) for one in items_of(about) if one.words)
        )
        demand.least = number_of(item.get("at least"), BOUND)
        demand.most = number_of(item.get("at most"), BOUND)
        other = item.get("at least as many as")
        demand.other = None if other is None else term_of(other)
        demand.because = text_of(item.get("because"))
        demand.in_weeks = reader.in_weeks(item.get("in weeks"), weeks)
        if demand.least is not None and demand.most is not None and demand.least > demand.most:
            reader.report(
                "keys-at-odds",
                place_of(item, "at most"),
                f"At least {plain(demand.least)} and at most {plain(demand.most)} cannot both hold.",
                change="Correct one of the two.",
            )
            continue
        if demand.subjects:
            found.append(demand)
    return tuple(found)
