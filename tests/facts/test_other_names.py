"""One food under two names is one thing to buy; two things under like names are not."""

import pytest

from board.facts.called import as_bought, same_food
from board.facts.other_names import NAMES

# EU: the products of Annex I to Regulation (EC) No 396/2005 that have two names, joined there by a stroke or in the
# column of synonyms. USDA: names of the National Nutrient Database for Standard Reference (FoodData Central). Law: the
# United Kingdom's and the United States' rules for names of foods. All from memory but those marked read, which were
# read in stored copies of the table.
PUBLISHED = [
    ("aubergines", "eggplants", "EU"), ("swedes", "rutabagas", "EU"), ("spring onions", "green onions", "EU"),
    ("lamb's lettuces", "corn salads", "EU"), ("peanuts", "groundnuts", "EU"), ("sweet peppers", "bell peppers", "EU"),
    ("roman rocket", "rucola", "EU"), ("courgettes", "zucchini", "EU"),
    ("broad beans", "fava beans", "USDA"), ("linseeds", "flaxseeds", "EU"),
    ("coriander leaves", "cilantro", "USDA, read: Coriander (cilantro) leaves, raw"),
    ("spring onions", "scallions", "USDA, read: Onions, spring or scallions (includes tops and bulb), raw"),
    ("chickpeas", "garbanzo beans", "USDA, read: Chickpeas (garbanzo beans, bengal gram), mature seeds, raw"),
    ("hazelnuts", "filberts", "USDA: Nuts, hazelnuts or filberts"),
    ("adzuki beans", "aduki beans", "USDA: Beans, adzuki"),
]  # fmt: skip
# Common practice, no source.
USUAL = [
    ("Aubergine, diced", "eggplant"), ("baby courgettes", "baby zucchini"), ("zucchinis", "courgette"),
    ("courgette flowers", "zucchini blossoms"), ("wild rocket", "wild arugula"), ("beetroot", "beets"),
    ("celeriac", "celery root"), ("mangetout", "snow peas"), ("pak choi", "bok choy"), ("mooli", "daikon"),
    ("cos lettuce", "romaine"), ("Jerusalem artichokes", "sunchokes"), ("red pepper", "red bell peppers"),
    ("red capsicum", "red sweet pepper"), ("cloves of garlic", "garlic"), ("garlic cloves", "cloves garlic"),
    ("icing sugar", "powdered sugar"), ("confectioners' sugar", "confectioner's sugar"),
    ("caster sugar", "castor sugar"),
    ("superfine sugar", "caster sugar"), ("plain flour", "all-purpose flour"), ("cornflour", "corn starch"),
    ("cornflour", "cornstarch"), ("self-raising flour", "self rising flour"), ("strong white flour", "bread flour"),
    ("wholemeal flour", "whole-wheat flour"), ("bicarbonate of soda", "baking soda"), ("bicarb", "baking soda"),
    ("heavy cream", "heavy whipping cream"), ("soured cream", "sour cream"), ("minced beef", "ground beef"),
    ("lamb mince", "ground lamb"), ("pork fillet", "pork tenderloin"), ("rapeseed oil", "canola oil"),
    ("groundnut oil", "peanut oil"), ("pine nuts", "pine kernels"), ("pumpkin seeds", "pepitas"),
    ("vanilla pod", "vanilla beans"), ("flaked almonds", "sliced almonds"), ("ground coriander", "coriander powder"),
    ("chilli flakes", "crushed red pepper"), ("dark chocolate", "plain chocolate"), ("filo pastry", "phyllo"),
    ("tinned tomatoes", "canned tomatoes"), ("haricot beans", "navy beans"), ("sponge fingers", "ladyfingers"),
    ("yogurt", "Yoghurt"), ("leaf gelatine", "gelatin sheets"), ("soya milk", "soy milk"),
    ("red chilli", "red chilies"),
    ("crème fraîche", "creme fraiche"), ("cheddar", "cheddar cheese"), ("goat's cheese", "goats’ cheese"),
]  # fmt: skip
CUT = [
    ("onion", "chopped onions"), ("onion", "onions, finely chopped"), ("onion", "finely diced large onion"),
    ("lemon", "lemons, zested and juiced"), ("garlic", "crushed garlic"), ("garlic", "garlic, minced"),
    ("butter", "melted butter"), ("butter", "butter, softened, plus extra for greasing"), ("egg", "beaten egg"),
    ("egg", "large eggs"), ("potato", "potatoes, peeled and cut into 2 cm chunks"),
    ("parsley", "chopped fresh parsley"),
    ("tomato", "tomatoes, roughly chopped"), ("frozen pea", "frozen peas, thawed"),
    ("tinned chickpea", "tinned chickpeas, drained and rinsed"), ("bread", "bread, thinly sliced"),
]  # fmt: skip
APART = [
    ("sweet potato", "yam"), ("spring onion", "onion"), ("green onion", "onion"), ("baking powder", "baking soda"),
    ("sherry", "sherry vinegar"), ("coriander seeds", "coriander"), ("coriander seeds", "ground coriander"),
    ("coriander", "ground coriander"), ("coriander, ground", "coriander"), ("cumin seeds", "ground cumin"),
    ("cinnamon stick", "ground cinnamon"), ("nutmeg", "ground nutmeg"), ("cloves", "garlic cloves"),
    ("clove", "ground cloves"), ("black peppercorns", "ground black pepper"), ("black pepper", "bell pepper"),
    ("pepper", "bell pepper"), ("red pepper", "green pepper"), ("red pepper flakes", "red pepper"),
    ("double cream", "heavy cream"), ("single cream", "light cream"), ("double cream", "whipping cream"),
    ("cornflour", "corn flour"), ("cornflour", "cornmeal"), ("plain flour", "self-raising flour"),
    ("plain flour", "flour"), ("cake flour", "plain flour"), ("icing sugar", "caster sugar"),
    ("granulated sugar", "caster sugar"), ("golden syrup", "corn syrup"), ("treacle", "molasses"),
    ("tomato puree", "tomato paste"), ("tinned tomatoes", "tomatoes"), ("chopped tomatoes", "tomatoes"),
    ("dried apricots", "apricots"), ("smoked salmon", "salmon"), ("smoked paprika", "paprika"),
    ("dried thyme", "thyme"), ("ginger", "ground ginger"), ("fresh yeast", "dried yeast"), ("fresh pasta", "pasta"),
    ("fresh turmeric", "turmeric"), ("chicory", "endive"), ("courgette", "courgette flowers"), ("marrow", "courgette"),
    ("swede", "turnip"), ("celeriac", "celery"), ("celery seed", "celery"), ("beetroot", "pickled beetroot"),
    ("fennel", "fennel seeds"), ("mustard", "mustard seeds"), ("butter", "peanut butter"), ("coconut", "coconut milk"),
    ("prawns", "shrimps"), ("mixed spice", "allspice"), ("star anise", "aniseed"), ("paprika", "cayenne"),
    ("vinegar", "wine vinegar"), ("white wine", "white wine vinegar"), ("rice", "rice vinegar"),
    ("digestive biscuits", "graham crackers"), ("rocket", "watercress"), ("peanuts", "peanut oil"),
    ("coconut", "grated coconut"), ("mozzarella", "grated mozzarella"), ("almonds", "flaked almonds"),
    ("flaked almonds", "ground almonds"), ("ham", "sliced ham"), ("beef", "diced beef"), ("beef", "minced beef"),
    ("mince", "mincemeat"), ("chilli", "chilli flakes"), ("chillies", "crushed chillies"), ("peas", "frozen peas"),
    ("unsalted butter", "butter"), ("lime", "lime leaves"), ("vine tomatoes", "tomatoes"), ("broad beans", "beans"),
    ("butter beans", "butter"), ("egg", "egg yolk"), ("hard-boiled eggs", "eggs"), ("prawns", "large prawns"),
    ("rice, cooked", "rice"),
    ("vanilla extract", "vanilla pod"), ("sherry", "medium sherry"),
    ("rice", "medium-grain rice"), ("fresh goat's cheese", "goat's cheese"), ("cheddar", "medium cheddar"),
    ("bread, no seeds", "bread"),
    ("coriander, seeds", "coriander"), ("bread, seeded", "bread"), ("sesame oil, toasted", "sesame oil"),
    ("chicken thighs, with skin", "chicken thighs"), ("pistachios, shelled", "pistachios"),
]  # fmt: skip


