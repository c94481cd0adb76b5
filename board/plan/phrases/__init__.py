"""A phrase in a plan ↔ a value.

For the other rooms: `amounts`, `away`, `durations`, `food_safety`, `guest_words`, `guests`, `labels`, `phrase`,
`quantities`, `seats`, `stations`, `tableware`, `to_phrase`, `when`.
"""
