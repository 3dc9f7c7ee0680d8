"""Rest and tempo: time enough between sets, and sets of a length that can be meant."""
