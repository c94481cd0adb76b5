"""The evening as events: state, forecast, calls, decisions.

For the other rooms: `answers`, `behind`, `busy`, `calls`, `clocks`, `company`, `cooling`, `decide`, `events`, `fold`,
`forecast`, `gone_cold`, `hands`, `insist`, `leftovers`, `order`, `raise_due`, `readings`, `rule`, `slip_wishes`,
`slips`, `state`, `unheated`, `wishes`.
"""
