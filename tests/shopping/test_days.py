"""The day each food is bought on."""

from datetime import date, datetime, timedelta

import pytest

from board.shopping.rows import proposed_days
from tests.shopping.conftest import SATURDAY, Listed
from tests.shopping.test_list import plan

THU, FRI, SAT = date(2026, 11, 26), date(2026, 11, 27), date(2026, 11, 28)
TRIPS = "shopping: {thu: '17:00 - 18:00', fri: '16:00 - 17:30', sat: '8:00 - 9:00'}\n"


def hour(day: date, hour: int) -> datetime:
    return SATURDAY + (day - SAT) + timedelta(hours=hour)


@pytest.mark.parametrize(("food", "wanted", "day", "doubt"), [
    ("5 onions", hour(SAT, 15), THU, None),
    # raw meat, fish and leaves come with the last trip that serves: common practice, no source
    ("1 kg chicken thighs", hour(SAT, 15), SAT, None),
    ("1 kg chicken thighs", hour(FRI, 18), FRI, None),
    ("1 kg chicken thighs", hour(FRI, 17), THU, None),  # keeps 1 day raw: USDA FSIS, the lower figure
    ("600 g cod", hour(SAT, 8), FRI, None),
    ("2 lettuces", hour(SAT, 15), SAT, None),
    ("1 kg raw pork sausages", hour(SAT, 15), SAT, None),
    ("1 smoked sausage", hour(SAT, 15), THU, None),
    ("500 g fresh tagliatelle", hour(SAT, 15), FRI, None),
    ("5 onions", hour(THU, 18), THU, None),  # begun as the trip ends
    ("5 onions", hour(THU, 12), None, "no trip before"),
    ("20 flowers", hour(SAT, 15), FRI, None),
])  # fmt: skip
def test_the_first_trip_from_which_it_keeps_and_the_last_for_raw_meat_fish_and_leaves(
    listed: Listed, food: str, wanted: datetime, day: date | None, doubt: str | None
) -> None:
    (bought,) = listed(plan(food, more=TRIPS), {"make 0": wanted}).to_buy

    assert (bought.day, bought.doubt) == (day, doubt)


def test_a_food_of_two_dishes_is_there_for_the_first_and_keeps_for_the_last(listed: Listed) -> None:
    """Onions for Friday and Saturday come with Thursday's trip; chicken for both days cannot."""
    starts = {"make 0": hour(FRI, 14), "make 1": hour(SAT, 15)}
    onions, chicken = listed(
        plan("2 onions, 1 kg chicken thighs", "3 onions, 1 kg chicken thighs", more=TRIPS), starts
    ).to_buy

    assert (onions.day, onions.doubt) == (THU, None)
    assert (chicken.day, chicken.doubt) == (THU, "keeps too short")


def test_what_keeps_too_short_for_any_trip_comes_with_the_last(listed: Listed) -> None:
    """Chicken keeps 1 day raw (USDA FSIS, the lower figure): too short from Thursday, and shorter from Wednesday."""
    more = "shopping: {wed: '17:00 - 18:00', thu: '17:00 - 18:00'}\n"
    (chicken,) = listed(plan("1 kg chicken thighs", more=more)).to_buy

    assert (chicken.day, chicken.trip and chicken.trip.day, chicken.doubt) == (THU, THU, "keeps too short")


def test_a_dish_needs_its_food_from_its_first_step(listed: Listed) -> None:
    text = plan("5 onions", more=TRIPS).replace("{step: make 0", "{step: chop it, takes: 5 min}, {step: make 0")
    (onions,) = listed(text, {"chop it": hour(THU, 20), "make 0": hour(SAT, 15)}).to_buy
    (too_late,) = listed(text, {"chop it": hour(THU, 12), "make 0": hour(SAT, 15)}).to_buy

    assert (onions.day, too_late.doubt) == (THU, "no trip before")


def test_a_drink_is_there_when_it_is_chilled_not_only_when_it_is_opened(listed: Listed) -> None:
    text = plan("5 onions", more=TRIPS).replace(
        "at: 19:15", "at: 19:15\n    drink: ['dry cider, 2 bottles, chilled 2 h, opened 10 min before']"
    )
    starts = {"chill the dry cider for Main": hour(THU, 12), "open the dry cider for Main": hour(SAT, 15)}
    _, cider = listed(text, starts).to_buy

    assert cider.doubt == "no trip before"


def test_errands_stand_by_day_and_what_no_trip_brings_comes_last(listed: Listed) -> None:
    found = listed(plan("1 kg leeks", "1 kg chicken thighs", "5 onions", more=TRIPS), {"make 0": hour(THU, 12)})

    assert [errand.day for errand in found.errands] == [THU, SAT, None]


