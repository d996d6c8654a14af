"""Walewright: a declarative language for hand-machine-knitted garments, compiled to proven, printed instructions."""

__version__ = "0.1.0"
