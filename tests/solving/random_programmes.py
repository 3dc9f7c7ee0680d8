"""Random programmes: of any goal, on any days, with restrictions, equipment, weeks and demands of all kinds."""

from __future__ import annotations

from hypothesis import strategies as st

LIFTS = (
    "back squat", "leg press", "Romanian deadlift", "deadlift", "hip thrust", "seated leg curl", "Nordic curl",
    "leg extension", "split squat", "standing calf raise", "seated calf raise", "bench press", "dumbbell fly",
    "incline bench press", "overhead press", "dip", "lat pulldown", "pull-up", "seated cable row",
    "bent-over row", "barbell curl", "triceps pushdown", "lateral raise", "plank", "box jump", "side bend",
    "power clean", "snatch", "medicine ball slam", "farmer's walk", "single-leg leg press", "unheard of lift",
)  # fmt: skip
DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
GOALS = ("hypertrophy", "strength", "power", "general health", "muscular endurance", "")
AREAS = ("legs", "chest", "back", "hamstrings", "biceps", "calves", "upper body", "quadriceps")
SPORTS = ("", "", "", "powerlifting", "football", "weightlifting", "swimming", "wheelchair basketball")
NOTES = (
    "no rows", "nothing overhead", "no leg curls", "no RDLs", "days in any order", "left side extra", "hotel",
    "easy week", "2 hours between",
)  # fmt: skip


@st.composite
def programmes(draw: st.DrawFn) -> str:
    """The text of a programme with one athlete."""
    weeks = draw(st.sampled_from((1, 2, 4, 6, 9)))
    goal = draw(st.sampled_from(GOALS))
    text = ["programme: Random", "starts: 2026-01-05", f"weeks: {weeks}"]
    text += [f"goal: {goal}"] if goal else []
    text += [f"athlete: {{{', '.join(draw(_athlete()))}}}"]
    for key in ("focus", "priority"):
        words = (*AREAS, "bench press") if key == "priority" else AREAS
        named = draw(st.lists(st.sampled_from(words), max_size=2, unique=True))
        text += [f"{key}: [{', '.join(named)}]"] if named else []
    text += draw(
        st.sampled_from(([], [], ["phase: in-season"], ["phase: return"], ["deload: [2]"]))
        if weeks > 1
        else st.just([])
    )
    text += draw(st.sampled_from(([], [], ["events: [{date: 2026-01-17, event: meet}]"])))
    text += draw(_note())
    text += draw(_must_hold())
    text.append("sessions:")
    for number in range(draw(st.integers(1, 4))):
        text += draw(_session(number, weeks))
    text += draw(
        st.sampled_from(([], [], ["  - {activity: match, day: saturday, effort: 8, loads: {legs: high}}"]))
    )
    return "\n".join(text) + "\n"


@st.composite
def _note(draw: st.DrawFn, indent: str = "") -> list[str]:
    said = draw(st.sampled_from(NOTES)) if draw(st.integers(0, 5)) == 0 else ""
    return [f"{indent}note: {said}"] if said else []


@st.composite
def _athlete(draw: st.DrawFn) -> list[str]:
    said = ["name: Bo"]
    level = draw(st.sampled_from(("", "novice", "intermediate", "advanced")))
    said += [f"level: {level}"] if level else []
    said += draw(st.sampled_from(([], ["minutes: 30"], ["minutes: 60"])))
    said += draw(st.sampled_from(([], [], ["age: 70"])))
    said += draw(st.sampled_from(([], ["days: 2"], ["days: [monday, wednesday, friday]"])))
    said += draw(st.sampled_from(([], [], ["equipment: [dumbbells, flat bench]"])))
    said += draw(st.sampled_from(([], [], ["protect: [{movement: overhead pressing, advised by: doctor}]"])))
    sport = draw(st.sampled_from(SPORTS))
    return [*said, *([f"sport: {sport}"] if sport else [])]


@st.composite
def _must_hold(draw: st.DrawFn) -> list[str]:
    asked = draw(
        st.lists(
            st.sampled_from(
                (
                    "{weekly sets of: hamstrings, at least: 6}",
                    "{weekly sets of: chest, at most: 8}",
                    "{weekly sets of: horizontal pull, at least as many as: horizontal push}",
                    "{days of: back squat, at least: 2}",
                    "{hours between: [legs, legs], at least: 48}",
                    "{never two days running: chest}",
                )
            ),
            max_size=2,
            unique=True,
        )
    )
    return ["must hold:", *(f"  - {one}" for one in asked)] if asked else []


@st.composite
def _session(draw: st.DrawFn, number: int, weeks: int) -> list[str]:
    on = draw(st.lists(st.sampled_from(DAYS), max_size=3, unique=True))
    text = [f"  - session: S{number}"]
    text += [f"    day: [{', '.join(on)}]"] if on else []
    text += draw(st.sampled_from(([], [], ["    minutes: 40"])))
    text += draw(_note("    "))
    text.append("    exercises:")
    for lift in draw(st.lists(st.sampled_from(LIFTS), min_size=1, max_size=6)):
        sets = draw(_sets(weeks))
        more = draw(
            st.sampled_from(
                ("reps: 8", "reps: 8-12, rir: 2", "reps: 5, rir: 0", "reps: 12, rir: 4", "reps: 3, load: 85 %",
                 "reps: 10, rest: 3 min", "reps: 6, rest: 2 min, side: left", "reps: 15, side: right", "hold: 30 s")
            )
        )  # fmt: skip
        text.append(f"      - {{exercise: {lift}, sets: {sets}, {more}}}")
    return text


@st.composite
def _sets(draw: st.DrawFn, weeks: int) -> str:
    number = st.integers(0, 9).map(str)
    if weeks > 1 and draw(st.booleans()):
        return (
            f"{{1: {draw(number)}, 2-{weeks}: {draw(number)}}}"
            if weeks > 2
            else f"{{1: {draw(number)}, 2: {draw(number)}}}"
        )
    return draw(st.sampled_from(("2-3", "3-5"))) if draw(st.integers(0, 4)) == 0 else draw(number)