def test_a_shop_that_is_shut_is_not_gone_to(listed: Listed) -> None:
    hours = "{thu: '18:00 - 20:00', fri: '8:00 - 16:00', sat: '8:00 - 13:00'}"
    more = TRIPS + f"shops: {{butcher: {hours}}}\n"
    onions, beef = listed(plan("1 kg beef (Butcher), 3 onions (veg)", more=more)).to_buy

    # on Thursday it opens as the trip ends, on Friday it shuts as the trip begins
    assert (onions.day, beef.day) == (THU, SAT)


def test_a_shop_shut_on_every_trip_is_told(listed: Listed) -> None:
    (beef,) = listed(plan("1 kg beef (butcher)", more=TRIPS + "shops: {butcher: {wed: '8:00 - 16:00'}}\n")).to_buy

    assert (beef.day, beef.trip, beef.doubt) == (None, None, "shop shut")


def test_without_trips_few_days_are_proposed(listed: Listed) -> None:
    """What is wanted on Friday evening and on Saturday is bought on Friday where it keeps that long."""
    starts = {"make 0": hour(FRI, 18), "make 1": hour(SAT, 15), "make 2": hour(SAT, 9)}
    found = listed(plan("1 kg leeks", "2 salmon", "300 g bread"), starts)

    assert {bought.item.key: bought.day for bought in found.to_buy} == {"leek": FRI, "salmon": FRI, "bread": FRI}
    assert {errand.trip for errand in found.errands} == {None}


def test_without_trips_what_keeps_comes_with_what_does_not(listed: Listed) -> None:
    """Fish keeps 1 day raw (USDA FSIS, the lower figure), so it is bought on Friday; onions for Saturday come too."""
    found = listed(plan("3 onions", "2 salmon"), {"make 0": hour(SAT, 15), "make 1": hour(FRI, 18)})

    assert {bought.item.key: bought.day for bought in found.to_buy} == {"onion": FRI, "salmon": FRI}


def test_without_trips_what_does_not_keep_has_a_day_of_its_own(listed: Listed) -> None:
    """As above: salmon for Thursday, cod for Saturday."""
    found = listed(plan("2 salmon", "2 cod"), {"make 0": hour(THU, 15), "make 1": hour(SAT, 15)})

    assert {bought.item.key: bought.day for bought in found.to_buy} == {"salmon": THU, "cod": SAT}


def test_without_trips_a_food_that_does_not_keep_for_its_last_dish_is_told(listed: Listed) -> None:
    starts = {"make 0": hour(THU, 15), "make 1": hour(SAT, 15)}
    (chicken,) = listed(plan("1 kg chicken thighs", "1 kg chicken thighs"), starts).to_buy

    assert (chicken.day, chicken.doubt) == (THU, "keeps too short")


@pytest.mark.parametrize(("wanted", "day"), [(11, FRI), (12, SAT)])
def test_without_trips_what_is_needed_before_noon_is_bought_the_day_before(
    listed: Listed, wanted: int, day: date
) -> None:
    """Common practice, no source."""
    (onions,) = listed(plan("5 onions"), {"make 0": hour(SAT, wanted)}).to_buy

    assert onions.day == day


def test_proposed_are_only_days_that_no_trip_of_the_plan_is_on(listed: Listed) -> None:
    starts = {"make 0": hour(THU, 12)}  # before any trip: no day at all

    assert proposed_days(listed(plan("5 onions", "2 salmon", more=TRIPS), starts)) == ()
    assert proposed_days(listed(plan("5 onions", "2 salmon"), starts)) == (THU, SAT)


def test_without_trips_flowers_come_the_day_before(listed: Listed) -> None:
    """Common practice, no source."""
    (flowers,) = listed(plan("20 flowers"), {"make 0": hour(SAT, 15)}).to_buy

    assert flowers.day == FRI


def test_without_trips_an_open_day_is_found(listed: Listed) -> None:
    more = "shops: {butcher: {wed: '8:00 - 16:00'}}\n"
    (beef,) = listed(plan("1 kg beef (butcher)", more=more)).to_buy

    assert (beef.day, beef.doubt) == (date(2026, 11, 25), None)


def test_two_trips_of_one_day_are_two_errands(listed: Listed) -> None:
    found = listed(
        plan("5 onions (veg), 1 kg beef (butcher)",
             more="shopping: {sat: '8:00 - 9:00, 11:00 - 12:00'}\nshops: {butcher: {sat: '10:00 - 13:00'}}\n")
    )  # fmt: skip

    assert [(e.trip.name if e.trip else None) for e in found.errands] == ["go shopping (sat)", "go shopping (sat, 2)"]
