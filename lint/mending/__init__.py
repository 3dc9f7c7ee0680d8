"""Edits written into files: which are certain, how the review tries them, how they reach the disk."""
