"""Words of a food's name as compared: lower case, no accents, singular; and words that add nothing. Pure."""

import functools
import re
import unicodedata

_NOT_WORDS = re.compile(r"[^a-z0-9]+")
_ENDINGS = (
    (re.compile(r"(?:ies|ie|ey|eys)$"), "y"),
    (re.compile(r"(?:oes|oe)$"), "o"),
    (re.compile(r"(?<=[cs]h)(?:es|e)$|(?<=[sxz])(?:es|e)$"), ""),
    (re.compile(r"(?:ves|ve)$"), "f"),
    (re.compile(r"(?<!s)s$"), ""),
)


@functools.lru_cache(maxsize=8192)
def stem(word: str) -> str:
    """One key for singular and plural; it need not be a real word. `leaf` and `leaves`, `cherry` and `cherries`,
    `tomato` and `tomatoes` come out alike. Idempotent in effect."""
    if len(word) < 3:
        return word
    for ending, instead in _ENDINGS:
        if ending.search(word):
            return ending.sub(instead, word)
    return word


@functools.lru_cache(maxsize=8192)
def stems(text: str) -> tuple[str, ...]:
    """The stems of a text's words. Apostrophes join; other signs split: `goat's cheese` is `goat`, `cheese`."""
    return tuple(stem(word) for word in words_of(text))


def words_of(text: str) -> tuple[str, ...]:
    """A text's words as `stems` takes them, before their endings go."""
    joined = re.sub(r"['\N{RIGHT SINGLE QUOTATION MARK}`]", "", folded(text))
    return tuple(word for word in _NOT_WORDS.split(joined) if word)


def folded(text: str) -> str:
    """Lower case, no accents, one space between words. Idempotent."""
    letters = text.casefold()
    if not letters.isascii():
        letters = unicodedata.normalize("NFKD", letters.replace("œ", "oe").replace("æ", "ae").replace("ø", "o"))
        letters = "".join(sign for sign in letters if not unicodedata.combining(sign))
    return " ".join(letters.split())


def holds(words: tuple[str, ...], phrase: tuple[str, ...]) -> bool:
    """Whether the words contain the phrase, in one run."""
    return bool(phrase) and any(words[n : n + len(phrase)] == phrase for n in range(len(words) - len(phrase) + 1))


def foreign(text: str) -> bool:
    """Whether it has letters of another script, which `stems` would skip."""
    if text.isascii():
        return False
    return any(sign.isalpha() and not _NOT_WORDS.sub("", unicodedata.normalize("NFKD", sign)) for sign in
               text.casefold().replace("œ", "o").replace("æ", "a").replace("ø", "o"))  # fmt: skip


def listed_words(text: str) -> frozenset[str]:
    """The stems of the words of a list."""
    return frozenset(word for piece in text.split() for word in stems(piece))


