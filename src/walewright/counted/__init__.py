"""A counted piece looked at in one place: the piece in one size with its rows, and every question about it that others ask.

Stitches and rows are those of `counted.model`; everything is a plain number of one size. The bed asks nothing here: it measures
the fabric that it made, and is the check.
"""
