"""Limits of rules: their options, and their values in a situation."""

from __future__ import annotations

from ..body import catalogue
from ..counting.credits import FRACTIONAL
from ..wording.words import amount, duration, exact, listed, more_sets, part, ratios, times_as_many

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Mapping
    from typing import Any

    from ..counting.week import Week
    from ..text.places import Term

    Default = float | tuple[str, ...] | dict[str, float]

    Named = str | tuple[str, str]


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

    The rule's page and a finding's card say the ground, the finding itself does not. ``by`` holds other
    defaults for some goals, levels or phases, ``({"goal": "strength"}, 1)``; the last one that fits counts.
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


class Condition(Option):
    """An option that decides what is looked at, or how serious a finding is; no finding says it."""

    __slots__ = ()

    @classmethod
    def like(cls, option: Option) -> Condition:
        """An option that other rules say, for one whose findings do not."""
        return cls(option.name, option.default, option.unit, option.ground, option.by)


class Length(Option):
    """An option that decides how many things a finding names."""

    __slots__ = ()


TEAM, PRESET = "your team's", "your preset's"
"""Whose a limit is that does not stand at its default."""

FORMS = {
    "": exact,
    "duration": duration,
    "part": part,
    "ratios": ratios,
    "times as many": times_as_many,
    "more sets": more_sets,
}
"""Forms of a number in words; any other form is a unit, ``s`` or ``day``."""


class _Said:
    """A limit as a text says it: its number, whose it is (empty for a default), and its words there."""

    __slots__ = ("number", "owner", "words")

    def __init__(self, number: float, owner: str) -> None:
        self.number = number
        self.owner = owner
        self.words = ""

    def __format__(self, form: str) -> str:
        self.words = FORMS[form](self.number) if form in FORMS else amount(self.number, form)
        return self.words


class Limits:
    """The limits a rule is run with: its defaults in the situation, moved where the team has set them.

    ``moved`` holds what the team has set, ``preset`` the defaults of the preset that it names, by option.

    ``number(name)`` is a limit that is one number; of a table, ``number((limit, name))``, the number that it
    gives a name. KeyError where there is none. Rules ask it of every line, so it is the look-up itself.
    """

    __slots__ = ("_owners", "_values", "number")

    def __init__(
        self,
        options: tuple[Option, ...],
        moved: Mapping[str, Default],
        situation: Situation | None = None,
        preset: Mapping[str, Default] | None = None,
    ) -> None:
        situation = situation or Situation()
        preset = preset or {}
        self._owners = {**dict.fromkeys(preset, PRESET), **dict.fromkeys(moved, TEAM)}
        set_anew = {**preset, **moved}
        self._values: dict[str, Any] = {
            option.name: set_anew[option.name] if option.name in set_anew else option.value(situation)
            for option in options
        }
        numbers: dict[Named, float] = {}
        for name, value in self._values.items():
            if type(value) is dict:
                numbers.update({(name, of): number for of, number in value.items()})
            elif type(value) is not tuple:
                numbers[name] = value
        self.number: Callable[[Named], float] = numbers.__getitem__

    def names(self, name: str) -> tuple[str, ...]:
        """A limit that lists names."""
        names: tuple[str, ...] = self._values[name]
        assert type(names) is tuple
        return names

    def name(self, name: str) -> str:
        """A limit that is one name: the first of those it lists."""
        return self.names(name)[0]

    def table(self, name: str) -> dict[str, float]:
        """A limit that gives a number for each of several names."""
        table: dict[str, float] = self._values[name]
        assert type(table) is dict
        return table

    def is_default(self, name: str) -> bool:
        """Whether a limit stands at its default: neither the team nor its preset has set it."""
        return name not in self._owners

    def is_the_teams(self, name: str) -> bool:
        """Whether the team has set a limit."""
        return self._owners.get(name) == TEAM

    def words(self, text: str, *names: Named) -> str:
        """A text with limits in its braces, in turn, and whose they are once they are moved.

        ``words("at most {:s}", "longest")`` is ``at most 120 s``, and once it is moved ``at most 90 s (your
        team's limit)``. A brace may hold one of `FORMS` or a unit. No other words of the text may come from
        a file.
        """
        said = [self._said(name) for name in names]
        filled = text.format(*said)
        owners = {one.owner for one in said}
        owner = owners.pop() if len(owners) == 1 else ""
        if owner:
            return f"{filled} ({_limits(owner, len(said))})"
        return filled + _by_owner(said)

    def worked_out(self, text: str, *of: tuple[str, Named]) -> str:
        """A text that says a number worked out from limits; those of them that were moved stand behind it.

        Each of them comes with its words: ``("{:%} for each repetition fewer", "a repetition")``.
        """
        said = []
        for words, name in of:
            one = self._said(name)
            one.words = words.format(one)
            said.append(one)
        return text + _by_owner(said)

    def _said(self, name: Named) -> _Said:
        return _Said(self.number(name), self._owners.get(name if isinstance(name, str) else name[0], ""))


def _by_owner(said: list[_Said]) -> str:
    """`` (your team's limit: 20 s)``: which of several limits are whose; empty where all are defaults."""
    owned = [(owner, [one.words for one in said if one.owner == owner]) for owner in (TEAM, PRESET)]
    parts = [f"{_limits(owner, len(words))}: {listed(words)}" for owner, words in owned if words]
    return f" ({'; '.join(parts)})" if parts else ""


def _limits(owner: str, number: int) -> str:
    return f"{owner} {'limit' if number == 1 else 'limits'}"


COUNTING = Option(
    "counting", (FRACTIONAL,), "kind of count: direct, fractional or total", "pelland-2026-frac"
)
"""The option of rules that hold weekly sets against a limit or floor; a team's `counting` moves them all."""


# Groups of muscles that are held against a limit or a floor: for the rules, and for tables


def group_of(name: str) -> str:
    """The muscle group that a coach's word stands for; the word itself where it stands for anything else."""
    muscles = set(catalogue.area(name) or ())
    return next((group for group, members in catalogue.groups.items() if set(members) == muscles), name)


def limited(week: Week, limits: Limits) -> dict[str, Named]:
    """The groups of a week that have a limit, those with one of the team's own too, and which it is."""
    own: dict[str, Named] = {group_of(name): ("groups", name) for name in limits.table("groups")}
    without = limits.names("without limit")
    return {
        group: own.get(group, "most")
        for group in dict.fromkeys([*week.groups(), *own])
        if group in own or group not in without
    }


def floored(week: Week) -> dict[str, tuple[Term, bool]]:
    """The groups that have a floor in a week: in the focus or among the priorities of a programme for size.

    Each with the word that names it, and whether it is a priority.
    """
    programme = week.programme
    if programme.goal != "hypertrophy" or not week.is_typical():
        return {}
    named = {group_of(term.words): (term, False) for term in week.block.focus or programme.focus}
    named |= {group_of(term.words): (term, True) for term in programme.priority}
    kept = [group_of(term.words) for term in (*programme.maintain, *programme.not_trained)]
    return {area: pair for area, pair in named.items() if catalogue.is_group(area) and area not in kept}
