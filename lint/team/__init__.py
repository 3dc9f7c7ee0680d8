"""What a team brings: settings, exercises and rules of its own, waivers, known findings."""

from __future__ import annotations
