"""What weeks hold, for people to read, and what an edit changes in them; all numbers are the ledger's."""

from __future__ import annotations
