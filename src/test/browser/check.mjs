// A map in a plain tile viewer: tiles appear where the outcomes say, zooming leaves no errors.
// usage: node check.mjs <service's address> [folder for screenshots]
import assert from "node:assert/strict";
import { createReadStream, existsSync } from "node:fs";
import { createServer } from "node:http";
import { dirname, extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const here = dirname(fileURLToPath(import.meta.url));
const service = process.argv[2];
const pictures = process.argv[3];
const layout = {
  model: "textbook", omega0: 0.5, drag: 2, height: 0.3,
  magnets: [
    { x: 0.577, y: 0, strength: 1, label: "Tide" },
    { x: -0.2885, y: 0.5, strength: 1, label: "Dune" },
    { x: -0.2885, y: -0.5, strength: 1, label: "Reef" },
  ],
};

const created = await fetch(`${service}/v1/basins?wait=60`, {
  method: "POST",
  headers: { "Content-Type": "application/json" },
  body: JSON.stringify({ layout, window: { x: 0.1, y: -0.05, halfWidth: 1.6 } }),
});
assert.ok(created.status === 200 || created.status === 201, await created.clone().text());
const basin = await created.json();

const types = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".png": "image/png" };
const pages = createServer((request, response) => {
  const path = new URL(request.url, "http://localhost").pathname;
  const file = path.startsWith("/leaflet/")
    ? join(here, "node_modules/leaflet/dist", path.slice("/leaflet/".length))
    : join(here, "viewer.html");
  if (path === "/favicon.ico") { response.writeHead(204).end(); return; }
  response.writeHead(existsSync(file) ? 200 : 404, { "Content-Type": types[extname(file)] ?? "text/plain" });
  existsSync(file) ? createReadStream(file).pipe(response) : response.end();
});
await new Promise((done) => pages.listen(0, "127.0.0.1", done));

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
try {
  const page = await browser.newPage({ viewport: { width: 380, height: 320 } });
  const faults = [];
  page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("requestfailed", (request) => faults.push(`${request.url()} ${request.failure()?.errorText}`));
  page.on("response", (answer) => answer.status() >= 400 && faults.push(`${answer.url()} ${answer.status()}`));
  await page.goto(`http://127.0.0.1:${pages.address().port}/`);
  await page.evaluate(([s, b]) => show(s, b), [service, basin.basinId]);

  const settled = () =>
    page.waitForFunction(() => {
      const tiles = [...document.querySelectorAll("img.leaflet-tile")];
      return tiles.length > 0 && tiles.every((tile) => tile.complete && tile.naturalWidth > 0);
    }, null, { timeout: 60000 }).catch((e) => { console.log(faults); throw e; });

  // The colour on the screen at a place, read from the tile that covers it.
  const colourAt = (x, y) =>
    page.evaluate(([px, py]) => {
      const at = window.map.latLngToContainerPoint([py, px]);
      for (const tile of document.querySelectorAll("img.leaflet-tile")) {
        const box = tile.getBoundingClientRect();
        if (at.x >= box.left && at.x < box.right && at.y >= box.top && at.y < box.bottom) {
          const canvas = document.createElement("canvas");
          canvas.width = tile.naturalWidth;
          canvas.height = tile.naturalHeight;
          const ink = canvas.getContext("2d");
          ink.drawImage(tile, 0, 0);
          const [r, g, b] = ink.getImageData(
            Math.floor(((at.x - box.left) * tile.naturalWidth) / box.width),
            Math.floor(((at.y - box.top) * tile.naturalHeight) / box.height), 1, 1).data;
          return [r, g, b];
        }
      }
      return null;
    }, [x, y]);

  const far = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  const parts = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));
  const ends = basin.legend.filter((line) => line.kind === "rest-point");
  const nearest = (colour) =>
    ends.map((line) => ({ name: line.name, distance: Math.min(...line.shades.map((s) => far(parts(s), colour))) }))
      .sort((a, b) => a.distance - b.distance)[0].name;

  let compared = 0;
  for (const zoom of [0, 1, 3, 5, 2, 0]) {
    await page.evaluate((z) => window.map.setView([0.31, 0.43], z, { animate: false }), zoom);
    await settled();
    const corners = await page.evaluate(() => {
      const b = window.map.getBounds();
      return [b.getWest(), b.getEast(), b.getSouth(), b.getNorth()];
    });
    for (const [u, v] of [[0.31, 0.42], [0.55, 0.61], [0.72, 0.37], [0.48, 0.2]]) {
      const x = corners[0] + u * (corners[1] - corners[0]);
      const y = corners[2] + v * (corners[3] - corners[2]);
      const seen = await colourAt(x, y);
      if (seen === null) continue; // outside the window
      const pixel = (basin.unitsPerTile / basin.tileSize) * 2 ** -zoom;
      const around = await Promise.all([[0, 0], [1, 0], [-1, 0], [0, 1], [0, -1]].map(async ([i, j]) =>
        (await fetch(`${service}/v1/layouts/${basin.layoutId}/outcome?format=text&x=${x + i * pixel}&y=${y + j * pixel}`)).text()));
      if (new Set(around).size > 1) continue; // on a boundary the pixel's centre may lie beyond it
      assert.equal(nearest(seen), around[0], `zoom ${zoom} at ${x}, ${y}`);
      compared++;
    }
    if (pictures) await page.screenshot({ path: join(pictures, `viewer-${zoom}.png`) });
  }
  assert.ok(compared >= 10, `only ${compared} places were compared`);
  assert.deepEqual(faults, []);
  console.log(`viewer: ${compared} places as the outcomes say, no errors`);
} finally {
  await browser.close();
  pages.close();
}
