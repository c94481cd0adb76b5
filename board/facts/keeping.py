"""How long what a step has made keeps, for its quality: hot, in room, fridge and freezer, and out of it. Pure.

Common practice, no source, unless a line names one; the lower end of what cooks say. Nothing here says that food is
safe: the rule sets' limits go first, and the label and the food itself before any figure.

A line is found by a step's words, the one named first of them (`slice the bread for the soup` is bread), else by the
head of its dish's name, the one named last (`Chicken pie with peas` is a pie). British and American words.
"""

import functools
import re
from collections.abc import Sequence
from dataclasses import dataclass

from board.facts.foods.plants import CELERY, FRUIT, MIXED, MIXED_FRUIT, MUSHROOMS, VEGETABLES
from board.facts.mentions import mentioned
from board.facts.phrases import folded

PRACTICE = "common practice, no source"
FSIS_FREEZER = (
    "USDA FSIS, freezing and food safety: frozen food stays safe, and its quality is what passes; from memory"
)

SOUPS = f"{PRACTICE}; FoodSafety.gov, cold food storage chart, gives soups and stews 3 to 4 days"
STUFFED = "USDA FSIS, stuffing: a bird is stuffed just before it is roasted; from memory"
EGGS = f"{PRACTICE}; FoodSafety.gov, cold food storage chart, gives hard-cooked eggs 1 week"

_H, _D = 60, 24 * 60
FREEZER_MINUTES = 7 * _D  # food of no known kind, for its quality; ours
SOFT_MINUTES = 10  # an ice of no known kind, out of the freezer; ours
HOT_MINUTES = 20  # hot food of no known kind, on its way to the table; ours, of the usual 20 to 30
HOT_AT_MOST = 30  # covered, and no longer as it should be; common practice, no source
AT_ONCE_MINUTES = 60  # what keeps no longer than this, wherever it stands, is eaten soon after it is made; ours
AT_ONCE_HOT_MINUTES = 15  # nor does hot food that is at its best so shortly, though it could be chilled; ours
PLATED_MINUTES = 15  # hot food that is carved or on its plates; common practice, no source
STAYS_SOFT_MINUTES = 5  # what has had its time to soften, and is served at once; ours
IN_FRIDGE_MINUTES = _D  # food of no known kind that a step left in the fridge; ours
BACK_IN_FRIDGE_MINUTES = 4 * _H  # and that was then turned out, cut, dressed or put together; ours


@dataclass(frozen=True, slots=True)
class Keeps:
    """Minutes; None: nothing usual is known. `hot`: off the heat until it is served, at its best; `room`; `fridge`;
    `freezer`; `soft`: out of the freezer until it is too soft. `out`: it stays on the worktop wherever it came from, so
    long. `quick`: `hot` holds on the way into another pan, too. `raw`: it is of what is not cooked yet."""

    name: str
    hot: int | None = None
    room: int | None = None
    fridge: int | None = None
    freezer: int | None = None
    soft: int | None = None
    out: int | None = None
    quick: bool = False
    raw: bool = False
    source: str = PRACTICE


_SALAD = r"salads?|(?:cole)?slaws?|tabb?oul[ei]h?"
_STURDY = (
    rf"(?:potato|pasta|rice|grain|bean|lentil|chickpea|farro|barley|bulgh?ur|couscous|quinoa|egg|tuna|chicken|beet"
    rf"(?:root)?|waldorf|russian|carrot|cabbage|root|lentils|beans) (?:\w+ ){{0,3}}(?:{_SALAD})|(?:cole)?slaws?|"
    rf"tabb?oul[ei]h?"
)
_ROAST = (
    r"(?:roast(?:ed|ing)?|slow[- ]roast(?:ed)?|spit[- ]?roast(?:ed)?)\b[\w ,'-]*?\b(?:chickens?|"
    r"beef|lamb|pork|veal|turkeys?|goose|geese|ducks?|hams?|gammon|venison|joints?|birds?|legs?|ribs?|shoulders?|"
    r"loins?|meat|"
    r"crown|sirloin|capon|guinea fowl|roast)|rib roast|leg of lamb|(?:bake|glaze) the (?:ham|gammon)|(?:beef|"
    r"pork) wellington|roast(?:s|ing joints?)?"
)
_VEG = (
    r"vegetables?|veg|veggies|roots|carrots?|parsnips?|onions?|shallots?|leeks?|celer(?:y|iac)|fennel|peppers?|"
    r"capsicums?|courgettes?|zucchinis?|aubergines?|eggplants?|squash(?:es)?|pumpkins?|cabbages?|kale|sprouts|broccoli|"
    r"cauliflowers?|beans|peas|mangetouts?|asparagus|mushrooms?|radish(?:es)?|cucumbers?|beets?|beetroots?|turnips?|"
    r"swedes?|rutabagas?|sweet ?corn|chard|greens|spring onions|scallions|garlic|ginger|chill?ies|chile?s?|crudites"
)
_FRUIT = (
    r"fruit|berries|strawberries|raspberries|blueberries|blackberries|melons?|oranges?|grapefruits?|mango(?:es|s)?|"
    r"pineapples?|peach(?:es)?|nectarines?|plums?|apricots?|cherries|grapes|kiwis?|figs?|rhubarb|citrus|lemons?|limes?"
)
_CUTS = (
    r"(?:slice|cut|chop|dice|peel|shred|halve|quarter|trim|prep(?:are)?|grate|julienne|top and tail|string|cube|scrub)"
)

