"""One module for each kind of request that a client makes of a document."""

from __future__ import annotations
