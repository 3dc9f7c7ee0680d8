"""The parts of a programme in words: sessions, weeks with their dates, events, athletes."""

from __future__ import annotations

from datetime import timedelta

from ...model.naming import when_spared
from ...wording.words import counted_noun, listed, plain, week_list
from .counts import HALF_NOTE, session_in_full, session_in_short, week_in_words
from .effort import best_lift_in_words
from .markdown import Statement, bullets, md, merged_text, paragraphs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import date

    from ...counting.ledger import Ledger
    from ...counting.tally import Visit
    from ...counting.week import Week
    from ...model.athlete import Athlete
    from ...model.sessions import Block


def session_page(visits: Iterable[tuple[Visit, int, tuple[int, ...]]], ledgers: Sequence[Ledger]) -> str:
    """What a session holds: each different visit with its athlete (by index) and its weeks (from 1)."""
    statements = [
        Statement(
            session_in_full(visit),
            athlete,
            numbers,
            short=session_in_short(visit),
            about=md(visit.session.name),
        )
        for visit, athlete, numbers in visits
    ]
    return merged_text(statements, ledgers)


def weeks_page(
    blocks: Iterable[Block], weeks: Iterable[tuple[Week, int, tuple[int, ...]]], ledgers: Sequence[Ledger]
) -> str:
    """The weeks of some blocks: their dates, and what each different week holds, for whom and when."""
    numbers = [number for block in blocks for number in range(block.first, block.first + block.weeks)]
    statements = [Statement(week_in_words(week), athlete, alike) for week, athlete, alike in weeks]
    head = f"{capitalised(week_list(numbers))}{dates_of(numbers, ledgers[0].programme.starts)}"
    return paragraphs(head, merged_text(statements, ledgers, len(numbers)), HALF_NOTE)


def weeks_in_words(block: Block, first: int, last: int, starts: date | None) -> str:
    """The weeks from ``first`` to ``last`` of a block, counted in the programme, with their dates."""
    numbers = range(block.first + first - 1, block.first + min(last, block.weeks))
    if not numbers:
        return ""
    in_block = f"{week_list([*range(first, last + 1)])} of {md(block.name)}"
    of = f" of the programme, {in_block}" if block.name else ""
    return f"{capitalised(week_list(numbers))}{of}{dates_of(numbers, starts)}."


def dates_of(weeks: Iterable[int], starts: date | None) -> str:
    """``, 30 November to 20 December 2026``: the days from which and to which weeks run."""
    numbers = [*weeks]
    if starts is None or not numbers:
        return ""
    first, last = starts + timedelta(7 * numbers[0] - 7), starts + timedelta(7 * numbers[-1] - 1)
    return f", {_date_in_words(first)} to {_date_in_words(last)}"


def start_and_end(ledger: Ledger) -> str:
    """The days on which a programme starts and ends."""
    starts = ledger.programme.starts
    if starts is None or ledger.ends is None:
        return ""
    weeks = counted_noun(len(ledger.weeks), "week")
    return f"{_date_in_words(starts)}; {weeks} end on {_date_in_words(ledger.ends)}."


def event_in_words(ledger: Ledger, start: int, end: int) -> str:
    """The day and week of the event that is written from ``start`` to ``end``; "" where there is none."""
    for day, event in ledger.events():
        if (event.place.start, event.place.end) == (start, end) and event.date is not None:
            week = (day - 1) // 7 + 1
            is_within = 1 <= week <= len(ledger.weeks)
            where = f"week {week} of {len(ledger.weeks)}" if is_within else "outside the programme"
            return f"{_date_in_words(event.date)}: {where}."
    return ""


def athlete_page(athlete: Athlete) -> str:
    """An athlete: level, age, mass, what is spared, best lifts."""
    age = f"{plain(athlete.age)} years" if athlete.age is not None else ""
    mass = f"{plain(athlete.body_mass)} kg" if athlete.body_mass is not None else ""
    lifts = [best_lift_in_words(lift) for lift in athlete.best_lifts]
    spared = [" ".join(filter(None, (md(one.subject.words), when_spared(one)))) for one in athlete.protect]
    about = ", ".join(md(part) for part in (athlete.level, age, mass) if part)
    return paragraphs(
        f"**{md(athlete.name)}**{f': {about}' if about else ''}",
        f"spares {listed(spared)}" if spared else "",
        bullets(lifts) if lifts else "No best lift on file, so kg and % of 1RM cannot be told.",
    )


def capitalised(words: str) -> str:
    """The words with a capital letter at their start."""
    return f"{words[:1].upper()}{words[1:]}"


def _date_in_words(day: date) -> str:
    return f"{day.day} {day:%B %Y}"
