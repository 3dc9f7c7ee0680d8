"""The exercises that match words still being typed."""

from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.known import CATALOGUE
from spotline.lint.editor.caret.exercise_prefixes import EXACT, matching_exercises


def test_the_name_itself_fits_best() -> None:
    for exercise in catalogue.exercises()[::25]:
        first = matching_exercises(exercise.name, CATALOGUE)[0]
        assert (first.exercise, first.rank) == (exercise, EXACT)


def test_every_beginning_of_a_name_finds_it() -> None:
    for exercise in catalogue.exercises()[::60]:
        for end in range(2, len(exercise.name) + 1):
            typed = exercise.name[:end]
            assert exercise in {match.exercise for match in matching_exercises(typed, CATALOGUE)}, typed


@pytest.mark.parametrize("area", ["hamstrings", "quadriceps", "chest", "lats", "calves", "soleus"])
def test_a_muscle_finds_all_that_trains_it(area: str) -> None:
    muscles = set(catalogue.area(area))
    found = {match.exercise for match in matching_exercises(area, CATALOGUE)}
    assert {one for one in catalogue.exercises() if muscles & {*one.direct, *one.indirect}} <= found


def test_a_joint_action_finds_those_of_which_it_is_the_main_one_first() -> None:
    found = [match.exercise for match in matching_exercises("plantarflexion", CATALOGUE)]
    main = ["plantarflexion" in one.actions for one in found]
    assert main == sorted(main, reverse=True)
    assert set(found) == {
        one for one in catalogue.exercises() if "plantarflexion" in (*one.actions, *one.assists)
    }
