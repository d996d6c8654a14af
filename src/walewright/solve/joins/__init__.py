"""joins: bands, seams and caps: both sides of a join, in the programme and after it."""
