"""The name of a plan's content; apart from the plan room, so that the board can ask for it without loading it."""

import hashlib


def digest_of(text: str) -> str:
    """SHA-256 of the plan's text; names its kept run sheet."""
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()
