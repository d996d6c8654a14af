"""serve: the page in which a knitter regrades a pattern, on the knitter's own computer.

It stands beside `cli`, and calls the pipeline as that does. `app` answers requests; what it is asked for is worked in other
processes (`pool`, `working`), with bounds; `security` decides who is answered at all. What was filled in comes back
with every answer; what was worked out is kept in memory, bounded (`answering`, `kept`).
"""
