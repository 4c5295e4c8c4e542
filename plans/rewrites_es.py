"""What is put right in a Spanish text before its words are looked up: chat spellings, and what stands apart is joined.

A verb far from its "no", "no … siento": Spanish parts what a table of phrases needs side by side.
"""

from __future__ import annotations

_NUMBER = r"(?:\d+(?:[.,]5)?|cero|uno|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez)"
_HOUR = r"(?:\d{1,2}(?:[:.]\d{2})?|una|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce)"
_LIMB = (
    r"piernas?|pies?|brazos?|manos?|dedos?|pantorrillas?|gemelos?|muslos?|plantas?|talon(?:es)?|rodillas?|cara|"
    r"mejillas?|labios?|boca|lengua|cachetes?|pulgar|pulgares|antebrazos?|codos?|munecas?|tobillos?|gluteos?|nalgas?|"
    r"ingles?|vagina|pene|genitales|ano|entrepierna|espinillas?|canillas?|piel|lado|perine|partes|zona|patas?|"
    r"extremidades"
)
_OWN = r"(?:el|la|los|las|mi|mis|un|una|ni|medi[oa]) "
_FELT = (
    r"dolor(?:es)?|hormigueos?|molestias?|calambres?|mareos?|adormecimiento|entumecimiento|hinchazon|inflamacion|"
    r"pinchazos?|punzadas?|debilidad|fiebre|chasquidos?|moretones|moreton|tirones|tiron|agujetas|nauseas|"
    r"corrientazos?|presion|cosquilleos?|ardor|rigidez|cosas|nada|crujidos?|sintomas|tension|quemazon|opresion|ahogo"
)
_SIGN = (
    r"(?:dolor|hormigue|cosquill|adormec|entumec|calambr|mare|hincha|inflam|pinch|punzad|debil|falta|presion|chasqu|"
    r"sintom|ruido|corrient|quemaz|ardor|opresi|molest|golpe|moret)"
)

