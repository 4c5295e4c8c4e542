"""Alarming words that are said of a thing: of a balloon, the power, a needle, a cat. Each needs its evidence."""

from __future__ import annotations

from plans import words_en
from plans.neighbours import AGENTS, COMPARING, NOTHING, NUMBERS, SIGNS, next_to, phrase
from plans.numbers_written import BODY
from plans.wording import Unit, words


def of_a_thing(found: list[Unit], index: int) -> str | None:
    """ "The balloon popped", "my swollen ego", "heard a pop, it was the toaster": a thing, and no part of the body."""
    things = _THINGS.get(found[index].concept, frozenset())
    own = phrase(found, index, by_and=True)
    compared = any(found[i].text.split(" ")[0] in COMPARING for i in own if i < index)
    if compared or any(found[i].concept in BODY for i in own) or _and_a_limb(found, own.stop):
        return None
    told = next_to(found, index, _steps(found, index)).text.split(" ")[0] in things or _is_subject(found, index, things)
    return "harmless" if told or _turned_out(found, index, things) else None


def _and_a_limb(found: list[Unit], index: int) -> bool:
    """ "Bruised my pride and my knee"."""
    return next_to(found, index, 0).concept == "and" and any(
        unit.concept in BODY for unit in found[index + 1 : index + 4]
    )


def _steps(found: list[Unit], index: int) -> int:
    """How far on the thing stands: past an article, or a number, also "like 12 balloons"; not "like a balloon"."""
    if next_to(found, index).text in ("my", "the", "a", "an", "our", "some", "all"):
        return 3 if next_to(found, index, 2).concept in ("fine", "pleasant") else 2
    about = 1
    while next_to(found, index, about).concept == "about" and about < 3:
        about += 1
    return about + 1 if next_to(found, index, about).concept in NUMBERS else 1


def _is_subject(found: list[Unit], index: int, things: frozenset[str]) -> bool:
    """Whether a thing stands right before the verb, also "the balloon of my grandson", and no "from" before it."""
    at = index - 1
    while at > 0 and (found[at].concept in ("pass", "was", "so") or found[at].concept == "someone"):
        at -= 1
    if at < 0 or found[at].text not in things:
        return False
    ahead = [unit.text for unit in found[max(0, at - 3) : at]]
    return not set(ahead) & {"from", "on", "off", "in", "at", "to", "out", "onto", "into", "with", "by", "over"}


def _turned_out(found: list[Unit], index: int, things: frozenset[str]) -> bool:
    """Whether what follows says that it was a thing: "… it was just the toaster"."""
    strangers = 0
    for unit in found[index + 1 : index + 9]:
        if unit.text in things:
            return True
        strangers += unit.concept == "word"
        if strangers > 1 or unit.concept not in ("pass", "comma", "end", "about", "but", "was", "number-word", "word"):
            return False
    return False


_THINGS = {concept: words(line) for concept, line in words_en.THINGS.items()}


def put_somewhere(found: list[Unit], index: int) -> str | None:
    """ "I popped the kids at nan's", "will pop it in", "popped home"; not "popped my knee", "it popped"."""
    if not found[index].text.startswith("pop"):
        return None
    before = found[index - 1] if index else NOTHING
    agent = before.concept in ("", "comma", "end", "and", "but", "later") or before.text in AGENTS
    what, thing = next_to(found, index), next_to(found, index, 2)
    if agent and what.text in ("in", "out") and thing.text in ("on", "to", "at", "for"):
        return "harmless"
    if agent and what.text in ("to", "home", "into", "over", "round", "by", "along"):
        return "harmless"
    if (
        agent
        and what.text in ("it", "that", "one", "this", "them")
        and thing.text in ("in", "on", "out", "off", "down")
    ):
        return "harmless"
    owned = what.text in ("the", "a", "an", "my", "our", "some", "his", "her") or what.concept == "someone"
    named = what if what.concept == "someone" else thing
    plain = named.concept not in BODY | SIGNS | {"", "sharp"} and named.text not in _MOMENTS
    return "harmless" if agent and owned and plain else None


_MOMENTS = words("moment instant minute second way whole thing something")


def stabs_at(found: list[Unit], index: int) -> str | None:
    """ "Stabbing at my laptop"; not "stabbing at the back of my knee"."""
    if found[index].text != "stabbing" or next_to(found, index).text != "at":
        return None
    return None if any(unit.concept in BODY for unit in found[index + 2 : index + 5]) else "harmless"


def needlework(found: list[Unit], index: int) -> str | None:
    """Pins and needles of a sewing box: the reply speaks of such work, and the clause of no part of the body."""
    if not {"pins", "needles", "pin"} & set(found[index].text.split()):
        return None
    sewing = any(unit.text in _NEEDLEWORK for unit in found)
    felt = any(found[i].concept in BODY for i in phrase(found, index))
    return "harmless" if sewing and not felt else None


_NEEDLEWORK = words(words_en.NEEDLEWORK)


def without_glasses(found: list[Unit], index: int) -> str | None:
    """ "Blind as a bat without my glasses", "eyes blurry from the onions"."""
    near = {word for unit in found[max(0, index - 6) : index + 8] for word in unit.text.split()}
    lost = near & _LOST and near & words("glasses specs spectacles lenses contacts")
    return (
        "harmless"
        if lost or near & {"onions", "onion", "bat", "rain", "fog", "steam", "mist", "condensation"}
        else None
    )


_LOST = words("without no lost forgot forgotten broke broken missing sat find")


def loads_nothing(found: list[Unit], index: int) -> str | None:
    """ "The video could not load": no leg that bears no weight, where no part of the body is named."""
    loads = found[index].text.endswith(" load")
    return "harmless" if loads and not any(unit.concept in BODY for unit in found) else None


def gave_way_to(found: list[Unit], index: int) -> str | None:
    """ "Gave way to nobody": traffic or a mood, and no joint."""
    if next_to(found, index).text != "to" or any(found[i].concept in BODY for i in phrase(found, index)):
        return None
    near = {word for unit in found[index + 2 : index + 5] for word in unit.text.split()}
    return None if near & words("side left right back front me") else "harmless"


def power_cut(found: list[Unit], index: int) -> str | None:
    """ "A blackout in our street", "no power in the house": it is one of the lights."""
    if found[index].text not in ("blackout", "black out", "no power", "no power in", "without power"):
        return None
    near = [unit.text for unit in found[index + 1 : index + 6]]
    inside = set(near[:1]) & {"in", "across", "at", "on"} or found[index].text.endswith(" in")
    return "harmless" if inside and set(near) & _PLACES else None


_PLACES = words(
    "street town area building city block house village neighbourhood flat road estate region district office"
)


def boring(found: list[Unit], index: int) -> str | None:
    """ "That meeting was so dull": of a thing, where the clause names neither a pain nor a part of the body."""
    clause = phrase(found, index)
    if found[index].text != "dull" or any(found[i].concept in BODY | {"pain", "sore"} for i in clause):
        return None
    ahead = [found[i] for i in clause if i < index]
    told = any(unit.concept in ("time", "word", "someone", "other-why") for unit in ahead)
    return (
        "harmless" if told and any(unit.text.split(" ")[-1] in ("was", "is", "were", "are") for unit in ahead) else None
    )


def pet_on_it(found: list[Unit], index: int) -> str | None:
    """ "The cat sat on my chest": somebody did, and nothing else of the clause is a sign."""
    others = any(found[i].concept in SIGNS - {"on-chest"} for i in phrase(found, index))
    return "harmless" if index and found[index - 1].concept == "someone" and not others else None
