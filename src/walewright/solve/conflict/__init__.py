"""conflict: why a design cannot be counted, and the changes that help, tried before they are told."""
