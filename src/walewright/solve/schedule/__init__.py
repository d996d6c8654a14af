"""schedule: on which rows an edge moves, from counted stitches and rows."""
