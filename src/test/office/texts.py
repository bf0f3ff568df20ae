"""The workbooks' words: English, German, Spanish."""

LANGUAGES = ("en", "de", "es")
COUNTRIES = {"en": "US", "de": "DE", "es": "ES"}

# key: (English, German, Spanish)
TEXTS = {
    # sheets
    "release": ("Release", "Loslassen", "Suelta"),
    "path": ("Path", "Bahn", "Trayectoria"),
    "tally": ("Tally", "Strichliste", "Recuento"),
    "help": ("Help", "Hilfe", "Ayuda"),
    "answers": ("Answers", "Antworten", "Respuestas"),
    "link": ("CSV link", "CSV-Verknüpfung", "Vínculo CSV"),
    # document
    "title": (
        "Lodeswing: a release, its path and a class's tally",
        "Lodeswing: ein Start, seine Bahn und die Strichliste der Klasse",
        "Lodeswing: una suelta, su trayectoria y el recuento de la clase"),
    "subject": (
        "A workbook that asks the service; it computes nothing of the swing itself",
        "Eine Mappe, die den Dienst fragt; von der Schwingung rechnet sie selbst nichts",
        "Un libro que pregunta al servicio; no calcula nada de la oscilación"),
    # release
    "releaseTitle": ("One release", "Ein Start", "Una suelta"),
    "releaseLead": (
        "Change the cells in thick frames. The service answers below.",
        "Ändern Sie die dick umrandeten Zellen. Der Dienst antwortet darunter.",
        "Cambie las celdas de borde grueso. El servicio responde debajo."),
    "youSet": ("You set", "Sie geben vor", "Usted fija"),
    "itSays": ("The service answers", "Der Dienst antwortet", "El servicio responde"),
    "address": ("Address of the service", "Adresse des Dienstes", "Dirección del servicio"),
    "layout": ("Layout: a sample's name or an id", "Aufbau: Beispielname oder Kennung",
               "Montaje: un ejemplo, por su nombre, o un id"),
    "x": ("Release x", "Start x", "Suelta x"),
    "y": ("Release y", "Start y", "Suelta y"),
    "spread": ("Spread of the hand", "Streuung der Hand", "Dispersión de la mano"),
    "duration": ("Path shown for", "Bahn gezeigt für", "Trayectoria durante"),
    "wait": ("Wait for an answer up to", "Höchstens warten auf Antwort", "Esperar respuesta hasta"),
    "again": ("Ask again: raise by one", "Neu fragen: um eins erhöhen",
              "Preguntar de nuevo: sume uno"),
    "language": ("Language of the cautions", "Sprache der Warnungen", "Idioma de los avisos"),
    "layoutId": ("Layout's id", "Kennung des Aufbaus", "Identificador del montaje"),
    "outcome": ("The bob ends at", "Das Pendel endet bei", "El péndulo acaba en"),
    "sure": ("Is that sure?", "Ist das sicher?", "¿Es seguro?"),
    "yes": ("yes", "ja", "sí"),
    "no": ("no: chance", "nein: Zufall", "no: azar"),
    "sealed": ("Sealed at", "Besiegelt nach", "Decidido a los"),
    "settled": ("At rest at", "In Ruhe nach", "En reposo a los"),
    "trusted": ("Computed path can be trusted until", "Berechnete Bahn ist verlässlich bis",
                "Trayectoria calculada fiable hasta"),
    "foretold": ("A hand can foretell it until", "Eine Hand kann sie vorhersagen bis",
                 "Una mano puede predecirla hasta"),
    "oddsTitle": ("Odds for this hand", "Chancen für diese Hand", "Probabilidades de esta mano"),
    "end": ("End", "Ende", "Final"),
    "chance": ("Chance", "Chance", "Probabilidad"),
    "low": ("from", "von", "desde"),
    "high": ("to", "bis", "hasta"),
    "tries": ("Tries", "Versuche", "Intentos"),
    "interval": ("from and to: 95 % interval", "von und bis: 95-%-Intervall",
                 "desde y hasta: intervalo del 95 %"),
    "safetyTitle": ("Cautions for this rig", "Warnungen zu diesem Aufbau",
                    "Avisos para este montaje"),
    "severity": ("Gravest caution", "Schwerste Warnung", "Aviso más grave"),
    "severities": (("danger", "warning", "caution", "note"),
                   ("Gefahr", "Warnung", "Vorsicht", "Hinweis"),
                   ("peligro", "advertencia", "precaución", "nota")),
    "local": (
        "The notes remind. Your local rules, your school's own assessment and its trained staff"
        " decide.",
        "Die Hinweise erinnern. Es entscheiden die Vorschriften vor Ort, die Gefährdungsbeurteilung Ihrer"
        " Schule und ihr fachkundiges Personal.",
        "Las notas recuerdan. Deciden las normas locales, la evaluación de su centro y su personal"
        " formado."),
    # path
    "pathTitle": ("The path over the plate", "Die Bahn über der Platte",
                  "La trayectoria sobre la placa"),
    "pathAlt": (
        "The path of the bob seen from above, x to the right and y upwards, in millimetres. Solid"
        " as far as the computed path can be trusted, then dotted and grey. Squares: rest points."
        " Triangle: the release.",
        "Die Bahn des Pendelkörpers von oben, x nach rechts, y nach oben, in Millimetern."
        " Durchgezogen, soweit die berechnete Bahn verlässlich ist, dann grau gepunktet. Quadrate:"
        " Ruhelagen. Dreieck: Start.",
        "La trayectoria vista desde arriba, x a la derecha, y hacia arriba, en milímetros. Continua"
        " mientras el cálculo es fiable, después gris y punteada. Cuadrados: puntos de reposo."
        " Triángulo: la suelta."),
    "pathLead": (
        "Solid as far as the computed path can be trusted; beyond that it is dotted and only one of"
        " many that are possible.",
        "Durchgezogen, soweit die berechnete Bahn verlässlich ist; danach gepunktet und nur eine von"
        " vielen möglichen.",
        "Continua mientras el cálculo es fiable; después punteada, y solo una de muchas posibles."),
    "trustedPart": ("trusted", "verlässlich", "fiable"),
    "beyond": ("beyond trust", "nicht verlässlich", "no fiable"),
    "restPoints": ("rest points", "Ruhelagen", "puntos de reposo"),
    "releasePoint": ("release", "Start", "suelta"),
    "frame": ("frame", "Rahmen", "marco"),
    "time": ("t (s)", "t (s)", "t (s)"),
    "xmm": ("x (mm)", "x (mm)", "x (mm)"),
    "ymm": ("y (mm)", "y (mm)", "y (mm)"),
    "state": ("State", "Zustand", "Estado"),
    "ready": ("ready", "bereit", "listo"),
    # tally
    "tallyTitle": ("The class's tally against the odds", "Strichliste der Klasse und Chancen",
                   "El recuento de la clase y las probabilidades"),
    "tallyLead": (
        "Write each label as the service writes it, and how often the bob came there. The counts"
        " that stand here first are an example.",
        "Schreiben Sie jede Aufschrift wie der Dienst, und wie oft das Pendel dort ankam. Die"
        " Zahlen, die anfangs hier stehen, sind ein Beispiel.",
        "Escriba cada rótulo como lo escribe el servicio, y cuántas veces llegó allí el péndulo."
        " Las cifras que hay al principio son un ejemplo."),
    "label": ("Label", "Aufschrift", "Rótulo"),
    "counted": ("Counted", "Gezählt", "Contado"),
    "expected": ("Expected", "Erwartet", "Esperado"),
    "all": ("All", "Alle", "Total"),
    "chiSquare": ("Chi-square", "Chi-Quadrat", "Ji cuadrado"),
    "freedom": ("Degrees of freedom", "Freiheitsgrade", "Grados de libertad"),
    "pValue": ("p-value", "p-Wert", "Valor p"),
    "tallyAlt": (
        "Bars for each label: how often the class counted it, dark, and how often the odds expect"
        " it, light.",
        "Balken für jede Aufschrift: wie oft die Klasse sie zählte, dunkel, und wie oft die"
        " Chancen sie erwarten lassen, hell.",
        "Barras para cada rótulo: cuántas veces lo contó la clase, oscuras, y cuántas lo esperan"
        " las probabilidades, claras."),
    "inWords": ("In words, from the service", "In Worten, vom Dienst (englisch)",
                "En palabras, del servicio (en inglés)"),
    "noCounts": ("no counts yet", "noch nichts gezählt", "aún sin recuento"),
    # answers
    "answersTitle": ("What the service was asked, and what it answered",
                     "Was der Dienst gefragt wurde, und was er antwortete",
                     "Qué se preguntó al servicio y qué respondió"),
    "answersLead": (
        "Nothing is to be changed here; the other sheets read it. An address can be tried in a"
        " browser.",
        "Hier ist nichts zu ändern; die anderen Blätter lesen es. Eine Adresse lässt sich im"
        " Browser ausprobieren.",
        "Aquí no hay nada que cambiar; las otras hojas lo leen. Cada dirección se puede probar en"
        " un navegador."),
    "lengths": ("Characters", "Zeichen", "Caracteres"),
    "asked": ("Asked", "Gefragt", "Se pregunta"),
    "answer": ("Answer", "Antwort", "Respuesta"),
    "lines": ("Lines of the tables", "Zeilen der Tabellen", "Líneas de las tablas"),
    # link
    "linkTitle": (
        "Below: one fixed release as a linked CSV table (Edit, Links to External Files: change its"
        " address or update it)",
        "Darunter: ein fester Start als verknüpfte CSV-Tabelle (Bearbeiten, Verknüpfungen mit"
        " externen Dateien: Adresse ändern oder aktualisieren)",
        "Debajo: una suelta fija como tabla CSV vinculada (Editar, Vínculos a archivos externos:"
        " cambiar la dirección o actualizar)"),
    "inputTitle": ("Number", "Zahl", "Número"),
    "inputError": ("Please give a number in the range that the service takes.",
                   "Bitte eine Zahl geben, die der Dienst annimmt.",
                   "Escriba un número que el servicio admita."),
    "series": ("Data", "Daten", "Datos"),
}

