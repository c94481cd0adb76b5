"""The name of a plan's content; apart from the plan room, so that the board can ask for it without loading it."""

import hashlib
import re

AS_IN_BOOK = re.compile(r"as\s+in\s+the\s+book", re.IGNORECASE)


def digest_of(text: str, book: str = "") -> str:
    """SHA-256 of the plan's text, and of the cook's book (`book`: that of its bytes) where the plan speaks of it; names
    its cached run sheet."""
    digest = hashlib.sha256(text.encode("utf-8", "surrogatepass"))
    if book and speaks_of_book(text):
        digest.update(f"\0{book}".encode())
    return digest.hexdigest()


def is_as_in_book(value: object) -> bool:
    """Whether a value of a plan is taken from the book."""
    return isinstance(value, str) and AS_IN_BOOK.fullmatch(value.strip()) is not None


def speaks_of_book(text: str) -> bool:
    """Whether a plan may take figures from the book; a comment that speaks of it counts too."""
    return AS_IN_BOOK.search(text) is not None
