"""Foods under names that say less, more or something else than what is in them.

What a dish holds is common practice, no source. Raw and barely cooked food for those more easily harmed: FDA Food Code
2022, 3-801.11; UK NHS, foods to avoid in pregnancy (all pâté, vegetable pâté too; haggis and liver; cod liver oil). A
vegan label is no statement about allergens: UK FSA. All from memory.
"""

import re

import pytest

from board.checks.allergens.guests_eat import matrix
from board.facts.allergens import Allergen
from board.facts.food import facts, raw_class
from board.facts.foods.dishes import DISHES
from board.facts.foods.ready import READY
from board.facts.foods.ways import WAYS
from board.facts.held import ENTRIES, table
from board.facts.origins import Origin, Trait
from board.facts.phrases import stems, words_of
from board.facts.reading import read as read_words
from board.plan.load import PlanFile
from tests.conftest import read

NEEDS = {
    "milk": "no milk", "egg": "no eggs", "fish": "no fish", "crustaceans": "no crustaceans", "nuts": "no tree nuts",
    "peanuts": "no peanuts", "gluten": "coeliac", "soy": "no soy", "mustard": "no mustard", "molluscs": "no molluscs",
    "oats": "no oats", "vegetarian": "vegetarian", "vegan": "vegan", "beef": "no beef", "pregnant": "pregnant",
    "infant": "8 months old", "elderly": "84 years old", "alcohol": "alcohol-free", "halal": "halal",
}  # fmt: skip
NAMES = ("Ada", "Ben", "Cal", "Dan", "Eva", "Fay", "Gus", "Hal", "Ida", "Jan", "Kim", "Leo", "Mia", "Ned", "Ola", "Pia",
         "Quin", "Rui", "Sue")  # fmt: skip
AT_RISK = "pregnant infant elderly"

