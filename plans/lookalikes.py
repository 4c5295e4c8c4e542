"""Words that are a sign or none by what stands beside them: "the balloon popped", "see double", "shot up to 9"."""

from __future__ import annotations

from plans import words_en
from plans.neighbours import NOTHING, NUMBERS, SIGNS, Rule, next_to, phrase
from plans.numbers_written import BODY
from plans.wording import Unit, words


def _change_of_number(found: list[Unit], index: int) -> str | None:
    """ "Shot up to 9": a number that rose or fell is no shooting pain."""
    if not found[index].text.endswith((" up", " down", " to")):
        return None
    small = ("pass", "to", "about")
    first = next((i for i in range(index + 1, min(index + 4, len(found))) if found[i].concept not in small), index)
    counts = next_to(found, first).concept in ("unit", "counted")
    return "to" if found[first].concept in NUMBERS and not counts else None


def _walked(found: list[Unit], index: int) -> str | None:
    """ "Going up the ladder": somebody goes there, and no pain."""
    verb, _, rest = found[index].text.partition(" ")
    if verb not in ("going", "goes", "went", "runs", "running", "ran") or not rest.endswith(("the", "my")):
        return None
    near = {unit.concept for unit in found[index + 1 : index + 5]}
    return None if near & (BODY | {"left", "right", "both"}) else "pass"


def _travels(found: list[Unit], index: int) -> str | None:
    """Lightning that shoots, or goes from one place to another, is a nerve's; else it is only sharp."""
    if not found[index].text.endswith("lightning"):
        return None
    clause = [found[i] for i in phrase(found, index)]
    moves = any(unit.concept in ("shoot", "electric") for unit in clause)
    spans = {"from", "to"} <= {word for unit in clause for word in unit.text.split()}
    return "electric" if moves or spans else None


def _of_a_thing(found: list[Unit], index: int) -> str | None:
    """ "The balloon popped", "my swollen ego", "heard a pop, it was the toaster": a thing, and no part of the body."""
    things = _THINGS.get(found[index].concept, frozenset())
    own = phrase(found, index, by_and=True)
    compared = any(found[i].text.split(" ")[0] in _COMPARING for i in own if i < index)
    if compared or any(found[i].concept in BODY for i in own):
        return None
    told = next_to(found, index).text.split(" ")[0] in things or _is_subject(found, index, things)
    return "harmless" if told or _turned_out(found, index, things) else None


def _is_subject(found: list[Unit], index: int, things: frozenset[str]) -> bool:
    """Whether a thing stands right before the verb, also "the balloon of my grandson", and no "from" before it."""
    at = index - 1
    while at > 0 and (found[at].concept in ("pass", "was") or found[at].concept == "someone"):
        at -= 1
    if at < 0 or found[at].text not in things:
        return False
    ahead = [unit.text for unit in found[max(0, at - 3) : at]]
    return not set(ahead) & {"from", "on", "off", "in", "at", "to", "out", "onto", "into", "with", "by", "over"}


def _turned_out(found: list[Unit], index: int, things: frozenset[str]) -> bool:
    """Whether what follows says that it was a thing: "… it was just the toaster"."""
    for unit in found[index + 1 : index + 9]:
        if unit.text in things:
            return True
        if unit.concept not in ("pass", "comma", "end", "about", "but", "was", "number-word"):
            return False
    return False


_COMPARING = words("like as if felt feels feel feeling")
_THINGS = {concept: words(line) for concept, line in words_en.THINGS.items()}


def _put_somewhere(found: list[Unit], index: int) -> str | None:
    """ "I popped the kids at nan's": a thing is put somewhere; not "I popped my knee", "it popped the moment"."""
    if not found[index].text.startswith("popp"):
        return None
    before = found[index - 1] if index else NOTHING
    agent = before.concept in ("", "comma", "end", "and", "but") or before.text in ("i", "we", "she", "he", "they")
    what, thing = next_to(found, index), next_to(found, index, 2)
    owned = what.text in ("the", "a", "an", "my", "our", "some", "his", "her")
    return "harmless" if agent and owned and thing.concept == "word" and thing.text not in _MOMENTS else None


_MOMENTS = words("moment instant minute second way whole thing something")


def _same_here(found: list[Unit], index: int) -> str | None:
    """ "Snap! Me and my sister both did it": a call, in a reply that tells of no body and no sign."""
    called = index == 0 and found[0].text == "snap" and next_to(found, 0).concept in ("comma", "end")
    return "harmless" if called and not any(unit.concept in BODY | SIGNS for unit in found[1:]) else None


def _stabs_at(found: list[Unit], index: int) -> str | None:
    """ "Stabbing at my laptop"; not "stabbing at the back of my knee"."""
    if found[index].text != "stabbing" or next_to(found, index).text != "at":
        return None
    return None if any(unit.concept in BODY for unit in found[index + 2 : index + 5]) else "harmless"


def _not_come_back(found: list[Unit], index: int) -> str | None:
    """ "The tingling did not come back" is over; "it is numb, has not come back" speaks of the feeling that is lost."""
    if not found[index].text.endswith("come back"):
        return None
    clause = phrase(found, index)
    return "gone" if any(found[i].concept in ("tingle", "pain") for i in clause if i < index) else None


def _needlework(found: list[Unit], index: int) -> str | None:
    """Pins and needles of a sewing box: the reply speaks of such work, and the clause of no part of the body."""
    if not {"pins", "needles", "pin"} & set(found[index].text.split()):
        return None
    sewing = any(unit.text in _NEEDLEWORK for unit in found)
    felt = any(found[i].concept in BODY for i in phrase(found, index))
    return "harmless" if sewing and not felt else None


_NEEDLEWORK = words(words_en.NEEDLEWORK)


