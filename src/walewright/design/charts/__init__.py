"""charts: grids read, and where in a piece their repeats lie."""
