"""Who may ask the page for what: its code, its host, its own origin, known routes, small words; and nothing else."""

import socket

import pytest

from board.evening.events import StepStarted
from board.share import words
from board.share.served import MOST_BYTES
from tests.share.conftest import HELPER, Phone

BEGUN = {"for": HELPER, "slot": "chop", "part": "start", "number": 0}


async def test_who_has_the_code_sees_the_page_and_their_calls(phone: Phone) -> None:
    status, body = await phone.get("")
    assert (status, body[:15]) == (200, b"<!doctype html>")

    status, told = await phone.get("now?for=Mira%20%3Cb%3E")

    assert status == 200
    assert b'"what":"Chop"' in told


@pytest.mark.parametrize("path", ["", "now", "wall", "plates", "list"])
async def test_a_wrong_code_finds_nothing_whatever_is_asked(phone: Phone, path: str) -> None:
    code = phone.served.address.rsplit("/", 2)[1]
    for wrong in (code[:-1], code + "a", code.swapcase(), "x", "", "é%ff"):
        async with phone.session.get(f"{phone.origin}/{wrong}/{path}") as came:
            assert (came.status, await came.read()) == (404, b"")


async def test_only_known_routes_are_there_and_none_leads_to_a_file(phone: Phone) -> None:
    for path in ("x", "now/", "page.js", "../../etc/passwd", "..%2f..%2fetc%2fpasswd", "%2e%2e/now", "done", "tick"):
        assert await phone.get(path) == (404, b""), path
    async with phone.session.get(f"{phone.origin}/") as came:
        assert came.status == 404
    async with phone.session.put(phone.served.address + "now") as came:
        assert (came.status, await came.read()) == (404, b"")


async def test_another_name_for_this_address_finds_nothing(phone: Phone) -> None:
    """DNS rebinding: a page from elsewhere whose name is made to mean this address sends its own name."""
    port = phone.origin.rsplit(":", 1)[1]
    for host in ("elsewhere.example", f"elsewhere.example:{port}", f"localhost:{port}", "127.0.0.1", "127.0.0.1:1"):
        assert await phone.get("now", Host=host) == (404, b""), host
    assert (await phone.get("now", Host=f"127.0.0.1:{port}"))[0] == 200


@pytest.mark.parametrize(
    "headers",
    [
        {"Origin": "http://elsewhere.example"},
        {"Origin": "null"},
        {"Origin": ""},  # not sent
        {"Content_Type": "text/plain"},  # what a form elsewhere can send unasked
        {"Content_Type": "application/x-www-form-urlencoded"},
        {"Host": "elsewhere.example"},
    ],
)
async def test_only_the_page_itself_can_answer(phone: Phone, headers: dict[str, str]) -> None:
    assert (await phone.post("done", BEGUN, **headers))[0] == 404
    assert (await phone.post("coming", {"for": HELPER}, **headers))[0] == 404
    assert phone.board.evening.state.steps["chop"].status == "to-come"


async def test_what_is_sent_is_small_and_of_a_known_form(phone: Phone) -> None:
    for sent in ({}, {**BEGUN, "more": 1}, {**BEGUN, "part": "middle"}, {**BEGUN, "number": -1}, [], "x", None):
        assert (await phone.post("done", sent))[0] == 400
    assert (await phone.post("done", {**BEGUN, "slot": "x" * 301}))[0] == 400
    assert (await phone.post("done", {**BEGUN, "slot": "x" * MOST_BYTES}))[0] == 413
    assert phone.board.evening.state.steps["chop"].status == "to-come"


async def test_only_the_hands_of_the_plan_have_calls(phone: Phone) -> None:
    assert (await phone.get("now?for=Otto"))[0] == 403
    assert (await phone.post("done", {**BEGUN, "for": "Otto"}))[0] == 403
    assert (await phone.post("coming", {"for": "Otto"}))[0] == 403


async def test_an_answer_reaches_the_evening_with_their_name_and_only_once(phone: Phone) -> None:
    first, again = await phone.post("done", BEGUN), await phone.post("done", BEGUN)

    events = [event for event in phone.board.evening.told if isinstance(event, StepStarted)]
    assert [event.by for event in events] == [HELPER]
    assert first == (200, b'{"said":"chop: on the board"}')
    assert again == (200, b'{"said":"chop: answered already"}')


async def test_a_call_of_somebody_else_is_refused_in_words(phone: Phone) -> None:
    status, told = await phone.post("done", {**BEGUN, "slot": "stew"})

    assert (status, told) == (200, f'{{"said":"stew is not {HELPER}\'s to answer"}}'.encode())


async def test_a_helper_is_called_until_they_say_that_they_come(phone: Phone) -> None:
    phone.served.ring(HELPER)
    assert b'"rung":1' in (await phone.get("now?for=Mira%20%3Cb%3E"))[1]
    assert b'"rung":0' in (await phone.get("now?for=host"))[1]
    phone.served.ring(HELPER)
    assert b'"rung":2' in (await phone.get("now?for=Mira%20%3Cb%3E"))[1]  # a second call is heard, too

    assert (await phone.post("coming", {"for": HELPER}))[0] == 200

    assert phone.board.came == [HELPER]
    assert b'"rung":0' in (await phone.get("now?for=Mira%20%3Cb%3E"))[1]
    await phone.post("coming", {"for": HELPER})
    assert phone.board.came == [HELPER]  # nobody was called


async def test_the_board_knows_whose_phone_is_looking(phone: Phone) -> None:
    assert not phone.served.is_looking(HELPER)
    await phone.get("now?for=Mira%20%3Cb%3E")

    assert phone.served.is_looking(HELPER)
    assert not phone.served.is_looking("host")


async def test_nothing_is_kept_by_the_browser_or_told_to_others(phone: Phone) -> None:
    for path in ("", "now", "x"):
        async with phone.session.get(phone.served.address + path) as came:
            assert came.headers["Cache-Control"] == "no-store"
            assert came.headers["Referrer-Policy"] == "no-referrer"
            assert came.headers["X-Content-Type-Options"] == "nosniff"
            assert came.headers["Content-Security-Policy"].startswith("default-src 'none'")
            assert "aiohttp" not in came.headers.get("Server", "")


async def test_a_tick_for_a_food_that_is_not_there_is_refused(phone: Phone) -> None:
    assert (await phone.post("tick", {"number": 0, "ticked": True}))[0] == 404
    assert words.NO_PLAN.encode() in (await phone.get("list"))[1]


async def test_each_evening_has_a_code_of_its_own_of_128_bits(phone: Phone) -> None:
    from board.share.papers import FromPlan
    from board.share.served import Served

    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        codes = {Served(other, FromPlan()).address.rsplit("/", 2)[1] for _ in range(50)}

    assert len(codes) == 50
    assert {len(code) for code in codes} == {22}  # 16 bytes in base64 (RFC 4648, 5), without its padding


async def test_no_line_is_logged_in_which_the_code_could_stand(phone: Phone, caplog: pytest.LogCaptureFixture) -> None:
    """Nor even of a fault, whose line would tear the board's picture besides."""
    await phone.get("now")
    phone.board.host = None  # type: ignore[assignment]

    assert (await phone.get("now"))[0] == 500
    assert caplog.records == []
