"""The rules: one module a subject, one small function a rule."""

from __future__ import annotations

FAMILIES = (
    "coverage",
    "dose",
    "balance",
    "repetitions",
    "load",
    "rest",
    "schedule",
    "progression",
    "care",
    "upkeep",
)
"""The families, in the order in which rules are listed."""

MODULES = (
    "leg_coverage",
    "regions",
    "finer_points",
    "priorities",
    "fast_work",
    "weekly_sets",
    "lift_sets",
    "session_dose",
    "balance",
    "repetitions",
    "load_zone",
    "feasible",
    "stated_loads",
    "implements",
    "rest",
    "spacing",
    "spine_days",
    "training_days",
    "exercise_order",
    "weekly_steps",
    "set_steps",
    "stalled",
    "easier_weeks",
    "odd_weeks",
    "tapers",
    "programme_start",
    "restrictions",
    "on_file",
    "risk",
    "privacy",
    "unknown_names",
    "work_not_read",
    "plausibility",
    "two_ways",
    "equipment",
    "places",
    "dates",
)
"""The modules of this package that declare rules."""
