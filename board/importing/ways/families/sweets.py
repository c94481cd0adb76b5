"""Sweet dishes that are set, frozen or poached, and cheese. All figures: common practice, no source."""

# fmt: off
from board.importing.ways.pattern import (
    ENDS,
    Pattern,
    a_head,
    by_hand,
    chilled,
    cooled,
    frozen,
    in_oven,
    left,
    listed,
    on_ring,
)

CHEESE_BOARD = Pattern(
    name="cheese board", course="cheese", words=listed("cheese board, cheeseboard, cheese plate, cheese course, "
        "cheese platter, cheese and biscuits, cheese and crackers, selection of cheeses, ploughman's"),
    alone=listed("cheese, stilton, brie, camembert, cheddar, comté, gorgonzola, roquefort, manchego, goat cheese, "
        "blue cheese"), food="70 g cheese, three kinds (dairy)",
    ingredients=a_head("30 g crackers (store cupboard), 30 g grapes (veg)"),
    steps=(
        by_hand("unwrap the {it} and lay the board", 8, 10, 13, keeps="30 min in the room",
            uses=("{it}", "crackers", "grapes"), how="A knife for each kind."),
        left("let the {it} come to the warmth of the room", 45, 60, 75, best="45 min", keeps="45 min in the room"),
    ),
)

MOUSSE = Pattern(
    name="mousse", course="sweet", words=listed("mousse, fool, marquise, bavarois, syllabub, whip, zabaglione, "
        "sabayon, cranachan"), food="30 g dark chocolate (baking)",
    ingredients=a_head("55 ml double cream (dairy), 12 g sugar (baking)"),
    steps=(
        by_hand("prepare the {it} for the mousse", 8, 10, 13, keeps="30 min in the room", uses=("{it}", "sugar"), how=
            "Chocolate is melted over hot water and cooled until it no longer feels warm; fruit is crushed with the "
            "sugar."),
        by_hand("whip the cream and fold it in", 6, 8, 10, keeps="10 min in the room", tool="mixer", uses=("cream",),
            how="No raw egg is in this one. Soft peaks only, folded in two goes."),
        chilled("chill the mousse", 120, 180, 240, keeps="1 day in the fridge", look="holds its shape on a spoon"),
        by_hand("plate the mousse", 4, 6, 8, best="15 min", keeps="30 min in the room"),
    ),
)

SET_CREAM = Pattern(
    name="set cream", course="sweet", words=listed("panna cotta, pannacotta, blancmange, set cream, buttermilk "
        "pudding, coeur à la crème"), food="",
    ingredients=a_head("80 ml double cream (dairy), 30 ml whole milk (dairy), 12 g sugar (baking), 1/3 sheets "
        "gelatine (baking), 1/12 vanilla pods (baking)"),
    steps=(
        on_ring("warm the cream with the gelatine", 10, 12, 15, tool="medium pot", keeps="15 min in the room",
            look="the gelatine is gone, and it never boiled", uses=("cream", "milk", "sugar", "gelatine", "vanilla"),
            how="Soak the gelatine cold for five minutes first, and squeeze it out."),
        by_hand("pour the cream into moulds", 5, 6, 8, keeps="10 min in the room"),
        chilled("chill the creams until they set", 240, 300, 360, keeps="2 days in the fridge",
            look="trembles and holds", cools="3 cm deep, metal"),
        by_hand("turn out and plate the creams", 8, 10, 14, best="15 min", keeps="25 min in the room"),
    ),
)

JELLY = Pattern(
    name="jelly", course="sweet", words=listed("jelly, jellies, gelée, fruit jelly, jello, prosecco jelly, wine "
        "jelly, aspic"), food="100 ml apple juice (drinks)",
    ingredients=a_head("12 g sugar (baking), 1/2 sheets gelatine (baking), 1/12 lemons (veg)"),
    steps=(
        on_ring("warm the {it} with the gelatine", 9, 11, 14, tool="medium pot", keeps="20 min in the room",
            look="clear, the gelatine is gone", uses=("{it}", "sugar", "gelatine", "lemons")),
        chilled("chill the jelly until it sets", 240, 300, 360, keeps="2 days in the fridge",
            look="trembles and holds"),
        by_hand("plate the jelly", 4, 6, 8, best="15 min", keeps="30 min in the room"),
    ),
)

