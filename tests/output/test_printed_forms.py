"""What commands print for other programs keeps to the schema that is published of it, to the last key (JSON Schema
2020-12, by the reference library jsonschema)."""

import gzip
import json
from pathlib import Path

import jsonschema
import pytest

from board.base.exits import ExitCode
from board.output.schemas.published import FORMAT, FORMS
from tests.conftest import PLANS
from tests.whole.conftest import LANTERN, Run, cold_home, home, run
from tests.whole.printed import keeps_to

__all__ = ["cold_home", "home", "run"]
LOGS = PLANS.parent / "tests/log/data"
BUNDLED = sorted(PLANS.glob("*.yaml"))


@pytest.mark.parametrize("name", FORMS)
def test_each_is_a_schema_that_asks_for_its_format(run: Run, name: str) -> None:
    code, out, _ = run("schema", "--of", name)

    assert code == ExitCode.DONE
    printed = json.loads(out)
    jsonschema.Draft202012Validator.check_schema(printed)
    part = printed["$defs"][FORMS[name].__name__]
    assert part["properties"]["format"] == {"const": FORMAT}
    assert "format" in part["required"]


def test_a_command_that_prints_no_data_is_told_with_those_that_do(run: Run) -> None:
    code, _, err = run("schema", "--of", "lesson")

    assert code == ExitCode.USAGE
    assert "Did you mean lessons?" in err


@pytest.mark.parametrize("path", BUNDLED, ids=lambda path: path.stem)
def test_who_eats_what_and_what_the_table_wants(run: Run, path: Path) -> None:
    guests = keeps_to("guests", run("guests", str(path), "--json")[1])
    table = keeps_to("table", run("table", str(path), "--json")[1])

    assert len(guests["answers"]) == len(guests["guests"]) * len(guests["dishes"])
    assert table["plan"] == guests["plan"]


def test_the_timetable_what_to_buy_and_the_odds(run: Run) -> None:
    sheet = keeps_to("sheet", run("sheet", LANTERN, "--json")[1])
    bought = keeps_to("provisions", run("provisions", LANTERN, "--json")[1])
    chances = keeps_to("odds", run("odds", LANTERN, "--evenings", "100", "--json")[1])

    assert sheet["clocks"]
    assert bought["errands"]
    assert [each["name"] for each in chances["courses"]] == [each["name"] for each in sheet["courses"]]


def test_the_schema_refuses_what_lacks_a_key_or_its_format(run: Run) -> None:
    form = json.loads(run("table", LANTERN, "--json")[1])

    for gone in ("format", "laid"):
        with pytest.raises(jsonschema.ValidationError, match=gone):
            keeps_to("table", json.dumps({key: value for key, value in form.items() if key != gone}))


def test_an_evening_its_lessons_and_the_list_of_logs(run: Run, tmp_path: Path) -> None:
    log, plan = tmp_path / "evening.jsonl", str(LOGS / "harvest-table.yaml")
    log.write_bytes(gzip.decompress((LOGS / "harvest-evening.jsonl.gz").read_bytes()))

    review = keeps_to("review", run("review", str(log), "--json")[1])
    several = keeps_to("review", run("review", str(log), str(log), "--json")[1])
    lessons = keeps_to("lessons", run("lessons", plan, str(log), "--json", "--no-effect")[1])
    logs = keeps_to("logs", run("logs", str(log), "--json")[1])

    assert review["steps"]
    assert len(several) == 2
    assert lessons["rehearsals"] == 1
    assert logs["logs"][0]["event"] == review["plan"]
