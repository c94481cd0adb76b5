"""Dishes whose last word would find a way here, though they are made in another. Common practice, no source."""

from board.importing.ways.pattern import listed

NAMES = listed(
    """fesenjan, miso soup, tres leches, nigiri, maki, temaki, sushi, grand marnier souffle, chocolate souffle, lemon
    souffle, raspberry souffle, vanilla souffle, orange souffle, butter chicken, baked alaska, brandy snap,
    margarita, mojito, martini, sangria, kir, kir royale, bellini, bloody mary, old fashioned, eggnog, pimms cup"""
)
