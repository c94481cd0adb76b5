# ruff: noqa: E501  # one dish a line
"""What a dish has become: whether it spoils within hours, dish by dish as a cook would judge it, with the reason.

Spoils: FDA Food Code 1-201.10, time/temperature control for safety food (cooked plants, cut melons, cut leafy greens,
cut tomatoes, garlic in oil, food of animals), from memory. Keeps for hours: common practice, no source.
"""

from collections.abc import Mapping

import pytest

from board.plan.load import PlanFile
from board.plan.resolve.assume import Task
from board.plan.resolve.at_table import dish_spoils
from tests.conftest import read

HEAD = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
kitchen: {fridge: 60 litres, freezer: 20 litres}
hands: {host: {hours: {day before: '9:00 - 23:30', on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 20:00
    dishes:
"""
PLACES = {
    "oven": "oven at 180 C", "cool oven": "oven at 100 C", "ring": "stovetop", "fridge": "fridge", "freezer": "freezer",
}  # fmt: skip
DISH = ("courses", 0, "dishes", 0)


def plan(line: str) -> PlanFile:
    """`Rice salad: 500 g rice; 2 peppers: boil the rice | ring; dress it`; more of a step after a second `|`."""
    name, foods, steps = (part.strip() for part in line.split(": ", 2))
    said = "nothing" if foods == "nothing" else "[" + ", ".join(repr(food) for food in foods.split("; ")) + "]"
    text = HEAD + f"      - dish: {name!r}\n" + (f"        ingredients: {said}\n" if foods != "-" else "")
    text += "        steps:\n"
    for step in steps.split("; "):
        does, *rest = (part.strip() for part in step.split("|"))
        where = f", where: {PLACES[rest[0]]}" if rest and rest[0] else ""
        more = f", {rest[1]}" if len(rest) > 1 else ""
        text += f"          - {{step: {does!r}, takes: 20 min{where}{more}}}\n"
    found = read(text)
    assert isinstance(found, PlanFile), found
    return found


def steps(file: PlanFile) -> Mapping[str, Task]:
    return {task.node.name: task for task in file.filled.tasks.values() if task.node.kind == "step"}


SPOILS = """
Risotto: 400 g arborio rice; 1 onion; 1 l stock: cook the risotto | ring
Rice salad: 500 g rice; 2 peppers: boil the rice | ring; cool the rice; dress the salad
Pasta salad: 500 g penne; 200 g olives: boil the pasta | ring; toss with olives
Couscous: 400 g couscous; 1 lemon: pour boiling water over the couscous; fluff the couscous
Tabbouleh: 200 g bulgur; 3 tomatoes; 2 bunches parsley: soak the bulgur; chop the tomatoes and parsley; mix it all
Lentil salad: 300 g green lentils; 2 carrots: simmer the lentils | ring; dress the lentils
Dal: 300 g red lentils: cook | ring
Houmous: 2 tins chickpeas; 100 g tahini: blend everything
Baked potatoes: 8 potatoes: bake the potatoes | oven
Mash: 2 kg potatoes; 100 g butter: boil | ring; mash
Roast carrots: 1 kg carrots; 2 tbsp oil: roast the carrots | oven
Grilled courgettes: 1 kg courgettes: grill the courgettes on the barbecue
Melon balls: 2 melons: ball the melon
Fruit salad: 1 watermelon; 200 g strawberries: make the fruit salad
Caesar salad: 2 romaine lettuces; 50 g parmesan; 100 g croutons: tear the leaves; toss the salad
Coleslaw: 1 white cabbage; 2 carrots; 50 ml vinegar: shred the cabbage; dress it
Tomato salad: 8 tomatoes; 2 tbsp oil: slice the tomatoes
Bruschetta: 1 ciabatta; 6 tomatoes; 2 cloves garlic; 2 tbsp olive oil: toast the bread | oven; chop the tomatoes; top the bread
Guacamole: 4 avocados; 2 tomatoes; 1 lime: mash the avocados with chopped tomato
Tofu skewers: 400 g tofu; 2 tbsp soy sauce: marinate the tofu; grill the tofu | oven
Garlic confit: 3 bulbs garlic; 300 ml olive oil: confit the garlic | oven
Garlic dip: 4 cloves garlic; 200 ml olive oil: blend garlic and oil
Aioli: 3 egg yolks; 300 ml olive oil; 2 cloves garlic: make the aioli
Custard tart: 300 g flour; 150 g butter; 6 eggs; 500 ml cream: bake the case | oven; fill and bake the tart | oven
Quiche: 250 g flour; 125 g butter; 4 eggs; 300 ml cream; 200 g cheddar: blind-bake the pastry | oven; bake the quiche | oven
Pavlova: 6 egg whites; 300 g sugar; 300 ml double cream; 4 passion fruit: bake the meringue | oven; whip the cream; fill the pavlova
Pavlova: 6 egg whites; 300 g sugar; 300 ml double cream; 4 passion fruit: bake the meringue base | oven; assemble
Victoria sponge: 4 eggs; 200 g flour; 200 g butter; 200 g sugar; 1 jar jam; 300 ml double cream: bake the sponge | oven; sandwich the sponge
Carrot cake: 3 carrots; 250 g flour; 3 eggs; 200 ml oil; 200 g sugar; 300 g cream cheese: bake the cake | oven; spread the frosting
Cheesecake: 200 g digestive biscuits; 100 g butter; 600 g cream cheese; 3 eggs; 150 g sugar: bake the biscuit base | oven; bake the cheesecake | oven
Rhubarb crumble and custard: 1 kg rhubarb; 200 g flour; 100 g butter; 500 ml custard: bake the crumble | oven; pour the custard over
Sausage rolls: 400 g sausage meat; 1 sheet puff pastry: bake the sausage rolls | oven
Leek tart: 3 leeks; 1 sheet puff pastry: bake the tart | oven
Onion tart: 5 onions; 250 g flour; 125 g butter: roll and fill the tart; bake the tart | oven
Chocolate mousse: 300 g dark chocolate; 6 eggs; 200 ml cream: melt the chocolate | ring; fold in the eggs
Panna cotta: 500 ml cream; 4 gelatine leaves: warm the cream | ring; pour into glasses
Cheese board: 300 g Cheddar; 200 g brie: set out the cheese
Stuffed mushrooms: 12 mushrooms; 100 g breadcrumbs; 50 g butter: fill and bake the mushrooms | oven
Bread and butter pudding: 1 loaf white bread; 4 eggs; 500 ml milk; 100 g raisins: bake the pudding | oven
Gratin dauphinois: 1.5 kg potatoes; 500 ml cream: bake the gratin | oven
Yorkshire puddings with gravy: 200 g flour; 3 eggs; 300 ml milk; 500 ml gravy: bake the puddings | oven; heat the gravy | ring
Mushroom soup: 500 g mushrooms; 1 l water: simmer the soup | ring
Gazpacho: 1 kg tomatoes; 1 cucumber: blend the gazpacho
Ratatouille: 2 aubergines; 3 courgettes; 4 tomatoes: stew the vegetables | ring
Scrambled eggs: 12 eggs: scramble the eggs | ring
Frittata: 8 eggs; 3 potatoes: fry the frittata | ring
Potato cakes: 1 kg potatoes; 100 g flour; 1 egg: fry the potato cakes | ring
Rice pudding: 150 g pudding rice; 1 l milk: bake the rice pudding | oven
Polenta: 300 g polenta; 1 l water: cook the polenta | ring
Porridge: 200 g oats; 1 l water: cook the porridge | ring
Sandwiches: 1 loaf bread; 200 g cooked ham; 100 g butter: make the sandwiches
Egg sandwiches: 6 hard-boiled eggs; 1 loaf bread; 100 g mayonnaise: make the sandwiches
Roast peppers: 6 peppers: char the peppers | oven; peel the peppers
Tuna niçoise: 2 tins tuna; 300 g green beans: arrange on a platter
Tomato sauce: 2 tins chopped tomatoes; 1 onion: simmer the sauce | ring
Éclairs: 150 g flour; 100 g butter; 4 eggs; 300 ml double cream: bake the choux | oven; fill with cream
Trifle: 1 pack sponge fingers; 500 ml custard; 300 ml double cream; 1 jar jam: layer the trifle
Tiramisu: 200 g ladyfingers; 500 g mascarpone; 4 eggs; 200 ml coffee: layer the tiramisu
Beans on toast: 2 tins baked beans; 1 loaf bread: heat the beans | ring
Falafel: 400 g dried chickpeas; 1 onion: soak the chickpeas; fry the falafel | ring
Samosas: 500 g potatoes; 200 g peas; 10 sheets filo pastry: bake the samosas | oven
Lemon tart: 250 g flour; 125 g butter; 6 eggs; 200 ml cream; 4 lemons: bake the tart | oven
Crème brûlée: 600 ml double cream; 6 egg yolks; 100 g sugar: bake the custards | cool oven; chill | fridge; torch the sugar
Summer rolls: 12 rice paper wrappers; 200 g cooked prawns: roll them
Sushi: 400 g sushi rice; 300 g salmon: cook the rice | ring; slice the salmon; roll the sushi
Roast vegetables and feta: 1 kg root vegetables; 200 g feta: roast the vegetables | oven; crumble over the feta
Corn on the cob: 8 corn on the cob: boil the corn | ring
Edamame: 500 g edamame: steam the edamame | ring
Waldorf salad: 2 apples; 4 sticks celery; 100 g walnuts; 150 g mayonnaise: mix the salad
Spinach pie: 1 kg spinach; 200 g feta; 10 sheets filo: bake the pie | oven
Cherry clafoutis: 500 g cherries; 4 eggs; 300 ml milk; 100 g flour; 100 g sugar: bake the clafoutis | oven
Banoffee pie: 200 g digestive biscuits; 100 g butter; 1 tin caramel; 3 bananas; 300 ml double cream: bake the base | oven; top with banana and cream
Profiteroles: 150 g flour; 100 g butter; 4 eggs; 300 ml double cream; 200 g dark chocolate: bake the buns | oven; whip the cream; fill the buns
Pizza: 500 g pizza dough; 1 tin chopped tomatoes; 300 g mozzarella: bake the pizza | oven
Beetroot houmous: 3 cooked beetroot; 1 tin chickpeas: blend
Cooked ham: 1 kg cooked ham: slice the ham
Potato salad: 1 kg new potatoes; 2 tbsp oil; 2 tbsp vinegar: boil the potatoes | ring; dress
Bean salad: 2 tins kidney beans; 1 red onion; 50 ml vinegar: mix
Noodle salad: 400 g rice noodles; 2 carrots: soak the noodles in boiling water; toss with carrots
Quinoa salad: 300 g quinoa; 1 cucumber: cook the quinoa; mix
Egg fried rice: 400 g rice; 4 eggs: boil the rice | ring; fry the rice | ring
Chips: 2 kg potatoes; 2 l oil: fry the chips | ring
Onion bhajis: 4 onions; 200 g gram flour: fry the bhajis | ring
Stuffed dates: 20 dates; 150 g cream cheese: fill the dates
Devils on horseback: 20 prunes; 20 rashers streaky bacon: bake | oven
Hot chocolate: 200 g chocolate; 1 l milk: heat the milk | ring
Chestnut soup: 500 g chestnuts; 1 l vegetable stock: simmer | ring
Peperonata: 6 peppers; 2 onions: stew | ring
Braised red cabbage: 1 red cabbage; 2 apples; 50 ml vinegar: braise the cabbage | ring
Beef stew: nothing: reheat the stew | ring
Vegetable curry: 500 g frobnicated roots: simmer | ring
""".strip().splitlines()

KEEPS = """
Rice: 500 g rice: weigh the rice into a bowl
Carrot sticks: 1 kg carrots: cut the carrots into sticks
Melon: 2 melons: set out the whole melons
Fruit salad: 2 mangoes; 200 g strawberries; 4 oranges: cut up the fruit
Cherry tomatoes: 500 g cherry tomatoes: put out the tomatoes in a bowl
Vinaigrette: 1 clove garlic; 200 ml olive oil; 60 ml wine vinegar: shake the dressing
Shortbread: 300 g flour; 200 g butter; 100 g sugar: bake | oven
Meringues: 6 egg whites; 300 g sugar: whisk the meringue; bake the meringues | cool oven
Victoria sponge: 4 eggs; 200 g flour; 200 g butter; 200 g sugar; 1 jar jam: bake the sponge | oven; sandwich with jam
Scones: 500 g self raising flour; 100 g butter; 300 ml milk: make the dough; bake the scones | oven; cool the scones
Banana bread: 3 bananas; 250 g flour; 2 eggs; 100 ml yogurt; 150 g sugar: bake the loaf | oven
Carrot cake: 3 carrots; 250 g flour; 3 eggs; 200 ml oil; 200 g sugar: bake the cake | oven
Apple pie: 1 kg apples; 300 g flour; 150 g butter; 1 egg; 100 g sugar: bake the pie | oven
Plum tart: 1 kg plums; 1 sheet puff pastry; 50 g sugar: bake the tart | oven
Apple crumble: 1 kg apples; 200 g flour; 100 g butter; 100 g sugar; 50 g oats: bake the crumble | oven
Mince pies: 400 g mincemeat; 300 g flour; 150 g butter: bake the mince pies | oven
Sourdough: 500 g bread flour; 10 g salt; 100 g sourdough starter: prove the dough; bake the bread | oven
Focaccia: 500 g bread flour; 7 g yeast; 2 tbsp olive oil; 1 sprig rosemary; 2 onions: prove the dough; bake the focaccia | oven
Brioche: 500 g flour; 7 g yeast; 4 eggs; 200 g butter; 100 ml milk: knead the dough; bake the brioche | oven
Gougères: 150 g flour; 100 g butter; 4 eggs; 150 g gruyère: bake the gougères | oven
Cheese straws: 1 sheet puff pastry; 100 g parmesan: bake the straws | oven
Salted caramel: 200 g sugar; 100 g butter; 150 ml double cream: boil the caramel | ring
Chocolate truffles: 300 g dark chocolate; 200 ml double cream: heat the cream | ring; mix the ganache; roll the truffles in cocoa
Strawberry jam: 1 kg strawberries; 1 kg sugar: boil the jam | ring
Poached pears: 6 pears; 200 g sugar; 1 bottle red wine: poach the pears | ring
Pickled onions: 4 red onions; 300 ml vinegar; 50 g sugar: pickle the onions
Pickled cucumber: 2 cucumbers; 200 ml cider vinegar: slice and pickle the cucumbers
Spiced nuts: 400 g almonds; 2 tbsp honey: roast the nuts | oven
Olives: 400 g olives; 2 cloves garlic; 2 tbsp olive oil: marinate the olives
Crisps and dips: 4 bags crisps: put out the crisps
Cheese board: 300 g Cheddar; 200 g gruyère; 1 bunch grapes: set out the cheese
Fruit bowl: 6 apples; 1 bunch grapes: wash the fruit
Toast: 1 loaf bread; 100 g butter: toast the bread | oven
Warm rolls: 12 bread rolls: warm the rolls | oven
Yorkshire puddings: 200 g flour; 3 eggs; 300 ml milk: bake the yorkshire puddings | oven
Granola: 300 g oats; 100 g almonds; 80 g honey: bake the granola | oven
Flapjacks: 300 g oats; 150 g butter; 100 g golden syrup: bake the flapjacks | oven
Cucumber sandwiches: 1 loaf bread; 1 cucumber; 100 g butter: make the sandwiches
Vegetable crisps: 4 beetroot: slice the beetroot
Brownies: 200 g dark chocolate; 200 g butter; 4 eggs; 150 g flour; 250 g sugar: bake the brownies | oven
Popcorn: 200 g popcorn: pop the popcorn | ring
Croutons: 1 baguette; 2 tbsp oil: fry the croutons | ring
Tortilla chips and salsa: 2 bags tortilla chips; 1 jar salsa: put them out
Flatbreads: 500 g flour; 200 ml yogurt: fry the flatbreads | ring
Pancakes: 200 g flour; 300 ml milk; 2 eggs: fry the pancakes | ring
Marzipan fruits: 300 g marzipan: shape the fruits
Christmas cake: 500 g dried fruit; 250 g flour; 4 eggs; 250 g butter; 100 g marzipan; 100 g royal icing: bake the cake | oven; ice the cake
Baklava: 10 sheets filo pastry; 300 g walnuts; 200 g honey; 150 g butter: bake the baklava | oven
Lemon drizzle cake: 200 g flour; 4 eggs; 200 g butter; 200 g sugar; 2 lemons: bake the cake | oven; pour on the drizzle
Tapenade toasts: 200 g olives; 1 baguette; 2 tbsp capers; 2 cloves garlic; 2 tbsp olive oil: toast the bread | oven; spread the tapenade
Radishes and butter: 2 bunches radishes; 100 g butter: trim the radishes
Cherry pie: 500 g cherries; 300 g shortcrust pastry; 100 g sugar: bake the pie | oven
Almond biscuits: 200 g ground almonds; 3 egg whites; 200 g sugar: bake | oven
Cornbread: 200 g cornmeal; 100 g flour; 2 eggs; 300 ml buttermilk: bake the cornbread | oven
Naan: 500 g flour; 7 g yeast; 100 g yogurt: bake the naan | oven
Pretzels: 500 g flour; 7 g yeast: bake | oven
Chutney and cheese: 1 jar chutney; 300 g cheddar: set out
Ice lollies: 500 ml orange juice: freeze | freezer
Orange salad: 6 oranges; 1 pinch cinnamon: slice the oranges
Bread sticks and oil: 2 packs breadsticks; 100 ml olive oil: set out
Rice crispy cakes: 200 g puffed rice; 150 g chocolate: mix with melted chocolate
Toffee apples: 8 apples; 300 g sugar: boil the toffee | ring; dip the apples
Stuffed dates: 20 dates; 150 g almonds: fill the dates
Lemonade: 6 lemons; 200 g sugar; 2 l water: stir the lemonade
Mulled wine: 2 bottles red wine; 100 g sugar: warm the wine | ring
Roast chestnuts: 500 g chestnuts: roast the chestnuts | oven
Sauerkraut: 500 g sauerkraut: warm the sauerkraut | ring
""".strip().splitlines()


@pytest.mark.parametrize("line", SPOILS)
def test_it_spoils_within_hours(line: str) -> None:
    file = plan(line)

    by = dish_spoils(file.plan, file.filled, DISH)
    assert by.does
    assert by.why


@pytest.mark.parametrize("line", KEEPS)
def test_it_keeps_for_hours(line: str) -> None:
    file = plan(line)

    assert not dish_spoils(file.plan, file.filled, DISH).does


@pytest.mark.parametrize(
    ("line", "why"),
    [
        ("Rice: 500 g basmati rice: boil the rice | ring", "cooked basmati"),
        ("Melon: 2 melons: slice the melon", "cut melon"),
        ("Salad: 2 lettuces: tear and dress the leaves", "cut lettuce"),
        ("Salsa: 1 kg tomatoes: chop the tomatoes", "cut tomato"),
        ("Sauce: 1 kg tomatoes: simmer the sauce | ring", "cooked tomato"),
        ("Dip: 3 cloves garlic; 200 ml olive oil: blend garlic and oil", "garlic in oil"),
        ("Custard: 500 ml milk; 6 eggs: stir the custard | ring", "custard"),
    ],
)
def test_the_reason_is_said_with_its_source(line: str, why: str) -> None:
    file = plan(line)

    by = dish_spoils(file.plan, file.filled, DISH)
    assert by.why.startswith(why)
    assert "FDA Food Code 1-201.10" in by.why
    assert by.sure


def test_what_nobody_knows_is_taken_to_spoil_and_said_to_be_so() -> None:
    file = plan("Bowl: 500 g frobnitz: stir it")

    by = dish_spoils(file.plan, file.filled, DISH)
    assert (by.does, by.sure) == (True, False)
    assert "frobnitz" in by.why
    assert "taken to spoil" in by.why


def test_what_is_known_goes_before_what_is_not() -> None:
    file = plan("Bowl: 500 g frobnitz; 200 g ricotta: stir it")

    assert dish_spoils(file.plan, file.filled, DISH).sure


def test_each_step_is_judged_by_itself() -> None:
    """Beans may be soaked and rice weighed out in the room; from the boiling on they spoil."""
    file = plan("Beans: 1 kg dried beans; 200 g bacon: soak the beans; simmer the beans | ring; cool them")

    assert [task.care.spoils for task in steps(file).values()] == [False, True, True]


@pytest.mark.parametrize(
    ("line", "spoils"),
    [
        ("Beef stew: -: make it | ring", True),
        ("Rice salad: -: boil the rice | ring; dress it", True),
        ("Shortbread: -: mix and press it; bake it | oven", False),
        ("Fruit bowl: -: wash the apples", False),
    ],
)
def test_without_ingredients_the_words_tell(line: str, spoils: bool) -> None:
    file = plan(line)

    assert dish_spoils(file.plan, file.filled, DISH).does is spoils


@pytest.mark.parametrize("word", ["yes", "no"])
def test_the_hosts_word_goes_first(word: str) -> None:
    text = (
        HEAD
        + f"""\
      - dish: Rice
        perishable: {word}
        ingredients: [500 g rice, 1 lemon]
        steps: [{{step: boil the rice, where: stovetop, takes: 20 min}}]
"""
    )
    file = read(text)
    assert isinstance(file, PlanFile)

    assert dish_spoils(file.plan, file.filled, DISH).does is (word == "yes")


COLD = "keeps: 1 day in the fridge"


@pytest.mark.parametrize(
    "last",
    [
        "warm through | ring", "heat it up | ring", "heat the stew through | ring", "bring back to heat | ring",
        "bring it back to the boil | ring", "bring to serving temperature | ring", "get it hot again | ring",
        "warm it gently | ring", "put it over a low flame | ring", "finish in a hot pan | ring",
        "pop it back in the oven | oven", "refresh the stew | oven", "simmer it | ring", "re-warm it | ring",
    ],
)  # fmt: skip
def test_heated_again_by_any_word_is_reheated(last: str) -> None:
    file = plan(f"Bean stew: 1 kg dried beans: simmer the stew | ring | {COLD}; {last}")

    first, second = steps(file).values()
    assert (first.care.reheats, second.care.reheats) == (False, True)


@pytest.mark.parametrize(
    "line",
    [
        "Rolls: 12 bread rolls: warm the rolls through | oven",
        f"Bread: 500 g flour; 7 g yeast: bake the bread | oven | {COLD}; refresh the bread | oven",
        f"Apple pie: 1 kg apples; 300 g flour; 150 g butter: bake it | oven | {COLD}; warm the pie through | oven",
        "Roast: 2 kg beef: warm the plates | oven; roast the beef | oven | 'cooks: roast'",
        f"Beans: 1 kg green beans: blanch the beans | ring | {COLD}; toss in butter | ring",
        f"Potatoes: 2 kg potatoes: parboil the potatoes | ring | {COLD}; roast the potatoes | oven",
        f"Brulee: 600 ml cream; 6 egg yolks: bake the custards | oven | {COLD}; caramelise the tops | oven",
        f"Tarts: 5 onions; 250 g flour; 3 eggs: soften the onions | ring | {COLD}; fill them; bake the tarts | oven",
        "Hot chocolate: 1 l milk; 200 g chocolate: warm the milk | ring",
        "Soup: 1 kg carrots: simmer it | ring | keeps: 20 min hot; blend it; keep it hot | ring",
    ],
)
def test_first_cooking_bread_and_plates_are_no_reheating(line: str) -> None:
    file = plan(line.replace("'", ""))

    last = [*steps(file).values()][-1]
    assert not (last.care.reheats and last.care.spoils)


def test_a_branch_has_its_own_raw_food_and_fridge_life() -> None:
    """Trout beside a squash mash: the mash is no raw fish, and cooked food keeps longer than raw fish."""
    text = (
        HEAD
        + """\
      - dish: Trout on squash mash
        ingredients: [1.2 kg trout, 1 kg squash, 100 ml double cream]
        steps:
          - {step: boil and mash the squash, where: stovetop, takes: 30 min, keeps: 3 days in the fridge}
          - {step: warm the mash through, where: stovetop, takes: 15 min, until: 75 C}
          - {step: salt the trout, takes: 5 min, after: nothing, keeps: 1 day in the fridge}
          - {step: bake the trout, where: oven at 180 C, takes: 20 min, cooks: fish}
          - {step: plate it, takes: 5 min, after: [warm the mash through, bake the trout]}
"""
    )
    file = read(text)
    assert isinstance(file, PlanFile)
    found = steps(file)

    assert found["boil and mash the squash"].care.life == "other cooked food"
    assert found["salt the trout"].care.life == "raw fish"
    assert found["plate it"].care.life == "cooked meat or poultry"
    assert [name for name, task in found.items() if task.care.raw] == ["salt the trout", "bake the trout"]


def test_what_bakes_dry_ends_the_spoiling_of_its_dough_only() -> None:
    file = plan("Eclairs: 150 g flour; 4 eggs; 300 ml double cream: bake the choux | oven; whip the cream; fill them")

    assert [task.care.spoils for task in steps(file).values()] == [False, True, True]


def test_plants_cooked_for_the_first_time_begin_a_new_clock() -> None:
    file = plan("Cabbage: 1 red cabbage: shred the cabbage; braise the cabbage | ring; stir it; warm it up | ring")

    assert [task.care.fresh for task in steps(file).values()] == [False, True, False, False]
