"""The forms a review can take: one module a form."""
