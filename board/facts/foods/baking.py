"""Cereals, flours, bread, pasta and pastry; sugar and what baking needs."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_BREAD = (A.MILK, From.LACTOSE, A.EGGS, A.SOY, A.SESAME, A.RYE, A.BARLEY, A.LUPIN)
_ALL_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)

# What is made to look like meat, with what binds it.
_MEATS_OF_PLANTS = (
    "bacon", "ham", "chicken", "beef", "duck", "turkey", "pork", "lamb", "mince", "steak", "sausage", "burger",
    "chorizo",
    "pepperoni", "salami", "jerky", "kebab", "nugget", "rib", "roast", "meatball", "schnitzel",
)  # fmt: skip
_INSTEAD_OF_MEAT = (A.SOY, A.EGGS, A.MILK, A.CELERY, A.MUSTARD, A.BARLEY)

WHEAT = group(
    """flour, plain flour = all purpose flour = cake flour = pastry flour, self raising flour = self rising flour,
    strong flour = bread flour = strong white flour, wholemeal flour = whole wheat flour, white flour, 00 flour,
    spelt flour, spelt, pearled spelt, khorasan wheat, wheat, wheat berry, wheat germ, wheat bran, bran,
    semolina, durum wheat, farro, emmer, einkorn, freekeh, bulgur = bulgur wheat = bulghur, couscous, giant
    couscous, vital wheat gluten = wheat gluten = gluten, cracked wheat, wheat starch,
    atta = atta flour = chapati flour = chapatti flour, maida, farina, sooji = suji = rava, cream of wheat, kamut =
    kamut flour, wheat flake, wheatgerm, puffed wheat, spelt flake, puffed spelt, frikeh = freekah = farik, bulgar =
    bulgar wheat = burghul, pearl couscous = israeli couscous = moghrabieh = mograbieh, graham flour, sponge flour,
    tempura flour, wheat protein = textured wheat protein, grunkern, soft flour, pasta flour, pizza flour, patent
    flour, brown flour, matzo flour""",
    A.WHEAT,
)  # fmt: skip
RAW_DOUGH = group(
    """dough, bread dough, pizza dough, pie dough, tart dough, pastry dough, cookie dough = biscuit dough, cake batter =
    brownie batter = muffin batter = sponge batter""",
    A.WHEAT, From.RAW_DOUGH, perishable=True, made=True,
    hidden=(A.EGGS, A.MILK, From.LACTOSE, From.ANIMAL_FAT, A.SOY, A.LUPIN, *_ALL_NUTS, A.PEANUTS),
)  # fmt: skip
MALTED_FLOUR = group("malted flour", A.WHEAT, A.BARLEY)
SEITAN = (
    *group("seitan, ~mock duck", A.WHEAT, hidden=(A.SOY,), made=True),
    *group(
        ", ".join(f"~seitan {meat}" for meat in _MEATS_OF_PLANTS), A.WHEAT, hidden=_INSTEAD_OF_MEAT, made=True),
)  # fmt: skip
RYE = group("rye, rye flour, rye flake", A.RYE)
TRITICALE = group("triticale", A.WHEAT, A.RYE)
BARLEY = group(
    """malt = malted barley = malt powder, barley flake, pearled barley, barley water, barley, pearl barley, pot
    barley, barley flour, barley malt, malt extract, malt syrup""",
    A.BARLEY,
)
OATS = group(
    """oat, rolled oat, porridge oat, oatmeal, jumbo oat, steel cut oat, oat groat, oatbran, porridge =
    overnight oat, oat flake, oat flour, oat bran, pinhead oat""",
    A.OATS,
    hidden=(A.WHEAT, A.BARLEY),
)  # fmt: skip
OATS_WITHOUT_GLUTEN = group("~gluten free oat = ~gluten free rolled oat = ~gluten free porridge oat", A.OATS)
FREE = group(
    """rice, long grain rice, basmati = basmati rice, jasmine rice, arborio = arborio rice = risotto rice,
    carnaroli rice, pudding rice, sushi rice, brown rice, wild rice, paella rice, bomba rice, rice flour, ground
    rice, black rice, red rice, sticky rice = glutinous rice, vialone nano rice, poha = flattened rice, fonio,
    tapioca pearl,
    kelp noodle, mung bean noodle = cellophane noodle = bean thread noodle, shirataki = konjac noodle = konjac,
    pho noodle = flat
    rice noodle = rice stick, thai rice, rice bran, potato flake, rice flake, yellow rice,
    sweet rice flour = glutinous rice flour,
    rice noodle = rice vermicelli, rice paper, glass noodle, cornflour = cornstarch = corn starch, corn flour,
    cornmeal = corn meal, polenta = corn polenta, masa harina = corn masa, grits = corn grits, popcorn = popping
    corn, corn tortilla, hominy = hominy corn, tapioca = tapioca flour =
    tapioca starch, sago, potato flour = potato starch, ~buckwheat = ~buckwheat flour = ~buckwheat groats = ~kasha,
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
    crumpet, matzo = matzo meal = matzah = matza = matzoh, rusk, pide, bloomer, batard, boule, miche, fougasse,
    ficelle, melba toast, zwieback, croute, pain de mie, panini, bap
    = barm = barm cake, stottie, farl, hot dog bun, teacake, fruit loaf, soft pretzel, pangrattato, japanese
    breadcrumb = dried breadcrumb = golden breadcrumb, loaf = white loaf, baton loaf, french stick, french bread,
    italian bread, pain de campagne, slider bun, crusty bread, bread cube, bread case, bread stick, paratha, puri =
    poori, kulcha, bhatura, chapatti, hamburger bun, turkish bread, dinner roll, wholemeal roll, brown bread,
    wholegrain bread = whole grain bread, cracker crumb = cracker meal, tortilla wrap, sub roll, saltine, panini
    roll, torta, pizza base, lavash""",
    A.WHEAT, hidden=_BREAD, made=True,
)  # fmt: skip
GRAIN_BREAD = group("granary bread, seeded bread, multigrain bread", A.WHEAT, hidden=(*_BREAD, A.OATS), made=True)
RYE_BREAD = group("rye bread, rye loaf, pumpernickel, rye crispbread", A.RYE, hidden=(A.WHEAT, *_BREAD), made=True)
RICH_BREAD = group(
    "croissant, pain au chocolat = chocolate croissant = viennoiserie, cinnamon roll = cinnamon bun, hot cross bun, "
    "sweet bun, danish pastry, milk bread, soda bread, garlic bread, babka = kugelhopf",
    A.WHEAT, A.MILK, From.LACTOSE, hidden=(A.EGGS, A.ALMONDS, A.SOY, A.SULPHITES, A.LUPIN), made=True,
)  # fmt: skip
EGG_BREAD = group(
    "challah = challa = hallah = cholla", A.WHEAT, A.EGGS, made=True,
    hidden=(A.MILK, From.LACTOSE, A.SESAME, A.SOY, A.LUPIN),
)  # fmt: skip
EGG_AND_MILK_BREAD = group(
    "brioche = brioche loaf = brioche roll, brioche bun, panettone = pandoro", A.WHEAT, A.EGGS, A.MILK, From.LACTOSE,
    hidden=(A.ALMONDS, A.SOY, A.SULPHITES, A.LUPIN), made=True,
)  # fmt: skip
MALT_LOAF = group("malt loaf", A.WHEAT, A.BARLEY, hidden=_BREAD, made=True)
RYE_SOURDOUGH = group("rye sourdough = rye sourdough bread", A.RYE, hidden=(A.WHEAT, *_BREAD), made=True)
OTHER_BREAD = group(
    """~injera = ~teff bread, ~arepa, ~papadum = ~poppadom = ~papad, ~dosa = ~idli = ~uttapam, ~taco shell =
    ~tostada""",
    made=True,
    hidden=(A.WHEAT, A.MUSTARD, A.SOY, A.MILK),
)  # fmt: skip
FREE_BREAD = group(
    """~gluten free bread = ~gluten free roll = ~gluten free loaf, ~gluten free breadcrumb = ~gluten free bread
    crumb = ~gluten free crumb, ~gluten free cracker""",
    hidden=(A.EGGS, A.MILK, From.LACTOSE, A.SOY, A.LUPIN, A.OATS), made=True,
)  # fmt: skip
CORN_BREAD = group("cornbread", hidden=(A.WHEAT, A.EGGS, A.MILK, From.LACTOSE), made=True)
PASTA = group(
    """pasta, spaghetti, linguine, tagliatelle, penne, fusilli, macaroni, lasagne sheet = lasagna sheet = dried
    lasagne = dried lasagna = lasagne pasta = lasagna noodle, orzo = risoni = kritharaki, rigatoni, conchiglie,
    farfalle, vermicelli, dried pasta, noodle, udon = udon noodle, somen, ramen noodle, fregola = fregula,
    cannelloni tube = dried cannelloni, bucatini, orecchiette, pappardelle, ditalini, wheat noodle, spring roll
    wrapper = spring roll pastry, capellini = angel hair = angel hair pasta, fettuccine = fettucine, tagliolini
    = taglierini, mafalda = mafaldine, paccheri, ziti, rotini, cavatelli, cavatappi, casarecce, trofie, gemelli,
    radiatore, stelline, pastina, pasta shell = pasta bow = bow tie pasta = pasta quill = pasta sheet = soup
    pasta = pasta shape, elbow macaroni = elbow pasta, strozzapreti, garganelli, lumache, campanelle, reginette,
    malloreddus, busiate, bigoli, pici, tubetti = ditali, anelli, ramen, spaghettini, fideo = fideua noodle,
    gyoza wrapper = dumpling wrapper, stir fry noodle, rice and wheat noodle, noodle nest""",
    A.WHEAT, hidden=(A.EGGS,), made=True,
)  # fmt: skip
EGG_PASTA = group(
    """egg pasta, egg noodle = chow mein noodle = hokkien noodle = lo mein noodle, fresh egg pasta, wonton
    wrapper, spaetzle = spatzle""",
    A.WHEAT,
    A.EGGS,
    perishable=True,
    made=True,
)
FILLED_PASTA = group(
    """ravioli, tortellini, tortelloni = tortelli, agnolotti, cappelletti, cannelloni = stuffed cannelloni,
    manti, filled pasta = stuffed pasta, pasta bake, ready pasta""",
    A.WHEAT, perishable=True, made=True,
    hidden=(A.EGGS, A.MILK, From.LACTOSE, From.PORK, From.BEEF, From.POULTRY, From.RENNET, A.CRUSTACEANS, A.FISH,
            A.CELERY, A.SOY, *_ALL_NUTS, A.PINE_NUTS),
)  # fmt: skip
LASAGNE = group(
    "lasagne = lasagna", A.WHEAT, hidden=(A.EGGS, A.MILK, From.LACTOSE, From.BEEF, From.PORK, A.CELERY), made=True
)
GNOCCHI = group("gnocchi", A.WHEAT, hidden=(A.EGGS, A.MILK, From.LACTOSE, From.RENNET), perishable=True, made=True)
ROLLS = group(
    "spring roll = vegetable spring roll = pancake roll, lumpia", A.WHEAT, perishable=True, made=True,
    hidden=(A.EGGS, A.SOY, A.SESAME, A.CRUSTACEANS, From.PORK, From.POULTRY, A.MILK, A.PEANUTS),
)  # fmt: skip
EGG_ROLLS = group(
    "egg roll", A.WHEAT, A.EGGS, perishable=True, made=True,
    hidden=(A.SOY, A.SESAME, A.CRUSTACEANS, From.PORK, From.POULTRY, A.MILK, A.PEANUTS),
)  # fmt: skip
FRESH_ROLLS = group(
    "summer roll", perishable=True, made=True,
    hidden=(A.CRUSTACEANS, A.FISH, A.PEANUTS, A.SOY, A.WHEAT, A.SESAME, From.PORK, From.POULTRY),
)  # fmt: skip
OTHER_PASTA = (
    *group("~soba = ~soba noodle = ~buckwheat noodle", hidden=(A.WHEAT,), made=True),
    *group(
        "~rice pasta = ~corn pasta, ~lentil pasta = ~chickpea pasta = ~pea pasta, ~rice cake = ~corn cake",
        hidden=(A.SOY,),
        made=True,
    ),
    *group(
        "~rice cracker = ~senbei = ~arare",
        made=True,
        hidden=(A.SOY, A.WHEAT, A.SESAME, A.PEANUTS, A.CRUSTACEANS, A.FISH, A.MILK),
    ),
    *group("~gluten free pasta = ~gluten free spaghetti = ~gluten free noodle", hidden=(A.SOY, A.EGGS), made=True),
)
PASTRY = group(
    """pastry, puff pastry, shortcrust pastry = shortcrust, filo pastry = filo = phyllo = phyllo pastry, flaky
    pastry, kataifi = kadaif = kataifi pastry, brick pastry = feuille de brick = brik pastry = warka, strudel
    pastry = strudel dough, samosa pastry, pie shell = tart shell = tartlet case = pastry shell = pie base,
    croustade, puff pastry sheet, puff pastry case, pasta
    dough, rough puff pastry = rough puff, pie pastry, hot water crust pastry, pie crust, pastry
    case, tart case, vol au vent case""",
    A.WHEAT, hidden=(A.EGGS, A.MILK, From.LACTOSE, From.ANIMAL_FAT, A.SOY, A.LUPIN), perishable=True, made=True,
)  # fmt: skip
SUET_PASTRY = group(
    "suet pastry = suet crust pastry = suet crust", A.WHEAT, From.ANIMAL_FAT, perishable=True, made=True,
    hidden=(From.BEEF, A.EGGS, A.MILK),
)  # fmt: skip
BUTTER_PASTRY = group(
    "all butter puff pastry, all butter shortcrust pastry, choux pastry, sweet pastry = pate sucree", A.WHEAT, A.MILK,
    From.LACTOSE, hidden=(A.EGGS,), perishable=True, made=True,
)  # fmt: skip
BISCUITS = group(
    """biscuit = cookie, digestive biscuit = digestive = graham cracker, shortbread, speculoos = speculaas, langue de
    chat, tuile, brandy snap, shortcake, rich tea biscuit, custard cream, ~bourbon biscuit,
    garibaldi biscuit,
    sable, biscuit crumb = cookie crumb = biscuit base, chocolate biscuit = chocolate cookie, tea
    biscuit, cake crumb, layer cake, sponge base, madeira sponge, parkin, eccles cake,
    drop scone = scotch pancake,
    churro, beignet, sweet roll, fortune cookie, wafer, ice cream cone, sponge cake = sponge, cake, gingerbread,
    scone, brownie,
    doughnut = donut, pancake, waffle, blini""",
    A.WHEAT, made=True,
    hidden=(A.MILK, From.LACTOSE, A.EGGS, A.SOY, *_ALL_NUTS, A.PEANUTS, A.COCONUT, A.LUPIN, A.SULPHITES, A.OATS),
)  # fmt: skip
OAT_BISCUITS = group(
    "oat biscuit = oatmeal biscuit = oatmeal cookie = oat cookie", A.WHEAT, A.OATS, made=True,
    hidden=(A.BARLEY, A.MILK, From.LACTOSE, A.EGGS, A.SOY, *_ALL_NUTS, A.PEANUTS, A.COCONUT, A.SULPHITES),
)  # fmt: skip
MALTED_BISCUITS = group(
    "malted milk biscuit", A.WHEAT, A.BARLEY, A.MILK, From.LACTOSE, hidden=(A.EGGS, A.SOY), made=True
)
EGG_BAKES = (
    *group("crepe", A.WHEAT, A.EGGS, A.MILK, From.LACTOSE, made=True, perishable=True),
    *group(
        """ladyfinger = ladyfinger biscuit = sponge finger = savoiardi""",
        A.WHEAT, A.EGGS, hidden=(A.MILK, A.SOY), made=True),
)  # fmt: skip
# Wheat biscuits with ginger, without nuts.
GINGER_BISCUITS = group(
    """~ginger nut = ~ginger nut biscuit = ~gingernut, ginger biscuit = gingersnap = ginger snap = ginger cookie""",
    A.WHEAT,
    hidden=(A.MILK, From.LACTOSE, A.EGGS, A.SOY), made=True,
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
FREE_SUGARS = group(
    """glucose = dextrose = liquid glucose, fructose, fondant sugar, sugar cube, pearl sugar, jam sugar =
    preserving sugar, rock sugar, panela = piloncillo, stevia = xylitol = erythritol, ~barley sugar, rice syrup
    = brown rice syrup, vanilla syrup = elderflower syrup = rose syrup = ginger syrup = fruit syrup, simple
    syrup = stock syrup = syrup, carob syrup, light brown soft sugar = dark brown soft sugar, edible glitter,
    gold leaf = silver leaf, brown rice sugar, coconut blossom nectar, turbinado sugar, raw sugar, invert sugar,
    beet sugar, maple sugar, dark treacle = black treacle, pancake syrup, jam setting sugar""",
)  # fmt: skip
HONEY = group("honey, honeycomb, manuka honey", From.HONEY)
RAISING = group(
    """baking soda = bicarbonate of soda, yeast = fresh yeast = dried yeast = fast action dried
    yeast = instant yeast, ~cream of tartar, agar = agar agar, pectin, xanthan gum, guar gum, citric acid,
    vanilla = vanilla pod = vanilla bean, ~bourbon vanilla = ~bourbon vanilla pod =
    ~bourbon vanilla bean = ~bourbon vanilla paste = ~bourbon vanilla sugar, vanilla paste, vanilla powder, cocoa =
    cocoa powder, ~cocoa butter, cacao nib, rose water = rosewater, orange blossom water = orange flower water""",
)  # fmt: skip
BAKING_POWDER = group("baking powder", hidden=(A.WHEAT,))
COLOURING = group("food colouring = food coloring", hidden=(From.INSECT_COLOUR,))
STARTER = group("sourdough starter = sourdough discard = levain", A.WHEAT, hidden=(A.RYE,))
CUSTARD_POWDER = group(
    "custard powder = instant pudding mix = blancmange powder = pudding mix", hidden=(A.MILK, A.WHEAT), made=True
)
EXTRACTS = (
    *group(
        "vanilla extract, vanilla essence, ~bourbon vanilla extract = ~bourbon vanilla essence, lemon extract, "
        "orange extract, peppermint extract",
        hidden=(From.ALCOHOL,),
    ),
    *group("almond extract = almond essence", hidden=(A.ALMONDS, From.ALCOHOL)),
)
CHOCOLATE = group(
    """dark chocolate = plain chocolate = bittersweet chocolate = semisweet chocolate, chocolate, cooking
    chocolate, drinking chocolate = hot chocolate, chocolate chip, couverture = dark couverture, chocolate button,
    chocolate
    flake = chocolate shaving = chocolate curl, chocolate sauce = chocolate syrup, chocolate bar, chocolate egg,
    70 chocolate, chocolate
    sprinkle = vermicelli chocolate, chocolate spread""",
    hidden=(A.MILK, From.LACTOSE, A.SOY, *_ALL_NUTS, A.PEANUTS), made=True,
)  # fmt: skip
MILK_CHOCOLATE = group(
    """milk chocolate, white chocolate = white chocolate chip, fudge, toffee, caramel, dulce
    de leche, butterscotch, caramel sauce = toffee sauce = butterscotch sauce = salted caramel = salted caramel
    sauce, caramel spread, milk chocolate chip = milk chocolate button, blondie chocolate""",
    A.MILK, From.LACTOSE, hidden=(A.SOY, *_ALL_NUTS, A.PEANUTS, A.WHEAT, A.BARLEY), made=True,
) + group(
    "chocolate truffle, ganache = chocolate ganache",
    A.MILK, From.LACTOSE, hidden=(A.SOY, *_ALL_NUTS, A.PEANUTS, A.WHEAT, A.BARLEY, From.ALCOHOL), made=True,
)  # fmt: skip
CHOCOLATE_SPREAD = group(
    """chocolate hazelnut spread = hazelnut spread = hazelnut chocolate spread = gianduja = gianduia""",
    A.HAZELNUTS, made=True,
                         hidden=(A.MILK, From.LACTOSE, A.SOY, A.ALMONDS))  # fmt: skip
PRALINE = group("praline, praline paste", A.HAZELNUTS, made=True,
                hidden=(A.MILK, From.LACTOSE, A.SOY, A.ALMONDS, A.PECANS, A.WALNUTS))  # fmt: skip
NOUGATS = (
    *group("nougatine, turron, calisson, dragee = sugared almond = jordan almond, orgeat = almond syrup, persipan",
           A.ALMONDS, hidden=(A.EGGS, A.HAZELNUTS, A.WHEAT, A.MILK, From.HONEY), made=True),
    *group("honeycomb toffee = cinder toffee", made=True, hidden=(From.HONEY, A.MILK, From.LACTOSE, A.SOY)),
    *group("turkish delight = lokum, rocky road, candy = wrapped sweet", made=True,
           hidden=(*_ALL_NUTS, A.PEANUTS, A.MILK, From.LACTOSE, A.SOY, A.WHEAT, From.GELATINE, From.INSECT_COLOUR,
           A.SESAME)),
)  # fmt: skip
NOUGAT = group(
    """nougat = torrone""",
    A.EGGS, made=True, hidden=(*_ALL_NUTS, A.PEANUTS, A.MILK, From.LACTOSE, A.SOY, From.HONEY,
                                                   A.WHEAT))  # fmt: skip
SWEETS = (
    *group("marshmallow", From.GELATINE, hidden=(From.INSECT_COLOUR, A.EGGS, A.FISH), made=True),
    *group("wine gum, jelly sweet, gummy sweet, jelly = jello", made=True,
           hidden=(From.GELATINE, From.INSECT_COLOUR, A.EGGS)),
    *group("marzipan, frangipane", A.ALMONDS, made=True, hidden=(A.EGGS, A.MILK, A.WHEAT, A.SOY)),
    *group("liquorice", A.WHEAT, hidden=(From.GELATINE,), made=True),
    *group("~mincemeat", hidden=(From.ANIMAL_FAT, From.BEEF, A.SULPHITES, From.ALCOHOL, A.WHEAT, A.ALMONDS), made=True),
    *group("royal icing = egg white icing", A.EGGS, hidden=(A.MILK, From.RAW_EGG), made=True),
    *group("fondant icing, icing", made=True, hidden=(A.EGGS, From.GELATINE, A.MILK)),
    *group("sprinkle, glace cherry = candied cherry = maraschino cherry", made=True,
           hidden=(From.INSECT_COLOUR, A.SULPHITES, A.WHEAT)),
    *group("boiled sweet, candyfloss, sugar flower", made=True, hidden=(From.INSECT_COLOUR,)),
)  # fmt: skip

BAKING = (
    *WHEAT, *RAW_DOUGH, *MALTED_FLOUR, *SEITAN, *RYE, *BARLEY, *OATS, *OATS_WITHOUT_GLUTEN, *FREE, *FLAKES,
    *SPECIAL_FLOURS, *BREAD,
    *GRAIN_BREAD, *RYE_BREAD, *RICH_BREAD, *EGG_BREAD, *EGG_AND_MILK_BREAD, *MALT_LOAF, *RYE_SOURDOUGH, *OTHER_BREAD,
    *TRITICALE, *LASAGNE, *GINGER_BISCUITS, *EGG_BAKES, *FREE_SUGARS, *NOUGATS,
    *FREE_BREAD, *CORN_BREAD, *PASTA, *EGG_PASTA, *FILLED_PASTA, *GNOCCHI, *ROLLS, *EGG_ROLLS, *FRESH_ROLLS,
    *OTHER_PASTA,
    *PASTRY, *SUET_PASTRY, *BUTTER_PASTRY, *BISCUITS, *OAT_BISCUITS, *MALTED_BISCUITS,
    *CRACKERS, *ALMOND_BISCUITS, *MACAROON, *OATCAKE, *SUGAR, *HONEY, *RAISING, *BAKING_POWDER, *COLOURING,
    *STARTER, *CUSTARD_POWDER,
    *EXTRACTS, *CHOCOLATE, *MILK_CHOCOLATE, *CHOCOLATE_SPREAD, *PRALINE, *NOUGAT, *SWEETS,
)  # fmt: skip
