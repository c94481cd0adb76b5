"""Guests, and what they must not or do not eat."""

import jsonschema
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter

from board.plan.load import PlanFile
from board.plan.phrases.guest_words import HowRead
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
        ("Ines, ketogenic", "write for example no walnuts"),
        ("Ines V", 'put a comma after the name: Ines, vegetarian. Where it is a name, write Ines "V"'),
        ("Lou peanuts", "put a comma after the name: Lou, no peanuts"),
        ("Tom Bean", 'Where it is a name, write Tom "Bean"'),
        ("Mary Ann Berry", 'Where it is a name, write Mary Ann "Berry"'),
        ("Granny nuts", "put a comma after the name: Granny, no nuts"),
        ("Uncle Ben prawn crackers", "in it be minded by nobody"),
        ("Wim pine nuts", "in it be minded by nobody"),
        ("Lou peanuts, no milk", "in it be minded by nobody"),
        ("Lou (brings the wine)", "in it be minded by nobody"),
        ("Greta 81", "write Greta, 81 years old"),
        ("Leo, 3", "write Leo, 3 years old"),
        ("Ines carries an EpiPen", "does not say against what"),
        ("Ines, anaphylaxis", "nothing says against what"),
        ("Ines, vegan, EpiPen", "nothing says against what"),
        ("Ines vegitarian", "in it be minded by nobody"),
        ("Lou penuts", "in it be minded by nobody"),
        ("Ines (vegan) and Tom", "give each a line of their own: Tom"),
        ('Tom "Bean" prawns', "'Tom Bean prawns' would all be a name"),
        ("3 others, one coeliac", "a line of their own: 1 other, coeliac"),
        ("Lou, penuts", "Did you mean 'no peanuts'"),
        ("DF", "keep a guest together"),
        ("veggie", "keep a guest together"),
        ("nut allergy", "keep a guest together"),
        ("nuts", "keep a guest together"),
        ("EpiPen for nuts", "keep a guest together"),
        ("over 70", "keep a guest together"),
        ("two vegans", "write it in figures"),
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


NAMES = [
    "Megan", "Ann Hall",
    "Maria-Jose", "Ines (from next door)", "Olive", "Ines / Tom", "Mr. Bean", "Mary Ann", "Uncle Rory", "Aunt May",
    "Ines K", "Ines V.", "Aunt Rosemary", "Basil", "Ginger", "Pepper", "Noor", "Nora", "Nonna Pia", "Vera", "Dieter",
    "Freya", "Veda", "Dr. Sage", "Jean-Luc de la Tour", "Ann O'Neill", "Severin", "Gef", "Ro", "host", "other",
]  # fmt: skip


@pytest.mark.parametrize("name", NAMES)
def test_a_name_is_a_name(name: str) -> None:
    found = LINE.validate_python(name)

    assert (found.name, found.avoids, found.diets, found.severe) == (name, (), (), ())


@pytest.mark.parametrize(
    ("text", "name", "avoids"),
    [
        ('Tom "Bean"', "Tom Bean", ()),
        ('Tom "Bean", no nuts', "Tom Bean", ("nuts",)),
        ('"Tom Bean" no nuts', "Tom Bean", ("nuts",)),
        ('Ines "V", GF', "Ines V", ("gluten",)),
        ("Mary “Berry” (DF)", "Mary Berry", ("dairy",)),
    ],
)
def test_what_stands_in_quotation_marks_is_a_name(text: str, name: str, avoids: tuple[str, ...]) -> None:
    found = LINE.validate_python(text)

    assert (found.name, found.avoids) == (name, avoids)


@pytest.mark.parametrize("text", ["Kit (XQ)", "Kit from the choir", "Kit XQ", "Ines V.", "Kit is the host"])
def test_what_is_taken_for_part_of_a_name_is_told(text: str) -> None:
    assert "part-of-name" in [read.how for read in LINE.validate_python(text).read]


