"""Foods whose names keep quiet about what can hurt a guest: none of these may be called safe for them.

What such foods are made of is common practice, no source, but for the lists of allergens themselves, which are checked
in tests/kitchen/test_allergens.py. That asafoetida and mustard powder are stretched with flour, that shaoxing wine is
begun with wheat, that malted milk is of barley, and that raw prawns are dipped in sulphites, is from memory.
"""

import pytest

from board.facts.phrases import stems
from tests.checks.allergens.test_guests_eat import answer, verdict

# food: guests whom it can hurt
HURTS = """
white bread: no barley, no rye, no lupin
granary bread: no barley, no rye, no oats
panko: no rye
halva: no nuts, no pistachios, no wheat, no milk
furikake: no fish, no soy, no wheat
satay sauce: no peanuts, no soy, no fish, no crustaceans, coeliac
nougat: no eggs, no pistachios
praline: no pecans, no walnuts
asafoetida: coeliac, no wheat
baking powder: coeliac
English mustard powder: coeliac, no wheat
English mustard: coeliac
malted milk powder: coeliac, no barley
corn flakes: coeliac, no barley
puffed rice: coeliac
Shaoxing wine: coeliac, no wheat
beef burgers: coeliac, no eggs, no milk, no sulphites, no soy
meatballs: coeliac, no eggs, no milk
meat loaf: coeliac, no eggs
beef sausages: no beef
sausages: no beef, no celery
merguez: no beef
stock: no beef, no pork, no poultry, no crustaceans, no molluscs
meat stock: no beef, no pork, no poultry
gravy granules: no beef, no pork, coeliac
beef bones: no beef
ox tongue: no beef
kidneys: no beef, no pork
duck pate: no poultry
pate: no poultry
scampi: coeliac, no wheat
'cod, in golden crumb': coeliac, no wheat
'cod fillets (crumb coated)': coeliac
spring rolls: no crustaceans, no pork, no soy
summer rolls: no crustaceans, no peanuts
prawn toast: no sesame
onion rings: coeliac, no milk
seafood sticks: coeliac, no eggs
chocolate chips: no peanuts, no milk
dark chocolate: no walnuts
brownies: no walnuts, no pecans, no peanuts
cake: no coconut, no lupin
granola: no pistachios, no peanuts, no sulphites
ice cream: no wheat, no peanuts
pesto: no pistachios, no peanuts
curry paste: no soy, no wheat
barbecue sauce: no soy, no barley
mint sauce: coeliac
brown sauce: no soy
salad dressing: no fish, no sesame, no soy
remoulade: no celery
cheese sauce: no mustard
hollandaise: no mustard
crisps: no celery, no mustard
food colouring: vegan, vegetarian
stout: vegan, vegetarian, no sulphites
raw prawns: no sulphites
elderflower cordial: no sulphites
bottled lemon juice: no sulphites
desiccated coconut: no sulphites
ravioli: no crustaceans, no nuts, no celery
seitan: no soy
herb salt: no celery
chilli oil: no peanuts, no sesame
marshmallows: no pork, no eggs, no beef
puff pastry: no pork, no lupin
chips: no beef
dukkah: no peanuts
liqueur: no milk, no nuts
kombucha: alcohol-free, pregnant
ham: no celery
mixed berries: no strawberries
fruit salad: no pineapple
fruit juice: no apples
fruit tea: no strawberries
lemonade: no lemons
"""


def cases() -> list[tuple[str, str]]:
    lines = (line.rsplit(": ", 1) for line in HURTS.strip().splitlines())
    return [(guest, food.strip("'")) for food, guests in lines for guest in guests.split(", ")]


@pytest.mark.parametrize(("guest", "food"), cases())
def test_what_can_hurt_a_guest_is_never_called_safe(guest: str, food: str) -> None:
    assert verdict(f"Odile, {guest}", f"200 g {food}") != "SAFE"


