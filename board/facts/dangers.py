"""Words in a plan that mean something can hurt somebody. Common practice, no source.

They are word beginnings: `flamb` finds flambé and flambéed. Words in `never` begin alike but mean something else.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Danger:
    """`words`: beginnings of a word, or of several in a row, that reveal it; `never`: exceptions."""

    topic: str
    words: tuple[str, ...]
    never: tuple[str, ...] = ()


ALCOHOL = Danger(
    "alcohol",
    ("wine", "beer", "cider", "sherry", "port", "brandy", "rum", "gin", "vodka", "whisky", "whiskey", "champagne",
     "prosecco", "punch", "cocktail", "liqueur", "spritz", "ale", "stout", "vermouth", "marsala", "madeira", "cognac",
     "calvados", "kirsch", "amaretto", "aperitif", "digestif", "spirit", "mead", "sake", "mulled"),
    ("cider vinegar", "wine vinegar", "sherry vinegar", "beer vinegar", "champagne vinegar", "ale vinegar", "port of",
     "ginger", "gingerbread", "portion", "portions", "portobello", "porterhouse", "rump", "rumble", "beer-free",
     "ginkgo", "wineglass", "wineglasses", "aleppo", "punchy", "meadow", "spirited"),
)  # fmt: skip
FLAME = Danger(
    "flame",
    ("candle", "lantern", "tealight", "tea light", "torch", "blowtorch", "flamb", "open fire", "fireplace", "sparkler",
     "oil lamp", "fire bowl", "fire pit", "gas ring", "camping stove", "fondue", "rechaud", "wick", "taper", "votive",
     "night light", "nightlight", "candelabra", "menorah", "bonfire", "brazier", "log burner", "logburner",
     "wood burner", "woodburner", "chiminea", "hearth", "log fire", "kindl", "ignite", "alight", "light the fire",
     "set fire", "set light", "open flame", "naked flame"),
    ("candied", "fondue bread", "wicker", "kindly", "tapered", "flameless candles", "electric candles", "led candles",
     "battery candles", "electric lanterns", "led lanterns", "led tea lights"),
)  # fmt: skip
CHARCOAL = Danger(
    "charcoal", ("charcoal", "barbecue", "bbq", "smoker", "hibachi", "tandoor", "embers", "grill outdoors")
)
BLADES = Danger(
    "blades",
    ("slice", "cut", "chop", "dice", "carve", "shuck", "fillet the", "bone the", "mandolin", "julienne", "mince the",
     "shave", "peel", "blender", "blend", "food processor", "grate", "shred", "stick blender", "open the oysters"),
    ("cutlery", "cutlet", "cutlets", "blended", "sliced", "grateful", "peeled"),
)  # fmt: skip
HOT_FAT = Danger(
    "hot-fat",
    ("deep-fry", "deep fry", "deep fat", "fryer", "fry", "fritter", "sear", "brown the", "shallow-fry", "caramel",
     "boil the sugar", "sugar syrup", "tempura", "doughnut", "duck fat", "crackling"),
    ("fry-up",),
)  # fmt: skip
FLOWERS = Danger(
    "flowers",
    ("flower", "garland", "leaves", "foliage", "ivy", "wreath", "branches", "bouquet", "petal", "evergreen", "holly",
     "moss", "berries on the branch", "posy"),
    ("cauliflower", "flowers of sulphur", "flour", "salad leaves", "bay leaves", "mint leaves", "basil leaves",
     "spinach leaves", "lettuce leaves", "curry leaves", "sage leaves", "elderflower", "sunflower", "orange flower",
     "coriander leaves", "celery leaves", "vine leaves", "cabbage leaves", "lime leaves", "gelatine leaves",
     "leaves of gelatine", "filo leaves", "parsley leaves", "tarragon leaves", "thyme leaves", "tea leaves"),
)  # fmt: skip
RAW_EGG = Danger("raw-egg", ("egg", "yolk"), ("eggplant", "egg-free", "egg noodle", "egg pasta", "hard-boiled egg"))
RAW_EGG_DISHES = ("mousse", "mayonnaise", "aioli", "tiramis", "semifreddo", "eggnog", "hollandaise", "béarnaise",
                  "zabaglione", "sabayon", "caesar")  # fmt: skip
# Warm and wet, as bacteria like it: raw seed sprouts are not served to the highly susceptible, FDA Food Code 3-801.11,
# from memory. Brussels sprouts, cress and pea shoots are not among them.
RAW_SPROUTS = Danger(
    "raw-sprouts",
    ("bean sprout", "beansprout", "mung sprout", "alfalfa", "clover sprout", "radish sprout", "daikon sprout",
     "broccoli sprout", "lentil sprout", "chickpea sprout", "fenugreek sprout", "onion sprout", "sunflower sprout",
     "mustard sprout", "soybean sprout", "adzuki sprout", "seed sprout", "sprouted"),
    ("alfalfa honey", "sprouted bread", "sprouted flour"),
)  # fmt: skip
EVERY = (ALCOHOL, FLAME, CHARCOAL, BLADES, HOT_FAT, FLOWERS, RAW_EGG, RAW_SPROUTS)
