/*
 * <lodeswing-figure layout="lay-..." x="-70" y="30" x2=".." y2=".." lang="en|de|es" theme="light|dark"></lodeswing-figure>
 *
 * The map of where every release ends, releases by tap, keyboard or typed place, and their paths in true time.
 * It computes nothing: every figure comes from the service that this file was loaded from, by its public contract.
 * No markup is parsed and no style is written into attributes, so that it runs under a strict Content Security Policy.
 */

const TEXTS = {
  en: {
    untitled: "Where every release ends",
    map: "Map of the plate. Arrow keys move the crosshair, plus and minus zoom, zero shows everything, Enter releases the bob"
      + " at the crosshair, space plays or pauses, comma and full stop step, A and B choose the release that is set.",
    hint: "Tap the map to let the bob go there. With the keyboard: arrows, + and −, Enter.",
    zoomIn: "Zoom in", zoomOut: "Zoom out", whole: "Show the whole map", patterns: "Patterns",
    release: "Release {name}", letGo: "Let go", remove: "Remove", target: "A tap on the map sets",
    pushX: "x", pushY: "y",
    play: "Play", pause: "Pause", back: "A tenth of a second back", on: "A tenth of a second on", time: "Time",
    legend: "Where a bob ends that is let go there", shading: "Light: decided early. Dark: decided late; half way at {time}.",
    chance: "At {share} of these places the end is chance: the smallest breath decides. There the map shows one of the ends that"
      + " can happen.",
    solid: "path as computed, to be trusted", dashed: "beyond the trust horizon: one possible motion, not the true one",
    table: "The releases", place: "Let go at", end: "Ends at", certain: "Sure or chance", sure: "sure", unsure: "chance",
    sealed: "Sealed at", sealedMark: "sealed", trusted: "Path trusted until", trustedMark: "trust ends",
    foretold: "A hand can foretell until", settled: "Settled at", allTheWay: "all the way", notReached: "not reached",
    undecided: "undecided", otherMap: "{name} (the map shows {other}; believe the path)",
    mapTable: "The map as a table", mapTableSay: "Where a bob ends that is let go at x (columns) and y (rows), over what is shown.",
    pathTable: "The paths as a table", beyond: "beyond trust",
    page: "This figure by itself", safety: "Safety notes", warned: "Safety notes: strong magnets, a limit is passed",
    loading: "The map is being computed …", loadingShare: "The map is being computed: {share}",
    tracing: "The path of release {name} is being computed …", tracingShare: "The path of release {name} is being computed: {share}",
    busy: "The service has much to do; asking again in {seconds} s.",
    said: "Release {name} from {place} ends at {end}{sure}. Sealed at {sealed}. {trust}", saidTrust: "Its path is trusted until {time}.", saidTrustAll: "Its path is trusted all the way.",
    saidSure: ", for sure", saidUnsure: ", by chance", compared: "Both releases end alike.", differ: "The two releases end differently.",
    crosshair: "Crosshair at {place}", removed: "Release B removed.", whereNumber: "Give x and y as numbers.",
    again: "Try again", network: "The service cannot be reached. Check the connection.",
    "not-found": "This layout is not known to the service.", "too-costly": "This asks for more work than the service takes on.",
    "impossible-release": "The bob cannot be let go there.", "impossible-layout": "Nobody could build this layout.",
    "service-busy": "The service has too much to do.", other: "The service could not answer.",
    noLayout: "The attribute layout of the element is missing.",
    "cannot-start": "cannot be let go there", "magnet-contact": "the bob touches a magnet", "plate-contact": "the bob touches the plate",
    "suspension-slack": "the cord goes slack", "angle-limit": "the swing goes too far out", unsettled: "undecided",
    held: "held by friction", rest: "rest point {number}",
  },
  de: {
    untitled: "Wo jeder Start endet",
    map: "Karte der Platte. Pfeiltasten bewegen das Fadenkreuz, Plus und Minus zoomen, Null zeigt alles, die Eingabetaste lässt das"
      + " Pendel am Fadenkreuz los, die Leertaste spielt ab oder hält an, Komma und Punkt gehen schrittweise, A und B wählen den Start, der gesetzt wird.",
    hint: "Tippen Sie auf die Karte, um das Pendel dort loszulassen. Mit der Tastatur: Pfeile, + und −, Eingabe.",
    zoomIn: "Vergrößern", zoomOut: "Verkleinern", whole: "Ganze Karte zeigen", patterns: "Muster",
    release: "Start {name}", letGo: "Loslassen", remove: "Entfernen", target: "Ein Tipp auf die Karte setzt",
    pushX: "x", pushY: "y",
    play: "Abspielen", pause: "Anhalten", back: "Eine Zehntelsekunde zurück", on: "Eine Zehntelsekunde weiter", time: "Zeit",
    legend: "Wo ein dort losgelassenes Pendel endet", shading: "Hell: früh entschieden. Dunkel: spät entschieden; Mitte bei {time}.",
    chance: "An {share} dieser Orte ist das Ende Zufall: Der kleinste Hauch entscheidet. Dort zeigt die Karte eines der möglichen"
      + " Enden.",
    solid: "berechnete Bahn, verlässlich", dashed: "nicht mehr verlässlich: eine mögliche Bewegung, nicht die wahre",
    table: "Die Starts", place: "Losgelassen bei", end: "Endet bei", certain: "Sicher oder Zufall", sure: "sicher", unsure: "Zufall",
    sealed: "Besiegelt nach", sealedMark: "besiegelt", trusted: "Bahn verlässlich bis", trustedMark: "verlässlich bis hier",
    foretold: "Eine Hand kann sie vorhersagen bis", settled: "In Ruhe nach", allTheWay: "bis zum Ende", notReached: "nicht erreicht",
    undecided: "unentschieden", otherMap: "{name} (die Karte zeigt {other}; es gilt die Bahn)",
    mapTable: "Die Karte als Tabelle", mapTableSay: "Wo ein Pendel endet, das bei x (Spalten) und y (Zeilen) losgelassen wird, im gezeigten"
      + " Ausschnitt.",
    pathTable: "Die Bahnen als Tabelle", beyond: "nicht verlässlich",
    page: "Diese Abbildung für sich", safety: "Sicherheitshinweise", warned: "Sicherheitshinweise: starke Magnete, ein Grenzwert ist überschritten",
    loading: "Die Karte wird berechnet …", loadingShare: "Die Karte wird berechnet: {share}",
    tracing: "Die Bahn von Start {name} wird berechnet …", tracingShare: "Die Bahn von Start {name} wird berechnet: {share}",
    busy: "Der Dienst hat viel zu tun; neue Anfrage in {seconds} s.",
    said: "Start {name} bei {place} endet bei {end}{sure}. Besiegelt nach {sealed}. {trust}", saidTrust: "Seine Bahn ist verlässlich bis {time}.",
    saidTrustAll: "Seine Bahn ist bis zum Ende verlässlich.",
    saidSure: ", sicher", saidUnsure: ", durch Zufall", compared: "Beide Starts enden gleich.", differ: "Die beiden Starts enden verschieden.",
    crosshair: "Fadenkreuz bei {place}", removed: "Start B entfernt.", whereNumber: "x und y bitte als Zahlen angeben.",
    again: "Noch einmal", network: "Der Dienst ist nicht erreichbar. Bitte die Verbindung prüfen.",
    "not-found": "Diesen Aufbau kennt der Dienst nicht.", "too-costly": "Das wäre mehr Arbeit, als der Dienst übernimmt.",
    "impossible-release": "Dort kann das Pendel nicht losgelassen werden.", "impossible-layout": "Diesen Aufbau könnte niemand bauen.",
    "service-busy": "Der Dienst hat zu viel zu tun.", other: "Der Dienst konnte nicht antworten.",
    noLayout: "Dem Element fehlt das Attribut layout.",
    "cannot-start": "kann dort nicht losgelassen werden", "magnet-contact": "das Pendel berührt einen Magneten",
    "plate-contact": "das Pendel berührt die Platte", "suspension-slack": "der Faden wird schlaff",
    "angle-limit": "das Pendel schwingt zu weit aus", unsettled: "unentschieden", held: "von Reibung gehalten", rest: "Ruhelage {number}",
  },
  es: {
    untitled: "Dónde acaba cada suelta",
    map: "Mapa de la placa. Las flechas mueven la cruz, más y menos cambian el aumento, cero muestra todo, Intro suelta el péndulo en"
      + " la cruz, la barra espaciadora inicia o detiene, coma y punto avanzan paso a paso, A y B eligen la suelta que se fija.",
    hint: "Toque el mapa para soltar allí el péndulo. Con el teclado: flechas, + y −, Intro.",
    zoomIn: "Acercar", zoomOut: "Alejar", whole: "Mostrar todo el mapa", patterns: "Tramas",
    release: "Suelta {name}", letGo: "Soltar", remove: "Quitar", target: "Un toque en el mapa fija",
    pushX: "x", pushY: "y",
    play: "Reproducir", pause: "Pausa", back: "Una décima de segundo atrás", on: "Una décima de segundo adelante", time: "Tiempo",
    legend: "Dónde acaba un péndulo soltado allí", shading: "Claro: decidido pronto. Oscuro: decidido tarde; punto medio a los {time}.",
    chance: "En el {share} de estos lugares el final es azar: decide el menor soplo. Allí el mapa muestra uno de los finales posibles.",
    solid: "trayectoria calculada, fiable", dashed: "ya no fiable: un movimiento posible, no el verdadero",
    table: "Las sueltas", place: "Soltado en", end: "Acaba en", certain: "Seguro o azar", sure: "seguro", unsure: "azar",
    sealed: "Decidido a los", sealedMark: "decidido", trusted: "Trayectoria fiable hasta", trustedMark: "fiable hasta aquí",
    foretold: "Una mano puede predecirla hasta", settled: "En reposo a los", allTheWay: "el final", notReached: "no alcanzado",
    undecided: "sin decidir", otherMap: "{name} (el mapa muestra {other}; vale la trayectoria)",
    mapTable: "El mapa como tabla", mapTableSay: "Dónde acaba un péndulo soltado en x (columnas) e y (filas), en lo que se muestra.",
    pathTable: "Las trayectorias como tabla", beyond: "no fiable",
    page: "Esta figura sola", safety: "Notas de seguridad", warned: "Notas de seguridad: imanes fuertes, se supera un límite",
    loading: "Se está calculando el mapa …", loadingShare: "Se está calculando el mapa: {share}",
    tracing: "Se está calculando la trayectoria de la suelta {name} …", tracingShare: "Se está calculando la trayectoria de la suelta {name}: {share}",
    busy: "El servicio tiene mucho trabajo; nueva petición en {seconds} s.",
    said: "La suelta {name} desde {place} acaba en {end}{sure}. Decidido a los {sealed}. {trust}", saidTrust: "Su trayectoria es fiable hasta {time}.",
    saidTrustAll: "Su trayectoria es fiable hasta el final.",
    saidSure: ", seguro", saidUnsure: ", por azar", compared: "Las dos sueltas acaban igual.", differ: "Las dos sueltas acaban de forma distinta.",
    crosshair: "Cruz en {place}", removed: "Suelta B quitada.", whereNumber: "Indique x e y como números.",
    again: "Intentar de nuevo", network: "No se puede alcanzar el servicio. Compruebe la conexión.",
    "not-found": "El servicio no conoce este montaje.", "too-costly": "Esto pide más trabajo del que el servicio acepta.",
    "impossible-release": "El péndulo no puede soltarse allí.", "impossible-layout": "Nadie podría construir este montaje.",
    "service-busy": "El servicio tiene demasiado trabajo.", other: "El servicio no pudo responder.",
    noLayout: "Falta el atributo layout del elemento.",
    "cannot-start": "no puede soltarse allí", "magnet-contact": "el péndulo toca un imán", "plate-contact": "el péndulo toca la placa",
    "suspension-slack": "el hilo se afloja", "angle-limit": "el péndulo oscila demasiado lejos", unsettled: "sin decidir",
    held: "retenido por el rozamiento", rest: "punto de reposo {number}",
  },
};

