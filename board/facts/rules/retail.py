"""The retail rules: FDA Food Code 2022, chapter 3, for places that sell food.

Figures read in state adoptions of the 2009 to 2017 editions; that 2022 leaves them unchanged is from memory, and so are
the tenths of °C in the table of roasts. Where the code is silent, the home rules apply, and the entry says so.
"""

from board.facts.limits import Cook, CoolingStage, Degrees, FridgeLife, OutRule, Reheat, RoastHold, Thaw, TimeAlone
from board.facts.rule_set import RuleSet

RULES = RuleSet(
    name="retail",
    title="retail rules (FDA Food Code, chapter 3, from memory of the 2022 edition)",
    cook={
        "poultry": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(3)",
        ),
        "ground meat": Cook(
            Degrees(fahrenheit=155, celsius=68),
            hold_seconds=17,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(2); 15 s before the 2017 edition",
            also=(
                Cook(
                    Degrees(fahrenheit=145, celsius=63),
                    hold_seconds=180,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=150, celsius=66),
                    hold_seconds=60,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
            ),
        ),
        "whole cut": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=15,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(1)",
            also=(
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="our reading: what does for ground meat by 3-401.11(A)(2) does here, where less is asked",
                ),
            ),
        ),
        "injected meat": Cook(
            Degrees(fahrenheit=155, celsius=68),
            hold_seconds=17,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(2); 15 s before the 2017 edition",
            also=(
                Cook(
                    Degrees(fahrenheit=145, celsius=63),
                    hold_seconds=180,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=150, celsius=66),
                    hold_seconds=60,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
            ),
        ),
        "fish": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=15,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(1)",
            also=(
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="our reading: what does for ground meat by 3-401.11(A)(2) does here, where less is asked",
                ),
            ),
        ),
        "eggs": Cook(
            Degrees(fahrenheit=145, celsius=63),
            hold_seconds=15,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(1): broken to order and served at once",
            also=(
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="our reading: what does for ground meat by 3-401.11(A)(2) does here, where less is asked",
                ),
            ),
        ),
        "held eggs": Cook(
            Degrees(fahrenheit=155, celsius=68),
            hold_seconds=17,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(2): eggs not served at once; 15 s before the 2017 edition",
            also=(
                Cook(
                    Degrees(fahrenheit=145, celsius=63),
                    hold_seconds=180,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=150, celsius=66),
                    hold_seconds=60,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
                Cook(
                    Degrees(fahrenheit=158, celsius=70),
                    hold_seconds=0,
                    rest_minutes=0,
                    source="FDA Food Code 3-401.11(A)(2), chart",
                ),
            ),
        ),
        "stuffed": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(3)",
        ),
        "leftovers": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=15,
            rest_minutes=0,
            source="FDA Food Code 3-403.11(A): cooked, cooled and reheated for hot holding",
        ),
        "casserole": Cook(
            Degrees(fahrenheit=165, celsius=74),
            hold_seconds=0,
            rest_minutes=0,
            source="FDA Food Code 3-401.11(A)(3), which names stuffings; our reading: dishes of raw and cooked too",
        ),
    },
    roasts=(
        RoastHold(Degrees(fahrenheit=130, celsius=54.4), seconds=112 * 60),
        RoastHold(Degrees(fahrenheit=131, celsius=55.0), seconds=89 * 60),
        RoastHold(Degrees(fahrenheit=133, celsius=56.1), seconds=56 * 60),
        RoastHold(Degrees(fahrenheit=135, celsius=57.2), seconds=36 * 60),
        RoastHold(Degrees(fahrenheit=136, celsius=57.8), seconds=28 * 60),
        RoastHold(Degrees(fahrenheit=138, celsius=58.9), seconds=18 * 60),
        RoastHold(Degrees(fahrenheit=140, celsius=60.0), seconds=12 * 60),
        RoastHold(Degrees(fahrenheit=142, celsius=61.1), seconds=8 * 60),
        RoastHold(Degrees(fahrenheit=144, celsius=62.2), seconds=5 * 60),
        RoastHold(Degrees(fahrenheit=145, celsius=62.8), seconds=4 * 60),
        RoastHold(Degrees(fahrenheit=147, celsius=63.9), seconds=134),
        RoastHold(Degrees(fahrenheit=149, celsius=65.0), seconds=85),
        RoastHold(Degrees(fahrenheit=151, celsius=66.1), seconds=54),
        RoastHold(Degrees(fahrenheit=153, celsius=67.2), seconds=34),
        RoastHold(Degrees(fahrenheit=155, celsius=68.3), seconds=22),
        RoastHold(Degrees(fahrenheit=157, celsius=69.4), seconds=14),
        RoastHold(Degrees(fahrenheit=158, celsius=70.0), seconds=0),
    ),
    roasts_source="FDA Food Code 3-401.11(B)(2)",
    roast_holding=Degrees(fahrenheit=130, celsius=54),
    roast_holding_source="FDA Food Code 3-501.16(A)(1), its exception for roasts",
    danger_low=Degrees(fahrenheit=41, celsius=5),
    danger_high=Degrees(fahrenheit=135, celsius=57),
    danger_source="FDA Food Code 3-501.16(A)",
    hot_holding=Degrees(fahrenheit=135, celsius=57),
    cold_holding=Degrees(fahrenheit=41, celsius=5),
    holding_source="FDA Food Code 3-501.16(A)",
    reheat=Reheat(Degrees(fahrenheit=165, celsius=74), within_minutes=120, source="FDA Food Code 3-403.11(A) and (D)"),
    out=OutRule(
        minutes=120,
        hot_air=Degrees(fahrenheit=90, celsius=32),
        hot_air_minutes=60,
        source="USDA FSIS, danger zone, a home rule: the Food Code gives no time out but by time alone",
    ),
    time_alone=TimeAlone(
        minutes=240,
        cool_minutes=360,
        never_above=Degrees(fahrenheit=70, celsius=21),
        source="FDA Food Code 3-501.19, under a written procedure: 4 h, or 6 h from the cold and never above 70 °F",
    ),
    cooling=(
        CoolingStage(
            start=Degrees(fahrenheit=135, celsius=57),
            end=Degrees(fahrenheit=70, celsius=21),
            within_minutes=120,
            source="FDA Food Code 3-501.14(A)(1)",
        ),
        CoolingStage(
            start=Degrees(fahrenheit=135, celsius=57),
            end=Degrees(fahrenheit=41, celsius=5),
            within_minutes=360,
            source="FDA Food Code 3-501.14(A)(2): 6 h in all",
        ),
    ),
    from_room_minutes=240,
    from_room_source="FDA Food Code 3-501.14(B)",
    fridge_lives={
        "raw whole cut": FridgeLife(3, 5, source="FoodSafety.gov chart, a home rule: the Food Code gives no life"),
        "raw poultry": FridgeLife(1, 2, source="FoodSafety.gov chart, a home rule: the Food Code gives no life"),
        "raw ground meat": FridgeLife(1, 2, source="FoodSafety.gov chart, a home rule: the Food Code gives no life"),
        "raw fish": FridgeLife(1, 3, source="FoodSafety.gov chart, a home rule: the Food Code gives no life"),
        "raw egg whites or yolks": FridgeLife(
            2, 4, source="FoodSafety.gov chart, a home rule: the Food Code gives no life"
        ),
    },
    ready_to_eat_days=7,
    ready_to_eat_source="FDA Food Code 3-501.17(A), held at 41 °F or below",
    thaw=Thaw(
        fridge_pounds=4,
        water_minutes_a_pound=30,
        change_water_minutes=30,
        source="times of USDA FSIS, a home rule; the Food Code, 3-501.13, asks for the cold, or for running water "
        "at 70 °F or below",
    ),
)
