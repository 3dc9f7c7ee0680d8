"""A sheet as data, all of it in words for the athlete; the forms only lay it out.

It holds no finding, no muscle and no reason for anything that is left out. Notes of sessions and lines are
told. Those of the programme, a block, an event or the athlete are the coach's own, but for what one of the
programme or a block says of when to stop.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date
    from typing import Final

CAUTION = (
    "This sheet clears nobody to train: questions of health belong to your clinician or another licensed"
    " professional, and local rules come first. Stop and seek medical help for dizziness, chest pain, or"
    " breathlessness to the point of not speaking."
)
"""The house's caution in one line; stop signs as a falls programme prints them (otago-stop)."""


PAIN = ("before", "during", "after", "next morning")
"""When pain is written down, from 0 to 10, in a stage of rehabilitation (common practice, no source)."""


class Amounts:
    """The weights of a group of sets, those of each set or one for all; none where they are not known.

    Each is in ``unit``, and that of one of ``pieces`` implements; ``plates`` says in a sentence what is on
    the bar, empty where it is on none. ``weighed`` says that there is a weight to write down.
    """

    __slots__ = ("pieces", "plates", "unit", "weighed", "weights")

    def __init__(
        self,
        weights: tuple[str, ...] = (),
        unit: str = "kg",
        pieces: int = 1,
        plates: str = "",
        *,
        weighed: bool = False,
    ) -> None:
        self.weights: Final = weights
        self.unit: Final = unit
        self.pieces: Final = pieces
        self.plates: Final = plates
        self.weighed: Final = weighed


class SheetDose:
    """A group of like sets: how many, of what, how hard, with which rest.

    ``sets`` and ``each`` say how many sets of what, ``load`` what is lifted, ``amounts`` its numbers;
    ``effort``, ``rest`` and ``tempo`` are empty where nothing is stated; ``extra`` is all else. ``fewest``
    and ``most`` are the number of sets, of ``counted`` repetitions, seconds, minutes or metres.
    """

    __slots__ = (
        "amounts",
        "counted",
        "each",
        "effort",
        "extra",
        "fewest",
        "load",
        "most",
        "rest",
        "sets",
        "tempo",
    )

    def __init__(
        self,
        sets: str,
        each: tuple[str, ...],
        counted: str,
        load: str,
        amounts: Amounts,
        effort: str,
        rest: str,
        tempo: str,
        extra: tuple[str, ...],
        fewest: int,
        most: int,
    ) -> None:
        self.sets: Final = sets
        self.each: Final = each
        self.counted: Final = counted
        self.load: Final = load
        self.amounts: Final = amounts
        self.effort: Final = effort
        self.rest: Final = rest
        self.tempo: Final = tempo
        self.extra: Final = extra
        self.fewest: Final = fewest
        self.most: Final = most

    @property
    def headline(self) -> str:
        """``3 sets of 6-8 repetitions``; one number a set is listed: ``3 sets of 15, 12, 10 repetitions``."""
        what = ", ".join(self.each)
        what = what if self.counted in ("", *UNSAID) else f"{what} {self.counted}"
        return f"{self.sets} of {what}" if self.sets and what else self.sets or what

    @property
    def parts(self) -> list[str]:
        """All that is said of it after the headline, in order."""
        tempo = f"tempo {self.tempo}" if self.tempo else ""
        return [part for part in (self.load, self.effort, self.rest, tempo, *self.extra) if part]

    @property
    def blanks(self) -> list[str]:
        """What is to be written down of each set.

        RPE of what goes by clock or tape, and where the coach asks for one; else RIR.
        """
        counted = {"seconds": "s", "minutes": "min", "metres": "m"}.get(self.counted, "reps")
        weight = [self.amounts.unit] if self.amounts.weighed else []
        by_rpe = counted != "reps" or self.effort.startswith("RPE")
        return [counted, *weight, "RPE" if by_rpe else "RIR"]


UNSAID = ("seconds", "minutes", "metres")
"""What the words of a set say themselves: ``45 s``, ``30 m``."""


