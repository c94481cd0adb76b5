"""How many days raw food keeps after purchase if stored properly: only for choosing the day to buy. Pure.

Meat, poultry, fish and eggs: USDA FSIS / FoodSafety.gov cold storage chart, the lower figure; sausages and fresh stock
the same, and fresh pasta FoodKeeper, from memory; the rest is common practice, no source. The label and the food itself
override them.
"""

import functools
import re
from dataclasses import dataclass

from board.facts.called import same_food

FSIS = "USDA FSIS cold storage chart, the lower figure"
FSIS_MEMORY = "USDA FSIS / FoodSafety.gov cold storage chart, the lower figure; from memory"
PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class RawKeep:
    """Whole days after the day of purchase. `most`: the chart's upper figure. `late`: raw meat and fish, and leaves,
    are bought as late as may be."""

    days: int
    source: str = PRACTICE
    most: int | None = None
    late: bool = False


_FOODS: tuple[tuple[RawKeep, str], ...] = (
    (RawKeep(90), "frozen; ice cream"),
    (RawKeep(180), "dried; tinned; canned; in a jar; pickled; peppercorn; black pepper; white pepper"),
    (RawKeep(1), "ice; ice cube; flower; bouquet"),
    (RawKeep(1, late=True), "oyster; mussel; clam; scallop; watercress; bean sprout"),
    (RawKeep(1, FSIS, 2, late=True), "mince; minced beef; minced pork; minced lamb; ground beef; ground pork; "
     "ground lamb; ground turkey; burger; offal; liver; kidney; chicken; turkey; duck; goose; guinea fowl; quail; "
     "poultry"),
    (RawKeep(1, FSIS_MEMORY, 2, late=True), "sausage; raw sausage; sausage meat; sausagemeat; bratwurst; merguez; "
     "chipolata"),
    (RawKeep(1, FSIS, 3, late=True), "fish; salmon; trout; mackerel; cod; haddock; hake; sole; plaice; sea bass; "
     "bream; tuna; halibut; prawn; shrimp; crab; lobster; squid; octopus"),
    (RawKeep(3, FSIS, 5, late=True), "beef; lamb; pork; veal; venison; steak; chop; shin; shoulder; brisket; ham; "
     "roast"),
    (RawKeep(7, FSIS_MEMORY), "bacon; smoked sausage; cooked sausage; frankfurter; hot dog; hot dog sausage; wiener; "
     "saveloy"),
    (RawKeep(7), "smoked salmon; vegetarian sausage; vegan sausage"),
    (RawKeep(14, FSIS_MEMORY), "salami; pepperoni; chorizo; saucisson; dry sausage; dried sausage; cured sausage"),
    (RawKeep(21, FSIS), "egg"),
    (RawKeep(2, FSIS), "egg white; egg yolk"),
    (RawKeep(5), "milk; cream; double cream; single cream; whipping cream; sour cream; creme fraiche; "
     "yogurt; yoghurt; mascarpone; ricotta; buttermilk; mozzarella; goat cheese; soft cheese; feta; tofu; yeast"),
    (RawKeep(21), "butter; margarine; hard cheese; parmesan; cheddar; mountain cheese; cheese; oat drink"),
    (RawKeep(3, late=True), "salad leaf; lettuce; spinach; rocket; chard; chicory"),
    (RawKeep(3), "thyme; rosemary; sage; parsley; dill; chive; basil; mint; coriander; tarragon; chervil; herb; "
     "asparagus; mushroom; broccoli; green bean; pea; avocado; "
     "cucumber; spring onion; radish; fennel; courgette; aubergine; pepper; horseradish"),
    (RawKeep(2), "berry; strawberry; raspberry; blackberry; blueberry; fig; peach; apricot; cherry; plum; bread; "
     "roll; baguette; sourdough; brioche; cake"),
    (RawKeep(5), "leek; kale; celery; cauliflower; tomato; pear; grape; puff pastry; pastry"),
    (RawKeep(10), "apple; lemon; lime; orange; onion; shallot; garlic; ginger; potato; carrot; celeriac; parsnip; "
     "beetroot; turnip; swede; mixed root; root; cabbage; pumpkin; squash"),
    (RawKeep(180), "flour; sugar; salt; oil; vinegar; rice; pasta; lentil; bean; butter bean; chickpea; barley; oat; "
     "stock; honey; syrup; jam; mustard; tomato paste; spice; seed; nut; almond; walnut; chocolate; cocoa; vanilla; "
     "cornflour; baking powder; baking soda; gelatine; coffee; tea; wine; beer; dark beer; cider; juice; "
     "apple juice; water; candle; nutmeg; cinnamon; clove; olive; soy sauce; peanut butter; coconut milk; "
     "golden syrup; tomato puree; tinned tomato; chicken stock; beef stock; fish stock; fish sauce; pork stock; "
     "egg noodle; apple sauce; lemonade"),
)  # fmt: skip
# Sold chilled, unlike the dry or tinned thing of that name.
_FRESH: tuple[tuple[RawKeep, str], ...] = (
    (RawKeep(1, FSIS_MEMORY), "pasta; egg pasta; ravioli; tortellini; tagliatelle; pappardelle; spaghetti; linguine; "
     "lasagne; lasagne sheet; noodle; egg noodle; gnocchi"),
    (RawKeep(3, FSIS_MEMORY), "stock; broth; chicken stock; beef stock; fish stock; pork stock; vegetable stock; soup; "
     "gravy"),
)  # fmt: skip
_SOLD_FRESH = ("ravioli", "tortellini", "gnocchi")  # unless said to be dried
_SECTIONS: tuple[tuple[RawKeep, str], ...] = (
    (RawKeep(1), "fishmonger; fish; flower; florist"),
    (RawKeep(2), "butcher; meat; bakery; baker"),
    (RawKeep(3), "veg; vegetable; fruit; greengrocer; produce"),
    (RawKeep(5), "dairy; chiller"),
    (RawKeep(90), "freezer"),
    (RawKeep(180), "store cupboard; baking; drink; pantry; tin; spice; household; candle"),
)
UNKNOWN = RawKeep(2)  # neither food nor section is known

