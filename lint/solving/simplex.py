"""Linear programmes, solved by the simplex method on a dense dictionary (textbook method; no dependency)."""

from __future__ import annotations

from itertools import repeat
from operator import mul, sub

TINY = 1e-9
"""What counts as nothing in a pivot."""

MOST_PIVOTS = 2_000
"""Pivots after which the answer is given up as not known."""


class Optimum:
    """The least ``value`` of a cost, None where no point keeps to the rows.

    Then ``blame`` weighs the rows that cannot be kept together (Farkas), 0 for those that play no part.
    ``is_known`` is False where it was given up.
    """

    __slots__ = ("blame", "is_known", "value")

    def __init__(self, value: float | None, blame: list[float], *, is_known: bool = True) -> None:
        self.value = value
        self.blame = blame
        self.is_known = is_known


def least(cost: list[float], rows: list[list[float]], bounds: list[float]) -> Optimum:
    """The least cost of numbers from 0 up that keep each row's sum at or below its bound.

    ``rows`` holds a factor for each number; all rows are as long as ``cost``.
    """
    table = _Dictionary(rows, bounds)
    if min(bounds, default=0.0) < -TINY:
        known, short = table.feasible()
        if not known:
            return Optimum(None, [], is_known=False)
        if short > 1e-6:
            return Optimum(None, table.weights())
    value = table.minimised([*cost, 0.0])
    return Optimum(value, [], is_known=value is not None)


class _Dictionary:
    """Each basic number as its bound less a sum of the others.

    The last column is one number more, by which every row is let off until all can be kept.
    """

    def __init__(self, rows: list[list[float]], bounds: list[float]) -> None:
        self.numbers = len(rows[0]) + 1 if rows else 1
        self.rows = [[*row, -1.0] for row in rows]
        self.bounds = list(bounds)
        self.out = list(range(self.numbers))  # the numbers that are 0, by column
        self.basis = list(range(self.numbers, self.numbers + len(rows)))
        self.price: list[float] = []
        self.value = 0.0

    def feasible(self) -> tuple[bool, float]:
        """Looks for a point that keeps to all rows: whether it came to an end, and what every row lacks."""
        self.price = [0.0] * (self.numbers - 1) + [1.0]
        self.value = 0.0
        self._pivot(min(range(len(self.bounds)), key=self.bounds.__getitem__), self.numbers - 1)
        known = self._descend()
        return known, self.value

    def weights(self) -> list[float]:
        """What each row has to do with it that they cannot all be kept."""
        found = [0.0] * len(self.rows)
        for column, number in enumerate(self.out):
            if number >= self.numbers:
                found[number - self.numbers] = self.price[column]
        return found

    def minimised(self, cost: list[float]) -> float | None:
        """The least cost from the point that is reached; None where that was given up, or has no end."""
        let_off = self.numbers - 1
        if let_off in self.basis:  # it is 0: any other number may take its place
            row = self.basis.index(let_off)
            column = max(range(len(self.out)), key=lambda at: abs(self.rows[row][at]))
            self._pivot(row, column)
        gone = self.out.index(let_off)
        self.value = 0.0
        self.price = [cost[number] if number < self.numbers else 0.0 for number in self.out]
        for row, number in enumerate(self.basis):
            factor = cost[number] if number < self.numbers else 0.0
            if factor:
                self.value += factor * self.bounds[row]
                self.price = [
                    price - factor * one for price, one in zip(self.price, self.rows[row], strict=True)
                ]
        self.price[gone] = 0.0
        for one in self.rows:
            one[gone] = 0.0
        return self.value if self._descend() else None

    def _descend(self) -> bool:
        """Pivots until no number lowers the price: the steepest first, after many turns the first (Bland)."""
        for turn in range(MOST_PIVOTS):
            lowering = [at for at, one in enumerate(self.price) if one < -TINY]
            if not lowering:
                return True
            column = lowering[0] if turn > MOST_PIVOTS // 2 else min(lowering, key=self.price.__getitem__)
            limited = [
                (self.bounds[row] / one[column], self.basis[row], row)
                for row, one in enumerate(self.rows)
                if one[column] > TINY
            ]
            if not limited:
                return False
            self._pivot(min(limited)[2], column)
        return False

    def _pivot(self, row: int, column: int) -> None:
        """Exchanges the basic number of a row for that of a column."""
        own = self.rows[row]
        factor = own[column]
        new = [one / factor for one in own]
        new[column] = 1.0 / factor
        bound = self.bounds[row] / factor
        for other, one in enumerate(self.rows):
            by = one[column]
            if other != row and by:
                changed = list(map(sub, one, map(mul, repeat(by), new)))
                changed[column] = -by / factor
                self.rows[other] = changed
                self.bounds[other] -= by * bound
        by = self.price[column]
        if by:
            price = list(map(sub, self.price, map(mul, repeat(by), new)))
            price[column] = -by / factor
            self.price = price
            self.value += by * bound
        self.rows[row], self.bounds[row] = new, bound
        self.out[column], self.basis[row] = self.basis[row], self.out[column]
