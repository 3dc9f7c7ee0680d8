"""One cause, one finding: the most telling one, the others as its lines."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from spotline.lint.findings.causes import by_cause
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.text.places import Text as FileText
from spotline.tests.steps import growth

Findings = Callable[..., list[Finding]]
Reviewed = Callable[..., Review]
Text = Callable[..., str]

VOLUME = ("exercise-sets-high", "session-sets-for-muscle-high", "weekly-sets-over-limit", "sets-step-large")

PULLS = {
    "monday": ["lat pulldown, sets: 12"],
    "friday": ["bent-over row, sets: 8, reps: 8", "barbell curl, sets: 11"],
}


def leads(found: list[Finding], *rules: str) -> list[Finding]:
    return [one for one in found if one.rule in rules]


class TestOneSlip:
    """A number that cannot be meant takes its line out of every count."""

    LINES = ("leg press, sets: 3, reps: 8, rir: 2", "leg curl, sets: 3, reps: 8, rir: 2")

    @pytest.mark.parametrize(
        "line",
        [
            "bench press, sets: 40, reps: 5, rir: 2",
            "back squat, sets: 30, reps: 5, load: 80 %",
            "bench press, sets: 3, reps: 500, rir: 2",
            "bench press, sets: 3, reps: 5, load: 7 %",
        ],
    )
    def test_it_is_all_that_is_said(self, findings: Findings, week: Text, line: str) -> None:
        found = findings(week({"monday": [*self.LINES, line]}, "goal: strength\nfocus: [chest, legs]"))
        of_line = [one for one in found if one.place.line == 10]
        assert [one.rule for one in of_line] == ["number-implausible"]
        assert not leads(found, *VOLUME, "session-too-long")

    def test_skipping_the_rule_brings_the_count_back(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["bench press, sets: 40, reps: 5, rir: 2"]})
        assert not leads(findings(text), *VOLUME)
        found = findings(text, "", {"spotline.yaml": "rules: {number-implausible: skip}\n"})
        assert len(leads(found, *VOLUME)) == 1

    def test_a_moved_limit_decides(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["bench press, sets: 22, reps: 5, rir: 2"]})
        files = {"spotline.yaml": "rules: {number-implausible: {most sets: 25}}\n"}
        assert len(leads(findings(text, "", files), "number-implausible", *VOLUME)) == 1
        assert not leads(findings(text, "", files), "number-implausible")

    def test_a_waiver_says_that_it_is_meant(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["bench press, sets: 22, reps: 5, rir: 2"]})
        waived = text.rstrip() + "  # spotline: waive number-implausible because a test of will\n"
        assert leads(findings(waived), *VOLUME)
        assert not leads(findings(waived), "number-implausible")

    @pytest.mark.parametrize(("effort", "said"), [("rir: 8", 0), ("rir: 2", 1), ("note: heavy", 1)])
    def test_easy_sets_may_be_many(self, findings: Findings, week: Text, effort: str, said: int) -> None:
        text = week({"monday": [f"bench press, sets: 20, reps: 5, {effort}"]})
        assert len(findings(text, "number-implausible")) == said

    def test_what_is_banned_stays_banned(self, findings: Findings, week: Text) -> None:
        head = (
            "athlete: {name: Ana, protect: [{movement: overhead press, advised by: physiotherapist,"
            " review on: 2026-12-01}]}"
        )
        few, many = (
            findings(week({"Gym": [f"overhead press, sets: {sets}, reps: 5"]}, head)) for sets in (3, 40)
        )
        assert leads(few, "protected-area-loaded")
        assert len(leads(many, "protected-area-loaded")) == len(leads(few, "protected-area-loaded"))


class TestVolume:
    def test_one_line_that_is_too_much_is_one_finding(self, findings: Findings, week: Text) -> None:
        lines = {
            "monday": ["bench press, sets: 12, reps: 8"],
            "thursday": ["dumbbell fly, sets: 6, reps: 12", "dip, sets: 5, reps: 8"],
        }
        (one,) = leads(findings(week(lines)), *VOLUME)
        assert one.severity == "warning"
        assert {"weekly-sets-over-limit"} <= {one.rule, *(listed.rule for listed in one.follows)}

    def test_so_is_one_row_too_many(self, findings: Findings, week: Text) -> None:
        lines = {
            "monday": ["bent-over row, sets: 12, reps: 8"],
            "friday": ["lat pulldown, sets: 6, reps: 10", "seated cable row, sets: 6, reps: 10"],
        }
        (one,) = leads(findings(week(lines)), *VOLUME)
        assert "lats" in {one.group, *(listed.group for listed in one.follows)}

    def test_two_slips_are_two(self, findings: Findings, week: Text) -> None:
        lines = {"monday": ["bench press, sets: 11, reps: 8"], "friday": ["leg press, sets: 11, reps: 8"]}
        assert len(leads(findings(week(lines)), *VOLUME)) == 2

    def test_what_is_waived_or_skipped_lists_nothing(self, findings: Findings, week: Text) -> None:
        text = week({"monday": ["bench press, sets: 12, reps: 8"], "friday": ["dip, sets: 10, reps: 8"]})
        for settings in ("exercise-sets-high: skip", "weekly-sets-over-limit: skip"):
            found = findings(text, "", {"spotline.yaml": f"rules: {{{settings}}}\n"})
            name = settings.split(":")[0]
            assert leads(found, *VOLUME)
            assert name not in [said.rule for one in found for said in (one, *one.follows)]

    def test_a_waiver_of_a_listed_rule_is_used(self, reviewed: Reviewed, week: Text) -> None:
        head = "waivers: [{rule: session-sets-for-muscle-high, reason: one long day}]"
        (file,) = reviewed(week({"monday": ["bench press, sets: 12", "dip, sets: 10"]}, head)).files
        assert "session-sets-for-muscle-high" in {held.finding.rule for held in file.waived}
        assert "waiver-unused" not in {one.rule for one in file.findings}


class TestBalance:
    LINES = ("leg extension, sets: 9, reps: 10", "leg press, sets: 3, reps: 10", "seated leg curl, sets: 3")

    def test_a_missing_hinge_lists_the_thighs(self, findings: Findings, week: Text) -> None:
        found = findings(week({"monday": list(self.LINES)}, "goal: hypertrophy"))
        assert not leads(found, "antagonist-imbalance")
        (hinge,) = leads(found, "hip-hinge-missing")
        assert [one.rule for one in hinge.follows] == ["antagonist-imbalance"]

    def test_the_more_serious_one_leads(self, findings: Findings, week: Text) -> None:
        found = findings(week({"monday": list(self.LINES)}))
        (one,) = leads(found, "antagonist-imbalance", "hip-hinge-missing")
        assert (one.rule, one.severity) == ("antagonist-imbalance", "warning")
        assert [listed.rule for listed in one.follows] == ["hip-hinge-missing"]

    def test_missing_curls_list_the_thighs_too(self, findings: Findings, week: Text) -> None:
        lines = ["leg extension, sets: 9, reps: 10", "leg press, sets: 3", "Romanian deadlift, sets: 3"]
        found = findings(week({"monday": lines}, "goal: hypertrophy"))
        assert not leads(found, "antagonist-imbalance")
        assert leads(found, "knee-flexion-missing")[0].follows


class TestLength:
    """`weeks:` changed, the values by week not."""

    TEXT = """\