@pytest.mark.parametrize(
    ("guest", "food", "expected"),
    [
        # what shares what can hurt in the food that they named
        ("no cheese", "brie", "ASK"),
        ("no cheese", "halloumi", "ASK"),
        ("no butter", "ghee", "ASK"),
        ("no egg white", "eggs", "ASK"),
        ("no egg yolk", "mayonnaise", "ASK"),
        ("no wheat flour", "couscous", "ASK"),
        ("no wine", "sherry", "ASK"),
        ("no ham", "bacon", "ASK"),
        ("no prawns", "crab", "ASK"),
        # another name of the same food
        ("no garbanzo beans", "gram flour", "NOT_SAFE"),
        ("no maize", "polenta", "NOT_SAFE"),
        ("no corn", "cornflour", "NOT_SAFE"),
        ("no chilli", "cayenne pepper", "NOT_SAFE"),
        ("no chilli", "Scotch bonnet", "NOT_SAFE"),
        ("no mushrooms", "maitake", "NOT_SAFE"),
        ("no mushrooms", "chicken of the woods", "NOT_SAFE"),
        ("no lentils", "dal", "NOT_SAFE"),
        ("no grapes", "raisins", "NOT_SAFE"),
        ("no plums", "prunes", "NOT_SAFE"),
        ("no apples", "cider", "NOT_SAFE"),
        ("no melon", "watermelon", "NOT_SAFE"),
        # a word for more than the table lists under it
        ("no fruit", "strawberries", "ASK"),
        ("no berries", "strawberries", "ASK"),
        ("no pulses", "lentils", "ASK"),
        ("no seeds", "tahini", "ASK"),
        # and what a host would laugh at
        ("no brussels sprouts", "bean sprouts", "SAFE"),
        ("no oysters", "oyster mushrooms", "SAFE"),
        ("no butter", "butternut squash", "SAFE"),
        ("no nuts", "nutmeg", "SAFE"),
        ("no sweet potato", "potatoes", "SAFE"),
        ("no beer", "ginger beer", "SAFE"),
        ("no lentils", "chickpeas", "SAFE"),
        ("no chicken", "beef shin", "SAFE"),
        ("coeliac", "rice vermicelli", "SAFE"),
        ("coeliac", "quinoa flour", "SAFE"),
        ("no meat", "chocolate chips", "SAFE"),
    ],
)
def test_a_guests_word_is_understood_as_wide_as_it_is(guest: str, food: str, expected: str) -> None:
    assert verdict(f"Odile, {guest}", f"200 g {food}") == expected


def test_what_settles_a_question_is_a_word_that_labels_use() -> None:
    """`free from egg white` would settle nothing: the label says eggs."""
    (reason,) = [r for r in answer("Odile, no egg white", "200 g pancakes").reasons if "often holds" in r.why]

    assert reason.mend == "Read the label; where it says so, write `pancakes, free from eggs`."
    assert verdict("Odile, no pork", "200 g marshmallows, free from gelatine") == "SAFE"


@pytest.mark.parametrize(
    ("guest", "line", "expected"),
    [
        ("no sesame", "2 tbsp oil (sesame)", "NOT_SAFE"),
        ("no milk", "400 g chicken thighs (in buttermilk)", "NOT_SAFE"),
        ("no milk", "100 ml oat drink (or cream)", "NOT_SAFE"),
        ("no eggs", "200 g pasta (contains egg)", "NOT_SAFE"),
        ("no fish", "200 g potatoes (with fish)", "NOT_SAFE"),
        # sections of a shop
        ("no fish", "200 g samphire (fish)", "SAFE"),
        ("no fish", "200 g samphire (fish counter)", "SAFE"),
        ("vegan", "2 lemons (fruit and veg)", "SAFE"),
        ("vegan", "200 g tofu (dairy)", "SAFE"),
        ("no milk", "3 eggs (dairy)", "SAFE"),
        ("vegetarian", "3 eggs (optional)", "SAFE"),
    ],
)
def test_what_the_last_brackets_name_is_in_it(guest: str, line: str, expected: str) -> None:
    """The last brackets are the section of the shop, where they name one."""
    assert verdict(f"Odile, {guest}", line) == expected


@pytest.mark.parametrize(
    ("food", "step", "expected"),
    [
        # raw meat, as in advice in pregnancy by NHS and FDA (from memory); figures: USDA FSIS / FoodSafety.gov
        ("300 g beef fillet", "", "NOT_SAFE"),
        ("300 g minced beef", "", "NOT_SAFE"),
        ("300 g chicken livers", "", "NOT_SAFE"),
        ("300 g beef fillet", ", where: stovetop", "ASK"),
        ("300 g beef fillet", ", where: stovetop, until: 54 C", "NOT_SAFE"),
        ("300 g beef fillet", ", where: stovetop, until: 145 F", "SAFE"),
        ("300 g minced beef", ", where: stovetop, until: 145 F", "NOT_SAFE"),
        ("300 g minced beef", ", where: stovetop, cooks: ground meat", "SAFE"),
        ("1 chicken", ", where: oven at 180 C, until: 165 F", "SAFE"),
        ("1 chicken", ", where: oven at 180 C, until: 74 C", "SAFE"),
    ],
)
def test_raw_meat_is_nothing_in_pregnancy(food: str, step: str, expected: str) -> None:
    assert verdict("Odile, pregnant", food, step=step) == expected


def test_crumbs_are_a_food_and_no_word_beside_one() -> None:
    assert stems("bread crumbs") == ("bread", "crumb")
    assert verdict("Odile, coeliac", "200 g gluten-free bread crumbs") != "SAFE"
