"""What the rules ask, as sums and bounds: one module a family, one small function a rule.

Each function is given what its rule is given, and reads the same limits and the same counts. It yields the
demands on that one thing, broken or not; none where the rule has nothing to say of it whatever it holds.
"""

from __future__ import annotations

MODULES = ("coverage", "dose", "balance", "schedule", "progression", "care", "upkeep")
"""The modules of this package."""
