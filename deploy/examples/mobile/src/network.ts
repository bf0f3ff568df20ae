/** A `fetch` for a network that drops: it asks again, with growing and scattered waits, and takes up a cut download where it ended. */

export interface Patience {
  /** One try, its body included [ms]. */
  attemptMs: number;
  /** All tries of one request together [ms]. */
  longestMs: number;
  /** The wait before the second try, doubled from try to try [ms]. */
  firstWaitMs: number;
  /** The longest wait between two tries, unless the service names a longer one [ms]. */
  longestWaitMs: number;
  /** From 0 to 1; scatters the waits, so that a room full of phones does not come back all at once. */
  random: () => number;
  /** Told of every try that came to nothing, and of downloads taken up again. */
  onFault: (what: string) => void;
}

export const PATIENT: Patience = {
  attemptMs: 30_000,
  longestMs: 180_000,
  firstWaitMs: 250,
  longestWaitMs: 10_000,
  random: Math.random,
  onFault: () => {},
};

/** No try came through in the time that one may take: the network is away. */
export class Unreachable extends Error {
  override readonly name = "Unreachable";
}

const BUSY = new Set([429, 502, 503, 504]);

/**
 * Every request of this contract may be repeated: GET by its nature, POST because the same body has the same id and is computed
 * once, DELETE because what has ended stays ended. So a try whose answer was lost is simply made again.
 */
export function sturdyFetch(patience: Patience): (request: Request) => Promise<Response> {
  return async (request) => {
    const body = request.body === null ? undefined : await request.arrayBuffer();
    const until = Date.now() + patience.longestMs;
    const part = new PartOfAnswer();
    for (let tries = 1; ; tries++) {
      let wait = Math.min(patience.firstWaitMs * 2 ** (tries - 1), patience.longestWaitMs) * (0.5 + patience.random());
      let fault: string;
      const attempt = AbortSignal.any([request.signal, AbortSignal.timeout(patience.attemptMs)]);
      try {
        const answer = await fetch(request.url, {
          method: request.method,
          headers: part.resuming(request.headers),
          signal: attempt,
          ...(body === undefined ? {} : { body }),
        });
        const bytes = await part.read(request.method, answer, patience.onFault);
        if (bytes !== undefined && !BUSY.has(answer.status)) {
          const empty = [101, 204, 205, 304].includes(answer.status);
          return new Response(empty ? null : bytes, { status: answer.status === 206 ? 200 : answer.status, headers: answer.headers });
        }
        fault = `status ${answer.status}`;
        wait = Math.max(wait, retryAfterMs(answer.headers) ?? 0);
      } catch (thrown) {
        // The caller's own end of patience is no fault of the network.
        request.signal.throwIfAborted();
        fault = thrown instanceof Error ? `${thrown.name}: ${causeOf(thrown)}` : String(thrown);
      }
      patience.onFault(fault);
      if (Date.now() + wait > until) {
        throw new Unreachable(`${request.method} ${new URL(request.url).pathname}: ${tries} tries, the last: ${fault}`);
      }
      await pause(wait, request.signal);
    }
  };
}

/** Seconds or a date (RFC 9110, 10.2.3). */
export function retryAfterMs(headers: Headers): number | undefined {
  const field = headers.get("Retry-After");
  if (field === null) return undefined;
  const seconds = Number(field);
  const ms = Number.isFinite(seconds) ? seconds * 1000 : Date.parse(field) - Date.now();
  return Number.isFinite(ms) ? Math.max(0, ms) : undefined;
}

/** Waits, or throws as soon as the signal does. */
export function pause(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const given = () => {
      clearTimeout(timer);
      reject(signal.reason);
    };
    const timer = setTimeout(() => {
      signal.removeEventListener("abort", given);
      resolve();
    }, ms);
    signal.addEventListener("abort", given, { once: true });
  });
}

function causeOf(thrown: Error): string {
  return thrown.cause instanceof Error ? thrown.cause.message : thrown.message;
}

/** What has come of a download so far, where the rest can be asked for: a strong tag and ranges of uncoded bytes (RFC 9110, 13.1.5 and 14). */
class PartOfAnswer {
  #tag: string | undefined;
  #bytes: Uint8Array<ArrayBuffer>[] = [];
  #length = 0;

  resuming(asked: Headers): Headers {
    const headers = new Headers(asked);
    if (this.#tag !== undefined && this.#length > 0) {
      headers.set("Range", `bytes=${this.#length}-`);
      headers.set("If-Range", this.#tag);
    }
    return headers;
  }

  /** The whole body; nothing where the range came out otherwise than asked, so that it must be asked for from the start. */
  async read(method: string, answer: Response, told: (what: string) => void): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const range = /^bytes (\d+)-\d+\/\d+$/.exec(answer.headers.get("Content-Range") ?? "");
    if (answer.status === 206 && range !== null && Number(range[1]) === this.#length && answer.headers.get("ETag") === this.#tag) {
      told(`taken up at byte ${this.#length}`);
    } else {
      const misfit = answer.status === 206 || answer.status === 416;
      const tag = answer.headers.get("ETag");
      const ranges =
        method === "GET" && answer.status === 200 && answer.headers.get("Accept-Ranges") === "bytes" &&
        answer.headers.get("Content-Encoding") === null && tag !== null && !tag.startsWith("W/");
      this.#tag = ranges ? tag : undefined;
      this.#bytes = [];
      this.#length = 0;
      if (misfit) {
        await answer.body?.cancel();
        return undefined;
      }
    }
    if (answer.body !== null) {
      for await (const piece of answer.body as unknown as AsyncIterable<Uint8Array<ArrayBuffer>>) {
        this.#bytes.push(piece);
        this.#length += piece.length;
      }
    }
    const whole = new Uint8Array(this.#length);
    let at = 0;
    for (const piece of this.#bytes) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  }
}
