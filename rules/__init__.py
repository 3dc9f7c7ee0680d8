"""The rules, one module a family, one small function a rule."""

FAMILIES = ("coverage", "dose", "balance", "repetitions", "schedule", "upkeep")
"""The families, in the order in which rules are listed; each is a module of this package."""
