"""Progression: steps from week to week, deloads, tapers, and where a programme starts."""
