"""Whether a lift can be done with the implement that its name states, so that the reading carries it."""

from __future__ import annotations

from .name_asides import MEASURED
from .name_bags import IMPLEMENT, meanings

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .catalogue import NameReading

LOOSE = ("barbell", "dumbbell", "kettlebell", "plate", "sandbag", "medicine ball", "bodyweight", "none")
"""Implements that can replace one another: the body moves the same way under any of them."""

REPLACES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(LOOSE, LOOSE),
    "trap bar": ("barbell", "dumbbell", "kettlebell", "bodyweight"),
    "guided bar": ("barbell", "dumbbell", "bodyweight"),
    "cable": ("dumbbell", "kettlebell", "barbell", "band"),
    "band": ("dumbbell", "kettlebell", "barbell", "cable", "bodyweight", "none"),
}
"""The implements of exercises that another one can replace without changing what is trained (common practice,
no source)."""

ADDED = "band"
"""The implement that is also added to others: a bar with bands stays a bar."""

BODY = "bodyweight"
"""The implement of exercises in which a band is all the load that is added: "push-up with a band"."""

WEIGHTED = ("sliders", "suspension", "box", "rope")
"""Implements that leave the hands free for another one."""

HELD_BY = ("with", "by", "via", "in", "on", "holding", MEASURED)
"""What ties an implement to a lift. Other joining words tie a place: "off plates"."""

CABLED = ("machine pulldown", "machine cable row")
"""Machines whose weight hangs on a cable."""


def carries(reading: NameReading, word: str, tie: str, *, several: bool, behind: bool) -> bool | None:
    """What an implement in a name does to a lift: True if it is only said beside it, False if the reading
    has it, None if it may make another lift.

    ``tie`` is what ties the word to the lift, ``behind`` whether that stands in front of it, and ``several``
    whether the name states several implements.
    """
    (stated,) = meanings(word, IMPLEMENT)
    exercise = reading.exercise
    own = stated == reading.implement or stated in exercise.station
    sledded = stated == "sled" and exercise.implement == "machine"
    built_in = stated == "machine" and any(one.startswith("machine") for one in exercise.station)
    cabled = stated == "cable" and not set(CABLED).isdisjoint(exercise.station)
    if own or sledded or cabled:
        return False
    if stated in LOOSE and exercise.implement in WEIGHTED:
        return True
    if built_in:
        return False
    if several and tie == "on":  # what is stood or lain on: "on a plate"
        return True
    if stated == "bodyweight" and (tie == MEASURED or several):
        return True
    added = stated == ADDED and (several or (tie and not (tie in HELD_BY and exercise.implement == BODY)))
    if added or (stated in LOOSE and tie and tie not in HELD_BY):
        return True
    if exercise.implement in REPLACES.get(stated, ()) and reading.implement == exercise.implement:
        reading.implement = stated
        return False
    return (stated in LOOSE and behind) or None
