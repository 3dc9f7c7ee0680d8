"""What `spotline exercises` found, for people: one exercise as a page, several as a list."""

from __future__ import annotations

from collections import Counter

from ..body import catalogue, search, search_words
from ..body.derive import CREDITS
from ..body.mechanics import LONG, SHORT
from ..wording.words import counted_noun, safe
from .layout import bold, paragraph, row, strong, terminal_width

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Sequence

    from ..body.catalogue import Exercise
    from ..body.derive import Credit
    from ..body.search import Answer, Match, Worked
    from ..body.search_words import QueryPart

COLUMN = 10
"""Columns that the labels of a page take."""

MOST = 40
"""Exercises that a list shows before it only says how many more there are."""

MOST_NAMES = 8
"""Names that the page of one exercise gives of others that its words might mean."""

ASK = "spotline exercises hamstrings long dumbbell"


def report(answer: Answer) -> None:
    """Prints an answer, as wide as the terminal."""
    print("\n".join(exercises_text(answer, terminal_width(), bold=bold())))


def exercises_text(answer: Answer, width: int, *, bold: bool) -> Iterator[str]:
    """The lines of an answer; ``width`` in columns."""
    if answer.everything:
        yield from _overview(answer, width, bold)
        return
    yield from _understood(answer, width)
    if len(answer.found) == 1:
        yield from _page(answer.found[0].exercise, width, bold)
        if answer.others:
            yield from row("see also", _some(answer.others), width, COLUMN)
    elif answer.found:
        yield from _list(answer, width, bold)
    else:
        yield from _nothing(answer, width)


def _understood(answer: Answer, width: int) -> Iterator[str]:
    """Words that were read as others, and those that mean nothing."""
    for one in answer.readings:
        if one.read_as:
            yield safe(f"“{one.words}” is read as “{one.read_as}”.")
    if answer.as_name:
        yield from paragraph(f"As the name of an exercise “{answer.asked}” is {answer.as_name}.", width)
    for word, near in answer.unknown:
        offered = f" Nearest: {', '.join(near)}." if near else ""
        yield from paragraph(f"“{word}” means nothing here.{offered}", width)


def _nothing(answer: Answer, width: int) -> Iterator[str]:
    if answer.readings:
        yield from paragraph(f"No exercise fits: {_asked_for(answer)}.", width)
    else:
        words = "No exercise found. Ask by area, joint action, implement, length, stance or name, as in:"
        yield from paragraph(f"{words} {ASK}", width)
    for area in answer.unmeasured:
        words = f"At what length {area} work is not known: lengths are reckoned for legs, hips and elbows."
        yield from paragraph(words, width)
    for words, count in answer.without:
        yield safe(f"Without “{words}”: {counted_noun(count, 'exercise')}.")


def _asked_for(answer: Answer) -> str:
    return "; ".join(map(_meaning, answer.readings))


def _meaning(reading: QueryPart) -> str:
    """A reading in words: "dumbbell (implement, or in the name)"."""
    kinds: dict[str, list[str]] = {}
    for kind, name in reading.meanings:
        kinds.setdefault(kind, []).append(name)
    in_name = kinds.pop(search_words.NAME, None)
    said = ", or ".join(f"{' or '.join(names)} ({kind}" for kind, names in kinds.items())
    if in_name and said:
        return f"{said}, or in the name)"
    return f"{said})" if said else f"“{reading.read_as or reading.words}” in the name"


# A list


def _list(answer: Answer, width: int, bold: bool) -> Iterator[str]:
    yield from paragraph(f"{counted_noun(len(answer.found), 'exercise')}: {_asked_for(answer)}.", width)
    shown = answer.found[:MOST]
    lengths = answer.meant(search_words.LENGTH)
    if lengths:
        usual = _usual(match.muscles for match in shown)
        details = list(_numbers_of(shown, usual))
        words = f"Numbers are for {gathered(usual)} where no other muscle is named."
        yield from paragraph(f"{_how_to_read(lengths)} {words if usual else ''}", width)
    elif len(areas := answer.meant(search_words.AREA)) == 1:
        details = [("", _left_out(match.exercise, areas[0])) for match in shown]
    else:
        usual = _usual(match.exercise.direct for match in shown)
        details = [("", _trained(match.exercise, usual)) for match in shown]
        if usual:
            words = f"They train {gathered(usual)} directly where nothing else is said."
            yield from paragraph(words, width)
    columns = (
        max(len(match.exercise.name) for match in shown),
        max(len(_done_with(match.exercise)) for match in shown),
    )
    heading = None
    for match, (beside, below) in zip(shown, details, strict=True):
        if heading != (heading := _heading(match, lengths)):
            yield ""
            if heading:
                yield strong(heading, bold)
        yield from _line(match.exercise, beside, below, columns, width)
    yield ""
    if len(answer.found) > MOST:
        yield from paragraph(_narrower(answer), width)
    yield from paragraph(f"One of them in full: spotline exercises {_as_words(shown[0].exercise)}", width)


