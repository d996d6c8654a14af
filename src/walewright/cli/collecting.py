"""How often Python looks for what may be thrown away."""

import atexit
import gc


def spare_the_collector() -> None:
    """Nearly all that a command makes is kept to its end: looking again and again took a tenth of the time, and looking once more
    through all of it when the interpreter ends another tenth."""
    gc.set_threshold(100_000, 20, 50)
    atexit.unregister(gc.freeze)
    atexit.register(gc.freeze)
