"""Which of the usual drinks a drink is. Common practice, no source."""

import pytest

from board.facts.poured import kind_of_drink


@pytest.mark.parametrize(("kind", "drinks"), [
    ("wine", "dry white wine; Riesling; rosé; white Burgundy; claret; wine; Rioja; house red wine"),
    ("sparkling", "prosecco; crémant; cava; sparkling wine; sparkling rosé wine"),
    ("beer", "lager; stout; wheat beer; pale ale; dark beer"),
    ("soft drinks", "alcohol-free wine; alcohol-free beer; elderflower cordial; apple juice; lemonade; cola; "
     "ginger beer; sparkling apple juice; tonic water; non-alcoholic sparkling wine"),
    ("water", "sparkling water; mineral water; table water"),
    ("", "port; dry sherry; vermouth; dessert wine; "
     "cider; dry cider; gin; whisky; tea; coffee; wine vinegar; sauternes; mystery"),
])  # fmt: skip
def test_a_drink_is_of_its_kind(kind: str, drinks: str) -> None:
    """Strong wine is poured by the small glass, and cider is neither wine nor beer: they stand beside the usual."""
    names = drinks.split("; ")

    assert [kind_of_drink(name) for name in names] == [kind] * len(names)
