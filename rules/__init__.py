"""The rules, one module a family, one small function a rule."""

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
"""The families, in the order in which rules are listed; each is a module of this package."""
