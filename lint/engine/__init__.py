"""Rules: how they are declared, limited, found and run."""

from __future__ import annotations
