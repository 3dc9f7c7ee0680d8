"""Dated sets of defaults, so that a new version of spotline changes nothing for a team that names one.

A preset freezes limits, the way of counting among them, and which rules run, never mistakes: what was wrong
is mended under every preset. It holds, by rule and option, the defaults in which it differs from those that
the rules declare today. Once shipped, a preset never changes (a test keeps its defaults and its rules): when
the default of an option moves, the old value is added to every preset there is, and a new, dated preset
starts empty; a new rule is named with the preset that it comes with.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..engine.limits import Default

PRESETS: dict[str, dict[str, dict[str, Default]]] = {
    "2026-11": {
        "antagonist-imbalance": {"elsewhere": 1, "fewest apart": 0, "lifting": (), "meets": (), "surely": 2},
        "dates-at-odds": {"days after": 7},
        "deload-without-cut": {"volume of novices": 20},
        "exercise-sets-high": {"most": 6, "far": 10},
        "frequency-low": {"once a week": ()},
        "isolation-before-compound": {
            "repetitions": 0,
            "small matter": ("hypertrophy", "muscular endurance"),
        },
        "lift-sets-under-floor": {"heavy": 1000},
        "load-step-large": {"weeks at a load": 1, "step of both legs": 0, "light": 0, "doubled": 0},
        "start-does-not-follow": {"weeks at a load": 1, "step of both legs": 0},
        "load-outside-zone": {"size to": 105},
        "number-implausible": {"lightest": 0},
        "rep-range-narrow": {"weeks": 1},
        "screening-missing": {"middle age": 0},
        "sets-step-large": {"share": 0},
        "sides-uneven": {"on purpose": ()},
        "session-sets-for-muscle-high": {"most": 12},
        "sessions-too-close": {
            "hard set of the advanced": 3,
            "between sessions": 3,
            "any order": (),
            "not for": (),
        },
        "taper-missing": {"left": 14},
        "weekly-sets-over-limit": {"blocks on": ("total",)},
    },
    "2026-12": {},
}
"""By date; the last one is what holds where a team names none."""

NEW_RULES: dict[str, tuple[str, ...]] = {
    "2026-12": (
        "calf-work-missing",
        "circuit-step-large",
        "day-too-long",
        "demand-not-held",
        "demand-unclear",
        "endurance-step-large",
        "equipment-unknown",
        "impact-days-consecutive",
        "lift-left-out",
        "lift-of-load-unknown",
        "near-maximal-before-event",
        "our-name-unclear",
        "place-unknown",
        "read-two-ways",
        "rest-too-short-in-pairs",
        "restriction-weeks-beyond",
        "sets-not-read",
        "table-cell-differs",
        "times-clash",
        "week-out-of-line",
        "week-pasted",
        "weight-not-there",
        "work-step-large",
    )
}
"""The rules that came with a preset: under an earlier one they are off until a team asks for them."""

OLD_RULES: dict[str, tuple[str, ...]] = {
    "2026-11": ("days-per-region-few", "finer-points-missing", "rep-range-narrow", "superset-shares"),
}
"""The rules that a preset runs and later ones leave off until a team asks for them."""


def rules_before(preset: str) -> tuple[str, ...]:
    """The rules that a preset still runs, and that are off today."""
    return OLD_RULES.get(preset, ())


def rules_after(preset: str) -> tuple[str, ...]:
    """The rules that came with later presets than one."""
    return tuple(rule for later, rules in NEW_RULES.items() if later > preset for rule in rules)
