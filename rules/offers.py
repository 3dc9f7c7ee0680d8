"""Edits that rules offer: each is worked out when asked for, so that a review costs nothing by them."""

from __future__ import annotations

from ..lint.body import curves
from .shared import DAYS_A_WEEK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Sequence

    from ..lint.counting.counts import Count
    from ..lint.counting.header import ProgrammeHeader
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.suggestions import Suggestion
    from ..lint.counting.week import Week
    from ..lint.findings.finding import Edit
    from ..lint.model.sessions import Prescription, Session
    from ..lint.text.places import Place
    from .shared import Does

    Offer = Callable[[], Iterable[Edit]]
    """Works out edits."""


def adding(header: ProgrammeHeader, session: Session, suggestion: Suggestion, weeks: str = "") -> Offer:
    """A line of one of the exercises suggested, in a session, in some ``weeks`` or in all."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.new_lines import choice_of

        return choice_of(session, header.known, suggestion.names, weeks)

    return work_out


def adding_each(header: ProgrammeHeader, wanted: Iterable[tuple[Session, Does]]) -> Offer:
    """A line for each thing that is missing, in its session, all in one edit."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.suggestions import suggest
        from ..lint.remedies.new_lines import all_of

        found = [(session, suggest(header, does).names[:1]) for session, does in wanted]
        edit = all_of([(session, name) for session, names in found for name in names], header.known)
        if edit is not None:
            yield edit

    return work_out


def cutting(count: Count, most: float) -> Offer:
    """Sets taken off, as `taken_off` says."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.sets_changed import cut

        return cut(count, most)

    return work_out


def raising(count: Count, least: float, rivals: Sequence[Count] = ()) -> Offer:
    """Sets put on, as `put_on` says."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.sets_changed import raised

        return raised(count, least, rivals)

    return work_out


def writing(place: Place | None, *words: str) -> Offer:
    """One of some words in the place of others."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.values import one_of

        return one_of(place, words)

    return work_out


def writing_number(place: Place | None, was: float, numbers: Iterable[float]) -> Offer:
    """One of some numbers in the place of another among words."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.values import with_number

        return with_number(place, was, numbers)

    return work_out


def adding_key(place: Place, *words: str) -> Offer:
    """One of some keys with its value, ``rir: 2``, beside what stands at a place."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.values import added

        for one in words:
            yield from added(place, one)

    return work_out


def listing_pieces(header: ProgrammeHeader, pieces: Iterable[Iterable[str]], at: str) -> Offer:
    """Pieces put on the list of a place, or of the athlete, perhaps in another file: the room has them."""

    def work_out() -> Iterable[Edit]:
        from ..lint.body.equipment import as_thing
        from ..lint.remedies.values import listed_too
        from ..lint.wording.words import listed, shortened

        last = header.listed(at)[-1].place
        names = list(dict.fromkeys(as_thing(piece) for several in pieces for piece in several))
        file = "" if last.text.name == header.place.text.name else f" in {last.text.name}"
        label = f"the room has it: add {listed(names)} to `{shortened(at) or 'equipment'}`{file}"
        return listed_too(last, names, label)

    return work_out


def dropping(place: Place | None) -> Offer:
    """A word taken out of its list, or the key whose only word it is."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.values import dropped

        return dropped(place)

    return work_out


def without(place: Place, key: str, label: str) -> Offer:
    """A line without a key, of which the place is the value for all weeks."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.values import whole_key_out

        return whole_key_out(place, key, label)

    return work_out


def dropping_item(place: Place, key: str) -> Offer:
    """The item of the list under a key that holds a place, taken out."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.values import item_dropped

        return item_dropped(place, key)

    return work_out


def offering(*offers: Offer) -> Offer:
    """What each of several offers, as a choice."""
    return lambda: [edit for offer in offers for edit in offer()]