programme: Test
weeks: {weeks}
sessions:
  - session: A
    exercises:
      - {{exercise: back squat, sets: {{1-3: 3, 4-5: 4, 6: 2}}, reps: 5, load: {{1-3: 70 %, 4-6: 75 %}}}}
      - {{exercise: leg curl, sets: {{1-3: 3, 4-6: 4}}, reps: 8, rir: 2}}
"""

    @pytest.mark.parametrize("weeks", [4, 5, 7, 9])
    def test_one_finding_at_the_length(self, findings: Findings, weeks: int) -> None:
        found = findings(self.TEXT.format(weeks=weeks))
        (one,) = [one for one in found if one.severity == "error"]
        assert (one.rule, one.place.line, one.place.excerpt) == ("weeks-disagree", 2, str(weeks))
        assert [related.words for related in one.related] == [
            "A, back squat, sets",
            "A, back squat, load",
            "A, leg curl, sets",
        ]
        assert one.amount is not None
        assert (one.amount.counted, one.amount.wanted) == (weeks, 6)
        assert not leads(found, "session-empty")

    def test_a_block_is_judged_by_its_own_length(self, findings: Findings) -> None:
        lines = "[{exercise: back squat, sets: {1-2: 3, 3: 2}}, {exercise: leg curl, sets: {1: 3, 2-3: 2}}]"
        sessions = f"sessions: [{{session: A, exercises: {lines}}}]"
        text = f"programme: Test\nweeks: 7\nblocks:\n  - {{name: One, weeks: 3, {sessions}}}\n"
        text += f"  - {{name: Two, weeks: 4, {sessions}}}\n"
        (one,) = [one for one in findings(text) if one.severity == "error"]
        assert (one.rule, one.place.line, one.place.excerpt) == ("weeks-disagree", 5, "4")

    def test_one_line_that_does_not_fit_is_pointed_at_itself(self, findings: Findings) -> None:
        text = self.TEXT.format(weeks=6).replace("sets: {1-3: 3, 4-6: 4}", "sets: {1-3: 3, 4-5: 4}")
        assert [one.rule for one in findings(text) if one.severity == "error"] == ["weeks-left-out"]


class TestSaidOnce:
    def test_groups_of_sets_with_the_same_slip(self, findings: Findings, week: Text) -> None:
        work = "work: [{sets: 2, reps: 300}, {sets: 1, reps: 300}]"
        (one,) = findings(week({"monday": [f"bench press, {work}"]}), "number-implausible")
        assert [related.words for related in one.related] == ["monday, bench press, reps: here too"]

    def test_days_written_as_two_sessions(self, findings: Findings, week: Text) -> None:
        line = "leg press, sets: 11, reps: 10"
        for rule in ("exercise-sets-high", "session-sets-for-muscle-high"):
            assert len(findings(week({"monday": [line], "thursday": [line]}), rule)) <= 1
        (one,) = findings(week({"monday": [line], "thursday": [line]}), "exercise-sets-high")
        assert [related.place.line for related in one.related if related.share and related.of] == [10]


class TestPlaces:
    def test_the_week_that_stands_out(self, findings: Findings, week: Text) -> None:
        lines = {
            "monday": ["bench press, sets: {1-2: 4, 3: 12, 4: 4}, reps: 8"],
            "friday": ["dumbbell fly, sets: 6, reps: 12", "dip, sets: 6, reps: 8"],
        }
        (one,) = findings(week(lines, "weeks: 4"), "weekly-sets-over-limit")
        assert (one.place.line, one.place.excerpt, one.weeks) == (7, "12", (3,))

    def test_a_team_limit_points_at_its_week_too(self, findings: Findings, week: Text) -> None:
        lines = {"monday": ["lat pulldown, sets: 3"], "friday": ["chin-up, sets: {1: 9, 2-3: 3}"]}
        limits = {"spotline.yaml": "weekly limits: {lats: 8}\n"}
        (one,) = findings(week(lines, "weeks: 3"), "weekly-sets-over-limit", limits)
        assert (one.place.excerpt, one.weeks) == ("9", (1,))

    def test_a_session_from_an_anchor_is_pointed_at_where_it_is_used(self, findings: Findings) -> None:
        text = """\
