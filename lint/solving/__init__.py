"""Findings that solve themselves: the cheapest edits that the review finds sound, and why there are none."""
