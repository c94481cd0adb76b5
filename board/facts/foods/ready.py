"""Ready dishes and ready-made things that stand among ingredients: what they hold, and often hold. Common practice, no
source: only their label names all of it."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

_MILK = (A.MILK, From.LACTOSE)
_NUTS = (A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS)
_MEATS = (From.MEAT, From.PORK, From.BEEF, From.POULTRY)
_CHEESE = (*_MILK, From.RENNET)
_EU = (A.CELERY, A.MUSTARD, A.SOY, A.SULPHITES)

NUT_BAKES = (
    *group(
        """baklava, baklawa""",
        A.WALNUTS, A.PISTACHIOS, A.WHEAT, hidden=(A.MILK, *_NUTS, A.EGGS, From.HONEY), made=True),
    *group(
        """bakewell tart = bakewell slice, frangipane tart = almond tart, almond cake, battenberg
        cake, battenberg, florentine biscuit = florentines biscuit, marzipan cake, galette des rois""",
        A.ALMONDS, A.WHEAT, made=True,
           hidden=(A.EGGS, *_MILK, *_NUTS, A.PEANUTS, A.SULPHITES)),
    *group("almond croissant", A.ALMONDS, A.WHEAT, *_MILK, hidden=(A.EGGS, A.SOY, A.SULPHITES, A.LUPIN), made=True),
    *group("financier, dacquoise", A.ALMONDS, A.EGGS, hidden=(A.WHEAT, *_MILK, *_NUTS), made=True),
    *group("linzer torte, linzertorte", A.HAZELNUTS, A.WHEAT, hidden=(A.ALMONDS, A.EGGS, *_MILK), made=True),
    *group("petit four, petits fours", A.WHEAT, A.EGGS, hidden=(*_MILK, *_NUTS, A.SOY), made=True),
    *group("mont blanc", A.CHESTNUTS, *_MILK, hidden=(A.EGGS, A.WHEAT), made=True),
    *group("nut bar = nut cluster", *_NUTS, hidden=(A.PEANUTS, *_MILK, A.WHEAT, A.SOY, From.HONEY), made=True),
)  # fmt: skip
SEA_DISHES = (
    *group("har gow", A.CRUSTACEANS, A.WHEAT, hidden=(A.SESAME, A.SOY, From.PORK), perishable=True, made=True),
    *group("cioppino = seafood stew", A.FISH, A.CRUSTACEANS, A.MOLLUSCS, hidden=(A.CELERY, From.ALCOHOL),
           perishable=True, made=True),
    *group("kedgeree", A.FISH, A.EGGS, hidden=(*_MILK, A.MUSTARD, A.CELERY), perishable=True, made=True),
    *group("cullen skink", A.FISH, *_MILK, perishable=True, made=True),
    *group("brandade, bouillabaisse, bourride, escabeche", A.FISH, perishable=True, made=True,
           hidden=(*_MILK, A.CRUSTACEANS, A.MOLLUSCS, A.CELERY, From.ALCOHOL)),
    *group("salade nicoise = nicoise salad, pissaladiere", A.FISH, hidden=(A.EGGS, A.MUSTARD, A.WHEAT), perishable=True,
           made=True),
    *group("kibbeh, kibbe = kibe", A.WHEAT, From.MEAT, hidden=(A.PINE_NUTS, From.BEEF), perishable=True, made=True),
    *group("maafe, mafe = groundnut stew = peanut stew = groundnut soup", A.PEANUTS, perishable=True, made=True,
           hidden=(A.FISH, A.CELERY, From.MEAT)),
)  # fmt: skip
BAKED_DISHES = (
    *group(
        """frozen lasagne = ready made lasagne = lasagne ready meal = lasagne al
        forno, chilled lasagne = fresh lasagne, frozen lasagna""",
        A.WHEAT, *_MILK, hidden=(From.MEAT, From.BEEF, From.PORK, A.EGGS, From.RENNET, *_EU), perishable=True,
        made=True),
    *group("meat lasagne = lasagne bolognese", A.WHEAT, *_MILK, From.MEAT, perishable=True, made=True,
           hidden=(From.BEEF, From.PORK, A.EGGS, From.RENNET, From.ALCOHOL, *_EU)),
    *group("beef lasagne", A.WHEAT, *_MILK, From.BEEF, perishable=True, made=True,
           hidden=(From.PORK, A.EGGS, From.RENNET, From.ALCOHOL, *_EU)),
    *group("vegetable lasagne = vegetarian lasagne = spinach lasagne = mushroom lasagne", A.WHEAT, *_MILK,
           hidden=(A.EGGS, From.RENNET, *_EU), perishable=True, made=True),
    *group("moussaka = frozen moussaka", *_MILK, hidden=(From.MEAT, From.BEEF, A.WHEAT, A.EGGS, *_EU), perishable=True,
           made=True),
    *group("macaroni cheese = mac and cheese = mac n cheese = cauliflower cheese", *_MILK, A.WHEAT,
           hidden=(A.MUSTARD, A.EGGS, From.RENNET), perishable=True, made=True),
    *group("pizza = frozen pizza = calzone = margherita pizza = pizza margherita, pizza pocket", A.WHEAT, *_MILK,
           hidden=(From.PORK, A.FISH, From.RENNET, A.SOY, A.CELERY, A.MUSTARD), perishable=True, made=True),
    *group("garlic bread = garlic baguette = garlic dough ball = dough ball", A.WHEAT, *_MILK,
           hidden=(A.EGGS, A.ALMONDS, A.SOY, A.SULPHITES, A.LUPIN), made=True),
    *group("quiche = quiche lorraine = frittata tart, savoury flan", A.WHEAT, *_MILK, A.EGGS,
           hidden=(From.PORK, From.RENNET, A.MUSTARD, From.ANIMAL_FAT), perishable=True, made=True),
    *group(
        """frittata, omelette, omelet, spanish omelette, ~tortilla espanola = ~spanish tortilla, souffle""",
        A.EGGS, hidden=(*_MILK, A.WHEAT), perishable=True, made=True),
    *group("scrambled egg, poached egg", A.EGGS, hidden=(*_MILK, From.RAW_EGG), perishable=True, made=True),
    *group("egg custard", A.EGGS, *_MILK, hidden=(A.WHEAT,), perishable=True, made=True),
    *group(
        """pie = savoury pie, pasty, vol au vent,
        strudel, tart, tartlet, turnover, samosa, empanada, borek, burek, spanakopita""",
        A.WHEAT, perishable=True, made=True,
        hidden=(*_MEATS, *_MILK, A.EGGS, From.ANIMAL_FAT, A.FISH, *_EU, *_NUTS)),
    *group("shepherds pie", From.MEAT, made=True, perishable=True,
           hidden=(*_MILK, A.WHEAT, A.BARLEY, A.FISH, *_EU)),
    *group("cottage pie", From.BEEF, made=True, perishable=True,
           hidden=(*_MILK, A.WHEAT, A.BARLEY, A.FISH, *_EU)),
    *group("fish pie = fishermans pie", A.FISH, *_MILK, made=True, perishable=True,
           hidden=(A.WHEAT, A.CRUSTACEANS, A.MOLLUSCS, A.EGGS, *_EU)),
    *group("yorkshire pudding = popover", A.WHEAT, A.EGGS, *_MILK, made=True),
    *group("batter = pancake batter = yorkshire batter", A.WHEAT, From.RAW_DOUGH, perishable=True, made=True,
           hidden=(A.EGGS, *_MILK, A.BARLEY, A.SOY)),
    *group("batter mix, pancake mix", A.WHEAT,
           hidden=(A.EGGS, *_MILK, A.PEANUTS, A.SOY), made=True),
    *group(
        """dumpling, gyoza, potsticker = pot sticker, dim sum, wonton, bao = bao bun, mandu,
        pierogi, pelmeni, momo, shumai, siu mai""",
        A.WHEAT, perishable=True, made=True,
           hidden=(A.EGGS, A.SOY, A.SESAME, A.CRUSTACEANS, A.FISH, A.MOLLUSCS, *_MEATS, From.ANIMAL_FAT, *_MILK,
                   A.PEANUTS, A.CELERY)),
    *group("suet dumpling", A.WHEAT, From.ANIMAL_FAT, hidden=(From.BEEF, A.EGGS, *_MILK), perishable=True, made=True),
    *group("matzo ball, kneidlach", A.WHEAT, A.EGGS, hidden=(From.POULTRY, From.ANIMAL_FAT), made=True),
    *group("nut cutlet = nut rissole = nut loaf", *_NUTS, hidden=(A.WHEAT, A.EGGS, A.SOY, A.CELERY, *_MILK), made=True),
    *group("christmas pudding = plum pudding = christmas cake = fruit cake = simnel cake, stollen", A.WHEAT, made=True,
           hidden=(A.EGGS, *_MILK, A.ALMONDS, *_NUTS, A.BARLEY, From.ALCOHOL, From.ANIMAL_FAT, A.SULPHITES, A.SOY)),
    *group(
        """mince pie""",
        A.WHEAT, hidden=(A.EGGS, *_MILK, *_NUTS, From.ALCOHOL, From.ANIMAL_FAT, A.SULPHITES), made=True),
    *group(
        """biscotti, cantucci =
        cantuccini, lebkuchen""",
        A.WHEAT, hidden=(A.EGGS, *_MILK, *_NUTS, A.PEANUTS, From.HONEY, A.SULPHITES), made=True, ),
    *group(
        """cheesecake, banoffee pie, key lime pie, eclair, profiterole = cream puff = cream bun, roulade""",
           A.WHEAT, *_MILK, A.EGGS, perishable=True, made=True,
           hidden=(*_NUTS, A.PEANUTS, From.GELATINE, A.SOY, A.SULPHITES)),
    *group("trifle, gateau, black forest gateau", A.WHEAT, *_MILK, A.EGGS, perishable=True, made=True,
           hidden=(*_NUTS, A.PEANUTS, From.GELATINE, From.ALCOHOL, A.SOY, A.SULPHITES)),
    *group("bread and butter pudding = bread pudding", A.WHEAT, *_MILK, A.EGGS, perishable=True, made=True,
           hidden=(From.ALCOHOL, A.SOY, A.SULPHITES)),
    *group("sticky toffee pudding, treacle tart, custard tart, pastel de nata = pasteis de nata, lemon tart",
           A.WHEAT, *_MILK, A.EGGS, hidden=(*_NUTS, A.SOY, A.SULPHITES), perishable=True, made=True),
    *group(
        """swiss roll, victoria sponge, cupcake, carrot cake, lemon drizzle cake, chocolate cake, coffee cake, pound
        cake, angel cake, madeleine""",
           A.WHEAT, *_MILK, A.EGGS, perishable=True, made=True,
           hidden=(*_NUTS, A.PEANUTS, A.SOY, A.SULPHITES)),
    *group("tiramisu", A.WHEAT, *_MILK, A.EGGS, perishable=True, made=True,
           hidden=(*_NUTS, A.PEANUTS, From.GELATINE, From.ALCOHOL, A.SOY, A.SULPHITES, From.RAW_EGG)),
    *group("~madeira cake", A.WHEAT, *_MILK, A.EGGS, hidden=(*_NUTS, A.SOY), made=True),
    *group("panna cotta = pannacotta", *_MILK, From.GELATINE, perishable=True, made=True),
    *group("blancmange, bavarois", *_MILK, From.GELATINE, hidden=(A.ALMONDS, A.EGGS), perishable=True, made=True),
    *group(
        """creme brulee, creme caramel, flan, rice pudding, junket, kulfi, burfi,
        barfi, gulab jamun, rasgulla, ras malai, milkshake""",
        *_MILK, perishable=True, made=True,
           hidden=(A.EGGS, A.PISTACHIOS, A.ALMONDS, A.CASHEWS, A.WHEAT, From.RENNET)),
    *group("semolina pudding", A.WHEAT, *_MILK, hidden=(A.EGGS,), perishable=True, made=True),
    *group("zabaglione = zabaione = sabayon = sabayon custard", A.EGGS, From.ALCOHOL,
           hidden=(*_MILK, A.SULPHITES, From.RAW_EGG), perishable=True, made=True),
    *group(
        """mousse = chocolate mousse = fruit mousse, parfait, semifreddo""",
        *_MILK, hidden=(A.EGGS, From.GELATINE, A.SOY, *_NUTS, From.ALCOHOL, From.RAW_EGG), perishable=True, made=True),
    *group("~fool", *_MILK, hidden=(A.EGGS, From.GELATINE), perishable=True, made=True),
    *group(
        """pavlova, eton mess""",
        A.EGGS, hidden=(*_MILK, A.WHEAT, *_NUTS), perishable=True, made=True),
    *group("baked alaska", A.EGGS, *_MILK, hidden=(A.WHEAT, *_NUTS, From.ALCOHOL, From.RAW_EGG), perishable=True,
           made=True),
    *group("floating island = ile flottante", A.EGGS, *_MILK, hidden=(*_NUTS, From.RAW_EGG), perishable=True,
           made=True),
    *group("crumble topping = crumble mix = crumble, cobbler = streusel", A.WHEAT,
           hidden=(*_MILK, A.OATS, *_NUTS, A.EGGS), made=True),
    *group("cake mix = brownie mix = muffin mix = scone mix = bread mix = pastry mix", A.WHEAT, made=True,
           hidden=(A.EGGS, *_MILK, A.SOY, *_NUTS, A.BARLEY)),
)  # fmt: skip
SOUPS_AND_SAUCES = (
    *group(
        """cream of tomato soup = cream of mushroom soup = cream of vegetable soup = cream soup""",
        *_MILK, hidden=(A.WHEAT, A.CELERY, A.SOY, From.POULTRY), perishable=True, made=True),
    *group("cream of chicken soup", From.POULTRY, *_MILK, hidden=(A.WHEAT, A.CELERY, A.SOY), perishable=True,
           made=True),
    *group("cream of celery soup", A.CELERY, *_MILK, hidden=(A.WHEAT, A.SOY, From.POULTRY), perishable=True, made=True),
    *group("salmorejo", A.WHEAT, hidden=(A.EGGS, From.PORK, A.SULPHITES), made=True),
    *group(
        """gado gado, peanut salad""",
        A.PEANUTS, hidden=(A.EGGS, A.SOY, A.CRUSTACEANS, A.FISH), perishable=True, made=True),
    *group(
        """celeri remoulade = celeriac remoulade""",
        A.CELERY, A.EGGS, A.MUSTARD, hidden=(*_MILK,), perishable=True, made=True),
    *group(
        """tomato soup = tinned tomato soup, mushroom soup, onion soup mix, minestrone""",
        perishable=True, made=True,
        hidden=(A.WHEAT, A.BARLEY, *_MILK, *_MEATS, *_EU)),
    *group(
        """soup mix = packet soup = instant soup = soup powder = soup = tinned soup = soup base, cup soup, chowder, pho,
        hot and sour soup""",
        perishable=True, made=True,
        hidden=(A.WHEAT, A.BARLEY, *_MILK, A.EGGS, A.FISH, A.CRUSTACEANS, A.MOLLUSCS, *_MEATS, A.SESAME, *_EU)),
    *group(
        """pasta sauce = ready made sauce = cooking sauce = sauce mix = sauce packet = jar of sauce = simmer
        sauce = ready made pasta sauce, sauce, marinara = marinara sauce, arrabbiata = arrabbiata sauce, napoli
        sauce, marinade, glaze, barbecue marinade, dip, onion gravy, pepper sauce mix""",
        made=True,
        hidden=(A.WHEAT, A.BARLEY, *_MILK, A.EGGS, A.FISH, A.SESAME, A.PEANUTS, *_EU)),
    *group("bolognese = bolognese sauce = bolognaise, ragu = chilli con carne = chili con carne", From.MEAT,
           hidden=(From.BEEF, From.PORK, *_MILK, From.ALCOHOL, A.WHEAT, *_EU), perishable=True, made=True),
    *group("instant noodle = instant ramen", A.WHEAT, made=True,
           hidden=(A.EGGS, A.FISH, A.CRUSTACEANS, A.MOLLUSCS, *_MEATS, A.SESAME, A.BARLEY, *_MILK, *_EU)),
    *group("miso soup", A.SOY, perishable=True, made=True,
           hidden=(A.FISH, A.WHEAT, A.BARLEY)),
    *group("bouillabaisse base", A.FISH, hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.CELERY, A.WHEAT, From.ALCOHOL),
           made=True),
    *group("guacamole", hidden=(*_MILK, A.SULPHITES), perishable=True, made=True),
    *group(
        """tzatziki, raita = sour cream dip = onion dip = ranch = ranch dressing = cheese
        dip, nacho cheese = queso""",
        *_MILK, hidden=(A.EGGS, A.MUSTARD, A.CELERY, A.SOY, A.WHEAT), perishable=True, made=True),
    *group("blue cheese dressing = blue cheese dip", *_MILK, From.MOULD_CHEESE, perishable=True, made=True,
           hidden=(A.EGGS, A.MUSTARD, A.CELERY, A.SOY, A.WHEAT, From.RENNET)),
    *group("thousand island dressing, marie rose sauce = cocktail sauce = burger sauce = sriracha mayo",
           A.EGGS, hidden=(A.MUSTARD, A.FISH, A.CELERY, A.SOY, *_MILK, A.WHEAT, A.BARLEY), perishable=True, made=True),
    *group("egg mayonnaise = egg salad = egg mayo", A.EGGS, hidden=(A.MUSTARD, *_MILK), perishable=True, made=True),
    *group("tuna mayonnaise = tuna mayo = tuna salad", A.FISH, A.EGGS, hidden=(A.MUSTARD, A.CELERY), perishable=True,
           made=True),
    *group("waldorf salad", A.EGGS, A.WALNUTS, A.CELERY, hidden=(A.MUSTARD, *_MILK), perishable=True, made=True),
    *group("caesar salad", A.EGGS, hidden=(A.FISH, *_MILK, A.WHEAT, A.MUSTARD, From.RENNET, From.RAW_EGG),
           perishable=True, made=True),
    *group("chicken salad = coronation chicken", A.EGGS, From.POULTRY, perishable=True, made=True,
           hidden=(A.MUSTARD, A.CELERY, *_MILK, A.WALNUTS, A.ALMONDS, A.WHEAT, A.FISH, A.SULPHITES)),
    *group("pasta salad = macaroni salad", A.WHEAT, A.EGGS, perishable=True, made=True,
           hidden=(A.MUSTARD, A.CELERY, *_MILK, *_MEATS, A.FISH, A.SULPHITES)),
    *group("russian salad = salad olivier = olivier salad", A.EGGS, perishable=True, made=True,
           hidden=(A.MUSTARD, A.CELERY, *_MILK, A.WALNUTS, A.ALMONDS, A.WHEAT, A.FISH, *_MEATS, A.SULPHITES)),
    *group("tabbouleh, tabouli = tabouleh, couscous salad", A.WHEAT, made=True),
    *group(
        """fattoush, panzanella, bread salad, bruschetta, crostini, french toast, eggy bread, sandwich, toastie,
        burrito, quesadilla, taco, enchilada, fajita, kebab, gyro, wrap filling""",
        A.WHEAT, perishable=True, made=True,
           hidden=(A.EGGS, *_MILK, A.SESAME, A.SOY, *_MEATS, A.FISH, A.MUSTARD, A.CELERY)),
)  # fmt: skip
COATED = (
    *group(
        """chicken nugget = chicken dipper = breaded chicken = popcorn chicken = chicken goujon = chicken finger
        = chicken strip breaded = fried chicken = chicken schnitzel = turkey escalope, chicken katsu""",
        From.POULTRY, A.WHEAT, raw="poultry", perishable=True, made=True,
        hidden=(A.EGGS, *_MILK, A.MUSTARD, A.CELERY, A.SOY)),
    *group("chicken kiev = chicken kyiv", From.POULTRY, A.WHEAT, *_MILK, raw="poultry", perishable=True, made=True,
           hidden=(A.EGGS, A.MUSTARD, A.CELERY, A.SOY)),
    *group("scotch egg", A.EGGS, A.WHEAT, From.MEAT, raw="ground meat", perishable=True, made=True,
           hidden=(From.PORK, *_MILK, A.MUSTARD, A.CELERY, A.SOY)),
    *group("schnitzel", A.WHEAT, hidden=(A.EGGS, *_MILK, *_MEATS, A.MUSTARD), perishable=True, made=True),
    *group("arancini", A.WHEAT, hidden=(*_MILK, A.EGGS, *_MEATS, A.CELERY), perishable=True, made=True),
    *group("nugget, dipper, croquette, croqueta, rissole, hash brown, rosti, ~potato waffle = "
           "~waffle potato, potato croquette, onion bhaji = bhaji, pakora, fritter, hush puppy",
           perishable=True, made=True,
           hidden=(A.WHEAT, A.EGGS, *_MILK, *_MEATS, A.FISH, A.CELERY, A.MUSTARD, A.SOY)),
    *group(
        """breaded fish = battered fish = fish goujon, breaded plaice = breaded haddock = breaded cod = battered
        cod, fish and chip = fish nugget""",
        A.FISH, A.WHEAT, raw="fish", perishable=True, made=True, hidden=(A.EGGS, *_MILK, A.MUSTARD)),
    *group(
        """breaded mushroom, jalapeno popper""",
           A.WHEAT, perishable=True, made=True, hidden=(*_CHEESE, A.EGGS, A.MUSTARD)),
    *group("breaded mozzarella = mozzarella stick", A.WHEAT, *_MILK, hidden=(From.RENNET, A.EGGS, A.MUSTARD),
           perishable=True, made=True),
    *group("breaded camembert = breaded brie", A.WHEAT, *_MILK, From.MOULD_CHEESE,
           hidden=(From.RENNET, A.EGGS, A.MUSTARD), perishable=True, made=True),
    *group("fried onion = crispy onion = crispy fried onion = crispy fried shallot = fried shallot, onion topping",
           hidden=(A.WHEAT,), made=True),
    *group("coating mix = shake coating = seasoned flour, stuffing crumb", A.WHEAT, made=True,
           hidden=(*_MILK, A.EGGS, A.CELERY, A.MUSTARD, A.SOY)),
)  # fmt: skip
WITHOUT_MEAT = (
    *group(
        """~veggie burger = ~vegetable burger = ~bean burger = ~mushroom burger = ~lentil burger = ~chickpea burger =
        ~beetroot burger = ~vegetarian burger = ~vegan burger = ~tofu burger = ~black bean burger = ~quinoa burger =
        ~plant based burger = ~meat free burger = ~plant burger, ~veggie sausage = ~bean sausage = ~vegetable sausage,
        ~vegetarian meatball = ~vegan meatball = ~veggie meatball = ~meat free meatball, ~vegetarian chicken, ~vegan
        chicken = ~plant based chicken = ~meat free chicken, ~vegetarian bacon = ~vegan bacon,
        ~plant based mince, ~veggie
        mince, ~mycoprotein, ~vegetarian nugget = ~vegan nugget""",
        perishable=True, made=True, hidden=(A.WHEAT, A.EGGS, *_MILK, A.SOY, A.CELERY, A.MUSTARD, A.BARLEY)),
    *group("~halloumi burger", *_MILK, hidden=(A.WHEAT, A.EGGS, From.RENNET), perishable=True, made=True),
    *group(
        """~vegetable pate = ~mushroom pate = ~lentil pate = ~bean pate
        = ~chickpea pate, ~vegetarian pate = ~vegan pate""",
        From.PATE, perishable=True, made=True, hidden=(*_MILK, A.EGGS, From.GELATINE, A.WHEAT, A.CELERY, A.SOY,
        A.CASHEWS,
                                            A.MUSTARD, From.ALCOHOL)),
    *group("~vegetable terrine = ~mushroom terrine, ~vegetable spread", perishable=True, made=True,
           hidden=(*_MILK, A.EGGS, From.GELATINE, A.WHEAT, A.CELERY, A.SOY, A.CASHEWS, A.MUSTARD, From.ALCOHOL)),
    *group("~nut pate", *_NUTS, From.PATE, hidden=(*_MILK, A.SOY), perishable=True, made=True),
    *group(
        """fish pate = salmon pate = trout pate, fish terrine = salmon terrine, tuna pate""",
        A.FISH, From.PATE, hidden=(*_MILK, A.EGGS, A.CRUSTACEANS, A.MUSTARD, A.WHEAT, From.GELATINE), perishable=True,
           made=True),
)  # fmt: skip
_PATE_HIDES = (*_MILK, A.EGGS, A.MUSTARD, A.WHEAT, From.GELATINE)
MORE_PATES = (
    *group("smoked mackerel pate = mackerel pate", A.FISH, From.SMOKED_FISH, From.PATE, hidden=_PATE_HIDES,
           perishable=True, made=True),
    *group("crab pate", A.CRUSTACEANS, From.PATE, hidden=(A.FISH, *_PATE_HIDES), perishable=True, made=True),
)  # fmt: skip
SNACKS = (
    *group(
        """ready meal = microwave meal = frozen meal = meal kit, takeaway, leftover casserole = casserole = stew,
        hotpot""",
           perishable=True, made=True,
           hidden=(A.WHEAT, A.BARLEY, *_MILK, A.EGGS, A.FISH, A.CRUSTACEANS, A.MOLLUSCS, *_MEATS, A.SESAME, *_EU,
           *_NUTS,
                   A.PEANUTS)),
    *group("sushi, nigiri = temaki, chirashi", A.FISH, raw="fish", perishable=True, made=True,
           hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.SOY, A.WHEAT, A.SESAME, A.EGGS)),
    *group("maki = maki roll = uramaki, ~california roll", A.FISH, perishable=True, made=True,
           hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.SOY, A.WHEAT, A.SESAME, A.EGGS, From.RAW_FISH)),
    *group("seafood paella", A.FISH, A.CRUSTACEANS, A.MOLLUSCS, hidden=(*_MEATS, A.CELERY, A.WHEAT, A.SULPHITES),
           perishable=True, made=True),
    *group("paella, jambalaya, gumbo", perishable=True, made=True,
           hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.FISH, *_MEATS, A.CELERY, A.WHEAT, A.SULPHITES)),
    *group("kare kare", A.PEANUTS, hidden=(*_MEATS, A.FISH, A.CRUSTACEANS), perishable=True, made=True),
    *group("avgolemono", A.EGGS, hidden=(*_MEATS, A.CELERY, A.WHEAT), perishable=True, made=True),
    *group("porchetta", From.PORK, perishable=True, made=True),
    *group("pad thai", A.FISH, A.PEANUTS, A.EGGS, hidden=(A.CRUSTACEANS, A.SOY, A.WHEAT), perishable=True, made=True),
    *group("egg fried rice = fried rice = special fried rice", A.EGGS, A.SOY, perishable=True, made=True,
           hidden=(A.WHEAT, A.SESAME, A.CRUSTACEANS, From.PORK, A.MOLLUSCS)),
    *group("risotto, pilau rice, pilaf = pilau, microwave rice = packet rice = rice mix = savoury rice", made=True,
           perishable=True, hidden=(*_MILK, A.CELERY, A.MUSTARD, A.WHEAT, From.POULTRY, From.ALCOHOL)),
    *group("trail mix = nut mix = fruit and nut mix, studentenfutter", *_NUTS, A.PEANUTS, made=True,
           hidden=(A.SULPHITES, A.SOY, *_MILK, A.COCONUT, A.PINE_NUTS)),
    *group("seed cracker", A.WHEAT, hidden=(A.SESAME, A.RYE, A.BARLEY, A.SOY, *_MILK), made=True),
    *group("bombay mix, chevda, snack mix = party mix", hidden=(A.PEANUTS, *_NUTS, A.WHEAT, A.SESAME,
           A.MUSTARD, A.SOY), made=True),
    *group("granola bar", A.OATS, made=True, hidden=(A.WHEAT, A.BARLEY, *_MILK, *_NUTS, A.PEANUTS, A.SOY, A.SESAME,
           From.HONEY, A.COCONUT, A.SULPHITES)),
    *group("cereal bar = protein bar, energy ball = breakfast cereal = cereal", made=True,
           hidden=(A.OATS, A.WHEAT, A.BARLEY, *_MILK, *_NUTS, A.PEANUTS, A.SOY, A.SESAME, From.HONEY, A.COCONUT,
                   A.SULPHITES)),
    *group("nut brittle = croccante", *_NUTS, hidden=(A.PEANUTS, A.SESAME, *_MILK), made=True),
    *group("brittle", hidden=(A.PEANUTS, *_NUTS, A.SESAME, *_MILK), made=True),
    *group(
        """mashed potato, mash = instant mash = potato mash""",
        hidden=(*_MILK, A.SULPHITES), perishable=True, made=True),
    *group("champ, colcannon = aligot, pommes puree = duchess potato "
           "= dauphine potato = potato gratin = potato dauphinoise", *_MILK, hidden=(A.SULPHITES, A.WHEAT, A.EGGS),
           perishable=True, made=True),
    *group("bread sauce mix", A.WHEAT, *_MILK, made=True),
    *group(
        """refried bean, beans in sauce, ratatouille, peperonata, mezze, antipasti = antipasto, charcuterie, tapas""",
        made=True, perishable=True, hidden=(From.PORK, From.MEAT, From.ANIMAL_FAT, *_CHEESE, A.CELERY, A.WHEAT,
           A.SULPHITES, A.FISH, A.PISTACHIOS)),
    *group(
        """dolma, stuffed vine leaf = stuffed grape leaf, dolmades""",
        hidden=(From.MEAT, A.PINE_NUTS, *_MILK), made=True),
    *group("~nut cheese", A.CASHEWS, hidden=(*_NUTS, A.SOY), made=True),
)  # fmt: skip

READY = (*NUT_BAKES, *SEA_DISHES, *BAKED_DISHES, *SOUPS_AND_SAUCES, *COATED, *WITHOUT_MEAT, *MORE_PATES, *SNACKS)
