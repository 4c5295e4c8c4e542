"""German as it is spoken: Bavarian, Austrian, Swiss, Swabian, Berlin and Low German words, each under the written one.

From memory, not from a dictionary. Letters are without accents and umlauts, as replies are read. A word that is also an
ordinary written one ("wer", "min", "bei", "harz") is not here: it needs the words around it and is a rewrite.
"""

from __future__ import annotations

_SPOKEN = {
    "ich": "ick icke ik",
    "ich es": "ichs",
    "kann": "cha ko kunn koann",
    "nicht": "ned net nit nod nid nich niet nech",
    "nicht mehr": "nimma num numme nimme nimmi nichmehr nimmamehr",
    "nichts": "nix nuscht nischt nischd niks",
    "kein": "koa koan keen kei kaan koi kee",
    "keine": "koane keene kaane koani keini kani keenen koanen",
    "hab": "hob heff hebb hebbe hon hoab",
    "hat": "hot het hett hod",
    "bin": "bi bini bun",
    "seit": "sit siit zit sid",
    "mir": "mia",
    "mich": "mi",
    "mein": "mien moi",
    "meine": "meini miene",
    "und": "unn ond",
    "das": "dit det",
    "ganz": "janz ganzn",
    "gut": "guat guet gud good goot",
    "fast": "fasch fascht",
    "kriege": "griag kriag uberchume uberchumme kreeg krigg grieg griage kriagt",
    "heiss": "hoass hoas hitt heet",
    "geschwollen": "gschwoin geschwulln geswollen gschwulla gschwollene gschwuin schwulln oagschwoin anschwolln",
    "dick": "diggn digge",
    "blauen": "blaun blaua",
    "bein": "been boa boan hax haxn haxen haxe",
    "knie": "knee chneu knia",
    "fuss": "fuass fuess foot foos fuas",
    "zehe": "zechn zechen zeche",
    "kopf": "kopp chopf kobf schadl grind",
    "rucken": "rugge rugga buckl ruggen puckel ruggn",
    "kreuz": "kreiz chruz kreizweh",
    "hufte": "hufti huftn hoft",
    "brust": "bruscht brusch",
    "auge": "ooge aeg oug ouge oog aug",
    "gesicht": "gsicht gsecht gesich",
    "hand": "hond",
    "schulter": "schuitan schulda schultere",
    "nacken": "gnack gnagg gnick nackn nagge",
    "hintern": "hintan oasch oaschbackn arschbacken arschbacke fudi fudla fudle fidle hinterteil arsch",
    "wade": "wadl wadn wadli wodn",
    "kraft": "chraft kroft",
    "luft": "loft lufd",
    "schmerzen": "schmerza schmerzn schmaz schmazn",
    "huftschmerzen": "huftschmerzn huftweh",
    "ruckenschmerzen": "ruckenschmerzn ruggeweh",
    "fieber": "fiaba fiawa fiewer fieba fiebr",
    "einmal": "oamoi amoi eimal eimol emol oamal",
    "nacht": "nocht nochd nachd",
    "jede": "jedi jeda",
    "doppelt": "doppeld dopplt doppet",
    "sehe": "seh siech gseh",
    "pinkeln": (
        "brunzle brunzeln brunzen brunzn brunza bieseln biesln bisln bisle bisla biesle piesln pieseln pissen "
        "pissn schiffen schiffe strullen pullern pischern pieschern seichen seiche seicha pinkle pinkelen"
    ),
    "abgenommen": "abgnommen abgnomma abgnumma abgnoh obgnumma ognumma abjenommen obgnommen abgnommn abgnah",
    "kribbelt": (
        "chriblet chribelt chrublet griwwelt kriwwelt ameiselt ameislt amaslt kribblet chrabblet krippelt wuselt "
        "kribbeld gribbelt griebelt chrisselet"
    ),
    "schwindelig": (
        "drimmlig drimmelig trimmelig taumelig dammelig taumlig daumlig drimelig trummlig drumlig trimmlig "
        "schwindli schwindlich schwummrig schwummerig duselig duslig turmelig dormelig schwindlig schwindelich "
        "trummelig damisch sturmig dusemig plumerant schwimmelig"
    ),
    "zusammengeklappt": (
        "zammgeklappt zamebroche zamebrocha zameklappt zamegsackt zamebrochn zammbroche zammklappt zsammklappt "
        "zamgeklappt zammgebrochen zammbrochen zammgsackt zammghaut zammgfalln zsammbrochen zammbrocha zamklappt "
        "zsammgsackt zammgekracht zamegheit"
    ),
    "umgekippt": "umkippt umgekibbt umgfalln umgflogn umgheit umgfalla umgefalln",
    "eingeschlafen": "eigschlofn eigschlafa iigschlofe iigschlafe engeschlofen ingeslapen inslapen eigschlofa",
    "geknallt": "gchlopft kchlopft gchlapft gschnellt gschnoizt gschnallt gekloppt gchrachet",
    "reingeschossen": "reingschossn eingschossn neigschossa reingfahrn reigfahrn eigschossn reingefahren eingschossen",
    "stehen": "stah stoh stonn steahn stehn schto",
    "laufen": "laufa loofen laufn loufe lofe",
    "gehen": "gah goh gean gehn",
    "auftreten": "auftretn uftrete ufftreten auftredn uftrata",
    "reden": "schwatzn redn reda schnacken snacken schwatza",
    "ausgehalten": "ausghalten",
    "fertig": "fertisch feadig feddich fertich feddig fertsch",
    "gemacht": "gmacht gmocht jemacht gmachd maakt gmach gmoch",
    "geschafft": "gschafft gschofft jeschafft gschaffd",
    "gedehnt": "gedeent",
    "schlecht": "schlechd",
    "einem": "eenem eenen eena oam oanem",
    "eine": "eene oane",
    "einer": "oana eener ana",
    "hose": "hosn hos",
    "geredet": "gredt gred jeredet gschwatzt",
    "besoffener": "bsoffana bsoffna bsoffene bsuffe",
    "ausgeblieben": "ausblim ausbliem ausbliebn wegblim wegbliem usblibe",
    "geschlagen": "ghaut gehauen gschlagn gschlage ghauen gedroschen gschlagen",
    "getreten": "gtreten trette tretn",
    "fusse": "fiass fuasse",
    "knochel": "knechl knechel chnochel knochl knocherl knoechel knechal",
    "schlafen": "pennen penna schlofn schlafn schlofe ratzen poofen",
    "geschlafen": "gepennt gschlofn gschlafn gschlofe gschlafe",
    "haltet": "hoit",
    "tragt": "trogt trogn",
    "immer": "oiwei oiweil allweil oweil immr",
    "kommt": "kimmt kimt chunnt kummt",
    "komme": "kumm kum komm chume",
    "abend": "abig obnd obad aobend obend omd",
    "kochen": "choche kochn kocha",
    "ersticke": "derstick dersticks dastick dasticke verstick vastick",
    "merke": "merk spann",
}

SPELLED: dict[str, str] = {form: written for written, forms in _SPOKEN.items() for form in forms.split()}
"""Spoken form and written word."""
