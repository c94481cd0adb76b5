"""Parts of a plan → the words a host would write: what `parse_station`, `parse_keep` and `parse_moment` read. Pure."""

from datetime import date, datetime

from board.plan.phrases.durations import short
from board.plan.phrases.stations import Heat, Keep, Station


def station_text(station: Station) -> str:
    """`oven at 200 C (190 to 210 C), 1 shelf, roasting tin`; parses back to the same station."""
    head = station.oven or station.place
    if station.off:
        head += " off"
    if station.heat is not None:
        head += f" at {heat_text(station.heat)}"
    pieces = [head]
    if station.ajar:
        pieces.append("door ajar")
    if station.shelves is not None:
        pieces.append("1 shelf" if station.shelves == 1 else f"{station.shelves} shelves")
    if station.rings is not None:
        pieces.append("1 ring" if station.rings == 1 else f"{station.rings} rings")
    if station.litres is not None:
        pieces.append(f"{station.litres:g} litres")
    pieces += [tool if count == 1 else f"{count} {tool}" for tool, count in station.tools.items()]
    return ", ".join(pieces)


def heat_text(heat: Heat) -> str:
    """`200 C (190 to 210 C)`, or the setting alone."""
    if heat.low == heat.high:
        return f"{heat.want:g} C"
    return f"{heat.want:g} C ({heat.low:g} to {heat.high:g} C)"


def setting_text(celsius: float, *, fahrenheit: bool) -> str:
    """`160 C`, or `325 F` in a plan that writes its heat so."""
    return f"{round(celsius * 9 / 5 + 32):d} F" if fahrenheit else f"{round(celsius):d} C"


def keep_text(keep: Keep) -> str:
    """`40 min in the oven at 90 C (80 to 100 C)`."""
    where = keep.where
    if where == Station(place="hot"):
        return f"{short(keep.minutes)} hot"
    joint = "on the" if where.place == "stovetop" else "in the"
    return f"{short(keep.minutes)} {joint} {station_text(where)}"


def moment_text(at: datetime, event: date) -> str:
    """`17:40`, `fri 17:40`, `9 days before 17:40`: a moment by the clock of an event's place; after the event's day
    with its date."""
    days = (event - at.date()).days
    day = f"{at:%a}".lower() if 0 < days < 7 else f"{days} days before" if days > 0 else f"{at:%Y-%m-%d}"
    return f"{at:%H:%M}" if not days else f"{day} {at:%H:%M}"
