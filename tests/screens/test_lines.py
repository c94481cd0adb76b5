"""Lines are drawn again only where they changed, are cut with an ellipsis, and are never read as markup."""

import pytest
from textual.app import App, ComposeResult
from textual.geometry import Region

from board.screens.lines import Lines, fitted


class Small(App[None]):
    def compose(self) -> ComposeResult:
        self.lines = Lines(id="lines")
        yield self.lines


def text(app: Small, y: int) -> str:
    return app.lines.render_line(y).text


async def test_only_changed_lines_are_drawn_again(monkeypatch: pytest.MonkeyPatch) -> None:
    app = Small()
    async with app.run_test(size=(20, 5)) as pilot:
        app.lines.put([(("one", ""),), (("two", "bold"),), (("three", ""),)])
        await pilot.pause()
        asked: list[Region] = []
        monkeypatch.setattr(app.lines, "refresh", lambda *regions: asked.extend(regions))

        app.lines.put([(("one", ""),), (("two", "dim"),)])

        assert [region.y for region in asked] == [1, 2]  # another style, and a line that is gone
        asked.clear()
        app.lines.put([(("one", ""),), (("two", "dim"),)])
        assert asked == []


def test_a_line_is_fitted_to_a_width() -> None:
    assert fitted((("one", "bold"), (" two", "")), 9) == (("one", "bold"), (" two", ""), ("  ", ""))
    assert fitted((("one", "bold"), (" two", "")), 5) == (("one", "bold"), (" …", ""))
    assert fitted((("餃子餃子", ""),), 4) == (("餃 …", ""),)


async def test_a_line_too_long_is_cut_and_markup_is_shown_as_written() -> None:
    app = Small()
    async with app.run_test(size=(12, 4)) as pilot:
        app.lines.put([(("so[/]up ", "bold"), ("[b]of leeks", "")), (("餃子餃子餃子餃子", ""),), (("short", ""),)])
        await pilot.pause()

        assert text(app, 0) == "so[/]up [b]…"
        assert text(app, 1).startswith("餃子餃子餃")
        assert text(app, 1).rstrip().endswith("…")
        assert app.lines.render_line(1).cell_length == 12
        assert text(app, 2) == "short       "
