"""What is wrong, doubtful or worth knowing about a plan, as snags.

For the other rooms: `allergens`, `plan`, `raw_food`, `sheet`.
"""
