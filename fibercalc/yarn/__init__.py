"""Yarn: counts, wraps, diameter, skein length, true weight, splitting and reeling."""
