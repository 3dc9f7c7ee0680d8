"""Programmes and athletes: typed and located, nothing counted yet."""

from __future__ import annotations