programme: Test
shared:
  - &push
    exercises: [{exercise: dumbbell fly, sets: 11, reps: 8, rir: 2}]
sessions:
  - session: A
    day: monday
    <<: *push
"""
        (one,) = findings(text, "exercise-sets-high")
        assert (one.place.line, one.place.excerpt) == (8, "*push")
        assert (one.related[0].place.line, one.related[0].words) == (4, "written here, used there")
        assert one.related[-1].words == "A, dumbbell fly, Monday: 11 sets"


class TestDirectSets:
    """A default limit blocks on direct sets alone; a team's own on the team's way of counting."""

    def test_indirect_sets_are_a_note(self, findings: Findings, week: Text) -> None:
        text = week(PULLS)
        found = {one.group: one for one in findings(text, "weekly-sets-over-limit")}
        assert found["biceps"].severity == "note"
        assert "11 direct, the rest indirect" in found["biceps"].counted

    def test_a_number_of_the_teams_blocks(self, findings: Findings, week: Text) -> None:
        text = week(PULLS)
        files = {"spotline.yaml": "weekly limits: {biceps: 20}\n"}
        found = {one.group: one for one in findings(text, "weekly-sets-over-limit", files)}
        assert found["biceps"].severity == "warning"

    def test_the_first_preset_counts_as_it_did(self, findings: Findings, week: Text) -> None:
        text = week(PULLS)
        found = {
            one.group: one
            for one in findings(text, "weekly-sets-over-limit", {"spotline.yaml": "preset: 2026-11\n"})
        }
        assert found["biceps"].severity == "warning"


def test_advice_leads_where_it_says(findings: Findings, week: Text) -> None:
    """What the advice says, done, leaves the week where it says."""
    for sets in (9, 11, 12):
        lines = ["bench press, sets: 12, reps: 8", f"dumbbell fly, sets: {sets}, reps: 12"]
        (one,) = findings(week({"monday": lines}), "weekly-sets-over-limit")
        assert one.amount is not None
        steps = re.findall(r"([\w ]+) to (\d+) sets", one.change.removeprefix("In monday, cut "))
        assert steps
        for names, then in steps:
            cut = [line for line in lines if any(name in line for name in names.split(" and ") if name)]
            lines = [re.sub(r"sets: \d+", f"sets: {then}", line) if line in cut else line for line in lines]
        total = sum(int(sets) for line in lines for sets in re.findall(r"sets: (\d+)", line))
        assert total == one.amount.wanted
        assert findings(week({"monday": lines}), "weekly-sets-over-limit") == []


def claims(count: int) -> list[Finding]:
    """Findings of rules that cause one another, each on a line of its own."""
    text = FileText("plan.programme.yaml", "x\n" * count)
    rules = (("sets-step-large", ()), ("exercise-sets-high", ("sets-step-large",)))
    return [
        Finding(rule, "warning", text.place(at, at + 1), f"{at} of {rule}", causes=causes, weeks=(1, 2))
        for at in range(0, 2 * count, 2)
        for rule, causes in rules
    ]


def test_twice_as_many_findings_take_twice_the_steps() -> None:
    held = {count: claims(count) for count in (300, 600)}
    (first, *_) = by_cause(held[300])
    assert [one.rule for one in first.follows] == ["exercise-sets-high"]
    assert len(by_cause(held[300])) == 300
    assert growth(lambda count: lambda: by_cause(held[count]), 300) < 2.2
