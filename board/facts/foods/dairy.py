"""Milk, milk products and eggs; and their substitutes."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import Entry, group
from board.facts.origins import Origin as From

_PLANTS = {
    "soy": A.SOY, "soya": A.SOY, "oat": A.OATS, "almond": A.ALMONDS, "cashew": A.CASHEWS, "hazelnut": A.HAZELNUTS,
    "coconut": A.COCONUT,
}  # fmt: skip
_INSTEAD_OF_MILK = (
    """milk""",
    "drink", "cream", "yogurt", "yoghurt", "cheese", "ice cream", "creme fraiche", "milk powder", "barista milk",
    "barista drink", "milk drink", "cream cheese", "kefir",
)  # fmt: skip


def _plant(plant: str, allergen: A) -> tuple[Entry, ...]:
    names = ", ".join(f"~{plant} {what}" for what in _INSTEAD_OF_MILK if (plant, what) != ("coconut", "milk"))
    return group(names, allergen, perishable=True, made=True)


MILK_AND_CREAM = group(
    """milk = cows milk, whole milk = full cream milk, skimmed milk = skim milk, semi skimmed milk, goats milk,
    sheeps milk = ewes milk, buttermilk, cream, double cream = heavy cream = heavy whipping cream, whipping
    cream, single cream = light cream, pouring cream, half and half, clotted cream, sour cream = soured cream,
    creme fraiche, smetana, yogurt = yoghurt, natural yogurt = natural yoghurt, greek yogurt = greek yoghurt,
    greek style yogurt = greek style yoghurt, strained yogurt = strained yoghurt, labneh, kefir, skyr, quark,
    fromage frais, evaporated milk, whey,
    thick cream = extra thick cream = extra thick double cream = thickened cream, crema, chantilly cream = whipped
    cream = squirty cream = chantilly, dahi, lassi, ayran = doogh, filmjolk, viili, shrikhand, kaymak, creamer,
    dairy cream, coffee cream, full fat milk, 2 milk, pasteurised milk = uht milk, khoya = mawa, rabri, kashk, hung
    yogurt, milk kefir, clotted""",
    A.MILK, From.LACTOSE, perishable=True,
)  # fmt: skip
IN_TINS_AND_DRY = group(
    """condensed milk = sweetened condensed milk, milk powder = powdered milk = dried milk, lactose, milk solid,
    casein = caseinate = sodium caseinate, whey powder = whey protein = whey protein powder, buttermilk powder""",
    A.MILK, From.LACTOSE,
)  # fmt: skip
MALTED_MILK = group(
    "malted milk powder = malted milk", A.MILK, From.LACTOSE, A.BARLEY, hidden=(A.WHEAT, A.SOY), made=True
)  # fmt: skip
RAW_MILK = group(
    """raw milk = unpasteurised milk = unpasteurized milk, raw cream = unpasteurised cream, unpasteurised cheese =
    raw milk cheese""",
    A.MILK, From.LACTOSE, From.RAW_MILK, perishable=True,
)  # fmt: skip
WITHOUT_LACTOSE = group(
    "~lactose free milk, ~lactose free cream, ~lactose free yogurt = ~lactose free yoghurt, ~lactose free butter",
    A.MILK, perishable=True,
)  # fmt: skip
BUTTER = group(
    """butter = unsalted butter = salted butter, browned butter = brown butter, clarified butter, ghee = desi
    ghee, garlic butter = herb butter = parsley butter, smen, niter kibbeh, cultured butter, goats butter,
    butter oil, spreadable butter = butter spread, butterfat = milk fat, caramelised butter""",
    A.MILK, hidden=(From.LACTOSE,),
)  # fmt: skip
FRESH_CHEESE = group(
    """cream cheese = soft white cheese = full fat soft cheese, cottage cheese, ricotta, mascarpone, paneer,
    mozzarella = buffalo mozzarella = mozzarella cheese, burrata, bocconcini, fresh goats cheese,
    goats curd, halloumi, soft cheese, stracciatella, curd cheese,
    panela cheese, akkawi, nabulsi, mizithra = myzithra, anari, manouri, chhena = chenna, garlic and
    herb cheese = herb cheese, robiola, stracchino = crescenza, scamorza, cheese curd = squeaky cheese,
    crowdie, farmers cheese = farmer cheese = tvorog = twarog, labne = lebneh, oaxaca cheese = quesillo, string
    cheese, bryndza, curd = curds, halumi, fromage blanc, urda""",
    A.MILK, From.LACTOSE, hidden=(From.RENNET,), perishable=True,
)  # fmt: skip
# Rennet is the rule in aged cheese of the old kinds, and many others are made without: asked about.
PERHAPS_RISKY = (  # with a rind it has ripened; and named by the FDA where no label says pasteurised, from memory
    *group("goats cheese", A.MILK, From.LACTOSE, hidden=(From.RENNET, From.MOULD_CHEESE, From.RAW_MILK),
           perishable=True),
    *group("feta = feta cheese, queso fresco, queso blanco", A.MILK, From.LACTOSE, hidden=(From.RENNET, From.RAW_MILK),
           perishable=True),
)  # fmt: skip
HARD_CHEESE = group(
    """cheese, cheddar = cheddar cheese, hard cheese, hard mountain cheese = mountain cheese, hard sheeps cheese,
    sheeps cheese, hard goats cheese, gruyere, emmental = swiss cheese, comte, gouda, edam, manchego, pecorino,
    asiago, provolone, fontina, raclette = raclette cheese, red leicester, double gloucester, wensleydale,
    cheshire cheese, lancashire cheese, caerphilly, monterey jack, american cheese, grating cheese, kashkaval,
    smoked cheese, port salut, havarti, tete de moine,
    appenzell = appenzeller, beaufort, cantal,
    mimolette, tomme = tomme de savoie, morbier, ossau iraty, idiazabal, mahon, tetilla, cotija, colby = colby jack,
    pepper jack, pecorino romano = romano cheese, caciocavallo, ricotta salata, sage derby = derby cheese, cheese
    slice = processed cheese = cheese spread = cheese triangle, brunost = gjetost, graviera, kefalotyri =
    kefalotiri, kasseri, saganaki, sbrinz, maasdam, cheese powder, mexican cheese blend, italian hard
    cheese = parmesan style cheese, hard italian cheese, cheeseboard = cheese platter, cheese sauce
    powder, fondue = cheese fondue""",
    A.MILK, hidden=(From.RENNET, From.LACTOSE),
)  # fmt: skip
# These two are by their rules of origin made with animal rennet: common practice, no source.
WITH_RENNET = group(
    "parmesan = parmigiano reggiano = parmesan cheese, grana padano",
    A.MILK, From.RENNET, hidden=(From.LACTOSE, A.EGGS),
)  # fmt: skip
VEGETARIAN_CHEESE = group("vegetarian cheese = vegetarian hard cheese", A.MILK, hidden=(From.LACTOSE,))
MOULD_RIPENED = group(
    """brie, camembert, chaource, chevre = chevre log = goats cheese log, taleggio, reblochon, vacherin = vacherin mont
    d or = mont d or, pont l eveque = pont leveque, epoisses, munster = muenster = muenster cheese, limburger,
    coulommiers, washed rind cheese, bloomy rind cheese = white rind cheese, ripe goats cheese = soft ripe goats cheese,
    soft ripe cheese, blue cheese, mould ripened cheese = mould ripened goats cheese = mold ripened cheese = mould
    ripened soft cheese, stilton, gorgonzola = gorgonzola dolce = gorgonzola piccante, dolcelatte, danish blue,
    roquefort, cambozola, livarot, langres, fourme d ambert = bleu d auvergne, shropshire blue, cabrales, brillat
    savarin, saint marcellin""",
    A.MILK, From.MOULD_CHEESE, hidden=(From.RENNET, From.LACTOSE), perishable=True,
)  # fmt: skip
FROZEN = group(
    """ice cream, vanilla ice cream, frozen yogurt = frozen yoghurt, gelato, frozen custard, ice cream base = ice cream
    mix = ice cream mixture = gelato base""",
    A.MILK, From.LACTOSE, perishable=True, made=True,
    hidden=(A.EGGS, A.SOY, A.WHEAT, A.ALMONDS, A.HAZELNUTS, A.PISTACHIOS, A.WALNUTS, A.PECANS, A.PEANUTS),
)  # fmt: skip
SORBET = group("sorbet", hidden=(A.EGGS, A.MILK, From.ALCOHOL), perishable=True, made=True)
EGGS = group(
    """egg, hens egg, duck egg, quail egg, goose egg, egg yolk, egg white, beaten egg, egg wash = eggwash = egg
    glaze, liquid egg, yolk, bantam egg, pullet egg, ostrich egg, soft boiled egg, fried egg""",
    A.EGGS, raw="eggs", perishable=True,
)  # fmt: skip
COOKED_EGGS = group(
    """powdered egg = egg powder = dried egg, albumen = albumin = ovalbumin, salted duck egg, century egg,
    pickled egg, meringue powder, hard boiled egg = hard cooked egg, pasteurised egg white, pasteurised egg,
    dried egg white, meringue, meringue nest""",
    A.EGGS, perishable=True,
)  # fmt: skip
WITH_EGG_AND_MILK = group(
    """custard = creme anglaise, lemon curd = fruit curd = lime curd = passion fruit curd = orange
    curd = lemon cheese, creme
    patissiere = pastry cream""",
    A.EGGS,
    A.MILK,
    From.LACTOSE,
    perishable=True,
    made=True,
)
COCONUT_CREAM = group("~cream of coconut = ~coconut cream powder", A.COCONUT, hidden=(A.SULPHITES,), made=True)
FLAVOURED_BUTTER = (
    *group("brandy butter = rum butter", A.MILK, From.ALCOHOL, hidden=(From.LACTOSE,), made=True),
    *group("anchovy butter", A.MILK, A.FISH, hidden=(From.LACTOSE,), made=True),
)
INSTEAD = group(
    """~vegan margarine, ~vegan block margarine = ~vegan block, ~vegan butter, ~vegan cheese, ~vegan cream, ~vegan
    yogurt = ~vegan yoghurt, ~vegan ice cream, ~vegan mayonnaise = ~vegan mayo""",
    hidden=(A.MILK, A.EGGS, A.SOY, A.CASHEWS, A.ALMONDS, A.COCONUT, A.OATS, A.MUSTARD), perishable=True, made=True,
)  # fmt: skip
MARGARINE = group("margarine = block margarine = baking spread", hidden=(A.MILK, From.LACTOSE, A.SOY), made=True)
RICE_AND_OTHERS = group(
    "~rice milk = ~rice drink, ~pea milk = ~pea drink, ~hemp milk = ~hemp drink",
    perishable=True, made=True,
) + group(
    "~egg replacer = ~egg replacement = ~egg substitute", hidden=(A.EGGS, A.MILK, A.SOY, A.WHEAT), made=True
)  # fmt: skip

DAIRY = (
    *MILK_AND_CREAM, *IN_TINS_AND_DRY, *MALTED_MILK, *RAW_MILK, *WITHOUT_LACTOSE, *BUTTER, *FRESH_CHEESE,
    *PERHAPS_RISKY, *HARD_CHEESE,
    *WITH_RENNET, *VEGETARIAN_CHEESE, *MOULD_RIPENED, *FROZEN, *SORBET, *EGGS, *COOKED_EGGS, *WITH_EGG_AND_MILK,
    *COCONUT_CREAM, *FLAVOURED_BUTTER, *INSTEAD, *MARGARINE, *RICE_AND_OTHERS, *(entry for plant,
    allergen in _PLANTS.items() for entry in
    _plant(plant, allergen)),
)  # fmt: skip
