"""Guests against dishes and drinks: who may eat what.

For the other rooms: `dietary_needs`, `guest_snags`, `guests_eat`, `ingredient_facts`, `plates`, `poured`, `verdict`.
"""
