"""Alarming words that are none: of a mood, a laugh, sleep, a movement, a thing. Each needs its evidence."""

from __future__ import annotations

from plans import words_en
from plans.harmless_things import (
    boring,
    gave_way_to,
    loads_nothing,
    needlework,
    of_a_thing,
    pet_on_it,
    power_cut,
    put_somewhere,
    stabs_at,
    without_glasses,
)
from plans.neighbours import NOTHING, SIGNS, Rule, next_to, phrase
from plans.numbers_written import BODY
from plans.wording import Unit, words


def _same_here(found: list[Unit], index: int) -> str | None:
    """ "Snap! Me and my sister both did it": a call, in a reply that tells of no body and no sign."""
    called = index == 0 and found[0].text == "snap" and next_to(found, 0).concept in ("comma", "end")
    return "harmless" if called and not any(unit.concept in BODY | SIGNS for unit in found[1:]) else None


def _by_a_feeling(found: list[Unit], index: int) -> str | None:
    """ "Tingly with excitement", "paralysed by indecision", "head spinning from all the paperwork"."""
    clause = phrase(found, index)
    if any(found[i].concept in BODY and found[i].text not in ("head", "heart", "body", "side") for i in clause):
        return None
    for here in range(index + 1, min(index + 4, clause.stop)):
        led = set(found[here].text.split()) & {"with", "from", "by", "of"}
        ahead = {word for unit in found[here : here + 5] for word in unit.text.split()}
        if led and (ahead & _FEELINGS_AND_MATTERS or ("cold" in ahead and found[index].concept == "numb")):
            return "harmless"
    return None


_FEELINGS_AND_MATTERS = words(words_en.HARMLESS_CAUSES)


def _by_laughing(found: list[Unit], index: int) -> str | None:
    """ "Laughed so hard I could not breathe", "wetting myself laughing": with no other sign in the sentence."""
    near = range(max(0, index - 8), min(len(found), index + 5))
    laughs = any(_LAUGHS & set(found[i].text.split()) and found[i - 1].concept != "neg" for i in near)
    others = any(found[i].concept in ("chest", "dizzy", "press", "pain", "heart", "numb", "lasts") for i in near)
    return "harmless" if laughs and not others else None


_LAUGHS = words("laughing laughed laugh laughter giggling giggles giggled")


def _killing(found: list[Unit], index: int) -> str | None:
    """ "The deadline is killing me", "this heat is killing us": no pain, where no part of the body is named."""
    if not found[index].text.endswith(("killing", "killing me")) or any(
        found[i].concept in BODY for i in phrase(found, index)
    ):
        return None
    ahead = found[max(phrase(found, index).start, index - 4) : index]
    told = any(unit.concept in ("time", "other-why", "someone") or set(unit.text.split()) & _KILLERS for unit in ahead)
    return "harmless" if told else None


_KILLERS = words(
    "heat weather heatwave wave traffic commute job kids week schedule boredom rain humidity suspense work tiredness"
)


def _buzzing(found: list[Unit], index: int) -> str | None:
    """ "Absolutely buzzing", "buzzing after that": glad, where no part of the body is named."""
    if found[index].text != "buzzing" or any(found[i].concept in BODY for i in phrase(found, index)):
        return None
    before = found[index - 1].text.split(" ")[-1] if index else ""
    glad = before in ("absolutely", "proper", "pure", "so", "totally", "am", "are", "properly")
    return "harmless" if glad or next_to(found, index).text in ("after", "for", "about", "with") else None


def _weak_at(found: list[Unit], index: int) -> str | None:
    """ "Weak at maths"; "my knees went weak when I saw the bill"."""
    near = {word for unit in found[index + 1 : index + 4] for word in unit.text.split()}
    if near & words("maths math english spelling counting numbers remembering names cooking geography"):
        return "harmless"
    knees = any("knees" in unit.text.split() for unit in found[max(0, index - 4) : index + 4])
    links = [i for i in range(index + 1, min(index + 5, len(found))) if found[i].text in ("when", "because", "at")]
    return "harmless" if knees and links and found[links[-1]].text != "at" and _is_moving(found, links[-1]) else None


def _to_a_mind(found: list[Unit], index: int) -> str | None:
    """ "Numb to this rain", "a numbing parade of meetings": nothing of the body is numb."""
    if any(found[i].concept in BODY for i in phrase(found, index)):
        return None
    after, then = next_to(found, index), next_to(found, index, 2)
    touched = "touch" in {unit.text for unit in found[index + 2 : index + 5]}
    if (
        found[index].text == "numb"
        and after.text in ("to", "about")
        and then.concept not in ("", "end", "comma")
        and not touched
    ):
        return "harmless"
    return "harmless" if found[index].text == "numbing" and after.concept == "word" else None


def _in_good_fun(found: list[Unit], index: int) -> str | None:
    """ "On pins and needles before the exam": waiting, and no part of the body."""
    if "pins" not in found[index].text or not index or found[index - 1].text.split(" ")[-1] != "on":
        return None
    walks = {unit.text for unit in found[max(0, index - 5) : index]} & words(
        "walk walking standing step stepping feel feels like"
    )
    return None if walks or any(found[i].concept in BODY for i in phrase(found, index)) else "harmless"


