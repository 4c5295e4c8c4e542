"""Words that are a sign or none by what stands beside them: "shot up to 9", "see double", "a horse on my chest"."""

from __future__ import annotations

from plans.neighbours import AGENTS, COMPARING, NUMBERS, Rule, next_to, phrase
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


def _of_the_body(found: list[Unit], index: int) -> str | None:
    """ "My knee popped back in": what pops up or over is harmless only when somebody does it."""
    if found[index].text == "snapped at":
        return "pop" if any(unit.concept in BODY for unit in found[index + 1 : index + 5]) else None
    if found[index].text.endswith((" a snap", " a pop", " a crack")):
        at = next_to(found, index).text == "at"
        return "pop" if not at and any(unit.concept in BODY for unit in found[index + 1 : index + 5]) else None
    if not found[index].text.startswith(("popped ", "popping ", "pop ", "pops ")):
        return None
    for unit in reversed(found[phrase(found, index).start : index]):
        if unit.concept in BODY or unit.text in ("it", "something"):
            return "pop"
        if unit.concept not in ("pass", "was", "left", "right", "word") or unit.text in AGENTS:
            return None
    return None


def _not_come_back(found: list[Unit], index: int) -> str | None:
    """ "The tingling did not come back" is over; "it is numb, has not come back" speaks of the feeling that is lost."""
    if not found[index].text.endswith("come back"):
        return None
    clause = phrase(found, index)
    return "gone" if any(found[i].concept in ("tingle", "pain") for i in clause if i < index) else None


def _of_a_number(found: list[Unit], index: int) -> str | None:
    """ "A weak 2" is a rating."""
    led = index > 0 and found[index - 1].text.split(" ")[-1] == "a"
    return "pass" if led and next_to(found, index).concept in NUMBERS else None


def _woke_in_the_morning(found: list[Unit], index: int) -> str | None:
    """ "Woke up with pain 5": how the day began; with a night or an hour beside it, pain that wakes."""
    if not found[index].text.endswith("up with"):
        return None
    near = [found[i] for i in phrase(found, index)]
    return (
        None
        if any(unit.concept in ("night", "nightlong", "clock", "lasts") or unit.text in _OFTEN for unit in near)
        else "pass"
    )


_OFTEN = words("at every each again twice three keeps keep always")


def _weighs_on(found: list[Unit], index: int) -> str | None:
    """ "Like wearing a corset of iron across my ribs", "as if a horse stood on my breastbone"."""
    led = index > 1 and found[index - 1].text.split(" ")[-1] in ("my", "the")
    if not led or found[index - 2].text.split(" ")[-1] not in (
        "on",
        "across",
        "round",
        "around",
        "over",
        "against",
        "upon",
    ):
        return None
    ahead = {word for unit in found[max(0, index - 14) : index] for word in unit.text.split()}
    return "on-chest" if ahead & COMPARING | ahead & {"somebody", "someone"} and ahead & _HEAVY else None


_HEAVY = words(
    "corset iron steel horse elephant truck lorry car bus rope belt strap band vice vise stone stones brick "
    "bricks weight "
    "anvil boulder rock fist boot cow bear fridge piano sack cement concrete sandbag somebody someone person man hippo"
)


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
    "ribs": (_weighs_on,),
    **dict.fromkeys(words("big bigger huge fat enormous"), (_big,)),
    "double": (_seen_double,),
    "doubled": (_seen_double,),
    **dict.fromkeys(words("lost losing loosing dropped"), (_lost_weight,)),
    **dict.fromkeys(words("woke woken awake awoke awakened awaken waked"), (_woken_by_pain,)),
}
BY_CONCEPT: dict[str, tuple[Rule, ...]] = {
    "lasts": (_not_come_back,),
    "shoot": (
        _change_of_number,
        _walked,
    ),
    "harmless": (_of_the_body,),
    "swell": (_size_of_a_limb,),
    "wake": (_woke_in_the_morning,),
    "weak": (_of_a_number,),
    "chest": (_weighs_on,),
    "sharp": (_travels,),
}
"""The rules of a word by its text, and by its concept."""
