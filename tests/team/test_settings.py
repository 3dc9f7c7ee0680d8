"""Team settings: every key, what overrides what, and settings that cannot be used."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.engine.limits import Option
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.findings.finding import Finding
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.results import FileReview, Review
from spotline.lint.team.read_settings import read_team, shown
from spotline.lint.team.settings import BLOCKING, Team
from spotline.lint.text.repository import FileResolver, real

Reviewed = Callable[..., Review]

RULES = {rule.name: rule for rule in all_rules()}
SLIP = "number-implausible"
LIMIT = "weekly-sets-over-limit"

PLAN = """\
programme: Test
focus: [chest]
sessions:
  - session: A
    exercises:
      - {exercise: bench press, sets: 10, reps: 5, rir: 2}
      - {exercise: dumbbell fly, sets: 8, reps: 10, rir: 2}
      - {exercise: dumbbell fly, sets: 1, reps: 101, rir: 2}
"""
"""One warning, of 101 repetitions, which count nowhere; 18 direct sets for the chest."""


@pytest.fixture
def settings(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[str], Team]:
    """The settings of a text."""
    monkeypatch.chdir(tmp_path)

    def run(text: str) -> Team:
        (tmp_path / "spotline.yaml").write_text(text, encoding="utf-8")
        files = FileResolver()
        return read_team(files.file("spotline.yaml"), RULES.values(), files, Overlay().read)

    return run


@pytest.fixture
def plan(reviewed: Reviewed) -> Callable[..., FileReview]:
    """The review of PLAN under settings, with further files."""

    def run(text: str = "", files: dict[str, str] | None = None, plan: str = PLAN) -> FileReview:
        return reviewed(plan, {**({"spotline.yaml": text} if text else {}), **(files or {})}).files[0]

    return run


Settings = Callable[[str], Team]
Plan = Callable[..., FileReview]


def said(file: FileReview, rule: str) -> list[Finding]:
    every = [one for finding in file.findings for one in (finding, *finding.follows)]
    return [finding for finding in every if finding.rule == rule]


class TestNothingSet:
    def test_the_defaults(self) -> None:
        team = Team()
        assert (team.blocking, team.broken, team.findings, team.left_out) == (BLOCKING, False, [], ())
        assert BLOCKING == ("warning", "error")
        assert team.choices.moved == {}
        assert (team.resources.together, team.resources.screened, team.resources.stations) == (0, False, {})

    def test_a_rule_that_is_off_is_not_run(self) -> None:
        assert not Team().runs(RULES["exercise-by-alias"])
        assert Team().runs(RULES[SLIP])

    @pytest.mark.parametrize("text", ["{}\n", "# nothing yet\nweekly limits: {chest: 10}\n"])
    def test_a_file_that_sets_little(self, settings: Settings, text: str) -> None:
        assert not settings(text).broken


class TestWeeklyLimits:
    def test_a_limit_moves(self, plan: Plan) -> None:
        assert said(plan(), LIMIT) == []
        (finding,) = said(plan("weekly limits: {chest: 17}\n"), LIMIT)
        assert "17 a week (your team's limit)" in finding.wanted
        assert said(plan("weekly limits: {chest: 18}\n"), LIMIT) == []

    def test_half_sets_and_other_words(self, settings: Settings) -> None:
        moved = settings("weekly limits: {quads: 12.5, chest: 0}\n").choices.moved
        assert moved == {LIMIT: {"groups": {"quads": 12.5, "chest": 0.0}}}

    def test_both_ways_of_writing_it_go_together(self, settings: Settings) -> None:
        text = f"weekly limits: {{chest: 10, lats: 11}}\nrules: {{{LIMIT}: {{groups: {{lats: 12}}}}}}\n"
        assert settings(text).choices.moved[LIMIT]["groups"] == {"chest": 10.0, "lats": 12.0}

    @pytest.mark.parametrize(
        "text",
        [
            "weekly limits:\n  chets: 10\n",
            f"rules:\n  {LIMIT}: {{groups: {{chets: 10}}}}\n",
            "folders:\n  a: {weekly limits: {chets: 10}}\n",
        ],
    )
    def test_a_group_that_is_none(self, settings: Settings, text: str) -> None:
        team = settings(text)
        (finding,) = team.findings
        assert (finding.rule, finding.severity, finding.where) == ("area-unknown", "error", "team settings")
        assert (finding.place.line, finding.place.excerpt) == (2, "chets")
        assert finding.counted == "`chets` is no muscle group that is known."
        assert finding.change.startswith("Did you mean chest")
        assert finding.edits[0].words == "chest"
        assert team.broken
        assert team.choices.moved == {}

    @pytest.mark.parametrize("value", ["many", "-1", "201", "[10]", "true", "null", "10 sets"])
    def test_a_limit_that_is_none(self, settings: Settings, value: str) -> None:
        team = settings(f"weekly limits: {{lats: 9, chest: {value}}}\n")
        assert team.broken
        assert all(finding.place.line == 1 for finding in team.findings)
        assert team.choices.moved == {}


class TestBlocking:
    @pytest.mark.parametrize(
        ("words", "blocking"),
        [
            ("[error]", ("error",)),
            ("[]", ()),
            ("[note, warning, error]", ("note", "warning", "error")),
        ],
    )
    def test_what_blocks(self, settings: Settings, words: str, blocking: tuple[str, ...]) -> None:
        assert settings(f"block commit on: {words}\n").blocking == blocking

    @pytest.mark.parametrize("words", ["[blue]", "error", "[[error]]"])
    def test_what_cannot(self, settings: Settings, words: str) -> None:
        team = settings(f"block commit on: {words}\n")
        assert (team.broken, team.blocking) == (True, BLOCKING)


class TestCounting:
    MOVED = sorted(
        rule.name for rule in RULES.values() if any(option.name == "counting" for option in rule.options)
    )

    def test_it_moves_every_rule_that_counts_weekly_sets(self, settings: Settings) -> None:
        assert LIMIT in self.MOVED
        moved = settings("counting: direct\n").choices.moved
        assert moved == {name: {"counting": ("direct",)} for name in self.MOVED}

    @pytest.mark.parametrize(("kind", "over"), [("direct", 0), ("fractional", 1), ("total", 1)])
    def test_what_a_helping_set_counts(self, plan: Plan, kind: str, over: int) -> None:
        """10 sets of bench press help the triceps: 0, 5 or 10."""
        file = plan(f"counting: {kind}\nweekly limits: {{triceps: 4.5}}\n")
        assert len(said(file, LIMIT)) == over
        file = plan(f"counting: {kind}\nweekly limits: {{triceps: 5}}\n")
        assert len(said(file, LIMIT)) == (kind == "total")

    def test_one_rule_may_count_otherwise(self, settings: Settings) -> None:
        text = f"counting: direct\nrules: {{{LIMIT}: {{counting: [total]}}}}\n"
        moved = settings(text).choices.moved
        assert moved[LIMIT]["counting"] == ("total",)
        assert all(moved[name]["counting"] == ("direct",) for name in self.MOVED if name != LIMIT)

    @pytest.mark.parametrize(
        "text",
        [
            "counting: twice\n",
            "counting: [direct]\n",
            f"rules: {{{LIMIT}: {{counting: [twice]}}}}\n",
            f"rules: {{{LIMIT}: {{counting: []}}}}\n",
            f"rules: {{{LIMIT}: {{counting: [direct, total]}}}}\n",
            f"rules: {{{LIMIT}: {{counting: direct}}}}\n",
        ],
    )
    def test_a_count_that_is_none(self, settings: Settings, text: str) -> None:
        assert settings(text).broken


class TestRules:
    @pytest.mark.parametrize(
        ("word", "severities"),
        [
            ("run", ["warning"]),
            ("warning", ["warning"]),
            ("note", ["note"]),
            ("error", ["error"]),
            ("skip", []),
            ("{severity: note}", ["note"]),
            ("{severity: skip}", []),
            ("{severity: error, most repetitions: 100}", ["error"]),
            ("{most repetitions: 101}", []),
        ],
    )
    def test_run_skipped_or_moved(self, plan: Plan, word: str, severities: list[str]) -> None:
        file = plan(f"rules: {{{SLIP}: {word}}}\n")
        assert [finding.severity for finding in said(file, SLIP)] == severities

    @pytest.mark.parametrize(
        ("word", "runs"), [("run", True), ("note", True), ("skip", False), ("{severity: warning}", True)]
    )
    def test_a_rule_that_is_off(self, settings: Settings, word: str, runs: bool) -> None:
        assert settings(f"rules: {{exercise-by-alias: {word}}}\n").runs(RULES["exercise-by-alias"]) is runs

    def test_who_sets_a_limit_of_a_rule_wants_it_run(self, settings: Settings) -> None:
        off = next(rule for rule in RULES.values() if rule.off and rule.options)
        option = off.options[0]
        team = settings(f"rules: {{{off.name}: {{{option.name}: {shown(option.default)}}}}}\n")
        assert team.runs(off)
        team = settings(
            f"rules: {{{off.name}: {{{option.name}: {shown(option.default)}, severity: skip}}}}\n"
        )
        assert not team.runs(off)

    def test_an_unknown_rule(self, settings: Settings) -> None:
        team = settings("rules:\n  units-mixd: skip\n  xyzzy: skip\n")
        first, second = team.findings
        assert (first.rule, first.severity, first.where) == ("rule-unknown", "error", "team settings")
        assert (first.place.line, first.place.excerpt) == (2, "units-mixd")
        assert first.counted == "There is no rule `units-mixd`."
        assert first.change == "Did you mean units-mixed?"
        assert [edit.words for edit in first.edits] == ["units-mixed"]
        assert (second.place.excerpt, second.change, second.edits) == (
            "xyzzy",
            "Correct it, or take it out.",
            (),
        )
        assert team.broken

    def test_an_unknown_limit(self, settings: Settings) -> None:
        team = settings(f"rules:\n  {SLIP}:\n    most set: 10\n")
        (finding,) = team.findings
        assert (finding.rule, finding.severity) == ("limit-unknown", "error")
        assert (finding.place.line, finding.place.excerpt) == (3, "most set")
        assert finding.counted == f"The rule {SLIP} has no limit `most set`."
        assert finding.change.startswith("Did you mean most sets")
        assert finding.edits[0].words == "most sets"

    @pytest.mark.parametrize(
        ("rule", "limit", "value", "wanted"),
        [
            (SLIP, "most sets", "many", "12"),
            (SLIP, "most sets", "-1", "12"),
            (SLIP, "most sets", "[10]", "12"),
            (SLIP, "most sets", "{chest: 10}", "12"),
            (LIMIT, "groups", "10", "{}"),
            (LIMIT, "groups", "[chest]", "{}"),
            (LIMIT, "groups", "{chest: many}", "{}"),
            (LIMIT, "groups", "{chest: 10, lats: -1}", "{}"),
            (LIMIT, "groups", "{chest: true}", "{}"),
            ("equipment-missing", "always there", "floor", "[floor, wall"),
            ("equipment-missing", "always there", "[[floor]]", "[floor, wall"),
            ("equipment-missing", "always there", "{floor: 1}", "[floor, wall"),
            ("equipment-missing", "always there", "3", "[floor, wall"),
        ],
    )
    def test_a_limit_that_cannot_be(
        self, settings: Settings, rule: str, limit: str, value: str, wanted: str
    ) -> None:
        team = settings(f"rules:\n  {rule}:\n    {limit}: {value}\n")
        (finding,) = team.findings
        assert (finding.rule, finding.severity, finding.where) == (
            "limit-unreadable",
            "error",
            "team settings",
        )
        assert (finding.place.line, finding.place.excerpt) == (3, value)
        assert finding.counted.startswith(f"`{limit}` of {rule} takes ")
        assert finding.wanted.startswith(f"something like {wanted}")
        assert finding.change == "Correct it, or take it out."
        assert team.broken
        assert team.choices.moved == {}

    @pytest.mark.parametrize("value", ["true", ".inf", ".nan", "{chest: .inf}", "[1, [.nan]]"])
    def test_what_no_limit_can_be_is_said_once(self, settings: Settings, value: str) -> None:
        team = settings(f"rules:\n  {SLIP}:\n    most sets: {value}\n")
        (finding,) = team.findings
        assert (finding.severity, finding.place.line, team.broken) == ("error", 3, True)

    @pytest.mark.parametrize(
        ("rule", "limit", "form"),
        [
            (SLIP, "most sets", "a number from 0 to 10000 (sets in one line)"),
            ("equipment-missing", "always there", "a list of words (pieces that nobody needs to list)"),
            (LIMIT, "groups", "names, each with a number from 0 to 10000 (sets a week, by muscle group)"),
        ],
    )
    def test_the_words_on_its_form(self, settings: Settings, rule: str, limit: str, form: str) -> None:
        (finding,) = settings(f"rules: {{{rule}: {{{limit}: plenty}}}}\n").findings
        assert finding.counted == f"`{limit}` of {rule} takes {form}."

    @pytest.mark.parametrize("value", ["0", "0.5", "100"])
    def test_numbers_from_nothing_on(self, settings: Settings, value: str) -> None:
        moved = settings(f"rules: {{{SLIP}: {{most sets: {value}}}}}\n").choices.moved
        assert moved == {SLIP: {"most sets": float(value)}}

    @pytest.mark.parametrize("word", ["on", "off", "false", "5", "[run]", "Run", "none", "{}"])
    def test_a_switch_that_is_none(self, settings: Settings, word: str) -> None:
        assert settings(f"rules: {{{SLIP}: {word}}}\n").broken

    @pytest.mark.parametrize("rule", RULES.values(), ids=list(RULES))
    def test_every_default_of_every_rule_can_be_written_down(self, settings: Settings, rule: Rule) -> None:
        for option in rule.options:
            team = settings(f"rules: {{{rule.name}: {{'{option.name}': {written(option)}}}}}\n")
            assert [finding.counted for finding in team.findings] == [], option.name
            moved = team.choices.moved[rule.name][option.name]
            assert moved == option.default


def written(option: Option) -> str:
    """A default as a settings file writes it, its words in quotes."""
    if isinstance(option.default, tuple):
        return str(list(option.default))
    if isinstance(option.default, dict):
        return str({f"{name}": number for name, number in option.default.items()})
    return repr(float(option.default))


class TestFolders:
    def under(self, reviewed: Reviewed, settings: str, name: str) -> FileReview:
        """The review of PLAN by a name in a repository with these settings."""
        from datetime import date

        from spotline.lint.project.review import review

        whole = reviewed(PLAN, {"spotline.yaml": settings, name: PLAN})
        folder = os.path.dirname(whole.files[0].name)
        return review([os.path.join(folder, name)], date(2026, 1, 5)).files[0]

    @pytest.mark.parametrize(
        ("name", "over"),
        [
            ("a/x.programme.yaml", 1),
            ("a/deep/x.programme.yaml", 1),
            ("x.programme.yaml", 0),
            ("ab/x.programme.yaml", 0),
            ("b/a/x.programme.yaml", 0),
        ],
    )
    @pytest.mark.parametrize("pattern", ["a", "a/"])
    def test_where_they_hold(self, reviewed: Reviewed, name: str, over: int, pattern: str) -> None:
        file = self.under(reviewed, f"folders: {{{pattern}: {{weekly limits: {{chest: 10}}}}}}\n", name)
        assert len(said(file, LIMIT)) == over

    def test_a_star_is_any_name(self, reviewed: Reviewed) -> None:
        text = "folders: {'squad-*/old': {weekly limits: {chest: 10}}}\n"
        assert len(said(self.under(reviewed, text, "squad-1/old/x.programme.yaml"), LIMIT)) == 1
        assert said(self.under(reviewed, text, "squad-1/new/x.programme.yaml"), LIMIT) == []

    def test_every_key(self, reviewed: Reviewed) -> None:
        text = f"""\
