"""A sheet as one HTML file that stands alone: read on a phone without a network, printed a page a session."""

from __future__ import annotations

import re
from html import escape
from math import ceil

from ..sheets.seal import OPEN, sealed
from ..sheets.sheet import CAUTION, PAIN
from .sheet_style import STYLE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..sheets.sheet import Sheet, SheetDay, SheetDose, SheetItem, SheetLine, SheetSession, SheetWeek

ROWS = 57
"""Rows of text that fit on a printed page at full size; a session of more is printed smaller."""

SMALLEST, LARGEST = 0.6, 1.25
"""How small and how large print gets, of full size; a session that needs less takes a second page."""

LETTERS, BOXES = 92, 13
"""Letters of a row of print at full size, and boxes."""

BOX = 2.2
"""Rows that a row of boxes takes."""

WHOLE = 26
"""Letters up to which a part of a dose stands on one line, as a tempo must."""

UNIT = re.compile(r"(?<=\d) (?=(?:kg|lb|%|s|min|m|reps)\b|%)")
"""The space before a unit, at which no line breaks."""

MOST_BOXES = 6
"""Sets that get boxes each; more get one row for all."""

POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
"""Lets a page ask for nothing, wherever it is opened."""


def report(sheet: Sheet) -> None:
    """Prints it."""
    print(text(sheet), end="")


def text(sheet: Sheet) -> str:
    """The whole file."""
    return sealed("\n".join(_document(sheet)) + "\n")


def _document(sheet: Sheet) -> Iterator[str]:
    title = ": ".join(part for part in (sheet.title, sheet.athlete) if part)
    yield "<!DOCTYPE html>"
    yield '<html lang="en-GB">'
    yield "<head>"
    yield '<meta charset="utf-8">'
    yield f'<meta name="generator" content="{OPEN}">'
    yield f'<meta http-equiv="Content-Security-Policy" content="{POLICY}">'
    yield '<meta name="viewport" content="width=device-width, initial-scale=1">'
    yield '<meta name="format-detection" content="telephone=no">'
    yield f"<title>{escape(title)}</title>"
    yield f"<style>{STYLE}</style>"
    yield "</head>"
    yield "<body>"
    yield "<main>"
    yield from _front(sheet)
    for week in sheet.weeks:
        for number, session in enumerate(week.sessions, start=1):
            yield from _session(session, week, number, sheet.stop)
    yield "</main>"
    yield "</body>"
    yield "</html>"


# The first page


def _front(sheet: Sheet) -> Iterator[str]:
    yield '<section class="front">'
    yield f"<h1>{escape(sheet.title)}</h1>"
    yield f'<p class="who">{escape(" · ".join(part for part in (sheet.athlete, sheet.words) if part))}</p>'
    if sheet.leave_out:
        yield '<div class="leave-out">'
        yield "<h2>Leave out</h2>"
        yield from _listed(sheet.leave_out)
        yield "</div>"
    if sheet.stop:
        yield f'<p class="note">{escape(sheet.stop)}</p>'
    yield '<div class="weeks" id="weeks">'
    for week in sheet.weeks:
        yield from _plan(week)
    yield "</div>"
    if sheet.terms:
        yield "<h2>Words on this sheet</h2>"
        yield '<dl class="terms">'
        yield from (f"<div><dt>{term}</dt><dd>{escape(told)}</dd></div>" for term, told in sheet.terms)
        yield "</dl>"
    yield f'<p class="caution">{CAUTION}</p>'
    yield "</section>"


def _plan(week: SheetWeek) -> Iterator[str]:
    yield '<div class="week">'
    yield f"<h2>{escape(week.words)}</h2>"
    yield "<ul>"
    for day, entries in week.days:
        held = ", ".join(_entry(week, words, number) for words, number in entries)
        yield f'<li><span class="on">{escape(day)}</span> <span>{held}</span></li>'
    yield "</ul>"
    yield "</div>"


def _entry(week: SheetWeek, words: str, number: int) -> str:
    """What a day holds; a session leads to its page."""
    shown = _kept(words)
    return f'<a href="#{_name(week, number)}">{shown}</a>' if number else shown


def _kept(words: str) -> str:
    """Words in HTML, a number and its unit kept on one line."""
    return UNIT.sub("\u00a0", escape(words))


def _listed(entries: list[str] | tuple[str, ...]) -> Iterator[str]:
    yield "<ul>"
    yield from (f"<li>{escape(entry)}</li>" for entry in entries)
    yield "</ul>"


def _name(week: SheetWeek, number: int) -> str:
    return f"week-{week.number}-{number}"


# A session


def _session(session: SheetSession, week: SheetWeek, number: int, stop: str) -> Iterator[str]:
    yield f'<section class="session" id="{_name(week, number)}" style="--size:{_size(session, stop):.2f}">'
    yield f"<h2>{escape(session.name)}</h2>"
    days = ", ".join(day.words for day in session.days) if len(session.days) < 3 else _span(session.days)
    yield f'<p class="who">{escape(week.words.partition(" · ")[0])} · {escape(days)}</p>'
    if session.preparation:
        yield f'<p class="remark">Before: {escape(session.preparation)}</p>'
    if session.cool_down:
        yield f'<p class="remark">After: {escape(session.cool_down)}</p>'
    if session.lasts:
        yield f'<p class="remark">{escape(session.lasts)}</p>'
    if session.note:
        yield f'<p class="note">{escape(session.note)}</p>'
    for item in session.items:
        yield from _item(item, session)
    if session.pain:
        yield from _pain(session.days)
    yield '<p class="how">How it went:</p>'
    if stop:
        yield f'<p class="stop">{escape(stop)}</p>'
    yield f'<p class="caution">{CAUTION}</p>'
    yield '<p class="back"><a href="#weeks">Back to all weeks</a></p>'
    yield "</section>"


