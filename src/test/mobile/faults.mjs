// 200 requests of the mobile example through a network of which a fifth fails: all finish, with the bytes of a direct answer, and
// the service computes each thing once. Then what is kept, what is taken up again, and what a path weighs.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { Ended, Lodeswing } from "../../../deploy/examples/mobile/target/client.js";
import { PATIENT, Unreachable } from "../../../deploy/examples/mobile/target/network.js";
import { FolderStore } from "../../../deploy/examples/mobile/target/offline.js";
import { faultProxy, seeded } from "./proxy.mjs";

const base = process.argv[2];
const seed = Number(process.argv[3] ?? 1);
const PHONES = 4;
let wrong = 0;
function check(good, what) {
  console.log(`${good ? "ok   " : "WRONG"} ${what}`);
  if (!good) wrong++;
}

/** Runs of computations by kind and end, as the service counts them. */
async function computations() {
  const text = await (await fetch(`${base}/actuator/prometheus`)).text();
  const counts = new Map();
  for (const [, tags, value] of text.matchAll(/^lodeswing_computations_seconds_count\{([^}]*)\} ([\d.]+)/gm)) {
    counts.set(`${/kind="([^"]*)"/.exec(tags)[1]} ${/end="([^"]*)"/.exec(tags)[1]}`, Number(value));
  }
  return counts;
}
function since(before, after) {
  const counts = {};
  for (const [name, value] of after) if (value !== (before.get(name) ?? 0)) counts[name] = value - (before.get(name) ?? 0);
  return counts;
}
const total = (counts) => Object.values(counts).reduce((sum, count) => sum + count, 0);

const folder = await mkdtemp(join(tmpdir(), "mobile-"));
const random = seeded(seed);
const proxy = await faultProxy(base, random);
proxy.share = 0.05;
const faults = new Map();
const patience = { ...PATIENT, attemptMs: 30_000, longestMs: 400_000, firstWaitMs: 100, longestWaitMs: 2000, random, onFault: (what) => faults.set(what, (faults.get(what) ?? 0) + 1) };
const phone = (name) => new Lodeswing(proxy.url, new FolderStore(join(folder, name)), patience);

const { samples } = await (await fetch(`${base}/v1/sample-layouts`)).json();
const layoutId = (name) => samples.find((sample) => sample.name === name).layoutId;
const bench = layoutId("three-stations");
const paper = layoutId("paper-triangle");

// What each phone asks for: 50 requests of 46 different things; the phones ask for the same.
const asks = [];
for (let i = 0; i < 20; i++) {
  const far = 60 + random() * 30;
  const turn = 2 * Math.PI * random();
  const release = { x: Math.round(far * Math.cos(turn)), y: Math.round(far * Math.sin(turn)) + i / 100 };
  asks.push({ call: "trace", path: "/v1/traces", accept: "application/cbor", wish: { form: "cbor" }, body: { layoutId: bench, release, durationS: 5, thin: 0.5 } });
  asks.push({ call: "trace", path: "/v1/traces", accept: "application/json", body: { layoutId: paper, release: { x: release.x / 50, y: release.y / 50 }, durationS: 10, thin: 0.01 } });
}
const odds = (layout, x, deviation) => ({ call: "odds", path: "/v1/odds", accept: "application/json",
  body: { layoutId: layout, release: { x, y: 0 }, spread: { kind: "gaussian", deviation }, width: 0.1 } });
asks.push(odds(bench, 60, 3), odds(bench, 55, 3), odds(paper, 1.2, 0.05));
asks.push({ ...odds(paper, 1.3, 0.06), hurry: true });
for (const layout of [bench, paper]) asks.push({ call: "basin", path: "/v1/basins", accept: "application/json", body: { layoutId: layout }, preview: true });
const distinct = { trace: 40, odds: 4, "basin-survey": 2 };

