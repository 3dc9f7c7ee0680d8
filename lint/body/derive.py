"""Which muscles a lift trains, and at what length, from its joint actions and joint path.

A pure function on data, the same for the catalogue and for a team's own exercises. A muscle gets credit only
for an action that it has:

- prime mover of a main action: direct;
- helper in a main action, or prime mover of an assisting action: indirect.

If its length curve covers the action, the muscle must also shorten, by about 1 cm. The models differ by
0.5 cm, so that there are three cases:

- it shortens by 1.5 cm or more: the credit stays;
- by 0.5 cm to 1.5 cm: one step less, direct becomes indirect and indirect none. It gets none if its other end
  is stretched by 1 cm or more, as that of the hamstrings in a squat;
- by less, or it is stretched: none.

What a muscle is to an action may hold for some movement patterns alone: trials of growth found that squats do
nothing for the hamstrings. A muscle that the lift stretches is told so all the same. Where two joints pull at
a muscle both ways, models differ by more than any limit (mechanics.Curve.in_doubt): the credit is then what
the curve gives, or what is stated, with that doubt beside it.

Isometric work, and actions that no joint angle of the path shows, are judged by the action table alone. A
credit stated by hand, with its reason, overrides all of this.
"""

from __future__ import annotations

from .mechanics import DOUBT, SHORTENS, mean_angle, travel

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from .anatomy import Anatomy, Muscle
    from .mechanics import Curve, Path

CREDITS = NONE, INDIRECT, DIRECT = "none", "indirect", "direct"
"""What a muscle can get from a lift, from the least to the most."""

_RANK = {credit: rank for rank, credit in enumerate(CREDITS)}
HINGE_KNEE, HINGE_HIP, HINGE_END = 40, 40, -10


class Credit:
    """What one muscle gets from a lift: ``credit`` is direct, indirect or none, ``because`` is the reason.

    ``net`` is the length change over the lift in cm. ``position`` is the mean place in the muscle's own range
    (0 to 1). Each is None if no length curve gives it. ``derived`` is the credit before any that is stated by
    hand. ``doubt`` says in words why models cannot decide it, empty if they can.
    ``sources`` are ids of what it rests on beside anatomy and the curves.
    """

    __slots__ = ("because", "credit", "derived", "doubt", "muscle", "net", "position", "sources")

    def __init__(
        self,
        muscle: str,
        credit: str,
        because: str,
        net: float | None = None,
        position: float | None = None,
        *,
        doubt: str = "",
        sources: tuple[str, ...] = (),
    ) -> None:
        self.muscle = muscle
        self.credit = credit
        self.derived = credit
        self.because = because
        self.net = net
        self.position = position
        self.doubt = doubt
        self.sources = sources


