"""sized: solved numbers put together into the pieces of every size, and compared with what was wanted."""
