"""Dishes by their names, and what such a dish usually holds, whichever ingredients a host remembers to write: fesenjan
has walnuts in it, larb fish sauce. They are asked about, never taken for held. Common practice, no source.

A line is `name = another name, name: what they usually hold`. `*` after a name: only where no food stands before it,
for a chicken paella need hold no prawns. Names that usually hold none of the allergens stand at the end, so that they
are known.
"""

import functools
from collections.abc import Iterator

from board.facts.named import named
from board.facts.origins import Trait, with_what_follows
from board.facts.phrases import listed_words, stems

_NAMES = """
fesenjan = fesenjoon = fesenjun, satsivi, pkhali = phali, badrijani = nigvziani, circassian chicken = cerkez tavugu,
 lobio, churchkhela, nigvzit, kharcho: walnuts
charoset = haroset = charoseth, cevizli: walnuts
tarator soup, tarator: walnuts, milk, sesame
potica = povitica, cozonac, rugelach: walnuts, wheat, milk, eggs
kuku sabzi: eggs, walnuts
kashk e bademjan = kashke bademjan: milk, walnuts
chile en nogada = en nogada: walnuts, milk
aji de gallina: walnuts, milk, wheat
waldorf salad = waldorf: walnuts, celery, eggs
skordalia: walnuts, almonds, wheat
picada, tarta de santiago = santiago tart: almonds, eggs
ajo blanco = ajoblanco, pollo en pepitoria = pepitoria, trapanese: almonds
romesco, ricciarelli, marzipan, frangipane, zimtstern: almonds
amandine = almondine: almonds
bastilla = pastilla = bstilla = b stilla: almonds, wheat, eggs
panforte: almonds, hazelnuts, wheat
cantucci, sbrisolona, pithivier, galette de roi, kourabied = kourabie, vanillekipferl, bakewell, battenberg: almonds,
 wheat
torta caprese, opera cake, joconde: almonds, eggs, milk
paris brest: hazelnuts, almonds, eggs, milk, wheat
esterhazy torte: almonds, walnuts, hazelnuts, eggs
linzer torte = linzertorte, linzer: hazelnuts, almonds, wheat
musakhan: wheat, pine nuts, almonds
maqluba = makloubeh = maqlooba: almonds, pine nuts
mansaf: milk, almonds, pine nuts, wheat
kabsa, mandi, zereshk polo, shirin polo: almonds, pistachios
kunafa = knafeh = kanafeh = kunefe: milk, wheat, pistachios
maamoul = mamoul = ma amoul: wheat, pistachios, walnuts
umm ali = om ali = oum ali: milk, wheat, pistachios, almonds
basbousa = basboosa = revani: wheat, almonds, milk
baklava = baklawa: walnuts, pistachios, almonds, wheat
halva = halwa: sesame
gajar halwa = carrot halwa, kheer = payasam = payasa: milk, almonds, cashews
rasmalai = ras malai, kulfi, shrikhand: milk, pistachios, almonds
korma, pasanda, shahi paneer = shahi, malai kofta, navratan, makhani, butter chicken: cashews, almonds, milk
pesto: pine nuts, milk, cashews
pecan pie: pecans, eggs
salsa macha, pipian, mole poblano, mole negro, mole rojo: peanuts, sesame, almonds
mole*: peanuts, sesame, almonds
encacahuatado, domoda, suya, maafe = mafe, kare kare, groundnut, pecel, gado gado, ocopa, chikki: peanuts
som tam = som tum, papaya salad: peanuts, fish, crustaceans
pad thai = phad thai: peanuts, fish, crustaceans, eggs
rojak = rujak, popiah, goi cuon = summer roll, vatapa, xinxim, acaraje: peanuts, crustaceans
rijsttafel, nasi lemak: peanuts, crustaceans, fish, eggs
tea leaf salad = lahpet thoke = laphet thoke: peanuts, sesame, crustaceans
massaman, panang = penang curry = phanaeng: peanuts, fish, crustaceans
kung pao = gong bao, satay = sate: peanuts, soy
dan dan = dandan, bang bang chicken = bon bon chicken: sesame, peanuts, soy
bhel puri = bhelpuri, chivda, poha, sabudana khichdi, vada pav, misal pav: peanuts, wheat
bun cha, banh hoi: fish, peanuts
nuoc cham, larb = laab = larp, nam tok, mohinga, amok, tom kha, bo kho, ca kho, thit kho, bo bun, bun bo, pho, nam
 prik, gaeng = kaeng: fish
tom yum, thai green curry = green curry, thai red curry = red curry, jungle curry, laksa, asam laksa, bun bo hue, banh
 xeo, nam jim, kimchi = kimchee = kimchi jjigae: fish, crustaceans
sambal, belacan: crustaceans
khao soi: wheat, fish, eggs
thai fishcake = thai fish cake = tod mun: fish, eggs, crustaceans
nasi goreng = nasi: crustaceans, soy, eggs
mee goreng = mie goreng = bami goreng = bami, char kway teow = char kuey teow, singapore noodle, pancit: crustaceans,
 soy, wheat, eggs
pad see ew = pad siew, pad kra pao = pad krapow = pad kaprao, drunken noodle = pad kee mao: soy, fish, molluscs
egg foo yung = egg fu yung = foo young, moo shu = mu shu: eggs, soy, wheat
hot and sour soup: soy, eggs
general tso = general tsos chicken, orange chicken, sesame chicken, twice cooked pork, red braised pork = hong shao
 rou, dongpo pork, mongolian beef, beef and broccoli, chop suey, lo mein, chow mein, yakisoba, zha jiang mian =
 zhajiangmian, mapo = ma po, sweet and sour pork: soy, wheat
peking duck = crispy duck = aromatic duck: soy, wheat, sesame
char siu bao, xiaolongbao = xiao long bao = soup dumpling, sheng jian bao, baozi, jiaozi, siu mai = shumai: wheat,
 soy, sesame
wonton soup, cheung fun, har gow: wheat, soy, crustaceans
xo sauce = in xo: crustaceans, molluscs, soy
prawn toast = shrimp toast: wheat, sesame, crustaceans
crab rangoon: crustaceans, wheat, milk
chilli crab = chili crab: crustaceans, eggs, soy
hainanese chicken rice = hainan chicken: soy, sesame
okonomiyaki: eggs, wheat, molluscs, fish, soy
takoyaki: molluscs, wheat, eggs
agedashi, dengaku, oden, nabe, shabu shabu, unagi, gyudon, udon, sukiyaki, poke: soy, fish, sesame
oyakodon, katsudon, chawanmushi: eggs, soy, fish
goma ae = gomae = gomaae, ssamjang, dakgalbi, japchae = chap chae, bulgogi = galbi = kalbi, gimbap = kimbap: sesame,
 soy
bibimbap = bibimbab: sesame, eggs, soy
pajeon = haemul pajeon: wheat, eggs, molluscs, crustaceans
tteokbokki = topokki = ddukbokki: fish, wheat, soy
sundubu = soondubu: soy, crustaceans, molluscs
ramen, tonkotsu: wheat, soy, eggs
teriyaki, tonkatsu = katsu, yakitori, spam musubi = musubi, adobo, lomo saltado: soy, wheat
miso soup = miso: soy, fish
dashi: fish
tempura*, fritto misto*: wheat, eggs, fish, crustaceans, molluscs
bobotie: eggs, milk, wheat
bunny chow: wheat
egusi = egusi soup, callaloo, efo riro, ogbono: fish, crustaceans
jambalaya, etouffee: crustaceans, celery, wheat
gumbo: crustaceans, celery, wheat, fish
moqueca, cataplana, arroz de marisco, fideua, zarzuela, bouillabaisse, cioppino, bisque*, frutti di mare, caldeirada,
 fisherman stew = fishermans stew, fishermans pie = fish pie, seafood platter, fruits de mer, curanto, parihuela,
 caldereta: fish, crustaceans, molluscs
paella*: crustaceans, molluscs
sinigang, solyanka*: fish
waterzooi: milk, celery, fish
bulhao pato, alla vongole = vongole, clam chowder, marinieres = mariniere, oyster rockefeller: molluscs
chettinad, bisi bele bath, rasam, sambar = sambhar, upma, dal tadka = tadka dal = tarka dal, kosha mangsho, achari,
 amba, dhokla, poriyal, thoran: mustard
kadhi = karhi, raita, lassi, dal makhani, chaat: milk
macher jhol, shorshe ilish, shorshe, doi maach: fish, mustard
haleem = hareesa = harees = harissa porridge: wheat, barley
nihari, thukpa, momo, roti, paratha, jalebi, imarti, samosa, mathri, puri, pani puri = golgappa, pav bhaji: wheat
gulab jamun, muhallebi = muhallabia = mahalabia = malabi, sutlac, halo halo, brigadeiro, dulce de leche, cranachan,
 syllabub, posset, panna cotta, cacik = tzatziki = tarator sauce, borani, tartiflette, aligot, raclette, bananas
 foster, labneh, saganaki, tirokafteri, shopska, bryndzove, mamaliga, colcannon, champ, stamppot, halloumi, paneer,
 dauphinoise = gratin dauphinois, lasopy, fondue, potato gratin: milk
sabich: eggs, sesame, wheat
fatteh = fattah: milk, wheat, sesame, pine nuts
siniyah = siniya, mutabbal = mutabal = moutabal, baba ganoush = baba ghanoush, hummus = houmous, tahini, tarator fish,
 manakish = manaqish = man oushe = manoushe, simit: sesame, wheat
shawarma, doner, gyros: sesame, wheat, milk
sfiha = sfeeha, lahmacun = lahmajoun, brik, tourtiere, tabbouleh = tabouleh = tabouli = tabbouli, fattoush, kushari =
 koshari, luqaimat = lokma, kahk, pide, khinkali, manti = manty, pelmeni, uszka, pierogi, maultasche, injera: wheat
kibbeh = kibbe: wheat, pine nuts
dolma = dolmades: pine nuts
yassa: mustard
thieboudienne = thiebou: fish
pistou, caprese, risotto: milk
rice and peas: coconut
iskender, begendi: wheat, milk
ash reshteh: wheat, milk
shakshuka = shakshouka, menemen, huevos rancheros, mirza ghasemi, tortilla de patatas = tortilla espanola = spanish
 tortilla, avgolemono, tamagoyaki, frittata, omelette = omelet, scotch egg, egg curry, loco moco, rouille, aioli,
 pavlova, eton mess, ile flottante, meringue, causa, chicken marengo: eggs
harira: celery, wheat
caponata, mirepoix, bolognese = ragu, minestrone = minestra, borscht = borsch, ribollita, osso buco = ossobuco, bloody
 mary: celery
taramasalata = tarama: fish, wheat
moussaka, pastitsio = pastitio, spanakopita = tiropita = galaktoboureko, borek = boreg = burek, banitsa, khachapuri,
 syrniki, vareniki = varenyky, blini = blinis, lasagne = lasagna, cannelloni, quiche, gougere, clafoutis, far breton,
 crepe suzette, yorkshire pudding, toad in the hole, popover, kaiserschmarrn, canederli = knodel, kasespatzle =
 kaesespaetzle, zuppa inglese, zuccotto, trifle, cassata, cannoli, tres leches, milk tart = melktert, malva pudding,
 sticky date pudding, sticky toffee pudding, queen of pudding, eves pudding, lamington, sufganiyot, kugel, babka,
 kulich, medovik, napoleon cake, dobos torte, sachertorte = sacher torte, black forest gateau = schwarzwalder
 kirschtorte, key lime pie, mississippi mud pie, whoopie pie, snickerdoodle, koeksister, tiramisu, profiterole,
 eclair, pasteis de nata = pastel de nata = custard tart, bread and butter pudding, croqueta, swedish meatball =
 kottbullar, bechamel, cordon bleu, croque madame: wheat, milk, eggs
croque monsieur, welsh rarebit = rarebit, macaroni cheese = mac and cheese = mac n cheese, cauliflower cheese,
 flammkuchen, tarte flambee, pizza, pizzoccheri, alfajor, bitterballen, stroopwafel, francesinha, biscuits and gravy,
 boxty, green bean casserole, chicken pot pie, cacio e pepe, amatriciana, alfredo, sole meuniere, reuben, quesadilla,
 philly cheesesteak, poutine, beef wellington, chicken kyiv = chicken kiev = kyiv = kiev: wheat, milk
parmigiana = parm, florentine, bearnaise: milk
carbonara: eggs, milk, wheat
papa a la huancaina = huancaina: milk, eggs, wheat
pastel de choclo: eggs
leche flan, creme caramel, creme brulee, crema catalana, kaya, bibingka, pao de queijo, natilla, floating island,
 hollandaise, benedict: eggs, milk
quenelle: fish, eggs, milk, wheat
kedgeree, omelette arnold bennett: fish, eggs, milk
bacalhau a bra, bacalhau, bacalao, saltfish = salt fish, brandade, bacalaito, puttanesca, acqua pazza, janssons
 temptation = jansson temptation = janssons frestelse, pissaladiere, worcestershire, vitello tonnato = tonnato, bagna
 cauda, tapenade, gefilte fish, gravlax = gravadlax, rollmop, matje, lutefisk, labskaus, cullen skink, stargazy pie,
 coulibiac, nicoise, anchoiade, ceviche, tiradito, escabeche, fish amok, ackee and saltfish: fish
konigsberger klopse: fish, eggs, wheat
herring under a fur coat = shuba, olivier = russian salad, salad olivieh: eggs, fish
bourride: fish, eggs
caesar salad = caesar: eggs, fish, milk, wheat
toast skagen = skagen = skagenrora: crustaceans, eggs, wheat
crab louie = crab louis, marie rose, prawn cocktail = shrimp cocktail, thermidor: crustaceans, eggs, milk
coquille st jacque, coquille saint jacque: molluscs, milk
sole veronique: fish, milk
salade lyonnaise, devilled egg = deviled egg, celeri remoulade = celeriac remoulade, remoulade: eggs, mustard
lapin a la moutarde = a la moutarde, piccalilli, devilled = deviled, mostarda, steak diane: mustard
stroganoff, steak diane: milk, mustard
carbonnade = carbonade: wheat, barley, mustard
blanquette, blanquette de veau: milk, eggs, wheat
salmorejo, gazpacho, pan con tomate, pappa al pomodoro, panzanella, saltimbocca, gnocchi, cottage loaf, po boy =
 poboy, bruschetta, crostini, chicken parm, milanese, schnitzel, fairy bread, barmbrack, treacle tart, eccles cake,
 shoofly pie, banh mi, latke, hamantasch, schiacciata, tarte tatin, bunuelo, churro, speculoos, spring roll, empanada,
 pasty: wheat
zurek: rye, wheat
smorrebrod: rye, wheat, milk
cholent, scotch broth, beef barley soup: barley
anzac biscuit, anzac: oats, wheat, coconut
parkin: oats, wheat
flummery, cranachan: oats, milk
vegemite: wheat, barley
mooncake, dorayaki, castella, spaetzle = spatzle, matzo ball = matzah ball = kneidlach: wheat, eggs
doro wat = doro wot, kitfo: milk, eggs
rendang, mango sticky rice = sticky rice, ambrosia, macaroon: coconut
coq au vin, bourguignon, chasseur, sauerbraten, bigos, marbella, sangria, mulled wine = gluhwein, choucroute,
 cioppino: sulphites
coronation chicken: eggs, sulphites
cobb salad = cobb: eggs, milk
dan dan = dandan, popiah, fideua, kaya toast: wheat
char kway teow = char kuey teow, oyster rockefeller: molluscs
katsudon, ocopa, cannoli, oyster stew, upma: wheat
bagna cauda, ocopa, sbrisolona, manti = manty, janssons temptation = jansson temptation = janssons frestelse, clam
 chowder, fish pie = fishermans pie, oyster rockefeller, oyster stew, dal tadka = tadka dal = tarka dal, torta di
 riso: milk
gefilte fish, brik, ricciarelli, pollo en pepitoria, bacalhau a bra, latke, general tso, pad see ew = pad siew, torta
 di riso, oden, sukiyaki, katsudon, kaya toast: eggs
hoisin: sesame, soy, wheat
cannoli: pistachios
nougat, cassata: almonds
gravlax = gravadlax, upma, poha: mustard
nasi lemak, kaya, kaya toast, lamington: coconut
syllabub: sulphites
sole meuniere, bacalaito: fish
croquembouche, choux, religieuse, genoise, bundt, yule log, buche, torte, blondie, blintz, palatschinken, dutch baby,
 galette, strata, fruitcake, frikadeller, zwiebelkuchen, charlotte: wheat, milk, eggs
tartine, pizzette, jalousie, damper, piadina, barquette, brown betty, buckle, grunt, goujon, spag bol, toastie: wheat
karaage: soy, wheat
pav, tartare: eggs
maltaise, marquise: eggs, milk
vichyssoise, soubise, arroz con leche, knickerbocker glory, bombe, fricassee, buffalo wing: milk
consomme, mulligatawny, spag bol: celery
janssons: fish, milk
espagnole: wheat, celery
chow chow: mustard
glogg: sulphites, almonds
kir, bellini, bubbly, spritz: sulphites
negroni, boulevardier, guac, nacho, wing, frites = pommes frites, potage, jus, escalope, ragout, bollito, ballotine,
 rouladen, en papillote, crudo, tataki, boulangere, orzotto, arroz con pollo, farinata, socca, whip, gelee, sherbet,
 granita, sorbetto, macedonia = macedoine, coulis, sugo, old fashioned, soda, shrub, agua fresca, limeade, hot toddy,
 decaf, infusion, tisane, pig in blanket, biltong, boerewors, sosatie, haggis, neep, dhansak: nothing
yorkshire: wheat, milk, eggs
in pastry = wrapped in pastry = in puff pastry: wheat
fondant au chocolat, moelleux au chocolat: wheat, milk, eggs
soupe a loignon = french onion soup: wheat, milk
creme of, salade: nothing
pipirrana, prime rib, tzimmes, imam bayildi, patlican salatasi, ezme, ropa vieja, picadillo, feijoada, chimichurri,
 anticucho, pozole, tamale, carnita, barbacoa, cochinita pibil, guacamole, pico de gallo, elote, jollof, jollof rice,
 nyama choma, braai, potjiekos, chakalaka, pap, ugali, sukuma wiki, githeri, matoke, waakye, kenkey, fufu, pilau, plov
 = osh, shashlik = shashlyk, kebab = kabob, souvlaki, kleftiko, stifado, fasolada, gigante, horta, briam, sarma,
 cevapi, ajvar, lecso, prebranac, goulash = gulyas = gulasch, porkolt, paprikash, golabki, ratatouille, cassoulet, pot
 au feu, daube, garbure, navarin, confit, rillettes, carpaccio, porchetta, peperonata, polenta, arista, cacciatora =
 cacciatore, arrabbiata, pomodoro, marinara, gremolata, escalivada, patatas bravas, fabada, cocido, pisto, pulpo,
 caldo verde, cozido, tagine = tajine, chermoula, harissa, zaalouk, taktouka, mechouia, ful medames = foul, mujaddara
 = mejadra, molokhia, mahshi, kofta = kofte = kafta, ghormeh sabzi, gheymeh, khoresh, tahdig, dal = dhal = daal, chana
 masala, aloo gobi, aloo, rajma, chole, bhindi, saag, vindaloo, rogan josh, jalfrezi, bhuna, dopiaza, idli, dosa,
 khichdi, bharta = baingan bharta, onigiri, sashimi, yaki imo, mochi, congee = jook, lechon, lechon kawali, hangi,
 lovo, kalua pork, irish stew, lobscouse = scouse, cawl, cock a leekie, stovies, boeuf, hutspot, rosti, tafelspitz,
 bubble and squeak, succotash, hoppin john, collard green, brisket, pulled pork, sloppy joe, chilli con carne = chili
 con carne = chilli = chili, fajita, jerk, pepperpot, oil down, rundown, surf and turf, mixed grill, crudite =
 crudites, mezze = meze, tapas, antipasti = antipasto, thali: nothing
"""


