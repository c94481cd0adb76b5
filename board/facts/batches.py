"""Work that one does for several dishes at a time: with one board, or one peeler, out. Pure.

Words of the trade, common practice, no source. Raw meat and fish have a board of their own, and so no share in it.
"""

from board.facts.food import raw_class
from board.facts.mentions import mentioned
from board.facts.phrases import listed_words, stems

_PEELED = listed_words("peel scrub scrape")
_CUT = listed_words(
    "cut chop dice slice shred grate mince trim core stone pit julienne halve zest hull segment shave spiralise"
)


def batches(text: str) -> tuple[str, ...]:
    """What a step's words have in common with others: `work:` at the peeler or at the board, `food:` by its name."""
    words, named = set(stems(text)), mentioned(text)
    foods = tuple(f"food:{' '.join(each.words)}" for each in named)
    if any(raw_class(each.said) not in (None, "eggs") for each in named):
        return foods
    kinds = (("work:peel", _PEELED), ("work:cut", _CUT))
    return (*(name for name, verbs in kinds if words & verbs), *foods)
