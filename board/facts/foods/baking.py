"""Cereals, flours, bread, pasta and pastry; sugar and what baking needs."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_BREAD = (A.MILK, From.LACTOSE, A.EGGS, A.SOY, A.SESAME, A.RYE, A.BARLEY, A.LUPIN)
_ALL_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)

WHEAT = group(
    """flour, plain flour = all purpose flour = cake flour = pastry flour, self raising flour = self rising flour,
    strong flour = bread flour = strong white flour, wholemeal flour = whole wheat flour, white flour, 00 flour,
    spelt flour, spelt, pearled spelt, khorasan wheat, wheat, wheat berry, wheat germ, wheat bran, bran,
    semolina, durum wheat, farro, emmer, einkorn, freekeh, bulgur = bulgur wheat = bulghur, couscous, giant
    couscous, vital wheat gluten, cracked wheat, wheat starch""",
    A.WHEAT,
)  # fmt: skip
SEITAN = group("seitan", A.WHEAT, hidden=(A.SOY,), made=True)
RYE = group("rye, rye flour, rye flake", A.RYE)
BARLEY = group("barley, pearl barley, pot barley, barley flour, barley malt, malt extract, malt syrup", A.BARLEY)
OATS = group(
    "oat, rolled oat, porridge oat, oatmeal, jumbo oat, oat flour, oat bran, pinhead oat", A.OATS,
    hidden=(A.WHEAT, A.BARLEY),
)  # fmt: skip
OATS_WITHOUT_GLUTEN = group("~gluten free oat = ~gluten free rolled oat = ~gluten free porridge oat", A.OATS)
FREE = group(
    """rice, long grain rice, basmati = basmati rice, jasmine rice, arborio = arborio rice = risotto rice,
    carnaroli rice, pudding rice, sushi rice, brown rice, wild rice, paella rice, bomba rice, rice flour, ground
    rice, rice noodle = rice vermicelli, rice paper, glass noodle, cornflour = cornstarch = corn starch, corn flour,
    cornmeal = corn meal, polenta = corn polenta, masa harina = corn masa, grits = corn grits, popcorn = popping
    corn, corn tortilla, hominy = hominy corn, tapioca = tapioca flour =
    tapioca starch, sago, potato flour = potato starch, ~buckwheat = ~buckwheat flour = ~buckwheat groats,
    quinoa = quinoa flour, millet = millet flour, amaranth, teff = teff flour, sorghum = sorghum flour,
    arrowroot, cassava flour, plantain flour, kuzu""",
)  # fmt: skip
# Breakfast cereals of them are often made with barley malt.
FLAKES = group("corn flake = cornflake, puffed rice", hidden=(A.BARLEY,), made=True)
SPECIAL_FLOURS = (
    *group("chickpea flour = gram flour = besan"),
    *group("almond flour", A.ALMONDS),
    *group("coconut flour", A.COCONUT),
    *group("chestnut flour", A.CHESTNUTS),
    *group("soy flour = soya flour", A.SOY),
    *group("lupin flour", A.LUPIN),
    *group("~gluten free flour = ~gluten free plain flour = ~gluten free self raising flour",
           hidden=(A.OATS, A.LUPIN, A.SOY), made=True),
)  # fmt: skip
BREAD = group(
    """bread, white bread, sandwich bread, wholemeal bread = whole wheat bread, sourdough = sourdough bread,
    baguette, ciabatta, focaccia, flatbread, pitta = pita = pitta bread = pita bread, naan = naan bread,
    tortilla = flour tortilla = wrap, roti, chapati, bagel, bun, bread roll = roll, burger bun, toast, crouton,
    breadstick = grissini, crispbread, breadcrumb = bread crumb = crumb, panko = panko breadcrumb, pretzel,
    muffin = english muffin,
    crumpet, matzo = matzo meal, rusk, pizza dough, pizza base, bread dough, lavash""",
    A.WHEAT, hidden=_BREAD, made=True,
)  # fmt: skip
GRAIN_BREAD = group("granary bread, seeded bread, multigrain bread", A.WHEAT, hidden=(*_BREAD, A.OATS), made=True)
RYE_BREAD = group("rye bread, rye loaf, pumpernickel, rye crispbread", A.RYE, hidden=(A.WHEAT, *_BREAD), made=True)
RICH_BREAD = group(
    "brioche, challah, croissant, danish pastry, panettone, milk bread, soda bread, garlic bread, brioche bun",
    A.WHEAT, A.MILK, From.LACTOSE, hidden=(A.EGGS, A.ALMONDS, A.SOY, A.SULPHITES, A.LUPIN), made=True,
)  # fmt: skip
FREE_BREAD = group(
    """~gluten free bread = ~gluten free roll = ~gluten free loaf, ~gluten free breadcrumb = ~gluten free
    crumb, ~gluten free cracker""",
    hidden=(A.EGGS, A.MILK, From.LACTOSE, A.SOY, A.LUPIN, A.OATS), made=True,
)  # fmt: skip
CORN_BREAD = group("cornbread", hidden=(A.WHEAT, A.EGGS, A.MILK, From.LACTOSE), made=True)
PASTA = group(
    """pasta, spaghetti, linguine, tagliatelle, penne, fusilli, macaroni, lasagne = lasagna = lasagne sheet, orzo,
    rigatoni, conchiglie, farfalle, vermicelli, dried pasta, noodle, udon = udon noodle, somen, ramen noodle,
    fregola, cannelloni, bucatini, orecchiette, pappardelle, ditalini, wheat noodle, spring roll wrapper""",
    A.WHEAT, hidden=(A.EGGS,), made=True,
)  # fmt: skip
EGG_PASTA = group(
    "egg pasta, egg noodle, fresh egg pasta, wonton wrapper, spaetzle", A.WHEAT, A.EGGS, perishable=True, made=True
)
FILLED_PASTA = group(
    "ravioli, tortellini", A.WHEAT, perishable=True, made=True,
    hidden=(A.EGGS, A.MILK, From.LACTOSE, From.PORK, From.BEEF, From.POULTRY, From.RENNET, A.CRUSTACEANS, A.FISH,
            A.CELERY, A.SOY, *_ALL_NUTS, A.PINE_NUTS),
)  # fmt: skip
GNOCCHI = group("gnocchi", A.WHEAT, hidden=(A.EGGS, A.MILK, From.LACTOSE, From.RENNET), perishable=True, made=True)
ROLLS = group(
    "spring roll, egg roll", A.WHEAT, perishable=True, made=True,
    hidden=(A.EGGS, A.SOY, A.SESAME, A.CRUSTACEANS, From.PORK, From.POULTRY, A.MILK, A.PEANUTS),
)  # fmt: skip
FRESH_ROLLS = group(
    "summer roll", perishable=True, made=True,
    hidden=(A.CRUSTACEANS, A.FISH, A.PEANUTS, A.SOY, A.WHEAT, A.SESAME, From.PORK, From.POULTRY),
)  # fmt: skip
OTHER_PASTA = (
    *group("~soba = ~soba noodle = ~buckwheat noodle", hidden=(A.WHEAT,), made=True),
    *group(
        "~rice pasta = ~corn pasta, ~lentil pasta = ~chickpea pasta, ~rice cake, ~rice cracker",
        hidden=(A.SOY,),
        made=True,
    ),
    *group("~gluten free pasta = ~gluten free spaghetti = ~gluten free noodle", hidden=(A.SOY, A.EGGS), made=True),
)
PASTRY = group(
    """pastry, puff pastry, shortcrust pastry = shortcrust, filo pastry = filo = phyllo = phyllo pastry, flaky
    pastry, hot water crust pastry, suet pastry, pie crust, pastry case, tart case, vol au vent case""",
    A.WHEAT, hidden=(A.EGGS, A.MILK, From.LACTOSE, From.ANIMAL_FAT, A.SOY, A.LUPIN), perishable=True, made=True,
)  # fmt: skip
BUTTER_PASTRY = group(
    "all butter puff pastry, all butter shortcrust pastry, choux pastry, sweet pastry = pate sucree", A.WHEAT, A.MILK,
    From.LACTOSE, hidden=(A.EGGS,), perishable=True, made=True,
)  # fmt: skip
BISCUITS = group(
    """biscuit = cookie, digestive biscuit = graham cracker, shortbread, ginger biscuit = gingersnap, ladyfinger =
    sponge finger = savoiardi, wafer, ice cream cone, sponge cake = sponge, cake, gingerbread, scone, brownie,
    doughnut = donut, pancake, crepe, waffle, blini""",
    A.WHEAT, made=True,
    hidden=(A.MILK, From.LACTOSE, A.EGGS, A.SOY, *_ALL_NUTS, A.PEANUTS, A.COCONUT, A.LUPIN, A.SULPHITES, A.OATS),
)  # fmt: skip
CRACKERS = group(
    "cracker, ~oyster cracker, ~cream cracker, water biscuit",
    A.WHEAT, hidden=(A.MILK, From.LACTOSE, A.SESAME, A.BARLEY, A.RYE, A.SOY), made=True,
)  # fmt: skip
ALMOND_BISCUITS = group("amaretti, macaron", A.ALMONDS, A.EGGS, hidden=(A.WHEAT, A.MILK), made=True)
MACAROON = group("macaroon", A.EGGS, hidden=(A.ALMONDS, A.COCONUT, A.WHEAT), made=True)
OATCAKE = group(
    "oatcake, granola, muesli, flapjack", A.OATS, made=True,
    hidden=(A.WHEAT, A.BARLEY, A.MILK, From.LACTOSE, *_ALL_NUTS, A.PEANUTS, A.COCONUT, A.SESAME, A.SOY,
            A.SULPHITES, From.HONEY),
)  # fmt: skip
SUGAR = group(
    """sugar, caster sugar = superfine sugar, granulated sugar, icing sugar = powdered sugar = confectioners sugar,
    brown sugar, soft brown sugar, demerara sugar, muscovado sugar, palm sugar, jaggery, cane sugar, golden
    syrup, treacle = molasses, maple syrup, corn syrup, glucose syrup, agave syrup = agave nectar, date syrup,
    pomegranate molasses, isomalt, sweetener, vanilla sugar, sugar syrup, nibbed sugar""",
)  # fmt: skip
HONEY = group("honey, honeycomb", From.HONEY)
RAISING = group(
    """baking soda = bicarbonate of soda, yeast = fresh yeast = dried yeast = fast action dried
    yeast = instant yeast, ~cream of tartar, agar = agar agar, pectin, xanthan gum, guar gum, citric acid,
    vanilla = vanilla pod = vanilla bean, vanilla paste, vanilla powder, cocoa =
    cocoa powder, ~cocoa butter, cacao nib, rose water = rosewater, orange blossom water = orange flower water""",
)  # fmt: skip
BAKING_POWDER = group("baking powder", hidden=(A.WHEAT,))
COLOURING = group("food colouring = food coloring", hidden=(From.INSECT_COLOUR,))
STARTER = group("sourdough starter", A.WHEAT, hidden=(A.RYE,))
CUSTARD_POWDER = group("custard powder", hidden=(A.MILK, A.WHEAT), made=True)
EXTRACTS = (
    *group(
        "vanilla extract, vanilla essence, lemon extract, orange extract, peppermint extract", hidden=(From.ALCOHOL,)
    ),
    *group("almond extract = almond essence", hidden=(A.ALMONDS, From.ALCOHOL)),
)
CHOCOLATE = group(
    """dark chocolate = plain chocolate = bittersweet chocolate = semisweet chocolate, chocolate, cooking
    chocolate, drinking chocolate, chocolate chip""",
    hidden=(A.MILK, From.LACTOSE, A.SOY, *_ALL_NUTS, A.PEANUTS), made=True,
)  # fmt: skip
MILK_CHOCOLATE = group(
    """milk chocolate, white chocolate = white chocolate chip, chocolate truffle, fudge, toffee, caramel, dulce
    de leche, butterscotch""",
    A.MILK, From.LACTOSE, hidden=(A.SOY, *_ALL_NUTS, A.PEANUTS, A.WHEAT, A.BARLEY, From.ALCOHOL), made=True,
)  # fmt: skip
CHOCOLATE_SPREAD = group("chocolate hazelnut spread = hazelnut spread", A.HAZELNUTS, made=True,
                         hidden=(A.MILK, From.LACTOSE, A.SOY, A.ALMONDS))  # fmt: skip
PRALINE = group("praline, praline paste", A.HAZELNUTS, made=True,
                hidden=(A.MILK, From.LACTOSE, A.SOY, A.ALMONDS, A.PECANS, A.WALNUTS))  # fmt: skip
NOUGAT = group("nougat", A.EGGS, made=True, hidden=(*_ALL_NUTS, A.PEANUTS, A.MILK, From.LACTOSE, A.SOY, From.HONEY,
                                                   A.WHEAT))  # fmt: skip
SWEETS = (
    *group("marshmallow, wine gum, jelly sweet, gummy sweet, jelly = jello", made=True,
           hidden=(From.GELATINE, From.INSECT_COLOUR, A.EGGS)),
    *group("marzipan, frangipane", A.ALMONDS, made=True, hidden=(A.EGGS, A.MILK, A.WHEAT, A.SOY)),
    *group("liquorice", A.WHEAT, hidden=(From.GELATINE,), made=True),
    *group("~mincemeat", hidden=(From.ANIMAL_FAT, From.BEEF, A.SULPHITES, From.ALCOHOL, A.WHEAT, A.ALMONDS), made=True),
    *group("fondant icing, royal icing, icing", made=True, hidden=(A.EGGS, From.GELATINE, A.MILK)),
    *group("sprinkle, glace cherry = candied cherry = maraschino cherry", made=True,
           hidden=(From.INSECT_COLOUR, A.SULPHITES, A.WHEAT)),
    *group("boiled sweet, candyfloss, sugar flower", made=True, hidden=(From.INSECT_COLOUR,)),
)  # fmt: skip

BAKING = (
    *WHEAT, *SEITAN, *RYE, *BARLEY, *OATS, *OATS_WITHOUT_GLUTEN, *FREE, *FLAKES, *SPECIAL_FLOURS, *BREAD,
    *GRAIN_BREAD, *RYE_BREAD, *RICH_BREAD,
    *FREE_BREAD, *CORN_BREAD, *PASTA, *EGG_PASTA, *FILLED_PASTA, *GNOCCHI, *ROLLS, *FRESH_ROLLS, *OTHER_PASTA,
    *PASTRY, *BUTTER_PASTRY, *BISCUITS,
    *CRACKERS, *ALMOND_BISCUITS, *MACAROON, *OATCAKE, *SUGAR, *HONEY, *RAISING, *BAKING_POWDER, *COLOURING,
    *STARTER, *CUSTARD_POWDER,
    *EXTRACTS, *CHOCOLATE, *MILK_CHOCOLATE, *CHOCOLATE_SPREAD, *PRALINE, *NOUGAT, *SWEETS,
)  # fmt: skip
