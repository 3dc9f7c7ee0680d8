"""Trees held against JSON Schemas: a fast check, and explanations of what does not fit."""

from __future__ import annotations