def _to_sleep(found: list[Unit], index: int) -> str | None:
    """ "Out cold the minute my head hit the pillow" is sleep."""
    slept = any(unit.text in ("pillow", "pillows", "duvet") for unit in found[index + 1 : index + 12])
    return "harmless" if slept and found[index].text in ("out cold", "passed out", "lights out") else None


def _thick(found: list[Unit], index: int) -> str | None:
    """ "The ankle is thick", "very thick the ankle": thick is swollen only when it is said of a part of the body."""
    clause = phrase(found, index)
    before = [found[i].concept for i in range(clause.start, index) if found[i].concept not in _BETWEEN]
    after = [found[i].concept for i in range(index + 1, clause.stop) if found[i].concept != "pass"]
    return "swell" if {*before[-1:], *after[:1]} & BODY else None


def _big(found: list[Unit], index: int) -> str | None:
    """ "My knee is now big", "the ankle got fat": swollen; not "my big toe", "a big pain in the knee"."""
    if next_to(found, index).concept not in ("", "end", "comma", "and", "lasts", "because"):
        return None
    clause = phrase(found, index)
    before = [found[i].concept for i in range(clause.start, index) if found[i].concept not in _BETWEEN]
    alone = not before and index > clause.start and found[clause.start].concept == "now"
    limbs = [unit for unit in found[max(0, clause.start - 9) : clause.start] if unit.concept in BODY]
    return "swell" if set(before[-1:]) & (BODY - {"heart", "face"}) or (alone and limbs) else None


_BETWEEN = words("pass was now lasts left right both about")


def _size_of_a_limb(found: list[Unit], index: int) -> str | None:
    """ "The size of a melon" is a swelling of a part of the body that the reply names; a cake has a size too."""
    compares = found[index].text.split(" ")[0] in ("size", "twice", "double", "bigger", "way", "thick", "fat", "like")
    return "pass" if compares and not any(unit.concept in BODY for unit in found) else None


def _power_cut(found: list[Unit], index: int) -> str | None:
    """ "A blackout in our street", "no power in the house": it is one of the lights."""
    if found[index].text not in ("blackout", "black out", "no power", "no power in", "without power"):
        return None
    near = [unit.text for unit in found[index + 1 : index + 6]]
    inside = set(near[:1]) & {"in", "across", "at", "on"} or found[index].text.endswith(" in")
    return "harmless" if inside and set(near) & _PLACES else None


_PLACES = words(
    "street town area building city block house village neighbourhood flat road estate region district office"
)


def _speaks_for(found: list[Unit], index: int) -> str | None:
    """ "I can't speak for her": nothing is wrong with the speech."""
    whom = next((unit for unit in found[index + 2 : index + 4] if unit.text not in ("my", "the", "our")), NOTHING)
    told = next_to(found, index).text in ("for", "about") and (whom.concept == "someone" or whom.text in _WHOM)
    return "harmless" if told else None


_WHOM = words("her him them others anyone everyone anybody everybody others rest")


def _moved(found: list[Unit], index: int) -> str | None:
    """ "My heart skipped a beat when she said yes": somebody else was the cause."""
    for here in range(index + 1, min(index + 4, len(found))):
        if found[here].text in ("when", "as", "because"):
            whom = next_to(found, here)
            return "harmless" if whom.concept == "someone" or whom.text in ("he", "she", "they") else None
    return None


def _seen_double(found: list[Unit], index: int) -> str | None:
    """ "See everything double", "you look double to me": double is a trouble of sight only where somebody looks."""
    looks = any(
        unit.text.split(" ")[-1] in _LOOKS for unit in found[max(phrase(found, index).start, index - 4) : index]
    )
    return "vision" if looks else None


_LOOKS = words("see sees saw seeing look looks looked looking")


def _lost_weight(found: list[Unit], index: int) -> str | None:
    """ "Lost 6 kilos": so much weight, and no count of something else."""
    weight = next_to(found, index, 2).text in _WEIGHTS and next_to(found, index).concept in NUMBERS
    return "weight-loss" if weight else None


_WEIGHTS = words("kilo kilos kg kgs pounds lbs lb stone")


def _woken_by_pain(found: list[Unit], index: int) -> str | None:
    """ "Woke at 3 from the hip pain", "awake twice because of the pain": not "woke at 6, pain 2"."""
    for here in range(index + 1, min(index + 10, len(found))):
        if found[here].concept in ("end", "question"):
            return None
        if found[here].text in _CAUSES:
            return "wake" if any(unit.concept == "pain" for unit in found[here + 1 : here + 5]) else None
    return None


_CAUSES = frozenset(("from", "by", "with", "because", "because of", "due to"))


BY_TEXT: dict[str, tuple[Rule, ...]] = {
    "thick": (_thick,),
    **dict.fromkeys(words("big bigger huge fat enormous"), (_big,)),
    "double": (_seen_double,),
    "doubled": (_seen_double,),
    **dict.fromkeys(words("lost losing loosing dropped"), (_lost_weight,)),
    **dict.fromkeys(words("woke woken awake awoke awakened awaken waked"), (_woken_by_pain,)),
}
BY_CONCEPT: dict[str, tuple[Rule, ...]] = {
    "lasts": (_not_come_back,),
    "shoot": (_change_of_number, _walked),
    "pop": (_of_a_thing, _put_somewhere, _same_here),
    "swell": (_of_a_thing, _size_of_a_limb),
    "numb": (_of_a_thing,),
    "gives-way": (_of_a_thing,),
    "faint": (_of_a_thing, _to_sleep, _power_cut),
    "no-power": (_power_cut,),
    "speech": (_speaks_for,),
    "palpitations": (_moved,),
    "tingle": (_needlework,),
    "sharp": (_travels, _stabs_at),
}
"""The rules of a word by its text, and by its concept."""
