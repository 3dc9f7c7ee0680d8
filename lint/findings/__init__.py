"""Findings: what a rule or the reader says about a place in a file."""

from __future__ import annotations
