"""Files found, read once, and reviewed."""

from __future__ import annotations
