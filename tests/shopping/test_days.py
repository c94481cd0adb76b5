"""The day each food is bought on."""

from datetime import date, datetime, timedelta

import pytest

from tests.shopping.conftest import SATURDAY, Listed
from tests.shopping.test_list import plan

THU, FRI, SAT = date(2026, 11, 26), date(2026, 11, 27), date(2026, 11, 28)
TRIPS = "shopping: {thu: '17:00 - 18:00', fri: '16:00 - 17:30', sat: '8:00 - 9:00'}\n"


def hour(day: date, hour: int) -> datetime:
    return SATURDAY + (day - SAT) + timedelta(hours=hour)


@pytest.mark.parametrize(("food", "wanted", "day", "doubt"), [
    ("5 onions", hour(SAT, 15), THU, None),
    ("1 kg chicken thighs", hour(SAT, 15), FRI, None),  # keeps 1 day raw: USDA FSIS, the lower figure
    ("1 kg chicken thighs", hour(FRI, 18), THU, None),
    ("5 onions", hour(THU, 12), None, "no trip before"),
    ("20 flowers", hour(SAT, 15), FRI, None),
])  # fmt: skip
def test_the_first_trip_from_which_it_keeps(
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


def test_a_shop_that_is_shut_is_not_gone_to(listed: Listed) -> None:
    more = TRIPS + "shops: {butcher: {fri: '8:00 - 16:00', sat: '8:00 - 13:00'}}\n"
    onions, beef = listed(plan("1 kg beef (Butcher), 3 onions (veg)", more=more)).to_buy

    assert (onions.day, beef.day) == (THU, SAT)  # on Friday it shuts as the trip begins


def test_a_shop_shut_on_every_trip_is_told(listed: Listed) -> None:
    (beef,) = listed(plan("1 kg beef (butcher)", more=TRIPS + "shops: {butcher: {wed: '8:00 - 16:00'}}\n")).to_buy

    assert (beef.day, beef.trip, beef.doubt) == (None, None, "shop shut")


def test_without_trips_few_days_are_proposed(listed: Listed) -> None:
    """What is wanted on Friday evening and on Saturday is bought on Friday where it keeps that long."""
    starts = {"make 0": hour(FRI, 18), "make 1": hour(SAT, 15), "make 2": hour(SAT, 9)}
    found = listed(plan("1 kg leeks", "2 salmon", "300 g bread"), starts)

    assert {bought.item.key: bought.day for bought in found.to_buy} == {"leek": FRI, "salmon": FRI, "bread": FRI}
    assert {errand.trip for errand in found.errands} == {None}


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
