"""Keys for comparing names and work. Imports nothing: the board uses it too."""

_ARTICLES = ("a", "an", "the")


def name_key(words: str) -> str:
    """A name's key: case and spaces do not count."""
    return " ".join(words.casefold().split())


def first_word(words: str) -> str:
    """What a step does: its first word that is no article; "" if none."""
    return next((word for word in words.split() if word not in _ARTICLES), "").strip(".,;:!?")
