"""What changes in the limits of the person, and in what the programme says outside its sessions."""

from __future__ import annotations

from ..body.names import fold
from ..model.naming import day_name
from ..wording.words import counted_noun, listed, plain, week_list
from .difference import Difference

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import date

    from ..counting.ledger import Ledger
    from ..model.athlete import Athlete, BestLift, Restriction
    from ..model.on_days import Activity
    from ..model.programme import Rehabilitation
    from ..team.waivers import Waiver
    from ..text.places import Term

LIMIT_GONE, LIMIT_NEW = 76.0, 60.0
"""How telling it is that a piece of equipment or a demand of the coach's own is gone, and that one is new."""


def athlete_changes(old: Athlete | None, new: Athlete | None) -> list[Difference]:
    """Restrictions, best lifts, equipment and the rest of what is on file of an athlete."""
    if old is None or new is None:
        if old is new:
            return []
        who, done = (new, "is named now") if new is not None else (old, "is named no more")
        assert who is not None
        return [Difference("athlete", f"{who.name or 'the athlete'} {done}", 82, subject=who.name)]
    found = [
        *_restrictions(old, new),
        *_best_lifts(old, new),
        *_words(
            "equipment",
            "equipment",
            [one.words for one in old.equipment],
            [one.words for one in new.equipment],
        ),
        *_facts(old, new),
    ]
    return sorted(found, key=lambda one: -one.weight)


def renamed(old: Athlete | None, new: Athlete | None) -> list[Difference]:
    """That the two are not one athlete, by their names."""
    if old is None or new is None or fold(old.name) == fold(new.name):
        return []
    words = f"another athlete: {old.name or 'no name'} -> {new.name or 'no name'}"
    return [Difference("athlete", words, 96, subject="name", before=old.name, after=new.name)]


def _restrictions(old: Athlete, new: Athlete) -> Iterator[Difference]:
    before, after = ({_key(one): one for one in side.protect} for side in (old, new))
    for key, one in before.items():
        if key not in after:
            words = f"no longer protects {_protected(one)}"
            yield Difference("restriction", words, 95, subject=key[1], before=_protected(one))
            continue
        said, says = _terms(one), _terms(after[key])
        for what, weight in (("agreed", 86), ("advised by", 74), ("review on", 72)):
            was, now = said[what], says[what]
            if was != now:
                words = f"protects {one.subject.words}: {what} {was or 'none'} -> {now or 'none'}"
                yield Difference("restriction", words, weight, subject=key[1], before=was, after=now)
    for key, one in after.items():
        if key not in before:
            words = f"now protects {_protected(one)}"
            yield Difference("restriction", words, 85, subject=key[1], after=_protected(one))


def _key(one: Restriction) -> tuple[str, str]:
    return one.kind, fold(one.subject.words)


def _terms(one: Restriction) -> dict[str, str]:
    """What is said of a restriction."""
    return {
        "agreed": ", ".join(sorted(map(_plainly, one.may_stay))),
        "advised by": one.adviser,
        "review on": _text(one.review_on),
    }


def _protected(one: Restriction) -> str:
    return one.subject.words + (f" (advised by {one.adviser})" if one.adviser else "")


def _best_lifts(old: Athlete, new: Athlete) -> Iterator[Difference]:
    before, after = ({fold(one.exercise.words): one for one in side.best_lifts} for side in (old, new))
    for key in {**before, **after}:
        was, now = before.get(key), after.get(key)
        said, says = _best(was), _best(now)
        if said == says:
            continue
        name = one.exercise.words if (one := now or was) else key
        change = 100 * (now.kilograms / was.kilograms - 1) if was and now and was.kilograms else 0.0
        of = (
            f", {change:+.0f} %: so do loads in % of it"
            if change and was and now and was.reps == now.reps
            else ""
        )
        yield Difference(
            "best lift",
            f"best lift {name} {said or 'none'} -> {says or 'none'}{of}",
            min(70 + abs(change) / 2, 90),
            subject=name,
            before=said,
            after=says,
        )


def _best(lift: BestLift | None) -> str:
    if lift is None:
        return ""
    from .values import load_in_words

    return load_in_words(lift.load) + (f" x {lift.reps}" if lift.reps != 1 else "")


