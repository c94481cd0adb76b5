"""Any text is a menu that becomes a plan that loads, or is told in one message; nothing in it is obeyed."""

import contextlib
from datetime import date

from hypothesis import Phase, example, given, settings
from hypothesis import strategies as st

from board.importing.starter.answers import Answers
from board.importing.starter.menu import MOST_DISHES, read_menu
from board.importing.starter.menu_courses import arrival_before
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.starter.plan_text import menu_plan_text
from board.plan.load import PlanFile, read_plan
from tests.examples import times

TODAY = date(2026, 11, 29)
WORDS = (
    "Main", "Starter", "Nibbles", "Coffee", "Sides", "Cheese", "Sweet", "Drink", "Wine", "leek soup", "duck legs",
    "beans", "olives", "fish and chips", "with red wine", "in the garden", "standing", "Ada coeliac", "no nuts",
    "Rory", "5 others", "Guests", "7 guests", "for 8", "host", "one oven", "4 rings", "fridge 60 l", "freezer 5 l",
    "Dan helps from 18:00", "Sat 19 Dec", "2026-12-19", "19/12/2026", "5/12", "18:30", "7 pm", "20.30", "25:00",
    "0:15", "tomorrow", "Zone", "Europe/Dublin", "supper", "[b]", "\x1b[31m", "#", "- ", "* ", "1. ", "(", ")", "{",
    "}", "'", '"', "&", "\u202e", "主菜", "ντολμάδες", "\ue000", "\t", "at most", "clear", "after", "null", "yes",
    "~", "%", "@", "|", ">", "!", "…", "\x00", "٧",
)  # fmt: skip
JOINS = (" ", ": ", ", ", "; ", "\n", "\n\n", " & ", " - ", "\r\n", "")
MENUS = st.lists(st.tuples(st.sampled_from(WORDS), st.sampled_from(JOINS)), max_size=30).map(
    lambda pairs: "".join(word + join for word, join in pairs)
)


def plan_of(text: str) -> PlanFile:
    """Raises NotAMenu; a plan that does not load is a failure."""
    menu = read_menu(text, TODAY)
    usual = {"event": "Supper", "date": TODAY, "arrive": arrival_before(menu) or "18:30", "guests": 6, "ovens": 1,
             "rings": 4, "zone": "Europe/Dublin"}  # fmt: skip
    answers = Answers(**{**usual, **menu.found, "courses": len(menu.courses)})
    found = read_plan(menu_plan_text(menu, answers, ("event",)), "new.yaml")
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    assert [course.course for course in found.plan.courses] == [course.name for course in menu.courses]
    assert sum(len(course.dishes) for course in menu.courses) <= MOST_DISHES
    assert found.plan.guest_count == answers.guests + 1
    return found


@settings(deadline=None, max_examples=times(500), phases=(Phase.explicit, Phase.reuse, Phase.generate))
@given(st.text(max_size=300) | MENUS | MENUS.map(lambda text: f"Main: beef\n{text}"))
@example("Main, at most 20 min: beef")
@example("a, b and c: beef\n")
def test_whatever_is_typed_is_a_plan_or_one_message(text: str) -> None:
    said, line = "a plan", 0
    with contextlib.suppress(NotAMenu):
        try:
            plan_of(text)
        except NotAMenu as wrong:
            said, line = str(wrong), wrong.line
            raise

    assert said.strip()
    assert 0 <= line <= text.count("\n") + text.count("\r") + 1
