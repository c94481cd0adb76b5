"""How much a dish comes to, as a cook writes it."""

import pytest

from board.plan.phrases.portions import Portion, parse_portion


@pytest.mark.parametrize(
    ("text", "low", "high", "unit"),
    [
        ("1.2 l", 1.2, 1.2, "l"),
        ("1,2 litres", 1.2, 1.2, "l"),
        ("150 ml", 150, 150, "ml"),
        ("150 to 200 ml", 150, 200, "ml"),
        ("about 1 kg", 1, 1, "kg"),
        ("24", 24, 24, ""),
        ("24 pieces", 24, 24, ""),
        ("24 tartlets", 24, 24, "tartlet"),
        ("a slice", 1, 1, "slice"),
        ("1½ cups", 1.5, 1.5, "cup"),
        ("2 dozen", 24, 24, ""),
    ],
)
def test_it_is_read(text: str, low: float, high: float, unit: str) -> None:
    found = Portion.model_validate(parse_portion(text))

    assert (found.low, found.high, found.unit) == (low, high, unit)


@pytest.mark.parametrize("text", ["", "plenty", "l", "some soup", "2 x 400 g tins", "-3 l", "200 to 100 ml", "0 l"])
def test_it_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"write for example|write the lower|greater than"):
        Portion.model_validate(parse_portion(text))
