"""Heat that a plan gives one food clears no other: neither for those more easily harmed nor for everybody.

Each dish in its own words; the limits are those of FoodSafety.gov (safe minimum internal temperatures), the guests
those of FDA Food Code 2022, 3-801.11. What a kitchen's words mean: common practice, no source.
"""

import pytest

from board.checks.allergens.guests_eat import matrix
from board.checks.plan.every import check
from board.checks.raw_food import Took, dishes
from board.plan.load import PlanFile
from tests.checks.allergens.test_more_easily_harmed import plan


def made(dish: str, foods: str, *steps: str) -> PlanFile:
    return plan("Mia, pregnant", dish, foods, *steps)


def answer(file: PlanFile) -> tuple[str, set[str]]:
    """The verdict, and the foods behind it."""
    found = matrix(file).answers[0, 0]
    return found.verdict.name, {each.ingredient for each in found.reasons if each.verdict is found.verdict}


def asked(file: PlanFile) -> list[str]:
    """What the checks of how hot raw food gets say to everybody."""
    return [snag.message for snag in check(file) if snag.code in ("food 1", "food 2", "food 23")]


@pytest.mark.parametrize(
    ("dish", "foods", "steps", "raw", "wanted"),
    [
        ("Tartare with chips", "800 g beef fillet; 1 kg potatoes",
         ("deep-fry the chips; where: stovetop; until: 95 C", "chop the tartare"), "beef fillet", "NOT_SAFE"),
        ("Tartare with chips", "800 g beef fillet; 1 kg potatoes",
         ("chop the tartare", "deep-fry the chips; where: stovetop; until: 95 C"), "beef fillet", "NOT_SAFE"),
        ("Sashimi and broth", "500 g salmon fillet; 1 l chicken stock",
         ("simmer the broth; where: stovetop; until: 95 C; takes: 30 min", "cut the salmon as sashimi"),
         "salmon fillet", "NOT_SAFE"),
        ("Winter bowls", "500 g salmon fillet; 1 l chicken stock",
         ("simmer the broth; where: stovetop; until: 95 C; takes: 30 min", "lay the salmon in the bowls"),
         "salmon fillet", "ASK"),
        ("Salmon plate", "600 g salmon fillet; 1 kg potatoes",
         ("boil the potatoes; where: stovetop; takes: 25 min", "slice the salmon thinly"), "salmon fillet", "NOT_SAFE"),
        ("Salmon plate", "600 g salmon fillet; 1 kg potatoes",
         ("peel the potatoes", "boil them; where: stovetop; takes: 25 min; until: 95 C", "slice the salmon thinly"),
         "salmon fillet", "ASK"),
        ("Two birds", "1 kg chicken thighs; 4 duck breasts",
         ("roast the chicken thighs; where: oven at 200 C; until: 75 C; takes: 40 min",
          "sear the duck breasts; where: stovetop; takes: 8 min"), "duck breasts", "ASK"),
        ("Beef two ways", "1 kg beef shin; 500 g beef fillet",
         ("braise the beef shin; where: stovetop; until: 90 C; takes: 3 h", "slice the fillet thinly and lay it over"),
         "beef fillet", "NOT_SAFE"),
        ("Beef two ways", "1 kg beef shin; 500 g beef fillet",
         ("braise the shin; where: stovetop; takes: 3 h", "slice the fillet thinly and lay it over"),
         "beef fillet", "NOT_SAFE"),
        ("Bowls", "1 l chicken stock; 500 g raw prawns",
         ("simmer the broth; where: stovetop; until: 95 C; takes: 30 min", "lay the prawns in the bowls"),
         "raw prawns", "ASK"),
        ("Leg with cream", "8 chicken thighs; 8 eggs",
         ("fry the thighs; where: stovetop; cooks: poultry; takes: 30 min",
          "poach the eggs softly; where: stovetop; look for: runny yolk; takes: 3 min"), "eggs", "NOT_SAFE"),
        ("Chicken and egg bowl", "1 kg chicken thighs; 8 eggs",
         ("roast the chicken; where: oven at 200 C; until: 75 C; takes: 40 min", "break the eggs into the bowls"),
         "eggs", "NOT_SAFE"),
        ("Ceviche", "600 g sea bass fillets; 2 corn cobs",
         ("boil the corn; where: stovetop; until: 95 C; takes: 10 min", "cure the fish in lime"),
         "sea bass fillets", "NOT_SAFE"),
        ("Steak tartare and soup", "500 g beef steak; 1 kg leeks",
         ("simmer the leek soup; where: stovetop; until: 95 C; takes: 1 h", "chop the steak by hand"),
         "beef steak", "NOT_SAFE"),
        ("Sunday plates", "1.5 kg beef rib; 6 eggs",
         ("roast the beef rib; where: oven at 200 C; until: 75 C; takes: 90 min",
          "coddle the eggs; where: stovetop; takes: 4 min"), "eggs", "NOT_SAFE"),
        ("Oysters with hot sauce", "24 oysters; 200 g tomatoes",
         ("simmer the tomato sauce; where: stovetop; until: 95 C; takes: 70 min", "open the oysters"),
         "oysters", "ASK"),
        ("Smoked salmon and egg", "200 g cold-smoked salmon; 6 eggs",
         ("lay out the salmon", "fry the eggs; where: stovetop; until: 75 C; takes: 6 min"),
         "cold-smoked salmon", "NOT_SAFE"),
        ("Marinated beef on fried bread", "400 g beef fillet; 8 slices bread",
         ("marinate the beef in lemon", "fry the bread; where: stovetop; until: 80 C; takes: 6 min", "lay the beef on"),
         "beef fillet", "NOT_SAFE"),
        ("Marinated beef on fried bread", "400 g beef fillet; 8 slices bread",
         ("fry the bread for the beef; where: stovetop; until: 80 C; takes: 6 min",), "beef fillet", "ASK"),
        ("Lamb and wraps", "500 g lamb mince; 8 flatbreads",
         ("warm the bread; where: oven at 200 C; until: 80 C", "season the lamb"), "lamb mince", "NOT_SAFE"),
        ("Ramen", "6 eggs; 400 g egg noodles",
         ("boil the egg noodles; where: stovetop; takes: 12 min", "break an egg over each"), "eggs", "NOT_SAFE"),
        ("Chicken soup and tuna", "1 kg chicken thighs; 300 g tuna",
         ("simmer the chicken; where: stovetop; until: 90 C; takes: 1 h", "slice the tuna"), "tuna", "NOT_SAFE"),
        ("Gumbo", "8 chicken thighs; 500 g raw prawns",
         ("brown the chicken; where: stovetop", "simmer the gumbo; where: stovetop; takes: 60 min; until: 90 C",
          "stir in the prawns; where: stovetop; takes: 2 min"), "raw prawns", "ASK"),
        ("Pho", "1 kg beef bones; 300 g beef sirloin",
         ("simmer 4 h; where: stovetop; takes: 4 h; until: 95 C", "slice the sirloin and lay it in the bowls"),
         "beef sirloin", "ASK"),
        ("Burger with onions", "1 kg beef mince; 2 onions",
         ("shape the patties", "fry the onions; where: stovetop; until: 80 C"), "beef mince", "ASK"),
        ("Carved plates", "500 g beef fillet; 1 kg potatoes",
         ("roast the potatoes; where: oven at 200 C; until: 90 C", "slice the beef"), "beef fillet", "NOT_SAFE"),
        ("Winter ramen", "4 eggs; 400 g noodles",
         ("boil the eggs; where: stovetop; takes: 6 min", "boil the noodles; where: stovetop; takes: 12 min"), "eggs",
         "ASK"),
        ("Two fish", "500 g cod fillets; 500 g salmon fillets",
         ("bake the cod fillets; where: oven at 200 C; until: 65 C", "slice the salmon"), "salmon fillets", "NOT_SAFE"),
        ("Frites and tartare", "500 g beef fillet; 1 kg potatoes",
         ("fry the frites; where: stovetop; until: 95 C", "chop the tartare"), "beef fillet", "NOT_SAFE"),
        ("Potatoes and salmon", "500 g salmon fillet; 1 kg potatoes",
         ("boil the potatoes; where: stovetop; until: 95 C", "slice the salmon"), "salmon fillet", "NOT_SAFE"),
        ("Plates of lamb", "500 g lamb fillet; 1 kg potatoes",
         ("toss the lamb and the potatoes with oil", "roast the potatoes; where: oven at 200 C; until: 95 C",
          "slice the lamb"), "lamb fillet", "NOT_SAFE"),
        ("Brie and toast", "200 g brie; 8 slices bread",
         ("toast the bread; where: oven at 200 C; until: 80 C", "slice the brie"), "brie", "NOT_SAFE"),
    ],
)  # fmt: skip
def test_heat_given_to_one_food_clears_no_other(
    dish: str, foods: str, steps: tuple[str, ...], raw: str, wanted: str
) -> None:
    file = made(dish, foods, *steps)

    assert answer(file) == (wanted, {raw})
    if raw not in ("brie", "cold-smoked salmon"):  # raw milk's and smoke's risks are told to those they harm
        assert any(raw in message or raw.removeprefix("raw ") in message for message in asked(file))