@functools.cache
def _table() -> dict[tuple[str, ...], tuple[frozenset[Trait], bool]]:
    """What a dish of each name usually holds, by its stems, and whether only where no food stands before it."""
    found: dict[tuple[str, ...], tuple[frozenset[Trait], bool]] = {}
    for line in _NAMES.replace("\n ", " ").strip().splitlines():
        names, usually = line.rsplit(":", 1)
        traits = frozenset[Trait]().union(*(each.holds for word in usually.split(",") if (each := named(word.strip()))))
        for name in names.replace("=", ",").split(","):
            key, alone = stems(name), name.strip().endswith("*")
            found[key] = (found.get(key, (frozenset(), alone))[0] | with_what_follows(traits), alone)
    return found


def named_dishes(text: str) -> Iterator[tuple[int, int, frozenset[Trait], bool]]:
    """The dishes a text names: from which word up to which, what such a dish usually holds, and whether only where no
    food stands before it. The longest name at each place."""
    words, table, n = stems(text), _table(), 0
    while n < len(words):
        length = next((k for k in range(min(5, len(words) - n), 0, -1) if words[n : n + k] in table), 0)
        if length:
            yield (n, n + length, *table[words[n : n + length]])
        n += length or 1


# Words of meals, of shapes, of vessels and of what a cook does, which tell that a name is a host's own and no dish's.
_OF_MEALS = listed_words(
    """supper dinner lunch breakfast brunch tea elevenses starter starters main mains side sides pudding puddings
    afters sweet sweets dessert nibbles snack snacks canape canapes amuse bouche bites bits platter plate board
    tray traybake sheet pan bake baked roast roasts roasted grill grilled griddled barbecue bbq braai fry fried
    fritters steamed boiled poached braised braise stewed stew smoked cured pickled pickles medley mix mixed
    feast buffet spread smorgasbord selection special surprise delight leftovers picnic surf turf boil bowl bowls
    salad slaw crudites veg veggies vegetables greens leaves roots herbs garnish trimmings accompaniments
    dressing topping filling sauce sauces gravy stuffing dip dips drinks drink cocktail cocktails mocktail punch
    cordial cooler fizz coffee petits fours skewers parcels bundles stack stacks pots pot cups shots toasts hash
    chowder casserole tagine tian timbale mould terrine wraps rolls rounds bakes crisp crisps crunch brittle bark
    mash mashed puree soup broth pie pies tart tarts cake cakes loaf bread breads fool ice ices sorbet cream
    jelly fruit fruits fish meat meats seafood joint bird birds fowl game course courses palate cleanser finger
    sundae float shake smoothie spuds tatties taters roasties wedges fries hasselback hasselbacks neeps snags
    bangers sarnies butties barbie ploughmans brekkie chook sammies tater tots cone cones lace straw straws twist
    twists curl curls shard shards wafer wafers thins knots puffs pops lollies pinwheels nests cushions pillows
    ribbons coins thighs drumsticks wings breast breasts legs shanks ribs fillet fillets chops steaks loin shoulder
    belly cheeks neck rump cutlets escalopes medallions knuckle hock tongue liver kidneys dish dishes meal halves
    slices cubes sticks strips"""
)
# Words of a host's own names, in which nothing foreign can hide where there is no other word.
_OF_A_HOST = listed_words(
    """the a an of my our your his her their for from and at to all by mum mums mom moms dad dads nan nans nana
    nanas gran grans granny grannys grandma grandmas grandpa grandpas grandad auntie aunties aunt aunts uncle
    uncles sister brother family friend friends neighbour kids children guests host house home secret famous
    favourite favorite best ever easy quick simple lazy proper posh classic old new little big first last second
    third midnight midday morning evening night day sunday monday tuesday wednesday thursday friday saturday
    weekend summer winter spring autumn fall christmas easter birthday wedding party holiday harvest garden
    orchard meadow forest woodland beach sea river lake mountain hill island village market farm farmhouse
    country city street corner sun sunset sunrise moon star stars rain snow cloud fire stone gold silver rainbow
    red green blue yellow black white pink hot cold warm cool crazy happy lucky good lovely perfect messy ugly
    pretty rustic dirty naked magic surprise dream heaven angel devil love something everything anything thing
    things number one two three four five"""
)


def is_of_meals(text: str) -> bool:
    """Whether a dish's name says no more than a meal, a shape, a vessel or a way, or is plainly a host's own:
    `supper`, `the big roast`, `midnight garden`."""
    words = frozenset(stems(text))
    return not _OF_MEALS.isdisjoint(words) or (bool(words) and words <= _OF_A_HOST)
