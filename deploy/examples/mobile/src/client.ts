/** The service as a phone uses it: calls typed by the contract, jobs followed to their end, results kept. Nothing here computes. */

import { decode } from "cborg";
import createClient, { type Client, type Middleware } from "openapi-fetch";
import type { components, paths } from "../target/contract.js";
import { pause, retryAfterMs, sturdyFetch, Unreachable, type Patience } from "./network.js";
import type { Kept, Store } from "./offline.js";

export type Trace = components["schemas"]["Trace"];
export type TraceRequest = components["schemas"]["TraceRequest"];
export type BasinRequest = components["schemas"]["BasinRequest"];
export type OddsRequest = components["schemas"]["OddsRequest"];
export type Job = components["schemas"]["Job"];
export type Odds = components["schemas"]["Odds"];
export type Basin = components["schemas"]["Basin"];
export type SampleLayouts = components["schemas"]["SampleLayouts"];
type Problem = components["schemas"]["Problem"];

/** How the phone came by a result. */
export type From = "network" | "kept" | "kept, still right" | "kept, network away";

export interface Result<T> {
  value: T;
  from: From;
  keptAt: string;
  /** Where the result lies for good. */
  location: string | undefined;
  /** The layout's notes on safety: show this link wherever the result is shown. */
  notes: string | undefined;
  bytes: Uint8Array;
}

/** The service has understood and says no: asking again will not help. */
export class Refused extends Error {
  override readonly name = "Refused";
  readonly status: number;
  readonly problem: Problem | undefined;

  constructor(status: number, problem: Problem | undefined) {
    super(problem === undefined ? `status ${status}` : [problem.title, problem.detail, ...(problem.errors ?? []).map((e) => `${e.pointer} ${e.detail}`)].join(" "));
    this.status = status;
    this.problem = problem;
  }
}

/** The job ended without a result: someone gave it up, or it failed. Asking again would compute anew, which is for people to decide. */
export class Ended extends Error {
  override readonly name = "Ended";
  readonly job: Job;

  constructor(job: Job) {
    super(`job ${job.jobId} ${job.state}`);
    this.job = job;
  }
}

export interface Wish {
  /** A kept answer as old as this is not asked for again [ms]; what never changes is never asked for again. */
  freshMs?: number;
  signal?: AbortSignal;
  onProgress?: (job: Job) => void;
  title?: string;
}

const DAY = 86_400_000;
const NEVER = new AbortController().signal;
/** A moment is better waited for than followed as a job; a longer wait would be lost with the connection. */
const SHORT_WAIT = "wait=5";

export class Lodeswing {
  readonly #api: Client<paths>;
  readonly #store: Store;
  readonly #base: string;

  constructor(base: string, store: Store, patience: Patience) {
    this.#base = base;
    this.#store = store;
    this.#api = createClient<paths>({ baseUrl: base, fetch: sturdyFetch(patience) });
    this.#api.use(refusals);
  }

  sampleLayouts(wish: Wish = {}): Promise<Result<SampleLayouts>> {
    return this.#read("/v1/sample-layouts", { title: "sample layouts", freshMs: 300_000, ...wish }, (headers, signal) =>
      this.#api.GET("/v1/sample-layouts", { headers, signal, parseAs: "arrayBuffer" }));
  }

  /** A release. Its path by JSON, which `fetch` takes gzipped, is the shorter; by CBOR no gzip is needed. */
  trace(body: TraceRequest, wish: Wish & { form?: "json" | "cbor" } = {}): Promise<Result<Trace>> {
    return this.#post("/v1/traces", body, `application/${wish.form ?? "json"}`, wish, (headers, signal) =>
      this.#api.POST("/v1/traces", { body, headers, signal, parseAs: "arrayBuffer", params: { header: { Prefer: SHORT_WAIT } } }));
  }

  odds(body: OddsRequest, wish: Wish = {}): Promise<Result<Odds>> {
    return this.#post("/v1/odds", body, "application/json", wish, (headers, signal) =>
      this.#api.POST("/v1/odds", { body, headers, signal, parseAs: "arrayBuffer", params: { header: { Prefer: "respond-async" } } }));
  }

  basin(body: BasinRequest, wish: Wish = {}): Promise<Result<Basin>> {
    return this.#post("/v1/basins", body, "application/json", wish, (headers, signal) =>
      this.#api.POST("/v1/basins", { body, headers, signal, parseAs: "arrayBuffer", params: { header: { Prefer: "respond-async" } } }));
  }

