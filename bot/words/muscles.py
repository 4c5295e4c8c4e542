"""Where a movement is felt, as clients say it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from bot.words.doses import Gettext, same
from plans.movements import Muscle


def muscle_words(muscles: Iterable[Muscle], *, gettext: Gettext = same) -> str:
    """Muscle groups as places that a client knows, the first two of them."""
    names = _names(gettext)
    return ", ".join(dict.fromkeys(names[muscle] for muscle in list(muscles)[:2]))


def _names(_: Gettext) -> Mapping[Muscle, str]:
    return {
        Muscle.HIP_FLEXORS: _("front of the hip"),
        Muscle.HIP_ROTATORS: _("deep in the hip"),
        Muscle.GLUTES: _("buttocks"),
        Muscle.HAMSTRINGS: _("back of the thigh"),
        Muscle.QUADRICEPS: _("front of the thigh"),
        Muscle.ADDUCTORS: _("inside of the thigh"),
        Muscle.CALVES: _("calf"),
        Muscle.ANKLES: _("ankle"),
        Muscle.LOWER_BACK: _("lower back"),
        Muscle.UPPER_BACK: _("upper back"),
        Muscle.SIDE_TRUNK: _("side of the trunk"),
        Muscle.ABDOMEN: _("belly"),
        Muscle.CHEST: _("chest"),
        Muscle.SHOULDERS: _("shoulders"),
        Muscle.LATS: _("side of the back"),
        Muscle.NECK: _("neck"),
        Muscle.FOREARMS: _("forearm"),
        Muscle.FEET: _("foot"),
    }
