"""URIs of documents and paths of files."""

from __future__ import annotations

import os
import re
from urllib.parse import quote, unquote, urlsplit

_DRIVE = re.compile(r"/[A-Za-z]:")


def path_of(uri: str) -> str:
    """The path that a ``file:`` URI names; empty for any other URI, and for a path that no file can have."""
    try:
        parts = urlsplit(uri)
    except ValueError:
        return ""
    path = unquote(parts.path, errors="surrogateescape")
    if parts.scheme.lower() != "file" or not path or "\0" in path:
        return ""
    if parts.netloc and parts.netloc != "localhost":
        path = f"//{unquote(parts.netloc)}{path}"
    elif _DRIVE.match(path) and os.sep == "\\":
        path = path[1:]
    return os.path.normpath(path)


def uri_of(path: str) -> str:
    """The ``file:`` URI of a path; bytes of a name that are no text stay as they are."""
    path = os.path.abspath(path).replace(os.sep, "/")
    path = path if path.startswith("/") else f"/{path}"
    return "file://" + quote(path, safe="/:", errors="surrogateescape")


def file_name_of(uri: str) -> str:
    """The last part of a URI's path, with its escapes decoded."""
    return unquote(uri.rpartition("/")[2].rpartition(":")[2])
