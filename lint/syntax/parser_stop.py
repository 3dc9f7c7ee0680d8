"""Where and why the parser stopped."""

from __future__ import annotations

from ..findings.finding import Edit, Finding

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Related
    from ..text.places import Text


class ParserStop:
    """Where and why the parser stopped.

    ``at`` is the offset of the stop, ``began`` that of what it was reading. ``problem`` and ``doing`` are the
    parser's words. ``opened`` are the offsets of the brackets that were open, outermost first.
    """

    __slots__ = ("at", "began", "content", "doing", "opened", "problem", "text")

    def __init__(self, text: Text, error: Exception, opened: list[int]) -> None:
        self.text = text
        self.content = text.content
        self.problem = str(getattr(error, "problem", None) or "")
        self.doing = str(getattr(error, "context", None) or "")
        self.at = _index(getattr(error, "problem_mark", None), 0)
        self.began = _index(getattr(error, "context_mark", None), self.at)
        self.opened = [at for at in opened if self.content[at : at + 1] in ("[", "{")]

    @property
    def char(self) -> str:
        """The character at the stop; empty at the end of the text."""
        return self.content[self.at : self.at + 1]

    @property
    def line_start(self) -> int:
        """Where the line of the stop begins."""
        return max(self.content.rfind("\n", 0, self.at), self.content.rfind("\r", 0, self.at)) + 1

    @property
    def line_end(self) -> int:
        """Where the line of the stop ends."""
        ends = [self.content.find(char, self.at) for char in "\n\r"]
        return min((end for end in ends if end >= 0), default=len(self.content))

    @property
    def before(self) -> str:
        """What stands on that line before the stop."""
        return self.content[self.line_start : self.at]

    def finding(
        self,
        rule: str,
        counted: str,
        wanted: str,
        change: str,
        *,
        at: int | None = None,
        end: int | None = None,
        related: tuple[Related, ...] = (),
        edits: tuple[Edit, ...] = (),
    ) -> Finding:
        """An error, at the place of the stop unless another is given."""
        start = self.at if at is None else at
        stop = end if end is not None else min(start + 1, len(self.content))
        place = self.text.place(start, max(start, stop))
        return Finding(
            rule, "error", place, counted, wanted=wanted, change=change, related=related, edits=edits
        )

    def quoting(self, at: int, words: str) -> Edit:
        """The edit that puts quotes around the words at an offset."""
        quoted = "'" + words.replace("'", "''") + "'"
        return Edit(self.text.place(at, at + len(words)), quoted, "put quotes around the words")


def _index(mark: object, default: int) -> int:
    index = getattr(mark, "index", None)
    return index if isinstance(index, int) else default
