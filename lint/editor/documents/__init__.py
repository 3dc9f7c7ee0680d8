"""Open documents and their reviews."""

from __future__ import annotations
