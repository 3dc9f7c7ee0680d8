"""What is asked before the first files are written: at most six questions, each with an answer of its own."""

from __future__ import annotations

import re

from ...schema import load
from ..body.catalogue import LEVELS
from ..model.sessions import WEEKDAYS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

GOALS: tuple[str, ...] = tuple(load("programme")["properties"]["goal"]["enum"])


class Question:
    """One question: ``name`` is the option that answers it, ``usual`` the answer where none is given.

    ``read`` turns words into a value, or raises ValueError, which says what is wanted.
    """

    __slots__ = ("asked", "name", "read", "usual")

    def __init__(self, name: str, asked: str, usual: str, read: Callable[[str], object]) -> None:
        self.name = name
        self.asked = asked
        self.usual = usual
        self.read = read


class Answers:
    """The answers, read: ``equipment`` is empty where there is all that a gym has."""

    __slots__ = ("days", "equipment", "goal", "level", "minutes", "name")

    def __init__(self, values: Mapping[str, object]) -> None:
        for key in self.__slots__:
            setattr(self, key, values[key])

    name: str
    level: str
    goal: str
    days: tuple[str, ...]
    minutes: int
    equipment: tuple[str, ...]


def _name(words: str) -> str:
    if not any(letter.isalnum() for letter in words) or len(words) > 60:
        raise ValueError("a first name or initials")
    return words


def _one_of(known: tuple[str, ...]) -> Callable[[str], str]:
    def read(words: str) -> str:
        fitting = [one for one in known if one.startswith(words.lower())]
        if len(fitting) != 1:
            raise ValueError(f"one of {', '.join(known)}")
        return fitting[0]

    return read


def _days(words: str) -> tuple[str, ...]:
    days = []
    for word in re.split(r"[\s,;+/&]+|\band\b", words.lower()):
        if not word:
            continue
        fitting = [day for day in WEEKDAYS if len(word) > 1 and day.startswith(word.removesuffix("s"))]
        if len(fitting) != 1:
            raise ValueError("weekdays, such as: monday thursday")
        days.append(fitting[0])
    if not days:
        raise ValueError("at least one weekday")
    return tuple(day for day in WEEKDAYS if day in days)


def _minutes(words: str) -> int:
    number = words.split()[0] if words.split() else ""
    if not number.isdecimal() or not 15 <= int(number) <= 300:
        raise ValueError("minutes from 15 to 300")
    return int(number)


def _equipment(words: str) -> tuple[str, ...]:
    if words.strip().lower() in ("", "gym", "all"):
        return ()
    return tuple(piece.strip() for piece in words.split(",") if piece.strip())


QUESTIONS = (
    Question("name", "Who trains? A first name or initials", "Alex", _name),
    Question(
        "level", f"At which level, by the time with a plan: {', '.join(LEVELS)}", LEVELS[0], _one_of(LEVELS)
    ),
    Question("goal", f"What for: {', '.join(GOALS)}", "general health", _one_of(GOALS)),
    Question("days", "On which days of the week", "monday thursday", _days),
    Question("minutes", "How many minutes for a session", "60", _minutes),
    Question(
        "equipment", "What is there, with commas between; gym for all that a gym has", "gym", _equipment
    ),
)


def answered(
    given: Mapping[str, str], ask: Callable[[str], str] | None, say: Callable[[str], None]
) -> Answers:
    """The answers: those ``given`` as options, the others asked for; without ``ask`` the usual ones.

    Raises ValueError for an option that cannot be read, EOFError where the input ends.
    """
    values: dict[str, object] = {}
    if ask is not None:
        say("Enter takes what stands in brackets. Ctrl-C stops, and nothing is written.")
    for question in QUESTIONS:
        if question.name in given:
            try:
                values[question.name] = question.read(given[question.name].strip())
            except ValueError as wanted:
                raise ValueError(f"--{question.name} takes {wanted}") from wanted
        elif ask is None:
            values[question.name] = question.read(question.usual)
        else:
            values[question.name] = _asked(question, ask, say)
    return Answers(values)


def _asked(question: Question, ask: Callable[[str], str], say: Callable[[str], None]) -> object:
    while True:
        words = ask(f"{question.asked} [{question.usual}]: ").strip() or question.usual
        try:
            return question.read(words)
        except ValueError as wanted:
            say(f"Please write {wanted}.")