# food | not safe for | to be asked about for. Others may be either.
MISLEADING = f"""
    ceviche | fish vegetarian {AT_RISK} |
    sashimi | fish {AT_RISK} |
    nigiri | fish {AT_RISK} |
    sushi | fish {AT_RISK} |
    poke bowl | fish {AT_RISK} |
    tuna tartare | fish {AT_RISK} |
    salmon carpaccio | fish {AT_RISK} |
    steak tartare | vegetarian beef {AT_RISK} | egg fish
    beef carpaccio | vegetarian beef {AT_RISK} |
    boquerones | fish {AT_RISK} |
    gravlax | fish {AT_RISK} |
    lomi salmon | fish {AT_RISK} |
    cold-smoked halibut | fish {AT_RISK} |
    turkey rashers | vegetarian {AT_RISK} |
    rare steaks | vegetarian {AT_RISK} |
    beef olives | vegetarian beef {AT_RISK} |
    pork schnitzel | vegetarian {AT_RISK} | egg
    lamb kebabs | vegetarian {AT_RISK} |
    cookie dough | gluten {AT_RISK} | egg milk
    cake batter | gluten {AT_RISK} | egg milk
    California rolls | fish | crustaceans {AT_RISK}
    trout roe | fish | {AT_RISK}
    tobiko | fish | {AT_RISK}
    caviar | fish | {AT_RISK}
    taramasalata | fish | {AT_RISK}
    royal icing | egg | {AT_RISK}
    carbonara | egg milk vegetarian | {AT_RISK}
    hollandaise | egg milk | {AT_RISK}
    béarnaise | egg milk | {AT_RISK}
    homemade hollandaise | egg milk {AT_RISK} |
    homemade mayonnaise | egg {AT_RISK} |
    homemade aioli | egg {AT_RISK} |
    Caesar dressing | egg | {AT_RISK} fish
    Caesar salad | egg | {AT_RISK} fish
    tiramisu | egg milk gluten | {AT_RISK}
    chocolate mousse | milk | {AT_RISK} egg
    eggs Benedict | egg milk gluten vegetarian | {AT_RISK}
    poached eggs | egg | {AT_RISK}
    eggnog | egg alcohol | elderly
    fish pâté | fish {AT_RISK} |
    mushroom pâté | {AT_RISK} |
    cod liver oil | fish pregnant |
    haggis | vegetarian pregnant | gluten

    Scotch woodcock | egg fish milk gluten vegetarian | {AT_RISK}
    vitello tonnato | fish egg beef vegetarian |
    toad in the hole | gluten egg milk vegetarian {AT_RISK} |
    scotch fillet | beef vegetarian {AT_RISK} |
    Scotch salmon | fish vegetarian {AT_RISK} |
    Scotch trifle | milk egg gluten | alcohol
    Welsh rabbit | milk gluten | alcohol
    lemon cheese | egg milk |
    Bombay duck | fish vegetarian |
    sweetbreads | vegetarian {AT_RISK} |
    headcheese | vegetarian | {AT_RISK}
    mincemeat | | vegetarian beef alcohol nuts
    Glamorgan sausages | milk gluten | egg vegetarian
    mock turtle soup | vegetarian beef | egg gluten
    prairie oysters | egg | {AT_RISK} alcohol vegetarian
    rocky mountain oysters | vegetarian {AT_RISK} |
    angels on horseback | molluscs vegetarian {AT_RISK} |
    devils on horseback | vegetarian |
    Bath chaps | vegetarian | {AT_RISK}
    faggots | vegetarian pregnant | gluten
    stargazy pie | fish gluten vegetarian |
    coulibiac | fish gluten vegetarian | egg
    steak and kidney pudding | beef gluten vegetarian |
    cock-a-leekie | vegetarian |
    Irish stew | vegetarian |
    Scotch broth | gluten vegetarian |
    rendang | | vegetarian beef fish
    biryani | | vegetarian crustaceans
    chicken fried steak | beef gluten vegetarian {AT_RISK} |
    prawn cocktail | crustaceans egg |
    shrimp cocktail | crustaceans egg |
    crab pâté | crustaceans {AT_RISK} | fish
    seafood paella | crustaceans fish molluscs |
    egg rolls | egg gluten |
    oatmeal cookies | oats gluten |
    coronation chicken | egg vegetarian |
    pork pie | gluten vegetarian | egg pregnant
    ox liver | beef vegetarian pregnant |
    shellfish stock | crustaceans molluscs fish |
    prawn stock | crustaceans | molluscs fish

    dairy-free spread | | soy vegan egg nuts gluten
    milk-free spread | | soy vegan
    sugar-free sweets | | vegan milk nuts
    nut-free spread | | soy vegan
    vegan spread | | soy milk
    vegan butter | | milk egg soy
    vegan cheese | | milk egg soy nuts
    vegan mayonnaise | | milk egg soy mustard
    vegan ice cream | | milk egg nuts
    egg replacer | | milk egg soy gluten
    gluten-free oat flour | oats | gluten
    gluten-free porridge | oats | gluten
    gluten-free muesli | oats | gluten nuts
    tempeh | soy | gluten
    seitan bacon | gluten | egg soy
"""
# food | nobody of these has to be asked
HARMLESS = f"""
    champagne rhubarb | alcohol halal milk egg vegetarian vegan
    champagne mango | alcohol halal vegan
    muscat grapes | alcohol halal vegan
    bourbon vanilla | alcohol halal pregnant
    bourbon vanilla pod | alcohol halal pregnant
    horse mackerel | beef halal
    seitan bacon | vegetarian halal alcohol {AT_RISK}
    tofu bacon | vegetarian halal {AT_RISK}
    tempeh bacon | vegetarian vegan {AT_RISK}
    mock duck | vegetarian halal
    vegan butter | vegan vegetarian
    vegan sausages | vegan vegetarian halal
    lemon meringue pie | fish mustard crustaceans alcohol
    pecan pie | fish mustard crustaceans alcohol
    apple pie | fish mustard crustaceans alcohol
    milk chocolate | alcohol halal {AT_RISK}
    toffee | alcohol halal {AT_RISK}
    Scotch beef | alcohol milk
    Scotch bonnets | alcohol halal vegan
    blood oranges | vegan vegetarian {AT_RISK}
    beefsteak tomatoes | vegan vegetarian beef
    butter beans | milk vegan
    lobster mushrooms | crustaceans vegan
    turkey tail mushrooms | vegan vegetarian
    damson cheese | milk vegan vegetarian
    pear butter | milk vegan
    fruit cocktail | alcohol vegan
    cocktail onions | alcohol vegan
    chickpea curry | beef
    aubergine rendang | beef
    mayonnaise | {AT_RISK}
    pasteurised hollandaise | {AT_RISK}
    salted anchovies | {AT_RISK}
    pastry cases | {AT_RISK}
    pizza base | {AT_RISK}
    vegetable terrine | fish
"""


def _rows(text: str) -> dict[str, list[list[str]]]:
    rows = [[part.strip() for part in line.split("|")] for line in text.splitlines() if line.strip()]
    return {food: [part.split() for part in parts] for food, *parts in rows}


NOT_SAFE_OR_ASK, NOBODY = _rows(MISLEADING), _rows(HARMLESS)


