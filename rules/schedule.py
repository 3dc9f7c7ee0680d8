"""Schedule: time between hard days, days in the week, order inside a session."""

from __future__ import annotations

from math import ceil

from ..lint.body import catalogue
from ..lint.finding import Related, found
from ..lint.ledger import DIRECT, FAST_KINDS, TOTAL, Ledger, Visit, Week, credit
from ..lint.quantities import plain
from ..lint.registry import Limits, Option, rule
from .words import counted_lines, day_name, line_name, listed, says, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.finding import Finding
    from ..lint.ledger import Count, Entry, Tally
    from ..lint.programme import Activity, Session, Term

HOURS_A_DAY = 24
DAYS_A_WEEK = 7

HARD_ACTIVITY = Option(
    "hard activity",
    ("high",),
    "grades of load (low, moderate, high) that make a day hard for an area",
    "common practice",
)


@rule(
    "sessions-too-close",
    family="schedule",
    severity="warning",
    confidence="guideline",
    why="A muscle that has done several hard sets is usually given 48 hours before the next; sets to failure"
    " slow recovery by a day or more. Well-trained lifters have done without; a team may decide otherwise.",
    sources=("fm21-20-48", "moran-2017", "house-4day"),
    options=(
        Option("hours", 48, "hours between two hard days for a muscle group", "fm21-20-48"),
        Option("hours after failure", 72, "hours, where the first day goes to failure", "moran-2017"),
        Option("hard day", 4, "direct sets that make a day hard", "common practice"),
        Option(
            "hard set", 3, "repetitions in reserve at most; sets without a stated effort count", "moran-2017"
        ),
        HARD_ACTIVITY,
        Option(
            "exempt",
            ("calves", "shins", "abdominals", "obliques", "lower back", "forearms", "neck muscles"),
            "muscle groups",
            "common practice",
        ),
    ),
    stands_back=True,
)
def sessions_too_close(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Two days with hard work for the same muscle group, too close to one another.

    Counts direct sets with at most 3 repetitions in reserve, day by day over the whole calendar; wants 48
    hours between two days that hold 4 or more for a group, 72 where those of the first go to failure. An
    activity that loads an area high makes its day hard for the muscle groups there; two activities are left
    to whoever plans them. Days without a date or weekday are left alone.

    Flags:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6}]
          - session: Light  # <- here
            day: tuesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12}]

    Passes:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6}]
          - session: Light
            day: wednesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12}]
    """
    days = _days(ledger, limits)
    longest = max(limits.number("hours"), limits.number("hours after failure"))
    for index, later in enumerate(days):
        for before in reversed(days[:index]):
            hours = (later.number - before.number) * HOURS_A_DAY
            if hours >= longest:
                break
            close = [
                part
                for part, work in later.hard.items()
                if part in before.hard
                and hours < _needed(before.hard[part], limits)
                and (work.sets or before.hard[part].sets)
            ]
            if close and not later.week.rehabilitation:
                yield _too_close(before, later, close, hours, limits)


def _too_close(
    before: _Day, later: _Day, close: list[tuple[str, str]], hours: int, limits: Limits
) -> Finding:
    programme = later.week.programme
    first, second = (day_name(programme, day.number) for day in (before, later))
    groups = list(dict.fromkeys(group for group, _ in close))
    needed = max(_needed(before.hard[part], limits) for part in close)
    failing = any(before.hard[part].failing for part in close)
    activities = [*before.activities(close), *later.activities(close)]
    movable = later if later.session(close) else before
    session = movable.session(close)
    assert session is not None
    least = f"{limits.number('hard day'):g} hard sets for the muscle"
    return found(
        session.place,
        f"{before.words(first, close)} and {later.words(second, close)} both work {listed(groups)} hard,"
        f" {hours} h apart{', and ' + first + ' goes to failure' if failing else ''}.",
        wanted=f"{needed:g} h between two such days",
        change=f"Move {session.name} further from {listed(activities)}, or bring it below {least}."
        if activities
        else f"Move one of the two sessions, or bring one of the days below {least}.",
        where=session.name,
        subject=f"{first} {second}",
        related=counted_lines(
            *(sets for part in close for day in (before, later) if (sets := day.hard[part].sets))
        ),
        weeks=(movable.week.number,),
        excess=len(groups),
    )


class _HardWork:
    """What makes a day hard for a group: its hard sets, and whether enough of them fail; or an activity."""

    def __init__(self, sets: Count | None, failing: bool, activity: str = "") -> None:
        self.sets = sets
        self.failing = failing
        self.activity = activity


class _Day:
    """A day of the calendar by its number, with what is hard on it by group and side."""

    def __init__(self, number: int, week: Week, hard: dict[tuple[str, str], _HardWork]) -> None:
        self.number = number
        self.week = week
        self.hard = hard

    def activities(self, parts: Iterable[tuple[str, str]]) -> list[str]:
        """The activities that make it hard for some of the groups."""
        return list(dict.fromkeys(name for part in parts if (name := self.hard[part].activity)))

    def session(self, parts: Iterable[tuple[str, str]]) -> Session | None:
        """The first session that makes it hard for one of the groups."""
        counts = [sets for part in parts if (sets := self.hard[part].sets)]
        return counts[0].parts[0].visit.session if counts else None

    def words(self, name: str, parts: Iterable[tuple[str, str]]) -> str:
        """``Saturday (match)``."""
        activities = self.activities(parts)
        return f"{name} ({listed(activities)})" if activities else name


def _days(ledger: Ledger, limits: Limits) -> list[_Day]:
    """Every day with a session or an activity, in order, with what is hard on it."""
    days: dict[int, _Day] = {}
    for number, week, tally in ledger.training_days():
        days[number] = _Day(number, week, dict(ledger.recall(_hard_groups, tally, limits)))
    for number, week, activity in ledger.activities():
        day = days.setdefault(number, _Day(number, week, {}))
        for group in _loaded(activity, limits):
            for side in ("left", "right"):
                day.hard.setdefault((group, side), _HardWork(None, False, activity.name))
    return sorted(days.values(), key=lambda day: day.number)


def _hard_groups(day: Tally, limits: Limits) -> dict[tuple[str, str], _HardWork]:
    """Muscle groups, with the side, for which a day is hard: one leg rests while the other works."""
    least, most_left = limits.number("hard day"), limits.number("hard set")
    hard = {}
    for group in day.groups():
        if group in limits.names("exempt") or day.sets(group, DIRECT).middle < least:
            continue
        for side in ("left", "right"):
            sets = day.sets(group, DIRECT, side=side).where(lambda entry: _leaves(entry) <= most_left)
            if sets.middle >= least:
                failing = sets.where(lambda entry: entry.stated_effort and _leaves(entry) == 0)
                hard[group, side] = _HardWork(sets, failing.middle >= least)
    return hard


def _loaded(activity: Activity, limits: Limits) -> list[str]:
    """Muscle groups that an activity loads so much that its day is hard for them."""
    grades = limits.names("hard activity")
    muscles = {
        muscle
        for area, grade in activity.loads
        if grade in grades
        for muscle in catalogue.area(area.words) or ()
    }
    return [group for group, members in catalogue.groups.items() if muscles.intersection(members)]


def _needed(work: _HardWork, limits: Limits) -> float:
    return limits.number("hours after failure" if work.failing else "hours")


def _leaves(entry: Entry) -> float:
    """Fewest repetitions in reserve that the line allows; none where no effort is stated."""
    return entry.reserve.low if entry.reserve else 0.0


@rule(
    "legs-heavy-before-event",
    family="schedule",
    severity="note",
    confidence="common practice",
    why="Coaches keep heavy leg work out of the last two days before a match or race: after hard sets jumps"
    " were still lower two days on in one small trial, after sets well short of failure they were not.",
    sources=("gonzalez-badillo-2016", "moran-2017"),
    options=(
        Option("days", 2, "days before the event", "common practice; gonzalez-badillo-2016"),
        Option("sets", 4, "heavy direct sets of the legs on a day", "common practice"),
        Option("areas", ("quadriceps", "hamstrings", "gluteals"), "muscle groups", "common practice"),
        Option("left at few repetitions", 3, "repetitions in reserve at most, below 8", "common practice"),
        Option(
            "left at many repetitions", 2, "repetitions in reserve at most, 8 and more", "common practice"
        ),
        Option(
            "matches",
            ("match", "game", "regatta", "race", "competition", "tournament", "meet", "final"),
            "words in the name of an activity that make it an event",
            "common practice",
        ),
        HARD_ACTIVITY,
    ),
    stands_back=True,
)
def legs_heavy_before_event(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Heavy leg work in the last two days before an event or a match.

    Counts direct sets for quadriceps, hamstrings and gluteals that are heavy: below 8 repetitions with at
    most 3 in reserve, 8 or more with at most 2; sets without a stated effort count below 8 repetitions. Wants
    fewer than 4 of them on each of the two days before a dated event, or an activity that is called a match
    or race. The eve of an activity that loads the legs high is left to sessions-too-close.

    Flags:
        programme: Match week
        sessions:
          - session: Lower
            day: thursday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]  # <- here
          - {activity: match, day: saturday}

    Passes:
        programme: Match week
        sessions:
          - session: Lower
            day: wednesday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - {activity: match, day: saturday}
    """
    events = _events(ledger, limits)
    areas = limits.names("areas")
    close = {
        number
        for number, _, activity in ledger.activities()
        if any(group in areas for group in _loaded(activity, limits))
    }
    for number, week, tally in ledger.training_days():
        ahead = [gap for gap in range(1, int(limits.number("days")) + 1) if number + gap in events]
        if not ahead or week.rehabilitation or (ahead[0] == 1 and number + 1 in close):
            continue
        heavy = tally.all_sets(hard=True).where(lambda entry: _is_heavy_leg_work(entry, limits))
        if heavy.middle < limits.number("sets"):
            continue
        line = heavy.lines()[0][0]
        away = "the day" if ahead[0] == 1 else f"{ahead[0]} days"
        yield found(
            line.place,
            f"{day_name(week.programme, number)} holds {heavy.most} heavy leg sets, {away} before"
            f" {events[number + ahead[0]]}.",
            wanted=f"fewer than {limits.number('sets'):g} on each of the last {limits.number('days'):g} days"
            " (common practice)",
            change=f"Move {line.session.name} further away from it, or leave more in reserve that day.",
            where=line_name(line),
            related=counted_lines(heavy),
            weeks=(week.number,),
            excess=heavy.high,
        )


