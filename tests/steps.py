"""Counts the steps of some work, where a clock would tell how busy the machine is."""

from __future__ import annotations

import gc
import sys
from collections.abc import Callable
from types import FrameType
from typing import Any


def steps(work: Callable[[], object]) -> int:
    """Lines of Python that are run, and built-in functions that are called, when some work is done once more.

    The same on every machine. What a built-in function does within itself is not seen.
    """
    work()
    count = 0

    def line(frame: FrameType, event: str, argument: Any) -> Any:
        nonlocal count
        count += event == "line"
        return line

    def call(frame: FrameType, event: str, argument: Any) -> None:
        nonlocal count
        count += event == "c_call"

    tracing, profiling, collecting = sys.gettrace(), sys.getprofile(), gc.isenabled()
    gc.disable()  # what is called when garbage is collected is no part of the work
    sys.setprofile(call)
    sys.settrace(line)
    try:
        work()
    finally:
        sys.settrace(tracing)
        sys.setprofile(profiling)
        if collecting:
            gc.enable()
    return count


def growth(work: Callable[[int], Callable[[], object]], size: int) -> float:
    """How many times the steps a work of twice the size takes: 2 where they grow with the size, 4 with its square."""
    return steps(work(2 * size)) / steps(work(size))
