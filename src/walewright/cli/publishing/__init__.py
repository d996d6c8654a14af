"""publishing: a catalogue made into a folder, only what has changed: what products depend on, what is kept of them, how they are
made, and what is written beside them."""
