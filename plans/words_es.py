"""Spanish words, each under what the English tables know it as. Tables only: the rules are the English ones.

Letters are without accents and "ñ" is "n", as replies are read. The small words me, te, le, les and nos are dropped
before phrases are looked up, so none holds one. In a phrase `a|b` is either word, `a_b` two words and `c?` may be
missing. A longer phrase wins over a shorter one, so an idiom takes its alarming word away.
"""

from __future__ import annotations

from plans import rewrites_es

REWRITES = rewrites_es.REWRITES

MISSPELT: dict[str, str] = {
    "ice": "hice", "hize": "hice", "ise": "hice", "hise": "hice", "hce": "hice", "hcie": "hice", "echo": "hecho",
    "hehco": "hecho", "heho": "hecho", "hecoh": "hecho", "hehcho": "hecho", "hexo": "hecho", "exo": "hecho",
    "echa": "hecha", "izo": "hizo", "iso": "hizo", "hiso": "hizo", "duel": "duele", "dule": "duele", "deule": "duele",
    "duelle": "duele", "dueke": "duele", "duele3": "duele 3", "dulee": "duele", "doule": "duele", "duene": "duele",
    "dele": "duele", "duela": "duele", "duelee": "duele", "dolro": "dolor", "dolo": "dolor", "dolr": "dolor",
    "doolr": "dolor", "odlor": "dolor", "dolol": "dolor", "dolorr": "dolor", "dolir": "dolor", "dplor": "dolor",
    "sn": "sin", "mareao": "mareado", "ands": "anda", "rodila": "rodilla", "rodiya": "rodilla", "roddilla": "rodilla",
    "ombro": "hombro", "onbro": "hombro", "hombo": "hombro", "pirna": "pierna", "pierrna": "pierna",
    "piena": "pierna", "pier": "pierna", "piernna": "pierna", "pir": "pie", "pecjo": "pecho", "pehco": "pecho",
    "pexo": "pecho", "pecgo": "pecho", "cuelo": "cuello", "cuallo": "cuello", "tovillo": "tobillo",
    "tobiyo": "tobillo", "braso": "brazo", "brzo": "brazo", "mno": "mano", "cadra": "cadera", "kadera": "cadera",
    "izkierda": "izquierda", "izkierdo": "izquierdo", "isquierda": "izquierda", "isquierdo": "izquierdo",
    "derexa": "derecha", "derehca": "derecha", "drcha": "dcha", "desmalle": "desmaye", "desmalie": "desmaye",
    "fiebere": "fiebre", "fievre": "fiebre", "ficbre": "fiebre", "todoo": "todo", "tdo": "todo", "tod": "todo",
    "tofo": "todo", "tosdo": "todo", "td": "todo", "bn": "bien", "vien": "bien", "bine": "bien", "bein": "bien",
    "toy": "estoy", "toi": "estoy", "stoy": "estoy", "ta": "esta", "sta": "esta", "tava": "estaba", "pa": "para",
    "pal": "para el", "na": "nada", "naa": "nada", "nd": "nada", "nda": "nada", "to": "todo", "d": "de", "dl": "del",
    "n": "en", "aser": "hacer", "acer": "hacer", "haser": "hacer", "asta": "hasta", "ase": "hace", "ace": "hace",
    "hac": "hace", "ai": "ahi", "hoi": "hoy", "oy": "hoy", "haora": "ahora", "aora": "ahora", "ahra": "ahora",
    "grax": "gracias", "grs": "gracias", "gcs": "gracias", "gracia": "gracias", "grasias": "gracias",
    "tiemp": "tiempo", "timpo": "tiempo", "tiemo": "tiempo", "tirmpo": "tiempo", "tienpo": "tiempo",
    "travajo": "trabajo", "trbajo": "trabajo", "mitd": "mitad", "mita": "mitad", "mitaf": "mitad", "mital": "mitad",
    "termin": "termine", "temrine": "termine", "treminado": "terminado", "temine": "termine", "acave": "acabe",
    "lisot": "listo", "lsito": "listo", "lito": "listo", "lisro": "listo", "esion": "sesion", "sesin": "sesion",
    "secion": "sesion", "cesion": "sesion", "seccion": "sesion", "sezion": "sesion", "ejersicios": "ejercicios",
    "ejersicio": "ejercicio", "ejecicios": "ejercicios", "ejerc": "ejercicios", "ejer": "ejercicios",
    "estir": "estiramientos", "ayr": "ayer", "aller": "ayer", "alrato": "al rato", "mnn": "manana", "mnna": "manana",
    "mnana": "manana", "mana": "manana", "nse": "nosabe", "nc": "nosabe", "nose": "nosabe", "ns": "nosabe",
    "ntp": "gracias", "finde": "fin de semana", "uwu": "", "xd": "", "jaj": "", "tngo": "tengo", "tengp": "tengo",
    "tenog": "tengo", "tnego": "tengo", "teno": "tengo", "siebto": "siento", "sienot": "siento", "cient": "siento",
    "ciento": "siento", "cienta": "siento", "ayi": "alli", "alredor": "alrededor", "pdo": "puedo", "pued": "puedo",
    "peudo": "puedo", "puedp": "puedo", "inchada": "hinchada", "mreada": "mareada", "nesecito": "necesito",
    "kiero": "quiero", "qiero": "quiero", "kero": "quiero", "aki": "aqui", "aca": "aqui", "alas": "a las",
    "ala": "a la", "tabien": "esta bien", "okis": "ok", "oki": "ok", "okey": "ok", "okay": "ok", "okei": "ok",
    "dale": "ok", "sip": "sii", "sep": "sii", "seee": "sii", "see": "sii", "yes": "sii", "simon": "sii",
    "sipi": "sii", "yep": "sii", "sisi": "sii", "ps": "pues", "pos": "pues", "pus": "pues", "aver": "a ver",
    "musho": "mucho", "muxo": "mucho", "mxo": "mucho", "muncho": "mucho", "poko": "poco", "pokito": "poquito",
    "kon": "con", "komo": "como", "kuando": "cuando", "cuand": "cuando", "cdo": "cuando", "dsd": "desde",
    "dsp": "despues", "desp": "despues", "dps": "despues", "despue": "despues", "depues": "despues",
    "dspues": "despues", "nueb": "nueve", "nuebe": "nueve", "dies": "diez", "sero": "cero", "zero": "cero",
    "sinco": "cinco", "quatro": "cuatro", "seiz": "seis", "ocjo": "ocho", "osho": "ocho", "oxo": "ocho",
    "trez": "tres", "unpoco": "un poco", "alomejor": "a lo mejor", "sobretodo": "sobre todo", "respirra": "respirar",
    "repirar": "respirar", "espalada": "espalda", "esplada": "espalda", "epsalda": "espalda", "espaldo": "espalda",
}  # fmt: skip
"""Short words typed wrong, one by one."""

TYPED_WRONG = """
hormigueo hormigueos cosquilleo rodilla rodillas terminado terminada dolor molestia molestias molesta izquierda
izquierdo derecha derecho hombro hombros pierna piernas tobillo tobillos pantorrilla pantorrillas gemelo gemelos
cadera espalda lumbar lumbares cuello muneca brazo muslo muslos pecho corazon mandibula hinchado hinchada hinchazon
hincho inflamado inflamada moreton hematoma adormecido adormecida dormida dormido entumecido entumecida entumecimiento
adormecimiento calambre calambres electrico electrica corriente descarga punzada punzadas pinchazo punzante quemazon
ardor mareado mareada mareo mareos desmaye desmayado desmayo respirar respiracion presion opresion palpitaciones
debilidad fuerza fiebre chasquido trono crujido apoyar apoyarla caminar sesion ejercicios ejercicio estiramientos
estiramiento completado completada completo complete termine acabado tiempo trabajo reunion cansado cansada cansancio
enfermo enferma gripe resfriado olvide olvido viaje viajando vacaciones pausa pausar manana ahora despues mejor igual
agujetas adolorido adolorida dolorido dolorida rigidez tenso tensa insoportable terrible excepto ultimo ultima ultimos
ultimas primera primero ninguno ninguna problema mitad siempre todavia borrosa borroso doble vision hablar palabras
repente subito embarazada operacion operaron programa mensajes mensaje horario
"""
"""Words of five letters and more that are recognised with a letter or two wrong."""

LOOKALIKES = """
marzo tenga menor marco operaciones museo torno complejo primavera mario electronico hablas canada apoya trabajado
casado marcos profesion bravo electronica compuesto olvides destacado informado olvida marcado apoyan causado manzana
paula subido mateo complejos reunio casada mensuales viaja reparacion museos camina variaciones pierdas marcada
ejercitos hallar votaciones trozo horacio reservado homero reunieron programado olviden presionar mares prevision
terminen acabando causada terminara muneco mensajero descartar manada mirad caldera programada terminaba casera
hablara perimetro informada ahorra cantado modesta iguala regente terminaria descarta caera caminan presiona termines
adora candado cayera honorario tronos descarado tornillos horaria descarada consiente alabado mateos apoyara apoyas
modestia reunian caminas mensajeros operacional color colores doler dolar dolares calor valor motor pilar hombre
hombres hombrecito pecha hecha hecho techo lecho derechos dormir dormi duerme dorado durmiente comida movida podrida
vestida perdida medida partida salida subida bajada parada pausado causa causas casa cosa caja cadena caderas cadencia
madera espada espaldas esperado espero respira respiro respire respiramos respirado prision precision pasion mision
vision television presiono reunir reunido reuniones completos completas completar completan compete cansar descansar
descansado descansada cansados cambiar cambie cambio mejora mejorar mejorado mejore mejores igualmente iguales tensos
tension tensar tiempos tiempo templo tiempito trabajos trabaje trabajar trabajando trabajadora muslos pecas cuello
cabello camello bello sello vello brazos abrazo abrazos trazo plazo pierda pierdo pierde tierna tiernas pieza piezas
piel mitades mitica mucho muchos ocho noche noches leche fecha flecha dicha ducha lucha lado ladera ladrillo colchon
varilla costilla costillas hebilla semilla mejilla parrilla tortilla silla capilla mantequilla amarilla amarillo
viajes viejo vieja viajero pausas pauta pautas ultimamente primeros primeras primer segundos problemas programas
programar morado dorada mareada marea mareas maleta mesa mensual sesiones pension lesion cesiones ejercito ejercer
ejercitar fuera fuerzas fuerte fuertes fiesta fiebre siempre hierba hiebra nombre nombres pobre cobre sobre corriente
corrientes corriendo carrera cargar cargada descargar descargue descansa descarte calambres calabaza calma calmante
hinche hincha hinchas ninguno alguna algunas algunos alguno olvidar olvidado olvidada olvidan dobles doblar doble
doblado doblada doblando doblo hablo hablando hablamos hable hablan tablas apoyo apoyando apoyado apoyada caminata
caminando camino caminos camine vacante vacuna vacunas gemela gemelas mandarina mandado borrador borrar punta punto
puntos pintada puntada pinchar pinchada pincho trono trueno troncos tronco crudo crujiente mayores moretones tenis
tensas densa densas ahorrar horario horarios horas operar operado operada embarazo embarcada gripa grita gritos tripa
resfriados enfermera enfermero enfermos enfermedad insoportables terribles pierdes despierta desperte rigido rigida
acabada acabados acabar ardiendo arde arder cardio cardo corazones cosquillas hormiga hormigas dormidos dormidas
entumida entumido adormilado adormilada repetir repente reciente frente gente lente agujeta agujeros agujas palabra
palabras palomas parabrisas
"""
"""Ordinary words that look like the words above and must stay what they are."""

