"""A headline in ever fewer words, for letters so large that not all of it fits. Pure."""

from collections.abc import Iterator

ARTICLES = frozenset({"the", "a", "an", "its", "their"})
# With one of these at its end, a headline says nothing.
JOINING = ARTICLES | {"and", "or", "with", "in", "into", "on", "onto", "of", "for", "to", "from", "at", "by", "over"}
FEWEST = 2


def without_articles(text: str) -> str:
    """`Boil potatoes` for `Boil the potatoes`; the text itself if nothing else is in it."""
    return " ".join(word for word in text.split() if word.casefold() not in ARTICLES) or text


def short_forms(headline: str) -> Iterator[str]:
    """The headline itself; without what stands in brackets; without articles; then word by word fewer from its end,
    two at least."""
    yield headline
    bare = " ".join(headline.split("(")[0].split())
    words = without_articles(bare).split()
    for shorter in (bare, " ".join(words)):
        if shorter and shorter != headline:
            yield shorter
    while len(words) > FEWEST:
        words.pop()
        if words[-1].strip(",;:").casefold() not in JOINING:
            yield " ".join(words).rstrip(",;:·–-")
