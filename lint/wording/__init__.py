"""The English of findings: numbers, lists, weeks."""

from __future__ import annotations
