"""reading: names, sizes, units, values, materials and what a knitter gives: what a source's figures mean."""
