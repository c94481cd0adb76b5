"""The ways of cooking, one table a family of dishes; common practice, no source.

For the other rooms: `bought`, `by_name`, `doughs`, `fish`, `meat`, `methods`, `other_dishes`, `starters`, `stores`,
`sweets`, `vegetables`.
"""