BAKED_CUSTARD = Pattern(
    name="baked custard", course="sweet", words=listed("crème brûlée, creme brulee, crème caramel, creme caramel, "
        "flan, baked custard, baked custards, pots de crème, pot de creme, "
        "clafoutis, leche flan"), food="",
    ingredients=a_head("80 ml double cream (dairy), 30 ml whole milk (dairy), 5/8 egg yolks (dairy), 15 g sugar "
        "(baking), 1/12 vanilla pods (baking)"),
    steps=(
        on_ring("scald the cream with the vanilla", 8, 10, 13, tool="medium pot", keeps="10 min hot", uses=("cream",
            "milk", "vanilla")),
        by_hand("whisk the egg yolks and cream together", 7, 9, 12, keeps="10 min in the room", uses=("egg yolks",
            "sugar"), leaves="5/8 egg whites"),
        in_oven(140, "bake the custards in a water bath", 35, 42, 50, shelf=8,
            attended="5 min at the start, 1 min every 15 min, 4 min at the end", cooks="eggs",
            look="set at the rim, a quiver in the middle", keeps="10 min in the room", how="Hot water halfway up "
            "the dishes. Lift the tin out slowly: the water scalds."),
        chilled("chill the custards", 150, 180, 240, keeps="2 days in the fridge", cools="3 cm deep, glass"),
        by_hand("top and serve the custards", 8, 10, 14, best="15 min", keeps="30 min in the room", how="Sugar "
            "under a flame until it is brown: nothing that burns nearby, and hands off the dish."),
    ),
)

POURED_CUSTARD = Pattern(
    name="custard", course="sweet", words=listed("custard, crème anglaise, creme anglaise, vanilla sauce, pastry "
        "cream, crème pâtissière, birds custard, butterscotch pudding, vanilla pudding, chocolate pudding, pudding"),
        food="",
    ingredients=a_head("80 ml whole milk (dairy), 20 ml double cream (dairy), 1/2 egg yolks (dairy), 9 g sugar "
        "(baking), 1/16 vanilla pods (baking)"),
    steps=(
        on_ring("cook the egg yolks, milk and cream to a custard", 14, 17, 21, tool="medium pot", cooks="eggs",
            look="coats a spoon and keeps the line of a finger", best="1 h", keeps="1 h on the stovetop, 1 ring",
            uses=("milk", "cream", "egg yolks", "sugar", "vanilla"), leaves="1/2 egg whites",
            how="Low heat and never still; a sieve beside it. Past 82 °C it curdles. It waits in a bowl over hot "
            "water."),
    ),
)

ICE_CREAM = Pattern(
    name="ice cream", course="sweet", words=listed("ice cream, gelato, ice-cream, frozen yogurt, frozen yoghurt, "
        "frozen custard, kulfi, ices"), food="",
    ingredients=a_head("70 ml double cream (dairy), 50 ml whole milk (dairy), 3/4 egg yolks (dairy), 20 g sugar "
        "(baking), 1/12 vanilla pods (baking), 200 g ice (drinks)"),
    steps=(
        on_ring("cook the egg yolks, milk and cream to a custard", 16, 19, 24, tool="medium pot", cooks="eggs",
            look="coats a spoon", keeps="10 min hot", uses=("cream", "milk", "egg yolks", "sugar", "vanilla"),
            leaves="3/4 egg whites", how="Low heat and never still, until a probe says it is done; through a sieve."),
        cooled("custard", 4, "1 day"),
        left("churn the ice cream", 30, 35, 45, tool="ice cream maker",
            attended="4 min at the start, 4 min at the end", keeps="5 min in the room", how="Without a machine: "
            "into the freezer in a flat tin, and beaten every 40 minutes, four times."),
        frozen("harden the ice cream", 240, 300, 360, keeps="7 days in the freezer"),
        by_hand("scoop the ice cream", 5, 7, 10, best="4 min", keeps="6 min in the room",
            how="Ten minutes in the fridge beforehand makes it scoop."),
    ),
)

SORBET = Pattern(
    name="sorbet", course="sweet", words=listed("sorbet, sherbet, granita, water ice, sorbetto, italian ice"),
        food="110 g raspberries (veg)",
    own={"lemon": (12, 15, 20)},
    ingredients=a_head("25 g sugar (baking), 1/8 lemons (veg)"),
    steps=(
        on_ring("boil the sugar to a syrup", 8, 10, 12, tool="small pot", keeps="2 days in the fridge",
            perishable=False, uses=("sugar",)),
        by_hand("blend the {it} with the syrup", 8, 10, 13, tool="stick blender", keeps="1 day in the fridge", uses=(
            "{it}", "lemons")),
        frozen("freeze the sorbet", 300, 360, 420, attended="3 min at the start, 3 min every 1 h",
            keeps="7 days in the freezer", how="In a flat tin, beaten with a fork every hour; a machine needs only "
            "its half hour."),
        by_hand("scoop the sorbet", 5, 7, 10, best="3 min", keeps="5 min in the room"),
    ),
)

