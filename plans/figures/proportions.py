"""The measures of the figure: lengths, thicknesses and masses as shares of a body, and how far each joint goes.

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
    "upper arm": 0.186,
    "forearm": 0.146,
    "hand": 0.102,
    "fingers": 0.029,
    "tips": 0.021,
    "thumb": 0.042,
    "thigh": 0.245,
    "shank": 0.246,
    "foot": 0.152,
    "ankle height": 0.039,
}
"""Of body height. Hip to shoulder is 0.288, here in three parts. The hand is drawn a little small (printed
0.108): its palm, and on it fingers and tips; a hand's length is that to its tips when it is flat."""

HALF_HIPS, HALF_SHOULDERS = 0.075, 0.115
"""Of body height: from the middle to the joint; narrower than the outer breadths of the book (0.096 and 0.129)."""

COLLAR = 0.020
"""Of body height: from the middle to where a shoulder girdle turns, above the breastbone (own choice)."""

HEEL = 0.040
"""Of body height: how far the heel is behind the ankle."""

THICK = {
    "pelvis": 0.062,
    "lumbar": 0.056,
    "thorax": 0.062,
    "head": 0.060,
    "neck": 0.030,
    "thigh": 0.042,
    "shank": 0.030,
    "foot": 0.018,
    "upper arm": 0.025,
    "forearm": 0.021,
    "hand": 0.012,
    "fingers": 0.010,
    "tips": 0.009,
    "thumb": 0.009,
}
"""Half of each part's thickness, of body height (own choice, for the look)."""

WIDE = {"pelvis": 0.098, "lumbar": 0.080, "thorax": 0.108}
"""Half of the trunk's breadth, of body height (own choice, for the look)."""

MASSES = {
    "pelvis": 0.142,
    "lumbar": 0.139,
    "thorax": 0.216,
    "head": 0.081,
    "upper arm": 0.028,
    "forearm": 0.016,
    "hand": 0.006,
    "thigh": 0.100,
    "shank": 0.0465,
    "foot": 0.0145,
}
"""Of body mass, each limb once; fingers are in the hand, the neck in the head."""


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
    ("hip", "turn"): Range(-45, 45),  # outward positive; further outward when it is bent, see BENT_HIP
    ("knee", "flex"): Range(-10, 150),  # printed 135; a heel against the seat takes it further
    ("ankle", "flex"): Range(-65, 40),  # printed 50 and 20; a foot that lies on its top, a shin that leans under weight
    ("ankle", "out"): Range(-35, 15),  # the sole turned outward (eversion) positive
    ("ankle", "turn"): Range(-35, 35),  # toes against the shin; most of it the bent knee's own turn (Kapandji)
    ("girdle", "up"): Range(-10, 40),  # at the collar bone's inner end: Neumann, Kinesiology
    ("girdle", "back"): Range(-30, 30),
    ("shoulder", "flex"): Range(-60, 180),
    ("shoulder", "out"): Range(-40, 180),  # across the body negative
    ("shoulder", "turn"): Range(-90, 90),  # outward positive; printed 70 and 90
    ("elbow", "flex"): Range(0, 150),
    ("forearm", "turn"): Range(-80, 80),  # palm up (supination) positive, from thumb up
    ("wrist", "flex"): Range(-85, 85),  # printed 70 and 80; weight or the other hand takes it further
    ("wrist", "out"): Range(-30, 20),  # towards the thumb positive
}

BENT_HIP = 20.0
"""Degrees that a hip bent to 90 turns outward beyond a straight one: its front ligaments slacken as it bends. The
Academy prints one range for both; passive turn-out of dancers and of people who practise yoga is reported at 60 to 75,
and an ankle that lies on the other knee needs about 70. From memory of such studies, no table at hand."""
