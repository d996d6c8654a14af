"""used: what of a source leads to something that is made, what does not, and what is printed of the rest."""
