"""The ways of cooking, one table a family of dishes; common practice, no source.

For the other rooms: `bought`, `doughs`, `fish`, `meat`, `methods`, `other_dishes`, `starters`, `stores`, `sweets`,
`vegetables`.
"""
