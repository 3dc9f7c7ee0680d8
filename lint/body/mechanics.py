"""How long a muscle is at some joint angles, and how far a lift shortens it.

A joint path is ``{joint: (angle, angle, ...)}``: the joint's angle in degrees at each way-point of the
lifting phase, from start to end. Flexion of hip, knee, shoulder and elbow is positive, and so is
dorsiflexion. The hip angle is that of the thigh against the pelvis. Lengths are in cm. A length curve is one
cubic for each joint, after Rajagopal and others 2016 (legs) and the open model arm26 (arm); the curves stand
in data/mechanics.yaml.
"""

from __future__ import annotations

from itertools import pairwise
from math import radians

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    Path = Mapping[str, Sequence[float]]

#: The lowest and highest angle that a path may have, in degrees. The curves end at ``DEEPEST_KNEE``, so a
#: knee bent further is taken as bent that far.
RANGES = {"hip": (-30, 120), "knee": (0, 150), "ankle": (-40, 25), "shoulder": (-60, 180), "elbow": (0, 150)}
DEEPEST_KNEE = 120

LENGTHS = ("long", "middle", "short")
"""Classes of the length at which a muscle works."""

LONG, SHORT, BAND = 0.60, 0.40, 0.07
"""Places in a muscle's range: long from, short up to, and how near to these the class is not sure."""

SHORTENS, DOUBT = 1.0, 0.5
"""Length change in cm: how far a muscle must shorten to have credit, and how near to this is not sure."""

STEPS = 20
"""Postures that `along` gives for each line between way-points."""


class Curve:
    """The length of a muscle against its length in the neutral posture: the sum of one cubic for each joint.

    ``least`` and ``most`` are the ends of the muscle's own range, in cm. They are None if its place in the
    range cannot be told. ``trusted`` is {joint: (lowest, highest)}: the curve is used for a moving joint only
    within these angles.
    """

    __slots__ = ("angles", "least", "most", "name", "source", "trusted")

    def __init__(
        self,
        name: str,
        source: str,
        angles: Mapping[str, Sequence[float]],
        least: float | None,
        most: float | None,
        trusted: Mapping[str, Sequence[float]],
    ) -> None:
        self.name = name
        self.source = source
        self.angles = angles
        self.least = least
        self.most = most
        self.trusted = trusted

    def length(self, posture: Mapping[str, float]) -> float:
        """Length against neutral, in cm, at joint angles in degrees.

        A joint that is not named counts as 0.
        """
        total = 0.0
        for joint, (first, second, third) in self.angles.items():
            q = radians(_held(joint, posture.get(joint, 0.0)))
            total += q * (first + q * (second + q * third))
        return total

    def reaches(self, path: Path) -> bool:
        """Whether the curve covers a path: it names every joint, and each moves within trusted angles."""
        for joint in self.angles:
            if joint not in path:
                return False
        for joint, (low, high) in self.trusted.items():
            least, most = min(path[joint]), max(path[joint])
            if least != most and not (low <= least and most <= high):
                return False
        return True

    def net(self, path: Path) -> float:
        """Length change from the first way-point to the last, in cm. Negative if the muscle shortens."""
        return sum(self.share(path, joint) for joint in self.angles)

    def share(self, path: Path, joint: str) -> float:
        """The part of the net change that comes from one joint, in cm."""
        angles = path[joint]
        if angles[0] == angles[-1]:
            return 0.0
        first, second, third = self.angles[joint]
        a, b = radians(_held(joint, angles[0])), radians(_held(joint, angles[-1]))
        return b * (first + b * (second + b * third)) - a * (first + a * (second + a * third))

    def excursion(self, path: Path) -> float:
        """The longest minus the shortest length along the path, in cm."""
        lengths = [self.length(posture) for posture in along(path)]
        return max(lengths) - min(lengths)

    def position(self, path: Path) -> float | None:
        """Mean place in the muscle's own range along the path: 0 shortest, 1 longest. None if not known."""
        if self.least is None or self.most is None or any(joint not in path for joint in self.angles):
            return None
        mean = sum(
            map(_mean_cubic, (path[joint] for joint in self.angles), self.angles.values(), self.angles)
        )
        return (mean - self.least) / (self.most - self.least)


def _mean_cubic(angles: Sequence[float], cubic: Sequence[float], joint: str) -> float:
    """The mean of one joint's cubic over the straight lines between way-points. Each line counts the same."""
    first, second, third = cubic
    q = [radians(_held(joint, angle)) for angle in angles]
    if min(q) == max(q):
        return q[0] * (first + q[0] * (second + q[0] * third))
    total = 0.0
    for a, b in pairwise(q):
        total += (
            first * (a + b) / 2
            + second * (a * a + a * b + b * b) / 3
            + third * (a * a * a + a * a * b + a * b * b + b * b * b) / 4
        )
    return total / (len(q) - 1)


def _held(joint: str, angle: float) -> float:
    return DEEPEST_KNEE if joint == "knee" and angle > DEEPEST_KNEE else angle


def length_class(position: float) -> tuple[str, bool]:
    """The class of a place in a muscle's range, and whether it is sure.

    The class is "long" from 0.60, "short" up to 0.40, else "middle". Two published models differ by up to
    0.12 in the place of a muscle in its range, so the class is not sure within 0.07 of a limit.
    """
    sure = abs(position - LONG) >= BAND and abs(position - SHORT) >= BAND
    long, middle, short = LENGTHS
    return (long if position >= LONG else short if position <= SHORT else middle), sure


def full_path(path: Mapping[str, float | Sequence[float]]) -> dict[str, tuple[float, ...]]:
    """The path with an angle for every joint at every way-point. A single number holds at all of them.

    Raises ValueError, in plain words, for an unknown joint, an angle out of range, or lists of unequal
    length.
    """
    points = {j: (v,) if isinstance(v, (int, float)) else tuple(v) for j, v in path.items()}
    count = max((len(angles) for angles in points.values()), default=1)
    for joint, angles in points.items():
        if joint not in RANGES:
            raise ValueError(f"{joint} is no joint of a path; those are {', '.join(RANGES)}")
        if len(angles) not in (1, count):
            raise ValueError(f"{joint} has {len(angles)} way-points where another joint has {count}")
        low, high = RANGES[joint]
        for angle in angles:
            if not low <= angle <= high:
                raise ValueError(f"{joint} at {angle:g} degrees is out of range, {low} to {high}")
    return {joint: angles if len(angles) == count else angles * count for joint, angles in points.items()}


def at(path: Path, index: int) -> dict[str, float]:
    """The posture at one way-point."""
    return {joint: angles[index] for joint, angles in path.items()}


def along(path: Path) -> list[dict[str, float]]:
    """Postures along the straight lines between way-points, ``STEPS`` on each line."""
    count = max((len(angles) for angles in path.values()), default=1)
    if count == 1 or all(min(angles) == max(angles) for angles in path.values()):
        return [at(path, 0)]
    postures = [at(path, 0)]
    for index in range(count - 1):
        start, end = at(path, index), at(path, index + 1)
        for step in range(1, STEPS + 1):
            part = step / STEPS
            postures.append({joint: start[joint] + part * (end[joint] - start[joint]) for joint in start})
    return postures


def mean_angle(angles: Sequence[float]) -> float:
    """The mean angle over the straight lines between way-points. Each line counts the same."""
    if len(angles) == 1:
        return angles[0]
    return sum(a + b for a, b in pairwise(angles)) / (2 * (len(angles) - 1))


def travel(angles: Sequence[float]) -> float:
    """The largest minus the smallest angle, in degrees."""
    return max(angles) - min(angles)
