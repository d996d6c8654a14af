"""cli: the commands `check`, `build` and `format`. Thin: it reads files, calls the pipeline, prints and writes."""

from __future__ import annotations

import sys
from collections.abc import Sequence


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command line (without the program's name) and return its exit code.

    0 done; 1 a source has errors or a file cannot be written; 2 the command line itself is wrong; 70 a fault of the
    compiler; 130 stopped by hand.
    """
    from walewright.cli.app import run

    return run(tuple(sys.argv[1:] if arguments is None else arguments))
