"""Open documents, their reviews, and the answers on them in the protocol's own form."""

from __future__ import annotations
