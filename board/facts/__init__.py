"""Facts of kitchen and table, each with its source beside it.

For the other rooms: `allergens`, `batches`, `by_hand`, `called`, `cooling`, `dangers`, `deeds`, `degrees`, `diets`,
`drinks`, `eaten_raw`, `faults`, `food`, `foods`, `heat`, `held`, `job_words`, `jobs`, `limits`, `lives`, `meals`,
`mentions`, `named`, `origins`, `phrases`, `poisons`, `raw_keeps`, `reading`, `rests`, `rule_set`, `rule_sets`,
`safety`, `spoiling`, `susceptible`, `tableware`, `units`, `weights`, `workings`.
"""