def _as_words(exercise: Exercise) -> str:
    """Its name as a shell takes it."""
    return exercise.name.replace("'", "")


def _narrower(answer: Answer) -> str:
    implements = Counter(_implement(match.exercise.implement) for match in answer.found)
    counted = ", ".join(f"{name} {count}" for name, count in implements.most_common(8))
    all_of_them = f"all {len(answer.found)}, by implement: {counted}"
    return f"{len(answer.found) - MOST} more are not shown; a further word narrows them ({all_of_them})."


def _how_to_read(lengths: Sequence[str]) -> str:
    limits = {
        "long": f"long from {LONG:.2f} up",
        "middle": f"middle between {SHORT:.2f} and {LONG:.2f}",
        "short": f"short up to {SHORT:.2f}",
    }
    return (
        "First number: where the muscle works on average in its own range, 0 shortest to 1 longest"
        f" ({', '.join(limits[length] for length in lengths)})."
        " Second: how much the lift shortens it, if known."
    )


def _heading(match: Match, lengths: Sequence[str]) -> str:
    words = {search_words.MAIN: "Main joint action", search_words.ASSISTING: "Assisting joint action"}
    head = words.get(match.role, match.role.capitalize())
    if not lengths:
        return head
    length = " or ".join(lengths)
    return f"{head}, surely {length}" if match.sure else f"{head}, {length} but near a limit: models differ"


def _usual(muscles: Iterable[tuple[str, ...]]) -> tuple[str, ...]:
    """The muscles that half of a list or more have in common, () if there are none such."""
    counted = Counter(muscles)
    ((most, count),) = counted.most_common(1)
    return most if 2 * count >= counted.total() else ()


