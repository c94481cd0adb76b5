"""Words beside a food that say its size or what the cook does with it, and nothing of what is bought. Pure. Common
practice, no source."""

from collections.abc import Sequence

from board.facts.other_names import first_name, spelt
from board.facts.phrases import COOKED_THROUGH, listed_words, stems


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


_CUT = _set(
    """chopped diced sliced cubed halved quartered peeled trimmed grated torn picked washed melted softened beaten
    juiced zested"""
)
_CRUSHED = _set("crushed minced")  # by hand, where it is one of these
_AROMATIC = _set("garlic clove ginger shallot onion parsley herb lemongrass")
_HOW = _set("finely roughly coarsely thinly thickly lightly very")
_SIZES = _set("large medium small big sized")
_ALL = _CUT | _CRUSHED | _HOW | _SIZES | {"fresh"}
# Whose size only says how much it is; medium sherry and medium oatmeal are sold so.
_COUNTED = _set(
    """egg yolk white onion shallot leek garlic clove bulb potato carrot parsnip turnip swede beetroot celeriac radish
    cabbage cauliflower broccoli lettuce cucumber courgette aubergine squash pumpkin pepper chilli tomato avocado
    mushroom lemon lime orange apple pear quince banana mango pineapple melon peach nectarine apricot plum fig"""
)
# Sold cut or peeled as another thing: chopped tomatoes stand in a tin.
_SOLD_SO = _set(
    """tomato coconut mozzarella cheese almond bread loaf ham beef pork lamb veal venison chicken turkey meat prawn
    shrimp crab chestnut pineapple peach jalapeno olive gherkin tuna salmon salami"""
)
# Fresh, they are another thing than the dry, the tinned, the ground or the ripe one of that name.
_NOT_ALWAYS_FRESH = _set(
    """pasta spaghetti linguine tagliatelle pappardelle lasagne sheet noodle yeast stock broth soup gravy tuna turmeric
    fenugreek date breadcrumb crumb cheese"""
)
# After a comma. Not `ground`, `dried` or `cooked`, which may say what is bought.
_DONE = listed_words(
    """chopped diced sliced cubed halved quartered peeled trimmed grated torn picked washed melted softened beaten
    juiced zested zest crushed minced shredded bashed bruised cut broken separated rinsed drained scrubbed cleaned
    deseeded cored stoned deveined sifted whisked chilled cold temperature thawed defrosted serve serving garnish
    garnishing finish finishing taste decorate greasing brushing dusting frying sprinkling drizzling"""
)
_BESIDE = listed_words(  # beside one of those
    """finely roughly coarsely thinly thickly lightly very into in to for and then or of at the a plus extra more
    little half quarters juice leaves only stalks stems seeds root ends skin cores removed discarded reserved pitted
    seeded shelled toasted room cm mm inch inches small large medium bite sized size big chunks pieces cubes dice slices
    strips rings rounds wedges batons matchsticks ribbons florets thick thin tin pan table lengthways crossways"""
)


def said_of_it(words: Sequence[str], *, fresh: bool) -> list[int]:
    """Which words of a name, in the singular, say what is bought, by number; all, if none would be left. `fresh`: that
    word always stays."""
    named = next((word for word in reversed(words) if word not in _ALL), "")
    last = first_name(spelt([named]))[-1]
    idle = frozenset() if last in _SOLD_SO else _CUT
    idle |= _SIZES if last in _COUNTED else frozenset()
    idle |= _CRUSHED if last in _AROMATIC else frozenset()
    idle |= {"fresh"} if not fresh and last not in _NOT_ALWAYS_FRESH else frozenset()
    kept: list[int] = []
    for n in range(len(words) - 1, -1, -1):
        before_a_cut = n + 1 < len(words) and n + 1 not in kept and words[n + 1] in idle | _HOW
        if words[n] not in idle and not (words[n] in _HOW and before_a_cut):
            kept.insert(0, n)
    return kept or list(range(len(words)))


def only_done(tail: str) -> bool:
    """Whether words after a comma only say what the cook does with it."""
    words = stems(tail)
    idle = all(word in _DONE | _BESIDE or word.isdigit() for word in words)
    return words in COOKED_THROUGH or not words or (idle and any(word in _DONE for word in words))