_DIPS = (
    r"hummus|houmous|tapenade|raita|tzatziki|baba ?gh?anou[sj]h?|labneh|rillettes|terrines?|pates?|potted \w+|"
    r"(?:liver )?parfaits?|mousselines?|smoked \w+ (?:pate|mousse)"
)
_TO_DO = r"(?:the|a|an|and|in|into|on|over|each|it|them|with|out|evenly|thinly|half|all|both|everything)\b"  # a verb

# Its words in a step; its words in a dish's name, "=" for the same; after "&": both are wanted.
_LINES: tuple[tuple[Keeps, str, str], ...] = (
    # ices
    (Keeps("sorbet and what it is churned from", fridge=_D, freezer=7 * _D, soft=5, source=FSIS_FREEZER),
     r"sorbets?|sherbets?|granit[ae]s?|ice lollies|popsicles?|water ices?", "="),
    (Keeps("ice cream and what it is churned from", fridge=_D, freezer=14 * _D, soft=10, source=FSIS_FREEZER),
     r"ice[- ]creams?|gelatos?|gelati|frozen yogh?urt|kulfi|ices", "="),
    (Keeps("a parfait or an ice cream cake", fridge=2 * _D, freezer=14 * _D, soft=20, source=FSIS_FREEZER),
     r"semi-?freddos?|bombes?|ice[- ]cream (?:cake|bombe|sandwich(?:es)?|roll|pie)|frozen (?:souffles?|mousses?|"
     r"cakes?|cheesecakes?|nougats?|pies?)|baked alaskas?|cassatas?|arctic roll|parfaits?", "="),
    # eaten as they are made
    (Keeps("dressed leaves", out=15, raw=True),
     r"(?:toss|dress|mix)\b[\w ,-]*\b(?:with|in) the (?:dressing|vinaigrette)|"
     r"(?:dress|toss|mix) (?:the |a |up )?(?:\w+ )?(?:salad|leaves|lettuce|rocket|arugula|watercress|spinach|greens|"
     r"endive|chicory|frisee)", ""),
    (Keeps("dressed soft vegetables", fridge=2 * _H),
     r"(?:dress|toss|mix|finish|season|compose) (?:the )?salad|(?:toss|dress|mix)\b[\w ,-]*\b(?:with|"
     r"in) the (?:dressing|"
     r"vinaigrette)",
     "&[\\w ]*(?:tomato(?:es)?|cucumbers?|green beans?|asparagus|courgettes?|zucchini|nicoise|caprese|greek)[\\w ]*"),
    (Keeps("salad of cooked or hard vegetables", fridge=_D),
     r"(?:dress|toss|mix|finish|season) (?:the )?salad|(?:toss|dress|mix)\b[\w ,-]*\b(?:with|in) the (?:dressing|"
     r"vinaigrette)", f"&{_STURDY}"),
    (Keeps("dressed tomatoes or cucumbers", out=_H),
     r"(?:dress|toss|salt) (?:the )?(?:tomato(?:es)?|cucumbers?)", ""),
    (Keeps("salad of cooked or hard vegetables", fridge=_D),
     _STURDY, "="),
    (Keeps("leaves", fridge=_D, raw=True),
     r"(?:wash|rinse|spin|pick|trim|tear|shred|separate|prep)\b[\w ,-]*\b(?:leaves|lettuces?|rocket|arugula|"
     r"watercress|spinach|salad|radicchio|endives?|romaine|frisee)|(?:green|leaf|mixed|side|caesar|tossed) salad", "="),
    (Keeps("picked herbs", fridge=_D, raw=True),
     r"(?:wash|pick|strip)\b[\w ,-]*\b(?:herbs?|"
     r"parsley|dill|basil|mint|coriander|cilantro|chervil|tarragon|chives)", ""),
    (Keeps("chopped herbs", fridge=4 * _H, raw=True),
     r"(?:chop|snip|shred|mince)\b[\w ,-]*\b(?:herbs?|parsley|dill|basil|mint|coriander|cilantro|chervil|tarragon|"
     r"chives)|gremolata", ""),
    (Keeps("avocado", fridge=2 * _H),
     r"avocados?|guacamole", "="),
    (Keeps("cut apples or pears", fridge=2 * _H, raw=True),
     rf"{_CUTS}\b[\w ,-]*\b(?:apples?|pears?|bananas?|quinces?)", ""),
    (Keeps("raw fish or meat in small pieces", fridge=_H),
     r"tartares?|ceviche|carpaccio|crudo|sashimi|poke", "="),
    # dough and batter
    (Keeps("pasta dough", room=30, fridge=_D, raw=True),
     r"pasta dough|(?:roll|shape|cut|fill) (?:out )?the (?:pasta|ravioli|tagliatelle|gnocchi|noodles|tortellini)", ""),
    (Keeps("yeast dough", fridge=_D, out=30, raw=True),
     r"(?:bread|pizza|yeast|roll|bun|focaccia|brioche|baguette|challah|bagel|pitta|pita|naan|loaf|sourdough) dough|"
     r"knead|prove|proof|rise|rises|rising|knock back|punch down|shape the (?:rolls|loaf|loaves|buns?|baguettes?|bread|"
     r"focaccia|flatbreads|pizzas)|sponge for the bread|levain|poolish|stretch", ""),
    (Keeps("scone dough", out=30, fridge=4 * _H, raw=True),
     r"scone dough|biscuit dough on|(?:shape|cut|stamp|pat|rub)\b[\w ,-]*\b(?:scones|biscuit rolls)", ""),
    (Keeps("a stuffed bird", out=30, source=STUFFED),
     r"stuff (?:the )?(?:\w+ )?(?:birds?|turkeys?|chickens?|goose|geese|ducks?|capon)|fill the cavity", ""),
    (Keeps("cheese that comes to the room's warmth", out=2 * _H),
     r"(?:take|bring|get|set|put|unwrap|arrange|plate)\b[\w ,-]*\bcheeses?(?: ?board)?", ""),
    (Keeps("pastry or biscuit dough", fridge=2 * _D, raw=True),
     r"(?:pastry|pie|tart|cookie|biscuit|shortbread|shortcrust|puff|flaky|sugar|pate \w+) (?:dough|pastry)|"
     r"pie crust dough|(?:make|mix|rub) (?:in )?the (?:short)?(?:pastry|crust)|rest the pastry|dough", ""),
    (Keeps("rolled or lined pastry", fridge=_D, raw=True),
     r"(?:line|roll out|roll)\b[\w ,-]*\b(?:pastry|tins?|tart|crust|pie|cases?|shells?|rings?|pans?)|"
     r"(?:press|make)\b[\w ,-]*\b(?:base|crumbs)|(?:cut|fill|assemble|crimp|"
     r"seal) (?:and fill )?(?:the )?(?:\w+ )?(?:pies|"
     r"pasties|turnovers|galette)", ""),
    (Keeps("cake batter", room=15, raw=True),
     r"(?:cake|muffin|sponge|brownie|scone|madeleine|cupcake) (?:batter|mix(?:ture)?)|(?:make|mix) the (?:sponge|"
     r"cake)|(?:fold|sift) in the flour", ""),
    (Keeps("frying batter", room=15, raw=True),
     r"(?:tempura|beer|frying|coating) batter", ""),
    (Keeps("batter", fridge=_D, raw=True),
     r"batter", ""),
    (Keeps("a souffle with its whites folded in", out=30),
     r"fold|fill the (?:dishes|ramekins|moulds|molds)",
     r"&souffles?"),
    (Keeps("whisked egg whites", hot=5, out=10),
     r"(?:whisk|whip|beat)\b[\w ,-]*\b(?:egg )?(?:whites?|meringue)|(?:fold|stir) in the (?:egg )?whites|sabayon|"
     r"zabaglione|zabaione|(?:beat|whisk) the meringue", ""),
    # what is filled or crisp
    (Keeps("filled crisp pastry", fridge=2 * _H),
     r"(?:fill|pipe|sandwich|top)\b[\w ,-]*\b(?:cones?|snaps|shells?|cases?|tartlets?|profiteroles?|choux|puffs?|"
     r"eclairs?|vol-au-vents?|pavlovas?|meringues?|tuiles?|baskets?|croustades?|macarons?)", ""),
    (Keeps("canapes", fridge=2 * _H),
     r"(?:make|assemble|top|build|spread|plate|finish)\b[\w ,-]*\b(?:canapes?|blinis?|crostini|bruschettas?|toasts?|"
     r"crackers?|sandwich(?:es)?|rolls|bites|skewers|sliders)", ""),
    (Keeps("a sugar crust", out=30),
     r"(?:brulee|torch|caramelise|caramelize|burn) the (?:tops?|sugar|custards?|creams?|brulees?|ramekins)", ""),
    # baked, and dry
    (Keeps("a souffle", hot=2, quick=True),
     r"(?:bake|cook) the (?:\w+ )*souffles?",
     r"souffles?"),
    (Keeps("a soft-centred pudding", hot=3, quick=True),
     r"fondants?|lava cakes?|molten (?:\w+ )?cakes?", "="),
    (Keeps("yorkshire puddings or popovers", hot=5),
     r"yorkshire puddings?|yorkshires|popovers?|dutch bab(?:y|ies)", "="),
    (Keeps("flat bread from the pan", hot=15),
     r"(?:cook|fry|griddle|grill)\b[\w ,-]*\b(?:naans?|chapatt?is?|rotis?|parathas?|flat ?breads?|tortillas?|puris?)",
     ""),
    (Keeps("scones or muffins", room=12 * _H),
     r"biscuits?", "&(?:buttermilk|drop|southern|cheddar|savou?ry) biscuits?|biscuits and gravy"),
    (Keeps("sushi", fridge=2 * _H), r"sushi|maki|nigiri|onigiri|hand rolls", "="),
    (Keeps("garlic bread, toast or pizza", hot=5),
     r"garlic bread|toast (?:the )?(?:bread|slices|sourdough|baguette|brioche|rolls|buns)|pizzas?|welsh rarebit|"
     r"toasties|bruschettas?|cheese on toast|grilled cheese|warm the (?:bread|rolls|flatbreads|tortillas|naan|"
     r"pitt?as?|baguettes?)",
     r"garlic bread|pizzas?|rarebit|bruschettas?"),
    (Keeps("croutons and crumbs", room=_D),
     r"croutons?|(?:bread)?crumbs|crostini|melba toasts?|croutes?", "="),
    (Keeps("meringues", room=2 * _D),
     r"meringues?|pavlovas?|dacquoises?|macaroons?|macarons?", "="),
    (Keeps("thin crisp biscuits", room=_D),
     r"tuiles?|brandy snaps?|snaps|(?:lace|wafer|sugar) cones?|cones|florentines?|wafers?|grissini|breadsticks?|"
     r"cheese straws?|straws|twists?|knots?|palmiers|gougeres?|crisps", "="),
    (Keeps("biscuits or cookies", room=3 * _D),
     r"biscuits?|cookies?|shortbreads?|biscotti|cantucci(?:ni)?|amaretti|oatcakes?|crackers?|flapjacks?|granola|"
     r"ginger ?snaps?|ginger ?bread|brittle|praline|nougatine|crumble topping|streusel|spiced nuts|(?:toast|roast|"
     r"candy|caramelise|caramelize)\b[\w ,-]*\b(?:nuts|almonds|hazelnuts|walnuts|pecans|pistachios|pine nuts|seeds)",
     "="),
    (Keeps("scones or muffins", room=12 * _H),
     r"scones?|muffins?|crumpets?|madeleines?|doughnuts?|donuts?|biscuit rolls?", "="),
    (Keeps("rolls or flat bread", room=12 * _H),
     r"rolls|buns?|baguettes?|focaccias?|ciabattas?|flat ?breads?|soda bread|corn ?bread|pitt?as?|naans?|bagels?|"
     r"brioches?|croissants?|dinner rolls?|tortillas?|fougasses?|pretzels?", "="),
    (Keeps("sliced bread", room=3 * _H),
     r"(?:slice|cut|carve)\b[\w ]*\b(?:breads?|loaf|loaves|sourdough|baguettes?|focaccias?|ciabattas?|rolls)", ""),
    (Keeps("slices of cake", room=4 * _H, fridge=4 * _H),
     r"(?:slice|cut|portion) (?:up )?(?:the )?(?:\w+ )?(?:cakes?|gateau|torte|brownies|sponge|cheesecake|tarts?|"
     r"pies?)", ""),
    (Keeps("bread", room=_D),
     r"breads?|loaf|loaves|sourdough|challah",
     r"\w*breads?|loaf|loaves|sourdough|challah"),
    (Keeps("tart shells", room=_D),
     r"(?:tart(?:let)?|pastry|pie|flan|filo|phyllo) (?:shells?|cases?|crusts?|bases?|cups?|baskets?)|(?:shells?|"
     r"cases?)|blind[- ]?bake|bake blind|par-?bake the (?:crust|pastry|tart)|crust|vol-au-vents?|choux|profiteroles?|"
     r"eclairs?|croustades?|biscuit base|graham crust",
     r"vol-au-vents?|profiteroles?|eclairs?|croquembouche"),
    (Keeps("a cheesecake", fridge=2 * _D),
     r"cheesecakes?", "="),
    (Keeps("a sweet custard pie, eaten cool", room=2 * _H, fridge=_D),
     r"(?:custard|lemon|cream|egg custard|pumpkin|sweet potato|pecan|walnut|chess|buttermilk|key lime|chocolate|banana|"
     r"coconut|chocolate cream|lemon meringue|meringue) (?:tart(?:let)?s?|pies?|flans?)|tarte au citron|pasteis", "="),
    (Keeps("a custard or cream tart", hot=30, fridge=_D),
     r"quiches?|(?:egg|treacle|onion|leek|tomato|cheese|savoury|savory) (?:tart(?:let)?s?|pies?|flans?)|tartlets?|"
     r"flans?|frittatas?|tortilla espanola|clafoutis", "="),
    (Keeps("a hot pudding", hot=30, room=2 * _H),
     r"crumbles?|cobblers?|(?:steamed|sponge|sticky toffee|bread(?: and butter)?|rice|christmas|plum|suet|"
     r"toffee) puddings?|(?:fruit|apple|pear|plum|peach|berry|blueberry|rhubarb|cherry) crisp|brown bett(?:y|ies)|"
     r"roly[- ]poly|spotted dick|grunt|slump|strudels?", "="),
    (Keeps("a fruit pie or tart", room=8 * _H),
     r"(?:apple|pear|plum|cherry|berry|blackberry|blueberry|peach|rhubarb|apricot|fruit|mince|damson|gooseberry|"
     r"almond|frangipane|bakewell|jam) (?:pies?|tarts?|tartlets?|galettes?)|galettes?|tarte tatin|frangipane", "="),
    (Keeps("fish cakes or fritters", hot=10, fridge=_D),
     r"(?:fish|crab|salmon|potato|rice|corn|bean) ?cakes?|fritters?|rosti|latkes?|bhajis?|pakoras?|falafels?|"
     r"croquettes?|arancini|samosas?", "="),
    (Keeps("cake", room=2 * _D),
     r"cakes?|sponges?|genoises?|brownies?|blondies?|parkin|gateaux?|tortes?|cupcakes?|panettone|stollen|layers|"
     r"swiss roll|roulade|bundt",
     r"\w*cakes?|sponges?|genoise|brownies?|blondies?|parkin|gateaux?|tortes?|cupcakes?|panettone|stollen|tea ?loaf|"
     r"banana bread"),
    # cold sweets and creams
    (Keeps("whipped cream", fridge=4 * _H),
     r"(?:whip|whisk|beat|softly whip)\b[\w ,-]*\bcream|whipped cream|chantilly|creme fraiche quenelles", ""),
    (Keeps("meringue broken into cream", fridge=30), r"(?:crush|break|crumble)\b[\w ,-]*\bmeringues?|eton mess", "="),
    (Keeps("chocolates and sweets", fridge=3 * _D, room=_D),
     r"truffles?(?! oil)|fudge|marshmallows?|turkish delight|petits fours", "="),
    (Keeps("sausage rolls or pasties", hot=20, fridge=_D),
     r"sausage rolls?|spring rolls?|pasties|pasty|empanadas?|turnovers?|borek", "="),
    (Keeps("trifle", fridge=_D),
     r"trifles?|tiramisus?|fools?|charlottes?|icebox cake", "="),
    (Keeps("a set cream or mousse", fridge=2 * _D),
     r"panna ?cottas?|mousses?|(?:creme )?brulees?|creme caramels?|possets?|blancmanges?|bavarois|pots? de creme|"
     r"chocolate pots?|syllabubs?|(?:vanilla|chocolate|coffee|caramel|set|lemon) (?:creams?|custards?|pots?)|"
     r"jell(?:y|ies)|gelatin|butterscotch pudding|chocolate pudding|rice pudding cold", "="),
    (Keeps("custard", hot=20, fridge=2 * _D),
     r"custards?|pastry cream|creme (?:pat\w*|anglaise)|(?:lemon|lime|orange|passion ?fruit) curd", "="),
    (Keeps("chocolate or caramel sauce", hot=30, room=4 * _H, fridge=3 * _D),
     r"(?:chocolate|caramel|toffee|butterscotch|fudge) sauce|ganache|caramel", "="),
    (Keeps("poached fruit or compote", room=12 * _H, fridge=3 * _D),
     rf"(?:poach|stew|roast|bake|compote|macerate)\b[\w ,-]*\b(?:{_FRUIT}|apples?|pears?|quinces?)|compotes?|coulis|"
     rf"(?:apple|cranberry|berry|fruit|plum) ?sauce|(?:poached|stewed|baked) (?:fruit|pears?|plums?|apples?|quinces?|"
     rf"peaches)|(?:make|boil|cook|simmer|infuse) the (?:sugar )?syrup",
     r"(?:poached|stewed|baked) (?:fruit|pears?|plums?|apples?|quinces?|peaches)|compotes?|(?:apple|cranberry) ?sauce"),
    (Keeps("cut fruit", fridge=6 * _H, raw=True),
     rf"(?:{_CUTS}|hull|stone|pit|segment|wash|macerate)\b[\w ,-]*\b(?:{_FRUIT})|fruit salad",
     r"fruit salad"),
    # cold savouries
    (Keeps("mayonnaise", fridge=_D),
     r"mayonn?aise|mayo|aioli|remoulade|tartare sauce|tartar sauce", "="),
    (Keeps("herb sauce", room=2 * _H, fridge=_D),
     r"salsa verde|green sauce|chimichurri|pesto|zhoug|mint sauce|persillade|salsas?|pico de gallo|pistou", "="),
    (Keeps("dressing", room=_D, fridge=3 * _D),
     r"(?:make|mix|shake|whisk|blend)\b(?:(?! with| in\b)[\w ,])*\b(?:dressing|vinaigrette)|"
     r"^(?:the )?(?:\w+ )?(?:dressing|vinaigrette)$|(?:mustard|dill) sauce", ""),
    (Keeps("dip or spread", fridge=2 * _D),
     rf"(?<=\w )(?:dip|spread)s?\b(?! {_TO_DO})|{_DIPS}", rf"dips?|spreads?|{_DIPS}"),
    (Keeps("flavoured butter", fridge=5 * _D),
     r"(?:herb|garlic|flavou?red|compound|brandy|rum|parsley|cafe de paris) butter|hard sauce", ""),
    (Keeps("cured fish", fridge=2 * _D),
     r"gravad ?lax|gravlax|cure the (?:\w+ )?(?:salmon|fish|trout)",
     r"gravad ?lax|gravlax"),
    (Keeps("pickles or preserves", room=5 * _D, fridge=7 * _D),
     r"pickles?|pickled|(?:quick[- ])?pickle the|chutneys?|jams?|marmalades?|relish",
     r"pickled \w+|pickles?|chutneys?|jams?|relish"),
    (Keeps("a rub or a mix of spices", room=7 * _D),
     r"(?:spice|dry) (?:rub|mix)|dukkah|spices", ""),
    (Keeps("shucked shellfish", fridge=_H),
     r"(?:shuck|open) the (?:oysters|clams|scallops)", ""),
    # hot from pan and oven
    (Keeps("part-cooked vegetables", room=2 * _H, fridge=_D),
     r"(?:par-?boil|par-?cook|part-?cook|blanch)", ""),
    (Keeps("eggs cooked soft", hot=4, quick=True),
     r"(?:scramble|fry|poach|soft[- ]?boil|coddle)\b[\w ,-]*\beggs?|omelett?es?|(?:poached|scrambled|fried) eggs?|"
     r"eggs benedict", "="),
    (Keeps("hard-boiled eggs", fridge=3 * _D, source=EGGS),
     r"(?:hard[- ]?boil|boil|peel)\b[\w ,-]*\beggs?|hard[- ]boiled eggs", "="),
    (Keeps("risotto", hot=5),
     r"risottos?|stir in the rice and ladle", "="),
    (Keeps("pasta", hot=5, quick=True),
     r"(?:boil|cook|drain)\b[\w ,-]*\b(?:pasta|spaghetti|linguine|tagliatelle|penne|rigatoni|ravioli|gnocchi|noodles|"
     r"orecchiette|fettuccine|pappardelle|tortellini|macaroni|fusilli|bucatini|spaetzle)|toss the (?:pasta|noodles|"
     r"spaghetti|linguine|tagliatelle|gnocchi)",
     r"spaghetti|linguine|tagliatelle|penne|rigatoni|ravioli|gnocchi|fettuccine|pappardelle|tortellini|carbonara|"
     r"cacio e pepe|pasta|noodles|orecchiette"),
    (Keeps("fried food", hot=8),
     r"(?:deep|shallow|stir)[- ]?fry|fry the (?:chips|fries|chicken|fish|schnitzels?|cutlets|doughnuts|batter\w*|"
     r"squid|croquettes|onion rings|tofu|dumplings)|tempura|chips|(?:french )?fries|schnitzels?|calamari",
     r"fried (?:chicken|fish|squid)|tempura|chips|(?:french )?fries|schnitzels?|calamari|stir[- ]?fr(?:y|ies)"),
    (Keeps("pancakes", hot=15),
     r"pancakes?|crepes?|waffles?|blinis?|galettes? de sarrasin", "="),
    (Keeps("stew or braise", hot=30, fridge=2 * _D, source=SOUPS),
     r"braise|stew|casserole|curry|curries|masala|korma|vindaloo|jalfrezi|"
     r"rogan josh|tagines?|goulash|daube|chill?i|ragu|ragout|bolognese|bourguignon|"
     r"coq au vin|pot[- ]?roast|ossob?uco|cassoulet|gumbo|jambalaya|confit|dahls?|dal|stroganoff|blanquette|"
     r"fricassee|pulled \w+",
     r"braised? [\w ]+|braise|stews?|casseroles?|curry|curries|masala|korma|vindaloo|jalfrezi|"
     r"rogan josh|tagines?|goulash|daube|chill?i|ragu|ragout|bolognese|"
     r"bourguignon|coq au vin|pot[- ]?roast|ossob?uco|cassoulet|gumbo|confit|dahls?|dal|stroganoff|blanquette|"
     r"fricassee|pulled \w+"),
    (Keeps("soup or stock", hot=30, fridge=2 * _D, source=SOUPS),
     r"soups?|broths?|stock|chowders?|bisques?|veloute|minestrone|consomme|gazpacho|vichyssoise|ramen broth", "="),
    (Keeps("gravy or sauce", hot=20),
     r"gravy|jus|(?:pan|butter|wine|cream|bread|white|cheese|pepper|mushroom|tomato) sauce|bechamel|hollandaise|"
     r"bearnaise|beurre blanc|(?:make|finish|reduce|warm) the sauce",
     r"gravy|jus|bread sauce"),
    (Keeps("lasagne, gratin or pie", hot=20, fridge=_D),
     r"lasagn[ea]|gratins?|dauphinoise|moussaka|parmigiana|(?:shepherds?|cottage|fish|chicken|meat|steak|pot|game|"
     r"pork)(?:'s)? pies?|pasties|cannelloni|enchiladas?|mac(?:aroni)? and cheese|pasta bake|bake the dish|"
     r"wellingtons?",
     r"lasagn[ea]|gratins?|dauphinoise|moussaka|parmigiana|\w* ?pies?|pasties|cannelloni|enchiladas?|"
     r"mac(?:aroni)?(?: and)? cheese|pasta bake|\w* bake|wellingtons?"),
    (Keeps("stuffing", hot=20, fridge=_D),
     r"stuffing|forcemeat|dressing balls", "="),
    (Keeps("mash or polenta", hot=30),
     r"mash(?:ed)?(?! the (?:avocado|banana|berr|raspberr|strawberr|egg|garlic))|puree|polenta|grits|champ|colcannon",
     r"mash(?:ed)?|\w*mash|puree|polenta|grits|champ|colcannon"),
    (Keeps("roast or boiled potatoes", hot=15, quick=True),
     r"(?:roast|boil|steam|bake|crisp|drain)\b[\w ,-]*\bpotato(?:es)?|roast potatoes|roasties|potatoes", "="),
    (Keeps("roast vegetables", hot=15),
     rf"(?:roast|bake|char|grill|glaze)\b[\w ,-]*\b(?:{_VEG}|tomato(?:es)?)",
     rf"(?:roast(?:ed)?|glazed|grilled|charred|baked) (?:\w+ )?(?:{_VEG})"),
    (Keeps("a hot oven, grill or fire", out=30),
     r"(?:(?:pre-?)?heat|turn on|switch on|light)\b(?: up)? (?:the |a )?(?:\w+ )?(?:ovens?|grill|barbecue|bbq|griddle|"
     r"smoker|coals?|charcoal|fire)", ""),
    (Keeps("warm plates", hot=20), r"warm (?:up )?(?:the )?(?:\w+ )*(?:plates|bowls|dishes|platters)", ""),
    (Keeps("coffee or tea", hot=20), r"(?:brew|make)\b[\w ]*\b(?:coffee|tea|espressos?)", ""),
    (Keeps("juice and mixed drinks", fridge=_D),
     r"(?:squeeze|juice)\b[\w ,-]*\b(?:lemons?|limes?|oranges?|grapefruits?)|sangria|(?:mix|make)\b[\w ]*\b(?:punch|"
     r"lemonade|cocktails?|spritz(?:es)?|mocktails?|cordial)", r"punch|sangria|lemonade|"
     r"(?<!prawn )(?<!shrimp )(?<!fruit )cocktails?"),
    (Keeps("green vegetables", hot=8),
     r"(?:boil|steam|wilt|saute|cook|stir[- ]?fry|butter|fry)\b[\w ,-]*\b(?:beans|peas|asparagus|broccoli|"
     r"broccolini|spinach|greens|kale|cabbage|sprouts|chard|mangetouts?|snow peas|courgettes?|zucchini|leeks|"
     r"samphire)",
     r"(?:buttered |steamed |wilted |sauteed )?(?:green beans|peas|asparagus|broccoli|broccolini|spinach|greens|"
     r"sprouts|chard)"),
    (Keeps("rice or grains", hot=20),
     r"(?:boil|cook|steam|fluff)\b[\w ,-]*\b(?:rice|couscous|bulgh?ur|quinoa|grains|barley|farro|freekeh)|pilafs?|"
     r"pilaus?|paella|biryani|fluff",
     r"pilafs?|pilaus?|rice|couscous|paella|biryani|quinoa"),
    (Keeps("fish or shellfish", hot=5),
     r"(?:fry|pan-?fry|grill|bake|roast|steam|poach|sear|broil|cook|saute)\b[\w ,-]*\b(?:fish|salmon|cod|trout|bass|"
     r"bream|hake|halibut|sole|plaice|haddock|turbot|mackerel|tuna|monkfish|fillets|scallops?|prawns?|shrimps?|"
     r"mussels|clams|squid|lobsters?|crabs?|branzino|snapper)",
     r"(?:fried|grilled|baked|roast(?:ed)?|steamed|seared|broiled|poached)? ?(?:fish|salmon|cod|trout|sea bass|bream|"
     r"hake|halibut|sole|plaice|haddock|turbot|mackerel|scallops|prawns|shrimp|mussels|moules|clams|branzino)"),
    (Keeps("steaks or chops", hot=10),
     r"(?:fry|pan-?fry|grill|sear|broil|barbecue|cook|rest)\b[\w ,-]*\b(?:steaks?|chops?|cutlets?|duck breasts?|"
     r"burgers?|patties|sausages?|kebabs?|skewers|chicken breasts?|escalopes?|fillets of \w+)|steaks?|burgers?|"
     r"kebabs?",
     r"steaks?|chops?|cutlets?|duck breasts?|burgers?|sausages?|bangers|kebabs?|skewers"),
    (Keeps("a roast", hot=30),
     _ROAST,
     r"roast(?:ed)? [\w ]+|(?:baked|glazed) (?:ham|gammon)|(?:prime |beef )?ribs? (?:of beef|roast)|leg of lamb|"
     r"wellington|sunday (?:roast|joint)|pot roast"),
    # cut, and raw
    (Keeps("peeled potatoes in water", fridge=_D, raw=True),
     r"(?:peel|cut|slice|chop|scrub)\b[\w ,-]*\bpotato(?:es)?", ""),
    (Keeps("cut tomatoes", out=2 * _H),
     r"(?:slice|cut|chop|dice|halve|quarter)\b[\w ,-]*\btomato(?:es)?", ""),
    (Keeps("cut vegetables", fridge=_D, raw=True),
     rf"{_CUTS}\b[\w ,-]*\b(?:{_VEG})|make the crudites|mirepoix|soffritto base", ""),
)  # fmt: skip