def _nearly_lost_temper(found: list[Unit], index: int) -> str | None:
    """ "I nearly snapped", "I snapped at him": a temper, and no part of the body."""
    before, after = found[index - 1].text if index else "", next_to(found, index)
    near = before in ("nearly", "almost", "i", "finally") and after.concept in ("", "end", "comma", "and", "because")
    nearly = before in ("nearly", "almost") or found[index].text.startswith("snapped at")
    return "harmless" if near and nearly and not any(found[i].concept in BODY for i in phrase(found, index)) else None


def _name_of_a_movement(found: list[Unit], index: int) -> str | None:
    """ "The neck to chest tuck", "the chest one": a movement's name, and no place of a pain."""
    after = next_to(found, index)
    if after.text.split(" ")[0] not in _MOVES:
        return None
    led = found[index - 1].text.split(" ")[-1] if index else "the"
    return (
        "harmless" if led in ("the", "that", "to", "seated", "standing", "floor", "and", "did") or index == 0 else None
    )


_MOVES = words(
    "tuck tucks hug hugs roll rolls twist twists pull pulls drill drills move moves exercise exercises ones mobiliser "
    "mobility rotation rotations raise raises lift lifts curl curls hold holds pose stretcher stretches stretching "
    "flexion opener openers expansion bit bits thing set sets circles press"
)


def _asleep_on_it(found: list[Unit], index: int) -> str | None:
    """ "Passed out on the sofa after work, as in slept", "collapsed onto the couch": tired, and not fainted."""
    near = {word for unit in found[max(0, index - 8) : index + 14] for word in unit.text.split()}
    signs = {unit.concept for unit in found[max(0, index - 8) : index + 14]} & _WITH_A_FAINT
    soft = {word for unit in found[index + 1 : index + 7] for word in unit.text.split()} & _SOFT
    collapsed = found[index].text.startswith("collaps")
    if signs or not (soft or collapsed):
        return None
    return "harmless" if near & _SLEEPY and (soft or near & {"laughing", "laughter"}) else None


_SOFT = words(
    "sofa couch bed settee armchair chair pillow beanbag hammock duvet mattress recliner bunk futon lounger desk"
)


_SLEEPY = words(
    "slept sleep asleep nap napped snoring snored zzz tired exhausted knackered shattered lazy telly tv netflix film "
    "movie drunk hungover pints wine beers pub work shift laughing alarm woke midnight early kids cosy comfy cuppa tea "
    "coffee pizza book traffic commute drive hours journey flight"
)


_WITH_A_FAINT = words("dizzy chest breathless palpitations press heart numb vision speech weak")


def _to_sleep(found: list[Unit], index: int) -> str | None:
    """ "Out cold the minute my head hit the pillow" is sleep."""
    slept = any(unit.text in ("pillow", "pillows", "duvet") for unit in found[index + 1 : index + 12])
    return "harmless" if slept and found[index].text in ("out cold", "passed out", "lights out") else None


def _is_of_a_side(unit: Unit) -> bool:
    return unit.concept in BODY | {"left", "right", "both", "one-side", "half"} or unit.text in ("side", "half")


def _sleeping(found: list[Unit], index: int) -> str | None:
    """ "My grandson was still asleep": somebody sleeps, and no part of the body is named."""
    if not found[index].text.endswith("asleep") or any(found[i].concept in BODY for i in phrase(found, index)):
        return None
    fell = found[index].text == "fell asleep" or (index > 0 and found[index - 1].text.split(" ")[-1] == "fell")
    if fell and not any(_is_of_a_side(found[i]) for i in phrase(found, index)):
        clause = phrase(found, index)
        first = found[max(0, index - 2) : index]
        alone = all(found[i].concept in ("mark", "face", "end", "comma", "later") for i in clause if i > index)
        alone = alone and index - clause.start <= (found[index].text != "fell asleep")
        own = any(set(unit.text.split(" ")) & {"i", "nearly", "almost"} for unit in first)
        return "harmless" if own or alone or _is_nobodys_limb(found, index) else None
    at = index - 1
    while at >= 0 and (found[at].concept in ("was", "lasts", "now") or found[at].text in _BESIDE_SLEEP):
        at -= 1
    sleeper = found[at] if at >= 0 else NOTHING
    return "harmless" if sleeper.concept == "someone" or sleeper.text in _SLEEPERS else None


_BESIDE_SLEEP = words("is are were all fast finally already")
_SLEEPERS = words("i he she they everyone everybody house kids children household baby babies twins toddler")


def _is_nobodys_limb(found: list[Unit], index: int) -> bool:
    """ "Fell asleep putting the baby to bed": the reply names no part of the body, no side, and no "it"."""
    goes_on = index + 1 < len(found) and found[index + 1].concept == "word"
    named = any(_is_of_a_side(unit) or unit.concept in SIGNS for unit in found if unit is not found[index])
    return goes_on and not named and not any(set(unit.text.split(" ")) & {"it", "they"} for unit in found[:index])


