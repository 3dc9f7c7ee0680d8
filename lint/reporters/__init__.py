"""The forms that a review, exercises and rules are printed in: one module a form."""

from __future__ import annotations
