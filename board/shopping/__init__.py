"""What to buy, when and where.

For the other rooms: `errands`, `items`, `rows`, `ticks`.
"""
