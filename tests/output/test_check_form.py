"""What `check` and `logs` print for other programs keeps to the schema that is published beside it (JSON Schema
2020-12, by the reference library jsonschema)."""

import json

import jsonschema
import pytest

from tests.conftest import PLANS
from tests.whole.conftest import LANTERN, Run, home, run

__all__ = ["home", "run"]


def _schema(run: Run, of: str) -> dict[str, object]:
    found: dict[str, object] = json.loads(run("schema", "--of", of)[1])
    jsonschema.Draft202012Validator.check_schema(found)
    return found


@pytest.mark.parametrize("plan", [PLANS / "lantern-supper.yaml"], ids=lambda path: path.stem)
def test_check_as_data_keeps_to_its_schema_and_holds_what_the_text_counts(run: Run, plan: object) -> None:
    form = json.loads(run("check", str(plan), "--json")[1])

    jsonschema.validate(form, _schema(run, "check"))
    assert form["format"] == 1
    assert sum(form["counts"].values()) == len(form["findings"])
    assert form["timetable"]["holds"]
    assert form["assumed"]


def test_the_schema_refuses_a_finding_without_its_place(run: Run) -> None:
    form = json.loads(run("check", LANTERN, "--json")[1])
    del form["findings"][0]["place"]

    with pytest.raises(jsonschema.ValidationError, match="place"):
        jsonschema.validate(form, _schema(run, "check"))


def test_logs_as_data_keep_to_their_schema(run: Run, home: object) -> None:
    run("rehearse", LANTERN, "--plain")
    form = json.loads(run("logs", "--json")[1])

    jsonschema.validate(form, _schema(run, "logs"))
    assert [each["event"] for each in form["logs"]] == ["Lantern supper"]


@pytest.mark.parametrize("typed", [["sheet", LANTERN], ["guests", LANTERN], ["table", LANTERN], ["provisions", LANTERN],
                                   ["odds", LANTERN, "--evenings", "100"], ["lessons", "--book"]])  # fmt: skip
def test_every_output_as_data_tells_its_format(run: Run, typed: list[str]) -> None:
    assert json.loads(run(*typed, "--json")[1])["format"] == 1


def test_the_verdict_stands_before_what_is_to_mend_or_mind(run: Run) -> None:
    _, out, _ = run("check", LANTERN)

    assert out.index("The timetable holds") < out.index("! MIND")
    assert len(out.splitlines()) <= 40
    assert "(--all tells them)." in out


def test_assumptions_of_one_kind_are_one_line_and_ten_lines_at_most(run: Run) -> None:
    _, out, _ = run("check", LANTERN)
    _, whole, _ = run("check", LANTERN, "--all")

    def assumed(text: str) -> list[str]:
        return text.partition("Assumed, because the plan does not say")[2].split("\n\n")[0].splitlines()[1:]

    assert 0 < len(assumed(out)) <= 10 < len(assumed(whole))