const STYLE = `
:host{display:block;container-type:inline-size;color-scheme:light dark;font:1rem/1.45 system-ui,sans-serif;
--paper:#fcfbf7;--plate:#f4f1e9;--ink:#22262b;--soft:#565b62;--edge:#8f8978;--act:#2c5c94;--on-act:#fff}
:host([hidden]){display:none}
:host([theme=light]){color-scheme:light}
:host([theme=dark]){color-scheme:dark}
@media (prefers-color-scheme:dark){:host(:not([theme=light])){--paper:#1b1f24;--plate:#262b32;--ink:#ece9e1;--soft:#b6bac0;--edge:#7b828c;
--act:#9dc3f0;--on-act:#10151b}}
:host([theme=dark]){--paper:#1b1f24;--plate:#262b32;--ink:#ece9e1;--soft:#b6bac0;--edge:#7b828c;--act:#9dc3f0;--on-act:#10151b}
*{box-sizing:border-box}
.figure{margin:0;padding:.75rem;background:var(--paper);color:var(--ink);border:1px solid var(--edge);border-radius:.5rem;
display:grid;gap:.75rem;grid-template-columns:minmax(0,1fr)}
.title{font-weight:600;margin:0;grid-column:1/-1}
.board{position:relative;width:100%;max-width:40rem;justify-self:center}
.stage{position:relative;width:100%;aspect-ratio:1;background:var(--plate);overflow:hidden;border-radius:.3rem}
canvas.layer{position:absolute;inset:0;width:100%;height:100%}
.hand{position:absolute;inset:0;cursor:crosshair;touch-action:pan-x pan-y;outline-offset:-3px;user-select:none;-webkit-user-select:none}
.hand.zoomed{touch-action:none}
.hand:focus-visible{outline:3px solid #22262b;box-shadow:inset 0 0 0 6px #fcfbf7}
.tools{position:absolute;inset-block-start:.5rem;inset-inline-end:.5rem;display:grid;gap:.3rem}
.where{position:absolute;inset-block-end:.4rem;inset-inline-end:.4rem;margin:0;padding:0 .4em;font-size:.8rem;background:#fcfbf7e6;
color:#22262b;border-radius:.2em;font-variant-numeric:tabular-nums;pointer-events:none}
.where:empty{display:none}
.wait{position:absolute;inset-inline:.5rem;inset-block-end:2.2rem;margin:0 auto;inline-size:fit-content;max-inline-size:95%;
padding:.25em .7em;background:#22262be6;color:#fcfbf7;border-radius:1em;font-size:.85rem;pointer-events:none}
.wait:empty{display:none}
button,input{font:inherit;color:inherit;background:var(--paper);border:1px solid var(--edge);border-radius:.3rem;min-height:2.25rem;
padding:.2rem .6rem}
button{cursor:pointer}
button.sign{inline-size:2.25rem;padding:0;font-size:1.15rem;line-height:1}
.tools button{background:#fcfbf7;color:#22262b;border-color:#565b62}
button.main{background:var(--act);color:var(--on-act);border-color:var(--act)}
button[aria-pressed=true]{box-shadow:inset 0 0 0 2px currentColor}
button:disabled,input:disabled{opacity:.5;cursor:default}
:is(button,input,summary,a):focus-visible{outline:3px solid var(--act);outline-offset:2px}
.clock{display:flex;flex-wrap:wrap;gap:.35rem;align-items:center;max-width:40rem;inline-size:100%;justify-self:center}
.clock .at{font-variant-numeric:tabular-nums;min-inline-size:3.6em;text-align:end}
.track{flex:1 1 8rem;position:relative;padding-block-end:1.15rem}
.track input{inline-size:100%;margin:0;padding:0;border:0;background:none;accent-color:var(--act);min-height:1.8rem;display:block}
.mark{position:absolute;inset-block-start:1.55rem;inset-inline-start:calc(.5rem + (100% - 1rem)*var(--at));font-size:.75rem;line-height:1;
color:var(--ink);translate:calc(-100%*var(--at)) 0;white-space:nowrap}
.mark.second{padding-block-start:.95rem}.mark.second::before{block-size:1.4rem;margin-block-start:-1.4rem}
.marks.both{block-size:.95rem}
.mark::before{content:"";display:block;inline-size:2px;block-size:.45rem;background:currentColor;
margin:-.45rem 0 0 calc(100%*var(--at) - 1px)}
.forms{display:grid;gap:.6rem}
fieldset{border:1px solid var(--edge);border-radius:.3rem;padding:.3rem .6rem .5rem;margin:0;min-inline-size:0;display:flex;flex-wrap:wrap;
gap:.4rem;align-items:center}
legend{padding:0 .3em}
label{display:inline-flex;align-items:center;gap:.3em}
input[type=text]{inline-size:4.6em}
input[type=radio]{min-height:1.3rem;inline-size:1.3rem;block-size:1.3rem;margin:0;accent-color:var(--act)}
ul{list-style:none;margin:.2rem 0;padding:0;display:flex;flex-wrap:wrap;gap:.25rem 1rem}
li{display:flex;align-items:center;gap:.45em;min-inline-size:0;overflow-wrap:anywhere}
.swatch{inline-size:32px;block-size:20px;border:1px solid var(--ink);flex:none;border-radius:2px}
svg.swatch{inline-size:44px;border:0}
p{margin:.2rem 0}
.small{font-size:.875rem;color:var(--soft)}
.say{min-block-size:1.5em}
table{border-collapse:collapse;inline-size:100%;font-variant-numeric:tabular-nums}
caption{text-align:start;font-weight:600;padding-block-end:.2rem}
th,td{border-block-end:1px solid var(--edge);padding:.25rem .5rem .25rem 0;text-align:start;vertical-align:top;overflow-wrap:break-word}
tbody th{inline-size:40%}
th{font-weight:normal;color:var(--soft)}thead th{color:var(--ink);font-weight:600}
.scroll{overflow:auto;max-block-size:22rem}
.scroll table{inline-size:auto;font-size:.875rem}.scroll tbody th{inline-size:auto}.scroll th,.scroll td{padding-inline-end:.8rem;overflow-wrap:normal;white-space:nowrap}
summary{cursor:pointer;padding:.25rem 0}
.trouble{border:2px solid #b3261e;border-radius:.3rem;padding:.4rem .7rem}
.trouble[hidden]{display:none}
a{color:var(--act)}
.foot{display:flex;flex-wrap:wrap;gap:.2rem 1.2rem;grid-column:1/-1}
.hidden{position:absolute;inline-size:1px;block-size:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.left,.right{display:grid;grid-template-columns:minmax(0,1fr);gap:.6rem;align-content:start;min-inline-size:0}
@container (min-width:58rem){.figure{grid-template-columns:minmax(0,33rem) minmax(0,1fr);gap:.75rem 1.5rem}}
@container (max-width:30rem){.tools{position:static;display:flex;justify-content:end;margin-block-start:.4rem}
.tools button{background:var(--paper);color:var(--ink);border-color:var(--edge)}
.clock .track{order:1;flex-basis:100%}.clock .at{margin-inline-start:auto}
.figure{padding:.5rem}}
@media (forced-colors:active){.swatch,.stage,canvas,.mark::before{forced-color-adjust:none}.hand:focus-visible{outline-color:Highlight}}
@media print{:host,:host([theme]),:host(:not([theme=light])){--paper:#fff;--plate:#fff;--ink:#000;--soft:#333;--edge:#777;--act:#000;color-scheme:light}
.tools,.forms,.hint,.clock,.say,.where,.wait,.trouble,details:not([open]){display:none}
.figure{border:0;padding:0;display:block}.board{max-width:13cm;margin:.3cm auto}.figure *{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.scroll{max-block-size:none;overflow:visible}table,.legend{break-inside:avoid}.foot a::after{content:" (" attr(href) ")";overflow-wrap:anywhere}}
`;

