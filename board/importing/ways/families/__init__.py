"""The ways of cooking, one table a family of dishes; common practice, no source.

For the other rooms: `doughs`, `fish`, `meat`, `methods`, `starters`, `stores`, `sweets`, `vegetables`.
"""
