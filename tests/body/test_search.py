"""The search for exercises: how words are read, what fits, and the numbers behind a length."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.body import catalogue, search, search_words
from spotline.lint.body.search import Answer, Match


def found(words: str) -> list[str]:
    return [match.exercise.name for match in search.search(words).found]


def meanings(words: str) -> list[tuple[tuple[str, str], ...]]:
    return [one.meanings for one in search.search(words).readings]


def match(words: str, name: str) -> Match:
    (one,) = [one for one in search.search(words).found if one.exercise.name == name]
    return one


def exact(answer: Answer) -> list[str]:
    return [one.exercise.name for one in answer.found if one.exact]


# How words are read


def test_the_longest_phrase_comes_first() -> None:
    assert meanings("triceps long head") == [(("area", "triceps long head"),)]
    assert meanings("triceps long") == [(("area", "triceps"),), (("length", "long"),)]
    assert meanings("leg press") == [(("name", "leg press"),)]
    assert meanings("leg curl cable")[0] == (("name", "leg curl"),)
    assert meanings("hip extension hip") == [(("joint action", "hip extension"),), (("area", "hips"),)]


def test_words_that_say_enough_stay_apart() -> None:
    kinds = [[kind for kind, _ in one] for one in meanings("cable row seated")]
    assert kinds == [["implement", "name"], ["name"], ["stance", "name"]]


@pytest.mark.parametrize("words", ["quads", "Quadriceps", "QUAD", "knee-extensors", "front of the thigh"])
def test_an_area_by_any_of_its_words(words: str) -> None:
    assert meanings(words) == [(("area", "quadriceps"),)]


@pytest.mark.parametrize(
    "words", ["push-up", "push up", "pushup", "Push-Ups", "the push–up", "exercises: push up"]
)
def test_a_name_without_regard_to_case_hyphens_blanks_and_plural(words: str) -> None:
    assert exact(search.search(words)) == ["push-up"]


@pytest.mark.parametrize(
    ("words", "read_as"),
    [
        ("hamstrngs", "hamstrings"),
        ("hamstirngs", "hamstrings"),
        ("quadricpes", "quadriceps"),
        ("dumbell", "dumbbell"),
        ("kettelbell", "kettlebell"),
        ("sqaut", "squat"),
        ("plantarflexoin", "plantarflexion"),
        ("leg cuurl", "leg curl"),
        ("romanain deadlfit", "romanian deadlift"),
    ],
)
def test_a_misspelt_word_is_read_as_the_nearest(words: str, read_as: str) -> None:
    (one,) = search.search(words).readings
    assert (one.words, one.read_as) == (words, read_as)
    assert found(words) == found(read_as)


def test_what_coaches_write_means_something_of_the_catalogue() -> None:
    """Every other word names what is there, and none hides a term of the catalogue's own."""
    every = catalogue.exercises()
    there = {
        "area": set(catalogue.area_names()),
        "joint action": set(catalogue.actions()),
        "pattern": {pattern for one in every for pattern in one.patterns},
        "length": {"long", "middle", "short"},
        "sides": {search_words.ONE_SIDE, search_words.BOTH_SIDES},
        **{
            field: {getattr(one, field) for one in every}
            for field in ("implement", "kind", "stance", "level")
        },
    }
    for words, said in search_words.OTHER_WORDS.items():
        assert all(name in there[kind] for kind, name in said), words
        assert catalogue.area(words) is None, words
        assert meanings(words)[0][: len(said)] == said, words


def test_an_area_of_two_heads_is_either_of_them() -> None:
    long_head, short_head = found("biceps femoris long head"), found("biceps femoris short head")
    assert set(found("biceps femoris")) == {*long_head, *short_head}


def test_words_rightly_spelt_are_read_as_they_are() -> None:
    assert [one.read_as for one in search.search("hamstrings long DB").readings] == ["", "", ""]


def test_a_word_that_means_nothing_is_told_with_the_nearest_and_the_rest_is_answered() -> None:
    answer = search.search("calves flurb")
    ((word, near),) = answer.unknown
    assert word == "flurb"
    assert near == ("flutter kick",)
    assert [one.exercise.name for one in answer.found] == found("calves")


@pytest.mark.parametrize(
    ("asked", "name"),
    [
        ("Front squat (heels up), paused", "front squat"),
        ("BB row w/ straps", "bent-over row"),
        ("Pallof press, tall kneeling, band", "half-kneeling anti-rotation press"),
    ],
)
def test_a_name_as_a_coach_writes_it_is_the_exercise_that_a_review_reads(asked: str, name: str) -> None:
    answer = search.search(asked)
    assert exact(answer) == [name]
    assert not answer.unknown


