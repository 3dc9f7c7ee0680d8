"""Rules on the schedule: time between hard days."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {{stage: return, advised by: physiotherapist, until: {until}}}"
PRESS, EXTENSION = "leg press, sets: 4, reps: 6", "leg extension, sets: 4, reps: 12"


def days(first: str, second: str, one: str = PRESS, other: str = EXTENSION) -> dict[str, list[str]]:
    return {f"{first} Heavy": [one], f"{second} Light": [other]}


class TestSessionsTooClose:
    """At least 48 h for the same muscles: fm21-20-48, US Army FM 21-20 ch. 3 (secondary).

    Sets to failure slow recovery by 24 to 48 h: moran-2017, Eur J Appl Physiol 2017;117:2387-2399.
    """

    RULE = "sessions-too-close"

    @pytest.fixture
    def findings(self, findings: Findings) -> Findings:
        """Between two sessions all sets up to 3 in reserve count, and those that do not say."""
        moved = "sessions-too-close: {between sessions: 3"

        def run(text: str, rule: str, files: dict[str, str] | None = None) -> list[Finding]:
            team = (files or {}).get("spotline.yaml", "rules: {sessions-too-close: {}}\n")
            own = team.replace("sessions-too-close: {}", f"{moved}}}").replace(
                "sessions-too-close: {", f"{moved}, "
            )
            return findings(
                text,
                rule,
                {**(files or {}), "spotline.yaml": own.replace(f"{moved}, between sessions: 3", moved)},
            )

        return run

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "tuesday")), self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "guideline")
        assert (finding.place.excerpt, finding.where) == ("Light", "Light")
        assert finding.counted == "Quadriceps hard on Monday and Tuesday, 24 h apart."
        assert finding.wanted == "48 h"
        assert finding.change == "Move one day, or keep it under 4 hard sets."
        assert [related.words for related in finding.related] == [
            "Heavy, leg press, Monday: 4 sets",
            "Light, leg extension, Tuesday: 4 sets",
        ]

    @pytest.mark.parametrize(
        ("second", "said"), [("tuesday", 1), ("wednesday", 0), ("thursday", 0), ("sunday", 0)]
    )
    def test_forty_eight_hours(self, findings: Findings, week: Text, second: str, said: int) -> None:
        assert len(findings(week(days("monday", second)), self.RULE)) == said

    @pytest.mark.parametrize(("second", "said"), [("tuesday", 1), ("wednesday", 1), ("thursday", 0)])
    @pytest.mark.parametrize("effort", ["rir: 0", "rpe: 10", "reps: 6, load: 6RM"])
    def test_seventy_two_after_failure(
        self, findings: Findings, week: Text, second: str, said: int, effort: str
    ) -> None:
        assert len(findings(week(days("monday", second, f"{PRESS}, {effort}")), self.RULE)) == said

    def test_the_words_after_failure(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "wednesday", f"{PRESS}, rir: 0")), self.RULE)
        assert finding.counted == "Quadriceps hard on Monday (to failure) and Wednesday, 48 h apart."
        assert finding.wanted == "72 h"

    def test_failure_is_said_whatever_the_hours(self, findings: Findings, week: Text) -> None:
        both = ["leg press, sets: 4", "dumbbell fly, sets: 4, rir: 0"]
        (finding,) = findings(week({"monday": both, "tuesday": both}), self.RULE)
        assert finding.counted.endswith(" hard on Monday (to failure) and Tuesday, 24 h apart.")
        assert finding.wanted == "72 h"

    @pytest.mark.parametrize(
        ("first", "second"),
        [
            (PRESS, f"{EXTENSION}, rir: 0"),
            (f"{PRESS}, rir: 1", EXTENSION),
            ("leg press, sets: 3, rir: 0", EXTENSION),
        ],
    )
    def test_only_failure_of_a_hard_first_day_takes_longer(
        self, findings: Findings, week: Text, first: str, second: str
    ) -> None:
        assert findings(week(days("monday", "wednesday", first, second)), self.RULE) == []

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("leg extension, sets: 4", 1),
            ("leg extension, sets: 3", 0),
            ("leg extension, sets: 3-5", 1),  # middle 4
            ("leg extension, sets: 3-4", 0),  # middle 3.5
            ("leg extension, sets: 4, rir: 3", 1),
            ("leg extension, sets: 4, rir: 4", 0),
            ("leg extension, sets: 4, rir: 3-5", 1),  # may be as hard as 3 in reserve
            ("leg extension, sets: 4, rpe: 7", 1),
            ("leg extension, sets: 4, rpe: 6", 0),
            ("leg extension, sets: 4, rpe: 5-7", 1),
            ("box jump, sets: 9, reps: 3", 0),  # fast work
            ("seated leg curl, sets: 9", 0),  # another muscle
            ("moon walk, sets: 9", 0),
        ],
    )
    def test_what_makes_a_day_hard(self, findings: Findings, week: Text, line: str, said: int) -> None:
        for one, other in ((PRESS, line), (line, PRESS)):
            assert len(findings(week(days("monday", "tuesday", one, other)), self.RULE)) == said

    def test_helping_sets_make_no_day_hard(self, findings: Findings, week: Text) -> None:
        assert (
            findings(
                week(days("monday", "tuesday", "bench press, sets: 9", "cable pushdown, sets: 9")), self.RULE
            )
            == []
        )

    def test_lines_of_a_day_are_taken_together(self, findings: Findings, week: Text) -> None:
        text = week(
            {
                "monday Morning": ["leg press, sets: 2"],
                "monday Evening": ["leg press, sets: 2"],
                "tuesday Light": [EXTENSION],
            }
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "Quadriceps hard on Monday and Tuesday, 24 h apart."

    def test_two_sessions_of_one_day_are_one_day(self, findings: Findings, week: Text) -> None:
        assert findings(week({"monday Morning": [PRESS], "monday Evening": [PRESS]}), self.RULE) == []

    @pytest.mark.parametrize(
        "exercise", ["standing calf raise", "plank", "wrist curl", "tibialis raise", "neck flexion"]
    )
    def test_muscles_that_may_work_daily(self, findings: Findings, week: Text, exercise: str) -> None:
        assert (
            findings(
                week(days("monday", "tuesday", f"{exercise}, sets: 6", f"{exercise}, sets: 6")), self.RULE
            )
            == []
        )

    def test_several_muscles_are_one_finding(self, findings: Findings, week: Text) -> None:
        both = [PRESS, "seated leg curl, sets: 4", "hip abduction machine, sets: 4"]
        (finding,) = findings(week({"monday": both, "tuesday": both}), self.RULE)
        assert "hamstrings, quadriceps" in finding.counted

    @pytest.mark.parametrize("session", ["A", "monday"])
    def test_days_that_are_not_stated_are_left_alone(
        self, findings: Findings, week: Text, session: str
    ) -> None:
        assert findings(week({session: [PRESS], "B": [PRESS]}), self.RULE) == []

    def test_over_the_end_of_a_week(self, findings: Findings, week: Text) -> None:
        assert findings(week(days("monday", "sunday")), self.RULE) == []  # one week: nothing follows
        (finding,) = findings(week(days("monday", "sunday"), "weeks: 3"), self.RULE)
        assert finding.counted == "Quadriceps hard on Sunday and Monday, 24 h apart."
        assert finding.weeks == (2, 3)
        assert finding.place.excerpt == "Heavy"

    def test_over_the_end_of_a_block(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, day: {day}, exercises: [{{exercise: leg press, sets: 4}}]}}]}}\n"
        text = (
            "programme: Test\nblocks:\n"
            + block.format(name="One", day="sunday")
            + block.format(name="Two", day="monday")
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.excerpt, finding.weeks) == ("Two", (2,))

    def test_weeks_are_drawn_together(self, findings: Findings, week: Text) -> None:
        text = week(days("monday", "tuesday", other="leg extension, sets: {1: 3, 2-4: 4, 5: 2}"), "weeks: 5")
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (2, 3, 4)

    def test_a_repeated_day_is_close_to_itself(self, findings: Findings) -> None:
        text = "programme: Test\nsessions: [{session: Legs, day: [monday, tuesday], exercises: [{exercise: leg press, sets: 4}]}]\n"
        (finding,) = findings(text, self.RULE)
        assert "hard on Monday and Tuesday" in finding.counted
        assert [related.words for related in finding.related] == ["Legs, leg press, Monday: 4 sets"]

    def test_weekdays_keep_their_names_whatever_day_the_programme_starts(
        self, findings: Findings, week: Text
    ) -> None:
        # 1 January 2026 is a Thursday, so Monday and Tuesday are days 5 and 6
        (finding,) = findings(week(days("monday", "tuesday"), "starts: 2026-01-01"), self.RULE)
        assert finding.counted.startswith("Quadriceps hard on Monday and Tuesday")
        (finding,) = findings(week(days("wednesday", "thursday"), "starts: 2026-01-01\nweeks: 2"), self.RULE)
        assert finding.counted.startswith(
            "Quadriceps hard on Wednesday and Thursday"
        )  # over the end of its week
        assert finding.weeks == (2,)

    def test_a_rotation_is_laid_out_first(self, findings: Findings) -> None:
        text = (
            "programme: Test\nrotation: [monday, tuesday, friday]\nsessions:\n"
            "  - {session: A, exercises: [{exercise: leg press, sets: 4}]}\n  - {session: B, exercises: [{exercise: leg press, sets: 4}]}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.excerpt, "Monday and Tuesday" in finding.counted) == ("B", True)

    @pytest.mark.parametrize(
        ("until", "weeks"), [("2026-01-04", [(1, 2, 3)]), ("2026-01-11", [(2, 3)]), ("2026-12-31", [])]
    )
    def test_stands_back_under_rehabilitation(
        self, findings: Findings, week: Text, until: str, weeks: list[tuple[int, ...]]
    ) -> None:
        head = f"starts: 2026-01-05\nweeks: 3\n{REHABILITATION.format(until=until)}"
        assert [
            finding.weeks for finding in findings(week(days("monday", "tuesday"), head), self.RULE)
        ] == weeks

    @pytest.mark.parametrize("head", ["focus: [chest]", "phase: taper", "goal: strength"])
    def test_neither_focus_nor_phase_nor_goal_matters(
        self, findings: Findings, week: Text, head: str
    ) -> None:
        assert len(findings(week(days("monday", "tuesday"), head), self.RULE)) == 1

    def test_sides_are_compared_with_themselves(self, findings: Findings, week: Text) -> None:
        left, right = "leg extension, sets: 4, side: left", "leg extension, sets: 4, side: right"
        assert len(findings(week(days("monday", "tuesday", left, left)), self.RULE)) == 1
        assert findings(week(days("monday", "tuesday", left, right)), self.RULE) == []

    # Field sessions and matches

    MATCH = "  - {{activity: match, day: {day}, loads: {{{loads}}}}}\n"

    def with_match(self, week: Text, day: str, loads: str, days: dict[str, list[str]], head: str = "") -> str:
        return week(days, head) + self.MATCH.format(day=day, loads=loads)

    def test_the_words_with_a_match(self, findings: Findings, week: Text) -> None:
        text = self.with_match(
            week, "saturday", "quadriceps: high, hamstrings: high", {"friday Lower": [PRESS]}
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.place.excerpt, finding.where) == ("warning", "Lower", "Lower")
        assert finding.counted == "Quadriceps hard on Friday and Saturday (match), 24 h apart."
        assert finding.change == "Move Lower further from match, or keep it under 4 hard sets."
        assert [related.words for related in finding.related] == ["Lower, leg press, Friday: 4 sets"]

    def test_a_match_before_the_session(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "saturday", "quads: high", {"monday": [PRESS], "sunday Easy": [PRESS]})
        (finding,) = findings(text, self.RULE)
        assert finding.place.excerpt == "Easy"
        assert finding.counted == "Quadriceps hard on Saturday (match) and Sunday, 24 h apart."

    @pytest.mark.parametrize(
        ("loads", "said"),
        [
            ("quadriceps: high", 1),
            ("legs: high", 1),
            ("vastus medialis: high", 1),
            ("quadriceps: moderate", 0),
            ("quadriceps: low", 0),
            ("hamstrings: high", 0),  # another muscle
            ("somewhere: high", 0),
        ],
    )
    def test_what_an_activity_must_load(self, findings: Findings, week: Text, loads: str, said: int) -> None:
        text = self.with_match(week, "tuesday", loads, {"monday": [PRESS]})
        assert len(findings(text, self.RULE)) == said

    def test_a_team_may_move_the_grade(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "tuesday", "quadriceps: moderate", {"monday": [PRESS]})
        team = {"spotline.yaml": "rules: {sessions-too-close: {hard activity: [moderate, high]}}\n"}
        assert len(findings(text, self.RULE, team)) == 1

    @pytest.mark.parametrize(("day", "said"), [("tuesday", 1), ("wednesday", 0)])
    def test_forty_eight_hours_from_a_match(
        self, findings: Findings, week: Text, day: str, said: int
    ) -> None:
        text = self.with_match(week, day, "quadriceps: high", {"monday": [PRESS]})
        assert len(findings(text, self.RULE)) == said

    def test_failure_before_a_match(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "wednesday", "quadriceps: high", {"monday": [f"{PRESS}, rir: 0"]})
        (finding,) = findings(text, self.RULE)
        assert finding.wanted == "72 h"

    def test_a_match_fails_nobody(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "monday", "quadriceps: high", {"wednesday": [f"{PRESS}, rir: 0"]})
        assert findings(text, self.RULE) == []

    def test_two_activities_are_no_business_of_ours(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "[monday, tuesday]", "quadriceps: high", {"friday": [PRESS]})
        assert findings(text, self.RULE) == []

    def test_an_activity_on_the_day_of_a_session(self, findings: Findings, week: Text) -> None:
        days = {"monday Lower": [PRESS], "tuesday Upper": ["bench press, sets: 4"]}
        text = self.with_match(week, "[monday, tuesday]", "quadriceps: high", days)
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "Quadriceps hard on Monday and Tuesday (match), 24 h apart."
        assert finding.place.excerpt == "Lower"  # what can be moved, not the other session of Tuesday

    def test_muscles_that_may_work_daily_may_do_so_on_the_pitch(self, findings: Findings, week: Text) -> None:
        text = self.with_match(week, "tuesday", "calves: high", {"monday": ["standing calf raise, sets: 6"]})
        assert findings(text, self.RULE) == []

    def test_it_points_at_the_session_that_works_the_muscle(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday": [PRESS], "tuesday Arms": ["barbell curl, sets: 4"], "tuesday Legs": [EXTENSION]}
        )
        (finding,) = findings(text, self.RULE)
        assert finding.place.excerpt == "Legs"

    @pytest.mark.parametrize(
        ("option", "value", "said"),
        [
            ("hours", 24, 0),
            ("hours", 25, 1),
            ("hard day", 5, 0),
            ("exempt", "[quadriceps]", 0),
            ("hard set", 1, 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, option: str, value: object, said: int
    ) -> None:
        text = week(days("monday", "tuesday", f"{PRESS}, rir: 2", f"{EXTENSION}, rir: 2"))
        assert len(findings(text, self.RULE)) == 1
        team = {"spotline.yaml": f"rules: {{sessions-too-close: {{{option}: {value}}}}}\n"}
        assert len(findings(text, self.RULE, team)) == said

    def test_no_stated_effort_counts_as_failure_whatever_the_team_calls_hard(
        self, findings: Findings, week: Text
    ) -> None:
        text = week(days("monday", "tuesday"))
        assert len(findings(text, self.RULE, moved(self.RULE, "hard set", 0))) == 1

    def test_the_team_moves_the_hours_after_failure(self, findings: Findings, week: Text) -> None:
        text = week(days("monday", "wednesday", f"{PRESS}, rir: 0"))
        team = {"spotline.yaml": "rules: {sessions-too-close: {hours after failure: 48}}\n"}
        assert findings(text, self.RULE, team) == []


def moved(rule: str, option: str, value: object) -> dict[str, str]:
    """A team's settings with one option of a rule moved."""
    return {"spotline.yaml": f"rules: {{{rule}: {{{option}: {value}}}}}\n"}


