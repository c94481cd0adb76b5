"""What a terminal may send, in bytes: nothing ends the reading, and what is sound in it is read."""

import random
from codecs import getincrementaldecoder

import pytest
from textual.events import Key, MouseDown, Paste
from textual.message import Message

from board.screens.terminal import PASTE_SECONDS, Reading
from tests.whole.test_whatever_comes import WRONG_BYTES


class Typed:
    """A reading by a clock of its own."""

    def __init__(self) -> None:
        self.now = 0.0
        self.messages: list[Message] = []
        self.reading = Reading(self.messages.append, lambda: self.now)
        self.decode = getincrementaldecoder("utf-8")("replace").decode

    def send(self, data: bytes) -> None:
        self.reading.take(self.decode(data))

    def keys(self) -> str:
        return "".join(each.character or "" for each in self.messages if isinstance(each, Key))


@pytest.mark.parametrize("data", WRONG_BYTES.values(), ids=list(WRONG_BYTES))
def test_after_wrong_bytes_keys_are_read_as_ever(data: bytes) -> None:
    typed = Typed()

    typed.send(data)
    typed.send(b"q" * 40)  # what a sequence may yet swallow, and more
    typed.send(b"done")

    assert typed.keys().endswith("done")


def test_signs_of_more_than_one_byte_are_read_though_they_come_in_pieces() -> None:
    typed = Typed()

    for byte in "crème brûlée".encode():
        typed.send(bytes([byte]))

    assert typed.keys() == "crème brûlée"


def test_a_paste_that_says_nothing_more_is_over() -> None:
    typed = Typed()
    typed.send(b"\x1b[200~half a line")
    typed.send(b" and more")
    typed.now = PASTE_SECONDS + 0.1

    typed.send(b"")
    typed.send(b"x")

    assert [each.text for each in typed.messages if isinstance(each, Paste)] == ["half a line and more"]
    assert typed.keys() == "x"


@pytest.mark.parametrize(
    "inside",
    [b"note \x1b[0m 3 ", b"\x1b[31mred\x1b[0m", b"\x1b", b"\x1bOP", b"\x1b[200~again", b"\x1b[<0;7;3M", b"\x1b[20"],
)
def test_nothing_that_is_pasted_is_a_key(inside: bytes) -> None:
    """Also what looks like one: coloured words copied from a terminal are text."""
    typed = Typed()

    typed.send(b"\x1b[200~" + inside + b"\x1b[201~")
    typed.send(b"k")

    assert [type(each) for each in typed.messages] == [Paste, Key]
    assert typed.keys() == "k"
    assert [each.text for each in typed.messages if isinstance(each, Paste)] == [inside.decode().replace("\x1b", "")]


def test_noise_does_not_bend_the_mouse() -> None:
    typed = Typed()

    typed.send(b"\x1b[48;10;10;9000;9000t")
    typed.send(b"\x1b[<0;7;3M")

    assert [(each.x, each.y) for each in typed.messages if isinstance(each, MouseDown)] == [(6, 2)]


def test_twenty_thousand_bytes_at_random_end_nothing() -> None:
    typed, noise = Typed(), random.Random(7)
    pieces = [b"\x1b[", b"\x1b", b"M", b"<", b";", b"9", b"u", b"t", b"~", b":", b"200", b"\xe9"]

    for _ in range(10_000):
        typed.send(bytes([noise.randrange(256)]))
        typed.send(noise.choice(pieces))
    typed.send(b"\x1b[201~")
    typed.send(b"q" * 40 + b"done")

    assert typed.keys().endswith("done")
