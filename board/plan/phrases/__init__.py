"""A phrase in a plan ↔ a value.

For the other rooms: `amounts`, `away`, `durations`, `food_safety`, `guest_words`, `guests`, `labels`, `phrase`,
`portions`, `quantities`, `seats`, `stations`, `tableware`, `to_phrase`, `when`.
"""
