"""Jobs known by what is done and to what, in British and American words. Common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.job_words import says_when, usual_job, usual_jobs
from board.facts.jobs import USUAL_JOBS

PUT = {
    "light the candles": ["light candles", "Light the tea lights", "light the tapers in the hall", "candles",
                          "light the candles and the lanterns", "hang and light the lanterns"],
    "make the coffee": ["brew coffee", "coffee", "put the coffee on", "make coffee for all", "get the coffee ready",
                        "serve coffee after dinner", "make a pot of coffee"],
    "make the tea": ["brew the mint tea", "put the kettle on", "boil the kettle"],
    "open the red wine": ["open the red", "uncork the Barolo-like red", "open 3 bottles of red", "let the red breathe",
                          "decant the claret", "open a bottle of the good red for the beef"],
    "open the sparkling wine": ["pop the prosecco", "open the champagne"],
    "chill the wine": ["chill the white", "put the white wine in the fridge", "chill two bottles of rosé"],
    "chill the sparkling wine": ["chill the bubbly", "pop the fizz into the fridge"],
    "empty the dishwasher": ["take the dishwasher out", "unload the dishwasher", "empty dishwasher"],
    "run the dishwasher": ["put the dishwasher on", "start the dishwasher", "load and run the dishwasher"],
    "iron the cloth": ["iron the tablecloth", "press the table linens", "iron tablecloth and napkins"],
    "lay the table": ["set the table", "lay table", "set the table for eight"],
    "arrange the flowers": ["do the flowers", "flowers", "put the flowers in vases", "arrange the flowers (peonies)"],
    "buy the flowers": ["pick up the flowers", "get flowers"],
    "put out the ice": ["put ice out", "set out the ice", "crush the ice"],
    "buy the ice": ["get two bags of ice", "pick up ice on the way home"],
    "sweep the floor": ["hoover", "vacuum the living room", "hoover the stairs", "mop the floor"],
    "empty the bin": ["take out the trash", "put the bins out", "empty the bins", "take the recycling out"],
    "clean the bathroom": ["clean the loo", "clean the powder room"],
    "put on music": ["put some music on", "start the playlist", "music"],
    "choose the music": ["make a playlist"],
    "dim the lights": ["dim lights", "turn the lights down low"],
    "warm the room": ["turn the heating up", "turn up the heat", "switch the radiators on"],
    "air the room": ["open the windows", "air the dining room"],
    "put the cat away": ["shut the dog in the kitchen", "put the cat upstairs"],
    "light the fire": ["light the wood burner", "lay and light the fire", "light the log fire"],
    "make room for coats": ["make some space for the coats", "clear the coat closet", "empty the coat rack"],
    "slice the bread": ["cut the bread", "slice the baguettes"],
    "take out the butter": ["get the butter out of the fridge", "take butter out"],
    "take out the cheese": ["take the cheese out of the fridge", "get the cheeseboard out"],
    "fill the water jugs": ["fill the pitchers with water", "fill the carafes"],
    "set out the place cards": ["put out the name cards", "place cards"],
    "fold the napkins": ["fold the serviettes"],
    "wash up": ["do the dishes", "do the washing up", "wash the pans"],
}  # fmt: skip


@pytest.mark.parametrize(("job", "put"), [(job, put) for job, all_of in PUT.items() for put in all_of])
def test_a_job_is_known_by_its_verb_and_its_thing(job: str, put: str) -> None:
    assert usual_jobs(put)[-1:] == (job,)


@pytest.mark.parametrize("job", USUAL_JOBS)
def test_every_job_is_known_by_its_own_name(job: str) -> None:
    assert usual_jobs(job) == (job,)


def test_there_are_jobs_enough_and_most_have_their_hour() -> None:
    assert len(USUAL_JOBS) >= 60
    assert sum(job.window is not None or bool(job.ahead_of) for job in USUAL_JOBS.values()) >= 60


def test_every_job_that_one_is_ahead_of_is_there_and_none_is_ahead_of_itself() -> None:
    for name, job in USUAL_JOBS.items():
        assert set(job.ahead_of) <= set(USUAL_JOBS) - {name}


@pytest.mark.parametrize(
    "name",
    [
        "make coffee for the tiramisu", "brew the coffee to go cold", "make coffee ice cream", "coffee cake",
        "put the candles away", "turn off the lights", "put the champagne in the freezer",
        "cut the cake", "chill the soup", "light the oven", "put the butter in the fridge", "polish the gong",
        "take the pie out of the oven", "light the candles and bake the bread", "take out the butter for the pastry",
    ],
)  # fmt: skip
def test_what_is_not_plainly_a_usual_job_is_none(name: str) -> None:
    assert usual_job(name) is None


def test_two_jobs_on_one_line_take_both_their_minutes_in_an_hour_that_suits_both() -> None:
    both = usual_job("lay the table and light the candles")

    assert both is not None
    assert both.window is not None
    assert (both.minutes, both.window.event, both.window.most) == (30, "guests", 15)


def test_two_jobs_of_different_hours_are_no_one_job() -> None:
    assert usual_job("light the candles and make the coffee") is None


@pytest.mark.parametrize(
    ("name", "when"),
    [
        ("light the candles", None), ("wash up after dinner", "after dinner"),
        ("play cards afterwards", "after dinner"), ("light the candles just before", "before the guests"),
        ("make tea before the guests come", "before the guests"),
        ("iron the cloth on Friday", "another time"), ("set the table the night before", "another time"),
        ("buy ice at 5 pm", "another time"), ("set the table for 8 hosts", None),
    ],
)  # fmt: skip
def test_words_of_time_in_a_name_are_heard(name: str, when: str | None) -> None:
    assert says_when(name) == when


WORDS = ("put", "light", "the", "out", "of", "in", "on", "candles", "and", ",", "ice", "for")


@given(st.text(max_size=60) | st.lists(st.sampled_from(WORDS), max_size=9).map(" ".join))
def test_any_name_at_all_is_one_of_them_or_none(name: str) -> None:
    assert set(usual_jobs(name)) <= set(USUAL_JOBS)
    assert (usual_job(name) is None) or usual_jobs(name)


@pytest.mark.parametrize(
    ("job", "names"),
    [
        ("light the candles", ["set fire to the wicks", "put a match to the tapers", "light up the votives",
                               "set the tea lights alight", "get the candles lit"]),
        ("light the fire", ["light the stove", "put a match to the logs", "get the fire burning", "fire up the brazier",
                            "make up the fire"]),
        ("lay the fire", ["lay the fire", "bring in the logs"]),
        ("blow out the candles", ["snuff the candles", "blow out the tapers", "extinguish the lanterns"]),
        ("take out the cheese", ["bring the cheeses to room temperature", "take the Camembert from the cold",
                                 "let the Stilton breathe", "get the gouda out of the refrigerator"]),
        ("take out the butter", ["leave the butter to soften", "bring the butter to room temperature"]),
        ("take out the ice cream", ["take the sorbet from the freezer", "let the gelato soften"]),
        ("take it out of the fridge", ["bring the steaks to room temperature", "have the joint out of the larder",
                                       "take the terrine out", "get out the salmon"]),
        ("make the coffee", ["coffee for the guests", "coffee for everyone"]),
        ("make the tea", ["brew up", "stick the kettle on"]),
        ("dish up", ["dish up", "plate up"]),
        ("warm the plates", ["put the plates in the warming drawer"]),
        ("lay the table", ["dress the table"]),
        ("turn down the heat", ["turn down the heating", "turn the radiators down"]),
        ("draw the curtains", ["draw the curtains", "close the blinds"]),
        ("open the wine", ["open the sherry"]),
    ],
)  # fmt: skip
def test_a_job_is_known_however_it_is_put(job: str, names: list[str]) -> None:
    assert {name: usual_jobs(name) for name in names} == {name: (job,) for name in names}


@pytest.mark.parametrize(
    "name",
    ["light the gas under the pan", "coffee for the cake", "buy a log", "set the oven to 180", "take the pie out of "
     "the oven", "put the chicken in the fridge", "get the wine out of the fridge", "kindle some interest"],
)  # fmt: skip
def test_words_that_only_sound_like_it_are_none(name: str) -> None:
    assert usual_jobs(name) == ()
