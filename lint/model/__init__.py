"""Programmes and athletes with typed values and their places; nothing is counted yet."""

from __future__ import annotations
