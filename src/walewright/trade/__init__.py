"""The tables of the trade: what there is of each thing (edgings, cells of charts, ways to begin, to end, to shape, to join), and
what is known of each kind.

A set that is closed is a `Literal`, so that a type checker finds the place that has forgotten one; what stages ask of a kind
stands in its row of a table. The bed and the reader of printed words do not import this package: they know the trade for
themselves.
"""
