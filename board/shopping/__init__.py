"""What to buy, when and where.

For the other rooms: `errands`, `freezer`, `items`, `rows`, `ticks`.
"""
