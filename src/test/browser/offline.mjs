// The page of a bundle, unpacked and opened from its folder with the network off: nothing fails, all that it links to is there.
// usage: node offline.mjs <service's address> [folder for screenshots]
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const service = process.argv[2];
const pictures = process.argv[3];
const sampleId = async (name) => (await fetch(`${service}/v1/sample-layouts/${name}?format=text`)).text();

async function archive(name, query) {
  const url = `${service}/v1/layouts/${await sampleId(name)}/bundle?${query}`;
  for (let asked = 0; asked < 30; asked++) {
    const answer = await fetch(`${url}&wait=60`);
    if (answer.status === 200) return Buffer.from(await answer.arrayBuffer());
    assert.equal(answer.status, 202, await answer.text());
  }
  throw new Error(`${url} is not ready after half an hour`);
}

const folder = mkdtempSync(join(tmpdir(), "bundle-"));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
try {
  let looked = 0;
  for (const [name, query] of [["three-stations", "lang=de&decimal=comma"], ["paper-triangle", "lang=en"]]) {
    const bytes = await archive(name, query);
    assert.ok(bytes.equals(await archive(name, query)), `${name}: asked twice, other bytes`);
    const place = join(folder, name);
    writeFileSync(`${place}.zip`, bytes);
    execFileSync("unzip", ["-tq", `${place}.zip`]);
    execFileSync("unzip", ["-q", `${place}.zip`, "-d", place]);
    const manifest = JSON.parse(readFileSync(join(place, "manifest.json"), "utf8"));
    for (const file of manifest.files) {
      const digest = createHash("sha256").update(readFileSync(join(place, file.path))).digest("hex");
      assert.equal(digest, file.sha256, file.path);
    }
    for (const [look, width, scheme] of [["wide", 1200, "light"], ["narrow", 360, "light"], ["dark", 1000, "dark"]]) {
      const context = await browser.newContext({ offline: true, colorScheme: scheme, viewport: { width, height: 800 } });
      const page = await context.newPage();
      const faults = [];
      page.on("console", (message) => ["error", "warning"].includes(message.type()) && faults.push(message.text()));
      page.on("pageerror", (error) => faults.push(String(error)));
      page.on("requestfailed", (request) => faults.push(`${request.url()} ${request.failure()?.errorText}`));
      page.on("request", (request) => request.url().startsWith("file:") || faults.push(`asks for ${request.url()}`));
      await page.goto(pathToFileURL(join(place, "index.html")).href);
      const seen = await page.evaluate(() => ({
        links: [...document.links].map((a) => a.getAttribute("href")),
        images: [...document.images].map((i) => [i.getAttribute("src"), i.complete && i.naturalWidth > 0, i.alt]),
        scripts: document.scripts.length,
        overflow: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        background: getComputedStyle(document.documentElement).colorScheme,
      }));
      assert.equal(seen.scripts, 0);
      assert.ok(seen.links.length >= manifest.files.length, "fewer links than files");
      for (const link of seen.links) assert.ok(existsSync(join(place, link)), `${link} leads nowhere`);
      for (const [source, shown, alt] of seen.images) assert.ok(shown && alt, `${source} is not shown or has no words`);
      assert.ok(seen.images.length >= 5, "hardly a picture");
      assert.ok(seen.overflow <= 0, `${look}: the page is ${seen.overflow} px wider than the window`);
      if (pictures) await page.screenshot({ path: join(pictures, `bundle-${name}-${look}.png`), fullPage: true });
      // Pages and pictures that it links to open without a fault of their own.
      for (const link of seen.links.filter((one) => /\.(html|svg|txt|json)$/.test(one))) {
        await page.goto(pathToFileURL(join(place, link)).href);
        looked++;
      }
      assert.deepEqual(faults, []);
      await context.close();
    }
  }
  console.log(`bundle: opened offline from its folder, ${looked} neighbours opened too, no errors`);
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
