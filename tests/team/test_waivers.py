"""Waivers: written as a comment or in the file's list, what they cover, and what is wrong with them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import FileReview, Review

Reviewed = Callable[..., Review]

RULE = "number-implausible"
DAY = date(2026, 1, 5)

TEXT = """\
programme: Test{top}
{list}focus: [chest]
sessions:
  - session: A{session}
    exercises:{exercises}
      - {{exercise: bench press, sets: 20, reps: 5}}{line}
      - {{exercise: dip, sets: 21, reps: 5}}
  - session: B
    exercises: [{{exercise: bench press, sets: 22, reps: 5}}]
"""
"""Three warnings that can be waived, on lines 5, 6 and 8: 20, 21 and 22 sets."""

BECAUSE = f"  # spotline: waive {RULE} because it is a test"


def text(**parts: str) -> str:
    words = dict.fromkeys(("top", "list", "session", "exercises", "line"), "")
    return TEXT.format(**{**words, **parts})


@pytest.fixture
def one(reviewed: Reviewed) -> Callable[..., FileReview]:
    def run(words: str, files: dict[str, str] | None = None, on: date = DAY) -> FileReview:
        (file,) = reviewed(words, files, on=on).files
        return file

    return run


One = Callable[..., FileReview]


def left(file: FileReview) -> list[str]:
    return [finding.place.excerpt for finding in file.findings if finding.rule == RULE]


def waived(file: FileReview) -> list[str]:
    return [held.finding.place.excerpt for held in file.waived]


def about(file: FileReview) -> list[Finding]:
    return [finding for finding in file.findings if finding.where == "waiver"]


def test_without_a_waiver(one: One) -> None:
    file = one(text())
    assert (left(file), waived(file), about(file)) == (["20", "21", "22"], [], [])


class TestComments:
    @pytest.mark.parametrize(
        ("parts", "kept_back"),
        [
            ({"line": BECAUSE}, ["20"]),
            ({"exercises": f"\n      {BECAUSE}"}, ["20"]),  # alone: for the line below
            ({"exercises": f"\n{BECAUSE}\n\n  # another comment\n"}, ["20"]),
            ({"session": BECAUSE}, ["20", "21"]),  # a session begins there
            ({"exercises": BECAUSE}, []),  # a list is no item
            ({"top": BECAUSE}, ["20", "21", "22"]),  # the whole file begins there
        ],
    )
    def test_what_it_covers(self, one: One, parts: dict[str, str], kept_back: list[str]) -> None:
        file = one(text(**parts))
        assert waived(file) == kept_back
        assert left(file) == [sets for sets in ("20", "21", "22") if sets not in kept_back]
        assert [finding.rule for finding in about(file)] == ([] if kept_back else ["waiver-unused"])

    def test_what_is_kept_of_it(self, one: One) -> None:
        (held,) = one(
            text(line=f"  # spotline: waive {RULE} until 2026-03-01 because of a test day  ")
        ).waived
        waiver = held.waiver
        assert (waiver.rule, waiver.reason, waiver.until, waiver.who, waiver.used) == (
            RULE,
            "of a test day",
            date(2026, 3, 1),
            "",
            True,
        )
        assert waiver.place.excerpt == f"# spotline: waive {RULE} until 2026-03-01 because of a test day"

    @pytest.mark.parametrize(
        ("comment", "rule"),
        [
            (f"# spotline: waive {RULE} because x", ""),
            (f"#spotline:waive {RULE} because x", ""),
            (f"#\tspotline:   waive   {RULE}   because   of many blanks  ", ""),
            (f"# spotline: waive {RULE} until 2026-01-05 because x", ""),
            (f"# spotline: waive {RULE} because until 2026-01-01 is a reason too", ""),
            (f"# spotline: waive {RULE} because: x", "waiver-unreadable"),
            (f"# spotline: waive {RULE}", "waiver-without-reason"),
            (f"# spotline: waive {RULE} because", "waiver-without-reason"),
            (f"# spotline: waive {RULE} because   ", "waiver-without-reason"),
            (f"# spotline: waive {RULE} until 2026-03-01", "waiver-without-reason"),
            (f"# spotline: waive {RULE} because REASON", "waiver-without-reason"),
            (f"# spotline: waive {RULE} until 2026-03-01 because REASON", "waiver-without-reason"),
            (f"# spotline: waive {RULE} because REASON is a word", ""),
            (f"# spotline: waive {RULE} until March because x", "waiver-unreadable"),
            (f"# spotline: waive {RULE} until 2026-02-30 because x", "waiver-unreadable"),
            (f"# spotline: waive {RULE} until 20260301 because x", "waiver-unreadable"),
            (f"# spotline: waive {RULE} until because x", "waiver-unreadable"),
            (f"# spotline: waive {RULE}, units-mixed because x", "waiver-unreadable"),
            (f"# spotline: Waive {RULE} because x", "waiver-unreadable"),
            ("# spotline: waive", "waiver-unreadable"),
            ("# spotline: hello", "waiver-unreadable"),
            ("# spotline:", "waiver-unreadable"),
            ("# spotline: waive number-implausibel because x", "waiver-rule-unknown"),
            ("# spotline: waive key-unknown because x", "waiver-rule-unknown"),  # reading cannot be waived
        ],
    )
    def test_forms(self, one: One, comment: str, rule: str) -> None:
        file = one(text(line=f"  {comment}"))
        assert waived(file) == ([] if rule else ["20"])
        assert [(finding.rule, finding.place.excerpt) for finding in about(file)] == (
            [(rule, comment.rstrip())] if rule else []
        )

    @pytest.mark.parametrize(
        "comment",
        [
            "# a note on spotline: it is not asked here",
            "# spotline waive number-implausible because x",
            "# see spotline: waive number-implausible because x",
            "# SPOTLINE: waive number-implausible because x",
        ],
    )
    def test_other_comments_are_none(self, one: One, comment: str) -> None:
        file = one(text(line=f"  {comment}"))
        assert (waived(file), about(file)) == ([], [])

    @pytest.mark.parametrize(
        "value",
        [
            f'note: "# spotline: waive {RULE} because x"\n',
            f"note: '# spotline: waive {RULE} because x'\n",
            f"note: |\n  # spotline: waive {RULE} because x\n",
            f"note: >-\n  one\n  # spotline: waive {RULE} because x\n  two\n",
            f'note: a # b\n"# spotline: waive {RULE}": x\n',
            f"note: a#spotline: waive {RULE} because x\n",
        ],
    )
    def test_a_mark_inside_a_value_is_text(self, one: One, value: str) -> None:
        file = one(text(list=value))
        assert (waived(file), about(file)) == ([], [])

    def test_a_comment_after_a_value_with_a_mark(self, one: One) -> None:
        line = f'note: "# spotline: waive x because y"  # spotline: waive {RULE} because x\n'
        file = one(text(list=line))
        assert [finding.rule for finding in about(file)] == ["waiver-unused"]

    @pytest.mark.parametrize("break_", ["\n", "\r\n", "\r"])
    def test_line_breaks(self, one: One, break_: str) -> None:
        file = one(text(exercises=f"\n{BECAUSE}\n\n").replace("\n", break_))
        assert waived(file) == ["20"]

    def test_at_the_end_of_the_file(self, one: One) -> None:
        file = one(text() + BECAUSE.strip())
        assert [finding.rule for finding in about(file)] == ["waiver-unused"]

    def test_just_the_rule_that_is_named(self, one: One) -> None:
        words = text(line=BECAUSE).replace("sets: 20, reps: 5", "sets: 20, reps: 5, rir: 2, rpe: 10")
        file = one(words)
        assert waived(file) == ["20"]
        assert "rir-rpe-contradict" in [finding.rule for finding in file.findings]

    def test_all_findings_of_the_rule_in_the_item(self, one: One) -> None:
        file = one(text(line=BECAUSE).replace("sets: 20, reps: 5", "sets: 20, reps: 500"))
        assert waived(file) == ["20", "500"]

    def test_two_waivers_of_one_rule_are_both_used(self, one: One) -> None:
        file = one(text(session=BECAUSE, line=BECAUSE))
        assert (waived(file), about(file)) == (["20", "21"], [])

    def test_a_file_that_cannot_be_read(self, one: One) -> None:
        file = one(f"programme: [{BECAUSE}\n")
        assert about(file) == []
        assert file.findings


class TestAliases:
    SHARED = """\