BY_FOOD = {same_food(words): keep for keep, names in _FOODS for words in names.split("; ")}
BY_FRESH = {same_food(words): keep for keep, names in _FRESH for words in names.split("; ")}
BY_SECTION = {words: keep for keep, names in _SECTIONS for words in names.split("; ")}


_CHILLED = re.compile(r"\b(?:fresh|freshly|chilled|home-?made)\b(?! frozen)", re.IGNORECASE)


@functools.lru_cache(maxsize=1024)
def raw_keep(food: str, section: str | None = None) -> RawKeep:
    """By the longest known words in its name (the last if equally long); otherwise by its section."""
    name = same_food(food)
    fresh = _longest(name, BY_FRESH) if _CHILLED.search(food) or name in _SOLD_FRESH else None
    return fresh or _longest(name, BY_FOOD) or _longest(same_food(section or ""), BY_SECTION) or UNKNOWN


def _longest(name: str, known: dict[str, RawKeep]) -> RawKeep | None:
    best: tuple[int, int] | None = None
    found = None
    text = _apart(name)
    for words, keep in known.items():
        start = text.rfind(_apart(words))
        rank = (words.count(" ") + 1, start)
        if start >= 0 and (best is None or rank > best):
            best, found = rank, keep
    # How it was preserved counts more than what it is.
    for words in ("frozen", "dried", "tinned", "canned", "pickled"):
        if _apart(words) in text and words in known:
            return known[words]
    return found


def _apart(key: str) -> str:
    """A food's key with a space before and behind each run of its words."""
    return f" {key.replace(',', ' ')} "
