"""What each week really holds: the one place that counts."""

from __future__ import annotations