def _span(days: tuple[SheetDay, ...]) -> str:
    """``7 days, Monday 30 November 2026 to Sunday 6 December 2026``."""
    return f"{len(days)} days, {days[0].words} to {days[-1].words}"


def _item(item: SheetItem, session: SheetSession) -> Iterator[str]:
    together = bool(item.pairing or item.note)
    if together:
        yield '<div class="turn">'
        yield f'<p class="pairing">{escape(" ".join(part for part in (item.pairing, item.note) if part))}</p>'
    for line in item.lines:
        yield from _line(line, session.days)
    if together:
        yield "</div>"


def _line(line: SheetLine, days: tuple[SheetDay, ...]) -> Iterator[str]:
    yield '<div class="line">'
    yield f'<h3><span class="mark">{line.mark}</span> {escape(line.exercise)}</h3>'
    for dose in line.doses:
        yield f'<p class="dose">{_dose(dose)}</p>'
        if dose.amounts.plates:
            yield f'<p class="plates">{escape(dose.amounts.plates)}</p>'
    if line.remarks:
        yield f'<p class="remark">{" ".join(f"<span>{escape(one)}</span>" for one in line.remarks)}</p>'
    yield from _done(line, days)
    yield "</div>"


def _dose(dose: SheetDose) -> str:
    """Its parts with dots between them: a line breaks after a dot, never before it or before a unit."""
    said = [(dose.headline, "strong")] if dose.headline else []
    for part in dose.parts:
        said.append((part, " ".join(["load"] * (part == dose.load) + ["whole"] * (len(part) <= WHOLE))))
    last = len(said) - 1
    return " ".join(_part(*one, dot=at < last) for at, one in enumerate(said))


def _part(words: str, kind: str, *, dot: bool) -> str:
    shown = _kept(words) + ("\u00a0·" if dot else "")
    if kind == "strong":
        return f"<strong>{shown}</strong>"
    return f'<span class="{kind}">{shown}</span>' if kind else shown


# Boxes for what was done


def _done(line: SheetLine, days: tuple[SheetDay, ...]) -> Iterator[str]:
    for day in days:
        label = day.short if len(days) > 1 else ""
        yield f'<ul class="boxes" aria-label="{escape(f"What was done {label}".strip())}">'
        if label:
            yield f'<li class="day">{escape(label)}</li>'
        yield from _boxes(line)
        yield "</ul>"


def _boxes(line: SheetLine) -> Iterator[str]:
    number = 0
    for dose in line.doses:
        blanks = "".join(f'<span class="box">{blank}</span>' for blank in dose.blanks)
        if dose.most > MOST_BOXES or not dose.most:
            yield f'<li class="set">sets<span class="box"></span>{blanks}</li>'
            continue
        for one in range(dose.most):
            number += 1
            spare = " spare" if one >= max(dose.fewest, 1) else ""
            yield f'<li class="set{spare}">{number}{blanks}</li>'


def _pain(days: tuple[SheetDay, ...]) -> Iterator[str]:
    for day in days:
        label = f" {day.short}" if len(days) > 1 else ""
        yield f'<ul class="boxes pain" aria-label="Pain{escape(label)}">'
        yield f'<li class="day">Pain 0-10{escape(label)}</li>'
        for when in PAIN:
            yield f'<li class="set">{when}<span class="box"></span></li>'
        yield "</ul>"


# How large it is printed


def _size(session: SheetSession, stop: str) -> float:
    """The largest size of print at which a session fits on a page, of full size."""
    sizes = (LARGEST - step / 20 for step in range(round((LARGEST - SMALLEST) * 20)))
    return next((size for size in sizes if _height(session, stop, size) <= ROWS), SMALLEST)


def _height(session: SheetSession, stop: str, size: float) -> float:
    """How high a session is at a size of print, in rows of full size."""
    rows = 9.0 + sum(_rows(line, len(session.days), size) for line in session.lines)
    rows += 1.2 * sum(bool(item.pairing or item.note) for item in session.items)
    rows += sum(
        _wrapped(words, size)
        for words in (session.note, session.preparation, session.cool_down, session.lasts, stop)
    )
    rows += BOX * len(session.days) if session.pain else 0
    return rows * size


def _rows(line: SheetLine, days: int, size: float) -> float:
    """Rows of text that a line takes at a size of print."""
    rows = 2.0 + _wrapped(" ".join(line.remarks), size)
    boxes = 0
    for dose in line.doses:
        rows += _wrapped(" · ".join((dose.headline, *dose.parts)), size) + bool(dose.amounts.plates)
        boxes += len(dose.blanks) * (dose.most if 0 < dose.most <= MOST_BOXES else 1)
    return rows + BOX * days * ceil(boxes / int(BOXES / size))


def _wrapped(words: str, size: float) -> int:
    return ceil(len(words) * size / LETTERS)
