"""What `spotline exercises` found as JSON, to its own schema (``spotline schema exercises-found``)."""

from __future__ import annotations

import json

from ..body import catalogue, search
from ..version import VERSION

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.catalogue import Exercise
    from ..body.derive import Credit
    from ..body.search import Answer, Match
    from ..body.search_words import QueryPart


def report(answer: Answer) -> None:
    """Prints it."""
    print(exercises_json(answer))


def exercises_json(answer: Answer) -> str:
    """The whole answer as one JSON object: every exercise that fits, not only the first of them."""
    whole = {
        "spotline": VERSION,
        "asked": answer.asked,
        "understood": [_reading(one) for one in answer.readings],
        "not understood": [{"word": word, "nearest": list(near)} for word, near in answer.unknown],
        "count": len(answer.found),
        "exercises": [_match(one) for one in answer.found],
        "see also": list(answer.others),
        "without": [{"words": words, "count": count} for words, count in answer.without],
        "length not known": list(answer.unmeasured),
    }
    return json.dumps(whole, indent=2, ensure_ascii=True, allow_nan=False)


def _reading(one: QueryPart) -> dict[str, object]:
    return {
        "words": one.words,
        "read as": one.read_as or one.words,
        "meanings": [{"kind": kind, "name": name} for kind, name in one.meanings],
    }


def _match(match: Match) -> dict[str, object]:
    exercise = match.exercise
    return {
        "name": exercise.name,
        "asked for by name": match.exact,
        "role": match.role,
        "length asked for is sure": match.sure,
        "telling muscles": list(match.muscles),
        "aliases": list(exercise.aliases),
        "implement": exercise.implement,
        "kind": exercise.kind,
        "stance": exercise.stance,
        "grip": exercise.grip,
        "one side at a time": exercise.unilateral,
        "level": exercise.level,
        "capacity": exercise.capacity,
        "spine load": exercise.axial,
        "station": list(exercise.station),
        "patterns": list(exercise.patterns),
        "main actions": list(exercise.actions),
        "assisting actions": list(exercise.assists),
        "path": {joint: list(angles) for joint, angles in exercise.path.items()},
        "muscles": [_credit(exercise, given) for given in exercise.profile().credits.values()],
        "easier": list(exercise.easier),
        "harder": list(exercise.harder),
        "note": exercise.because,
        "sources": [
            {"id": name, "reference": catalogue.source(name).reference} for name in search.grounds(exercise)
        ],
    }


def _credit(exercise: Exercise, given: Credit) -> dict[str, object]:
    place = exercise.positions.get(given.muscle)
    worked = None if place is None else search.Worked(given.muscle, given.credit, place, given.net)
    return {
        "muscle": given.muscle,
        "credit": given.credit,
        "reason": given.because,
        "doubt": given.doubt,
        "set by hand": search.by_hand(exercise, given.muscle),
        "by the path alone": given.derived,
        "length change": None if given.net is None else round(given.net, 2),
        "place": place,
        "length": worked.length if worked else "",
        "length is sure": worked and worked.sure,
    }
