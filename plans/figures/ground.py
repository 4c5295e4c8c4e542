"""What holds a body up: nothing of it is below the floor, and who stands free does not fall over."""

from __future__ import annotations

from plans.figures.angles import SIDES, ImpossiblePose
from plans.figures.body import Body, centre_of_mass, thick

SOFT = 0.02
"""Of body height: so deep a part's outside may be in the floor: mats give way, and flesh does."""
ON_FEET = 0.04
"""Of body height: how far the centre of mass may be beyond the feet."""

_JOINTS = {
    "head": ("head", "end"),
    **{f"{side} elbow": (f"{side} forearm", "begin") for side in SIDES},
    **{f"{side} wrist": (f"{side} hand", "begin") for side in SIDES},
    **{f"{side} fingers": (f"{side} fingers", "end") for side in SIDES},
    **{f"{side} knee": (f"{side} shank", "begin") for side in SIDES},
    **{f"{side} ankle": (f"{side} shank", "end") for side in SIDES},
    "pelvis": ("pelvis", "begin"),
    "shoulders": ("thorax 3", "end"),
}


def check_floor(body: Body) -> None:
    """Raises ImpossiblePose for what is below the floor."""
    for joint, (name, end) in _JOINTS.items():
        part = body[name]
        height = (part.begin if end == "begin" else part.end)[2] - thick(name)
        if height < -SOFT:
            raise ImpossiblePose(f"{joint}: {-height:.2f} body heights below the floor; at most {SOFT} is soft ground")
    for side in SIDES:
        foot = body[f"{side} foot"]
        low = min(foot.begin[2], foot.end[2])
        if low < -SOFT:
            raise ImpossiblePose(f"{side} foot: {-low:.2f} body heights below the floor; at most {SOFT} is soft ground")


def check_balance(body: Body) -> None:
    """Raises ImpossiblePose for a body that stands on feet which are not under its centre of mass."""
    both = [body[f"{side} foot"] for side in SIDES]
    feet = [foot for foot in both if min(foot.begin[2], foot.end[2]) < 0.03]
    if not feet:
        return
    at = centre_of_mass(body)
    for axis, word in ((0, "forward"), (1, "to the left")):
        ends = [point[axis] for foot in feet for point in (foot.begin, foot.end)]
        if not min(ends) - ON_FEET <= at[axis] <= max(ends) + ON_FEET:
            raise ImpossiblePose(
                f"falls over: the centre of mass is at {at[axis]:.2f} {word}, "
                f"the feet reach from {min(ends):.2f} to {max(ends):.2f}"
            )