def _numbers_of(shown: Iterable[Match], usual: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """The numbers for each exercise: beside it those of the usual muscles, else below it with the muscles."""
    for match in shown:
        alike: dict[str, list[str]] = {}
        for one in match.worked():
            alike.setdefault(_numbers(match.exercise, one), []).append(one.muscle)
        if match.muscles == usual and len(alike) == 1:
            yield next(iter(alike)), ""
        else:
            yield "", "; ".join(f"{gathered(muscles)} {numbers}" for numbers, muscles in alike.items())


def _line(exercise: Exercise, beside: str, below: str, columns: tuple[int, int], width: int) -> Iterator[str]:
    name, done = columns
    yield safe(f"  {exercise.name:<{name}}  {_done_with(exercise):<{done}}  {beside}".rstrip())
    if below:
        yield from row("", below, width, 4)


def _numbers(exercise: Exercise, worked: Worked) -> str:
    if exercise.kind == "isometric":
        return f"{worked.place:.2f}  held"
    return f"{worked.place:.2f}" if worked.net is None else f"{worked.place:.2f}  {-worked.net:.1f} cm"


def _left_out(exercise: Exercise, area: str) -> str:
    """Which muscles of an area an exercise leaves out, or the few that it trains; "" if it trains all."""
    members = catalogue.area(area) or ()
    trained = [muscle for muscle in members if exercise.weight(muscle)]
    left_out = [muscle for muscle in members if muscle not in trained]
    if len(left_out) > len(trained):
        return f"only {gathered(trained)}"
    return f"leaves out {gathered(left_out)}" if left_out else ""


def _trained(exercise: Exercise, usual: tuple[str, ...]) -> str:
    return "" if exercise.direct == usual else f"trains {gathered(exercise.direct)}"


def _done_with(exercise: Exercise) -> str:
    return f"{_implement(exercise.implement)}, {exercise.stance}"


def _implement(name: str) -> str:
    return "no implement" if name == "none" else name


def gathered(muscles: Iterable[str]) -> str:
    """Muscles in words: whole groups by name, or but for one; what is left muscle by muscle."""
    left = list(muscles)
    order = {muscle: place for place, muscle in enumerate(left)}
    said: list[tuple[int, str]] = []
    several = sorted(catalogue.groups.items(), key=lambda item: -len(item[1]))
    for most in (0, 1):
        for group, members in several:
            inside = [muscle for muscle in members if muscle in left]
            missing = [muscle for muscle in members if muscle not in left]
            if len(inside) > 1 and len(missing) == most:
                name = f"{group} without {missing[0]}" if missing else group
                said.append((order[inside[0]], name))
                left = [muscle for muscle in left if muscle not in inside]
    said += [(order[muscle], muscle) for muscle in left]
    return ", ".join(name for _, name in sorted(said))


# A page


def _page(exercise: Exercise, width: int, bold: bool) -> Iterator[str]:
    yield strong(safe(exercise.name), bold)
    profile = exercise.profile()
    rows = [
        ("also", ", ".join(exercise.aliases)),
        ("done with", _how_done(exercise)),
        ("asks for", _asks_for(exercise)),
        ("loads", _loads(exercise)),
        ("path", _path(exercise)),
    ]
    for label, words in rows:
        if words:
            yield from row(label, words, width, COLUMN)
    for credit in reversed(CREDITS):
        given = [one for one in profile.credits.values() if one.credit == credit]
        for index, words in enumerate(_reasons(exercise, given)):
            yield from row("" if index else credit, f"· {words}", width, COLUMN)
    rows = [
        ("easier", ", ".join(exercise.easier)),
        ("harder", ", ".join(exercise.harder)),
        ("note", exercise.because),
        ("sources", "; ".join(catalogue.source(name).short for name in search.grounds(exercise))),
    ]
    for label, words in rows:
        if words:
            yield from row(label, words, width, COLUMN)


def _how_done(exercise: Exercise) -> str:
    grip = f"{exercise.grip} grip" if exercise.grip else ""
    sides = search_words.ONE_SIDE if exercise.unilateral else ""
    kind = "" if exercise.kind == "dynamic" else exercise.kind
    station = [name for name in exercise.station if name != exercise.implement]
    occupies = f"occupies {', '.join(station)}" if station else ""
    return "; ".join(part for part in (_done_with(exercise), grip, kind, sides, occupies) if part)


def _asks_for(exercise: Exercise) -> str:
    spine = (
        "no load along the spine" if exercise.axial == "none" else f"{exercise.axial} load along the spine"
    )
    return f"{exercise.level} skill; usually {exercise.capacity} loads; {spine}"


def _loads(exercise: Exercise) -> str:
    assists = f"; assisting: {', '.join(exercise.assists)}" if exercise.assists else ""
    patterns = f" ({', '.join(exercise.patterns)})" if exercise.patterns else ""
    return f"{', '.join(exercise.actions)}{assists}{patterns}"


def _path(exercise: Exercise) -> str:
    """The joint angles of the lift: "hip 90 to 0, knee 15 degrees"."""
    parts = []
    for joint, angles in exercise.path.items():
        turns = angles if len(set(angles)) > 1 else angles[:1]
        parts.append(f"{joint} {' to '.join(f'{angle:g}' for angle in turns)}")
    return f"{', '.join(parts)} degrees (flexion is plus)" if parts else ""


def _reasons(exercise: Exercise, given: Iterable[Credit]) -> Iterator[str]:
    """The reason for each credit, muscles that share all of it together."""
    shared: dict[str, list[str]] = {}
    for one in given:
        shared.setdefault(_reason(exercise, one), []).append(one.muscle)
    for reason, muscles in shared.items():
        yield f"{gathered(muscles)}: {reason}"


def _reason(exercise: Exercise, given: Credit) -> str:
    by_hand = ""
    if search.by_hand(exercise, given.muscle):
        alone = given.derived if given.derived != "none" else "nothing"
        by_hand = f" (set by hand; by the joint path alone: {alone})"
    doubt = f"; doubtful: {given.doubt}" if given.doubt else ""
    reason = f"{given.because}{by_hand}{doubt}"
    if given.credit == "none" or given.muscle not in exercise.positions:
        return reason
    one = search.Worked(given.muscle, given.credit, exercise.positions[given.muscle], given.net)
    near = "" if one.sure else ", near a limit"
    return f"{reason}; works at {one.length} length ({one.place:.2f} of its range{near})"


def _some(names: Sequence[str]) -> str:
    more = f" and {len(names) - MOST_NAMES} more" if len(names) > MOST_NAMES else ""
    return f"{', '.join(names[:MOST_NAMES])}{more}"


# The whole catalogue


def _overview(answer: Answer, width: int, bold: bool) -> Iterator[str]:
    every = [match.exercise for match in answer.found]
    yield strong(f"{len(every)} exercises", bold)
    fields: tuple[tuple[str, Callable[[Exercise], Iterable[str]]], ...] = (
        ("implement", lambda one: (_implement(one.implement),)),
        ("pattern", lambda one: one.patterns),
        ("kind", lambda one: (one.kind,)),
        ("stance", lambda one: (one.stance,)),
        ("level", lambda one: (one.level,)),
        ("area", _areas),
    )
    for label, values in fields:
        counted = Counter(value for one in every for value in values(one))
        words = ", ".join(f"{name} {count}" for name, count in counted.most_common())
        yield from row(label, words, width, COLUMN)
    yield ""
    yield from paragraph(f"An area counts what trains it directly. Ask with words, as in: {ASK}", width)


def _areas(exercise: Exercise) -> Iterator[str]:
    """The groups that coaches speak of which an exercise trains directly."""
    for group, members in catalogue.groups.items():
        if not set(members).isdisjoint(exercise.direct):
            yield group
