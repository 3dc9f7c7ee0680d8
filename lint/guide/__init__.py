"""The coach's guide to the format: pages made from the schemas and the examples, shown topic by topic."""