@pytest.mark.parametrize(("one", "other"), [*((a, b) for a, b, _ in PUBLISHED), *USUAL, *CUT])
def test_one_thing_to_buy(one: str, other: str) -> None:
    assert same_food(one) == same_food(other)


@pytest.mark.parametrize(("one", "other"), APART)
def test_two_things_to_buy(one: str, other: str) -> None:
    """Two fats, too: double cream has 48 % (United Kingdom, Food Labelling Regulations 1996, schedule 8), heavy cream
    36 % at least (United States, 21 CFR 131.150); single cream 18 %, light cream 18 to 30 % (131.155). From memory."""
    assert same_food(one) != same_food(other)


def test_no_name_stands_for_two_foods_and_each_group_is_one() -> None:
    written = [name for names in NAMES for name in names]

    assert len(written) == len(set(written))
    assert [names for names in NAMES if len({same_food(name) for name in names}) > 1] == []
    assert len({same_food(names[0]) for names in NAMES}) == len(NAMES)


@pytest.mark.parametrize(
    ("name", "shown"),
    [("finely chopped onions", "onions"), ("Flat-leaf parsley, leaves picked", "Flat-leaf parsley"),
     ("chopped tomatoes", "chopped tomatoes"), ("large eggs", "eggs"), ("rice, cooked", "rice, cooked"),
     ("smoked salmon, thinly sliced", "smoked salmon"), ("chopped", "chopped")],
)  # fmt: skip
def test_a_shopper_reads_no_way_of_cutting(name: str, shown: str) -> None:
    assert as_bought(name) == shown