@pytest.mark.parametrize(
    ("text", "name", "unread"),
    [
        ("Nonna mashed things only", "Nonna", "mashed things only"),
        ("Rosa takes heart tablets", "Rosa", "takes heart tablets"),
        ("Pim eats nothing uncooked", "Pim", "eats nothing uncooked"),
        ("Juno (nursing)", "Juno", "nursing"),
        ("Abe cannot swallow well", "Abe", "cannot swallow well"),
        ("Una doesn't chew well", "Una", "doesn't chew well"),
        ("Max is diabetic", "Max", "is diabetic"),
        ("Max diabetic", "Max", "diabetic"),
        ("Dov, ask about diabetic", "Dov", "diabetic"),
        ("Ed Miller has gout", "Ed Miller", "has gout"),
        ("Kit FODMAP", "Kit", "FODMAP"),
        ("Nonna: mashed food", "Nonna", "mashed food"),
        ("Kit - whatever", "Kit", "whatever"),
        ("ben low carb", "ben", "low carb"),
        ("2 friends who eat soft food", "friends", "who eat soft food"),
    ],
)
def test_what_is_said_of_a_guest_and_not_understood_is_kept_word_for_word(text: str, name: str, unread: str) -> None:
    found = LINE.validate_python(text)

    assert (found.name, found.unread, found.avoids, found.diets) == (name, (unread,), (), ())
    assert found.must_not == (f'"{unread}"',)


@pytest.mark.parametrize(
    ("text", "must_not"),
    [
        ("Rosa (mashed food, no nuts)", ("no nuts", '"mashed food"')),
        ("Rosa (pregnant, diabetic)", ("pregnant", '"diabetic"')),
        ("Rosa mashed food, no nuts", ("no nuts", '"mashed food"')),
        ("Rosa has asthma no nuts", ("no nuts", '"has asthma"')),
    ],
)
def test_what_is_understood_stands_beside_what_is_not(text: str, must_not: tuple[str, ...]) -> None:
    found = LINE.validate_python(text)

    assert (found.name, found.must_not) == ("Rosa", must_not)


@pytest.mark.parametrize(
    "name", ["Sam's mum", "Pat the neighbour", "Jo and family", "Ann Hall", "Kim (colleague)", "ada and ben"]
)
def test_who_somebody_is_is_no_need(name: str) -> None:
    found = LINE.validate_python(name)

    assert (found.name, found.unread) == (name, ())


@pytest.mark.parametrize(
    ("text", "name", "must_not"),
    [
        ("Kim is nearly vegan", "Kim", ("vegan",)),
        ("Di have a nut allergy", "Di", ("no nuts",)),
        ("Omid eat halal", "Omid", ("halal",)),
        ("Lou keeps kosher", "Lou", ("kosher",)),
        ("Yan both avoid pork", "Yan", ("no pork",)),
        ("Bob are vegan", "Bob", ("vegan",)),
    ],
)
def test_a_verb_is_no_part_of_a_name(text: str, name: str, must_not: tuple[str, ...]) -> None:
    found = LINE.validate_python(text)

    assert (found.name, found.must_not) == (name, must_not)


