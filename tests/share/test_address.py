"""Where a page may be served: RFC 1918 and RFC 4193, at an address this machine has; never guessed among several."""

from ipaddress import ip_address

import pytest

from board.base.errors import Trouble
from board.share import words
from board.share.address import Found, addresses, chosen, is_home, listening, origin_of


# First and last address of each block, and their neighbours.
@pytest.mark.parametrize(
    ("address", "home"),
    [
        ("10.0.0.0", True), ("10.255.255.255", True), ("9.255.255.255", False), ("11.0.0.0", False),  # RFC 1918, 3
        ("172.16.0.0", True), ("172.31.255.255", True), ("172.15.255.255", False), ("172.32.0.0", False),
        ("192.168.0.0", True), ("192.168.255.255", True), ("192.167.255.255", False), ("192.169.0.0", False),
        ("fc00::", True), ("fdff:ffff:ffff:ffff:ffff:ffff:ffff:ffff", True),  # RFC 4193, 3.1
        ("fbff::1", False), ("fe00::1", False),
        ("fe80::1", False),  # link-local, RFC 4291, 2.5.6
        ("169.254.1.1", False),  # link-local, RFC 3927
        ("100.64.0.1", False),  # shared with strangers, RFC 6598
        ("192.0.2.2", False), ("2001:db8::1", False),  # documentation, RFC 5737 and RFC 3849
        ("0.0.0.0", False), ("::", False), ("127.0.0.1", False), ("::1", False),
        ("::ffff:192.168.1.2", False),  # version 4 in version 6
    ],
)  # fmt: skip
def test_a_home_network_is_what_the_standards_keep_private(address: str, home: bool) -> None:
    assert is_home(ip_address(address)) is home


def found(*told: str) -> list[Found]:
    return [Found(ip_address(address), f"if{n}") for n, address in enumerate(told)]


def test_the_only_address_is_taken_version_4_first() -> None:
    assert chosen(None, found("127.0.0.1", "192.0.2.2", "fd00::2", "192.168.1.20")) == ip_address("192.168.1.20")
    assert chosen(None, found("127.0.0.1", "fe80::1", "fd00::2")) == ip_address("fd00::2")


def test_of_several_none_is_guessed_and_all_are_told_with_their_interfaces() -> None:
    with pytest.raises(Trouble) as trouble:
        chosen(None, found("192.168.1.20", "10.8.0.3"))

    assert "--share 192.168.1.20 (if0) or --share 10.8.0.3 (if1)" in str(trouble.value)
    assert chosen(ip_address("10.8.0.3"), found("192.168.1.20", "10.8.0.3")) == ip_address("10.8.0.3")


def test_without_a_home_network_there_is_no_page() -> None:
    with pytest.raises(Trouble, match="no address of a home network"):
        chosen(None, found("127.0.0.1", "203.0.113.7", "100.64.0.9"))


@pytest.mark.parametrize("asked", ["8.8.8.8", "0.0.0.0", "::", "203.0.113.7", "fe80::1"])
def test_an_address_the_world_reaches_is_refused_though_the_machine_has_it(asked: str) -> None:
    with pytest.raises(Trouble) as trouble:
        chosen(ip_address(asked), found("192.168.1.20", asked))

    assert str(trouble.value) == words.not_at_home(asked)


def test_an_address_the_machine_has_not_is_refused_with_those_it_has() -> None:
    with pytest.raises(Trouble) as trouble:
        chosen(ip_address("192.168.1.21"), found("192.168.1.20", "203.0.113.7"))

    assert str(trouble.value) == words.not_here("192.168.1.21", ["192.168.1.20"])


def test_this_machine_alone_is_there_for_who_asks() -> None:
    assert chosen(ip_address("127.0.0.1"), addresses()) == ip_address("127.0.0.1")


def test_it_listens_at_that_address_alone_and_finds_a_port_where_its_own_is_taken() -> None:
    first = listening(ip_address("127.0.0.1"), 0)
    taken = first.getsockname()[1]
    second = listening(ip_address("127.0.0.1"), taken)
    try:
        assert first.getsockname()[0] == second.getsockname()[0] == "127.0.0.1"
        assert second.getsockname()[1] not in (0, taken)
        assert origin_of(first) == f"http://127.0.0.1:{taken}"
    finally:
        first.close()
        second.close()


def test_an_address_that_cannot_be_had_is_told() -> None:
    with pytest.raises(Trouble, match=r"no page can be served at 192\.168\.255\.254"):
        listening(ip_address("192.168.255.254"))


def test_an_address_of_version_6_is_written_in_brackets() -> None:
    """RFC 3986, 3.2.2."""
    try:
        made = listening(ip_address("::1"), 0)
    except Trouble:
        pytest.skip("no version 6 here")
    with made:
        assert origin_of(made) == f"http://[::1]:{made.getsockname()[1]}"
