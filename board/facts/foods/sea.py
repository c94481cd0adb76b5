"""Fish and shellfish, and what is made of them."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import Entry, group
from board.facts.origins import Origin as From

_FISH = (
    "fish", "white fish", "oily fish", "salmon", "trout", "sea trout", "rainbow trout", "char", "cod", "haddock",
    "hake", "pollock", "coley", "ling", "whiting", "plaice", "~lemon sole", "sole", "dover sole", "turbot",
    "brill", "halibut", "flounder", "sea bass", "bass", "sea bream", "bream", "red mullet", "grey mullet",
    "gurnard", "monkfish", "john dory", "skate", "mackerel", "herring", "sardine", "sprat", "whitebait",
    "pilchard", "eel", "perch", "pike", "carp", "catfish", "basa", "pangasius", "mahi mahi", "wahoo", "amberjack",
    "hamachi", "yellowtail", "kingfish", "sablefish", "black cod", "lingcod", "rockfish", "redfish", "smelt",
    "shad", "sturgeon", "branzino", "dorade", "bonito", "escolar", "butterfish", "pomfret", "rohu", "hilsa",
    "milkfish", "lamprey", "huss", "dogfish", "rock salmon", "saithe", "pollack", "megrim", "dab", "lumpfish",
    "scad", "bluefish", "parrotfish", "trevally", "cobia", "toothfish", "elver", "arctic char", "red snapper",
    "croaker", "~horse mackerel", "~rabbit fish", "~goosefish", "~goatfish", "~pigfish", "~wolf fish", "~cat fish",
    "~dog fish", "~milk fish", "~butter fish", "garfish", "burbot", "tench", "fish fillet", "kippered herring",
    "tilapia", "snapper", "grouper",
    "barramundi", "zander", "wolffish", "kipper",
)  # fmt: skip
# High in mercury: FDA/EPA advice about eating fish, and NHS foods to avoid in pregnancy, from memory.
_MERCURY = ("swordfish", "shark", "marlin", "king mackerel", "tilefish", "orange roughy", "bigeye tuna")


def _smoked(fish: str) -> tuple[Entry, ...]:
    bare = fish.lstrip("~")
    return (
        *group(f"smoked {bare} = hot smoked {bare}", A.FISH, From.SMOKED_FISH, perishable=True),
        *group(f"cold smoked {bare} = cured {bare}", A.FISH, From.COLD_SMOKED, perishable=True),
    )


FISH = group(", ".join(_FISH), A.FISH, raw="fish", perishable=True)
SMOKED = (
    *(entry for fish in (*_FISH, "tuna") for entry in _smoked(fish)),
    *group(
        "gravlax = gravadlax = gravad lax = gravlaks, lox, bloater, finnan haddie = finnan haddock",
        A.FISH,
        From.COLD_SMOKED,
        perishable=True,
    ),
    *group("smoked fish, arbroath smokie, buckling", A.FISH, From.SMOKED_FISH, perishable=True),
)
TUNA = group("tuna, tuna steak, yellowfin tuna, albacore tuna", A.FISH, raw="fish", perishable=True)
MERCURY = group(", ".join(_MERCURY), A.FISH, From.MERCURY_FISH, raw="fish", perishable=True)
IN_TINS = group(
    """tinned tuna = canned tuna, tinned salmon = canned salmon, tinned sardine = canned sardine, anchovy, anchovy
    fillet = tinned anchovy, salted anchovy, bonito flake = katsuobushi, dried fish,
    salt cod = bacalao = bacalhau = baccala,
    sild, brisling, ikan bilis = dried anchovy = niboshi, lutefisk, surstromming,
    fish bone = fish head, fish oil, stockfish, ~bombay duck""",
    A.FISH,
)  # fmt: skip
# Nothing but vinegar or salt ever cooked them.
CURED = group("boqueron = boquerones = white anchovy = marinated anchovy", A.FISH, From.COLD_SMOKED, perishable=True)
FISH_LIVER = group("cod liver oil = fish liver oil = halibut liver oil, cod liver = fish liver", A.FISH, From.VITAMIN_A)
PICKLED = group("pickled herring = rollmop, matjes", A.FISH, hidden=(From.COLD_SMOKED,))
ROE = group(
    """caviar, roe = fish egg, fish roe, salmon roe = ikura, trout roe, lumpfish roe, cod roe = tarako =
    mentaiko, tobiko = masago, bottarga = mullet roe, herring roe, flying fish roe, ~salmon caviar""",
    A.FISH,
    perishable=True,
    hidden=(From.RAW_FISH,),
)
FISH_SAUCES = (
    *group("taramasalata", A.FISH, hidden=(A.WHEAT, A.MILK, A.EGGS, From.RAW_FISH), perishable=True, made=True),
    *group(
        """fish sauce = nam pla = nuoc mam = patis, anchovy paste, anchovy essence, garum, colatura = colatura di
        alici""",
           A.FISH),
    *group(
        """bagna cauda, anchoiade, fish paste, fish ball, gefilte fish, fish soup, ~fish tofu, tuna melt""",
        A.FISH, perishable=True, made=True,
           hidden=(A.EGGS, A.MILK, A.WHEAT, A.SOY, A.CRUSTACEANS, A.MUSTARD)),
    *group("poke = poke bowl, ceviche = cebiche, sashimi, tiradito, aguachile, kinilaw, fish tartare = tuna tartare = "
           "salmon tartare, fish carpaccio = tuna carpaccio = salmon carpaccio, fish crudo = tuna crudo, tuna tataki",
           A.FISH, raw="fish", perishable=True, made=True,
           hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.SOY, A.WHEAT, A.SESAME, A.EGGS, A.MUSTARD, A.MILK)),
    *group("salmon mousse = fish mousse = trout mousse", A.FISH, A.MILK, From.LACTOSE, perishable=True, made=True,
           hidden=(A.EGGS, A.WHEAT, A.MUSTARD, From.GELATINE, From.SMOKED_FISH, From.RAW_EGG)),
    *group("nuoc cham, anchovy relish", A.FISH, hidden=(A.MILK,), made=True),
    *group("worcestershire sauce = worcester sauce = worcestershire", A.FISH, made=True,
           hidden=(A.BARLEY, A.WHEAT, A.SOY, A.SULPHITES, A.CELERY, A.MUSTARD)),
    *group("~vegan worcestershire sauce = ~vegetarian worcestershire sauce", made=True,
           hidden=(A.BARLEY, A.WHEAT, A.SOY, A.SULPHITES)),
    *group("bloody mary mix = bloody mary", hidden=(A.FISH, A.CELERY, A.BARLEY, A.MUSTARD), made=True),
    *group("fish stock = fish fumet", A.FISH, hidden=(A.CELERY, A.CRUSTACEANS, A.MOLLUSCS, A.WHEAT, From.ALCOHOL),
           perishable=True, made=True),
    *group("dashi = dashi powder", A.FISH, hidden=(A.SOY, A.WHEAT), made=True),
    *group("~kombu dashi"),
)  # fmt: skip
CRUSTACEANS = group(
    """gamba = gambas, soft shell crab = spider crab = snow crab = king crab = dungeness crab, crab claw, spiny
    lobster = rock lobster, yabby, mantis shrimp, barnacle = percebes, crayfish tail, crab, brown crab, crabmeat
    = crab meat, white crab meat, lobster, crayfish = crawfish, lobster tail, krill""",
    A.CRUSTACEANS, raw="fish", perishable=True,
)  # fmt: skip
# Raw prawns are often dipped in sulphites, so that they do not blacken.
PRAWNS = group(
    """prawn = shrimp, king prawn = jumbo shrimp, tiger prawn, brown shrimp, langoustine = dublin bay prawn""",
    A.CRUSTACEANS, raw="fish", perishable=True, hidden=(A.SULPHITES,),
)  # fmt: skip
SCAMPI = group(  # often in breadcrumbs
    "scampi", A.CRUSTACEANS, raw="fish", perishable=True,
    hidden=(A.SULPHITES, A.WHEAT, A.EGGS, A.MILK), made=True,
)  # fmt: skip
CRUSTACEAN_STORES = (
    *group("prawn toast = shrimp toast", A.CRUSTACEANS, A.WHEAT, A.SESAME, hidden=(A.EGGS, A.SOY, A.FISH),
           perishable=True, made=True),
    *group(
        """shrimp paste = belacan = blachan = terasi = kapi = bagoong, dried shrimp, prawn cracker""",
        A.CRUSTACEANS, made=True, hidden=(A.FISH,)),
    *group("xo sauce", A.CRUSTACEANS, A.MOLLUSCS, hidden=(A.FISH, A.SOY, A.WHEAT, From.PORK), made=True),
    *group("prawn stock = shrimp stock, lobster stock, crab stock", A.CRUSTACEANS, perishable=True, made=True,
           hidden=(A.MOLLUSCS, A.FISH, A.CELERY, A.WHEAT, From.ALCOHOL)),
    *group("shellfish stock = seafood stock", A.CRUSTACEANS, A.MOLLUSCS, A.FISH, perishable=True, made=True,
           hidden=(A.CELERY, A.WHEAT, From.ALCOHOL)),
    *group("seafood bisque = shellfish bisque", A.CRUSTACEANS, A.MOLLUSCS, A.FISH, A.MILK, From.LACTOSE, made=True,
           perishable=True, hidden=(A.WHEAT, A.CELERY, From.ALCOHOL)),
    *group("bisque = prawn bisque", A.CRUSTACEANS, A.MILK, From.LACTOSE, made=True,
           perishable=True, hidden=(A.FISH, A.WHEAT, A.CELERY, A.MOLLUSCS, From.ALCOHOL)),
    *group("prawn cocktail = shrimp cocktail = crab cocktail = lobster cocktail", A.CRUSTACEANS, A.EGGS,
           hidden=(A.FISH, A.MUSTARD, A.MILK, A.CELERY), perishable=True,
           made=True),
    *group("potted shrimp", A.CRUSTACEANS, A.MILK, perishable=True, made=True),
    *group("lobster bisque, crab bisque", A.CRUSTACEANS, A.MILK, From.LACTOSE, made=True, perishable=True,
           hidden=(A.FISH, A.WHEAT, A.CELERY, From.ALCOHOL)),
    *group(
        """crab stick = surimi = seafood stick = ocean stick = kani = kanikama = imitation crab""",
        A.FISH, made=True, perishable=True,
           hidden=(A.CRUSTACEANS, A.MOLLUSCS, A.EGGS, A.WHEAT, A.SOY, From.INSECT_COLOUR)),
)  # fmt: skip
MOLLUSCS = group(
    """mussel, clam, cockle, oyster, scallop, king scallop, queen scallop, razor clam, whelk, winkle, abalone,
    vongole = palourde, coquille = coquille saint jacques, moule, conch, limpet, geoduck, sea snail, pulpo = polpo,
    sepia,
    whelk, periwinkle, paua, squid = calamari, cuttlefish, octopus, snail = escargot = burgundy snail, squid ink =
    cuttlefish ink""",
    A.MOLLUSCS, raw="fish", perishable=True,
)  # fmt: skip
MOLLUSC_STORES = (
    *group("oyster sauce", A.MOLLUSCS, hidden=(A.WHEAT, A.SOY), made=True),
    *group(
        "clam juice, clam chowder",
        A.MOLLUSCS,
        hidden=(A.MILK, A.WHEAT, A.CELERY, A.FISH, From.PORK),
        made=True,
        perishable=True,
    ),
    *group(
        "calamari ring = squid ring = salt and pepper squid",
        A.MOLLUSCS,
        hidden=(A.WHEAT, A.EGGS, A.MILK),
        made=True,
        perishable=True,
    ),
    *group(
        "sea urchin = uni, sea cucumber, jellyfish",
        From.FISH,
        hidden=(A.FISH, A.CRUSTACEANS, A.MOLLUSCS),
        raw="fish",
        perishable=True,
    ),
    *group("smoked oyster, smoked mussel", A.MOLLUSCS, perishable=True),
    *group("~vegetarian oyster sauce = ~mushroom oyster sauce", hidden=(A.WHEAT, A.SOY), made=True),
)
SEAFOOD = group(
    "seafood, shellfish, mixed seafood = seafood mix = seafood medley = frutti di mare = fruits de mer = marinara mix",
    A.CRUSTACEANS,
    A.MOLLUSCS,
    A.FISH,
    raw="fish",
    perishable=True,
)
BREADED = group(
    "fish finger = fish stick, fish cake = fishcake", A.FISH, A.WHEAT, made=True, perishable=True,
    hidden=(A.EGGS, A.MILK, From.LACTOSE, A.MUSTARD),
)  # fmt: skip

SEA = (
    *FISH, *SMOKED, *TUNA, *MERCURY, *IN_TINS, *CURED, *FISH_LIVER, *PICKLED, *ROE, *FISH_SAUCES, *CRUSTACEANS,
    *PRAWNS, *SCAMPI,
    *CRUSTACEAN_STORES, *MOLLUSCS,
    *MOLLUSC_STORES, *SEAFOOD, *BREADED,
)  # fmt: skip
