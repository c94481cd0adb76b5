"""Limits that can hurt somebody, each with its source. °C."""

HOT_HOLDING_CELSIUS = 60  # 140 °F or above: USDA FSIS / FoodSafety.gov, keeping food hot at home

# °C figure → the °C of the °F figure it is written as: 145 °F/63 °C and 165 °F/74 °C, FDA Food Code 3-401.11(A).
# A probe that shows °F can never show more than the second for the first.
SAME_CELSIUS = {63.0: (145 - 32) * 5 / 9, 74.0: (165 - 32) * 5 / 9}
