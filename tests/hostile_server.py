"""Runs the command on cases, each in a process of its own, which starts as a copy of this small one.

Reads a line of JSON a case from its input, ``[folder, words]``, and prints one for each: exit code, seconds of CPU,
megabytes at the most, output and error output.
"""

from __future__ import annotations

import json
import os
import resource
import sys

from spotline.lint.cli.main import main
from spotline.lint.project import review

assert review  # what every case needs is there before the copies are made

PATIENCE = 8
"""Seconds of CPU after which a process is ended: a hang, far beyond what is allowed."""


def run(folder: str, words: list[str]) -> dict[str, object]:
    pipes = [os.pipe(), os.pipe()]
    child = os.fork()
    if child == 0:
        os.chdir(folder)
        for (_, end), stream in zip(pipes, (1, 2), strict=True):
            os.dup2(end, stream)
        for pair in pipes:
            for end in pair:
                os.close(end)
        sys.stdout, sys.stderr = os.fdopen(1, "w", encoding="utf-8"), os.fdopen(2, "w", encoding="utf-8")
        resource.setrlimit(resource.RLIMIT_CPU, (PATIENCE, PATIENCE))
        code = 99
        try:
            sys.argv[1:] = words
            code = main()  # as in a process of its own
            sys.stdout.flush()
            sys.stderr.flush()
        finally:
            os._exit(code)
    said = [b"", b""]
    for _, end in pipes:
        os.close(end)
    import select

    waiting = {pipe[0]: number for number, pipe in enumerate(pipes)}
    while waiting:
        for ready in select.select(list(waiting), [], [])[0]:
            part = os.read(ready, 1 << 16)
            if part:
                said[waiting[ready]] += part
            else:
                os.close(ready)
                del waiting[ready]
    _, status, used = os.wait4(child, 0)
    return {
        "code": os.waitstatus_to_exitcode(status),
        "cpu": used.ru_utime + used.ru_stime,
        "megabytes": used.ru_maxrss / 1024,
        "out": said[0].decode(errors="replace"),
        "err": said[1].decode(errors="replace"),
    }


if __name__ == "__main__":
    for line in sys.stdin:
        print(json.dumps(run(*json.loads(line))), flush=True)
