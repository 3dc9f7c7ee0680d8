"""Edits that findings on the training offer: worked out from the ledger and the text when asked for."""
