"""Violations, the fewest steps that fight, changes worked out again.

For the other rooms: `clashes`, `explain`, `proposals`, `violations`, `ways_out`.
"""
