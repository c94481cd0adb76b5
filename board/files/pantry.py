"""Files beside a plan about its provisions: what is in the house, and what was ticked on the list."""

from collections.abc import Mapping
from pathlib import Path

from pydantic import TypeAdapter, ValidationError

from board.base.errors import Trouble
from board.base.plain import one_line
from board.files import words
from board.files.plans import read_text
from board.plan.edit.yaml_text import Layout, entry
from board.plan.load import PlanFile
from board.plan.model.shopping import InTheHouse, InTheHouseLine
from board.plan.places import Places, read_yaml
from board.plan.snag import Place, Snag, Weight

_LINES = TypeAdapter(list[InTheHouseLine])
LARGEST_TICKS_BYTES = 1_000_000


def in_the_house(plan_file: PlanFile, plan_path: Path) -> list[InTheHouse]:
    """What the plan says is in the house, pantry files included. Raises Trouble (code 2, with the snags as text)."""
    found: list[InTheHouse] = []
    for each in plan_file.plan.pantry:
        found += [each] if each.file is None else read_pantry(plan_path.parent / each.file)
    return found


def read_pantry(path: Path) -> list[InTheHouse]:
    """A YAML list of what is in the house, bare or under `pantry:`. Raises Trouble, as above.

    A plan from elsewhere may name any file of the host's: what is no such list is not quoted.
    """
    data, places, snags = read_yaml(read_text(path), one_line(path))
    within: tuple[str | int, ...] = ()
    if isinstance(data, dict) and set(data) == {"pantry"}:
        data, within = data["pantry"], ("pantry",)
    lines: list[InTheHouse] = []
    if not snags:
        try:
            lines = _LINES.validate_python(data)
        except ValidationError as wrong:
            snags = [_snag(error, within, places) for error in wrong.errors(include_url=False)]
        snags += [
            Snag("plan 7", Weight.STOP, words.PANTRY_IN_PANTRY, words.PANTRY_MEND, places.of((*within, number)))
            for number, line in enumerate(lines)
            if line.file is not None
        ]
    if snags and not _is_ours(data):
        snags = [_unquoted(snags[0])]
    if snags:
        raise Trouble("\n".join([*(s.render() for s in snags), words.snag_count(len(snags))]), code=2)
    return lines


def _is_ours(data: object) -> bool:
    """Whether it is a list of what may be foods."""
    return isinstance(data, list) and all(
        isinstance(each, str) or (isinstance(each, dict) and set(each) <= set(InTheHouse.model_fields)) for each in data
    )


def _unquoted(snag: Snag) -> Snag:
    """That it is no such list, and where that shows first."""
    place = snag.place and Place(snag.place.file, snag.place.line, snag.place.column)
    return Snag("plan 7", Weight.STOP, words.NOT_A_PANTRY, words.PANTRY_MEND, place)


def _snag(error: object, within: tuple[str | int, ...], places: Places) -> Snag:
    assert isinstance(error, dict)
    place = places.of((*within, *error["loc"]))
    said = str(error.get("ctx", {}).get("error", ""))
    message, _, mend = said.partition("; ")
    if error["type"] != "value_error":
        message, mend = words.NOT_A_PANTRY, words.PANTRY_MEND
    return Snag("plan 7", Weight.STOP, message, f"{mend[:1].upper()}{mend[1:]}", place)


def ticks_path(plan_path: Path) -> Path:
    """`supper.yaml` → `supper.ticks.yaml`."""
    return plan_path.with_name(f"{plan_path.stem}.ticks.yaml")


def read_ticks(path: Path) -> dict[str, str] | None:
    """Food → the amount it was ticked with. Empty if there is no file; None if it cannot be read as ticks. Raises
    nothing."""
    try:
        if not path.exists():
            return {}
        if not path.is_file() or path.stat().st_size > LARGEST_TICKS_BYTES:
            return None
        data, _, snags = read_yaml(path.read_text(encoding="utf-8"), path.name)
    except (OSError, ValueError):
        return None
    ticks = data.get("ticked") if isinstance(data, dict) and not snags else None
    if not isinstance(ticks, dict) or not all(isinstance(v, str) for v in ticks.values()):
        return None
    return dict(ticks)


def write_ticks(path: Path, ticks: Mapping[str, str]) -> None:
    """Writes the file as a whole: a new file is written, synced and renamed. Raises OSError; the old file is then
    intact."""
    from board.log.disk import replace_whole

    text = "\n".join([f"# {words.TICKS_HEAD}", *entry("ticked", dict(ticks), Layout(quoted=True)), ""])
    replace_whole(path, text.encode())
