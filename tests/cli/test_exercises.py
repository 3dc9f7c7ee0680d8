"""``spotline exercises``: what a coach reads, what a script reads, and the exit codes."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.body import catalogue
from spotline.lint.body.search import search
from spotline.lint.cli.main import main
from spotline.lint.reporters.exercises_text import MOST, exercises_text

Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Run:
    """Runs the command in 80 columns: exit code, output, errors."""
    monkeypatch.setenv("COLUMNS", "80")

    def command(*words: str) -> tuple[int, str, str]:
        code = main(["exercises", *words])
        said = capsys.readouterr()
        return code, said.out, said.err

    return command


@pytest.fixture
def answer(run: Run) -> Callable[..., dict[str, Any]]:
    def ask(*words: str) -> dict[str, Any]:
        _, out, _ = run("--as", "json", *words)
        whole: dict[str, Any] = json.loads(out)
        assert list(Draft202012Validator(schemas.load("exercises-found")).iter_errors(whole)) == []
        return whole

    return ask


def flat(text: str) -> str:
    return re.sub(r"\s+", " ", text)


# For people


def test_a_list_says_what_it_counts_and_how_long_each_is(run: Run) -> None:
    code, out, err = run("hamstrings", "long")
    assert (code, err) == (0, "")
    assert re.search(r"^\d+ exercises: hamstrings \(area\); long \(length\)\.$", out, re.M)
    assert "0 shortest to 1 longest (long from 0.60 up)" in flat(out)
    assert "Numbers are for hamstrings without biceps femoris short head" in flat(out)
    assert re.search(r"^  seated leg curl +machine, seated +0\.70  8\.6 cm$", out, re.M)
    assert re.search(r"^  seated isometric leg curl +machine, seated +0\.81  held$", out, re.M)
    surely, near = out.index("Direct, surely long"), out.index("Direct, long but near a limit")
    assert surely < out.index("  stiff-leg deadlift ") < near < out.index("  deadlift ")
    for word in ("squat", "hip thrust", "lying leg curl"):
        assert word not in out


def test_a_list_ends_after_forty_and_says_how_many_more(run: Run) -> None:
    _, out, _ = run("legs")
    count = len(search("legs").found)
    assert len(re.findall(r"^  \S", out, re.M)) == MOST == 40
    assert f"{count - MOST} more are not shown" in out
    assert re.search(r"by implement: \w+ \d+, \w+ \d+", flat(out))


def test_a_list_says_what_an_exercise_leaves_out(run: Run) -> None:
    _, out, _ = run("quads machine")
    assert re.search(r"hack squat +machine, supported\n +leaves out rectus femoris\n", out)
    assert re.search(r"leg extension +machine, seated\n  \S", out)
    assert re.search(r"machine hip flexion +machine, standing\n +only rectus femoris\n", out)


def test_a_list_without_an_area_says_what_is_trained(run: Run) -> None:
    _, out, _ = run("knee flexion")
    assert "They train hamstrings directly where nothing else is said." in out
    assert "Main joint action" in out
    assert re.search(r"seated leg curl +machine, seated\n", out)
    _, out, _ = run("horizontal pull cable")
    assert re.search(r"face pull +cable, standing\n +trains upper back without lower trapezius, post", out)


def test_what_few_have_in_common_is_said_of_each(run: Run) -> None:
    _, out, _ = run("legs long machine")
    assert "where no other muscle is named" not in flat(out)
    assert re.search(r"standing calf raise +machine, standing\n +gastrocnemius 0\.72  4\.4 cm\n", out)
    _, out, _ = run("kettlebell")
    assert "where nothing else is said" not in flat(out)
    assert re.search(r"kettlebell swing +kettlebell, standing\n +trains hamstrings without", out)


def test_a_page_gives_the_reason_for_each_muscle(run: Run) -> None:
    code, out, _ = run("rdl")
    assert code == 0
    assert out.startswith("Romanian deadlift\n")
    said = flat(out)
    assert "also RDL" in said
    assert "loads hip extension; assisting: trunk extension (hip hinge)" in said
    assert "path hip 90 to 0, knee 15, ankle 0 degrees" in said
    assert (
        "direct · hamstrings without biceps femoris short head: prime mover in hip extension;"
        " shortens by 8.3 cm; works at long length (0.69 of its range)"
    ) in said
    assert "indirect · lower back without quadratus lumborum: prime mover in trunk extension" in said
    assert "none · gracilis: has a part in hip extension, not counted" in said
    assert "harder deficit Romanian deadlift" in said
    assert "see also" in said


def test_a_page_says_where_a_credit_is_set_by_hand_and_what_it_rests_on(run: Run) -> None:
    _, out, _ = run("hammer curl")
    assert "(set by hand; by the joint path alone: indirect)" in flat(out)
    _, out, _ = run("overhead cable triceps extension")
    assert "sources Maeo and others 2023" in flat(out)


def test_a_page_says_what_models_cannot_decide_and_which_trials_do(run: Run) -> None:
    _, out, _ = run("deadlift")
    assert (
        "shortens by 2.6 cm; doubtful: hip and knee pull at it both ways, and models differ by 2.5 cm"
        in flat(out)
    )
    assert "sources" not in out
    _, out, _ = run("trap bar deadlift")
    assert "(set by hand; by the joint path alone: nothing); doubtful: hip and knee" in flat(out)
    _, out, _ = run("back squat")
    assert "trials of squats saw it grow little or not at all" in flat(out)
    assert "sources Kubo and others 2019" in flat(out)
    assert "Plotkin and others 2023" in flat(out)


def test_what_models_cannot_decide_as_json(answer: Callable[..., dict[str, Any]]) -> None:
    (found,) = answer("deadlift")["exercises"]
    doubts = {one["muscle"]: one["doubt"] for one in found["muscles"]}
    assert doubts["semitendinosus"] == "hip and knee pull at it both ways, and models differ by 2.5 cm"
    assert doubts["gluteus maximus"] == ""
    (found,) = answer("hip thrust")["exercises"]
    assert [one["id"] for one in found["sources"]] == ["plotkin-2023"]


def test_every_exercise_has_a_page_within_its_columns_with_all_its_reasons() -> None:
    for exercise in catalogue.exercises():
        answer = search(exercise.name)
        lines = list(exercises_text(answer, 80, bold=False))
        assert max(map(len, lines)) <= 80, exercise.name
        page = flat("\n".join(lines))
        if len(answer.found) == 1:
            for given in exercise.profile().credits.values():
                assert flat(given.because) in page, (exercise.name, given.muscle)


@pytest.mark.parametrize(
    "words",
    [
        "",
        "hamstrings long",
        "single leg",
        "legs long",
        "triceps",
        "squat",
        "xyzzy",
        "lats long",
        "grip",
        "quads sqaut",
    ],
)
def test_no_line_is_wider_than_the_terminal(run: Run, words: str) -> None:
    _, out, _ = run(words)
    assert max(map(len, out.splitlines())) <= 80


def test_a_misspelt_word_is_said(run: Run) -> None:
    code, out, _ = run("leg", "cuurl")
    assert code == 0
    assert out.startswith("“leg cuurl” is read as “leg curl”.\nlying leg curl\n")


@pytest.mark.parametrize(
    ("words", "meant"),
    [("squat", "back squat"), ("press", "overhead press"), ("DB neutral press", "neutral-grip")],
)
def test_a_list_says_first_what_the_words_name_on_a_line(run: Run, words: str, meant: str) -> None:
    _, out, _ = run(*words.split())
    assert out.splitlines()[0].startswith(f"As the name of an exercise “{words}” is {meant}")


@pytest.mark.parametrize("words", ["hamstrings", "back squat", "hamstrings long"])
def test_what_is_no_name_or_one_exercise_alone_is_not_said_so(run: Run, words: str) -> None:
    _, out, _ = run(*words.split())
    assert "As the name of" not in out


def test_without_a_word_the_catalogue_is_counted(run: Run) -> None:
    code, out, _ = run()
    every = catalogue.exercises()
    assert code == 0
    assert out.startswith(f"{len(every)} exercises\n")
    for implement in {one.implement for one in every} - {"none"}:
        assert f"{implement} {sum(one.implement == implement for one in every)}" in flat(out)
    hamstrings = set(catalogue.groups["hamstrings"])
    assert f"hamstrings {sum(bool(hamstrings & set(one.direct)) for one in every)}" in flat(out)


def test_one_exercise_in_full_can_be_asked_for_as_it_is_offered(run: Run) -> None:
    _, out, _ = run("forearms kettlebell carry")
    (offered,) = re.findall(r"^One of them in full: spotline exercises (.+)$", out, re.M)
    assert "'" not in offered
    code, page, _ = run(*offered.split())
    assert code == 0
    assert "\n  done with" in page


def test_bold_only_where_it_is_asked_for() -> None:
    assert any("\x1b[1m" in line for line in exercises_text(search("rdl"), 80, bold=True))
    assert not any("\x1b" in line for line in exercises_text(search("rdl"), 80, bold=False))


# Exit codes and odd words


def test_nothing_found(run: Run) -> None:
    code, out, _ = run("xyzzy")
    assert code == 1
    assert "“xyzzy” means nothing here." in out
    assert "No exercise found." in out
    code, out, _ = run("flurb")
    assert code == 1
    assert "“flurb” means nothing here. Nearest: flutter kick." in out
    code, out, _ = run("hamstrings", "pistol")
    assert code == 1
    assert "No exercise fits: hamstrings (area); “pistol” in the name." in out
    assert re.search(r"^Without “pistol”: \d+ exercises\.$", out, re.M)
    code, out, _ = run("lats", "long")
    assert code == 1
    assert "At what length lats work is not known" in out


@pytest.mark.parametrize(
    "words", [("--as", "cards", "rdl"), ("--colour", "rdl"), ("--as",), ("quads " * 30,)]
)
def test_wrong_use(run: Run, words: tuple[str, ...]) -> None:
    code, out, err = run(*words)
    assert (code, out) == (2, "")
    assert err.startswith("spotline: ")
    assert "spotline exercises [--as text|json]" in err


def test_words_after_two_hyphens_are_words(run: Run) -> None:
    code, out, _ = run("--", "rdl")
    assert code == 0
    assert out.startswith("Romanian deadlift\n")


def test_control_characters_are_spelled_out(run: Run) -> None:
    for form in ("text", "json"):
        _, out, _ = run("--as", form, "zz\x1b[31mzz\u202ezz", "rdl\x07qqq")
        assert not {"\x1b", "\x07", "\u202e"} & set(out)


# For scripts


def test_json_holds_every_exercise_that_fits(answer: Callable[..., dict[str, Any]]) -> None:
    whole = answer("hamstrngs", "long")
    assert whole["count"] == len(whole["exercises"]) == len(search("hamstrings long").found) > MOST
    assert whole["understood"][0] == {
        "words": "hamstrngs",
        "read as": "hamstrings",
        "meanings": [{"kind": "area", "name": "hamstrings"}],
    }
    names = {one["name"] for one in whole["exercises"]}
    assert {"Romanian deadlift", "seated leg curl"} <= names
    assert not any(re.search(r"squat|hip thrust|lying", name) for name in names)
    (curl,) = [one for one in whole["exercises"] if one["name"] == "seated leg curl"]
    assert (curl["role"], curl["length asked for is sure"]) == ("direct", True)
    (long_head,) = [one for one in curl["muscles"] if one["muscle"] == "biceps femoris long head"]
    assert long_head["length"] == "long"
    assert long_head["length change"] == pytest.approx(-8.7, abs=0.25)
    assert long_head["place"] == pytest.approx(0.70, abs=0.02)


@pytest.mark.parametrize(
    "words", ["rdl", "xyzzy", "lats long", "calf standing", "hamstrings pistol", "hammer curl", "plank", ""]
)
def test_json_fits_its_schema(answer: Callable[..., dict[str, Any]], words: str) -> None:
    whole = answer(words)
    assert whole["asked"] == words
    assert whole["count"] == len(whole["exercises"])


def test_json_of_one_exercise(answer: Callable[..., dict[str, Any]]) -> None:
    whole = answer("hammer", "curl")
    (curl,) = whole["exercises"]
    assert curl["asked for by name"] is True
    (given,) = [one for one in curl["muscles"] if one["muscle"] == "brachioradialis"]
    assert (given["credit"], given["set by hand"], given["by the path alone"]) == ("direct", True, "indirect")
    assert "cross-body hammer curl" in whole["see also"]


def test_the_schema_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["schema", "exercises-found"]) == 0
    assert json.loads(capsys.readouterr().out) == schemas.load("exercises-found")
