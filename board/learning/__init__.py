"""Many evenings → changes to a plan, and the cook's book.

For the other rooms: `book`, `book_text`, `changes`, `effect`, `from_book`, `moves`, `notes`, `ovens`.
"""