RAW = Keeps("raw meat or fish", fridge=_D)
BAKED = Keeps("what is baked dry", room=12 * _H)
COOKED = Keeps("cooked food", fridge=2 * _D, source=f"{PRACTICE}; FoodSafety.gov, cold food storage chart: 3 to 4 days")


@dataclass(frozen=True, slots=True)
class _Line:
    """`both`: it is found by a step's words in a dish of that name only."""

    keeps: Keeps
    step: re.Pattern[str]
    dish: re.Pattern[str] | None
    both: bool


@functools.cache
def _lines() -> tuple[_Line, ...]:
    def words(pattern: str) -> re.Pattern[str]:
        return re.compile(rf"\b(?:{pattern})\b")

    found = []
    for keeps, step, dish in _LINES:
        named = step if dish == "=" else dish.removeprefix("&")
        found.append(_Line(keeps, words(step), words(named) if named else None, dish.startswith("&")))
    return tuple(found)


_BESIDE = re.compile(r"\s+(?:with|on|in|and|over|under|for|from|by|alongside)\s+|[,;:&(]")


@functools.lru_cache(maxsize=4096)
def made_in(step: str, dish: str, *, on_heat: bool) -> Keeps | None:
    """The kind that a step's words name first, the longest of several there; its dish's name may have to agree.
    `on_heat`: it is done there, so that nothing comes of it raw."""
    text, head = folded(step), folded(dish)
    found = []
    for n, line in enumerate(_lines()):
        match = line.step.search(text)
        agrees = not line.both or (line.dish is not None and line.dish.search(head) is not None)
        if match is not None and agrees and not (on_heat and line.keeps.raw):
            found.append((not line.both, match.start(), -len(match[0]), n))
    return _lines()[min(found)[-1]].keeps if found else None


