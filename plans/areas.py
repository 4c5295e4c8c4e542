"""Areas of the body as a client names them, and what loads each: muscles, and movements with certain cautions.

Which muscles and cautions belong to an area is common practice of coaching; where in doubt it is more rather than less.
"""

from __future__ import annotations

from dataclasses import dataclass

from plans.cautions import Caution
from plans.checkin import Area
from plans.movements import Movement, Muscle


@dataclass(frozen=True, slots=True)
class _Load:
    muscles: frozenset[Muscle]
    cautions: frozenset[Caution]


def _load(muscles: tuple[Muscle, ...], cautions: tuple[Caution, ...] = ()) -> _Load:
    return _Load(frozenset(muscles), frozenset(cautions))


_M, _C = Muscle, Caution
_LOADS = {
    Area.NECK: _load((_M.NECK,), (_C.END_RANGE_NECK, _C.WEIGHT_ON_NECK, _C.HEAD_BELOW_HEART)),
    Area.SHOULDER: _load((_M.SHOULDERS, _M.LATS, _M.CHEST), (_C.SHOULDER_END_RANGE, _C.WEIGHT_ON_WRISTS)),
    Area.ARM: _load((_M.FOREARMS,), (_C.WEIGHT_ON_WRISTS, _C.REACH_WITH_ARM_SYMPTOMS)),
    Area.UPPER_BACK: _load((_M.UPPER_BACK, _M.CHEST), (_C.WEIGHT_ON_NECK,)),
    Area.LOWER_BACK: _load((_M.LOWER_BACK, _M.SIDE_TRUNK, _M.ABDOMEN), (_C.BENDING_UNDER_LOAD, _C.BACK_BEND)),
    Area.HIP: _load((_M.HIP_FLEXORS, _M.HIP_ROTATORS, _M.GLUTES, _M.ADDUCTORS)),
    Area.THIGH: _load((_M.HAMSTRINGS, _M.QUADRICEPS, _M.ADDUCTORS)),
    Area.KNEE: _load((_M.QUADRICEPS,), (_C.KNEELING, _C.DEEP_KNEE_BEND)),
    Area.CALF_OR_FOOT: _load((_M.CALVES, _M.ANKLES, _M.FEET)),
    Area.OTHER: _load(()),
}


def loads(movement: Movement, area: Area) -> bool:
    """Whether a movement works in an area or is one to be careful with there.

    >>> from plans.movements import library
    >>> loads(library()["pigeon-on-the-floor"], Area.HIP), loads(library()["pigeon-on-the-floor"], Area.NECK)
    (True, False)
    """
    load = _LOADS[area]
    worked = {*movement.main, *movement.also, *movement.other_side}
    return bool(load.muscles & worked) or bool(load.cautions & set(movement.cautions))
