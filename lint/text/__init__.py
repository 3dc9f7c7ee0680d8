"""Texts, the places in them, and the files they come from."""

from __future__ import annotations
