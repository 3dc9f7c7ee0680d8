"""JSON Schemas (2020-12) of every file that spotline reads or writes."""
