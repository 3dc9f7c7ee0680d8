"""The editor's speed, by the means of the benchmark: bounds that a busy machine keeps and a step back does not.

A review that began anew at every change would take longer than is allowed here, a server that imported all
that it may ever need as well.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from statistics import quantiles

import pytest

from spotline.tests.benchmark_editor import LIMIT, LINES, START_LIMIT, Times, changes, starts

BUSY = 2.0
"""How much more a busy machine may take than the benchmark demands: two processes wait for it, one is compared.

A review of all at each key takes more than three times the demand, and fails even so."""


@pytest.fixture(autouse=True)
def _no_collecting() -> Iterator[None]:
    gc.disable()
    yield
    gc.enable()


def quick(times: Times) -> float:
    """The first lower quartile by the second: what it takes while the machine leaves one alone."""
    first, second = (quantiles(taken, n=4)[0] for taken in times.values())
    return first / second


@pytest.mark.parametrize("lines", LINES)
def test_findings_come_while_one_types(lines: int) -> None:
    times = changes(lines, "a number", 60)
    assert quick(times) <= BUSY * LIMIT, times


def test_the_first_findings_come_soon() -> None:
    times = starts(9)
    assert quick(times) <= 1.25 * START_LIMIT, times
