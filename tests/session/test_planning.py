"""A plan being made: texts before, and a file that an editor changes meanwhile."""

from hypothesis import given, settings
from hypothesis import strategies as st

from board.session.planning import BY_AN_EDITOR, Both, Planning
from tests.examples import times

BASE = "event: Supper\narrive: 18:30\nguests: 4\nzone: UTC\n"


def test_back_goes_to_the_byte_as_far_as_one_likes() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE.replace("4", "5"), ("guests",))
    planning.change(BASE.replace("4", "6"), ("guests",))

    assert planning.back() == ("guests",)
    assert planning.text == BASE.replace("4", "5")
    planning.back()
    assert (planning.text, planning.back()) == (BASE, None)


def test_what_an_editor_saved_is_taken_and_can_be_taken_back() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE.replace("guests: 4", "guests: 5"), ("guests",))

    found = planning.outside(BASE.replace("Supper", "Lunch"))

    assert found is not None
    assert (found.changed, found.both) == (("event: Lunch",), ())
    assert planning.text == BASE.replace("guests: 4", "guests: 5").replace("Supper", "Lunch")
    planning.back()
    assert planning.text == BASE.replace("guests: 4", "guests: 5")


def test_a_line_changed_on_both_sides_is_for_the_host_to_choose() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE.replace("guests: 4", "guests: 5"), ("guests",))
    disk = BASE.replace("guests: 4", "guests: 6").replace("Supper", "Lunch")

    found = planning.outside(disk)

    assert found is not None
    assert found.both == (Both(3, ("guests: 5\n",), ("guests: 6\n",)),)
    assert planning.text == BASE.replace("guests: 4", "guests: 5")  # nothing is lost, nothing taken
    planning.choose(here=False)
    assert planning.text == disk
    planning.back()
    assert planning.text == BASE.replace("guests: 4", "guests: 5")


def test_each_place_changed_on_both_sides_is_chosen_by_itself() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE.replace("Supper", "Tea").replace("guests: 4", "guests: 5"), ())
    planning.outside(BASE.replace("Supper", "Lunch").replace("guests: 4", "guests: 6"))

    planning.choose(here=True)
    assert planning.both == (Both(3, ("guests: 5\n",), ("guests: 6\n",)),)
    assert planning.text == BASE.replace("Supper", "Tea").replace("guests: 4", "guests: 5")
    planning.choose(here=False)

    assert planning.both == ()
    assert planning.text == BASE.replace("Supper", "Tea").replace("guests: 4", "guests: 6")
    planning.back()
    assert planning.text == BASE.replace("Supper", "Tea").replace("guests: 4", "guests: 5")


def test_a_file_saved_again_before_the_host_has_chosen_loses_nothing_of_the_first_time() -> None:
    base = BASE + "notes:\n- pears\n- figs\n"
    planning = Planning.of(base)
    planning.change(base.replace("guests: 4", "guests: 5"), ("guests",))
    once = base.replace("guests: 4", "guests: 6").replace("Supper", "Lunch")
    planning.outside(once)
    again = planning.outside(once.replace("figs", "plums"))

    assert again is not None
    assert again.changed == ("- plums",)
    planning.choose(here=True)
    assert planning.text == once.replace("figs", "plums").replace("guests: 6", "guests: 5")


def test_a_file_that_is_as_it_was_is_no_news() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE + "x: 1\n", ())
    planning.saved(planning.text)

    assert planning.outside(BASE + "x: 1\n") is None


LINES = st.lists(st.sampled_from("abcd"), max_size=6).map(lambda some: "".join(f"{each}\n" for each in some))


@settings(max_examples=times(300), deadline=None)
@given(LINES, LINES, LINES)
def test_nothing_is_lost_and_a_side_that_changed_nothing_yields(base: str, here: str, there: str) -> None:
    only_there, only_here, both = Planning(base, base), Planning(here, base), Planning(here, base)
    only_there.outside(there)
    only_here.outside(base)
    both.outside(there)

    assert (only_there.text, only_here.text) == (there, here)
    if both.both:
        assert both.text == here
        while both.both:
            both.choose(here=False)
    both.back()
    assert both.text == here  # nothing is lost, whatever was taken
    agreed = Planning(here, base)
    agreed.outside(here)
    assert agreed.text == here


def test_what_was_taken_back_is_had_again_until_another_change() -> None:
    four, five, six = BASE, BASE.replace("4", "5"), BASE.replace("4", "6")
    planning = Planning.of(four)
    planning.change(five, ("guests",))
    planning.change(six, ("guests",))

    planning.back()
    planning.back()
    assert (planning.again(), planning.text) == (("guests",), five)
    assert (planning.again(), planning.text, planning.again()) == (("guests",), six, None)
    planning.back()
    planning.change(five.replace("Supper", "Lunch"), ("event",))
    assert planning.again() is None
    planning.back()
    assert planning.text == five


def test_what_an_editor_saves_meanwhile_is_not_lost_by_having_a_change_again() -> None:
    planning = Planning.of(BASE)
    planning.change(BASE.replace("4", "5"), ("guests",))
    planning.saved(planning.text)
    planning.back()
    planning.saved(planning.text)

    planning.outside(BASE.replace("Supper", "Lunch"))

    assert planning.again() is None
    assert "Lunch" in planning.text
    assert planning.back() == BY_AN_EDITOR
    assert (planning.again(), "Lunch" in planning.text) == (BY_AN_EDITOR, True)