@pytest.mark.parametrize(
    ("dish", "foods", "steps"),
    [
        ("Beef stew", "1.5 kg beef shin; 4 onions",
         ("brown the beef; where: stovetop", "soften the onions; where: stovetop",
          "simmer 2 h; where: stovetop; takes: 2 h")),
        ("Beef stew", "1.5 kg beef shin; 4 onions",
         ("dice the beef", "fry the onions; where: stovetop", "simmer the stew; where: stovetop; takes: 2 h")),
        ("Supper", "1.5 kg beef shin; 4 carrots",
         ("brown the meat; where: stovetop", "add the carrots and simmer; where: stovetop; takes: 2 h")),
        ("Roast chicken", "1 chicken of 2 kg; 1 lemon",
         ("rub it with lemon", "roast it; where: oven at 200 C; until: 75 C; takes: 90 min", "carve the chicken")),
        ("Sunday bird", "1 chicken of 2 kg; 100 g butter; 1 kg potatoes",
         ("push the butter under the skin", "roast the bird; where: oven at 200 C; until: 75 C; takes: 90 min",
          "roast the potatoes; where: oven at 200 C; takes: 50 min")),
        ("Roast beef", "1.5 kg beef sirloin; 1 kg potatoes",
         ("roast; where: oven at 200 C; until: 71 C; takes: 80 min", "slice the beef")),
        ("Thighs and rice", "8 chicken thighs; 300 g rice",
         ("roast them; where: oven at 200 C; until: 76 C; takes: 45 min", "boil the rice; where: stovetop")),
        ("Fish pie", "800 g cod; 1 kg potatoes",
         ("poach the cod; where: stovetop; takes: 5 min", "mash the potatoes",
          "bake the fish pie; where: oven at 190 C; until: 75 C; takes: 35 min")),
        ("Quiche", "6 eggs; 200 g flour; 1 kg leeks",
         ("beat the eggs", "bake the leek quiche; where: oven at 180 C; takes: 40 min")),
        ("Straws", "1 egg; 200 g cheddar; 200 g puff pastry",
         ("brush the pastry with egg and cheese, and fold", "bake the pastry; where: oven at 200 C; takes: 26 min")),
        ("Chicken twists", "4 chicken breasts; 200 g cheddar",
         ("fill the breasts with cheese", "bake the twists; where: oven at 200 C; until: 75 C; takes: 26 min")),
        ("Schnitzel", "4 pork escalopes; 2 eggs; 100 g flour; 200 g breadcrumbs",
         ("coat the escalopes in flour, egg and crumbs", "fry the schnitzels; where: stovetop; until: 72 C")),
        ("Fish cakes", "600 g cod; 600 g potatoes; 1 egg",
         ("poach the cod; where: stovetop; until: 63 C", "mash with the potatoes", "mix in the egg",
          "fry the fish cakes; where: stovetop; until: 75 C")),
        ("Gumbo", "8 chicken thighs; 500 g raw prawns",
         ("brown the chicken; where: stovetop", "simmer the gumbo; where: stovetop; takes: 60 min; until: 90 C",
          "add the prawns and cook; where: stovetop; until: 75 C")),
        ("Beef wellington", "1 kg beef fillet; 400 g puff pastry; 1 egg",
         ("sear the fillet; where: stovetop", "wrap the beef in pastry and brush with egg",
          "bake the wellington; where: oven at 200 C; until: 71 C; takes: 45 min")),
        ("Meatballs", "1 kg beef mince; 1 egg; 100 g breadcrumbs; 800 g tomatoes",
         ("mix and shape the meatballs", "bake the meatballs; where: oven at 200 C; until: 75 C; takes: 30 min",
          "simmer the sauce; where: stovetop")),
        ("Apple cake", "3 eggs; 200 g flour; 3 apples",
         ("whisk the eggs and sugar", "bake the apple cake; where: oven at 180 C; takes: 40 min")),
        ("Fresh tagliatelle", "4 eggs; 400 g flour",
         ("knead the dough", "boil the pasta; where: stovetop; takes: 10 min")),
        ("Ragu", "1 kg beef mince; 800 g tomatoes",
         ("fry the mince; where: stovetop", "stir in the tomatoes", "simmer the sauce; where: stovetop; takes: 2 h")),
        ("Prawn broth", "500 g raw prawns; 2 leeks",
         ("simmer the broth; where: stovetop; takes: 20 min",
          "poach the prawns in the broth; where: stovetop; until: 63 C; takes: 4 min")),
        ("Cod parcels", "800 g cod; 2 leeks",
         ("wrap the cod in paper", "bake the parcels; where: oven at 200 C; until: 63 C; takes: 18 min")),
        ("Two birds", "1 kg chicken thighs; 4 duck breasts",
         ("roast the chicken thighs; where: oven at 200 C; until: 75 C; takes: 40 min",
          "sear the duck breasts; where: stovetop; until: 74 C; takes: 12 min")),
        ("Skewers", "800 g lamb shoulder; 2 onions",
         ("thread the lamb and onions", "grill the skewers; where: oven at 240 C; until: 71 C; takes: 15 min")),
        ("Dumplings", "500 g pork mince; 300 g flour",
         ("mix the pork with ginger", "fill the dumplings",
          "steam the dumplings; where: stovetop; until: 72 C; takes: 15 min")),
        ("Tray of everything", "1 kg chicken thighs; 6 sausages",
         ("roast everything; where: oven at 200 C; until: 76 C; takes: 45 min",)),
        ("Supper", "1 kg chicken thighs; 1 kg potatoes",
         ("cook {uses}; where: oven at 200 C; until: 76 C; takes: 45 min; uses: [1 kg chicken thighs]",)),
    ],
)  # fmt: skip
def test_heat_that_a_line_of_steps_gives_a_food_clears_it(dish: str, foods: str, steps: tuple[str, ...]) -> None:
    file = made(dish, foods, *(step.replace("{uses}", "the tray") for step in steps))

    assert answer(file)[0] == "SAFE"
    assert asked(file) == []


