"""What stands at the caret, and what may be written there."""

from __future__ import annotations