# The name; what they avoid, which diets; what of it is severe.
READ: dict[str, tuple[str, tuple[str, ...], tuple[str, ...], tuple[str, ...]]] = {
    # without a comma
    "Kit (GF)": ("Kit", ("gluten",), (), ()),
    "Kit [no dairy]": ("Kit", ("dairy",), (), ()),
    "Kit GF DF": ("Kit", ("gluten", "dairy"), (), ()),
    "Kit/VG": ("Kit", (), ("vegan",), ()),
    "Jo - coeliac": ("Jo", (), ("coeliac",), ()),
    "Jo — no fish": ("Jo", ("fish",), (), ()),
    "Sam: shellfish": ("Sam", ("shellfish",), (), ()),
    "Ada is vegan": ("Ada", (), ("vegan",), ()),
    "Ada who is allergic to kiwi": ("Ada", ("kiwi",), (), ()),
    "Max can't have dairy": ("Max", ("dairy",), (), ()),
    "Max can’t eat eggs": ("Max", ("eggs",), (), ()),
    "Noor halal": ("Noor", (), ("halal",), ()),
    "Uncle Ben nut allergy": ("Uncle Ben", ("nuts",), (), ()),
    "Mary Ann no tree nuts": ("Mary Ann", ("tree nuts",), (), ()),
    "Wim pine nut allergy": ("Wim", ("pine nuts",), (), ()),
    "Ines avoids nuts": ("Ines", ("nuts",), (), ()),
    "Ines (nuts, dairy)": ("Ines", ("nuts", "dairy"), (), ()),
    "Ines lactose intolerant": ("Ines", (), ("lactose-free",), ()),
    "Ines; no nuts; vegan": ("Ines", ("nuts",), ("vegan",), ()),
    "Olive, V": ("Olive", (), ("vegetarian",), ()),
    "Pia no gluten no dairy": ("Pia", ("gluten", "dairy"), (), ()),
    "Vegan Ines": ("Ines", (), ("vegan",), ()),
    "Pregnant Femke, no nuts": ("Femke", ("nuts",), ("pregnant",), ()),
    "Ines (vegan?)": ("Ines", (), ("vegan",), ()),
    "Ines + vegan": ("Ines", (), ("vegan",), ()),
    "Ines: severe nut allergy, EpiPen": ("Ines", ("nuts",), (), ("nuts",)),
    "Ines, nut allergy (severe, carries EpiPen)": ("Ines", ("nuts",), (), ("nuts",)),
    "Ines carries an EpiPen for nuts": ("Ines", ("nuts",), (), ("nuts",)),
    # shorthand and other words
    "Ines, G.F.": ("Ines", ("gluten",), (), ()),
    "Ines, coeliac (strict)": ("Ines", (), ("coeliac",), ()),
    "Ines, alergic to nuts": ("Ines", ("nuts",), (), ()),
    "Ines, 'peanuts'": ("Ines", ("peanuts",), (), ()),
    'Ines, "peanuts"': ("Ines", ("peanuts",), (), ()),
    "Ines, VEG": ("Ines", (), ("vegetarian",), ()),
    "Ines, Ve": ("Ines", (), ("vegan",), ()),
    "Ines, plant-based": ("Ines", (), ("vegan",), ()),
    "Ines, strictly vegetarian please": ("Ines", (), ("vegetarian",), ()),
    "Ines, gluten free": ("Ines", ("gluten",), (), ()),
    "Ines, dairy-free": ("Ines", ("dairy",), (), ()),
    "Ines, nut-free": ("Ines", ("nuts",), (), ()),
    "Ines, lactose free": ("Ines", (), ("lactose-free",), ()),
    "Ines, celiac disease": ("Ines", (), ("coeliac",), ()),
    "Ines, shellfish allergy": ("Ines", ("shellfish",), (), ()),
    "Ines, allergies: nuts, sesame": ("Ines", ("nuts", "sesame"), (), ()),
    "Ines, allergic to nuts and shellfish": ("Ines", ("nuts", "shellfish"), (), ()),
    "Ines, nut and egg allergies": ("Ines", ("nuts", "eggs"), (), ()),
    "Ines, vegan and nut allergy": ("Ines", ("nuts",), ("vegan",), ()),
    "Ines, intolerant to wheat": ("Ines", ("wheat",), (), ()),
    "Ines, red meat": ("Ines", ("red meat",), (), ()),
    "Ines, allergic to red meat": ("Ines", ("alpha-gal",), (), ()),
    "Ines, no game": ("Ines", ("game",), (), ()),
    "Ines, no egg products": ("Ines", ("egg",), (), ()),
    "Ines, no nuts at all": ("Ines", ("nuts",), (), ()),
    "Ines, no nuts except almonds": ("Ines", ("nuts",), (), ()),
    "Ines, ovo-lacto vegetarian": ("Ines", (), ("vegetarian",), ()),
    "Ines, eats everything": ("Ines", (), (), ()),
    "Ines, no allergies": ("Ines", (), (), ()),
    "Ines, teetotal": ("Ines", (), ("alcohol-free",), ()),
    # severe
    "Ines, severe nut allergy": ("Ines", ("nuts",), (), ("nuts",)),
    "Ines, no nuts, EpiPen": ("Ines", ("nuts",), (), ("nuts",)),
    "Ines, EpiPen, no nuts": ("Ines", ("nuts",), (), ("nuts",)),
    "Ines, no nuts (severe), no milk": ("Ines", ("nuts", "milk"), (), ("nuts",)),
    "Ines (epi-pen for sesame)": ("Ines", ("sesame",), (), ("sesame",)),
    "Ines, anaphylactic to peanuts, no milk": ("Ines", ("peanuts", "milk"), (), ("peanuts",)),
    "Ines, fish - anaphylaxis": ("Ines", ("fish",), (), ("fish",)),
    "Ines, severely allergic to eggs": ("Ines", ("eggs",), (), ("eggs",)),
    "Ines, severe allergy to tree nuts": ("Ines", ("tree nuts",), (), ("tree nuts",)),
    "Ines, mild nut allergy, not severe": ("Ines", ("nuts",), (), ()),
    # more easily harmed
    "Femke, 30 weeks pregnant": ("Femke", (), ("pregnant",), ()),
    "Femke, expecting in May": ("Femke", (), ("pregnant",), ()),
    "Femke (expecting)": ("Femke", (), ("pregnant",), ()),
    "Greta, over 70": ("Greta", (), ("elderly",), ()),
    "Greta, 84 years old": ("Greta", (), ("elderly",), ()),
    "Greta, 40 years old": ("Greta", (), (), ()),
    "Greta, in her eighties": ("Greta", (), ("elderly",), ()),
    "Leo, 8 months old": ("Leo", (), ("infant",), ()),
    "Leo, baby of 8 months": ("Leo", (), ("infant",), ()),
    "Leo, 8-month-old baby": ("Leo", (), ("infant",), ()),
    "Leo, boy of 3 years": ("Leo", (), ("toddler",), ()),
    "Leo aged 4": ("Leo", (), ("toddler",), ()),
    "Leo, 18 months": ("Leo", (), ("toddler",), ()),
    "Leo, under 5": ("Leo", (), ("under five",), ()),
    "Leo, child under five": ("Leo", (), ("under five",), ()),
    "Leo, 9 years old": ("Leo", (), ("child",), ()),
    "Baby Leo": ("Baby Leo", (), ("infant",), ()),
    "Sam, on chemo": ("Sam", (), ("immunocompromised",), ()),
    "Sam, weak immune system": ("Sam", (), ("immunocompromised",), ()),
    # several
    "2 vegans": ("vegans", (), ("vegan",), ()),
    "2 vegetarian friends": ("friends", (), ("vegetarian",), ()),
    "3 toddlers": ("toddlers", (), ("toddler",), ()),
}