class TestLegsHeavyBeforeEvent:
    """Two days: common practice; gonzalez-badillo-2016, Int J Sports Med 2016;37:295-304: jump lower at 48 h."""

    RULE = "legs-heavy-before-event"
    SQUAT = "back squat, sets: 4, reps: 5"
    MATCH = "  - {activity: match, day: saturday}\n"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"thursday Lower": [self.SQUAT, "seated leg curl, sets: 2, reps: 10, rir: 2"]})
        (finding,) = findings(text + self.MATCH, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("back squat", "Lower, back squat")
        assert finding.counted == "6 heavy leg sets on Thursday, 2 days before match."
        assert finding.wanted == "fewer than 4 on each of the last 2 days"
        assert finding.change == "Move Lower further away, or leave more in reserve."
        assert [related.words for related in finding.related] == [
            "Lower, back squat, Thursday: 4 sets",
            "Lower, seated leg curl, Thursday: 2 sets",
        ]

    @pytest.mark.parametrize(
        ("day", "said"),
        [
            ("wednesday", None),
            ("thursday", "2 days before match"),
            ("friday", "the day before match"),
            ("saturday", None),
            ("sunday", None),
        ],
    )
    def test_two_days(self, findings: Findings, week: Text, day: str, said: str | None) -> None:
        found = findings(week({day: [self.SQUAT]}) + self.MATCH, self.RULE)
        assert [finding.counted.split(", ")[1].rstrip(".") for finding in found] == ([said] if said else [])

    @pytest.mark.parametrize(
        ("lines", "said"),
        [
            (["back squat, sets: 4, reps: 5"], 1),
            (["back squat, sets: 3, reps: 5"], 0),
            (["back squat, sets: 3-5, reps: 5"], 1),  # middle 4
            (["back squat, sets: 3-4, reps: 5"], 0),
            (["back squat, sets: 2, reps: 5", "deadlift, sets: 2, reps: 5"], 1),
            (["back squat, sets: 2, reps: 5", "bench press, sets: 9, reps: 5"], 0),
            (["back squat, sets: 4, reps: 5, rir: 2"], 1),
            (["back squat, sets: 4, reps: 5, rir: 3"], 0),  # two days do
            (["back squat, sets: 4, reps: 5, rpe: 8"], 1),
            (["back squat, sets: 4, reps: 5, load: 80 %"], 1),
            (["back squat, sets: 4, reps: 5, load: 79 %"], 0),
            (["back squat, sets: 4, reps: 12"], 0),  # nothing says that it is heavy
            (["back squat, sets: 4, reps: 12, rir: 2"], 1),
            (["back squat, sets: 4, reps: 12, rir: 3"], 0),
            (["back squat, sets: 4, reps: 8, rir: 3"], 0),  # 8 is light
            (["back squat, sets: 4, reps: 7, rir: 2"], 1),
            (["seated leg curl, sets: 4, reps: 6"], 1),
            (["hip thrust, sets: 4, reps: 6"], 1),
            (["standing calf raise, sets: 4, reps: 6"], 0),
            (["box jump, sets: 6, reps: 3"], 0),  # fast work
            (["moon walk, sets: 6, reps: 3"], 0),
        ],
    )
    def test_what_is_heavy_leg_work(
        self, findings: Findings, week: Text, lines: list[str], said: int
    ) -> None:
        assert len(findings(week({"thursday": lines}) + self.MATCH, self.RULE)) == said

    @pytest.mark.parametrize(
        ("name", "said"),
        [("cup match", 1), ("Home game", 1), ("RACE day", 1), ("pitch session", 0), ("matching drills", 0)],
    )
    def test_what_is_called_a_match(self, findings: Findings, week: Text, name: str, said: int) -> None:
        text = week({"thursday": [self.SQUAT]}) + f"  - {{activity: {name}, day: saturday}}\n"
        assert len(findings(text, self.RULE)) == said

    def test_a_dated_event_whatever_it_is_called(self, findings: Findings, week: Text) -> None:
        head = "starts: 2026-01-05\nweeks: 2\nevents: [{date: 2026-01-17, event: open day}]"
        (finding,) = findings(week({"thursday": [self.SQUAT]}, head), self.RULE)
        assert finding.counted == "4 heavy leg sets on Thursday, 2 days before open day."
        assert finding.weeks == (2,)

    def test_an_event_needs_a_start(self, findings: Findings, week: Text) -> None:
        head = "events: [{date: 2026-01-10, event: match}]"
        assert findings(week({"thursday": [self.SQUAT]}, head), self.RULE) == []

    def test_the_nearer_event_is_named(self, findings: Findings, week: Text) -> None:
        text = week({"thursday": [self.SQUAT]}) + self.MATCH + "  - {activity: race, day: friday}\n"
        (finding,) = findings(text, self.RULE)
        assert finding.counted.endswith("the day before race.")

    def test_the_name_of_a_dated_event_goes_first(self, findings: Findings, week: Text) -> None:
        head = "starts: 2026-01-05\nevents: [{date: 2026-01-10, event: derby}]"
        (finding,) = findings(week({"thursday": [self.SQUAT]}, head) + self.MATCH, self.RULE)
        assert finding.counted.endswith("2 days before derby.")

    @pytest.mark.parametrize(
        ("day", "loads", "said"),
        [
            ("friday", "quadriceps: high", 0),  # sessions-too-close says so
            ("friday", "calves: high", 1),
            ("friday", "quadriceps: moderate", 1),
            ("thursday", "quadriceps: high", 1),
        ],
    )
    def test_one_cause_is_said_once(
        self, findings: Findings, week: Text, day: str, loads: str, said: int
    ) -> None:
        match = f"  - {{activity: match, day: saturday, loads: {{{loads}}}}}\n"
        assert len(findings(week({day: [self.SQUAT]}) + match, self.RULE)) == said

    def test_what_comes_between_does_not_matter(self, findings: Findings, week: Text) -> None:
        run = "  - {activity: run, day: friday, loads: {quadriceps: high}}\n"
        assert len(findings(week({"thursday": [self.SQUAT]}) + self.MATCH + run, self.RULE)) == 1

    def test_week_after_week_is_one_finding(self, findings: Findings, week: Text) -> None:
        text = week({"thursday": ["back squat, sets: {1: 3, 2: 4, 3: 5}, reps: 5"]}, "weeks: 3") + self.MATCH
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (2, 3)
        assert finding.counted.startswith("5 heavy leg sets on Thursday")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        head = f"starts: 2026-01-05\nweeks: 2\n{REHABILITATION.format(until='2026-01-05')}"
        (finding,) = findings(week({"thursday": [self.SQUAT]}, head) + self.MATCH, self.RULE)
        assert finding.weeks == (2,)

    @pytest.mark.parametrize(
        ("option", "value", "line", "said"),
        [
            ("days", 1, "back squat, sets: 4, reps: 5", 0),
            ("sets", 5, "back squat, sets: 4, reps: 5", 0),
            ("areas", "[hamstrings]", "back squat, sets: 4, reps: 5", 0),
            ("left at few repetitions", 4, "back squat, sets: 4, reps: 5, rir: 4", 1),
            ("left at many repetitions", 3, "back squat, sets: 4, reps: 12, rir: 3", 1),
            ("matches", "[derby]", "back squat, sets: 4, reps: 5", 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, option: str, value: object, line: str, said: int
    ) -> None:
        day = "friday" if option.startswith("left") else "thursday"
        text = week({day: [line]}) + self.MATCH
        assert len(findings(text, self.RULE)) == 1 - said
        assert len(findings(text, self.RULE, moved(self.RULE, option, value))) == said

    def test_the_team_moves_the_grade(self, findings: Findings, week: Text) -> None:
        text = week({"friday": [self.SQUAT]}) + self.MATCH.replace("}", ", loads: {quads: high}}")
        assert findings(text, self.RULE) == []
        assert len(findings(text, self.RULE, moved(self.RULE, "hard activity", "[extreme]"))) == 1


class TestFrequencyLow:
    """Strength at two days against one: pelland-2026-freq, Sports Med 2026;56(2):481-505 (secondary)."""

    RULE = "frequency-low"
    HEAD = "goal: strength\npriority: [back squat]"
    SQUAT = "back squat, sets: 3, reps: 5"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday Lower": ["plank, sets: 1", self.SQUAT]}, self.HEAD), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "meta-analysis")
        assert (finding.place.excerpt, finding.where) == ("back squat", "Lower, back squat")
        assert finding.counted == "back squat, a priority, on 1 day a week (Monday)."
        assert finding.wanted == "at least 2 days"
        assert finding.change == "Move some of its sets from Lower to another day."
        assert [related.words for related in finding.related] == ["Lower, back squat, Monday: 3 sets"]

    @pytest.mark.parametrize(
        ("days", "said"),
        [
            ({"monday": [SQUAT]}, 1),
            ({"monday": [SQUAT], "thursday": [SQUAT]}, 0),
            ({"monday A": [SQUAT], "monday B": [SQUAT]}, 1),  # two sessions of one day
            ({"A": [SQUAT], "B": [SQUAT]}, 0),  # without days: a day each
            ({"A": [SQUAT]}, 1),
            ({"monday": [SQUAT], "B": [SQUAT]}, 0),
            ({"monday": [SQUAT], "thursday": ["front squat, sets: 3"]}, 0),  # a close variant
            ({"monday": [SQUAT], "thursday": ["leg press, sets: 3"]}, 1),
            ({"monday": [SQUAT], "thursday": ["deadlift, sets: 3"]}, 1),
            ({"monday": [SQUAT], "thursday": ["leg extension, sets: 3"]}, 1),
            ({"monday": [SQUAT], "thursday": ["back squat, sets: 3, rir: 6"]}, 1),  # easy
            ({"monday": ["leg extension, sets: 3"]}, 0),  # not trained at all: for others to say
            ({"monday": [SQUAT], "thursday": ["moon walk, sets: 3"]}, 0),
            ({"monday": [SQUAT], "thursday": ["front squat, sets: x"]}, 0),
            ({"monday": [SQUAT], "thursday": ["plank, sets: x"]}, 1),
        ],
    )
    def test_days_of_a_lift(
        self, findings: Findings, week: Text, days: dict[str, list[str]], said: int
    ) -> None:
        assert len(findings(week(days, self.HEAD), self.RULE)) == said

    def test_without_a_day(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Lower": [self.SQUAT]}, self.HEAD), self.RULE)
        assert finding.counted == "back squat, a priority, on 1 day a week."

    @pytest.mark.parametrize(
        ("other", "said"),
        [
            ("leg press, sets: 3", 0),
            ("seated leg curl, sets: 3", 1),
            ("moon walk, sets: 3", 0),
            ("leg press, sets: x", 0),
            ("plank, sets: x", 1),
        ],
    )
    def test_days_of_a_muscle(self, findings: Findings, week: Text, other: str, said: int) -> None:
        head = "goal: strength\npriority: [quads]"
        assert len(findings(week({"monday": [self.SQUAT], "thursday": [other]}, head), self.RULE)) == said

    def test_helping_days_count_for_a_muscle(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday": ["cable pushdown, sets: 3"], "thursday": ["bench press, sets: 3"]},
            "goal: strength\npriority: [triceps]",
        )
        assert findings(text, self.RULE) == []

    def test_a_lift_without_a_pattern_stands_for_itself(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday": ["barbell curl, sets: 3"], "thursday": ["cable pushdown, sets: 3"]},
            "goal: strength\npriority: [barbell curl]",
        )
        assert len(findings(text, self.RULE)) == 1

    @pytest.mark.parametrize(
        "head",
        [
            "goal: hypertrophy\npriority: [back squat]",
            "goal: power\npriority: [back squat]",
            "priority: [back squat]",
            "goal: strength",
            "goal: strength\npriority: [moon walk]",
            "goal: strength\npriority: [back squat]\nphase: in-season",
            f"goal: strength\npriority: [back squat]\n{REHABILITATION.format(until='2026-12-31')}",
        ],
    )
    def test_silent(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"monday": [self.SQUAT]}, head), self.RULE) == []

    def test_a_rotation_is_judged_by_its_better_week(self, findings: Findings) -> None:
        text = (
            "programme: Test\ngoal: strength\npriority: [back squat]\nweeks: {weeks}\n"
            "rotation: [monday, wednesday, friday]\nsessions:\n"
            "  - {{session: A, exercises: [{{exercise: back squat, sets: 3}}]}}\n"
            "  - {{session: B, exercises: [{{exercise: bench press, sets: 3}}]}}\n"
        )
        assert findings(text.format(weeks=2), self.RULE) == []

    def test_blocks_are_judged_by_themselves(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, day: {days}, exercises: [{{exercise: back squat, sets: 3}}]}}]}}\n"
        text = (
            f"programme: Test\n{self.HEAD}\nblocks:\n"
            + block.format(name="One", days="[monday, friday]")
            + block.format(name="Two", days="monday")
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.where) == ((2,), "Two, back squat")

    def test_the_team_moves_the_limit(self, findings: Findings, week: Text) -> None:
        text = week({"monday": [self.SQUAT], "thursday": [self.SQUAT]}, self.HEAD)
        (finding,) = findings(text, self.RULE, moved(self.RULE, "least days", 3))
        assert finding.counted == "back squat, a priority, on 2 days a week (Monday and Thursday)."
        assert finding.wanted.startswith("at least 3 days")
        assert (
            findings(week({"monday": [self.SQUAT]}, self.HEAD), self.RULE, moved(self.RULE, "least days", 1))
            == []
        )


