"""Guests against dishes and drinks: who may eat what.

For the other rooms: `guest_snags`, `guests_eat`, `plates`, `poured`, `verdict`.
"""
