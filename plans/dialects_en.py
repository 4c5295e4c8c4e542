"""English as it is spoken, Scots to Singaporean: each word under the written one.

From memory, not from a dictionary. A word that is also an ordinary written one ("me", "fit", "no") is a rewrite, as it
needs the words around it (`rewrites_en`); what is in plain English stays as it is.
"""

from __future__ import annotations

import re

from plans import rewrites_en

_SPOKEN = {
    # --- Scots and Northern ----------------------------------------------------------------------------------------
    "no": "nae",
    "my": "mah",
    "did not": "didnae didna didny didni",
    "do not": "dinnae dinna dinny",
    "can not": "cannae canna canni cyaan kyaan",
    "could not": "couldnae couldna couldny cudnae",
    "was not": "wasnae wasna wisnae wasny",
    "is not": "isnae isna isny",
    "have not": "havenae havena huvnae havny",
    "has not": "hasnae hasna",
    "had not": "hadnae hadna",
    "would not": "wouldnae wouldna widnae",
    "will not": "willnae winnae winna",
    "does not": "doesnae doesna disnae",
    "should not": "shouldnae",
    "head": "heid",
    "sore": "sair",
    "out": "oot",
    "about": "aboot",
    "down": "doon doun",
    "with": "wi wi'",
    "now": "noo",
    "both": "baith",
    "shoulder": "shooder shoother",
    "shoulders": "shooders shoothers",
    "floor": "flair flooer",
    "arm": "airm",
    "arms": "airms",
    "half": "hauf hawf",
    "two": "twa",
    "myself": "maself masel masell mesel meself mysel maesel missen",
    "after": "efter eftir efterwards",
    "home": "hame",
    "work": "wark",
    "from": "fae frae",
    "give": "gie gies",
    "gave": "gied",
    "good": "guid",
    "right": "richt reet",
    "night": "nicht neet",
    "last": "laist",
    "have": "hae huv",
    "to": "tae",
    "do": "dae duh",
    "doing": "daein daeing",
    "done": "daen donne",
    "go": "gan gannin",
    "going": "gaun gawn gonnae",
    "instead": "insteid",
    "house": "hoose",
    "child": "wean bairn wain pikin pickney",
    "children": "weans bairns wains childer pikins",
    "nothing": "nowt nutten nuttn nuttin nuthin nuffin nuffink",
    "anything": "owt anythin",
    "something": "summat sumthin somethin summink",
    "throbbing": "loupin loupin' stoonin stounding stoonding",
    "prickly": "jaggy",
    "very": "gey",
    "old": "auld owd",
    "around": "roond aroond",
    "tired": "wabbit puggled jiggered zonked",
    # --- Southern, American, street --------------------------------------------------------------------------------
    "going to": "finna bouta boutta gon",
    "over there": "yonder",
    "them": "dem",
    "that": "dat",
    # --- Nigerian and Caribbean ------------------------------------------------------------------------------------
    "please": "abeg biko plz plss",
    "problem": "wahala palava",
    "what": "wetin",
    "stomach": "belle",
    "come out": "comot",
    "never": "neva nevah",
    "take": "tek",
    "make": "mek",
    "must": "haffi",
    "on": "pon",
    # --- Indian ----------------------------------------------------------------------------------------------------
    "pain": "dard",
    "fever": "bukhar",
    "dizzy": "chakkar chakar",
    "knee": "ghutna ghutne ghutno",
    "today": "aaj",
    "yes": "haan haanji hanji",
    "little": "thoda thodi likkle lickle",
    "not": "nahi nahin nuh",
    "sir": "sirji",
    "": "yaar ji bhai lah leh lor sia hor meh wor",
    # --- Singaporean -----------------------------------------------------------------------------------------------
    "already": "liao oredi oredy alr",
    "tough": "siong",
    "bored": "sian",
    # --- Irish and Australian --------------------------------------------------------------------------------------
    "afternoon": "arvo",
    "tea break": "smoko",
    "car": "ute",
    "breakfast": "brekkie brekky",
    "your": "yer",
    "you": "yiz youse yous ye'",
    "idiot": "eejit",
}

SPELLED: dict[str, str] = {form: written for written, forms in _SPOKEN.items() for form in forms.split()}
"""Spoken form and written words."""

_REWRITES = {word: tuple((re.compile(was), by) for was, by in found) for word, found in rewrites_en.REWRITES.items()}
_WORD = re.compile(r"[^\W\d_]+(?:'[^\W\d_]*)?|(?<![\w.:/-])2(?= )")
"""A word, or the "2" that may stand for "to" and "too"."""


def in_written_english(plain: str) -> str:
    """A normalised text with what is spoken dialect in the words of written English; all else stays.

    >>> in_written_english("didnae manage it, ma heid is sair")
    'did not manage it, my head is sore'
    """
    told = _WORD.findall(plain)
    if not SPELLED.keys().isdisjoint(told):
        plain = _WORD.sub(lambda found: SPELLED.get(found[0], found[0]), plain)
        told += _WORD.findall(plain)
    for found in (found for word, found in _REWRITES.items() if word in told):
        for was, by in found:
            plain = was.sub(by, plain)
    return " ".join(plain.split())
