"""The table of foods, a file a kind."""