const before = await computations();
const begun = Date.now();
let finished = 0;
let cancelledWaits = 0;
const got = [];
async function day(name) {
  const service = phone(name);
  const mine = [...asks];
  for (let i = mine.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [mine[i], mine[j]] = [mine[j], mine[i]];
  }
  const keep = (ask, result) => {
    finished++;
    got.push({ ask, bytes: result.bytes, notes: result.notes, from: result.from });
    return result;
  };
  keep({ call: "sampleLayouts", address: "/v1/sample-layouts" }, await service.sampleLayouts());
  for (const ask of mine) {
    if (ask.hurry) {
      // the app is closed while it waits, and opened again
      await service[ask.call](ask.body, { ...ask.wish, signal: AbortSignal.timeout(300) }).then(() => {}, () => cancelledWaits++);
    }
    const result = keep(ask, await service[ask.call](ask.body, ask.wish));
    if (ask.preview) {
      const address = `/v1/basins/${result.value.basinId}/preview?width=192`;
      keep({ call: "preview", address, accept: "image/png" }, await service.preview(result.value.basinId, 192));
    }
  }
  keep({ call: "sampleLayouts", address: "/v1/sample-layouts" }, await service.sampleLayouts({ freshMs: 0 }));
}
const days = await Promise.allSettled(Array.from({ length: PHONES }, (_, i) => day(`phone-${i}`)));
for (const one of days) if (one.status === "rejected") console.log("WRONG", one.reason);
const seconds = (Date.now() - begun) / 1000;
const tries = total(proxy.counts);
const failed = tries - proxy.counts.whole;
console.log(`seed ${seed}: ${finished} requests by ${PHONES} phones in ${seconds.toFixed(0)} s, ${tries} tries, of which ${JSON.stringify(proxy.counts)}`);
console.log(`the client saw: ${[...faults].map(([what, count]) => `${what} x${count}`).join("; ")}; waits given up: ${cancelledWaits}`);
check(finished === 200, `${finished} of 200 requests finished`);
check(failed / tries > 0.12 && failed / tries < 0.28, `${((100 * failed) / tries).toFixed(1)} % of ${tries} tries met a fault (20 % meant)`);
check(["delay", "cut before", "cut inside", "reset after"].every((fault) => proxy.counts[fault] >= 3), "every kind of fault occurred at least three times");

const after = await computations();
const runs = since(before, after);
console.log(`computations: ${JSON.stringify(runs)}`);
for (const [kind, count] of Object.entries(distinct)) {
  check(runs[`${kind} done`] === count, `${kind}: ${runs[`${kind} done`]} computed for ${count} different requests`);
}
const previews = Object.entries(runs).filter(([name]) => !Object.keys(distinct).some((kind) => name === `${kind} done`));
check(Object.keys(runs).every((name) => name.endsWith(" done")), "no computation failed or was made in vain");

let differing = 0;
const direct = new Map();
for (const { ask, bytes } of got) {
  const name = JSON.stringify([ask.path, ask.address, ask.body]);
  if (!direct.has(name)) {
    const answer = await fetch(base + (ask.address ?? ask.path), {
      method: ask.body ? "POST" : "GET",
      headers: { Accept: ask.accept ?? "application/json", ...(ask.body ? { "Content-Type": "application/json" } : {}) },
      ...(ask.body ? { body: JSON.stringify(ask.body) } : {}),
    });
    if (answer.status !== 200) console.log("WRONG direct", answer.status, name);
    direct.set(name, Buffer.from(await answer.arrayBuffer()));
  }
  if (!direct.get(name).equals(Buffer.from(bytes))) differing++;
}
check(differing === 0, `${got.length - differing} of ${got.length} results have the bytes of a direct answer`);
check(got.filter(({ ask }) => ask.body?.layoutId === bench).every(({ notes }) => notes?.endsWith("/safety-notes")), "every result on a bench layout came with its notes on safety");
const twice = since(before, await computations());
check(JSON.stringify(twice) === JSON.stringify(runs), "the direct answers were kept ones: nothing was computed again");
check(previews.length === 1 && previews[0][1] === 2, `pictures: ${JSON.stringify(previews)} for 2 different ones`);

// One fault at a time.
proxy.share = 0;
const map = got.find(({ ask }) => ask.call === "preview");
const basinId = map.ask.address.split("/")[3];
proxy.bytes = 0;
proxy.next = ["cut inside", "cut inside"];
const taken = await phone("taken-up").preview(basinId, 192);
check(Buffer.from(taken.bytes).equals(Buffer.from(map.bytes)) && proxy.bytes < 1.1 * map.bytes.length,
  `a picture of ${map.bytes.length} bytes cut twice came whole with ${proxy.bytes} bytes on the wire (${proxy.seen.slice(-2).map((line) => line.split(" ").at(-1)).join(", ")})`);
proxy.next = ["busy"];
let at = Date.now();
await phone("busy").sampleLayouts();
check(Date.now() - at >= 950, `503 with Retry-After: 1 was asked again after ${Date.now() - at} ms`);
const first = phone("phone-0");
proxy.bytes = 0;
const same = await first.sampleLayouts({ freshMs: 0 });
check(same.from === "kept, still right" && proxy.bytes === 0, `the list again: ${same.from}, ${proxy.bytes} bytes of body`);
let given;
// far out, and as exact as may be asked: a minute of work
const never = { ...odds(bench, -100, 3).body, width: 0.005 };
const asked = phone("cancels").odds(never, { onProgress: (job) => (given ??= phone("cancels").cancel(job)) });
const ended = await asked.catch((thrown) => thrown);
await given;
check(ended instanceof Ended && ended.job.state === "cancelled", `a job that the phone gives up: ${ended instanceof Ended ? ended.job.state : ended}`);