programme: Test
focus: [chest]
shared: {{press: &press {{exercise: bench press, sets: 20, reps: 5}}}}{shared}
sessions:
  - session: A
    exercises:
      - *press{first}
  - session: B
    exercises:
      - *press{second}
"""

    def shared(self, **parts: str) -> str:
        return self.SHARED.format(**{**dict.fromkeys(("shared", "first", "second"), ""), **parts})

    def test_where_the_words_stand(self, one: One) -> None:
        file = one(self.shared(shared=BECAUSE))
        assert (left(file), waived(file), about(file)) == ([], ["20"], [])

    def test_where_they_are_used(self, one: One) -> None:
        assert left(one(self.shared())) == ["20"]
        file = one(self.shared(first=BECAUSE))
        assert (left(file), waived(file), about(file)) == ([], ["20"], [])

    def test_another_use_is_another_place(self, one: One) -> None:
        other = self.shared(first=BECAUSE).replace("bench press, sets: 20", "bench press, sets: 2")
        assert [finding.rule for finding in about(one(other))] == ["waiver-unused"]


class TestList:
    def held(self, *entries: str) -> str:
        return text(list="waivers:\n" + "".join(f"  - {{{entry}}}\n" for entry in entries))

    @pytest.mark.parametrize(
        ("place", "kept_back"),
        [
            ("", ["20", "21", "22"]),
            ("place: A", ["20", "21"]),
            ("place: a", ["20", "21"]),
            ('place: "A, bench press"', ["20"]),
            ('place: " A ,Bench Press"', ["20"]),
            ('place: "A, bench press, sets"', ["20"]),
            ("place: B", ["22"]),
            ("place: bench press", []),  # begins with the session
            ('place: "A, bench"', []),
            ("place: C", []),
        ],
    )
    def test_what_it_covers(self, one: One, place: str, kept_back: list[str]) -> None:
        entry = f"rule: {RULE}, reason: a test" + (f", {place}" if place else "")
        file = one(self.held(entry))
        assert waived(file) == kept_back
        assert [(finding.rule, finding.severity) for finding in about(file)] == (
            [] if kept_back else [("waiver-unused", "note")]
        )

    def test_what_is_kept_of_it(self, one: One) -> None:
        file = one(self.held(f"rule: {RULE}, reason: a test, who: head coach, until: 2026-03-01, place: B"))
        waiver = file.waived[0].waiver
        assert (waiver.rule, waiver.reason, waiver.who, waiver.until) == (
            RULE,
            "a test",
            "head coach",
            date(2026, 3, 1),
        )
        assert (waiver.place.line, waiver.place.excerpt) == (3, RULE)

    @pytest.mark.parametrize(
        ("entry", "rules"),
        [
            (f"rule: {RULE}", ["key-missing"]),
            ("reason: a test", ["key-missing"]),
            (f"rule: {RULE}, reason: [a]", ["value-wrong-kind"]),
            (f"rule: {RULE}, reason: a, until: soon", ["value-unreadable"]),
            (f"rule: {RULE}, reason: a, until: 2026-02-30", ["date-impossible"]),
            (f"rule: {RULE}, reason: a, until: '2026-02-30'", ["date-impossible"]),
            (f"rule: {RULE}, reason: a, until: []", None),
            (f"rule: {RULE}, reason: a, untill: 2026-03-01", None),
        ],
    )
    def test_bad_forms_waive_nothing_that_they_leave_open(
        self, one: One, entry: str, rules: list[str] | None
    ) -> None:
        file = one(self.held(entry))
        said = [finding.rule for finding in file.findings if finding.severity == "error"]
        assert said
        if rules is not None:
            assert said == rules
            assert left(file) == ["20", "21", "22"]

    def test_a_day_that_is_in_no_calendar_is_pointed_at(self, one: One) -> None:
        (finding,) = about(one(self.held(f"rule: {RULE}, reason: a, until: 2026-02-30")))
        assert (finding.severity, finding.place.excerpt) == ("error", "2026-02-30")
        assert finding.counted == "2026-02-30 is not in the calendar, so this waiver waives nothing."
        assert finding.change == "Write the date as year-month-day, a day that the month has."

    @pytest.mark.parametrize("listed", ["waivers: none\n", "waivers: [none]\n", "waivers: {rule: a}\n"])
    def test_a_list_that_is_none(self, one: One, listed: str) -> None:
        file = one(text(list=listed))
        assert left(file) == ["20", "21", "22"]
        assert "error" in [finding.severity for finding in file.findings]


class TestEnd:
    @pytest.mark.parametrize(("on", "holds"), [(date(2026, 3, 1), True), (date(2026, 3, 2), False)])
    @pytest.mark.parametrize("way", ["comment", "list"])
    def test_the_last_day_still_holds(self, one: One, on: date, holds: bool, way: str) -> None:
        if way == "comment":
            words = text(line=f"  # spotline: waive {RULE} until 2026-03-01 because x")
        else:
            words = text(
                list=f'waivers: [{{rule: {RULE}, reason: x, until: 2026-03-01, place: "A, bench press"}}]\n'
            )
        file = one(words, on=on)
        assert waived(file) == (["20"] if holds else [])
        assert [finding.rule for finding in about(file)] == ([] if holds else ["waiver-expired"])

    def test_the_words(self, one: One) -> None:
        (finding,) = about(one(text(line=f"  # spotline: waive {RULE} until 2026-01-04 because x")))
        assert (finding.severity, finding.place.line) == ("warning", 6)
        assert finding.counted == f"This waiver of {RULE} ended on 2026-01-04."
        assert finding.change == ("Decide again: give it a new date, or take it out and mend what it waived.")


class TestWords:
    def test_of_a_rule_that_is_none(self, one: One) -> None:
        (finding,) = about(one(text(line="  # spotline: waive number-implausibel because x")))
        assert finding.severity == "error"
        assert finding.counted == "There is no rule `number-implausibel`."
        assert finding.change == "Did you mean number-implausible?"
        (finding,) = about(one(text(line="  # spotline: waive xyzzy because x")))
        assert finding.change == "Write the rule's name as the finding gives it."

    def test_of_a_waiver_without_a_reason(self, one: One) -> None:
        (finding,) = about(one(text(line=f"  # spotline: waive {RULE}")))
        assert (finding.severity, finding.counted) == ("error", "This waiver gives no reason.")
        assert finding.change == (
            "Write it like: # spotline: waive RULE until 2026-03-01 because REASON (the date may be left out)."
        )

    def test_of_a_waiver_that_cannot_be_read(self, one: One) -> None:
        (finding,) = about(one(text(line="  # spotline: hush")))
        assert (finding.severity, finding.counted) == ("error", "This waiver cannot be read.")

    def test_of_a_waiver_for_nothing(self, one: One) -> None:
        (finding,) = about(one(text(line="  # spotline: waive units-mixed because x")))
        assert (finding.severity, finding.rule) == ("note", "waiver-unused")
        assert finding.counted == (
            "This waiver of units-mixed waives nothing: nothing of it is found in this file any more."
        )
        assert finding.change == "Take it out."


def test_a_waiver_in_an_athletes_file(reviewed: Reviewed) -> None:
    from spotline.lint.project.review import review

    whole = reviewed(
        text(list="athlete: ida.athlete.yaml\n"),
        {
            "ida.athlete.yaml": "name: Ida  # spotline: waive screening-missing because on paper\nlevel: novice\nage: 45\n"
        },
    )
    folder = whole.files[0].name.rpartition("/")[0]
    file = next(one for one in review([f"{folder}/ida.athlete.yaml"], DAY).files if one.kind == "athlete")
    assert [held.finding.rule for held in file.waived] == ["screening-missing"]
    assert "screening-missing" not in [finding.rule for finding in file.findings]


def test_a_rule_of_the_teams_own_can_be_waived(one: One) -> None:
    files = {
        "spotline.yaml": "team rules: [{rule: team-chest, weekly sets of: chest, at most: 10, message: Less.}]\n"
        "rules: {number-implausible: skip}\n"
    }
    assert "team-chest" in [finding.rule for finding in one(text(), files).findings]
    file = one(text(list="waivers: [{rule: team-chest, reason: a test}]\n"), files)
    assert [held.finding.rule for held in file.waived] == ["team-chest"]


def test_what_is_waived_does_not_block(reviewed: Reviewed) -> None:
    quiet = {"spotline.yaml": "block commit on: [warning]\n"}
    assert reviewed(text(), quiet).exit_code == 1
    whole = reviewed(text(list=f"waivers: [{{rule: {RULE}, reason: a test}}]\n"), quiet)
    others = [one for one in whole.files[0].findings if one.severity == "warning"]
    assert (whole.exit_code, whole.suppressed()) == (int(bool(others)), (3, 0))
