"""figures: schematics, garments, fabrics, charts, hands and tools. In millimetres of paper; words come in as text."""