class Profile:
    """What a lift trains.

    ``credits`` is {muscle: Credit} in the order of the muscles. ``hinge`` says whether it is a hip hinge.
    """

    __slots__ = ("credits", "hinge")

    def __init__(self, credits: dict[str, Credit], hinge: bool) -> None:
        self.credits = credits
        self.hinge = hinge

    def muscles(self, credit: str) -> tuple[str, ...]:
        """Names of the muscles with this credit."""
        return tuple(name for name, given in self.credits.items() if given.credit == credit)

    @property
    def positions(self) -> dict[str, float]:
        """The mean place of each credited muscle in its own range, if it has one, to two decimals."""
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
    pattern: str = "",
    stated: Mapping[str, tuple[str, str]] | None = None,
) -> Profile:
    """The profile of a lift.

    ``actions`` are the main joint actions, ``assists`` the assisting ones. ``path`` is a full path (see
    mechanics.full_path) or None. ``pattern`` is the movement pattern, empty if none. ``stated`` is {muscle or
    group: (credit, reason)}. Raises KeyError for an unknown action. Raises ValueError, in plain words, for an
    unknown muscle, and for credit that is stated for a muscle with none of the actions.
    """
    lift = _LiftPath(anatomy, path or {}, kind, pattern)
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
    """A lift's path, with each length curve measured on it, and doubted, once."""

    def __init__(self, anatomy: Anatomy, path: Path, kind: str, pattern: str) -> None:
        self.anatomy = anatomy
        self.path = path
        self.kind = kind
        self.pattern = pattern
        self.posture = {joint: mean_angle(angles) for joint, angles in path.items()}
        self.measured: dict[str, tuple[float | None, float | None]] = {"": (None, None)}
        self.doubts: dict[str, str] = {}

    def measure(self, name: str) -> tuple[float | None, float | None]:
        """Net length change (cm) and mean place (0 to 1) of a curve on the path; each None if not known."""
        if name not in self.measured:
            curve = self.anatomy.curves[name]
            moves = self.kind != "isometric" and curve.reaches(self.path)
            self.measured[name] = (curve.net(self.path) if moves else None, curve.position(self.path))
        return self.measured[name]

    def credit(self, muscle: Muscle, action: str, main: bool) -> Credit | None:
        """What the muscle gets for one action, None where there is nothing to say."""
        part = muscle.part(action, self.posture, self.pattern)
        net, position = self.measure(muscle.mechanics) if part else (None, None)
        if part and part.patterns and net is not None and net >= SHORTENS:
            part = muscle.part(action, self.posture)
        if part is None:
            return None
        if part.role == "minor":
            words = f"has a part in {action}, not counted: {part.because}"
            return Credit(muscle.name, NONE, words, None, position, sources=part.sources)
        rank = (2 if part.role == "prime" else 1) - (0 if main else 1)
        if not rank:
            return None
        words = f"{'prime mover' if part.role == 'prime' else 'helper'} in {action}"
        words += "" if main else ", which assists"
        words += f": {part.because}" if part.because else ""
        turns = self.anatomy.actions[action].turns
        if net is None or turns is None or turns[0] not in self.anatomy.curves[muscle.mechanics].angles:
            words += "; held, not moved" if self.kind == "isometric" else ""
            return Credit(muscle.name, CREDITS[rank], words, None, position, sources=part.sources)
        loss, said = self.loss(muscle.mechanics, turns[0], net)
        credit, doubt = CREDITS[max(0, rank - loss)], self.doubt(muscle.mechanics)
        return Credit(muscle.name, credit, words + said, net, position, doubt=doubt, sources=part.sources)

    def loss(self, curve: str, joint: str, net: float) -> tuple[int, str]:
        """How many steps of credit a muscle loses because of its length change, and the words for that."""
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

    def doubt(self, name: str) -> str:
        """Why models cannot decide what a curve gives, "" where they can."""
        if name not in self.doubts:
            curve = self.anatomy.curves[name]
            self.doubts[name] = _doubt(curve) if curve.in_doubt(self.path) else ""
        return self.doubts[name]

    def stated(self, before: Credit | None, muscle: str, credit: str, because: str) -> Credit:
        """A credit stated by hand. It keeps the derived one."""
        position = self.measure(self.anatomy.muscles[muscle].mechanics)[1]
        given = Credit(muscle, credit, because, before.net if before else None, position)
        given.derived, given.doubt = (before.credit, before.doubt) if before else (NONE, "")
        return given


def _doubt(curve: Curve) -> str:
    return f"{' and '.join(curve.angles)} pull at it both ways, and models differ by {curve.doubt:g} cm"


def is_hinge(path: Path) -> bool:
    """Whether a path, or a part of it, is a hip hinge.

    In a hinge the knee is nearly straight (mean 40 degrees at most). The hip moves 40 degrees or more and
    further than the knee, and ends straighter than it began: about straight, for a leg that is kicked out
    behind the trunk (past 10 degrees) is no fold at the hip. A part is enough, because a glute-ham raise
    first hinges and then bends the knee.
    """
    if "hip" not in path or "knee" not in path:
        return False
    hip, knee = path["hip"], path["knee"]
    parts = [slice(start, end + 1) for end in range(1, len(hip)) for start in range(end)]
    return any(_hinges(hip[part], knee[part]) for part in parts)


def _hinges(hip: Sequence[float], knee: Sequence[float]) -> bool:
    return (
        mean_angle(knee) <= HINGE_KNEE
        and HINGE_END <= hip[-1] < hip[0]
        and travel(hip) >= HINGE_HIP
        and travel(hip) > travel(knee)
    )


def actions_of(path: Path) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The main and the assisting joint actions of a lift of which only the path is known.

    A joint is loaded if it turns by 20 degrees or more (15 at the ankle). Joints that move together are read
    as the trade usually does:

    - in a hinge the knee assists;
    - the ankle counts only if it moves alone or points the foot;
    - a knee that bends while the hip bends is not loaded;
    - the elbow assists the shoulder in pulling (shoulder extends, elbow bends) and in pressing (shoulder
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
    """The movement patterns of a lift: the stated one ("" if none), and hip hinge if the path is one."""
    patterns = (stated,) if stated else ()
    return patterns if not profile.hinge or stated == "hip hinge" else (*patterns, "hip hinge")