@pytest.mark.parametrize(
    ("dish", "foods", "steps", "food", "wanted"),
    [
        ("Plates", "4 duck breasts; 1 kg chicken thighs", ("roast the chicken thighs", ""), "duck breasts", Took.NO),
        ("Plates", "4 duck breasts; 1 kg chicken thighs", ("roast the birds", ""), "duck breasts", Took.NAMED),
        ("Plates", "500 g beef fillet; 1 kg beef shin", ("braise the beef", "slice the fillet"), "beef fillet",
         Took.PERHAPS),
        ("Plates", "500 g cod; 1 kg potatoes", ("bake the potatoes", ""), "cod", Took.NO),
        ("Plates", "500 g cod; 1 kg potatoes", ("bake it", ""), "cod", Took.CARRIED),
        ("Plates", "500 g cod; 1 kg potatoes", ("bake the wibble", ""), "cod", Took.PERHAPS),
        ("Plates", "500 g cod; 1 l fish stock", ("boil the fish stock", ""), "cod", Took.NO),
    ],
)  # fmt: skip
def test_what_a_step_took_up_is_graded(dish: str, foods: str, steps: tuple[str, ...], food: str, wanted: Took) -> None:
    (work,) = dishes(made(dish, foods, *filter(None, steps)))
    line = next(line for line in work.raw if line.line.food == food)

    assert work.took(work.tasks[0], line) is wanted


def test_what_cannot_be_told_is_asked_in_words_that_say_so() -> None:
    broth = "simmer the broth; where: stovetop; until: 95 C; takes: 30 min"
    file = made("Bowls", "500 g beef fillet; 1 l chicken stock", broth, "lay the beef in the bowls")

    assert asked(file) == ["nothing says that simmer the broth has the beef fillet in it (Bowls)"]
