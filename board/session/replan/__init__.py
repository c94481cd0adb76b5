"""The rest of an evening, solved again.

For the other rooms: `advisor`, `anew`, `gain`.
"""
