"""The drawn screen as plain text: its rows, then the runs of style in each, then what the styles are.

A whole SVG of a screen is some 60 kB and changes all over when one column moves; this is a few kB and shows in a diff
what a host would see change.
"""

from pathlib import Path

from board.screens.app import BoardApp

FOLDER = Path(__file__).parent / "snapshots"


def picture_of(app: BoardApp) -> str:
    """Rows of text, a ruler, and for each row its runs as `columns×style`; styles are numbered as they come."""
    styles: dict[str, int] = {}
    rows, runs = [], []
    for strip in app.screen._compositor.render_strips()[: app.size.height]:
        rows.append(strip.text.rstrip())
        found: list[list[int]] = []
        for segment in strip:
            number = styles.setdefault(str(segment.style or "").strip(), len(styles))
            if found and found[-1][1] == number:
                found[-1][0] += segment.cell_length
            else:
                found.append([segment.cell_length, number])
        runs.append(" ".join(f"{cells}×{number}" for cells, number in found if cells))
    named = [f"{number} {style}" for style, number in styles.items()]
    return "\n".join([*rows, "=" * app.size.width, *runs, "-" * app.size.width, *named]) + "\n"


def compare(name: str, drawn: str, *, refresh: bool) -> None:
    """Against the kept file; told line by line where they differ. With `refresh` the file is written instead."""
    file = FOLDER / f"{name}.txt"
    if refresh:
        FOLDER.mkdir(exist_ok=True)
        file.write_text(drawn, encoding="utf-8")
    assert file.exists(), f"no picture is kept as {file.name}; draw it with: PICTURES=new pytest tests/screens"
    assert drawn.splitlines() == file.read_text(encoding="utf-8").splitlines()
