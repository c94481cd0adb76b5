"""What each course is laid with, and what must be washed in between; common practice, no source, sums by hand."""

from collections.abc import Callable

from hypothesis import given, settings
from hypothesis import strategies as st

from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.resolve.laying import Kind, house, kinds, laid, wash_ups
from tests.conftest import read
from tests.examples import times

PlanFrom = Callable[[str], PlanFile]

NINE = """\
event: Supper for nine
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 8 others]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
table:
  laid with: napkin
  soup bowls: 9
  dessert spoons: 14
  forks: 20
  dinner plates: 9
courses:
  - course: Broth
    at: 19:15
    laid with: soup bowl, dessert spoon
    dishes: [{dish: Leek broth, steps: [{step: cook the broth, takes: 20 min}]}]
  - course: Main
    at: 20:15
    served in: 3 serving dishes
    dishes: [{dish: Lentils, steps: [{step: cook the lentils, takes: 20 min}]}]
  - course: Sweet
    at: 21:15
    laid with: [2 dessert spoons, fork]
    dishes:
      - dish: Pears
        served in: serving dish
        steps: [{step: cook the pears, takes: 20 min}]
"""
STEP = "{step: cook it, takes: 1 min}"


def plan_of(text: str) -> Plan:
    found = read(text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found.plan


def by_piece(plan: Plan) -> dict[str, Kind]:
    return {kind.piece: kind for kind in kinds(plan)}


def test_a_supper_for_nine_by_hand() -> None:
    """Dessert spoons: 9 for the broth, 18 for the sweet; there are 14, so 4 are lacking for the sweet alone, and with
    18 there, 9 are clean after the broth and 9 are washed. Forks: 9 for the main, 9 for the sweet, of 20."""
    found = by_piece(plan_of(NINE))

    spoons = found["dessert spoon"]
    assert (spoons.uses, spoons.total, spoons.house, spoons.borrow) == (((0, 9), (2, 18)), 27, 14, 4)
    assert [(wash.count, wash.after, wash.before) for wash in spoons.washes] == [(9, 0, 2)]
    assert (found["fork"].total, found["fork"].borrow, found["fork"].washes) == (18, 0, ())
    assert (found["serving dish"].uses, found["serving dish"].house) == (((1, 3), (2, 1)), None)
    assert found["napkin"].uses == ((None, 9),)


def test_what_was_used_first_is_washed_first() -> None:
    """9 a course, 20 in the house: 2 clean after two courses, so the third needs 7 of the first's; the fourth finds
    none clean, and takes the 2 left of the first and 7 of the second."""
    courses = "".join(
        f"  - {{course: C{n}, at: '{18 + n}:45', laid with: fork, dishes: [{{dish: D{n}, steps: [{STEP}]}}]}}\n"
        for n in range(4)
    )
    plan = plan_of(NINE.split("courses:")[0] + "courses:\n" + courses)

    washes = by_piece(plan)["fork"].washes

    assert [(wash.count, wash.after, wash.before) for wash in washes] == [(7, 0, 2), (2, 0, 3), (7, 1, 3)]


def test_what_is_washed_together_is_one_piece_of_work() -> None:
    text = NINE.replace("laid with: soup bowl, dessert spoon", "laid with: soup bowl, dessert spoon, 2 forks")
    ups = wash_ups(
        plan_of(text.replace("laid with: [2 dessert spoons, fork]", "laid with: [2 dessert spoons, soup bowl]"))
    )

    assert [(up.after, up.before, up.name, up.minutes) for up in ups] == [
        (0, 1, "wash 7 forks", 4),
        (0, 2, "wash 9 soup bowls and 9 dessert spoons", 9),
    ]


def test_many_kinds_are_told_by_their_number() -> None:
    text = NINE.replace("bowl, dessert spoon", "bowl, dessert spoon, dinner plate")
    text = text.replace("[2 dessert spoons, fork]", "soup bowl, dessert spoon, dinner plate")
    (up,) = wash_ups(plan_of(text.replace("at: 20:15\n", "at: 20:15\n    laid with: nothing\n")))

    assert [wash.count for wash in up.washes] == [9, 4, 9]
    assert (up.name, up.minutes) == ("wash 22 pieces of the table", 11)


def test_nothing_is_washed_of_what_stays_for_the_whole_meal() -> None:
    plan = plan_of(NINE.replace("laid with: napkin", "laid with: dessert spoon"))

    spoons = by_piece(plan)["dessert spoon"]
    assert spoons.uses == ((None, 9), (0, 9), (2, 18))
    assert (spoons.borrow, [wash.count for wash in spoons.washes]) == (13, [9])


def test_a_house_that_lists_one_thing_twice_has_both() -> None:
    assert house(plan_of(NINE.replace("  forks: 20", "  forks: 20\n  Fork: 3")))["fork"] == 23


def test_what_a_plan_says_replaces_what_is_usual_and_nothing_is_nothing() -> None:
    assert {(each.piece, each.assumed) for each in laid(plan_of(NINE)) if each.course == 1} == {
        ("dinner plate", True), ("dinner knife", True), ("fork", True), ("serving dish", False),
    }  # fmt: skip
    nothing = NINE.replace("at: 20:15\n", "at: 20:15\n    laid with: nothing\n")
    assert [each.piece for each in laid(plan_of(nothing)) if each.course == 1] == ["serving dish"]


def test_a_course_eaten_standing_is_laid_with_what_the_plan_says_only() -> None:
    standing = NINE.replace("at: 20:15\n", "at: 20:15\n    standing: yes\n")

    assert [each.piece for each in laid(plan_of(standing)) if each.course == 1] == ["serving dish"]


def test_a_dish_for_some_is_laid_for_them_and_not_for_those_it_stands_instead_for() -> None:
    """Ines has her own dish: 1 ramekin; the 8 others eat the lentils from 8 plates; each of the 9 has a fork."""
    text = NINE.replace(
        "    dishes: [{dish: Lentils, steps: [{step: cook the lentils, takes: 20 min}]}]",
        "    laid with: fork\n    dishes:\n"
        "      - {dish: Lentils, laid with: dinner plate, steps: [{step: cook the lentils, takes: 20 min}]}\n"
        "      - {dish: Beans, only for: Ines, instead of: Lentils, laid with: ramekin, "
        "steps: [{step: cook the beans, takes: 20 min}]}",
    )

    assert {each.piece: each.total for each in laid(plan_of(text)) if each.course == 1} == {
        "fork": 9, "dinner plate": 8, "ramekin": 1, "serving dish": 3,
    }  # fmt: skip


PIECES = ("soup bowl", "fork", "spoon", "wine glass")


@settings(max_examples=times(60))
@given(
    guests=st.integers(1, 24),
    there=st.dictionaries(st.sampled_from(PIECES), st.integers(0, 60)),
    courses=st.lists(st.dictionaries(st.sampled_from(PIECES), st.integers(1, 3), min_size=1), min_size=1, max_size=5),
)
def test_there_are_never_fewer_than_the_guests_who_eat(
    guests: int, there: dict[str, int], courses: list[dict[str, int]]
) -> None:
    """Played through: what is there, borrowed and washed suffices for each course, and no less would."""
    plan = Plan.model_validate(
        {
            "event": "x", "date": "2026-11-28", "zone": "UTC", "arrive": "12:00", "guests": [f"{guests} guests"],
            "hands": {"host": {"hours": {}}}, "table": there,
            "courses": [
                {"course": f"c{n}", "at": "13:00", "laid with": [f"{count} {piece}" for piece, count in pieces.items()],
                 "dishes": [{"dish": f"d{n}", "steps": [{"step": f"s{n}", "takes": "1 min"}]}]}
                for n, pieces in enumerate(courses)
            ],
        }
    )  # fmt: skip

    for kind in kinds(plan):
        if kind.piece not in PIECES:
            continue
        for course, count in kind.uses:
            assert course is not None
            assert count == guests * courses[course][kind.piece] >= guests
        if kind.house is None:
            assert not kind.washes
            continue
        clean, dirty = kind.house + kind.borrow, dict.fromkeys(range(len(courses)), 0)
        for course, count in kind.uses:
            washed = sum(wash.count for wash in kind.washes if wash.before == course)
            assert washed == max(0, count - clean)
            for wash in (wash for wash in kind.washes if wash.before == course):
                assert wash.after < wash.before
                dirty[wash.after] -= wash.count
                assert dirty[wash.after] >= 0
            clean += washed - count
            assert clean >= 0
            dirty[course or 0] += count
        assert kind.borrow == max(0, max(count for _, count in kind.uses) - kind.house)
