"""Exercises, areas, effort, rules and counts explained in Markdown."""

from __future__ import annotations
