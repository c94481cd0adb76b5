"""`plan` from the command line: without a terminal, and a plan that is not there."""

from pathlib import Path

from tests.whole.conftest import Run


def test_without_a_terminal_it_says_what_prints_the_same(run: Run, tmp_path: Path) -> None:
    plan = tmp_path / "supper.yaml"
    plan.write_text("event: Supper\n", encoding="utf-8")

    for typed in (("plan", str(plan)), (str(plan),)):
        code, _, told = run(*typed)
        assert code == 1
        assert "platecall check" in told
    assert plan.read_text(encoding="utf-8") == "event: Supper\n"
