"""When hands are on a step: look-ins that fall where hands are on it anyway are not counted, the later ones are."""

from board.plan.phrases.durations import Attention, Spread
from board.plan.phrases.stations import Station
from board.plan.resolve.assume import FilledWay
from board.schedule.formulate import parts_of
from board.schedule.problem import Part


def test_look_ins_go_on_after_a_long_beginning() -> None:
    attended = Attention(start=14, look=1, every=10, end=1)
    way = FilledWay(Station(place="stovetop"), Spread(low=34, likely=34, high=34), attended, None)

    found = parts_of(way, 34)

    assert found == (Part(0, 14, "start"), Part(20, 1, "look-in"), Part(30, 1, "look-in"), Part(33, 1, "end"))