@pytest.mark.parametrize("words", ["rower", "rowor"])
def test_a_short_word_is_not_taken_for_one_that_begins_otherwise(words: str) -> None:
    assert not any(one.read_as == "lower" for one in search.search(words).readings)


def test_nonsense_finds_nothing() -> None:
    answer = search.search("xyzzy qwop")
    assert [word for word, _ in answer.unknown] == ["xyzzy", "qwop"]
    assert not answer.readings
    assert not answer.found
    assert not answer.everything


@pytest.mark.parametrize("words", ["", "   ", "all exercises", ","])
def test_without_a_word_it_is_the_whole_catalogue(words: str) -> None:
    answer = search.search(words)
    assert answer.everything
    assert [one.exercise for one in answer.found] == catalogue.exercises()


def test_too_many_words_are_refused() -> None:
    assert found("quads " * search_words.MOST_WORDS)
    with pytest.raises(ValueError, match="25 words are too many"):
        search.search("quads " * (search_words.MOST_WORDS + 1))


@settings(max_examples=60, deadline=None)
@given(
    st.lists(
        st.one_of(
            st.sampled_from(
                ["hamstrings", "long", "short", "cable", "row", "leg", "curl", "grip", "lat", "pull"]
            ),
            st.text(max_size=9),
        ),
        max_size=6,
    )
)
def test_any_words_have_an_answer(words: list[str]) -> None:
    answer = search.search(" ".join(words))
    assert answer.everything or answer.readings or answer.unknown
    assert len({one.exercise.name for one in answer.found}) == len(answer.found)
    assert not (answer.found and answer.without)


# One exercise


def test_every_name_and_alias_finds_its_exercise_first() -> None:
    tried = 0
    for exercise in catalogue.exercises()[::6]:
        for name in (exercise.name, *exercise.aliases):
            answer = search.search(name)
            assert answer.found[0].exercise is exercise, name
            assert answer.found[0].exact, name
            tried += 1
    assert tried > 500


def test_a_name_or_an_alias_with_no_other_meaning_is_one_exercise() -> None:
    answer = search.search("rdl")
    assert exact(answer) == found("rdl") == ["Romanian deadlift"]
    assert "single-leg Romanian deadlift" in answer.others
    assert found("hip thrust") == ["hip thrust"]


def test_an_alias_that_is_a_term_of_the_trade_is_a_search() -> None:
    answer = search.search("knee flexion")
    assert exact(answer) == ["lying leg curl"]
    assert answer.found[0].exact
    assert len(answer.found) > 20


# What fits


def test_an_area_and_an_implement() -> None:
    machines = set(found("quads machine"))
    assert {"leg extension", "leg press", "hack squat"} <= machines
    for name in machines:
        exercise = catalogue.exercise(name)
        assert exercise is not None
        assert exercise.implement == "machine"
        assert any(exercise.weight(muscle) for muscle in catalogue.groups["quadriceps"])


def test_a_pattern_and_an_implement() -> None:
    rows = found("horizontal pull cable")
    assert "seated cable row" in rows
    assert "lat pulldown" not in rows
    assert "barbell row" not in rows


def test_a_joint_action_main_before_assisting() -> None:
    answer = search.search("knee flexion")
    roles = [one.role for one in answer.found]
    assert roles == sorted(roles, key=["main", "assisting"].index)
    assert {"seated leg curl", "Nordic curl", "glute-ham raise"} <= set(found("knee flexion"))
    assert not {"Romanian deadlift", "back squat", "leg extension"} & set(found("knee flexion"))


def test_an_area_and_a_stance() -> None:
    calves = search.search("calf standing").found
    assert "standing calf raise" in [one.exercise.name for one in calves if one.role == "direct"]
    assert "seated calf raise" not in found("calf standing")


def test_direct_stands_before_indirect_then_the_more_common_and_names_in_order() -> None:
    answer = search.search("triceps")
    order = [
        (one.role != "direct", catalogue.rarity(one.exercise), one.exercise.name.lower())
        for one in answer.found
    ]
    assert order == sorted(order)
    assert {one.role for one in answer.found} == {"direct", "indirect"}


def test_two_areas_are_both_wanted_and_two_implements_are_either() -> None:
    both = set(found("hamstrings gluteals"))
    assert both == set(found("hamstrings")) & set(found("gluteals"))
    assert set(found("calves dumbbell barbell")) == set(found("calves dumbbell")) | set(
        found("calves barbell")
    )


def test_level_kind_and_sides() -> None:
    for one in search.search("novice isometric one side").found:
        assert one.exercise.level == "novice"
        assert one.exercise.kind == "isometric"
        assert one.exercise.unilateral
    assert "side plank" in found("novice isometric one side") + found("isometric obliques")
    assert found("beginner calves") == found("calves novice")