def _events(ledger: Ledger, limits: Limits) -> dict[int, str]:
    """Names of dated events, and of activities that are one, by the number of their day."""
    named = {
        number: activity.name
        for number, _, activity in ledger.activities()
        if says(limits.names("matches"), activity.name)
    }
    return {**named, **{number: event.name for number, event in ledger.events()}}


def _is_heavy_leg_work(entry: Entry, limits: Limits) -> bool:
    exercise = entry.exercise
    if exercise is None or not any(credit(exercise, area) == 1 for area in limits.names("areas")):
        return False
    few = entry.slot == "heavy"
    if entry.reserve is None:
        return few
    return entry.reserve.low <= limits.number(
        "left at few repetitions" if few else "left at many repetitions"
    )


@rule(
    "frequency-low",
    family="schedule",
    severity="note",
    confidence="trial",
    why="In trials taken together strength rose more with two days a week than with one at the same number of"
    " sets; another review found no difference. Muscle size hardly depends on it.",
    sources=("pelland-2026-freq", "acsm-2026-freq", "ralston-2018", "cuthbert-2021"),
    options=(
        Option(
            "least days",
            2,
            "days a week for a priority",
            "pelland-2026-freq",
            by=(({"phase": "in-season"}, 1),),
        ),
    ),
    stands_back=True,
)
def frequency_low(week: Week, limits: Limits) -> Iterator[Finding]:
    """A priority that is trained on fewer than two days a week where the goal is strength.

    Counts the days of typical weeks on which hard sets train a muscle among the priorities, helping sets
    included, or a lift among them or a close variant of it; sessions without a day count for a day each.
    Wants two in some week of the block, one in season. A priority that is not trained at all is for
    other rules to say.

    Flags:
        programme: Strength
        goal: strength
        priority: [back squat]
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 6, reps: 4}]  # <- here
          - session: Press
            day: thursday
            exercises: [{exercise: overhead press, sets: 4, reps: 5}]

    Passes:
        programme: Strength
        goal: strength
        priority: [back squat]
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 3, reps: 4}]
          - session: Press
            day: thursday
            exercises:
              - {exercise: overhead press, sets: 4, reps: 5}
              - {exercise: back squat, sets: 3, reps: 4}
    """
    if week.programme.goal != "strength" or not week.is_typical():
        return
    least = limits.number("least days")
    block = week.ledger.weeks_of(week.block)
    for term in week.programme.priority:
        count = _training(week, term)
        if not count or _may_hide(week, term):
            continue
        if max(_training(other, term).occasions() for other in block) >= least:
            continue
        line = count.lines()[0][0]
        days = listed([day_name(week.programme, day) for day in count.days()])
        yield found(
            line.place,
            f"{term.words} is trained on {_of_days(count.occasions())} a week{f' ({days})' if days else ''}.",
            wanted=f"at least {_of_days(least)} a week for a priority where the goal is strength",
            change=f"Share its sets out over another session; none have to be added to {line.session.name}.",
            where=line_name(line),
            subject=term.words,
            related=counted_lines(count),
            excess=-count.occasions(),
        )


