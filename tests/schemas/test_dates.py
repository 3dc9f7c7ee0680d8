"""Dates as people write them: the days that they may name; the standard library writes them here."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from spotline.lint.schemas.dates import days_named

FORMS = (
    "%Y-%m-%d",
    "%Y/%m/%d",
    "%Y.%m.%d",
    "%Y%m%d",
    "%d.%m.%Y",
    "%d. %m. %Y",
    "%d.%m.%y",
    "%d %B %Y",
    "%d. %B %Y",
    "%d-%b-%Y",
    "%dth of %B %Y",
    "%d %b '%y",
    "%B %d, %Y",
    "%b. %d %Y",
    "%Y %B %d",
    "%A %d %B %Y",
    "%a, %d.%m.%Y",
    "%a %d/%m/%Y",
    "%A, %m/%d/%Y",
)
"""Of one reading: by the order, the name of the month, the point, or the weekday before them."""

DAYS = [date(2026, 1, 1) + timedelta(days=number) for number in range(0, 1100, 7)]


@pytest.mark.parametrize("form", FORMS)
def test_a_day_is_named(form: str) -> None:
    """A weekday may fit both readings of two numbers: then both are told, the right one among them."""
    for day in DAYS:
        named = days_named(day.strftime(form))
        assert str(day) in named
        assert len(named) == 1 or ("/" in form and form[1] in "aA"), (form, day)
        assert days_named(day.strftime(form).lower()) == named


@pytest.mark.parametrize("form", ["%d/%m/%Y", "%m/%d/%Y", "%d-%m-%Y", "%d/%m/%y"])
def test_day_and_month_in_either_order_name_two_days(form: str) -> None:
    for day in DAYS:
        named = days_named(day.strftime(form))
        both = {str(day)} | ({str(date(day.year, day.day, day.month))} if day.day < 13 else set())
        assert set(named) == both


@pytest.mark.parametrize(
    "words",
    [
        "",
        "2026",
        "5 January",
        "January 2026",
        "31.2.2026",
        "31/02/2026",
        "2026-13-01",
        "30 February 2026",
        "monday 6 January 2026",  # a Tuesday
        "5 Marble 2026",
        "5 1 2026",
        "1026-01-05",
        "100 %",
        "5-8",
        "12/10/8",
        "tomorrow",
    ],
)
def test_words_that_name_no_day(words: str) -> None:
    assert days_named(words) == []