@pytest.mark.parametrize("text", READ)
def test_what_people_write_beside_a_name_is_read(text: str) -> None:
    found = LINE.validate_python(text)

    assert (found.name, found.avoids, found.diets, found.severe) == READ[text]


@pytest.mark.parametrize("text", READ)
def test_what_was_read_can_be_written_again(text: str) -> None:
    """The words that the program shows for a guest mean the same when they stand in a plan."""
    found = LINE.validate_python(text)

    again = LINE.validate_python(", ".join(['"A"', *found.must_not]))

    assert (set(again.avoids), again.diets, set(again.severe)) == (set(found.avoids), found.diets, set(found.severe))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Kit (GF)", ("read-as", "GF", "no gluten")),
        ("Kit, V", ("read-as", "V", "vegetarian")),
        ("Kit, nut allergy", ("read-as", "nut allergy", "no nuts")),
        ("Kit, over 70", ("read-as", "over 70", "elderly")),
        ("Kit, no nuts except almonds", ("not-weighed", "except almonds", "nuts")),
        ("Kit, allergic to red meat", ("red-meat", "red meat", "alpha-gal")),
        ("Kit, no nuts", None),
        ("Kit, vegan", None),
        ("Kit, allergic to sesame", None),
    ],
)
def test_how_shorthand_was_read_stands_among_what_check_assumes(text: str, told: HowRead | None) -> None:
    found = read(SOUND.replace("[8 guests]", f"[{text!r}, 7 others]"))
    assert isinstance(found, PlanFile), found

    of_kit = [each for each in found.filled.assumed if each.about == ("Kit",)]
    assert [(each.kind, *each.values.values()) for each in of_kit] == ([told] if told else [])


def test_a_colon_that_makes_a_mapping_is_read_like_the_line_it_was_meant_for() -> None:
    found = read(SOUND.replace("[8 guests]", "[Sam: shellfish, Jo: [vegan, no nuts], {name: Tom Bean}, 5 others]"))
    assert isinstance(found, PlanFile), found

    assert [(guest.name, guest.avoids, guest.diets) for guest in found.plan.guests] == [
        ("Sam", ("shellfish",), ()), ("Jo", ("nuts",), ("vegan",)), ("Tom Bean", (), ()), ("others", (), ()),
    ]  # fmt: skip


def test_a_key_that_is_mistyped_is_no_guests_name() -> None:
    found = read(SOUND.replace("[8 guests]", "[{nam: Ines}]"))

    assert isinstance(found, list)
    assert any("'nam'" in snag.message for snag in found)


WORDS = ["GF", "nuts", "peanuts", "dairy", "vegan", "veggie", "EpiPen", "allergy", "no", "severe", "coeliac", "(DF)"]


@given(st.sampled_from(["Ines", "Uncle Rory", "Mary Ann"]), st.lists(st.sampled_from(WORDS), min_size=1, max_size=4))
def test_no_word_of_diets_becomes_part_of_a_name_in_silence(name: str, words: list[str]) -> None:
    try:
        found = LINE.validate_python(f"{name} {' '.join(words)}")
    except ValueError:
        return

    assert found.name == name
    assert found.avoids or found.diets or words == ["no", "allergy"]


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
