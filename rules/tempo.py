"""Time under load."""

from __future__ import annotations

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from .shared import in_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Work


@rule(
    "tempo-too-long",
    family="rest",
    severity="note",
    confidence="common practice",
    why="So long a set is seldom meant: repetitions and tempo were chosen apart. Repetitions in tests to"
    " failure last 1.4 to 6 seconds.",
    sources=("rep-time-lit", "loadit"),
    options=(
        Option(
            "longest",
            120,
            "seconds of one set",
            "common practice, no source; a published protocol asks for sets of 108 s",
            by=(({"goal": "muscular endurance"}, 180),),
        ),
    ),
    stands_back=("rehabilitation",),
)
def tempo_too_long(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """A tempo that makes a set longer than two minutes.

    Takes the high end of the repetitions times the seconds of one, X being a second; wants 120 s (180 s for
    endurance). Silent for holds, for sets broken up, and where no tempo is written.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 12-15, tempo: 5-1-4-0}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 10-12, tempo: 5-1-4-0}
    """
    seconds, work = entry.set_time, entry.work
    if seconds is None or seconds.high <= limits.number("longest"):
        return
    held = work.hold is not None or (entry.exercise is not None and entry.exercise.kind == "isometric")
    if held or entry.broken_up:
        return
    assert work.reps is not None  # else no set has a time
    reps = work.reps.a_set()
    up_to = "up to " if seconds.low < seconds.high else ""
    at = work.places.get("tempo") or work.places["exercise"]
    if "tempo" in work.places:
        tempo = in_words(at, _tempo_in_words(work))
    else:
        assert entry.seconds_said is not None
        tempo = entry.seconds_said.tempo
    yield found(
        at,
        f"A set lasts {up_to}{seconds.high:g} s: {reps} repetitions at {tempo}.",
        wanted=limits.words("at most {:s}", "longest"),
        change="Write fewer repetitions or a quicker tempo.",
        where=line_name(entry.prescription),
        group=entry.name,
        amount=Amount(seconds.high, limits.number("longest"), "s"),
        excess=seconds.high,
    )


def _tempo_in_words(work: Work) -> str:
    return "-".join("X" if phase is None else f"{phase:g}" for phase in work.tempo or ())
