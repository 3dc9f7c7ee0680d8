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
    """What a muscle is to one action: role prime, helper or minor, in lifts of ``patterns`` (all, if none are
    named) and in the postures of ``when``, {joint: (lowest, highest)} in degrees.

    ``because`` is "" where nothing needs saying; ``sources`` are the ids of what it rests on.
    """

    __slots__ = ("because", "patterns", "role", "sources", "when")

    def __init__(
        self,
        role: str,
        patterns: tuple[str, ...],
        when: Mapping[str, tuple[float, float]],
        because: str,
        sources: tuple[str, ...],
    ) -> None:
        self.role = role
        self.patterns = patterns
        self.when = when
        self.because = because
        self.sources = sources

    def fits(self, posture: Mapping[str, float], pattern: str) -> bool:
        """Whether this line holds in a lift; a joint of which nothing is known fits."""
        if self.patterns and pattern not in self.patterns:
            return False
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

    def part(self, action: str, posture: Mapping[str, float], pattern: str = "") -> MuscleRole | None:
        """What the muscle is to an action in a posture (mean angles, degrees) and a pattern, or None."""
        for part in self.acts.get(action, ()):
            if part.fits(posture, pattern):
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

    def band(self, muscle: str) -> float:
        """How near to a limit of a length class the place of a muscle may belong to either."""
        return self.curves[self.muscles[muscle].mechanics].band


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
                    action: tuple(
                        MuscleRole(role, patterns, dict(when), why, sources)
                        for role, patterns, when, why, sources in parts
                    )
                    for action, parts in acts
                },
                sources,
            )
            for name, region, groups, crosses, mechanics, acts, sources in muscles
        ),
        (
            Curve(name, source, dict(angles), least, most, dict(trusted), band, doubt)
            for name, source, angles, least, most, trusted, band, doubt in curves
        ),
    )
