// The figure for course sites in a real browser, on pages of the service and on a page of another origin under the policy that
// the service names: everything a hand, a keyboard or a screen reader meets, and what it costs.
// usage: node figure.mjs <service's address> [folder for screenshots]
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { join } from "node:path";
import { chromium } from "playwright-core";

const service = process.argv[2];
const pictures = process.argv[3];
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const say = (what) => console.log(`figure: ${what}`);
const began = performance.now();

const store = async (layout) => {
  const reply = await fetch(`${service}/v1/layouts`, {
    method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(layout),
  });
  assert.ok(reply.ok, await reply.clone().text());
  return (await reply.json()).layoutId;
};
const plane = (title, drag) => ({
  model: "textbook", title, omega0: 0.5, drag, height: 0.3,
  magnets: [
    { x: 0.577, y: 0, strength: 1, label: "Tide" }, { x: -0.2885, y: 0.5, strength: 1, label: "Dune" },
    { x: -0.2885, y: -0.5, strength: 1, label: "Reef" },
  ],
});
const layout = await store(plane("Which station first?", 0.4));
const hostile = await store({
  ...plane("</title><img src=x onerror=document.title='broken'>", 0.5),
  magnets: [{ x: 0.577, y: 0, strength: 1, label: "<img src=x onerror=document.title='broken'>" }, { x: -0.577, y: 0, strength: 1 }],
});
const sample = async (name) => (await (await fetch(`${service}/v1/sample-layouts/${name}?format=text`)).text()).trim();
const bench = await sample("three-stations");
const slow = await store({
  ...(await (await fetch(`${service}/v1/layouts/${await sample("heavy-bar")}`)).json()).layout, title: "The slow visitor again", gapMm: 41 + Math.random(),
});