const SHEET = new CSSStyleSheet();
SHEET.replaceSync(STYLE);

const NAMES = ["A", "B"];
const STEP = 0.1;
const MOST_TILES = 240;
const AT_ONCE = 4;
const SHARPEST = 1.5;
const INKS = [["#22262b", "#fcfbf7"], ["#fcfbf7", "#22262b"]];

/** Something that the service, or the way to it, refused. */
class Trouble extends Error {
  constructor(code, detail = "") {
    super(code);
    this.code = code;
    this.detail = detail;
  }
}

const pause = (seconds, signal) =>
  new Promise((done, gone) => {
    const end = setTimeout(done, 1000 * seconds);
    signal?.addEventListener("abort", () => { clearTimeout(end); gone(signal.reason); }, { once: true });
  });

/** Asks the service; waits as long as it says where an answer is not ready or it has too much to do. */
class Service {
  constructor(origin) {
    this.origin = origin;
  }

  url(path) {
    return new URL(path, this.origin).href;
  }

  async #fetch(path, options) {
    try {
      return await fetch(this.url(path), options);
    } catch (fault) {
      if (options.signal?.aborted) throw fault;
      throw new Trouble("network");
    }
  }

  /**
   * The answer of a path.
   * @param tell is told how far a computation is (share, 0 to 1) or how long the service is busy (seconds)
   */
  async answer(path, { signal, tell = () => {}, ...options } = {}) {
    for (let refused = 0; ; ) {
      const reply = await this.#fetch(path, { signal, ...options });
      const seconds = Math.min(120, Number(reply.headers.get("Retry-After")) || 2);
      if (reply.status === 202) {
        await this.#untilDone(await reply.json(), seconds, signal, tell);
      } else if ((reply.status === 503 || reply.status === 429) && refused < 10) {
        refused++;
        tell({ seconds });
        await pause(seconds, signal);
      } else if (reply.ok) {
        return reply;
      } else {
        const problem = await reply.json().catch(() => ({}));
        const faults = (problem.errors ?? []).map((fault) => `${fault.pointer} ${fault.detail}`).join("; ");
        throw new Trouble(problem.code ?? "other", [problem.detail, faults].filter(Boolean).join(" "));
      }
    }
  }

  /** Looks after a job until it has ended; withdraws from it where nobody wants its result any more. */
  async #untilDone(job, seconds, signal, tell) {
    try {
      let now = job;
      while (now.state === "waiting" || now.state === "running") {
        tell({ share: now.progress });
        await pause(Math.min(seconds, 3), signal);
        const reply = await this.#fetch(`/v1/jobs/${encodeURIComponent(job.jobId)}`, { signal });
        if (!reply.ok) return;
        now = await reply.json();
      }
      // Asking again would begin it anew, and fail again.
      if (now.state !== "done") throw new Trouble(now.problem?.code ?? "other", now.problem?.detail);
    } catch (fault) {
      if (signal?.aborted && job.cancelUrl) {
        fetch(this.url(job.cancelUrl), { method: "DELETE", keepalive: true }).catch(() => {});
      }
      throw fault;
    }
  }

  async json(path, options) {
    return (await this.answer(path, options)).json();
  }
}

/** Which part of the plate is seen, and how large. */
class View {
  constructor(basin) {
    this.basin = basin;
    this.side = basin.unitsPerTile;
    this.width = this.height = 1;
    this.home();
  }

  home() {
    this.x = this.basin.window.x;
    this.y = this.basin.window.y;
    this.zoom = 1;
  }

  /** Pixels of the page per unit of length. */
  get scale() {
    return (this.zoom * Math.min(this.width, this.height)) / this.side;
  }

  get most() {
    return (2 * this.basin.tileSize * 2 ** this.basin.zoom.max) / Math.min(this.width, this.height);
  }

  toX(x) {
    return this.width / 2 + (x - this.x) * this.scale;
  }

  toY(y) {
    return this.height / 2 - (y - this.y) * this.scale;
  }

  atX(px) {
    return this.x + (px - this.width / 2) / this.scale;
  }

  atY(py) {
    return this.y - (py - this.height / 2) / this.scale;
  }

  /** Zooms about a point of the page that stays where it is. */
  zoomBy(factor, px = this.width / 2, py = this.height / 2) {
    const x = this.atX(px);
    const y = this.atY(py);
    this.zoom = Math.min(Math.max(1, this.zoom * factor), Math.max(1, this.most));
    this.x += x - this.atX(px);
    this.y += y - this.atY(py);
    this.#keep();
  }

  panBy(dx, dy) {
    this.x -= dx / this.scale;
    this.y += dy / this.scale;
    this.#keep();
  }

  /** What lies beyond the map is not shown more than it must be. */
  #keep() {
    const half = this.side / 2;
    const roomX = Math.max(0, half - this.width / 2 / this.scale);
    const roomY = Math.max(0, half - this.height / 2 / this.scale);
    const { x, y } = this.basin.window;
    this.x = Math.min(Math.max(this.x, x - roomX), x + roomX);
    this.y = Math.min(Math.max(this.y, y - roomY), y + roomY);
  }

  /** Decimals that tell neighbouring pixels apart. */
  get decimals() {
    return Math.max(0, Math.min(15, Math.ceil(Math.log10(this.scale))));
  }
}

/** The map's tiles: kept, asked for where they are seen, and no longer asked for where they are not. */
class Tiles {
  constructor(service, basin, changed, failed) {
    this.service = service;
    this.basin = basin;
    this.changed = changed;
    this.failed = failed;
    this.kept = new Map();
    this.asked = new Map();
    this.wanted = [];
    this.share = null;
  }

  #url(key) {
    const [z, x, y] = key.split("/");
    const address = this.basin.tiles.replace("{z}", z).replace("{x}", x).replace("{y}", y);
    return `${address}${this.patterned ? "&patterns=true" : ""}&wait=3`;
  }

  pattern(on) {
    this.patterned = on;
    this.clear();
  }

  clear() {
    this.asked.forEach((control) => control.abort());
    this.asked.clear();
    this.kept.forEach((picture) => picture.close?.());
    this.kept.clear();
  }

  get(key) {
    const picture = this.kept.get(key);
    if (picture) {
      this.kept.delete(key);
      this.kept.set(key, picture);
    }
    return picture;
  }

  /** The tile itself, or the nearest one that covers it with the part of it that does. */
  covering(z, x, y) {
    for (let up = 0; up <= z; up++) {
      const picture = this.get(`${z - up}/${Math.floor(x / 2 ** up)}/${Math.floor(y / 2 ** up)}`);
      if (picture) {
        const part = picture.width / 2 ** up;
        return { picture, left: (x % 2 ** up) * part, top: (y % 2 ** up) * part, part };
      }
    }
    return null;
  }

  want(keys) {
    this.wanted = keys;
    for (const [key, control] of this.asked) {
      if (!keys.includes(key)) {
        control.abort();
        this.asked.delete(key);
      }
    }
    this.#next();
  }

  get missing() {
    return this.wanted.some((key) => !this.kept.has(key));
  }

  #next() {
    for (const key of this.wanted) {
      // The whole map in one tile comes first, and alone: all others lie within it.
      const most = this.kept.has("0/0/0") || !this.wanted.includes("0/0/0") ? AT_ONCE : 1;
      if (this.asked.size >= most) return;
      if (!this.kept.has(key) && !this.asked.has(key)) this.#load(key);
    }
  }

  async #load(key) {
    const control = new AbortController();
    this.asked.set(key, control);
    try {
      const tell = (how) => { this.share = how; this.changed(false); };
      const reply = await this.service.answer(this.#url(key), { signal: control.signal, tell });
      const picture = await createImageBitmap(await reply.blob());
      if (control.signal.aborted) return;
      this.kept.set(key, picture);
      while (this.kept.size > MOST_TILES) {
        const [oldest, gone] = this.kept.entries().next().value;
        this.kept.delete(oldest);
        gone.close?.();
      }
      this.asked.delete(key);
      this.share = null;
      this.changed(true);
      this.#next();
    } catch (fault) {
      if (control.signal.aborted) return;
      this.asked.delete(key);
      this.wanted = [];
      this.failed(fault);
    }
  }
}

/** A path between its samples: cubics through places with the velocities that the service gave. */
class Path {
  constructor(trace) {
    this.trace = trace;
    const { t, x, y, vx, vy } = trace.samples;
    Object.assign(this, { t, x, y, vx, vy });
    // A rig with a single rest point counts as settled at once, yet it swings.
    const settled = trace.settledAtS > 1 ? trace.settledAtS : Infinity;
    this.until = Math.min(settled, t[t.length - 1]);
    this.trusted = trace.trustedUntilS ?? Infinity;
    this.sealed = trace.sealedAtS ?? Infinity;
  }

