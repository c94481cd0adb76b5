"""The hour a job is given where its plan says none: as links, and told. Common practice, no source."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.plan.resolve.links import Link
from board.sheet import said
from tests.conftest import HEAD

DINNER = (
    HEAD
    + """
courses:
  - {course: Nibbles, at: 18:40, standing: yes, dishes: [{dish: Olives, steps: [{step: dress them, takes: 5 min}]}]}
  - {course: Soup, at: 19:15, dishes: [{dish: Leek soup, steps: [{step: heat it, takes: 5 min}]}]}
  - {course: Lamb, at: 20:15, dishes: [{dish: Braised lamb, steps: [{step: heat, takes: 5 min}]}]}
  - {course: Cheese, at: 21:00, dishes: [{dish: Three cheeses, steps: [{step: unwrap, takes: 5 min}]}]}
  - {course: Pudding, at: 21:30, dishes: [{dish: Pears, steps: [{step: plate them, takes: 5 min}]}]}
"""
)
PlanFrom = Callable[[str], PlanFile]
HOURS = {
    "before-guests", "last-hours", "any-time", "any-time-by-words", "chilled", "soon-before", "before", "soon-after",
    "after",
}  # fmt: skip


def hours(plan_from: PlanFrom, *jobs: str, dinner: str = DINNER) -> tuple[list[Link], list[str]]:
    """The links of jobs, and what is told of when they are done."""
    file = plan_from(dinner + "jobs:\n" + "".join(f"  - {job}\n" for job in jobs))
    links = [each for each in file.filled.links if "jobs/" in each.first + each.second]
    return links, [said.assumed(each) for each in file.filled.assumed if each.kind in HOURS]


BEFORE, AFTER = False, True

# A job; what it is linked to, from how many minutes to how many; what is told.
USUAL = {
    "light the tapers": (BEFORE, "guests-arrive", 0, 15, "is done in the last 15 min before the guests arrive"),
    "fill the jugs": (BEFORE, "guests-to-the-table", 0, 45, "is done in the last 45 min before the guests come to the "
                      "table"),
    "fill the ice bucket": (BEFORE, "guests-arrive", 0, 20, "is done in the last 20 min before the guests arrive"),
    "open the red": (BEFORE, "serve/lamb", 30, 60, "is done 30 min to 1 h before Lamb is served"),
    "open the red for the soup": (BEFORE, "serve/soup", 30, 60, "is done 30 min to 1 h before Soup is served"),
    "chill the white": (BEFORE, "guests-arrive", 0, 90, "is cold at most 1 h 30 before the guests arrive, and then "
                        "stays in the fridge"),
    "make coffee": (AFTER, "serve/pudding", 5, 30, "is done 5 min to 30 min after Pudding is served"),
    "take the coats": (AFTER, "guests-arrive", 0, 15, "is done within 15 min after the guests arrive"),
    "do the dishes after dinner": (AFTER, "clear/pudding", 0, 60, "is done within 1 h after Pudding is cleared"),
    "play charades afterwards": (AFTER, "clear/pudding", 0, 60, "is done within 1 h after Pudding is cleared"),
}  # fmt: skip


@pytest.mark.parametrize("job", USUAL)
def test_a_job_without_a_time_is_linked_to_its_usual_hour_and_told(plan_from: PlanFrom, job: str) -> None:
    after, event, least, most, line = USUAL[job]
    id_ = f"jobs/{job.replace(' ', '-')}"
    ends = (event, id_) if after else (id_, event)

    assert hours(plan_from, job) == ([Link(*ends, least, most, firm=after, usual=True)], [f"{line}, as usual: {job}"])


def test_of_food_it_is_told_that_the_rules_of_food_go_first(plan_from: PlanFrom) -> None:
    links, told = hours(plan_from, "take the cheese out", "cut the bread")

    assert [(link.second, link.least, link.most) for link in links] == [("serve/cheese", 45, 75), ("serve/soup", 0, 60)]
    assert told == [
        "is done 45 min to 1 h 15 before Cheese is served, as usual; the food rules go first: take the cheese out",
        "is done in the last 1 h before Soup is served, as usual; the food rules go first: cut the bread",
    ]


def test_coffee_is_ready_for_the_course_that_is_called_so(plan_from: PlanFrom) -> None:
    coffee = DINNER + "  - {course: Coffee, at: 22:15, dishes: [{dish: Mints, steps: [{step: plate, takes: 2 min}]}]}\n"
    links, _ = hours(plan_from, "make the coffee", dinner=coffee)

    assert links == [Link("jobs/make-the-coffee", "serve/coffee", 0, 15, firm=False, usual=True)]


@pytest.mark.parametrize(
    ("own", "links"),
    [
        ("after: heat it", [Link("leek-soup/heat-it", "jobs/light-the-candles")]),
        ("before: serve Soup", [Link("jobs/light-the-candles", "serve/soup")]),
        ("not before: 15:00", []),
        ("not after: 16:00", [Link("jobs/light-the-candles", "guests-arrive", firm=False)]),
        ("day: day before", [Link("jobs/light-the-candles", "guests-arrive", firm=False)]),
        ("day: on the day", [Link("jobs/light-the-candles", "guests-arrive", 0, 15, firm=False, usual=True)]),
    ],
)  # fmt: skip
def test_what_the_plan_says_itself_goes_first(plan_from: PlanFrom, own: str, links: list[Link]) -> None:
    assert hours(plan_from, f"{{job: light the candles, {own}}}")[0] == links


@pytest.mark.parametrize(
    ("courses", "main"),
    [
        ("Soup of leeks, Roast lamb, Crumble of apples", "roast-lamb"),
        ("Salad of beans, Main of lentils, Tart of plums", "main-of-lentils"),
        ("Soup of leeks, Pie of onions", "pie-of-onions"),
        ("Pie of onions, Pears", "pie-of-onions"),
        ("Fish of cod, Chicken of thighs, Tart of figs", "chicken-of-thighs"),
    ],
)
def test_the_red_is_for_the_main_course_whatever_it_is_called(plan_from: PlanFrom, courses: str, main: str) -> None:
    lines = "".join(
        f"  - {{course: {name}, at: '{19 + n}:15', dishes: [{{dish: D{n}, ingredients: [1 kg {name.split()[-1]}], "
        f"steps: [{{step: plate, takes: 5 min}}]}}]}}\n"
        for n, name in enumerate(courses.split(", "))
    )
    meat = lines.replace("1 kg thighs", "1 kg chicken thighs")
    (link,), _ = hours(plan_from, "open the claret", dinner=f"{HEAD}\ncourses:\n{meat}")

    assert link.second == f"serve/{main}"


def test_raw_food_is_taken_out_for_its_own_cooking_and_cooked_food_for_its_serving(plan_from: PlanFrom) -> None:
    steps = "[{step: salt it, takes: 5 min}, {step: roast it, where: oven at 180 C, takes: 1 h, until: 75 C}]"
    lamb = (
        DINNER.replace("dish: Braised lamb,", "dish: Braised lamb, ingredients: [2 kg lamb shoulder],").replace(
            "[{step: heat, takes: 5 min}]", steps
        )
        + "kitchen: {wash up: no}\n"
    )
    links, told = hours(
        plan_from, "take the lamb out of the fridge", "get the pears out of the fridge", "take it out of the fridge",
        dinner=lamb,
    )  # fmt: skip

    assert [(link.second, link.most) for link in links] == [
        ("braised-lamb/roast-it", 45), ("serve/pudding", 45), ("guests-arrive", 45),
    ]  # fmt: skip
    assert all("the food rules go first" in line for line in told)


def test_cheese_straws_are_no_cheese(plan_from: PlanFrom) -> None:
    straws = DINNER.replace("dish: Olives", "dish: Cheese straws").replace("course: Cheese,", "course: Fourth,")
    (link,), _ = hours(plan_from, "take out the cheeseboard", dinner=straws)

    assert link.second == "serve/fourth"


def test_what_is_done_after_dinner_comes_before_nothing_that_is_done_before_it(plan_from: PlanFrom) -> None:
    links, _ = hours(plan_from, "load the dishwasher after dinner", "run the dishwasher")

    assert [link.second for link in links] == ["jobs/load-the-dishwasher-after-dinner", "guests-arrive"]


def test_one_job_comes_before_another_where_both_are_there(plan_from: PlanFrom) -> None:
    links, told = hours(plan_from, "iron the tablecloth", "lay the table", "empty the dishwasher", "run the dishwasher")

    assert Link("jobs/iron-the-tablecloth", "jobs/lay-the-table") in links
    assert Link("jobs/run-the-dishwasher", "jobs/empty-the-dishwasher", 90) in links
    assert "is done before the guests arrive, if it can be; and before 'lay the table': iron the tablecloth" in told


def test_what_would_wait_for_itself_is_not_linked(plan_from: PlanFrom) -> None:
    """The pears want the coffee, so it cannot come after them; the cloth is ironed on the laid table, oddly."""
    soaked = DINNER.replace("{step: plate them,", "{step: plate them, after: make the coffee,")
    odd = "{job: lay the table, before: iron the cloth}"

    assert hours(plan_from, "make the coffee", dinner=soaked)[0] == [
        Link("jobs/make-the-coffee", "pears/plate-them"),
        Link("jobs/make-the-coffee", "guests-arrive", firm=False),
    ]
    assert Link("jobs/iron-the-cloth", "jobs/lay-the-table") not in hours(plan_from, odd, "iron the cloth")[0]


@pytest.mark.parametrize(
    ("job", "most", "told"),
    [
        ("polish the gong", 180, "in the last 3 h before the guests arrive, which is a guess (say when, for example "
         "`before: guests arrive, at most 1 h`)"),
        ("open the Bordeaux two hours before", 600, "any time before the guests arrive (when it is, say with `day:`, "
         "`after:` or `before:`)"),
        ("iron the cloth on Friday", None, "any time before the guests arrive (when it is, say with `day:`, `after:` "
         "or `before:`)"),
        ("borrow chairs", None, "before the guests arrive, if it can be"),
    ],
)  # fmt: skip
def test_a_job_whose_hour_nobody_knows_is_done_on_the_day_unless_its_words_may_tell_another_and_that_is_told(
    plan_from: PlanFrom, job: str, most: int | None, told: str
) -> None:
    links, lines = hours(plan_from, job)

    assert [(link.second, link.least, link.most, link.firm) for link in links] == [("guests-arrive", 0, most, False)]
    assert lines == [f"is done {told}: {job}"]


def test_what_is_put_away_follows_its_course(plan_from: PlanFrom) -> None:
    links, _ = hours(plan_from, "{job: put it in tubs, puts away: Lamb, takes: 5 min}")

    assert links == [Link("clear/lamb", "jobs/put-it-in-tubs", 0, 30, usual=True)]
