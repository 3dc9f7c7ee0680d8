"""What a rule, or the reading, says about a place in a file."""

from __future__ import annotations