@pytest.fixture(scope="module")
def verdicts() -> dict[tuple[str, str], str]:
    """The verdict on each food alone on a plate, that nothing heats, for each need."""
    foods = list(dict.fromkeys((*NOT_SAFE_OR_ASK, *NOBODY)))
    guests = "".join(f"  - {name}, {need}\n" for name, need in zip(NAMES, NEEDS.values(), strict=True))
    dishes = "".join(
        f"      - {{dish: Plate {n}, ingredients: ['100 g {food}'], steps: [{{step: set out {n}, takes: 5 min}}]}}\n"
        for n, food in enumerate(foods)
    )
    file = read(
        "event: Test supper\ndate: 2026-11-28\nzone: Europe/Dublin\narrive: 18:30\n"
        f"guests:\n{guests}hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}\n"
        f"courses:\n  - course: Main\n    at: 19:15\n    dishes:\n{dishes}"
    )
    assert isinstance(file, PlanFile), file
    needs = list(NEEDS)
    return {(foods[d], needs[g]): answer.verdict.name for (g, d), answer in matrix(file).answers.items()}


@pytest.mark.parametrize("food", NOT_SAFE_OR_ASK)
def test_a_name_hides_nothing_that_can_hurt(food: str, verdicts: dict[tuple[str, str], str]) -> None:
    never, asks = NOT_SAFE_OR_ASK[food]

    assert {need: verdicts[food, need] for need in (*never, *asks)} == {
        **dict.fromkeys(never, "NOT_SAFE"), **dict.fromkeys(asks, "ASK")
    }  # fmt: skip


@pytest.mark.parametrize("food", NOBODY)
def test_a_name_brings_nothing_that_is_not_in_it(food: str, verdicts: dict[tuple[str, str], str]) -> None:
    assert {need: verdicts[food, need] for need in NOBODY[food][0]} == dict.fromkeys(NOBODY[food][0], "SAFE")


# Words of a name that say, read one by one, more than the thing holds; common practice, no source.
_ONLY_CALLED_SO = r"""
    (goats|hens|duck|quail|goose|ostrich) .*|niter kibbeh|.*[a-z] (butter|nut)|(\w+ )?nut .*
    (cashew|pecan|brazil|pine) .*
    .*(flour|noodle|crumb|crumbed|bran|rice|tortilla|vermicelli|bun)|(spaghetti|patty pan|courgette|butternut) .*
    port salut|cheese sauce powder|pastry cream|scotch (fillet|steak|bonnet|pancake|egg|broth|pie)|rose .*|ham hock.*
    chicken oyster|(turkey|chicken|duck|beef) (bacon|rasher|ham)|ham (stock|wrapped)|cocktail sausage|fish egg
    (cured|air dried|dry cured|parma|serrano|iberico|black forest|bayonne) ham|(halibut|cod|fish|shark) liver( oil)?
    mantis shrimp|crab meat|prawn cracker|\w+ cocktail|burgundy snail|cream of wheat|coconut blossom nectar|pate sucree
    coconut vinegar|pancake syrup|(strudel|pasta) dough|dough ball|batter mix|in (beer )?batter|(batter coated)
    tempura batter|brandy snap|madeira sponge|(custard|blancmange) powder|chocolate egg|vermicelli chocolate|wine gum
    maraschino cherry|champagne mango|crab apple|bean curd|\w+ vinegar|tandoori masala|shawarma spice|steak sauce
    salad cream|cream sherry|rye whiskey|mince pie|(marie rose|cocktail|burger) sauce|welsh rabbit|scotch woodcock
    prairie oyster|chicken fried steak|chestnut cap|creamed coconut|liquorice root
"""
_CALLED_SO = re.compile("|".join(line.strip() for line in _ONLY_CALLED_SO.strip().splitlines()))


@pytest.mark.slow
def test_no_food_holds_less_than_its_name_says() -> None:
    """A cod's liver oil under the name of fish oil had lost the liver. What is often in it counts as said."""
    names = dict(table())
    lost = []
    for entry in ENTRIES:
        key = stems(entry.phrase)
        if not entry.likeness and len(key) > 1 and not _CALLED_SO.fullmatch(entry.phrase):
            own = names.pop(key)
            found = read_words(words_of(entry.phrase), names, beside=False).held
            names[key] = own
            said = frozenset[Trait]().union(*(food.traits for food in found))
            if less := said - entry.traits - entry.hidden:
                lost.append((entry.phrase, sorted(trait.value for trait in less)))

    assert lost == []


def test_every_dish_of_the_table_holds_or_hides_something() -> None:
    dishes = (*READY, *DISHES, *WAYS)

    empty = [entry.phrase for entry in dishes if not (entry.traits or entry.hidden or entry.likeness)]

    assert [phrase for phrase in empty if not phrase.startswith("maple ")] == []


