"""YAML text to a tree in which every key and value knows its place."""

from __future__ import annotations