  at(time) {
    const { t } = this;
    let low = 0;
    let high = t.length - 1;
    if (time >= t[high]) return [this.x[high], this.y[high]];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (t[middle] <= time) low = middle;
      else high = middle;
    }
    const h = t[high] - t[low];
    const s = (time - t[low]) / h;
    const a = (1 + 2 * s) * (1 - s) ** 2;
    const b = s * (1 - s) ** 2 * h;
    const c = s * s * (3 - 2 * s);
    const d = s * s * (s - 1) * h;
    return [
      a * this.x[low] + b * this.vx[low] + c * this.x[high] + d * this.vx[high],
      a * this.y[low] + b * this.vy[low] + c * this.y[high] + d * this.vy[high],
    ];
  }
}

const element = (name, properties = {}, ...children) => {
  const { attributes, ...plain } = properties;
  const made = Object.assign(document.createElement(name), plain);
  Object.entries(attributes ?? {}).forEach(([key, value]) => made.setAttribute(key, value));
  made.append(...children);
  return made;
};

const still = matchMedia("(prefers-reduced-motion: reduce)");

class LodeswingFigure extends HTMLElement {
  static observedAttributes = ["layout", "lang", "x", "y", "x2", "y2", "service"];

  #root = this.attachShadow({ mode: "open" });
  #paths = [null, null];
  #asking = [null, null];
  #target = 0;
  #time = 0;
  #playing = false;
  #cross = null;
  #patterned = true;
  #drawnUntil = [0, 0];
  #stop = null;
  #starting = false;

  constructor() {
    super();
    this.#root.adoptedStyleSheets = [SHEET];
    // What stands within the element is seen until the figure is.
    this.#root.append(element("slot"));
  }

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    addEventListener("beforeprint", () => this.#printed(true), { signal });
    addEventListener("afterprint", () => this.#printed(false), { signal });
    addEventListener("online", () => this.#trouble?.hidden === false && this.#again(), { signal });
    still.addEventListener("change", () => this.#rest(), { signal });
    // A figure far down a page asks for nothing until somebody comes near.
    const near = new IntersectionObserver((seen) => seen.some((one) => one.isIntersecting) && this.#came(near), { rootMargin: "300px" });
    near.observe(this);
    signal.addEventListener("abort", () => { near.disconnect(); this.#near = false; });
  }

  #near = false;

  #came(near) {
    near.disconnect();
    this.#near = true;
    this.#soon();
  }

  disconnectedCallback() {
    this.#stop?.abort();
    this.#loading?.abort();
    this.#tiles?.clear();
    this.#asking.forEach((control) => control?.abort());
    this.#size?.disconnect();
    this.#playing = false;
  }

  attributeChangedCallback(name, before, after) {
    if (!this.#near || before === after) return;
    if (name === "lang" && this.#basin) this.#build();
    else this.#soon();
  }

  /** Attributes that change together make one start. */
  #soon() {
    if (this.#starting) return;
    this.#starting = true;
    queueMicrotask(() => {
      this.#starting = false;
      if (this.isConnected) this.#start();
    });
  }

  #trouble = null;
  #tiles = null;
  #size = null;
  #basin = null;
  #layout = null;
  #view = null;
  #parts = {};

  /* ---- words and numbers ---- */

  get #language() {
    return this.lang || this.closest("[lang]")?.lang || navigator.language || "en";
  }

  #text(key, values = {}) {
    const texts = TEXTS[this.#language.slice(0, 2).toLowerCase()] ?? TEXTS.en;
    const text = texts[key] ?? TEXTS.en[key] ?? TEXTS.en.other;
    return text.replace(/\{(\w+)\}/g, (whole, name) => values[name] ?? whole);
  }

  #number(value, decimals = 1, least = 0) {
    const own = this.#language.slice(0, 2).toLowerCase() in TEXTS ? this.#language : "en";
    let format;
    try {
      format = new Intl.NumberFormat(own, { maximumFractionDigits: decimals, minimumFractionDigits: least, signDisplay: "negative" });
    } catch {
      format = new Intl.NumberFormat("en", { maximumFractionDigits: decimals, minimumFractionDigits: least, signDisplay: "negative" });
    }
    return format.format(value).replace(/^-/, "\u2212");
  }

  #seconds(value, decimals = 1) {
    const unit = this.#basin?.units.time === "s" ? "\u00a0s" : "";
    return this.#number(value, decimals, decimals) + unit;
  }

  #place(x, y, decimals) {
    const unit = this.#basin?.units.length === "mm" ? "\u00a0mm" : "";
    return `(${this.#number(x, decimals)}; ${this.#number(y, decimals)})${unit}`;
  }

  #percent(share) {
    return new Intl.NumberFormat(this.#language.slice(0, 2), { style: "percent" }).format(share);
  }

  /** What an end is called: its label, or words of ours. */
  #endName(end) {
    if (!end) return this.#text("undecided");
    if (end.label) return end.label;
    if (end.kind !== "rest-point") return end.kind in TEXTS.en ? this.#text(end.kind) : end.name;
    return this.#text("rest", { number: this.#restNumber(end) });
  }

  /* ---- starting ---- */

  async #start() {
    this.#asking.forEach((control) => control?.abort());
    this.#tiles?.clear();
    this.#loading?.abort();
    this.#loading = new AbortController();
    const { signal } = this.#loading;
    const home = this.getAttribute("service") ?? import.meta.url;
    this.#paths = [null, null];
    this.#basin = this.#layout = null;
    const layout = this.getAttribute("layout");
    try {
      this.#service = new Service(new URL(home, document.baseURI).origin);
      this.#build();
      if (!layout) throw new Trouble("noLayout");
      this.#wait(this.#text("loading"));
      const path = `/v1/layouts/${encodeURIComponent(layout)}`;
      const tell = (how) => this.#wait(this.#how("loading", how));
      const [about, basin] = await Promise.all([
        this.#service.json(`${path}?format=json`, { signal }),
        this.#service.json(`${path}/basin?format=json&wait=3`, { signal, tell }),
      ]);
      this.#layout = about;
      this.#basin = basin;
      this.#view = new View(basin);
      this.#tiles = new Tiles(this.#service, basin, (whole) => this.#tileCame(whole), (fault) => this.#refused(fault));
      this.#tiles.pattern(this.#patterned);
      this.#cross = [basin.window.x, basin.window.y];
      this.#build();
      for (const slot of [0, 1]) {
        const [x, y] = (slot ? ["x2", "y2"] : ["x", "y"]).map((name) => this.#read(this.getAttribute(name) ?? ""));
        if (Number.isFinite(x) && Number.isFinite(y)) this.#release(slot, x, y, false);
      }
    } catch (fault) {
      if (!signal.aborted) this.#refused(fault);
    }
  }

  #loading = null;
  #service = null;

  #how(key, { share, seconds }, values = {}) {
    if (seconds) return this.#text("busy", { seconds });
    return share > 0 ? this.#text(`${key}Share`, { ...values, share: this.#percent(share) }) : this.#text(key, values);
  }

  #wait(text) {
    if (this.#parts.wait && this.#parts.wait.textContent !== text) this.#parts.wait.textContent = text;
  }

  #say(text) {
    this.#parts.say.textContent = text;
  }

