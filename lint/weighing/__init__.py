"""What weeks hold, for people to read, and what an edit changes in them: the ledger's numbers turned outward."""

from __future__ import annotations
