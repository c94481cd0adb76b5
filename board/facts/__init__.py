"""Facts of kitchen and table, each with its source beside it.

For the other rooms: `allergens`, `by_hand`, `called`, `cooling`, `dangers`, `degrees`, `dial`, `diets`, `drinks`,
`food`, `foods`, `heat`, `held`, `jobs`, `limits`, `lives`, `mentions`, `named`, `origins`, `phrases`, `raw_keeps`,
`reading`, `rule_set`, `rule_sets`, `safety`, `tableware`, `units`, `weights`.
"""
