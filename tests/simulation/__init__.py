"""A seeded simulation of the real program under faults: virtual time, no network, one integer decides everything."""
