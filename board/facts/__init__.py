"""Facts of kitchen and table, each with its source beside it.

For the other rooms: `allergens`, `by_hand`, `called`, `cooling`, `dangers`, `degrees`, `dial`, `diets`, `drinks`,
`food`, `foods`, `heat`, `jobs`, `limits`, `lives`, `named`, `origins`, `phrases`, `raw_keeps`, `rule_set`,
`rule_sets`, `safety`, `susceptible`, `tableware`, `units`, `weights`.
"""