def _facts(old: Athlete, new: Athlete) -> Iterator[Difference]:
    facts = {
        "level": (old.level, new.level),
        "body mass": (_kilograms(old.body_mass), _kilograms(new.body_mass)),
        "age": (_number(old.age), _number(new.age)),
        "days": (_days(old), _days(new)),
        "minutes a session": (_number(old.minutes), _number(new.minutes)),
        "clearance on file": (_text(old.clearance), _text(new.clearance)),
        "screening on file": (_text(old.screening), _text(new.screening)),
        "supervision": (old.supervision, new.supervision),
    }
    for name, (was, now) in facts.items():
        if was != now:
            words = f"{name} {was or 'none'} -> {now or 'none'}"
            yield Difference("athlete", words, 64, subject=name, before=was, after=now)


def _number(value: float | None) -> str:
    return "" if value is None else plain(value)


def _kilograms(value: float | None) -> str:
    return "" if value is None else f"{plain(value)} kg"


def _text(value: object) -> str:
    return "" if value is None else str(value)


def _days(athlete: Athlete) -> str:
    days = athlete.days
    if days is None:
        return ""
    return counted_noun(days, "day") if isinstance(days, int) else ", ".join(days)


def _words(kind: str, label: str, old: Sequence[str], new: Sequence[str]) -> Iterator[Difference]:
    """Words of a list that are gone or new; ``label`` says what the list is."""
    before, after = {fold(one): one for one in old}, {fold(one): one for one in new}
    gone = [one for key, one in before.items() if key not in after]
    added = [one for key, one in after.items() if key not in before]
    parts = [
        *([f"no longer {listed(gone)}"] if gone else []),
        *([f"now also {listed(added)}"] if added else []),
    ]
    if parts:
        words = f"{label}: {', '.join(parts)}"
        weight = LIMIT_GONE if gone else LIMIT_NEW
        yield Difference(kind, words, weight, subject=label, before=listed(gone), after=listed(added))


def waiver_changes(old: Iterable[Waiver], new: Iterable[Waiver]) -> list[Difference]:
    """Waivers that are new, gone or end on another day."""
    before, after = ({(one.rule, one.subject): one for one in side} for side in (old, new))
    found = []
    for key in {**before, **after}:
        was, now = before.get(key), after.get(key)
        subject = f" for {key[1]}" if key[1] else ""
        if was is None and now is not None:
            words = f"waives {key[0]}{subject} now"
            found.append(Difference("waiver", words, 74, subject=key[0], after=_until(now)))
        elif now is None and was is not None:
            words = f"waives {key[0]}{subject} no more"
            found.append(Difference("waiver", words, 45, subject=key[0], before=_until(was)))
        elif was is not None and now is not None and was.until != now.until:
            words = f"waives {key[0]}{subject} {_until(was)} -> {_until(now)}"
            found.append(
                Difference("waiver", words, 60, subject=key[0], before=_until(was), after=_until(now))
            )
    return found


def _until(waiver: Waiver) -> str:
    return f"until {waiver.until}" if waiver.until else "for good"


def programme_changes(old: Ledger, new: Ledger) -> list[Difference]:
    """Goal, phase, dates, events, easier weeks, rehabilitation, length and activities."""
    one, two = old.programme, new.programme
    facts = {
        "goal": (one.goal, two.goal),
        "phase": (_phases(old), _phases(new)),
        "focus": (_focus(old), _focus(new)),
        "priority": (_listed(one.priority), _listed(two.priority)),
        "not trained": (_listed(one.not_trained), _listed(two.not_trained)),
        "maintain": (_listed(one.maintain), _listed(two.maintain)),
        "starts": (_text(one.starts), _text(two.starts)),
        "weeks": (str(one.weeks), str(two.weeks)),
        "events": (_events(old), _events(new)),
    }
    found = [
        Difference(
            "programme",
            f"{name} {was or 'none'} -> {now or 'none'}",
            59 if name in ("starts", "weeks", "events") else 42,
            subject=name,
            before=was,
            after=now,
        )
        for name, (was, now) in facts.items()
        if was != now
    ]
    was, now = _stage(one.rehabilitation), _stage(two.rehabilitation)
    if was != now:
        words = f"rehabilitation {was or 'none'} -> {now or 'none'}"
        found.append(Difference("rehabilitation", words, 88, subject="rehabilitation", before=was, after=now))
    demands = ([demand.words for demand in side.demands] for side in (one, two))
    return [*found, *_words("demand", "must hold", *demands), *_activities(old, new)]


