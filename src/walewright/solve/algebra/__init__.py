"""algebra: the integer programme, its terms and wishes, and the one place that solves it."""
