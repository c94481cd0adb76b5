"""Where the page is served: at an address that this machine has on a home network, and nowhere else."""

import socket
from collections.abc import Sequence
from dataclasses import dataclass
from ipaddress import IPv4Address, IPv6Address, ip_address, ip_network

from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.share import words

Address = IPv4Address | IPv6Address

# Private internets (RFC 1918) and unique local addresses (RFC 4193). Link-local ones (RFC 3927, RFC 4291 2.5.6) are
# left out: they come and go, and of version 6 no browser takes one, for want of a zone.
HOME = tuple(map(ip_network, ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "fc00::/7")))
PORT = 8430  # so that a firewall can let it in; ours. Any other, where it is taken


@dataclass(frozen=True, slots=True)
class Found:
    """An address this machine has, and its interface."""

    address: Address
    interface: str


def addresses() -> list[Found]:
    """All of this machine's, of interfaces that are up."""
    import psutil  # imported here: only who shares has it loaded

    up = {name for name, found in psutil.net_if_stats().items() if found.isup}
    families = (socket.AF_INET, socket.AF_INET6)
    return [
        Found(ip_address(each.address.partition("%")[0]), name)
        for name, here in psutil.net_if_addrs().items()
        if name in up
        for each in here
        if each.family in families
    ]


def is_home(address: Address) -> bool:
    """Whether it is of a home network."""
    return any(address in network for network in HOME)


def chosen(asked: Address | None, there: Sequence[Found]) -> Address:
    """The one asked for, or the only one there is (of version 4 before version 6, which is longer to type).

    `asked`: None for any. This machine alone (loopback) only where it is asked for. Raises Trouble.
    """
    if asked is not None:
        return _asked(asked, there)
    for version in (4, 6):
        found = [each for each in there if is_home(each.address) and each.address.version == version]
        if len(found) > 1:
            told = [words.at_interface(str(each.address), one_line(each.interface, 30)) for each in found]
            raise Trouble(words.several(told), ExitCode.USAGE)
        if found:
            return found[0].address
    raise Trouble(words.NO_HOME_NETWORK)


def _asked(address: Address, there: Sequence[Found]) -> Address:
    if not address.is_loopback:
        if not is_home(address):
            raise Trouble(words.not_at_home(str(address)), ExitCode.USAGE)
        if address not in [each.address for each in there]:
            known = [str(each.address) for each in there if is_home(each.address)]
            raise Trouble(words.not_here(str(address), known), ExitCode.USAGE)
    return address


def listening(address: Address, port: int = PORT) -> socket.socket:
    """A socket bound to that address alone. Raises Trouble."""
    family = socket.AF_INET if address.version == 4 else socket.AF_INET6
    for number in (port, 0):
        made = socket.socket(family, socket.SOCK_STREAM)
        try:
            made.bind((str(address), number))
            made.listen(16)
        except OSError as wrong:
            made.close()
            why = one_line(wrong.strerror or wrong)
        else:
            made.setblocking(False)
            return made
    raise Trouble(words.cannot_listen(str(address), why))


def origin_of(bound: socket.socket) -> str:
    """`http://192.168.1.20:8430`, as a browser writes it (RFC 6454)."""
    host, port = bound.getsockname()[:2]
    shown = f"[{host}]" if bound.family == socket.AF_INET6 else host
    return f"http://{shown}" if port == 80 else f"http://{shown}:{port}"
