"""Checks trees against JSON Schemas: a fast check, and findings that explain what does not fit."""

from __future__ import annotations
