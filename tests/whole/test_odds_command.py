"""`odds` from its words to its exit code."""

from typing import Any

import pytest

from board.base.exits import ExitCode
from tests.whole.conftest import LANTERN, Run
from tests.whole.printed import keeps_to


def test_the_command_prints_odds_and_the_same_ones_again(run: Run) -> None:
    code, first, _ = run("odds", LANTERN, "--evenings", "400", "--seed", "7")
    _, again, _ = run("odds", LANTERN, "--evenings", "400", "--seed", "7")
    _, other, _ = run("odds", LANTERN, "--evenings", "400", "--seed", "8")

    assert code == ExitCode.DONE
    assert first == again != other
    assert "400 evenings" in first
    assert "pieces of work a spread" in " ".join(first.split())


def test_the_odds_for_other_programs_keep_their_form(run: Run) -> None:
    code, out, _ = run("odds", LANTERN, "--evenings", "300", "--json")
    form: dict[str, Any] = keeps_to("odds", out)

    assert code == ExitCode.DONE
    assert form["evenings"] == 300
    for course in form["courses"]:
        assert set(course) == {"name", "wanted", "planned", "within_5_min", "by", "mean_late_minutes", "spread"}
        assert set(course["by"]) == {"0.50", "0.80", "0.95"}
        assert sum(each["evenings"] for each in course["spread"]) == 300
    assert all(set(each) == {"course", "kind", "id", "name", "share"} for each in form["blame"])
    assert all(set(each) == {"kind", "id", "name", "courses"} for each in form["help"])


@pytest.mark.parametrize(
    "bad", [["--evenings", "99"], ["--evenings", "1000001"], ["--evenings", "many"], ["--evenings", "1e4"],
            ["--seed", "-1"], ["--seed", "x"], ["--seed", "9" * 19], ["--evenings", "²²²"]],
)  # fmt: skip
def test_bad_numbers_are_told_in_one_message(run: Run, bad: list[str]) -> None:
    code, out, err = run("odds", LANTERN, *bad)

    assert code == ExitCode.USAGE
    assert out == ""
    assert repr(bad[1]) in err
    assert "Traceback" not in err
