"""Rules on progression: steps, easier weeks, tapers, and where a programme starts from."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

REHABILITATION = "rehabilitation: {{stage: return, advised by: physiotherapist, until: {until}}}"
ALWAYS = REHABILITATION.format(until="2027-12-31")


def moved(rule: str, **options: object) -> dict[str, str]:
    """A team's settings with options of a rule moved; underscores stand for blanks."""
    limits = ", ".join(f"{name.replace('_', ' ')}: {value}" for name, value in options.items())
    return {"spotline.yaml": f"rules: {{{rule}: {{{limits}}}}}\n"}


def blocks(*parts: tuple[str, list[str]], head: str = "") -> str:
    """A programme of blocks: the keys of each, ``name: Build, weeks: 3``, and the lines of its one session."""
    text = ["programme: Test", *([head] if head else []), "blocks:"]
    for keys, lines in parts:
        written = ", ".join(f"{{exercise: {line}}}" for line in lines)
        text.append(f"  - {{{keys}, sessions: [{{session: Gym, exercises: [{written}]}}]}}")
    return "\n".join(text) + "\n"


@pytest.fixture
def findings(implausible: Findings) -> Findings:
    """Some tests need more sets in a line than a coach writes."""
    return implausible


class TestLoadStepLarge:
    """2 to 10 %: acsm-2009, Med Sci Sports Exerc 2009;41(3):687-708. Steps in kg: nsca-increments (secondary)."""

    RULE = "load-step-large"

    def said(
        self,
        findings: Findings,
        week: Text,
        *lines: str,
        head: str = "weeks: 2",
        team: dict[str, str] | None = None,
    ) -> list[Finding]:
        return findings(week({"Gym": list(lines)}, head), self.RULE, team)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(
            findings,
            week,
            "back squat, sets: 3, reps: 5, load: {1: 80 kg, 2: 100 kg, 3: 100 kg}",
            head="weeks: 3",
        )
        assert (finding.severity, finding.confidence) == ("warning", "guideline")
        assert (finding.place.excerpt, finding.where) == ("100 kg", "Gym, back squat")
        assert finding.counted == "back squat goes from 80 kg to 100 kg at 5 repetitions, 25 % up."
        assert finding.wanted == "at most 10 kg more"
        assert finding.change == "Take smaller steps, or correct a slip."
        assert [(one.place.excerpt, one.words) for one in finding.related] == [("80 kg", "before: 80 kg")]
        assert finding.weeks == (2,)

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            # 10 %, and no less than the next step of the implement
            ("back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 110 kg}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 111 kg}", 1),
            ("back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 77 %}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 78 %}", 1),
            ("back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 90 kg}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 20 kg, 2: 30 kg}", 0),  # 10 kg for both legs
            ("back squat, sets: 3, reps: 5, load: {1: 20 kg, 2: 31 kg}", 1),
            ("bench press, sets: 3, reps: 5, load: {1: 20 kg, 2: 25 kg}", 0),  # 5 kg on a barbell
            ("bench press, sets: 3, reps: 5, load: {1: 20 kg, 2: 26 kg}", 1),
            ("single-leg leg press, sets: 3, reps: 8, load: {1: 20 kg, 2: 26 kg}", 1),
            ("goblet squat, sets: 3, reps: 8, load: {1: 8 kg, 2: 10 kg}", 0),  # 2 kg on a dumbbell
            ("goblet squat, sets: 3, reps: 8, load: {1: 8 kg, 2: 11 kg}", 1),
            ("dumbbell curl, sets: 3, reps: 8, load: {1: 2 x 8 kg, 2: 2 x 10 kg}", 0),  # on each
            ("dumbbell curl, sets: 3, reps: 8, load: {1: 2 x 8 kg, 2: 2 x 11 kg}", 1),
            ("kettlebell swing, sets: 3, reps: 8, load: {1: 12 kg, 2: 16 kg}", 0),
            ("kettlebell swing, sets: 3, reps: 8, load: {1: 12 kg, 2: 17 kg}", 1),
            ("leg press, sets: 3, reps: 8, load: {1: 20 kg, 2: 30 kg}", 0),
            ("leg press, sets: 3, reps: 8, load: {1: 20 kg, 2: 31 kg}", 1),
            ("cable pushdown, sets: 3, reps: 8, load: {1: 10 kg, 2: 15 kg}", 0),
            ("cable pushdown, sets: 3, reps: 8, load: {1: 10 kg, 2: 16 kg}", 1),
            ("trap bar deadlift, sets: 3, reps: 8, load: {1: 20 kg, 2: 30 kg}", 0),
            ("trap bar deadlift, sets: 3, reps: 8, load: {1: 20 kg, 2: 31 kg}", 1),
            ("guided-bar Romanian deadlift, sets: 3, reps: 8, load: {1: 20 kg, 2: 30 kg}", 0),
            ("guided-bar Romanian deadlift, sets: 3, reps: 8, load: {1: 20 kg, 2: 31 kg}", 1),
            ("wrist roller, sets: 3, reps: 8, load: {1: 5 kg, 2: 10 kg}", 0),
            ("wrist roller, sets: 3, reps: 8, load: {1: 5 kg, 2: 11 kg}", 1),
            ("sandbag get-up, sets: 3, reps: 8, load: {1: 20 kg, 2: 25 kg}", 0),
            ("sandbag get-up, sets: 3, reps: 8, load: {1: 20 kg, 2: 26 kg}", 1),
            ("sled push, sets: 3, reps: 8, load: {1: 10 kg, 2: 12.5 kg}", 0),  # 2.5 kg for anything else
            ("sled push, sets: 3, reps: 8, load: {1: 10 kg, 2: 13 kg}", 1),
            ("moon walk, sets: 3, reps: 8, load: {1: 10 kg, 2: 12.5 kg}", 0),
            ("moon walk, sets: 3, reps: 8, load: {1: 10 kg, 2: 13 kg}", 1),  # a slip all the same
            ("back squat, sets: 3, reps: 5, load: {1: 61 %, 2: 68 %}", 1),  # no kilograms in a percentage
            ("back squat, sets: 3, reps: 5, load: {1: 48 %, 2: 59 %}", 0),  # light
            ("back squat, sets: 3, reps: 5, load: {1: 32 %, 2: 58 %}", 1),  # nearly doubled
            ("push-up, sets: 3, reps: 5, load: {1: 10 % bodyweight, 2: 11 % bodyweight}", 0),
            ("push-up, sets: 3, reps: 5, load: {1: 10 % bodyweight, 2: 12 % bodyweight}", 1),
            # the middle of a range, and of what is written for each set
            ("back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 74-80 %}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 75-80 %}", 1),
            ("back squat, sets: 3, reps: 5, load: {1: 60/70/80 %, 2: 70/75/84 %}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 60/70/80 %, 2: 70/80/85 %}", 1),
            # what cannot be compared
            ("back squat, sets: 3, reps: 5, load: {1: 12RM, 2: 3RM}", 0),
            ("back squat, sets: 3, reps: 5, load: {1: 50 kg, 2: 80 %}", 0),
            ("band curl, sets: 3, reps: 5, load: {1: red band, 2: black band}", 0),
            ("pull-up, sets: 3, reps: 5, load: {1: bodyweight, 2: bodyweight + 40 kg}", 0),  # of what body?
            ("back squat, sets: 3, load: {1: 50 kg, 2: 80 kg}", 0),
            ("back squat, sets: 3, reps: {1: 5}, load: {1: 50 kg, 2: 80 kg}", 0),
            ("back squat, sets: 3, reps: {2: 5}, load: {1: 50 kg, 2: 80 kg}", 0),
            ("back squat, sets: 3, reps: amrap, load: {1: 50 kg, 2: 80 kg}", 0),
            ("back squat, sets: 3, reps: 5, load: 80 kg", 0),
            ("back squat, sets: 3, reps: 5, rir: 2", 0),
        ],
    )
    def test_at_the_limit_and_just_past_it(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        assert len(self.said(findings, week, line)) == said

    @pytest.mark.parametrize(
        ("lifting", "load", "said"),
        [("X", "50 %", 0), ("1", "50 %", 1), ("X", "{1: 60 %, 2: 67 %}", 1)],
    )
    def test_fast_sets_are_held_against_fast_ones(
        self, findings: Findings, week: Text, lifting: str, load: str, said: int
    ) -> None:
        """Power at 40-60 % beside strength at 70-85 %: fragala-2019, JSCR 2019;33(8):2019-2052 (secondary)."""
        fast = f"leg press, sets: 2, reps: 6, load: {load}, tempo: 2-0-{lifting}-0"
        slow = "leg press, sets: {1: 0, 2: 2}, reps: 7, load: 75 %, tempo: 2-0-1-0"
        assert len(self.said(findings, week, fast, slow)) == said

    def test_the_words_of_a_step_in_kilograms(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(
            findings, week, "dumbbell curl, sets: 3, reps: 8-12, load: {1: 2 x 8 kg, 2: 2 x 12 kg}"
        )
        assert (
            finding.counted == "dumbbell curl goes from 2 x 8 kg to 2 x 12 kg at 8-12 repetitions, 50 % up."
        )
        assert finding.wanted.startswith("at most 2 kg each more")

    def test_where_both_limits_meet_the_share_is_said(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, "back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 120 kg}")
        assert finding.wanted.startswith("at most 10 % more")  # 10 kg, which is the next step as well

    def test_the_body_counts_where_its_mass_is_on_file(self, findings: Findings, week: Text) -> None:
        line = "pull-up, sets: 3, reps: 5, load: {{1: bodyweight, 2: bodyweight + {} kg}}"
        head = "weeks: 2\nathlete: {name: Mara, body mass: 60 kg}"
        assert self.said(findings, week, line.format(6), head=head) == []
        assert len(self.said(findings, week, line.format(7), head=head)) == 1

    @pytest.mark.parametrize(
        ("loads", "said"),
        [
            ("1: 35, 2: 40, 3: 42.5, 4: 45, 5: 57.5, 6: 50", 1),  # for 47.5
            ("1: 35, 2: 40, 3: 42.5, 4: 45, 5: 57.5", 0),  # light, and nothing says that it goes back
            ("1: 35, 2: 40, 3: 37.5, 4: 45, 5: 57.5, 6: 50", 0),  # down once before
            ("1: 42.5, 2: 45, 3: 57.5, 4: 50", 0),  # too short a line
            ("1: 35, 2: 40, 3: 42.5, 4: 45, 5: 60, 6: 52.5", 1),  # for 50
        ],
    )
    def test_a_digit_too_high_in_a_line_that_rises(
        self, findings: Findings, week: Text, loads: str, said: int
    ) -> None:
        at = ", ".join(f"visit {one} kg" for one in loads.split(", "))
        days = {"Day A": [f"deadlift, sets: 2, reps: 5, load: {{{at}}}"], "Day B": ["plank, sets: 2"]}
        head = "weeks: 4\nrotation: [monday, wednesday, friday]\nathlete: {name: Ida, body mass: 68 kg}"
        assert len(findings(week(days, head), self.RULE)) == said

    @pytest.mark.parametrize(
        ("reps", "load", "said"),
        [
            ("{1: 5, 2: 6}", 111, 1),  # longer sets as well
            ("{1: 6, 2: 5}", 114, 0),  # a repetition fewer: 10 + 4 = 14 %
            ("{1: 6, 2: 5}", 115, 1),
            ("{1: 7, 2: 5}", 127, 0),  # two fewer: 10 + 8 = 18 %, and half of it more before it is steep
            ("{1: 7, 2: 5}", 128, 1),
            ("{1: 8, 2: 5}", 134, 1),
            ("{1: 9, 2: 5}", 150, 0),  # four fewer: not compared
            ("{1: 5, 2: 7}", 150, 0),
            ("{1: 5-6, 2: 5}", 112, 0),  # half a repetition fewer: 12 %
            ("{1: 5-6, 2: 5}", 113, 1),
            ("{1: 5-8, 2: 6-7}", 110, 0),  # the same middle
            ("{1: 5-8, 2: 6-7}", 111, 1),
        ],
    )
    def test_like_repetitions_with_like(
        self, findings: Findings, week: Text, reps: str, load: int, said: int
    ) -> None:
        line = f"back squat, sets: 3, reps: {reps}, load: {{1: 100 kg, 2: {load} kg}}"
        assert len(self.said(findings, week, line)) == said

    @pytest.mark.parametrize(
        ("effort", "load", "said"),
        [
            ("rir: {1: 3, 2: 2}", 114, 0),  # nearer to failure by one: 14 %
            ("rir: {1: 3, 2: 2}", 115, 1),
            ("rpe: {1: 7, 2: 9}", 118, 0),  # by two: 18 %
            ("rpe: {1: 7, 2: 9}", 119, 1),
            ("rir: {1: 2, 2: 3}", 110, 0),  # further from it: no less is allowed
            ("rir: {1: 2, 2: 3}", 111, 1),
            ("rir: {2: 1}", 111, 1),
            ("rir: {1: 3}", 111, 1),
        ],
    )
    def test_effort_explains_a_part(
        self, findings: Findings, week: Text, effort: str, load: int, said: int
    ) -> None:
        line = f"back squat, sets: 3, reps: 5, {effort}, load: {{1: 100 kg, 2: {load} kg}}"
        assert len(self.said(findings, week, line)) == said

    def test_repetitions_and_effort_are_said_in_the_limit(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: {1: 6, 2: 5}, rir: {1: 3, 2: 2}, load: {1: 80 kg, 2: 100 kg}"
        (finding,) = self.said(findings, week, line)
        assert finding.wanted.startswith("at most 18 % more")

    def test_an_easier_week_between_is_no_step(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 60 kg, 3: 105 kg}"
        assert self.said(findings, week, line, head="weeks: 3") == []

    def test_it_goes_by_the_heaviest_like_set_of_the_exercise(self, findings: Findings, week: Text) -> None:
        heavy = "back squat, sets: 3, reps: 5, load: 100 kg"
        light = "back squat, sets: 3, reps: 5, load: {1: 70 kg, 2: 90 kg}"
        assert self.said(findings, week, heavy, light) == []
        assert len(self.said(findings, week, light)) == 1
        assert len(self.said(findings, week, heavy.replace("back", "front"), light)) == 1

    def test_twice_the_load(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, "back squat, sets: 3, reps: 5, load: {1: 40 kg, 2: 80 kg}")
        assert finding.counted.endswith("100 % up.")

    def test_the_nearest_step_is_said(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: 5, load: {1: 60 kg, 2: 65 kg, 3: 90 kg}"
        (finding,) = self.said(findings, week, line, head="weeks: 3")
        assert finding.counted.startswith("back squat goes from 65 kg to 90 kg")

    def test_within_a_week_nothing_is_compared(self, findings: Findings, week: Text) -> None:
        lines = ("back squat, sets: 1, reps: 5, load: 60 kg", "back squat, sets: 1, reps: 5, load: 100 kg")
        assert self.said(findings, week, *lines) == []

    def test_a_step_between_blocks_is_a_step(self, findings: Findings) -> None:
        text = blocks(
            ("name: One, weeks: 1", ["back squat, sets: 3, reps: 5, load: 60 kg"]),
            ("name: Two, weeks: 2", ["back squat, sets: 3, reps: 5, load: {1: 80 kg, 2: 100 kg}"]),
        )
        found = findings(text, self.RULE)
        assert [(one.weeks, one.place.excerpt) for one in found] == [((2, 3), "80 kg")]
        assert found[0].counted.endswith("33 % up; 1 more step as large.")

    @pytest.mark.parametrize(
        "head", ["phase: return", "phase: taper", "phase: test", "phase: in-season", "note: none", ALWAYS]
    )
    def test_no_phase_and_no_rehabilitation_hides_it(self, findings: Findings, week: Text, head: str) -> None:
        line = "back squat, sets: 3, reps: 5, load: {1: 40 kg, 2: 80 kg, 3: 100 kg}"
        found = self.said(findings, week, line, head=f"{head}\nweeks: 3")
        assert [one.weeks for one in found] == [(2, 3)]

    def test_a_sets_of_nothing_is_no_week_before(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: {1: 0, 2: 3}, reps: 5, load: {1: 40 kg, 2: 80 kg}"
        assert self.said(findings, week, line) == []

    @pytest.mark.parametrize(
        ("options", "line"),
        [
            ({"step": 25}, "back squat, sets: 3, reps: 5, load: {1: 80 kg, 2: 100 kg}"),
            ({"like_repetitions": 0}, "back squat, sets: 3, reps: {1: 5, 2: 6}, load: {1: 80 kg, 2: 100 kg}"),
            ({"a_repetition": 15}, "back squat, sets: 3, reps: {1: 6, 2: 5}, load: {1: 80 kg, 2: 100 kg}"),
            ({"smallest_step": "{barbell: 20}"}, "back squat, sets: 3, reps: 5, load: {1: 80 kg, 2: 100 kg}"),
            ({"other_step": 3}, "sled push, sets: 3, reps: 5, load: {1: 10 kg, 2: 13 kg}"),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, options: dict[str, object], line: str
    ) -> None:
        assert len(self.said(findings, week, line)) == 1
        assert self.said(findings, week, line, team=moved(self.RULE, **options)) == []

    @pytest.mark.parametrize(
        ("lines", "head", "said"),
        [
            # two weeks at a load, then the steps of both: a return to the gym, loads modest on purpose
            (
                (
                    "leg press, sets: 3, reps: {1-4: 10, 5-8: 8}, load: {1-2: 70 kg, 3-4: 80 kg, 5-6: 90 kg, 7-8: 100 kg}",
                    "hex bar deadlift, sets: 3, reps: {1-4: 6, 5-8: 5}, load: {1-2: 50 kg, 3-4: 60 kg, 5-6: 70 kg, 7-8: 75 kg}",
                    "hip thrust, sets: 3, reps: {1-4: 10, 5-8: 8}, load: {1-2: 40 kg, 3-4: 50 kg, 5-8: 60 kg}",
                ),
                "weeks: 8",
                0,
            ),
            (("bench press, sets: 3, reps: 5, load: {1-2: 60 kg, 3: 72 kg}",), "weeks: 3", 0),
            (("bench press, sets: 3, reps: 5, load: {1-2: 60 kg, 3: 73 kg}",), "weeks: 3", 1),
            (("bench press, sets: 3, reps: 5, load: {1: 55 kg, 2: 60 kg, 3: 72 kg}",), "weeks: 3", 1),
            # like steps are a plan
            (
                ("bench press, sets: 3, reps: 5, load: {1: 40 kg, 2: 46 kg, 3: 52 kg, 4: 58 kg}",),
                "weeks: 4",
                0,
            ),
            (
                ("bench press, sets: 3, reps: 5, load: {1: 40 kg, 2: 52 kg, 3: 64 kg, 4: 76 kg}",),
                "weeks: 4",
                1,
            ),
            # up and down in turn, and what stands out alone
            (
                ("bench press, sets: 3, reps: 5, load: {1: 60 kg, 2: 70 kg, 3: 60 kg, 4: 70 kg}",),
                "weeks: 4",
                0,
            ),
            (
                ("bench press, sets: 3, reps: 5, load: {1: 35 kg, 2: 62.5 kg, 3: 40 kg, 4: 42.5 kg}",),
                "weeks: 4",
                1,
            ),
            # light for the lifter, by the best lift and by the body
            (
                ("bench press, sets: 3, reps: 8, load: {1: 40 kg, 2: 50 kg}",),
                "weeks: 2\nathlete: {name: Ida, best lifts: {bench press: 100 kg}}",
                0,
            ),
            (
                ("bench press, sets: 3, reps: 8, load: {1: 40 kg, 2: 50 kg}",),
                "weeks: 2\nathlete: {name: Ida, best lifts: {bench press: 70 kg}}",
                1,
            ),
            (
                ("deadlift, sets: 3, reps: 5, load: {1: 40 kg, 2: 60 kg}",),
                "weeks: 2\nathlete: {name: Ida, body mass: 61 kg}",
                0,
            ),
            (
                ("deadlift, sets: 3, reps: 5, load: {1: 40 kg, 2: 62 kg}",),
                "weeks: 2\nathlete: {name: Ida, body mass: 61 kg}",
                1,
            ),
            (
                ("one-arm dumbbell row, sets: 3, reps: 8, load: {1: 22 kg, 2: 44 kg, 3: 24 kg}",),
                "weeks: 3\nathlete: {name: Ida, body mass: 95 kg}",
                1,
            ),
        ],
    )
    def test_a_plan_is_no_slip(
        self, findings: Findings, week: Text, lines: tuple[str, ...], head: str, said: int
    ) -> None:
        assert len(self.said(findings, week, *lines, head=head)) == said

    def test_several_steps_are_one_finding(self, findings: Findings, week: Text) -> None:
        lines = (
            "bench press, sets: 3, reps: 5, load: {1: 50 kg, 2: 80 kg}",
            "back squat, sets: 3, reps: 5, load: {1: 100 kg, 2: 120 kg}",
        )
        (finding,) = self.said(findings, week, *lines)
        assert finding.counted.endswith("60 % up; 1 more step as large.")
        assert [one.words for one in finding.related] == [
            "before: 50 kg",
            "back squat goes from 100 kg to 120 kg at 5 repetitions, 20 % up",
        ]

    def test_fewer_repetitions_may_be_alike_for_a_team(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: 3, reps: {1: 5, 2: 7}, load: {1: 80 kg, 2: 100 kg}"
        assert len(self.said(findings, week, line, team=moved(self.RULE, like_repetitions=2))) == 1


class TestSetsStepLarge:
    """+6 a fortnight was coped with: enes-2024, Med Sci Sports Exerc 2024;56(3):553-563; +50 %: campos-2002."""

    RULE = "sets-step-large"

    def test_the_words(self, findings: Findings, week: Text) -> None:
        lines = ["bench press, sets: 4", "dumbbell fly, sets: {1-2: 4, 3-4: 12}"]
        (finding,) = findings(week({"monday Push": lines}, "weeks: 4"), self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "growth trial")
        assert (finding.place.excerpt, finding.where) == ("12", "Push, dumbbell fly")
        assert finding.counted == "Weekly sets jump: chest 8 to 16."
        assert finding.wanted == "at most 6 more than in the last 4 weeks"
        assert finding.change == "Raise dumbbell fly in Push more slowly."
        assert [related.words for related in finding.related] == [
            "Push, bench press, Monday: 4 sets",
            "Push, dumbbell fly, Monday: 12 sets",
        ]
        assert finding.weeks == (3,)
        assert finding.amount is not None
        assert (finding.amount.counted, finding.amount.wanted) == (16, 14)  # 8 and the 6 more

    @pytest.mark.parametrize(
        ("sets", "said"),
        [
            ("{1-2: 10, 3: 16}", []),
            ("{1-2: 10, 3: 17}", ["note"]),
            ("{1-2: 10, 3: 22}", ["note"]),
            ("{1-2: 10, 3: 23}", ["warning"]),
            ("{1-2: 10, 3: 14-18}", []),  # middles are compared
            ("{1-2: 10, 3: 15-18}", ["note"]),
            ("{1-2: 10-12, 3: 17}", []),
            ("{1-2: 4, 3: 11}", ["note"]),
            ("{1-2: 3, 3: 11}", []),  # tiny
            ("{1: 4, 2-3: 20}", ["warning"]),  # the first week counts
            ("{1: 20, 2: 8, 3: 18}", []),
            ("{1: 6, 2: 20, 3: 20}", ["warning"]),
            ("{1-2: 20, 3: 3}", []),
        ],
    )
    def test_at_the_limits_and_just_past_them(
        self, findings: Findings, week: Text, sets: str, said: list[str]
    ) -> None:
        text = week({"Gym": [f"dumbbell fly, sets: {sets}"]}, "weeks: 3")
        assert [finding.severity for finding in findings(text, self.RULE)] == said

    @pytest.mark.parametrize(
        ("sets", "weeks", "said"),
        [
            ("{1-2: 16, 3-5: 8, 6: 16}", 6, 0),  # week 2 is four weeks back
            ("{1-2: 16, 3-6: 8, 7: 16}", 7, 1),
            ("{1-2: 8, 3: 14, 4: 20}", 4, 0),  # step by step
        ],
    )
    def test_the_fullest_of_four_weeks(
        self, findings: Findings, week: Text, sets: str, weeks: int, said: int
    ) -> None:
        text = week({"Gym": [f"dumbbell fly, sets: {sets}"]}, f"weeks: {weeks}")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize("keys", ["deload: true", "phase: taper", "phase: test", "note: none"])
    def test_an_easy_week_is_no_measure_beside_a_full_one(self, findings: Findings, keys: str) -> None:
        full, easy = ["dumbbell fly, sets: 16"], ["dumbbell fly, sets: 5"]
        text = blocks(
            ("name: A, weeks: 2", full), (f"name: B, weeks: 1, {keys}", easy), ("name: C, weeks: 1", full)
        )
        assert findings(text, self.RULE) == []
        text = blocks(("name: A, weeks: 2", easy), (f"name: B, weeks: 1, {keys}", full))
        assert len(findings(text, self.RULE)) == 1

    def test_the_first_week_back_is_not_compared_with(self, findings: Findings) -> None:
        full, easy = ["dumbbell fly, sets: 16"], ["dumbbell fly, sets: {1: 5, 2: 16}"]
        text = blocks(("name: A, weeks: 1", full), ("name: B, weeks: 2, phase: return", easy))
        assert findings(text, self.RULE) == []

    def test_helping_sets_count_half(self, findings: Findings, week: Text) -> None:
        line = "lat pulldown, sets: {{1-2: 8, 3: {}}}"  # the biceps helps: 4, then up to 10
        text = week({"Gym": ["barbell curl, sets: 4", line.format(14)]}, "weeks: 3")
        team = {"spotline.yaml": "counting: direct\n"}
        assert not [one for one in findings(text, self.RULE) if "biceps" in one.counted]
        assert findings(text, self.RULE, team) == []
        text = week({"Gym": ["barbell curl, sets: 4", line.format(21)]}, "weeks: 3")
        (finding,) = findings(text, self.RULE)
        assert "biceps 8 to 14.5" in finding.counted
        (finding,) = findings(text, self.RULE, team)
        assert "biceps" not in finding.counted

    def test_groups_share_a_finding_that_points_at_the_cause(self, findings: Findings, week: Text) -> None:
        lines = [
            "leg extension, sets: 6",
            "seated leg curl, sets: {1-2: 4, 3: 11}",
            "leg press, sets: {1-2: 4, 3: 14}",
        ]
        (finding,) = findings(week({"Gym": lines}, "weeks: 3"), self.RULE)
        assert finding.counted.startswith("Weekly sets jump: quadriceps 10 to 20")
        assert (finding.place.excerpt, finding.where) == ("14", "Gym, leg press")

    def test_a_session_more_is_the_cause(self, findings: Findings) -> None:
        session = "{{session: {}, exercises: [{{exercise: dumbbell fly, sets: {}}}]}}"
        text = (
            "programme: Test\nblocks:\n"
            f"  - {{name: A, weeks: 2, sessions: [{session.format('One', 9)}]}}\n"
            f"  - {{name: B, weeks: 1, sessions: [{session.format('One', 10)}, {session.format('Two', 8)}]}}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.where == "Two, dumbbell fly"

    @pytest.mark.parametrize(
        ("lines", "cause"),
        [
            (["dumbbell fly, sets: {1-2: 4, 3: 11}", "{3: cable fly}, sets: 7-8"], "cable fly"),  # 7; 7.5
            (["{3: cable fly}, sets: 7-8", "dumbbell fly, sets: {1-2: 4, 3: 12}"], "dumbbell fly"),  # 7.5; 8
        ],
    )
    def test_what_brings_most(self, findings: Findings, week: Text, lines: list[str], cause: str) -> None:
        (finding,) = findings(week({"Gym": lines}, "weeks: 3"), self.RULE)
        assert finding.where == f"Gym, {cause}"

    def test_one_week_before_in_which_it_may_have_been_trained(self, findings: Findings, week: Text) -> None:
        lines = ["cable fly, sets: {1-3: 4, 4: 12}", "{2: the usual, 3-4: plank}, sets: 3"]
        assert findings(week({"Gym": lines}, "weeks: 4"), self.RULE) == []
        assert len(findings(week({"Gym": lines[:1]}, "weeks: 4"), self.RULE)) == 1

    def test_every_step_is_said(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["dumbbell fly, sets: {1-2: 4, 3: 12, 4: 20}"]}, "weeks: 4")
        assert [finding.weeks for finding in findings(text, self.RULE)] == [(3,), (4,)]

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("the usual, sets: 3", 0),
            ("moon walk, sets: 3", 1),  # no fly by its words
            ("leg press, sets: x", 1),
            ("dumbbell fly, sets: x", 0),
        ],
    )
    def test_silent_where_the_muscle_may_have_been_trained_before(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        text = week({"Gym": ["cable fly, sets: {1-2: 4, 3: 12}", line]}, "weeks: 3")
        assert len(findings(text, self.RULE)) == said

    @pytest.mark.parametrize("head", [ALWAYS, "phase: return", "phase: in-season", "phase: taper"])
    def test_no_phase_and_no_rehabilitation_hides_it(self, findings: Findings, week: Text, head: str) -> None:
        text = week({"Gym": ["dumbbell fly, sets: {1-2: 4, 3: 12, 4: 20}"]}, f"weeks: 4\n{head}")
        assert [one.weeks for one in findings(text, self.RULE)] == [(3,), (4,)]

    @pytest.mark.parametrize(
        ("options", "sets", "said"),
        [
            ({"most": 7}, "{1-2: 10, 3: 17}", []),
            ({"far": 7}, "{1-2: 10, 3: 18}", ["warning"]),
            ({"tiny": 3}, "{1-2: 3, 3: 11}", ["note"]),
            ({"weeks_back": 1}, "{1-2: 16, 3: 8, 4: 16}", ["note"]),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, options: dict[str, object], sets: str, said: list[str]
    ) -> None:
        text = week({"Gym": [f"dumbbell fly, sets: {sets}"]}, "weeks: 4")
        found = findings(text, self.RULE, moved(self.RULE, **options))
        assert [finding.severity for finding in found] == said


class TestNothingChanges:
    """Eight weeks: common practice, from memory."""

    RULE = "nothing-changes"
    LINE = "bench press, sets: 3, reps: 5, load: 60 kg"

    def said(
        self, findings: Findings, week: Text, *lines: str, weeks: int = 9, head: str = ""
    ) -> list[Finding]:
        return findings(week({"Gym": list(lines)}, f"weeks: {weeks}\n{head}"), self.RULE)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, "plank, sets: 3", self.LINE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("bench press", "Gym, bench press")
        assert finding.counted == "9 weeks without a change: bench press."
        assert finding.wanted == "a change within 8 weeks"
        assert finding.change.endswith("write `progression: {add: 2.5 kg}`.")
        assert [(one.place.excerpt, one.words) for one in finding.related] == [("bench press", "weeks 1-9")]
        assert finding.weeks == tuple(range(1, 10))

    @pytest.mark.parametrize(("weeks", "said"), [(8, 0), (9, 1)])
    def test_more_than_eight_weeks(self, findings: Findings, week: Text, weeks: int, said: int) -> None:
        assert len(self.said(findings, week, self.LINE, weeks=weeks)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("bench press, sets: 3, reps: 5, load: 75 %", 1),
            ("push-up, sets: 3, reps: 10, load: bodyweight", 0),
            ("push-up, sets: 3, reps: 10, load: 10 % bodyweight", 0),
            ("band curl, sets: 3, reps: 15, load: red band", 1),
            ("bench press, sets: 3, reps: 12/10/8, load: 60 kg", 1),
            ("bench press, sets: 3, reps: 5, load: 50/55/60 kg", 1),
            ("farmer's carry, sets: 3, distance: 20 m, load: 2 x 24 kg", 1),
            ("bench press, sets: 3, reps: 5, load: 60 kg, rir: 2", 1),
            # a change of anything that counts, in the middle
            ("bench press, sets: {1-5: 3, 6-9: 4}, reps: 5, load: 60 kg", 0),
            ("bench press, sets: 3, reps: {1-5: 5, 6-9: 6}, load: 60 kg", 0),
            ("bench press, sets: 3, reps: {1-5: 2+2, 6-9: 3+1}, load: 60 kg", 0),
            ("bench press, sets: 3, reps: 5, load: {1-5: 60 kg, 6-9: 62.5 kg}", 0),
            ("bench press, sets: 3, reps: 5, load: 60 kg, rir: {1-5: 3, 6-9: 2}", 0),
            ("bench press, sets: 3, reps: 5, load: 60 kg, rpe: {1-5: 7, 6-9: 8}", 0),
            ("plank, sets: 3, hold: {1-5: 30 s, 6-9: 40 s}, load: 5 kg", 0),
            ("farmer's carry, sets: 3, distance: {1-5: 20 m, 6-9: 30 m}, load: 2 x 24 kg", 0),
            ("{1-5: bench press, 6-9: incline bench press}, sets: 3, reps: 5, load: 60 kg", 0),
            # but not of what does not
            ("bench press, sets: 3, reps: 5, load: 60 kg, rest: {1-5: 2 min, 6-9: 3 min}", 1),
            # room to move
            ("bench press, sets: 3, reps: 5-6, load: 60 kg", 0),
            ("bench press, sets: 3, reps: 8-10/6-8/5, load: 60 kg", 0),
            ("bench press, sets: 3, reps: 5+, load: 60 kg", 0),
            ("bench press, sets: 3, reps: amrap, load: 60 kg", 0),
            ("bench press, sets: 3, reps: 5, load: 60-65 kg", 0),
            ("bench press, sets: 3, reps: 5, load: 5RM", 0),
            ("bench press, sets: 3, reps: 5, load: 90 % of top set", 0),
            ("bench press, sets: 3, reps: 5, rir: 2", 0),
            ("bench press, sets: 3, reps: 5", 0),
            ("bench press, sets: 3, reps: 5, load: 60 kg, progression: add when it is easy", 0),
            ("bench press, sets: 3, reps: 5, load: 60 kg, note: Add 2.5 kg when you can", 0),
            ("bench press, sets: 3, reps: 5, load: 60 kg, note: elbows in", 1),
        ],
    )
    def test_what_stands_still(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(self.said(findings, week, line)) == said

    def test_an_exercise_moves_with_any_of_its_lines(self, findings: Findings, week: Text) -> None:
        other = "bench press, sets: 3, reps: 8, load: {1-5: 50 kg, 6-9: 52.5 kg}"
        assert self.said(findings, week, self.LINE, other) == []
        assert self.said(findings, week, self.LINE, "bench press, sets: 3, rir: 2") == []
        assert len(self.said(findings, week, self.LINE, other.replace("bench", "leg"))) == 1

    def test_one_note_for_all(self, findings: Findings, week: Text) -> None:
        lines = [
            f"{name}, sets: 3, reps: 5, load: 40 kg" for name in ("leg press", "deadlift", "leg curl", "dip")
        ]
        (finding,) = self.said(findings, week, *lines)
        assert finding.counted.startswith(
            "9 weeks without a change: leg press, deadlift, leg curl and 1 more."
        )
        assert len(finding.related) == 4

    def test_two_lines_of_an_exercise_are_named_once(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, self.LINE, self.LINE.replace("60", "50"))
        assert finding.counted.endswith(": bench press.")

    def test_the_first_line_and_the_longest_run(self, findings: Findings, week: Text) -> None:
        lines = ["leg press, sets: 3, reps: 5, load: {1-2: 90 kg, 3-12: 100 kg}", self.LINE]
        (finding,) = self.said(findings, week, *lines, weeks=12)
        assert finding.place.excerpt == "leg press"
        assert finding.counted.startswith("12 weeks without a change")
        assert [one.words for one in finding.related] == ["weeks 1-12", "weeks 3-12"]

    def test_over_the_end_of_a_block(self, findings: Findings) -> None:
        text = blocks(("name: A, weeks: 5", [self.LINE]), ("name: B, weeks: 4", [self.LINE]))
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == tuple(range(1, 10))

    def test_deloads_are_stepped_over(self, findings: Findings) -> None:
        easy = ["bench press, sets: 2, reps: 5, load: 50 kg"]
        parts = [
            ("name: A, weeks: 5", [self.LINE]),
            ("name: B, weeks: 1, deload: true", easy),
            ("name: C, weeks: 4", [self.LINE]),
        ]
        (finding,) = findings(blocks(*parts), self.RULE)
        assert finding.weeks == (1, 2, 3, 4, 5, 7, 8, 9, 10)
        parts[1] = ("name: B, weeks: 1", easy)
        assert findings(blocks(*parts), self.RULE) == []

    def test_a_week_without_the_exercise_breaks_the_run(self, findings: Findings, week: Text) -> None:
        assert (
            self.said(
                findings, week, "bench press, sets: {1-5: 3, 6: 0, 7-11: 3}, reps: 5, load: 60 kg", weeks=11
            )
            == []
        )

    def test_notes_that_say_how_it_moves(self, findings: Findings, week: Text) -> None:
        assert self.said(findings, week, self.LINE, head="note: Retested every fortnight") == []
        assert len(self.said(findings, week, self.LINE, head="note: Address the coach")) == 1
        text = week({"Gym": [self.LINE]}, "weeks: 9") + "    note: more weight is added as it goes\n"
        assert findings(text, self.RULE) == []
        block = blocks(("name: A, weeks: 9, note: heavier every month", [self.LINE]))
        assert findings(block, self.RULE) == []
        block = blocks(("name: A, weeks: 9", [self.LINE]), head="note: loads increase with the season")
        assert findings(block, self.RULE) == []

    @pytest.mark.parametrize("head", ["phase: in-season", ALWAYS])
    def test_silent(self, findings: Findings, week: Text, head: str) -> None:
        assert self.said(findings, week, self.LINE, head=head) == []

    @pytest.mark.parametrize(
        ("options", "weeks", "head", "said"),
        [
            ({"weeks": 9}, 9, "", 0),
            ({"weeks": 4}, 5, "", 1),
            ({"phases": "[build]"}, 9, "phase: build", 0),
            ({"phases": "[build]"}, 9, "phase: in-season", 1),
            ({"moves": "[by feel]"}, 9, "note: by feel", 0),
            ({"moves": "[by feel]"}, 9, "note: add weight", 1),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, options: dict[str, object], weeks: int, head: str, said: int
    ) -> None:
        text = week({"Gym": [self.LINE]}, f"weeks: {weeks}\n{head}")
        assert len(findings(text, self.RULE, moved(self.RULE, **options))) == said


class TestDeloadMissing:
    """A deload defined: bell-2023; about every 5.6 weeks: rogerson-2024, from memory."""

    RULE = "deload-missing"
    LOAD = "load: {1-3: 75 %, 4-6: 77.5 %, 7-12: 80 %}"
    LINE = f"back squat, sets: 3, reps: 5, {LOAD}"

    def said(
        self, findings: Findings, week: Text, *lines: str, weeks: int = 9, head: str = ""
    ) -> list[Finding]:
        return findings(week({"Gym": list(lines)}, f"weeks: {weeks}\n{head}"), self.RULE)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, "plank, sets: 3", self.LINE.replace("12", "9"))
        assert (finding.severity, finding.confidence) == ("note", "convention")
        assert (finding.place.excerpt, finding.where) == ("80 %", "Gym, back squat")
        assert finding.counted == "9 weeks without an easier one: back squat goes up from 75 % to 80 %."
        assert finding.wanted == "a deload after at most 8 weeks"
        assert finding.change == "Make week 8 or an earlier one a deload."
        assert [(one.place.excerpt, one.words) for one in finding.related] == [("75 %", "week 1: 75 %")]
        assert finding.weeks == tuple(range(1, 10))

    @pytest.mark.parametrize(
        ("loads", "said"), [("{1: 75 %, 2-9: 80 %}", 1), ("{1-8: 75 %, 9: 80 %}", 1), ("{1: 80 %, 2-8: 82 %, 9: 80 %}", 0)]
    )  # fmt: skip
    def test_the_last_week_is_held_against_the_first(
        self, findings: Findings, week: Text, loads: str, said: int
    ) -> None:
        line = f"back squat, sets: 3, reps: 5, load: {loads}"
        assert len(self.said(findings, week, "plank, sets: 3", line)) == said

    @pytest.mark.parametrize(("weeks", "said"), [(8, 0), (9, 1), (12, 1)])
    def test_more_than_eight_weeks(self, findings: Findings, week: Text, weeks: int, said: int) -> None:
        line = self.LINE.replace("12", str(weeks))
        assert len(self.said(findings, week, line, weeks=weeks)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("back squat, sets: {1-4: 10, 5: 8, 6-9: 10}, reps: 5, load: {1-5: 75 %, 6-9: 80 %}", 0),
            ("back squat, sets: {1-4: 10, 5: 9, 6-9: 10}, reps: 5, load: {1-5: 75 %, 6-9: 80 %}", 1),
            ("back squat, sets: 3, reps: {1-4: 10, 5: 8, 6-9: 10}, load: {1-5: 75 %, 6-9: 80 %}", 0),
            ("back squat, sets: 3, reps: {1-4: 10, 5: 9, 6-9: 10}, load: {1-5: 75 %, 6-9: 80 %}", 1),
            ("back squat, sets: 3, reps: 5, load: {1-4: 100 kg, 5: 90 kg, 6-9: 102.5 kg}", 0),
            ("back squat, sets: 3, reps: 5, load: {1-4: 100 kg, 5: 91 kg, 6-9: 102.5 kg}", 1),
            ("back squat, sets: 3, reps: 5, rir: {1-4: 2, 5: 4, 6-9: 2}, load: {1-5: 75 %, 6-9: 80 %}", 0),
            ("back squat, sets: 3, reps: 5, rir: {1-4: 2, 5: 3.5, 6-9: 2}, load: {1-5: 75 %, 6-9: 80 %}", 1),
            ("back squat, sets: 3, reps: 5, rpe: {1-4: 9, 5: 7, 6-9: 9}, load: {1-5: 75 %, 6-9: 80 %}", 0),
        ],
    )
    def test_any_clear_cut_is_an_easier_week(
        self, findings: Findings, week: Text, line: str, said: int
    ) -> None:
        assert len(self.said(findings, week, line)) == said

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("back squat, sets: 3, reps: 5, load: 75 %", 0),
            ("back squat, sets: 3, reps: 5, load: {1-8: 75 %, 9: 74 %}", 0),
            ("back squat, sets: 3, reps: 5, load: {1-8: 75 %, 9: 76 %}", 1),
            ("back squat, sets: 3, reps: 5, rir: 2", 0),  # the lifter chooses
            ("back squat, sets: 3, reps: 5, load: {1-8: 12RM, 9: 10RM}", 0),
            ("pull-up, sets: 3, reps: 5, load: {1-8: bodyweight, 9: bodyweight + 5 kg}", 0),  # mass unknown
            ("push-up, sets: 3, reps: 5, load: {1-8: 10 % bodyweight, 9: 12 % bodyweight}", 1),
            ("back squat, sets: 3, reps: 5, load: {1-8: 75 %, 9: 100 kg}", 0),
        ],
    )
    def test_what_rises(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(self.said(findings, week, line)) == said

    def test_the_heaviest_sets_are_compared(self, findings: Findings, week: Text) -> None:
        lines = (
            "back squat, sets: 3, reps: 5, load: 80 %",
            "back squat, sets: 3, reps: 8, load: {1-8: 60 %, 9: 62 %}",
        )
        assert self.said(findings, week, *lines) == []

    @pytest.mark.parametrize(
        ("progression", "said"),
        [
            ("{add: 2.5 kg, every: week}", "goes up by 2.5 kg every week"),
            ("{add: 5 lb, every: 1 session}", "goes up by 5 lb every session"),
            ("{add: 2 %, every: 2 weeks}", "goes up by 2 % every 2 weeks"),
            ("{add: 1 rep, every: week}", None),
            ("{add: 2.5 kg, every: week, when: all sets done}", None),  # the lifter's sets decide
            ("{add: 2.5 kg}", None),
            ("goes up by 2.5 kg every week", None),
        ],
    )
    def test_a_rise_by_the_calendar(
        self, findings: Findings, week: Text, progression: str, said: str | None
    ) -> None:
        line = f"back squat, sets: 3, reps: 5, load: 60 kg, progression: {progression}"
        found = self.said(findings, week, line)
        assert [finding.counted.split("back squat ")[1] for finding in found] == (
            [f"{said}."] if said else []
        )
        assert self.said(findings, week, line.replace("load: 60 kg, ", "rir: 2, ")) == []

    @pytest.mark.parametrize("keys", ["deload: true", "phase: taper", "phase: test"])
    def test_weeks_that_are_not_typical_break_the_run(self, findings: Findings, keys: str) -> None:
        line = "back squat, sets: 3, reps: 5, load: {} %"
        parts = [
            ("name: A, weeks: 5", [line.format(75)]),
            (f"name: B, weeks: 1, {keys}", [line.format(78)]),
            ("name: C, weeks: 5", [line.format(80)]),
        ]
        assert findings(blocks(*parts), self.RULE) == []
        parts[1] = ("name: B, weeks: 1", [line.format(78)])
        (finding,) = findings(blocks(*parts), self.RULE)
        assert finding.weeks == tuple(range(1, 12))

    def test_a_long_run_that_ends_is_said(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: {1-9: 5, 10: 3, 11: 5}, reps: 5, load: {1-8: 60 %, 9-11: 65 %}"
        (finding,) = self.said(findings, week, line, weeks=11)
        assert finding.weeks == tuple(range(1, 10))

    def test_a_new_start_ends_the_run(self, findings: Findings) -> None:
        line = "back squat, sets: 3, reps: 5, load: {{1-2: {} %, 3-6: {} %}}"
        text = blocks(
            ("name: A, weeks: 6", [line.format(80, 85)]), ("name: B, weeks: 6", [line.format(70, 75)])
        )
        assert findings(text, self.RULE) == []

    def test_the_longest_run_is_said(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: {1-10: 5, 11: 3, 12-22: 5}, reps: 5, load: {1-8: 60 %, 9-11: 65 %, 12-20: 66 %, 21-22: 70 %}"
        (finding,) = self.said(findings, week, line, weeks=22)
        assert finding.counted.startswith("12 weeks without an easier one")

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("athlete: {name: A, level: novice}", 0),
            ("athlete: {name: A, level: intermediate}", 1),
            ("athlete: {name: A}", 1),
            ("phase: in-season", 0),
            ("phase: return", 0),
            ("phase: build", 1),
            (ALWAYS, 0),
        ],
    )
    def test_who_and_when(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(self.said(findings, week, self.LINE.replace("12", "9"), head=head)) == said

    def test_weeks_of_rehabilitation_break_the_run(self, findings: Findings, week: Text) -> None:
        head = f"starts: 2026-01-05\n{REHABILITATION.format(until='2026-01-05')}"
        assert self.said(findings, week, self.LINE.replace("12", "9"), head=head) == []
        (finding,) = self.said(findings, week, self.LINE.replace("12", "10"), weeks=10, head=head)
        assert finding.weeks == tuple(range(2, 11))

    @pytest.mark.parametrize(
        ("options", "line", "head", "said"),
        [
            ({"weeks": 9}, LINE, "", 0),
            ({"phases": "[build]"}, LINE, "phase: build", 0),
            ({"phases": "[build]"}, LINE, "phase: in-season", 1),
            ({"levels": "[advanced]"}, LINE, "athlete: {name: A, level: advanced}", 0),
            ({"levels": "[advanced]"}, LINE, "athlete: {name: A, level: novice}", 1),
            ({"volume": 10}, f"back squat, sets: {{1-4: 10, 5: 9, 6-9: 10}}, reps: 5, {LOAD}", "", 0),
            (
                {"load": 5},
                "back squat, sets: 3, reps: 5, load: {1-4: 100 kg, 5: 95 kg, 6-9: 102.5 kg}",
                "",
                0,
            ),
            ({"effort": 1}, f"back squat, sets: 3, reps: 5, rir: {{1-4: 2, 5: 3, 6-9: 2}}, {LOAD}", "", 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, options: dict[str, object], line: str, head: str, said: int
    ) -> None:
        text = week({"Gym": [line.replace("12", "9")]}, f"weeks: 9\n{head}")
        assert len(findings(text, self.RULE)) == 1 - said
        assert len(findings(text, self.RULE, moved(self.RULE, **options))) == said

    def test_the_team_names_another_week(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": [self.LINE.replace("12", "7")]}, "weeks: 7")
        (finding,) = findings(text, self.RULE, moved(self.RULE, weeks=5))
        assert finding.change.startswith("Make week 5 or")
        assert finding.wanted.startswith("a deload after at most 5 weeks")


class TestDeloadWithoutCut:
    """A deload lowers stress: bell-2023, Sports Med Open 2023;9:87. Mainly volume: bell-2022."""

    RULE = "deload-without-cut"

    def text(
        self, before: str, easy: str, keys: str = "name: Recover, weeks: 1, deload: true", head: str = ""
    ) -> str:
        squat = "back squat, sets: {}"
        return blocks(
            ("name: Build, weeks: 3", [squat.format(before)]), (keys, [squat.format(easy)]), head=head
        )

    def test_the_words(self, findings: Findings) -> None:
        text = self.text("5, reps: 5, load: 100 kg, rir: 2", "5, reps: 5, load: 95 kg, rir: 3")
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "survey")
        assert (finding.place.excerpt, finding.where) == ("Recover", "Recover")
        assert finding.counted == (
            "Recover is hardly easier than week 3: 5 sets against 5, 95 % of the load and 1 more in reserve."
        )
        assert finding.wanted == "20 % less volume, 10 % less load or 2 more in reserve"
        assert finding.change == "Take 1 set off, or lower the load."
        assert finding.weeks == (4,)

    def test_the_words_where_little_is_stated(self, findings: Findings) -> None:
        (finding,) = findings(self.text("5", "6"), self.RULE)
        assert finding.counted == "Recover is hardly easier than week 3: 6 sets against 5."
        assert finding.change.startswith("Take 2 sets off")  # to 4 of 5
        (finding,) = findings(self.text("5, rir: 3", "5, rir: 2.5"), self.RULE)
        assert finding.counted.endswith("5 sets against 5, 0.5 less in reserve.")
        (finding,) = findings(self.text("5, rir: 2", "5, rir: 2.5"), self.RULE)
        assert finding.counted.endswith("5 sets against 5, 0.5 more in reserve.")

    @pytest.mark.parametrize(
        ("before", "easy", "said"),
        [
            ("5", "4", 0),
            ("6", "5", 1),
            ("10", "8", 0),
            ("10", "9", 1),
            ("9", "7-8", 1),  # middle 7.5, no less than 80 % of 9
            ("9", "7", 0),
            ("3, reps: 10", "3, reps: 8", 0),
            ("3, reps: 10", "3, reps: 9", 1),
            ("3, load: 100 kg", "3, load: 90 kg", 0),
            ("3, load: 100 kg", "3, load: 91 kg", 1),
            ("3, load: 80 %", "3, load: 72 %", 0),
            ("3, load: 80 %", "3, load: 73 %", 1),
            ("3, rir: 2", "3, rir: 4", 0),
            ("3, rir: 2", "3, rir: 3.5", 1),
            ("3", "3, rir: 5", 1),
            ("3", "x", 0),  # unread
            ("x", "3", 0),
        ],
    )
    def test_what_is_a_clear_cut(self, findings: Findings, before: str, easy: str, said: int) -> None:
        assert len(findings(self.text(before, easy), self.RULE)) == said

    @pytest.mark.parametrize(
        ("keys", "said"),
        [
            ("name: Deload, weeks: 1", 1),
            ("name: An easy de-load, weeks: 1", 0),
            ("name: Build on, weeks: 1", 0),
            ("name: Rest, weeks: 1, deload: false", 0),
            ("name: Rest, weeks: 1, deload: true", 1),
            ("name: Rest, weeks: 1, deload: true, note: Half the weight", 0),
            ("name: Rest, weeks: 1, deload: true, note: Have a laugh", 1),
        ],
    )
    def test_what_is_called_a_deload(self, findings: Findings, keys: str, said: int) -> None:
        assert len(findings(self.text("3", "3", keys), self.RULE)) == said

    def test_notes_of_the_line_and_the_session(self, findings: Findings) -> None:
        assert findings(self.text("3", "3, note: keep it light"), self.RULE) == []
        assert len(findings(self.text("3, note: keep it light", "3"), self.RULE)) == 1
        start, mark, end = self.text("3", "3").rpartition("session: Gym")
        assert findings(f"{start}{mark}, note: easy today{end}", self.RULE) == []
        text = self.text("3", "3").replace("session: Gym", "session: Gym, note: easy today")
        assert len(findings(text, self.RULE)) == 1  # so were the weeks before

    def test_it_is_held_against_the_last_typical_week(self, findings: Findings) -> None:
        assert findings(self.text("{1-2: 3, 3: 5}", "4"), self.RULE) == []
        assert len(findings(self.text("{1-2: 5, 3: 3}", "4"), self.RULE)) == 1
        squat = "back squat, sets: {}"
        text = blocks(
            ("name: A, weeks: 1", [squat.format(5)]),
            ("name: B, weeks: 1, phase: test", [squat.format(1)]),
            ("name: C, weeks: 2, deload: true", [squat.format("{1: 4, 2: 5}")]),
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.weeks, finding.place.excerpt) == ((4,), "C")

    def test_what_comes_after_does_not_matter(self, findings: Findings) -> None:
        squat = "back squat, sets: {}"
        text = blocks(
            ("name: A, weeks: 1", [squat.format(5)]),
            ("name: Deload, weeks: 1", [squat.format(4)]),
            ("name: C, weeks: 1", [squat.format(4)]),
        )
        assert findings(text, self.RULE) == []

    def test_how_many_sets_to_take_off(self, findings: Findings) -> None:
        (finding,) = findings(self.text("100", "95"), self.RULE)
        assert finding.change.startswith("Take 15 sets off")

    def test_two_weeks_are_one_finding(self, findings: Findings) -> None:
        text = self.text("5", "{1: 5, 2: 6}", "name: Recover, weeks: 2, deload: true")
        (finding,) = findings(text, self.RULE)
        assert finding.weeks == (4, 5)
        assert "5 sets against 5" in finding.counted
        ((_, words),) = [(one.place, one.words) for one in finding.related]
        assert "6 sets against 5" in words

    def test_silent_without_a_week_before(self, findings: Findings) -> None:
        assert findings(blocks(("name: A, weeks: 2, deload: true", ["plank, sets: 3"])), self.RULE) == []

    def test_stands_back_under_rehabilitation(self, findings: Findings) -> None:
        assert findings(self.text("3", "3", head=ALWAYS), self.RULE) == []
        head = f"starts: 2026-01-05\n{REHABILITATION.format(until='2026-01-19')}"
        assert findings(self.text("3", "3", head=head), self.RULE) == []  # no week before it counts

    @pytest.mark.parametrize(
        ("options", "before", "easy"),
        [
            ({"volume": 10}, "10", "9"),
            ({"load": 5}, "3, load: 100 kg", "3, load: 95 kg"),
            ({"effort": 1}, "3, rir: 2", "3, rir: 3"),
            ({"easy_words": "[gently]"}, "3", "3, note: gently"),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, options: dict[str, object], before: str, easy: str
    ) -> None:
        text = self.text(before, easy)
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, moved(self.RULE, **options)) == []


class TestReturnWeekNotLighter:
    """Very light first sessions: fm21-20-prep, US Army FM 21-20 (secondary)."""

    RULE = "return-week-not-lighter"

    def said(self, findings: Findings, week: Text, line: str, head: str = "weeks: 3") -> list[Finding]:
        return findings(week({"Gym": [line]}, f"phase: return\n{head}"), self.RULE)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        line = "back squat, sets: {1-2: 10, 3: 11}, reps: 8, load: 60 kg, rir: 3"
        (finding,) = self.said(findings, week, line)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("10", "first week back")
        assert finding.counted == (
            "The first week back is hardly lighter than week 3: 10 sets against 11, the same load and the same"
            " effort."
        )
        assert finding.wanted == "a lighter start"
        assert finding.change == "Cut sets or load, or leave more in reserve."
        assert "whoever treats them" in finding.why
        assert [one.words for one in finding.related] == ["Gym, back squat: 10 sets"]
        assert finding.weeks == (1,)

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("back squat, sets: {1: 9, 2-3: 10}", 0),
            ("back squat, sets: {1: 19, 2-3: 20}", 1),
            ("back squat, sets: {1-2: 10, 3: 12}", 0),  # lighter than a later week
            ("back squat, sets: {1: 9, 2: 10, 3: 9}", 0),
            ("back squat, sets: 3, reps: {1: 9, 2-3: 10}", 0),
            ("back squat, sets: 3, reps: {1: 10, 2-3: 11}", 1),
            ("back squat, sets: 3, load: {1: 95 kg, 2-3: 100 kg}", 0),
            ("back squat, sets: 3, load: {1: 96 kg, 2-3: 100 kg}", 1),
            ("back squat, sets: 3, rir: {1: 4, 2-3: 3}", 0),
            ("back squat, sets: 3, rir: {1: 3.5, 2-3: 3}", 1),
            ("back squat, sets: 3, note: keep it easy", 0),
            ("back squat, sets: 3, note: deep", 1),
        ],
    )
    def test_what_is_lighter(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(self.said(findings, week, line)) == said

    def test_only_the_return_is_compared_with(self, findings: Findings) -> None:
        line = "back squat, sets: {}"
        parts = [
            ("name: A, weeks: 2", [line.format(9)]),
            ("name: B, weeks: 2, phase: return", [line.format(3)]),
            ("name: C, weeks: 2, phase: build", [line.format(5)]),
        ]
        (finding,) = findings(blocks(*parts), self.RULE)
        assert (finding.weeks, finding.place.excerpt) == ((3,), "3")
        parts[1] = ("name: B, weeks: 1, phase: return", [line.format(3)])
        assert findings(blocks(*parts), self.RULE) == []  # one week: the week after it
        parts[2] = ("name: C, weeks: 2, phase: build", [line.format("{1: 3, 2: 5}")])
        assert len(findings(blocks(*parts), self.RULE)) == 1
        assert findings(blocks(*parts[:2]), self.RULE) == []  # nothing follows

    def test_a_line_that_rests_is_not_pointed_at(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["plank, sets: {1-2: 0}", "back squat, sets: 3"]}, "phase: return\nweeks: 2")
        (finding,) = findings(text, self.RULE)
        assert finding.place.excerpt == "3"
        text = week({"Gym": ["plank, sets: {1-2: 0}"]}, "phase: return\nweeks: 2")
        assert findings(text, self.RULE) == []

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("weeks: 1", 0),
            ("weeks: 2", 1),
            ("weeks: 2\nnote: an easier start", 0),
            (f"weeks: 2\n{ALWAYS}", 0),
            (f"starts: 2026-01-05\nweeks: 3\n{REHABILITATION.format(until='2026-01-05')}", 0),
        ],
    )
    def test_silent(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(self.said(findings, week, "back squat, sets: 3", head)) == said

    def test_other_phases(self, findings: Findings, week: Text) -> None:
        assert findings(week({"Gym": ["back squat, sets: 3"]}, "phase: build\nweeks: 3"), self.RULE) == []

    @pytest.mark.parametrize(
        ("options", "line"),
        [
            ({"volume": 5}, "back squat, sets: {1: 19, 2: 20}"),
            ({"load": 4}, "back squat, sets: 3, load: {1: 96 kg, 2: 100 kg}"),
            ({"effort": 0.5}, "back squat, sets: 3, rir: {1: 3.5, 2: 3}"),
            ({"easy_words": "[gently]"}, "back squat, sets: 3, note: gently"),
        ],
    )
    def test_the_team_moves_every_limit(
        self, findings: Findings, week: Text, options: dict[str, object], line: str
    ) -> None:
        text = week({"Gym": [line]}, "phase: return\nweeks: 2")
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, moved(self.RULE, **options)) == []


class TestProgressionNeverReached:
    """What is written decides."""

    RULE = "progression-never-reached"
    TOP = "progression: {add: 2.5 kg, when: top of range in all sets}"

    def test_the_words_for_a_range(self, findings: Findings, week: Text) -> None:
        (finding,) = findings(
            week({"monday Lower": [f"back squat, sets: 3, reps: 5, {self.TOP}"]}), self.RULE
        )
        assert (finding.severity, finding.confidence) == ("note", "fact")
        assert finding.place.excerpt.startswith("{add: 2.5 kg")
        assert finding.where == "Lower, back squat"
        assert finding.counted == "back squat: the next step waits for the top of a range, and there is none."
        assert finding.wanted == "a step within reach"
        assert finding.change.startswith("Write a range, such as `reps: 5-8`")

    def test_the_words_for_a_band(self, findings: Findings, week: Text) -> None:
        line = "band curl, sets: 3, reps: 8-12, load: red band, progression: {add: 2.5 kg}"
        (finding,) = findings(week({"Gym": [line]}), self.RULE)
        assert finding.counted == "band curl: 2.5 kg cannot be added to a band."
        assert finding.change == "Name the next band instead, or add repetitions."

    def test_the_words_for_a_percentage(self, findings: Findings, week: Text) -> None:
        line = "pull-up, sets: 3, reps: 5, load: bodyweight, progression: {add: 5 %}"
        (finding,) = findings(week({"Gym": [line]}), self.RULE)
        assert finding.counted == "pull-up: 5 % more of a load without a number."
        assert finding.change == "State a load in kg or %, or add kilograms or repetitions."

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            (f"back squat, sets: 3, reps: 5-6, {TOP}", 0),
            (f"back squat, sets: 3, reps: {{1: 5, 2: 5-8}}, {TOP}", 0),
            (f"back squat, sets: 3, reps: 12/10/8, {TOP}", 1),
            (f"back squat, sets: 3, reps: 12/10/6-8, {TOP}", 0),
            (f"back squat, sets: 3, reps: 5+, {TOP}", 0),
            (f"back squat, sets: 3, reps: amrap, {TOP}", 0),
            (f"plank, sets: 3, hold: 20-30 s, {TOP}", 0),
            (f"plank, sets: 3, hold: 30 s, {TOP}", 1),
            (f"farmer's carry, sets: 3, distance: 20-30 m, {TOP}", 0),
            (f"farmer's carry, sets: 3, distance: 20 m, {TOP}", 1),
            ("back squat, sets: 3, reps: 5, progression: {when: Top of the Range}", 1),
            ("back squat, sets: 3, reps: 5, progression: {when: upper end of it}", 1),
            ("back squat, sets: 3, reps: 5, progression: {when: full range of motion in all sets}", 0),
            ("back squat, sets: 3, reps: 5, progression: {add: 2.5 kg, when: all sets done}", 0),
            ("back squat, sets: 3, reps: 5, progression: top of range", 0),  # in words: for people
            ("back squat, sets: 3, reps: 5", 0),
            # what is added
            ("band curl, sets: 3, progression: {add: 2.5 kg}", 1),  # the band is in the exercise
            ("band curl, sets: 3, progression: {add: 5 lb}", 1),
            ("band curl, sets: 3, progression: {add: 1 rep}", 0),
            ("push-up, sets: 3, load: band 2, progression: {add: 2.5 kg}", 1),
            ("leg press, sets: 3, load: pin 7, progression: {add: 2.5 kg}", 0),
            ("band curl, sets: 3, load: {1: red band, 2: 5 kg}, progression: {add: 2.5 kg}", 0),
            ("pull-up, sets: 3, load: bodyweight, progression: {add: 2.5 kg}", 0),
            ("moon walk, sets: 3, progression: {add: 2.5 kg}", 0),
            ("back squat, sets: 3, progression: {add: 2.5 kg}", 0),
            ("pull-up, sets: 3, load: bodyweight + 5 kg, progression: {add: 5 %}", 0),
            ("band curl, sets: 3, load: red band, progression: {add: 5 %}", 1),
            ("dip, sets: 3, load: {1: bodyweight, 2: bodyweight + 5 kg}, progression: {add: 5 %}", 0),
            ("back squat, sets: 3, load: 80 kg, progression: {add: 5 %}", 0),
            ("back squat, sets: 3, load: 8RM, progression: {add: 5 %}", 0),
            ("back squat, sets: 3, rir: 2, progression: {add: 5 %}", 0),  # the lifter found one
            ("back squat, sets: 3, progression: {add: 5 %}", 1),
        ],
    )
    def test_what_can_be_reached(self, findings: Findings, week: Text, line: str, said: int) -> None:
        assert len(findings(week({"Gym": [line]}, "weeks: 2"), self.RULE)) == said

    def test_groups_of_sets_are_taken_together(self, findings: Findings) -> None:
        text = (
            "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n      - exercise: back squat\n"
            "        work: [{sets: 1, reps: 3}, {sets: 3, reps: 5-8}]\n"
            f"        {self.TOP}\n"
        )
        assert findings(text, self.RULE) == []
        assert len(findings(text.replace("5-8", "5"), self.RULE)) == 1

    def test_lines_that_share_a_progression_are_one_finding(self, findings: Findings) -> None:
        text = (
            "programme: Test\nshared:\n  fives: &fives {sets: 3, reps: 5, progression: {when: top of range}}\n"
            "sessions:\n  - session: Gym\n    exercises:\n"
            "      - {exercise: back squat, <<: *fives}\n      - {exercise: bench press, <<: *fives}\n"
        )
        (finding,) = findings(text, self.RULE)
        assert finding.counted.startswith("back squat: ")

    def test_every_line_is_looked_at(self, findings: Findings, week: Text) -> None:
        lines = [
            "plank, sets: 3",
            f"back squat, sets: 3, reps: 5, {self.TOP}",
            f"dip, sets: 3, reps: 5, {self.TOP}",
        ]
        assert len(findings(week({"Gym": lines}), self.RULE)) == 2

    def test_an_exercise_that_changes_by_week_is_named_in_order(self, findings: Findings, week: Text) -> None:
        line = f"{{1: back squat, 2: front squat, 3: back squat}}, sets: 3, reps: 5, {self.TOP}"
        (finding,) = findings(week({"Gym": [line]}, "weeks: 3"), self.RULE)
        assert finding.where == "Gym, back squat then front squat"
        assert finding.counted.startswith("back squat then front squat: ")

    def test_stands_back_under_rehabilitation(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": [f"back squat, sets: 3, reps: 5, {self.TOP}"]}, ALWAYS)
        assert findings(text, self.RULE) == []

    def test_the_team_has_its_own_words(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": ["back squat, sets: 3, reps: 5, progression: {when: ceiling}"]})
        assert findings(text, self.RULE) == []
        assert len(findings(text, self.RULE, moved(self.RULE, top_of_range="[ceiling]"))) == 1


class TestTaperMissing:
    """About a week, fewer sets, load kept: taper-strength, in Sports Med Open 2023;9:87; helms-taper: 9 to 4."""

    RULE = "taper-missing"
    START = "goal: strength\nstarts: 2026-01-05\n"  # a Monday
    SQUAT = "back squat, sets: {}, reps: 4, rir: 2"

    def said(
        self,
        findings: Findings,
        week: Text,
        sets: object = 5,
        *,
        event: str = "date: 2026-02-07, event: strength test",
        weeks: int = 5,
        head: str = START,
        team: dict[str, str] | None = None,
    ) -> list[Finding]:
        text = week({"Gym": [self.SQUAT.format(sets)]}, f"{head}weeks: {weeks}\nevents: [{{{event}}}]")
        return findings(text, self.RULE, team)

    def test_the_words(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, "{1-2: 4, 3-4: 5, 5: 6}")
        assert (finding.severity, finding.confidence) == ("note", "survey")
        assert (finding.place.excerpt, finding.where) == ("strength test", "strength test")
        assert finding.counted == "No taper before strength test: 6 sets in week 5 against 5 in week 3."
        assert finding.wanted == "a lighter week before it"
        assert finding.change == "Cut week 5 to about half the sets at the same load."
        assert finding.weeks == (4, 5)

    @pytest.mark.parametrize(
        ("sets", "said"),
        [
            ("{1-4: 5, 5: 4}", 0),
            ("{1-3: 5, 4: 4, 5: 5}", 0),  # the week before
            ("{1-2: 5, 3: 4, 4-5: 5}", 1),  # too long before
            ("{1-2: 10, 3-5: 5}", 1),  # held against the last week before
            ("{1-4: 10, 5: 9}", 1),
        ],
    )
    def test_a_lighter_week(self, findings: Findings, week: Text, sets: str, said: int) -> None:
        assert len(self.said(findings, week, sets)) == said

    @pytest.mark.parametrize(
        ("name", "said"),
        [
            ("Strength test", 1),
            ("indoor regatta", 1),
            ("national championships", 1),
            ("club meet", 1),
            ("home match", 0),
            ("the latest news", 0),
            ("meeting of coaches", 0),
        ],
    )
    def test_what_is_to_be_ready_for(self, findings: Findings, week: Text, name: str, said: int) -> None:
        assert len(self.said(findings, week, event=f"date: 2026-02-07, event: {name}")) == said

    @pytest.mark.parametrize(
        ("date", "weeks"),
        [
            ("2026-02-07", (4, 5)),  # Saturday of week 5
            ("2026-02-03", (4, 5)),  # Tuesday of week 5
            ("2026-02-09", (4, 5)),  # the Monday after the end: day 36, 14 days after week 4 begins
            ("2026-02-10", (5,)),
            ("2026-02-11", (5,)),
            ("2026-02-12", None),  # four days are left for it after the programme's last one
            ("2026-02-16", None),
            ("2026-01-31", None),  # week 4: only two weeks before
            ("2026-02-02", None),  # Monday of week 5: weeks 3 and 4
        ],
    )
    def test_when_it_is(
        self, findings: Findings, week: Text, date: str, weeks: tuple[int, ...] | None
    ) -> None:
        found = self.said(findings, week, event=f"date: {date}, event: test")
        assert [finding.weeks for finding in found] == ([weeks] if weeks else [])

    def test_a_week_that_begins_on_the_day_is_too_late(self, findings: Findings, week: Text) -> None:
        (finding,) = self.said(findings, week, event="date: 2026-02-09, event: test", weeks=6)
        assert finding.weeks == (4, 5)

    def test_silent_without_an_event(self, findings: Findings, week: Text) -> None:
        assert self.said(findings, week, event="date: 2026-02-07, event: open day", weeks=12) == []

    def test_the_team_wants_a_taper_after_any_week(self, findings: Findings, week: Text) -> None:
        event = "date: {}, event: test"
        said = self.said(
            findings, week, event=event.format("2026-01-24"), weeks=3, team=moved(self.RULE, weeks=1)
        )
        assert [finding.weeks for finding in said] == [(2, 3)]
        said = self.said(
            findings, week, event=event.format("2026-01-17"), weeks=2, team=moved(self.RULE, weeks=0)
        )
        assert said == []  # nothing to hold it against

    def test_a_start_is_needed(self, findings: Findings, week: Text) -> None:
        assert self.said(findings, week, head="goal: strength\n") == []

    @pytest.mark.parametrize(
        ("note", "said"), [("We train through it", 0), ("No taper.", 0), ("bring the belt", 1)]
    )
    def test_on_purpose(self, findings: Findings, week: Text, note: str, said: int) -> None:
        event = f"date: 2026-02-07, event: test, note: {note}"
        assert len(self.said(findings, week, event=event)) == said

    @pytest.mark.parametrize(
        ("head", "said"),
        [
            ("goal: power\nstarts: 2026-01-05\n", 1),
            ("goal: hypertrophy\nstarts: 2026-01-05\n", 0),
            ("starts: 2026-01-05\n", 0),
            (START + "athlete: {name: A, level: novice}\n", 0),
            (START + "athlete: {name: A, level: advanced}\n", 1),
            (START + "phase: in-season\n", 0),
            (START + ALWAYS + "\n", 0),
            (START + REHABILITATION.format(until="2026-01-12") + "\n", 0),  # one week before counts
        ],
    )
    def test_who_and_when(self, findings: Findings, week: Text, head: str, said: int) -> None:
        assert len(self.said(findings, week, head=head)) == said

    @pytest.mark.parametrize(
        ("keys", "said"), [("phase: taper", 0), ("deload: true", 0), ("phase: build", 1)]
    )
    def test_a_week_that_is_called_light(self, findings: Findings, keys: str, said: int) -> None:
        head = self.START + "events: [{date: 2026-02-07, event: test}]"
        text = blocks(
            ("name: A, weeks: 4", [self.SQUAT.format(5)]),
            (f"name: B, weeks: 1, {keys}", [self.SQUAT.format(5)]),
            head=head,
        )
        assert len(findings(text, self.RULE)) == said

    def test_a_test_week(self, findings: Findings) -> None:
        parts = [
            ("name: Build, weeks: 5", [self.SQUAT.format(5)]),
            ("name: Try it, weeks: 2, phase: test", [self.SQUAT.format(5)]),
        ]
        (finding,) = findings(blocks(*parts, head="goal: strength"), self.RULE)
        assert (finding.place.excerpt, finding.where) == ("Try it", "Try it")
        assert finding.counted == "No taper before Try it: 5 sets in week 5 against 5 in week 3."
        assert finding.change == "Cut week 5 to about half the sets at the same load."
        assert finding.weeks == (4, 5, 6)
        parts[1] = ("name: Try it, weeks: 2, phase: test", [self.SQUAT.format(4)])
        assert findings(blocks(*parts, head="goal: strength"), self.RULE) == []  # the test week is light
        parts[0] = ("name: Build, weeks: 4", [self.SQUAT.format(5)])
        parts[1] = ("name: Try it, weeks: 2, phase: test", [self.SQUAT.format(5)])
        assert findings(blocks(*parts, head="goal: strength"), self.RULE) == []  # two weeks before

    def test_a_programme_that_is_a_test(self, findings: Findings, week: Text) -> None:
        text = week({"Gym": [self.SQUAT.format(5)]}, "goal: strength\nphase: test\nweeks: 6")
        assert findings(text, self.RULE) == []

    def test_a_test_week_and_its_event_are_one_finding(self, findings: Findings) -> None:
        text = blocks(
            ("name: Build, weeks: 5", [self.SQUAT.format(5)]),
            ("name: Try it, weeks: 1, phase: test", [self.SQUAT.format(5)]),
            head=self.START + "events: [{date: 2026-02-14, event: strength test}]",
        )
        assert len(findings(text, self.RULE)) == 1

    @pytest.mark.parametrize(
        ("options", "sets", "event", "head", "weeks", "said"),
        [
            ({"events": "[derby]"}, 5, "event: derby", START, 5, 1),
            ({"days": 21}, "{1-4: 10, 5: 8, 6-7: 10}", "event: test", START, 7, 0),
            ({"weeks": 4}, 5, "event: test", START, 5, 0),
            ({"weeks": 2}, 5, "event: test", START, 4, 1),
            ({"goals": "[hypertrophy]"}, 5, "event: test", START, 5, 0),
            (
                {"levels": "[advanced]"},
                5,
                "event: test",
                START + "athlete: {name: A, level: advanced}\n",
                5,
                0,
            ),
            ({"phases": "[build]"}, 5, "event: test", START + "phase: build\n", 5, 0),
            ({"on_purpose": "[as we are]"}, 5, "event: test, note: as we are", START, 5, 0),
            ({"volume": 10}, "{1-4: 10, 5: 9}", "event: test", START, 5, 0),
        ],
    )
    def test_the_team_moves_every_limit(
        self,
        findings: Findings,
        week: Text,
        options: dict[str, object],
        sets: object,
        event: str,
        head: str,
        weeks: int,
        said: int,
    ) -> None:
        day = {4: "2026-01-31", 5: "2026-02-07", 7: "2026-02-21"}[weeks]
        dated = f"date: {day}, {event}"
        assert len(self.said(findings, week, sets, event=dated, head=head, weeks=weeks)) == 1 - said
        team = moved(self.RULE, **options)
        assert len(self.said(findings, week, sets, event=dated, head=head, weeks=weeks, team=team)) == said

    @pytest.mark.parametrize(
        ("options", "line"),
        [
            ({"load": 5}, "back squat, sets: 5, load: {1-4: 100 kg, 5: 95 kg}"),
            ({"effort": 1}, "back squat, sets: 5, rir: {1-4: 2, 5: 3}"),
        ],
    )
    def test_the_team_moves_what_is_lighter(
        self, findings: Findings, week: Text, options: dict[str, object], line: str
    ) -> None:
        text = week({"Gym": [line]}, f"{self.START}weeks: 5\nevents: [{{date: 2026-02-07, event: test}}]")
        assert len(findings(text, self.RULE)) == 1
        assert findings(text, self.RULE, moved(self.RULE, **options)) == []


class TestStartDoesNotFollow:
    """+6 sets: enes-2024; +50 %: campos-2002; twice the 10 % of acsm-2009 in load."""

    RULE = "start-does-not-follow"
    MARA = "name: Mara\nbody mass: 60 kg\n"

    def said(
        self,
        findings: Findings,
        before: str,
        now: str,
        *,
        starts: str = "2026-02-02",
        ended: str = "starts: 2026-01-05\nweeks: 4",
        head: str = "",
        others: dict[str, str] | None = None,
        team: dict[str, str] | None = None,
    ) -> list[Finding]:
        """What is said of a programme that starts on a day, after Winter, which ends on 1 February."""
        line = "athlete: mara.athlete.yaml\n{}\nsessions: [{{session: Gym, exercises: [{}]}}]\n"
        one, other = (
            ", ".join(f"{{exercise: {each}}}" for each in lines.split("; ")) for lines in (before, now)
        )
        text = "programme: Spring\n" + line.format(f"starts: {starts}\nweeks: 4\n{head}", other)
        files = {
            "mara.athlete.yaml": self.MARA,
            "winter.programme.yaml": "programme: Winter\n" + line.format(ended, one),
            **(others or {}),
            **(team or {}),
        }
        return findings(text, self.RULE, files)

    def test_the_words_for_sets(self, findings: Findings) -> None:
        (finding,) = self.said(findings, "dumbbell fly, sets: 5", "plank, sets: 1; dumbbell fly, sets: 12")
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.where) == ("dumbbell fly", "Gym, dumbbell fly")
        assert finding.counted == "Weekly sets jump after Winter: chest 5 to 12."
        assert finding.wanted == "at most 6 sets or 50 % more"
        assert finding.change == "Start with fewer sets and build up."
        assert [one.words for one in finding.related] == ["Gym, dumbbell fly: 5 sets"]
        assert finding.weeks == (1,)

    def test_the_words_for_load(self, findings: Findings) -> None:
        (finding,) = self.said(
            findings,
            "back squat, sets: 3, reps: 5, load: 60 kg; deadlift, sets: 3, reps: 5, load: 60 kg",
            "back squat, sets: 3, reps: 5, load: 80 kg; deadlift, sets: 3, reps: 5, load: 90 kg",
        )
        assert (finding.place.excerpt, finding.where) == ("90 kg", "Gym, deadlift")
        assert finding.counted == (
            "Loads jump after Winter: deadlift 60 kg to 90 kg and back squat 60 kg to 80 kg."
        )
        assert finding.wanted == "at most 20 % more for similar repetitions"
        assert finding.change == "Start lighter and build up, or correct the number."
        assert [one.words for one in finding.related] == ["Winter: 60 kg", "Winter: 60 kg"]

    @pytest.mark.parametrize(
        ("before", "now", "said"),
        [
            ("dumbbell fly, sets: 10", "dumbbell fly, sets: 16", 0),  # 6 more
            ("dumbbell fly, sets: 10", "dumbbell fly, sets: 17", 1),
            ("dumbbell fly, sets: 14", "dumbbell fly, sets: 21", 0),  # half as much again
            ("dumbbell fly, sets: 14", "dumbbell fly, sets: 22", 1),
            ("dumbbell fly, sets: 4", "dumbbell fly, sets: 11", 1),
            ("dumbbell fly, sets: 3", "dumbbell fly, sets: 11", 0),  # tiny
            ("dumbbell fly, sets: 10", "dumbbell fly, sets: 14-18", 0),  # middles are compared
            ("dumbbell fly, sets: 10", "dumbbell fly, sets: {1: 10, 2-4: 20}", 0),  # the first week
            ("dumbbell fly, sets: {1-3: 12, 4: 5}", "dumbbell fly, sets: 12", 1),  # the last week
            ("dumbbell fly, sets: 10, rir: 7", "dumbbell fly, sets: 17", 0),
            ("dumbbell fly, sets: 5; the usual, sets: 3", "dumbbell fly, sets: 17", 0),
            ("dumbbell fly, sets: 5", "dumbbell fly, sets: 17; the usual, sets: 3", 1),
        ],
    )
    def test_sets(self, findings: Findings, before: str, now: str, said: int) -> None:
        assert len(self.said(findings, before, now)) == said

    @pytest.mark.parametrize(
        ("before", "now", "said"),
        [
            ("load: 60 kg", "load: 72 kg", 0),
            ("load: 60 kg", "load: 73 kg", 1),
            ("load: 60 %", "load: 73 %", 1),
            ("load: 60 kg", "load: 80 %", 0),
            ("load: 60 kg, rir: 3", "load: 74 kg, rir: 2", 0),  # 20 + 4 %
            ("load: 60 kg, rir: 3", "load: 75 kg, rir: 2", 1),
            ("load: 60 kg", "load: {1: 60 kg, 2-4: 90 kg}", 0),  # the first week
            ("load: {1-3: 60 kg, 4: 80 kg}", "load: 85 kg", 0),  # after the last
            ("load: 10 kg", "load: 15 kg", 0),  # the next plates
            ("load: 10 kg", "load: 21 kg", 1),
        ],
    )
    def test_load(self, findings: Findings, before: str, now: str, said: int) -> None:
        squat = "back squat, sets: 3, reps: 5, "
        assert len(self.said(findings, squat + before, squat + now)) == said

    def test_other_lifts_and_repetitions_are_not_compared(self, findings: Findings) -> None:
        before = "back squat, sets: 3, reps: 5, load: 60 kg"
        assert self.said(findings, before, "front squat, sets: 3, reps: 5, load: 90 kg") == []
        assert self.said(findings, before, "back squat, sets: 3, reps: 3, load: 90 kg") == []

    def test_sets_and_load_are_two_things(self, findings: Findings) -> None:
        found = self.said(
            findings,
            "back squat, sets: 5, reps: 5, load: 60 kg",
            "back squat, sets: 12, reps: 5, load: 90 kg",
        )
        assert len(found) == 2

    def test_groups_share_a_finding(self, findings: Findings) -> None:
        (finding,) = self.said(
            findings,
            "dumbbell fly, sets: 5; seated leg curl, sets: 6",
            "dumbbell fly, sets: 12; seated leg curl, sets: 15",
        )
        assert finding.counted == "Weekly sets jump after Winter: hamstrings 6 to 15 and chest 5 to 12."
        assert finding.place.excerpt == "seated leg curl"

    @pytest.mark.parametrize(
        ("starts", "said"),
        [
            ("2026-02-02", 1),  # the day after
            ("2026-03-02", 1),  # four weeks
            ("2026-03-03", 0),
            ("2026-02-01", 0),  # before it ends: not our business
            ("2026-01-01", 0),
        ],
    )
    def test_within_four_weeks(self, findings: Findings, starts: str, said: int) -> None:
        found = self.said(findings, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", starts=starts)
        assert len(found) == said

    def test_programmes_without_a_start_have_no_order(self, findings: Findings) -> None:
        assert self.said(findings, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", ended="weeks: 4") == []

    def test_the_last_to_end_counts(self, findings: Findings) -> None:
        later = {
            "later.programme.yaml": "programme: Later\nathlete: mara.athlete.yaml\nstarts: 2026-01-19\nweeks: 3\n"
            "sessions: [{session: Gym, exercises: [{exercise: dumbbell fly, sets: 11}]}]\n"
        }
        fly = ("dumbbell fly, sets: 5", "dumbbell fly, sets: 12")
        assert self.said(findings, *fly, starts="2026-02-09", others=later) == []
        assert len(self.said(findings, *fly, starts="2026-02-09")) == 1
        assert len(self.said(findings, *fly, starts="2026-02-02", others=later)) == 1  # has not ended yet

    @pytest.mark.parametrize(
        ("starts", "weeks", "said"),
        [
            ("2026-01-19", 1, 1),  # ended a week before Winter
            ("2026-01-05", 1, 1),
            ("2025-11-22", 10, 1),  # ended two days before it
            ("2025-11-24", 10, 0),  # with it, and written first
        ],
    )
    def test_how_the_last_to_end_is_found(
        self, findings: Findings, starts: str, weeks: int, said: int
    ) -> None:
        earlier = {
            "autumn.programme.yaml": f"programme: Autumn\nathlete: mara.athlete.yaml\nstarts: {starts}\n"
            f"weeks: {weeks}\nsessions: [{{session: Gym, exercises: [{{exercise: dumbbell fly, sets: 11}}]}}]\n"
        }
        fly = ("dumbbell fly, sets: 5", "dumbbell fly, sets: 12")
        assert len(self.said(findings, *fly, others=earlier)) == said

    def test_no_phase_hides_the_programme_before(self, findings: Findings) -> None:
        fly = ("dumbbell fly, sets: 5", "dumbbell fly, sets: 12")
        assert self.said(findings, *fly, ended="starts: 2026-01-05\nweeks: 4\nphase: taper") != []

    def test_silent_without_a_programme_before(self, findings: Findings) -> None:
        text = "programme: Spring\nathlete: {name: Mara}\nstarts: 2026-02-02\nsessions: [{session: Gym, exercises: [{exercise: dumbbell fly, sets: 12}]}]\n"
        assert findings(text, self.RULE) == []

    def test_rehabilitation_is_left_alone(self, findings: Findings) -> None:
        fly = ("dumbbell fly, sets: 5", "dumbbell fly, sets: 12")
        assert self.said(findings, *fly, head=ALWAYS) == []
        assert self.said(findings, *fly, head=REHABILITATION.format(until="2026-02-02")) == []
        assert self.said(findings, *fly, ended=f"starts: 2026-01-05\nweeks: 4\n{ALWAYS}") == []

    def test_helping_sets_count_half_or_as_the_team_counts(self, findings: Findings) -> None:
        lines = ("barbell curl, sets: 4", "barbell curl, sets: 4; lat pulldown, sets: 14")  # 4, then 11
        (finding,) = self.said(findings, *lines)
        assert "biceps 4 to 11" in finding.counted
        assert self.said(findings, *lines, team={"spotline.yaml": "counting: direct\n"}) == []

    @pytest.mark.parametrize(
        ("options", "before", "now", "starts", "said"),
        [
            ({"gap": 5}, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", "2026-03-09", 1),
            ({"most": 7}, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", "2026-02-02", 0),
            ({"share": 140}, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", "2026-02-02", 0),
            ({"tiny": 6}, "dumbbell fly, sets: 5", "dumbbell fly, sets: 12", "2026-02-02", 0),
            (
                {"step": 50},
                "dip, sets: 3, reps: 5, load: 60 kg",
                "dip, sets: 3, reps: 5, load: 90 kg",
                "2026-02-02",
                0,
            ),
            (
                {"like_repetitions": 2},
                "dip, sets: 3, reps: 7, load: 60 kg",
                "dip, sets: 3, reps: 5, load: 90 kg",
                "2026-02-02",
                1,
            ),
            (
                {"a_repetition": 30},
                "dip, sets: 3, reps: 6, load: 60 kg",
                "dip, sets: 3, reps: 5, load: 90 kg",
                "2026-02-02",
                0,
            ),
            (
                {"smallest_step": "{barbell: 30}"},
                "back squat, sets: 3, reps: 5, load: 60 kg",
                "back squat, sets: 3, reps: 5, load: 90 kg",
                "2026-02-02",
                0,
            ),
            (
                {"other_step": 30},
                "dip, sets: 3, reps: 5, load: 60 kg",
                "dip, sets: 3, reps: 5, load: 90 kg",
                "2026-02-02",
                0,
            ),
        ],
    )
    def test_the_team_moves_every_limit(
        self,
        findings: Findings,
        options: dict[str, object],
        before: str,
        now: str,
        starts: str,
        said: int,
    ) -> None:
        assert len(self.said(findings, before, now, starts=starts)) == 1 - said
        team = moved(self.RULE, **options)
        assert len(self.said(findings, before, now, starts=starts, team=team)) == said


class TestEnduranceStepLarge:
    """Common practice, no source; 20 % a week is one published plan for running (alfredson-step)."""

    RULE = "endurance-step-large"

    def text(self, *lines: str, weeks: int = 4, head: str = "") -> str:
        listed = "".join(f"      - {{{line}}}\n" for line in lines)
        return f"programme: Test\nweeks: {weeks}\n{head}sessions:\n  - session: Row\n    exercises:\n{listed}"

    def test_the_words(self, findings: Findings) -> None:
        text = self.text(
            "intervals: rowing machine, rounds: {1-3: 5, 4: 10}, distance: {1-3: 500 m, 4: 1000 m}",
            "intervals: rowing machine easy, rounds: 1, distance: {1-3: 2500 m, 4: 5000 m}",
        )
        (finding,) = findings(text, self.RULE)
        assert (finding.severity, finding.confidence) == ("note", "common practice")
        assert (finding.place.excerpt, finding.weeks) == ("1000 m", (4,))
        assert finding.counted == "Rowing ergometer comes to 15 km in the week, 5 km at most before."
        assert finding.wanted == "at most 2 times as much as in the last 4 weeks"
        assert finding.change == "Build it up more slowly, or correct a slip."
        assert [one.words for one in finding.related] == [
            "Row, rowing machine: 10 km",
            "Row, rowing machine easy: 5 km",
        ]

    @pytest.mark.parametrize(
        ("line", "said"),
        [
            ("exercise: run, sets: 1, distance: {1: 3000 m, 2: 9000 m}", 1),
            ("exercise: run, sets: 1, distance: {1: 4500 m, 2: 9000 m}", 0),
            ("exercise: run, sets: 1, distance: {1: 500 m, 2: 2000 m}", 0),
            ("exercise: treadmill run, sets: {1: 1, 2: 3}, reps: 10 min", 1),
            ("exercise: stationary bike, sets: {1: 2, 2: 3}, reps: 10 min", 0),
            ("intervals: row, rounds: {1: 3, 2: 8}, distance: 1000 m", 1),
            ("intervals: shuttle swim, rounds: {1: 3, 2: 8}, distance: 1000 m", 1),  # whatever it is
            ("intervals: run, rounds: {1: 5, 2: 8}, on: 60 s, off: 60 s", 0),
            ("intervals: run, rounds: {1: 5, 2: 60}, on: 60 s, off: 60 s", 1),
            ("own choice: run, minutes: 20", 0),
            ("intervals: back squat, rounds: {1: 5, 2: 90}, on: 60 s", 0),
            ("intervals: heavy dumbbell row, rounds: {1: 5, 2: 90}, on: 60 s", 0),
            ('intervals: "easy row, 20 strokes", rounds: {1: 2, 2: 9}, distance: 1000 m', 1),
            ("exercise: farmer's carry, sets: {1: 1, 2: 90}, distance: 40 m", 0),
            ("exercise: run, in weeks: 2, sets: 1, distance: 9000 m", 0),  # nothing to compare with
        ],
    )
    def test_which_work_and_how_much(self, findings: Findings, line: str, said: int) -> None:
        assert len(findings(self.text(line, weeks=2), self.RULE)) == said

    def test_the_most_of_four_weeks_is_compared_with(self, findings: Findings) -> None:
        line = "exercise: run, sets: 1, distance: {1: 5 km, 2-5: 2 km, 6: 5 km}".replace(" km", "000 m")
        assert [one.weeks for one in findings(self.text(line, weeks=6), self.RULE)] == [(6,)]
        line = "exercise: run, sets: 1, distance: {1: 5 km, 2-4: 2 km, 5: 5 km}".replace(" km", "000 m")
        assert findings(self.text(line, weeks=5), self.RULE) == []

    def test_distance_is_not_compared_with_time(self, findings: Findings) -> None:
        one = "exercise: run, in weeks: 1, sets: 1, reps: 30 min"
        text = self.text(one, "exercise: run, in weeks: 2, sets: 1, distance: 9000 m", weeks=2)
        assert findings(text, self.RULE) == []
        both = self.text(one, "exercise: run, sets: 1, distance: {1: 3000 m, 2: 9000 m}", weeks=2)
        assert findings(both, self.RULE) == []

    def test_a_race_is_as_long_as_it_is(self, findings: Findings) -> None:
        line = "exercise: run, sets: 1, distance: {1: 3000 m, 2: 9000 m}"
        head = "starts: 2026-01-05\nevents: [{date: 2026-01-18, event: race}]\n"
        assert findings(self.text(line, weeks=2, head=head), self.RULE) == []
        assert len(findings(self.text(line, weeks=3, head=head.replace("01-18", "01-25")), self.RULE)) == 1

    @pytest.mark.parametrize("limits", ["times: 3", "metres more: 7000"])
    def test_the_team_moves_every_limit(self, findings: Findings, limits: str) -> None:
        team = {"spotline.yaml": f"rules: {{{self.RULE}: {{{limits}}}}}\n"}
        text = self.text("exercise: run, sets: 1, distance: {1: 3000 m, 2: 9000 m}", weeks=2)
        assert findings(text, self.RULE, team) == []