PARFAIT = Pattern(
    name="parfait", course="sweet", words=listed("parfait, semifreddo, iced parfait, icebox cake, frozen mousse, "
        "iced nougat, nougat glacé, iced soufflé, arctic roll, bombe"), of=frozenset({"other"}),
        food="45 g raspberries (veg)",
    ingredients=a_head("60 ml double cream (dairy), 5/8 egg yolks (dairy), 18 g sugar (baking), 100 g ice (drinks)"),
    steps=(
        on_ring("cook the egg yolks and sugar over simmering water", 10, 12, 15, tool="small pot", cooks="eggs",
            look="thick and pale, a ribbon stays on top", keeps="20 min in the room", uses=("egg yolks", "sugar"),
            leaves="5/8 egg whites", how="Whisk without a stop over steam until a probe says it is done."),
        by_hand("whisk the yolks cold over ice water", 8, 10, 13, tool="mixer", cools="4 cm deep, metal, ice bath",
            keeps="15 min in the fridge", uses=("ice",)),
        by_hand("whip the cream and fold it in with the {it}", 8, 10, 13, tool="mixer", keeps="10 min in the room",
            uses=("cream", "{it}")),
        frozen("freeze the parfait", 480, 600, 720, keeps="7 days in the freezer", look="hard to the middle"),
        by_hand("turn out and slice the parfait", 6, 8, 11, best="5 min", keeps="8 min in the room", how="The tin a "
            "moment in warm water, a knife dipped in hot; ten minutes in the fridge first make it easier to cut."),
    ),
)

POACHED_FRUIT = Pattern(
    name="poached fruit", course="sweet", done=listed("poached, stewed, mulled"), words=listed("compote, poached "
        "pears, stewed fruit, fruit compote, stewed rhubarb, pears in wine, pears in red wine, peaches in wine"),
        of=frozenset({"other"}), food="150 g pears (veg)",
    own={"pear": (25, 30, 38), "peach": (10, 12, 15), "rhubarb": (8, 10, 12), "plum": (8, 10, 13), "quince": (75, 90,
        110), "apple": (15, 18, 22), "apricot": (8, 10, 12), "fig": (8, 10, 12), "cherry": (6, 8, 10)},
    ingredients=a_head("60 ml water, 25 g sugar (baking), 1/8 lemons (veg), 1/8 cinnamon sticks (store cupboard)"),
    steps=(
        by_hand("peel the {it}", 10, 13, 18, keeps="30 min in the room", perishable=False),
        on_ring("poach the {it}", 18, 22, 28, own=True, tool="medium pot",
            attended="4 min at the start, 1 min every 10 min, 2 min at the end",
            look="a knife goes in with no push, they hold their shape", keeps="1 h 30 in the room", uses=("{it}",
            "water", "sugar", "lemons", "cinnamon")),
        chilled("chill the {it} in the syrup", 90, 120, 180, keeps="3 days in the fridge", cools="4 cm deep, glass"),
        by_hand("plate the {it}", 6, 8, 11, best="20 min", keeps="1 h in the room"),
    ),
)

BAKED_FRUIT = Pattern(
    name="baked fruit", course="sweet", words=listed("baked apples, roast plums, roasted plums, baked peaches, "
        "roasted pears, roast figs, roasted figs, grilled peaches, baked pears, roast rhubarb, roasted rhubarb, "
        "grilled pineapple, bananas foster, roast peaches, baked bananas, stuffed apples, roast apricots, roasted "
        "strawberries"), food="160 g apples (veg)",
    own={"apple": (35, 40, 48), "plum": (18, 22, 26), "peach": (20, 24, 28), "fig": (12, 14, 17), "rhubarb": (18, 20,
        24), "pear": (35, 40, 48)},
    ingredients=a_head("10 g brown sugar (baking), 6 g butter (dairy), 30 ml double cream (dairy)"),
    steps=(
        by_hand("cut the {it} into the dish", 8, 10, 14, keeps="1 h in the room", perishable=False, uses=("{it}",
            "sugar", "butter")),
        in_oven(190, "bake the {it}", 25, 30, 36, own=True, shelf=10, look="soft, the juice thick", best="30 min",
            keeps="1 h in the room"),
        by_hand("plate the {it} with the cream", 5, 6, 8, best="12 min", keeps="20 min in the room", uses=("cream",)),
    ),
)

FRUIT_SALAD = Pattern(
    name="fresh fruit", course="sweet", words=listed("fruit salad, macedonia, macédoine, fruit platter, fruit "
        "plate, ambrosia salad, sliced oranges"), done=listed(
        "macerated, sugared, sliced, fresh"),
    alone=listed("strawberry, raspberry, orange, melon, pineapple, fig, peach, mango, watermelon, cherry, "
        "blueberry, berries, fruit"), of=frozenset({"other"}), food="160 g mixed fruit (veg)",
    ingredients=a_head("5 g sugar (baking), 1/8 lemons (veg)"),
    steps=(
        by_hand("cut up the {it}", 12, 15, 20, keeps="6 h in the fridge", uses=("{it}", "sugar", "lemons")),
        by_hand("put the {it} in bowls", 3, 4, 6, best="20 min", keeps="45 min in the room"),
    ),
)