# Words that say nothing of what is in a food: how much, how big, how cut, how kept, how ripe, where from. `vegan`,
# `-free`, `filled`, `flavoured`, `marinated` and the like are not among them: they make another food, which is asked
# about unless listed.
_SAID_OF_IT = listed_words(
    """a an the of some few brine kept back charlotte nicola desiree estima bintje russet braeburn bramley cox gala
    conference comice about around approx approximately roughly circa ca c and extra very more less least most
    half halved halves whole quarter quartered quarters third thirds one two three four five six seven eight nine
    ten eleven twelve fifteen twenty thirty forty fifty hundred dozen couple pair several many plenty each every per
    apiece enough generous scant heaped heaping level rounded loosely tightly firmly packed little lot good fresh
    freshly frozen defrosted thawed chilled cold warm lukewarm tepid hot raw room temperature fridge freezer
    uncooked leftover stale day days old new large largish medium small smallish big baby mini miniature tiny jumbo
    giant king thick thickish thin thinnest fat thickest long short round square oval flat even equal same size
    sized bite bitesize bitesized biteable hand fist thumb thumbs finger palm heavy light lean fatty tender ripe
    unripe overripe underripe firm soft hard juicy floury waxy mealy crisp crispy crusty flaky fine superfine coarse
    chunky smooth silky runny set dry moist wet sour sweet bitter mild milder strong stronger spicy fiery mature
    extra-mature vintage aged ripened young plain pure proper real better best quality finest choice favourite
    favorite organic biodynamic wild farmed local locally imported seasonal heritage heirloom sustainable
    sustainably line rope pole caught dived unsalted salted reduced low lower high full semi skimmed sodium salt
    sugar added unsweetened sweetened unwaxed waxed scrubbed peeled unpeeled topped tailed skinless skinned skin
    boneless boned bone bones pin tunnel rindless crustless seedless stemmed stalkless hulled on off in out up down
    side sides under over away aside bleached unbleached fortified raised ready prepared prepped preparation made
    home homemade bought shop store supermarket rolled pressed red green yellow white black brown pink purple golden
    gold dark pale orange blonde rainbow mixed assorted various different kinds kind sort type types variety
    varieties colour colours color colors chopped sliced diced minced grated shredded crushed torn cut cubed pitted
    stoned destoned seeded deseeded unseeded cored shelled unshelled podded husked trimmed untrimmed washed unwashed
    rinsed drained undrained soaked squeezed picked cleaned gutted scaled filleted butterflied spatchcocked jointed
    deboned pinboned trussed tied scored pricked slashed bruised bashed smashed flattened pounded beaten ground
    milled cracked flaked rubbed powdered granulated crumbled broken snapped snipped separated split segmented
    shaved pared julienned julienne chiffonade brunoise mandolined spiralised ribboned sprigged stripped plucked
    deveined debearded bearded shucked unshucked hung folded unrolled spread scooped toasted untoasted roasted roast
    roasting baking stewing braising braised frying finely coarsely thinly thickly lightly well fairly really quite
    nicely neatly gently softly generously evenly diagonally lengthwise lengthways crosswise widthways widthwise
    halfway together apart individually separately completely thoroughly properly slightly carefully quickly briefly
    overnight beforehand ahead before after just still already almost until then when once while also only either
    both or another other rest melted softened softening whipped whisked unwhipped stirred sifted unsifted strained
    smoked dried sun-dried candied crystallised crystallized glace grilled chargrilled barbecued baked steamed
    blanched charred caramelised caramelized sauteed sweated browned seared wilted simmered scalded warmed cooled
    heated reheated tinned canned bottled jarred tin tins can cans canister jar bottle pack packet package bag
    sachet pouch tub pot carton tetra punnet block bar tray box crate basket bucket sleeve case vacuum sealed loose
    pre packs bunch sprig handful pinch piece pieces portion portions serving servings person people head guest
    guests plate bowl bowlful cup cupful cups mug glass glassful glasses spoon spoonful spoonfuls tablespoon
    teaspoon tbsp tsp tbs dessertspoon dsp wineglass teacup ladle ladleful scoop shot measure measures dl cl ml l
    litre liter litres liters g gr gm gram grams kg kilo kilos kilogram kilograms mg oz ounce ounces lb lbs pound
    pounds pint pints quart quarts gallon fl fluid cm mm m inch inches centimetre centimeter millimetre degrees f
    min mins minute minutes hour hours hr hrs week weeks x no glug glugs slug slosh drizzle dollop dollops knob
    knobs lug nugget smidgen touch hint dusting grating gratings grinding grind grinds twist twists turn turns shake
    shakes squirt squeeze trickle scrape scraping blob slice slices sliver slivers fillet filet filets loin shoulder
    leg breast thigh wing drumstick belly rump neck shin shank cheek rib rack saddle haunch crown carcass frame cage
    supreme supremes cutlet chop rasher steak joint escalope escallop medallion medallions tail claw knuckle
    paillard noisette noisettes tenderloin hindquarter forequarter fore hind trimmings offcuts scraps bits lump
    lumps cap caps strip strips ribbon ribbons cube cubes chunk chunks wedge wedges ring rings rounds segment
    segments disc discs coin coins dice batons baton matchstick matchsticks lozenge lozenges shavings crescents
    moons triangle triangles rectangle rectangles fingers soldiers stick stalk stalks stem stems leaf leafy leaves
    frond fronds floret florets heads heart hearts bulb bulbs clove tip tips top tops root roots needles flower
    flowers blossom sheet sheets ball balls log wheel loaf loaves slab hunk spear spears ear ears cob pod pods bud
    buds zest zested juiced peel rind pith pulp flesh core stone stones pit pits seed seeds skins shell shells fins
    scales guts sinew gristle membrane puree pureed powder flake flakes granule granules shaving shred shreds husk
    husks thread threads strand strands pearl pearls nib nibs string splash drop drops dash water boiling boiled
    brine its own juice juices liquid liquor reserved reserve discarded discard remaining removed remove intact
    attached uncut unbroken left sea table cooking drinking everyday standard regular ordinary normal usual basic
    classic traditional artisan handmade farmhouse country style rustic premium luxury fancy special spring summer
    autumn winter season early late italian french spanish greek english irish scottish welsh british portuguese
    belgian austrian hungarian norwegian swedish icelandic nordic dutch german american canadian mexican asian
    japanese chinese korean thai vietnamese indian turkish lebanese moroccan persian iranian egyptian sicilian
    tuscan cypriot swiss danish polish russian european middle eastern north south east west atlantic pacific
    mediterranean sardinian provencal breton normandy alpine"""
)
# What it is for, or how it comes to the table; what the cook may do with it.
_SAID_OF_ITS_USE = listed_words(
    """to for as with without at by from into onto through if is are be was it them this that these those you your we i
    they theirs which like likes liked wish desired prefer preferred preferably needed necessary required available
    possible taste tasting serve serving served garnish garnishing decorate decorating decoration finish finishing
    scatter scattering scattered sprinkle sprinkling sprinkled dust dusted drizzling drizzled greasing grease
    greased oiling brush brushing glaze glazing line lining lined rolling roll coat coating dip dipping dunking
    mopping spread spreading fry frying deep shallow sear searing roast bake boil boiling simmer simmering poach
    poaching steam steaming grill grilling stir stirring whip whipping cook cooking eat eating drink drinking top
    topping fill filling season seasoning seasoned stuff knead kneading thicken thickening sweeten sweetening
    flavour flavouring soak soaking cover covering wrap wrapping accompany accompanying alongside beside extra
    optional optionally about see note notes below above recipe method overleaf page step intro introduction tip
    tips part parts first second last next previous later earlier butcher butchers fishmonger fishmongers
    greengrocer grocer baker bakers deli delicatessen counter market farm garden gardens windowsill allotment larder
    pantry cupboard cellar bakery shop specialist online aisle chiller presentation table guests everyone everybody
    children adults pan frying-pan tin mould molds mold moulds dish ramekins ramekin tray trays plate platter bowl
    bowls board griddle barbecue oven hob blender processor food mixer mill mortar pestle sieve muslin cheesecloth
    mandoline mandolin grater peeler knife scissors fork skewers skewer string twine kitchen paper towel towels foil
    cling film parchment greaseproof work surface worktop hands hand machine cutter pin marinating assembly ice-cold
    icy cool room temperature body pat patted dry dried drained shaken wiped rinsed kept keep keeping stored hold
    set aside left standing rested resting rest ask asked get got have had done doing use used using made make
    making go goes going need needs take taken bring brought come comes leave leaving add adding added allow give
    given put test tested save saved weigh weighed weight weighing measured total net gross cleaned prepared yield
    yields roughly equivalent depending according size appetite number but not nor neither all scraped pulled
    portioned clean double strung jacket jackets angle criss cross crisscross slow rare breed breeds sq single
    triple another lots bits rough broken barely nearly almost just only even still yet too overly very slight
    slightly natural naturally grain grained fed grass outdoor reared pasture pastured heather hung necked stringed
    shop-bought lean untreated unsprayed unrefined refined virgin light mellow fruity peppery robust delicate
    fragrant aromatic zingy tangy sharp crumbly creamy-free stretched slit split opened butterfly jointed sectioned
    chunked hacked lopped snip snapped shell-on head-on heads-on tail-on bone-in rind-on fat-on crackling-on
    frenched chined larger smaller bigger thicker thinner cocktail sticks wooden metal non reactive wide narrow high
    sided loose bottomed fluted cloves picked tops-on bashed bruised lightly-crushed coarsely-ground crack cracking
    grinding stew braising-cut baking-variety salad-variety mashing roasting chipping whichever whatever either buy
    find can could may might should will would must please wedged pressed blotted kneaded proved proven risen
    knocked defatted degreased defrost thaw freeze chill refrigerate refrigerated uncovered lidded tier layer layers
    piled mound mounds nest nests crosshatch crosshatched hatched barrel turned chateau paysanne macedoine concasse
    batonnet sweat seal sealed crisped blistered blackened burnt scorched smoking approx around close near seed-in
    seeded nuggets chunky shape shaped form formed figure heart-shaped star stars crown gem little heads hearts
    weekend saturday sunday morning overnight-soak instead also plus hungry each-way tie tying truss trussing spike
    leafy stalky woody-ends blossoms pre-cooked precooked parboiled parcooked part-cooked par boiled-first
    peeled-and-veined unbrined dry-aged wet aged days matured vine cob old-fashioned fresher freshest ripest
    best-before label check checked read reading suitable unpitted undyed dyed skin-side flesh-side fat-side
    cut-side fingertip fingertips thumbnail fingernail pencil pinkie golf tennis ping pong marble equally spaced
    apart across altogether between cartilage vein veins dehydrated diameter diluted divided drumette drummette
    envelope floweret hefty julienned kettle longest minimum maximum moistened multiple oakleaf ovenproof package
    packages preshredded purified skillet slender straight strength tentacles toothpick toothpicks transparent
    unpacked unskinned unsliced unwrapped wingtip wingtips glutinous scaloppine scaloppini escalopes flakiest cores
    stalks kernel kernels moisture unprepared immature mature blade petite prime select grade grades unblanched
    unroasted enriched unenriched striped eye arm cornish wagyu shelf stable undiluted concentrated nfs retail
    common mixed solids griddled thickness run runs running clear clearly catch bases eighth eighths loosened loosen
    thinned slackened consistency depth stage sturdy firmed because since though although so there here where how
    whether unless such rather much any none everything anything nothing again twice trim trims crushes tears rinses
    drains washes scrubs wipes separates beats whisks melts softens heats chopping slicing dicing mincing crushing
    tearing squeezing pitting stoning coring rinsing draining washing scrubbing wiping separating beating whisking
    melting toasting warming chilling freezing defrosting thawing heating cooling zesting juicing scoring slash
    slashes incision incisions hole holes pierce pierced prick docked undamaged unblemished blemished blemishes
    bruises spots dirt sand sandy soil swivel microplane ruler measuring jugful tap filtered bath basin sink
    colander strainer cloth napkin tissue lid covered tent tented airtight container separate batches batch stages
    mid point fifth fifths sixth sixths sixteenth semicircles disks slant width length height swirl swirls fistful
    armful bundle cluster clusters spray sprays braid plait mouthful mouthfuls thumbprint dominoes postage stamp
    pliant supple crunchy chewy plump fleshy meaty starchy watery velvety grainy gritty forced earthed blanching
    blanch refresh plunge plunged dunked charring blister reduce reducing cleanly slantwise newest youngest oldest
    firmest smallest largest biggest brand brands branded sold labelled marked seasonally prewashed preboiled
    ambient long-life assemble assembling untied pick picks removing discarding reserving saving skinning boning
    filleting gutting scaling shelling shucking podding hulling topping-and-tailing feet feathers gills bloodline
    silverskin tendons glands outermost innermost limp yellowing discoloured tatty ragged hairy fuzzy choke beard
    beards sac sacs flatten bash rub massage press pressing wrung stood stand sit sat came homegrown clarity
    straining skimming packing unit units item items combination assortment selection shades preferable omit omitted
    skip adjust heat tolerance liking additional remainder balance divide dividing require instructions follows
    following free-range circle circles circular heavily briskly vigorously sparingly liberally skimpy goodly decent
    modest ample mostly partly fully entirely totally wholly simultaneously starting beginning ending fold folding
    light-coloured deep-coloured coloured colored strong-flavoured mild-flavoured skin-contact shade plaited braided
    coiled spiral spirals spiralled curls curl curled spoonable spreadable pourable scoopable pickling preserving
    muddy dusty wrapper wrappers bubbling foaming sizzling fizzing bloomed bloom sponged dissolve dissolving
    unripened syrupy balled baller dot dots dotted wide-mouthed meantime meanwhile cleaning sharpened tablespoonfuls
    teaspoonfuls al ajillo halal kosher bias diagonal tenderised tenderized amount amounts grate zested herby jar
    pair pairs golden browned colour crispy until tender translucent pliable smooth pale foamy frothy fluffy stiff
    peaks soft thick thickened combined dissolved dente cooked hot sticky bleu blue well skewered threaded speared
    stacked layered arranged laid rolled tied wrapped bundled folded tucked blitzed blended pulsed processed
    pulverised pulverized liquidised sieved passed mashed riced crushed squashed rubbed massaged salted peppered
    sugared unseasoned degorged purged rehydrated reconstituted activated refreshed shocked iced skimmed clarified
    deglazed decanted unopened uncorked aired facing upwards downwards inwards outer inner outside inside end ends
    edge edges middle centre center central bottom woody tough fibrous straggly stringy damaged coarse outer-leaves
    excess visible ideally eg ie etc minus times equals eaters sitting buffet picnic kids lunch supper dinner
    breakfast brunch evening day night monday tuesday wednesday thursday friday tomorrow today before ahead advance
    open moment moments stripe stripes stripy damp hollow hollowed hollowing slipped slip thrown throw nipped nip
    twisted supremed steadied spun flipped inverted invert lifted lift tipped poured pour emptied levelled tightened
    secured fastened clipped pegged weighted pinned stapled shredding petals petal sepals calyx hull hulls silk
    silks tassels knock tapped banged struck hit hammered tugged teased prised levered eased coaxed sorted graded
    chosen selected matched cubing chunking wedging halving quartering julienning firm-fleshed white-fleshed
    floury-fleshed months month year years steeping steep infuse infusing macerate macerating throwaway waste
    compost bin underside tuft tufts curved bent crooked smeared smear painted paint dabbed dolloped misted mist
    sprayed spritz spritzed wetted cleft creased crimped crimp pinched pleated singed singe torched torch flamed
    charcoal airy lumpy scrunched crumpled bruising clingfilm nestled nestle tuck slotted slot inserted insert
    trickled spooned ladled dropped beak quill quills antennae mantle ink-sac dewatered shears secateurs cleaver
    razor rubber gloves gloved wear care careful beware readied prior previously ovenready quick fast within
    heatproof sixty sheen shine glossy gloss matt blitz whizz whizzed liquidise my our his her grandmothers mother
    grandma neighbour neighbours cheap cheapest expensive soft-leaved spare yesterday yesterdays doubled drawn
    dressed-weight opaque rosy blushing flushed freckled speckled mottled spotted knobbly gnarled tight tighter
    looser perky crisping weep weeping sweating cylinder cylinders cone cones dome domes lattice diamond diamonds
    tongs spatula grid wire trivet mouth-sized uneven irregular random bashing smash smashing stemming stripping
    plucking shelving layering fit fitting aligned parallel perpendicular frost freezer-burn sell nice lovely
    delicious mood weather whenever wherever snap snapping briny crossed lazily hastily sparsely delicately artfully
    patiently attractively decoratively lengthily irregularly rustically randomly casually haphazardly uniformly
    regularly closely widely deeply shallowly steeply moderately crudely simply vertically horizontally obliquely
    squarely fatly plumply sharply smartly swiftly speedily instantly immediately eventually finally lastly firstly
    initially originally normally usually typically generally possibly probably surely certainly truly merely shoot
    shoots fanned fan flame flames wishbone acidulated changes change splayed trestled knuckled frayed crossways
    sideways upright lying"""
)
NUMBER = re.compile(r"\d+(?:st|nd|rd|th|x|mm|cm|m|in|g|kg|ml|cl|dl|l|oz|lb|min|h|hr|c|f|pc|pcs)?$")
# Neutral only where `with`, `in` or the like says what comes next: `dates stuffed with almonds`, not `stuffed dates`.
OPEN = listed_words(
    """stuffed filled topped coated dressed glazed wrapped marinated poached mixed tossed brushed covered layered
    flavoured flavored infused enriched laced studded dusted sprinkled finished cured pickled steeped macerated
    soaked rolled dipped drenched dotted spread smothered sweetened thickened served braised simmered stewed cooked
    baked fried roasted preserved packed set bound blended whisked beaten creamed mashed mounted scented spiked
    accompanied garnished decorated sandwiched seasoned"""
)
# Neutral only after the food: `2 onions, fried`, but fried onions as they are bought are another food.
AFTER = listed_words(
    "fried slaked deep-fried pan-fried stir-fried shallow-fried dressed spiced steeped fermented glazed carved"
)
# Neutral only where they are what the food is for: `butter for the sauce`, but not `chicken in sauce`.
ITS_PURPOSE = listed_words(
    """paste marinade rub sauce salad glaze topping base crust filling dough mixture mix mash broth syrup dressing
    stuffing batter coating garnish icing frosting layer crumble pie tart cake soup stew curry roast gravy puree
    relish salsa pudding cream custard meringue biscuit sponge pastry bread fish meat vegetables fruit starter
    dessert pickle brine cure barbecue dip casserole cheesecake trifle risotto gratin flan pizza burger sandwich
    noodle rice pasta brulee mousse jelly jam compote confit fritter dumpling pancake waffle scone muffin brownie
    cookie pesto hummus bake"""
)
NEUTRAL = (_SAID_OF_IT | _SAID_OF_ITS_USE) - ITS_PURPOSE
# A part of a food or a shape, where the clause says what is done with it: `seeds removed`, `cut into steaks`.
PARTS = listed_words(
    """crust base seed leaf root bone rib heart stick chip crisp roll ring wrap steak burger patty ball juice toast
    finger"""
)
HANDLED = listed_words(
    """cut sliced chopped broken torn shaped formed rolled divided removed discarded reserved saved picked trimmed
    scraped scooped separated separate left kept fried shredded roasted baked grilled pounded until only off out
    into intact cracked cleaned washed"""
)
LINKS = listed_words(
    "with in and or plus on over under from into onto around using containing inc including by at like"
)
PURPOSE = listed_words("for to as")
DRIED = listed_words("dried candied crystallised glace")
# Words that say it is already cooked or ready to eat.
COOKED = listed_words(
    "cooked boiled poached tinned canned jarred bottled baked steamed grilled pasteurised pasteurized"
)
# Said by the host after the food: `9 eggs, baked through`.
COOKED_THROUGH = tuple(
    stems(words)
    for words in (
        "hard boiled",
        "baked through",
        "cooked through",
        "well done",
        "boiled hard",
        "pasteurised",
        "pasteurized",
    )
)
