"""Wording for messages: numbers, lists, weeks."""

from __future__ import annotations