CHEESECAKE = Pattern(
    name="cheesecake", course="sweet", words=listed("cheesecake, basque cheesecake, ricotta cake, baked cheesecake"),
        food="",
    ingredients=a_head("80 g cream cheese (dairy), 30 ml double cream (dairy), 22 g sugar (baking), 1/3 eggs "
        "(dairy), 22 g digestive biscuits (baking), 10 g butter (dairy)"),
    steps=(
        by_hand("crush the biscuits and press the base", 9, 11, 14, keeps="1 day in the fridge", perishable=False,
            uses=("biscuits", "butter")),
        by_hand("beat the eggs, cream cheese and sugar", 8, 10, 13, tool="mixer", keeps="10 min in the room", uses=(
            "cream cheese", "cream", "sugar", "eggs")),
        in_oven(150, "bake the cheesecake", 50, 55, 65, shelf=12, cooks="eggs", attended=ENDS,
            look="set at the rim, a quiver in the middle", keeps="30 min in the room"),
        chilled("chill the cheesecake", 300, 360, 480, keeps="2 days in the fridge", cools="4 cm deep, metal"),
        by_hand("cut and plate the cheesecake", 5, 7, 10, best="20 min", keeps="40 min in the room"),
    ),
)

LAYERED = Pattern(
    name="layered in a bowl", course="sweet", words=listed("trifle, tiramisu, tiramisù, banana pudding, charlotte, "
        "summer pudding, sundae, knickerbocker glory, zuccotto"), food="80 g raspberries (veg)",
    ingredients=a_head("30 g sponge fingers (baking), 60 ml double cream (dairy), 40 g mascarpone (dairy), 12 g "
        "sugar (baking)"),
    steps=(
        by_hand("whip the cream with the mascarpone", 5, 6, 8, tool="mixer", keeps="30 min in the fridge", uses=(
            "cream", "mascarpone", "sugar"), how="No raw egg is in this one."),
        by_hand("layer the sponge, {it} and cream", 9, 11, 15, keeps="10 min in the room", uses=("{it}", "sponge")),
        chilled("chill the layers", 240, 300, 480, keeps="1 day in the fridge"),
        by_hand("finish and portion the layers", 4, 6, 8, best="20 min", keeps="35 min in the room"),
    ),
)

RICE_PUDDING = Pattern(
    name="rice pudding", course="sweet", words=listed("rice pudding, arroz con leche, kheer, semolina, tapioca "
        "pudding, porridge"), food="",
    ingredients=a_head("25 g pudding rice (store cupboard), 160 ml whole milk (dairy), 25 ml double cream (dairy), "
        "14 g sugar (baking), 1/12 vanilla pods (baking)"),
    steps=(
        on_ring("simmer the rice in the milk", 35, 40, 48, tool="medium pot",
            attended="5 min at the start, 1 min every 5 min, 2 min at the end", look="creamy, the grains soft",
            best="25 min", keeps="1 h on the stovetop, 1 ring", uses=("rice", "milk", "cream", "sugar", "vanilla")),
    ),
)

TRUFFLES = Pattern(
    name="chocolate truffles", course="sweet", words=listed("truffles, chocolate truffles, chocolate bark, rocky "
        "road, fudge, caramels, salted caramels, chocolate salami, nougat, marshmallows, honeycomb, toffee"), food="",
    ingredients=a_head("20 g dark chocolate (baking), 15 ml double cream (dairy), 3 g cocoa powder (baking)"),
    steps=(
        on_ring("scald the cream and melt the chocolate in it", 7, 9, 12, tool="small pot", keeps="20 min in the room",
            uses=("chocolate", "cream")),
        chilled("chill the ganache firm", 120, 150, 180, keeps="2 days in the fridge"),
        by_hand("roll the truffles in cocoa", 14, 18, 24, keeps="2 days in the fridge", uses=("cocoa",)),
        by_hand("set out the truffles", 2, 3, 4, best="1 h", keeps="1 h 30 in the room"),
    ),
)

FAMILY = (CHEESE_BOARD, MOUSSE, SET_CREAM, JELLY, BAKED_CUSTARD, POURED_CUSTARD, ICE_CREAM, SORBET, PARFAIT,
    POACHED_FRUIT, BAKED_FRUIT, FRUIT_SALAD, CHEESECAKE, LAYERED, RICE_PUDDING, TRUFFLES)
