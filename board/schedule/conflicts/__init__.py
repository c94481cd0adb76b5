"""Violations, the fewest steps that fight, changes worked out again.

For the other rooms: `clashes`, `explain`, `price`, `proposal`, `violations`, `ways_out`.
"""
