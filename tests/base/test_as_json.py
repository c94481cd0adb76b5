"""JSON for other programs that is printed on a terminal: it holds no raw control sign."""

import json

from board.base.plain import as_json, plain


def test_json_holds_no_mark_a_terminal_obeys_and_says_the_same() -> None:
    form = {"name": "soup \x1b[2J \x9b31m \u202e \x7f \U000e0041 crème", "of": [1, None, "\ud800"]}

    text = as_json(form)

    assert json.loads(text) == form
    assert "crème" in text
    assert plain(text) == text