def _plainly(words: str) -> str:
    """Words of the coach's in small letters, their spaces single."""
    return " ".join(words.split()).casefold()


def _listed(terms: Iterable[Term]) -> str:
    return ", ".join(_plainly(one.words) for one in terms)


def _focus(ledger: Ledger) -> str:
    """The focus of the programme and of its blocks; the order of its words says nothing."""
    programme = ledger.programme
    stated = [programme.focus, *(block.focus for block in programme.blocks)]
    return "; ".join(", ".join(sorted(_plainly(one.words) for one in terms)) for terms in stated if terms)


def _phases(ledger: Ledger) -> str:
    runs: dict[str, list[int]] = {}
    for week in ledger.weeks:
        runs.setdefault(week.phase, []).append(week.number)
    if len(runs) == 1:
        return next(iter(runs))
    return "; ".join(f"{phase or 'none'} in {week_list(weeks)}" for phase, weeks in runs.items())


def _events(ledger: Ledger) -> str:
    return ", ".join(sorted(f"{one.name} {one.date or ''}".strip() for one in ledger.programme.events))


def _stage(stage: Rehabilitation | None) -> str:
    if stage is None:
        return ""
    return f"{stage.stage}{f' until {stage.until}' if stage.until else ''}"


def _activities(old: Ledger, new: Ledger) -> Iterator[Difference]:
    """Activities that are new, gone, moved, or ask for other things."""
    before, after = _by_name(old), _by_name(new)
    for name in {**before, **after}:
        was, now = before.get(name), after.get(name)
        if was is None or now is None:
            days, asks = was or now or ("", "")
            said = ", ".join(part for part in (days, asks) if part)
            words = f"{name} is {'gone' if now is None else 'new'}{f': {said}' if said else ''}"
            sides = ("", said) if was is None else (said, "")
            yield Difference("activity", words, 44, subject=name, before=sides[0], after=sides[1])
            continue
        if was[0] != now[0]:
            words = f"{name} moved from {was[0] or 'any day'} to {now[0] or 'any day'}"
            yield Difference("activity", words, 57, subject=name, before=was[0], after=now[0])
        if was[1] != now[1]:
            words = f"{name}: {was[1] or 'nothing said'} -> {now[1] or 'nothing said'}"
            yield Difference("activity", words, 40, subject=name, before=was[1], after=now[1])


def _by_name(ledger: Ledger) -> dict[str, tuple[str, str]]:
    """The days of each activity, and what it asks for."""
    found: dict[str, tuple[dict[str, None], dict[str, None]]] = {}
    for block in ledger.programme.blocks:
        for one in block.activities:
            days, asks = found.setdefault(one.name, ({}, {}))
            days[_on_days(one, ledger.programme.starts)] = None
            asks[_asks(one)] = None
    return {
        name: ("; ".join(filter(None, days)), "; ".join(filter(None, asks)))
        for name, (days, asks) in found.items()
    }


def _on_days(one: Activity, starts: date | None) -> str:
    """Its days in words, by week where they differ."""

    def named(days: Iterable[int]) -> str:
        return listed([day_name(starts, day) for day in sorted(days)])

    weeks: dict[str, list[int]] = {}
    for week, (days, _) in sorted(one.by_week.items()):
        weeks.setdefault(named(days), []).append(week)
    return "; ".join(f"{days} in {week_list(at)}" for days, at in weeks.items()) or named(one.days)


def _asks(one: Activity) -> str:
    loads = sorted(f"{_plainly(term.words)} {load}" for term, load in one.loads)
    minutes = f"{one.minutes} min" if one.minutes else ""
    effort = f"effort {one.effort}" if one.effort else ""
    return ", ".join(part for part in (minutes, effort, *loads) if part)
