"""Vegetables, mushrooms, fruit, and fresh herbs."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import group
from board.facts.origins import Origin as From

VEGETABLES = group(
    """~flax egg = ~chia egg = ~linseed egg, onion = pearl onion, shallot, spring onion = scallion = green onion,
    leek, garlic = garlic clove = clove
    of garlic, elephant garlic, wild garlic = ramson, chive, carrot, parsnip, turnip, swede = rutabaga,
    beetroot = beet, radish,
    daikon = mooli, horseradish, potato, ~sweet potato, yam, cassava, ~jerusalem artichoke = ~sunchoke,
    artichoke = globe artichoke, salsify, kohlrabi, cabbage, red cabbage, white cabbage, savoy cabbage, pointed
    cabbage, chinese cabbage = napa cabbage, pak choi = bok choy, brussels sprout = sprout, kale = cavolo nero,
    cauliflower, broccoli = tenderstem broccoli = broccolini, romanesco, spinach, chard = swiss chard, spring
    green, collard green = collard, lettuce = cos lettuce = romaine lettuce = romaine = cos, iceberg lettuce,
    little gem lettuce = little gem, ~butter lettuce = ~butterhead lettuce, ~lambs lettuce = ~corn salad, rocket
    = arugula, watercress, cress, mizuna, salad leaf, leaf, chicory = endive = belgian endive, radicchio,
    frisee, dandelion leaf, sorrel, nettle, samphire, sea vegetable, seaweed = nori = wakame = kombu = kelp,
    fennel = fennel bulb, asparagus, cucumber, courgette = zucchini, marrow, courgette flower = zucchini flower,
    pumpkin, ~butternut squash = ~butternut, squash = winter squash, acorn squash, spaghetti squash, patty pan
    squash, aubergine = eggplant, pepper = bell pepper = sweet pepper = red pepper = green pepper = yellow
    pepper = capsicum, ~romano pepper, chilli = chili = chile = jalapeno = chilli pepper = chili pepper = red
    chilli = green chilli = chillies = chilies = red chillies = green chillies, scotch bonnet = scotch bonnet
    chilli, padron pepper, tomato, ~beef tomato = ~beefsteak tomato, ~cherry tomato, ~plum tomato, sweetcorn =
    corn = maize = corn on the cob = corn cob, baby corn, okra, green bean = french bean = string bean = snap
    bean = fine bean = dwarf bean, runner bean, pea = garden pea = petit pois, sugar snap = sugar snap pea,
    mangetout = snow pea, pea shoot, broad bean, bamboo shoot, ~water chestnut, lotus root, palm heart = heart
    of palm = hearts of palm, rhubarb, ~champagne rhubarb, ~lambs quarter, ~goat horn pepper, ~bulls horn pepper, ~bear
    garlic, ginger = root ginger = fresh ginger, galangal, fresh turmeric, lemongrass
    = lemon grass, olive, ~vine leaf = ~grape leaf, banana leaf, black truffle = white truffle = summer truffle,
    plantain, celtuce, cardoon, tomatillo, chayote, microgreen, ~ox heart tomato = ~oxheart tomato, ~egg plant,
    ~buttercup squash = ~buttercup, ~honeynut squash = ~honeynut, ~ladys finger = ~ladies finger, ~butternut
    pumpkin = ~butter nut squash = ~butternutsquash, ~oyster plant = ~oyster leaf, ~milk thistle, ~horse radish,
    ~breadfruit = ~bread fruit, ~butter leaf lettuce = ~butterleaf lettuce = ~buttercrunch lettuce, ~creamer
    potato, ~kidney potato, ~fish mint, ~goats beard, ~butterfly pea flower, ~duck potato, ~horse bean, ~birds
    eye chilli = ~bird eye chilli, new potato = salad potato = baby potato = fingerling potato, sprouting
    broccoli, taro = eddo, jicama, monks beard = agretti, puntarelle, treviso, escarole, batavia, lollo rosso =
    oak leaf lettuce = lettuce heart, fava bean = fava, cima di rapa = rapini = broccoli rabe, choy sum, gai lan
    = chinese broccoli = chinese leaf, tatsoi, water spinach = morning glory, bitter melon = karela, gourd,
    snake bean, nopal, salad = mixed salad = green salad = side salad = salad green, mixed leaf, baby leaf =
    baby spinach, truffle = fresh truffle, sea beet, spaghetti marrow, black garlic, garlic paste = ginger paste
    = ginger garlic paste = garlic puree, curly kale, maris piper potato = maris piper = king edward potato =
    king edward = desiree potato = charlotte potato = jersey royal = yukon gold potato = russet potato = russet
    = ratte potato = la ratte = anya potato, pink fir apple potato = pink fir apple, red kuri squash = onion
    squash = kabocha = crown prince squash = delicata squash = gem squash, kalamata olive = kalamata = nocellara
    olive = taggiasca olive = manzanilla olive, san marzano tomato = datterini tomato = marmande tomato = bull s
    heart tomato, roscoff onion, spiralised courgette = courgetti = courgette spaghetti = courgette noodle =
    butternut noodle, cauliflower rice = riced cauliflower = broccoli rice, cauliflower steak,
    hispi cabbage = hispi = sweetheart cabbage = january king cabbage = pointed spring cabbage, purple
    sprouting, mooli, crosne, oca, salad burnet, ~goose necked squash = ~goose neck squash = ~crookneck squash,
    dandelion, vegetable crudite = crudite, micro herb = micro leaf, pickling onion, banana shallot, ~cheese
    plant, ~rat tail radish, ~beefsteak plant = ~beefsteak fungus, ~turkey berry, hot pepper, piquillo pepper,
    roasted pepper, haricot vert = haricots verts, veg = mixed veg""",
)  # fmt: skip
# Raw, they spoil as cooked food does: FDA Food Code 1-201.10(B), time/temperature control for safety food, from memory.
SPROUTS = (
    *group(
        """bean sprout = beansprout = mung bean sprout = mung sprout = sprouted mung bean, alfalfa = alfalfa sprout,
        ~clover sprout = ~red clover sprout, radish sprout = daikon sprout, broccoli sprout, lentil sprout = sprouted
        lentil, chickpea sprout = sprouted chickpea, fenugreek sprout, onion sprout, ~sunflower sprout, sprouted seed =
        seed sprout = sprouted bean = sprouted pulse, adzuki sprout = sprouted adzuki bean""",
        From.SPROUTS, perishable=True),
    *group("soybean sprout = soya bean sprout = sprouted soybean", A.SOY, From.SPROUTS, perishable=True),
    *group("mustard sprout", A.MUSTARD, From.SPROUTS, perishable=True),
)  # fmt: skip
CELERY = group(
    "celery, celery stick = celery stalk, celery heart, celeriac = celery root, celeriac steak, celery leaf, "
    "celery seed, celery salt",
    A.CELERY,
)
MIXED = group(
    "stir fry vegetable, root = root vegetable = mixed root, vegetable = mixed vegetable, bouquet garni",
    hidden=(A.CELERY,),
)
MUSHROOMS = group(
    """mushroom = champignon = cup mushroom, mushroom duxelles = duxelles, button mushroom, ~chestnut mushroom =
    ~cremini mushroom, portobello mushroom = portobello = portobellini mushroom = portobellini = flat mushroom,
    ~oyster mushroom, king oyster mushroom,
    shiitake = shiitake mushroom, enoki = enoki mushroom, shimeji = beech mushroom, porcini = cep = porcini
    mushroom = dried porcini, chanterelle = girolle = chanterelle mushroom, morel = morel mushroom, wild
    mushroom, field mushroom, ~chicken of the woods mushroom = ~chicken of the woods, ~maitake mushroom =
    ~maitake = ~hen of the woods, wood ear mushroom, ~milk cap mushroom = ~milk cap, ~hedgehog mushroom = ~pheasant
    back mushroom = ~turkey tail mushroom = ~horse
    mushroom = ~honey fungus = ~lobster mushroom = ~lions mane mushroom, dried mushroom, mushroom powder,
    chestnut cap""",
)  # fmt: skip
HERBS = group(
    """parsley = flat leaf parsley = curly parsley, coriander = cilantro = coriander leaf = fresh coriander, basil
    = thai basil, mint, dill, tarragon, chervil, sage, rosemary, thyme = lemon thyme, oregano, marjoram, bay =
    bay leaf, savory, lovage, ~lemon balm, ~lemon verbena, curry leaf, makrut lime leaf = lime leaf, herb =
    mixed herb, hyssop, borage, ~edible flower = ~rose petal = ~viola, lavender, shiso, fenugreek leaf,
    purslane, elderflower, epazote, culantro, nasturtium, angelica, sweet cicely, pandan leaf = pandan,
    sweet woodruff, micro basil,
    wild herb, soft herb, chive flower, fines herbes, lime leaves, marigold, ~goose grass""",
)  # fmt: skip
FRUIT = group(
    """~tart apple = ~tart cherry, ~champagne grape = ~muscat grape, ~rose apple, ~hog plum, cox orange pippin, comice
    pear = williams pear = bosc pear = anjou pear,
    meyer lemon = amalfi lemon, navel orange = valencia orange = cara cara orange = bergamot orange, charentais,
    cavaillon melon, apple = cooking apple = eating apple, ~crab apple, pear, quince, plum, damson, greengage,
    cherry = sour cherry, apricot, peach, nectarine, strawberry, raspberry, blackberry, blueberry, redcurrant,
    blackcurrant, whitecurrant, gooseberry, cranberry, lingonberry, elderberry, mulberry, grape, orange = blood
    orange, mandarin = clementine = tangerine = satsuma, lemon, lime, grapefruit, pomelo, yuzu, kumquat,
    bergamot, banana, pineapple, mango = champagne mango, papaya, ~passion fruit = ~passionfruit,
    kiwi = kiwi fruit = kiwifruit, melon =
    cantaloupe = honeydew melon, watermelon = water melon, fig, date, pomegranate = pomegranate seed, persimmon
    = sharon fruit, lychee, rambutan, dragon fruit, guava, star fruit, physalis, avocado, tamarind = tamarind
    paste, jackfruit, loquat, medlar, sloe, ~custard apple = ~cherimoya, ~egg fruit = ~eggfruit, ~cheese fruit,
    ~doughnut peach = ~donut peach = flat peach, ~honeycrisp apple, ~honeydew = ~honeydew melon, ~cashew apple,
    ~butter pear, ~cape gooseberry, mangosteen, durian, longan, soursop, sapodilla, feijoa, prickly pear,
    calamansi, citron, finger lime, key lime, acai = acai berry, goji berry, sea buckthorn, boysenberry,
    loganberry, tayberry, rosehip, aronia berry, barberry, bramley apple = granny smith = granny smith apple =
    bramley, cox apple = braeburn = braeburn apple, conference pear, crab apple, frozen berry, galia melon =
    charentais melon, ugli fruit, ~turkey fig, seville orange, citrus, citrus fruit""",
)  # fmt: skip
MIXED_FRUIT = group("berry = mixed berry, summer fruit, fruit = mixed fruit, fruit salad", made=True)
DRIED_FRUIT = group(
    """raisin = dried grape, sultana = golden raisin = dried grape sultana, currant = dried currant, prune =
    dried plum, dried apricot, dried fig, dried apple,
    dried pear, dried mango, dried cranberry, dried cherry, dried date, medjool date, dried fruit = mixed dried
    fruit, mixed peel = candied peel = candied orange peel, candied ginger = crystallised ginger = stem ginger,
    dried banana, dried peach, sun dried tomato = sundried tomato""",
    hidden=(A.SULPHITES,),
)  # fmt: skip
MADE_OF_PLANTS = (
    *group(
        """tinned tomato = canned tomato = chopped tomato, passata = tomato passata = strained tomato, tomato paste
        = tomato puree"""),
    *group("sauerkraut, pickled beetroot, pickled onion, pickled cucumber = gherkin = cornichon = dill pickle = pickle",
           hidden=(A.MUSTARD, A.SULPHITES), made=True),
    *group("kimchi", hidden=(A.FISH, A.CRUSTACEANS, A.MOLLUSCS, A.SOY, A.WHEAT), made=True),
    *group("stuffed olive", hidden=(A.FISH, A.ALMONDS, A.MILK), made=True),
    *group("coleslaw, potato salad", A.EGGS, hidden=(A.MUSTARD, A.MILK, A.CELERY), perishable=True, made=True),
    *group("chip = french fry, oven chip", hidden=(A.WHEAT, From.ANIMAL_FAT), made=True),
    *group("creamed corn = creamed sweetcorn", hidden=(A.MILK, From.LACTOSE, A.WHEAT), made=True),
    *group("creamed spinach", A.MILK, From.LACTOSE, hidden=(A.WHEAT,), perishable=True, made=True),
    *group("~wheatgrass = ~wheat grass, ~barley grass", hidden=(A.WHEAT, A.BARLEY)),
    *group("onion ring", hidden=(A.WHEAT, A.MILK, A.EGGS), made=True),
    *group("crisp = potato chip, tortilla chip = nacho", made=True,
           hidden=(A.WHEAT, A.MILK, From.LACTOSE, A.SOY, A.BARLEY, A.CELERY, A.MUSTARD)),
    *group(
        """lemon juice, lime juice, orange juice, apple juice = cloudy apple juice, pineapple juice, tomato juice,
        grape juice, pomegranate juice, cranberry juice, grapefruit juice, pear juice, carrot juice, cherry
        juice"""),
    *group("juice = fruit juice", made=True),
    *group("bottled lemon juice, bottled lime juice", hidden=(A.SULPHITES,)),
    *group(
        """apple sauce = applesauce, cranberry sauce, jam, apricot jam, raspberry jam, strawberry
        jam, marmalade, quince paste = membrillo, compote, fruit puree, apple butter""",
        hidden=(A.SULPHITES,), made=True),
    *group("redcurrant jelly, fruit jelly", hidden=(A.SULPHITES, From.GELATINE), made=True),
    *group("baked bean", hidden=(A.CELERY, A.MUSTARD, From.PORK, A.WHEAT), made=True),
)  # fmt: skip

PLANTS = (
    *VEGETABLES,
    *SPROUTS,
    *CELERY,
    *MIXED,
    *MUSHROOMS,
    *HERBS,
    *FRUIT,
    *MIXED_FRUIT,
    *DRIED_FRUIT,
    *MADE_OF_PLANTS,
)
