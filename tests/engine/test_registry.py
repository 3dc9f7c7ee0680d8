"""The registry: how rules are declared, limited, run and merged; and what every rule must say of itself."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any

import pytest

from spotline import rules as families
from spotline.lint.body import catalogue
from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.set_group import SetGroup
from spotline.lint.counting.tally import Visit
from spotline.lint.counting.week import Week
from spotline.lint.engine import registry
from spotline.lint.engine.hits import findings_of
from spotline.lint.engine.limits import Condition, Limits, Option, Situation
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.run import Fault
from spotline.lint.engine.run import run as run_rules
from spotline.lint.findings.finding import SEVERITIES, DraftFinding, Finding, found
from spotline.lint.reporters.rules_text import HABITS
from spotline.lint.reporters.sentences import counted

if TYPE_CHECKING:
    from spotline.lint.findings.finding import Severity

Build = Callable[..., Ledger]

RULES = all_rules()
NAMED = pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])


def run(
    rules: list[Rule], ledger: Ledger, moved: dict[str, dict[str, Any]]
) -> tuple[list[Finding], list[Fault]]:
    """The findings on a programme of one athlete, and the rules that raised."""
    hits, faults = run_rules(rules, ledger, moved)
    return findings_of(hits, 1), faults


def a_rule(
    check: Callable[..., Iterator[DraftFinding]],
    *,
    name: str = "a-rule",
    severity: Severity = "warning",
    options: tuple[Option, ...] = (),
    stands_back: tuple[str, ...] = (),
) -> Rule:
    return Rule(name, "upkeep", severity, "model", "Because.", ("zourdos-2016",), options, stands_back, check)


def on_weeks(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    yield found(week.programme.place, "A week.")


def on_visits(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    yield found(visit.session.place, f"Day {visit.day}.", subject=f"{visit.session.name} {visit.day}")


def on_entries(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    yield found(entry.prescription.place, f"{entry.sets} sets.", excess=entry.sets.high)


def on_programme(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    yield found(ledger.programme.place, f"{len(ledger.weeks)} weeks.")


@pytest.fixture
def four_weeks(programme: Build, week: Callable[..., str]) -> Ledger:
    """Weeks 1-2 and 4 hold 3 sets on Monday and Thursday, week 3 holds 5; a plank each time."""
    return programme(
        "programme: Test\nweeks: 4\nsessions:\n  - session: Gym\n    day: [monday, thursday]\n    exercises:\n"
        "      - {exercise: leg press, sets: {1-2: 3, 3: 5, 4: 3}}\n      - {exercise: plank, sets: 2}\n"
    )


@pytest.fixture
def one_week(programme: Build, week: Callable[..., str]) -> Ledger:
    return programme(week({"monday": ["leg press, sets: 3"]}))


class TestDeclaring:
    def test_two_rules_of_one_name_are_refused(self) -> None:
        known = len(all_rules())
        with pytest.raises(ValueError, match="two rules are called exercise-unknown"):
            registry.rule(
                "exercise-unknown", family="upkeep", severity="note", confidence="fact", why="", sources=()
            )(on_weeks)
        assert len(all_rules()) == known

    def test_what_takes_out_what_it_finds_has_the_same_limits_everywhere(self) -> None:
        known = len(all_rules())
        by_goal = Option("most", 3, "sets", "common practice", by=(({"goal": "power"}, 4),))
        with pytest.raises(ValueError, match="its limits hold in every situation"):
            registry.rule(
                "sets-odd",
                family="upkeep",
                severity="note",
                confidence="fact",
                why="",
                sources=(),
                options=(by_goal,),
                takes_out=True,
            )(on_entries)
        assert len(all_rules()) == known

    @pytest.mark.parametrize(
        ("check", "scope"),
        [
            (on_programme, "programme"),
            (on_weeks, "week"),
            (on_visits, "session"),
            (on_entries, "prescription"),
        ],
    )
    def test_the_scope_is_read_off_the_first_parameter(
        self, check: Callable[..., Iterator[DraftFinding]], scope: str
    ) -> None:
        assert a_rule(check).scope == scope

    def test_a_rule_on_something_else_is_refused(self) -> None:
        def on_nothing(number: int, limits: Limits) -> Iterator[DraftFinding]:
            yield from ()

        with pytest.raises(KeyError):
            a_rule(on_nothing)


class TestFindings:
    def test_the_finding_gets_what_is_the_rules_own(self, one_week: Ledger) -> None:
        (finding,), faults = run([a_rule(on_weeks)], one_week, {})
        assert not faults
        assert (finding.rule, finding.why, finding.sources, finding.confidence) == (
            "a-rule",
            "Because.",
            ("zourdos-2016",),
            "model",
        )

    @pytest.mark.parametrize("said", SEVERITIES)
    @pytest.mark.parametrize("declared", SEVERITIES)
    def test_a_finding_may_be_milder_than_its_rule_but_never_graver(
        self, one_week: Ledger, said: Severity, declared: Severity
    ) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, "x", severity=said)

        (finding,), _ = run([a_rule(check, severity=declared)], one_week, {})
        assert SEVERITIES.index(finding.severity) == min(SEVERITIES.index(said), SEVERITIES.index(declared))

    def test_a_reason_of_its_own_is_kept(self, one_week: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, "x", why="Since this one.")

        (finding,), _ = run([a_rule(check)], one_week, {})
        assert finding.why == "Since this one."


class TestLimits:
    OPTIONS = (
        Option("most", 3, "sets", "common practice"),
        Option("exempt", ("calves",), "muscle groups", "common practice"),
        Option("groups", {"chest": 9.0}, "sets", "the team's own"),
    )

    def test_defaults(self) -> None:
        limits = Limits(self.OPTIONS, {})
        assert (limits.number("most"), limits.names("exempt"), limits.table("groups")) == (
            3,
            ("calves",),
            {"chest": 9.0},
        )

    def test_a_limit_that_is_one_name(self) -> None:
        assert Limits(self.OPTIONS, {"exempt": ("shins", "calves")}).name("exempt") == "shins"

    def test_moved(self) -> None:
        limits = Limits(self.OPTIONS, {"most": 5, "groups": {"lats": 2.0}, "no such": 1})
        assert (limits.number("most"), limits.table("groups"), limits.names("exempt")) == (
            5,
            {"lats": 2.0},
            ("calves",),
        )

    @pytest.mark.parametrize(
        ("read", "name"), [("names", "most"), ("names", "groups"), ("table", "most"), ("table", "exempt")]
    )
    def test_a_limit_is_read_as_what_it_is(self, read: str, name: str) -> None:
        with pytest.raises(AssertionError):
            getattr(Limits(self.OPTIONS, {}), read)(name)

    @pytest.mark.parametrize("name", ["least", "exempt", "groups", ("groups", "lats")])
    def test_a_limit_that_is_no_number(self, name: str | tuple[str, str]) -> None:
        with pytest.raises(KeyError):
            Limits(self.OPTIONS, {}).number(name)

    def test_a_number_of_a_table(self) -> None:
        assert Limits(self.OPTIONS, {}).number(("groups", "chest")) == 9.0

    @pytest.mark.parametrize(
        ("moved", "preset", "words"),
        [
            ({}, {}, "at most 90 s and 2 min"),
            ({"longest": 45}, {}, "at most 45 s and 2 min (your team's limit: 45 s)"),
            ({"longest": 90}, {}, "at most 90 s and 2 min (your team's limit: 90 s)"),  # no default any more
            ({"longest": 45, "rest": 100}, {}, "at most 45 s and 100 s (your team's limits)"),
            ({}, {"rest": 180}, "at most 90 s and 3 min (your preset's limit: 3 min)"),
            ({}, {"rest": 180, "longest": 60}, "at most 60 s and 3 min (your preset's limits)"),
            ({"rest": 150}, {"rest": 180}, "at most 90 s and 2.5 min (your team's limit: 2.5 min)"),
            (
                {"longest": 45},
                {"rest": 180},
                "at most 45 s and 3 min (your team's limit: 45 s; your preset's limit: 3 min)",
            ),
        ],
    )
    def test_words(self, moved: dict[str, float], preset: dict[str, float], words: str) -> None:
        options = (
            Option("longest", 60, "seconds", "", by=(({"goal": "power"}, 90),)),
            Option("rest", 120, "seconds", ""),
        )
        limits = Limits(options, moved, Situation("power"), preset)
        said = limits.words("at most {:s} and {:duration}", "longest", "rest")
        assert said == words

    def test_words_of_a_table(self) -> None:
        step, text = ("groups", "chest"), "{:set} a week"
        assert Limits(self.OPTIONS, {}).words(text, step) == "9 sets a week"
        moved = Limits(self.OPTIONS, {"groups": {"chest": 1.0}})
        assert moved.words(text, step) == "1 set a week (your team's limit)"

    @pytest.mark.parametrize(
        ("moved", "words"),
        [
            ({}, "at most 12 kg"),
            ({"most": 4}, "at most 12 kg (your team's limit: 4 a set)"),
            ({"most": 4, "groups": {"chest": 3}}, "at most 12 kg (your team's limits: 4 a set and 3 kg)"),
        ],
    )
    def test_words_for_what_is_worked_out(self, moved: dict[str, Any], words: str) -> None:
        limits = Limits(self.OPTIONS, moved)
        said = limits.worked_out("at most 12 kg", ("{} a set", "most"), ("{:kg}", ("groups", "chest")))
        assert said == words

    def test_a_limit_that_is_set_is_no_default(self) -> None:
        limits = Limits(self.OPTIONS, {"most": 3}, preset={"exempt": ()})
        assert [limits.is_default(option.name) for option in self.OPTIONS] == [False, False, True]

    def test_an_option_that_another_rule_does_not_say(self) -> None:
        option = Option("most", 3, "sets", "common practice", by=(({"goal": "power"}, 4),))
        alike = Condition.like(option)
        assert [getattr(alike, name) for name in Option.__slots__] == [
            getattr(option, name) for name in Option.__slots__
        ]

    @pytest.mark.parametrize(
        ("moved", "flagged"), [({}, False), ({"a-rule": {"most": 2}}, True), ({"other": {"most": 2}}, False)]
    )
    def test_limits_reach_the_rule(
        self, one_week: Ledger, moved: dict[str, dict[str, Any]], flagged: bool
    ) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            if week.all_sets().high > limits.number("most"):
                yield found(week.programme.place, "x")

        findings, faults = run([a_rule(check, options=self.OPTIONS)], one_week, moved)
        assert (bool(findings), faults) == (flagged, [])


class TestTargets:
    def test_a_programme_once(self, four_weeks: Ledger) -> None:
        (finding,), _ = run([a_rule(on_programme)], four_weeks, {})
        assert (finding.counted, finding.weeks) == ("4 weeks.", ())

    def test_like_weeks_once(self, programme: Build, week: Callable[..., str], four_weeks: Ledger) -> None:
        seen = []

        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            seen.append(week.all_sets().high)
            yield from ()

        run([a_rule(check)], programme(week({"monday": ["leg press, sets: 3"]}, "weeks: 9")), {})
        assert seen == [3]
        seen.clear()
        run([a_rule(check)], four_weeks, {})
        assert set(seen) == {10, 14}  # 2 x (3 + 2), 2 x (5 + 2)
        assert seen.count(14) == 1

    def test_sessions_by_day(self, four_weeks: Ledger) -> None:
        findings, _ = run([a_rule(on_visits)], four_weeks, {})
        assert [(finding.subject, finding.weeks) for finding in findings] == [
            ("Gym 1", (1, 2, 3, 4)),
            ("Gym 4", (1, 2, 3, 4)),
        ]

    def test_lines_with_the_weeks_they_hold_for(self, four_weeks: Ledger) -> None:
        press, plank = run([a_rule(on_entries)], four_weeks, {})[0]
        assert (press.counted, press.weeks) == ("5 sets.", (1, 2, 3, 4))
        assert (plank.counted, plank.weeks) == ("2 sets.", (1, 2, 3, 4))

    def test_a_programme_of_one_week_speaks_of_no_weeks(self, one_week: Ledger) -> None:
        (finding,), _ = run([a_rule(on_weeks)], one_week, {})
        assert finding.weeks == ()


class TestMerging:
    def test_weeks_of_one_subject_are_drawn_together(self, four_weeks: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, f"{week.all_sets()} sets.", excess=week.all_sets().high)

        (finding,), _ = run([a_rule(check)], four_weeks, {})
        assert finding.weeks == (1, 2, 3, 4)
        assert finding.counted == "14 sets."  # the words of the worst week: 2 x (5 + 2)

    def test_the_weeks_that_the_words_hold_for_are_told_apart(self, four_weeks: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, f"{week.all_sets()} sets.", excess=week.all_sets().high)

        (finding,), _ = run([a_rule(check)], four_weeks, {})
        assert (finding.weeks, finding.told, finding.is_worst) == ((1, 2, 3, 4), (3,), True)
        assert counted(finding) == "Weeks 1-4, worst in week 3: 14 sets."

    def test_words_that_hold_for_all_weeks_tell_none_apart(self, four_weeks: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, "Always.", excess=week.all_sets().high)

        (finding,), _ = run([a_rule(check)], four_weeks, {})
        assert (finding.weeks, finding.told) == ((1, 2, 3, 4), ())

    def test_the_graver_finding_gives_the_words(self, four_weeks: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            grave = week.number == 3
            yield found(
                week.programme.place,
                "grave" if grave else "mild",
                severity="warning" if grave else "note",
                excess=0 if grave else 9,
            )

        (finding,), _ = run([a_rule(check)], four_weeks, {})
        assert (finding.counted, finding.severity, finding.weeks) == ("grave", "warning", (1, 2, 3, 4))

    def test_other_subjects_stay_apart(self, four_weeks: Ledger) -> None:
        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.programme.place, "a", subject="a")
            yield found(week.programme.place, "b", subject="b")

        findings, _ = run([a_rule(check)], four_weeks, {})
        assert [(finding.subject, finding.weeks) for finding in findings] == [
            ("a", (1, 2, 3, 4)),
            ("b", (1, 2, 3, 4)),
        ]

    def test_without_a_subject_the_place_tells_apart(self, four_weeks: Ledger) -> None:
        assert len(run([a_rule(on_entries)], four_weeks, {})[0]) == 2

    def test_one_subject_in_two_blocks_is_one_finding(self, programme: Build) -> None:
        session = "sessions: [{session: Gym, exercises: [{exercise: leg press, sets: 3}]}]"
        ledger = programme(
            f"programme: Test\nblocks: [{{name: a, weeks: 1, {session}}}, {{name: b, weeks: 2, {session}}}]\n"
        )

        def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            yield found(week.block.place, week.block.name, subject="legs")

        (finding,), _ = run([a_rule(check)], ledger, {})
        assert (finding.counted, finding.weeks) == ("b", (1, 2, 3))
        assert counted(finding) == "Weeks 1-3, in weeks 2-3: b"

    def test_two_rules_are_never_merged(self, one_week: Ledger) -> None:
        findings, _ = run([a_rule(on_weeks), a_rule(on_weeks, name="b-rule")], one_week, {})
        assert [finding.rule for finding in findings] == ["a-rule", "b-rule"]


class TestFaults:
    def test_a_rule_that_raises_is_a_fault_and_the_others_go_on(self, four_weeks: Ledger) -> None:
        def broken(week: Week, limits: Limits) -> Iterator[DraftFinding]:
            raise ZeroDivisionError("division by zero")
            yield  # a generator, as rules are

        findings, faults = run([a_rule(broken, name="broken"), a_rule(on_weeks)], four_weeks, {})
        assert [(fault.rule, fault.words) for fault in faults] == [
            ("broken", "ZeroDivisionError: division by zero")
        ]
        assert [finding.rule for finding in findings] == ["a-rule"]

    def test_what_it_said_before_is_kept(self, one_week: Ledger) -> None:
        def half(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
            yield found(ledger.programme.place, "before")
            raise KeyError("gone")

        findings, faults = run([a_rule(half)], one_week, {})
        assert [finding.counted for finding in findings] == ["before"]
        assert len(faults) == 1


class TestStandingBack:
    HEAD = "starts: 2026-01-05\nweeks: 4\nrehabilitation: {{stage: heel drops, advised by: physiotherapist, until: {until}}}"

    @pytest.mark.parametrize(
        ("until", "weeks"), [("2026-01-04", (1, 2, 3, 4)), ("2026-01-18", (3, 4)), ("2026-12-31", ())]
    )
    @pytest.mark.parametrize("check", [on_weeks, on_entries])
    def test_weeks_under_rehabilitation_are_left_alone(
        self,
        programme: Build,
        week: Callable[..., str],
        until: str,
        weeks: tuple[int, ...],
        check: Callable[..., Iterator[DraftFinding]],
    ) -> None:
        ledger = programme(week({"monday": ["leg press, sets: 3"]}, self.HEAD.format(until=until)))
        findings, _ = run([a_rule(check, stands_back=("rehabilitation",))], ledger, {})
        assert [finding.weeks for finding in findings] == ([weeks] if weeks else [])

    @pytest.mark.parametrize("until", ["2026-01-18", "2026-12-31"])
    def test_other_rules_do_not_stand_back(
        self, programme: Build, week: Callable[..., str], until: str
    ) -> None:
        ledger = programme(week({"monday": ["leg press, sets: 3"]}, self.HEAD.format(until=until)))
        (finding,), _ = run([a_rule(on_weeks)], ledger, {})
        assert finding.weeks == (1, 2, 3, 4)

    @pytest.mark.parametrize(("until", "said"), [("2026-01-18", True), ("2026-12-31", False)])
    def test_a_rule_on_the_programme_stands_back_only_if_all_weeks_do(
        self, programme: Build, week: Callable[..., str], until: str, said: bool
    ) -> None:
        ledger = programme(week({"monday": ["leg press, sets: 3"]}, self.HEAD.format(until=until)))
        assert bool(run([a_rule(on_programme, stands_back=("rehabilitation",))], ledger, {})[0]) is said


class TestEveryRule:
    def test_names_are_unique_and_in_the_order_of_families(self) -> None:
        names = [rule.name for rule in RULES]
        assert len(set(names)) == len(names) > 0
        order = [families.FAMILIES.index(rule.family) for rule in RULES]
        assert order == sorted(order)

    def test_every_family_has_a_rule(self) -> None:
        assert {rule.family for rule in RULES} == set(families.FAMILIES)

    @NAMED
    def test_its_name_is_words_with_hyphens(self, rule: Rule) -> None:
        assert re.fullmatch(r"[a-z]+(?:-[a-z]+)+", rule.name)
        assert rule.check.__name__ == rule.name.replace("-", "_")
        assert rule.check.__module__.removeprefix("spotline.rules.") in families.MODULES

    @NAMED
    def test_its_page_says_what_it_flags_and_passes(self, rule: Rule) -> None:
        assert rule.page.strip()
        first = rule.page.strip().splitlines()[0]
        assert first.endswith(".")
        assert rule.page.count("    Flags:\n") == 1
        assert rule.page.count("    Passes:\n") == 1
        assert rule.page.index("Flags:") < rule.page.index("Passes:")

    @NAMED
    def test_it_says_why_in_a_sentence_or_more(self, rule: Rule) -> None:
        assert rule.why.strip() == rule.why
        assert rule.why.endswith(".")
        assert 20 < len(rule.why) < 400
        assert "!" not in rule.why

    @NAMED
    def test_its_severity_is_one(self, rule: Rule) -> None:
        assert rule.severity in SEVERITIES

    @NAMED
    def test_its_sources_are_in_the_catalogue(self, rule: Rule) -> None:
        assert len(set(rule.sources)) == len(rule.sources)
        for name in rule.sources:
            assert catalogue.source(name).reference

    @NAMED
    def test_its_options_have_a_unit_and_a_ground(self, rule: Rule) -> None:
        names = [option.name for option in rule.options]
        assert len(set(names)) == len(names)
        for option in rule.options:
            assert option.unit
            assert option.ground

    @NAMED
    def test_a_ground_is_one_source_or_a_habit_or_words(self, rule: Rule) -> None:
        """An id stands alone, so that the page can spell it out; what words name is among the sources."""
        ids = set(catalogue.source_ids())
        works = " ".join(catalogue.source(name).short for name in rule.sources)
        for option in rule.options:
            if option.ground in ids:
                assert option.ground in rule.sources
            elif option.ground not in HABITS:
                assert " " in option.ground
                assert ids.isdisjoint(re.findall(r"[\w-]+", option.ground))
                assert all(
                    work in works for work in re.findall(r"[A-Z][\w-]+ and others \d{4}", option.ground)
                )

    @NAMED
    def test_it_claims_no_better_ground_than_it_cites(self, rule: Rule) -> None:
        """The kind that it names must be cited; what rests on habit may cite others for background."""
        kinds = {catalogue.source(name).kind for name in rule.sources}
        if rule.confidence not in ("fact", "convention", "common practice"):
            assert rule.confidence in kinds

    @NAMED
    def test_convention_alone_is_at_most_a_note(self, rule: Rule) -> None:
        if rule.confidence == "convention":
            assert rule.severity == "note"

    @NAMED
    def test_an_error_rests_on_more_than_memory_and_habit(self, rule: Rule) -> None:
        if rule.severity == "error":
            sound = [
                name
                for name in rule.sources
                if catalogue.source(name).grade != "M"
                and catalogue.source(name).kind not in ("convention", "common practice")
            ]
            assert sound or rule.confidence == "fact"
