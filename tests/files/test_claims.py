"""One table on a plan at a time."""

from pathlib import Path

import pytest

from board.files import claims


def test_a_plan_is_claimed_by_one_under_any_of_its_names(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(claims, "user_cache_path", lambda _: tmp_path / "cache")
    plan, link = tmp_path / "supper.yaml", tmp_path / "other.yaml"
    plan.write_text("event: Supper\n", encoding="utf-8")
    link.symlink_to(plan)

    with (
        claims.claimed(plan) as first,
        claims.claimed(link) as second,
        claims.claimed(tmp_path / "lunch.yaml") as lunch,
    ):
        assert (first, second, lunch) == (True, False, True)
    with claims.claimed(link) as again:
        assert again


def test_where_nothing_can_be_locked_the_plan_is_not_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    blocked = tmp_path / "cache"
    blocked.write_text("a file", encoding="utf-8")
    monkeypatch.setattr(claims, "user_cache_path", lambda _: blocked)

    with claims.claimed(tmp_path / "supper.yaml") as ours:
        assert ours
