"""What the trade knows: muscles, joint actions, exercises, mechanics, strength curves, sources."""

from __future__ import annotations
