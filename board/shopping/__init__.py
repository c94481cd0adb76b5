"""What to buy, when and where.

For the other rooms: `amounts`, `errands`, `freezer`, `items`, `rows`, `ticks`.
"""