ASKED_FOR = {"spotline.yaml": "rules: {spine-days-consecutive: note}\n"}


class TestSpineDaysConsecutive:
    """A convention; no trial was found on it."""

    RULE = "spine-days-consecutive"
    SQUAT, PULL = "back squat, sets: 4, reps: 5", "deadlift, sets: 3, reps: 4"

    def test_off_until_asked_for(self, findings: Findings, week: Text) -> None:
        text = week(days("monday", "tuesday", self.SQUAT, self.PULL))
        assert findings(text, self.RULE) == []
        assert len(findings(text, self.RULE, ASKED_FOR)) == 1

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "tuesday", self.SQUAT, self.PULL)), self.RULE, ASKED_FOR)
        assert (finding.severity, finding.confidence) == ("note", "convention")
        assert (finding.place.excerpt, finding.where) == ("deadlift", "Light, deadlift")
        assert finding.counted == ("Heavy load on the spine on Monday and Tuesday (back squat and deadlift).")
        assert finding.wanted == "a day between"
        assert finding.change.endswith("or swap in a leg press or hip thrust.")
        assert [related.words for related in finding.related] == [
            "Heavy, back squat, Monday: 4 sets",
            "Light, deadlift, Tuesday: 3 sets",
        ]

    def test_it_moves_to_a_day_with_another_between(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(days("monday", "tuesday", self.SQUAT, self.PULL)), self.RULE, ASKED_FOR)
        assert {edit.words for edit in finding.edits} == {"wednesday", "thursday", "friday", "saturday"}

    @pytest.mark.parametrize(("second", "said"), [("tuesday", 1), ("wednesday", 0)])
    def test_days_running(self, findings: Findings, week: Text, second: str, said: int) -> None:
        assert (
            len(findings(week(days("monday", second, self.SQUAT, self.PULL)), self.RULE, ASKED_FOR)) == said
        )

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("deadlift, sets: 1", 1),
            ("deadlift, sets: 3, rir: 6", 0),
            ("overhead press, sets: 3", 0),  # moderate
            ("hip thrust, sets: 3", 0),  # none
            ("moon walk, sets: 3", 0),
        ],
    )
    def test_what_loads_the_spine(self, findings: Findings, week: Text, line: str, said: int) -> None:
        for one, other in ((self.SQUAT, line), (line, self.SQUAT)):
            assert len(findings(week(days("monday", "tuesday", one, other)), self.RULE, ASKED_FOR)) == said

    def test_over_the_end_of_a_week(self, findings: Findings, week: Text) -> None:
        text = week(days("monday", "sunday", self.SQUAT, self.PULL), "weeks: 3")
        (finding,) = findings(text, self.RULE, ASKED_FOR)
        assert ("Sunday and Monday" in finding.counted, finding.weeks) == (True, (2, 3))

    def test_speaks_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        head = f"starts: 2026-01-05\nweeks: 2\n{REHABILITATION.format(until='2026-01-05')}"
        text = week(days("monday", "tuesday", self.SQUAT, self.PULL), head)
        (finding,) = findings(text, self.RULE, ASKED_FOR)
        assert finding.weeks == (1, 2)

    @pytest.mark.parametrize(
        ("option", "value", "line", "said"),
        [
            ("loads", "[moderate, high]", "overhead press, sets: 3", 1),
            ("least sets", 3, "deadlift, sets: 3", 1),
            ("least sets", 3, "deadlift, sets: 2", 0),
            ("least sets", 0, "hip thrust, sets: 3", 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, option: str, value: object, line: str, said: int
    ) -> None:
        team = {"spotline.yaml": f"rules: {{{self.RULE}: {{severity: note, {option}: {value}}}}}\n"}
        text = week(days("monday", "tuesday", self.SQUAT, line))
        assert len(findings(text, self.RULE, team)) == said


class TestNearMaximalBeforeEvent:
    """Common practice, no source. 12 January 2026 is a Monday."""

    RULE = "near-maximal-before-event"
    HEAVY = "deadlift, sets: 2, reps: 1, load: 95 %"

    def text(self, week: Text, days: dict[str, list[str]], event: str = "meet", head: str = "") -> str:
        events = f"events: [{{date: 2026-01-17, event: {event}}}]"
        return week(days, f"starts: 2026-01-12\n{events}{head}")

    def test_the_words(self, findings: Findings, week: Text) -> None:
        days = {
            "thursday": ["deadlift, sets: 2, reps: 1, load: 95 %", "rack pull, sets: 1, reps: 2, load: 92 %"]
        }
        (finding,) = findings(self.text(week, days), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert finding.place.excerpt == "95 %"
        assert finding.counted == "Deadlift and rack pull at 95 % on Thursday, 2 days before meet."
        assert finding.wanted == "nothing from 90 % in the last 6 days"
        assert finding.change == "Make it clearly lighter, or move it further away."
        assert [one.words for one in finding.related] == ["thursday, rack pull: this too"]

    @pytest.mark.parametrize(
        ("day", "line", "said"),
        [
            ("thursday", HEAVY, 1),
            ("monday", HEAVY, 1),  # deadlifts: 6 days
            ("thursday", "back squat, sets: 1, reps: 1, load: 92.5 %", 1),
            ("wednesday", "bench press, sets: 3, reps: 3, load: 90 %", 1),
            ("tuesday", "bench press, sets: 1, reps: 1, load: 95 %", 0),
            ("friday", "back squat, sets: 1, reps: 1, rpe: 9.5", 1),
            ("friday", "back squat, sets: 1, reps: 1, rpe: 7", 0),
            ("friday", "back squat, sets: 3, reps: 2, load: 70 %", 0),
            ("friday", "back squat, sets: 3, reps: 2, load: 87.5 %", 0),
            ("friday", "back squat, sets: 1, reps: 6, load: 90 %", 0),
            ("friday", "snatch, sets: 1, reps: 1, load: 92 %", 0),
            ("saturday", HEAVY, 0),  # the meet itself
            ("sunday", HEAVY, 0),
        ],
    )
    def test_which_sets(self, findings: Findings, week: Text, day: str, line: str, said: int) -> None:
        assert len(findings(self.text(week, {day: [line]}), self.RULE)) == said

    @pytest.mark.parametrize(
        ("event", "said"),
        [
            ("deadlift test", 1),
            ("bench and deadlift test", 1),
            ("bench test", 0),
            ("testing", 1),
            ("match", 0),
        ],
    )
    def test_which_events(self, findings: Findings, week: Text, event: str, said: int) -> None:
        assert len(findings(self.text(week, {"thursday": [self.HEAVY]}, event), self.RULE)) == said

    def test_the_day_of_the_event_says_which_lifts_it_is_about(self, findings: Findings, week: Text) -> None:
        for lift, said in (("deadlift", 1), ("bench press", 0)):
            days = {"thursday": [self.HEAVY], "saturday": [f"{lift}, sets: 3, reps: 1"]}
            assert len(findings(self.text(week, days), self.RULE)) == said

    def test_another_test_is_left_alone_where_the_event_names_no_lift(
        self, findings: Findings, week: Text
    ) -> None:
        line = "back squat, sets: 1, reps: 1, load: 102.5 %"
        for event, said in (("testing", 0), ("squat test", 1)):
            assert len(findings(self.text(week, {"friday": [line]}, event), self.RULE)) == said

    def test_silent_in_rehabilitation(self, findings: Findings, week: Text) -> None:
        stage = "\nrehabilitation: {stage: return, advised by: physiotherapist, until: 2026-12-31}"
        assert findings(self.text(week, {"thursday": [self.HEAVY]}, head=stage), self.RULE) == []

    @pytest.mark.parametrize(
        ("limits", "said"),
        [("percent: 96", 0), ("days for hinges: 1", 0), ("events: [gala]", 0), ("days: 1", 1)],
    )
    def test_the_team_moves_every_limit(self, findings: Findings, week: Text, limits: str, said: int) -> None:
        team = {"spotline.yaml": f"rules: {{{self.RULE}: {{{limits}}}}}\n"}
        assert len(findings(self.text(week, {"thursday": [self.HEAVY]}), self.RULE, team)) == said


class TestDaysMoreThanAthlete:
    """The athlete's own statement."""

    RULE = "days-more-than-athlete"
    LINE = "leg press, sets: 3"

    def test_the_words_for_weekdays(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday Lower": [self.LINE], "tuesday Upper": [self.LINE]},
            "athlete: {name: Mara, days: [monday, thursday]}",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("warning", "fact")
        assert (finding.place.excerpt, finding.where) == ("Upper", "Upper")
        assert finding.counted == "Training on Tuesday, not among the athlete's days."
        assert finding.wanted == "Monday and Thursday"
        assert finding.change == "Move Upper to Thursday, or correct `days`."
        assert [(one.place.excerpt, one.words) for one in finding.related] == [
            ("Mara", "the athlete's days: Monday and Thursday")
        ]
        assert finding.amount is not None
        assert (finding.amount.counted, finding.amount.wanted, finding.amount.unit) == (1, 0, "days")

    def test_the_week_with_most_days_outside_is_told(self, findings: Findings) -> None:
        block = "  - {{name: {}, weeks: 1, sessions: [{}]}}\n"
        session = "{{session: {0}, day: {0}, exercises: [{{exercise: leg press, sets: 3}}]}}"
        weeks = (["monday", "tuesday", "wednesday"], ["tuesday", "thursday"])
        blocks = "".join(
            block.format(days[0], ", ".join(session.format(day) for day in days)) for days in weeks
        )
        head = "programme: Test\nathlete: {name: Mara, days: [monday, wednesday]}\nblocks:\n"
        (finding,) = findings(head + blocks, self.RULE)
        assert finding.counted.startswith("Training on Tuesday and Thursday")
        assert finding.weeks == (1, 2)

    def test_the_words_for_a_number(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday A": [self.LINE], "tuesday B": [self.LINE], "friday C": [self.LINE]},
            "athlete: {name: Mara, days: 2}",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.place.excerpt, finding.where) == ("C", "C")
        assert finding.counted == "3 days of training a week."
        assert finding.amount is not None
        assert (finding.amount.counted, finding.amount.wanted, finding.amount.unit) == (3, 2, "days")
        assert finding.change == "Merge C into another session, or drop it, or correct `days`."

    def test_several_days(self, findings: Findings, week: Text) -> None:
        text = week(
            {"monday A": [self.LINE], "tuesday B": [self.LINE]}, "athlete: {name: Mara, days: [sunday]}"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "Training on Monday and Tuesday, not among the athlete's days."
        assert finding.place.excerpt == "A"

    @pytest.mark.parametrize(
        ("days", "has", "said"),
        [
            (["monday", "thursday"], "2", 0),
            (["monday", "thursday"], "1", 1),
            (["monday A", "monday B"], "1", 0),  # two sessions of one day
            (["A", "B"], "1", 1),
            (["A", "B"], "2", 0),
            (["monday", "B"], "1", 1),
            (["monday", "thursday"], "[monday, thursday]", 0),
            (["monday", "thursday"], "[monday, tuesday, friday]", 1),
            (["monday", "B"], "[monday]", 1),  # no day left for B
            (["monday", "B"], "[monday, friday]", 0),
            (["monday"], "[monday, monday]", 0),
            (["monday", "B"], "[monday, monday]", 1),
        ],
    )
    def test_days(self, findings: Findings, week: Text, days: list[str], has: str, said: int) -> None:
        text = week({day: [self.LINE] for day in days}, f"athlete: {{name: Mara, days: {has}}}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize("head", ["", "athlete: {name: Mara}"])
    def test_silent_where_no_days_are_stated(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"monday": [self.LINE]}, head), self.RULE) == []

    def test_activities_take_no_day(self, findings: Findings, week: Text) -> None:
        text = week({"monday": [self.LINE]}, "athlete: {name: Mara, days: 1}")
        assert findings(text + "  - {activity: run, day: tuesday}\n", self.RULE) == []

    def test_weeks_are_one_finding_in_the_words_of_the_worst(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, day: {days}, exercises: [{{exercise: leg press, sets: 3}}]}}]}}\n"
        text = (
            "programme: Test\nathlete: {name: Mara, days: 1}\nblocks:\n"
            + block.format(name="One", days="[monday, friday]")
            + block.format(name="Two", days="[monday, wednesday, friday]")
            + block.format(name="Three", days="[monday, friday]")
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.where) == ((1, 2, 3), "Two")
        assert finding.counted.startswith("3 days")

    def test_outside_days_are_weighed_against_too_many(self, findings: Findings) -> None:
        block = "  - {{name: {name}, weeks: 1, sessions: [{{session: {name}, day: {days}, exercises: [{{exercise: leg press, sets: 3}}]}}]}}\n"
        text = (
            "programme: Test\nathlete: {name: Mara, days: [monday, friday]}\nblocks:\n"
            + block.format(name="One", days="[tuesday]")
            + block.format(name="Two", days="[tuesday, wednesday]")
        )
        (finding,) = findings(text, self.RULE)
        assert finding.where == "Two"
        text = (
            "programme: Test\nathlete: {name: Mara, days: [monday, friday]}\nblocks:\n"
            + block.format(name="One", days="[tuesday, wednesday]")
            + block.format(name="Two", days="[monday, friday, tuesday]")
        )
        (finding,) = findings(text, self.RULE)
        assert finding.where == "One"  # two days outside, though fewer in all

    MEET = "starts: 2026-01-05\nweeks: 2\nevents: [{date: 2026-01-17, event: EVENT}]\n"

    @pytest.mark.parametrize("event", ["meet", "squat test", "match"])
    @pytest.mark.parametrize("has", ["[monday]", "1"])
    def test_the_day_of_an_event_is_no_training_day(
        self, findings: Findings, week: Text, event: str, has: str
    ) -> None:
        head = f"{self.MEET.replace('EVENT', event)}athlete: {{name: Mara, days: {has}}}"
        text = week({"monday A": [self.LINE], "saturday B": [self.LINE]}, head)
        text = text.replace("    day: saturday\n", "    day: saturday\n    in weeks: 2\n")
        assert findings(text, self.RULE) == []
        other = text.replace("2026-01-17", "2026-01-16")
        assert [one.weeks for one in findings(other, self.RULE)] == [(2,)]

    def test_days_that_were_moved_for_an_event(self, findings: Findings, week: Text) -> None:
        head = f"{self.MEET.replace('EVENT', 'meet')}athlete: {{name: Mara, days: [monday, friday]}}"
        text = week({"monday A": [self.LINE], "tuesday B": [self.LINE]}, head)
        own = text.replace("    day: tuesday\n", "    day: tuesday\n    in weeks: 2\n")
        assert findings(own, self.RULE) == []
        assert [one.weeks for one in findings(text, self.RULE)] == [(1, 2)]
        first = text.replace("    day: tuesday\n", "    day: tuesday\n    in weeks: 1\n")
        assert [one.weeks for one in findings(first, self.RULE)] == [(1,)]

    @pytest.mark.parametrize(
        ("name", "said"), [("hamstrings moved", "`hamstrings moved`"), ("Upper B", "Upper B"), ("B P", "B P")]
    )
    def test_a_name_that_reads_like_the_words_around_it_stands_in_quotes(
        self, findings: Findings, week: Text, name: str, said: str
    ) -> None:
        text = week({f"tuesday {name}": [self.LINE]}, "athlete: {name: Mara, days: [monday]}")
        (finding,) = findings(text, self.RULE)
        assert finding.change == f"Move {said} to Monday, or correct `days`."

    def test_not_where_every_week_has_one(self, findings: Findings, week: Text) -> None:
        events = ", ".join(f"{{date: 2026-01-{day}, event: match}}" for day in ("10", "17"))
        head = f"starts: 2026-01-05\nweeks: 2\nevents: [{events}]\nathlete: {{name: Mara, days: [monday]}}"
        text = week({"monday A": [self.LINE], "tuesday B": [self.LINE]}, head)
        assert len(findings(text, self.RULE)) == 1

    def test_a_day_by_number_is_a_weekday_too(self, findings: Findings, week: Text) -> None:
        # 7 January 2026 is a Wednesday, the second day a Thursday
        text = week({"2": [self.LINE]}, "starts: 2026-01-07\nathlete: {name: Mara, days: [thursday]}")
        assert findings(text, self.RULE) == []


