"""Short everyday words with two letters swapped, one left out or a neighbouring key hit: "ddi", "lef", "oain".

Guessing at short words would turn ordinary words into alarming ones, so it is done for these words only, and never for
a word that is one itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

_KEYS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")

_WORDS = """
about ache aching achy after afterwards again all ankle ankles anyway appointment asleep back because been before
better between both bruised burning busy calf calves came change changed chest cold complete completed
completely could did difficult dizzy does done down dull early easy eight elsewhere evening every everything except
exercise exercises face feel feeling felt fever finally fine fingers finish finished first five flight floor foot
forget forgot four friend from full going gone good great guests half halfway hamstring hamstrings hand hard have
hips hold holiday home hour hurting hurts instead just keeps knee knees last late later left legs less level little
made make managed many meeting message minutes missed more morning most much nearly neck need needles night none
not nothing numb numbness okay only other over overslept pain painful part pause pins place please popped pressure
programme really rest right rounds second send session sessions seven sharp shooting should shoulder shoulders sick
side since skip skipped sleep snap snapped some something sore soreness sorry stabbing started stiff still stop
stretch stretches stretching sudden suddenly swelling swollen take tender than thank thanks that the them then
there thighs thing third this though three through tight tightness till time tingling tired today toes
tomorrow tonight took travelling until very visitors want weak weakness week weight well went were what when where
whole will with without work worse would wrist yes yesterday zero
"""

_REAL = """
ace ach acht acing acme acne acting aero afterward aide alte alter anke anole ashe ashy ate ater atop band bard
bask beck bee beeb belt ben bene bern bette bight blight boh boing bold bone boot bot bott bren brom bruise bruiser
bruises bull bus bush bust buy buys caf cake cal calc cale calm calve calved cam cams cane caves celt cession chang
changer changes chanted cheat chet cine clam clod cod col cold cole come compete competed completer completes cone
coot core corry cour cull dace dame dell dent dere des dick dies dill dive doan doe dog doge dons doot dore dork
dos dose doss dour dow dwelling earl east eat eben eide eight eine ever evert exercised fade fake fame fase fave
faxe feder fee feelin fel fender fending fest fet fide fie fiend fife fight fill fin find finger finis finisher
finishes fins fired fist fizzy flood flor flt foes fold fom foo food fook for forge forger forgo form fot foto fou
founds fried fro fron fur gand gard gave gender getter ghat gill ging gingers give god goes gold gon gond gong goo
goof gook gorget goth grat greta guess guest gull gusts habe hace hack had hae hake hal hale halt hamstrung han
hanf hans har hare harv heck heed hight hill hime hip hired his hissed hod hoe hoes hoke hol hole hols hom homs
hone hood hook hops hore host hoth hou how hps hurt hurtig iver jade jake jeeps jist jost jut juts kade kate kee
keels keep kegs kissed kneed knew kore kuch lae lage lager lal las lash lat late lats layer leas leds lees leet leg
lega lens les let lets lett leve leys lgs lopped lots mace mad madd mads mae mak male mame man manage manager
manages mang manu mare mase may mich might minute mips mire misses mist moat mode moe moet mold mor mors mos mosh
mot mote mst mush must nade nave neatly ned needle needled nerd nigh nine nips noe nome non nore nothin notting
ober oder odes oer ofer oka ont otter ove own pace pan par parr pase pat pease pigs pin pina pine pipped pis pons
pooped popper prat programm programms prt puns race rake rally rect reel reeling render ret right rightness rill
rime ringers ringling rive roes rood rook root round sacred salves same sant sap sapped saw scared sed seek seen
seep sell selling sen sens sent seve shape shaped shard share shark shat shill shooing shop sic sid sie sight sign
sik sill sine sing sip sipped sire sith ski skipper slip slipped sna snapper snp sock soe soes sold somethin sone
sop sown sre stared starred starter stated stift stoff stretched stuff suck sven tace tae taek tale tame tan tank
tanks tard tat tea ten tended tener tenser test tha thank thar thay the thee them then ther there thia thin thong
thos though threw ths thus tie tied ties tight til tilo tim tims tine ting tips tire tires tis toe toed tok told
toll tome tone too tool toot tors tos tose toss tough tour tow tows trail traveling treat tree trial tried trough
tuan tull tying tyree valves vending vert vetter vey vine visitor vive wan wang was wat weal wee wehre weht weigh
weiht weil weist weka wel wen wer werk wet wha whee while who wick wide wight wil wince wirst wist wit witt woes
wok wold won wor wore worm worry wright writ writs yard your
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
