"""Exercises, areas, effort, rules, counts and parts of a programme, explained in Markdown."""

from __future__ import annotations
