"""A kitchen's own faults, each beside a plan without it: found from the plan's words, places and ingredients.

Sources: FDA Food Code 3-401.14 (part-cooked) and 3-402.11 (parasites), read in the codes of Washington, Minnesota,
Delaware and Virginia, which adopt it; USDA FSIS on thawing, roasting, stuffing, marinating, slow cookers and washing of
poultry; FDA Bad Bug Book, phytohaemagglutinin; CDC on botulism; NHS on reheating: from memory. Words of steps: common
practice, no source.
"""

import pytest

from tests.checks.plan.kept_safe import line_of, plan, said, weights

ROAST = "roast the bird | oven at 190 C | 2 h | until: 74 C"


def steps(*each: str) -> str:
    """`name | where | takes | more, keys` a step."""
    lines = []
    for step in each:
        name, where, takes, *more = (piece.strip() for piece in step.split("|"))
        keys = [f"step: '{name}'", f"takes: {takes}", *([f"where: '{where}'"] if where else []), *more]
        lines.append("- {" + ", ".join(keys) + "}")
    return "\n".join(lines)


def found(code: str, foods: str, *each: str, dish: str = "Test dish") -> list[str]:
    """What a finding of that code weighs, for a dish of these foods and steps."""
    quoted = ", ".join(f"'{food.strip()}'" for food in foods.split(";"))
    return weights(plan(steps(*each), ingredient=quoted, dish=dish, tools="slow cooker: 1, pressure cooker: 1"), code)


