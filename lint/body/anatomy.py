"""Joint actions, muscles and length curves, ready for derive.py to work with."""

from __future__ import annotations

from .mechanics import Curve

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from typing import Any


class Action:
    """A joint action, such as knee flexion at the knee.

    ``opposes`` is the opposite action, if there is one. ``turns`` is (joint, +1 or -1): the joint angle of a
    path that the action makes larger (+1) or smaller (-1). It is None where no angle of a path shows the
    action.
    """

    __slots__ = ("joint", "name", "opposes", "turns")

    def __init__(self, name: str, joint: str, opposes: str | None, turns: tuple[str, int] | None) -> None:
        self.name = name
        self.joint = joint
        self.opposes = opposes
        self.turns = turns


class MuscleRole:
    """The role of a muscle in one joint action: prime, helper or minor.

    ``when`` is {joint: (lowest, highest)} in degrees: the postures in which the muscle has this role. Empty
    means every posture. ``because`` is the reason, or "".
    """

    __slots__ = ("because", "role", "when")

    def __init__(self, role: str, when: Mapping[str, tuple[float, float]], because: str) -> None:
        self.role = role
        self.when = when
        self.because = because

    def fits(self, posture: Mapping[str, float]) -> bool:
        """Whether the role holds in a posture. A joint whose angle is not known is taken to fit."""
        for joint, (low, high) in self.when.items():
            angle = posture.get(joint)
            if angle is not None and not low <= angle <= high:
                return False
        return True


class Muscle:
    """A muscle, or one head of a muscle.

    ``acts`` is {joint action: its roles in that action}. ``mechanics`` is the name of its length curve, or
    "".
    """

    __slots__ = ("acts", "crosses", "groups", "mechanics", "name", "region", "sources")

    def __init__(
        self,
        name: str,
        region: str,
        groups: tuple[str, ...],
        crosses: tuple[str, ...],
        mechanics: str,
        acts: Mapping[str, tuple[MuscleRole, ...]],
        sources: tuple[str, ...],
    ) -> None:
        self.name = name
        self.region = region
        self.groups = groups
        self.crosses = crosses
        self.mechanics = mechanics
        self.acts = acts
        self.sources = sources

    def part(self, action: str, posture: Mapping[str, float]) -> MuscleRole | None:
        """The role of the muscle in an action, in a posture (mean angles in degrees), or None."""
        for part in self.acts.get(action, ()):
            if part.fits(posture):
                return part
        return None


class Anatomy:
    """All actions, muscles and curves, and the muscles of each action (``movers``), group and region."""

    __slots__ = ("actions", "curves", "groups", "movers", "muscles", "regions")

    def __init__(self, actions: Iterable[Action], muscles: Iterable[Muscle], curves: Iterable[Curve]) -> None:
        self.actions = {action.name: action for action in actions}
        self.muscles = {muscle.name: muscle for muscle in muscles}
        self.curves = {curve.name: curve for curve in curves}
        self.groups: dict[str, list[str]] = {}
        self.regions: dict[str, list[str]] = {}
        self.movers: dict[str, list[str]] = {name: [] for name in self.actions}
        for muscle in self.muscles.values():
            self.regions.setdefault(muscle.region, []).append(muscle.name)
            for group in muscle.groups:
                self.groups.setdefault(group, []).append(muscle.name)
            for action in muscle.acts:
                self.movers[action].append(muscle.name)


def anatomy_of(actions: Iterable[Any], muscles: Iterable[Any], curves: Iterable[Any]) -> Anatomy:
    """An Anatomy from plain rows.

    A row holds the arguments of its class in order; a dict is a tuple of pairs.
    """
    return Anatomy(
        (Action(*row) for row in actions),
        (
            Muscle(
                name,
                region,
                groups,
                crosses,
                mechanics,
                {
                    action: tuple(MuscleRole(role, dict(when), why) for role, when, why in parts)
                    for action, parts in acts
                },
                sources,
            )
            for name, region, groups, crosses, mechanics, acts, sources in muscles
        ),
        (
            Curve(name, source, dict(angles), least, most, dict(trusted))
            for name, source, angles, least, most, trusted in curves
        ),
    )
