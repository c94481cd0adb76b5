"""Limits that can hurt somebody, each with its source. °C."""

HOT_HOLDING_CELSIUS = 60  # 140 °F or above: USDA FSIS / FoodSafety.gov, keeping food hot at home