@pytest.mark.parametrize(
    ("foods", "each", "wanted"),
    [
        ("1 chicken of 2 kg, frozen", ["roast the chicken | oven at 190 C | 90 min"], ["ASK"]),
        ("1 frozen turkey", ["season the turkey | | 10 min", "roast it | oven at 180 C | 3 h | until: 74 C"], ["MIND"]),
        ("8 chicken thighs, frozen", ["grill the thighs | | 25 min | until: 74 C"], ["MIND"]),
        ("1 leg of lamb, frozen", ["roast the lamb | oven at 180 C | 2 h | until: 71 C"], ["MIND"]),
        ("2 kg pork shoulder, frozen", ["cook the pork | worktop, slow cooker | 8 h | until: 90 C"], ["STOP"]),
        # thawed, or with the time it takes
        ("1 chicken of 2 kg", ["roast the chicken | oven at 190 C | 90 min"], []),
        ("1 duck, frozen", ["thaw it | | 24 h | thaws: 2 kg in the fridge", ROAST], []),
        ("1 duck, frozen", ["move the duck from the freezer to the fridge | fridge | 1 day", ROAST], []),
        ("1 duck, frozen", ["leave it to soften | fridge | 30 h", ROAST], []),
        ("1 duck, frozen and thawed", [ROAST], []),
        ("1 duck, frozen", ["roast the duck from frozen | oven at 190 C | 3 h | until: 74 C"], []),
        ("500 g prawns, frozen", ["fry the prawns | stovetop | 6 min"], []),
        ("6 beef burgers, frozen", ["fry the burgers | stovetop | 14 min | until: 71 C"], []),
        ("500 g peas, frozen; 1 duck", [ROAST], []),
        ("1 kg puff pastry, frozen; 4 apples", ["bake the tart | oven at 200 C | 30 min"], []),
    ],
)
def test_frozen_poultry_and_joints_have_time_to_thaw(foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 18", foods, *each) == wanted


@pytest.mark.parametrize(
    ("foods", "each", "wanted"),
    [
        ("2 kg pork ribs", ["parboil the ribs | stovetop | 30 min | keeps: 1 day in the fridge",
                            "grill the ribs | | 20 min | until: 71 C"], ["STOP"]),
        ("8 chicken legs", ["half-roast the chicken | oven at 200 C | 20 min", "cool it | fridge | 3 h",
                            "finish the chicken on the barbecue | | 15 min | until: 74 C"], ["STOP"]),
        ("1 kg minced beef", ["shape and sear the patties | stovetop | 5 min | keeps: 6 h in the fridge",
                              "bake the patties | oven at 200 C | 12 min | until: 71 C"], ["STOP"]),
        ("8 chicken thighs", ["brown the thighs | stovetop | 10 min | day: day before, keeps: 1 day in the fridge",
                              "roast the thighs | oven at 190 C | 30 min | until: 74 C"], ["STOP"]),
        # beef in pastry: only its outside is browned
        ("1.5 kg beef fillet; 1 pack puff pastry", ["sear the beef | stovetop | 8 min | keeps: 6 h in the fridge",
                                                    "roast the beef | oven at 200 C | 35 min | until: 63 C"], ["MIND"]),
        # straight on
        ("2 kg beef shin", ["brown the beef | stovetop | 20 min",
                            "braise the beef | oven at 150 C | 3 h | until: 90 C, keeps: 2 days in the fridge",
                            "reheat the beef | stovetop | 20 min | until: 74 C"], []),
        ("8 chicken thighs", ["brown the thighs | stovetop | 10 min | keeps: 10 min hot",
                              "roast the thighs | oven at 190 C | 30 min | until: 74 C"], []),
        # cooked through before it is kept
        ("1.5 kg beef fillet", ["sear and roast it | oven at 200 C | 40 min | until: 63 C, keeps: 6 h in the fridge",
                                "reheat the beef | oven at 160 C | 20 min | until: 74 C"], []),
        # what is part-cooked is no meat
        ("1 duck; 1 kg potatoes", ["parboil the potatoes | stovetop | 8 min | keeps: 1 day in the fridge",
                                   "roast the duck | oven at 190 C | 2 h | until: 74 C"], []),
        ("1 duck; 1 kg onions", ["brown the onions | stovetop | 20 min | keeps: 1 day in the fridge",
                                 "roast the duck | oven at 190 C | 2 h | until: 74 C"], []),
    ],
)  # fmt: skip
def test_meat_is_cooked_in_one_go(foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 19", foods, *each) == wanted


@pytest.mark.parametrize(
    ("foods", "step", "wanted"),
    [
        # USDA FSIS: 325 °F (163 °C) and above
        ("1 chicken", "roast the chicken | oven at 140 C | 3 h", ["STOP"]),
        ("1 chicken", "roast the chicken | oven at 300 F | 3 h", ["STOP"]),
        ("1 turkey", "roast the turkey | oven at 110 C | 9 h | until: 74 C", ["MIND"]),
        ("1 chicken", "roast the chicken | oven at 160 C | 3 h", ["MIND"]),
        ("1 chicken", "roast the chicken | oven at 160 C | 3 h | until: 74 C", []),  # the mark of a dial
        ("1 chicken", "roast the chicken | oven at 163 C | 2 h", []),
        ("1 chicken", "roast the chicken | oven at 325 F | 2 h", []),
        ("6 duck legs", "confit the legs | oven at 100 C | 4 h | until: 85 C", []),
        ("8 chicken thighs", "braise the thighs in stock | oven at 150 C | 80 min | until: 85 C", []),
        ("8 chicken thighs", "braise the thighs in stock | oven at 150 C | 80 min", ["MIND"]),
        ("2 kg pork shoulder", "roast the pork | oven at 110 C | 8 h | until: 90 C", []),
        ("1 chicken; 6 meringues", "dry the meringues | oven at 100 C | 2 h", []),
    ],
)
def test_birds_get_a_hot_oven(foods: str, step: str, wanted: list[str]) -> None:
    assert found("food 20", foods, step) == wanted


def test_a_bird_begun_hot_may_go_on_slowly_and_one_kept_warm_is_done() -> None:
    begun = [
        "crisp the duck in the oven | oven at 220 C | 20 min",
        "roast the duck | oven at 140 C | 2 h | until: 74 C",
    ]
    kept = [ROAST, "keep the duck warm | oven at 70 C | 30 min"]

    assert found("food 20", "1 duck", *begun) == []
    assert found("food 20", "1 duck", *kept) == []


@pytest.mark.parametrize(
    ("foods", "each", "wanted"),
    [
        ("1 turkey; 300 g bread", ["stuff the turkey | | 20 min | keeps: 1 day in the fridge", ROAST], ["STOP"]),
        ("1 goose; 300 g bread", ["fill the goose with the bread | | 20 min", "chill it | fridge | 5 h", ROAST],
         ["STOP"]),
        ("1 duck; 200 g rice", ["spoon the rice into the duck, stuffing in the cavity | | 20 min | day: day before",
                                ROAST], ["STOP"]),
        ("2 kg pork loin; 200 g bread", ["stuff the loin | | 20 min | keeps: 1 day in the fridge",
                                         "roast the loin | oven at 180 C | 90 min | until: 71 C"], ["MIND"]),
        ("1 turkey; 300 g bread", ["make the stuffing | | 20 min | keeps: 1 day in the fridge",
                                   "stuff the turkey | | 10 min", ROAST], []),
        ("1 turkey; 2 lemons", ["stuff the turkey with lemon and thyme | | 5 min | keeps: 1 day in the fridge", ROAST],
         []),
        ("1 turkey; 6 peppers", ["stuff the peppers | | 20 min | keeps: 1 day in the fridge", ROAST], []),
    ],
)  # fmt: skip
def test_no_bird_is_stuffed_ahead(foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 21", foods, *each) == wanted


@pytest.mark.parametrize(
    ("each", "wanted"),
    [
        (["reheat the curry | stovetop | 15 min | until: 74 C", "cool it | fridge | 3 h",
          "reheat the curry again | stovetop | 15 min | until: 74 C"], ["MIND"]),
        (["reheat half | stovetop | 15 min | until: 74 C, keeps: 1 day in the fridge",
          "reheat the rest | oven at 180 C | 25 min | until: 74 C"], ["MIND"]),
        (["reheat the curry | stovetop | 15 min | until: 74 C, keeps: 40 min hot",
          "reheat to finish | oven at 180 C | 10 min | until: 74 C"], []),
        (["simmer the curry | stovetop | 90 min | until: 85 C, keeps: 2 days in the fridge",
          "reheat the curry | stovetop | 15 min | until: 74 C"], []),
    ],
)  # fmt: skip
def test_nothing_is_reheated_twice(each: list[str], wanted: list[str]) -> None:
    assert found("food 22", "1 kg chicken thighs", *each) == wanted


SLICE = "slice the fish thinly | | 15 min"


@pytest.mark.parametrize(
    ("dish", "foods", "each", "wanted"),
    [
        # Food Code 3-402.11(A): raw, raw-marinated, partly cooked
        ("Sea bass ceviche", "600 g sea bass; 6 limes", [SLICE, "marinate it | fridge | 20 min"], ["ASK"]),
        ("Gravlax", "1 kg salmon; 60 g salt", ["cure the salmon | fridge | 2 days"], ["ASK"]),
        ("Sashimi", "500 g mackerel", [SLICE], ["ASK"]),
        ("Trout tartare", "500 g trout fillets", ["chop the trout | | 10 min"], ["ASK"]),
        ("Poke", "500 g salmon; 300 g rice", ["boil the rice | stovetop | 15 min", SLICE], ["ASK"]),
        ("Starter", "500 g herring fillets", ["serve the herrings raw with onion | | 10 min"], ["ASK"]),
        ("Squid crudo", "500 g squid", ["slice the squid | | 10 min"], ["ASK"]),
        # (A)(1): 168 hours at -20 °C
        (
            "Gravlax",
            "1 kg salmon",
            ["freeze the salmon | freezer | 6 days", "cure the salmon | fridge | 2 days"],
            ["STOP"],
        ),
        ("Gravlax", "1 kg salmon", ["freeze the salmon | freezer | 7 days", "cure the salmon | fridge | 2 days"], []),
        ("Gravlax", "1 kg salmon, frozen before", ["cure the salmon | fridge | 2 days"], []),
        # (B): molluscan shellfish, tuna of the large species, farmed fish fed pellets, roe
        ("Tuna tartare", "500 g yellowfin tuna", ["chop the tuna | | 10 min"], []),
        ("Oysters", "24 oysters", ["shuck the oysters | | 20 min"], []),
        ("Scallop crudo", "12 scallops", ["slice the scallops raw | | 10 min"], []),
        ("Gravlax", "1 kg farmed salmon", ["cure the salmon | fridge | 2 days"], []),
        # cooked, or bought ready
        ("Sea bass", "600 g sea bass", ["grill the bass | | 10 min | until: 63 C"], []),
        ("Bagels", "300 g smoked salmon", ["slice the salmon | | 10 min"], []),
        ("Beef tartare", "500 g beef fillet", ["chop the beef | | 10 min"], []),
        ("Cured ham and fish cakes", "500 g cod", ["fry the fish cakes | stovetop | 10 min | until: 63 C"], []),
    ],
)
def test_raw_fish_was_frozen_against_parasites(dish: str, foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 23", foods, *each, dish=dish) == wanted


@pytest.mark.parametrize(
    ("foods", "step", "wanted"),
    [
        ("1 kg lamb leg", "marinate the lamb | | 4 h", ["ASK"]),
        ("1 kg lamb leg", "marinate the lamb on the counter | | 4 h", ["STOP"]),
        ("1 kg lamb leg", "rub the lamb and leave it overnight | | 10 h", ["ASK"]),
        ("1 kg lamb leg", "marinate the lamb | | 45 min", ["ASK"]),
        ("1 kg lamb leg", "marinate the lamb | | 30 min", []),
        ("1 kg chicken wings", "marinate the wings | | 10 min | keeps: 3 h in the room", ["STOP"]),
        ("1 kg salmon", "leave the salmon in its marinade | worktop | 90 min", ["MIND"]),
        ("1 turkey", "brine the turkey | worktop | 12 h", ["STOP"]),
        ("1 kg lamb leg", "marinate the lamb | fridge | 1 day", []),
        ("1 kg lamb leg", "marinate the lamb | | 10 min | keeps: 1 day in the fridge", []),
        ("1 kg lamb leg; 3 cucumbers", "marinate the cucumbers | | 3 h", []),
        ("1 kg lamb leg", "mix the marinade | | 40 min", []),
        ("400 g olives; 1 orange", "marinate the olives | | 5 h", []),
        ("500 g tofu", "marinate the tofu | fridge | 5 h", []),
    ],
)
def test_nothing_raw_marinates_in_the_room(foods: str, step: str, wanted: list[str]) -> None:
    after = "roast it all | oven at 190 C | 60 min | until: 74 C"

    assert found("food 24", foods, step, after) == wanted


def test_what_is_cooked_may_lie_in_a_marinade() -> None:
    each = ["poach the chicken | stovetop | 25 min | until: 74 C", "marinate the chicken | | 1 h"]

    assert found("food 24", "1 kg chicken breasts", *each) == []


@pytest.mark.parametrize(
    ("foods", "each", "wanted"),
    [
        # FDA Bad Bug Book: boiled, never only warmed through in a slow cooker
        ("400 g red kidney beans, dried", ["soak the beans | fridge | 12 h",
                                           "cook the chilli | worktop, slow cooker | 8 h"], ["STOP"]),
        ("400 g dried kidney beans", ["bake the beans | oven at 120 C | 6 h"], ["STOP"]),
        ("400 g kidney beans", ["soak the beans overnight | fridge | 12 h", "dress the beans | | 5 min"], ["STOP"]),
        ("400 g dried kidney beans", ["boil the beans | stovetop | 5 min", "bake the beans | oven at 120 C | 6 h"],
         ["STOP"]),
        ("400 g dried kidney beans", ["simmer the beans | stovetop | 90 min"], ["MIND"]),
        ("400 g kidney beans", ["dress the beans | | 5 min"], ["ASK"]),
        ("400 g dried kidney beans", ["boil the beans hard | stovetop | 10 min",
                                      "cook the chilli | worktop, slow cooker | 8 h"], []),
        ("400 g dried kidney beans", ["bring the beans to the boil and simmer | stovetop | 1 h"], []),
        ("400 g dried kidney beans", ["cook the beans | stovetop, pressure cooker | 25 min"], []),
        ("2 tins kidney beans", ["cook the chilli | worktop, slow cooker | 8 h"], []),
        ("400 g cooked kidney beans", ["dress the beans | | 5 min"], []),
        ("400 g green lentils, dried", ["bake the lentils | oven at 120 C | 3 h"], []),
        ("400 g French beans", ["dress the beans | | 5 min"], []),
    ],
)  # fmt: skip
def test_kidney_beans_are_boiled(foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 25", foods, *each) == wanted


COOK = "simmer it all | stovetop | 20 min"


@pytest.mark.parametrize(
    ("foods", "each", "wanted"),
    [
        ("500 g foraged mushrooms", [COOK], ["ASK"]),
        ("500 g chanterelles from the woods", [COOK], ["ASK"]),
        ("1 kg mussels we picked", [COOK], ["ASK"]),
        ("1 bunch wild garlic, gathered by Tom", [COOK], ["ASK"]),
        ("1 kg rhubarb and its leaves", [COOK], ["STOP"]),
        ("1 handful rhubarb leaves", [COOK], ["STOP"]),
        ("1 kg green potatoes", [COOK], ["STOP"]),
        ("10 bitter almonds", [COOK], ["STOP"]),
        ("1 handful lilies of the valley", ["garnish it | | 5 min"], ["STOP"]),
        ("300 g elderberries", ["strew them over | | 5 min"], ["STOP"]),
        ("300 g elderberries", [COOK], []),
        ("200 g morels", ["slice the morels thin over it | | 5 min"], ["STOP"]),
        ("30 g dried morels", ["soak them | | 20 min"], ["STOP"]),
        ("200 g morels; 2 onions", ["fry the onions | stovetop | 5 min", "strew the morels over | | 2 min"], ["ASK"]),
        ("200 g morels; 2 onions", ["fry the onions | stovetop | 5 min", "fry the morels | stovetop | 9 min"], []),
        ("200 g fiddleheads", ["dress the fiddleheads | | 5 min"], ["STOP"]),
        ("200 g fiddlehead ferns", ["boil the fiddleheads | stovetop | 15 min"], []),
        ("500 g taro", ["grate the taro into the salad | | 5 min"], ["STOP"]),
        ("500 g eddoes", [COOK], []),
        ("100 g taro flour", ["roll it out | | 5 min"], []),
        ("300 g dried lupini beans", [COOK], ["ASK"]),
        ("1 jar lupini beans", ["dress them | | 5 min"], []),
        ("100 g lupin flour", ["stir it | | 5 min"], []),
        ("4 ackees", [COOK], ["ASK"]),
        ("1 tin ackee (tinned)", [COOK], []),
        ("200 g cashews in the shell", ["roast them | oven at 180 C | 20 min"], ["STOP"]),
        ("200 g cashews", ["roast them | oven at 180 C | 20 min"], []),
        ("1 handful elder leaves", [COOK], ["STOP"]),
        ("6 elderflower heads", ["fry them | stovetop | 5 min"], []),
        ("500 g wild mushrooms (veg)", [COOK], []),
        ("500 g chestnut mushrooms", [COOK], []),
        ("1 kg mussels", [COOK], []),
        ("1 kg rhubarb", [COOK], []),
        ("1 kg potatoes", [COOK], []),
        ("1 kg potatoes; 1 bunch green onions", [COOK], []),
        ("100 g almonds", [COOK], []),
        ("1 handful picked thyme leaves", [COOK], []),
        ("300 g wild salmon, frozen", [COOK], []),
    ],
)
def test_what_is_poisonous_or_wild_is_told(foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 26", foods, *each) == wanted


@pytest.mark.parametrize(
    ("foods", "step", "wanted"),
    [
        ("1 bulb garlic; 300 ml oil", "steep the garlic in the oil | | 10 min | keeps: 6 h in the room", ["STOP"]),
        ("1 bulb garlic; 300 ml oil", "grate the garlic into the oil | | 10 min | keeps: 1 day in the room",
         ["STOP"]),
        ("1 bunch basil; 300 ml oil", "infuse the oil with basil | | 3 h", ["STOP"]),
        ("1 bulb garlic; 300 ml oil", "confit the garlic in oil | oven at 120 C | 1 h | keeps: 2 days in the room",
         ["STOP"]),
        ("1 bulb garlic; 300 ml oil", "make the garlic oil | | 10 min | keeps: 8 days in the fridge", ["MIND"]),
        ("1 bulb garlic; 300 ml oil", "make the garlic oil | | 10 min | keeps: 4 days in the fridge", []),
        ("1 bulb garlic; 300 ml oil", "fry the garlic in the oil | stovetop | 3 min", []),
        ("1 bulb garlic; 300 ml oil", "steep the garlic in the oil | | 90 min", []),
        ("300 ml oil; 2 loaves bread", "pour the oil into bowls | | 5 min | keeps: 8 h in the room", []),
        ("1 bulb garlic; 300 ml oil; 1 duck", "rub the duck with garlic in oil | | 10 min | keeps: 3 h in the room",
         []),
    ],
)  # fmt: skip
def test_garlic_and_herbs_in_oil_stay_cold(foods: str, step: str, wanted: list[str]) -> None:
    assert found("food 27", foods, step) == wanted


@pytest.mark.parametrize(
    ("foods", "step", "wanted"),
    [
        ("1 chicken", "thaw the chicken on the worktop | | 8 h", ["STOP"]),
        ("1 kg prawns", "defrost the prawns | | 1 h", ["ASK"]),
        ("1 chicken", "take the chicken out of the freezer | | 5 min | keeps: 10 h in the room", ["STOP"]),
        ("1 chicken", "thaw the chicken | fridge | 1 day", []),
        ("1 kg prawns", "thaw the prawns in cold water | | 1 h", []),
        ("1 chicken", "thaw the bird | | 24 h | thaws: 2 kg in the fridge", []),
        ("1 chicken; 500 g puff pastry", "thaw the pastry | | 2 h", []),
        ("500 g peas", "thaw the peas | | 2 h", []),
    ],
)
def test_nothing_raw_thaws_in_the_room(foods: str, step: str, wanted: list[str]) -> None:
    assert found("food 28", foods, step, "cook everything | oven at 190 C | 2 h | until: 74 C") == wanted


@pytest.mark.parametrize(
    ("dish", "foods", "each", "wanted"),
    [
        ("Cookie dough bites", "200 g plain flour; 100 g butter", ["mix and roll into balls | | 15 min"], ["MIND"]),
        (
            "Cookies",
            "200 g plain flour; 100 g butter",
            ["mix the dough | | 5 min", "bake | oven at 180 C | 12 min"],
            [],
        ),
        ("Cookie dough bites", "200 g heat-treated plain flour; 100 g butter", ["roll into balls | | 15 min"], []),
        ("Oat balls", "200 g oats; 100 g honey", ["roll into balls | | 15 min"], []),
    ],
)
def test_flour_is_baked(dish: str, foods: str, each: list[str], wanted: list[str]) -> None:
    assert found("food 29", foods, *each, dish=dish) == wanted


@pytest.mark.parametrize(
    ("foods", "step", "wanted"),
    [
        ("1 chicken", "rinse the chicken under the tap", ["MIND"]),
        ("1 duck", "wash the bird", ["MIND"]),
        ("1 duck", "pat the duck dry", []),
        ("1 duck; 2 heads lettuce", "wash the lettuce", []),
        ("1 duck", "wash up", []),
        ("1 kg squid", "rinse the squid", []),
    ],
)
def test_raw_poultry_is_not_washed(foods: str, step: str, wanted: list[str]) -> None:
    assert found("food 30", foods, f"{step} | | 5 min", ROAST) == wanted


@pytest.mark.parametrize(
    ("last", "wanted"),
    [
        (["spoon the marinade over | | 3 min"], ["STOP"]),
        (["serve the lamb with its marinade | | 3 min"], ["STOP"]),
        (["spoon the reserved marinade over | | 3 min"], []),
        (["boil the marinade down | stovetop | 5 min", "spoon the marinade over | | 3 min"], []),
        (["carve the lamb | | 5 min"], []),
    ],
)
def test_a_raw_marinade_is_boiled(last: list[str], wanted: list[str]) -> None:
    each = ["marinate the lamb | fridge | 5 h", "roast the lamb | oven at 180 C | 90 min | until: 71 C", *last]

    assert found("food 31", "2 kg lamb leg", *each) == wanted


def test_a_fault_names_its_step_what_to_do_and_its_source() -> None:
    file = plan(steps("marinate the lamb | worktop | 4 h", ROAST), ingredient="1 kg lamb leg")
    (snag,) = said(file, "food 24")

    assert line_of(snag)[1].startswith("- {step: 'marinate the lamb'")
    assert "marinate the lamb: raw for 4 h out of the fridge" in snag.message
    assert "`where: fridge`" in snag.mend
    assert "USDA FSIS" in snag.source
    assert "from memory" in snag.source