def test_an_implement_may_also_stand_in_the_name() -> None:
    assert "rope pushdown" in found("rope triceps")
    assert "lying leg curl" in found("hamstrings lying")


def test_where_nothing_fits_it_says_what_to_leave_out() -> None:
    answer = search.search("hamstrings pistol")
    assert answer.found == ()
    pistols = [one for one in catalogue.exercises() if "pistol" in " ".join((one.name, *one.aliases))]
    assert dict(answer.without) == {"hamstrings": len(pistols), "pistol": len(found("hamstrings"))}


def test_a_length_that_is_not_known_is_said() -> None:
    assert search.search("lats long").unmeasured == ("lats",)
    assert search.search("lats pistol").unmeasured == ()


# Length


def test_hamstrings_long_are_hinges_and_seated_curls() -> None:
    """Which lifts: lengths after rajagopal-2016; that seated and lying curls differ: maeo-2021."""
    names = set(found("hamstrings long"))
    assert {
        "Romanian deadlift",
        "stiff-leg deadlift",
        "good morning",
        "back extension",
        "seated leg curl",
        "single-leg seated leg curl",
    } <= names
    assert (
        not {"back squat", "front squat", "hip thrust", "glute bridge", "lying leg curl", "Nordic curl"}
        & names
    )
    for name in names:
        exercise = catalogue.exercise(name)
        assert exercise is not None
        assert not {"squat", "lunge", "hip thrust"} & set(exercise.patterns), name
        if "knee flexion" in exercise.actions:
            assert max(exercise.path["hip"]) >= 45, f"{name} bends the knee with the hip straight"


def test_a_further_word_narrows_a_length() -> None:
    names = found("hamstrings long dumbbell")
    assert "dumbbell Romanian deadlift" in names
    assert "Romanian deadlift" not in names
    assert set(names) < set(found("hamstrings long"))


def test_a_sure_length_stands_before_one_near_a_limit() -> None:
    order = [(one.role != "direct", not one.sure) for one in search.search("hamstrings long").found]
    assert order == sorted(order)
    assert match("hamstrings long", "stiff-leg deadlift").sure
    assert not match("hamstrings long", "deadlift").sure


@pytest.mark.parametrize(
    ("words", "name", "net", "place"),
    [
        ("hamstrings long", "Romanian deadlift", -8.3, 0.68),
        ("hamstrings long", "back extension", -8.0, 0.73),
        ("hamstrings long", "seated leg curl", -8.7, 0.70),
        ("hamstrings short", "lying leg curl", -8.6, 0.36),
        ("hamstrings short", "Nordic curl", -7.5, 0.34),
        ("calves long", "standing calf raise", -4.4, 0.72),
        ("calves middle", "seated calf raise", -4.4, 0.48),
    ],
)
def test_the_numbers_behind_a_length(words: str, name: str, net: float, place: float) -> None:
    """Computed from the published model of rajagopal-2016 itself, not from our polynomials."""
    for one in match(words, name).worked():
        assert one.net == pytest.approx(net, abs=max(0.25, 0.05 * -net))
        assert one.place == pytest.approx(place, abs=0.03)


def test_every_match_of_a_length_works_at_it() -> None:
    for words, length in (("triceps long", "long"), ("quads short", "short"), ("biceps middle", "middle")):
        matches = search.search(words).found
        assert matches
        for one in matches:
            assert one.muscles
            assert {worked.length for worked in one.worked()} == {length}
            assert {worked.credit for worked in one.worked()} <= {"direct", "indirect"}
            assert one.sure == any(worked.sure for worked in one.worked())


def test_a_muscle_over_two_joints_tells_the_length_of_its_group() -> None:
    """maeo-2021: the two-joint heads grew more seated than lying, the short head of biceps femoris alike."""
    curl = catalogue.exercise("dumbbell leg curl")
    assert curl is not None
    assert curl.lengths["biceps femoris short head"] == "long"
    assert search.telling(curl, catalogue.groups["hamstrings"]) == [
        "biceps femoris long head",
        "semitendinosus",
        "semimembranosus",
    ]
    assert curl.name not in found("hamstrings long")
    assert curl.name in found("biceps femoris short head long")


def test_overhead_work_is_triceps_long_and_work_at_the_side_is_not() -> None:
    """maeo-2023: the long head is longer, and grew more, overhead than with the arm at the side."""
    names = found("triceps long")
    assert "overhead cable triceps extension" in names
    assert "cable pushdown" not in names


def test_what_is_set_by_hand_is_known() -> None:
    curl = catalogue.exercise("hammer curl")
    assert curl is not None
    assert search.by_hand(curl, "brachioradialis")
    assert not search.by_hand(curl, "brachialis")
