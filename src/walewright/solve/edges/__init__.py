"""edges: what a piece's edges, openings, wedges and charts put into the programme, and what bed and hands ask of them."""