PHRASES: dict[str, str] = {
    # --- small words --------------------------------------------------------------------------------------------------
    "": (
        "quiubo|esfuerzo|fijese|figurate|se|te|le|me|nos|les|pues|bueno|buenas|hola|holi|holaa|ay|ah|oh|eh|uf|uff|che|"
        "boludo|wey|guey|weon|tio|oye|mira|mire|fijate|bendiciones|saludos|saludo|abrazo|abrazos|besos|profe|"
        "profesora|entrenador|entrenadora|coach|doc|amigo|amiga|mijo|mija|querida|querido|senorita|estimado|estimada|"
        "va|pos|hombre|vaya|jolin|joder|caray|wow|vale|venga|tranqui|sr|sra|cuento|digamos, que onda, que tal profe, "
        "que hubo, no manches, no mames, hombre pues, mire usted, con esfuerzo, con mucho esfuerzo, con ganas, con "
        "energia, con gusto, con calma, con cuidado, ni nada, de un tiron, de una vez, sin hacer nada, nada mas "
        "levantarme, como siempre, como cada dia, quien sabe, mano mia, tia mia, doctora mia, buenos dias, buen dia, "
        "buenas tardes, buenas noches, la verdad, la neta, que tal, como estas, como esta usted, como va, gracias a "
        "dios, bendito dios, dios mio, por favor, por suerte, menos mal, al menos, por lo menos, por cierto, es que, "
        "la verdad es que, o sea, a ver, eso si, mi profe, mi coach, un saludo, un abrazo, un abrazote, saludos "
        "cordiales, que pena, que lata, que rollo, nomas avisando, cuento que, aviso que, decirle que, decir que, "
        "comento que, queria decir que, queria comentar que, con permiso, de paso"
    ),
    "the": "el|la|los|las",
    "a": "un|una",
    "some": "unos|unas|algo|algun|alguna|algunos|algunas|varios|varias",
    "one": "uno",
    "it": "lo|ello",
    "i": "yo",
    "she": "ella",
    "they": "ellos|ellas",
    "we": "nosotros",
    "you": "usted|ustedes|vos, tu mismo",
    "my": "mi|mis|mio|mia|nuestro|nuestra",
    "me": "conmigo, mi mismo",
    "your": "tu|tus|su|sus",
    "this": "este|esto|estos|estas",
    "that": "que|ese|esa|eso|esos|esas|aquel|aquella|aquello|cual",
    "of": "de",
    "of the": "del",
    "in": "en|dentro",
    "on": "encima",
    "to the": "al",
    "to": "a|hacia|hastanum",
    "from": "desdenum",
    "went down to": "cambionum",
    "for": "para|por|pro",
    "with": "con|c",
    "between": "entre",
    "under": "debajo|abajo|bajo",
    "over": "arriba",
    "since": "desde, desde que, desde hace, desde el, desde la",
    "until": "hasta|hast, hasta que",
    "after": (
        "despues|tras, despues de, despues del, luego de, tras la, despues de la, al terminar, al acabar, al finalizar"
    ),
    "before": "antes, antes de, antes del, antes de la",
    "during": "durante|mientras",
    "when": "cuando|kuando, cada vez que, al momento de, a la hora de, en cuanto",
    "and": "y|e",
    "or": "o|u",
    "nor": "ni",
    "but": "pero|sino, solo que, lo que pasa es que, lo unico que, nada mas que, lo unico es que",
    "although": "aunque",
    "however": "sin embargo",
    "except": (
        "excepto|salvo|menos|quitando|exceptuando, a excepcion de, con excepcion de, aparte de, menos la, menos el, "
        "fuera de"
    ),
    "except the": (
        "menos los, menos las, excepto la, excepto el, excepto los, excepto las, salvo la, salvo el, salvo los, salvo "
        "las, quitando la, quitando las, quitando el, quitando los"
    ),
    "because": "porque, puesto que, ya que, debido a que, dado que, pues que",
    "because of": (
        "por culpa, por causa, debido a, por falta, a causa, por culpa de, por falta de, a causa de, gracias a, por "
        "motivo de, por tema de, por temas de, por cosas de, por motivos de, por asuntos de, por cuestiones de, por "
        "la lluvia de"
    ),
    "so": "entonces, asi que, por eso, de modo que, por lo que, por lo tanto, y por eso, con lo cual, por esa razon",
    "very": "muy|tan|super|re|sumamente|requete, bien bien, bastante mas",
    "a lot": "mucho|mucha|muchisimo|cantidad|caleta|bastante|harto|harta, un monton, un chorro, un chingo, un buen",
    "many": "muchos|muchas|hartos|hartas",
    "too": "demasiado de",
    "too much": "demasiado|demasiada|demasiados|demasiadas|excesivo|excesiva",
    "a bit": (
        "poco|poquito|poquitin|pelin|tantito|tantico|chin|chisp|apenitas|cierta|cierto, ratito de, un poco, un "
        "poquito, un poco de, un poquito de, un pelin, un tanto, una pizca, un chin, un cachito, algo de, un toque, "
        "un poquitin, un tantito, un poquito nomas, una miaja, un pelin de, algun que otro, un leve, una leve, un "
        "poco nomas"
    ),
    "slight": (
        "leve|leves|ligero|ligera|levemente|ligeramente|minimo|minima|pequeno|pequena|suave|suaves|soportable|"
        "llevadero|llevadera|tolerable"
    ),
    "moderate": "moderado|moderada|regular",
    "hardly any": "apenas|escasamente, casi nada, casi nada de, apenas nada, casi no, casi ningun, casi ninguna",
    "almost no": "casi sin",
    "almost": "casi|cuasi, por poco",
    "at": "ennum",
    "chest pain": "dolordepecho",
    "slept": "dormidito",
    "mess": "ensucio",
    "kid was sick": "parientenfermo",
    "not the rest": (
        "elresto no, el resto no, el resto nop, lo demas no, lo demas nop, los demas no, los demas nop, las demas no, "
        "las demas nop, las otras no, los otros no"
    ),
    "denies": "niego|niega|niegan",
    "about": (
        "aproximadamente|aprox|rondando|pongamos|nivel|intensidad|calculo|nota|puntuacion|puntaje|valor|grado, "
        "alrededor de, unos pocos de, cerca de, tirando a, mas bien, digamos un, mas o menos un, mas o menos una, mas "
        "o menos la, mas o menos de, diria que, diria que un, diria un, yo diria, yo diria que, pongo un, doy un, "
        "calculo que un, algo asi como, algo como, como de, yo creo que un, creo que un, un nivel, un nivel de, nivel "
        "de, intensidad de, sera un, seria un, yo daria un, daria un, pondria un, como mucho, como maximo, a lo sumo, "
        "no mas de"
    ),
    "more or less": "masomenos, mas o menos",
    "like": "como|tipo, igual que, parecido a",
    "like a": "como un, como una",
    "less than": "menos de, menos que",
    "more than": "mas de, mas que",
    "more": "mas",
    "only": "solo|solamente|unicamente|nomas|soli|solito, nada mas, no mas, tan solo",
    "just": "justo|justamente|recien",
    "also": "tambien|ademas|incluso, igual tambien, hasta eso",
    "other": "otro|otra|otros|otras|demas, resto de los, resto de las",
    "same thing": "lo mismo de",
    "well": "bien que",
    "very well": "muy bien",
    "so far": "hasta ahora, hasta aqui, de momento, por ahora, por el momento, hasta el momento",
    "here": "aqui|alli|ahi|alla",
    "always": "siempre|habitualmente",
    "sometimes": "a veces, de vez en cuando, en ocasiones, por momentos, a ratos, de a ratos, por ratos",
    "already": "ya",
    "anyway": "igualmente, aun asi, de todos modos, de todas formas, de todas maneras, igual pero",
    "then": "luego",
    "where": "donde",
    "how": "como se, como puedo, como hago, como se hace",
    "what": "cuales, que es, que hago, que puedo, que significa, que tengo que, que toca",
    "when is": "cuando es, cuando toca, cuando empieza, cuando tengo",
    "how many": "cuanto|cuantos|cuantas|cuanta",
    "why": "a que se debe, por que razon",
    "who": "quien|quienes",
    "can i": "puedo|podria|podre|deberia|debo|conviene, puede uno, tengo que, se puede",
    "can you": "puedes|podes|podrias|podeis|pueden, puede usted, podria usted",
    "is it": "es normal, sera normal, es bueno, es malo, es mejor, es posible que",
    "is it normal": "es normal que, sera normal que, es normal si",
    # --- to be, to have, to feel --------------------------------------------------------------------------------------
    "is": "es|esta|estoy|ando|soy|anda|queda|sera|resulta",
    "are": "son|estan|andan",
    "at first": "al empezar, al comenzar, al inicio, al principio",
    "was": (
        "estuve|estuvimos|andaba|andabamos|anduve|era|estaba|fue|estuvo|eran|estaban|estuvieron|inicialmente, primero "
        "era, al comienzo"
    ),
    "started at": (
        "inicionum, empezo ennum, empece ennum, comenzo ennum, comence ennum, inicio ennum, empezo en un, empece en "
        "un, empece con un, empezo con un"
    ),
    "ended at": (
        "finalnum, termino ennum, termine ennum, acabo ennum, acabe ennum, quedo ennum, quede ennum, bajo ennum, "
        "acabe con un, termine con un, termino con un, acabe en un, termine en un"
    ),
    "started": "empezo|comenzo|empece|comence|empezaron|empezando|inicio|arranque|arranco|inicie",
    "start": "empezar|empieza|comenzar|iniciar",
    "been": "sido|estado",
    "i have": "tengo",
    "have": "he|han|hemos|haya|tenemos|traigo|llevo|presento, ando con",
    "has": "ha|tiene|trae|tienen",
    "had": "tuve|tenia|habia|tuvo|tenido",
    "notice": (
        "siento|noto|encuentro|sentia|notaba, noto como, siento como que, siento que, noto que, siento una sensacion, "
        "tengo sensacion, tengo la sensacion, noto una sensacion, la siento"
    ),
    "noticed": "senti|sentimos|note|notado|sentido|sentir|sintio",
    "feeling": "sensacion|sintiendo|notando",
    "feels": "siente|sienten, se siente",
    "there is": "hay|existe",
    "there was": "hubo",
    "got": (
        "dio|dado|da|dan|dando|entro|sale|salio|agarro|pego|viene|aparecio|aparece|quedo|quedado|puso|puesto|pone|"
        "hizo|ponen|quedaron|pusieron|volvio"
    ),
    "came": "llego|llegaron|vino|vinieron, cayo de visita",
    "get": "dar|poner|salir|doy",
    "goes": "va por, sigue por",
    "went": "fui|iba",
    "heard": "oi|escuche|oyo|escucho, sono un, sono como, se oyo, se escucho, escuche como, oi como",
    "can": "puede",
    "could": "pude|podia|pudo",
    "can not": "no puedo, no puede, no consigo, no logro, no alcanzo",
    "could not": (
        "no pude, no podia, no pudo, no logre, no consegui, no alcance, no he podido, no he conseguido, no pude ni, "
        "no llegue a"
    ),
    "want": "quiero|quisiera|queria|quise|gustaria|deseo",
    "need": "necesito|ocupo, hace falta",
    "must": "debe, hay que",
    "try": "trate|intento|intente|probe|tratar|intentar|trato",
    "help": "ayuda|auxilio|socorro",
    "says": "dice|dijo|dicen|comenta|comento, nota que, noto el",
    "thanks": (
        "gracias crack, eres un crack, sos un crack, que crack, crack total, grande crack, buen crack, "
        "gracias|agradezco|agradecido|agradecida, muchas gracias, mil gracias, muchisimas gracias, gracias por todo"
    ),
    # --- no -----------------------------------------------------------------------------------------------------------
    "no": (
        "nop|ningun|ninguna|ninguno|ningunos|cero|nulo, no tengo, no tuve, no hubo, no hay, no he tenido, no habia, "
        "no tenia, no presento, no he sentido, no he notado, no siento, no senti, no noto, no note, no sentia, no hay "
        "nada de, no tengo nada de, no siento nada de, no senti nada de, no tuve nada de, no tengo ningun, no tengo "
        "ninguna, no hubo ningun, no hay ningun, no hay ninguna, no siento ningun, no senti ningun, no tuve ningun, "
        "sin ningun, sin ninguna, sin nada de"
    ),
    "not": "no, no se",
    "no pain today": (
        "hoy nada de dolor, hoy nada de molestias, hoy no duele, hoy no duele nada, hoy sin dolor, hoy no dolio, hoy "
        "no dolio nada, hoy no tengo dolor, hoy no hay dolor, hoy nada dolor, hoy no molesta, hoy cero dolor, hoy "
        "cero molestias, hoy ningun dolor"
    ),
    "neither": "tampoco",
    "never": "nunca|jamas",
    "without": "sin, libre de",
    "no sign of": "ni rastro de, ni rastro del, ni senal de",
    "nothing": "nada, nada de, ni pizca de, ni gota de",
    "none": "nula, ninguno de, ninguna de, para nada, de nada nada",
    "not at all": "en absoluto",
    "no more": "ya no, ya ni, nada mas de, ya sin",
    "no pain": (
        "indoloro, nada de dolor, nada de dolores, nada de molestias, sin dolor, sin dolores, sin ningun dolor, sin "
        "nada de dolor, sin molestias, sin molestia, sin ninguna molestia, no duele nada, no duele, no dolio nada, no "
        "ha dolido nada, no dolio, no molesta nada, no molesto nada, no dolia nada, no duelen, nada dolio, nada "
        "duele, no hay dolor, no hubo dolor, no tengo dolor, no tuve dolor, no tengo ningun dolor, no siento dolor, "
        "no senti dolor, no siento ningun dolor, no senti ningun dolor, no tengo dolores, dolor ninguno, dolor nada, "
        "dolor nulo, dolor ningun, ningun dolor, ninguna molestia, cero dolor, cero dolores, cero molestias, cero "
        "molestia, no hay molestias, no tengo molestias, no tuve molestias, sin molestias de ningun tipo, sin dolor "
        "alguno, no duele ni un poco, no dolio ni un poco, no duele para nada, no dolio para nada, no molesta, no "
        "molesto, nada molesta, nada molesto, no presento dolor, no noto dolor, no note dolor, no hay ningun dolor, "
        "no hubo molestias, sin doler, sin que duela, sin que doliera, no sentir dolor, no he tenido dolor, no ha "
        "dolido, sin ningun tipo de dolor, dolor no hay, dolor no tengo, de dolor nada, nada dolor, no dolor, no "
        "tengo nada de dolor, no siento nada de dolor, no senti nada de dolor, no senti dolor alguno, no tengo nada "
        "de dolores, nadita de dolor, ni un dolor, ni dolor, no duele naita"
    ),
    "completely gone": (
        "se quito todo, ya se quito todo, se fue todo, ya se fue todo, se paso todo, ya paso todo, todo paso, "
        "desaparecio todo"
    ),
    "gone now no pain": (
        "ya nada, hoy ya nada, hoy ya nada de dolor, ahora ya nada, ahora nada, hoy ya no, ya no duele, ya no duelen, "
        "ya no molesta, ya no molestan, ya no duele nada, ya no tengo dolor, ya no siento dolor, ya no hay dolor, ya "
        "nada de dolor, ya sin dolor, hoy ya no duele, hoy ya no duele nada, ya no siento nada, ya no tengo nada, ya "
        "no tengo molestias, ya sin molestias"
    ),
    "pain none": "dolor ninguno hoy",
    "pain": (
        "dolor|dolores|dolorcito|dolorcillo|dolencia|molestia|molestias|malestar|incomodidad|incomodo|incomoda|"
        "molestando|molestaban|molesto|molesta|molestan|molestaba|molestado|doloroso|dolorosa|lastimo|lastime|"
        "lastimado|lastimada|lastima|lastimando|lesione|lesionado|lesionada|lesion|torci|torcio|torcedura|esguince|"
        "contractura|contracturado|contracturada|contracturo|tiron|jalon|pellizco|pellizca|fastidia|fastidio|resiente|"
        "resiento|resentido|resentida|resenti|quejo|jode|molestas|molestamos|molestabas|moleste|molestaste|molestaron|"
        "molestada|molestados|molestadas|molestar|molestarse|molestandose|molestarme|molestara|molestaria|molestaran|"
        "molestaras|molestasen|lastimas|lastimamos|lastiman|lastimaba|lastimaban|lastimabas|lastimaste|lastimaron|"
        "lastimados|lastimadas|lastimar|lastimarse|lastimandose|lastimarme|lastimara|lastimaria|lastimaran|lastimaras|"
        "lastimasen|lesiono|lesionas|lesiona|lesionamos|lesionan|lesionaba|lesionaban|lesionabas|lesionaste|"
        "lesionaron|lesionando|lesionados|lesionadas|lesionar|lesionarse|lesionandose|lesionarme|lesionara|lesionaria|"
        "lesionaran|lesionaras|lesionasen|fastidias|fastidiamos|fastidian|fastidiaba|fastidiaban|fastidiabas|fastidie|"
        "fastidiaste|fastidiaron|fastidiando|fastidiado|fastidiada|fastidiados|fastidiadas|fastidiar|fastidiarse|"
        "fastidiandose|fastidiarme|fastidiara|fastidiaria|fastidiaran|fastidiaras|fastidiasen|incomodas|incomodamos|"
        "incomodan|incomodaba|incomodaban|incomodabas|incomode|incomodaste|incomodaron|incomodando|incomodado|"
        "incomodada|incomodados|incomodadas|incomodar|incomodarse|incomodandose|incomodarme|incomodara|incomodaria|"
        "incomodaran|incomodaras|incomodasen, dolian algo, torcido el tobillo, tirones fuertes, desgarro leve, dano "
        "en, jodida la, jodido el, mal de espalda, hace dano, hizo dano, hice dano, haciendo dano, he hecho dano, dio "
        "un tiron, dado un tiron, di un tiron, pego un tiron, mal gesto, mala postura dolor"
    ),
    "hurts": (
        "duele|duelen|dolia|dolian|dolio|dolieron|doliendo|dolido|doler|duela|dolera|doliera|dueles|duelenme|adolece|"
        "doles|dole|dolemos|dolen|doliste|dolida|dolidos|dolidas|dolerse|doliendose|dolieran|dolciera|dolcieran|"
        "duelemos|duelia|duelian|duelio|dueliste|duelieron|dueliendo|duelido|duelida|duelidos|duelidas|dueler|"
        "duelerse|dueliendose|dueliera|duelieran|duelciera|duelcieran, arde un poco y duele"
    ),
    "not much pain": (
        "no duele mucho, no duele tanto, no duele demasiado, no duelen mucho, no dolio mucho, no dolio tanto, no "
        "molesta mucho, no molesta tanto, no molesto mucho, no tengo mucho dolor, no mucho dolor, no duele gran cosa, "
        "no duele casi, casi no duele, casi no duele nada, no duele casi nada, casi no dolio, casi no molesta, casi "
        "sin dolor, apenas duele, apenas dolio, apenas molesta, casi nada de dolor, poco dolor, casi sin molestias, "
        "sin mucho dolor, sin demasiado dolor, no siento mucho dolor, no senti mucho dolor, no es mucho dolor"
    ),
    "no severe pain": (
        "sin dolor fuerte, sin dolor agudo, sin dolor intenso, sin dolores fuertes, no duele fuerte, sin mucho mas "
        "dolor, ningun dolor fuerte, ningun dolor agudo, nada de dolor fuerte, no tengo dolor fuerte, no hay dolor "
        "fuerte"
    ),
    "more painful": (
        "duelemas, duele mas, mas dolor, duelen mas, dolia mas, duele cada vez mas, cada vez duele mas, aumento el "
        "dolor, aumenta el dolor, ha aumentado el dolor, dolor en aumento, va a mas, va en aumento"
    ),
    "cramp": (
        "calambre|calambres|acalambrado|acalambrada|acalambro|acalambra|acalambraron|espasmo|espasmos|tranque|rampa|"
        "rampas|acalambras|acalambramos|acalambran|acalambraba|acalambraban|acalambrabas|acalambre|acalambraste|"
        "acalambrando|acalambrados|acalambradas|acalambrar|acalambrarse|acalambrandose|acalambrarme|acalambrara|"
        "acalambraria|acalambraran|acalambraras|acalambrasen|encalambro|encalambras|encalambra|encalambramos|"
        "encalambran|encalambraba|encalambraban|encalambrabas|encalambre|encalambraste|encalambraron|encalambrando|"
        "encalambrados|encalambradas|encalambrar|encalambrarse|encalambrandose|encalambrarme|encalambrara|"
        "encalambraria|encalambraran|encalambraras|encalambrasen|contracturas|contracturamos|contracturan|"
        "contracturaba|contracturaban|contracturabas|contracture|contracturaste|contracturaron|contracturando|"
        "contracturados|contracturadas|contracturar|contracturarse|contracturandose|contracturarme|contracturara|"
        "contracturaria|contracturaran|contracturaras|contracturasen, se subio la bola, se subio el gemelo, se subio "
        "el muerto"
    ),
    "headache": (
        "jaqueca|cefalea, dolor de cabeza, duele la cabeza, duele mucho la cabeza, dolia la cabeza, dolio la cabeza"
    ),
    "back pain": "lumbalgia|lumbago, ciatalgia lumbar, dolor de espalda",
    "neck pain": "cervicalgia|torticolis",
    "tear a muscle": "desgarro leve muscular",
    # --- doubt, time --------------------------------------------------------------------------------------------------
    "maybe": (
        "quizas|quiza|talvez|acaso|posiblemente|capaz|chance, puede ser, podria ser, tal vez, a lo mejor, puede que, "
        "igual si, capaz que, a lo mejor si, es posible"
    ),
    "not sure": (
        "nosabe|dudo|duda, nosabe si, no recuerdo, dudas si, no estoy segura, no estoy seguro, nosabe bien, nosabe la "
        "verdad, no sabria decir, no sabria, nosabe decir, nosabe muy bien, no tengo claro, no tengo muy claro, no lo "
        "se, ni idea, no estoy muy segura, no estoy muy seguro, no podria decir, no sabria decirte, no acuerdo, no "
        "acuerdo bien, perdi la cuenta"
    ),
    "do not know why": (
        "nosabe porque, nosabe de que, sin motivo, nosabe de que es, nosabe a que se debe, nosabe como, nosabe que "
        "paso, nosabe que es"
    ),
    "i think": "creo|pienso|supongo|imagino|parece, creo que, pienso que, parece que, imagino que",
    "i guess": "supongo que, creo que si, supongo que si, yo creo que si, se supone, se supone que si, diria que si",
    "yes and no": "si y no, sii y no",
    "probably": "probablemente|seguramente, seguro que",
    "would": "habria|haria",
    "if": "si, por si, en caso de que, en caso de",
    "what if": "y si, que pasa si, que hago si, que pasaria si",
    "should i": "deberia preocuparme, debo preocuparme, tengo que preocuparme",
    "worried about": (
        "preocupa|temo, miedo a, miedo de, preocupada por, preocupado por, miedo a que, miedo de que, da miedo, tengo "
        "miedo de, tengo miedo a, tengo miedo que, preocupa que, miedo que"
    ),
    "to avoid": "evitar|prevenir, para evitar, para que no, para no, por evitar",
    "imagine": "imaginate|imaginese|imagina",
    "hopefully": "ojala|espero, espero que",
    "last year": "el ano pasado, ano pasado",
    "last month": "el mes pasado, mes pasado",
    "last summer": "el verano pasado, el invierno pasado",
    "last week": "la semana pasada, semana pasada",
    "a year ago": (
        "hace un ano, hace ano, hace anos, hace dos anos, hace tres anos, hace cuatro anos, hace cinco anos, hace "
        "diez anos, hace varios anos, hace muchos anos, hace unos anos, hace 2 anos, hace 3 anos, hace 4 anos, hace 5 "
        "anos, hace 6 anos, hace 10 anos, hace 15 anos, hace 20 anos, hace un ano y medio, hace un par de anos, hace "
        "tiempo, hace mucho tiempo, hace mucho, hace un tiempo, anos atras, hace mas de un ano"
    ),
    "a month ago": (
        "hace un mes, hace meses, hace dos meses, hace tres meses, hace cuatro meses, hace seis meses, hace unos "
        "meses, hace varios meses, hace 2 meses, hace 3 meses, hace 4 meses, hace 6 meses, hace un par de meses, "
        "meses atras"
    ),
    "weeks ago": (
        "hace semanas, hace dos semanas, hace tres semanas, hace unas semanas, hace varias semanas, hace 2 semanas, "
        "hace 3 semanas, semanas atras"
    ),
    "days ago": (
        "antier|anteayer, hace dias, hace unos dias, antes de ayer, hace dos dias, hace tres dias, hace 2 dias, hace "
        "3 dias, el otro dia"
    ),
    "since two days": (
        "desde hace dias, desde hace semanas, desde hace horas, llevo dias, llevo semanas, llevo horas, desde hace "
        "dos dias, desde hace tres dias, desde hace unos dias, desde hace varios dias, desde hace 2 dias, desde hace "
        "3 dias, desde hace 4 dias, desde hace 5 dias, desde hace cuatro dias, desde hace cinco dias, desde hace un "
        "dia, desde hace una semana, desde hace un par de dias, llevo dos dias con, llevo tres dias con, llevo varios "
        "dias con, llevo 2 dias con, llevo 3 dias con, llevo 4 dias con, llevo unos dias con, llevo dos dias, llevo "
        "tres dias, llevo varios dias, llevo 2 dias, llevo 3 dias, llevo 4 dias, llevo unos dias, hace dos dias que, "
        "hace tres dias que, hace varios dias que, hace 2 dias que, hace 3 dias que, hace dias que, desde hace un "
        "rato, desde hace una hora, desde hace dos horas, desde hace tres horas, desde hace 2 horas, desde hace 3 "
        "horas, desde hace unas horas, desde hace varias horas, desde hace 4 horas, lleva horas, lleva dias, lleva "
        "dos horas, lleva tres horas, lleva 2 horas, lleva 3 horas, lleva varias horas, lleva dos dias, lleva tres "
        "dias, lleva 2 dias, lleva 3 dias, lleva varias dias, llevo una semana con, hace una semana que, desde hace "
        "dos semanas, desde hace tres semanas, desde hace 2 semanas, desde hace 3 semanas, llevo todo el dia, llevo "
        "desde ayer, desde hace mucho rato, hace rato que"
    ),
    "since yesterday": (
        "desde ayer, desde anoche, desde antier, desde anteayer, desde el lunes, desde el martes, desde el miercoles, "
        "desde el jueves, desde el viernes, desde el sabado, desde el domingo, desde ayer por la tarde, desde ayer en "
        "la noche, desde ayer por la noche"
    ),
    "since then": "desde entonces, desde ese momento, desde eso",
    "used to": (
        "solia|antano|antiguamente, antes solia, de joven, en el pasado, en mi juventud, en aquella epoca, en otra "
        "epoca"
    ),
    "as a child": (
        "de nino, de nina, de pequeno, de pequena, de chico, de chica, de chiquito, cuando era nino, cuando era nina, "
        "cuando era joven, cuando era chica, cuando era chico, cuando era pequeno, cuando era pequena, cuando era "
        "adolescente"
    ),
    "yesterday": (
        "ayer, ayer por la tarde, ayer en la tarde, ayer por la noche, ayer en la noche, la vez pasada, la ultima "
        "vez, la sesion pasada, la de ayer"
    ),
    "last night": "anoche",
    "today": "hoy, hoy dia, hoy por hoy, el dia de hoy, en el dia de hoy, del dia, de hoy",
    "now": (
        "ahora|ahorita|actualmente, ahora mismo, en este momento, ahora ya, en estos momentos, a estas alturas, ahora "
        "mismito"
    ),
    "this morning": (
        "esta manana, hoy por la manana, hoy en la manana, al levantarme, al despertar, al despertarme, por la "
        "manana, en la manana, esta manana al levantarme, cuando levante, al levantar"
    ),
    "at the end": "finalmente, al final, al ultimo, por fin",
    "afterwards": (
        "posteriormente, despues de la sesion, despues de estirar, despues de los ejercicios, despues del ejercicio, "
        "tras la sesion, despues de hacer la sesion, al terminar la sesion, despues de la rutina"
    ),
    "tomorrow": "manana, pasado manana",
    "tonight": "esta noche",
    "this afternoon": "esta tarde",
    "this week": "esta semana",
    "next week": "la proxima semana, la semana que viene, proxima semana, la semana entrante",
    "last time": "la otra vez, la vez anterior",
    "this time": "esta vez, en esta ocasion",
    "weekend": "fin de semana",
    "still": (
        "todavia|aun|sigue|siguen|sigo|seguia|siguio|continua|persiste|persisten|mantiene|permanece, se mantiene, "
        "todavia esta, aun sigue, todavia sigue, todavia tengo, aun tengo, sigo con, sigue ahi, todavia siento, no ha "
        "parado, aun siento, sigue sin"
    ),
    "will not go": (
        "no se va, no se quita, no se pasa, no pasa, no quita, no desaparece, no cede, no para, no calma, no mejora, "
        "no remite, no se ha ido, no se ha quitado, no se ha pasado, no se fue, no quiere irse, no hay forma de que "
        "se quite, no se alivia, no alivia, no afloja, no se calma, no vuelve, no vuelve en si, no despierta, no se "
        "despierta, no ha desaparecido, no ha vuelto, no encuentro postura, no hay postura, en ninguna postura, "
        "ninguna postura ayuda, no se termina de ir, no acaba de irse, no se termina de quitar, no se acaba de pasar, "
        "no se quito, no mejora con nada, con nada se quita, con nada mejora, nada lo calma, nada la calma, nada "
        "ayuda, nada alivia"
    ),
    "constant": (
        "constante|constantemente|permanente|continuo, continua todo el rato, sin parar, todo el tiempo, todo el "
        "rato, todo el dia, todo el santo dia, a todas horas, las 24 horas, en todo momento, dia y noche"
    ),
    "gone": (
        "desaparecio|desaparecido|desapareciendo|ido|quitado, se fue, se paso, se quito, paso enseguida, se ha ido, "
        "se ha quitado, se ha pasado, ya paso, ya se fue, ya se quito, ya se paso, se fue quitando, se fue enseguida, "
        "se fue rapido, se paso rapido, paso rapido, duro poco, duro unos segundos, duro un segundo, duro un momento, "
        "por un momento, por un segundo, un momentito, solo un momento, al rato se quito, al rato se paso, al ratito "
        "se fue, se fue solo, se fue sola, se fue pasando, ya no esta, ya no lo siento, ya no la siento, ya no hay, "
        "ya no tengo, ya no siento, se paso al minuto, ya desaparecio, ya volvio a la normalidad, volvio a la "
        "normalidad, volvio todo a la normalidad, ya normal, no volvio, no ha vuelto a pasar, no volvio a pasar, se "
        "alivio"
    ),
    "pleasant": "agradable|placentero|placentera|rico|rica|gustito|riquisimo|satisfactorio",
    "sorry": "perdon|perdona|disculpa|disculpe|sorry|disculpas|perdone, lo siento, mil disculpas",
    "correction": (
        "digo|corrijo|correccion|equivoque|mentira|rectifico|confundi|espera|espere|miento, quiero decir, quise "
        "decir, queria poner, quise poner, perdon queria decir, no espera, no perdon, nop perdon, nop espera, perdon "
        "digo, mejor dicho, error mio, error de dedo, perdon quise decir, perdon es, perdon era, no mentira, no "
        "miento, nop miento, nop mentira, no digo, a no espera, ah no, es un error, era error, nop digo, disculpa "
        "digo, disculpa quise decir"
    ),
    "in fact": "realmente|sinceramente|honestamente|francamente, en realidad, de hecho",
    # --- people -------------------------------------------------------------------------------------------------------
    "my husband": "marido|esposo, mi marido, mi esposo, mi novio, mi pareja, mi hombre, mi viejo, mi companero de piso",
    "my wife": "esposa|mujer, mi mujer, mi esposa, mi novia, mi senora, mi vieja linda",
    "my mother": "mama|abuela|suegra|madre, mi madre, mi mama, mi abuela, mi suegra, mi ama, mi vieja, mi abuelita",
    "my father": "papa|abuelo|suegro|padre, mi padre, mi papa, mi abuelo, mi suegro, mi apa, mi abuelito",
    "my son": "hijo|hija|nieto|nieta|nietos, mi hijo, mi hija, mi nieto, mi nieta, mis nietos, mi sobrino, mi sobrina",
    "my brother": (
        "hermano|hermana|cunado|cunada|primo|prima, mi hermano, mi hermana, mi cunado, mi cunada, mi primo, mi prima, "
        "mi tio, mi tia"
    ),
    "my kid": (
        "nino|nina|bebe, mi nino, mi nina, el nino, la nina, el bebe, la bebe, mi bebe, el peque, la peque, el "
        "chamaco, mi peque, mi chiquito, mi chiquita, el crio, mi pequeno, mi pequena, el pequeno, la pequena, el "
        "guagua, la guagua, el chiquito, la chiquita, mi guagua, mi hijito, mi hijita"
    ),
    "my kids": (
        "hijos|ninos|peques|nenes, mis hijos, los ninos, mis ninos, los peques, los crios, los chamacos, los chicos, "
        "los nenes, mis peques"
    ),
    "my parents": (
        "suegros|padres|papas|abuelos, mis suegros, mis padres, mis papas, mis abuelos, mis tios, mis primos, mis "
        "hermanos, mis cunados"
    ),
    "my friend": (
        "mi amigo, mi amiga, un amigo, una amiga, mis amigos, mis amigas, un conocido, una conocida, mi pana, mi cuate"
    ),
    "my colleague": "mi companero, mi companera, un companero, una companera, mi colega, un colega, una colega",
    "my neighbour": (
        "vecino|vecina|vecinos, mi vecino, mi vecina, el vecino, la vecina, los vecinos, un vecino, una vecina"
    ),
    "my boss": "jefe|jefa, mi jefe, mi jefa, el jefe, la jefa",
    "my dog": (
        "perro|perrita|perrito|gato|cachorro, mi perro, mi perra, el perro, la perra, mi gato, mi gata, el gato, la "
        "gata, mi mascota, el cachorro, mi perrito, mi perrita"
    ),
    "someone else": "alguien, otra persona, alguien mas, otra gente",
    "people": "personas|gente",
    # --- how much was done --------------------------------------------------------------------------------------------
    "done": (
        "hecho|hecha|hechos|hechas|listo|lista|listos|listas|terminado|terminada|terminados|terminadas|acabado|"
        "acabada|acabe|termine|completado|completada|completados|completadas|cumplido|cumplida|cumplidos|cumpli|"
        "realizado|realizada|realizados|realizadas|realice|finalizado|finalizada|finalice|finiquitado|concluido|"
        "concluida|conclui|logrado|lograda|logre|consegui|conseguido|superado|superada|done|ready|finito|tachado|"
        "check|checado|terminamos|acabamos|liquidado|finish|finished|despachado|despachada|ejecutado|terminao|"
        "listones|listoo|cumplimos|ejecute|terminaste|terminaron|terminadita|terminadito|terminadisima|acabaste|"
        "acabaron|acabados|acabadas|acabadita|acabadito|acabadisima|completamos|completaste|completaron|completadita|"
        "completadito|completadisima|realizamos|realizaste|realizaron|realizadita|realizadito|realizadisima|"
        "finalizamos|finalizaste|finalizaron|finalizados|finalizadas|finalizadita|finalizadito|finalizadisima|"
        "logramos|lograste|lograron|logrados|logradas|logradita|logradito|logradisima, acabo de terminar, acabo de "
        "acabar, acabo de hacerla, acabo de hacerlo, acabo de completar, acabo de completarla, acabo de hacer todo, "
        "acabo de hacer la sesion, acabo de hacer la rutina, acabo de hacer los ejercicios, recien termino, recien "
        "termine, recien acabo, recien acabe, recien terminada, recien hecha, termino de hacerla, acabamos de "
        "terminar, acabo de terminarla, acabo de terminar la sesion, acabo de terminar la rutina, acabo de terminar "
        "los ejercicios, vengo de hacerla, pronto listo, lo logre, misionero cumplido, tarea hecha, mision cumplida, "
        "objetivo cumplido, deberes hechos, deber cumplido, ya esta, ya estan, ya quedo, ya estuvo, ya ta, ya "
        "termine, ya acabe, ya lo hice, ya la hice, ya esta hecho, ya esta hecha, ya esta lista, ya esta listo, ya "
        "hice, ya cumpli, ya complete, ya hecho, ya listo, ya lista, ya las hice, ya los hice, ya hice todo, ya lo "
        "termine, ya la termine, ya lo complete, esta hecho, esta hecha, esta lista, quedo hecho, quedo lista, quedo "
        "hecha, a la saca, al bote, a la bolsa, todo listo, todo hecho, toda hecha, todos hechos, todas hechas, todo "
        "terminado, todo completado, todo completo, todo cumplido, todo realizado, todo acabado, dale que listo, he "
        "terminado, he acabado, he cumplido, he completado, he finalizado, sesion lista, sesion hecha, sesion "
        "terminada, sesion completada, sesion cumplida, sesion completa, sesion acabada, sesion finalizada, sesion "
        "realizada, rutina lista, rutina hecha, rutina terminada, rutina completada, rutina cumplida, rutina "
        "completa, rutina realizada, rutina acabada, ejercicios hechos, ejercicios listos, ejercicios terminados, "
        "ejercicios completados, ejercicios completos, ejercicios realizados, estiramientos hechos, estiramientos "
        "listos, estiramientos terminados, estiramientos completados, estiramientos realizados, entrenamiento hecho, "
        "entreno hecho, entreno terminado, entrenamiento terminado, entreno completado, entrenamiento completado, "
        "sali de eso, quitado de encima, la eche, lo eche, la avente, la chute, la saque, lo saque, lo saque "
        "adelante, la saque adelante, tarea cumplida, hasta el final, de principio a fin, de pe a pa, de cabo a rabo, "
        "sin saltarme nada, sin saltarme ninguno, no salte nada, no salte ninguno, no salte ninguna, no deje nada, no "
        "falto nada, no falto ninguno, no falte a ninguno, se hizo, se cumplio, se logro, ya se hizo, ya cumplimos"
    ),
    "did all except": (
        "todo menos, todos menos, todas menos, todo excepto, todos excepto, todas excepto, todo salvo, todos salvo, "
        "todas salvo, toda menos, toda excepto, hice todo menos, hice todos menos, hice todas menos, hice todo "
        "excepto, hice todos excepto, hice todo salvo, hice toda menos, todo hecho menos, todo hecho excepto, todo "
        "hecho salvo, hecho todo menos, hecho todo excepto, hecho menos, hecho excepto, hecho salvo, completado "
        "menos, completo menos, completa menos, todo quitando, todos quitando, hice todo quitando, he hecho todo "
        "menos, he hecho todos menos, he hecho todo excepto, he hecho todo salvo, he hecho todos excepto, complete "
        "todo menos, complete todo excepto, complete todos menos, termine todo menos, termine todo excepto, hice la "
        "rutina menos, hice la sesion menos, hice la rutina excepto, hice la sesion excepto, sesion completa menos, "
        "sesion completa excepto, hice los ejercicios menos, hice todos los ejercicios menos, hice todos los "
        "ejercicios excepto, todos los ejercicios menos, todos los ejercicios excepto, todo a excepcion de, todos a "
        "excepcion de, hice todo a excepcion de"
    ),
    "did all": (
        "todito|completito|completita|enterita|enterito, todo ejercicio, todos ejercicios, todo los ejercicios, hice "
        "yo todo, hice la de ayer y la de hoy, hice todo, hice todos, hice todas, hice todito, hicimos todo, lo hice "
        "todo, la hice toda, la hice entera, la hice completa, lo hice completo, las hice todas, los hice todos, "
        "complete todo, termine todo, acabe todo, pude con todo, cumpli todo, cumpli con todo, realice todo, logre "
        "todo, he hecho todo, he hecho todos, he hecho todas, lo he hecho todo, la he hecho entera, la he hecho "
        "completa, la he hecho toda, he podido con todo, he completado todo, he terminado todo, todo al completo, al "
        "completo, todo completito, todo lo hice, toda la sesion, toda la rutina, la sesion entera, la rutina entera, "
        "la sesion completa, la rutina completa, sesion entera, rutina entera, hice la sesion completa, hice la "
        "sesion entera, hice la rutina completa, hice la rutina entera, hice toda la rutina, hice toda la sesion, "
        "hice toda, hice todos los ejercicios, hice todos los estiramientos, hice todas las series, hice todas las "
        "rondas, hice todas las repeticiones, hice las tres rondas, hice las dos rondas, hice todas las vueltas, hice "
        "el programa completo, hice el entrenamiento completo, hice el set completo, hice completo, hice completa, he "
        "hecho la sesion completa, he hecho la rutina completa, he hecho toda la rutina, he hecho toda la sesion, he "
        "hecho la sesion entera, he hecho la rutina entera, he hecho todos los ejercicios, he hecho todos los "
        "estiramientos, todos los ejercicios, todos los estiramientos, todas las series, todas las rondas, completa "
        "la sesion, completa la rutina, complete la sesion, complete la rutina, complete el programa, complete los "
        "ejercicios, complete todos los ejercicios, complete los estiramientos, complete toda la rutina, complete "
        "toda la sesion, complete el entrenamiento, termine la sesion, termine la rutina, termine los ejercicios, "
        "termine los estiramientos, termine el entrenamiento, termine todos los ejercicios, termine toda la rutina, "
        "termine toda la sesion, acabe la sesion, acabe la rutina, acabe los ejercicios, acabe los estiramientos, "
        "acabe el entrenamiento, acabe toda la sesion, acabe toda la rutina, al 100, al cien, al 100 %, al cien por "
        "ciento, al cien por cien, todo todo, todo perfecto, todo segun lo planeado, segun lo previsto, segun el "
        "plan, todo como estaba, todo como decia, tal cual, hice ambos, hice ambas, hice las dos, hice los dos, cada "
        "uno de los ejercicios, uno por uno, las tres series, hice de todo, todo de principio a fin, completa hoy, "
        "completo hoy"
    ),
    "did the session": (
        "estire|estiramos|entrene|estirado|estirada|entrenado|ejercite|estirao, lo hice, la hice, los hice, las hice, "
        "hice la sesion, hice la rutina, hice los ejercicios, hice los estiramientos, hice el entrenamiento, hice el "
        "entreno, hice mi rutina, hice mi sesion, hice mis estiramientos, hice mis ejercicios, hice la de hoy, hice "
        "ejercicio, hice estiramientos, hice ejercicios, hice mi parte, hice lo mio, hice lo de hoy, estire hoy, lo "
        "he hecho, la he hecho, los he hecho, las he hecho, he hecho la sesion, he hecho la rutina, he hecho los "
        "ejercicios, he hecho los estiramientos, he hecho el entrenamiento, he hecho mi rutina, he hecho mis "
        "ejercicios, he hecho mis estiramientos, he estirado, he entrenado, si la hice, si lo hice, si los hice, si "
        "las hice, hice la sesion de hoy, hice la rutina de hoy, hice los ejercicios de hoy, hice los estiramientos "
        "de hoy, hicimos la sesion, hicimos los ejercicios, hicimos la rutina, pude hacerlo, pude hacerla, pude "
        "hacerlos, pude terminar, pude completarla, pude completarlo, pude acabar, logre hacerlo, logre hacerla, "
        "logre terminar, logre completar, consegui hacerlo, consegui terminar, consegui acabar, consegui hacerla, "
        "hice los de hoy, hice las de hoy, cumpli con la rutina, cumpli con la sesion, cumpli con los ejercicios, "
        "cumpli hoy, hecho el entrenamiento, hecha la sesion, hecha la rutina, hechos los ejercicios, hechos los "
        "estiramientos, la sesion la hice, la rutina la hice, los ejercicios los hice, los estiramientos los hice, "
        "hecho el de hoy, hecha la de hoy, hice lo que tocaba, he hecho lo que tocaba, hice lo que habia que hacer, "
        "realice la sesion, realice la rutina, realice los ejercicios, realice los estiramientos, saque la sesion, "
        "saque la rutina, hice la tarea, hice los deberes, pude con la sesion, anime y lo hice, anime y la hice, todo "
        "salio bien, salio bien, salio todo bien, fue bien la sesion, ha ido bien, fue genial, la hice antes, lo hice "
        "antes, los hice antes, la hice en ayunas, hice yoga de hoy, hice la serie, fue bien, fue muy bien, ha ido "
        "muy bien, fue todo bien, todo fue bien, sesion de hoy ok, sesion ok, rutina ok, ejercicios ok, si hice, si "
        "hice los ejercicios, si hice la rutina, si hice la sesion, si pude, si cumpli, si termine, si complete, si "
        "estire, si entrene"
    ),
    "did": "hice|hicimos|haciendo",
    "do": "hago|hacer|hacerlo|hacerla|hacerlos|hacerlas|haga|hace|hacemos|hagan",
    "yes": (
        "sii|claro|afirmativo|obvio|positivo|correcto|exacto|efectivamente|naturalmente|sipo|sisenor, por supuesto, "
        "desde luego, claro que sii, claro que si, sii claro, sii senor, obvio que si, a huevo, asi es, eso es, sii "
        "sii, pues sii, sii por supuesto"
    ),
    "ok": "ok|oki|okey|bkn|bacan|chido, bien todo",
    "all good": (
        "todo bien, todo ok, todo perfecto hoy, todo genial, todo correcto, todo en orden, sin problemas, sin "
        "problema, sin novedad, sin novedades, sin incidencias, todo excelente, todo tranquilo, todo normal, sin "
        "inconvenientes, sin complicaciones, sin contratiempos, todo chido, todo joya, todo de lujo, todo piola, todo "
        "en orden hoy, todo tranqui, todo de maravilla, todo bien por aqui, todo muy bien, todo estuvo bien, todo "
        "estuvo perfecto"
    ),
    "fine": (
        "bien|genial|perfecto|perfecta|perfectamente|estupendo|estupenda|excelente|fenomenal|buenisimo|buenisima|"
        "contento|contenta|tranquilo|tranquila|maravilla|fantastico|comodo|comoda|relajado|relajada|relajadita|"
        "fantastica|chevere|bacano|barbaro|espectacular|increible|facil|feliz|buena|buen|buenos|encanto|encanta|gusto|"
        "suelta|suelto|normal, de lujo, como nueva, como nuevo, ligera como pluma, super bien, de diez, de maravilla, "
        "a gusto"
    ),
    "nope": (
        "nones|negativo|naranjas|nanai|nain, que va, ni modo que no, no senor, de ninguna manera, ni de broma, ni "
        "hablar, nop senor, lamentablemente no, lamentablemente nop, desafortunadamente no, desafortunadamente nop, "
        "por desgracia nop, que va no, nop gracias, no pude hoy nada"
    ),
    "not today": (
        "hoy no, hoy nop, hoy nada, no hoy, hoy ni modo, hoy paso, hoy nanai, hoy imposible, hoy nones, hoy para "
        "nada, esta vez no, esta vez nop, no fue posible, no sera posible, hoy no pude, hoy no puedo, hoy no lo hice, "
        "hoy no la hice, hoy no hice, hoy no hice nada, hoy no hay sesion, hoy no toca, hoy no va a poder ser, hoy no "
        "va a ser, hoy no fue posible, hoy no ha podido ser, hoy no voy a poder, hoy no podre, hoy no he podido, hoy "
        "no hago, hoy no entreno, hoy no entrene, hoy no estire, hoy no he hecho, hoy no he hecho nada, hoy no los "
        "hice, hoy no se pudo, hoy no pude hacerlo, hoy no pude hacerla, hoy no pude hacer nada, hoy no pude hacer la "
        "sesion, hoy no pude hacer los ejercicios, hoy no pude hacer la rutina, no puedo hoy, no pude hoy, no podre "
        "hoy, hoy ni hablar, hoy nada de nada, hoy cero, hoy no hubo, hoy no se hizo, hoy no he hecho la sesion, hoy "
        "no hice la rutina, hoy no hice los ejercicios, hoy no hice la sesion, hoy no hice los estiramientos, hoy no "
        "hice ejercicio, hoy no he entrenado, hoy no he estirado, no voy a poder hoy, hoy no creo que pueda, no creo "
        "que pueda hoy"
    ),
    "not yet": (
        "pendiente, todavia no, aun no, todavia nop, aun nop, no todavia, no aun, aun nada, todavia nada, por ahora "
        "no, por ahora nop, de momento no, de momento nop, aun no la hago, aun no lo hago, todavia no la hago, "
        "todavia no lo hago, todavia no empiezo, aun no empiezo, aun no he empezado, todavia no he empezado, aun no "
        "hice, todavia no hice, aun no la hice, todavia no la hice, todavia no lo hice, aun no lo hice, no la he "
        "hecho todavia, no lo he hecho todavia, no la he hecho aun, no lo he hecho aun, aun no la he hecho, aun no lo "
        "he hecho, todavia no la he hecho, todavia no lo he hecho, aun no he podido, todavia no he podido, no he "
        "empezado, no he podido todavia, falta hacerlo, falta hacerla, esta pendiente, queda pendiente, lo tengo "
        "pendiente, la tengo pendiente"
    ),
    "did not do it": (
        "no lo hice, no la hice, no los hice, no las hice, no hice nada, no hice, no entrene, no estire, no hago, "
        "nada hecho, no cumpli, no hubo sesion, no se hizo, no se pudo, no complete nada, no hicimos, no lo he hecho, "
        "no la he hecho, no los he hecho, no las he hecho, no he hecho nada, no he hecho la sesion, no he hecho la "
        "rutina, no he hecho los ejercicios, no he hecho los estiramientos, no he hecho ninguno, no he hecho ningun "
        "ejercicio, no hice la sesion, no hice la rutina, no hice los ejercicios, no hice los estiramientos, no hice "
        "ningun ejercicio, no hice ninguno, no hice ejercicio, no hice ejercicios, no hice estiramientos, no hice el "
        "entrenamiento, no he estirado, no he entrenado, no he cumplido, no empece, no empece siquiera, ni empece, ni "
        "la empece, ni lo empece, ni los empece, ni las empece, ni la intente, ni lo intente, ni los intente, ni lo "
        "comence, ni la comence, no llegue a hacerla, no llegue a hacerlo, nada de nada, nada hoy, ningun ejercicio "
        "hoy, ninguno hoy, no pude hacer nada, no hice nada de nada, no hice nada hoy, no hice lo de hoy, no hice la "
        "de hoy, no los he podido hacer, no la he podido hacer, no lo he podido hacer, no he podido hacerla, no he "
        "podido hacerlo, no he podido hacer la sesion, no he podido hacer nada, no he podido hacer los ejercicios, no "
        "he podido entrenar, no he podido estirar, ni los toque, ni toque la esterilla, ni movi, no realice, no "
        "realice la sesion, no realice los ejercicios, no se realizo, no logre hacerla, no logre hacerlo, no se dio, "
        "cero ejercicios, cero ejercicio, cero estiramientos, cero sesion, no fui capaz de empezar"
    ),
    "could not do it": (
        "no pude hacerlo, no pude hacerla, no pude hacerlos, no pude entrenar, no pude estirar, no pude cumplir, no "
        "pude realizarla, no puedo hacerlo, no puedo hacerla, no podre, no pude hacer la sesion, no pude hacer la "
        "rutina, no pude hacer los ejercicios, no pude hacer los estiramientos, no pude hacer el entrenamiento, no "
        "pude hacer ejercicio, no pude hacer ninguno, no pude hacer la de hoy, no pude hacer lo de hoy, no pude "
        "realizar la sesion, no pude realizar los ejercicios, no pude hacerlo hoy, no pude hacerla hoy, no pude "
        "empezar, no pude ni empezar, no voy a poder, no podre hacerla, no podre hacerlo, no puedo hacer la sesion, "
        "no puedo hacer los ejercicios, no puedo entrenar, imposible hacerlo, imposible hacerla, fue imposible, ha "
        "sido imposible, imposible hoy, no hubo manera, no hubo forma, no hubo chance, no se podra, no alcance a "
        "hacerla, no alcance a hacerlo, no alcance a hacer nada, no dio la vida para hacerla, no consegui hacerlo, no "
        "puedo ahora, no pudo ser, no ha podido ser"
    ),
    "skipped today": (
        "falte|falle|fallado|faltado|saltado|skip|cancelado|cancele|cancelada|omiti, la salte, lo salte, salte la "
        "sesion, salte la rutina, pase de hacerla, paso de hacerla, la deje pasar, lo deje pasar, no toca, suspendida "
        "hoy, perdi la sesion, salte los ejercicios, salte los estiramientos, salte hoy, salte el dia, salte la de "
        "hoy, salte el de hoy, salte el entrenamiento, la he saltado, lo he saltado, he saltado la sesion, he saltado "
        "la rutina, deje la sesion, deje de hacerla, la dejo para otro dia, lo dejo para otro dia, la deje, lo deje "
        "hoy, lo deje para otro dia, la pele, la vole, pele la sesion, hoy descanso, hoy descanse, hoy la salto, hoy "
        "lo salto, hoy salto, tome el dia, tomo el dia, tomo el dia libre, tome el dia libre, tome un descanso, "
        "descanse hoy, hoy libre, hoy paso de todo, hoy paso palabra, paso por hoy, hoy la deje pasar, hoy lo deje "
        "pasar, falle hoy, hoy falle, hoy falte, no cumpli hoy, hoy no cumpli, omiti la sesion"
    ),
    "rest today": (
        "descanse, dia de descanso, dia libre, descanso hoy, dia de reposo, prefiero descansar, preferi descansar, "
        "toca descansar, toca descanso, mejor descanso, mejor descanse, decidi descansar, opte por descansar, he "
        "preferido descansar"
    ),
    "later": (
        "ya mero, ya mero la hago, ahorita mero, ya merito, de rato, "
        "despuesito|pospuesta|pospuesto|pospongo|aplazo|aplazado|aplazada|pronto|enseguida, mas tarde, luego lo hago, "
        "luego la hago, al rato, al ratito, despues lo hago, despues la hago, lo hago luego, la hago luego, lo hago "
        "despues, la hago despues, mas tardecito, ahorita lo hago, ahorita la hago, en un rato, en un ratito, dentro "
        "de un rato, en una hora, ya voy, mas rato, mas al rato, la dejo para mas tarde, lo dejo para mas tarde, la "
        "dejo para luego, lo dejo para luego, lo hare mas tarde, la hare mas tarde, lo hare luego, la hare luego, lo "
        "hare despues, la hare despues, lo hago en un rato, la hago en un rato, la hago mas tarde, lo hago mas tarde, "
        "la hago al rato, lo hago al rato, luego los hago, despues los hago, los hago luego, los hago mas tarde, lo "
        "hare, la hare, los hare, en un ratico, voy a hacerla, voy a hacerlo, ahora voy, ahora la hago, ahora lo "
        "hago, estoy por empezar, a punto de empezar, estoy por hacerla, estoy en eso, luego luego, lo hago ahora, la "
        "hago ahora, ya casi empiezo, empiezo en un rato, despues del trabajo la hago, despues del trabajo lo hago, "
        "despues del trabajo, despues de trabajar, despues de comer, despues de cenar, luego del trabajo, mas tarde "
        "lo hago, mas tarde la hago, luego digo, luego aviso, luego hago, despues hago, hoy mas tarde, mas tarde hoy, "
        "cuando llegue a casa, cuando salga del trabajo, cuando salga de trabajar, en cuanto llegue a casa, al llegar "
        "a casa, al salir del trabajo, a la tarde, a la noche, a la noche la hago, a la noche lo hago, a la tarde la "
        "hago, a la tarde lo hago, por la tarde, en la tarde, en la tardecita, por la noche lo hago, por la noche la "
        "hago, en la noche lo hago, en la noche la hago, en la noche los hago, por la tarde lo hago, por la tarde la "
        "hago, en la tarde lo hago, en la tarde la hago"
    ),
    "will do it later": "hare|haremos, la hago, lo hago, los hago, las hago, ya la hago, ya lo hago, voy a hacer",
    "will do it tonight": (
        "esta noche lo hago, esta noche la hago, lo hago esta noche, la hago esta noche, lo hare esta noche, la hare "
        "esta noche, lo hago en la noche, la hago en la noche, lo hago por la noche, la hago por la noche, lo dejo "
        "para la noche, la dejo para la noche, lo hago a la noche, la hago a la noche, la hago esta tarde, lo hago "
        "esta tarde, lo hare esta tarde, la hare esta tarde, esta tarde la hago, esta tarde lo hago"
    ),
    "will do it tomorrow": (
        "manana lo hago, manana la hago, lo hago manana, la hago manana, lo hare manana, la hare manana, manana sin "
        "falta, manana recupero, mejor manana, la dejo para manana, lo dejo para manana, manana si, manana sii, lo "
        "dejo pa manana, manana los hago, para manana, manana sera, la recupero manana, lo recupero manana, manana "
        "pongo, los hago manana, manana retomo, retomo manana, manana retomamos, manana hago doble, manana meto"
    ),
    "half done": "hecho a medias, hecha a medias, hechos a medias, hechas a medias, hecho a la mitad",
    "did part of it": (
        "parcialmente|parcial|incompleto|incompleta|incompletos|medias, en parte, por partes, a medias, a medio "
        "hacer, una parte, solo una parte, hice una parte, hice parte, hice solo una parte, solo parte, parte de la "
        "sesion, parte de la rutina, una parte de la sesion, una parte de la rutina, hice parte de la sesion, hice "
        "parte de la rutina, una parte nada mas, la hice a medias, lo hice a medias, los hice a medias, quedo a "
        "medias, se quedo a medias, quede a medias, lo deje a medias, la deje a medias, deje a medias, deje a la "
        "mitad, la deje a la mitad, lo deje a la mitad, quede a la mitad, sesion incompleta, rutina incompleta, mas "
        "no toda, pero no toda, pero no todo, pero no todos, pero no todas, pero no completa, pero no completo"
    ),
    "only did the first": (
        "solo los primeros, solo las primeras, hice los primeros, hice las primeras, hice solo los primeros, solo "
        "hice los primeros, solo hice las primeras, hice el primero, hice la primera, solo hice el primero, solo hice "
        "la primera, hice solo el primero, hice solo la primera"
    ),
    "did some": (
        "hice algo, hice algunos, hice algunas, hice unos, hice unas, hice un poco, hice un poquito, hice poco, hice "
        "poquito, hice lo que pude, hice varios, hice unos cuantos, hice un par, hice pocos, hice pocas, algunos "
        "ejercicios, unos cuantos ejercicios, unos cuantos, unas cuantas, solo algunos, solo algunas, solo unos, solo "
        "unas, solo unos pocos, algo hice, he hecho algo, he hecho algunos, he hecho unos cuantos, he hecho un poco, "
        "he hecho lo que he podido, hice solo algunos, hice nada mas unos, hice lo basico, solo hice algunos, solo "
        "hice unos, solo hice unos cuantos, hice unas pocas, hice unos pocos, algo pude, algo pude hacer, pude hacer "
        "algo, hice los que pude, hice solo lo que pude, un poquito hice, hice nomas unos, hice la version corta, "
        "version corta, hice los faciles, hice solo los faciles, solo hice los de, solo hice las de, solo hice el, "
        "solo hice la, solo hice los, solo hice las, hice solo los, hice solo las, hice solo el, hice solo la, hice "
        "nomas los, hice nomas las"
    ),
    "only did the arms": "solo brazos, solo los brazos, solo los de brazos, nomas brazos",
    "only did the legs": "solo piernas, solo las piernas, solo los de piernas, nomas piernas",
    "only did the neck": "solo cuello, solo el cuello, solo los de cuello",
    "only did the back": "solo espalda, solo la espalda, solo los de espalda",
    "only did the first part": (
        "solo la primera parte, hice la primera parte, hice solo la primera parte, solo hice la primera parte, solo "
        "la mitad de arriba, solo la parte de arriba, solo la parte de abajo"
    ),
    "only did": (
        "solo hice, hice solo, solo pude hacer, solo alcance a hacer, solo pude, solo alcance, pude hacer solo, hice "
        "solamente, solamente hice, hice nada mas, hice nomas, nomas hice, nada mas hice, solo he hecho, he hecho "
        "solo, no hice mas que, unicamente hice, apenas hice, apenas pude hacer, solo he podido hacer, no pude hacer "
        "mas que, solo complete, solo termine, solo logre, solo consegui hacer, solo llegue a, alcance a hacer, "
        "alcance a hacer solo, solo logre hacer"
    ),
    "did some of it": (
        "no todo, no todos, no todas, no toda, no entera, no completa, no completo, no hice todo, no hice todos, no "
        "hice todas, no hice toda, no hice toda la rutina, no hice toda la sesion, no lo hice todo, no la hice toda, "
        "no la hice entera, no la hice completa, no hice completo, no hice completa, no pude hacer todo, no pude "
        "hacer todos, no pude hacer todas, no pude con todo, no pude con todos, no pude hacerlo todo, no pude hacerla "
        "toda, no pude hacerla completa, no pude completar todo, no pude completar todos, no logre hacer todo, no he "
        "hecho todo, no lo he hecho todo, no he podido hacer todo, no he podido con todo, no alcance a hacer todo, no "
        "alcance a hacer todos, no complete todo, no todo completo, no del todo, no los hice todos, no las hice "
        "todas, no pude hacer toda la rutina, no pude hacer toda la sesion, no alcance todo, no complete todos, no "
        "hice todos los ejercicios, no pude hacer todos los ejercicios"
    ),
    "could not finish": (
        "no termine, no acabe, no complete, no pude terminar, no pude acabar, no pude completar, no pude terminarla, "
        "no pude terminarlo, no pude acabarla, no pude completarla, no pude completarlo, no pude seguir, no pude "
        "continuar, no logre terminar, no logre completar, no logre acabar, no alcance a terminar, no alcance a "
        "completar, no llegue al final, no finalice, no llegue a terminar, sin terminar, sin acabar, no la termine, "
        "no lo termine, no la acabe, no lo acabe, no la complete, no lo complete, no pude acabarlo, no los termine, "
        "no los complete, no he terminado, no he acabado, no he podido terminar, no he podido acabar, no he podido "
        "completar, no he podido seguir, no la he terminado, no lo he terminado, no la he acabado, no lo he acabado, "
        "no la he podido terminar, no lo he podido terminar, no consegui terminar, no consegui acabar, no termine "
        "toda, no termine todo, no termine la sesion, no termine la rutina, no acabe la sesion, no acabe la rutina, "
        "no complete la sesion, no complete la rutina, no termine los ejercicios, no complete los ejercicios, no pude "
        "terminar la sesion, no pude terminar la rutina, no pude terminar los ejercicios, no pude acabar la sesion, "
        "no pude acabar la rutina, no pude completar la sesion, no pude completar la rutina, no pude completar los "
        "ejercicios, no pude terminar todo, no pude terminar todos, no aguante hasta el final, no llegue hasta el "
        "final, no llegue a acabar, no acabe todo, sin llegar al final, sin completar"
    ),
    "had to stop": (
        "pare|detuve|abandone|interrumpi|interrumpida|interrumpido|interrumpieron|corte|abandonado|abandonada|rendi|"
        "desisti|suspendi|acorte|acortada|recorte|recortada|aborte|abortado|raje, tuve que parar, parado a mitad, "
        "deje de hacer, lo deje, la corte, lo corte, la interrumpi, tire la toalla, la acorte, pare antes, pare a la "
        "mitad, pare a medias, pare en la mitad, tuve que detenerme, tuve que dejarlo, tuve que dejarla, tuve que "
        "cortar, tuve que cortarla, tuve que interrumpir, tuve que interrumpirla, tuve que abandonar, tuve que "
        "pausarla, tuve que suspender, lo deje ahi, la deje ahi, ahi lo deje, ahi la deje, ahi quedo, hasta ahi "
        "llegue, hasta ahi, ya no segui, no segui, ya no pude, ya no pude mas, no pude mas, no he podido mas, no pude "
        "seguir haciendo, deje de hacerlo, pare antes de terminar, termine antes, acabe antes, termine antes de "
        "tiempo, la corte antes, he parado, he tenido que parar, he tenido que dejarlo, he tenido que dejarla, he "
        "abandonado, he cortado, la he dejado a medias, lo he dejado a medias, la he dejado a la mitad, lo he dejado "
        "a la mitad, he parado a la mitad, tuve que parar a la mitad, tuve que parar antes, la pare, lo pare, decidi "
        "parar, preferi parar, pare en seco, la cancele a la mitad, la tuve que dejar, lo tuve que dejar, la tuve que "
        "parar, lo tuve que parar, quede en, llegue hasta"
    ),
    "left out two": (
        "faltan dos, faltan tres, faltan 2, faltan 3, faltan 4, faltan cuatro, faltaron dos, faltaron tres, faltaron "
        "cuatro, faltaron 2, faltaron 3, faltaron un par"
    ),
    "left out one": (
        "falta una, falta uno, falta un, falto uno, falto una, falto un, falto el, falto la, falto 1, falto solo uno, "
        "falto solo una"
    ),
    "left out the": (
        "brinque, falta la, falta el, faltan los, faltan las, faltaron los, faltaron las, salte el, salte la, salte "
        "los, salte las, salte un, salte una, brinque el, brinque la, brinque los, brinque las, omiti el, omiti la, "
        "he saltado el, he saltado la, he saltado los, he saltado las, he saltado"
    ),
    "left out": (
        "falto|faltaron|faltando|omitiendo|saltandome|saltando|quite|salte, deje fuera, quedo fuera, omiti los, omiti "
        "las, quedaron fuera, quedo pendiente, quedaron pendientes, deje sin hacer, deje de lado, quedaron sin hacer, "
        "quedo sin hacer, faltaron por hacer, deje pendiente, deje pendientes, salte uno, salte dos, salte tres"
    ),
    "half": (
        "mitad|medio|media, la mitad, hice la mitad, solo la mitad, hice solo la mitad, solo hice la mitad, como la "
        "mitad, la mitad nomas, la mitad nada mas, mas o menos la mitad, casi la mitad, al menos la mitad, media "
        "sesion, media rutina, hice media sesion, hice media rutina, medio entrenamiento, la mitad de la sesion, la "
        "mitad de la rutina, la mitad de los ejercicios, hice la mitad de los ejercicios, hice la mitad de la sesion, "
        "hice la mitad de la rutina, he hecho la mitad, llegue a la mitad, hasta la mitad, la mitad hecha, la mitad "
        "si, hice mas o menos la mitad, un 50 %, al 50, al 50 %, 50 %, 50 por ciento, el 50 %, la mita, hice como la "
        "mitad, hice la primera mitad, la primera mitad, a la mitad, un medio"
    ),
    "most": (
        "mayoria, mayor parte, casi todo, casi todos, casi todas, casi toda, casi completa, casi completo, casi "
        "entera, la mayoria, la mayor parte, hice la mayoria, hice la mayor parte, hice casi todo, hice casi todos, "
        "hice casi todas, hice casi toda, la hice casi toda, lo hice casi todo, casi todos los ejercicios, casi toda "
        "la sesion, casi toda la rutina, la gran mayoria, gran parte, buena parte, tres cuartas partes, tres cuartos, "
        "dos tercios, mas de la mitad, un poco mas de la mitad, casi termino, casi acabo, casi lo termino, casi la "
        "termino, casi terminada, casi terminado, casi acabada, casi al completo, la mayoria de los ejercicios, la "
        "mayor parte de la sesion, la mayor parte de la rutina, la mayor parte de los ejercicios, hice la mayoria de "
        "los ejercicios, hice casi toda la rutina, hice casi toda la sesion, hice casi todos los ejercicios, he hecho "
        "casi todo, he hecho casi toda, he hecho la mayoria, he hecho la mayor parte, complete casi todo, termine "
        "casi todo, complete la mayoria, el grueso, hice gran parte, hice buena parte"
    ),
    "less than half": (
        "menos de la mitad, un tercio, una tercera parte, un cuarto de la, una cuarta parte, ni la mitad, hice menos "
        "de la mitad, no llegue ni a la mitad, ni siquiera la mitad, no hice ni la mitad, hice un tercio, hice un "
        "cuarto"
    ),
    "only one": (
        "solo uno, solo una, solo un ejercicio, un solo ejercicio, una sola ronda, una sola serie, uno solo, una "
        "sola, solo hice uno, solo hice una, hice solo uno, hice solo una, hice uno, hice una, hice una ronda, hice "
        "una serie, hice solo una ronda, hice solo una serie, hice una sola vuelta, solo una ronda, solo una serie, "
        "solo una vuelta, hice un solo ejercicio, hice una sola ronda, hice una sola serie"
    ),
    "only the warm up": (
        "solo el calentamiento, solo calentamiento, solo calente, solo hice el calentamiento, hice solo el "
        "calentamiento, hice el calentamiento nomas"
    ),
    "everything": "todo|toda",
    "all": "todos|todas|completo|completa|entero|entera|completos",
    "completed": "complete",
    "full": "integra|integro",
    "the first": (
        "primer|primera|primero|primeros|primeras, el primero, la primera, los primeros, las primeras, los dos "
        "primeros, las dos primeras"
    ),
    "second one": "segunda, el segundo, la segunda",
    "third one": "tercero|tercera|tercer, el tercero, la tercera, el tercer",
    "fourth one": "cuarta|quinto|quinta, el cuarto, la cuarta, el quinto, la quinta",
    "the last": (
        "ultimo|ultima|ultimos|ultimas, el ultimo, la ultima, los ultimos, las ultimas, el final de la sesion, los "
        "dos ultimos, las dos ultimas, los ultimos dos, las ultimas dos"
    ),
    "without the last": "sin el ultimo, sin la ultima, sin los ultimos, sin las ultimas",
    "except the last": (
        "menos el ultimo, menos la ultima, menos los ultimos, menos las ultimas, excepto el ultimo, excepto la "
        "ultima, salvo el ultimo, salvo la ultima, excepto los ultimos, salvo los ultimos, menos uno, menos una, "
        "menos dos, menos los dos ultimos, menos las dos ultimas, todo menos uno, todos menos uno, todas menos una, "
        "todos menos dos, todos menos el ultimo, todo menos el ultimo, todo menos la ultima, excepto uno, excepto "
        "una, salvo uno, salvo una"
    ),
    "rest": "resto, el resto, lo demas, los demas, las demas",
    "rest done": (
        "resto hecho, resto bien, el resto si, el resto sii, lo demas si, lo demas sii, el resto lo hice, lo demas lo "
        "hice, los demas si, los demas los hice, las demas si, el resto hecho, lo demas hecho, el resto todo, el "
        "resto bien, lo demas todo, lo demas bien, lo demas todo bien, los demas sii, los demas bien, hice los demas, "
        "hice las demas, hice lo demas, hice el resto, el resto si lo hice, lo demas si lo hice"
    ),
    # --- what is counted ----------------------------------------------------------------------------------------------
    "session": (
        "sesion|rutina|entrenamiento|entreno|programa|practica|clase|tanda|workout|training|tarea, serie de "
        "ejercicios, plan de hoy"
    ),
    "exercises": "ejercicios|movimientos|posturas|poses|posiciones",
    "exercise": "ejercicio|movimiento|postura|pose|posicion",
    "stretch": "estiramiento|estirar|estirarme|estirando|elongacion|elongar|elongue|estira|estiro",
    "stretches": "estiramientos|elongaciones",
    "sets": "series|tandas|sets",
    "set": "serie",
    "rounds": "rondas|vueltas|circuitos",
    "round": "ronda|vuelta|circuito",
    "reps": "repeticiones|reps|rep|repes",
    "minutes": "minutos|min|mins|minuto|minutitos|minutillos|minutico|minuticos",
    "seconds": "segundos|segs|seg|segundo|s",
    "hours": "horas|hora|h|hrs|hs",
    "half an hour": "media hora",
    "oclock": "enpunto, en punto, y pico",
    "days": "dias",
    "day": "dia",
    "weeks": "semanas",
    "week": "semana",
    "months": "meses|mes",
    "years": "anos|ano",
    "times": "veces",
    "time": "vez",
    "percent": "%, por ciento",
    "cm": "cm|cms|centimetros|centimetro",
    "metres": "metros|metro",
    "km": "km|kms|kilometros|kilometro",
    "kg": "kg|kgs|kilos|kilo|kilogramos",
    "degrees": "grados",
    "steps": "pasos|escalones|pisos|piso",
    "coffees": "cafes|cafe|tazas|cervezas|vasos",
    "euros": "euros|pesos|dolares|soles",
    "number": "numero|num|nro|n°",
    "oneside": "por lado",
    "each side": "cada lado, de cada lado, en cada lado, por cada lado",
    "on monday": "lunes, el lunes",
    "on tuesday": "martes, el martes",
    "on wednesday": "miercoles, el miercoles",
    "on thursday": "jueves, el jueves",
    "on friday": "viernes, el viernes",
    "on saturday": "sabado, el sabado",
    "on sunday": "domingo, el domingo",
    "0": "cero dolor hoy",
    "two": "dos",
    "three": "tres",
    "four": "cuatro",
    "five": "cinco",
    "six": "seis",
    "seven": "siete",
    "eight": "ocho",
    "nine": "nueve",
    "ten": "diez",
    "eleven": "once",
    "twelve": "doce",
    "fifteen": "quince",
    "twenty": "veinte",
    "thirty": "treinta",
    "fifty": "cincuenta",
    "hundred": "cien|ciento",
    "1": "un uno, un 1",
    "10": "un diez",
    "out of": "sobre, de un total de, de un maximo de",
    "on a scale from 1 to 10": "escaladediez",
    "left to go": "faltan|quedan|falta|quedaba|quedaban",
    # --- why ----------------------------------------------------------------------------------------------------------
    "no time": (
        "sin tiempo, falta de tiempo, no tuve tiempo, no tengo tiempo, no hay tiempo, no hubo tiempo, no da tiempo, "
        "no dio tiempo, poco tiempo, cero tiempo, no dio el tiempo, no alcanzo el tiempo, no alcanza el tiempo, por "
        "tiempo, tema de tiempo, falto tiempo, falta tiempo, por falta de tiempo, no he tenido tiempo, no he tenido "
        "tiempo de nada, no tuve tiempo de nada, no tengo tiempo de nada, no tuve tiempo para nada, no tuve chance, "
        "no tuve ni un minuto, ni un minuto libre, ni un minuto, no tuve un minuto, no tuve ni un segundo, sin un "
        "minuto, no tuve un momento, no tuve rato, no encontre tiempo, no encontre el momento, no encontre hueco, no "
        "encuentro hueco, no tuve hueco, no he tenido hueco, no he encontrado hueco, no he encontrado el momento, no "
        "dio la vida, no da la vida, no ha dado tiempo, no hay tiempo hoy, el tiempo no alcanza, no alcanzo tiempo, "
        "quede sin tiempo, quedo sin tiempo, se acabo el tiempo, se fue el tiempo, se paso el tiempo, mal de tiempo, "
        "corta de tiempo, corto de tiempo, justo de tiempo, justa de tiempo, apurado de tiempo, apurada de tiempo, no "
        "dan las horas, no daban las horas, faltan horas, sin tiempo de nada, no tuve el tiempo, ando sin tiempo, "
        "tiempo insuficiente, el tiempo se agoto, no tube tiempo, no tenia tiempo, no alcanzaron las horas, se hizo "
        "corto el tiempo"
    ),
    "too late": (
        "tardisimo, muy tarde, demasiado tarde, se hizo tarde, hizo tarde, llegaba tarde, llegue tarde, salia tarde, "
        "sali tarde, voy tarde, iba tarde, tarde al trabajo, llego tarde, salgo tarde, se hizo muy tarde, iba con "
        "retraso, se hizo de noche, acabe tarde, termine tarde"
    ),
    "too busy": (
        "ocupado|ocupada|ocupadisimo|ocupadisima|liado|liada|liadisimo|liadisima|atareado|atareada|atareadisima|"
        "ajetreado|ajetreada|ajetreo|prisa|prisas|apurado|apurada|apuro|lio|agobiado|agobiada|estresada|estresado|"
        "saturada|saturado|colapsada|colapsado|desbordada|desbordado|caos|jaleo|jaleos, presion en el trabajo, "
        "presion del trabajo, presion laboral, mucha presion en el trabajo, presion de mi jefe, presion del jefe, "
        "ahogada de trabajo, ahogado de trabajo, ahogada en trabajo, ahogado en trabajo, ahogo en trabajo, ahogo en "
        "papeles, ahogandome en trabajo, asfixiado de trabajo, asfixiada de trabajo, ahogada con el trabajo, ahogado "
        "con el trabajo, corriendo todo el dia, lios en el trabajo, hasta arriba, hasta el cuello, de cabeza, pilas "
        "de cosas, dia loco, dia pesado, full de trabajo, full trabajo, a mil, a tope de trabajo, a las corridas, a "
        "las carreras, full hoy, dia complicado, dia caotico, ando full, con prisas, con prisa, mucho lio, dia de "
        "locos, dia muy cargado, dia cargado, dia a full, hasta las cejas, hasta el gorro de trabajo, no paro, no he "
        "parado, todo el dia fuera, todo el dia de aca para alla, dia de muertos, corriendo de un lado a otro, de un "
        "lado para otro, muchas cosas que hacer, muchas cosas, mil cosas, mil cosas que hacer, tantas cosas, un dia "
        "de locos, ando a las carreras, ando corriendo, anduve corriendo, a contrarreloj, agarro el toro, cogio el "
        "toro"
    ),
    "too much work": (
        "trabajo|curro|chamba|pega|laburo|oficina|trabajando|trabaje|jornada|jale|brete|camello|currando|laburando|"
        "laburar|chambeando|trabajar|despacho|currar, en el trabajo, guardia en el hospital, mucho trabajo, mucha "
        "chamba, mucho curro, mucho laburo, exceso de trabajo, carga de trabajo, tema laboral, temas laborales, "
        "asuntos laborales, cosas del trabajo, el trabajo se alargo, por el trabajo, en la oficina, en la chamba, en "
        "el curro, en el laburo, horas extra, horas extras, doble turno, turno doble, turno largo, turno de noche, "
        "turno de manana, turno de tarde, doble jornada, cambio de turno, salgo tarde del trabajo, salgo muy tarde "
        "del trabajo, sali tarde del trabajo, sali muy tarde del trabajo, trabaje hasta tarde, mucha carga, dia largo "
        "en el trabajo, dia largo de trabajo"
    ),
    "meeting": (
        "reunion|reuniones|junta|juntas|videollamada|videollamadas|meeting|meetings|call|zoom|conferencia|asamblea|"
        "entrevista, llamada de trabajo, llamadas de trabajo, reunion de trabajo, junta de trabajo, reunion con el "
        "jefe, reunion de padres, entro una llamada, llamada del trabajo, llamaron del trabajo, llamaron de la "
        "oficina, llamo mi jefe, llamo mi jefa, llamo el jefe, llamo la jefa, entrevista de trabajo"
    ),
    "shift": "turno|turnos|guardia|guardias, de guardia",
    "deadline": (
        "entrega|entregas|plazo|cierre|deadline|auditoria|presentacion|inventario|proyecto, fecha limite, cierre de "
        "mes, informe que entregar"
    ),
    "had an appointment": (
        "cita|citas|dentista|tramites|tramite|recados|mandados|diligencias|gestiones|papeleo|quehaceres|odontologo, "
        "cita medica, cita con el medico, cita con el dentista, cita en el medico, turno con el medico, turno medico, "
        "hora al medico, hora con el medico, hora medica"
    ),
    "exam": (
        "examen|examenes|parciales|finales|estudiar|estudiando|estudio|universidad|facultad|facu|uni|tesis|clases|"
        "oposicion|oposiciones|estudios|certamen, parcial manana, colegio de los ninos, tarea de la uni, trabajos de "
        "la uni, prueba manana, deberes del cole, tenia clases, tuve clases, tenia examen, tuve examen, exposicion en "
        "la u"
    ),
    "stuck in traffic": (
        "trafico|atasco|atascos|trancon|embotellamiento|caravana|tapones, taco en la carretera, retraso del tren, "
        "tapon en la autopista"
    ),
    "had to pick up my kids": (
        "recoger a los ninos, recoger a mi hijo, recoger a mi hija, buscar a los ninos, llevar a los ninos, buscar a "
        "mi hijo, buscar a mi hija, llevar a mi hijo, llevar a mi hija, recoger a mis hijos, buscar a los chicos, "
        "llevar a los chicos, recoger ninos"
    ),
    "only had time for": (
        "solo tuve tiempo para, solo tuve tiempo de, solo dio tiempo a, solo dio tiempo para, solo tuve tiempo pa, "
        "solo dio tiempo de, solo habia tiempo para, tiempo solo para, solo alcanzo el tiempo para, solo tenia tiempo "
        "para, solo tuve, solo tenia, solo tengo, no dio tiempo a mas, no tuve tiempo de mas, no tuve tiempo para "
        "mas, no dio tiempo de terminar, no tuve tiempo de terminar, no tuve tiempo para terminar, no dio tiempo a "
        "terminar, no tuve tiempo de acabar, no dio tiempo a acabar, no dio tiempo de acabar, no alcanzo el tiempo "
        "para terminar"
    ),
    "had to leave": (
        "llamaron, tuve que salir, tuve que irme, tenia que salir, tenia que irme, debia irme, debia salir, tuve que "
        "ir, salir corriendo, sali corriendo, salir volando, sali volando, tenia que ir, tuve que correr, tuve que "
        "salir corriendo, fui corriendo, tuve que marcharme, perdia el bus, perdia el tren, perdia el metro, perdi el "
        "bus, tengo que salir, tengo que irme, tuve que atender"
    ),
    "too hard": (
        "dificil|dificiles|dificilisimo|durisimo|durisima|durillo|complicado|complicada|complicadisimo|exigente|"
        "agotador|agotadora|matador|imposibles|costo|cuesta|costaba|cuestan|costaron|avanzada|avanzado|brutal|"
        "pesadisimo|pesadisima|dificultad|supero|mato|mataron, muy dificil, demasiado dificil, muy duro, muy dura, "
        "demasiado duro, demasiado dura, muy pesado, muy pesada, demasiado pesado, demasiado pesada, muy exigente, "
        "demasiado exigente, muy intenso, muy intensa, demasiado intenso, demasiado intensa, muy complicado, muy "
        "complicada, demasiado complicado, muy fuerte para mi, demasiado fuerte, imposible para mi, muy dificiles, "
        "muy duros, muy duras, demasiado dificiles, demasiado duras, demasiado duros, muy largo, muy larga, demasiado "
        "largo, demasiado larga, muy avanzado, demasiado avanzado, excesivamente dificil, costo mucho, muy fuertes, "
        "se hizo bola, cuesta mucho, costo horrores, no aguante, no aguante mas, no aguantaba mas, no aguanto mas, no "
        "daba mas, no di mas, no di para mas, no doy mas, no doy para mas, ya no daba mas, ya no podia mas, ya no "
        "aguante, no podia mas, no pude sostener, no pude mantener, no pude con, no podia con, no puedo con, no fui "
        "capaz, no soy capaz, no fui capaz de, no soy capaz de, no sale, no salia, no salio, no salen, no salieron, "
        "no llego, no llegaba, no llegaba al suelo, se hicieron muy dificiles, se hizo muy dificil, se hizo dificil, "
        "se hizo duro, se hizo pesado, se hizo muy pesado, se hizo largo, se hizo eterno, se hizo muy largo, por "
        "encima de mi nivel, fuera de mi nivel, no estoy a ese nivel, no es para mi nivel, quede sin fuelle, quede "
        "sin aliento para seguir, sin fuelle, sin energia para mas, se acabaron las pilas, sin equilibrio, pierdo el "
        "equilibrio, perdia el equilibrio, no mantengo el equilibrio, no entendi, no entiendo el ejercicio, no "
        "entendi el ejercicio, no entendi como, no entiendo como, pudo conmigo, pudieron conmigo, es mucho para mi, "
        "mucho para mi, fue mucho para mi, fue demasiado, es demasiado, demasiado para mi, quedo grande, quedan "
        "grandes, no tengo flexibilidad, no soy flexible, falta flexibilidad, no tengo fuerza suficiente para, "
        "cansancio muscular, no da el cuerpo, no daba el cuerpo, temblaban las piernas, tiemblan las piernas, "
        "temblaban los brazos, temblando las piernas"
    ),
    "too tired": (
        "agotado|agotada|exhausto|exhausta|reventado|reventada|fundido|fundida|molido|molida|rendido|rendida|"
        "destruida|destruido|destrozado|destrozada|pulverizada|cansado|cansada|cansadisimo|cansadisima|cansancio|"
        "cansaba|canse|fatiga|fatigado|fatigada|sueno|cansa|flojera|pereza|vagancia|fiaca|weba|hueva|galbana|pajita|"
        "paja|lata|flojo|floja|desganado|desganada|desgana|perezosa|perezoso|sonolienta|desmotivado|desmotivada, "
        "hecho polvo, hecha polvo, hecho mierda, hecha mierda, hecha pedazos, hecho pedazos, muerta de cansancio, "
        "muerto de cansancio, caida de cansancio, con sueno, muerto de sueno, muerta de sueno, caia de sueno, sin "
        "energia, sin energias, sin pilas, bajo de energia, baja de energia, sin ganas, sin ganas de nada, sin animo, "
        "sin animos, no tuve ganas, no tenia ganas, no tengo ganas, no tuve animos, no tengo animos, cero ganas, "
        "pocas ganas, pocos animos, dio flojera, dio pereza, dio fiaca, dio paja, dio hueva, da flojera, da pereza, "
        "gano la pereza, gano la flojera, vencio la pereza, pudo la pereza, no apetecia, no apetece, no apetecio, no "
        "motivado, sin motivacion, falta de motivacion, cero motivacion, falta de ganas, dormi mal, dormi poco, no "
        "dormi, no dormi nada, no dormi bien, pase mala noche, mala noche, no he dormido, no he dormido nada, no "
        "pegue ojo, no pegue el ojo, noche en vela, sin dormir, dormido poco, dormido mal, he dormido mal, he dormido "
        "poco, he dormido fatal, dormi fatal, poco sueno, mal dormido, mal dormida"
    ),
    "ill": (
        "enfermo|enferma|enferme|enfermado|maluca|maluco|enfermito|enfermita|enfermedad|pachucha|pachucho|indispuesta|"
        "indispuesto|descompuesta|descompuesto|constipado|constipada|malita|malito|destemplada|destemplado, malo hoy, "
        "mala hoy, apachurrada por gripe, siento fatal, encuentro fatal, siento pesimo, estoy fatal, fatal de salud, "
        "estoy mala, estoy malo, siento mal, sentia mal, puse mala, puse malo, puse enfermo, puse enferma, encuentro "
        "mal, encontraba mal, no encuentro bien, no siento bien, no sentia bien, no estoy bien de salud, mal de "
        "salud, cai enfermo, cai enferma, ando mal de salud, amaneci mal, amaneci enfermo, amaneci enferma, amaneci "
        "malo, amaneci mala, sigo enfermo, sigo enferma, mal cuerpo, cuerpo cortado, cuerpo malo"
    ),
    "flu": (
        "gripe|gripa|gripazo|gripon|influenza|covid|corona|coronavirus|gripecita|engripada|engripado|agripado|"
        "agripada|griposo|griposa|gripesita"
    ),
    "have a cold": (
        "resfriado|resfriada|resfrio|catarro|refriado|resfriadito|acatarrado|acatarrada|trancazo|gripilla|"
        "resfriadisima|mocos|moquera|romadizo, con mocos"
    ),
    "cough": "tos|tosiendo|toso",
    "sore throat": (
        "anginas|amigdalitis|faringitis, dolor de garganta, garganta mala, garganta irritada, duele la garganta, la "
        "garganta mala, la garganta fatal, placas en la garganta, mal de la garganta"
    ),
    "migraine": "migrana|migranas",
    "upset stomach": (
        "vomito|vomitos|vomite|vomitando|vomitar|vomitado|devolviendo|guacareando|arcadas|nauseas|nausea|revoltura|"
        "diarrea|descomposicion|cagalera|churrias|soltura|chorrillo|colitis|cursera|correncia, vomite toda la noche, "
        "vomitando toda la noche, vomitando toda la manana, vomite toda la manana, devuelto toda la noche, ganas de "
        "vomitar, asco de estomago, suelta del estomago, suelto del estomago"
    ),
    "stomach bug": (
        "gastroenteritis|gastritis|virus|indigestion|empacho|intoxicacion|infeccion|bronquitis|neumonia|sinusitis|"
        "otitis|alergia|alergias|alergico|alergica|asma|acidez|cistitis|dengue|chikungunya|varicela|bicho|reflujo|"
        "retorcijones|regla|colicos|muela, virus estomacal, infeccion estomacal, mal del estomago, mal de estomago, "
        "estomago revuelto, infeccion de orina, estomago malo, panza revuelta, dolor de estomago, dolor de barriga, "
        "dolor de panza, dolor de tripa, duele el estomago, duele la barriga, duele la panza, duele la tripa, dolia "
        "el estomago, dolia la barriga, mal de la barriga, mal de la panza, mal de la tripa, comi algo malo, sento "
        "mal la comida, sento mal algo, sento mal la cena, cayo mal la comida, cayo mal algo, cayo mal la cena, tripa "
        "mala, barriga mala, dolor menstrual, la regla, colicos menstruales, el periodo, periodo menstrual, dolor de "
        "regla, bajo la regla, bajo el periodo, dolor de muelas, dolor de oido"
    ),
    "forgot": (
        "olvide|olvido|olvidado|olvidada|olvidaba, se olvido, se paso por completo, se fue el santo, olvide por "
        "completo, se olvido por completo, se olvido hacerla, se olvido hacerlo, olvide hacerla, olvide hacerlo, "
        "olvide de hacerla, olvide de hacerlo, olvide hacer la sesion, olvide hacer los ejercicios, olvide de la "
        "sesion, olvide la sesion, olvide de los ejercicios, se ha olvidado, he olvidado, lo olvide, la olvide, se "
        "fue la onda, se fue la olla, se paso completamente, ni acorde, no acorde, se paso hacerlo, se paso la hora, "
        "se fue de la cabeza, se fue el santo al cielo, se borro"
    ),
    "travelling": (
        "viaje|viajando|viajo|viajamos|carretera|ruta|vuelo|avion|aeropuerto|viajar|viajes|gira|aeropuertos|manejando|"
        "conduciendo, viaje de trabajo, de viaje, en carretera, jet lag, bus todo el dia, en tren, escala larga, en "
        "el tren, en el avion, en el aeropuerto, en el bus, todo el dia en el coche, todo el dia en el carro, en la "
        "carretera, de camino a, en camino a"
    ),
    "away from home": (
        "hotel, fuera de casa, fuera de la ciudad, no estoy en casa, no estuve en casa, lejos de casa, no estaba en "
        "casa, en casa de mis padres, en un hotel, en el hotel, en casa ajena"
    ),
    "doorbell": "timbre, tocaron el timbre, tocaron la puerta, sono el timbre",
    "not today , no motivation": (
        "hoy no apetece, hoy no apetecia, hoy no tuve ganas, hoy no tengo ganas, hoy sin ganas, hoy no tenia ganas, "
        "hoy no quise, hoy no quiero"
    ),
    "guests": (
        "visita|visitas|invitados|huespedes, vinieron amigos, vino familia, vinieron a casa, llego visita, gente en "
        "casa, familia en casa, tuve visitas, tuve visita, llego gente, llego la familia, vino mi familia, vino "
        "gente, visita inesperada"
    ),
    "party": (
        "fiesta|cumpleanos|cumple|boda|bautizo|matrimonio|comunion|celebracion|quinceanera|parranda|farra|carrete|"
        "celebrando|navidad|nochebuena|feria|asado|parrillada|verbena|botellon|graduacion|festival|concierto|rumba|"
        "juerga|aniversario|procesion|festejo, despedida de soltera, baby shower"
    ),
    "hangover": (
        "resaca|guayabo|cruda|crudo|goma|enratonado|raton|enguayabado|chuchaqui|cana, cana de la resaca, la cana"
    ),
    "funeral": "funeral|velorio|entierro|velatorio|fallecio|murio|tanatorio|duelo|sepelio, misa de difuntos",
    "no mat": (
        "sin esterilla, sin colchoneta, sin mat, no tengo esterilla, no tengo colchoneta, no tenia esterilla, no "
        "tenia colchoneta, no tengo banda, no tenia banda, sin banda, sin equipo, no tengo equipo, sin material, no "
        "tengo material, falta de material, sin cinta, no tengo cinta, no tenia la esterilla, no tenia la colchoneta, "
        "sin tapete, no tengo tapete, no tenia tapete, sin bloques, no tenia material, no tenia equipo, sin mi "
        "esterilla, no encontre la esterilla, no encontre la colchoneta, no encuentro la esterilla, no encuentro la "
        "banda, no encontre la banda, se rompio la banda, rompio la banda, deje la esterilla, olvide la esterilla, "
        "olvide la colchoneta"
    ),
    "no space": (
        "sin espacio, no tengo espacio, no hay espacio, no habia espacio, no tuve espacio, no tenia espacio, poco "
        "espacio, falta de espacio, falto espacio, sin sitio, no tengo sitio, no habia sitio, no tenia sitio"
    ),
    "no internet": (
        "sin internet, no hay internet, no habia internet, no tengo internet, no tenia internet, se cayo el internet, "
        "se fue internet, se fue el internet, sin wifi, sin senal, sin conexion, no tenia senal, sin datos, no "
        "cargaba el video, no cargo el video, video no carga, no habia wifi, se cayo internet, fallo internet, fallo "
        "el internet, no abrio el video, no cargo el enlace, el enlace no abre, el video no carga, el video no "
        "cargaba, no carga el video, no carga"
    ),
    "power cut": (
        "apagon, sin luz, se fue la luz, corte de luz, se corto la luz, no hay luz, no habia luz, corte electrico, "
        "sin electricidad, sin corriente, no hay electricidad, se fue la electricidad, no hay corriente en casa, se "
        "fue la corriente, no hay corriente en la casa, quito la luz, quitaron la luz, cortaron la luz, corto la luz, "
        "sin agua, no hay agua, se fue el agua, cortaron el agua, no habia agua"
    ),
    "phone died": (
        "se rompio el celular, se rompio el movil, rompio el celular, rompio el movil, rompio el telefono, se dano el "
        "celular, se descompuso el celular, se rompio la tablet, se quedo sin bateria, sin bateria, sin pila el "
        "celular, se murio el celular, se murio el movil, celular descargado, movil descargado, se rompio el "
        "telefono, se descargo el celular, se descargo el movil, se acabo la bateria, se descargo el telefono, murio "
        "el movil, murio el celular, se danio el celular, perdi el celular, perdi el movil"
    ),
    "overslept": (
        "dormi|durmiendo, no levante a tiempo, no desperte a tiempo, no levante, no desperte, levante tardisimo, "
        "quede dormido, quede dormida, quede frito, quede frita, no sono la alarma, no sono el despertador, no oi la "
        "alarma, no oi el despertador, dormi de mas, dormi demasiado, se pegaron las sabanas, desperte tarde, levante "
        "tarde, pegaron las sabanas, no escuche la alarma, dormi hasta tarde, quede jetona, quede jeton, despertado "
        "tarde, levantado tarde, se quedo dormida la alarma, apague la alarma, apague el despertador, quedado "
        "dormido, quedado dormida, he quedado dormido, he quedado dormida, quede sobado, quede sobada, dormi como un "
        "tronco, dormi toda la tarde, dormi una siesta, siesta larga"
    ),
    "too lazy": "vago|vaga|holgazana|holgazan|huevon, comoda en el sofa",
    "netflix instead": (
        "netflix|futbol|partido|peli|pelicula|playa|piscina|cine|compras, serie de la tele, viendo la tele, viendo "
        "series, viendo el partido, ver el partido, partido de futbol, vi la tele, ver la tele, en el sofa, en la "
        "playa, de compras, de copas, de fiesta, de bares, fui de fiesta"
    ),
    "plumber": "plomero|fontanero|gasfiter, el plomero, el fontanero",
    "builders": (
        "albaniles|obreros|pintores|carpintero|tecnico|electricista|fumigacion|gasista|cerrajero, el tecnico, el "
        "electricista"
    ),
    "flooded": "inundacion|inundo|gotera|goteras|inundada|inundado, se inundo, fuga de agua",
    "moving house": (
        "mudanza|mudando|mudandonos|mudamos|mudo|obras|reformas|reforma|limpieza|arreglos|remodelacion, estoy "
        "mudando, obras en casa"
    ),
    "too hot": (
        "calor|calorazo, mucho calor, demasiado calor, ola de calor, un calor, hace calor, hacia calor, hacia mucho "
        "calor, hace mucho calor, hacia demasiado calor, calor insoportable, con este calor, con el calor, calor "
        "terrible, calor horrible"
    ),
    "no heating": (
        "frio|helada, mucho frio, demasiado frio, hace frio, hacia frio, hacia mucho frio, frio horrible, un frio"
    ),
    "storm": (
        "lluvia|llovio|llovia|llueve|lloviendo|tormenta|huracan|nieve|nevo|aguacero|temporal|ciclon|diluvio|granizo|"
        "sismo|terremoto|vendaval, temblor de tierra"
    ),
    "feeling sad": (
        "triste|tristeza|deprimido|deprimida|depre|deprimente|bajon|ansiedad|ansioso|ansiosa|llorando|desanimado|"
        "desanimada|agobio|pelea|discusion|pelee|discuti|estres|llore, baja de animo, bajo de animo, mal animo, mal "
        "de animo, rompi con mi novio, rompi con mi novia, termine con mi novio, termine con mi novia, mal humor, de "
        "malas, animo por los suelos"
    ),
    "bored": "aburrido|aburrida|aburrio|aburri|aburre|tedio",
    "hospital with": "hospital|urgencias|clinica|emergencias",
    "family emergency": (
        "emergencia|imprevisto|imprevistos|urgencia|contratiempo, emergencia familiar, problema familiar, problemas "
        "familiares, problemas en casa, surgio algo, surgio un imprevisto, tema familiar, temas familiares, asunto "
        "familiar, surgio otra cosa, surgieron cosas"
    ),
    "storm delivery": "paquete que esperaba",
    "holiday": (
        "vacaciones|feriado|festivo|ferias|vacas|paseo|excursion|camping|campamento, puente festivo, semana santa, "
        "dia festivo, de vacaciones, dia feriado"
    ),
    "car": "coche|carro|auto|moto|camioneta",
    "car broke down": (
        "averia, se averio el coche, se dano el carro, se rompio el coche, se descompuso el carro, se poncho la "
        "llanta, pinche una rueda, pincho la rueda, se pincho la rueda, se quedo tirado el coche, se quedo botado el "
        "carro, se rompio el auto"
    ),
    "alarm": "alarma|despertador",
    "strike": "huelga|manifestacion, paro de transporte, paro nacional, marcha en la ciudad",
    "school play": (
        "colegio|cole|escuela|guarderia, funcion del cole, reunion del cole, festival del cole, acto escolar, funcion "
        "escolar, jardin de infantes"
    ),
    "vet": "veterinario|veterinaria",
    "church": "misa|iglesia|culto|rezo",
    "noise": "ruido en la calle",
    "home": "casa|hogar",
    "bed": "cama",
    "sofa": "sofa|sillon",
    "wall": "pared|muro",
    "floor": "suelo, piso de la sala",
    "mat": "esterilla|colchoneta|tapete|mat|alfombra",
    "band": "banda|cinta|liga|correa|elastico, goma elastica, banda elastica",
    "chair": "silla|banco",
    "phone": "telefono|celular|movil|celu",
    "video": "video|videos|videito",
    "work trip": "viaje de negocios",
    # --- places of the body -------------------------------------------------------------------------------------------
    "body": "cuerpo",
    "knee": "rodilla|rodillita|choquezuela|rotula, rodillas una",
    "knees": "rodillas",
    "both knees": "ambas rodillas, las dos rodillas",
    "back of my knee": (
        "corva|corvas, detras de la rodilla, parte de atras de la rodilla, atras de la rodilla, hueco popliteo"
    ),
    "leg": "pierna|pata|piernita|gamba, miembro inferior",
    "legs": "piernas|patas|piernitas",
    "back of my leg": (
        "parte de atras de la pierna, detras de la pierna, atras de la pierna, parte posterior de la pierna, cara "
        "posterior de la pierna"
    ),
    "thigh": "muslo|cuadriceps|cuadricep|vasto",
    "thighs": "muslos",
    "back of my thigh": (
        "parte de atras del muslo, detras del muslo, atras del muslo, parte posterior del muslo, cara posterior del "
        "muslo, parte trasera del muslo"
    ),
    "inner thigh": "aductor|aductores, parte interna del muslo, cara interna del muslo, entre pierna y pierna interna",
    "hamstring": "isquio|isquios|isquiotibial|isquiotibiales|femoral|femorales|isquiosural, biceps femoral",
    "calf": (
        "pantorrilla|pantorrillas|gemelo|gemelos|batata|batatas|soleo|chamorro|chamorros|garron|canillera, camote de "
        "la pierna, canilla de atras"
    ),
    "shin": "espinilla|espinillas|canilla|canillas|tibia|tibial|perone",
    "ankle": "tobillo|tobillos|tobillito",
    "foot": "pie|empeine|piecito",
    "feet": "pies",
    "toes": "ortejos, dedos del pie, dedos de los pies, dedito del pie, dedo del pie, deditos del pie, dedos de pie",
    "big toe": "dedote, dedo gordo, dedo gordo del pie, dedo grande del pie",
    "sole": "planta, planta del pie, plantas de los pies, fascia plantar, planta de los pies",
    "heel": "talon|talones|calcaneo",
    "achilles": "aquiles, tendon de aquiles, talon de aquiles mio",
    "hip": "cadera|caderas|psoas, flexor de cadera, flexores de cadera, flexor de la cadera, coxis lateral",
    "groin": "ingle|ingles",
    "glute": (
        "gluteo|gluteos|nalga|pompa|pompi|piramidal|piriforme, cachete del trasero, gluteo medio, cola derecha, cola "
        "izquierda"
    ),
    "buttocks": (
        "nalgas|culo|pompis|trasero|traste|poto|orto|fundillo|posaderas|asentaderas|pompas|nalguitas|colita, la cola, "
        "el ano"
    ),
    "back": "espalda|espaldita|columna|espinazo|dorsal|dorsales|dorso, espalda media",
    "lower back": (
        "lumbar|lumbares|rinones|rinon|rabadilla|sacro|cintura, espalda baja, zona lumbar, parte baja de la espalda, "
        "baja espalda, region lumbar, zona baja de la espalda, la parte baja de la espalda, bajo la espalda, abajo de "
        "la espalda, parte baja de espalda, los rinones"
    ),
    "upper back": "espalda alta, parte alta de la espalda, zona dorsal, espalda superior, parte superior de la espalda",
    "tailbone": "coxis|coccix, cola del hueso, huesito dulce, hueso de la cola",
    "spine": "vertebras|vertebra, columna vertebral",
    "neck": "cuello|nuca|cervical|cervicales|pescuezo|cogote|cerviz, zona cervical, trapecio del cuello",
    "throat": "garganta",
    "shoulder": "hombro|deltoides|manguito, manguito rotador",
    "shoulders": "hombros",
    "shoulder blade": "omoplato|omoplatos|escapula|paletilla|escapulas",
    "traps": "trapecio|trapecios",
    "arm": "brazo|bracito",
    "arms": "brazos",
    "forearm": "antebrazo|antebrazos",
    "elbow": "codo|codos",
    "wrist": "muneca|munecas",
    "hand": "mano|manita",
    "hands": "manos|manitas",
    "fingers": "dedos|deditos|yemas, las yemas de los dedos, dedos de la mano, yemas de los dedos",
    "finger": "dedo|dedito|menique|anular|indice, dedo de la mano, dedo chiquito",
    "thumb": "pulgar, dedo pulgar",
    "biceps": "biceps",
    "triceps": "triceps",
    "ribs": "costillas|costilla|costillar, costado de las costillas",
    "chest": "pecho|esternon|torax|pechito, caja toracica, pechos adentro, boca del pecho",
    "pecs": "pectoral|pectorales",
    "belly": "barriga|panza|abdomen|vientre|tripa|guata",
    "abs": "abdominales",
    "stomach": "estomago",
    "head": "cabeza|coco",
    "face": "cara|rostro|carita",
    "cheek": "mejilla|cachete|mejillas|cachetes|moflete",
    "mouth": "boca",
    "lip": "labio|labios",
    "eyelid": "parpado",
    "tongue": "lengua",
    "jaw": "mandibula|quijada|maxilar|mandibulas",
    "eye": "ojo",
    "eyes": "ojos",
    "ear": "oido|oreja|oidos",
    "heart": "corazon|pulso|latidos|latido|corazoncito",
    "muscle": "musculo|musculos",
    "joint": "articulacion|articulaciones|coyunturas|coyuntura",
    "tendon": "tendon|tendones",
    "ligament": "ligamento|ligamentos",
    "meniscus": "menisco|meniscos",
    "pelvis": "pelvis|pubis",
    "skin": "piel",
    "side": "lado|costado, banda de la pierna",
    "left side": (
        "izquierdo|izquierda|izq|izqda|izqdo|izda|izdo|izqu|zurda|zurdo|izquierdos|izquierdas|izqierda, lado "
        "izquierdo, costado izquierdo, del lado izquierdo, mano izq, lado izq, del lado izq, lado izdo"
    ),
    "right side": (
        "derecho|derecha|der|dcha|dcho|drch|drcho|derechos|derechas|dere|drecha, lado derecho, costado derecho, del "
        "lado derecho, lado der, lado dcho, del lado der"
    ),
    "both sides": (
        "ambos|ambas|bilateral, los dos, las dos, ambos lados, los dos lados, de los dos lados, de ambos lados, en "
        "ambos lados, en los dos lados, por los dos lados, por ambos lados, las dos partes, lado y lado, los dos por "
        "igual, de lado a lado, la derecha y la izquierda, la izquierda y la derecha, derecha e izquierda, izquierda "
        "y derecha"
    ),
    "one side": "un lado, un solo lado, un costado, medio lado",
    "somewhere else": (
        "otro lado, otra parte, otro sitio, otro lugar, otra zona, no donde estiramos, no donde estiro, no es donde "
        "estiramos, no es donde estiro, no en la zona que estiramos, no es la zona que estiramos, no es donde "
        "trabajamos, en otra parte, en otro sitio, en otro lugar, en otra zona, otra area, no donde trabajamos, en "
        "otro lado, no tiene que ver con los estiramientos, nada que ver con los estiramientos, nada que ver con la "
        "sesion, nada que ver con lo que estiramos, no tiene nada que ver con los estiramientos, no tiene nada que "
        "ver con la sesion, no tiene que ver con la sesion, fuera de la zona de trabajo, fuera de la zona que "
        "estiramos, fuera de donde estiramos, no es por los estiramientos, no es de los estiramientos, no es la zona "
        "de trabajo, no donde estiramos sino, no es la parte que estiramos, no en la parte que estiramos, no es zona "
        "de estiramiento"
    ),
    "right where we stretch": (
        "donde estiramos, donde estiro, justo donde estiramos, justo donde estiro, en la zona que estiramos, en la "
        "zona que estiro, en la zona de trabajo, en la zona estirada, en la parte que estiramos, zona que estiramos, "
        "justo ahi, justo alli, exactamente donde estiramos, ahi mismo, en el musculo que estiramos, donde "
        "trabajamos, justo donde trabajamos, en el mismo sitio, en el mismo lugar, la zona que trabajamos, en la zona "
        "que trabajamos, justo en la zona que estiramos, justo en la zona de trabajo, justo en la zona, justo donde "
        "se estira, donde se estira, justo en el musculo que estiramos, en la misma zona, mero donde estiramos, mero "
        "ahi, donde trabaja el estiramiento, en el musculo estirado, justo donde tira, donde estuvimos estirando, "
        "donde estamos estirando"
    ),
    # --- what it feels like -------------------------------------------------------------------------------------------
    "sore": (
        "agujetas|adolorido|adolorida|adoloridos|adoloridas|dolorido|dolorida|doloridos|doloridas|agujeta|resentidos|"
        "resentidas|molidas|molidos|sensible|apaleado|apaleada|tiernas, amaneci molida, amaneci molido, desperte "
        "molida, desperte molido, sensibles al tacto, magullada de ayer, tierno al tacto, dolor muscular, dolores "
        "musculares, dolor de musculos, agujetas de ayer, engarrotada de dolor, musculos cansados, duelen los "
        "musculos, duelen todos los musculos, duele todo el cuerpo, como si hubiera pasado un camion, como si un "
        "camion hubiera pasado por encima, dolor de entreno, dolor de ejercicio, dolorcito de ejercicio, dolor del "
        "ejercicio, musculo sensible, cuerpo cansado, cuerpo molido"
    ),
    "dull": (
        "sordo|sorda, molestia sorda, dolor apagado, dolor difuso, dolor de fondo, dolor tonto, dolor vago, "
        "dolor continuo sordo, molestia de fondo"
    ),
    "tight": (
        "tenso|tensa|tensos|tensas|tension|tirante|tirantez|tieso|tiesa|tiesos|tiesas|rigido|rigida|rigidos|rigidas|"
        "rigidez|duros|duras|apretado|apretada|agarrotado|agarrotada|agarrotados|agarrotadas|engarrotado|engarrotada|"
        "cargado|cargada|cargados|cargadas|acortado|acortados|encogido|sobrecargado|sobrecargada|sobrecarga|"
        "anquilosado|anquilosada|atrancado|trabado|trabada|oxidada|oxidado|envarado|envarada|contraido|contraida|"
        "tensado|tensada|tensados|tensadas|tensaba|tensan|agarroto|agarrota|agarrotaba|agarrotan|engarroto|engarrota|"
        "engarrotados|engarrotadas|engarrotaba|engarrotan|sobrecargo|sobrecargados|sobrecargadas|sobrecargaba|"
        "sobrecargan, duro el, entumecido al levantarme"
    ),
    "tightness": "tirantez nivel, rigidez nivel, tension nivel, nivel de rigidez, nivel de tension",
    "good stretch": (
        "tira|tiraba|tiro|jala|jalaba|jalo|tirando|jalando|estiron|estironcito|tirar|jalar, estira rico, tira un "
        "poco, buen estiramiento, estiramiento rico, senti el estiramiento, siento el estiramiento, sentir el "
        "estiramiento, sensacion de estiramiento, se siente el estiramiento, rico estiramiento, un buen estiramiento, "
        "estiramiento profundo, estiramiento intenso, estiramiento fuerte, sentia el estiramiento, noto el "
        "estiramiento, note el estiramiento, se nota el estiramiento, se noto el estiramiento, tiro un poco, estiro "
        "rico, estira bien, estiro bien, solo tira, solo tiro, tiron de estirar, tira lo normal"
    ),
    "effort": "esfuerzonum, estado de animo, calidad del sueno",
    "loose mood": "disfrute|disfrutando",
    "severe": (
        "insoportable|insoportables|inaguantable|fortisimo|fortisima|intensisimo|severo|severa|agudisimo|extremo|"
        "extrema|intolerable|rabioso, ver las estrellas, vi las estrellas, veo las estrellas, veia las estrellas, no "
        "puedo moverme, no puedo ni moverme, no podia moverme, no pude moverme"
    ),
    "severe pain": (
        "dolorazo, dolor terrible, dolores terribles, dolor horrible, dolores horribles, dolor atroz, dolor "
        "espantoso, dolor bestial, dolor criminal, dolor fuertisimo, dolor intensisimo, dolor brutal, dolor pesimo, "
        "dolor bien fuerte, dolor super fuerte, dolor fuerte fuerte, dolor demasiado fuerte, dolores fuertisimos, "
        "dolor desgarrador, dolor muy fuerte, dolores muy fuertes, dolor fuerte, dolores fuertes, dolor fortisimo, "
        "dolor intenso, dolor muy intenso, dolor tremendo, dolor de muerte, dolor de la muerte, dolor insufrible, "
        "muero de dolor, muriendo de dolor, muriendo del dolor, muero del dolor, mato de dolor, duele horrores, no "
        "puedo moverme del dolor, no puedo mover del dolor, muerta de dolor, muerto de dolor, duele muchisimo, dolia "
        "muchisimo, dolio muchisimo, duele un monton, duele demasiado, duele horrible, duele horriblemente, duele "
        "fatal, dolio horrible, dolio horrores, duele un huevo, duele un chingo, duele un chorro, duele que no veas, "
        "duele como el demonio, duele a rabiar, duele cantidad, duele mal, duele una barbaridad, dolor a rabiar, "
        "llorando del dolor, llorando de dolor, llore del dolor, llore de dolor, llorar del dolor, llorar de dolor, "
        "grite de dolor, gritar de dolor, no aguanto el dolor, no soporto el dolor, no aguantaba el dolor, no puedo "
        "con el dolor, no puedo del dolor, el peor dolor, peor dolor de mi vida, dolor inaguantable, dolor "
        "insoportable, rabio de dolor, rabiando de dolor, doblada de dolor, doblado de dolor, retuerzo de dolor, "
        "retorciendo de dolor, dolor que no deja ni moverme, dolor extremo"
    ),
    "terrible": (
        "terrible|terribles|horrible|horribles|atroz|atroces|espantoso|espantosa|tremendo|tremenda|criminal|bestial|"
        "tremendos|pesimo|pesima|fatal"
    ),
    "stabbing": (
        "punalada|punaladas|clava|clavan|clavaba|clavaban|clavando|clavarse|aguja|agujazo|agujazos|pinchacito|"
        "punzadita|puntadita|agudo|aguda|agudos|agudas|punzante|punzantes|punzada|punzadas|pinchazo|pinchazos|"
        "pinchazon|puntada|puntadas|pinchonazo|punzon|cortante|penetrante|lancinante|afilado|pincho|pincha|pinchaba|"
        "punzo|punza|punzaba|puncion|piquete|piquetes|puya|puyazo|puyazos|puyon|clavada|latigazo|latigazos|aguijonazo|"
        "aguijon|picada|cuchillada|cuchillazo|navajazo|clavaron|piquetito|punzas|punzamos|punzan|punzaban|punzabas|"
        "punze|punzaste|punzaron|punzando|punzado|punzados|punzar|punzarse|punzandose|punzarme|punzara|punzaria|"
        "punzaran|punzaras|punzasen|punzanto|punzanta|punzantos|punzantas|punzantisimo|punzantisima|agude|agudes|"
        "agudisima, como agujazo, clavo en, como un cuchillo, como cuchillo, como un punal, como si clavaran, como si "
        "clavaran un cuchillo, como si metieran un cuchillo, cuchillo en, como una aguja, como una navaja, como un "
        "clavo, como un pinchazo, como una punalada, estocada de dolor, como si pincharan, como una lanza, como un "
        "alfiler, pinchazo muy fuerte, dolor agudo, dolor punzante, dolor como de cuchillo, se clava, se clavo, dolor "
        "cortante, dolor como de aguja"
    ),
    "sudden": (
        "repentino|repentina|subito|subita|repentinamente|subitamente|bruscamente|brusco|brusca|inesperado, de "
        "repente, de golpe, de pronto, de la nada, de sopeton, de una, sin previo aviso, de un momento a otro, en "
        "seco, un dia para otro, de buenas a primeras, asi de golpe, asi de repente, de un segundo a otro, de un rato "
        "a otro"
    ),
    "tingling": (
        "hormiguilla|hormiguillas|hormiguillo|piquetitos|hormigueo|hormigueos|hormiguea|hormiguean|hormigueaba|"
        "hormigueando|hormigueillo|cosquilleo|cosquilleos|cosquillea|cosquillean|cosquilleaba|cosquillitas|"
        "hormiguitas|hormigas|parestesia|parestesias|ciatica|ciatico|nervio|nervios|neuralgia|vibracion|vibra|"
        "vibrando|titila|cosquillas|agujitas|alfileres|agujas|pinchacitos|pinzamiento|burbujitas|picotazos|escarcha|"
        "hormigueas|hormigueamos|hormigueaban|hormigueabas|hormiguee|hormigueaste|hormiguearon|hormigueado|"
        "hormigueada|hormigueados|hormigueadas|hormiguear|hormiguearse|hormigueandose|hormiguearme|hormigueara|"
        "hormiguearia|hormiguearan|hormiguearas|hormigueasen|cosquilleas|cosquilleamos|cosquilleaban|cosquilleabas|"
        "cosquillee|cosquilleaste|cosquillearon|cosquilleando|cosquilleado|cosquilleada|cosquilleados|cosquilleadas|"
        "cosquillear|cosquillearse|cosquilleandose|cosquillearme|cosquilleara|cosquillearia|cosquillearan|"
        "cosquillearas|cosquilleasen, picazon en la pierna, zumbido en la pierna, como hormigas, como hormiguitas, "
        "hormigas caminando, hormigas en, como agujas, como agujitas, como alfileres, como alfilerazos, nervio "
        "pinzado, nervio atrapado, como burbujitas, como arenilla, como si caminaran hormigas, como si tuviera "
        "hormigas, como gaseosa, como agua con gas, hormigueo y cosquilleo, se hormiguea, piquetitos como de aguja, "
        "como si estuviera dormido con agujas"
    ),
    "numb": (
        "corcho|entumecido|entumecida|entumecidos|entumecidas|entumecimiento|entumece|entumecen|entumecio|entumido|"
        "entumida|entumidos|entumidas|entumio|entume|adormecido|adormecida|adormecidos|adormecidas|adormecimiento|"
        "adormece|adormecen|adormecio|adormecieron|adormeciendo|entumeciendo|dormido|dormida|dormidos|dormidas|"
        "acorchado|acorchada|acorchados|acorchadas|acorchamiento|insensible|insensibles|anestesiado|anestesiada|"
        "anestesiados|anestesia|entumecieron|amortiguado|amortiguada|amortiguados|tullida|encalambrado|encalambrada|"
        "duerme|durmio|duermen|durmieron|dormia|durmiendose|adormilada|adormilado|algodon|acorcho|acorchas|acorcha|"
        "acorchamos|acorchan|acorchaba|acorchaban|acorchabas|acorche|acorchaste|acorcharon|acorchando|acorchar|"
        "acorcharse|acorchandose|acorcharme|acorchara|acorcharia|acorcharan|acorcharas|acorchasen|anestesio|"
        "anestesias|anestesiamos|anestesian|anestesiaba|anestesiaban|anestesiabas|anestesie|anestesiaste|anestesiaron|"
        "anestesiando|anestesiadas|anestesiar|anestesiarse|anestesiandose|anestesiarme|anestesiara|anestesiaria|"
        "anestesiaran|anestesiaras|anestesiasen|amortiguo|amortiguas|amortigua|amortiguamos|amortiguan|amortiguaba|"
        "amortiguaban|amortiguabas|amortigue|amortiguaste|amortiguaron|amortiguando|amortiguadas|amortiguar|"
        "amortiguarse|amortiguandose|amortiguarme|amortiguara|amortiguaria|amortiguaran|amortiguaras|amortiguasen|"
        "insensibilizo|insensibilizas|insensibiliza|insensibilizamos|insensibilizan|insensibilizaba|insensibilizaban|"
        "insensibilizabas|insensibilize|insensibilizaste|insensibilizaron|insensibilizando|insensibilizado|"
        "insensibilizada|insensibilizados|insensibilizadas|insensibilizar|insensibilizarse|insensibilizandose|"
        "insensibilizarme|insensibilizara|insensibilizaria|insensibilizaran|insensibilizaras|insensibilizasen|"
        "encorcho|encorchas|encorcha|encorchamos|encorchan|encorchaba|encorchaban|encorchabas|encorche|encorchaste|"
        "encorcharon|encorchando|encorchado|encorchada|encorchados|encorchadas|encorchar|encorcharse|encorchandose|"
        "encorcharme|encorchara|encorcharia|encorcharan|encorcharas|encorchasen|adormeco|adormeces|adormecemos|"
        "adormecia|adormecian|adormeciste|adormecer|adormecerse|adormeciendose|adormeciera|adormecieran|adormecciera|"
        "adormeccieran|entumeco|entumeces|entumecemos|entumecia|entumecian|entumeciste|entumecer|entumecerse|"
        "entumeciendose|entumeciera|entumecieran|entumecciera|entumeccieran|entumo|entumes|entumimos|entumen|entumia|"
        "entumian|entumiste|entumieron|entumiendo|entumir|entumirse|entumiera|entumieran, con corcho, acalambrada y "
        "dormida, engarrotada sin sentir, adormilada la pierna, durmiendo la, durmiendo el, adormilado el pie, se "
        "durmio, se duerme, se duermen, se durmieron, se dormia, se esta durmiendo, quedo dormido, quedo dormida, "
        "quedaron dormidos, quedaron dormidas, se quedo dormida, se quedo dormido, se quedaron dormidos, se quedaron "
        "dormidas, se ha dormido, se han dormido, queda dormida, queda dormido, se queda dormida, se queda dormido, "
        "se quedan dormidos, se quedan dormidas, se esta durmiendo la, sin sentir, como dormida, como dormido, como "
        "dormidos, como muerta, como muerto, pierna muerta, brazo muerto, mano muerta, pie muerto, como de corcho, de "
        "corcho, como corcho, como de carton, de carton, como de trapo la piel, como si no fuera mia, como si no "
        "fuera mio, como de otra persona, como si no fuera mi pierna, como si no fuera mi mano, no parece mia, no "
        "parece mio, como de goma, como despues del dentista, como despues de la anestesia, como con anestesia, como "
        "guantes, como si llevara guantes, como con guantes, como si tuviera guantes, como si llevara calcetines, "
        "como algodon, con algodon, sobre algodones, de algodon, falta de sensibilidad, sin sensibilidad, perdida de "
        "sensibilidad, sin tacto"
    ),
    "no feeling in": (
        "no siento nada en, no sentia nada en, no senti nada en, sin sensibilidad en, no tengo sensibilidad en, no "
        "siento nada de la rodilla para abajo, no siento nada del tobillo para abajo"
    ),
    "felt nothing": "no siento nada, no senti nada, no sentia nada, no siente nada",
    "electric shock": (
        "electrico|electrica|corrientazo|corrientazos|calambrazo|calambrazos|electricidad|descarga|descargas|"
        "corriente|electroshock|chispazo|chispazos|relampago|rayo|electricos|electricas|electrice|electrices|"
        "electrizanto|electrizanta|electrizantos|electrizantas|electrizante|electrizantes, toques electricos, toque "
        "electrico, descarga electrica, descargas electricas, choque electrico, sacudida electrica, como corriente, "
        "como electricidad, como un rayo, como una descarga, como un calambre electrico, como toques, toques de "
        "corriente, como un relampago, como si metiera los dedos en el enchufe, como un enchufe, paso corriente, da "
        "corriente, dio corriente, calambre electrico, calambres electricos, toque de luz, como un corrientazo, pasa "
        "corriente, como un latigazo electrico, latigazo electrico, como si diera corriente, dolor electrico, como un "
        "cable pelado"
    ),
    "shooting down my leg": (
        "baja por la pierna, baja hasta el pie, bajaba por la pierna, baja a la pierna, corre por la pierna, recorre "
        "la pierna, se va a la pierna, se va por la pierna, irradia a la pierna, se irradia a la pierna, se corre a "
        "la pierna, se corre por la pierna, baja al pie, baja por toda la pierna, se extiende por la pierna, se "
        "extiende a la pierna, irradia hacia la pierna, irradia por la pierna, recorre toda la pierna, va por la "
        "pierna, va por toda la pierna, va de la nalga al pie, va del gluteo al pie, baja de la nalga al pie, baja "
        "desde la nalga, baja desde el gluteo, baja desde la cadera, baja desde la espalda, baja del gluteo, baja de "
        "la espalda, baja de la cadera, baja de la nalga, bajaba hasta el pie, baja hasta el talon, baja hasta la "
        "rodilla, baja hasta la pantorrilla, baja hasta el tobillo, baja hasta los dedos, bajando por la pierna, "
        "bajandome por la pierna, se fue por la pierna, se fue hasta el pie, corrio por la pierna, corrio por toda la "
        "pierna, corre hasta el pie, se corre hasta el pie, recorrio la pierna, recorrio toda la pierna, se dispara "
        "por la pierna, se disparo por la pierna, dispara hacia la pierna, se irradia por la pierna, se irradia hasta "
        "el pie, irradia hasta el pie, irradia hasta la rodilla, irradia hasta el talon, se irradia hacia la pierna, "
        "irradiado a la pierna, irradiacion a la pierna, que va hasta el pie, va hasta el pie, llega hasta el pie, "
        "desde la nalga hasta el pie, de la nalga al pie, del gluteo al pie, desde el gluteo hasta el pie, desde la "
        "espalda hasta el pie, de la espalda al pie, de la cintura al pie, desde la cintura hasta el pie, de la "
        "cadera al pie, desde la cadera hasta el pie, por toda la pierna hasta el pie, por la pierna abajo, por la "
        "pierna hacia abajo, hacia abajo por la pierna, pierna abajo, de la cadera hasta los dedos, bajo por la "
        "pierna, bajo por toda la pierna, bajo hasta el pie, sube por la pierna, subio por la pierna, subia por la "
        "pierna, baja como rayo por la pierna"
    ),
    "shooting down my arm": (
        "baja por el brazo, bajaba por el brazo, baja hasta la mano, corre por el brazo, recorre el brazo, se va al "
        "brazo, irradia al brazo, se irradia al brazo, se corre al brazo, irradia por el brazo, irradia hacia el "
        "brazo, se irradia por el brazo, baja por todo el brazo, baja hasta los dedos de la mano, baja del cuello al "
        "brazo, baja desde el cuello, del cuello a la mano, desde el cuello hasta la mano, del cuello al brazo, del "
        "hombro a la mano, del codo a la mano, irradia hasta la mano, se irradia hasta la mano, va por el brazo, va "
        "por todo el brazo, bajo por el brazo, recorrio el brazo, recorrio todo el brazo, se fue por el brazo, sube "
        "por el brazo, corrio por el brazo, llega hasta la mano, brazo abajo, desde el hombro hasta los dedos, del "
        "hombro a los dedos"
    ),
    "radiates": (
        "irradia|irradiado|irradiando|irradiaba|irradio|irradiacion|recorre|recorrio|irradias|irradiamos|irradian|"
        "irradiaban|irradiabas|irradie|irradiaste|irradiaron|irradiada|irradiados|irradiadas|irradiar|irradiarse|"
        "irradiandose|irradiarme|irradiara|irradiaria|irradiaran|irradiaras|irradiasen, se irradia, se dispara"
    ),
    "burning": (
        "quemazon|ardor|arde|arden|ardia|ardiendo|ardio|quema|queman|quemaba|quemando|ardiente|quemante|escozor|"
        "escuece|fuego|ardieron|quemo|quemadura|quemas|quemamos|quemaban|quemabas|queme|quemaste|quemaron|quemados|"
        "quemadas|quemar|quemarse|quemandose|quemarme|quemara|quemaria|quemaran|quemaras|quemasen|ardes|ardemos|"
        "ardian|ardiste|ardido|ardida|ardidos|ardidas|arder|arderse|ardiendose|ardiera|ardieran|ardciera|ardcieran, "
        "como fuego, como si quemara, en llamas"
    ),
    "popped": (
        "trono|truena|trueno|tronido|tronidos|chasquido|chasquidos|chasqueo|chasco|crujio|reventon|revento|desgarro|"
        "desgarre|desgarrado|desgarrada|rompio|rotura|rompi|traquido|traquio|zafo|zafado|dislocado|disloco|dislocada|"
        "luxado|luxacion|luxo|estallo|clac|pum|crac|crack|pop|plop|rasgadura|rasgo|desgarrando|ruptura|tronando|"
        "rompimiento|dislocas|disloca|dislocamos|dislocan|dislocaba|dislocaban|dislocabas|disloce|dislocaste|"
        "dislocaron|dislocando|dislocados|dislocadas|dislocar|dislocarse|dislocandose|dislocarme|dislocara|dislocaria|"
        "dislocaran|dislocaras|dislocasen|desgarras|desgarra|desgarramos|desgarran|desgarraba|desgarraban|desgarrabas|"
        "desgarraste|desgarraron|desgarrados|desgarradas|desgarrar|desgarrarse|desgarrandose|desgarrarme|desgarrara|"
        "desgarraria|desgarraran|desgarraras|desgarrasen|luxas|luxa|luxamos|luxan|luxaba|luxaban|luxabas|luxe|luxaste|"
        "luxaron|luxando|luxada|luxados|luxadas|luxar|luxarse|luxandose|luxarme|luxara|luxaria|luxaran|luxaras|"
        "luxasen|chasqueas|chasquea|chasqueamos|chasquean|chasqueaba|chasqueaban|chasqueabas|chasquee|chasqueaste|"
        "chasquearon|chasqueando|chasqueado|chasqueada|chasqueados|chasqueadas|chasquear|chasquearse|chasqueandose|"
        "chasquearme|chasqueara|chasquearia|chasquearan|chasquearas|chasqueasen|tronamos|tronan|tronaba|tronaban|"
        "tronabas|trone|tronaste|tronado|tronada|tronados|tronadas|tronar|tronarse|tronandose|tronarme|tronara|"
        "tronaria|tronaran|tronaras|tronasen|truenas|truenamos|truenaba|truenaban|truenabas|truene|truenaste|"
        "truenaron|truenando|truenado|truenada|truenados|truenadas|truenar|truenarse|truenandose|truenarme|truenara|"
        "truenaria|truenaran|truenaras|truenasen|reventas|reventa|reventamos|reventan|reventaba|reventaban|reventabas|"
        "revente|reventaste|reventaron|reventando|reventados|reventadas|reventar|reventarse|reventandose|reventarme|"
        "reventara|reventaria|reventaran|reventaras|reventasen|reviento|revientas|revienta|revientamos|revientan|"
        "revientaba|revientaban|revientabas|reviente|revientaste|revientaron|revientando|revientado|revientada|"
        "revientados|revientadas|revientar|revientarse|revientandose|revientarme|revientara|revientaria|revientaran|"
        "revientaras|revientasen|zafas|zafa|zafamos|zafan|zafaba|zafaban|zafabas|zafe|zafaste|zafaron|zafando|zafada|"
        "zafados|zafadas|zafar|zafarse|zafandose|zafarme|zafara|zafaria|zafaran|zafaras|zafasen|fracturas|fracturamos|"
        "fracturan|fracturaba|fracturaban|fracturabas|fracturaste|fracturando|fracturados|fracturadas|fracturar|"
        "fracturarse|fracturandose|fracturarme|fracturara|fracturaria|fracturaran|fracturaras|fracturasen, crujido "
        "fuerte, roto algo, se rompio, se salio, salio de su sitio, se zafo, se disloco, crac fuerte, se solto algo, "
        "un crujido, crujido en, sono un crujido, sono como un, un chasquido, un golpe seco, un latigazo en el "
        "gemelo, una pedrada, como una pedrada, pedrada en el gemelo, pedrada en la pantorrilla, sindrome de la "
        "pedrada, como si dieran una patada en el gemelo, como si dieran una pedrada, como si dieran una patada, "
        "patada en la pantorrilla, patada en el gemelo, algo se rompio, se rompio algo, algo se solto, algo se movio, "
        "se movio algo, algo cedio adentro, algo trono, trono algo, algo crujio, crujio algo, crujio fuerte, algo "
        "hizo crac, hizo crac, hizo clac, hizo pop, hizo un ruido, hizo clic y dolio, sono algo, algo sono, sono feo, "
        "trono feo, trono fuerte, crujio feo, ruido seco, un ruido seco, un ruido fuerte, ruido raro y dolor, "
        "chasquido fuerte, sono un pop, senti un pop, escuche un pop, oi un pop, senti que algo se rompia, senti que "
        "se rompia algo, senti un tiron y un chasquido, como si se rompiera algo, como si algo se rompiera, como una "
        "liga que se rompe, como si se rompiera una liga, como si se rompiera una cuerda, como una cuerda que se "
        "rompe, como un elastico que se corta, se corto algo, algo se corto, senti que algo se corto, pego un "
        "chasquido, dio un chasquido, pego un crujido, pego un tronido, dio un tronido, revento algo, se revento "
        "algo, se revento, salio la rodilla, salio el hombro, salio de lugar, se salio de lugar, se salio del sitio, "
        "se salio de su lugar, un tronido, hizo trac, hizo tras, hizo cloc, un crac, un clac, un crack, un clic "
        "fuerte, algo se desgarro, se desgarro algo, un desgarro, rotura fibrilar, rotura de fibras, rompi el "
        "musculo, fibras rotas, rompi algo, se escucho un tronido, sono un tronido"
    ),
    "bruise": (
        "morete|moretes|moreton|moretones|hematoma|hematomas|moraton|moratones|cardenal|cardenales|morado|morada|"
        "moradita|moretoncito|moretoncillo|moretonazo|verdugon|negral|moretear|amoratado|amoratada|morados|moradas|"
        "chichon|equimosis|magulladura|magullado|magullada|contusion|negron|derrame|violaceo|amorato|amoratas|amorata|"
        "amoratamos|amoratan|amorataba|amorataban|amoratabas|amorate|amorataste|amorataron|amoratando|amoratados|"
        "amoratadas|amoratar|amoratarse|amoratandose|amoratarme|amoratara|amorataria|amorataran|amorataras|amoratasen|"
        "magullo|magullas|magulla|magullamos|magullan|magullaba|magullaban|magullabas|magulle|magullaste|magullaron|"
        "magullando|magullados|magulladas|magullar|magullarse|magullandose|magullarme|magullara|magullaria|magullaran|"
        "magullaras|magullasen|moratoncito|moratonazo, mancha morada, mancha azul, manchas moradas, se puso azul, se "
        "puso negro, puesto azul, se ha puesto azul, se puso violeta, color violeta, se puso violacea, negro y azul, "
        "verde y azul, mancha negra, mancha oscura, se puso morada"
    ),
    "swollen": (
        "hinchado|hinchada|hinchados|hinchadas|hinchazon|hincho|hincha|hinchan|hincharon|hinchando|hinchandose|"
        "hinchadito|hinchadita|inflamado|inflamada|inflamados|inflamadas|inflamacion|inflamo|inflama|inflamaron|"
        "inflamando|edema|inflado|inflada|inflo|tumefacto|hinchadisimo|hinchadisima|abultado|abultada|bulto|hinchamos|"
        "hinchaba|hinchaban|hinchabas|hinche|hinchaste|hinchar|hincharse|hincharme|hinchara|hincharia|hincharan|"
        "hincharas|hinchasen|inflamas|inflamamos|inflaman|inflamaba|inflamaban|inflamabas|inflame|inflamaste|inflamar|"
        "inflamarse|inflamandose|inflamarme|inflamara|inflamaria|inflamaran|inflamaras|inflamasen|abulto|abultas|"
        "abulta|abultamos|abultan|abultaba|abultaban|abultabas|abulte|abultaste|abultaron|abultando|abultados|"
        "abultadas|abultar|abultarse|abultandose|abultarme|abultara|abultaria|abultaran|abultaras|abultasen|"
        "hinchadote|hinchadota|inflamadisimo|inflamadisima|inflamadito|inflamadita|inflamadote|inflamadota, bola en "
        "la rodilla, liquido en la rodilla, agua en la rodilla, derrame en la rodilla, como un globo, como una "
        "pelota, como un melon, como una bota, como una sandia, como una papa, como una patata, como un tamal, el "
        "doble de grande, el doble de grueso, el doble de tamano, el doble de gordo, el doble del otro, el doble de "
        "la otra, el doble que el otro, el doble que la otra, mas grande que el otro, mas grande que la otra, mas "
        "gordo que el otro, mas gorda que la otra, mas gruesa que la otra, mas grueso que el otro, mas ancho que el "
        "otro, mas ancha que la otra, puesto como un globo, se puso como un globo, se puso gordo, se puso gorda, se "
        "puso grande, puso como una pelota, puso como un globo, puso gordo, puso gorda, lleno de liquido, llena de "
        "liquido, retencion de liquido en el tobillo, tiene liquido, tiene agua, sali una bola, salio una bola, salio "
        "un bulto, salio un chichon, no entra el zapato, no cabe el zapato"
    ),
    "can not put weight": (
        "no sostengo, no sostengo en pie, no mantengo en pie, no tengo en pie, no apoyo, no piso, no camino, no puedo "
        "apoyar, no puedo apoyarla, no puedo apoyarlo, no puedo pisar, no puedo pararme, no puedo caminar, no puedo "
        "andar, no puedo cargar peso, no puedo apoyarme, no aguanta mi peso, no sostiene, no puedo plantar, no "
        "soporta mi peso, no aguanto el peso, no aguanto mi peso, no soporto el peso, no soporto mi peso, no aguanto "
        "peso, no soporta peso, no aguanta peso, no aguanta el peso, no puedo apoyar el pie, no puedo apoyar la "
        "pierna, no puedo apoyar el peso, no puedo apoyar peso, no puedo apoyar nada, no puedo poner peso, no puedo "
        "poner el pie, no puedo poner el pie en el suelo, no puedo poner el pie en el piso, no puedo poner el peso, "
        "no puedo cargar el peso, no puedo caminar nada, no puedo ni caminar, no puedo ni apoyar, no puedo ni pisar, "
        "no puedo ni apoyarla, no puedo ni apoyarlo, no pude apoyar, no pude apoyar el pie, no pude pisar, no pude "
        "caminar, no podia apoyar, no podia pisar, no podia caminar, no pude ponerme de pie, no puedo ponerme de pie, "
        "no puedo estar de pie, no puedo estar parado, no puedo estar parada, no puedo pararme en, no puedo parar en, "
        "no deja apoyar, no deja caminar, no deja pisar, no permite apoyar, no aguanta apoyar, sin poder apoyar, sin "
        "poder caminar, sin poder pisar, imposible apoyar, imposible caminar, imposible pisar, imposible andar, "
        "imposible apoyarla, imposible apoyarlo, no soy capaz de apoyar, no soy capaz de caminar, no consigo apoyar, "
        "no consigo caminar, no logro apoyar, no logro caminar, camino a la pata coja, voy a la pata coja, a la pata "
        "coja, ando a la pata coja, brincando en un pie, en un solo pie, no aguanta nada de peso, no puedo "
        "sostenerme, no puedo sostener en pie, no puedo mantenerme en pie, no tengo apoyo en el pie, no la puedo "
        "apoyar, no lo puedo apoyar, ni apoyarla puedo, ni apoyar puedo, no hay forma de apoyar, no resiste mi peso, "
        "no resiste peso, no resiste el peso, no tolero apoyar, no tolera el peso, no tolero el peso, no puedo "
        "afirmar el pie, no afirma, no puedo afirmarme, no lo apoyo, no la apoyo, no apoyo el pie"
    ),
    "limping": (
        "cojeo|cojeando|cojera|cojo|coja|renqueo|rengueando|rengueo|renqueando|renco|rengo|renga|cojear|muletas|"
        "cojeaba|cojeas|cojea|cojeamos|cojean|cojeaban|cojeabas|cojee|cojeaste|cojearon|cojeado|cojeada|cojeados|"
        "cojeadas|cojearse|cojeandose|cojearme|cojeara|cojearia|cojearan|cojearas|cojeasen|renqueas|renquea|"
        "renqueamos|renquean|renqueaba|renqueaban|renqueabas|renquee|renqueaste|renquearon|renqueado|renqueada|"
        "renqueados|renqueadas|renquear|renquearse|renqueandose|renquearme|renqueara|renquearia|renquearan|renquearas|"
        "renqueasen|rengueas|renguea|rengueamos|renguean|rengueaba|rengueaban|rengueabas|renguee|rengueaste|"
        "renguearon|rengueado|rengueada|rengueados|rengueadas|renguear|renguearse|rengueandose|renguearme|rengueara|"
        "renguearia|renguearan|renguearas|rengueasen, apenas puedo caminar, apenas puedo apoyar, apenas puedo pisar, "
        "apenas camino, casi no puedo caminar, casi no puedo apoyar, casi no puedo pisar, casi no puedo andar, casi "
        "no camino, cuesta caminar, cuesta andar, cuesta apoyar, cuesta pisar, duele al apoyar, duele al pisar, duele "
        "al caminar, duele caminar, duele apoyar, duele pisar, dificultad para caminar, dificil caminar, camino mal, "
        "ando coja, ando cojo, camino chueco"
    ),
    "gives way": (
        "inestable|inestabilidad|cedio|ceder|inestables|cedia|bloqueada|bloqueado, se dobla sola, cede la, se vence, "
        "se vencio, se doblo, se aflojo, se afloja, se desarmo, se trabo, se traba, se bloqueo, se bloquea, como si "
        "se fuera a doblar"
    ),
    "knee gives way": (
        "fallo la rodilla, falla la rodilla, fallan las rodillas, se va la rodilla, se fue la rodilla, vencio la "
        "rodilla, bailando la rodilla, la rodilla falla, la rodilla fallo, la rodilla cedio, la rodilla cede, la "
        "rodilla se va, la rodilla se fue, la rodilla se dobla, la rodilla se doblo, la rodilla se vence, la rodilla "
        "se vencio, la rodilla no responde, la rodilla no sostiene, se dobla la rodilla, se doblo la rodilla, se "
        "vence la rodilla, se vencio la rodilla, se aflojo la rodilla, se afloja la rodilla, se aflojan las rodillas, "
        "se aflojaron las rodillas, la rodilla se sale, se sale la rodilla, se salio la rodilla, se traba la rodilla, "
        "se trabo la rodilla, se bloquea la rodilla, rodilla bloqueada, se zafa la rodilla, la rodilla se zafa, la "
        "rodilla baila, baila la rodilla, la rodilla se aflojo, rodilla inestable, no responde la rodilla, flaquea la "
        "rodilla, la rodilla flaquea, se flaqueo la rodilla, flaqueo la rodilla, rodilla falla, rodilla cede, rodilla "
        "cedio, rodilla fallo"
    ),
    "leg gives way": (
        "fallo la pierna, falla la pierna, se fue la pierna, se va la pierna, la pierna cedio, la pierna cede, la "
        "pierna falla, la pierna fallo, se vencio la pierna, se vence la pierna, se aflojo la pierna, flaqueo la "
        "pierna, flaquea la pierna, la pierna se fue, la pierna se va, la pierna se dobla, la pierna se doblo, pierna "
        "cede, pierna cedio, pierna fallo, fallan las piernas, fallaron las piernas"
    ),
    "ankle gives way": (
        "fallo el tobillo, falla el tobillo, se va el tobillo, se fue el tobillo, el tobillo falla, el tobillo fallo, "
        "el tobillo cedio, el tobillo cede, se doblo el tobillo, se dobla el tobillo, tobillo cede, tobillo cedio"
    ),
    "hip gives way": "la cadera cedio, la cadera falla",
    "weakness": (
        "debilidad|debil|debiles|paralizado|paralizada|paralisis|paralizo|debilucho|debilucha|debilito|debilitada|"
        "debilitado|noobedece|paresia|debilitas|debilita|debilitamos|debilitan|debilitaba|debilitaban|debilitabas|"
        "debilite|debilitaste|debilitaron|debilitando|debilitados|debilitadas|debilitar|debilitarse|debilitandose|"
        "debilitarme|debilitara|debilitaria|debilitaran|debilitaras|debilitasen|paralizas|paraliza|paralizamos|"
        "paralizan|paralizaba|paralizaban|paralizabas|paralize|paralizaste|paralizaron|paralizando|paralizados|"
        "paralizadas|paralizar|paralizarse|paralizandose|paralizarme|paralizara|paralizaria|paralizaran|paralizaras|"
        "paralizasen, no aprieto, no aprieta, no agarra, no sujeto bien, no agarro bien, no cierro la mano, no "
        "levanto el pie, no levanto el brazo, no levanto la pierna, no levanto la mano, falla de fuerza, pierna falla "
        "de fuerza, la pierna falla de fuerza, fallo la fuerza, pierna floja, floja la pierna, la tengo floja, lo "
        "tengo flojo, las tengo flojas, flojera en la pierna, flojera en las piernas, flojera en el brazo, pie caido, "
        "caido el pie, sin fuerza, sin fuerzas, sin fuerza en, sin fuerzas en, falta de fuerza, falta fuerza, no "
        "tengo fuerza, no tengo fuerzas, no tengo fuerza en, no tengo fuerzas en, no tiene fuerza, no hay fuerza, "
        "perdi fuerza, perdi la fuerza, perdi toda la fuerza, perdi fuerzas, perdiendo fuerza, pierdo fuerza, pierde "
        "fuerza, perdida de fuerza, perdido fuerza, perdido la fuerza, menos fuerza, menos fuerza en, poca fuerza, "
        "poca fuerza en, se fue la fuerza, no responde, no responden, no respondia, no respondio, no obedece, no hace "
        "caso, piernas flojas, brazo flojo, mano floja, floja la mano, flojo el brazo, flojas las piernas, las "
        "piernas flojas, la pierna floja, la mano floja, el brazo flojo, la pierna no responde, el brazo no responde, "
        "la mano no responde, el pie no responde, no puedo levantar el pie, no puedo levantar la pierna, no puedo "
        "levantar el brazo, no puedo levantar la punta del pie, no puedo levantar los dedos, no puedo levantar la "
        "mano, no puedo alzar el pie, no puedo alzar el brazo, no puedo mover el pie, no puedo mover la pierna, no "
        "puedo mover el brazo, no puedo mover la mano, no puedo mover los dedos, no puedo mover un lado, no muevo el "
        "brazo, no muevo la pierna, no muevo el pie, no muevo la mano, no podia mover la pierna, no podia mover el "
        "brazo, no podia levantar el brazo, no podia levantar el pie, no pude mover la pierna, no pude levantar el "
        "brazo, no pude mover el brazo, no puedo agarrar, no puedo apretar, no puedo cerrar la mano, no puedo cerrar "
        "el puno, no puedo sujetar, no puedo sostener el vaso, no puedo sostener la taza, no puedo sostener nada, se "
        "caen las cosas, se caen las cosas de la mano, se caen las cosas de las manos, se cae todo, se cae todo de "
        "las manos, se cayo la taza, se cayo el vaso, se cayeron las llaves de la mano, arrastro el pie, arrastro la "
        "pierna, arrastrando el pie, arrastrando la pierna, el pie se arrastra, se cae el pie, cae la punta del pie, "
        "tropiezo con la punta, tropiezo con el pie, el pie se queda caido, pie colgando, la pierna pesa y no "
        "responde, de trapo, como de trapo, pierna de trapo, brazo de trapo, piernas de trapo, perdi el control de la "
        "pierna, perdi el control del brazo, perdi el control de la mano, no controlo la pierna, no controlo la mano, "
        "no controlo el brazo, no controlo el pie"
    ),
    "no power in the arm": "brazo sin fuerza, mano sin fuerza",
    "dropping things": "tiro las cosas, tiro todo de las manos, soltando las cosas",
    "drooping": (
        "torcida|torcido|caida|caido|chueca|chueco|colgando|desviada|desviado|ladeada|ladeado|tuerce|descolgada|"
        "descolgado|deformada|virada|virado|jalada, torcio la cara, colgada la cara, paralizada la cara, se fue de "
        "lado, se va de lado, se tuerce, se torcio, se fue la boca, de lado la boca, se cayo un lado, se cae, se "
        "ladeo, se chueco, se descolgo"
    ),
    "face drooping": (
        "boca torcida, cara torcida, boca chueca, cara chueca, cara caida, boca caida, se torcio la boca, se torcio "
        "la cara, se fue la boca de lado, boca de lado, cara de lado, sonrisa torcida, sonrisa chueca, paralisis "
        "facial, media cara caida, se cayo media cara, se cayo la cara, se cayo un lado de la cara, cae un lado de la "
        "cara, se caia un lado de la cara, se cae media cara, se cae la cara, se cae la boca, se cayo la boca, caida "
        "la boca, caida la cara, torcida la boca, torcida la cara, chueca la boca, chueca la cara, se chueco la boca, "
        "se chueco la cara, se fue la cara de lado, se desvio la boca, desviada la boca, media cara paralizada, cara "
        "paralizada, paralizada media cara, medio rostro caido, se cae la saliva, se cae la baba por un lado, parpado "
        "caido, se cae el parpado, media cara no la muevo, no muevo media cara, no puedo sonreir de un lado"
    ),
    "half of my face numb": (
        "media cara dormida, mitad de la cara dormida, media cara adormecida, media cara entumecida, se durmio media "
        "cara, dormida media cara, duerme media cara, cara dormida de un lado, dormida la mitad de la cara, no siento "
        "media cara, adormecido media cara, adormecida la mitad de la cara, se duerme media cara, se durmio la mitad "
        "de la cara"
    ),
    "half of my body": (
        "medio cuerpo, mitad del cuerpo, mitad de mi cuerpo, un lado del cuerpo, lado del cuerpo, la mitad del "
        "cuerpo, un solo lado del cuerpo, un lado de mi cuerpo, todo un lado, todo un lado del cuerpo, un costado del "
        "cuerpo, toda una mitad"
    ),
    "left side of my body": (
        "lado izquierdo de mi cuerpo, lado izquierdo del cuerpo, todo el lado izquierdo, mitad izquierda, la mitad "
        "izquierda, la mitad izquierda del cuerpo, la mitad izquierda de mi cuerpo, el lado izquierdo del cuerpo, "
        "mitad izquierda del cuerpo, todo mi lado izquierdo, lado izquierdo entero"
    ),
    "right side of my body": (
        "lado derecho de mi cuerpo, lado derecho del cuerpo, todo el lado derecho, mitad derecha, la mitad derecha, "
        "la mitad derecha del cuerpo, la mitad derecha de mi cuerpo, mitad derecha de mi cuerpo, el lado derecho del "
        "cuerpo, mitad derecha del cuerpo, todo mi lado derecho, lado derecho entero"
    ),
    "half of my face": (
        "media cara, mitad de la cara, un lado de la cara, medio rostro, lado de la cara, la mitad de la cara, la "
        "mitad de mi cara, un lado de mi cara, mitad del rostro"
    ),
    "left side of my face": (
        "lado izquierdo de la cara, lado izquierdo de mi cara, mejilla izquierda entera, el lado izquierdo de la "
        "cara, lado izquierdo del rostro"
    ),
    "right side of my face": (
        "lado derecho de la cara, lado derecho de mi cara, el lado derecho de la cara, lado derecho del rostro"
    ),
    "corner of my mouth": "comisura, comisura de la boca, esquina de la boca, comisura de los labios",
    "slurred speech": (
        "balbuceo|balbuceando|balbuceaba|afasia|balbuceas|balbucea|balbuceamos|balbucean|balbuceaban|balbuceabas|"
        "balbucee|balbuceaste|balbucearon|balbuceado|balbuceada|balbuceados|balbuceadas|balbucear|balbucearse|"
        "balbuceandose|balbucearme|balbuceara|balbucearia|balbucearan|balbucearas|balbuceasen|tartamudeo|tartamudeas|"
        "tartamudea|tartamudeamos|tartamudean|tartamudeaba|tartamudeaban|tartamudeabas|tartamudee|tartamudeaste|"
        "tartamudearon|tartamudeando|tartamudeado|tartamudeada|tartamudeados|tartamudeadas|tartamudear|tartamudearse|"
        "tartamudeandose|tartamudearme|tartamudeara|tartamudearia|tartamudearan|tartamudearas|tartamudeasen, lengua "
        "trabada, se traba la lengua, trabo la lengua, no puedo hablar, no pude hablar, no podia hablar, no puedo "
        "hablar bien, hablo raro, hablaba raro, hablo como borracho, hablo como borracha, hablaba como borracho, "
        "hablaba como borracha, no salen las palabras, no salian las palabras, no encuentro las palabras, no "
        "encontraba las palabras, hablo enredado, palabras enredadas, no articulo, lengua dormida, lengua pesada, "
        "habla enredada, lengua de trapo, arrastro las palabras, arrastrando las palabras, arrastraba las palabras, "
        "se enredan las palabras, se enredaban las palabras, se enreda la lengua, se enredo la lengua, se enredaba la "
        "lengua, se trabo la lengua, se trabaron las palabras, se traban las palabras, se trababa la lengua, trabada "
        "la lengua, las palabras no salen, las palabras no salian, las palabras salen mal, las palabras salian mal, "
        "palabras salen raras, salen mal las palabras, salian mal las palabras, no pronuncio bien, no puedo "
        "pronunciar, no puedo articular, no podia articular, no articulaba, no podia decir, no puedo decir palabras, "
        "no puedo decir las palabras, no pude decir, costaba hablar, costo hablar, cuesta hablar, dificultad para "
        "hablar, problemas para hablar, problema para hablar, no consigo hablar, no logro hablar, no podia ni hablar, "
        "no puedo ni hablar, confundo las palabras, confundia las palabras, se va el habla, se fue el habla, perdi el "
        "habla, perdida del habla, hablar raro, hablo como si estuviera borracho, hablo como si estuviera borracha, "
        "hablo como si tuviera la lengua dormida, digo palabras que no son, no coordino las palabras, no hilo las "
        "palabras, no se entiende lo que digo, no se entendia lo que decia, no se entiende cuando hablo, no entienden "
        "lo que digo, no entienden cuando hablo, no entendian lo que decia, hablaba enredado, habla pastosa, voz "
        "pastosa, como si estuviera borracho, como si estuviera borracha, lengua torpe, lengua gorda, tartamudeo de "
        "repente, digo disparates"
    ),
    "blurred vision": (
        "ceguera|ciego|ciega|borroso|borrosa|diplopia|nublada|destellos|estrellitas, vista borrosa, vision borrosa, "
        "vista nublada, vision nublada, vision doble, veo doble, veo borroso, veo nublado, vi doble, vi borroso, veia "
        "doble, veia borroso, veia nublado, se nublo la vista, se nubla la vista, no puedo ver, no podia ver, perdi "
        "la vista, perdi vision, perdida de vision, perdida de vista, vision de tunel, vista doble, dejado de ver, "
        "veo manchas, veo luces, veo destellos, deje de ver, se empano la vista, vision en tunel, no veo bien, no "
        "veia bien, no veo nada, no veia nada, se puso borroso, se puso borrosa, se puso todo borroso, todo borroso, "
        "todo doble, se nublo todo, se nublan los ojos, nublada la vista, veo todo doble, veo todo borroso, veo todo "
        "nublado, veia todo doble, veia todo borroso, vi todo doble, vi todo borroso, veo mal de un ojo, no veo de un "
        "ojo, no veo por un ojo, no veo con un ojo, no veo con el ojo, no veo por el ojo, no veo de un lado, no veo "
        "por un lado, no veo el lado, no veo la mitad, no veia la mitad, veo la mitad, solo veo la mitad, perdi la "
        "vision, perdi parte de la vision, perdi la vista de un ojo, quede sin ver, quede ciego, quede ciega, quede "
        "sin vista, cortina negra, una cortina negra, una cortina en el ojo, como una cortina, mancha negra en el "
        "ojo, manchas negras, puntos negros, moscas en la vista, luces raras, vi estrellitas, veo estrellitas, veia "
        "estrellitas, se borro la vista, se borra la vista, vista se borra, vista se nubla, se fue la vista, se va la "
        "vista, fallo la vista, falla la vista, problemas de vision, problema de vision, vision rara, vista rara, veo "
        "dos, veia dos, vi dos, dos imagenes, imagenes dobles, imagen doble"
    ),
    "vision": "vision|vista",
    "stroke": "ictus|acv, derrame cerebral, infarto cerebral, embolia cerebral, trombosis cerebral, isquemia cerebral",
    "a stroke": (
        "embolia, un ictus, un derrame cerebral, un acv, una embolia, un infarto cerebral, un ataque cerebral, un ave"
    ),
    "heart attack": (
        "infarto|angina|infartado|preinfarto, ataque al corazon, angina de pecho, ataque cardiaco, paro cardiaco, "
        "paro al corazon"
    ),
    "pressure": (
        "pesa|pesan|pesaba|presion|opresion|oprime|oprimia|oprimido|oprimida|aprieta|apretaba|aprietan|apreton|"
        "aplasta|aplastaba|aplastando|aplastante|opresivo|opresiva|apretando|oprimiendo|estruja|estrujando|comprime|"
        "aplastamiento|constriccion|apretazon|pesadez|pesado|pesada|pesados|pesadas|oprimiera|apretuje|losa|elefante|"
        "peso|oprimo|oprimes|oprimimos|oprimen|oprimian|oprimio|oprimiste|oprimieron|oprimidos|oprimidas|oprimir|"
        "oprimirse|oprimieran|comprimo|comprimes|comprimimos|comprimen|comprimia|comprimian|comprimio|comprimiste|"
        "comprimieron|comprimiendo|comprimido|comprimida|comprimidos|comprimidas|comprimir|comprimirse|comprimiera|"
        "comprimieran|apreto|apretas|apreta|apretamos|apretan|apretaban|apretabas|aprete|apretaste|apretaron|"
        "apretados|apretadas|apretar|apretarse|apretandose|apretarme|apretara|apretaria|apretaran|apretaras|apretasen|"
        "aprieto|aprietas|aprietamos|aprietaba|aprietaban|aprietabas|apriete|aprietaste|aprietaron|aprietando|"
        "aprietado|aprietada|aprietados|aprietadas|aprietar|aprietarse|aprietandose|aprietarme|aprietara|aprietaria|"
        "aprietaran|aprietaras|aprietasen|aplasto|aplastas|aplastamos|aplastan|aplastaban|aplastabas|aplaste|"
        "aplastaste|aplastaron|aplastado|aplastada|aplastados|aplastadas|aplastar|aplastarse|aplastandose|aplastarme|"
        "aplastara|aplastaria|aplastaran|aplastaras|aplastasen|estrujo|estrujas|estrujamos|estrujan|estrujaba|"
        "estrujaban|estrujabas|estruje|estrujaste|estrujaron|estrujado|estrujada|estrujados|estrujadas|estrujar|"
        "estrujarse|estrujandose|estrujarme|estrujara|estrujaria|estrujaran|estrujaras|estrujasen, peso en, como una "
        "losa, un peso, como un peso, un elefante, como una piedra, como un yunque, una piedra, como un elefante, "
        "como un ladrillo, como una garra, como un puno, como una faja, como una banda apretada, como si apretaran, "
        "como si estrujaran, como si aplastaran, como si un elefante"
    ),
    "sat on my chest": (
        "sentado en el pecho, sentada en el pecho, encima del pecho, parado en el pecho, sentado sobre mi pecho, "
        "sentado encima del pecho, elefante en el pecho, elefante sobre el pecho, losa en el pecho, piedra en el "
        "pecho, se sento en mi pecho, ladrillo en el pecho, sentado en mi pecho, como si alguien se sentara en mi "
        "pecho, como si se sentaran en mi pecho, como si tuviera a alguien sentado en el pecho, alguien sentado en el "
        "pecho, peso en el pecho, un peso en el pecho, peso encima del pecho, como un peso en el pecho, una losa en "
        "el pecho, sentara encima del pecho, un elefante sentado, pise el pecho, pisaran el pecho, peso enorme en el "
        "pecho"
    ),
    "pressure in my chest": (
        "pecho apretado, apretado el pecho, se cierra el pecho, pecho oprimido, se cerro el pecho, cerrado el pecho, "
        "pecho cerrado, aprieta el pecho, apreto el pecho, se aprieta el pecho, se apreto el pecho, el pecho aprieta, "
        "el pecho apretado, se oprime el pecho, oprime el pecho, apretado en el pecho"
    ),
    "can not breathe": (
        "ahogos|asfixia|ahogo|ahogaba|ahogada|ahogado|ahogando|asfixio|asfixiaba|asfixiando|sofoco|sofocado|sofocada|"
        "sofocacion|disnea|sofoca|boqueando|ahogas|ahoga|ahogamos|ahogan|ahogaban|ahogabas|ahoge|ahogaste|ahogaron|"
        "ahogados|ahogar|ahogarse|ahogandose|ahogarme|ahogara|ahogaria|ahogaran|ahogaras|ahogasen|asfixias|asfixiamos|"
        "asfixian|asfixiaban|asfixiabas|asfixie|asfixiaste|asfixiaron|asfixiado|asfixiada|asfixiados|asfixiadas|"
        "asfixiar|asfixiarse|asfixiandose|asfixiarme|asfixiara|asfixiaria|asfixiaran|asfixiaras|asfixiasen|sofocas|"
        "sofocamos|sofocan|sofocaba|sofocaban|sofocabas|sofoce|sofocaste|sofocaron|sofocando|sofocados|sofocadas|"
        "sofocar|sofocarse|sofocandose|sofocarme|sofocara|sofocaria|sofocaran|sofocaras|sofocasen, falta el aire, "
        "falta de aire, falta aire, no puedo respirar, no podia respirar, no pude respirar, dificultad para respirar, "
        "dificultad respiratoria, sin aire, no tengo aire, no entra el aire, no entraba el aire, falto el aire, "
        "faltaba el aire, faltaba aire, falto aire, no respiro bien, no respiraba, no respiro, no entra aire, no "
        "entraba aire, no llega el aire, no llegaba el aire, problemas para respirar, problema para respirar, cuesta "
        "respirar, costaba respirar, costo respirar, cuesta mucho respirar, cuesta trabajo respirar, respiro con "
        "dificultad, respiraba con dificultad, respirar con dificultad, no puedo respirar bien, no podia respirar "
        "bien, no puedo tomar aire, no puedo coger aire, no puedo agarrar aire, no puedo jalar aire, no podia coger "
        "aire, no podia tomar aire, no podia jalar aire, no consigo respirar, no logro respirar, no alcanzo a "
        "respirar, quede sin respiracion, quede sin aire, quedo sin aire, quede sin respirar, sin respirar, sin poder "
        "respirar, se va el aire, se fue el aire, se iba el aire, se corta la respiracion, se corto la respiracion, "
        "se cortaba la respiracion, se cierra la garganta, se cerro la garganta, jadeo sin parar, respiracion "
        "dificil, respiracion dificultosa, respirar cuesta, respirar duele, faltaba el oxigeno, falta oxigeno, falta "
        "el oxigeno, imposible respirar, no podia ni respirar, no puedo ni respirar, agitacion al respirar, silbido "
        "al respirar, silbidos al respirar, pitidos al respirar, pitos al respirar, no puedo decir una frase, no "
        "puedo terminar una frase, no termino las frases"
    ),
    "out of breath": "agitado|agitada|jadeando|jadeante|resoplando, sin aliento",
    "fainted": (
        "desmaye|desmayo|desmayado|desmayada|desmayar|desmayos|desmayaba|desmayandome|desmayarme|desvaneci|"
        "desvanecimiento|desvanecido|desvanecio|desvanecida|sincope|inconsciente|lipotimia|soponcio|patatus|desplome|"
        "desplomo|desplomado|desplomaba|colapse|colapso|telele|apague|blancazo|privada|prive|desmayas|desmaya|"
        "desmayamos|desmayan|desmayaban|desmayabas|desmayaste|desmayaron|desmayando|desmayados|desmayadas|desmayarse|"
        "desmayandose|desmayara|desmayaria|desmayaran|desmayaras|desmayasen|desplomas|desploma|desplomamos|desploman|"
        "desplomaban|desplomabas|desplomaste|desplomaron|desplomando|desplomada|desplomados|desplomadas|desplomar|"
        "desplomarse|desplomandose|desplomarme|desplomara|desplomaria|desplomaran|desplomaras|desplomasen|desvaneco|"
        "desvaneces|desvanece|desvanecemos|desvanecen|desvanecia|desvanecian|desvaneciste|desvanecieron|desvaneciendo|"
        "desvanecidos|desvanecidas|desvanecer|desvanecerse|desvaneciendose|desvaneciera|desvanecieran|desvanecciera|"
        "desvaneccieran, perdi el conocimiento, perdi el sentido, perdi la conciencia, perdi la consciencia, perdida "
        "de conocimiento, perdida de conciencia, pierdo el conocimiento, casi desmayo, casi desmaye, a punto de "
        "desmayarme, por poco desmayo, a punto de perder el conocimiento, perder el conocimiento, perdido el "
        "conocimiento, perdiendo el conocimiento, perdio el conocimiento, perdi conocimiento, quede inconsciente, cai "
        "inconsciente, cai redondo, cai redonda, caer redonda, caer redondo, cai al suelo sin, vi todo negro, veo "
        "todo negro, veia todo negro, se puso todo negro, todo se puso negro, todo negro, se puso negro todo, se puso "
        "la vista negra, vista negra, se hizo negro, se hizo oscuro todo, se puso todo oscuro, todo se puso oscuro, "
        "se puso oscuro, se apago todo, se apagaron las luces, se fue el mundo, se fue la cabeza, se fue la cabeza "
        "del todo, se fue la luz de los ojos, se fueron las luces, se fue la luz de golpe, perdi el mundo, desperte "
        "en el suelo, desperte en el piso, desperte tirado, desperte tirada, apareci en el suelo, dio un blancazo, "
        "dio un yeyo, un yeyo, dio un vahido, un vahido, quede en blanco unos segundos, se nublo y cai, dio la "
        "palida, la palida, perdi consciencia, perdi conciencia, dio un patatus, dio un soponcio, fui al suelo, cai "
        "desmayada, cai desmayado, quede privado, quede privada"
    ),
    "palpitations": (
        "irregular|irregulares|irregularmente|palpitaciones|palpitacion|taquicardia|taquicardias|arritmia|arritmias|"
        "extrasistoles|extrasistole|palpitaba|fibrilacion, latidos irregulares, corazon irregular, pulso irregular, "
        "ritmo irregular, corazon salta, se salta el corazon, salta el corazon, saltos del corazon, brinca el "
        "corazon, se salta latidos, se salta un latido, se saltaba latidos, se salto un latido, saltos en el corazon, "
        "brincos en el corazon, vuelcos en el corazon, dio un vuelco y late raro, el corazon da saltos, corazon da "
        "vuelcos, el corazon brinca, corazon brinca, corazon late raro, corazon late irregular, corazon late mal, "
        "late raro el corazon, late irregular, latia irregular, latia raro, latia desordenado, corazon a destiempo, "
        "corazon desbocado, el corazon desbocado, corazon descontrolado, pulso raro, pulso descontrolado, ritmo del "
        "corazon raro, corazon fuera de ritmo, latidos raros, latidos desordenados, latidos de mas, latidos extra, "
        "corazon como loco, el corazon como loco, corazon se para, se paraba el corazon, corazon acelerado sin "
        "motivo, tucutucu raro, corazon aletea, aleteo en el pecho, revoloteo en el pecho"
    ),
    "heart racing": (
        "corazon acelerado, corazon a mil, corazon muy rapido, se acelera el corazon, se acelero el corazon, corazon "
        "latia muy fuerte, corazon late muy fuerte, corazon latia rapido, corazon late rapido, corazon latiendo muy "
        "rapido, acelerado el corazon, pulso acelerado, el corazon a mil, latia muy rapido el corazon, se salia el "
        "corazon, se sale el corazon, el corazon se sale del pecho, corazon a mil por hora, el corazon iba a mil"
    ),
    "cold sweat": "sudo frio, sudor frio, sudores frios, sudando frio, sude frio, sudaba frio, sudoracion fria",
    "sweating": "sudo|sudaba|sude|sudando|sudor|sudoroso|sudorosa",
    "throbbing": (
        "palpita|palpitando|late|latiendo|pulsatil|pulsa|pulsante|latia|palpitante|palpitan|laten|pulsando|palpito|"
        "palpitas|palpitamos|palpitaban|palpitabas|palpite|palpitaste|palpitaron|palpitado|palpitada|palpitados|"
        "palpitadas|palpitar|palpitarse|palpitandose|palpitarme|palpitara|palpitaria|palpitaran|palpitaras|palpitasen|"
        "latimos|latian|latio|latiste|latieron|latida|latidas|latir|latirse|latiera|latieran, latidos en la "
        "pantorrilla"
    ),
    "warm": (
        "caliente|calientita|calientito|calientes|roja|rojo|rojiza|rojizo|enrojecido|enrojecida|colorada|colorado|"
        "rojos|rojas|enrojecimiento|hirviendo|calienta, calor en la pantorrilla, ardiendo de caliente"
    ),
    "red and warm": "roja y caliente, rojo y caliente",
    "by itself": "involuntariamente|involuntario",
    "dizzy": (
        "mareo|mareos|mareado|mareada|maree|marea|mareaba|mareando|mareadito|mareadita|marie|vertigo|vertigos|"
        "aturdido|aturdida|atontado|atontada|atontao|mareillo|mareito|mareadisima|mareadisimo|grogui|mareadillo|"
        "mareadilla|atarantado|atarantada|tarantas|tarantado|flotando|vahidos|vahido|mareamos|marean|mareaban|"
        "mareabas|mareaste|marearon|mareados|mareadas|marear|marearse|mareandose|marearme|mareara|marearia|marearan|"
        "marearas|mareasen|ataranto|atarantas|ataranta|atarantamos|atarantan|atarantaba|atarantaban|atarantabas|"
        "atarante|atarantaste|atarantaron|atarantando|atarantados|atarantadas|atarantar|atarantarse|atarantandose|"
        "atarantarme|atarantara|atarantaria|atarantaran|atarantaras|atarantasen|atonto|atontas|atonta|atontamos|"
        "atontan|atontaba|atontaban|atontabas|atonte|atontaste|atontaron|atontando|atontados|atontadas|atontar|"
        "atontarse|atontandose|atontarme|atontara|atontaria|atontaran|atontaras|atontasen|aturdo|aturdes|aturde|"
        "aturdimos|aturden|aturdia|aturdian|aturdio|aturdiste|aturdieron|aturdiendo|aturdidos|aturdidas|aturdir|"
        "aturdirse|aturdiera|aturdieran, borrachera sin beber, da vueltas, daba vueltas, dio vueltas, da vueltas la "
        "cabeza, da vueltas todo, daba vueltas todo, daba vueltas la cabeza, todo da vueltas, todo daba vueltas, dio "
        "vueltas todo, todo dio vueltas, la cabeza da vueltas, cabeza dando vueltas, la cabeza daba vueltas, dando "
        "vueltas, todo dando vueltas, todo giraba, giraba todo, gira todo, todo gira, el cuarto giraba, la habitacion "
        "giraba, giraba el techo, el techo giraba, se mueve el piso, se movia el piso, se mueve el suelo, se movia el "
        "suelo, se mueve todo, se movia todo, todo se mueve, todo se movia, como en un barco, como si estuviera en un "
        "barco, se va la cabeza, se iba la cabeza, ida la cabeza, cabeza ligera, cabeza liviana, cabeza ida, voy de "
        "lado, voy como borracho, voy como borracha, como borracha al caminar, como borracho al caminar, como "
        "flotando, mareos fuertes"
    ),
    "fever": (
        "fiebre|fiebres|febril|calentura|calenturas|fiebron|fiebrecita|febricula|temperatura|afiebrado|afiebrada|"
        "escalofrios|escalofrio|decimas|tiritona|tiritando|destemplanza, temperatura alta, sudores nocturnos, sudores "
        "por la noche, unas decimas, con temperatura"
    ),
    "weight loss": (
        "adelgazado|adelgace|adelgazo|adelgazando|enflaquecido|enflaqueci|enflaqueciendo|adelgazas|adelgaza|"
        "adelgazamos|adelgazan|adelgazaba|adelgazaban|adelgazabas|adelgaze|adelgazaste|adelgazaron|adelgazada|"
        "adelgazados|adelgazadas|adelgazar|adelgazarse|adelgazandose|adelgazarme|adelgazara|adelgazaria|adelgazaran|"
        "adelgazaras|adelgazasen|enflaqueco|enflaquecas|enflaqueca|enflaquecamos|enflaquecan|enflaquecaba|"
        "enflaquecaban|enflaquecabas|enflaquece|enflaquecaste|enflaquecaron|enflaquecando|enflaquecado|enflaquecada|"
        "enflaquecados|enflaquecadas|enflaquecar|enflaquecarse|enflaquecandose|enflaquecarme|enflaquecara|"
        "enflaquecaria|enflaquecaran|enflaquecaras|enflaquecasen, perdida de peso, bajando de peso, baje de peso, "
        "perdiendo peso, perdi peso, he perdido peso, he bajado de peso, bajado de peso, perdido peso, he adelgazado, "
        "se cae la ropa, bajon de peso, perdido kilos, perdiendo kilos, perdido mucho peso, perdi mucho peso, bajo de "
        "peso sin, baje kilos, baje varios kilos, bajado varios kilos, perdi kilos, perdi varios kilos, perdido "
        "varios kilos, he perdido varios kilos, la ropa queda grande, ropa queda grande, se caen los pantalones, "
        "pantalones se caen, adelgazado sin dieta, adelgazado sin querer, pierdo peso, pierdo kilos, bajo de peso, "
        "bajo peso sin dieta, quedan grandes los pantalones, estoy bajando de peso"
    ),
    "lost 6 kilos": "perdi 6 kilos",
    "wakes me up": (
        "despierta|desperto|despertaba|despertado|desvela|desvelo|despertando|despertaron|despiertan, despierto con, "
        "despierto por, desperte con, desperte por, despierto del, no deja dormir, no dejo dormir, no dejaba dormir, "
        "quita el sueno, quito el sueno, desperte de, no puedo dormir por, no pude dormir por, no puedo dormir del, "
        "no pude dormir del, no podia dormir por, no podia dormir del, no puedo dormir con, no pude dormir con, no "
        "dormi por el, no dormi por la, no dormi del, no dormi por culpa, no dormi nada del, no dormi nada por el, no "
        "he dormido del, no he dormido por el, no he dormido por la, no he podido dormir por, no he podido dormir "
        "del, no he podido dormir, no pude dormir, no puedo dormir, no podia dormir, sin dormir por, sin dormir del, "
        "sin dormir por culpa, no he pegado ojo por, no pegue ojo por, no he pegado ojo del, no pegue ojo del, no "
        "pegue el ojo por, no pegue ojo con, despierta por la noche, levanta por la noche, despierto en la noche por, "
        "despierto en la noche con, despierto por la noche con, despierto por la noche por, desperte en la noche con, "
        "desperte en la noche por, desperte a las, desperte varias veces por, despierto a las, despierta a las, no "
        "concilio el sueno, no descanso por, no dejo pegar ojo, no deja descansar, no deja pegar ojo, no dejo "
        "descansar, en vela por, saca de la cama, saco de la cama, desperte del, desperte llorando, impide dormir, no "
        "permite dormir"
    ),
    "all night": "toda la noche, toda la noche entera, la noche entera, media noche despierta, media noche despierto",
    "at night": (
        "nocturno|nocturna|nocturnos|noche|noches|madrugada, de noche, por la noche, por las noches, en la noche, en "
        "las noches, cada noche, todas las noches, a media noche, de madrugada, en la madrugada, por la madrugada, en "
        "mitad de la noche, a la madrugada, durante la noche, acostado de noche, a mitad de la noche, en plena noche"
    ),
    # --- bladder, saddle ----------------------------------------------------------------------------------------------
    "between my legs": (
        "sillin|entrepierna|partes|genitales|perine|perineo|vagina|pene|testiculos|vulva|huevos|bajos|escroto|"
        "esfinter|recto, zona del sillin, la zona del sillin, zona perineal, entre las piernas, entre mis piernas, la "
        "entrepierna, zona intima, zonas intimas, partes intimas, zona genital, silla de montar, en silla de montar, "
        "zona anal, ahi abajo, alla abajo, aqui abajo, partes nobles, sus partes, mis partes, zona de la silla, "
        "partes privadas, area genital, area intima, parte intima, las partes bajas, los bajos, mis bajos"
    ),
    "where i wipe": "al limpiarme, cuando limpio, al limpiar",
    "bladder": "vejiga|orina|orinas|pis|pipi|pichi|esfinteres|intestino|heces|popo|caca|orines|meados",
    "wet myself": (
        "orine|mee|incontinencia|incontinente|orino, hice pis, hice pipi, hice pis encima, hice pipi encima, orine "
        "encima, mee encima, se sale la orina, se sale el pis, se sale la pipi, se escapa el pis, se escapa la orina, "
        "se escapo el pis, se escapo la orina, se escapa el pipi, se escapa la pipi, escapes de orina, perdidas de "
        "orina, hice encima, cague encima, hice caca encima, se escapa la caca, orino encima, meo encima, hago "
        "encima, hago pis encima, hago pipi encima, hice popo encima, orine en la cama, mojo la cama, moje la cama, "
        "moje los pantalones, orine sin darme cuenta, se escaparon unas gotas, se escapa sin querer, se escapo pis, "
        "se escapo pipi, se escapa pis, se sale el pipi, se salio el pis, se salio la orina, se salio la pipi, se "
        "salio el pipi, orino sin querer, orino sin darme cuenta, orino sola, orino solo, meo sin querer, pierdo "
        "orina, perdi orina, gotea la orina, no aguanto el pis, no aguanto la orina, no aguanto las ganas de orinar, "
        "no aguante la orina, no aguante el pis, no controlo la orina, no controlo el pis, no controlo la pipi, no "
        "controlo los esfinteres, no controlo esfinteres, no controlo la vejiga, no controlo el esfinter, no controlo "
        "el intestino, no controlo la caca, no controlo mis esfinteres, perdi el control de la vejiga, perdi el "
        "control de los esfinteres, perdi el control de esfinteres, perdi control de la vejiga, perdi control de "
        "esfinteres, perdi el control del esfinter, sin control de esfinteres, sin control de la vejiga, falta de "
        "control de esfinteres, no puedo controlar la orina, no puedo controlar el pis, no puedo controlar la vejiga, "
        "no puedo controlar los esfinteres, no retengo la orina, no retengo el pis, no puedo retener, no llego al "
        "bano, no llegue al bano, no alcance a llegar al bano, gano el pis, gano la pipi, gano la chis, orine sin "
        "sentir, orino sin sentir, ensucie los calzones, ensucio la ropa interior, ensucie la ropa interior, se sale "
        "la caca, se salio la caca, se escapo la caca, no aguanto la caca, hice del dos encima, sin sentir que orino"
    ),
    "can not pee": (
        "no puedo orinar, no puedo mear, no puedo hacer pis, no puedo hacer pipi, no sale el pis, no sale la orina, "
        "no sale la pipi, no pude orinar, no podia orinar, retencion de orina, retencion urinaria, no orino, no he "
        "orinado, no sale el pipi, no he podido orinar, dificultad para orinar, problemas para orinar, cuesta orinar, "
        "cuesta mear, cuesta hacer pis, no consigo orinar, no logro orinar, no puedo defecar, no puedo evacuar, no he "
        "hecho pis, no puedo hacer del bano, no puedo ir al bano, no pude hacer pis, no pude hacer pipi, no he podido "
        "hacer pis, no he podido hacer pipi, no he podido mear, no siento ganas de orinar, no siento ganas de hacer "
        "pis, no siento las ganas de orinar, no siento cuando orino, no siento cuando meo, no siento cuando hago pis, "
        "no siento cuando hago pipi, no siento cuando voy al bano, no siento al orinar, no siento al hacer pis, no "
        "noto cuando orino, no noto cuando hago pis, no noto cuando meo, no noto las ganas, no siento las ganas, no "
        "doy cuenta cuando orino, no doy cuenta si orino, no siento la vejiga, no siento la vejiga llena, no se "
        "cuando tengo que orinar, no se si orino, no siento que orino, dificultad para hacer pis, problemas para "
        "hacer pis, problema para orinar, costo orinar, tengo que hacer fuerza para orinar, hago fuerza para orinar, "
        "no puedo empezar a orinar, la orina no sale, el pis no sale, tengo ganas y no sale"
    ),
    "can not feel the paper": (
        "no siento el papel, no sentia el papel, no senti el papel, no noto el papel, no siento el papel higienico, "
        "no noto el papel higienico, no siento cuando limpio, no siento al limpiarme, no noto cuando limpio, no "
        "siento nada cuando limpio, no siento nada al limpiarme"
    ),
    "odd": (
        "raro|rara|raros|raras|extrano|extrana|anormal|extranos|rarito|rarita|rarisimo|rarisima|extranas|extranito|"
        "extranita|extranisimo|extranisima"
    ),
    "bladder trouble": (
        "problemas de vejiga, problemas con la orina, problemas de esfinteres, problemas con la vejiga, problemas con "
        "el pis, problemas de control de esfinteres"
    ),
    # --- how it is now ------------------------------------------------------------------------------------------------
    "tried": "lo intente, trate de hacerlo",
    "at work": "estoy de guardia, estaba de guardia, estoy de turno, de turno, en turno, doblando turno, en la pega",
    "no motivation": "no dieron ganas, no dio la gana, no dio gana, no dan ganas, dio lata, dio weba",
    "better": (
        "mejor|mejorado|mejoro|mejorada|recuperado|recuperada|alivio|aliviado|aliviada|mejorcito|mejorcita|mejore, "
        "mucho mejor, muchisimo mejor, ya mejor, ya bien, bastante mejor, ya estoy bien, como nuevo hoy, ya esta "
        "bien, ya todo bien, ya esta mejor, esta mejor, estoy mejor, ya mucho mejor, amaneci mejor, amaneci bien, ya "
        "bien hoy, bien otra vez, ya estoy mejor, desperte mejor, siento mejor, va mucho mejor, como si nada"
    ),
    "a bit better": (
        "mejorando, un poco mejor, algo mejor, poco mejor, va mejorando, un poquito mejor, va mejor, ligeramente "
        "mejor, un pelin mejor, tantito mejor, un poquitin mejor, poco a poco mejor, vamos mejorando, voy mejorando, "
        "voy mejor, ahi va mejorando, mejorcito pero, un chin mejor, ha bajado algo, ha bajado un poco, bajo un poco, "
        "mejor pero todavia, mejor pero aun"
    ),
    "the same": (
        "igual|igualito|igualita|parecido|parecida, lo mismo, sin cambios, sin cambio, igual que ayer, como ayer, tal "
        "cual ayer, igual que antes, no ha cambiado, ni mejor ni peor, sigue igual, sigo igual, esta igual, estoy "
        "igual, mas o menos igual, todo igual, siguen igual, la misma historia, lo mismo que ayer, no cambio, sin "
        "mejora, sin mejoria, ahi va igual, igual de mal, anda igual, ando igual, no mejora ni empeora, todo sigue "
        "igual, casi igual, igual que siempre, misma cosa, lo mismo de ayer, lo mismo de siempre, mismo dolor, el "
        "mismo dolor"
    ),
    "worse": (
        "mas tieso que ayer, mas tiesa que ayer, mas rigido que ayer, mas rigida que ayer, mas duro que ayer, "
        "mas adolorido que ayer, mas adolorida que ayer, mas entumecido que ayer, "
        "peor|empeoro|empeorado|empeorando|empeora|aumento|aumentado|agravo|agravado|empeore|peorcito|aumenta|"
        "incremento, mas fuerte, mas fuerte que ayer, mas intenso, mucho peor, un poco peor, va a peor, peor que "
        "ayer, mas mal, amaneci peor, ha empeorado, va peor, esta peor, estoy peor, sigo peor, fue a peor, subio "
        "mucho, cada vez peor, cada dia peor, va para peor, ha ido a peor, cada vez mas fuerte, cada dia mas fuerte, "
        "mas que ayer, mas dolor que ayer, desperte peor"
    ),
    "not better": (
        "no mejor, no ha mejorado, nada mejor, no va mejor, no esta mejor, no estoy mejor, nada de mejoria, no noto "
        "mejoria, sin mejorar"
    ),
    # --- requests -----------------------------------------------------------------------------------------------------
    "stop": "stop|parar|basta|detener|alto, para ya, basta ya",
    "stop messaging": (
        "deja de escribir, deja de mandar mensajes, dejen de escribir, no escribas mas, no mandes mas, no mandes mas "
        "mensajes, no quiero mas mensajes, no mas mensajes, dejame en paz, deja de molestar, no manden mas mensajes, "
        "dejen de mandar mensajes, no envies mas mensajes, deja de enviar mensajes, paren de escribir, para de "
        "escribir, para los mensajes, quiero parar los mensajes, ya no escriban, ya no escribas, ya no mandes "
        "mensajes, no quiero recibir mas mensajes, no quiero recibir mensajes, no deseo recibir mas mensajes, dejen "
        "de enviarme mensajes, deja de enviarme mensajes, deja de mandarme mensajes, deja de escribirme, dejen de "
        "mandarme mensajes, para de mandar mensajes, para de mandarme mensajes, detener los mensajes, deten los "
        "mensajes, detenga los mensajes, pare los mensajes, no escriban mas, no contacten mas, no contactes mas, no "
        "envie mas mensajes, no escriba mas, no mas notificaciones, deja de mandar notificaciones, dejar de recibir "
        "mensajes, quiero dejar de recibir mensajes, ya no quiero mensajes, ya no quiero recibir mensajes"
    ),
    "quit the programme": (
        "desuscribirme|renuncio|retiro|salgo|borro|borrame|eliminame, darme de baja, quiero darme de baja, dame de "
        "baja, baja del programa, dejar el programa, dejo el programa, abandonar el programa, abandono el programa, "
        "salir del programa, salirme del programa, cancelar el programa, terminar el programa, quiero salirme, "
        "cancelar mi suscripcion, cancelar la suscripcion, quiero cancelar, doy de baja, no quiero seguir, ya no "
        "quiero seguir, no quiero continuar, ya no quiero continuar, ya no voy a seguir, no voy a continuar, no voy a "
        "seguir, quiero abandonar, quiero dejar el programa, bajame de la lista, dejare el programa, quiero salir del "
        "programa, quiero dejar esto, quiero dejarlo definitivamente, ya no quiero hacer el programa, ya no quiero "
        "participar, no quiero participar mas, no quiero hacerlo mas, no quiero mas esto, ya no quiero esto, ya no "
        "quiero mas, no quiero mas, no quiero seguir con esto, no quiero seguir con el programa, no quiero continuar "
        "con el programa, no deseo continuar, no deseo seguir, no deseo continuar con el programa, prefiero dejar el "
        "programa, prefiero no seguir, prefiero no continuar, cancelar todo, cancela todo, cancela mi programa, "
        "cancele mi programa, cancela el programa, cancelen mi programa, quiero cancelar el programa, termina el "
        "programa, quiero terminar el programa, elimina mi cuenta, borra mi cuenta, eliminar mi cuenta, eliminen mi "
        "cuenta, quiero borrar mi cuenta, esto no es para mi, no es para mi, hasta aqui llego con el programa, hasta "
        "aqui con el programa, deme de baja, darse de baja, dar de baja, la baja por favor, solicito la baja, quiero "
        "la baja, pido la baja, denme de baja, quitame de la lista, saquenme de la lista, sacame de la lista, quiero "
        "salir, quiero renunciar, rajo del programa, abandono definitivamente, lo dejo para siempre, lo dejo "
        "definitivamente"
    ),
    "pause": (
        "pausa|pausar|pausarlo|pausarla|pausen|pausame|pausemos|pausalo|suspender|suspendelo|congelar|congelalo|"
        "ausento|ausentare, poner en pausa, ponlo en pausa, ponme en pausa, quiero pausar, hacer una pausa, hagamos "
        "una pausa, necesito una pausa, necesito pausar, un descanso de una semana, descanso de una semana, hacer un "
        "descanso de, unos dias de descanso, parar unos dias, parar una semana, parar por unos dias, parar por una "
        "semana, parar hasta, detener por unos dias, detener hasta, pausa el programa, pausar el programa, pausar las "
        "sesiones, pausar los mensajes, pausa por favor, pausa de una semana, pausa una semana, pausa unos dias, "
        "pausa por una semana, pausa hasta, pausar hasta, pausame hasta, pausalo hasta, quiero una pausa, pongan en "
        "pausa, pon en pausa, pon pausa, poner pausa, ponle pausa, dejarlo en pausa, dejalo en pausa, dejar en pausa, "
        "descansar una semana, descansar unos dias, quiero descansar unos dias, quiero descansar una semana, necesito "
        "un descanso de, necesito unos dias, necesito unas semanas, necesito una semana de descanso, voy de "
        "vacaciones, estare de vacaciones, salgo de vacaciones, voy de viaje, estare de viaje, salgo de viaje, voy a "
        "estar de viaje, voy a estar de vacaciones, estare fuera, voy a estar fuera, voy a estar afuera, estare "
        "afuera, no estare hasta, no voy a estar, no mandes nada hasta, no envies nada hasta, no mandes mensajes "
        "hasta, no envies mensajes hasta, sin mensajes hasta, suspender hasta, suspende hasta, suspender por, "
        "suspende por, suspender unos dias, suspender las sesiones, para hasta el, paremos hasta, paremos una semana, "
        "paremos unos dias, podemos parar una semana, podemos parar unos dias, quiero parar una semana, quiero parar "
        "unos dias, ausento hasta, estare ausente, tomarme un descanso, tomarme una semana, tomar un descanso de, "
        "parar dos semanas, parar el programa unos dias, parar el programa una semana, pausar dos semanas, parar un "
        "tiempo, quiero parar un tiempo, dejarlo un tiempo, dejarlo una temporada, dejarlo unos dias, dejarlo unas "
        "semanas"
    ),
    "change the time": (
        "de ahora en adelante mejor, a partir de ahora mejor, de ahora en adelante, mover el mensaje, cambiar el "
        "mensaje, mover los mensajes, cambiar los mensajes, mover la hora del mensaje, cambiar la hora del mensaje, "
        "cambiar la hora, cambiar el horario, cambiar de hora, cambiar de horario, cambiar mi horario, cambiame la "
        "hora, cambiame el horario, cambio de hora, cambio de horario, otra hora, otro horario, mandalo mas tarde, "
        "mandame mas tarde, mandamelo mas tarde, mandalo mas temprano, mandamelo mas temprano, mandame mas temprano, "
        "mas temprano por favor, mas tarde por favor, enviame mas tarde, enviamelo mas tarde, enviamelo mas temprano, "
        "escribeme mas tarde, escribeme mas temprano, muevelo a, mueve la hora, mover la hora, mover el horario, "
        "cambialo a, cambiala a, modificar la hora, modificar el horario, ajustar la hora, ajustar el horario, "
        "horario distinto, prefiero por la tarde, prefiero por la noche, prefiero por la manana, prefiero en la "
        "tarde, prefiero en la noche, prefiero en la manana, cambia la hora, cambia el horario, cambien la hora, "
        "cambien el horario, cambiarme la hora, cambiarme el horario, cambiarlo a, cambiar la hora de los mensajes, "
        "cambiar el recordatorio, mandar los mensajes mas tarde, mandar los mensajes mas temprano, mandar el mensaje "
        "mas tarde, mandar el mensaje mas temprano, enviar los mensajes mas tarde, enviar los mensajes mas temprano, "
        "enviar el mensaje mas tarde, enviar el mensaje mas temprano, recibir los mensajes mas tarde, recibir los "
        "mensajes mas temprano, recibir los mensajes a, recibir los mensajes por la tarde, recibir los mensajes por "
        "la noche, recibir los mensajes por la manana, recibir los mensajes en la tarde, recibir los mensajes en la "
        "noche, recibir el mensaje a, recibir el mensaje mas tarde, recibir el mensaje mas temprano, recibirlo a, "
        "recibirlo mas tarde, recibirlo mas temprano, recibirlo por la tarde, recibirlo por la noche, recibirla a, "
        "recibirla por la tarde, recibirla por la noche, recibir la sesion a, recibir la sesion por la tarde, recibir "
        "la sesion por la noche, recibir la sesion mas tarde, recibir la sesion mas temprano, mandame los mensajes a, "
        "mandame los mensajes por la tarde, mandame los mensajes por la noche, mandame el mensaje a, mandame la "
        "sesion a, mandame la sesion por la tarde, mandame la sesion por la noche, mandame la sesion en la tarde, "
        "mandame la sesion en la noche, mandame la sesion mas tarde, mandame la sesion mas temprano, mandalo a, "
        "mandala a, mandamelo a, mandamela a, enviame la sesion a, enviame la sesion por la tarde, enviame la sesion "
        "por la noche, enviame los mensajes a, enviame el mensaje a, enviamelo a, enviamela a, envialo a, enviala a, "
        "escribeme a, escribeme por la tarde, escribeme por la noche, escribime a, avisame a, recuerdamelo a, "
        "recuerdame a, pasalo a, pasala a, pasar a la tarde, pasar a la noche, pasarlo a la tarde, pasarlo a la "
        "noche, pasarlo a, pasarla a, pasarla a la tarde, pasarla a la noche, pasar los mensajes a, pasar la sesion "
        "a, pasame la sesion a, podria ser a, podria ser por la tarde, podria ser por la noche, podria ser mas tarde, "
        "podria ser mas temprano, puede ser a, puede ser por la tarde, puede ser por la noche, puede ser mas tarde, "
        "puede ser mas temprano, puede ser a otra hora, podria ser a otra hora, muy temprano para mi, demasiado "
        "temprano para mi, muy tarde para mi, demasiado tarde para mi, media hora mas tarde, media hora mas temprano, "
        "media hora antes, una hora mas tarde, una hora mas temprano, una hora antes, dos horas mas tarde, mas "
        "tardecito por favor, mejor por la tarde por favor, mejor por las tardes, mejor por las noches, mejor por las "
        "mananas, mejor a la tarde, mejor a la noche, prefiero por las tardes, prefiero por las noches, prefiero por "
        "las mananas, prefiero a la tarde, prefiero a la noche, prefiero recibirlo, prefiero recibirla, prefiero los "
        "mensajes, prefiero el mensaje, prefiero la sesion por, prefiero la sesion a, prefiero a, prefiero otra hora, "
        "prefiero otro horario, poner el recordatorio a, pon el recordatorio a, ponme el recordatorio a, ponlo a, "
        "ponla a, ponmelo a, hora del mensaje, cambiar los mensajes a, cambiar mensajes a, cambiar la sesion a, "
        "cambiar a la tarde, cambiar a la noche, cambiar a la manana, cambiar para la tarde, cambiar para la noche, "
        "cambiarla a, cambiar a las, no los domingos, mover los mensajes a, mover la sesion a, moverlo a, moverla a, "
        "mover a la tarde, mover el recordatorio, adelantar la hora, atrasar la hora, adelantar el mensaje, retrasar "
        "el mensaje, retrasar la hora, adelantar los mensajes, retrasar los mensajes, a partir de manana a, que "
        "llegue a, que llegue mas tarde, que llegue mas temprano, que llegue por la tarde, que llegue por la noche, "
        "que llegue antes de, que llegue despues de, que lleguen a, que lleguen por la tarde, que lleguen por la "
        "noche, que lleguen mas tarde, que lleguen mas temprano, que el mensaje llegue"
    ),
    "lighter": (
        "bajale, mas facil, mas facil por favor, mas suave, mas suave por favor, mas ligero, mas liviano, mas "
        "liviana, mas ligera, algo mas facil, algo mas suave, menos dificil, menos intenso, menos intensa, menos "
        "pesado, version facil, version suave, version mas facil, version mas suave, mas sencillo, mas sencilla, mas "
        "leve, mas suavecito, mas faciles, mas suaves, menos exigente, bajar la intensidad, bajale la intensidad, "
        "baja la intensidad, mas faciles por favor, menos duro, menos dura, algo mas ligero, algo mas sencillo, algo "
        "mas liviano, ejercicios mas faciles, ejercicios mas suaves, una version mas facil, una version mas suave, "
        "una sesion mas suave, una sesion mas facil, sesion mas suave, sesion mas facil, rutina mas suave, rutina mas "
        "facil, bajarle la intensidad, bajar la dificultad, bajar el nivel, baja el nivel, bajale un poco, hazlo mas "
        "facil, hazlo mas suave, hacerlo mas facil, hacerlo mas suave, hacerla mas facil, hacerla mas suave, un poco "
        "mas facil, un poco mas suave, un poquito mas facil, un poquito mas suave"
    ),
    "shorter": (
        "acortar|acortarla|acortarlo, mas corto, mas corta, mas cortos, mas cortas, mas corto por favor, mas corta "
        "por favor, mas breve, version mas corta, sesion mas corta, rutina mas corta, algo mas corto, menos larga, "
        "menos largo, mas rapida, mas rapido, hazla mas corta, hazlo mas corto, menos tiempo, mas cortita, mas "
        "cortito, una version mas corta, una sesion mas corta, una rutina mas corta, sesiones mas cortas, rutinas mas "
        "cortas, algo mas breve, un poco mas corta, un poco mas corto, acortar la sesion, acortar la rutina, menos "
        "minutos, hacerla mas corta, hacerlo mas corto, reducir el tiempo, reducir la duracion, es muy larga la "
        "sesion, la sesion es muy larga, la rutina es muy larga, son muy largas, son muy largos"
    ),
    "todays session": (
        "la sesion de hoy, sesion de hoy, mandame la sesion, enviame la sesion, que toca hoy, muestrame la sesion, "
        "pasame la sesion, manda la sesion, envia la sesion, cual es la sesion de hoy, cual es la de hoy, que hay "
        "hoy, que tengo hoy, que hago hoy, que ejercicios tocan hoy, que ejercicios toca hoy, mandame la rutina, "
        "enviame la rutina, manda la rutina, mandame la rutina de hoy, enviame la rutina de hoy, mandame la sesion de "
        "hoy, enviame la sesion de hoy, muestrame la sesion de hoy, quiero ver la sesion de hoy, quiero ver la de "
        "hoy, no llego la sesion, puedes mandar la sesion, reenviame la sesion, reenvia la sesion, mandala de nuevo, "
        "mandala otra vez, ver la sesion de hoy, ver la sesion, mandame los ejercicios, mandame los ejercicios de "
        "hoy, enviame los ejercicios, los ejercicios de hoy por favor, la rutina de hoy por favor, la sesion de hoy "
        "por favor"
    ),
    "pregnant": (
        "embarazada|embarazo|encinta|prenada|embarazadisima, esperando un bebe, espero un bebe, quede embarazada, "
        "estoy esperando, voy a ser mama"
    ),
    "had an operation": (
        "operaron|operan|operacion|cirugia|operado|operada|opero|intervencion|quirofano|opere|intervinieron|cesarea, "
        "voy a operar, voy a operarme, opero de, van a operar, protesis de cadera, protesis de rodilla"
    ),
    "diagnosed": (
        "diagnosticaron|diagnostico|diagnosticado|diagnosticada|detectaron|hernia|osteoporosis|artrosis|artritis|"
        "trombosis|trombo|marcapasos|cancer|tumor|diabetes|diabetico|diabetica|quimio|quimioterapia|anticoagulantes|"
        "encontraron|recetaron, detectaron una, hernia discal, nueva medicacion, nuevo medicamento, nueva medicina, "
        "nuevas pastillas, cambio en mi salud, cambios en mi salud, mi salud cambio, mi salud ha cambiado, ha "
        "cambiado mi salud, cambio mi salud, empece medicacion, empece un medicamento, empece un tratamiento, empece "
        "nuevas pastillas, empiezo medicacion, empiezo tratamiento, mandaron pastillas, han recetado, han dado "
        "medicacion"
    ),
    "my doctor told": (
        "medico dijo, doctor dijo, doctora dijo, fisio dijo, medica dijo, traumatologo dijo, kine dijo, cardiologo "
        "dijo, fisioterapeuta dijo, medico dice, doctor dice, doctora dice, el medico dice, la doctora dice, dijo el "
        "medico, dijo el doctor, dijo la doctora, dijo el fisio, dijo la fisio, el doctor dijo, el medico ha dicho, "
        "ha dicho el medico, medico ha dicho, el medico recomendo, el doctor recomendo, el medico prohibio, el doctor "
        "prohibio, prohibio el medico, prohibio el doctor, prohibio la doctora"
    ),
    "broken": "fracture|fractura|fracturado|fracturada|quebre|quebrada|quebrado|escayola|yeso|fracturaron",
    "broke my leg": (
        "rompi la pierna, rompi el brazo, rompi el pie, rompi la muneca, rompi el tobillo, rompi la mano, rompi un dedo"
    ),
    "doctor": "doctor|doctora|medico|medica|fisio|fisioterapeuta|kinesiologo|kine|traumatologo|ambulancia",
    # --- harmless -----------------------------------------------------------------------------------------------------
    "chest opener": (
        "apertura de pecho, aperturas de pecho, apertura del pecho, abrir el pecho, abriendo el pecho, abre el pecho, "
        "abridor de pecho, abri el pecho, apertura pectoral, estiramiento de pecho, estiramiento del pecho, "
        "estiramientos de pecho, estirar el pecho, estire el pecho, ejercicio de pecho, ejercicios de pecho, dia de "
        "pecho, press de pecho, pecho abierto, estiramiento pectoral, postura del pecho"
    ),
    "knees to chest": (
        "rodillas al pecho, rodilla al pecho, piernas al pecho, rodillas hacia el pecho, rodilla hacia el pecho, "
        "rodillas contra el pecho, rodilla a pecho, rodillas a pecho, pierna al pecho, menton al pecho, barbilla al "
        "pecho, muslos al pecho, talon al gluteo, abrazando las rodillas, abrazo de rodillas, llevar las rodillas al "
        "pecho"
    ),
    "chest to the floor": (
        "pecho pegado al suelo, pecho pegado al piso, pecho en el suelo, pecho hasta el suelo, pecho tocando "
        "el suelo, "
        "pecho al suelo, pecho al piso, pecho contra la pared, pecho a la pared, pecho hacia el suelo, pecho hacia "
        "las piernas, pecho a las rodillas, pecho al muslo"
    ),
    "neck rolls": (
        "rotaciones de cuello, giros de cuello, circulos de cuello, circulos con el cuello, estiramiento de cuello, "
        "estiramientos de cuello, ejercicio de cuello, ejercicios de cuello, rotacion de cuello, rotacion cervical, "
        "rotaciones cervicales, movilidad de cuello, movilidad cervical, giro de cuello, inclinaciones de cuello, "
        "estiramiento del cuello, estiramientos del cuello, estirar el cuello, ejercicio del cuello, ejercicios del "
        "cuello, estire el cuello"
    ),
    "jaw release": (
        "relajacion de mandibula, ejercicio de mandibula, estiramiento de mandibula, soltar la mandibula, relajar la "
        "mandibula, mandibula suelta"
    ),
    "arm circles": (
        "circulos de brazos, circulos con los brazos, giros de brazos, estiramiento de brazos, estiramiento de brazo, "
        "estiramientos de brazos, elevaciones de brazos, ejercicios de brazos, estiramiento del brazo"
    ),
    "leg raises": (
        "elevaciones de pierna, elevaciones de piernas, elevacion de pierna, elevacion de piernas, estiramiento de "
        "piernas, estiramiento de pierna, estiramientos de piernas, ejercicios de piernas, dia de pierna, dia de "
        "piernas, balanceo de piernas, estiramiento de la pierna"
    ),
    "calf raises": (
        "elevaciones de talones, elevacion de talones, elevaciones de gemelos, elevaciones de pantorrilla, "
        "estiramiento de pantorrilla, estiramiento de gemelo, estiramiento de gemelos, estiramiento de pantorrillas, "
        "ejercicio de pantorrilla, ejercicio de gemelos, estiramiento de la pantorrilla, estiramiento del gemelo, "
        "estirar la pantorrilla, estirar los gemelos, bajada de talones"
    ),
    "hip stretch": (
        "estiramiento de cadera, estiramientos de cadera, apertura de cadera, aperturas de cadera, ejercicios de "
        "cadera, ejercicio de cadera, movilidad de cadera, apertura de caderas, estiramiento de psoas, circulos de "
        "cadera, estiramiento de la cadera"
    ),
    "hamstring stretch": (
        "estiramiento de isquios, estiramiento de isquiotibiales, estiramiento de femorales, estiramiento de los "
        "isquios, estirar isquios"
    ),
    "groin stretch": "estiramiento de ingle, estiramiento de aductores, postura de la mariposa, estiramiento mariposa",
    "thigh stretch": "estiramiento de muslo, estiramiento de cuadriceps",
    "glute bridge": (
        "puente|puentes, puente de gluteos, puente de gluteo, puentes de gluteos, puente gluteo, estiramiento de "
        "gluteo, estiramiento de gluteos, ejercicio de gluteos"
    ),
    "back stretch": (
        "torsiones, estiramiento de espalda, estiramientos de espalda, ejercicios de espalda, ejercicio de espalda, "
        "torsion de columna, estiramiento de la espalda, estiramiento lumbar, giros de espalda, dia de espalda"
    ),
    "shoulder stretch": (
        "estiramiento de hombro, estiramiento de hombros, estiramientos de hombro, ejercicios de hombro, ejercicio de "
        "hombro, circulos de hombros, rotaciones de hombros, estiramiento del hombro"
    ),
    "squats": "sentadillas|sentadilla|cuclillas",
    "lunges": "zancadas|estocadas|desplantes|zancada|estocada|desplante",
    "planks": "planchas|plancha",
    "cat cow": "gato vaca, gato camello, gato y vaca",
    "downward dog": "perro boca abajo, perro mirando abajo, perro hacia abajo",
    "child pose": "postura del nino, posicion del nino, postura del bebe, pose del nino",
    "bird dog": "superman, perro pajaro",
    "dead bug": "bicho muerto, dead bug",
    "cobra": "cobra",
    "the seated ones": "ejercicios sentado, los de sentado, los sentados, los de sentada",
    "the standing ones": "ejercicios de pie, los de pie, los de parado",
    "the floor ones": "los de suelo, los del suelo, los de piso, los del piso",
    "warm up": "calentamiento|calentar, entrada en calor",
    "hot weather": (
        "agua caliente, ducha caliente, bano caliente, clima caliente, cafe caliente, semaforo en rojo, vino rojo, "
        "luz roja, banda roja, liga roja, panos calientes, comida caliente, almohadilla caliente, compresa caliente, "
        "banda de color rojo, la banda roja, el semaforo rojo, numeros rojos"
    ),
    "killing me lol": (
        "matador de risa, muerto de risa, muerta de risa, muero de risa, moria de risa, muerto de hambre, muerta de "
        "hambre, muero de hambre, muero de la risa, casi muero de risa, casi muero del susto, duele el alma, duele en "
        "el alma, duele reconocerlo, duele admitirlo, dolor de bolsillo, duele el bolsillo, duele la cartera, dolor "
        "de cartera, duele el orgullo, dolio el orgullo, duele el ego, dolor de ego, que dolor de pelicula, dolor de "
        "muela el trafico, dolor de cabeza el trafico, dolor de cabeza los tramites, un dolor de cabeza de dia, duele "
        "madrugar, dolio madrugar, duele levantarse, dolio mas el precio, dolio la derrota, duele perder, dolio el "
        "precio"
    ),
    "burning calories": (
        "quemar calorias, quemando calorias, quema calorias, queme calorias, quemar grasa, quemando grasa, quemo "
        "calorias, quemadita de sol, quemado por el sol, quemada por el sol, se quemo la comida, queme la comida, "
        "queme la cena, se quemo la cena, se quemo el arroz, queme el arroz, queme las tostadas, se quemo la tostada, "
        "se quemo la leche, quemada del trabajo, quemado del trabajo, quemada con el trabajo, quemado con el trabajo, "
        "estoy quemada, estoy quemado, se quemo el pollo, se quemo la lenteja, estaba que ardia twitter, que arde la "
        "casa, la casa arde, arde la oficina"
    ),
    "fainted from laughing": (
        "desmayo de risa, desmaye de risa, desmayo de hambre no era, desmayo del precio, desmayo cuando vi el precio, "
        "desmayo al ver el precio, desmayo cuando vi la factura, desmayo al ver la factura, desmaye cuando vi el "
        "precio, desmaye al ver el precio, desmaye al ver la factura, desmaye en la cama, desmaye en el sofa, "
        "desmayado en la cama, desmaye en cama, casi desmayo cuando vi, casi desmayo al ver, casi desmayo de la risa, "
        "casi desmayo de risa, casi desmaye al ver, casi da un infarto cuando, casi da un infarto al, casi da un "
        "infarto, casi da algo, un infarto al ver, casi da un infarto al ver, de infarto, partido de infarto, final "
        "de infarto, de ataque al corazon, da un patatus cuando, casi da un patatus, casi da un soponcio, no siento "
        "las piernas jaja, no siento las piernas de reir, caer rendida en la cama, cai rendida, cai rendido, cai "
        "muerta en la cama, cai muerto en la cama, cai redonda en la cama, cai redondo en la cama"
    ),
    "took my breath away": (
        "respiracion, costo respirar por la nariz, cuesta respirar por la nariz, respirar por la nariz, sin aliento "
        "el paisaje, quito el aliento, quita el aliento, contener la respiracion, aguantar la respiracion, "
        "respiracion profunda, respiraciones profundas, ejercicios de respiracion, ejercicio de respiracion, respirar "
        "hondo, respire hondo, respira hondo, respirar profundo, respiro profundo, acordarme de respirar, olvide "
        "respirar, olvido respirar, sin respirar del susto, las respiraciones, tecnica de respiracion, no deja "
        "respirar mi jefe, el trabajo no deja respirar, los ninos no dejan respirar, no dejan respirar, trabajo no "
        "deja ni respirar, no tuve ni tiempo de respirar, ni tiempo de respirar, ni tiempo para respirar, no tengo ni "
        "tiempo de respirar, ni para respirar, respirando hondo, ahogado en deudas, ahogada en deudas, ahogo en un "
        "vaso de agua, asfixian las deudas"
    ),
    "under pressure": (
        "pesas, bajo presion, olla a presion, olla express, presion arterial, presion alta, presion baja, presion de "
        "los plazos, sin presion, presion social, presiones del trabajo, presion de las ruedas, presion de las "
        "llantas, mucho trabajo y presion, dia muy pesado, semana pesada, semana muy pesada, clase pesada, jefe "
        "pesado, mi jefe es un pesado, mochila pesada, bolsas pesadas, bolsa pesada, compra pesada, cajas pesadas, "
        "caja pesada, comida pesada, cena pesada, sueno pesado, peso corporal, peso muerto, levantar pesas, levantar "
        "peso"
    ),
    "heart set on": (
        "corazoncitos|corazones, de todo corazon, de corazon, con el corazon, con todo el corazon, corazon roto, "
        "corazon contento, con todo mi corazon, rompio el corazon, se rompio el corazon, partio el corazon, corazon "
        "partido, gran corazon, corazon de la ciudad, buen corazon, frecuencia cardiaca, parte el corazon, latido de "
        "la musica, se rompe el corazon, duele el corazon de verlo, duele el corazon de pena, duele el corazon por "
        "ella, vuelco de alegria, el corazon dio un vuelco de alegria, corazon de melon, a corazon abierto, se parte "
        "el corazon, se partio el corazon, se encogio el corazon, llega al corazon, tengo el corazon dividido, "
        "corazon lleno de, amor de mi corazon"
    ),
    "asleep early": (
        "ninos dormidos, nino dormido, bebe dormido, bebe dormida, nina dormida, nene dormido, dormi al bebe, dormir "
        "al bebe, dormi a los ninos, medio dormido, medio dormida, aun dormido, aun dormida, todavia dormido, todavia "
        "dormida, estaba dormido, estaba dormida, estoy dormido, estoy dormida, estoy medio dormida, estoy medio "
        "dormido, estoy durmiendo, adormilado aun, se durmio el nino, se durmio la nina, se durmio el bebe, se durmio "
        "la bebe, se durmio mi hijo, se durmio mi hija, se durmieron los ninos, se durmieron los nenes, se durmieron "
        "los peques, los ninos dormidos, la nina dormida, el nino dormido, el bebe dormido, se durmio el perro, se "
        "durmio el gato, el gato dormido, gata dormida, duerme el bebe, el bebe duerme, mientras duerme el bebe, "
        "mientras duerme la nina, mientras duerme el nino, cuando duerme el bebe, mientras duermen, mi marido duerme, "
        "mi hijo duerme, mi hija duerme, el nino duerme, la nina duerme, el perro duerme, los ninos duermen, todos "
        "dormidos, todos duermen, ya dormido, casi dormido, casi dormida, dormido en el sofa, dormida en el sofa, "
        "dormido en la cama, dormida en la cama, dormido viendo la tele, dormida viendo la tele, se durmio temprano, "
        "se durmio tarde, se durmio rapido, se quedo dormido el nino, se quedo dormida la nina, se quedo dormido el "
        "bebe, se quedo dormido mi hijo, se quedo dormida mi hija, durmio bien, durmio mal, durmio fatal"
    ),
    "numb with boredom": (
        "hormiguero, hormigueo en el estomago, mariposas en el estomago, hormigueo de emocion, cosquilleo de emocion, "
        "cosquilleo en el estomago, hormigueo de ilusion, cosquillas en el estomago, cosquillas en la barriga, "
        "hormigas en la cocina, hormigas en casa, hormigas en el jardin, cosquillas a mi hijo, cosquillas a mi hija, "
        "cosquillas al nino, cosquillas a la nina, hizo cosquillas, cosquillas mi hija, cosquillas mi hijo, "
        "cosquillas del gato, cosquillas en la panza, cosquillas en la tripa, mente entumecida, cerebro dormido, "
        "cerebro entumecido, cabeza dormida, dormido de aburrimiento, dormida de aburrimiento, nervios por el examen, "
        "nervios por la entrevista, nervios de la boda, nervios por la boda, nervios por el viaje, los nervios a flor "
        "de piel, de los nervios, mal de los nervios, pone de los nervios, puso de los nervios, nervios del examen, "
        "nervios de la entrevista, de nervios, con nervios, estoy de los nervios, que nervios, ataque de nervios, "
        "manojo de nervios, ayer nervios, muchos nervios, entumida de frio, entumecida de frio, entumecido de frio, "
        "entumido de frio, manos congeladas del frio, invasion de hormigas, plaga de hormigas, las hormigas"
    ),
    "the band snapped": (
        "truenos|palomitas, algo se rompio en la cocina, se rompio algo en la cocina, algo se rompio en casa, se "
        "rompio la cinta, se rompio la liga, se rompio la esterilla, se rompio la colchoneta, se revento la liga, se "
        "revento la banda, se rompio la silla, trono la banda, trono la liga, se rompio la correa, se rompio el "
        "elastico, se corto la banda, se corto la cinta, rompio la liga, rompio la silla, rompio la esterilla, se "
        "rompio la lavadora, se rompio la lampara, se rompio la nevera, se rompio el vaso, rompio un vaso, se rompio "
        "un vaso, se rompio la calefaccion, se rompio el calentador, se rompio la tuberia, se rompio el ascensor, se "
        "rompio la cafetera, se rompio el termo, rompio la lavadora, rompio el reloj, se rompio el reloj, se revento "
        "un tubo, se revento una tuberia, revento una tuberia, se revento la tuberia, se revento la llanta, revento "
        "la llanta, revento una rueda, se revento una rueda, se revento un globo, exploto un globo, revento un globo, "
        "revento el globo, trono un globo, tronaron cohetes, un trueno, trueno fuerte, los truenos, tormenta de "
        "truenos, truenos y relampagos, rayos y truenos, estallo el globo, estallo la tuberia, crujio la silla, "
        "crujio la madera, cruje el suelo, crujio el suelo, crujio la cama, crujio el piso, madera que cruje, trono "
        "la puerta, se solto la banda, se solto la liga, se salio el gato, se salio el perro, se salio de la reunion, "
        "se salio de casa, rompi un vaso, rompi un plato, rompi el movil, rompi el celular, se rompio la pantalla, "
        "pantalla rota, rompi con, rompio conmigo, rompi la rutina, rompi la racha, rompi mi racha, rompi record, "
        "rompi mi record, rompi la dieta, rompio el silencio, romper la rutina, romper el hielo, rotura de tuberia, "
        "pum listo, pum hecho, pum y listo, musica pop, pop corn, reventon de tuberia, reventon de llanta, fiesta "
        "reventon, el reventon, salio el sol, se salio el agua, salio de fiesta, salio de casa, salio la luna, "
        "descarga de internet, descarga del video, descarga la app, descarga de la app, descargas de la app, descarga "
        "de mercancia, carga y descarga, corriente de aire, corrientes de aire, cuenta corriente, sigo la corriente, "
        "contra corriente, al corriente, pagar la electricidad, recibo de la electricidad, guitarra electrica, bici "
        "electrica, bicicleta electrica, coche electrico, patinete electrico, carro electrico, calentador electrico, "
        "manta electrica, cepillo electrico, corto electrico, auto electrico, ambiente electrico, ambiente "
        "electrizante"
    ),
    "crack": (
        "cruje|crujido|crujidos|crujen|crujieron|crujia|truenan|trona|cruj|chirrido|chirria|traquean|traquea|tronaron|"
        "clics|clic, trac trac, sonaron los huesos, truenan los huesos, truenan las rodillas, crujen las rodillas, "
        "crujieron las rodillas, cruje la rodilla, crujen los huesos, cruje el cuello, crujio rico, trono rico, "
        "crujio sin dolor, truena rico, tronaron los dedos, trone los dedos, tronar los dedos, trone la espalda rico, "
        "tronarme la espalda, trone la espalda, trono la espalda rico, trono rico la espalda, se acomodo la espalda"
    ),
    "swollen ego": (
        "hinchas|inflacion, hinchado de orgullo, hinchada de orgullo, ego hinchado, ego inflado, precios inflados, "
        "globos inflados, infle los globos, inflar globos, inflar el balon, inflado de comer, inflada de comer, "
        "hinchada de comer, hinchado de comer, rio crecido, hinchas las narices, hincha las narices, la hinchada, "
        "hincha del, hincha de, soy hincha, los hinchas, precios hinchados, infle la pelota, inflar la pelota, "
        "inflado el ego, masa hinchada, hincha los huevos, hinchan las bolas, tiene hinchada las pelotas, ego "
        "magullado, orgullo herido, orgullo magullado, ego golpeado, moretones en las bananas, platano morado, "
        "manzanas magulladas, vestido morado, banda morada, la banda morada, liga morada, camiseta morada, color "
        "morado, de color morado, esterilla morada, papas moradas, cebolla morada, uvas moradas, col morada, pase "
        "moradas, las pase moradas, derrame de cafe, derrame de agua, derrame el cafe, derrame el agua, derrame la "
        "leche, derrame el, el cardenal de la iglesia, cardenal de roma, cardenal del vaticano, bola de pan, bola de "
        "helado, bolas de masaje, bola de masaje, pelota de masaje, una bola de gente, bulto de ropa, bultos de la "
        "compra, bulto del super, globos de cumpleanos, como una pelota de feliz"
    ),
    "gave way to": (
        "cedi el paso, cedi el asiento, cedio el paso, ceda el paso, ceder el paso, cedi a la tentacion, cedi mi "
        "turno, cedi al cansancio, cedi al antojo, cedio el asiento, ceder el turno, cedi mi asiento, fallo el "
        "ascensor, fallo la bateria, fallo la app, fallo la aplicacion, fallo el video, fallo la conexion, fallo el "
        "telefono, fallo el coche, fallo la silla, fallo el autobus, fallo el metro, fallo la luz, fallo la alarma, "
        "fallo el despertador, fallo el movil, fallo el celular, falla la conexion, falla el internet, falla "
        "internet, falla la app, se dobla la esterilla, doble la ropa, doblar la ropa, doblar turno, doble clase, "
        "doble espresso, doble cafe, doble turno en, doble sesion, hice doble, hago doble, se bloqueo el movil, se "
        "bloqueo el celular, se bloqueo la app, se bloqueo la pantalla, se bloqueo el telefono, se trabo la puerta, "
        "se trabo el video, se traba el video, se trabo la app, se trabo el celular, se traba el celular, se trabo la "
        "llave, conexion inestable, internet inestable, clima inestable, tiempo inestable, senal inestable, wifi "
        "inestable, el gobierno cedio, cedio la tormenta, silla inestable, mesa inestable, se vence el plazo, se "
        "vencio el plazo, se vence el pago, se vencio la leche, se vencio el pago, vencio el plazo"
    ),
    "weak coffee": (
        "debil con el chocolate, mi debilidad es, debilidad por, punto debil, cafe flojo, debilidad por el, senal "
        "debil, wifi debil, excusa debil, conexion debil, fuerza de voluntad, menos fuerza de voluntad, poca fuerza "
        "de voluntad, falta de fuerza de voluntad, falto fuerza de voluntad, no tengo fuerza de voluntad, perdi la "
        "fuerza de voluntad, sin fuerza de voluntad, a la fuerza, debilidad son, mis debilidades, cafe debil, el "
        "punto debil, puntos debiles, fuerza mayor, por causas de fuerza mayor, causa de fuerza mayor, por fuerza, a "
        "fuerzas, mucha fuerza, con fuerza, con mucha fuerza, mas fuerza, fuerzas armadas, debil de caracter, sin "
        "fuerzas para nada, sin fuerzas despues del trabajo, sin fuerzas para entrenar, sin fuerzas para levantarme "
        "de la cama, gano fuerza, ganando fuerza, tengo mas fuerza, entreno de fuerza, entrenamiento de fuerza, "
        "ejercicios de fuerza, rutina de fuerza"
    ),
    "slip of the tongue": (
        "trabalenguas|caradura, lengua materna, segunda lengua, no se hablar ingles, no puedo hablar ahora, no puedo "
        "hablar por telefono, no hablo bien espanol, no hablo espanol, hablo mal espanol, hablo mal el espanol, no "
        "hablo mucho espanol, no puedo hablar estoy en el trabajo, no puedo hablar en este momento, no puedo hablar "
        "que estoy, no puedo hablar ahorita, no hablo bien el espanol, perdon por mi espanol, mi espanol es malo, no "
        "escribo bien espanol, no puedo hablar mucho, hablo poco espanol, en la punta de la lengua, no hay palabras, "
        "sin palabras, no tengo palabras, quede sin palabras, hablar por telefono, hablando por telefono, cara a "
        "cara, dar la cara, plantar cara, mala cara, buena cara, cara dura, sale cara, sale caro, muy cara, era cara, "
        "es muy cara, la vida esta cara, se cae la cara de verguenza, cae la cara de verguenza, cara de sueno, cara "
        "de pocos amigos, cara de felicidad, cara feliz, con cara de, la boca agua, boca abajo, boca arriba, acostada "
        "boca arriba, acostado boca arriba, tumbado boca arriba, tumbada boca arriba, estiramiento boca abajo, foto "
        "torcida, foto borrosa, fotos borrosas, imagen borrosa, video borroso, el video se ve borroso, pantalla "
        "borrosa, se ve borroso, se ve borroso el video, se veia borroso, se ve doble el video, cuadro torcido, "
        "esterilla torcida, banda torcida, hojas caidas, arbol caido, internet caido, sistema caido, app caida, caida "
        "de internet, caida de la app, caida del sistema, caida de la red, no veo el video, no veo la sesion, no veo "
        "el mensaje, no veo los ejercicios, no veo la hora, no veo la hora de, no puedo ver el video, no pude ver el "
        "video, no puedo ver la sesion, no pude ver la sesion, no puedo ver los ejercicios, no veo el enlace, no veo "
        "el boton, no veo resultados, no veo avances, no veo progreso, no veo cambios, no veo diferencia, no veo "
        "mejoria, no veo porque, no veo problema, no veo la rutina, no pude ver los mensajes, no puedo ver el "
        "mensaje, no vi el mensaje, no vi los mensajes, no vi el video, no vi la sesion, no vi la notificacion, no vi "
        "la hora, no vi el recordatorio, perdi de vista, a primera vista, punto de vista, a simple vista, vista al "
        "mar, vista panoramica, con vistas, hasta la vista, bonita vista, la vista es, a ciegas, cita a ciegas, clase "
        "doble, doble ronda, ciego de amor, amor ciego"
    ),
    "cabin fever": (
        "fiebre del oro, fiebre del futbol, fiebre del mundial, fiebre mundialista, fiebre de compras, fiebre de "
        "sabado, temperatura ambiente, temperatura de la sala, temperatura del agua, temperatura en la calle, "
        "temperatura del cuarto, fiebre del heno, bajo la temperatura en, bajo la temperatura afuera, buena "
        "temperatura, la temperatura afuera, subio la temperatura en la ciudad, temperatura de 40 grados afuera, "
        "temperaturas altas, altas temperaturas, bajas temperaturas, ola de temperatura, la temperatura esta "
        "agradable, programa para perdida de peso, programa de perdida de peso, clase de perdida de peso, dieta para "
        "bajar de peso, quiero bajar de peso, bajar de peso, perder peso, quiero perder peso, a dieta y bajando de "
        "peso, estoy a dieta, con la dieta, gracias a la dieta"
    ),
    "dizzy with joy": (
        "mareado de tanto papeleo, mareada de tanto trabajo, mareado de tanto trabajo, marea alta, marea baja, marear "
        "la perdiz, no marees, mareando la perdiz, mareo de numeros, mareada con tanto numero, mareada con tantos "
        "numeros, dando vueltas por la ciudad, dando vueltas en la cama, di vueltas en la cama, dando vueltas al "
        "parque, dio vueltas al parque, vueltas al parque, dar una vuelta, di una vuelta, dando vueltas a la idea, "
        "doy vueltas a la cabeza, media vuelta, dando vueltas al asunto, dando vueltas al tema, vueltas y vueltas en "
        "la cama, una vuelta en bici, una vuelta por el parque, a la vuelta, de vuelta, ya de vuelta, estoy de "
        "vuelta, de vuelta en casa, de vuelta a la rutina, vuelta al trabajo, vuelta al cole, ida y vuelta, marea "
        "tanto trabajo, mareada de tantas reuniones, mareado de tantas reuniones"
    ),
    "went to the toilet": (
        "orinar, fui al bano, ir al bano, voy al bano, pausa para ir al bano, al bano, hacer pis, hacer pipi, ganas "
        "de hacer pis, fui a orinar, fui a hacer pis, fui a mear, el bano, papel higienico, meaba de risa, mee de "
        "risa, meo de risa, orine de la risa, orine de risa, mee de la risa, ganas de orinar, el perro hizo pis, el "
        "gato hizo pis, se hizo pis el perro, hizo pis el perro, hizo pis el gato, hizo pis en la alfombra, se hizo "
        "pis mi hijo, se hizo pis el nino, se hizo pis la nina, se hizo pipi mi hijo, se hizo pipi el nino, se hizo "
        "pipi la nina, partes de la rutina, partes del programa, partes de la sesion, en partes, por partes la, todas "
        "partes, por todas partes, en todas partes, de todas partes, otras partes, ambas partes, hasta el culo de "
        "trabajo, de culo, hasta el culo, vaya culo, como el culo, donde la espalda pierde, huevos con, desayune "
        "huevos, huevos revueltos, huevos fritos, tengo huevos"
    ),
    "sharp at": (
        "picadura|pinche|pinches|descargue, en punto agudo, mente aguda, vista aguda, oido agudo, agudo sentido, "
        "afilado como siempre, cuchillo de cocina, con el cuchillo, agudo comentario, picada de mosquito, pico un "
        "mosquito, pincharon la rueda, puntada de costura, puntadas de costura, pinche trafico, pinchar un globo, "
        "pinchazo de la vacuna, pinchazo de rueda, pinchazo en la rueda, pincho la rueda del, rueda pinchada, pinche "
        "dia, pinche jefe, un pinchazo en el coche, pinchazo en la bici, pinchazo de la bici, pinchazo del coche, "
        "pincho de tortilla, pincho moruno, picada con amigos, una picada, agujas de tejer, agujas de coser, "
        "alfileres de costura, tejiendo con agujas, agujas del reloj, agujas y alfileres para coser, mesa coja, silla "
        "esta coja, mesa esta coja, la mesa coja, la silla coja, cuchillo nuevo, corte con un cuchillo, corte con el "
        "cuchillo, dolor de muelas mi jefe"
    ),
    "night shift": (
        "nochevieja, turno nocturno, trabajo nocturno, vida nocturna, noche de fiesta, noche de chicas, noche de "
        "peliculas, noche de cine, noche vieja, fin de ano, la noche anterior, noche de juegos, cena de noche, una "
        "noche de copas, hoy noche, feliz noche, linda noche, bonita noche, buena noche, lunes por la noche, martes "
        "por la noche, viernes por la noche, sabado por la noche, domingo por la noche"
    ),
    "smile": "sonrisa|sonreir",
    "not bad": "nada mal, no esta mal, no estuvo mal, no mal",
    "no problem": (
        "no hay problema, ningun problema, sin ningun problema, no hubo problema, no pasa nada, no tuve problemas, no "
        "tuve problema, no hay problemas, no tengo problema, no hubo problemas, sin ninguna dificultad, sin "
        "dificultad, sin mayor problema, sin mayores problemas"
    ),
    "no news": (
        "nada que reportar, nada que contar, nada nuevo, nada raro, sin novedad hoy, nada especial, nada fuera de lo "
        "normal, nada de especial, nada que decir, nada que destacar, nada extrano, sin nada raro, nada mas que "
        "contar, nada mas que decir"
    ),
    "no problems with": (
        "sin problemas de, sin problemas con, ningun problema de, ningun problema con, ni problemas de, sin problema "
        "de, sin sintomas de, sin signos de, ningun sintoma de, ningun signo de, sin senales de, sin sensacion de, "
        "ninguna sensacion de, sin rastro de, ni sensacion de"
    ),
    "no problem at all": "sin sintomas, ningun sintoma, sin sintomas raros",
    "the chest opener": "el de pecho, los de pecho, la de pecho, el del pecho",
    "the knees to chest": "la rodilla al pecho, las rodillas al pecho, las piernas al pecho",
    "the neck rolls": "los de cuello, el de cuello, el del cuello, los del cuello, la del cuello",
    "the arm circles": "los de brazos, los de brazo, los de los brazos, el de brazos, el de brazo, la de brazos",
    "the leg raises": (
        "los de piernas, los de pierna, los de las piernas, los ejercicios de pierna, el de pierna, el de piernas, la "
        "de piernas"
    ),
    "the calf raises": (
        "el de gemelos, los de gemelos, el de pantorrilla, los de pantorrilla, la de gemelos, el de gemelo, el de la "
        "pantorrilla, los de pantorrillas"
    ),
    "the hip stretch": "los de cadera, el de cadera, la de cadera, el de psoas, el de la cadera, los de la cadera",
    "the hamstring stretch": "el de isquios, los de isquios, el de isquiotibiales, los de isquiotibiales",
    "the groin stretch": "la mariposa, el de aductores",
    "the thigh stretch": "el de cuadriceps, los de cuadriceps, la de cuadriceps",
    "the glute bridge": "el de gluteo, los de gluteos, el puente, los puentes, el de gluteos",
    "the back stretch": "el de espalda, los de espalda, los de la espalda, la de espalda",
    "the shoulder stretch": (
        "el de hombro, el de hombros, los de hombro, los de hombros, la de hombros, los de los hombros"
    ),
    "the cobra": "la cobra",
}
