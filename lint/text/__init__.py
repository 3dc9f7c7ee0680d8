"""Texts, places in them, and the files that they come from."""

from __future__ import annotations