REWRITES: tuple[tuple[str, str], ...] = (
    # --- chat spellings -------------------------------------------------------------------------------------
    (r"\b(?:q|k|ke|qe|qu)\b", "que"),
    (r"\b(?:xq|pq|porq|porqe|xk|xque|pork|porke|pk|xke|x que|por que|pq)\b", "porque"),
    (r"\bk(?=e[a-z])|\bk(?=i(?!lo|n|t|w)[a-z])", "qu"),
    (r"\bk(?=[ao][a-z])", "c"),
    (r"\bx fa(?:vor|vo)?\b|\bxfa(?:vor)?\b|\bporfa\b|\bporfis\b|\bpor fa\b|\bplis\b|\bpliss?\b", "por favor"),
    (r"(?<!\d)(?<!\d )\bx(?= [a-z])", "por"),
    (r"\b(tb|tmb|tbn|tambn|tamb)\b", "tambien"),
    (r"\b([a-z]{3,}[b-df-hj-np-tv-z])ao(s?)\b", r"\1ado\2"),
    (r"\b([a-z]{3,}[b-df-hj-np-tv-z])aita\b", r"\1adita"),
    (r"\binch(?=ad|az|o\b|aron|ando)", "hinch"),
    (r"\bormig", "hormig"),
    (r"\b(?:no){2,}o*\b", "no"),
    (r"\bsii+p?\b", "sii"),
    (r"\b(?:ja){2,}j?\b|\b(?:je){2,}\b|\b(?:ji){2,}\b", ""),
    (r"\b(?:me|te|le|les|nos) (?=[a-z])", ""),
    (r"\bmedi[ao]s? (?=pierna|rodilla|brazo|mano)", ""),
    # --- said in the regions --------------------------------------------------------------------------------------
    (r"\b(mor|par|tir|cal|hel|ator|pel)ao(s?)\b", r"\1ado\2"),
    (r"\b([a-z]{3,})aito\b", r"\1adito"),
    (r"\bcomo si (?=(?!nada)[a-z])", "como "),
    (r"\b(?:perd|pierd|perdiendo)\w* el sentido\b(?! del? (?:tacto|gusto|olfato|humor|tiempo))", "desmaye"),
    (
        r"\b(?:corazon|latidos?|pulso)\b(?P<how>(?: (?!de todo|alegria)\w+,?){0,5}?) (?:salte\w*|vuelcos?|"
        r"tropiez\w*|a (?:brincos|tumbos|"
        r"saltos|destiempo)|frena|detiene|detuvo|se para|se paro|para y|se traba|a ratos se|patalea\w*|galop\w*|"
        r"zapatea\w*|"
        r"extrasistol\w*|pausas?|corcove\w*)\b(?! de (?:alegria|emocion))",
        "palpitaciones",
    ),
    (
        r"\b(?:vuelcos?|brincos?|saltos?|tumbos|saltones|salta|brinca|salte\w+|falla|"
        r"trompicones)(?: \w+){0,2} (?:el|mi) corazon\b(?! "
        r"de (?:alegria|emocion))",
        "palpitaciones",
    ),
    (
        r"\b(?P<felt>quedo|quede|queda|tengo|tenia|siento|senti|pone|puso|esta|noto)(?: como| medio|"
        r" toda?)* tont[oa]s?(?P<what> (?:la|el|mi|medio|"
        rf"media|las|los) (?:{_LIMB}|mitad|medio|cuerpo))",
        r"adormecido\g<what>",
    ),
    (
        rf"\b(?P<what>(?:{_LIMB}|mitad del cuerpo|medio cuerpo)(?: (?:izq\w*|der\w*))?(?: (?:se|esta|como|que|tengo|"
        rf"quedo|queda|siento|"
        r"medio|toda?))*) (?:tont[oa]s?|bob[oa]s?|lel[oa]s?|zombi)\b",
        r"\g<what> adormecido",
    ),
    (
        r"\bganas de (?:orinar|mear|hacer (?:pis|pipi|chis|del bano))[^.!]{0,20}? no (?:se )?(?:sale|salia|salio|"
        r"puedo|hago|logro|"
        r"consigo|echo)\b",
        "retencion de orina",
    ),
    (
        r"\b(?:limpi\w+|sec\w+ abajo|aseo)(?: \w+){0,2} no (?:siento|noto|sentia|senti)\b(?: nada)?",
        "no siento el papel",
    ),
    (r"\b(?:apachurr|espachurr|estruj|achurrasc|comprim|atenaz|apret[ou]j)\w+", "aprieta"),
    (
        r"\bno (?:aguanta|sostiene|soporta|resiste|responde para pisar)n? (?:la|mi|el|esta|esa) (?P<what>rodilla|"
        r"pierna|tobillo|pie|"
        r"cadera|pata)\b",
        r"\g<what> no puedo apoyar",
    ),
    (
        r"\b(?P<what>rodillas?|tobillos?|cadera|pierna)(?P<how>(?: (?:izq\w*|der\w*|se|que))*) (?:hace|hizo|hacia|"
        r"da|dio) (?:un|unos|como un) "
        r"(?:extran[oa]s?|rar[oa]s?|juego|amagos?|quiebres?|bamboleo)\b",
        r"\g<what>\g<how> cedio",
    ),
    (
        r"\bflaque\w+ (?:las|los|mis|la|el) (?P<what>piernas?|brazos?|rodillas?|manos?)\b",
        r"debilidad en \g<what>",
    ),
    (
        r"\b(?P<what>piernas?|brazos?|rodillas?|manos?)(?P<how>(?: (?:se|que))*) flaque\w+",
        r"debilidad en \g<what>\g<how>",
    ),
    (
        r"\b(?:adelga\w+|enflaq\w+|(?:baj|perd|pierd|rebaj)\w*(?: (?:de|como|unos|casi|ya|he|mucho|varios|"
        r"\d+))* (?:peso|kilos?|kg|libras))"
        r"(?P<rest>(?:,? (?!dolor)\w+){0,3}?),? "
        r"sin (?:hacer (?:dieta|nada|ejercicio)|querer(?:lo)?|proponermelo|buscarlo|motivo|razon|explicacion|"
        r"estar a dieta|dieta|cambiar nada|saber por que|intentarlo|causa)\b",
        r"adelgace involuntariamente\g<rest>",
    ),
    (
        r"\bdespierto (?:de noche|a media noche|a medianoche|en la madrugada|de madrugada|por la noche|cada rato|"
        r"varias veces)(?= (?:por|con|del?) )",
        "despierta",
    ),
    (
        r"\b(?:torniquete|faja|cincho|corse|tenazas?|garra|nudo|bola|pelota|piedra|losa|ladrillo|elefante|camion|"
        r"yunque|saco|plancha|mano|puno)"
        r"(?: \w+){0,3}? (?P<where>(?:en|sobre|encima del?|dentro del?|contra) (?:el |mi )?pecho)\b",
        r"presion \g<where>",
    ),
    (
        r"\bpecho(?P<how>(?: \w+){0,5}?) (?:torniquete|faja|cincho|corse|tenazas?|garra|elefante|yunque|losa|"
        r"ladrillos?)\b",
        r"pecho\g<how> presion",
    ),
    (r"\bsentad[oa]s? (?:en|sobre|encima) (?:del? |de mi |el |mi )?pecho\b", "sentado en el pecho"),
    (r"\b(?:cort[oa]|escas[oa]|falt[oa]|just[oa]) de (?:aire|aliento|resuello|oxigeno)\b", "asfixia"),
    (
        r"\bno (?:da|alcanza|llena|pasa|pasaba|llenaba|alcanzaba)(?: bien)? (?:el |los |mi )?(?:aire|aliento|"
        r"pulmon(?:es)?)\b",
        "asfixia",
    ),
    (
        r"\b(?:cai|azote|caia|cayo)(?: \w+){0,3}? (?:saco|tabla|piedra|costal|tronco|plomo|muert[oa])\b|"
        r"\bno supe (?:mas|de mi|nada mas|nada de mi)\b|\bencontr\w+ (?:tirad[oa]|en el (?:suelo|piso)|inconsciente)\b|"
        r"\b(?:desconecte|apague|borre)(?: \w+)? (?:unos segundos|un rato|un momento|del todo|completamente|"
        r"por completo)\b|"
        r"\bfui (?:a|en) (?:blanco|negro)\b|\bazote (?:en|contra) el (?:piso|suelo)\b",
        "desmaye",
    ),
    (
        r"\b(?:va|tuerce|corre|jala|cae|cuelga|cayo|fue|queda|quedo|iba|chuequea|desvia)(?: (?:toda|todo|un poco|"
        r"como))* (?:la|el|mi) "
        r"(?:boca|cara|labio|parpado|comisura|sonrisa)(?= (?:para|hacia|a|de|pa)\b)",
        "boca torcida",
    ),
    (
        r"\b(?:boca|cara|labio|sonrisa)(?: (?:toda|se|que|como))* (?:va|fue|iba|corre|jala|desvia|cae|"
        r"cuelga) (?:para|hacia|a|de|pa) (?:un|el|abajo|la)\b",
        "boca torcida",
    ),
    (
        r"\bpalabras?(?: \w+){0,4} (?:sal\w+|dig\w+|decia) otras?\b|\b(?:no (?:encuentro|hallo|doy con|salen?|"
        r"salian?|vienen?)|busco) (?:la|las) "
        r"palabras?\b(?! (?:para|de agradec))|\b(?:cambio|confundo|mezclo) (?:las|unas) palabras\b",
        "lengua trabada",
    ),
    (
        r"\bojos?(?P<how>(?: (?!duele|arde)\w+){0,4}?) (?:veo|ve|ven|veia)(?: \w+){0,2}? (?:oscuro|negro|gris|mal|"
        r"nada|sombras?|nublado)\b|"
        r"\b(?:veo|veia) (?:dos de todo|dos cosas|todo dos veces|dos imagenes|como en tunel|un tunel)\b",
        "vista borrosa",
    ),
    (
        r"\b(?:meo|orino|cago|mee|orine|cague|ensuci[eo]|hago|hice|pipi|pis|caca|popo|moj[oe])\b[^.!?]{0,14}? (?:ni|"
        r"sin|no) (?:me )?"
        r"(?:entero|entere|cuenta|siento|senti|sentir\w*|aviso|avisar|noto|darme cuenta|doy cuenta|di cuenta)\b",
        "incontinencia",
    ),
    (
        r"\bno (?:control\w+|aguant\w+|reten\w+|conten\w+)(?: \w+){0,4}? (?:bano|esfinter\w*|pis|pipi|caca|popo|"
        r"orina|ganas)\b",
        "incontinencia",
    ),
    (
        rf"\b(?P<where>(?:{_LIMB}|corva|muslo|nalga)(?: (?:todo|toda|se|esta|puso|medio|bien))*) (?:negr[oa]s?|"
        rf"verdes?|azul(?:ad[oa])?s?|amoratad[oa]s?)"
        r"(?: y (?:verdes?|azul|negr[oa]|amarill[oa]))?\b",
        r"\g<where> moreton",
    ),
    (
        rf"\b(?P<where>(?:{_LIMB}|corva|muslo)\b[^.!?]{{0,30}}?) (?P<how>puso|quedo|tengo|esta|pone|hecho|hecha|"
        rf"tiene)(?: toda?)? (?:enorme|gord[oa]|"
        r"inmens[oa]|gigante|grandot[oa]|una (?:bola|bota|pelota|toronja|sandia)|un (?:globo|melon|tomate|jamon|"
        r"elefante)|"
        r"como (?:una?) (?:bola|bota|pelota|toronja|sandia|globo|melon|jamon|elefante|papa))\b",
        r"\g<where> hinchado",
    ),
    (
        r"\b(?P<how>quedo|puso|pone|pusieron|quedaron) (?P<who>el|la|mi|los|"
        r"las) (?P<where>" + _LIMB + r")(?: toda?)? (?:enorme|gord[oa]|inmens[oa])\b",
        r"\g<who> \g<where> hinchado",
    ),
    (
        rf"\b(?:tir|lanz|peg|dier|dio|dado|golpe|clav|hubieran)\w*(?: \w+){{0,4}}? (?:piedra|patada|palo|garrotazo|"
        rf"balazo|pelotazo|hachazo|latigazo)"
        rf"(?= (?:\w+ ){{1,3}}(?:{_LIMB}))",
        "desgarro",
    ),
    (
        r"\b(?P<was>son|tron|cruj|estall|chasc)\w*(?P<what> (?:la|el|mi|toda la) (?:rodilla|cadera|tobillo|hombro|"
        r"espalda|gemelo|isquio|muneca|ingle))"
        r"(?: \w+){0,2}? (?:como (?:una? )?(?:rama|palo|latigo|cohete|escopeta|nuez)(?: sec[oa])?|fe[oa]|fuerte|"
        r"horrible|duro|durisimo)\b",
        r"chasquido\g<what>",
    ),
    (
        r"\b(?:hizo|hace|hacia|sono|sonido|oi|escuche|senti)(?: (?:un|como|como un|asi))* (?:track|tras|crack|clac|"
        r"crac|trac|pum|pop|tac|plop|ras|chas|clock|tronido|"
        r"paf|pam|tronazo|trueno|clack|cataplum)\b",
        "chasquido",
    ),
    (
        r"\b(?:abrio|solto|desprendio|arranco|safo|movio|desprendi\w*) algo (?=(?:en|dentro|adentro|atras|por))",
        "desgarro ",
    ),
    (
        r"\b(?:con|en|sobre) (?:esa|esta|la|mi|ese|este|el) (?P<what>pierna|pata|rodilla|pie|lado)(?: (?:izq\w*|"
        r"der\w*))? no (?:puedo )?(?:parar\w*|parad[oa]|pisar|pis[oe]|caminar|"
        r"camino|apoyar\w*|apoyo|puedo(?=[.,!;]|$))",
        r"\g<what> no puedo apoyar",
    ),
    (
        r"\b(?P<what>piernas?|rodillas?|tobillos?)(?P<how> [^.!?]{1,24}?) y no (?:aguantan?|sostienen?|soportan?)\b",
        r"\g<what>\g<how> no puedo apoyar",
    ),
    (
        r"\b(?P<what>pie|pierna|brazo|mano|punta del pie|dedos)(?P<how>(?: (?:izq\w*|der\w*|ya))*) no (?:sube|alza|"
        r"despega|cierra|abre|dobla sola)n?\b(?! de)",
        r"\g<what>\g<how> noobedece",
    ),
    (r"\b(?:mov|muev)\w+ (?:el|todo el) (?:piso|suelo)\b", "mareo"),
    (r"\b(?:da|daba|dio|dan|dando)(?: \w+){0,2}? vueltas\b(?! (?:por|en el parque|al parque|a la manzana))", "mareo"),
    (
        r"\b(?:voy|iba|fui|ia) (?:para|de|hacia|pa) (?:el |los |un )?(?:costado|costados|lados|lado)\b(?! del?\b)",
        "mareo",
    ),
    (r"(?<!hablo )(?<!hablaba )(?<!hablando )\bcomo borrach[oa]\b", "mareo"),
    (
        r"\b(?P<what>espalda|cintura|cadera|rodilla|cuello|hombro)(?: (?:toda|bien|muy|media))? (?:mala|"
        r"fastidiad[oa]|jodid[oa]|hech[oa] (?:polvo|mierda|pedazos|trizas|pure)|"
        r"rot[oa]|reventad[oa]|cascad[oa]|fregad[oa]|chingad[oa])\b",
        r"dolor de \g<what>",
    ),
    (r"\b(?P<what>espalda|cintura|cadera|rodilla|cuello|hombro|cabeza) (?:esta )?mata(?:ndo)?\b", r"dolor de \g<what>"),
    (
        r"\bhoy se paso\b(?! (?:el|la|mi|un|volando))|\bse paso (?=(?:la )?(?:sesion|rutina|hora|hacerl)|"
        r"por completo|perdon)",
        "hoy olvide ",
    ),
    (r"\bno veo nada (?:de |en )?(?:malo|mal|raro)\b", "bien"),
    (r"\bno (?:encuentro|hallo|tengo) (?:las )?palabras (?=para)", "gracias "),
    (r"\bhinchad[oa]s? (?=de (?:tanto |haber )?(?:comer|comida|beber|cenar|pizza|gases))", "lleno "),
    (
        r"\b(?:cai|caida|piso|suelo|qued\w+|tirad[oa])(?:,? \w+){0,3},? sin (?:sentido|conocimiento|conciencia)\b",
        "desmaye",
    ),
    (
        r"\bqued(?:e|o|aba|ado) (?:como )?id[oa]s?\b|\b(?:quede|estuve|estaba|dice que)(?: \w+){0,6} no (?:respondi|"
        r"respondia|reaccionaba|reaccione)\b",
        "desmaye",
    ),
    (
        r"\b(?P<what>rodillas?|tobillos?|piernas?|cadera)(?P<how>(?: (?:izq\w*|der\w*|se|que))*) (?:traiciona|"
        r"juega (?:una )?mala pasada|afloja|va (?:para|pa|hacia) "
        r"(?:atras|el lado|un lado|adentro))\b",
        r"\g<what>\g<how> cedio",
    ),
    (r"\b(?:agujazos?|alfilerazos?|agujitas|piquetit?os?|picotazos?)\b(?= (?:en|por) )", "alfileres"),
    (r"\bno (?:he )?peg\w+ (?:el |un |ni un |ni |los )?ojos?\b", "no puedo dormir"),
    (
        r"\b(?:despiert[oa]|despierto|despertaba|desperte|desperto|desvel\w+|levant[eoa]|levanto|paro|"
        r"recuerdo)(?: (?!bien|sin|no|mejor|temprano)"
        r"\w+){0,4}? (?:por|con|del?|a causa del?|culpa del?) (?:el |los |tanto |mucho |un )?dolor(?:es)?\b",
        "despierta el dolor",
    ),
    (
        r"\b(?:levanta|despierta|desvela|para|saca)n?(?: \w+){0,2} (?:el|los|un|ese|este) dolor(?:es)?\b",
        "despierta el dolor",
    ),
    (
        r"\b(?:horroros|horribl|espantos|tremend|atroz|atroc|brutal|bestial|inaguantabl|insufribl|infernal|"
        r"salvaj)\w*(?= dolor)|"
        r"(?<=dolor )(?:horroros|espantos|atroz|inaguantabl|insufribl|infernal|salvaj)\w*",
        "insoportable",
    ),
    # --- numbers and the clock ------------------------------------------------------------------------------
    (r"\b(\d+)(?: y medi[oa]| 1/2)\b", r"\1.5"),
    (
        r"(?:^|(?<=dolor )|(?<=dolor, )|(?<=dolor: )|(?<=hecho )|(?<=hecho, )|(?<=hecha, )|(?<=listo )|(?<=listo, "
        r")|(?<=todo )|(?<=\bun )|(?<=\ba )|(?<=\bde )|(?<=\ben )"
        r"|(?<=\bes )|(?<=\bfue )|(?<=nivel )|(?<=molestias )|(?<=molestia )|(?<=ahora )|(?<=hoy )|(?<=, "
        r"))cero(?= (?:en|ahora|y|al|a|hoy|despues|desde|de dolor)\b|[^\w ]|$)",
        "0",
    ),
    (rf"\b(?P<felt>{_FELT}) (?:nada|cero|ningun[oa]|nop?)(?=[.,!;]| y | ni |$)", r"sin \g<felt>"),
    (
        r"(?:\ben )?(?:\b(?:una|la) )?(?:\bescala )?(?:\bdel?|\bde|\bentre(?: el)?) (?:0|1|cero|uno) (?:al?|y(?: "
        r"el)?) (?:10|diez)\b",
        "escaladediez",
    ),
    (
        rf"\b(?:bajo|baja|subio|sube|paso|pasa|pase|paso de|fue|fui|bajando|subiendo|cambio|bajaron|cayo)? ?(?:de|"
        rf"desde|del) "
        rf"(?:un |una )?({_NUMBER}) (?:a|al|hasta|para|paso a|bajo a) (?:un |una )?(?={_NUMBER}\b)",
        r" desdenum \1 hastanum ",
    ),
    (
        rf"\b(?:bajo|baja|bajado|bajando|subio|sube|subido|subiendo|paso|quedo|reduciendo|redujo|aumento) (a|al|"
        rf"hasta|en) (?:un |una )?(?={_NUMBER}\b)",
        r" cambionum ",
    ),
    (
        rf"\b(a|desde|hasta|sobre|para|antes de|despues de|tipo|alas|por|eran|eso de|tras|de|a eso de) las? ({_HOUR})"
        r"(?: y (?:media|cuarto|pico)| en punto| de la (?:manana|tarde|noche|madrugada)| del mediodia|h\b| hs\b| "
        r"hrs?\b| horas\b| am\b| pm\b)*"
        r"(?! (?:series|repeticiones|rondas|vueltas|ejercicios|zancadas|sentadillas|posturas))",
        r"\1 las \2 enpunto",
    ),
    (r"\b(\d+)(?:er|era|ero|ra|do|da|to|ta|o|a|ro|º|ª)\b(?= )", r"numero \1"),
    (
        r"\b(\d{1,2}(?:[:.]\d{2})?) ?(?:h|hs|hrs|horas de la (?:manana|noche)|de la (?:manana|tarde|noche|"
        r"madrugada))\b",
        r"\1 enpunto",
    ),
    (r"(?<=\d)(min|mins|seg|segs|kg|km|cm|rep|reps|x)\b", r" \1"),
    (rf"\ben (?:un |una )?(?={_NUMBER}(?:[.,;]|$| de 10| sobre 10|/10| y | pero ))", "ennum "),
    (
        r"\b(?:complete|termine|acabe|hice|cumpli|realice|he hecho|he completado|he terminado)(?= (?:con )?(?:las|"
        r"los) (?:\d+|dos|tres|cuatro|cinco|seis|siete|ocho|diez) "
        r"(?:rondas|series|vueltas|ejercicios|circuitos|estiramientos|repeticiones|tandas|posturas|movimientos)\b)",
        "hice todas",
    ),
    (
        r"\b(?P<the>el|la|los|las) (?P<what>(?!verdad|neta|semana|noche|manana|tarde|proxima|vez|sesi|rutin|dia |"
        r"trabajo|dolor|mal|tarea|entren|program|estiramientos? no|ejercicios? no)(?:\w+ ){1,5}?)no (?:lo |la |"
        r"los |las )?"
        r"(?:hice|pude hacer|pude|termine|complete|he hecho|logre|hago|consegui|alcance|pude hacerl[oa]s?|he "
        r"podido hacer|he podido)\b",
        r"salte \g<the> \g<what>",
    ),
    (
        r"\b(?:las otras|los otros|la otra|el otro|el resto|lo demas|los demas|las demas) (?:ya )?no\b(?=[.,;]|$| "
        r"por)",
        "elresto no",
    ),
    (
        r"\b(?:mand|envi|reprogram|program|pas)(?:ar|a|e|es|as|en)(?:me|te|se)?(?:lo|la|los|las)?(?= (?:(?:(?:el|"
        r"los|la|las|mis|mi) (?:mensajes?|sesion|sesiones|rutina|recordatorio|ejercicios)|todo) )?"
        r"(?:a las|mas tarde|mas temprano|por las? (?:tarde|noche|manana)s?|en las? (?:tarde|noche|manana)s?|"
        r"antes|despues|a otra hora|a la noche|a la tarde)\b)",
        "cambiar la hora",
    ),
    (
        rf"(?<!dolor )(?<!nivel )(?<!\bun )\b(?=(?:un )?{_NUMBER} (?:en|de|del|para) (?:el|la|lado|mi)? ?(?:lado "
        rf")?(?:izq\w*|der(?:ech[oa])?|dch[oa]|izd[oa])\b)",
        "dolor ",
    ),
    (r"(?:^|(?<=[,.] ))complet[ao](?=[,.]|$)", "hecho"),
    (
        r"\b(?P<no>sin|ningun|ni|no tuve|no tengo|no he tenido|no hay|no hubo|nada de|no senti|no "
        r"siento)(?P<more>(?: (?:ni|un|solo|mas|ningun))*) calambres?\b(?! elec)",
        r"\g<no>\g<more> hormigueo",
    ),
    (r"\bde dolor,? (?:nada|cero|ninguno)\b", "sin dolor"),
    (r"\bque (?:pare|descanse|reposara|reposo|no haga ejercicio|no haga esfuerzos)\b", ""),
    (
        r"\b(?:en cuanto|cuando|apenas) (?:salga|llegue|termine|acabe|vuelva|regrese|pueda|tenga)(?: (?:de|del|a|"
        r"en|la|el|un|una|rato|tiempo|trabajo|trabajar|casa|curro|oficina|chamba|hueco|chance|comer|cenar))*,? "
        r"(?=(?:la|lo|los|las) (?:hago|hare)\b)",
        "",
    ),
    (
        rf"\bantes(?: de \w+)?,? (?:era |estaba en |un |tenia |dolia )?(?P<one>{_NUMBER}),?(?: y| pero)? "
        rf"(?:despues|ahora|luego|ya|al final|al terminar)(?: de \w+)?,? (?:un |es )?(?P<two>{_NUMBER})\b",
        r"era \g<one> ahora \g<two>",
    ),
    (
        rf"\bhoy (?P<one>{_NUMBER}),? (?:y |pero )?ayer (?:dolor |era |fue |un )?(?P<two>{_NUMBER})\b(?! \w+s\b)",
        r"ayer dolor \g<two>, hoy dolor \g<one>",
    ),
    (
        rf"\b(?P<still>sigue|sigo|continua|se mantiene|mantiene|permanece) (?:ennum|en|a|con) (?:un |una "
        rf")?(?={_NUMBER}\b)",
        r"\g<still> ",
    ),
    (
        rf"\b(?:esfuerzo|energia|animo|estres|motivacion|cansancio|dificultad|sueno|humor|flexibilidad|intensidad "
        rf"del estiramiento) (?:de |en |nivel )?(?:un )?(?={_NUMBER}\b)",
        "esfuerzonum ",
    ),
    (
        rf"\b(?:termine|termino|acabe|acabo|finalice) (?:ennum|en|con|a) (?:un |una |dolor (?:de "
        rf")?)?(?={_NUMBER}(?! \w+s\b))",
        "finalnum ",
    ),
    (
        rf"\b(?:empece|empezo|comence|comenzo|inicio|inicie|arranque|arranco) (?:ennum|en|con|a|como|siendo) "
        rf"(?:un |una |dolor (?:de )?)?(?={_NUMBER}(?! \w+s\b))",
        "inicionum ",
    ),
    (r"\bal (?:terminar|acabar|finalizar)(?=[.,;]|$)", "al final"),
    (r"\bdolor medio\b", "dolor moderado"),
    (r"\b(?:lo|la|los|las) hago(?=[^?.!]*\?)", "hacer"),
    (
        r"\b(?:quiero|prefiero|puedo|podria|quisiera|gustaria)(?: \w+){0,3} (?:sesion|sesiones|mensajes?|rutina|"
        r"ejercicios|recordatorio)(?: \w+){0,2} (?:(?:por|en|a) las? (?:tarde|noche|manana)s?|mas tarde|mas "
        r"temprano)\b",
        "cambiar la hora",
    ),
    (
        rf"\bde (?:los |las )?(?P<whole>{_NUMBER})(?: ejercicios| rondas| series)? (?P<did>solo )?hice (?:solo "
        rf")?(?P<some>{_NUMBER})\b",
        r"hice \g<some> de \g<whole>",
    ),
    # --- yes, if, no ----------------------------------------------------------------------------------------
    (
        r"(?:^|(?<=[.!,;:] )|(?<=\bque )|(?<=\bhoy )|(?<=\beso )|(?<=\besta vez )|(?<=\bpues ))si(?=[,.!;]|$| "
        r"(?:todo|toda|hecho|hecha|hice|lo|la"
        r"|termine|complete|senor\w*|claro|ya|cumpli|listo|lista|coach|gracias|pude|acabe|profe|entren\w+|entera|"
        r"si|he|las|los|por supuesto|pero|y)\b(?! (?:hago|hiciera|dobl|estir)))",
        "sii",
    ),
    (r"\bsi(?=[,.!;]| pero\b| y las?\b| y los?\b|$)", "sii"),
    (
        r"\b(?:nop|no+|nel|nope|nah|naa)\b(?=[,.!;:?)]| *$| (?:porque|pero|gracias|por|coach|profe|senor\w*|"
        r"perdon|disculp\w+|lo siento)\b)",
        "nop",
    ),
    (r"\bnop?,? no,? (?=[a-z])", "nop, no "),
    (
        rf"\b(?P<no>sin|no|ni|nada de|ningun|ninguna)\b(?P<first>(?: (?!pero|porque|me|se|y|por|puedo|puede|deja|"
        rf"pude)\w+){{1,5}}), "
        rf"(?=(?:de )?(?P<next>{_SIGN})\w*(?: (?!pero|porque|y|muy|mucho|fuerte|que|"
        rf"desde)\w+){{0,4}}(?:,[^,.;]{{1,40}})?,? (?:ni|o)\b)",
        r"\g<no>\g<first> ni ",
    ),
    (
        rf"\bni (?P<one>(?:{_SIGN})\w*(?: \w+){{0,3}}), (?=(?:de )?(?:{_SIGN})\w*(?: \w+){{0,3}},? (?:ni|o)\b)",
        r"ni \g<one> ni ",
    ),
    (rf"\b(?P<no>sin) (?P<first>{_FELT}) y (?=sin\b)", r"\g<no> \g<first>, "),
    (
        rf"\b(?P<no>sin|no hay|no hubo|ni|no tengo|no tuve) (?P<first>(?:mas |ningun |ninguna |nada de "
        rf")?(?:{_FELT}))(?: ni| o|/| y) (?P<next>{_FELT})\b(?!(?: \w+){{0,2}} (?:si|fuerte|en cambio))",
        r"\g<no> \g<first> ni \g<next>",
    ),
    (
        r"\bno se(?= (?:si|bien|que|como|cuanto|cual|la verdad|porque|decir|muy|donde|exactamente|cuando|pero|"
        r"coach|profe|creo|a que|de que)\b|[.,!?;)]|$)",
        "nosabe",
    ),
    (
        r"\b(?:trabajo|jef[ea]|ninos|hijos|curro|chamba|clientes|nietos|bebe|peques|laburo) no dejan? (?:ni "
        r")?respirar",
        "ocupado",
    ),
    (r"\btiempo (?:ni )?(?:de|para|pa) (?:ni )?respirar", "tiempo"),
    (r"\bno (?:lo|la|los|las) (?:puedo|podia|pude|consigo|logro) (?:levantar|mover|alzar)\b", "noobedece"),
    (r"\bno (?:lo|la|los|las) (puedo|podia|pude|consigo|logro) (\w+r)\b", r"no \1 \2"),
    (
        r"\bno (?:puedo|podia|pude|consigo|logro|muevo|movia) ?(?:mover)?(?: bien| casi| nada| apenas)* (?=(?:el|"
        r"un|todo el|medio|la mitad|todo un) ?(?:lado|costado|cuerpo|del|izq|der))",
        "noobedece ",
    ),
    (
        r"\bnoobedece (?P<what>(?:el |todo el |mi )?lado (?:izq\w*|der\w*))\b(?! del? )",
        r"noobedece \g<what> del cuerpo",
    ),
    (r"\bno puedo mover(?=[.,!;]|$| del?\b| por\b| ni\b| casi\b)", "no puedo moverme"),
    (
        r"\bcrujio(?=[^.!?]{0,40}\b(?:sin dol|no dolio|no duele|nada de dolor|rico|como siempre|agradable))",
        "cruje",
    ),
    (
        r"\b(?:sentad[oa]|sentar[ao]n?|senta|sento|sentase|sientan?|parad[oa]|pis\w+|subid[oa]|encima|aplast\w+|"
        r"apoyad[oa]) "
        r"(?:en |sobre |encima de |encima del |arriba de |arriba del |contra )?(?:mi|el)? ?pecho\b",
        "sentado en el pecho",
    ),
    (
        r"\b(?:parece|parecia|como|es|hech[oa]|igual que|del tamano de|pues|pus[eo]|puesto|cual) (?:a )?(?:un|"
        r"una) (?:pelota|globo|melon|sandia|papaya|bota|tamal|"
        r"patata|papa|toronja|naranja|morcilla|salchicha|balon|mango|coco|jamon|pomelo)\b",
        "hinchado",
    ),
    (
        r"\bse (?:afloja|aflojo|debilita|debilito|aflojan)n? (?=(?:el|los|ambos) brazos?|(?:la|las) manos?|los "
        r"dedos)",
        "debilidad ",
    ),
    (
        r"\b(?:baj[eo]|perdi|perdido|bajado|adelgac\w+|adelgazado|perdiendo|bajando|rebaje|rebajado|menos) "
        r"(?:como |casi |unos |ya |mas de )?"
        r"(?:\d+|un|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|varios|muchos|algunos) ?(?:kilos?|kg|kgs|"
        r"kilitos|libras)(?: de peso)?\b",
        "perdida de peso",
    ),
    (
        r"\b(?P<what>espalda|rodilla|hombro|cadera|pierna|cuello|brazo|lumbar|lumbares|cintura|pie|tobillo|muneca|"
        r"codo)(?P<side>(?: (?:izq\w*|der\w*|dch\w*|baja|que|no|tambien|ya))*) (?=despierta|desperto|despertaba|"
        r"deja dormir|dejo dormir|quita el sueno|desvela)",
        r"\g<what> dolor\g<side> ",
    ),
    (
        r"\bpecho(?P<how>(?: \w+){0,5}?) (?:se )?(?:va|baja|corre|irradia|extiende|sube|pasa|iba|fue|bajaba|bajo|"
        r"corrio) (?:al|por el|hasta el|hacia el|a la|hasta la|hacia la|para el|para la|a mi) (?P<to>brazo|"
        r"mandibula|cuello|hombro|espalda)",
        r"pecho\g<how> y \g<to>",
    ),
    (r"\bse aflojo (?=tod[oa]|medio|la mitad|el lado|el brazo|la mano|un lado)", "debilidad "),
    (r"\bdolor(?:es)? no(?:p|,)?(?=[.,!;]|$)", "sin dolor"),
    (
        r"\bno (?:siento|noto|sentia|senti)(?: nada| bien)?(?: en| de| por)? (?=ahi abajo|alla abajo|aqui abajo|"
        r"abajo\b|entre (?:las|mis) piernas|(?:las|mis) partes|(?:la|mi) zona|(?:los|mis) genitales|(?:la|mi) "
        r"entrepierna)",
        "adormecido ",
    ),
    (
        rf"(?P<a>\b(?:dolor|dolorcito|punzadas?|pinchazos?|calambres?|corrient\w+|molestia|ardor|hormigueo|tiron|"
        rf"jalon|latigazos?|algo|cosquilleo|quemazon|descargas?|duele|rayo|electricidad|nervio|toque)\b(?: (?!y |"
        rf"pero )\w+){{0,6}}?) "
        rf"(?:que )?(?:se )?(?:baja|bajan|bajaban|bajaron|bajaba|bajo|bajando|corren|van|suben|llegan|llego|pasan|"
        rf"irradian|corre|corria|corrio|va|iba|fue|extiende|extendia|sube|subia|dispara|llega|llegaba|viaja|"
        rf"camina|pasa|paso)(?P<b>(?: (?:como|un|hacia|rayo|mucho|todo|casi|abajo|directo|derecho))*? (?:por|"
        rf"hasta|a|hacia|para|pa|al) (?:toda |todo )?(?:la |el |los |mi |mis )?(?:{_LIMB}|punta)\b)",
        r"\g<a> irradia\g<b>",
    ),
    (
        rf"\b(?:baja|bajaba|bajo|corre|corrio|va|sube|dispara|recorre|recorria|recorrio|paso) (?P<a>(?:un|una|el|"
        rf"como un|como una|algo) (?:\w+ )?(?:dolor|corriente|calambre|rayo|latigazo|electricidad|punzada|"
        rf"pinchazo|ardor|hormigueo|corrientazo|tiron|cosquilleo|quemazon)\w*(?: \w+){{0,3}}? (?:por|hasta|a|"
        rf"hacia|para) (?:toda |todo )?(?:la|el|los|mi|al) (?:{_LIMB})\b)",
        r"irradia \g<a>",
    ),
    (
        r"\b(?:no (?:duelen?|dolio|dolia|tengo dolor (?:en|de)|siento dolor (?:en|de)|senti dolor (?:en|de)|hay "
        r"dolor (?:en|de))|(?:sin|nada de|ningun|cero) dolor(?:es)? (?:en|de)) (?:el |mi )?pecho\b",
        "sin dolordepecho",
    ),
    (
        r"\b(?:duerm\w+|dormi\w*|durmi\w+)(?= (?:ya |temprano |por fin |tarde )?(?:el|la|mi|los|las|mis|al|a la|a "
        r"los|a mi) (?:bebe|nin[oa]|nene|nena|hij|peque|perr|gat|marid|espos|mujer|niet|cri[oa]|chic|guagua|mam|"
        r"pap|enan))",
        "dormidito",
    ),
    (
        r"\b(?P<who>bebe|nin[oa]s?|nen[ea]s?|hij[oa]s?|hijit[oa]s?|peques?|perr\w+|gat\w+|marido|espos\w|mujer|"
        r"niet[oa]s?|cri[oa]s?|chic[oa]s|guagua|mama|papa|todos|vecin[oa]s?)(?P<how>(?: (?:ya|por fin|bien|"
        r"tambien|aun|todavia|se|esta|estaba|estan|quedo|quedaron|queda|estuvo))*) "
        r"(?:dormid[oa]s?|durmi\w+|duerm\w+|dormia\w*)",
        r"\g<who>\g<how> dormidito",
    ),
    (
        r"\b(?P<who>perr\w+|gat\w+|cachorr\w+|mascota|nin[oa]|nene|nena|bebe|hij[oa]|niet[oa]) (?:se )?(?:ha "
        r")?(?:hizo|hecho|orino|meo|cago|vomito)(?: (?:pis|pipi|caca|popo|encima))*\b",
        r"\g<who> ensucio",
    ),
    (
        r"\bmis? (?:mama|madre|papa|padre|hij[oa]s?|marido|esposa|mujer|esposo|bebe|nin[oa]s?|suegr[oa]|abuel[oa]|"
        r"niet[oa]|herman[oa]|espos[oa]|pareja|perr[oa]|gat[oa]) "
        r"(?:se )?(?:esta|estaba|estan|puso|pusieron|anda|sigue|amanecio|tiene|tuvo|cayo|con)(?: (?:muy|con|"
        r"bastante|mal de|un poco))*(?: (?:enferm\w+|mal[oa]?s?|malit[oa]|fiebre|gripe|gripa|covid|vomitos|"
        r"diarrea|tos|resfriad[oa]|calentura|anginas|otitis))\b",
        "parientenfermo",
    ),
    (
        r"\b(?:se )?(?:enferm[oa]|enfermaron|enfermado|puso mal[oa]?|puso enferm[oa]) (?:mi|el|la|mis|los|las) "
        r"(?:mama|papa|madre|padre|hij[oa]s?|nin[oa]s?|bebe|marido|espos[oa]|abuel[oa]|herman[oa]|niet[oa]|"
        r"perr[oa]|gat[oa])\b",
        "parientenfermo",
    ),
    (
        r"\b(?P<what>rodillas?|piernas?|tobillos?|cadera)(?P<how>(?: (?:izq\w*|der\w*|dch\w*|izd\w*|casi|ya|a "
        r"veces|de repente|mala|operada|siempre|que|tambien|como que))*) "
        r"(?:(?:falla|fallo|fallaba|cede|cedio|cedia|ceden|fallan|fallaron|flaquea|flaqueo|flaquean|baila|"
        r"bailaba)|se (?:va|fue|iba|van|fueron|doblan|aflojaron|dobla|doblo|doblaba|vence|vencio|afloja|aflojo|"
        r"aflojan|zafa|zafo|sale|salio|bloquea|bloqueo|traba|trabo|desarma))\b(?! hinch| de fuerza)",
        r"\g<what>\g<how> cedio",
    ),
    (
        r"\b(?P<no>no )?(?P<verb>duelen?|dolio|dolia|dolian|dolieron|molestan?|molesto|molestaba|doliendo|"
        r"molestando|ha dolido)(?P<much>(?: (?:un poco|un poquito|mucho|muchisimo|bastante|algo|nada|solo|mas|hoy|"
        r"tambien))?) "
        r"(?:(?:el|la|los|las|mi|mis|en la|en el) |(?P<both>ambas |ambos |las dos |los dos ))(?P<what>(?:zona "
        r"lumbar|espalda baja|espalda|rodillas?|hombros?|caderas?|cuello|muneca|munecas|tobillos?|codos?|lumbar|"
        r"lumbares|cintura|pies?|"
        r"piernas?|muslos?|gemelos?|pantorrillas?|talon|talones|nuca|ingle|gluteos?|brazos?|manos?|isquios|"
        r"cervicales|coxis|trapecios?))(?P<side>(?: (?:izq\w*|der\w*|dch\w*|izd\w*|baja|alta))*)(?! (?:cuando|al|"
        r"si)\b.*\bduel)",
        r"\g<no>\g<both>mi \g<what>\g<side> \g<verb>\g<much>",
    ),
    (
        r"\blengua(?P<how>(?: (?!sin|no)\w+){0,3}?) (?:traba|trabo|trababa|trabando|enreda|enredo|enredaba|patina|"
        r"pega|pego|pesa|tropieza|trabada|dormida|torpe)\b",
        "lengua trabada",
    ),
    (
        r"\b(?P<what>cara|boca|lado|brazo|pierna|mano|pie|cuerpo|izq\w*|der\w*|dedos?)(?P<how>(?: (?!pero|y|que|"
        r"sin)\w+){0,2}?) no (?:se )?(?:mueven?|levanta|responden?|obedecen?|hacen? caso)\b",
        r"\g<what>\g<how> noobedece",
    ),
    (
        r"\b(?P<what>manos?|brazos?|dedos)(?P<how>(?: (?:izq\w*|der\w*|dch\w*|ya|siempre|de repente))*) "
        r"(?:fallan?|fallo|fallaron|flaquean?|no aprietan?|no agarran?|no cierran?|no sujetan?)\b",
        r"\g<what>\g<how> noobedece",
    ),
    (
        r"\bya no (?=puedo|pude|podia|aguanta|sostiene|siento (?!nada)|responde|veo|controlo|retengo|tengo fuerza|"
        r"apoyo|camino)",
        "no ",
    ),
    (r"\bsin (?:la|el) (?:menor|mas minim[oa]|minim[oa]) ", "sin "),
    (r"\bni (?:la|el) (?:menor|mas minim[oa]|minim[oa]) ", "ni "),
    (
        r"\b(?P<wake>dormir|dormi|dormido|ojo|sueno|despierto|despierta|desperte|vela) (?P<by>por|del?) (?:culpa "
        r"de |culpa del )?(?:la|el|mi|las|los)? ?(?P<what>espalda|rodillas?|hombros?|caderas?|piernas?|cuello|"
        r"brazo|lumbar|lumbares|cintura|pies?|tobillo|cervicales|ciatica|muneca)\b",
        r"\g<wake> \g<by> dolor de \g<what>",
    ),
    (r"\bno (?:llega|entra|sube|pasa|viene|llegaba|entraba)(?: \w+)? aire\b", "asfixia"),
    (
        r"\b(?:salen?|salian|digo|decia|hablo|hablaba)(?: \w+){0,4} (?:sin sentido|disparates|incoheren\w+)\b",
        "lengua trabada",
    ),
    (r"\bsin sentido\b(?! en)", "absurdo"),
    (
        r"\b(?:brazo|mano) y (?:la |mi )?pierna(?: (?:del?|el|lado))* (?P<side>izq\w*|der\w*)\b",
        r"lado \g<side> del cuerpo",
    ),
    (
        r"\bpierna y (?:el |mi |la )?(?:brazo|mano)(?: (?:del?|el|lado))* (?P<side>izq\w*|der\w*)\b",
        r"lado \g<side> del cuerpo",
    ),
    (
        r"\b(?:cost\w+|cuest\w+)(?: \w+){0,2} (?:mover|levantar|alzar) (?P<what>(?:el|la|los|las|mi|un) "
        r")(?=brazos?|piernas?|manos?|pies?|dedos|lado|punta)",
        r"noobedece \g<what>",
    ),
    (
        r"\bcorazon(?: (?!de)\w+){0,7} (?:saltos|brincos|saltea|saltos|salta|brinca|vuelcos|irregular|raro|"
        r"desordenad\w|descompas\w+|arritm\w+|aletea\w*)\b(?! de (?:alegria|emocion))",
        "palpitaciones",
    ),
    (
        r"\bcorazon(?: (?!de)\w+){0,3} (?:aceler\w+|desboc\w+|a mil|disparad\w|dispar\w+)\b(?! de (?:alegria|"
        r"emocion))",
        "corazon acelerado",
    ),
    (
        r"\bcomo (?:una?|de una?) (?:rama|ramita|palo|palito|liga|cuerda|elastico|nuez|lapiz|hueso)(?: \w+){0,3} "
        r"(?:quiebr\w+|quebr\w+|romp\w+|part\w+|revient\w+|revent\w+|tron\w+|truen\w+)\b",
        "chasquido",
    ),
    (
        rf"(?P<a>\b(?:dolor\w*|duele|punzadas?|calambres?|corrient\w+|molestia|ardor|hormigueo|tiron|latigazos?|"
        rf"cosquilleo|quemazon|electricidad)\b(?: (?!y |pero )\w+){{0,4}}?) "
        rf"(?:desde|de) (?:la |el |mi )?(?:espalda|nalga|gluteo|cadera|lumbar|cintura|cuello|hombro|codo|rodilla|"
        rf"muslo|ingle|nuca) (?:baja|hasta|al?|a la|para) (?P<to>(?:\w+ )?(?:la |el |los |las )?(?:{_LIMB}))\b",
        r"\g<a> irradia \g<to>",
    ),
    # --- signs in many turns of words -----------------------------------------------------------------------------
    (r"\bcara (?:externa|interna|anterior|posterior|lateral|de afuera|de adentro|de atras)\b", "parte"),
    (
        r"\b(?:(?:casi |apenas |ya )?no (?:\w+ ){0,2}?(?:puedo|podia|pude|podido|consigo|logro|alcanzo a)|apenas "
        r"(?:puedo|podia|pude)?|a duras penas|sin poder|casi sin(?: poder)?) ?(?:\w+ ){0,2}?"
        r"(?:respirar|respiro|respiraba|tomar aire|coger aire|agarrar aire|jalar aire|resollar)\b",
        "asfixia",
    ),
    (
        r"\b(?:cost\w+|cuest\w+|dificultad|dificil|problemas?|trabajo)(?: (?!no\b)\w+){0,3} (?:respirar|tomar "
        r"aire|coger aire|jalar aire)\b(?! por la nariz| por la boca| como)",
        "asfixia",
    ),
    (
        r"\brespir(?:o|aba|e|ar|ando|acion)(?: muy| tan| super| un poco| algo)? (?:mal|fatal|con dificultad|corto|"
        r"cortito|entrecortad\w|pesad\w|raro)\b",
        "asfixia",
    ),
    (
        r"\bno (?:puedo|podia|pude|podido|consigo|logro)(?: \w+){0,2}? (?:hablar|articular|pronunciar|decir)\b(?! "
        r"(?:ahora|ahorita|por telefono|mucho|ingles|espanol|con|de|en|que|porque|estoy|hoy))",
        "lengua trabada",
    ),
    (
        r"\b(?:cost\w+|cuest\w+|dificultad|problemas?)(?: (?!no\b)\w+){0,3} (?:hablar|articular|pronunciar)\b(?! "
        r"(?:ingles|espanol|con|de|en|sobre))",
        "lengua trabada",
    ),
    (r"\bhabl\w+(?: \w+){0,4} no (?:se )?entiend\w+", "lengua trabada"),
    (
        r"\bhabl(?:o|aba|ando|ar|e)(?: (?:todo|muy|como|medio|un poco|super))* (?:rar[oa]|mal|enredad[oa]|"
        r"borrach[oa]|trabad[oa]|arrastrad[oa]|lento|pastoso|gangoso)\b(?! (?:mi|el|la|su|de|del|un|ingles|"
        r"espanol)\b)",
        "lengua trabada",
    ),
    (
        r"\bpalabras(?: (?!sin)\w+){0,3} (?:trab\w+|enred\w+|confund\w+|mezcl\w+|arrastr\w+|cambiad\w+|(?:al "
        r")?reves|mal\b|rar\w+)",
        "lengua trabada",
    ),
    (r"\b(?:trab\w+|enred\w+|confund\w+|mezcl\w+|arrastr\w+)(?: \w+){0,2} palabras\b", "lengua trabada"),
    (
        r"\b(?:ve[oi]|veia|vi|viendo|ver)(?: (?:todo|muy|medio|como|un poco|las cosas|algo|cosas))* "
        r"(?:borros[oa]s?|doble|dobles|nublad[oa]s?|manchas|destellos|lucecitas|luces(?! de| en)|puntitos|rayas|"
        r"negro|estrellitas|moscas)\b(?! (?:negr\w+ )?en (?:la ropa|la esterilla|la pared|la camiseta))",
        "vista borrosa",
    ),
    (
        r"\bvi(?:sta|sion)(?: (?!al|de (?:la|los|mi)|desde)\w+){0,3} (?:borr\w+|nubl\w+|dobl\w+|perd\w+|oscur\w+|"
        r"empan\w+|rar[oa]|fue|fallo|falla)\b",
        "vista borrosa",
    ),
    (
        r"\b(?:perd\w+|nubl\w+|borr\w+|se fue|se va|se iba|fall\w+|oscurec\w+)(?: (?!de\b|el\b)\w+){0,2}? (?:la "
        r"vista|la vision|vista|vision)\b",
        "vista borrosa",
    ),
    (
        r"\bno ve(?:o|ia)(?=[.,!;]|$| bien(?! el)| nada(?! (?:de malo|raro|mal))| claro| de (?:un|lejos|cerca|el|"
        r"lado)\b| por el| con el| casi)",
        "no veo bien",
    ),
    (r"\bno ve(?:o|ia)(?: \w+){0,3} (?:ojo|ojos|lado)\b|\bojo(?: \w+){0,3} no ve(?:o|ia)?\b", "no veo bien"),
    (
        r"\b(?P<how>adormecid\w|noobedece|dormid\w|entumid\w|entumecid\w|paralizad\w|debilidad|fuerza|hormigueo|"
        r"muert\w|debil|floj\w)(?P<what>(?: (?!y|pero)\w+){0,3}?) lado (?P<side>izq\w*|der\w*)\b(?! del? )",
        r"\g<how>\g<what> lado \g<side> del cuerpo",
    ),
    (
        r"\blado (?P<side>izq\w*|der\w*)(?= (?:\w+ ){0,2}(?:adormecid\w|dormid\w|entumid\w|entumecid\w|"
        r"paralizad\w|noobedece|sin fuerza|debil|muerto)\b)",
        r"lado \g<side> del cuerpo",
    ),
    (
        r"\b(?:perd\w+|(?:no|sin|poco|falta de)(?= (?:(?!perd)\w+ ){0,3}(?:control|reten|aguant|conten)))(?: "
        r"(?!perd)\w+){0,3}? (?:control\w*|reten\w*|aguant\w*|conten\w*)(?: \w+){0,4}? "
        r"(?:vejiga|orinas?|pis|pipi|pichi|chis|esfinter\w*|caca|heces|popo|intestinos?|ganas de (?:orinar|mear|"
        r"hacer pis))\b",
        "incontinencia",
    ),
    (
        r"\bno (?:puedo|pude|podia|podido|consigo|logro)(?: (?!parar|dejar|ir a)\w+){0,2}? (?:orinar|mear|hacer "
        r"(?:ni )?(?:pis|pipi|caca|popo|del bano|del cuerpo|del dos|chis)|defecar|cagar|evacuar|vaciar)\b",
        "retencion de orina",
    ),
    (
        r"\b(?:cost\w+|cuest\w+|dificultad|problemas?|trabajo)(?: (?!no\b)\w+){0,3} (?:orinar|mear|hacer pis|"
        r"hacer pipi|hacer del bano)\b",
        "retencion de orina",
    ),
    (
        r"\b(?:no|sin)(?: (?!tuve|alcance|hay|pude|puedo)\w+){0,2} (?:siento|noto|sentia|notaba|sentir|notar|doy "
        r"cuenta|darme cuenta|entero)(?: \w+){0,4}? (?:orin\w+|mear|meo|pis|pipi)\b",
        "no siento cuando orino",
    ),
    (
        r"\b(?:no|sin)(?: (?!tuve|alcance|hay|pude)\w+){0,2} (?:siento|noto|sentia|notaba|sentir|notar)(?: "
        r"\w+){0,4}? (?:limpi\w+|papel)\b",
        "no siento el papel",
    ),
    (
        r"\b(?:se (?:ha |han )?(?:sal|escap)\w*|got(?:ea|eo|eando)|pierd\w+|perd(?:i|ida|idas|iendo)|fuga|escape|"
        r"escapes)(?: (?!no\b)\w+){0,3}? (?:orina|pis|pipi|pichi|chis|caca|popo|heces|meados|gotas)\b",
        "incontinencia",
    ),
    (
        r"\b(?:mee|orine|orino|meo|cague|cago|hice|hago|ensucie|moje)(?: (?!ejerc|rutina|sesion|estir|todo|"
        r"la\b)\w+){0,2} (?:encima|en los pantalones|en la cama|sin querer|sin darme cuenta|en la ropa)\b",
        "incontinencia",
    ),
    (
        r"\b(?:algo|un musculo|el musculo|un tendon|el tendon|un ligamento|el ligamento|el menisco|una fibra)(?: "
        r"(?:se|como|que|me|dentro|adentro|ahi|asi|en (?:el|la|mi) \w+))* (?:romp\w+|raj\w+|revent\w+|explot\w+|"
        r"parti\w+|desgarr\w+|solt\w+|cort(?:o|aba)|cruji\w+|tron\w+|salt[oó]|zaf\w+)\b(?! en (?:la|mi) (?:cocina|"
        r"casa|sala|calle|oficina)| en casa| del? (?:coche|carro|bano))",
        "desgarro",
    ),
    (
        r"\b(?:romp\w+|raj\w+|revent\w+|explot\w+|parti\w*|desgarr\w+|solto|salto|corto|sono|trono|crujio|zafo|"
        r"rompia)(?: (?:como|que))* (?:algo|un musculo|el musculo|un tendon|el tendon|un ligamento|el ligamento|"
        r"el menisco|una fibra|el gemelo|el cuadriceps|el isquio)\b",
        "desgarro",
    ),
    (
        r"\bno (?:puedo|podia|pude|podido|aguanto|consigo|logro|soy capaz de|tolero|soporto|alcanzo a)(?: (?:ni|"
        r"casi|bien|ya|siquiera|poder))*(?: dar)? (?:un paso|ni un paso|pasos|caminar|andar|apoyar\w*|pisar\w*|"
        r"pararme|cargar\w*|plantar\w*|afirmar\w*)\b(?! (?:la bolsa|las bolsas|cajas|al perro|el video|la app|el "
        r"celular|la compra|hasta|al (?:trabajo|parque)))",
        "no puedo apoyar",
    ),
    (
        r"\b(?P<what>rodillas?|piernas?|tobillos?|pies?|caderas?)(?P<how>(?: (?!pero|y|sin)\w+){0,3}?) no "
        r"(?:aguantan?|sostienen?|soportan?|resisten?|afirman?)\b",
        r"\g<what>\g<how> no puedo apoyar",
    ),
    (
        r"\b(?:cost\w+|cuest\w+)(?: (?!no\b)\w+){0,3} (?:apoyar\w*|pisar|caminar|andar)\b(?! (?:bien )?el "
        r"(?:celular|movil|telefono|codo))",
        "cojeo",
    ),
    (
        r"\b(?:apenas|casi no|a duras penas) (?:puedo |podia |pude )?(?:camin(?:o|ar|aba)|apoy(?:o|ar\w*)|pis(?:o|"
        r"ar)|and(?:o|ar))\b",
        "cojeo",
    ),
    (
        r"\bse (?:dobl|afloj|venc|flaque|desarm)\w* (?:sol[oa] )?(?:la|las|el|los|mi|mis|ambas) "
        r"(?P<what>rodillas?|piernas?|tobillos?|cadera)\b",
        r"\g<what> cedio",
    ),
    (
        r"\bse (?:sale|salio|salia|zafa|zafo|desencaja|desencajo|sali) (?:el|la|mi) (?P<what>hombro|rodilla|"
        r"cadera|muneca|rotula|tobillo|dedo|codo|menisco|mandibula)\b",
        r"\g<what> disloco",
    ),
    (
        r"\b(?P<what>hombro|rodilla|cadera|muneca|rotula|tobillo|dedo|codo|menisco) (?:se )?(?:sale|salio|salia|"
        r"zafa|zafo|desencajo)\b",
        r"\g<what> disloco",
    ),
    (
        r"\b(?:un|una) (?:huevo|bola|bulto|chichon|pelota|bolita|huevito) (?:enorme |grande |dur[oa] )?(?=(?:en|"
        r"sobre|detras de|atras de) (?:el|la|mi) (?:rodilla|tobillo|muneca|codo|hombro|pie|pierna|muslo|gemelo|"
        r"pantorrilla|ingle|espinilla|canilla|empeine|corva|mano))",
        "hinchazon ",
    ),
    (
        r"\b(?:dolor|duele)(?: \w+){0,3} que (?:muero|mata|parte|tumba|dobla|muere|morir|no veas|flipas)\b",
        "dolor insoportable",
    ),
    (
        r"\b(?:menos|poca|sin|falta de|perd\w+|fue|va|disminu\w+|baj\w+|falta)(?: (?:la|casi|de|toda|algo de|un "
        r"poco de|mi))* sensibilidad\b",
        "adormecido",
    ),
    (r"\b(?:dan?|dio|daba|dando|siento|senti|como|unos) toques\b(?! de)", "corrientazo"),
    (r"\bpie(?: (?:izq\w*|der\w*|se|derecho|que))* (?:cae|caia|cuelga|arrastra)\b", "pie caido"),
    (
        r"\bse (?:caen?|cayo|cayeron|resbalan?|escapan?|van?)(?: (?!pelo)\w+){0,4}? (?:de|en) (?:la|las|mi|mis|"
        r"entre las) manos?\b",
        "debilidad en la mano",
    ),
    (r"\bse (?:va|fue|iba|ha ido|voltea|volteo)(?: un poco| un poquito| algo)? la cabeza\b", "mareo"),
    (
        r"\b(?:con|a|tengo|tenia|tuve|marca|marco|de) (?:3[89](?:[.,]\d)?|37[.,][5-9]|40)(?: grados| y "
        r"medio)?\b(?! (?:anos|minutos|ejercicios|kilos|de edad|afuera|a la sombra|repeticiones|segundos|en la "
        r"calle|pasos|min|de calor))",
        "con fiebre",
    ),
    # --- feeling gone from a limb ---------------------------------------------------------------------------
    (
        rf"\bno (?:puedo |podia |logro |alcanzo a )?(?:siento|sentia|senti|sentir|sient|noto|notaba|notar|"
        rf"sintiendo) (?:(?:bien|ya|casi|del todo|apenas) )*(?:de la cintura para abajo|"
        rf"(?P<limb>{_OWN}(?:{_LIMB})\b))",
        r"adormecido \g<limb>",
    ),
    (
        rf"\b(?P<limb>{_OWN}(?:{_LIMB})(?: (?:izq\w*|der\w*|dch\w*|dedo|de la mano|del pie))?) (?:casi |ya |que "
        rf")*(?:no) (?:la |lo |los |las )?(?:siento|sentia|senti|noto|notaba)\b",
        r"\g<limb> adormecido",
    ),
    (
        r"\b(?:perdi|perdido|pierdo|perdiendo|perdida de|perdida|falta de|sin|poca|poco|no hay|no tengo|no "
        r"tiene) (?:la |toda la |el )?(?:sensibilidad|sensacion|sentido|tacto)\b(?! de)",
        "adormecido",
    ),
    (
        rf"\bno (?P<verb>responde|obedece)n?(?P<limb> {_OWN}(?:{_LIMB}))",
        r"\g<limb> noobedece",
    ),
    (r"\b(?:siento|sentia|senti|noto|tengo|tenia) como (?=si )", "siento como "),
    (
        r"\b(?:no (?:puedo|pude|podia|consigo|logro|logre|alcanzo a|soy capaz de|aguanto)|sin poder|imposible|"
        r"incapaz de|cuesta muchisimo|imposibilidad de|impide|no deja) "
        r"(?:casi |ni |ya |ni siquiera |bien de )*(?P<verb>respirar|resollar|tomar aire|coger aire|agarrar aire|"
        r"jalar aire|hablar|articular\w*|pronunciar|apoyar\w*|pisar|caminar|andar|cargar peso|sostener\w*|"
        r"mover\w*|levantar\w*|ver|orinar|mear|hacer pis|hacer pipi|hacer del bano|aguantar\w* (?:el pis|la orina|"
        r"la pipi|el pipi|las ganas|la caca|la pis)|controlar)\b",
        r"no puedo \g<verb>",
    ),
    (
        r"\bno (?:para|paran|deja|dejan|cesa|paraba|cede|ceden) de (?=doler|hormig|dar|late|latir|palpitar|"
        r"molestar|punz)",
        "sigue ",
    ),
    (
        r"\b(?P<how>adormecido|noobedece)(?P<what>(?: (?:el|todo|mi|un))*) lado (?P<side>izq\w*|der\w*)\b(?! del? )",
        r"\g<how> lado \g<side> del cuerpo",
    ),
    (r"\b(duele|molesta|dolia|dolio) (?:un|una)? ?mas\b", r"duelemas"),
)
"""Done first, on the small letters without accents: chat spellings are written out, what stands apart is joined."""
