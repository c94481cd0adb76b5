"""What a cooling estimate assumes, in plain words."""

from board.base.words.times import degrees

COOLING_TAKEN = {
    "newton": "it falls fast at first and ever slower, by Newton's law, and is stirred now and then",
    "depth": "twice as deep takes four times as long (Dickerson & Read 1973)",
    "unsourced": "the figures behind it are common practice, no source: a probe goes before them",
    "shallow-in-air": "so shallow a layer in still air may well take longer than this says",
    "readings": "it goes on falling as the probe's readings show, where it stands now",
}


def cooling_stands(depth_cm: float, vessel: str, place: str, ambient_celsius: float) -> str:
    return f"{depth_cm:g} cm deep, uncovered, in {vessel}; {place} at {degrees(ambient_celsius)}"
