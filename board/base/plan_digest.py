"""Digest of a plan's content. Outside the plan room, so that the board can use it without loading that."""

import hashlib


def digest_of(text: str) -> str:
    """SHA-256 of the plan's text; names its kept run sheet."""
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()
