"""Forms for machines: SARIF, JUnit XML, annotations, code quality. Published schemas stand in tests/system."""

from __future__ import annotations

import json
import os
import re
from collections.abc import Callable
from datetime import date
from pathlib import Path
from xml.etree import ElementTree

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.engine.run import Fault
from spotline.lint.mending.record import record_known
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.reporters.annotations import commands
from spotline.lint.reporters.code_quality import code_quality
from spotline.lint.reporters.identities import fingerprints
from spotline.lint.reporters.junit import junit
from spotline.lint.reporters.sarif import FINGERPRINT, sarif
from spotline.tests.reporters.builders import finding, place, reviewed

TODAY = date(2026, 12, 1)

FAULTY = """\
programme: Faulty
focus: [legs]
weeks: 2
sessions:
  - session: Lower
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, rir: 2, rpe: 10}
      - {exercise: back sqat, sets: 3, reps: 8-5}
"""

WAIVED = FAULTY.replace(
    "rpe: 10}", "rpe: 10}  # spotline: waive rir-rpe-contradict until 2027-01-01 because we test it"
)

MEANT = "reps: 5-8"
"""In the place of what cannot be meant, which no record holds."""

Write = Callable[[str], None]


@pytest.fixture
def write(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Write:
    """Writes the one programme of a repository, in whose folder ``plans`` the command is called."""
    (tmp_path / ".git").mkdir()
    (tmp_path / "plans").mkdir()
    monkeypatch.chdir(tmp_path / "plans")

    def put(text: str) -> None:
        (tmp_path / "plans" / "a b.programme.yaml").write_text(text, encoding="utf-8")

    return put


def reviewed_here() -> Review:
    return review(["."], TODAY)


def run_of(result: Review) -> dict:
    (run,) = json.loads(sarif(result))["runs"]
    return run


def suites(result: Review) -> list[ElementTree.Element]:
    return list(ElementTree.fromstring("\n".join(junit(result))))


class TestSarif:
    def test_places_start_at_the_root_of_the_repository(self, write: Write) -> None:
        write(FAULTY)
        run = run_of(reviewed_here())
        uris = {
            location["physicalLocation"]["artifactLocation"]["uri"]
            for result in run["results"]
            for location in result["locations"]
        }
        assert uris == {"plans/a%20b.programme.yaml"}
        assert "uri" not in run["originalUriBaseIds"]["ROOT"], "the path of no machine is told"
        regions = {
            result["ruleId"]: result["locations"][0]["physicalLocation"]["region"]
            for result in run["results"]
        }
        assert regions["exercise-unknown"] == {
            "startLine": 8,
            "startColumn": 20,
            "endLine": 8,
            "endColumn": 29,
        }

    def test_a_fix_gives_the_text_that_the_edit_gives(self, write: Write) -> None:
        write(FAULTY)
        (result,) = [one for one in run_of(reviewed_here())["results"] if one["ruleId"] == "range-backwards"]
        (change,) = result["fixes"][0]["artifactChanges"]
        (replacement,) = change["replacements"]
        region = replacement["deletedRegion"]
        line = FAULTY.splitlines()[region["startLine"] - 1]
        start, end = region["startColumn"] - 1, region["endColumn"] - 1
        assert line[start:end] == "8-5"
        assert replacement["insertedContent"] == {"text": "5-8"}

    def test_a_waived_finding_is_suppressed_with_its_reason(self, write: Write) -> None:
        write(WAIVED)
        results = run_of(reviewed_here())["results"]
        (waived,) = [one for one in results if "suppressions" in one]
        assert waived["ruleId"] == "rir-rpe-contradict"
        (suppression,) = waived["suppressions"]
        assert (suppression["kind"], suppression["status"]) == ("inSource", "accepted")
        assert suppression["justification"] == "we test it, until 2027-01-01"
        assert suppression["location"]["physicalLocation"]["region"]["startLine"] == 7

    def test_what_is_on_record_is_suppressed_from_outside(self, write: Write) -> None:
        write(FAULTY.replace("reps: 8-5", MEANT))
        record_known(["."], TODAY)
        results = run_of(reviewed_here())["results"]
        assert results
        assert {one["suppressions"][0]["kind"] for one in results} == {"external"}

    def test_results_name_their_rules_by_number(self, write: Write) -> None:
        write(FAULTY)
        run = run_of(reviewed_here())
        rules = run["tool"]["driver"]["rules"]
        assert all(rules[one["ruleIndex"]]["id"] == one["ruleId"] for one in run["results"])
        assert len({rule["id"] for rule in rules}) == len(rules)
        assert all(rule["shortDescription"]["text"] for rule in rules)

    def test_lines_that_were_counted_are_related_places(self, root: Path) -> None:
        run = run_of(review([str(root / "examples" / "faulty" / "unbalanced.programme.yaml")], TODAY))
        (result,) = [one for one in run["results"] if one["ruleId"] == "knee-flexion-missing"]
        related = result["relatedLocations"]
        assert [one["id"] for one in related] == list(range(len(related)))
        follows, counted, *_ = (one["message"]["text"] for one in related)
        assert follows == "hip-hinge-missing, too: 12 sets of leg work, no hip hinge."
        assert counted.startswith("Chest and legs, leg extension, Monday: 4 sets")

    def test_a_rule_that_failed_is_a_notification(self) -> None:
        run = run_of(Review([reviewed(faults=(Fault("our-rule", "ValueError: \x1b"),))]))
        (invocation,) = run["invocations"]
        assert (invocation["executionSuccessful"], invocation["exitCode"]) == (False, 2)
        (notification,) = invocation["toolExecutionNotifications"]
        assert notification["message"]["text"] == "The rule our-rule failed: ValueError: \\u001b"

    def test_every_letter_is_plain(self) -> None:
        text = sarif(Review([reviewed(finding("größe \u202e \x1b \udcf6"))]))
        assert text.isascii()
        assert "u001b" in text
        assert "\x1b" not in text


class TestFingerprints:
    def prints(self) -> dict[str, str]:
        files = reviewed_here().files
        return {one.rule: value for file in files for one, value in fingerprints(file).items()}

    @pytest.mark.parametrize(
        "after",
        [
            FAULTY.replace("weeks: 2", "# a line more\n\nweeks: 2"),
            FAULTY.replace("programme: Faulty", "programme: Called otherwise"),
            FAULTY.replace("sets: 3, reps: 5", "sets: 4, reps: 6"),
            WAIVED,
        ],
        ids=["lines moved", "another name", "other numbers", "waived"],
    )
    def test_they_outlast_edits_elsewhere(self, write: Write, after: str) -> None:
        write(FAULTY)
        before = self.prints()
        write(after)
        now = self.prints()
        for rule in ("rir-rpe-contradict", "exercise-unknown", "range-backwards"):
            assert before[rule] == now[rule]

    def test_no_two_are_alike(self, write: Write) -> None:
        line = "      - {exercise: back sqat, sets: 3, reps: 8-5}\n"
        write(FAULTY + line * 3)
        result = reviewed_here()
        (file,) = result.files
        found = fingerprints(file)
        assert len(found) == len(set(found.values())) > 6
        assert all(re.fullmatch("[0-9a-f]{32}", one) for one in found.values())
        said = [one["partialFingerprints"][FINGERPRINT] for one in run_of(result)["results"]]
        assert sorted(said) == sorted(found.values())


class TestJunit:
    def test_what_blocks_fails_and_what_does_not_passes(self, write: Write) -> None:
        write(FAULTY)
        result = reviewed_here()
        (suite,) = suites(result)
        failed = {case.get("name") for case in suite if case.find("failure") is not None}
        told = {case.get("name") for case in suite if case.find("system-out") is not None}
        assert "rir-rpe-contradict: Lower, back squat" in failed
        assert (
            len(failed) == result.count("error") + result.count("warning") == int(suite.get("failures", ""))
        )
        assert len(told) == result.count("note")
        assert len(suite) == int(suite.get("tests", ""))

    def test_the_team_says_what_blocks(self, write: Write) -> None:
        Path("../spotline.yaml").write_text("block commit on: [error]\n", encoding="utf-8")
        write(FAULTY)
        result = reviewed_here()
        assert int(suites(result)[0].get("failures", "")) == result.count("error")

    def test_a_clean_file_is_one_case_that_passes(self) -> None:
        (suite,) = suites(Review([reviewed()]))
        (case,) = suite
        assert (case.get("name"), list(case)) == ("review", [])

    def test_what_is_waived_is_skipped_with_its_reason(self, write: Write) -> None:
        write(WAIVED)
        (suite,) = suites(reviewed_here())
        (skipped,) = [case for case in suite if case.find("skipped") is not None]
        assert skipped.find("skipped").get("message") == "waived: we test it"  # type: ignore[union-attr]
        assert suite.get("skipped") == "1"

    def test_names_of_cases_are_told_apart(self) -> None:
        (suite,) = suites(Review([reviewed(finding(), finding())]))
        assert len({case.get("name") for case in suite}) == 2

    def test_hostile_words_stay_words(self) -> None:
        hostile = ']]> <b a="\'">& \x00\x0b\x1b \u202e \ud800 größe \ufffe'
        text = "\n".join(
            junit(Review([reviewed(finding(hostile, where=hostile), faults=(Fault("a", hostile),))]))
        )
        (suite,) = ElementTree.fromstring(text)
        assert '<b a="\'">& \\u0000' in suite[0].get("name", "")
        assert suite.get("errors") == "1"

    def test_a_file_that_cannot_be_opened_is_an_error(self, write: Write) -> None:
        (suite,) = suites(review(["gone.programme.yaml"], TODAY))
        assert suite.get("errors") == "1"


class TestAnnotations:
    def one(self, **values: object) -> str:
        (line,) = commands(Review([reviewed(finding(**values))]))  # type: ignore[arg-type]
        return line

    @pytest.mark.parametrize(
        ("severity", "command"), [("error", "error"), ("warning", "warning"), ("note", "notice")]
    )
    def test_the_form(self, severity: str, command: str) -> None:
        line = self.one(severity=severity, wanted="", change="")
        assert line == (
            f"::{command} file=a.programme.yaml,line=4,endLine=4,col=46,endColumn=47,"
            "title=number-implausible::30 sets in one line."
        )

    @pytest.mark.parametrize(
        ("words", "shown"),
        [
            ("50 % more", "50 %25 more"),
            ("a\n::error::b", "a\\u000a::error::b"),
            ("a\r\n##[error]b", "a\\u000d\\u000a##[error]b"),
            ("\x1b[31m", "\\u001b[31m"),
            ("\u2028::stop-commands::x", "\\u2028::stop-commands::x"),
        ],
    )
    def test_words_of_a_file_begin_no_command(self, words: str, shown: str) -> None:
        line = self.one(counted=words, wanted="", change="")
        assert line.endswith(f"title=number-implausible::{shown}")
        assert len(line.splitlines()) == 1

    def test_a_name_of_a_file_ends_no_property(self) -> None:
        line = self.one(name="a,line=9::b%.programme.yaml")
        assert line.startswith("::warning file=a%2Cline=9%3A%3Ab%25.programme.yaml,line=4,")

    def test_columns_are_told_within_one_line_only(self) -> None:
        whole = place(words="programme").text
        line = self.one(at=whole.place(0, 20))
        assert ",line=1,endLine=2,title=" in line

    def test_a_rule_that_failed(self) -> None:
        (line,) = commands(Review([reviewed(faults=(Fault("ours", "a: b"),))]))
        assert line == "::error file=a.programme.yaml,line=1,title=rule-failed::ours failed: a: b"


class TestCodeQuality:
    def test_it_fits_its_schema(self, write: Write) -> None:
        write(FAULTY)
        result = reviewed_here()
        issues = json.loads(code_quality(result))
        Draft202012Validator(schemas.load("code-quality")).validate(issues)
        assert len(issues) == sum(result.count(one) for one in ("error", "warning", "note"))
        assert {one["location"]["path"] for one in issues} == {"plans/a b.programme.yaml"}
        assert {one["severity"] for one in issues} == {"critical", "major", "info"}
        assert len({one["fingerprint"] for one in issues}) == len(issues)

    def test_faults_and_an_empty_review_fit_it_too(self) -> None:
        validator = Draft202012Validator(schemas.load("code-quality"))
        for result in (Review([]), Review([reviewed(faults=(Fault("ours", "a"), Fault("more", "b")))])):
            validator.validate(json.loads(code_quality(result)))

    def test_what_is_waived_or_on_record_is_left_out(self, write: Write) -> None:
        write(WAIVED.replace("reps: 8-5", MEANT))
        assert "rir-rpe-contradict" not in code_quality(reviewed_here())
        record_known(["."], TODAY)
        assert json.loads(code_quality(reviewed_here())) == []


def test_a_file_whose_name_is_not_unicode_has_an_address(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / os.fsdecode(b"gr\xf6.programme.yaml")).write_text(FAULTY, encoding="utf-8")
    run = run_of(review(["."], TODAY))
    assert run["artifacts"][0]["location"]["uri"] == "gr%F6.programme.yaml"