_CUTTING = re.compile(rf"^(?:{_CUTS}|wash|cut up)\b")
_PLAIN = re.compile(
    rf"^{_CUTS}(?: (?:it|them|up|and|all|everything|the rest|finely|thinly|roughly|small|ahead|{_CUTS}))*$"
)


def cut_of(step: str, foods: Sequence[str]) -> Keeps | None:
    """The kind of what is cut, by the food that a step names, else by what a dish is made of: `cut it up`."""
    text = folded(step)
    if not _CUTTING.search(text):
        return None
    if _PLAIN.search(text):
        found = (made_in(f"cut the {food}", "", on_heat=False) for food in foods)
        return next((each for each in found if each is not None and each.raw), None)
    names = {each.food.name for each in mentioned(step)}
    return by_name("cut vegetables") if names & _vegetables() else by_name("cut fruit") if names & _fruit() else None


@functools.cache
def _vegetables() -> frozenset[str]:
    return frozenset(entry.name for entry in (*VEGETABLES, *CELERY, *MIXED, *MUSHROOMS))


@functools.cache
def _fruit() -> frozenset[str]:
    return frozenset(entry.name for entry in (*FRUIT, *MIXED_FRUIT))


def eaten_within(kind: Keeps, *, hot: bool) -> int | None:
    """Minutes within which it is to be eaten, where it is past its best within the hour, wherever it stands: an ice
    that was taken out, a steak, dressed leaves; None for all else. `hot`: it comes off the heat."""
    if kind.soft is not None:
        return kind.soft
    limits = [minutes for minutes in (kind.hot, kind.room, kind.fridge, kind.out) if minutes is not None]
    if hot and kind.hot is not None and (kind.hot <= AT_ONCE_HOT_MINUTES or max(limits) <= AT_ONCE_MINUTES):
        return min(2 * kind.hot, HOT_AT_MOST)
    return max(limits) if limits and max(limits) <= AT_ONCE_MINUTES else None


