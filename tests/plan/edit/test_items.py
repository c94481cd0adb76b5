"""A list's item as lines: out of one text, into another, comments and all."""

import pytest

from board.plan.edit.items import item_lines, put_item
from board.plan.edit.save import CannotEdit
from board.plan.places import read_yaml

TEXT = """\
dishes:
    # the first
    -   dish: Tart   # Ada's
        # not too sweet
        steps:
        - step: bake   # hot
          how: |
            slowly

            and well
    - dish: Soup  # for all
      for: 4      # as ever
    # the end
jobs: [sweep]
"""


def test_an_items_lines_come_out_with_their_comments_and_without_indent() -> None:
    assert item_lines(TEXT, ("dishes", 0)) == [
        "-   dish: Tart   # Ada's",
        "    # not too sweet",
        "    steps:",
        "    - step: bake   # hot",
        "      how: |",
        "        slowly",
        "",
        "        and well",
    ]


@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_lines_put_in_place_of_an_item_leave_every_other_byte(end: str) -> None:
    text = TEXT.replace("\n", end)
    made = put_item(text, ("dishes", 1), ["- dish: Gratin  # new", "  for: 2"])

    assert made == text.replace(
        f"    - dish: Soup  # for all{end}      for: 4      # as ever{end}",
        f"    # for all{end}    # as ever{end}    - dish: Gratin  # new{end}      for: 2{end}",
    )


def test_taken_out_and_put_in_again_it_is_the_same_data() -> None:
    made = put_item(TEXT, ("dishes", 1), item_lines(TEXT, ("dishes", 0)))
    assert isinstance(made, str)
    dishes = read_yaml(made, "")[0]["dishes"]

    assert dishes[0] == dishes[1]


def test_an_item_in_brackets_or_at_the_end_without_a_line_break_works_too() -> None:
    assert item_lines("dishes: [{dish: Tart, for: 4}]", ("dishes", 0)) == ["- dish: Tart", "  for: 4"]
    put = put_item("dishes: [{dish: Tart}, {dish: Soup}]\n", ("dishes", 1), ["- dish: Gratin  # gone"])
    assert isinstance(put, str)
    assert read_yaml(put, "")[0] == {"dishes": [{"dish": "Tart"}, {"dish": "Gratin"}]}
    assert put_item("dishes:\n- dish: Tart", ("dishes", 0), ["- dish: Gratin"]) == "dishes:\n- dish: Gratin"


@pytest.mark.parametrize("lines", [[], ["dish: Gratin"], ["- a", "- b"], ["- {"]])
def test_what_is_no_single_item_is_refused(lines: list[str]) -> None:
    assert isinstance(put_item(TEXT, ("dishes", 0), lines), CannotEdit)
    assert isinstance(put_item(TEXT, ("dishes", 7), ["- dish: Gratin"]), CannotEdit)
    assert item_lines(TEXT, ("dishes", 7)) == []
    assert item_lines(TEXT, ("jobs",)) == []
