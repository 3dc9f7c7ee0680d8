"""Dated sets of defaults, so that a new version of spotline changes nothing for a team that names one.

A preset holds, by rule and option, the defaults in which it differs from those that the rules declare today.
Once shipped, a preset never changes (a test keeps its defaults): when the default of an option moves, the
old value is added to every preset there is, and a new, dated preset starts empty.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..engine.limits import Default

PRESETS: dict[str, dict[str, dict[str, Default]]] = {"2026-11": {}}
"""By date; the last one is what holds where a team names none."""