// Without network.
await proxy.close();
const lost = { ...patience, longestMs: 500 };
const offline = new Lodeswing(proxy.url, new FolderStore(join(folder, "phone-0")), lost);
let kept = 0;
for (const ask of asks) {
  const result = await offline[ask.call](ask.body, ask.wish);
  if (result.from === "kept" && direct.get(JSON.stringify([ask.path, undefined, ask.body])).equals(Buffer.from(result.bytes))) kept++;
}
check(kept === asks.length, `without network ${kept} of ${asks.length} results are there, to the byte`);
const old = await offline.sampleLayouts({ freshMs: 0 });
check(old.from === "kept, network away", `the list without network says so: ${old.from}`);
const none = await offline.trace({ layoutId: bench, release: { x: 1, y: 2 } }).catch((thrown) => thrown);
check(none instanceof Unreachable, `what is not kept: ${none.name}`);

// What a path of 20 s weighs.
async function weight(body, accept, coding) {
  const answer = await fetch(`${base}/v1/traces`, {
    method: "POST", body: JSON.stringify(body),
    headers: { "Content-Type": "application/json", Accept: accept, "Accept-Encoding": coding },
  });
  const bytes = Buffer.from(await answer.arrayBuffer());
  return { bytes, wire: Number(answer.headers.get("Content-Length")), status: answer.status };
}
const path20 = { layoutId: bench, release: { x: -70, y: 30 }, durationS: 20 };
console.log("a path of 20 s, bytes: JSON, its gzip, CBOR, its gzip (as sent)");
async function row(name, more) {
  const body = { ...path20, ...more };
  const json = await weight(body, "application/json", "identity");
  const zipped = await weight(body, "application/json", "gzip");
  const cbor = await weight(body, "application/cbor", "identity");
  const cborZipped = await weight(body, "application/cbor", "gzip");
  console.log(`  ${name}: ${json.wire} ${zipped.wire} ${cbor.wire} ${cborZipped.wire} (gzip of CBOR by hand: ${gzipSync(cbor.bytes).length}), places ${JSON.parse(json.bytes).samples.t.length}`);
  return Math.min(json.wire, zipped.wire, cbor.wire, cborZipped.wire);
}
await row("all samples", {});
await row("thin 0.1", { thin: 0.1 });
await row("thin 0.5", { thin: 0.5 });
await row("thin 0.1, cubics", { thin: 0.1, between: "cubics" });
await row("thin 0.3, cubics", { thin: 0.3, between: "cubics" });
const least = await row("thin 0.5, cubics", { thin: 0.5, between: "cubics" });
check(least <= 4096, `a path of 20 s by thin 0.5 mm and cubics: ${least} bytes on the wire of 4096`);

// How far the curve that a phone draws is from the samples.
const samplesOf = async (more) => JSON.parse((await weight({ ...path20, ...more }, "application/json", "identity")).bytes).samples;
const all = await samplesOf({ sampleIntervalS: 0.005 });
for (const thin of [0.1, 0.3, 0.5]) {
  const knots = await samplesOf({ thin, between: "cubics" });
  let worst = 0;
  let k = 0;
  for (let i = 0; i < all.t.length; i++) {
    while (k < knots.t.length - 2 && knots.t[k + 1] < all.t[i]) k++;
    const h = knots.t[k + 1] - knots.t[k];
    const u = (all.t[i] - knots.t[k]) / h;
    const at = (p, v) => p[k] * (1 + 2 * u) * (1 - u) ** 2 + h * v[k] * u * (1 - u) ** 2 + p[k + 1] * u * u * (3 - 2 * u) + h * v[k + 1] * u * u * (u - 1);
    worst = Math.max(worst, Math.hypot(at(knots.x, knots.vx) - all.x[i], at(knots.y, knots.vy) - all.y[i]));
  }
  check(worst <= thin && worst > thin / 10, `cubics by thin ${thin} mm are within ${worst.toFixed(3)} mm of ${all.t.length} samples`);
}

await rm(folder, { recursive: true, force: true });
console.log(wrong === 0 ? "all good" : `${wrong} WRONG`);
process.exit(wrong === 0 ? 0 : 1);