HELP = {
    "en": (
        ("#", "How this workbook is used"),
        ("", "Start the service, or have its address. Write it on the sheet Release, without a"
             " slash at its end. Allow this document to update links to external data when the"
             " program asks; otherwise cells show an error of the program, such as Err:540."),
        ("", "On Release, change the layout, the place or the hand's spread. Every cell that asks"
             " is asked anew. Path shows the path of the same release, Tally holds the class's"
             " counts against its odds, Answers has each address and each answer as it came."),
        ("", "Numbers may be typed with a decimal comma or a decimal point, as the program is set;"
             " the workbook sends points and reads points. The table of the path is read by"
             " WEBSERVICE and split by formulas, so that it follows the release in both files;"
             " where a sheet CSV link stands, it shows the same by a link with a fixed address."),
        ("#", "What the cells may say"),
        ("", "A line that begins with ERROR is the service's: it says what is wrong and what would"
             " be right. PENDING and a number: it still computes; raise Ask again by one after as"
             " many seconds. #VALUE! or another error in the program's own words: the service was"
             " not reached; check the address, then raise Ask again."),
        ("", "The same question always gets the same answer, so nothing is asked twice by itself."
             " Raise Ask again to force it."),
        ("#", "What the words mean"),
        ("", "Ends at: the label where the bob comes to rest. Sure: the computed path leads there"
             " whatever is lost in the last digits; otherwise chance decides and the odds say more"
             " than the one outcome. Sealed at: from then on no other rest point can be reached."),
        ("", "Trusted until: up to then the computed path is right to 1 mm; a word in its place"
             " says that this was not reached while the path was followed. A hand can foretell it"
             " until: as far as a hand that places the bob to within 1 mm can know the path."),
        ("", "Spread: standard deviation of the hand along either axis. Chance: share of tries that"
             " end there, with a 95 % interval. In a textbook layout lengths and times are in its"
             " own units, not in mm and s."),
        ("", "Chi-square compares counts with what the odds expect. The p-value is how often chance"
             " alone makes a difference as great; below 0.05 the counts do not fit. Where an"
             " expected count is below 5, count more tries."),
        ("#", "Other spreadsheets"),
        ("", "Most have one of these: a function that fetches the text of an address into a cell"
             " (then both files may work as they are); a function that imports a CSV address as a"
             " table from the cell downwards; or a menu entry that imports data from the web or"
             " from text. The addresses on the sheet Answers can be copied for any of them."),
        ("", "Programs in the browser fetch from their maker's computers: they need an address that"
             " the internet can reach, not localhost. Some send each request once an hour or when"
             " the document opens; the number at the end of the address (cb) forces another. Some"
             " cut addresses at 2,048 characters and answers at 32,767: the longest answer here is"
             " the path, some 15,000. Some split a single value at commas: ask with format=text,"
             " whose lines have none. Where decimal commas are usual, decimal=comma makes the"
             " service write them and part its tables by semicolons."),
        ("#", "Safety"),
        ("", "Strong magnets pinch, and they are dangerous where swallowed or near a cardiac device."
             " The cautions on Release are for the layout that is chosen. They remind: your local"
             " rules, your school's own assessment and its trained staff decide."),
    ),
    "de": (
        ("#", "Wie diese Mappe benutzt wird"),
        ("", "Starten Sie den Dienst, oder besorgen Sie seine Adresse. Schreiben Sie sie auf das"
             " Blatt Loslassen, ohne Schrägstrich am Ende. Erlauben Sie dem Dokument, Verknüpfungen"
             " zu externen Daten zu aktualisieren, wenn das Programm fragt; sonst zeigen Zellen"
             " einen Fehler des Programms, etwa Err:540."),
        ("", "Ändern Sie auf Loslassen den Aufbau, den Ort oder die Streuung der Hand. Jede Zelle,"
             " die fragt, fragt neu. Bahn zeigt die Bahn desselben Starts, Strichliste hält die"
             " Zählung der Klasse gegen ihre Chancen, Antworten enthält jede Adresse und jede"
             " Antwort, wie sie kam."),
        ("", "Zahlen dürfen mit Komma oder Punkt getippt werden, wie das Programm eingestellt ist;"
             " die Mappe sendet Punkte und liest Punkte. Die Tabelle der Bahn liest WEBSERVICE und"
             " Formeln teilen sie, damit sie in beiden Dateien dem Start folgt; wo es ein Blatt"
             " CSV-Verknüpfung gibt, zeigt es dasselbe mit fester Adresse."),
        ("#", "Was die Zellen sagen können"),
        ("", "Eine Zeile, die mit ERROR beginnt, ist vom Dienst: sie sagt (englisch), was falsch ist"
             " und was richtig wäre. PENDING und eine Zahl: er rechnet noch; erhöhen Sie nach so"
             " vielen Sekunden Neu fragen um eins. #WERT! oder ein anderer Fehler in den Worten des"
             " Programms: der Dienst wurde nicht erreicht; prüfen Sie die Adresse und erhöhen Sie"
             " Neu fragen."),
        ("", "Dieselbe Frage hat immer dieselbe Antwort, deshalb wird von selbst nichts zweimal"
             " gefragt. Neu fragen erzwingt es."),
        ("#", "Was die Wörter bedeuten"),
        ("", "Endet bei: die Aufschrift, bei der das Pendel zur Ruhe kommt. Sicher: die berechnete"
             " Bahn führt dorthin, was auch in den letzten Ziffern verloren geht; sonst entscheidet"
             " der Zufall, und die Chancen sagen mehr als das eine Ende. Besiegelt nach: von da"
             " an ist keine andere Ruhelage mehr erreichbar."),
        ("", "Verlässlich bis: bis dahin stimmt die berechnete Bahn auf 1 mm; ein Wort an seiner"
             " Stelle sagt, dass dies nicht erreicht wurde, solange die Bahn verfolgt wurde. Eine"
             " Hand kann sie vorhersagen bis: so weit kann man die Bahn kennen, wenn die Hand das"
             " Pendel auf 1 mm genau hält."),
        ("", "Streuung: Standardabweichung der Hand längs jeder Achse. Chance: Anteil der Versuche,"
             " die dort enden, mit 95-%-Intervall. In einem Lehrbuch-Aufbau stehen Längen und Zeiten"
             " in dessen eigenen Einheiten, nicht in mm und s."),
        ("", "Chi-Quadrat vergleicht die Zählung mit dem, was die Chancen erwarten lassen. Der"
             " p-Wert sagt, wie oft der Zufall allein so große Unterschiede macht; unter 0,05 passt"
             " die Zählung nicht. Wo weniger als 5 erwartet werden, zählen Sie mehr Versuche."),
        ("#", "Andere Tabellenprogramme"),
        ("", "Die meisten haben eines davon: eine Funktion, die den Text einer Adresse in eine Zelle"
             " holt (dann gehen beide Dateien vielleicht, wie sie sind); eine Funktion, die eine"
             " CSV-Adresse als Tabelle ab der Zelle einfügt; oder einen Menüpunkt, der Daten aus dem"
             " Web oder aus Text einfügt. Die Adressen auf dem Blatt Antworten lassen sich dafür"
             " kopieren."),
        ("", "Programme im Browser holen von den Rechnern ihres Herstellers: sie brauchen eine"
             " Adresse, die aus dem Internet erreichbar ist, nicht localhost. Manche fragen einmal in"
             " der Stunde oder beim Öffnen; die Zahl am Ende der Adresse (cb) erzwingt es. Manche"
             " schneiden Adressen bei 2.048 Zeichen ab und Antworten bei 32.767: die längste hier ist"
             " die Bahn mit etwa 15.000. Manche teilen einen einzelnen Wert an Kommas: fragen Sie mit"
             " format=text, dessen Zeilen keine haben. Wo Dezimalkommas üblich sind, schreibt der"
             " Dienst sie mit decimal=comma und trennt seine Tabellen durch Semikolons."),
        ("#", "Sicherheit"),
        ("", "Starke Magnete klemmen, und verschluckt oder nahe einem Herzimplantat sind sie"
             " gefährlich. Die Warnungen auf Loslassen gelten dem gewählten Aufbau. Sie erinnern: es"
             " entscheiden die Vorschriften vor Ort, die Gefährdungsbeurteilung Ihrer Schule und ihr"
             " geschultes Personal."),
    ),
    "es": (
        ("#", "Cómo se usa este libro"),
        ("", "Inicie el servicio o consiga su dirección. Escríbala en la hoja Suelta, sin barra al"
             " final. Permita que el documento actualice los vínculos a datos externos cuando el"
             " programa lo pregunte; si no, las celdas muestran un error del programa, como"
             " Err:540."),
        ("", "En Suelta, cambie el montaje, el lugar o la dispersión de la mano. Cada celda que"
             " pregunta vuelve a preguntar. Trayectoria muestra el camino de la misma suelta,"
             " Recuento compara lo contado por la clase con las probabilidades, Respuestas tiene"
             " cada dirección y cada respuesta tal como llegó."),
        ("", "Los números se escriben con coma o punto decimal, según esté el programa; el libro"
             " envía puntos y lee puntos. La tabla de la trayectoria la lee WEBSERVICE y la parten"
             " fórmulas, para que siga a la suelta en ambos archivos; donde hay una hoja Vínculo CSV,"
             " muestra lo mismo con una dirección fija."),
        ("#", "Qué pueden decir las celdas"),
        ("", "Una línea que empieza por ERROR es del servicio: dice (en inglés) qué está mal y qué"
             " estaría bien. PENDING y un número: aún calcula; pasados esos segundos sume uno a"
             " Preguntar de nuevo. #¡VALOR! u otro error en palabras del programa: no se alcanzó el"
             " servicio; revise la dirección y sume uno a Preguntar de nuevo."),
        ("", "La misma pregunta tiene siempre la misma respuesta, así que nada se pregunta dos veces"
             " por sí solo. Preguntar de nuevo lo fuerza."),
        ("#", "Qué significan las palabras"),
        ("", "Acaba en: el rótulo donde el péndulo queda en reposo. Seguro: la trayectoria calculada"
             " lleva allí aunque se pierdan las últimas cifras; si no, decide el azar y las"
             " probabilidades dicen más que ese único final. Decidido a los: desde entonces no se"
             " puede alcanzar otro punto de reposo."),
        ("", "Fiable hasta: hasta entonces la trayectoria calculada acierta a 1 mm; una palabra en su"
             " lugar dice que eso no se alcanzó mientras se siguió la trayectoria. Una mano puede"
             " predecirla hasta: lo que puede saber de ella una mano que coloca el péndulo a 1 mm."),
        ("", "Dispersión: desviación típica de la mano en cada eje. Probabilidad: parte de los"
             " intentos que acaban allí, con intervalo del 95 %. En un montaje de libro las"
             " longitudes y los tiempos van en sus propias unidades, no en mm y s."),
        ("", "Ji cuadrado compara lo contado con lo que esperan las probabilidades. El valor p dice"
             " cuántas veces el azar solo produce una diferencia igual de grande; por debajo de 0,05"
             " el recuento no encaja. Donde se esperan menos de 5, cuente más intentos."),
        ("#", "Otras hojas de cálculo"),
        ("", "La mayoría tiene algo de esto: una función que trae el texto de una dirección a una"
             " celda (entonces ambos archivos pueden servir como están); una función que importa una"
             " dirección CSV como tabla desde la celda hacia abajo; o una entrada de menú que importa"
             " datos de la web o de texto. Las direcciones de la hoja Respuestas se pueden copiar"
             " para ello."),
        ("", "Los programas en el navegador piden desde los ordenadores de su fabricante: necesitan"
             " una dirección accesible en internet, no localhost. Algunos preguntan una vez por hora"
             " o al abrir; el número al final de la dirección (cb) lo fuerza. Algunos cortan las"
             " direcciones a 2048 caracteres y las respuestas a 32 767: la más larga aquí es la"
             " trayectoria, unos 15 000. Algunos parten un valor por las comas: pida con format=text,"
             " cuyas líneas no tienen. Donde se usan comas decimales, decimal=comma hace que el"
             " servicio las escriba y separe sus tablas con punto y coma."),
        ("#", "Seguridad"),
        ("", "Los imanes fuertes pellizcan y son peligrosos si se tragan o cerca de un implante"
             " cardíaco. Los avisos de la hoja Suelta son para el montaje elegido. Recuerdan: deciden"
             " las normas locales, la evaluación de su centro y su personal formado."),
    ),
}


def words(language):
    """All texts of a language by their keys."""
    column = LANGUAGES.index(language)
    return {key: all_of[column] for key, all_of in TEXTS.items()}
