"""The questions of a check-in with their buttons, and what is said when an answer calls for a doctor."""

from __future__ import annotations

from collections.abc import Callable

from markupsafe import Markup

from bot.words import Words
from bot.words.message import Button, Message, Rows, column
from plans.checkin import Area, CheckIn, Flag, Kind
from plans.talk import Ask


def first_buttons(words: Words, row: int, *, verb: str = "c") -> Rows:
    """The five ways to say how a session went; `verb` says under which of its messages they stand."""
    _ = words.gettext
    return (
        (Button(_("All done, no pain"), f"{verb}:{row}:all"),),
        (Button(_("Done, some pain"), f"{verb}:{row}:some"), Button(_("Part of it"), f"{verb}:{row}:part")),
        (Button(_("Not today"), f"{verb}:{row}:none"),),
        *odd_button(words, row, verb),
    )


def odd_button(words: Words, row: int, verb: str = "c") -> Rows:
    """A way to say that something is wrong, whatever the row is."""
    return ((Button(words.gettext("Sore, pain or something odd"), f"{verb}:{row}:odd"),),)


def lead_button(words: Words, row: int) -> Rows:
    """A way to be led through the session."""
    return ((Button(words.gettext("Lead me step by step"), f"lead:{row}:begin"),),)


def fix_button(words: Words, row: int) -> Rows:
    """A way to take back what was said of a row."""
    return ((Button(words.gettext("Change this answer"), f"c:{row}:fix"),),)


def numbers(prefix: str, first: int) -> Rows:
    """Plain numbers from `first` to 10 in two rows."""
    row = [Button(str(n), f"{prefix}:{n}") for n in range(first, 11)]
    return tuple(row[:5]), tuple(row[5:])


def ask(words: Words, row: int, missing: Ask, said: CheckIn) -> tuple[Markup, Rows]:
    """One question of the check-in and its buttons."""
    if missing is Ask.FLAG:
        return flag_question(words, row, said)
    return _ASKS[missing](words, row)


def _ask_pain(words: Words, row: int) -> tuple[Markup, Rows]:
    none = Button(words.gettext("No pain after all"), f"c:{row}:pain:0")
    return words.say("checkin.ask_pain"), (*numbers(f"c:{row}:pain", 1), (none,))


def _ask_half(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    rows = column(Button(_("Less than half"), f"c:{row}:half:no"), Button(_("Half or more"), f"c:{row}:half:yes"))
    return words.say("checkin.ask_half"), rows


def _ask_why(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    pairs = (
        (_("No time"), "time"),
        (_("Too hard"), "too-hard"),
        (_("Sore or in pain"), "pain"),
        (_("Ill"), "ill"),
        (_("Something else"), "other"),
    )
    return words.say("checkin.ask_why"), column(*(Button(label, f"c:{row}:why:{key}") for label, key in pairs))


def _ask_kind(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    pairs = (
        (_("Dull, on both sides"), Kind.DULL_BOTH),
        (_("Dull, on one side"), Kind.DULL_ONE),
        (_("Sharp or sudden"), Kind.SHARP),
        (_("Numb, tingling or shooting"), Kind.NERVE),
        (_("Pop, bruise, swelling, no weight on it"), Kind.POP),
        (_("Something else"), Kind.OTHER),
    )
    return words.say("checkin.ask_kind"), column(*(Button(label, f"c:{row}:kind:{key}") for label, key in pairs))


def _ask_place(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    rows = (
        (Button(_("Where we stretch, left"), f"c:{row}:place:here-left"),),
        (Button(_("Where we stretch, right"), f"c:{row}:place:here-right"),),
        (Button(_("Where we stretch, both sides"), f"c:{row}:place:here-both"),),
        (Button(_("Somewhere else"), f"c:{row}:place:elsewhere"),),
    )
    return words.say("checkin.ask_place"), rows


def _ask_area(words: Words, row: int) -> tuple[Markup, Rows]:
    buttons = [Button(name, f"c:{row}:area:{area}") for area, name in _areas(words).items()]
    return words.say("checkin.ask_area"), tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))


def flag_question(words: Words, row: int, said: CheckIn) -> tuple[Markup, Rows]:
    """Whether a warning sign is really there; with what could be an emergency nobody is to wait for the talk."""
    if said.kind is Kind.NERVE and said.flag not in (Flag.EMERGENCY, Flag.SAME_DAY):
        return words.say("day.nerve_question"), _yes_no(words, row)
    return words.say("day.flag_question", emergency=said.flag is Flag.EMERGENCY), _yes_no(words, row)


def _yes_no(words: Words, row: int) -> Rows:
    _ = words.gettext
    return column(Button(_("Yes, that is so"), f"c:{row}:flag:yes"), Button(_("No"), f"c:{row}:flag:no"))


_ASKS: dict[Ask, Callable[[Words, int], tuple[Markup, Rows]]] = {
    Ask.PAIN: _ask_pain,
    Ask.HALF: _ask_half,
    Ask.WHY: _ask_why,
    Ask.KIND: _ask_kind,
    Ask.PLACE: _ask_place,
    Ask.AREA: _ask_area,
}


def area_words(area: Area | None, words: Words) -> str:
    """An area of the body as people name it."""
    return _areas(words).get(area or Area.OTHER, "")


def _areas(words: Words) -> dict[Area, str]:
    _ = words.gettext
    return {
        Area.NECK: _("neck"),
        Area.SHOULDER: _("shoulder"),
        Area.ARM: _("arm, wrist or hand"),
        Area.UPPER_BACK: _("upper back or chest"),
        Area.LOWER_BACK: _("lower back"),
        Area.HIP: _("hip or groin"),
        Area.THIGH: _("thigh"),
        Area.KNEE: _("knee"),
        Area.CALF_OR_FOOT: _("calf, ankle or foot"),
        Area.OTHER: _("another place"),
    }


def caution(words: Words, said: CheckIn) -> Message:
    """The text that comes with a referral: stop, whom to see, how soon; never a diagnosis."""
    level = said.flag if said.flag is not None else _level_of(said)
    return Message(words.say("checkin.caution", level=str(level), told=True))


def _level_of(said: CheckIn) -> Flag:
    grave = said.kind in (Kind.SHARP, Kind.POP) or (said.pain or 0) >= 8
    return Flag.SAME_DAY if grave and said.kind is not Kind.NERVE else Flag.CLINICIAN
