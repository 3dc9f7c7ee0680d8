"""How long a muscle is, and how far a lift shortens it, worked out from the joint angles of the lift.

A joint path is ``{joint: (angle, angle, ...)}``: the way-points of the lifting phase from start to end, in
degrees. Flexion of hip, knee, shoulder and elbow is positive, and so is dorsiflexion. The hip angle is that
between thigh and pelvis. Lengths are in cm. A curve has one cubic per joint, after Rajagopal and others 2016
(legs) and the open model arm26 (arm). The numbers are in data/mechanics.yaml.
"""

from __future__ import annotations

from itertools import pairwise
from math import radians

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    Path = Mapping[str, Sequence[float]]

#: The angles that a path may hold, in degrees. The curves end at ``DEEPEST_KNEE``: a knee that is bent
#: further counts as bent that far.
RANGES = {"hip": (-30, 120), "knee": (0, 150), "ankle": (-40, 25), "shoulder": (-60, 180), "elbow": (0, 150)}
DEEPEST_KNEE = 120

LENGTHS = ("long", "middle", "short")
LONG, SHORT, BAND = 0.60, 0.40, 0.07
SHORTENS, DOUBT = 1.0, 0.5
STEPS = 20


class Curve:
    """How much longer or shorter one muscle is than in the neutral posture: a sum of one cubic per joint.

    ``angles`` is {joint: coefficients of the cubic}. ``least`` and ``most`` (cm) are the ends of the muscle's
    own range, None if no place in it can be given. ``trusted`` is {joint: (lowest, highest)} in degrees, the
    angles between which a moving joint gives a credible length change. ``band`` is how near to a limit of a
    length class a place may belong to either. ``doubt`` (cm) is how far models of the muscle differ in a lift
    in which two joints pull its length both ways; 0 where that is not known to matter.
    """

    __slots__ = ("angles", "band", "doubt", "least", "most", "name", "source", "trusted")

    def __init__(
        self,
        name: str,
        source: str,
        angles: Mapping[str, Sequence[float]],
        least: float | None,
        most: float | None,
        trusted: Mapping[str, Sequence[float]],
        band: float,
        doubt: float,
    ) -> None:
        self.name = name
        self.source = source
        self.angles = angles
        self.least = least
        self.most = most
        self.trusted = trusted
        self.band = band
        self.doubt = doubt

    def length(self, posture: Mapping[str, float]) -> float:
        """Length compared with neutral, in cm, at joint angles in degrees. A joint not named counts as 0."""
        total = 0.0
        for joint, (first, second, third) in self.angles.items():
            q = radians(_held(joint, posture.get(joint, 0.0)))
            total += q * (first + q * (second + q * third))
        return total

    def reaches(self, path: Path) -> bool:
        """Whether the path names every joint of the curve, and moves it only between its trusted angles."""
        for joint in self.angles:
            if joint not in path:
                return False
        for joint, (low, high) in self.trusted.items():
            least, most = min(path[joint]), max(path[joint])
            if least != most and not (low <= least and most <= high):
                return False
        return True

    def net(self, path: Path) -> float:
        """Length change from the first way-point to the last, in cm; negative if the muscle shortens."""
        return sum(self.share(path, joint) for joint in self.angles)

    def share(self, path: Path, joint: str) -> float:
        """The part of the net change that one joint causes, in cm."""
        angles = path[joint]
        if angles[0] == angles[-1]:
            return 0.0
        first, second, third = self.angles[joint]
        a, b = radians(_held(joint, angles[0])), radians(_held(joint, angles[-1]))
        return b * (first + b * (second + b * third)) - a * (first + a * (second + a * third))

    def in_doubt(self, path: Path) -> bool:
        """Whether models differ too far to say if the lift shortens the muscle by as much as credit asks.

        That is: one joint shortens it by 1 cm or more while another stretches it by as much, and what is left
        lies between a stretch of 1 cm and the 1.5 cm that full credit asks for with ``doubt`` added.
        """
        if not self.doubt:
            return False
        shares = [self.share(path, joint) for joint in self.angles]
        both_ways = min(shares) <= -SHORTENS and max(shares) >= SHORTENS
        return both_ways and -SHORTENS - DOUBT - self.doubt < sum(shares) < SHORTENS

    def excursion(self, path: Path) -> float:
        """The longest length along the path minus the shortest, in cm."""
        lengths = [self.length(posture) for posture in along(path)]
        return max(lengths) - min(lengths)

    def position(self, path: Path) -> float | None:
        """Mean place in the muscle's own range along the path: 0 shortest, 1 longest; None if not known."""
        if self.least is None or self.most is None or any(joint not in path for joint in self.angles):
            return None
        mean = sum(
            map(_mean_cubic, (path[joint] for joint in self.angles), self.angles.values(), self.angles)
        )
        return (mean - self.least) / (self.most - self.least)


def _mean_cubic(angles: Sequence[float], cubic: Sequence[float], joint: str) -> float:
    """Mean of one joint's cubic over the straight lines between way-points. Each line counts the same."""
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


def length_class(position: float, band: float = BAND) -> tuple[str, bool]:
    """The class, "long" (0.60 and above), "short" (0.40 and below) or "middle", and whether that is sure.

    Published models differ in the place of a muscle in its range, so within ``band`` of a limit the class may
    be either.
    """
    sure = abs(position - LONG) >= band and abs(position - SHORT) >= band
    long, middle, short = LENGTHS
    return (long if position >= LONG else short if position <= SHORT else middle), sure


def full_path(path: Mapping[str, float | Sequence[float]]) -> dict[str, tuple[float, ...]]:
    """The path with an angle for every joint at every way-point. A single number holds for all of them.

    Raises ValueError, in plain words, for an unknown joint, an angle out of range or lists of unequal length.
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
    """The posture at one way-point: {joint: angle in degrees}."""
    return {joint: angles[index] for joint, angles in path.items()}


def along(path: Path) -> list[dict[str, float]]:
    """Postures along the straight lines between way-points, evenly spaced on each line."""
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
    """Mean angle over the path, in degrees. Each straight line between way-points counts the same."""
    if len(angles) == 1:
        return angles[0]
    return sum(a + b for a, b in pairwise(angles)) / (2 * (len(angles) - 1))


def travel(angles: Sequence[float]) -> float:
    """The largest angle of a joint over the path minus the smallest, in degrees."""
    return max(angles) - min(angles)
