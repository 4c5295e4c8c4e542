"""Short everyday words with two letters swapped, one left out or a neighbouring key hit: "ddi", "lef", "oain".

Guessing at short words would turn ordinary words into alarming ones, so it is done for these words only, and never for
a word that is one itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

_KEYS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")

_WORDS = """
about after again all back because been before better both busy calf chest cold could did dizzy does done down
eight every except exercise feel felt fever fine finished first five flight foot forgot four from going good
great half hard have hips home hurts instead just knee last late later left legs less level little made make
managed many meeting minutes missed more most much neck need not nothing numb okay only other over pain part
please really rest right rounds second send session seven sharp should shoulder sick skip skipped snap some sore
sorry started still stop stretch swollen take than thanks that the them then thing third this three through
tight time tingling tired today took very want well were what when whole with without work worse would yes
"""

_REAL = """
alte alter ate ater atop bard bask beck bee beeb belt ben bene bern bette blight boh boing boot bot bott bren
brom bus bush bust buy buys caf cal calc cale calm celt cession cheat chet cine clam clod cod col cold cole
come cone coot core corry cour dell dere des dick dies dive doan doe dog doge dons doot dore dork dos dose
doss dour dow eat eben eight eine ever evert fake feder fee fel fest fet fide fie fife fight fin find finisher
finishes fins fired fist fizzy flt foes fold fom foo food fook for forgo form fot foto fou founds fro fron fur
gard gave getter ghat ging give god gong goo goof gook goth grat greta habe hace hack had hae hake hal hale
halt har hare harv heck heed hight hime hip hired his hissed hoe hoke hom homs hone hood hook hops hore host
hoth how hps hurt iver jade jake jist jost jut juts kade kate kee kegs kissed knew kore kuch lae lage lager
lal las lash lat late lats layer leas leds lees leet leg lega lens les let lets lett leve leys lgs lots mace
mad madd mads mae mak male mame man manage manager manages mang manu mare mase may mich minute mips mire
misses mist moat mode moe moet mor mors mos mosh mot mote mst mush must nade nave ned nerd nips nome nore
nothin notting ober oder odes oer ofer oka ont otter ove own pan par parr pat pease pin prat prt rake rally
rect reel ret right rime ringling rive rood rook root round sacred sant sap saw scared sed seen sell sen sens
seve shard share shat
shark shape shaped shill shop sic sight sign sik sill sing sip sipped sire sith ski skipper slip slipped sna snp sock
soe soes sold sone sop sown sre stared starred starter stated suck sven tae taek tale tame tan tanks tard tat
tea ten test tha thank thar thay the thee them then there thia thin thong thos though threw ths thus tie tied
tight tim tims tine ting tips tire tires tis tok tome too tool toot tour tow trail treat tree trial tried
trough tuan tying tyree vert vetter vey vine vive wan wang was wat wee weil wel wen wer wha while who wick
wight wit witt woes wok wold won wor wore worm worry yard
"""
"""Words that a slip could be of one of the above and that are words themselves."""


@lru_cache(maxsize=1)
def slips() -> dict[str, str]:
    """Every slip with the word that it is of; one that may be of two words is left out.

    >>> slips()["oain"], slips()["ddi"]
    ('pain', 'did')
    """
    real, found = frozenset((*_WORDS.split(), *_REAL.split())), dict[str, set[str]]()
    for word in _WORDS.split():
        for slip in (*_swapped(word), *_shortened(word), *_beside(word)):
            found.setdefault(slip, set()).add(word)
    return {slip: min(words) for slip, words in found.items() if len(words) == 1 and slip not in real}


def _swapped(word: str) -> Iterator[str]:
    for at in range(len(word) - 1):
        yield word[:at] + word[at + 1] + word[at] + word[at + 2 :]


def _shortened(word: str) -> Iterator[str]:
    if len(word) >= 4:
        yield from (word[:at] + word[at + 1 :] for at in range(1, len(word)))


def _beside(word: str) -> Iterator[str]:
    """The word with one letter replaced by one whose key lies beside; words of three letters are too short for it."""
    if len(word) < 4:
        return
    for at, letter in enumerate(word):
        row = next(row for row, keys in enumerate(_KEYS) if letter in keys)
        key = _KEYS[row].index(letter)
        for other in range(max(0, row - 1), min(row + 2, len(_KEYS))):
            for near in _KEYS[other][max(0, key - 1) : key + 2]:
                if near != letter:
                    yield word[:at] + near + word[at + 1 :]
