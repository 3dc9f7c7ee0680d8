"""What trains an athlete beside the lifts that are counted: the sport, activities, what braces the trunk."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.week import muscles_of
from ..lint.wording.words import says

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup


def is_trained_beside(ledger: Ledger, region: str) -> bool:
    """Whether other work trains a region well enough: activities, a sport, or lifts that brace the trunk."""
    if region == "abdomen" and any(_braces(entry) for _, entry in ledger.entries()):
        return True
    activities = {activity.name: activity for week in ledger.weeks for activity in week.activities}
    loaded = muscles_of([term for activity in activities.values() for term, _ in activity.loads])
    if not loaded.isdisjoint(catalogue.regions[region]):
        return True
    sport = ledger.athlete.sport if ledger.athlete else ""
    return region in ("legs", "hips") and says(ON_THE_LEGS, sport, ledger.programme.name, *activities)


ON_THE_LEGS = (
    "run", "running", "runner", "jogging", "cycling", "cyclist", "bike", "ride", "riding", "walk", "walking",
    "hike", "hiking", "football", "soccer", "hockey", "rugby", "basketball", "handball", "netball", "skiing",
    "ski", "skating", "athletics", "triathlon", "orienteering", "match", "game", "stairs", "dance", "dancing",
)  # fmt: skip
"""Words for what works the legs beside the gym (common practice, no source)."""


def _braces(entry: SetGroup) -> bool:
    """Whether the trunk holds something in a lift: a carry, what stands loaded, hangs or planks."""
    exercise = entry.exercise
    if exercise is None or not entry.is_done:
        return False
    if exercise.pattern == "carry":
        return True
    if exercise.stance in ("hanging", "prone") and exercise.implement == "bodyweight":
        return True
    stands = exercise.stance in ("standing", "split", "single leg", "kneeling")
    return stands and exercise.implement not in ("machine", "none") and bool(exercise.pattern)


ALL_FOUR = ("vertical pull", "horizontal pull", "vertical push", "horizontal push")

IN_THE_SPORT = {
    ("swim", "swimming", "swimmer", "water polo", "triathlon", "triathlete", "artistic swimming", "diving",
     "surfing", "lifesaving", "gymnastics", "gymnast"): ALL_FOUR,
    ("rowing", "rower", "canoe", "canoeing", "kayak", "kayaking", "paddling", "sailing", "judo", "wrestling",
     "wrestler", "grappling", "jiu jitsu"): ("horizontal pull", "vertical pull"),
    ("climbing", "climber", "bouldering"): ("vertical pull", "horizontal pull"),
    ("boxing", "boxer", "kickboxing", "shot put", "throwing"): ("horizontal push", "vertical push"),
    ("volleyball", "tennis", "badminton", "handball", "baseball", "cricket", "javelin"): ("vertical push",),
}  # fmt: skip
"""Directions in which a sport itself works the arms by the hour: its gym work may leave them out."""


def in_the_sport(ledger: Ledger) -> set[str]:
    """The directions that an athlete's sport, or what takes place beside the sessions, has plenty of."""
    names = [ledger.athlete.sport if ledger.athlete else "", ledger.programme.name]
    names += [activity.name for week in ledger.weeks for activity in week.activities]
    return {one for words, several in IN_THE_SPORT.items() if says(words, *names) for one in several}


ON_THE_ROAD = (
    "hotel", "hotels", "travel", "travelling", "holiday", "holidays", "on the road", "camping", "trip",
    "touring", "tour", "at sea", "on board", "aboard", "deployed", "deployment", "expedition", "cabin",
)  # fmt: skip
"""Words for programmes that are done away from home with little equipment (common practice, no source)."""


def is_on_the_road(ledger: Ledger) -> bool:
    """Whether a programme is for weeks away from home."""
    programme, athlete = ledger.programme, ledger.athlete
    return says(ON_THE_ROAD, programme.name, programme.note, athlete.note if athlete else "")


WEEKS_AWAY = 6
"""Weeks away from home for which keeping up what can be done will do (common practice, no source)."""


def keeps_up_away(ledger: Ledger) -> bool:
    """Whether a programme is for so few weeks away from home that nothing is built in them."""
    return len(ledger.weeks) <= WEEKS_AWAY and is_on_the_road(ledger)
