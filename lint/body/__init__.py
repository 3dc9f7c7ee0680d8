"""What is known of the body and the trade: muscles, joint actions, exercises, strength curves, sources."""

from __future__ import annotations
