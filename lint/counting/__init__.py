"""Counts what each week of a programme holds. All counting is done here."""

from __future__ import annotations