def _of_days(number: float) -> str:
    return f"{plain(number)} day{'' if number == 1 else 's'}"


def _training(week: Week, term: Term) -> Count:
    """Hard sets that train a priority: a muscle or other area, else a lift and its close variants."""
    if catalogue.area(term.words) is not None:
        return week.sets(term.words, TOTAL)
    lift = week.ledger.known.exercise(term.words)
    return week.all_sets(hard=True).where(
        lambda entry: lift is not None and entry.exercise is not None and entry.exercise.is_close_to(lift)
    )


def _may_hide(week: Week, term: Term) -> bool:
    """Whether a line that cannot be counted may train a priority."""
    if catalogue.area(term.words) is not None:
        return week.could_hold(areas=(term.words,))
    lift = week.ledger.known.exercise(term.words)
    assert lift is not None
    unsure = [entry.exercise for _, entry in week.entries() if not entry.sure]
    return any(exercise is None or exercise.is_close_to(lift) for exercise in unsure)


@rule(
    "spine-days-consecutive",
    family="schedule",
    severity="note",
    confidence="convention",
    why="Some coaches keep a day between sessions that load the spine heavily. No trial was found on it; the"
    " low back is a common place of complaint among lifters.",
    sources=("back-to-back-axial", "keogh-2006"),
    options=(
        Option("loads", ("high",), "grades of load on the spine (low, moderate, high)", "convention"),
        Option("least sets", 1, "hard sets a day", "convention"),
    ),
    stands_back=True,
    off=True,
)
def spine_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Lifts that load the spine heavily on two days running.

    Counts hard sets of exercises that the catalogue marks as loading the spine high (squats and deadlifts
    with a bar and their kin), day by day; wants a day without them in between. Off until a team asks for it:
    it is a convention.

    Flags:
        programme: Strength
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - session: Pull
            day: tuesday
            exercises: [{exercise: deadlift, sets: 3, reps: 4}]  # <- here

    Passes:
        programme: Strength
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - session: Pull
            day: wednesday
            exercises: [{exercise: deadlift, sets: 3, reps: 4}]
    """
    grades, least = limits.names("loads"), limits.number("least sets")
    heavy: dict[int, Count] = {}
    for number, week, tally in ledger.training_days():
        count = tally.all_sets(hard=True).where(
            lambda entry: entry.exercise is not None and entry.exercise.axial in grades
        )
        if not count or count.middle < least:
            continue
        heavy[number] = count
        if number - 1 not in heavy or week.rehabilitation:
            continue
        first, second = (day_name(week.programme, day) for day in (number - 1, number))
        before = heavy[number - 1]
        line = count.lines()[0][0]
        names = list(dict.fromkeys(part.entry.name for part in (*before.parts, *count.parts)))
        yield found(
            line.place,
            f"{first} and {second} both load the spine heavily ({listed(names)}).",
            wanted="a day between two such days (a convention; no trial)",
            change="Move one of the two sessions, or take a lift that asks less of the back, such as a leg"
            " press or a hip thrust.",
            where=line_name(line),
            subject=f"{first} {second}",
            related=counted_lines(before, count),
            weeks=(week.number,),
            excess=count.high,
        )


@rule(
    "days-more-than-athlete",
    family="schedule",
    severity="warning",
    confidence="fact",
    why="The athlete has said when they can train; a session on another day is a session missed.",
    sources=(),
)
def days_more_than_athlete(week: Week, limits: Limits) -> Iterator[Finding]:
    """More training days than the athlete has, or other ones.

    Counts the days of a week that hold a session, one without a day for a day; wants no more of them than the
    athlete's `days`, and none on a weekday that is not among those where weekdays are listed. Activities are
    left alone.

    Flags:
        programme: Four days
        athlete: {name: Mara, days: [monday, tuesday, thursday, friday]}
        sessions:
          - session: Upper
            day: [monday, thursday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower  # <- here
            day: [tuesday, saturday]
            exercises: [{exercise: leg press, sets: 3, reps: 8}]

    Passes:
        programme: Four days
        athlete: {name: Mara, days: [monday, tuesday, thursday, friday]}
        sessions:
          - session: Upper
            day: [monday, thursday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower
            day: [tuesday, friday]
            exercises: [{exercise: leg press, sets: 3, reps: 8}]
    """
    athlete = week.ledger.athlete
    if athlete is None or athlete.days is None:
        return
    dated = [(day_name(week.programme, day), tally.visits[0].session) for day, tally in week.days()]
    sessions = [session for _, session in dated]
    sessions += [visit.session for visit in week.visits if not visit.day]
    if isinstance(athlete.days, int):
        most, outside, has = athlete.days, [], _of_days(athlete.days)
    else:
        most = len(set(athlete.days))
        outside = [(day, session) for day, session in dated if day.lower() not in athlete.days]
        has = listed([day.capitalize() for day in athlete.days])
    if outside:
        days, session = [day for day, _ in outside], outside[0][1]
        counted = f"{listed(days)} {'is a training day' if len(days) == 1 else 'are training days'}"
        change = f"Move {session.name} to one of the athlete's days"
    elif len(sessions) > most:
        session = sessions[most]
        counted = f"{_of_days(len(sessions))} with a session in a week"
        change = f"Put {session.name} together with another session, or leave it out"
    else:
        return
    yield found(
        session.place,
        f"{counted}; the athlete has {has}.",
        wanted="training on the days that the athlete has",
        change=f"{change}, or correct the athlete's `days`.",
        where=session.name,
        subject="days",
        related=(Related(athlete.place, f"the athlete's days: {has}"),),
        excess=len(outside) or len(sessions),
    )


@rule(
    "rest-day-missing",
    family="schedule",
    severity="note",
    confidence="common practice",
    why="Most coaches leave a day of the week free: for recovery, and as room for a session that was missed.",
    sources=("house-4day",),
    options=(
        Option("least", 1, "days of the week without training", "common practice"),
        Option(
            "easy activity", 3, "session rating up to which an activity is no training", "common practice"
        ),
    ),
    stands_back=True,
)
def rest_day_missing(week: Week, limits: Limits) -> Iterator[Finding]:
    """A week without a day off.

    Counts the days that hold hard sets, and those of activities rated harder than 3 of 10; wants at least one
    day of the week without either. Activities without a stated effort are taken as easy, and sessions without
    a day are left alone.

    Flags:
        programme: Every day
        sessions:
          - session: Upper
            day: [monday, wednesday, friday, sunday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower  # <- here
            day: [tuesday, thursday, saturday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]

    Passes:
        programme: Every day but one
        sessions:
          - session: Upper
            day: [monday, wednesday, friday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower
            day: [tuesday, thursday, saturday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]
    """
    lifting = {day: sets for day, tally in week.days() if (sets := tally.all_sets(hard=True))}
    easy = limits.number("easy activity")
    other = {
        day
        for activity in week.block.activities
        if activity.effort is not None and activity.effort.middle > easy
        for day in activity.days
        if day not in lifting
    }
    free = DAYS_A_WEEK - len(lifting) - len(other)
    if free >= limits.number("least") or not lifting:
        return
    lightest = min(lifting, key=lambda day: (lifting[day].middle, day))
    session = lifting[lightest].parts[0].visit.session
    day = day_name(week.programme, lightest)
    also = f" and {len(other)} with other training" if other else ""
    yield found(
        session.place,
        f"{_of_days(len(lifting))} with lifting{also} leave {_of_days(free) if free else 'no day'} free.",
        wanted=f"at least {_of_days(limits.number('least'))} off (common practice)",
        change=f"Leave {day} free, which holds the fewest sets, and share its work out over the other days.",
        where=session.name,
        subject="rest day",
    )


@rule(
    "priority-late",
    family="schedule",
    severity="note",
    confidence="trial",
    why="The lift that comes first gains most strength; what comes last in every session may gain little. For"
    " size the order hardly matters.",
    sources=("simao-2010", "acsm-2026-order", "mcleod-2023"),
    options=(
        Option("parts", 3, "parts of a session, of which a priority belongs in the first", "simao-2010"),
    ),
    stands_back=True,
)
def priority_late(week: Week, limits: Limits) -> Iterator[Finding]:
    """A declared priority that no session of the week comes to in its first third.

    Where the goal is strength, looks at the sessions that train a muscle or lift among the priorities; wants
    it in the first third of the exercises in at least one of them, a superset or circuit being one. Fast work
    may come before it, and so may other priorities. Sessions with an exercise that nobody knows are left
    alone.

    Flags:
        programme: Strength
        goal: strength
        priority: [bench press]
        sessions:
          - session: Upper
            exercises:
              - {exercise: overhead press, sets: 3, reps: 5}
              - {exercise: pull-up, sets: 3, reps: 6}
              - {exercise: bench press, sets: 3, reps: 5}  # <- here

    Passes:
        programme: Strength
        goal: strength
        priority: [bench press]
        sessions:
          - session: Upper
            exercises:
              - {exercise: bench press, sets: 3, reps: 5}
              - {exercise: overhead press, sets: 3, reps: 5}
              - {exercise: pull-up, sets: 3, reps: 6}
    """
    if week.programme.goal != "strength":
        return
    for term in week.programme.priority:
        turns = [turn for visit in week.visits if (turn := _turn(visit, term)) is not None]
        if not turns or any(turn.is_early(limits.number("parts")) for turn in turns):
            continue
        turn = turns[0]
        line = turn.entry.prescription
        several = "; no session of the week comes to it earlier" if len(turns) > 1 else ""
        yield found(
            line.place,
            f"{line.session.name} comes to {term.words} with exercise {turn.position} of {turn.of}{several}.",
            wanted="a priority in the first third of a session, where the goal is strength",
            change=f"Move {turn.entry.name} to the front of {line.session.name}.",
            where=line_name(line),
            subject=term.words,
            related=tuple(Related(one.prescription.place, "comes before it") for one in turn.before),
        )


class _Turn:
    """When a session comes to a priority: with which exercise of how many, after which that are none."""

    def __init__(self, entry: Entry, position: int, of: int, before: list[Entry]) -> None:
        self.entry = entry
        self.position = position
        self.of = of
        self.before = before

    def is_early(self, parts: float) -> bool:
        return len(self.before) < ceil(self.of / parts)


def _turn(visit: Visit, term: Term) -> _Turn | None:
    items = _items(visit)
    if any(entry.exercise is None for item in items for entry in item):
        return None
    before: list[Entry] = []
    for position, item in enumerate(items, 1):
        for entry in item:
            if _is_for(entry, term, visit.ledger):
                return _Turn(entry, position, len(items), before)
        if not any(
            _is_for(entry, other, visit.ledger) for entry in item for other in visit.ledger.programme.priority
        ):
            before.append(item[0])
    return None


def _items(visit: Visit) -> list[list[Entry]]:
    """The exercises of a session in order, a superset or circuit being one; fast work is left out."""
    items: list[list[Entry]] = []
    for entry in visit.own:
        if not entry.sets.high or (entry.exercise is not None and entry.exercise.kind in FAST_KINDS):
            continue
        if items and _belong_together(items[-1][0], entry):
            items[-1].append(entry)
        else:
            items.append([entry])
    return items


def _belong_together(one: Entry, other: Entry) -> bool:
    """Whether two entries are groups of one line, or stand in one superset or circuit."""
    first, second = one.prescription, other.prescription
    return first is second or (first.paired is not None and first.paired is second.paired)


def _is_for(entry: Entry, term: Term, ledger: Ledger) -> bool:
    """Whether an entry trains a muscle directly, or is the lift that is meant."""
    assert entry.exercise is not None
    if catalogue.area(term.words) is not None:
        return credit(entry.exercise, term.words) == 1
    return entry.exercise is ledger.known.exercise(term.words)


@rule(
    "isolation-before-compound",
    family="schedule",
    severity="note",
    confidence="guideline",
    why="What comes first gains most strength, and a heavy lift suffers where its muscle is tired. Some"
    " coaches do it on purpose; for size the order hardly matters.",
    sources=("acsm-2009-order", "simao-2010", "mcleod-2023"),
    options=(
        Option("least sets", 2, "hard sets of the small exercise", "common practice"),
        Option(
            "small matter",
            ("hypertrophy", "muscular endurance"),
            "goals for which the order hardly matters",
            "mcleod-2023",
        ),
        Option(
            "exempt",
            ("adductors", "hip abductors", "abdominals", "obliques", "lower back"),
            "muscle groups",
            "common practice: small exercises that wake the hip and trunk up",
        ),
        Option(
            "on purpose",
            ("pre-exhaust", "pre-exhaustion", "pre-fatigue", "activation", "warm-up", "primer"),
            "words in the note of the line or session",
            "common practice",
        ),
    ),
    stands_back=True,
)
def isolation_before_compound(visit: Visit, limits: Limits) -> Iterator[Finding]:
    """A heavy compound after an exercise for one joint that tires its prime mover.

    Looks at squats, lunges, hinges, presses and pulls below 8 repetitions; wants no exercise for a single
    joint with 2 or more hard sets for one of the same muscles before them in the session. Silent where the
    goal is size or muscular endurance, for a superset of the two, for a muscle among the priorities, and
    where a note says that it is on purpose.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 3, reps: 12}
              - {exercise: back squat, sets: 4, reps: 5}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 5}
              - {exercise: leg extension, sets: 3, reps: 12}
    """
    words = limits.names("on purpose")
    if visit.ledger.programme.goal in limits.names("small matter") or says(words, visit.session.note):
        return
    small: list[Entry] = []
    for entry in visit.own:
        if not entry.hard or says(words, entry.prescription.note):
            continue
        if _isolates(entry, limits):
            small.append(entry)
        if not entry.compound or entry.slot != "heavy":
            continue
        shared = {
            one: groups
            for one in small
            if not _belong_together(one, entry) and (groups := _shared_groups(one, entry, limits))
        }
        if not shared:
            continue
        names = listed(list(dict.fromkeys(one.name for one in shared)))
        tired = listed(list(dict.fromkeys(group for groups in shared.values() for group in groups)))
        yield found(
            entry.prescription.place,
            f"{entry.name} at {_repetitions(entry)} comes after {names}, which tires the same {tired}.",
            wanted="heavy work for several joints first",
            change=f"Put {entry.name} before {names}, or write pre-exhaustion into the note if it is meant.",
            where=line_name(entry.prescription),
            related=tuple(
                Related(one.prescription.place, f"{line_name(one.prescription)}: {sets_of(str(one.sets))}")
                for one in shared
            ),
        )


def _isolates(entry: Entry, limits: Limits) -> bool:
    """Whether it is enough work of an exercise for one joint, for a muscle that is no priority."""
    exercise = entry.exercise
    if exercise is None or entry.compound or exercise.kind != "dynamic":
        return False
    if entry.sets.middle < limits.number("least sets"):
        return False
    return not any(_is_for(entry, term, entry.ledger) for term in entry.ledger.programme.priority)


def _shared_groups(small: Entry, large: Entry, limits: Limits) -> list[str]:
    """Muscle groups of the muscles that both train directly."""
    assert small.exercise is not None
    assert large.exercise is not None
    shared = set(small.exercise.direct).intersection(large.exercise.direct)
    return [
        group
        for group, members in catalogue.groups.items()
        if shared.intersection(members) and group not in limits.names("exempt")
    ]


def _repetitions(entry: Entry) -> str:
    """``5 repetitions`` or ``6RM``: what makes a slot heavy."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    if reps is not None:
        return f"{reps} repetitions"
    assert entry.work.load is not None
    return entry.work.load.words


@rule(
    "older-adult-days",
    family="schedule",
    severity="note",
    confidence="guideline",
    why="For people of 65 and over strength training on two or three days a week is advised. How much of it"
    " suits one athlete is for them, their coach and their clinician to say.",
    sources=("fragala-2019", "who-2020"),
    options=(
        Option("age", 65, "years", "fragala-2019"),
        Option("least days", 2, "days a week", "fragala-2019"),
    ),
    stands_back=True,
)
def older_adult_days(week: Week, limits: Limits) -> Iterator[Finding]:
    """Fewer than two training days a week for an athlete of 65 or over.

    Counts the days of typical weeks that hold a session, one without a day for a day; wants two.

    Flags:
        programme: Strong at seventy
        athlete: {name: Ottilie, age: 70}
        sessions:
          - session: Whole body  # <- here
            day: monday
            exercises: [{exercise: leg press, sets: 2, reps: 8}]

    Passes:
        programme: Strong at seventy
        athlete: {name: Ottilie, age: 70}
        sessions:
          - session: Whole body
            day: [monday, thursday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]
    """
    athlete = week.ledger.athlete
    if athlete is None or athlete.age is None or athlete.age < limits.number("age") or not week.is_typical():
        return
    days = len({visit.day or visit for visit in week.visits if visit.own})
    if not days or days >= limits.number("least days"):
        return
    session = next(visit.session for visit in week.visits if visit.own)
    yield found(
        session.place,
        f"{_of_days(days)} a week for an athlete of {athlete.age:g}.",
        wanted=f"{limits.number('least days'):g} days a week or more at {limits.number('age'):g} and over",
        change=f"Share the work of {session.name} out over a second day.",
        where=session.name,
        subject="days",
    )
