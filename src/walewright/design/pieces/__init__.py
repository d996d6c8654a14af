"""pieces: levels, edges, openings and what lies in a piece, and how pieces are joined."""
