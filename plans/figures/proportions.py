"""The measures of the figure: lengths and masses as shares of a body, and how far each joint goes.

Lengths: Drillis & Contini 1966, as printed in Winter, Biomechanics and Motor Control of Human Movement (figure 4.1).
Masses: Dempster's, in the same book (table 4.1). Ranges: American Academy of Orthopaedic Surgeons, Joint Motion. All
from memory. Beyond the printed range of a joint `GIVE` degrees are allowed: stretches go to its end and people
differ (own choice). Where weight or a hand takes a joint further than it goes by itself, the wider range has a note.
"""

from __future__ import annotations

from typing import NamedTuple

LENGTHS = {
    "pelvis": 0.058,
    "lumbar": 0.098,
    "thorax": 0.132,
    "neck": 0.052,
    "head": 0.130,
    "upper-arm": 0.186,
    "forearm": 0.146,
    "hand": 0.085,
    "thigh": 0.245,
    "shank": 0.246,
    "foot": 0.152,
    "ankle-height": 0.039,
}
"""Of body height. Hip to shoulder is 0.288, here in three parts; the hand is drawn a little closed."""

HALF_HIPS, HALF_SHOULDERS = 0.075, 0.115
"""Of body height: from the middle to the joint; narrower than the outer breadths of the book (0.096 and 0.129)."""

HEEL = 0.040
"""Of body height: how far the heel is behind the ankle."""

MASSES = {
    "pelvis": 0.142,
    "lumbar": 0.139,
    "thorax": 0.216,
    "head": 0.081,
    "upper-arm": 0.028,
    "forearm": 0.016,
    "hand": 0.006,
    "thigh": 0.100,
    "shank": 0.0465,
    "foot": 0.0145,
}
"""Of body mass, each limb once."""


class Range(NamedTuple):
    """How far a joint goes, in degrees."""

    low: float
    high: float


GIVE = 10.0
"""Degrees beyond the printed range."""

RANGES: dict[tuple[str, str], Range] = {
    ("spine", "flex"): Range(-30, 90),  # thoracolumbar: extension 30, flexion 80-90
    ("spine", "side"): Range(-35, 35),
    ("spine", "turn"): Range(-45, 45),
    ("neck", "flex"): Range(-45, 45),
    ("neck", "side"): Range(-45, 45),
    ("neck", "turn"): Range(-60, 60),
    ("hip", "flex"): Range(-30, 120),
    ("hip", "out"): Range(-30, 45),
    ("hip", "turn"): Range(-45, 45),  # outward positive
    ("knee", "flex"): Range(-10, 150),  # printed 135; a heel against the seat takes it further
    ("ankle", "flex"): Range(-50, 40),  # printed 20 upwards; under body weight the shin leans further
    ("shoulder", "flex"): Range(-60, 180),
    ("shoulder", "out"): Range(-40, 180),  # across the body negative
    ("shoulder", "turn"): Range(-90, 90),  # outward positive; printed 70 and 90
    ("elbow", "flex"): Range(0, 150),
    ("wrist", "flex"): Range(-70, 80),
}