def lighter_or_kilograms(entry: SetGroup, asked: float) -> Offer:
    """A percentage for the repetitions, or the same number in kg."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies import loads

        place, lighter = entry.work.places["load"], curves.percent_for(asked, entry.curve)
        if lighter is not None:
            yield from loads.percent(place, lighter)
        yield from loads.in_kilograms(place)

    return work_out


def fewer_or_lighter(entry: SetGroup, asked: float, fewest: float) -> Offer:
    """A load for the repetitions, where it is a percentage; else the repetitions that the load allows."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies import loads

        lighter = curves.percent_for(asked, entry.curve)
        if lighter is not None:
            yield from loads.percent(entry.work.places["load"], lighter)
        yield from loads.repetitions(entry.work.places["reps"], fewest)

    return work_out


MOST_LEFT = 5
"""Repetitions in reserve that lifters can judge (see reserve-hard-to-judge)."""


def agreeing(entry: SetGroup, key: str, heavier: float, left: float) -> Offer:
    """A load for the effort, where it is a percentage; or what is left, as `rir` or `rpe`."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies import loads
        from ..lint.remedies.values import one_of

        places, rounded = entry.work.places, round(left)
        yield from loads.percent(places["load"], heavier)
        if rounded > MOST_LEFT:
            return
        if key == "rir":
            yield from one_of(places[key], [str(rounded)], " in reserve")
        else:
            yield from one_of(places[key], [str(10 - rounded)])

    return work_out


def in_one_edit(label: str, offers: Iterable[Offer]) -> Offer:
    """What several offers come to, made together."""

    def work_out() -> Iterator[Edit]:
        from ..lint.findings.edits import in_one

        whole = in_one(label, [edit for offer in offers for edit in offer()])
        if whole is not None:
            yield whole

    return work_out


def swapping(header: ProgrammeHeader, entries: Sequence[SetGroup], most: int) -> Offer:
    """Exercises that do the same in the place of others, where they are named."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.suggestions import substitutes
        from ..lint.remedies.values import swapped

        known = [(one.work.places["exercise"], one.exercise) for one in entries if one.exercise]
        return swapped([(place, substitutes(header, one, most)) for place, one in known])

    return work_out


def swapping_each(offered: Sequence[tuple[Place, list[str]]]) -> Offer:
    """For each choice an edit that swaps all exercises for which there is one, as each place has it."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.values import swapped

        return swapped(offered)

    return work_out


def putting_before(entry: SetGroup, other: SetGroup, label: str) -> Offer:
    """A line before another one of its session."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.moves import before

        return before(entry.prescription.place, other.prescription.place, label)

    return work_out


def exchanging(one: Prescription, other: Prescription, label: str) -> Offer:
    """Two lines in each other's place."""

    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.moves import exchanged

        return exchanged(one.place, other.place, label)

    return work_out


def moving(session: Session, day: str, *to: str) -> Offer:
    """A session on another of some days."""

    def work_out() -> Iterator[Edit]:
        from ..lint.remedies.days import moved

        for one in to:
            yield from moved(session, day, one)

    return work_out


def moving_apart(week: Week, session: Session, day: int, others: Iterable[int], apart: int) -> Offer:
    """A session from one day of the week to a free one, some days from others, weeks repeating.

    ``day`` and ``others`` are numbers of days of the calendar, as `day_name` takes them.
    """

    def work_out() -> Iterator[Edit]:
        from ..lint.model.naming import day_name
        from ..lint.remedies.days import moved

        starts, athlete = week.programme.starts, week.programme.athlete
        taken = {number % DAYS_A_WEEK for number, _ in week.by_day()}
        days = athlete.days if athlete is not None and isinstance(athlete.days, tuple) else ()
        for number in sorted(range(day - 3, day + 4), key=lambda one: abs(one - day)):
            name = day_name(starts, number)
            ahead = [(number - other) % DAYS_A_WEEK for other in others]
            is_far = all(apart <= distance <= DAYS_A_WEEK - apart for distance in ahead)
            if is_far and number % DAYS_A_WEEK not in taken and (not days or name.lower() in days):
                yield from moved(session, day_name(starts, day), name)

    return work_out
