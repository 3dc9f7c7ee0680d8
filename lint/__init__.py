"""The engine: reads, counts and reports; it knows no rule by name."""
