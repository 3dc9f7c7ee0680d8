"""The language server: the same review in any editor that speaks the Language Server Protocol."""

from __future__ import annotations
