"""cli: the commands `check`, `build` and `format`. Thin: it reads files, calls the pipeline, prints and writes."""

from __future__ import annotations

import sys
from collections.abc import Sequence


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command line (without the program's name) and return its exit code.

    0 done; 1 a source has errors, or a file or stream cannot be read or written; 2 the command line or the environment itself is
    wrong: a name, or a value that is not what its option takes; 70 a fault of the compiler; 128 and a signal's number when
    that asked to stop: 130 by hand (SIGINT), 143 by SIGTERM, 129 by SIGHUP.
    """
    from walewright.cli.app import run

    return run(tuple(sys.argv[1:] if arguments is None else arguments))
