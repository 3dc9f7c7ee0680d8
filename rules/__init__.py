"""The rules, one module a family."""
