"""Fish and shellfish, and what is made of them."""

from board.facts.allergens import Allergen as A
from board.facts.foods.entry import Entry, group
from board.facts.origins import Origin as From

_FISH = (
    "fish", "white fish", "oily fish", "salmon", "trout", "sea trout", "rainbow trout", "char", "cod", "haddock",
    "hake", "pollock", "coley", "ling", "whiting", "plaice", "~lemon sole", "sole", "dover sole", "turbot", "brill",
    "halibut", "flounder", "sea bass", "bass", "sea bream", "bream", "red mullet", "grey mullet", "gurnard",
    "monkfish", "john dory", "skate", "mackerel", "herring", "sardine", "sprat", "whitebait", "pilchard", "eel",
    "perch", "pike", "carp", "catfish", "tilapia", "snapper", "grouper", "barramundi", "zander", "wolffish", "kipper",
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
    *group("gravlax = gravadlax, lox", A.FISH, From.COLD_SMOKED, perishable=True),
    *group("smoked fish", A.FISH, From.SMOKED_FISH, perishable=True),
)
TUNA = group("tuna, tuna steak, yellowfin tuna, albacore tuna", A.FISH, raw="fish", perishable=True)
MERCURY = group(", ".join(_MERCURY), A.FISH, From.MERCURY_FISH, raw="fish", perishable=True)
IN_TINS = group(
    """tinned tuna = canned tuna, tinned salmon = canned salmon, tinned sardine = canned sardine, anchovy, anchovy
    fillet = tinned anchovy, salted anchovy, bonito flake = katsuobushi, dried fish, salt cod = bacalao,
    stockfish, ~bombay duck""",
    A.FISH,
)  # fmt: skip
PICKLED = group("pickled herring = rollmop, matjes", A.FISH, hidden=(From.COLD_SMOKED,))
ROE = group("caviar, roe, fish roe, salmon roe, trout roe, lumpfish roe, cod roe", A.FISH, perishable=True)
FISH_SAUCES = (
    *group("taramasalata", A.FISH, hidden=(A.WHEAT, A.MILK, A.EGGS), perishable=True, made=True),
    *group("fish sauce, anchovy paste, anchovy essence, garum", A.FISH),
    *group("fish stock = fish fumet", A.FISH, hidden=(A.CELERY, A.CRUSTACEANS, A.MOLLUSCS, A.WHEAT, From.ALCOHOL),
           perishable=True, made=True),
    *group("dashi = dashi powder", A.FISH, hidden=(A.SOY, A.WHEAT), made=True),
    *group("~kombu dashi"),
)  # fmt: skip
CRUSTACEANS = group(
    """crab, brown crab, crabmeat = crab meat, white crab meat, lobster, crayfish = crawfish, shellfish
    stock, lobster tail, krill""",
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
    *group("shrimp paste = belacan, dried shrimp, prawn cracker", A.CRUSTACEANS, made=True, hidden=(A.FISH,)),
    *group("potted shrimp", A.CRUSTACEANS, A.MILK, perishable=True, made=True),
    *group("lobster bisque, crab bisque", A.CRUSTACEANS, A.MILK, From.LACTOSE, made=True, perishable=True,
           hidden=(A.FISH, A.WHEAT, A.CELERY, From.ALCOHOL)),
    *group("crab stick = surimi = seafood stick = fish ball", A.FISH, made=True, perishable=True,
           hidden=(A.CRUSTACEANS, A.EGGS, A.WHEAT, A.SOY, From.INSECT_COLOUR)),
)  # fmt: skip
MOLLUSCS = group(
    """mussel, clam, cockle, oyster, scallop, king scallop, queen scallop, razor clam, whelk, winkle, abalone,
    squid = calamari, cuttlefish, octopus, snail = escargot, squid ink = cuttlefish ink""",
    A.MOLLUSCS, raw="fish", perishable=True,
)  # fmt: skip
MOLLUSC_STORES = (
    *group("oyster sauce", A.MOLLUSCS, hidden=(A.WHEAT, A.SOY), made=True),
    *group("smoked oyster, smoked mussel", A.MOLLUSCS, perishable=True),
    *group("~vegetarian oyster sauce = ~mushroom oyster sauce", hidden=(A.WHEAT, A.SOY), made=True),
)
SEAFOOD = group("seafood, shellfish, mixed seafood", A.CRUSTACEANS, A.MOLLUSCS, A.FISH, raw="fish", perishable=True)
BREADED = group(
    "fish finger = fish stick, fish cake = fishcake", A.FISH, A.WHEAT, made=True, perishable=True,
    hidden=(A.EGGS, A.MILK, From.LACTOSE, A.MUSTARD),
)  # fmt: skip

SEA = (
    *FISH, *SMOKED, *TUNA, *MERCURY, *IN_TINS, *PICKLED, *ROE, *FISH_SAUCES, *CRUSTACEANS, *PRAWNS, *SCAMPI,
    *CRUSTACEAN_STORES, *MOLLUSCS,
    *MOLLUSC_STORES, *SEAFOOD, *BREADED,
)  # fmt: skip
