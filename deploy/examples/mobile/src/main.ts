/**
 * What a phone app does with the service, on a terminal. Built in this folder, with Node 20 or newer:
 *
 *   npm ci && npm run generate && npm run build
 *   npm start -- http://localhost:8080 [x y]      lists layouts, follows a release on the first, then a map of it
 *
 * Results are kept in the folder `kept` beside this example; without network it shows what is there.
 */

import { fileURLToPath } from "node:url";
import { Ended, Lodeswing, Refused, type Job, type Result, type Trace } from "./client.js";
import { PATIENT, Unreachable } from "./network.js";
import { FolderStore } from "./offline.js";

const [base = "http://localhost:8080", x = "-70", y = "30"] = process.argv.slice(2);
const store = new FolderStore(fileURLToPath(new URL("../kept", import.meta.url)));
const longestMs = Number(process.env["LONGEST_S"] ?? "60") * 1000;
const service = new Lodeswing(base, store, { ...PATIENT, longestMs, onFault: (what) => console.log(`  (network: ${what})`) });

function since(keptAt: string): string {
  const minutes = Math.floor((Date.now() - Date.parse(keptAt)) / 60_000);
  return minutes < 1 ? "just now" : minutes < 120 ? `${minutes} min ago` : `${Math.floor(minutes / 60)} h ago`;
}

function came(result: Result<unknown>): string {
  const old = result.from === "kept, network away" ? " THIS IS OLD: the service could not be reached." : "";
  return `[${result.from}, ${since(result.keptAt)}, ${result.bytes.length} bytes]${old}`;
}

function tell(trace: Trace): void {
  const end = trace.outcome === undefined ? "undecided" : trace.outcome.label ?? trace.outcome.name;
  console.log(`  ends at: ${end} (${trace.sure ? "sure" : "NOT sure: chance decides"})`);
  console.log(`  the computed path is ${trace.trustedUntilS === undefined ? "trusted all the way" : `trusted until ${trace.trustedUntilS.toFixed(2)} s, then only one of many that are possible`}`);
  if (trace.foretoldUntilS !== undefined) console.log(`  a hand can foretell it until ${trace.foretoldUntilS.toFixed(2)} s`);
  console.log(`  ${trace.samples.t.length} places, with cubics between them, draw the path`);
  for (const warning of trace.warnings ?? []) console.log(`  CAUTION: ${warning.detail}`);
}

function progress(job: Job): void {
  console.log(`  job ${job.state}, ${Math.round(job.progress * 100)} %`);
}

try {
  const list = await service.sampleLayouts();
  console.log(`Layouts ${came(list)}`);
  for (const sample of list.value.samples) console.log(`  ${sample.name}: ${sample.title}`);
  const chosen = list.value.samples[0];
  if (chosen === undefined) throw new Error("the service has no layouts");

  const trace = await service.trace(
    { layoutId: chosen.layoutId, release: { x: Number(x), y: Number(y) }, durationS: 20, thin: 0.5, between: "cubics" },
    { title: `${chosen.name}, released at (${x}, ${y})`, onProgress: progress },
  );
  console.log(`Release at (${x}, ${y}) on ${chosen.name} ${came(trace)}`);
  tell(trace.value);
  if (trace.notes !== undefined) console.log(`  safety notes: ${base}${trace.notes}`);

  const map = await service.basin({ layoutId: chosen.layoutId }, { title: `map of ${chosen.name}`, onProgress: progress });
  console.log(`Map ${came(map)}`);
  for (const entry of map.value.legend) console.log(`  ${entry.index}: ${entry.label ?? entry.name}`);
  const picture = await service.preview(map.value.basinId, 256, { onProgress: progress });
  console.log(`Picture of the map ${came(picture)}`);
} catch (thrown) {
  if (thrown instanceof Refused || thrown instanceof Ended) {
    console.error(`The service says no: ${thrown.message}`);
    process.exitCode = 1;
  } else if (thrown instanceof Unreachable) {
    console.error(`No network: ${thrown.message}`);
    const kept = await service.kept();
    console.log(kept.length === 0 ? "Nothing is kept on this device." : "Kept on this device, as old as it says:");
    for (const one of kept) console.log(`  ${since(one.keptAt)}: ${one.title}, ${one.bytes.length} bytes`);
    process.exitCode = 2;
  } else {
    throw thrown;
  }
}
