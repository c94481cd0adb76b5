"""Where foods stand in the shop. Common practice, no source."""

import re

import pytest

from board.facts.held import ENTRIES
from board.facts.sections import SECTIONS, as_called, section_of
from board.plan.phrases.quantities import parse_ingredient
from tests.conftest import PLANS

STANDS = {
    "veg": "shallots; flat-leaf parsley, chopped; 2 large aubergines; zucchini; lemon juice; cherry tomatoes; "
    "chestnut mushrooms; new potatoes; fresh coriander; root ginger; bean sprouts; strawberries; vacuum of "
    "leaves; mixed salad",
    "butcher": "lamb shoulder, boned; minced beef; streaky bacon; duck legs; chicken livers; pork sausages; goose fat",
    "fish": "skin-on sea bass fillets; raw king prawns; mussels; smoked mackerel; salmon steaks; scallops",
    "deli": "serrano ham; hummus; fresh ravioli; salami; smooth duck pâté; potato salad; tofu; quiche",
    "dairy": "melted butter; 6 large eggs; egg yolks; crème fraîche; goat's cheese; grated parmesan; oat milk; puff "
    "pastry; double cream; filo",
    "bakery": "sourdough bread, sliced; brioche buns; pitta; gluten-free bread; carrot cake",
    "baking": "plain flour; caster sugar; dried yeast; ground almonds; vanilla pods; dark chocolate; sultanas; "
    "cornflour; cornstarch; chopped walnuts; leaf gelatine; cocoa; confectioners' sugar; dried apricots",
    "store cupboard": "extra virgin olive oil; basmati rice; dried spaghetti; tinned tomatoes; chopped tomatoes; "
    "Puy lentils; sherry vinegar; Dijon mustard; cumin seeds; soy sauce; honey; bay leaves, dried; dried thyme; "
    "couscous; capers; black pepper; vegetable stock; coconut milk; anchovy fillets; tinned tuna; green olives; panko",
    "freezer": "frozen peas; vanilla ice cream; lemon sorbet; frozen raspberries; oven chips",
    "drinks": "dry white wine; ale; tonic water; ground coffee; apple juice; port; ice cubes; elderflower cordial",
    "florist": "cut flowers; 3 bunches tulips",
    "household": "dinner candles; paper napkins; tea lights; kitchen foil; charcoal; baking parchment",
    "": "mystery paste; wibble",
}  # fmt: skip


@pytest.mark.parametrize(("section", "food"), [(s, f) for s, foods in STANDS.items() for f in foods.split("; ")])
def test_a_food_stands_where_a_shopper_looks_for_it(section: str, food: str) -> None:
    assert section_of(food) == section


def test_every_food_of_the_table_stands_somewhere() -> None:
    assert [entry.phrase for entry in ENTRIES if section_of(entry.phrase) not in SECTIONS] == []


def test_what_is_in_a_tin_stands_among_tins() -> None:
    assert section_of("artichokes", "tin") == section_of("sweetcorn", "jar") == "store cupboard"
    assert section_of("artichokes") == "veg"
    assert section_of("cider", "bottle") == "drinks"


IN_EITHER = ("rolled oats",)  # with the flour or with the cereals


def test_the_bundled_plans_put_foods_where_the_table_does() -> None:
    texts = [path.read_text(encoding="utf-8") for path in PLANS.glob("*.yaml")]
    written = [line for text in texts for line in re.findall(r"^ +- (\w[^:{}\n]* \([a-z ]+\))", text, re.MULTILINE)]
    lines = [parse_ingredient(line) for line in written]
    said = {(each["food"], each.get("unit", "")): each["section"] for each in lines if each["section"] in SECTIONS}
    wrong = {what: section_of(*what) for what, section in said.items() if section_of(*what) != section}

    assert len(said) > 80
    assert [food for food, _ in wrong if food not in IN_EITHER] == []


def test_a_plans_own_word_for_a_section_goes_first() -> None:
    assert as_called("veg", ["greengrocer", "fish"]) == "greengrocer"
    assert as_called("veg", ["greengrocer", "veg"]) == "veg"
    assert as_called("fish", ["greengrocer"]) == "fish"
    assert as_called("", ["greengrocer"]) == ""
