"""Files read and written, whole or not at all.

For the other rooms: `cook_book`, `pantry`, `paths`, `plans`, `preferences`, `whole`.
"""
