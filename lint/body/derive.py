"""Works out which muscles a lift trains, and at what length, from its joint actions and joint path.

The same function serves the catalogue and a team's own exercises. A muscle can have credit only for a joint
action in which it has a role. If a length curve shows how it moves, it must also shorten:

- A prime mover of a main action that shortens by 1 cm or more has direct credit.
- A helper in a main action, or a prime mover of an assisting action, that shortens by 1 cm or more has
  indirect credit.
- Within 0.5 cm of that limit the credit is one step less, since the models differ by as much. It is none if
  the other end of the muscle is stretched by 1 cm or more, as with the hamstrings in a squat.
- A muscle that shortens less than that, or is stretched, has no credit.

For isometric work, and for actions that no joint angle of the path shows, the roles alone decide. A credit
that is stated by hand, with its reason, overrides all of this.
"""

from __future__ import annotations

from .mechanics import DOUBT, SHORTENS, mean_angle, travel

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from .anatomy import Anatomy, Muscle
    from .mechanics import Path

CREDITS = NONE, INDIRECT, DIRECT = "none", "indirect", "direct"
"""The credit that a muscle can have from a lift, from the least to the most."""

_RANK = {credit: rank for rank, credit in enumerate(CREDITS)}
HINGE_KNEE, HINGE_HIP = 40, 40
"""Of a hip hinge, in degrees: the largest mean angle of the knee, and the least movement of the hip."""


class Credit:
    """The credit of one muscle in a lift: direct, indirect or none, and why.

    ``derived`` is the credit without what is stated by hand. ``net`` is the length change over the lift, in
    cm, negative if the muscle shortens. ``position`` is its mean length as a place in its own range, 0
    shortest to 1 longest. Both are None if no length curve covers the lift.
    """

    __slots__ = ("because", "credit", "derived", "muscle", "net", "position")

    def __init__(
        self, muscle: str, credit: str, because: str, net: float | None = None, position: float | None = None
    ) -> None:
        self.muscle = muscle
        self.credit = credit
        self.derived = credit
        self.because = because
        self.net = net
        self.position = position


class Profile:
    """What a lift trains: {muscle: Credit} in the order of the muscles, and whether it is a hip hinge."""

    __slots__ = ("credits", "hinge")

    def __init__(self, credits: dict[str, Credit], hinge: bool) -> None:
        self.credits = credits
        self.hinge = hinge

    def muscles(self, credit: str) -> tuple[str, ...]:
        """The muscles with this credit."""
        return tuple(name for name, given in self.credits.items() if given.credit == credit)

    @property
    def positions(self) -> dict[str, float]:
        """{muscle: place in its own range, two decimals} for muscles that have credit and a length curve."""
        return {
            name: round(given.position, 2)
            for name, given in self.credits.items()
            if given.position is not None and given.credit != NONE
        }


def derive(
    anatomy: Anatomy,
    actions: Sequence[str],
    assists: Sequence[str] = (),
    path: Path | None = None,
    kind: str = "dynamic",
    stated: Mapping[str, tuple[str, str]] | None = None,
) -> Profile:
    """The profile of a lift.

    ``actions`` and ``assists`` are main and assisting joint actions. ``path`` is a full path (see
    mechanics.full_path) or None. ``stated`` is {muscle or group: (credit, reason)}.

    Raises KeyError for an unknown action. Raises ValueError, in plain words, for an unknown muscle, and for
    credit to a muscle that has none of the actions.
    """
    lift = _LiftPath(anatomy, path or {}, kind)
    credits: dict[str, Credit] = {}
    for main, names in ((True, actions), (False, assists)):
        for action in names:
            for muscle in anatomy.movers[action]:
                given = lift.credit(anatomy.muscles[muscle], action, main)
                old = credits.get(muscle)
                if given is not None and (old is None or _RANK[given.credit] > _RANK[old.credit]):
                    credits[muscle] = given
    for name, (credit, because) in (stated or {}).items():
        for member in _members(anatomy, name, credit, {*actions, *assists}):
            credits[member] = lift.stated(credits.get(member), member, credit, because)
    ordered = {name: credits[name] for name in anatomy.muscles if name in credits}
    return Profile(ordered, kind == "dynamic" and "hip extension" in actions and is_hinge(lift.path))


def _members(anatomy: Anatomy, name: str, credit: str, loaded: set[str]) -> list[str]:
    members = anatomy.groups.get(name) or ([name] if name in anatomy.muscles else None)
    if members is None:
        raise ValueError(f"{name} is no muscle or group")
    for member in members:
        if credit != NONE and loaded.isdisjoint(anatomy.muscles[member].acts):
            raise ValueError(f"{member} has none of the actions that this exercise loads")
    return members


