"""What must hold of every slip in every evening: taken back it leaves no trace, and asking about it changes nothing."""

from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from board.evening.slips import KINDS, targets, wish_for
from board.evening.wishes import DropDish, Refusal, SlipWish, TakeBack
from board.session.session import Evening
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from tests.evening.test_properties import MOVES, play
from tests.examples import times

PICKS = st.tuples(st.sampled_from(KINDS), st.integers(0, 60), st.integers(-30, 40))


def slip(evening: Evening, pick: tuple[Any, int, int]) -> SlipWish | None:
    """A slip of the moment."""
    kind, number, minutes = pick
    found = targets(evening.state, evening.look(), kind)
    if not found:
        return None
    return wish_for(kind, found[number % len(found)], minutes)


@settings(max_examples=times(80), deadline=None)
@given(moves=MOVES, picks=st.lists(PICKS, min_size=1, max_size=4))
def test_taking_a_slip_back_restores_state_and_view_exactly(lantern_sheet: RunSheet, moves: Any, picks: Any) -> None:
    evening, _ = play(lantern_sheet, moves)
    viewer = Viewer(lantern_sheet)
    for pick in picks:
        before = evening.tick()
        view = viewer.view(before)
        wish = slip(evening, pick)
        if wish is None or evening.wish(wish) is not None:
            continue

        assert evening.wish(TakeBack()) is None

        after = evening.tick()
        assert (after.state.steps, after.state.raised) == (before.state.steps, before.state.raised)
        assert after.state.history == before.state.history
        assert after.forecast == before.forecast
        assert viewer.view(after) == view
        evening.wish(wish)  # the next pick finds an evening in which this one was taken


@settings(max_examples=times(80), deadline=None)
@given(moves=MOVES, pick=PICKS)
def test_asking_what_a_slip_costs_changes_nothing_and_tells_what_then_comes(
    lantern_sheet: RunSheet, moves: Any, pick: Any
) -> None:
    evening, _ = play(lantern_sheet, moves)
    evening.tick()
    wish = slip(evening, pick)
    if wish is None:
        return
    state, kept = evening.state, len(evening.keeper.events)  # type: ignore[attr-defined]

    told = evening.what_if(wish)

    assert evening.state is state
    assert len(evening.keeper.events) == kept  # type: ignore[attr-defined]
    refused = evening.wish(wish)
    assert isinstance(told, Refusal) == (refused is not None)
    if not isinstance(told, Refusal):
        assert evening.look() == told


@settings(max_examples=times(60), deadline=None)
@given(moves=MOVES, picks=st.lists(PICKS, max_size=5))
def test_after_any_slips_nothing_is_put_before_now_or_before_its_cause(
    lantern_sheet: RunSheet, moves: Any, picks: Any
) -> None:
    evening, clock = play(lantern_sheet, moves)
    for pick in picks:
        if (wish := slip(evening, pick)) is not None:
            evening.wish(wish)
    forecast = evening.look()

    for s in lantern_sheet.slots:
        ahead, step = forecast.slots[s.id], evening.state.steps[s.id]
        assert ahead.end >= ahead.start
        if step.status != "to-come":
            continue
        assert ahead.start >= clock.now()
        for wait in (w for w in s.waits if w.must):
            other = forecast.slots[wait.after]
            anchor = other.end if wait.anchor == "end" else other.start
            assert (ahead.start - anchor).total_seconds() >= wait.minutes * 60 - 0.001


@settings(max_examples=times(60), deadline=None)
@given(moves=MOVES, pick=PICKS)
def test_a_dropped_dish_leaves_out_only_its_own_and_what_serves_only_it(
    lantern_sheet: RunSheet, moves: Any, pick: Any
) -> None:
    evening, _ = play(lantern_sheet, moves)
    wish = slip(evening, ("dish", *pick[1:]))
    before = evening.state
    if wish is None or evening.wish(wish) is not None:
        return
    assert isinstance(wish, DropDish)

    changed = [s for s in lantern_sheet.slots if evening.state.steps[s.id] != before.steps[s.id]]

    assert changed
    for s in changed:
        assert evening.state.steps[s.id].status == "left-out"
        assert (s.dish, s.course) == (wish.dish, wish.course) or s.kind in ("heat", "serve", "clear")
        assert (s.dish, s.course) == (wish.dish, wish.course) or before.steps[s.id].status != "finished"
