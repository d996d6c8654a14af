"""When Python looks for what may be thrown away."""

import atexit
import gc

MADE_OF_A_SOURCE = 1_000_000
"""More objects than are made, and not freed at once, of most sources and their pages."""


def spare_the_collector() -> None:
    """Nearly all that a command makes is kept to its end: looking again and again took a tenth of the time, and looking once more
    through all of it when the interpreter ends another tenth."""
    gc.set_threshold(MADE_OF_A_SOURCE, 20, 50)
    atexit.unregister(gc.freeze)
    atexit.register(gc.freeze)


def between_sources() -> None:
    """Lets go of what was made of one source before the next is read."""
    gc.collect(0)
