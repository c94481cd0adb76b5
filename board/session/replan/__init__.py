"""What is left of an evening, worked out anew.

For the other rooms: `advisor`, `anew`.
"""