class TestRestDayMissing:
    """Common practice, no source."""

    RULE = "rest-day-missing"
    ALL = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
    LINE = "leg press, sets: 3"

    def days(self, number: int) -> dict[str, list[str]]:
        return {f"{day} {day.title()}": [self.LINE] for day in self.ALL[:number]}

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({**self.days(7), "wednesday Wednesday": ["leg press, sets: 2"]})
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("Wednesday", "Wednesday")
        assert finding.counted == "Lifting on 7 days; no day off."
        assert finding.wanted == "at least 1 day off"
        assert finding.change == "Take Wednesday off, the day with the fewest sets, and spread its work."

    @pytest.mark.parametrize(("number", "said"), [(7, 1), (6, 0)])
    def test_one_day(self, findings: Findings, week: Text, number: int, said: int) -> None:
        assert len(findings(week(self.days(number)), self.RULE)) == said

    @pytest.mark.parametrize(
        ("effort", "said"),
        [(", effort: 4", 1), (", effort: 3", 0), (", effort: 3-4", 1), (", effort: 2-4", 0), ("", 0)],
    )
    def test_activities(self, findings: Findings, week: Text, effort: str, said: int) -> None:
        text = week(self.days(5)) + f"  - {{activity: run, day: [friday, saturday, sunday]{effort}}}\n"
        found = findings(text, self.RULE)
        assert len(found) == said
        if found:
            assert found[0].counted == "Lifting on 5 days and other training on 2; no day off."

    def test_a_day_of_activities_alone(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["leg press, sets: 3, rir: 8"]})
        text += "  - {activity: run, effort: 6, day: [monday, tuesday, wednesday, thursday, friday, saturday, sunday]}\n"
        assert findings(text, self.RULE) == []  # no lifting to take away

    def test_easy_sessions_leave_a_day_free(self, findings: Findings, week: Text) -> None:
        text = week({**self.days(6), "sunday": ["leg press, sets: 3, rir: 6"]})
        assert findings(text, self.RULE) == []

    def test_sessions_without_a_day_are_left_alone(self, findings: Findings, week: Text) -> None:
        assert findings(week({**self.days(6), "Some day": [self.LINE]}), self.RULE) == []

    def test_the_first_of_like_days_goes(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(self.days(7)), self.RULE)
        assert finding.change.startswith("Take Monday off")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        head = REHABILITATION.format(until="2026-12-31")
        assert findings(week(self.days(7), head), self.RULE) == []

    def test_the_team_moves_every_limit(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week(self.days(6)), self.RULE, moved(self.RULE, "least", 2))
        assert finding.counted == "Lifting on 6 days; 1 day off."
        assert finding.wanted == "at least 2 days off (your team's limit)"
        text = week(self.days(6)) + "  - {activity: run, day: sunday, effort: 4}\n"
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, moved(self.RULE, "easy activity", 4)) == []


