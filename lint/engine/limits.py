"""Limits of rules: their options, and their values in a situation."""

from __future__ import annotations

from ..counting.credits import FRACTIONAL

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping

    Default = float | tuple[str, ...] | dict[str, float]


class Situation:
    """What a limit may depend on: the programme's goal, the athletes' level and the phase of the week.

    Empty where nothing is written; ``level`` is the lowest among several athletes.
    """

    __slots__ = ("goal", "level", "phase")

    def __init__(self, goal: str = "", level: str = "", phase: str = "") -> None:
        self.goal = goal
        self.level = level
        self.phase = phase


class Option:
    """A limit of a rule: name, default, unit and the ground on which the default stands.

    ``by`` holds other defaults for some goals, levels or phases, ``({"goal": "strength"}, 1)``; the last one
    that fits counts.
    """

    __slots__ = ("by", "default", "ground", "name", "unit")

    def __init__(
        self,
        name: str,
        default: Default,
        unit: str,
        ground: str,
        by: tuple[tuple[dict[str, str], Default], ...] = (),
    ) -> None:
        self.name = name
        self.default = default
        self.unit = unit
        self.ground = ground
        self.by = by

    def value(self, situation: Situation) -> Default:
        """The default in a situation."""
        value = self.default
        for wanted, other in self.by:
            if all(getattr(situation, what) == word for what, word in wanted.items()):
                value = other
        return value


class Limits:
    """The limits a rule is run with: its defaults in the situation, moved where the team has set them."""

    __slots__ = ("_values",)

    def __init__(
        self, options: tuple[Option, ...], moved: Mapping[str, Default], situation: Situation | None = None
    ) -> None:
        situation = situation or Situation()
        self._values: dict[str, Default] = {
            option.name: moved[option.name] if option.name in moved else option.value(situation)
            for option in options
        }

    def number(self, name: str) -> float:
        """A limit that is one number."""
        value = self._values[name]
        assert isinstance(value, (int, float))
        return value

    def names(self, name: str) -> tuple[str, ...]:
        """A limit that lists names."""
        value = self._values[name]
        assert isinstance(value, tuple)
        return value

    def name(self, name: str) -> str:
        """A limit that is one name: the first of those it lists."""
        return self.names(name)[0]

    def table(self, name: str) -> dict[str, float]:
        """A limit that gives a number for each of several names."""
        value = self._values[name]
        assert isinstance(value, dict)
        return value


COUNTING = Option(
    "counting", (FRACTIONAL,), "kind of count: direct, fractional or total", "pelland-2026-frac"
)
"""The option of rules that hold weekly sets against a limit or floor; a team's `counting` moves them all."""