  /** A picture of a map's window, as wide as the phone's place for it [px]. Bytes that are cut off are taken up where they ended. */
  preview(basinId: string, width: number, wish: Wish = {}): Promise<Result<Uint8Array>> {
    const address = `/v1/basins/${basinId}/preview?width=${width}`;
    return this.#read(address, { title: "picture of a map", ...wish }, (headers, signal) =>
      this.#api.GET("/v1/basins/{basinId}/preview", {
        headers: { ...headers, Accept: "image/png" }, signal, parseAs: "arrayBuffer", params: { path: { basinId }, query: { width }, header: { Prefer: SHORT_WAIT } },
      }));
  }

  /** A result by its id: one that is kept needs no network, because its bytes can never be others. */
  traceOf(traceId: string, wish: Wish = {}): Promise<Result<Trace>> {
    return this.#read(`/v1/traces/${traceId}`, { title: "a path", ...wish }, (headers, signal) =>
      this.#api.GET("/v1/traces/{traceId}", {
        headers: { ...headers, Accept: "application/cbor" }, signal, parseAs: "arrayBuffer", params: { path: { traceId }, header: { Prefer: SHORT_WAIT } },
      }));
  }

  /** Gives a job up, so that nobody computes what nobody waits for. Others who asked for it still get it. */
  async cancel(job: Job): Promise<void> {
    const ask = new URL(job.cancelUrl ?? "", this.#base).searchParams.get("ask");
    await this.#api.DELETE("/v1/jobs/{jobId}", {
      params: { path: { jobId: job.jobId }, query: ask === null ? {} : { ask } }, parseAs: "arrayBuffer",
    });
  }

  /** What this device has, the oldest first. */
  kept(): Promise<Kept[]> {
    return this.#store.list();
  }

  #post<T>(path: string, body: unknown, accept: string, wish: Wish, ask: Asking): Promise<Result<T>> {
    return this.#ask(`POST ${path} ${accept} ${JSON.stringify(body)}`, { freshMs: DAY, ...wish }, (headers, signal) =>
      ask({ ...headers, Accept: accept }, signal));
  }

  #read<T>(address: string, wish: Wish, ask: Asking): Promise<Result<T>> {
    return this.#ask(`GET ${address}`, wish, ask);
  }

  async #ask<T>(asked: string, wish: Wish, ask: Asking): Promise<Result<T>> {
    const signal = wish.signal ?? NEVER;
    const kept = await this.#store.find(asked);
    if (kept !== undefined && (kept.immutable || Date.now() - Date.parse(kept.keptAt) < (wish.freshMs ?? 0))) {
      return result(kept, "kept");
    }
    try {
      // Only what is read by its address has conditions: a post answers by its body.
      const condition: Record<string, string> = kept?.etag !== undefined && asked.startsWith("GET ") ? { "If-None-Match": kept.etag } : {};
      let answer = (await ask(condition, signal)).response;
      let bytes = await bytesOf(answer);
      if (answer.status === 304 && kept !== undefined) {
        const renewed = { ...kept, keptAt: new Date().toISOString() };
        await this.#store.keep(renewed);
        return result(renewed, "kept, still right");
      }
      if (answer.status === 202) {
        answer = await this.#followed(answer, bytes, wish, signal, ask);
        bytes = await bytesOf(answer);
      }
      const fresh: Kept = {
        asked,
        title: wish.title ?? asked.split(" ", 2).join(" "),
        keptAt: new Date().toISOString(),
        contentType: answer.headers.get("Content-Type") ?? "",
        etag: answer.headers.get("ETag") ?? undefined,
        immutable: (answer.headers.get("Cache-Control") ?? "").includes("immutable"),
        location: answer.headers.get("Content-Location") ?? answer.headers.get("Location") ?? undefined,
        notes: /<([^>]*)>[^,]*rel="describedby"/.exec(answer.headers.get("Link") ?? "")?.[1],
        bytes,
      };
      await this.#store.keep(fresh);
      return result(fresh, "network");
    } catch (thrown) {
      if (thrown instanceof Unreachable && kept !== undefined) return result(kept, "kept, network away");
      throw thrown;
    }
  }

  /** Looks after a job until it has ended, then asks for the result once more: it is kept there, so nothing is computed again. */
  async #followed(accepted: Response, body: Uint8Array, wish: Wish, signal: AbortSignal, ask: Asking): Promise<Response> {
    const asked = JSON.parse(new TextDecoder().decode(body)) as Job;
    let wait = retryAfterMs(accepted.headers) ?? 1000;
    for (;;) {
      wish.onProgress?.(asked);
      await pause(wait, signal);
      const { response, data } = await this.#api.GET("/v1/jobs/{jobId}", { signal, params: { path: { jobId: asked.jobId } } });
      if (data !== undefined) Object.assign(asked, data, { cancelUrl: asked.cancelUrl });
      wait = retryAfterMs(response.headers) ?? Math.min(wait * 1.5, 5000);
      if (asked.state === "waiting" || asked.state === "running") continue;
      wish.onProgress?.(asked);
      if (asked.state !== "done") throw new Ended({ ...asked });
      const settled = (await ask({}, signal)).response;
      if (settled.status !== 202) return settled;
      wait = retryAfterMs(settled.headers) ?? 1000;
    }
  }
}

type Asking = (headers: Record<string, string>, signal: AbortSignal) => Promise<{ response: Response; data?: unknown }>;

/** openapi-fetch has read the body; here is the one copy of it. */
const BYTES = new WeakMap<Response, Uint8Array<ArrayBuffer>>();

const refusals: Middleware = {
  async onResponse({ response }) {
    const bytes = new Uint8Array(await response.clone().arrayBuffer());
    if (response.status >= 400) {
      const told = (response.headers.get("Content-Type") ?? "").includes("problem+json");
      throw new Refused(response.status, told ? (JSON.parse(new TextDecoder().decode(bytes)) as Problem) : undefined);
    }
    BYTES.set(response, bytes);
    return undefined;
  },
};

async function bytesOf(response: Response): Promise<Uint8Array<ArrayBuffer>> {
  return BYTES.get(response) ?? new Uint8Array(0);
}

function result<T>(kept: Kept, from: From): Result<T> {
  return { value: read(kept) as T, from, keptAt: kept.keptAt, location: kept.location, notes: kept.notes, bytes: kept.bytes };
}

function read(kept: Kept): unknown {
  if (kept.contentType.startsWith("application/cbor")) return decode(kept.bytes);
  if (kept.contentType.includes("json")) return JSON.parse(new TextDecoder().decode(kept.bytes));
  return kept.bytes;
}
