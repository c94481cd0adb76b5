"""Facts of kitchen and table, each with its source beside it.

For the other rooms: `allergens`, `batches`, `by_hand`, `called`, `cooling`, `dangers`, `deeds`, `degrees`, `diets`,
`drinks`, `eaten_raw`, `faults`, `food`, `foods`, `heat`, `held`, `job_words`, `jobs`, `keeping`, `limits`, `lives`,
`made_here`, `meals`, `mentions`, `named`, `origins`, `oven_bends`, `phrases`, `poisons`, `poured`, `raw_keeps`,
`reading`, `rests`, `rule_set`, `rule_sets`, `safety`, `seasoning`, `sections`, `serving`, `sitting`, `spoiling`,
`standing`, `susceptible`, `tableware`, `units`, `washing`, `watched`, `weights`, `workings`.
"""
