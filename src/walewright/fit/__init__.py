"""Fit: the garment as it is worn. Entry: `fit(design, glued, counts, results) -> (Fit, diagnostics)`.

Girths, reach and openings are read off the glued garment, as the bed knitted it; nothing is guessed from the names of pieces, and
what cannot be told is not there."""

from walewright.fit.model import Buttons, Ease, Fit, Girth, Passing, Reach, Ring
from walewright.fit.stage import fit

__all__ = ["Buttons", "Ease", "Fit", "Girth", "Passing", "Reach", "Ring", "fit"]
