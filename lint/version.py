"""The version, as the package's metadata has it."""

from __future__ import annotations

VERSION = "0.1.0"