const unescaped = (text) => text.replace(/&(lt|gt|quot|#39|amp);/g, (whole, name) =>
  ({ lt: "<", gt: ">", quot: '"', "#39": "'", amp: "&" })[name]);
const blocks = async (id, query = "") => {
  const page = await (await fetch(`${service}/embed/${id}${query}`)).text();
  return [...page.matchAll(/<pre><code>([\s\S]*?)<\/code><\/pre>/g)].map((found) => unescaped(found[1]));
};
const [snippet, frame, policy] = await blocks(layout, "?x=1.2&y=0.7");

/** The course site: another origin, with the policy that the service's page tells to have. */
const bodies = new Map();
const site = createServer((request, response) => {
  const body = bodies.get(request.url);
  if (!body) { response.writeHead(204).end(); return; }
  response.writeHead(200, {
    "Content-Type": "text/html; charset=utf-8",
    "Content-Security-Policy": `default-src 'none'; ${policy}; frame-src ${service}; require-trusted-types-for 'script'`,
  });
  response.end(`<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>A course</title>`
    + `<main><h1>A course</h1>${body}</main></html>`);
});
await new Promise((done) => site.listen(0, "127.0.0.1", done));
const course = `http://127.0.0.1:${site.address().port}`;

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"],
});
let expected = null;
const faults = [];
const open = async (url, options = {}) => {
  const context = await browser.newContext({ viewport: { width: 900, height: 1000 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(60000);
  page.on("console", (line) => line.type() === "error" && !expected?.test(line.text()) && faults.push(line.text()));
  page.on("pageerror", (fault) => faults.push(String(fault)));
  await page.goto(url);
  return page;
};
const inside = (page, read, given) =>
  page.evaluate(`(${read})(document.querySelector("lodeswing-figure").shadowRoot, ${JSON.stringify(given ?? null)})`);
// Looked for within the page, in one piece: its policy lets nothing be evaluated later. Gives the milliseconds since the
// navigation began.
const until = (page, test, given) =>
  page.evaluate(`new Promise((done, gone) => {
    const test = ${test};
    const end = performance.now() + 60000;
    const look = () => {
      const root = document.querySelector("lodeswing-figure")?.shadowRoot;
      if (root && test(root, ${JSON.stringify(given ?? null)})) done(performance.now());
      else if (performance.now() > end) gone(new Error("in vain: " + test + root?.querySelector(".trouble")?.textContent));
      else setTimeout(look, 10);
    };
    look();
  })`);
const whole = (page) => until(page, (root) => root.querySelector("canvas")?.dataset.state === "whole");
const seen = (page) => until(page, (root) => ["coarse", "whole"].includes(root.querySelector("canvas")?.dataset.state));
const ended = (page, columns = 1) =>
  until(page, (root, count) => root.querySelectorAll("table thead th[scope=col]").length === count, columns);
const cells = (page) =>
  inside(page, (root) => [...root.querySelectorAll(".right > table tbody tr")].map((row) => [...row.cells].map((cell) => cell.textContent)));
const shot = (page, name) => (pictures ? page.screenshot({ path: join(pictures, `figure-${name}.png`), fullPage: true }) : null);
const accessible = async (page, name) => {
  // The page's own policy would not let the examining script in, so this browser is told to pass over it here alone.
  const found = await page.evaluate(`${axe}; axe.run(document, { resultTypes: ["violations"] })`);
  assert.deepEqual(found.violations.map((one) => [one.id, one.nodes.map((node) => [node.target, node.failureSummary])]), [], name);
};
const time = (page) => inside(page, (root) => Number(root.querySelector("input[type=range]").value));
const label = (page, name) => page.locator("lodeswing-figure").getByRole("button", { name, exact: true });
const hand = (page) => page.locator("lodeswing-figure .hand");

try {
  // What it costs: nothing of this layout computed, nothing in the browser's memory; then all of it computed.
  const cold = await open(`${service}/embed/${layout}/frame`);
  say(`first picture of a layout of which nothing was computed ${Math.round(await seen(cold))} ms after the navigation began`);
  await whole(cold);
  const warm = await open(`${service}/embed/${layout}/frame`);
  const first = await seen(warm);
  const sharp = await whole(warm);
  say(`first picture with the service's results kept and an empty browser ${Math.round(first)} ms, sharp ${Math.round(sharp)} ms`);
  const asked = await warm.evaluate(() => performance.getEntriesByType("resource").filter((one) => one.name.includes("/basin?")).length);
  assert.equal(asked, 1, "what the page asks for ahead is not what the script asks for");
  const bytes = await warm.evaluate(() =>
    performance.getEntriesByType("resource").concat(performance.getEntriesByType("navigation"))
      .map((one) => [new URL(one.name).pathname.replace(/.*\/(tiles)\/.*/, "$1"), one.transferSize]));
  const sum = (tiles) => bytes.filter(([name]) => (name === "tiles") === tiles).reduce((all, [, size]) => all + size, 0);
  say(`bytes sent for page, script and documents ${sum(false)}, for tiles ${sum(true)}`);
  assert.ok(sum(false) > 10_000 && sum(false) < 60_000, JSON.stringify(bytes));
  await cold.context().close();

  // Zoom from what the browser has: in and out once, then timed.
  for (const name of ["Zoom in", "Zoom in", "Zoom out", "Zoom out"]) {
    await label(warm, name).click();
    await whole(warm);
  }
  const steps = [];
  for (const name of ["Zoom in", "Zoom in", "Zoom out", "Zoom out"]) {
    steps.push(await inside(warm, (root, given) => new Promise((done) => {
      const from = performance.now();
      root.querySelector(`button[aria-label="${given}"]`).click();
      const drawn = root.querySelector("canvas").dataset.state === "whole";
      requestAnimationFrame(() => requestAnimationFrame((now) => done(drawn ? Math.round(now - from) : NaN)));
    }), name));
  }
  say(`zoom steps with the tiles kept ${steps.join(", ")} ms to the second frame after the click`);
  assert.ok(steps.every((step) => step > 0), "a tile that was kept was asked for again");

  // A tap, true time, frames.
  const box = await hand(warm).boundingBox();
  const frames = (ms) => warm.evaluate((last) => new Promise((done) => {
    let count = 0;
    const from = performance.now();
    const frame = (now) => (now - from > last ? done((1000 * count) / (now - from)) : (count++, requestAnimationFrame(frame)));
    requestAnimationFrame(frame);
  }), ms);
  const idle = await frames(1500);
  await warm.mouse.click(box.x + box.width * 0.8, box.y + box.height * 0.3);
  await ended(warm);
  const [t0, clock0] = await warm.evaluate(() => [Number(document.querySelector("lodeswing-figure").shadowRoot
    .querySelector("input[type=range]").value), performance.now()]);
  const running = await frames(3000);
  const [t1, clock1] = await warm.evaluate(() => [Number(document.querySelector("lodeswing-figure").shadowRoot
    .querySelector("input[type=range]").value), performance.now()]);
  say(`frames a second while a path runs ${running.toFixed(1)}, of the same page at rest ${idle.toFixed(1)}`);
  assert.ok(running > 0.5 * idle, `${running} of ${idle} frames`);
  const pace = (1000 * (t1 - t0)) / (clock1 - clock0);
  assert.ok(pace > 0.85 && pace < 1.1, `time runs at ${pace} of true time`);
  say(`time runs at ${pace.toFixed(3)} of true time`);
  await label(warm, "Pause").click();
  const held = await time(warm);
  await label(warm, "A tenth of a second on").click();
  assert.ok(Math.abs((await time(warm)) - held - 0.1) < 0.11);
  await label(warm, "A tenth of a second back").click();
  await warm.waitForTimeout(300);
  assert.ok(Math.abs((await time(warm)) - held) < 0.11);

  // What the figure says is what the service says.
  const [place, ends, , sealed] = (await cells(warm)).map((row) => row[1]);
  const [x, y] = place.replaceAll("\u2212", "-").match(/-?\d+(\.\d+)?/g).map(Number);
  const told = await (await fetch(`${service}/v1/layouts/${layout}/outcome?x=${x}&y=${y}`)).json();
  assert.equal(ends.split(" (")[0], told.outcome.name);
  assert.ok(Math.abs(Number(sealed) - told.sealedAtS) <= 0.05001, `${sealed} ${told.sealedAtS}`);

  // Pan by dragging, zoom by the wheel, and no release by either.
  const shown = () => inside(warm, (root) => root.querySelector(".where").textContent);
  await warm.mouse.move(box.x + 100, box.y + 100);
  const before = await shown();
  await warm.keyboard.down("Control");
  await warm.mouse.wheel(0, -400);
  await warm.keyboard.up("Control");
  await warm.mouse.down();
  await warm.mouse.move(box.x + 180, box.y + 160, { steps: 4 });
  await warm.mouse.up();
  await warm.mouse.move(box.x + 100, box.y + 100);
  assert.notEqual(await shown(), before);
  assert.equal((await cells(warm))[0][1], place);
  await whole(warm);
  await shot(warm, "zoomed");

  // Compare: a typed second release, with a decimal comma too.
  const typed = warm.locator("lodeswing-figure").getByLabel("Release B: x");
  await typed.fill("-1,5");
  await warm.locator("lodeswing-figure").getByLabel("Release B: y").fill("0.72");
  await warm.keyboard.press("Enter");
  await ended(warm, 2);
  assert.equal((await cells(warm))[0][2].replace("\u2212", "-"), "(-1.5; 0.72)");
  await shot(warm, "compare");
  await label(warm, "Remove: Release B").click();
  await ended(warm, 1);
  await typed.fill("nowhere");
  await warm.keyboard.press("Enter");
  assert.match(await inside(warm, (root) => root.querySelector(".say").textContent), /numbers/);
  await typed.fill("99999");
  await warm.locator("lodeswing-figure").getByLabel("Release B: y").fill("0");
  await warm.context().close();

  // By the keyboard alone, and to a screen reader.
  const keys = await open(`${service}/embed/${layout}`, { bypassCSP: true });
  await whole(keys);
  for (let i = 0; i < 8 && !(await hand(keys).evaluate((it) => it.matches(":focus"))); i++) await keys.keyboard.press("Tab");
  assert.ok(await hand(keys).evaluate((it) => it.matches(":focus")), "the map is not among the first stops of the tabulator");
  for (const key of ["+", "ArrowRight", "ArrowRight", "ArrowUp", "Shift+ArrowUp", "-", "b", "a"]) await keys.keyboard.press(key);
  await keys.waitForTimeout(700);
  const crosshair = await inside(keys, (root) => root.querySelector(".where").textContent);
  await keys.keyboard.press("Enter");
  await ended(keys);
  const [right, above] = (await cells(keys))[0][1].replaceAll("\u2212", "-").match(/-?\d+(\.\d+)?/g).map(Number);
  const [cx, cy] = crosshair.replaceAll("\u2212", "-").match(/-?\d+(\.\d+)?/g).map(Number);
  assert.ok(Math.hypot(right - cx, above - cy) < 0.02, `${crosshair} ${right} ${above}`);
  assert.match(await inside(keys, (root) => root.querySelector(".say").textContent), /Release A from .* ends at (Tide|Dune|Reef)/);
  await keys.keyboard.press(" ");
  const paused = await time(keys);
  await keys.keyboard.press(".");
  assert.ok((await time(keys)) > paused);
  await shot(keys, "keyboard");
  for (const name of ["The map as a table", "The paths as a table"]) await keys.locator("lodeswing-figure").getByText(name).click();
  await until(keys, (root) => root.querySelectorAll(".scroll table").length === 2);
  const named = await inside(keys, (root) => [...new Set([...root.querySelectorAll(".scroll table")[0].querySelectorAll("td")].slice(1)
    .map((cell) => cell.textContent))].sort());
  assert.ok(named.every((name) => ["Dune", "Reef", "Tide", "undecided"].includes(name)) && named.length >= 3, named.join());
  await accessible(keys, "light");
  await shot(keys, "tables");
  await keys.emulateMedia({ media: "print" });
  assert.equal(await inside(keys, (root) => getComputedStyle(root.querySelector(".tools")).display), "none");
  if (pictures) await keys.pdf({ path: join(pictures, "figure-print.pdf"), format: "A4" });
  await keys.context().close();

  // Dark, narrow, by touch, in German and Spanish, without motion.
  const phone = await open(`${service}/embed/${layout}?x=1.2&y=0.7&lang=de`, {
    viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true, colorScheme: "dark", bypassCSP: true,
  });
  await whole(phone);
  await ended(phone);
  assert.ok((await phone.evaluate(() => document.documentElement.scrollWidth)) <= 360);
  assert.equal((await cells(phone))[0][0], "Losgelassen bei");
  assert.equal((await cells(phone))[0][1], "(1,2; 0,7)");
  assert.equal(await inside(phone, (root) => getComputedStyle(root.querySelector(".figure")).backgroundColor), "rgb(27, 31, 36)");
  const area = await hand(phone).boundingBox();
  const touch = await phone.context().newCDPSession(phone);
  const fingers = (type, ...places) => touch.send("Input.dispatchTouchEvent", { type, touchPoints: places.map(([px, py], id) => ({ x: px, y: py, id })) });
  const [mx, my] = [area.x + area.width / 2, area.y + area.height / 2];
  await fingers("touchStart", [mx - 30, my], [mx + 30, my]);
  for (let i = 1; i <= 5; i++) await fingers("touchMove", [mx - 30 - 12 * i, my], [mx + 30 + 12 * i, my]);
  await fingers("touchEnd");
  assert.ok(await hand(phone).evaluate((it) => it.classList.contains("zoomed")), "two fingers do not zoom");
  const last = (await cells(phone))[0][1];
  await phone.touchscreen.tap(area.x + 80, area.y + 200);
  await until(phone, (root, old) => root.querySelector(".right > table tbody td").textContent !== old, last);
  await accessible(phone, "dark, narrow");
  await shot(phone, "phone-dark-german");
  await phone.context().close();
  const calm = await open(`${service}/embed/${bench}/frame?x=-70&y=30&lang=es`, { reducedMotion: "reduce", bypassCSP: true });
  await ended(calm);
  assert.equal(await inside(calm, (root) => root.querySelectorAll('.clock button:not([hidden])').length), 2);
  const rest = await time(calm);
  await calm.waitForTimeout(500);
  assert.equal(await time(calm), rest);
  const rows = await cells(calm);
  const trace = await (await fetch(`${service}/v1/layouts/${bench}/outcome?x=-70&y=30`)).json();
  assert.equal(rows[4][1], `${trace.trustedUntilS.toFixed(1).replace(".", ",")}\u00a0s`);
  assert.match(await inside(calm, (root) => root.querySelector(".foot").textContent), /imanes fuertes/);
  await accessible(calm, "Spanish, without motion");
  await shot(calm, "bench-spanish");
  await calm.context().close();

  // On another site: the copied lines, the copied frame, hostile words, what is not there, and the way gone.
  bodies.set("/copied", snippet);
  bodies.set("/framed", frame);
  bodies.set("/hostile", (await blocks(hostile))[0]);
  bodies.set("/missing", snippet.replaceAll(layout, "lay-aaaaaaaaaaaaaaaaaaaaaaaaaa"));
  bodies.set("/changed", snippet.replace(/sha384-./, (found) => (found.endsWith("A") ? "sha384-B" : "sha384-A")));
  bodies.set("/slow", (await blocks(slow))[0]);
  const copied = await open(`${course}/copied`);
  await whole(copied);
  await ended(copied);
  await shot(copied, "course");
  expected = /ERR_INTERNET_DISCONNECTED/;
  await copied.context().setOffline(true);
  await copied.locator("lodeswing-figure").getByLabel("Release A: x").fill("1.3");
  await copied.keyboard.press("Enter");
  await until(copied, (root) => root.querySelector(".trouble")?.hidden === false);
  assert.match(await inside(copied, (root) => root.querySelector(".trouble").textContent), /cannot be reached/);
  await shot(copied, "offline");
  await copied.context().setOffline(false);
  expected = null;
  await until(copied, (root) => root.querySelector(".trouble").hidden);
  await until(copied, (root) => root.querySelector(".right > table tbody td")?.textContent.startsWith("(1.3"));
  await copied.context().close();

  // A figure far down asks for nothing until it is near; another language, asked for later, keeps what is shown.
  bodies.set("/below", `${"<p>On.</p>".repeat(120)}${snippet}`);
  const below = await open(`${course}/below`);
  await below.waitForTimeout(500);
  const requests = () => below.evaluate(() => performance.getEntriesByType("resource").filter((one) => one.name.includes("/v1/")).length);
  assert.equal(await requests(), 0);
  assert.ok(await below.locator("lodeswing-figure a").isVisible());
  await below.locator("lodeswing-figure").scrollIntoViewIfNeeded();
  await ended(below);
  assert.ok((await requests()) >= 3);
  await below.evaluate(() => { document.querySelector("lodeswing-figure").lang = "de"; });
  await until(below, (root) => root.querySelector(".right > table caption")?.textContent === "Die Starts");
  await whole(below);
  assert.equal((await cells(below))[0][1], "(1,2; 0,7)");
  await below.context().close();

  const framed = await open(`${course}/framed`);
  await framed.frameLocator("iframe").locator("lodeswing-figure canvas[data-state=whole]").first().waitFor();
  await framed.context().close();

  const words = await open(`${course}/hostile`);
  await whole(words);
  assert.equal(await words.title(), "A course");
  assert.equal(await inside(words, (root) => root.querySelectorAll("img, script").length), 0);
  assert.match(await inside(words, (root) => root.querySelector(".legend").textContent), /<img src=x/);
  await words.context().close();

  expected = /404|422/;
  const missing = await open(`${course}/missing`);
  await until(missing, (root) => root.querySelector(".trouble")?.hidden === false);
  assert.match(await inside(missing, (root) => root.querySelector(".trouble").textContent), /not known to the service/);
  await missing.context().close();
  const far = await open(`${service}/embed/${bench}/frame?x=5000&y=0`);
  await until(far, (root) => root.querySelector(".trouble")?.hidden === false);
  assert.match(await inside(far, (root) => root.querySelector(".trouble").textContent), /cannot be let go there/);
  await far.context().close();

  // Bytes other than those that were copied do not run; what stands in the element stays.
  expected = /integrity|digest/i;
  const changed = await open(`${course}/changed`);
  await changed.locator("lodeswing-figure a").waitFor();
  assert.equal(await changed.evaluate(() => customElements.get("lodeswing-figure") === undefined), true);
  await changed.context().close();
  expected = null;

  // Without scripts a picture and a link.
  const plain = await open(`${course}/copied`, { javaScriptEnabled: false });
  await plain.locator("lodeswing-figure img").waitFor();
  assert.ok(await plain.locator("lodeswing-figure a").isVisible());
  const [drawn] = await Promise.all([
    plain.context().request.get(await plain.locator("lodeswing-figure img").getAttribute("src")),
  ]);
  assert.equal(drawn.headers()["content-type"], "image/png");
  await shot(plain, "without-scripts");
  await plain.context().close();

  // Long work tells how far it is, and is withdrawn from when nobody looks any more.
  const long = await open(`${course}/slow`);
  const [pending] = await Promise.all([
    long.waitForResponse((reply) => reply.status() === 202),
    until(long, (root) => /being computed/.test(root.querySelector(".wait")?.textContent ?? "")),
  ]);
  const job = await pending.json();
  await long.evaluate(() => document.querySelector("lodeswing-figure").remove());
  let state = job.state;
  for (let i = 0; i < 50 && state !== "cancelled"; i++) {
    await new Promise((done) => setTimeout(done, 200));
    state = (await (await fetch(`${service}/v1/jobs/${job.jobId}`)).json()).state;
  }
  assert.equal(state, "cancelled");
  await long.context().close();

  assert.deepEqual(faults, []);
  say(`load, zoom, pan, tap, keys, comparison, languages, dark, 360 px, print, other site, no scripts: all as said, in ${
    Math.round((performance.now() - began) / 1000)} s`);
} finally {
  await browser.close();
  site.close();
}