folders:
  a:
    weekly limits: {{chest: 17, triceps: 4}}
    counting: direct
    block commit on: [note]
    rules: {{{SLIP}: note}}
"""
        file = self.under(reviewed, text, "a/x.programme.yaml")
        assert [finding.severity for finding in said(file, SLIP)] == ["note"]
        assert [finding.subject for finding in said(file, LIMIT)] == ["chest"]
        assert file.team.blocking == ("note",)

    def test_they_go_over_the_team_key_by_key(self, settings: Settings, tmp_path: Path) -> None:
        team = settings(
            f"weekly limits: {{chest: 10, lats: 11}}\nblock commit on: [error]\n"
            f"rules: {{{SLIP}: {{severity: note, most sets: 5, most repetitions: 6}}, units-mixed: skip}}\n"
            f"folders:\n  a:\n    weekly limits: {{lats: 12}}\n    rules: {{{SLIP}: {{most sets: 7}}}}\n"
            "  a/b: {block commit on: []}\n"
        )
        within = team.within(real(str(tmp_path / "a")))
        assert within.choices.moved == {
            LIMIT: {"groups": {"chest": 10.0, "lats": 12.0}},
            SLIP: {"most sets": 7.0, "most repetitions": 6.0},
        }
        assert within.choices.severities == {SLIP: "note"}
        assert within.blocking == ("error",)
        assert not within.runs(RULES["units-mixed"])
        assert team.within(real(str(tmp_path / "a" / "b"))).blocking == ()
        assert team.choices.moved[LIMIT] == {"groups": {"chest": 10.0, "lats": 11.0}}  # itself unmoved
        assert team.within(real(str(tmp_path))) is team

    def test_the_later_counts_over_the_earlier(self, settings: Settings, tmp_path: Path) -> None:
        team = settings("folders:\n  a: {weekly limits: {chest: 1}}\n  '*': {weekly limits: {chest: 2}}\n")
        assert team.within(real(str(tmp_path / "a"))).choices.moved[LIMIT]["groups"] == {"chest": 2.0}

    @pytest.mark.parametrize(
        ("text", "rule"),
        [
            ("folders: {a: {rules: {xyzzy: skip}}}\n", "rule-unknown"),
            (f"folders: {{a: {{rules: {{{SLIP}: {{most sets: few}}}}}}}}\n", "limit-unreadable"),
            ("folders: {a: {leave out: [b]}}\n", "key-unknown"),
            ("folders: {a: {preset: 2026-11}}\n", "key-unknown"),
            ("folders: {a: 5}\n", "value-wrong-kind"),
            ("folders: [a]\n", "value-wrong-kind"),
            ("folders: {../a: {counting: direct}}\n", None),
            ("folders: {/a: {counting: direct}}\n", None),
        ],
    )
    def test_bad_input(self, settings: Settings, text: str, rule: str | None) -> None:
        team = settings(text)
        if rule is not None:
            assert [finding.rule for finding in team.findings] == [rule]
            assert team.broken


class TestRulePages:
    @pytest.mark.parametrize("address", ["https://pages.example/", "https://pages.example/team/rules/"])
    def test_an_address_is_taken_over(self, settings: Settings, address: str) -> None:
        assert settings(f"rule pages: {address}\n").rule_pages == address

    def test_there_are_none_where_nothing_is_written(self, settings: Settings) -> None:
        assert settings("preset: 2026-11\n").rule_pages == ""

    @pytest.mark.parametrize(
        ("value", "rule"),
        [
            ("https://pages.example", "value-unreadable"),
            ("https://pages.example/rules", "value-unreadable"),
            ("https:" + "///", "value-unreadable"),
            ("'https://pages.example/my rules/'", "value-unreadable"),
            ("pages/", "value-unreadable"),
            ("''", "value-missing"),
            ("5", "value-unreadable"),
            ("[https://pages.example/]", "value-wrong-kind"),
            ("", "value-missing"),
        ],
    )
    def test_bad_input(self, settings: Settings, value: str, rule: str) -> None:
        team = settings(f"rule pages: {value}\n")
        assert [finding.rule for finding in team.findings] == [rule]
        assert team.broken
        assert team.rule_pages == ""


class TestResources:
    def test_everything_that_a_team_brings(self, settings: Settings) -> None:
        around = settings(
            "equipment: {home: [dumbbell, bench]}\nstations: {rack: 2, leg press: 1}\n"
            "training together: 8\nscreening: {stated: 2026-01-02, by: head coach, note: on paper}\n"
        ).resources
        assert around.equipment == {"home": ("dumbbell", "bench")}
        assert around.stations == {"rack": 2, "leg press": 1}
        assert (around.together, around.screened) == (8, True)

    @pytest.mark.parametrize(
        "text",
        [
            "equipment: {home: dumbbell}\n",
            "equipment: [dumbbell]\n",
            "equipment: {home: a band}\n",
            "stations: {rack: two}\n",
            "stations: {rack: 0}\n",
            "stations: {rack: 1.5}\n",
            "stations: [rack]\n",
            "training together: some\n",
            "training together: 0\n",
            "screening: yes\n",
            "screening: {stated: 2026-01-02}\n",
            "screening: {by: head coach}\n",
            "screening: {stated: soon, by: head coach}\n",
            "leave out: old\n",
            "leave out: [/old]\n",
            "leave out: []\n",
            "preset: 2020-01\n",
            "preset: yes\n",
            "exercises: own.exercises.yaml\n",
            "exercises: [own.yaml]\n",
            "exercises: [gone.exercises.yaml]\n",
            "exercises: [../out.exercises.yaml]\n",
            "team rules: [{rule: team-x}]\n",
            "colour: blue\n",
        ],
    )
    def test_bad_input_leaves_nothing_half_applied(self, settings: Settings, text: str) -> None:
        team = settings(f"weekly limits: {{chest: 1}}\nblock commit on: []\nrules: {{{SLIP}: skip}}\n" + text)
        assert team.broken
        assert any(finding.severity == "error" and finding.place.line == 4 for finding in team.findings)
        assert (team.choices.moved, team.blocking, team.left_out, team.rules) == ({}, BLOCKING, (), [])
        assert team.runs(RULES[SLIP])
        assert (team.resources.equipment, team.resources.stations, team.resources.together) == ({}, {}, 0)
        assert not team.resources.screened
        assert team.exercises == {}

    def test_the_named_preset_changes_nothing_today(self, settings: Settings) -> None:
        assert settings("preset: 2026-11\n").choices.moved == {}

    @pytest.mark.parametrize(
        ("path", "out"),
        [
            ("old", True),
            ("old/a.programme.yaml", True),
            ("older", False),
            ("a/old", False),
            ("drafts/a.programme.yaml", True),
            ("drafts", False),
            ("deep/drafts/a.programme.yaml", False),
        ],
    )
    def test_what_is_left_out(self, settings: Settings, tmp_path: Path, path: str, out: bool) -> None:
        team = settings("leave out: [old/, 'drafts/*.programme.yaml']\n")
        assert team.leaves_out(real(str(tmp_path / path))) is out
        assert not settings("{}\n").leaves_out(real(str(tmp_path / path)))


class TestBroken:
    def test_a_review_says_so_and_holds_to_the_defaults(self, reviewed: Reviewed) -> None:
        whole = reviewed(PLAN, {"spotline.yaml": f"rules: {{{SLIP}: skip}}\nweekly limits: {{wings: 1}}\n"})
        assert whole.exit_code == 2
        first, second = whole.files
        assert len(said(first, SLIP)) == 1
        assert os.path.basename(second.name) == "spotline.yaml"
        assert [finding.rule for finding in second.findings] == ["area-unknown"]

    def test_all_that_is_wrong_is_said_at_once(self, settings: Settings) -> None:
        text = "weekly limits: {wings: 1}\nrules:\n  xyzzy: skip\n  units-mixed: {most: 1}\ncolour: blue\n"
        assert sorted(finding.rule for finding in settings(text).findings) == [
            "area-unknown",
            "key-unknown",
            "limit-unknown",
            "rule-unknown",
        ]

    @pytest.mark.parametrize("text", ["", "[]", "rules: [", "rules: {a: *b}\n", "just words\n", "\x00"])
    def test_no_settings_at_all(self, settings: Settings, text: str) -> None:
        team = settings(text)
        assert team.broken
        assert team.findings

    def test_a_note_breaks_nothing(self, settings: Settings) -> None:
        team = settings("weekly limits: {chest: 10}\nequipment: {home: [dumbels]}\n")
        assert [finding.severity for finding in team.findings] == ["note"]
        assert team.choices.moved == {LIMIT: {"groups": {"chest": 10.0}}}

    def test_anchors_are_ordinary_input(self, settings: Settings) -> None:
        text = "weekly limits: &few {chest: 10}\nfolders: {a: {weekly limits: {<<: *few, lats: 9}}}\n"
        team = settings(text)
        assert not team.findings
        assert team.folders[0][1].moved[LIMIT]["groups"] == {"chest": 10.0, "lats": 9.0}


@pytest.mark.parametrize("written", ["fatal", "[error]", "{a: b}", "skip it", "5"])
def test_a_severity_that_there_is_not(reviewed: Callable[..., Review], written: str) -> None:
    settings = f"rules: {{rep-range-narrow: {{severity: {written}}}}}\n"
    result = reviewed("programme: A\nsessions: []\n", {"spotline.yaml": settings})
    assert result.exit_code == 2
    (file,) = [one for one in result.files if one.kind == "team"]
    assert {one.rule for one in file.findings} <= {"severity-unknown", "value-unknown", "value-unreadable"}
