"""guide: what is printed besides the instructions: how-to, advice, safety, tables' heads and labels. A language is a folder."""
