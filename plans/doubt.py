"""What two readings disagree on: where the second reader holds another answer for likelier, it is asked back.

No field that the grammar has read is changed by it, and a sign is only ever added or asked about.
"""

from __future__ import annotations

from collections.abc import Mapping

from plans.checkin import Completion, Flag
from plans.scopes import Said
from plans.second_reading import FIELDS, Answer, second_reading, words_of
from plans.wording import Unit

UNLIKELY: dict[Flag | None, float] = {None: 0.9, Flag.CLINICIAN: 1.5, Flag.SAME_DAY: 1.5, Flag.EMERGENCY: 6.0}
"""By the red flag that was read: a reading is asked back from here on, as minus the natural logarithm of how likely the
second reader holds it for, all fields together. Beside a sign, which is acted upon anyway, it takes more. Chosen, as
the next, by reading each writer's replies with a second reader who had not learnt from them
(`tests/bench/first_readings.py`)."""
SIGN, FEW = -0.5, 6
"""From so much likelier than none on, as a natural logarithm, a sign is suspected that the grammar has not read: even
one that is somewhat less likely than none. Of fewer words and marks than these it knows too little."""
NO_SIGN, NO_EMERGENCY = 2.0, 4.0
"""So much likelier no sign must be for one to be asked about that the grammar has read, and for an emergency."""


def doubt_in(reply: Said, read: Mapping[str, Answer], flag: Flag | None) -> str | None:
    """What is doubted most, "completion", "pain" or "why"; None where both readings go well together.

    `read` has every field of a reading. Whether there is a red flag is doubted apart, and one that is sure is acted
    upon whatever else is doubted; a pain beside it stands, as the flag may hang on the number.
    """
    second = second_reading(words_of(reply.units))
    unlikely = {field: second.unlikely(field, read[field]) for field in FIELDS if field != "red_flag"}
    if sum(unlikely.values()) < UNLIKELY[flag]:
        return None
    open_to_doubt = ["completion"] if flag is not None and read["pain"] is not None else ["completion", "pain"]
    if read["completion"] in (Completion.PART, Completion.NONE):
        open_to_doubt.append("why")
    return max(open_to_doubt, key=lambda field: unlikely[field])


def suspected(reply: Said) -> Flag | None:
    """The level of a sign that only the second reader sees, or None.

    What the grammar knows as denied, harmless or somebody else's is not shown to it.
    """
    felt = [unit for unit, denied in zip(reply.units, reply.negated, strict=True) if not (denied or _is_settled(unit))]
    told = words_of(felt)
    level, likelier = second_reading(told).flag()
    return level if likelier >= SIGN and len(told) >= FEW else None


def speaks_against(reply: Said, level: Flag) -> bool:
    """Whether the second reader sees no sign where the grammar has read one, the surer the graver it is."""
    likelier = -second_reading(words_of(reply.units)).flag()[1]
    return likelier >= (NO_EMERGENCY if level is Flag.EMERGENCY else NO_SIGN)


def _is_settled(unit: Unit) -> bool:
    """ "Popped in a session" is known as what was done."""
    settled = unit.theirs or unit.concept in ("harmless", "neg", "none-word", "no-pain")
    return settled or (unit.concept == "done" and " " in unit.text)
