"""The engine: reads, counts and reports; it knows no rule by name."""

from __future__ import annotations
