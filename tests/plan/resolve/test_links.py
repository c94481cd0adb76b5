"""What follows what: the links a plan makes by the order of its lines and by the words of `after` and `before`."""

import pytest

from board.plan.load import PlanFile
from board.plan.resolve.links import Link, Linked, link, slug
from tests.conftest import HEAD, read

SOUP_AND_TART = """
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Leek soup
        steps:
          - {step: cut, takes: 10 min}
          - {step: simmer, takes: 20 min}
          - {step: fry the crumbs, takes: 5 min, after: nothing}
          - {step: serve it hot, takes: 5 min, after: [simmer, fry the crumbs]}
  - course: Tart
    at: 20:15
    dishes:
      - dish: Apple tart
        steps:
          - {step: cut, takes: 10 min}
          - {step: bake, takes: 40 min}
"""


def links_of(text: str) -> Linked:
    found = read(HEAD + text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    linked, problems = link(found.plan)
    assert problems == []
    return linked


def before(linked: Linked, id_: str) -> set[str]:
    return {each.first for each in linked.links if each.second == id_}


def between(linked: Linked, first: str, second: str) -> Link:
    (found,) = [each for each in linked.links if (each.first, each.second) == (first, second)]
    return found


def test_steps_follow_one_another_as_written() -> None:
    linked = links_of(SOUP_AND_TART)

    assert before(linked, "leek-soup/simmer") == {"leek-soup/cut"}
    assert before(linked, "apple-tart/bake") == {"apple-tart/cut"}


def test_after_nothing_follows_nothing() -> None:
    assert before(links_of(SOUP_AND_TART), "leek-soup/fry-the-crumbs") == set()


def test_after_a_list_follows_each_of_it_and_not_the_line_above() -> None:
    followed = before(links_of(SOUP_AND_TART), "leek-soup/serve-it-hot")

    assert followed == {"leek-soup/simmer", "leek-soup/fry-the-crumbs"}


def test_what_nothing_follows_leads_to_the_serving_of_its_course() -> None:
    linked = links_of(SOUP_AND_TART)

    assert before(linked, "serve/soup") == {"leek-soup/serve-it-hot", "guests-arrive", "guests-to-the-table"}
    assert before(linked, "serve/tart") == {"apple-tart/bake", "clear/soup"}


def test_a_name_is_found_in_its_own_dish_first() -> None:
    linked = links_of(SOUP_AND_TART.replace("40 min}", "40 min, after: cut}"))

    assert before(linked, "apple-tart/bake") == {"apple-tart/cut"}


@pytest.mark.parametrize(
    "words", ["cut in Leek soup", "CUT  in leek soup", "cut in Leek soup, at least 10 min, at most 2 h"]
)
def test_a_name_may_say_in_which_dish(words: str) -> None:
    linked = links_of(SOUP_AND_TART.replace("40 min}", f'40 min, after: "{words}"}}'))

    assert before(linked, "apple-tart/bake") == {"leek-soup/cut"}


def test_a_name_that_only_another_dish_has_is_found_there() -> None:
    linked = links_of(SOUP_AND_TART.replace("40 min}", "40 min, after: [cut, fry the crumbs]}"))

    assert before(linked, "apple-tart/bake") == {"apple-tart/cut", "leek-soup/fry-the-crumbs"}


def test_a_last_step_that_another_course_builds_on_still_leads_to_its_own_serving() -> None:
    linked = links_of(SOUP_AND_TART.replace("40 min}", "40 min, after: [cut, serve it hot]}"))

    assert "leek-soup/serve-it-hot" in before(linked, "serve/soup")


def test_a_last_step_that_another_dish_of_its_course_builds_on_waits_for_no_serving() -> None:
    crumbs = """
      - dish: Crumbs
        steps:
          - {step: toast the crumbs, takes: 5 min}
  - course: Tart"""
    text = SOUP_AND_TART.replace("\n  - course: Tart", crumbs).replace("fry the crumbs]}", "toast the crumbs]}")
    linked = links_of(text.replace("          - {step: fry the crumbs, takes: 5 min, after: nothing}\n", ""))

    assert before(linked, "leek-soup/serve-it-hot") == {"leek-soup/simmer", "crumbs/toast-the-crumbs"}
    assert "crumbs/toast-the-crumbs" not in before(linked, "serve/soup")


@pytest.mark.parametrize(
    ("words", "least", "most", "firm"),
    [
        ("cut", 0, None, True),
        ("cut, at least 10 min", 10, None, True),
        ("cut, at most 2 h", 0, 120, True),
        ("cut, at least 10 min, at most 2 h", 10, 120, True),
        ("cut, at once", 0, 0, True),
    ],
)
def test_a_reference_may_say_how_long_to_wait(words: str, least: int, most: int | None, firm: bool) -> None:
    linked = links_of(SOUP_AND_TART.replace("takes: 40 min", f'takes: 40 min, after: "{words}"'))

    assert between(linked, "apple-tart/cut", "apple-tart/bake") == Link(
        "apple-tart/cut", "apple-tart/bake", least, most, firm
    )


def test_the_long_form_of_a_reference_says_the_same() -> None:
    long = "after: {step: cut, at least: 10 min, at most: 2 h}"
    linked = links_of(SOUP_AND_TART.replace("takes: 40 min", f"takes: 40 min, {long}"))

    assert between(linked, "apple-tart/cut", "apple-tart/bake") == Link("apple-tart/cut", "apple-tart/bake", 10, 120)


def test_before_turns_the_link_round() -> None:
    linked = links_of(SOUP_AND_TART.replace("40 min}", '40 min, before: "serve Soup, at least 5 min"}'))

    assert between(linked, "apple-tart/bake", "serve/soup").least == 5


def test_a_job_that_says_nothing_is_done_in_the_last_three_hours_before_the_guests_arrive_if_it_can_be() -> None:
    linked = links_of(SOUP_AND_TART + "jobs: [polish the gong]\n")

    assert between(linked, "jobs/polish-the-gong", "guests-arrive") == Link(
        "jobs/polish-the-gong", "guests-arrive", 0, 180, firm=False, usual=True
    )


@pytest.mark.parametrize("said", ["after: serve Soup", "before: serve Soup", "not before: 18:00"])
def test_a_job_that_says_its_time_is_tied_to_nothing_else(said: str) -> None:
    linked = links_of(SOUP_AND_TART + f"jobs: [{{job: fetch the ice, {said}}}]\n")

    assert "jobs/fetch-the-ice" not in before(linked, "guests-arrive")


@pytest.mark.parametrize("work", ["jobs: [{job: x, before: guests arrive}]", "cut"])
def test_whatever_is_to_be_ready_for_the_guests_may_fail_to_be(work: str) -> None:
    text = SOUP_AND_TART
    text = text.replace("40 min}", "40 min, before: guests arrive}") if work == "cut" else text + work
    linked = links_of(text)

    assert [each.firm for each in linked.links if each.second == "guests-arrive"] == [False]


def test_courses_follow_one_another_from_the_guests_coming_to_the_last_clearing() -> None:
    linked = links_of(SOUP_AND_TART.replace("at: 19:15", "at: 19:15\n    eaten in: 20 to 30 min"))

    assert before(linked, "guests-to-the-table") == {"guests-arrive"}
    assert between(linked, "serve/soup", "clear/soup").least == 25
    assert "clear/soup" in before(linked, "serve/tart")


def test_a_course_eaten_standing_is_not_cleared_before_the_next() -> None:
    linked = links_of(SOUP_AND_TART.replace("at: 19:15", "at: 19:15\n    standing: yes"))

    assert before(linked, "guests-to-the-table") == {"guests-arrive", "serve/soup"}
    assert "clear/soup" not in before(linked, "serve/tart")


def test_ids_stay_apart_whatever_dishes_and_steps_are_called() -> None:
    text = SOUP_AND_TART.replace("dish: Leek soup", "dish: Serve").replace("serve it hot", "tart")
    linked = links_of(text.replace("step: bake", "step: cut!"))

    assert linked.nodes["serve/tart"].kind == "serve"
    assert linked.nodes["serve-dish/tart"].kind == "step"
    assert linked.nodes["apple-tart/cut-2"].name == "cut!"


@pytest.mark.parametrize(
    ("text", "name"), [("Celeriac broth", "celeriac-broth"), ("Crème brûlée!", "crème-brûlée"), ("?!", "x")]
)
def test_a_slug_keeps_the_letters_of_every_script(text: str, name: str) -> None:
    assert slug(text) == name


def test_every_link_of_the_bundled_plan_joins_two_known_pieces_of_work(lantern: PlanFile) -> None:
    ids = set(lantern.filled.tasks)

    assert all({each.first, each.second} <= ids for each in lantern.filled.links)
