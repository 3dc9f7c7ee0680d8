"""One module for each thing that a client may ask for."""

from __future__ import annotations
