"""Words of a food's name as compared: lower case, no accents, singular; and words that add nothing. Pure."""

import re
import unicodedata

_NOT_WORDS = re.compile(r"[^a-z0-9]+")
_ENDINGS = (
    (re.compile(r"(?:ies|ie|ey|eys)$"), "y"),
    (re.compile(r"(?:oes|oe)$"), "o"),
    (re.compile(r"(?<=[cs]h)(?:es|e)$|(?<=[sxz])(?:es|e)$"), ""),
    (re.compile(r"(?:ves|ve)$"), "f"),
    (re.compile(r"(?<!s)s$"), ""),
)


def stem(word: str) -> str:
    """One key for singular and plural; it need not be a real word. `leaf` and `leaves`, `cherry` and `cherries`,
    `tomato` and `tomatoes` come out alike. Idempotent in effect."""
    if len(word) < 3:
        return word
    for ending, instead in _ENDINGS:
        if ending.search(word):
            return ending.sub(instead, word)
    return word


def stems(text: str) -> tuple[str, ...]:
    """The stems of a text's words. Apostrophes join; other signs split: `goat's cheese` is `goat`, `cheese`."""
    letters = unicodedata.normalize("NFKD", text.casefold().replace("œ", "oe").replace("æ", "ae").replace("ø", "o"))
    bare = "".join(sign for sign in letters if not unicodedata.combining(sign))
    joined = re.sub(r"['\N{RIGHT SINGLE QUOTATION MARK}`]", "", bare)
    return tuple(stem(word) for word in _NOT_WORDS.split(joined) if word)


def holds(words: tuple[str, ...], phrase: tuple[str, ...]) -> bool:
    """Whether the words contain the phrase, in one run."""
    return bool(phrase) and any(words[n : n + len(phrase)] == phrase for n in range(len(words) - len(phrase) + 1))


def foreign(text: str) -> bool:
    """Whether it has letters of another script, which `stems` would skip."""
    return any(sign.isalpha() and not _NOT_WORDS.sub("", unicodedata.normalize("NFKD", sign)) for sign in
               text.casefold().replace("œ", "o").replace("æ", "a").replace("ø", "o"))  # fmt: skip


def _words(text: str) -> frozenset[str]:
    return frozenset(word for piece in text.split() for word in stems(piece))


# Words beside a food that add nothing to it. `vegan`, `-free`, `filled`, `flavoured`, `breaded`, `marinated` and the
# like are not among them: they make another food, which is asked about unless listed.
NEUTRAL = _words(
    """a an the of some few about and extra very more half halved whole quarter quartered two three four five six
    seven eight nine ten twelve dozen each fresh freshly frozen defrosted thawed chilled cold warm hot raw
    uncooked leftover stale day old new large medium small big little baby mini tiny thick thin long short round
    fat heavy light lean fatty tender ripe unripe overripe firm soft hard juicy floury waxy mealy crisp crusty
    flaky fine coarse dry moist sour sweet bitter mild strong mature young aged plain pure good best quality
    favourite organic wild farmed local seasonal heritage unsalted salted unsweetened sweetened unwaxed waxed
    unpeeled peeled skinless skinned boneless boned bone skin on off unbleached bleached raised ready made home
    homemade bought shop rolled pressed red green yellow white black brown pink purple golden dark pale mixed
    assorted various chopped sliced diced minced grated shredded crushed torn cut cubed pitted stoned
    destoned seeded deseeded shelled podded hulled trimmed washed rinsed drained soaked squeezed picked cleaned
    gutted scaled filleted ground milled cracked flaked rubbed powdered granulated toasted roasted roast
    roasting baking stewing braising frying finely roughly coarsely thinly thickly lightly well hand melted
    softened whipped beaten separated sifted strained reduced smoked dried candied crystallised glace grilled
    baked steamed blanched charred caramelised sauteed smashed tinned canned bottled jarred tin can jar
    bottle pack packet bag box tub carton punnet block bar tray vacuum packed bunch sprig handful pinch piece
    slice fillet filet loin shoulder leg breast thigh wing drumstick belly rump neck shin shank cheek rib rack
    rasher chop cutlet steak joint escalope medallion tail knuckle saddle haunch crown carcass strip cube chunk
    wedge ring round segment half stick stalk stem leaf leafy leaves frond floret head heart bulb clove tip top
    root sheet ball log wheel loaf slab knob spear ear cob pod zest peel rind pulp flesh puree powder flake
    granule shaving shred matchstick baton husk sachet glass splash drop dash thumb water brine its own juice
    sea table cooking drinking everyday spring summer autumn winter italian french spanish greek english irish
    scottish dutch german american asian japanese chinese thai indian mexican turkish swiss danish polish"""
)
DRIED = _words("dried candied crystallised glace")
# Words that say it is already cooked or ready to eat.
COOKED = _words("cooked boiled poached tinned canned jarred bottled baked steamed grilled pasteurised pasteurized")
# Said by the host after the food: `9 eggs, baked through`.
COOKED_THROUGH = tuple(
    stems(words)
    for words in (
        "hard boiled",
        "baked through",
        "cooked through",
        "well done",
        "boiled hard",
        "pasteurised",
        "pasteurized",
    )
)
