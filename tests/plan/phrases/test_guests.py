"""Guests, and what they must not or do not eat."""

import jsonschema
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter

from board.plan.load import PlanFile
from board.plan.phrases.guests import DIETS, Guest, GuestLine, parse_guest
from board.plan.places import read_yaml
from board.plan.schema import json_schema
from tests.conftest import read
from tests.plan.test_bad_plans import SOUND

LINE: TypeAdapter[Guest] = TypeAdapter(GuestLine)


@pytest.mark.parametrize(
    ("text", "guest"),
    [
        ("Ines", Guest(name="Ines")),
        ("Ines, no tree nuts", Guest(name="Ines", avoids=("tree nuts",))),
        ("Ines, No Nuts, without milk", Guest(name="Ines", avoids=("Nuts", "milk"))),
        ("Ines, is vegetarian", Guest(name="Ines", diets=("vegetarian",))),
        ("Ines, Vegan, allergic to sesame", Guest(name="Ines", diets=("vegan",), avoids=("sesame",))),
        ("6 others", Guest(name="others", count=6)),
        ("6", Guest(name="guests", count=6)),
        ("2 children, no alcohol", Guest(name="children", count=2, avoids=("alcohol",))),
        ("Noah", Guest(name="Noah")),
    ],
)
def test_a_guest_is_a_name_or_number_then_diets_and_what_to_avoid(text: str, guest: Guest) -> None:
    assert LINE.validate_python(text) == guest


@pytest.mark.parametrize(
    "text",
    ["Ines, no nuts and eggs", "Ines, no nuts or eggs", "Ines, no nuts & no eggs", "Ines, allergic to nuts, no eggs"],
)
def test_foods_to_avoid_are_taken_one_by_one(text: str) -> None:
    """So that each is looked for on its own: an allergy is never hidden in a pair of words."""
    assert LINE.validate_python(text).avoids == ("nuts", "eggs")


@pytest.mark.parametrize("diet", DIETS)
def test_every_diet_is_known_by_its_name(diet: str) -> None:
    assert LINE.validate_python(f"Ines, {diet}").diets == (diet,)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("Ines, vegitarian", "Did you mean 'vegetarian'"),
        ("Ines, nut allergy", "write for example no walnuts"),
        ("Ines, gluten free", "Did you mean 'no gluten'"),
        ("Ines, nut-free", "Did you mean 'no nut'"),
        ("Ines, lactose free", "Did you mean 'lactose-free'"),
        ("Ines - no fish", "put a comma after the name"),
        ("Ines (hazelnut allergy)", "put a comma after the name"),
        ("Ines: allergic to sesame", "put a comma after the name"),
        ("Ines (nuts)", "'nuts' in it be minded by nobody"),
        ("Ines - shellfish", "put a comma after the name"),
        ("Ines no fish", "put a comma after the name"),
        ("2 vegetarian friends", "put a comma after the name"),
        ("Ines,", "is not a diet"),
        ("vegan", "keep a guest together"),
        ("No nuts", "keep a guest together"),
        ("", "at least 1 character"),
        (", vegan", "at least 1 character"),
        ("0 others", "greater than or equal"),
        ("201 others", "less than or equal"),
    ],
)
def test_a_guest_who_cannot_be_told_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        LINE.validate_python(text)


@pytest.mark.parametrize("name", ["Maria-Jose", "Ines (from next door)", "Olive", "Ines / Tom", "Mr. Bean"])
def test_a_name_is_a_name(name: str) -> None:
    assert LINE.validate_python(name).name == name


@given(st.text() | st.text("0123456789, nounts", max_size=25))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    try:
        assert parse_guest(text)
    except ValueError as refused:
        assert str(refused)  # noqa: PT017  # both endings are right


@pytest.mark.parametrize(
    ("written", "count", "names"),
    [
        ("7", 7, ["guests"]),
        ("7 guests", 7, ["guests"]),
        ("Ines, vegetarian", 1, ["Ines"]),
        ("[7 guests]", 7, ["guests"]),
    ],
)
def test_a_bare_number_or_one_line_is_guests_too(written: str, count: int, names: list[str]) -> None:
    found = read(SOUND.replace("[8 guests]", written))

    assert isinstance(found, PlanFile), found
    assert found.plan.guest_count == count
    assert [guest.name for guest in found.plan.guests] == names


@pytest.mark.parametrize("written", ["0", "-3", "7.5", "201", "99999999999", "eight", "many", "true", "1e5"])
def test_nonsense_numbers_of_guests_are_refused_at_their_line(written: str) -> None:
    found = read(SOUND.replace("[8 guests]", written))

    assert isinstance(found, list)
    assert [(s.code, s.place.line if s.place else 0) for s in found] == [("plan 7", 5)]


def test_one_line_with_a_guest_who_cannot_be_read_is_told_at_its_line() -> None:
    found = read(SOUND.replace("[8 guests]", "Ines, Tomas"))

    assert isinstance(found, list)
    assert [(s.code, s.place.line if s.place else 0) for s in found] == [("plan 7", 5)]


def test_the_schema_takes_a_number_of_guests() -> None:
    schema = json_schema()
    data, _, _ = read_yaml(SOUND.replace("[8 guests]", "7"), "")

    jsonschema.validate(data, schema)
