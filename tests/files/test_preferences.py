"""What is remembered, and which theme a board begins with."""

import json
from pathlib import Path

import pytest

from board.files.preferences import Settings, first_theme, read_settings, remember_theme


def test_a_theme_is_remembered_and_the_rest_of_the_file_stays(tmp_path: Path) -> None:
    file = tmp_path / "new" / "settings.json"
    remember_theme(file, "light")
    assert read_settings(file) == Settings("light")
    file.write_text('{"later": [1], "theme": "light"}')

    remember_theme(file, "contrast")

    assert json.loads(file.read_text()) == {"later": [1], "theme": "contrast"}
    assert [path.name for path in file.parent.iterdir()] == ["settings.json"]


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"[]", b"null", b'"light"', b'{"theme": "tartan"}', b'{"theme": ["light"]}', b'{"theme": null}',
     b"\xff\xfe\x00", b"[" * 90_000, b'{"theme": "light"}' + b" " * 200_000],
)  # fmt: skip
def test_a_broken_file_means_the_defaults(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "settings.json"
    file.write_bytes(content)

    assert read_settings(file) == Settings()
    remember_theme(file, "light")
    assert read_settings(file) == Settings("light")


def test_no_file_or_a_folder_in_its_place_means_the_defaults(tmp_path: Path) -> None:
    assert read_settings(tmp_path / "none.json") == Settings()
    assert read_settings(tmp_path) == Settings()


@pytest.mark.parametrize(
    ("asked", "remembered", "environ", "few", "first"),
    [
        (None, None, {}, False, "dark"),
        (None, "light", {}, False, "light"),
        ("contrast", "light", {}, False, "contrast"),
        (None, "light", {"NO_COLOR": "1"}, False, "plain"),
        (None, None, {"NO_COLOR": ""}, False, "dark"),  # no-color.org: "when present and not an empty string"
        ("light", None, {"NO_COLOR": "1"}, False, "light"),  # no-color.org: command-line arguments override it
        (None, "light", {}, True, "plain"),
        ("dark", None, {}, True, "dark"),
    ],
)
def test_the_theme_a_board_begins_with(
    asked: str | None, remembered: str | None, environ: dict[str, str], few: bool, first: str
) -> None:
    """NO_COLOR as https://no-color.org describes it."""
    assert first_theme(asked, remembered, environ, few_colours=few) == first
