"""Foods that are bought under more than one name. Pure.

Names of one line are one thing in the shop, first the British one. Published: the products with two names of Annex I to
Regulation (EC) No 396/2005, and names of the USDA National Nutrient Database for Standard Reference, both from memory;
the rest is common practice, no source. What is only alike stands in no line: double cream (48 % fat) and heavy cream
(36 %), tomato puree and tomato paste (one word, two strengths), chicory and endive (each the other's name elsewhere),
corn flour (meal or starch), prawns and shrimps.
"""

from collections.abc import Sequence

_NAMES = """
aubergine = eggplant = egg plant = brinjal
courgette = zucchini
courgette flower = courgette blossom = zucchini flower = zucchini blossom
spring onion = scallion = green onion = salad onion
coriander = cilantro = coriander leaf = cilantro leaf
ground coriander = coriander powder
rocket = roman rocket = arugula = rucola = roquette = rocket leaf
beetroot = beet
swede = rutabaga
celeriac = celery root
broad bean = fava bean
mangetout = mange tout = snow pea
sugar snap = sugar snap pea
pak choi = bok choy = pak choy
chinese cabbage = napa cabbage
green bean = french bean = string bean = snap bean
mooli = daikon
jerusalem artichoke = sunchoke
cos lettuce = romaine lettuce = romaine
lamb lettuce = corn salad
bell pepper = sweet pepper = capsicum
red bell pepper = red pepper
green bell pepper = green pepper
yellow bell pepper = yellow pepper
orange bell pepper = orange pepper
flat leaf parsley = flat parsley = italian parsley
garlic = garlic clove = clove of garlic = clove garlic
chickpea = chick pea = garbanzo bean = garbanzo
haricot bean = navy bean
cannellini bean = cannellini
borlotti bean = cranberry bean
aduki bean = adzuki bean = azuki bean
black eyed bean = black eyed pea
hazelnut = filbert
peanut = groundnut = monkey nut
pine nut = pine kernel
pumpkin seed = pepita
linseed = flaxseed = flax seed
flaked almond = sliced almond = almond flake
ground almond = almond meal
plain flour = all purpose flour
self raising flour = self rising flour
strong white flour = bread flour = strong flour
wholemeal flour = whole wheat flour = wholewheat flour
cornflour = cornstarch = corn starch
icing sugar = powdered sugar = confectioner sugar
caster sugar = castor sugar = superfine sugar
granulated sugar = white sugar
bicarbonate of soda = baking soda = bicarbonate = bicarb
leaf gelatine = sheet gelatine = gelatine leaf = gelatine sheet
vanilla pod = vanilla bean
dark chocolate = plain chocolate
sponge finger = ladyfinger
filo pastry = phyllo pastry = filo = phyllo = phyllo dough
heavy cream = heavy whipping cream
soured cream = sour cream
pork fillet = pork tenderloin
beef fillet = beef tenderloin = fillet of beef
dublin bay prawn = langoustine
rapeseed oil = canola oil
groundnut oil = peanut oil
passata = strained tomato = sieved tomato
chilli flake = red pepper flake = crushed red pepper = crushed chilli
cayenne = cayenne pepper
bay leaf = bay
nigella seed = nigella = black onion seed
stock cube = bouillon cube
"""
_MINCED = ("beef", "veal", "lamb", "pork", "venison", "chicken", "turkey", "duck")
_CHEESES = (
    "parmesan", "cheddar", "mozzarella", "feta", "gruyere", "halloumi", "brie", "camembert", "emmental", "gouda",
    "gorgonzola", "stilton", "pecorino", "manchego", "mascarpone", "ricotta",
)  # fmt: skip
NAMES: tuple[tuple[str, ...], ...] = (
    *(tuple(line.split(" = ")) for line in _NAMES.strip().splitlines()),
    *((f"minced {meat}", f"ground {meat}", f"{meat} mince") for meat in _MINCED),
)
# Written otherwise, and read as the same all the same.
_WORDS = {
    "canned": "tinned", "yoghurt": "yogurt", "yoghourt": "yogurt", "gelatin": "gelatine", "chili": "chilli",
    "chile": "chilli", "soya": "soy", "zucchinis": "zucchini", "houmous": "hummus", "hummous": "hummus",
    "bulghur": "bulgur", "burghul": "bulgur",
}  # fmt: skip
_SPELT: dict[tuple[str, ...], tuple[str, ...]] = {
    **{(word,): (usual,) for word, usual in _WORDS.items()},
    **{(cheese, "cheese"): (cheese,) for cheese in _CHEESES},
    ("chilli", "pepper"): ("chilli",),
}
_FIRST = {tuple(name.split()): tuple(names[0].split()) for names in NAMES for name in names}
_MOST = max(len(name) for name in _FIRST)


def spelt(words: Sequence[str]) -> list[str]:
    """Words of a name, in the singular, as this program spells them."""
    found: list[str] = []
    for word in words:
        found += _SPELT.get((word,), (word,))
        found[-2:] = _SPELT.get(tuple(found[-2:]), tuple(found[-2:]))
    return found


def first_name(words: Sequence[str]) -> list[str]:
    """A name whose last words are one of a food's names, with its first one: `baby zucchini` → `baby courgette`."""
    for start in range(max(0, len(words) - _MOST), len(words)):
        if (first := _FIRST.get(tuple(words[start:]))) is not None:
            return [*words[:start], *first]
    return list(words)
