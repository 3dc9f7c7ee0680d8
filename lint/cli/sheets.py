"""Sheets at the command line: printed, or written into files, with a word on each."""

from __future__ import annotations

import sys
from datetime import date

from ..reporters import SHEET, print_as, text_as
from ..reporters.lines import lines
from ..sheets.request import NoSheetError, paths, sheets, write
from ..text.safe_writer import NotWrittenError
from ..wording.words import counted_noun, listed, safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..sheets.sheet import Sheet

ENDINGS = {"html": "html", "markdown": "md", "csv": "csv"}
"""How files of each form end."""


def print_or_write(path: str, form: str, to: str, athlete: str, week: int, *, overwrite: bool) -> int:
    """Makes the sheets of a programme and takes them where they are to go; the exit code."""
    try:
        built = sheets(path, date.today(), athlete, week)
        if to and len(built) > 1:
            names = listed([one.athlete for one in built])
            raise NoSheetError(f"{to} would hold {len(built)} sheets: name one of {names} with --athlete")
    except NoSheetError as refused:
        for line in lines(refused.review) if refused.review else ():
            print(line, file=sys.stderr)
        print(f"spotline: {safe(str(refused))}", file=sys.stderr)
        return 2
    if to == "-":
        print_as(form, SHEET, built[0])
        return 0
    where = [to] if to else paths(path, built, ENDINGS[form], week)
    return max([_written(sheet, one, form, overwrite) for sheet, one in zip(built, where, strict=True)])


def _written(sheet: Sheet, path: str, form: str, overwrite: bool) -> int:
    try:
        write(path, text_as(form, SHEET, sheet), overwrite=overwrite)
    except NotWrittenError as fault:
        print(f"spotline: {safe(str(fault))}", file=sys.stderr)
        return 2
    pages = sum(len(week.sessions) for week in sheet.weeks)
    print(f"Written: {safe(path)} ({sheet.athlete or sheet.title}: {counted_noun(pages, 'session')})")
    return 0
