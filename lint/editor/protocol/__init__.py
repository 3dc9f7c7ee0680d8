"""The protocol's side of the language server: messages, streams, URIs, and what the client can do."""

from __future__ import annotations