class SheetLine:
    """One exercise: its ``mark`` (``2``, ``3a``), name, doses, and what else there is to know of it."""

    __slots__ = ("cue", "doses", "exercise", "instead", "mark", "note", "progression", "stop", "warm_up")

    def __init__(
        self,
        mark: str,
        exercise: str,
        doses: tuple[SheetDose, ...],
        *,
        instead: str,
        warm_up: str,
        progression: str,
        note: str,
        cue: str = "",
        stop: str = "",
    ) -> None:
        self.mark: Final = mark
        self.exercise: Final = exercise
        self.doses: Final = doses
        self.instead: Final = instead
        self.warm_up: Final = warm_up
        self.progression: Final = progression
        self.note: Final = note
        self.cue: Final = cue
        self.stop: Final = stop

    @property
    def remarks(self) -> list[str]:
        """Warm-up, what to think of, when to stop, alternates, progression and note, a sentence each."""
        said = (self.warm_up, self.cue, self.stop, self.instead, self.progression, self.note)
        return [one for one in said if one]


class SheetItem:
    """A line by itself, or the lines that are done in turn, with ``pairing`` to say how."""

    __slots__ = ("lines", "note", "pairing")

    def __init__(self, lines: tuple[SheetLine, ...], pairing: str = "", note: str = "") -> None:
        self.lines: Final = lines
        self.pairing: Final = pairing
        self.note: Final = note


class SheetDay:
    """A day on which a session is done: in full and in ``short`` words; weekday and date where known."""

    __slots__ = ("date", "short", "weekday", "words")

    def __init__(self, words: str, short: str, weekday: str = "", date: date | None = None) -> None:
        self.words: Final = words
        self.short: Final = short
        self.weekday: Final = weekday
        self.date: Final = date


class SheetSession:
    """A session of a week, on one day or, where it is the same on several, on all of them.

    ``preparation`` and ``cool_down`` are what comes before and after, ``lasts`` how long all of it goes on.
    """

    __slots__ = ("cool_down", "days", "items", "lasts", "name", "note", "pain", "preparation")

    def __init__(
        self,
        name: str,
        days: tuple[SheetDay, ...],
        items: tuple[SheetItem, ...],
        *,
        preparation: str,
        note: str,
        pain: bool,
        cool_down: str = "",
        lasts: str = "",
    ) -> None:
        self.name: Final = name
        self.days: Final = days
        self.items: Final = items
        self.preparation: Final = preparation
        self.note: Final = note
        self.pain: Final = pain
        self.cool_down: Final = cool_down
        self.lasts: Final = lasts

    @property
    def lines(self) -> list[SheetLine]:
        """All its lines."""
        return [line for item in self.items for line in item.lines]


Entry = tuple[str, int]
"""What a day holds, in words, and which of the week's sessions it is, from 1; 0 for none of them."""


class SheetWeek:
    """A week: its number, dates and block in ``words``, what each day holds, and its sessions."""

    __slots__ = ("days", "number", "sessions", "words")

    def __init__(
        self,
        number: int,
        words: str,
        days: tuple[tuple[str, tuple[Entry, ...]], ...],
        sessions: tuple[SheetSession, ...],
    ) -> None:
        self.number: Final = number
        self.words: Final = words
        self.days: Final = days
        self.sessions: Final = sessions


class Sheet:
    """All that one athlete takes along.

    ``stop`` says when to stop, as far as the coach has; ``terms`` are words on it that need telling, with
    what they mean.
    """

    __slots__ = ("athlete", "leave_out", "stop", "terms", "title", "weeks", "words")

    def __init__(
        self,
        title: str,
        athlete: str,
        words: str,
        stop: str,
        leave_out: tuple[str, ...],
        terms: tuple[tuple[str, str], ...],
        weeks: tuple[SheetWeek, ...],
    ) -> None:
        self.title: Final = title
        self.athlete: Final = athlete
        self.words: Final = words
        self.stop: Final = stop
        self.leave_out: Final = leave_out
        self.terms: Final = terms
        self.weeks: Final = weeks