_ICE = re.compile(r"\b(?:ice[- ]creams?|gelatos?|gelati|sorbets?|sherbets?|granit[ae]s?|frozen yogh?urt|kulfi)\b")


def is_raw_work(step: str) -> bool:
    """Whether it prepares what is still raw, whatever it is for: `cut the stir-fry vegetables`."""
    return _CUTTING.search(folded(step)) is not None


def names_an_ice(text: str) -> bool:
    """Whether it speaks of an ice that may have been bought: `put a scoop of sorbet into each glass`."""
    return _ICE.search(folded(text)) is not None


@functools.lru_cache(maxsize=1024)
def kind_of_dish(name: str) -> Keeps | None:
    """The kind that a dish's name ends in, before what comes with it."""
    head = _BESIDE.split(folded(name), maxsplit=1)[0]
    found = [
        (match.end(), len(match[0]), -n)
        for n, line in enumerate(_lines())
        if line.dish is not None and not line.both
        for match in line.dish.finditer(head)
    ]
    return _lines()[-max(found)[2]].keeps if found else None


def by_name(name: str) -> Keeps:
    """The line of that name. Raises StopIteration where there is none."""
    return next(line.keeps for line in _lines() if line.keeps.name == name)


def source_of(name: str) -> str:
    """What the figures of that name stand on, be it a kind of the table or another that is told of."""
    every = (*(line.keeps for line in _lines()), RAW, BAKED, COOKED)
    return next((each.source for each in every if each.name == name), PRACTICE)
