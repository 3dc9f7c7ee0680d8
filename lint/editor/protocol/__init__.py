"""The language server: messages of the protocol, in and out."""

from __future__ import annotations