  #refused(fault) {
    if (!(fault instanceof Trouble)) console.error(fault);
    const known = fault instanceof Trouble ? fault : new Trouble("other");
    this.#wait("");
    this.#trouble.replaceChildren(
      element("p", { textContent: this.#text(known.code in TEXTS.en ? known.code : "other") }),
      ...(known.detail ? [element("p", { className: "small", lang: "en", textContent: known.detail })] : []),
      element("button", { type: "button", textContent: this.#text("again"), onclick: () => this.#again() }),
    );
    this.#trouble.hidden = false;
  }

  /** Only what failed is asked for again. */
  #again() {
    this.#trouble.hidden = true;
    if (!this.#basin) this.#start();
    else {
      const [slot, x, y] = this.#failedRelease ?? [];
      this.#failedRelease = null;
      if (slot !== undefined) this.#release(slot, x, y);
      this.#drawMap();
    }
  }

  #failedRelease = null;

  /* ---- the document of the figure ---- */

  #build() {
    const text = (key, values) => this.#text(key, values);
    const button = (key, sign, action, more = {}) =>
      element("button", { type: "button", className: "sign", title: text(key), textContent: sign, onclick: action,
        attributes: { "aria-label": text(key) }, ...more });
    const parts = (this.#parts = {});
    const ready = Boolean(this.#basin);
    const layer = (name) => (parts[name] = element("canvas", { className: "layer", attributes: { "aria-hidden": "true" } }));
    parts.hand = element("div", { className: "hand", tabIndex: 0,
      attributes: { role: "application", "aria-label": text("map") } });
    parts.where = element("p", { className: "where", attributes: { "aria-hidden": "true" } });
    parts.wait = element("p", { className: "wait", attributes: { role: "status" } });
    parts.pattern = element("button", { type: "button", className: "sign", textContent: "\u2592", title: text("patterns"),
      onclick: () => this.#pattern(), attributes: { "aria-label": text("patterns"), "aria-pressed": String(this.#patterned) } });
    parts.tools = element("div", { className: "tools" },
      button("zoomIn", "+", () => this.#zoom(2)), button("zoomOut", "\u2212", () => this.#zoom(0.5)),
      button("whole", "\u2302", () => { this.#view?.home(); this.#moved(); }), parts.pattern);
    parts.stage = element("div", { className: "stage" },
      layer("map"), layer("casing"), layer("core"), layer("top"), parts.hand, parts.where, parts.wait);
    this.#trouble = element("div", { className: "trouble", hidden: true, attributes: { role: "alert" } });
    parts.say = element("p", { className: "say", attributes: { role: "status", "aria-live": "polite" } });
    const title = element("p", { className: "title", id: "title", textContent: this.#layout?.title ?? text("untitled") });
    const left = element("div", { className: "left" }, element("div", { className: "board" }, parts.stage, parts.tools), this.#clock(),
      element("p", { className: "small hint", textContent: text("hint") }), this.#trouble, parts.say);
    const right = element("div", { className: "right" });
    if (ready) {
      right.append(this.#forms(), this.#legend(), (parts.table = element("table")), this.#mapTable(), this.#pathTable());
    }
    const figure = element("figure", { className: "figure", lang: this.#language.slice(0, 2), attributes: { "aria-labelledby": "title" } },
      title, left, right, this.#foot());
    this.#root.replaceChildren(figure);
    this.#listen(parts.hand);
    if (ready) {
      this.#fillTable();
      this.#size?.disconnect();
      this.#size = new ResizeObserver(() => this.#fit());
      this.#size.observe(parts.stage);
    }
    this.#clockChanged();
  }

  #clock() {
    const parts = this.#parts;
    const sign = (key, mark, action) =>
      element("button", { type: "button", className: "sign", textContent: mark, title: this.#text(key), onclick: action,
        attributes: { "aria-label": this.#text(key) } });
    parts.play = sign("play", "\u25b6", () => this.#toggle());
    parts.back = sign("back", "\u2039", () => this.#step(-STEP));
    parts.on = sign("on", "\u203a", () => this.#step(STEP));
    parts.slider = element("input", { type: "range", min: "0", max: "1", step: String(STEP), value: "0",
      oninput: () => { this.#hold(); this.#seek(Number(parts.slider.value)); }, attributes: { "aria-label": this.#text("time") } });
    parts.marks = element("div", { className: "marks", attributes: { "aria-hidden": "true" } });
    parts.at = element("span", { className: "at", attributes: { "aria-hidden": "true" } });
    parts.clock = element("div", { className: "clock", attributes: { role: "group", "aria-label": this.#text("time") } },
      parts.back, parts.play, parts.on, element("div", { className: "track" }, parts.slider, parts.marks), parts.at);
    return parts.clock;
  }

  #forms() {
    const parts = this.#parts;
    parts.inputs = [];
    const forms = NAMES.map((name, slot) => {
      const field = (axis, value) =>
        element("input", { type: "text", inputMode: "decimal", autocomplete: "off", value,
          attributes: { "aria-label": `${this.#text("release", { name })}: ${axis}` } });
      const shown = this.#paths[slot]?.trace.release;
      const own = [field("x", shown ? this.#typed(shown.x) : ""), field("y", shown ? this.#typed(shown.y) : "")];
      parts.inputs.push(own);
      const set = element("fieldset", {},
        element("legend", {}, this.#text("release", { name })),
        element("label", {}, "x", own[0]), element("label", {}, "y", own[1]),
        element("button", { type: "submit", className: "main", textContent: this.#text("letGo"),
          attributes: { "aria-label": `${this.#text("letGo")}: ${this.#text("release", { name })}` } }));
      if (slot === 1) {
        parts.remove = element("button", { type: "button", textContent: this.#text("remove"), disabled: !this.#paths[1],
          onclick: () => this.#remove(), attributes: { "aria-label": `${this.#text("remove")}: ${this.#text("release", { name })}` } });
        set.append(parts.remove);
      }
      return element("form", {
        onsubmit: (event) => {
          event.preventDefault();
          const [x, y] = own.map((input) => this.#read(input.value));
          if (Number.isFinite(x) && Number.isFinite(y)) this.#release(slot, x, y);
          else this.#say(this.#text("whereNumber"));
        },
      }, set);
    });
    const choice = element("fieldset", {}, element("legend", {}, this.#text("target")));
    NAMES.forEach((name, slot) => {
      choice.append(element("label", {},
        element("input", { type: "radio", name: "target", checked: slot === this.#target, onchange: () => { this.#target = slot; } }),
        this.#text("release", { name })));
    });
    return element("div", { className: "forms" }, ...forms, choice);
  }

  #typed(value) {
    return this.#number(value, 15).replace("\u2212", "-").replace(/(\d)[.,\s\u00a0\u202f](?=\d{3}(\D|$))/g,
      (whole, digit) => (Math.abs(value) >= 1000 ? digit : whole));
  }

  /** A typed number, with a decimal point or comma. */
  #read(typed) {
    const text = typed.trim().replace("\u2212", "-").replace(",", ".");
    return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(text) ? Number(text) : NaN;
  }

  #legend() {
    const basin = this.#basin;
    const list = element("ul", {});
    for (const line of basin.legend) {
      list.append(element("li", {}, this.#swatch(line), element("span", { textContent: this.#endName(line) })));
    }
    const lines = element("ul", {}, ...["solid", "dashed"].map((key) =>
      element("li", {}, this.#stroke(key === "dashed"), element("span", { textContent: this.#text(key) }))));
    const notes = [this.#text("shading", { time: this.#seconds(basin.shading.halfTimeS) })];
    if (basin.steadyShare < 0.98) notes.unshift(this.#text("chance", { share: this.#percent(1 - basin.steadyShare) }));
    return element("div", { className: "legend" },
      element("p", { textContent: this.#text("legend"), className: "small" }), list, lines,
      ...notes.map((note) => element("p", { className: "small", textContent: note })));
  }

  #swatch(line) {
    const swatch = element("canvas", { className: "swatch", width: 64, height: 40, attributes: { "aria-hidden": "true" } });
    const ink = swatch.getContext("2d");
    ink.fillStyle = line.color;
    ink.fillRect(0, 0, 64, 40);
    if ((this.#patterned || line.alwaysPatterned) && line.patternRows) {
      ink.fillStyle = line.ink;
      const rows = line.patternRows;
      for (let y = 0; y < 20; y++) {
        for (let x = 0; x < 32; x++) {
          if (rows[y % rows.length][x % rows.length] === "1") ink.fillRect(2 * x, 2 * y, 2, 2);
        }
      }
    }
    return swatch;
  }

  #stroke(broken) {
    const draw = (name, attributes, ...children) => {
      const made = document.createElementNS("http://www.w3.org/2000/svg", name);
      Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
      made.append(...children);
      return made;
    };
    const line = (colour, width, dash) =>
      draw("path", { d: "M3 10H41", stroke: colour, "stroke-width": width, fill: "none", ...(dash ? { "stroke-dasharray": dash } : {}) });
    const svg = draw("svg", { viewBox: "0 0 44 20", "aria-hidden": "true" },
      draw("rect", { width: 44, height: 20, rx: 2, fill: "#a9a394" }),
      ...(broken ? [line(INKS[0][0], 1.8, "5 4")] : [line(INKS[0][1], 5), line(INKS[0][0], 2.2)]));
    svg.classList.add("swatch");
    return svg;
  }

  #fillTable() {
    const { table } = this.#parts;
    if (!table) return;
    const shown = NAMES.map((name, slot) => ({ name, path: this.#paths[slot] })).filter((one) => one.path);
    table.hidden = shown.length === 0;
    const rows = [
      ["place", ({ trace }) => this.#place(trace.release.x, trace.release.y, 6)],
      ["end", ({ trace }) => this.#ending(trace)],
      ["certain", ({ trace }) => this.#text(trace.sure ? "sure" : "unsure")],
      ["sealed", ({ trace }) => this.#reached(trace, "sealedAtS")],
      ["trusted", ({ trace }) => this.#horizon(trace, "trustedUntilS")],
      ["foretold", ({ trace }) => this.#horizon(trace, "foretoldUntilS")],
      ["settled", ({ trace }) => this.#reached(trace, "settledAtS")],
    ];
    table.replaceChildren(
      element("caption", { textContent: this.#text("table") }),
      element("thead", {}, element("tr", {}, element("td"),
        ...shown.map(({ name }) => element("th", { scope: "col", textContent: this.#text("release", { name }) })))),
      element("tbody", {}, ...rows.map(([key, cell]) => element("tr", {},
        element("th", { scope: "row", textContent: this.#text(key) }),
        ...shown.map(({ path }) => element("td", { textContent: cell(path) }))))));
  }

  #ending(trace) {
    const name = this.#endName(trace.outcome);
    return trace.mapOutcome ? this.#text("otherMap", { name, other: this.#endName(trace.mapOutcome) }) : name;
  }

  #reached(trace, member) {
    return trace[member] === undefined ? this.#text("notReached") : this.#seconds(trace[member]);
  }

  #horizon(trace, member) {
    return trace[member] === undefined ? this.#text("allTheWay") : this.#seconds(trace[member]);
  }

  /** Where releases end on a grid over what is shown; asked for when it is opened. */
  #mapTable() {
    const body = element("div", { className: "scroll", tabIndex: 0, attributes: { role: "group", "aria-label": this.#text("mapTable") } });
    const details = element("details", {}, element("summary", { textContent: this.#text("mapTable") }),
      element("p", { className: "small", textContent: this.#text("mapTableSay") }), body);
    details.addEventListener("toggle", () => details.open && this.#fillMapTable(body));
    this.#parts.mapTable = [details, body];
    return details;
  }

  async #fillMapTable(body) {
    const view = this.#view;
    const count = 9;
    const half = Math.min(view.side, view.width / view.scale) / 2;
    const round = (value) => Number(value.toPrecision(4));
    const along = Array.from({ length: count }, (none, i) => ((2 * i + 1) / count - 1) * half);
    const xs = along.map((d) => round(view.x + d));
    const ys = along.map((d) => round(view.y - d));
    const send = { x: ys.flatMap(() => xs), y: ys.flatMap((y) => xs.map(() => y)) };
    body.textContent = "…";
    try {
      const answer = await this.#service.json(
        `/v1/layouts/${encodeURIComponent(this.#basin.layoutId)}/outcomes?format=json&wait=3`,
        { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(send), signal: this.#stop.signal });
      const named = new Map(this.#basin.legend.map((line) => [line.name, this.#endName(line)]));
      const decimals = Math.max(view.decimals, 1);
      body.replaceChildren(element("table", {},
        element("thead", {}, element("tr", {}, element("td", { textContent: "y \\ x" }),
          ...xs.map((x) => element("th", { scope: "col", textContent: this.#number(x, decimals) })))),
        element("tbody", {}, ...ys.map((y, row) => element("tr", {},
          element("th", { scope: "row", textContent: this.#number(y, decimals) }),
          ...xs.map((x, column) => {
            const name = answer.outcome[row * count + column];
            return element("td", { textContent: named.get(name) ?? name });
          }))))));
    } catch (fault) {
      body.textContent = "";
      if (!this.#stop.signal.aborted) this.#refused(fault);
    }
  }

  #pathTable() {
    const body = element("div", { className: "scroll", tabIndex: 0, attributes: { role: "group", "aria-label": this.#text("pathTable") } });
    const details = element("details", { hidden: true }, element("summary", { textContent: this.#text("pathTable") }), body);
    details.addEventListener("toggle", () => details.open && this.#fillPathTable());
    this.#parts.pathTable = [details, body];
    return details;
  }

  #fillPathTable() {
    const [details, body] = this.#parts.pathTable;
    const shown = NAMES.map((name, slot) => ({ name, path: this.#paths[slot] })).filter((one) => one.path);
    details.hidden = shown.length === 0;
    if (!details.open || !shown.length) return;
    const decimals = Math.max(1, this.#view.decimals);
    const times = Array.from({ length: Math.floor(this.#until) + 1 }, (none, t) => t);
    body.replaceChildren(element("table", {},
      element("thead", {}, element("tr", {}, element("th", { scope: "col", textContent: this.#text("time") }),
        ...shown.map(({ name }) => element("th", { scope: "col", textContent: this.#text("release", { name }) })))),
      element("tbody", {}, ...times.map((t) => element("tr", {},
        element("th", { scope: "row", textContent: this.#seconds(t, 0) }),
        ...shown.map(({ path }) => {
          const place = this.#place(...path.at(t), decimals);
          return element("td", { textContent: t > path.trusted ? `${place} ${this.#text("beyond")}` : place });
        }))))));
  }

  #foot() {
    const foot = element("p", { className: "foot small" });
    const layout = this.#basin?.layoutId;
    if (layout) {
      const tag = encodeURIComponent(this.#language.slice(0, 2));
      foot.append(
        element("a", { href: this.#service.url(`/v1/layouts/${layout}/safety-notes?format=html&lang=${tag}`),
          textContent: this.#text(this.#basin.warnings?.length ? "warned" : "safety") }),
        element("a", { href: this.#service.url(`/embed/${layout}?lang=${tag}`), textContent: this.#text("page") }));
    }
    return foot;
  }

  /* ---- releases ---- */

  async #release(slot, x, y, play = true) {
    const name = NAMES[slot];
    this.#asking[slot]?.abort();
    const control = (this.#asking[slot] = new AbortController());
    this.#trouble.hidden = true;
    this.#fillInputs(slot, x, y);
    this.#say(this.#text("tracing", { name }));
    const bench = this.#basin.model === "bench";
    const query = bench ? "durationS=40&sampleIntervalS=0.05" : "durationS=60&sampleIntervalS=0.1";
    try {
      const trace = await this.#service.json(
        `/v1/layouts/${encodeURIComponent(this.#basin.layoutId)}/trace?x=${x}&y=${y}&${query}&format=json&wait=3`,
        { signal: control.signal, tell: (how) => this.#say(this.#how("tracing", how, { name })) });
      if (control.signal.aborted) return;
      this.#paths[slot] = new Path(trace);
      if (this.#parts.remove) this.#parts.remove.disabled = !this.#paths[1];
      this.#fillTable();
      this.#fillPathTable();
      this.#announce(slot);
      this.#time = play && !still.matches ? 0 : this.#until;
      this.#playing = play && !still.matches;
      this.#clockChanged();
      this.#redrawPaths();
      this.#run();
      this.dispatchEvent(new CustomEvent("release", { detail: { name, trace } }));
    } catch (fault) {
      if (control.signal.aborted) return;
      this.#say("");
      this.#failedRelease = [slot, x, y];
      this.#refused(fault);
    }
  }

  #fillInputs(slot, x, y) {
    this.#parts.inputs[slot][0].value = this.#typed(x);
    this.#parts.inputs[slot][1].value = this.#typed(y);
  }

  #announce(slot) {
    const { trace } = this.#paths[slot];
    const both = this.#paths.every(Boolean);
    const same = both && this.#paths[0].trace.outcome?.name === this.#paths[1].trace.outcome?.name;
    this.#say(this.#text("said", {
      name: NAMES[slot],
      place: this.#place(trace.release.x, trace.release.y, 6),
      end: this.#ending(trace),
      sure: this.#text(trace.sure ? "saidSure" : "saidUnsure"),
      sealed: this.#reached(trace, "sealedAtS"),
      trust: trace.trustedUntilS === undefined
        ? this.#text("saidTrustAll") : this.#text("saidTrust", { time: this.#seconds(trace.trustedUntilS) }),
    }) + (both ? ` ${this.#text(same ? "compared" : "differ")}` : ""));
  }

  #remove() {
    this.#asking[1]?.abort();
    this.#paths[1] = null;
    this.#parts.inputs[1].forEach((input) => { input.value = ""; });
    this.#parts.remove.disabled = true;
    this.#fillTable();
    this.#fillPathTable();
    this.#clockChanged();
    this.#redrawPaths();
    this.#say(this.#text("removed"));
  }

  /* ---- time ---- */

  get #until() {
    return Math.max(0, ...this.#paths.filter(Boolean).map((path) => path.until));
  }

  #clockChanged() {
    const { play, back, on, slider, marks } = this.#parts;
    const any = this.#paths.some(Boolean);
    [play, back, on, slider].forEach((part) => { part.disabled = !any; });
    play.hidden = still.matches;
    slider.max = String(Math.max(STEP, Math.ceil(this.#until * 10) / 10));
    marks.replaceChildren();
    marks.classList.toggle("both", this.#paths.every(Boolean));
    if (any) {
      this.#paths.forEach((path, slot) => {
        if (!path) return;
        const letter = this.#paths.every(Boolean) ? ` ${NAMES[slot]}` : "";
        for (const [key, time] of [["trustedMark", path.trusted], ["sealedMark", path.sealed]]) {
          if (time > this.#until) continue;
          // In words two marks need a line each on a narrow screen.
          const lower = letter ? slot > 0 : key === "sealedMark" && path.trusted <= this.#until;
          if (lower) marks.classList.add("both");
          const mark = element("span", { className: lower ? "mark second" : "mark", textContent: letter ? (key === "sealedMark" ? "\u25c6" : "\u2718") + letter : this.#text(key) });
          mark.style.setProperty("--at", String(time / Number(slider.max)));
          marks.append(mark);
        }
      });
    }
    this.#tick();
  }

  /** Shows the time. */
  #tick() {
    const { play, slider, at } = this.#parts;
    slider.value = String(this.#time);
    const shown = this.#seconds(this.#time);
    if (at.textContent !== shown) {
      at.textContent = shown;
      if (!this.#playing) slider.setAttribute("aria-valuetext", shown);
    }
    const key = this.#playing ? "pause" : "play";
    if (play.dataset.key !== key) {
      play.dataset.key = key;
      play.textContent = this.#playing ? "\u2016" : "\u25b6";
      play.title = this.#text(key);
      play.setAttribute("aria-label", this.#text(key));
    }
  }

  #toggle() {
    if (!this.#paths.some(Boolean) || still.matches) return;
    if (!this.#playing && this.#time >= this.#until - 1e-9) this.#seek(0);
    this.#playing = !this.#playing;
    this.#tick();
    this.#run();
  }

  #hold() {
    this.#playing = false;
  }

  /** Where no motion is wanted, the whole path stands still. */
  #rest() {
    if (!this.#parts.play) return;
    if (still.matches) {
      this.#hold();
      this.#seek(this.#until);
    }
    this.#clockChanged();
  }

  #step(by) {
    this.#hold();
    this.#seek(Math.round((this.#time + by) / STEP) * STEP);
  }

  #seek(time) {
    const earlier = time < this.#time;
    this.#time = Math.min(Math.max(0, time), this.#until);
    if (earlier) this.#redrawPaths();
    else this.#drawOn();
    this.#tick();
  }

  #run() {
    if (this.#running) return;
    this.#running = true;
    let last = performance.now();
    const frame = (now) => {
      if (!this.#playing || !this.isConnected) {
        this.#running = false;
        this.#tick();
        return;
      }
      // A page that was not shown does not make up for it by a jump.
      this.#time = Math.min(this.#until, this.#time + Math.min(0.25, Math.max(0, now - last) / 1000));
      last = now;
      if (this.#time >= this.#until) this.#playing = false;
      this.#drawOn();
      this.#tick();
      requestAnimationFrame(frame);
    };
    requestAnimationFrame((now) => { last = now; frame(now); });
  }

  #running = false;

  /* ---- drawing ---- */

  #sharpness = 1;

  #fit() {
    const { stage, map, casing, core, top } = this.#parts;
    const width = stage.clientWidth;
    const height = stage.clientHeight;
    if (!width || !this.#view) return;
    this.#sharpness = this.#printing ? 3 : Math.min(3, devicePixelRatio || 1);
    this.#view.width = width;
    this.#view.height = height;
    for (const canvas of [map, casing, core, top]) {
      canvas.width = Math.round(width * this.#sharpness);
      canvas.height = Math.round(height * this.#sharpness);
    }
    this.#moved();
  }

  #ink(name) {
    const ink = this.#parts[name].getContext("2d");
    ink.setTransform(this.#sharpness, 0, 0, this.#sharpness, 0, 0);
    return ink;
  }

  /** The view has changed. */
  #moved() {
    if (!this.#view) return;
    this.#parts.hand.classList.toggle("zoomed", this.#view.zoom > 1.001);
    this.#drawMap();
    this.#redrawPaths();
  }

  #tileCame(whole) {
    if (whole) this.#drawMap();
    if (this.#tiles.share) this.#wait(this.#how("loading", this.#tiles.share));
    else if (!this.#tiles.missing) this.#wait("");
  }

  #drawMap() {
    const view = this.#view;
    const { tileSize, zoom, origin, unitsPerTile } = this.#basin;
    if (view.width <= 1) return;
    const ink = this.#ink("map");
    ink.fillStyle = "#f4f1e9";
    ink.fillRect(0, 0, view.width, view.height);
    const sharp = Math.min(SHARPEST, devicePixelRatio || 1);
    const z = Math.min(zoom.max, Math.max(zoom.min, Math.round(Math.log2((view.scale * unitsPerTile * sharp) / tileSize))));
    const side = unitsPerTile / 2 ** z;
    const last = 2 ** z - 1;
    const cut = (value) => Math.min(last, Math.max(0, Math.floor(value)));
    const [left, right] = [cut((view.atX(0) - origin.x) / side), cut((view.atX(view.width) - origin.x) / side - 1e-9)];
    const [top, bottom] = [cut((origin.y - view.atY(0)) / side), cut((origin.y - view.atY(view.height)) / side - 1e-9)];
    const wanted = [];
    const grid = (value) => Math.round(value * this.#sharpness) / this.#sharpness;
    for (let y = top; y <= bottom; y++) {
      for (let x = left; x <= right; x++) {
        const at = [grid(view.toX(origin.x + x * side)), grid(view.toY(origin.y - y * side))];
        const to = [grid(view.toX(origin.x + (x + 1) * side)), grid(view.toY(origin.y - (y + 1) * side))];
        wanted.push({ key: `${z}/${x}/${y}`, far: Math.hypot((at[0] + to[0] - view.width) / 2, (at[1] + to[1] - view.height) / 2) });
        const found = this.#tiles.covering(z, x, y);
        if (found) {
          ink.imageSmoothingEnabled = (to[0] - at[0]) * this.#sharpness < 1.6 * found.part;
          ink.drawImage(found.picture, found.left, found.top, found.part, found.part, at[0], at[1], to[0] - at[0], to[1] - at[1]);
        }
      }
    }
    wanted.sort((a, b) => a.far - b.far);
    const keys = wanted.map((tile) => tile.key);
    if (!this.#tiles.kept.size && z > 0) keys.unshift("0/0/0");
    this.#tiles.want(keys);
    this.#drawMagnets(ink, false);
    this.#drawScale(ink);
    if (!this.#tiles.missing) this.#wait("");
    this.#parts.map.dataset.state = !this.#tiles.missing ? "whole" : this.#tiles.kept.size ? "coarse" : "empty";
  }

  /** Outlines under the paths, or labels over them. */
  #drawMagnets(ink, labels) {
    const view = this.#view;
    ink.lineJoin = "round";
    ink.font = "600 13px system-ui,sans-serif";
    ink.textAlign = "center";
    ink.textBaseline = "middle";
    for (const magnet of this.#layout.layout?.magnets ?? []) {
      const x = view.toX(magnet.x);
      const y = view.toY(magnet.y);
      if (labels) {
        if (magnet.label) this.#drawLabel(ink, magnet, x, y);
        continue;
      }
      ink.beginPath();
      if (magnet.shape === "block") {
        const turn = ((magnet.turnDeg ?? 0) * Math.PI) / 180;
        const [a, b] = [(magnet.lengthMm * view.scale) / 2, (magnet.widthMm * view.scale) / 2];
        [[a, b], [-a, b], [-a, -b], [a, -b]].forEach(([u, v]) =>
          ink.lineTo(x + u * Math.cos(turn) - v * Math.sin(turn), y - u * Math.sin(turn) - v * Math.cos(turn)));
        ink.closePath();
      } else {
        ink.arc(x, y, magnet.diameterMm ? (magnet.diameterMm * view.scale) / 2 : 6, 0, 2 * Math.PI);
        if (magnet.innerDiameterMm) {
          const inner = (magnet.innerDiameterMm * view.scale) / 2;
          ink.moveTo(x + inner, y);
          ink.arc(x, y, inner, 0, 2 * Math.PI);
        }
      }
      this.#twice(ink, () => ink.stroke(), 3.6, 1.5);
    }
  }

  /** Rest points that no label stands for have their number on the map, as in the legend. */
  #drawNumbers(ink) {
    ink.font = "600 11px system-ui,sans-serif";
    for (const line of this.#basin.legend) {
      if (line.label || line.x === undefined) continue;
      const [x, y] = [this.#view.toX(line.x), this.#view.toY(line.y)];
      ink.beginPath();
      ink.arc(x, y, 9, 0, 7);
      ink.fillStyle = "#fcfbf7";
      ink.fill();
      ink.strokeStyle = "#22262b";
      ink.lineWidth = 1.2;
      ink.stroke();
      ink.fillStyle = "#22262b";
      ink.fillText(this.#restNumber(line), x, y + 0.5);
    }
  }

  #restNumber(end) {
    return String(end.restPointId ?? "").replace(/\D+/g, "");
  }

  #drawLabel(ink, magnet, x, y) {
    const room = magnet.diameterMm || magnet.lengthMm ? 0 : 15;
    const text = magnet.label.length > 18 ? `${magnet.label.slice(0, 17)}…` : magnet.label;
    ink.strokeStyle = "#fcfbf7";
    ink.lineWidth = 4;
    ink.strokeText(text, x, y + room);
    ink.fillStyle = "#22262b";
    ink.fillText(text, x, y + room);
  }

  /** A dark line with a light one under it. */
  #twice(ink, stroke, wide, narrow) {
    ink.strokeStyle = "#fcfbf7";
    ink.lineWidth = wide;
    stroke();
    ink.strokeStyle = "#22262b";
    ink.lineWidth = narrow;
    stroke();
  }

  #drawScale(ink) {
    const view = this.#view;
    const about = (view.width / 5) / view.scale;
    const power = 10 ** Math.floor(Math.log10(about));
    const length = [5, 2, 1].map((step) => step * power).find((step) => step <= about) ?? power;
    const px = length * view.scale;
    const [x, y] = [12, view.height - 12];
    const unit = this.#basin.units.length === "mm" ? "\u00a0mm" : "";
    const label = length < 1e-4 ? length.toExponential(0) : this.#number(length, 6);
    ink.font = "12px system-ui,sans-serif";
    ink.textAlign = "start";
    ink.textBaseline = "alphabetic";
    const text = label + unit;
    ink.fillStyle = "#fcfbf7e6";
    ink.fillRect(x - 6, y - 22, Math.max(px, ink.measureText(text).width) + 12, 28);
    ink.fillStyle = "#22262b";
    ink.fillText(text, x, y - 7);
    ink.fillRect(x, y - 2, px, 2);
    ink.fillRect(x, y - 5, 1.5, 5);
    ink.fillRect(x + px - 1.5, y - 5, 1.5, 5);
  }

  #redrawPaths() {
    if (!this.#view) return;
    for (const name of ["casing", "core"]) {
      const ink = this.#ink(name);
      // A canvas is printed as what was drawn, where clearing would cover all that lies beneath.
      if (!this.#printing) ink.clearRect(0, 0, this.#view.width, this.#view.height);
    }
    this.#drawnUntil = [0, 0];
    this.#drawOn();
  }

  /** Draws what has been travelled since the last time, and the bobs. */
  #drawOn() {
    if (!this.#view || !this.#parts.casing) return;
    this.#paths.forEach((path, slot) => {
      if (!path) return;
      const from = this.#drawnUntil[slot];
      const to = Math.min(this.#time, path.until);
      if (to > from) {
        const sure = Math.min(to, path.trusted);
        if (sure > from) this.#piece(path, slot, Math.max(0, from - 0.02), sure, true);
        // Beyond trust the line is broken by time, so that it tells the speed too.
        const dash = 0.06;
        for (let t = Math.max(from, path.trusted); t < to; ) {
          const place = Math.floor((t - path.trusted) / dash + 1e-9);
          const end = Math.min(to, path.trusted + (place + 1) * dash);
          if (place % 2 === 1) this.#piece(path, slot, t, end, false);
          t = end <= t ? to : end;
        }
        this.#drawnUntil[slot] = to;
      }
    });
    this.#drawTop();
  }

  #piece(path, slot, from, to, trusted) {
    const view = this.#view;
    const steps = Math.max(1, Math.ceil((to - from) / (this.#basin.model === "bench" ? 0.0125 : 0.05)));
    const [core, casing] = INKS[slot];
    for (const [name, colour, width] of trusted ? [["casing", casing, 5], ["core", core, 2.2]] : [["core", `${core}d9`, 1.8]]) {
      const ink = this.#ink(name);
      ink.beginPath();
      for (let i = 0; i <= steps; i++) {
        const [x, y] = path.at(from + ((to - from) * i) / steps);
        ink.lineTo(view.toX(x), view.toY(y));
      }
      ink.strokeStyle = colour;
      ink.lineWidth = width;
      ink.lineJoin = "round";
      ink.lineCap = "butt";
      ink.stroke();
    }
  }

  #drawTop() {
    const view = this.#view;
    const ink = this.#ink("top");
    if (!this.#printing) ink.clearRect(0, 0, view.width, view.height);
    this.#drawMagnets(ink, true);
    this.#drawNumbers(ink);
    ink.font = "600 12px system-ui,sans-serif";
    ink.textBaseline = "middle";
    this.#paths.forEach((path, slot) => {
      if (!path) return;
      const [dark, light] = INKS[slot];
      const point = (time) => {
        const [x, y] = path.at(time);
        return [view.toX(x), view.toY(y)];
      };
      const owner = this.#paths.every(Boolean) ? `${NAMES[slot]}: ` : "";
      const tag = (x, y, text) => {
        const left = slot === 1 && x > 12 + ink.measureText(text).width;
        const right = left || x + 12 + ink.measureText(text).width > view.width;
        ink.textAlign = right ? "end" : "start";
        ink.strokeStyle = "#fcfbf7";
        ink.lineWidth = 4;
        ink.lineJoin = "round";
        ink.strokeText(text, x + (right ? -11 : 11), y);
        ink.fillStyle = "#22262b";
        ink.fillText(text, x + (right ? -11 : 11), y);
      };
      const [sx, sy] = point(0);
      ink.beginPath();
      ink.arc(sx, sy, 5, 0, 7);
      this.#twice(ink, () => ink.stroke(), 4.5, 2);
      tag(sx, sy, NAMES[slot]);
      if (this.#time >= path.trusted) {
        const [x, y] = point(path.trusted);
        ink.beginPath();
        ink.moveTo(x - 6, y - 6);
        ink.lineTo(x + 6, y + 6);
        ink.moveTo(x + 6, y - 6);
        ink.lineTo(x - 6, y + 6);
        this.#twice(ink, () => ink.stroke(), 5.5, 2.4);
        tag(x, y, owner + this.#text("trustedMark"));
      }
      if (this.#time >= path.sealed) {
        const [x, y] = point(path.sealed);
        ink.beginPath();
        [[0, -7], [7, 0], [0, 7], [-7, 0]].forEach(([u, v]) => ink.lineTo(x + u, y + v));
        ink.closePath();
        this.#twice(ink, () => ink.stroke(), 4.5, 2);
        ink.fillStyle = "#fcfbf7";
        ink.fill();
        tag(x, y, owner + this.#text("sealedMark"));
      }
      const [x, y] = point(Math.min(this.#time, path.until));
      ink.beginPath();
      ink.arc(x, y, 9, 0, 7);
      const trusted = this.#time <= path.trusted;
      ink.globalAlpha = trusted ? 1 : 0.75;
      ink.fillStyle = dark;
      ink.fill();
      ink.strokeStyle = light;
      ink.lineWidth = 2.5;
      ink.setLineDash(trusted ? [] : [3, 3]);
      ink.stroke();
      ink.setLineDash([]);
      ink.globalAlpha = 1;
      ink.fillStyle = light;
      ink.textAlign = "center";
      ink.fillText(NAMES[slot], x, y + 0.5);
    });
    if (this.#cross && this.#crossSeen) {
      const [x, y] = [view.toX(this.#cross[0]), view.toY(this.#cross[1])];
      ink.beginPath();
      [[-16, 0, -4, 0], [4, 0, 16, 0], [0, -16, 0, -4], [0, 4, 0, 16]].forEach(([a, b, c, d]) => {
        ink.moveTo(x + a, y + b);
        ink.lineTo(x + c, y + d);
      });
      this.#twice(ink, () => ink.stroke(), 5, 2);
    }
  }

  #crossSeen = false;
  #printing = false;

  #printed(on) {
    this.#printing = on;
    if (!this.#view) return;
    this.#hold();
    if (on) this.#time = this.#until;
    this.#fit();
    this.#tick();
  }

  /* ---- hands ---- */

  #zoom(factor, px, py) {
    if (!this.#view) return;
    this.#view.zoomBy(factor, px, py);
    this.#moved();
  }

  #pattern() {
    this.#patterned = !this.#patterned;
    this.#parts.pattern.setAttribute("aria-pressed", String(this.#patterned));
    if (!this.#basin) return;
    this.#tiles.pattern(this.#patterned);
    this.#root.querySelector(".legend").replaceWith(this.#legend());
    this.#drawMap();
  }

  #listen(hand) {
    const fingers = new Map();
    let moved = false;
    const spot = (event) => {
      const box = hand.getBoundingClientRect();
      return [event.clientX - box.left, event.clientY - box.top];
    };
    hand.addEventListener("pointerdown", (event) => {
      if (event.button || !this.#view) return;
      if (!fingers.size) moved = false;
      fingers.set(event.pointerId, spot(event));
      hand.setPointerCapture(event.pointerId);
    });
    hand.addEventListener("pointermove", (event) => {
      if (!this.#view) return;
      const [x, y] = spot(event);
      if (event.pointerType === "mouse") {
        this.#parts.where.textContent = this.#place(this.#view.atX(x), this.#view.atY(y), this.#view.decimals);
      }
      const before = fingers.get(event.pointerId);
      if (!before) return;
      if (fingers.size === 1) {
        if (!moved && Math.hypot(x - before[0], y - before[1]) < 6) return;
        moved = true;
        this.#view.panBy(x - before[0], y - before[1]);
        fingers.set(event.pointerId, [x, y]);
      } else {
        moved = true;
        const [other] = [...fingers].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
        const apart = (place) => Math.max(1, Math.hypot(place[0] - other[0], place[1] - other[1]));
        this.#view.zoomBy(apart([x, y]) / apart(before), (x + other[0]) / 2, (y + other[1]) / 2);
        this.#view.panBy((x - before[0]) / 2, (y - before[1]) / 2);
        fingers.set(event.pointerId, [x, y]);
      }
      this.#moved();
    });
    const up = (event) => {
      const began = fingers.get(event.pointerId);
      fingers.delete(event.pointerId);
      if (!began || moved || event.type === "pointercancel") return;
      const [x, y] = spot(event);
      this.#crossSeen = false;
      this.#cross = [this.#view.atX(x), this.#view.atY(y)];
      this.#letGo();
    };
    hand.addEventListener("pointerup", up);
    hand.addEventListener("pointercancel", up);
    hand.addEventListener("pointerleave", () => { this.#parts.where.textContent = ""; });
    hand.addEventListener("wheel", (event) => {
      // The page scrolls on unless the map is meant: with Ctrl, by a pinch, or once the map has the focus.
      const meant = event.ctrlKey || event.metaKey || this.#root.activeElement === hand;
      if (!this.#view || !meant || (event.deltaY > 0 && this.#view.zoom <= 1 && !event.ctrlKey)) return;
      event.preventDefault();
      this.#zoom(2 ** (-event.deltaY / (event.deltaMode ? 6 : 200)), ...spot(event));
    }, { passive: false });
    hand.addEventListener("keydown", (event) => this.#key(event));
    hand.addEventListener("focus", () => {
      this.#crossSeen = hand.matches(":focus-visible");
      if (this.#view) this.#drawTop();
    });
    hand.addEventListener("blur", () => {
      this.#crossSeen = false;
      if (this.#view) this.#drawTop();
    });
  }

  /** Releases at the crosshair, the place written as exactly as the picture shows it. */
  #letGo() {
    const [x, y] = this.#cross.map((value) => Number(value.toFixed(this.#view.decimals)) + 0);
    this.#release(this.#target, x, y);
  }

  #key(event) {
    const view = this.#view;
    if (!view || event.ctrlKey || event.metaKey || event.altKey) return;
    const by = event.shiftKey ? 1 : 16;
    const ways = { ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, -by], ArrowDown: [0, by] };
    const centre = () => [view.toX(this.#cross[0]), view.toY(this.#cross[1])];
    const actions = {
      "+": () => this.#zoom(2, ...centre()),
      "=": () => this.#zoom(2, ...centre()),
      "-": () => this.#zoom(0.5, ...centre()),
      0: () => { view.home(); this.#moved(); },
      Home: () => { view.home(); this.#moved(); },
      Enter: () => this.#letGo(),
      " ": () => this.#toggle(),
      ",": () => this.#step(-STEP),
      ".": () => this.#step(STEP),
      a: () => this.#aim(0),
      b: () => this.#aim(1),
    };
    if (event.key in ways) this.#walk(...ways[event.key]);
    else if (event.key in actions) actions[event.key]();
    else return;
    event.preventDefault();
    this.#crossSeen = true;
    this.#drawTop();
  }

  #aim(slot) {
    this.#target = slot;
    this.#root.querySelectorAll("input[type=radio]")[slot].checked = true;
    this.#say(`${this.#text("target")}: ${this.#text("release", { name: NAMES[slot] })}`);
  }

  /** Moves the crosshair; near the edge the map moves under it. */
  #walk(dx, dy) {
    const view = this.#view;
    const edge = 32;
    let x = view.toX(this.#cross[0]) + dx;
    let y = view.toY(this.#cross[1]) + dy;
    const panX = Math.min(0, view.width - edge - x) || Math.max(0, edge - x);
    const panY = Math.min(0, view.height - edge - y) || Math.max(0, edge - y);
    const place = [view.atX(x), view.atY(y)];
    if (panX || panY) {
      view.panBy(panX, panY);
      this.#moved();
    }
    x = Math.min(Math.max(view.toX(place[0]), 0), view.width);
    y = Math.min(Math.max(view.toY(place[1]), 0), view.height);
    this.#cross = [view.atX(x), view.atY(y)];
    const shown = this.#place(...this.#cross, view.decimals);
    this.#parts.where.textContent = shown;
    clearTimeout(this.#telling);
    this.#telling = setTimeout(() => this.#say(this.#text("crosshair", { place: shown })), 500);
  }

  #telling = 0;
}

customElements.define("lodeswing-figure", LodeswingFigure);