class TestPriorityLate:
    """What comes first gains most strength: simao-2010, J Sports Sci Med 2010;9:1-7."""

    RULE = "priority-late"
    HEAD = "goal: strength\npriority: [bench press]"
    OTHERS = ("overhead press, sets: 3", "pull-up, sets: 3", "barbell curl, sets: 3", "plank, sets: 3")
    BENCH = "bench press, sets: 3"

    def lines(self, before: int, after: int) -> list[str]:
        several = [*self.OTHERS, *self.OTHERS]
        return [*several[:before], self.BENCH, *several[:after]]

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday Upper": self.lines(2, 1)}, self.HEAD), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "training trial")
        assert (finding.place.excerpt, finding.where) == ("bench press", "Upper, bench press")
        assert finding.counted == "bench press comes as exercise 3 of 4 in Upper."
        assert finding.wanted == "a strength priority in the first third"
        assert finding.change == "Move bench press to the front of Upper."
        assert [(one.place.excerpt, one.words) for one in finding.related] == [
            ("overhead press", "comes before it"),
            ("pull-up", "comes before it"),
        ]

    @pytest.mark.parametrize(
        ("before", "after", "said"),
        [
            (0, 0, 0),
            (1, 0, 1),  # second of 2
            (1, 1, 1),  # second of 3
            (1, 2, 0),  # second of 4
            (2, 1, 1),
            (2, 3, 1),  # third of 6
            (2, 4, 0),  # third of 7
        ],
    )
    def test_the_first_third(
        self, findings: Findings, week: Text, before: int, after: int, said: int
    ) -> None:
        assert len(findings(week({"Gym": self.lines(before, after)}, self.HEAD), self.RULE)) == said

    def test_one_early_session_is_enough(self, findings: Findings, week: Text) -> None:
        late, early = self.lines(2, 0), self.lines(0, 2)
        assert findings(week({"A": late, "B": early}, self.HEAD), self.RULE) == []
        (finding,) = findings(week({"A": late, "B": late}, self.HEAD), self.RULE)
        assert finding.counted == "bench press comes as exercise 3 of 3 in A; no session has it earlier."

    def test_sessions_without_it_do_not_matter(self, findings: Findings, week: Text) -> None:
        text = week({"A": self.lines(2, 0), "B": ["leg press, sets: 3"]}, self.HEAD)
        (finding,) = findings(text, self.RULE)
        assert "exercise 3 of 3" in finding.counted
        assert findings(week({"B": ["leg press, sets: 3", "plank, sets: 3"]}, self.HEAD), self.RULE) == []

    @pytest.mark.parametrize(
        ("first", "said"),
        [
            ("box jump, sets: 3, reps: 3", 0),
            ("medicine ball chest pass, sets: 3, reps: 3", 0),
            ("overhead press, sets: 3", 1),
            ("overhead press, sets: {1: 0}", 0),  # not this week
            ("moon walk, sets: 3", 0),  # nobody knows what it is
        ],
    )
    def test_what_may_come_before(self, findings: Findings, week: Text, first: str, said: int) -> None:
        assert len(findings(week({"Gym": [first, self.BENCH]}, self.HEAD), self.RULE)) == said

    def test_other_priorities_may_come_before(self, findings: Findings, week: Text) -> None:
        lines = ["back squat, sets: 3", self.BENCH]
        head = "goal: strength\npriority: [bench press, back squat]"
        assert findings(week({"Gym": lines}, head), self.RULE) == []
        assert len(findings(week({"Gym": lines}, self.HEAD), self.RULE)) == 1

    def test_a_superset_is_one(self, findings: Findings) -> None:
        text = (
            f"programme: Test\n{self.HEAD}\nsessions:\n  - session: Gym\n    exercises:\n      - superset:\n"
            "          - {exercise: pull-up, sets: 3}\n          - {exercise: bench press, sets: 3}\n"
        )
        assert findings(text, self.RULE) == []
        apart = text.replace("      - superset:\n", "").replace("          - {", "      - {")
        assert len(findings(apart, self.RULE)) == 1

    def test_two_supersets_are_two(self, findings: Findings) -> None:
        pair = "      - superset:\n          - {{exercise: {}, sets: 3}}\n          - {{exercise: {}, sets: 3}}\n"
        text = f"programme: Test\n{self.HEAD}\nsessions:\n  - session: Gym\n    exercises:\n"
        text += pair.format("pull-up", "overhead press") + pair.format("bench press", "plank")
        (finding,) = findings(text, self.RULE)
        assert finding.counted == "bench press comes as exercise 2 of 2 in Gym."

    def test_groups_of_sets_are_one(self, findings: Findings) -> None:
        text = (
            f"programme: Test\n{self.HEAD}\nsessions:\n  - session: Gym\n    exercises:\n"
            "      - {exercise: pull-up, work: [{sets: 1, reps: 3}, {sets: 3, reps: 5}]}\n"
            "      - {exercise: bench press, sets: 3}\n      - {exercise: plank, sets: 3}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert "exercise 2 of 3" in finding.counted

    @pytest.mark.parametrize(
        ("muscle", "line", "said"),
        [
            ("biceps", "pull-up, sets: 3", 0),
            ("biceps", "barbell curl, sets: 3", 0),  # what is for one joint comes last
            ("quadriceps", "leg press, sets: 3", 1),
            ("quadriceps", "leg extension, sets: 3", 0),
        ],
    )
    def test_a_muscle_is_trained_directly(
        self, findings: Findings, week: Text, muscle: str, line: str, said: int
    ) -> None:
        head = f"goal: strength\npriority: [{muscle}]"
        assert len(findings(week({"Gym": ["bench press, sets: 3", line]}, head), self.RULE)) == said

    @pytest.mark.parametrize(
        "head",
        [
            "priority: [bench press]",
            "goal: hypertrophy\npriority: [bench press]",
            "goal: strength",
            "goal: strength\npriority: [moon walk]",
            f"goal: strength\npriority: [bench press]\n{REHABILITATION.format(until='2026-12-31')}",
        ],
    )
    def test_silent(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"Gym": self.lines(2, 0)}, head), self.RULE) == []

    def test_the_team_moves_the_limit(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": self.lines(1, 1)}, self.HEAD)
        assert findings(text, self.RULE, moved(self.RULE, "parts", 2)) == []


class TestIsolationBeforeCompound:
    """Multi-joint before single-joint: acsm-2009-order, Med Sci Sports Exerc 2009;41(3):687-708."""

    RULE = "isolation-before-compound"
    SMALL, LARGE = "leg extension, sets: 3, reps: 12", "back squat, sets: 4, reps: 5"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        text = week({"monday Lower": [self.SMALL, self.LARGE]})
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "guideline")
        assert (finding.place.excerpt, finding.where) == ("back squat", "Lower, back squat")
        assert (
            finding.counted
            == "back squat at 5 repetitions comes after leg extension, which tires the quadriceps."
        )
        assert finding.wanted == "compound lifts first"
        assert finding.change == "Put it first, or write `pre-exhaustion` in a `note`."
        assert [related.words for related in finding.related] == ["Lower, leg extension: 3 sets"]

    def test_it_goes_before_all_of_the_small_ones(self, findings: Findings, week: Text) -> None:
        text = week({"monday Lower": [self.SMALL, "glute kickback, sets: 3, reps: 12", self.LARGE]})
        (finding,) = findings(text, self.RULE)
        (edit,) = finding.edits
        assert edit.place.start < text.index("leg extension")

    @pytest.mark.parametrize(
        ("small", "large", "said"),
        [
            (SMALL, LARGE, 1),
            (LARGE, SMALL, 0),
            (SMALL, "back squat, sets: 4, reps: 8", 0),  # light: some tire the prime mover first on purpose
            (SMALL, "back squat, sets: 4, reps: 7", 1),
            (SMALL, "back squat, sets: 4, reps: amrap", 0),
            (SMALL, "back squat, sets: 4, load: 6RM", 1),
            (SMALL, "back squat, sets: 4", 0),
            (SMALL, "back squat, sets: 4, reps: 5, rir: 6", 0),  # easy
            ("leg extension, sets: 1", LARGE, 0),
            ("leg extension, sets: 2", LARGE, 1),
            ("leg extension, sets: 1-3", LARGE, 1),
            ("leg extension, sets: 3, rir: 6", LARGE, 0),
            ("seated leg curl, sets: 3", LARGE, 0),  # not its prime mover
            ("seated leg curl, sets: 3", "Romanian deadlift, sets: 3, reps: 6", 1),
            ("lateral raise, sets: 3", "overhead press, sets: 3, reps: 5", 1),
            ("dumbbell fly, sets: 3", "bench press, sets: 3, reps: 5", 1),
            # the trial's own order: biceps, triceps, pulldown, bench press
            ("cable pushdown, sets: 3", "bench press, sets: 3, reps: 5", 1),
            ("barbell curl, sets: 3", "lat pulldown, sets: 3, reps: 12", 1),
            ("cable pushdown, sets: 3", "bench press, sets: 3, reps: 15", 1),
            ("cable pushdown, sets: 3", "bench press, sets: 3, reps: 16", 0),
            ("cable pushdown, sets: 3", "bench press, sets: 3, load: 10RM", 1),
            ("cable pushdown, sets: 3", "bench press, sets: 3", 0),
            ("barbell curl, sets: 3", "bench press, sets: 3, reps: 5", 0),
            ("seated calf raise, sets: 3", LARGE, 0),
            ("hip adduction machine, sets: 3", LARGE, 0),  # wakes the hip up
            ("leg press, sets: 3, reps: 12", LARGE, 0),  # no exercise for one joint
            ("wall sit, sets: 3", LARGE, 0),  # held
            (SMALL, "leg extension, sets: 3, reps: 6", 0),
            ("moon walk, sets: 3", LARGE, 0),
            (SMALL, "moon walk, sets: 3, reps: 5", 0),
        ],
    )
    def test_which_before_which(
        self, findings: Findings, week: Text, small: str, large: str, said: int
    ) -> None:
        assert len(findings(week({"Gym": [small, large]}), self.RULE)) == said

    @pytest.mark.parametrize(("most", "said"), [(4, 0), (5, 1)])
    def test_the_team_says_up_to_which_repetitions_helpers_count(
        self, findings: Findings, week: Text, most: int, said: int
    ) -> None:
        text = week({"Gym": ["cable pushdown, sets: 3", "bench press, sets: 3, reps: 5"]})
        assert len(findings(text, self.RULE, moved(self.RULE, "repetitions", most))) == said

    def test_several_are_one_finding(self, findings: Findings, week: Text) -> None:
        lines = [
            "leg extension, sets: 2",
            "dumbbell fly, sets: 2",
            "leg extension, sets: 3",
            "cable glute kickback, sets: 2",
        ]
        (finding,) = findings(week({"Gym": [*lines, self.LARGE]}), self.RULE)
        assert finding.counted == (
            "back squat at 5 repetitions comes after leg extension and cable glute kickback, which"
            " tire the quadriceps and gluteals."
        )
        assert [related.place.excerpt for related in finding.related] == [
            "leg extension",
            "leg extension",
            "cable glute kickback",
        ]

    def test_the_words_for_a_repetition_maximum(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"Gym": [self.SMALL, "back squat, sets: 4, load: 6RM"]}), self.RULE)
        assert finding.counted.startswith("back squat at 6RM comes after leg extension")

    def test_sessions_apart(self, findings: Findings, week: Text) -> None:
        assert findings(week({"A": [self.SMALL], "B": [self.LARGE]}), self.RULE) == []

    @pytest.mark.parametrize("note", ["pre-exhaustion", "Pre exhaust on purpose", "a warm-up for the knees"])
    @pytest.mark.parametrize("at", [0, 1])
    def test_on_purpose(self, findings: Findings, week: Text, note: str, at: int) -> None:
        lines = [self.SMALL, self.LARGE]
        lines[at] += f", note: {note}"
        assert findings(week({"Gym": lines}), self.RULE) == []

    def test_another_note_is_no_excuse(self, findings: Findings, week: Text) -> None:
        assert len(findings(week({"Gym": [self.SMALL, f"{self.LARGE}, note: deep"]}), self.RULE)) == 1

    def test_on_purpose_in_the_note_of_the_session(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": [self.SMALL, self.LARGE]})
        assert findings(text + "    note: pre-exhaust first\n", self.RULE) == []
        assert len(findings(text + "    note: hard\n", self.RULE)) == 1

    def test_a_superset_of_the_two(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n      - superset:\n"
            "          - {exercise: leg extension, sets: 3}\n          - {exercise: back squat, sets: 3, reps: 5}\n"
        )
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("goal: strength", 1),
            ("goal: general health", 0),
            ("goal: hypertrophy", 0),
            ("goal: muscular endurance", 0),
            ("priority: [quadriceps]", 0),
            ("priority: [leg extension]", 0),
            ("priority: [hamstrings]", 1),
            (REHABILITATION.format(until="2026-12-31"), 0),
        ],
    )
    def test_what_the_programme_is_for(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(findings(week({"Gym": [self.SMALL, self.LARGE]}, head), self.RULE)) == said

    @pytest.mark.parametrize(
        ("option", "value", "head", "said"),
        [
            ("least sets", 4, "", 0),
            ("least sets", 3, "", 1),
            ("small matter", "[strength]", "goal: strength", 0),
            ("small matter", "[strength]", "goal: hypertrophy", 1),
            ("exempt", "[quadriceps]", "", 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, option: str, value: object, head: str, said: int
    ) -> None:
        text = week({"Gym": [self.SMALL, self.LARGE]}, head)
        assert len(findings(text, self.RULE, moved(self.RULE, option, value))) == said

    def test_the_team_has_its_own_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": [self.SMALL, f"{self.LARGE}, note: tired on purpose"]})
        assert findings(text, self.RULE, moved(self.RULE, "on purpose", "[on purpose]")) == []


class TestOlderAdultDays:
    """Two to three days a week: fragala-2019, J Strength Cond Res 2019;33(8):2019-2052 (secondary)."""

    RULE = "older-adult-days"
    LINE = "leg press, sets: 3"
    HEAD = "athlete: {name: Ottilie, age: 70}"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(week({"monday Whole": [self.LINE]}, self.HEAD), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "guideline")
        assert (finding.place.excerpt, finding.where) == ("Whole", "Whole")
        assert finding.counted == "1 day a week for an athlete of 70."
        assert finding.wanted == "2 days a week or more at 65 and over"
        assert finding.change == "Spread Whole over another day too."
        assert "clinician" in finding.why

    @pytest.mark.parametrize(("age", "said"), [("age: 65", 1), ("age: 64", 0), ("days: 3", 0)])
    def test_age(self, findings: Findings, week: Text, age: str, said: int) -> None:
        text = week({"monday": [self.LINE]}, f"athlete: {{name: Ottilie, {age}}}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize(
        ("days", "said"),
        [
            (["monday", "thursday"], 0),
            (["monday A", "monday B"], 1),
            (["A", "B"], 0),
            (["monday", "B"], 0),
        ],
    )
    def test_days(self, findings: Findings, week: Text, days: list[str], said: int) -> None:
        assert len(findings(week({day: [self.LINE] for day in days}, self.HEAD), self.RULE)) == said

    @pytest.mark.parametrize("head", [REHABILITATION.format(until="2026-12-31")])
    def test_silent(self, findings: Findings, week: Text, head: str) -> None:
        assert findings(week({"monday": [self.LINE]}, f"{self.HEAD}\n{head}"), self.RULE) == []

    def test_silent_in_a_week_without_a_session(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["leg press, sets: 3"]}, f"{self.HEAD}\nweeks: 2")
        text = text.replace("exercise: leg press", "exercise: {1: leg press}")
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (1,)

    def test_it_points_at_a_session_that_is_there(self, findings: Findings, week: Text) -> None:
        text = week({"monday A": ["leg curl, sets: 3"], "thursday B": [self.LINE]}, f"{self.HEAD}\nweeks: 2")
        (finding,) = findings(text.replace("exercise: leg curl", "exercise: {1: leg curl}"), self.RULE)
        assert (finding.weeks, finding.place.excerpt) == ((2,), "B")

    def test_silent_without_an_athlete(self, findings: Findings, week: Text) -> None:
        assert findings(week({"monday": [self.LINE]}), self.RULE) == []

    def test_the_team_moves_every_limit(self, findings: Findings, week: Text) -> None:
        one = week({"monday": [self.LINE]}, self.HEAD)
        assert findings(one, self.RULE, moved(self.RULE, "age", 71)) == []
        assert findings(one, self.RULE, moved(self.RULE, "least days", 1)) == []
        two = week({"monday": [self.LINE], "friday": [self.LINE]}, self.HEAD)
        (finding,) = findings(two, self.RULE, moved(self.RULE, "least days", 3))
        assert finding.counted == "2 days a week for an athlete of 70."
