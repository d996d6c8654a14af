"""english: the guide in English."""
