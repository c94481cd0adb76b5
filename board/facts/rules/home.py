"""The home rules: advice of USDA FSIS and FoodSafety.gov to households.

Figures read in copies of their charts unless marked "from memory".
"""

from board.facts.limits import Cook, CoolingStage, Degrees, FridgeLife, OutRule, Reheat, Thaw
from board.facts.rule_set import RuleSet

RULES = RuleSet(
    name="home",
    title="home rules (USDA FSIS / FoodSafety.gov)",
    cook={
        "poultry": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: all poultry, whole, in parts or ground",
        ),
        "ground meat": Cook(
            Degrees(fahrenheit=160, celsius=71),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: ground meat",
        ),
        "whole cut": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=0,
            rest_minutes=3,
            source="FoodSafety.gov, safe minimum internal temperatures: steaks, chops, roasts, fresh ham; rest 3 min",
            also=(
                Cook(
                    Degrees(fahrenheit=160, celsius=71),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="our reading: what does for ground meat, of which more is asked, does for a whole cut",
                ),
            ),
        ),
        "injected meat": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=0,
            rest_minutes=3,
            source="USDA FSIS, on mechanically tenderized and injected beef, 2015; the label goes first",
            also=(
                Cook(
                    Degrees(fahrenheit=160, celsius=71),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="our reading: what does for ground meat does for injected meat",
                ),
            ),
        ),
        "fish": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: fish and shellfish",
        ),
        "eggs": Cook(
            Degrees(fahrenheit=160, celsius=71),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: egg dishes; eggs until white and yolk are firm",
        ),
        "held eggs": Cook(
            Degrees(fahrenheit=160, celsius=71),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: egg dishes",
        ),
        "stuffed": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: stuffing, alone or in the bird",
        ),
        "leftovers": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: leftovers",
        ),
        "casserole": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FoodSafety.gov, safe minimum internal temperatures: casseroles",
        ),
    },
    roasts=(),
    roasts_source="the home advice has no table of roasts",
    roast_holding=None,
    roast_holding_source="the home advice knows no lower holding for roasts",
    danger_low=Degrees(fahrenheit=40, celsius=4),
    danger_high=Degrees(fahrenheit=140, celsius=60),
    danger_source="USDA FSIS, danger zone 40-140 °F",
    hot_holding=Degrees(fahrenheit=140, celsius=60),
    cold_holding=Degrees(fahrenheit=40, celsius=4),
    holding_source="USDA FSIS: hot food at 140 °F or above, the fridge at 40 °F or below",
    reheat=Reheat(
        Degrees(fahrenheit=165, celsius=74),
        within_minutes=120,
        source="USDA FSIS, leftovers: to 165 °F; the time is its two-hour rule for the danger zone",
    ),
    out=OutRule(
        minutes=120,
        hot_air=Degrees(fahrenheit=90, celsius=32),
        hot_air_minutes=60,
        source="USDA FSIS, danger zone: 2 h, and 1 h when the air is above 90 °F",
    ),
    time_alone=None,
    cooling=(
        CoolingStage(
            start=Degrees(fahrenheit=135, celsius=57),
            end=Degrees(fahrenheit=70, celsius=21),
            within_minutes=120,
            source="FDA Food Code 3-501.14(A)(1); the home advice gives no stages, only food put away within 2 h",
        ),
        CoolingStage(
            start=Degrees(fahrenheit=135, celsius=57),
            end=Degrees(fahrenheit=41, celsius=5),
            within_minutes=360,
            source="FDA Food Code 3-501.14(A)(2); the home advice gives no stages, only food put away within 2 h",
        ),
    ),
    from_room_minutes=240,
    from_room_source="FDA Food Code 3-501.14(B); the home advice has no figure of its own",
    fridge_lives={
        "soup or stew": FridgeLife(3, 4, source="FoodSafety.gov, cold food storage chart: soups and stews"),
        "cooked meat or poultry": FridgeLife(3, 4, source="FoodSafety.gov, cold food storage chart: leftovers"),
        "other cooked food": FridgeLife(3, 4, source="USDA FSIS, leftovers and food safety: 3 to 4 days; from memory"),
        "dressed salad": FridgeLife(
            3, 4, source="FoodSafety.gov, cold food storage chart: salads of egg, chicken, ham, tuna or pasta"
        ),
        "hard-cooked eggs": FridgeLife(7, 7, source="FoodSafety.gov, cold food storage chart: 1 week"),
        "custard": FridgeLife(3, 4, source="FoodSafety.gov, cold food storage chart: custard pies; from memory"),
        "raw whole cut": FridgeLife(3, 5, source="FoodSafety.gov, cold food storage chart: steaks, chops, roasts"),
        "raw poultry": FridgeLife(1, 2, source="FoodSafety.gov, cold food storage chart: fresh poultry"),
        "raw ground meat": FridgeLife(1, 2, source="FoodSafety.gov, cold food storage chart: ground meat and poultry"),
        "raw fish": FridgeLife(1, 3, source="FoodSafety.gov, cold food storage chart: fin fish"),
        "raw egg whites or yolks": FridgeLife(2, 4, source="FoodSafety.gov, cold food storage chart: raw eggs, opened"),
    },
    ready_to_eat_days=None,
    ready_to_eat_source="the home advice counts elapsed days: its cold food storage chart",
    thaw=Thaw(
        fridge_pounds=4,
        water_minutes_a_pound=30,
        change_water_minutes=30,
        source="USDA FSIS, safe defrosting: a day in the fridge for each 4-5 lb (the longer taken), or 30 min a pound "
        "in cold water changed every 30 min, then cooked at once",
    ),
)
