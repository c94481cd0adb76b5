"""Foods that poison by themselves, and wild ones that only an expert can tell. Pure.

Sections of the FDA Food Code are from memory unless marked "read".
"""

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Poison:
    """`words`: of an ingredient or a step; `why`: one clause; `mend`: what to do; `severe`: it can kill; `asks`: only
    the host can find out; `cooked_is_fine`: heat destroys it."""

    words: re.Pattern[str]
    why: str
    mend: str
    source: str
    severe: bool = False
    asks: bool = False
    cooked_is_fine: bool = False


_WILD = r"foraged|gathered|self[ -]picked|home[ -]picked|(?:we|i|he|she|they) (?:\w+ )?(?:pick|find|found)\w*"
_FROM = r"from (?:the |our |my |a )?(?:woods?|forest|hedge\w*|field|meadow|park|shore|beach|rocks|harbour|estuary)"
_FUNGI = r"mushrooms?|ceps?|porcini|chanterelles?|girolles?|morels?|boletus|blewits?|puffballs?|parasols?|fungi"
_SHELLS = r"mussels?|clams?|cockles?|oysters?|winkles?|whelks?|razor clams?|limpets?|shellfish"


def _of_the_wild(foods: str) -> re.Pattern[str]:
    after = rf"{_WILD}|{_FROM}|picked (?:by|in|on|at|this|yesterday)"
    return re.compile(rf"\b(?:(?:{_WILD})\b.*\b(?:{foods})|(?:{foods})\b.*\b(?:{after}))\b")


