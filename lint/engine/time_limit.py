"""Stops Python code that does not come to an end, on any system and in any thread."""

from __future__ import annotations

import sys
from time import monotonic

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from types import FrameType
    from typing import Any, TypeVar

    T = TypeVar("T")


class TookTooLongError(Exception):
    """Code that was stopped."""


def within(seconds: float, work: Callable[[], T]) -> T:
    """What the work gives. Raises TookTooLongError where it takes longer, whatever its lines are busy with.

    Looks at the clock line by line, so it slows the work down, and cannot interrupt a single call into
    compiled code.
    """
    end = monotonic() + seconds

    def watch(frame: FrameType, event: str, argument: Any) -> Any:
        if monotonic() > end:
            raise TookTooLongError(f"it took longer than {seconds:g} s and was stopped")
        return watch

    before = sys.gettrace()
    sys.settrace(watch)
    try:
        return work()
    finally:
        sys.settrace(before)
