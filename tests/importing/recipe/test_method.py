"""A recipe's sentences as steps: where each stands, what waits, what is no work, its method, and what goes in."""

import pytest

from board.plan.model.work import Step
from tests.importing.recipe.test_dish import dish, made, recipe


def steps(*said: str, foods: tuple[str, ...] = ()) -> list[Step]:
    return dish(recipe(recipeInstructions=list(said), recipeIngredient=list(foods))).steps


def places(*said: str) -> list[tuple[str | None, int]]:
    """Each step's place, with an appliance in it, and its likely minutes."""
    return [
        (
            " ".join([step.where.place, *step.where.tools]) if step.where else None,
            step.takes.likely if step.takes else 0,
        )
        for step in steps(*said)
    ]


def test_a_sentence_with_its_own_minutes_stays_with_its_pan_and_is_a_step() -> None:
    assert places("Sweat the onion in a pan for 10 minutes. Stir in the cumin for 1 minute. Drain and mash.") == [
        ("stovetop", 10), ("stovetop", 1), (None, 10)
    ]  # fmt: skip


def test_what_goes_into_a_hot_pan_stays_there_over_instructions_until_it_is_taken_off() -> None:
    assert [place for place, _ in places("Heat the oil in a pan for 2 minutes.", "Add the rice.", "Lift it out.",
                                         "Add the salt.")] == ["stovetop", "stovetop", None, None]  # fmt: skip


@pytest.mark.parametrize(
    ("said", "place", "minutes"),
    [
        ("Cover with foil and rest 45 min before carving.", "worktop", 45),
        ("Remove from the oven and let it stand for 10 minutes before slicing.", "worktop", 10),
        ("Microwave on high for 3 minutes.", "worktop microwave", 3),
        ("Blitz in a blender until smooth, 1 minute.", "worktop blender", 1),
        ("Pulse in a food processor.", "worktop food processor", 10),
        ("Cook in the slow cooker for 6 hours.", "worktop slow cooker", 360),
        ("Air-fry for 15 minutes.", "worktop air fryer", 15),
        ("Grill over hot coals for 4 minutes a side.", "worktop barbecue", 8),
        ("Put under a hot grill for 4 minutes.", "oven", 4),
        ("Soak in 300 ml of boiling water for 20 minutes.", "worktop", 20),
        ("Return to the oven for 5 minutes more.", "oven", 5),
        ("Pour the stock into the roasting pan and simmer for 5 minutes.", "stovetop", 5),
        ("Put in the fridge for 2 days, turning once a day.", "fridge", 2880),
    ],
)
def test_places_and_minutes(said: str, place: str, minutes: int) -> None:
    assert places(said) == [(place, minutes)]


def test_a_slow_cooker_is_filled_by_hand_and_then_cooks() -> None:
    assert places("Tip all of it into the slow cooker. Cook on low for 8 hours.") == [
        (None, 10), ("worktop slow cooker", 480)
    ]  # fmt: skip
    assert "tools: {slow cooker: 1}" in made(recipe(recipeInstructions="Slow cook for 8 hours.")).text


def test_minutes_by_weight_are_reckoned_for_the_weight_and_told_or_left_as_words() -> None:
    """1 lb is 453.59237 g (NIST Handbook 44, appendix C): 7 lb at 12 to 15 minutes per pound are 84 to 105 minutes."""
    said = "Roast at 325°F for 12 to 15 minutes per pound."
    known = made(recipe(recipeInstructions=said, recipeIngredient=["1 (7-pound) rib roast"])).text
    unknown = made(recipe(recipeInstructions=said, recipeIngredient=["1 rib roast"])).text

    assert "takes: 1 h 24 to 1 h 45  # guessed: “12 to 15 minutes per pound”, for 3.18 kg" in known
    assert (
        "# guessed: the recipe says “12 to 15 minutes per pound”, and no weight is given: write the minutes" in unknown
    )
    ((_, minutes),) = [(s.step, s.takes.likely) for s in steps(
        "Roast for 20 minutes per 500 g plus 20 minutes.", foods=("2 kg lamb",)) if s.takes]  # fmt: skip
    assert minutes == 100


@pytest.mark.parametrize(
    "said",
    [
        "The pie keeps for 3 days in the fridge.", "It will keep in the fridge for 3 days.", "Note: use ripe fruit.",
        "Store in an airtight tin for up to 3 days.", "Can be frozen for up to 3 months.", "Cook's tip: taste it.",
        "Freeze for up to a month.", "To microwave instead: cook on high for 6 minutes.", "Leftovers: fry them.",
        "To freeze: wrap well. Thaw overnight in the fridge.", "It tastes better the next day.", "Enjoy!",
    ],
)  # fmt: skip
def test_storage_notes_and_tips_are_no_steps_and_not_lost(said: str) -> None:
    text = made(recipe(recipeInstructions=["Stir.", said])).text

    assert [step.step for step in steps("Stir.", said)] == ["stir"]
    assert said.split(". ")[0].rstrip(".") in text


@pytest.mark.parametrize("said", ["Keep warm in a 90°C oven.", "Freeze for 4 hours.", "Keep stirring for 5 minutes.",
                                  "Chill for at least 2 hours and up to 1 day."])  # fmt: skip
def test_what_only_sounds_like_storage_is_a_step(said: str) -> None:
    assert len(steps("Stir.", said)) == 2


LONG = (
    "Peel the beets and cut them into wedges as thick as a thumb, keeping the skins for the stock pot. Rinse them. "
    "Dry them well."
)


def test_the_method_is_whole_sentences_and_the_name_short() -> None:
    (step,) = steps(LONG)
    (longer,) = steps(f"{LONG} Dust them with {'salt and ' * 30}flour.")

    assert step.how == LONG
    assert step.step == "peel the beets and cut them …"
    assert longer.how == LONG
    assert steps("Stir.")[0].how is None
    assert "flour" in made(recipe(recipeInstructions=f"{LONG} Dust them with {'salt and ' * 30}flour.")).text


def uses(*said: str, foods: tuple[str, ...]) -> list[list[tuple[str, float | None]]]:
    return [[(use.food, use.low) for use in step.uses] for step in steps(*said, foods=foods)]


def test_an_amount_is_told_where_it_all_goes_in_and_else_only_the_name() -> None:
    foods = ("3 eggs", "200 g sugar", "75 g butter", "2 tbsp olive oil", "1 tbsp sesame oil", "salt", "4 figs, divided")
    said = ("Beat the eggs with half the sugar.", "Melt the butter.", "Stir in the rest of the sugar.",
            "Brush with olive oil and salt.", "Drip on some oil.", "Lay on the figs.")  # fmt: skip

    assert uses(*said, foods=foods) == [
        [("eggs", 3), ("sugar", None)], [("butter", 75)], [("sugar", None)], [("olive oil", 2)], [], [("figs", None)]
    ]  # fmt: skip