POISONS: tuple[Poison, ...] = (
    Poison(
        _of_the_wild(_FUNGI),
        "some wild mushrooms kill, and cooking does not help",
        "Eat only what an expert has named, each one of them; else buy them.",
        "FDA Food Code 3-201.16, wild mushrooms; from memory",
        severe=True,
        asks=True,
    ),
    Poison(
        _of_the_wild(_SHELLS),
        "shellfish of unknown waters may hold poisons that cooking leaves",
        "Ask whether the waters are open today; else buy it alive, with its label.",
        "FDA Food Code 3-201.14 and 3-202.18, molluscan shellfish; from memory",
        severe=True,
        asks=True,
    ),
    Poison(
        _of_the_wild(r"wild garlic|ramsons|parsnips?|greens|leaves|herbs|elderflowers?|berries|roots?|nettles|sorrel"),
        "wild plants have deadly doubles",
        "Eat only what somebody who knows has named, leaf by leaf.",
        "common practice, no source",
        severe=True,
        asks=True,
    ),
    Poison(
        re.compile(r"\b(?:dead|broken|gaping|open) (?:mussels?|clams?|oysters?|cockles?)\b(?! (?:thrown|discard))"),
        "shellfish that is dead before it is cooked is not eaten",
        "Throw away what is broken, or stays open when tapped.",
        "common practice, no source",
    ),
    Poison(
        re.compile(
            r"\brhubarb[ -](?:leaf|leaves|tops)\b|\b(?:leaf|leaves|tops) of (?:the )?rhubarb\b|"
            r"\brhubarb(?: stalks)? (?:and|with)(?: \w+)? leaves\b"
        ),
        "rhubarb leaves are poisonous, raw or cooked",
        "Use the stalks alone.",
        "common practice, no source",
        severe=True,
    ),
    Poison(
        re.compile(
            r"\b(?:green|greened|greening|sprouting|sprouted)(?:[ -](?:skinned|tinged))? potato(?:es)?\b|"
            r"\bpotato(?:es)?,? (?:gone |turned )?(?:green|sprouting)\b"
        ),
        "green or sprouting potatoes hold solanine, which cooking leaves",
        "Use others; a little green is cut away, deep.",
        "common practice, no source",
    ),
    Poison(
        re.compile(r"\b(?:bitter almonds?|apricot kernels?|peach kernels?|cherry stones, crushed)\b"),
        "they set prussic acid free",
        "Use sweet almonds or an extract from a shop.",
        "EFSA 2016, apricot kernels; from memory",
        severe=True,
    ),
    Poison(
        re.compile(
            r"\b(?:elderberr(?:y|ies)|cassava|yuca|manioc|bamboo shoots?)\b"
            r"(?!.*\b(?:tin|tinned|can|canned|jar|jarred|syrup|cordial|flour|starch|jelly|jam)\b)"
        ),
        "raw, it makes ill",
        "Cook it through; no tasting before.",
        "CDC, MMWR 33(13), 1984, on elderberries; from memory",
        cooked_is_fine=True,
    ),
    Poison(
        re.compile(
            r"\b(?:morels?|morchella|fiddle[ -]?heads?|ostrich ferns?)\b"
            r"(?!.*\b(?:tin|tinned|canned|jar|jarred)\b)"
        ),
        "raw or half-cooked, it makes ill, and morels have killed",
        "Cook it through: morels simmered or fried well, fiddleheads boiled for 15 min, the water thrown away.",
        "US FDA, morel mushrooms, after the outbreak of 2023 (51 ill, 2 dead); CDC, MMWR 43(37), 1994, on fiddleheads; "
        "from memory",
        severe=True,
        cooked_is_fine=True,
    ),
    Poison(
        re.compile(
            r"\b(?:taro|eddoes?|dasheen|malanga|cocoyams?|callaloo)\b"
            r"(?!.*\b(?:flour|starch|powder|crisps|chips|milk tea|paste)\b)"
        ),
        "raw, it burns the mouth and throat with crystals of oxalate",
        "Cook it through, leaves and roots; gloves help at the peeling.",
        "common practice, no source",
        cooked_is_fine=True,
    ),
    Poison(
        re.compile(
            r"\blupin[is]?(?: (?:beans?|seeds?))?\b(?=.*\b(?:dried|dry|bitter|raw|soaked)\b)|"
            r"\b(?:dried|dry|bitter|raw|soaked) lupin[is]?\b"
        ),
        "dried lupins may be bitter, and then hold alkaloids that one boil does not take out",
        "Take sweet lupins or a jar; bitter ones are boiled, then soaked for days in fresh water.",
        "EFSA 2019, quinolizidine alkaloids in lupins; from memory",
        asks=True,
    ),
    Poison(
        re.compile(r"\back(?:ee|ees)\b(?!.*\b(?:tin|tinned|can|canned|jar|jarred)\b)"),
        "unripe ackee, and its seeds and red rind, can kill, cooked or not",
        "Take a tin, or fruit that opened by itself on the tree: the yellow flesh alone, boiled.",
        "US FDA, import alert 21-11, hypoglycin A in ackee; from memory",
        severe=True,
        asks=True,
    ),
    Poison(
        re.compile(
            r"\bcashews?(?: nuts?)?,? (?:in|with) (?:the(?:ir)? )?shells?\b|"
            r"\b(?:unshelled|shell-on) cashews?\b"
        ),
        "the shell of a cashew holds an oil that burns, and its smoke too",
        "Buy them shelled.",
        "common practice, no source",
    ),
    Poison(
        re.compile(
            r"\b(?:elderberry|elder) (?:leaf|leaves|stems?|bark)\b|\b(?:leaf|leaves|stems) of (?:the )?elder\b"
        ),
        "it is poisonous",
        "Leave it out.",
        "common practice, no source",
    ),
    Poison(
        re.compile(r"\b(?:fugu|puffer ?fish|blowfish)\b"),
        "its poison kills, and cooking leaves it",
        "Leave it to those who have the licence.",
        "FDA Food Code 3-201.14 and the FDA's import advice on puffer fish; from memory",
        severe=True,
    ),
    Poison(
        re.compile(
            r"\b(?:foxgloves?|lil(?:y|ies) of the valley|oleander|monkshood|aconite|daffodils?|narcissus|laburnum|"
            r"yew|hydrangeas?|delphiniums?|larkspur|hellebores?|autumn crocus|deadly nightshade|hemlock|datura|"
            r"angel'?s trumpets?|sweet peas? flowers?|cherry laurel|mistletoe berries|holly berries|ivy)\b"
        ),
        "it is poisonous, and must not touch food",
        "Take another: borage, marigold petals, nasturtium, viola, from a grower of edible ones.",
        "common practice, no source",
        severe=True,
    ),
)  # fmt: skip

# Phytohaemagglutinin: most in red kidney beans, a third of it in white ones (FDA Bad Bug Book; from memory).
KIDNEY_BEANS = re.compile(
    r"\b(?:kidney|cannellini|borlotti|flageolet|haricot|navy|pinto|black turtle|butter|lima) beans?\b|"
    r"\b(?:cannellini|borlotti|flageolets?|rajma)\b"
)
MOST_OF_IT = re.compile(r"\b(?:kidney|cannellini|rajma|borlotti)\b")
BEANS_COOKED = re.compile(r"\b(?:tins?|tinned|cans?|canned|jars?|jarred|cooked|boiled|fresh|green|precooked|carton)\b")
BEANS_DRIED = re.compile(r"\b(?:dried|dry|raw|soaked|uncooked)\b")
# What may carry the spores of botulism under oil; and vegetables that do where they lie covered.
IN_OIL = re.compile(r"\b(?:garlic|shallots?|chill?i(?:e?s)?|herbs?|basil|rosemary|thyme|sage)\b")
COVERED_BY_OIL = re.compile(r"\b(?:tomatoes|peppers?|mushrooms?|aubergines?|artichokes?|courgettes?)\b")
OIL = re.compile(r"\boil\b")
ACID = re.compile(r"\b(?:vinegar|lemon|lime|citric)\b")
