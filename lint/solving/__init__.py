"""Findings that solve themselves: the cheapest edits that the review itself finds sound, and why there are none."""