class _LiftPath:
    """A path, and what each length curve gives for it. Each curve is worked out once."""

    def __init__(self, anatomy: Anatomy, path: Path, kind: str) -> None:
        self.anatomy = anatomy
        self.path = path
        self.kind = kind
        self.posture = {joint: mean_angle(angles) for joint, angles in path.items()}
        self.measured: dict[str, tuple[float | None, float | None]] = {"": (None, None)}

    def measure(self, name: str) -> tuple[float | None, float | None]:
        """Net change and mean place of a muscle with this curve.

        Each is None if the curve does not cover it.
        """
        if name not in self.measured:
            curve = self.anatomy.curves[name]
            moves = self.kind != "isometric" and curve.reaches(self.path)
            self.measured[name] = (curve.net(self.path) if moves else None, curve.position(self.path))
        return self.measured[name]

    def credit(self, muscle: Muscle, action: str, main: bool) -> Credit | None:
        """The credit of a muscle for one action, or None if it has no role in it that counts."""
        part = muscle.part(action, self.posture)
        if part is None:
            return None
        net, position = self.measure(muscle.mechanics)
        if part.role == "minor":
            words = f"has a part in {action}, not counted: {part.because}"
            return Credit(muscle.name, NONE, words, None, position)
        rank = (2 if part.role == "prime" else 1) - (0 if main else 1)
        if not rank:
            return None
        words = f"{'prime mover' if part.role == 'prime' else 'helper'} in {action}"
        words += "" if main else ", which assists"
        words += f": {part.because}" if part.because else ""
        turns = self.anatomy.actions[action].turns
        if net is None or turns is None or turns[0] not in self.anatomy.curves[muscle.mechanics].angles:
            words += "; held, not moved" if self.kind == "isometric" else ""
            return Credit(muscle.name, CREDITS[rank], words, None, position)
        loss, said = self.loss(muscle.mechanics, turns[0], net)
        return Credit(muscle.name, CREDITS[max(0, rank - loss)], words + said, net, position)

    def loss(self, curve: str, joint: str, net: float) -> tuple[int, str]:
        """How many steps of credit a muscle loses by the way its length changes, and the words for it."""
        if net <= -SHORTENS - DOUBT:
            return 0, f"; shortens by {-net:.1f} cm"
        if net >= SHORTENS:
            return 2, f", but the lift stretches it by {net:.1f} cm"
        if net > -SHORTENS + DOUBT:
            return 2, ", but it hardly changes length"
        words = f"; shortens by about 1 cm ({-net:.1f}), too little to be sure of"
        if net - self.anatomy.curves[curve].share(self.path, joint) >= SHORTENS:
            return 2, f"{words}, and its other end is stretched"
        return 1, words

    def stated(self, before: Credit | None, muscle: str, credit: str, because: str) -> Credit:
        """A credit that is stated by hand. It keeps the derived one beside it."""
        position = self.measure(self.anatomy.muscles[muscle].mechanics)[1]
        given = Credit(muscle, credit, because, before.net if before else None, position)
        given.derived = before.credit if before else NONE
        return given


def is_hinge(path: Path) -> bool:
    """Whether a path, or a part of it, is a hip hinge.

    In a hinge the knee is nearly straight (mean angle 40 degrees at most). The hip moves 40 degrees or more,
    further than the knee, and ends straighter than it began. A part of the path is enough, because a
    glute-ham raise hinges first and then bends the knee.
    """
    if "hip" not in path or "knee" not in path:
        return False
    hip, knee = path["hip"], path["knee"]
    parts = [slice(start, end + 1) for end in range(1, len(hip)) for start in range(end)]
    return any(_hinges(hip[part], knee[part]) for part in parts)


def _hinges(hip: Sequence[float], knee: Sequence[float]) -> bool:
    return (
        mean_angle(knee) <= HINGE_KNEE
        and hip[-1] < hip[0]
        and travel(hip) >= HINGE_HIP
        and travel(hip) > travel(knee)
    )


def actions_of(path: Path) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Main and assisting joint actions of a lift of which only the path is known.

    A joint that turns by 20 degrees or more (15 at the ankle) is loaded. Joints that move together are read
    as the trade reads them (common practice, no source):

    - In a hinge the knee assists.
    - The ankle counts only if it moves alone or points the foot.
    - A knee that bends together with the hip is not loaded.
    - The elbow assists the shoulder in a pull (shoulder extends, elbow bends) and in a press (shoulder
      flexes, elbow straightens).
    """
    turn = {joint: angles[-1] - angles[0] for joint, angles in path.items()}
    hip = _sense(turn, "hip", 20)
    knee = _sense(turn, "knee", 20)
    ankle = _sense(turn, "ankle", 15)
    shoulder = _sense(turn, "shoulder", 20)
    elbow = _sense(turn, "elbow", 20)
    main: list[str] = []
    assist: list[str] = []
    if hip:
        main.append("hip flexion" if hip > 0 else "hip extension")
    if knee and not (hip > 0 and knee > 0):
        action = "knee flexion" if knee > 0 else "knee extension"
        (assist if hip < 0 and knee < 0 and is_hinge(path) else main).append(action)
    if ankle and not main:
        main.append("dorsiflexion" if ankle > 0 else "plantarflexion")
    elif ankle < 0 and path["ankle"][-1] <= -15:
        assist.append("plantarflexion")
    if shoulder:
        main.append("shoulder flexion" if shoulder > 0 else "shoulder extension")
    if elbow:
        action = "elbow flexion" if elbow > 0 else "elbow extension"
        (assist if shoulder * elbow < 0 else main).append(action)
    return tuple(main), tuple(assist)


def _sense(turn: Mapping[str, float], joint: str, least: float) -> int:
    degrees = turn.get(joint, 0.0)
    return 0 if abs(degrees) < least else 1 if degrees > 0 else -1


def patterns_of(stated: str, profile: Profile) -> tuple[str, ...]:
    """The movement patterns of a lift: the stated one, unless it is "", and hip hinge if its path is one."""
    patterns = (stated,) if stated else ()
    return patterns if not profile.hinge or stated == "hip hinge" else (*patterns, "hip hinge")
