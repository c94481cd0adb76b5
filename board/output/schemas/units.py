"""What figures and texts of the printed data count or hold."""

from typing import Annotated

from msgspec import Meta

At = Annotated[str, Meta(description="ISO 8601, in the plan's zone", extra_json_schema={"format": "date-time"})]
Date = Annotated[str, Meta(description="ISO 8601", extra_json_schema={"format": "date"})]
Minutes = Annotated[int, Meta(description="minutes")]
PartMinutes = Annotated[float, Meta(description="minutes")]
Celsius = Annotated[float, Meta(description="°C")]
Litres = Annotated[float, Meta(description="litres")]
Share = Annotated[float, Meta(description="0 to 1", ge=0, le=1)]
Count = Annotated[int, Meta(ge=0)]
Range80 = Annotated[list[float], Meta(description="minutes; four of five evenings lie in it", min_length=2)]
Amount = Annotated[float, Meta(description="grams, millilitres or pieces, as its kind says")]
Cents = Annotated[int, Meta(description="hundredths of the currency")]
