"""What a food comes from, as far as diets ask, and the kinds of food named in advice to those more easily harmed."""

from enum import Enum

from board.facts.allergens import Allergen


class Origin(Enum):
    """Where a food, or part of it, comes from; its value is the word shown."""

    MEAT = "meat"  # all meat, poultry too
    RED_MEAT = "red meat"  # of mammals
    GAME = "game"
    BEEF = "beef"
    PORK = "pork"
    POULTRY = "poultry"
    FISH = "fish"
    CRUSTACEAN = "crustaceans"
    MOLLUSC = "molluscs"
    DAIRY = "dairy"
    LACTOSE = "lactose"
    EGG = "egg"
    HONEY = "honey"
    GELATINE = "gelatine"
    RENNET = "animal rennet"
    ANIMAL_FAT = "animal fat"
    INSECT_COLOUR = "insect colour"
    FININGS = "animal finings"  # isinglass, egg white or gelatine that cleared a drink
    ALCOHOL = "alcohol"
    GLUTEN = "gluten"
    OATS = "oats"  # not everyone who avoids gluten can eat them
    MOULD_CHEESE = "mould-ripened or blue cheese"
    RAW_MILK = "unpasteurised milk"
    PATE = "pâté"
    LIVER = "liver"
    SMOKED_FISH = "smoked fish"
    MERCURY_FISH = "fish high in mercury"
    COLD_SMOKED = "cold-smoked or raw-cured fish"
    CURED_MEAT = "cured raw meat"
    COLD_CUTS = "ready-to-eat cold meat"
    SPROUTS = "seed sprouts"
    RAW_EGG = "raw or barely cooked egg"
    RAW_FISH = "raw fish or roe"
    RAW_DOUGH = "raw dough"
    VITAMIN_A = "as much vitamin A as liver"


Trait = Allergen | Origin

_FROM_ALLERGEN: dict[Trait, tuple[Origin, ...]] = {
    Allergen.MILK: (Origin.DAIRY,),
    Allergen.EGGS: (Origin.EGG,),
    Allergen.FISH: (Origin.FISH,),
    Allergen.CRUSTACEANS: (Origin.CRUSTACEAN,),
    Allergen.MOLLUSCS: (Origin.MOLLUSC,),
    Allergen.WHEAT: (Origin.GLUTEN,),
    Allergen.RYE: (Origin.GLUTEN,),
    Allergen.BARLEY: (Origin.GLUTEN,),
    Allergen.OATS: (Origin.OATS,),
}
_FROM_ORIGIN: dict[Trait, tuple[Origin, ...]] = {
    Origin.RED_MEAT: (Origin.MEAT,),
    Origin.GAME: (Origin.MEAT,),
    Origin.BEEF: (Origin.MEAT, Origin.RED_MEAT),
    Origin.PORK: (Origin.MEAT, Origin.RED_MEAT),
    Origin.POULTRY: (Origin.MEAT,),
    Origin.LIVER: (Origin.MEAT,),
    Origin.CURED_MEAT: (Origin.MEAT,),
    Origin.SMOKED_FISH: (Origin.FISH,),
    Origin.COLD_SMOKED: (Origin.FISH, Origin.SMOKED_FISH),
    Origin.MERCURY_FISH: (Origin.FISH,),
    Origin.LACTOSE: (Origin.DAIRY,),
}


def with_what_follows(traits: frozenset[Trait]) -> frozenset[Trait]:
    """The traits and those they imply: eggs come from eggs, pork is meat, rye holds gluten."""
    more = {follows for trait in traits for follows in (*_FROM_ALLERGEN.get(trait, ()), *_FROM_ORIGIN.get(trait, ()))}
    return traits | more


# What a vegan avoids; pork, poultry and so on are meat, lactose is dairy.
ANIMAL: frozenset[Origin] = frozenset(
    {
        Origin.MEAT, Origin.FISH, Origin.CRUSTACEAN, Origin.MOLLUSC, Origin.DAIRY, Origin.EGG, Origin.HONEY,
        Origin.GELATINE, Origin.RENNET, Origin.ANIMAL_FAT, Origin.INSECT_COLOUR, Origin.FININGS,
    }
)  # fmt: skip
