"""Many evenings at once: how likely each course is on time.

For the other rooms: `draw`, `many`, `result`.
"""