@pytest.mark.parametrize(
    ("named", "part"),
    [
        ("pork pie", Origin.PORK), ("steak pie", Origin.BEEF), ("sausage rolls", Origin.MEAT),
        ("game pie", Origin.GAME),
        ("meat lasagne", Origin.MEAT), ("beef lasagne", Origin.BEEF), ("chicken salad", Origin.POULTRY),
        ("crab pâté", Allergen.CRUSTACEANS), ("smoked mackerel pâté", Origin.SMOKED_FISH), ("miso soup", Allergen.SOY),
        ("cream of chicken soup", Origin.POULTRY), ("cream of celery soup", Allergen.CELERY),
        ("breaded brie", Origin.MOULD_CHEESE), ("mozzarella sticks", Allergen.MILK), ("nut bars", Allergen.HAZELNUTS),
        ("oat biscuits", Allergen.OATS), ("egg rolls", Allergen.EGGS), ("celeriac steaks", Allergen.CELERY),
        ("barley miso", Allergen.BARLEY), ("malted flour", Allergen.BARLEY),
        ("blue cheese dressing", Origin.MOULD_CHEESE),
        ("suet pastry", Origin.ANIMAL_FAT), ("walnut cake", Allergen.WHEAT), ("seafood bisque", Allergen.MOLLUSCS),
        ("mustard mayonnaise", Allergen.EGGS), ("macaroni salad", Allergen.WHEAT), ("ox liver", Origin.BEEF),
        ("corn dogs", Origin.MEAT), ("granola bars", Allergen.OATS), ("semolina pudding", Allergen.WHEAT),
    ],
)  # fmt: skip
def test_a_dish_surely_holds_what_it_is_named_after(named: str, part: Allergen | Origin) -> None:
    found = facts(named)

    assert found is not None
    assert part in found.traits


@pytest.mark.parametrize(
    ("food", "raw"),
    [
        ("ceviche", "fish"), ("nigiri", "fish"), ("turkey rashers", "poultry"), ("steak tartare", "ground meat"),
        ("beef carpaccio", "whole cut"), ("beef olives", "ground meat"), ("toad in the hole", "ground meat"),
        ("scotch fillet", "whole cut"), ("pork schnitzel", "whole cut"), ("chicken kebabs", "poultry"),
        ("angels on horseback", "fish"), ("turkey ham", None), ("cod's roe, cooked through", None),
        ("mushroom kebabs", None), ("horse mackerel", "fish"),
    ],
)  # fmt: skip
def test_a_dish_sold_raw_has_the_class_of_its_raw_food(food: str, raw: str | None) -> None:
    assert raw_class(food) == raw


DISH = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Mia, pregnant', host]
hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}
courses: [{{course: Main, at: 19:15, dishes: [{{dish: Plate, ingredients: [{food!r}], steps: [{{step: {step}}}]}}]}}]
"""


@pytest.mark.parametrize(
    ("food", "step", "wanted"),
    [
        ("500 g cookie dough", "roll it in balls, takes: 5 min", "NOT_SAFE"),
        ("500 g cookie dough", "melt butter beside it, where: stovetop, takes: 5 min", "NOT_SAFE"),
        ("500 g cookie dough", "bake them, where: oven at 180 C, takes: 12 min", "SAFE"),
        ("1 kg pizza dough", "top it, where: oven at 250 C, takes: 9 min", "SAFE"),
        ("500 ml pancake batter", "fry the pancakes, where: stovetop, takes: 20 min", "SAFE"),
        ("100 g trout roe", "spoon it out, takes: 5 min", "ASK"),
        ("100 g pasteurised trout roe", "spoon it out, takes: 5 min", "SAFE"),
        ("300 ml hollandaise (bought, pasteurised)", "spoon it over, takes: 5 min", "SAFE"),
        ("300 g toad in the hole", "'heat it through', where: oven at 200 C, takes: 20 min, until: 75 C", "SAFE"),
        ("300 g turkey rashers", "tear them over the leaves, takes: 5 min", "NOT_SAFE"),
        ("300 g turkey rashers", "fry the rashers, where: stovetop, takes: 6 min", "ASK"),
        ("1 kg beef olives", "braise the olives, where: oven at 160 C, takes: 2 h", "SAFE"),
        ("1 kg beef olives", "fry the beef olives, where: stovetop, takes: 6 min", "ASK"),
        ("2 rare steaks", "sear the steaks, where: stovetop, takes: 4 min", "NOT_SAFE"),
    ],
)
def test_what_is_raw_by_its_name_is_safe_once_a_step_cooks_it(food: str, step: str, wanted: str) -> None:
    file = read(DISH.format(food=food, step=step))

    assert isinstance(file, PlanFile), file
    assert matrix(file).answers[0, 0].verdict.name == wanted
