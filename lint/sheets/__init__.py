"""The sheet that an athlete takes along: what to do in each session, and boxes for what was done."""

from __future__ import annotations
