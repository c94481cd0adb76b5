"""Files read and written as a whole, or not at all.

For the other rooms: `bundled`, `claims`, `cook_book`, `pantry`, `paths`, `plans`, `preferences`, `shelf`, `whole`.
"""
