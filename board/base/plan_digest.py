"""Digest of a plan's content. Outside the plan room, so that the board can use it without loading that."""

import hashlib
import re

AS_IN_BOOK = re.compile(r"as\s+in\s+the\s+book", re.IGNORECASE)


def digest_of(text: str, book: str = "") -> str:
    """SHA-256 of the plan's text, and of the cook's book if the plan refers to it; names the cached run sheet. `book`:
    the digest of the book's bytes."""
    digest = hashlib.sha256(text.encode("utf-8", "surrogatepass"))
    if book and speaks_of_book(text):
        digest.update(f"\0{book}".encode())
    return digest.hexdigest()


def is_as_in_book(value: object) -> bool:
    """Whether this value of a plan comes from the book."""
    return isinstance(value, str) and AS_IN_BOOK.fullmatch(value.strip()) is not None


def speaks_of_book(text: str) -> bool:
    """Whether a plan may take figures from the book; comments count too."""
    return AS_IN_BOOK.search(text) is not None