def _speaks_for(found: list[Unit], index: int) -> str | None:
    """ "I can't speak for her": nothing is wrong with the speech."""
    whom = next((unit for unit in found[index + 2 : index + 4] if unit.text not in ("my", "the", "our")), NOTHING)
    told = next_to(found, index).text in ("for", "about") and (whom.concept == "someone" or whom.text in _WHOM)
    return "harmless" if told else None


_WHOM = words("her him them others anyone everyone anybody everybody others rest")


def _moved(found: list[Unit], index: int) -> str | None:
    """ "My heart skipped a beat when she said yes": somebody else was the cause."""
    for here in range(index + 1, min(index + 4, len(found))):
        if found[here].text in ("when", "as", "because", "at"):
            return "harmless" if _is_moving(found, here) else None
    return None


def _is_moving(found: list[Unit], link: int) -> bool:
    """Whether what follows is no doing of one's own: "when my song came on", "when I saw him"; no part of the body."""
    after = found[link + 1 : phrase(found, link).stop]
    if any(unit.concept in BODY | SIGNS for unit in after[:3]):
        return False
    first = after[0].text.split(" ")[0] if after else ""
    if first == "i":
        return any(unit.text.split(" ")[0] in _LEARNT for unit in after[1:3])
    told = first in ("he", "she", "they", "we", "somebody", "someone", "everyone") or (
        after[:1] and after[0].concept == "someone"
    )
    return bool(told) or any(unit.text.split(" ")[0] in _HAPPENS for unit in after[1:6])


_LEARNT = words("saw heard read realised realized remembered spotted learned learnt won")


_HAPPENS = words(
    "came scored won said jumped called rang arrived appeared walked texted kissed smiled played announced proposed"
)


def _joyful(found: list[Unit], index: int) -> str | None:
    """A heart that races "with joy", or at a match."""
    near = {word for unit in found[max(0, index - 8) : index + 8] for word in unit.text.split()}
    signs = {unit.concept for unit in found[max(0, index - 8) : index + 8]} & (
        _WITH_A_FAINT - {"heart", "palpitations"}
    )
    return "harmless" if near & _JOYS and not signs else None


_JOYS = words("joy excitement excited happiness goal penalty penalties match cup proposal proposed film movie thriller")


def _at_a_sight(found: list[Unit], index: int) -> str | None:
    """ "Breathless at the view"."""
    ahead = [word for unit in found[index + 1 : index + 4] for word in unit.text.split()]
    seen = ahead[:2] in (["at", "the"], ["at", "this"]) and ahead[2:3] and ahead[2] in _SIGHTS
    return "harmless" if found[index].text == "breathless" and seen else None


_SIGHTS = words("view views sight sunset sunrise scenery landscape beauty")


def _is_awake(found: list[Unit], index: int) -> str | None:
    """ "Feeling sharp today": of the mind, where neither a pain nor a part of the body follows."""
    felt = index > 0 and found[index - 1].text in ("feel", "feeling", "feels", "felt")
    after = [next_to(found, index, steps).concept for steps in (1, 2, 3, 4)]
    return "harmless" if felt and not set(after) & (BODY | SIGNS) else None


BY_CONCEPT: dict[str, tuple[Rule, ...]] = {
    "pain": (_killing,),
    "pop": (
        of_a_thing,
        put_somewhere,
        _same_here,
        _nearly_lost_temper,
    ),
    "bruise": (of_a_thing,),
    "dull": (boring,),
    "on-chest": (pet_on_it,),
    "swell": (
        of_a_thing,
        _by_a_feeling,
    ),
    "numb": (
        _sleeping,
        of_a_thing,
        _to_a_mind,
        _by_a_feeling,
    ),
    "gives-way": (
        of_a_thing,
        gave_way_to,
    ),
    "faint": (
        of_a_thing,
        _to_sleep,
        power_cut,
        _asleep_on_it,
        _by_laughing,
        _by_a_feeling,
    ),
    "no-power": (power_cut,),
    "no-weight": (loads_nothing,),
    "weak": (
        _weak_at,
        of_a_thing,
        _by_a_feeling,
    ),
    "electric": (of_a_thing,),
    "throb": (of_a_thing,),
    "dizzy": (_by_a_feeling,),
    "cant-pee": (_by_laughing,),
    "vision": (without_glasses,),
    "breathless": (
        _by_laughing,
        _by_a_feeling,
        _at_a_sight,
    ),
    "chest": (_name_of_a_movement,),
    "neck": (_name_of_a_movement,),
    "speech": (_speaks_for,),
    "palpitations": (
        _moved,
        _by_a_feeling,
        _joyful,
    ),
    "racing": (
        _joyful,
        _by_a_feeling,
    ),
    "tingle": (
        _buzzing,
        needlework,
        _in_good_fun,
        _by_a_feeling,
    ),
    "sharp": (
        stabs_at,
        _is_awake,
    ),
}
"""The rules by the concept that a word has elsewhere."""
