// A network that fails, between a phone and the service, on loopback: of each request it draws what becomes of it.
import http from "node:http";

/** What may happen, each with its share, and how often it did. */
export const FAULTS = ["delay", "cut before", "cut inside", "reset after"];

/** Numbers from 0 to 1 by a seed (a linear congruential generator modulo 2^48 as in POSIX drand48). */
export function seeded(seed) {
  let state = (BigInt(seed) << 16n) | 0x330en;
  return () => {
    state = (state * 0x5deece66dn + 0xbn) & 0xffffffffffffn;
    return Number(state) / 2 ** 48;
  };
}

export async function faultProxy(target, random) {
  const proxy = {
    share: 0, // of each kind of fault
    next: [], // faults that come first, in turn: for checks of one kind
    counts: { whole: 0, "busy": 0, ...Object.fromEntries(FAULTS.map((fault) => [fault, 0])) },
    bytes: 0, // sent to the phone, bodies only
    seen: [], // method, path and status of what the service answered
    server: undefined,
    url: "",
  };
  const drawn = () => {
    if (proxy.next.length > 0) return proxy.next.shift();
    const at = Math.floor(random() / Math.max(proxy.share, 1e-12));
    return FAULTS[at] ?? "whole";
  };
  proxy.server = http.createServer(async (request, response) => {
    const fault = drawn();
    proxy.counts[fault]++;
    const pieces = [];
    try {
      for await (const piece of request) pieces.push(piece);
    } catch {
      return; // the phone has hung up itself
    }
    if (fault === "cut before") return request.socket.destroy();
    if (fault === "busy") {
      response.writeHead(503, { "Retry-After": "1", "Content-Length": "0" });
      return response.end();
    }
    if (fault === "delay") await new Promise((go) => setTimeout(go, 500 + 2500 * random()));
    const headers = { ...request.headers, host: new URL(target).host };
    const passed = http.request(target + request.url, { method: request.method, headers }, async (answer) => {
      const body = [];
      for await (const piece of answer) body.push(piece);
      const bytes = Buffer.concat(body);
      proxy.seen.push(`${request.method} ${request.url} ${answer.statusCode}${request.headers.range ? " " + request.headers.range : ""}`);
      // the server has computed, the phone never hears of it
      if (fault === "reset after") return request.socket.resetAndDestroy();
      response.writeHead(answer.statusCode, answer.rawHeaders);
      if (fault === "cut inside") {
        const half = bytes.subarray(0, bytes.length >> 1);
        proxy.bytes += half.length;
        return response.write(half.length > 0 ? half : "", () => request.socket.destroy());
      }
      proxy.bytes += bytes.length;
      response.end(bytes);
    });
    passed.on("error", () => request.socket.destroy());
    passed.end(Buffer.concat(pieces));
  });
  proxy.listen = (port = 0) =>
    new Promise((ready) => proxy.server.listen(port, "127.0.0.1", () => {
      proxy.port = proxy.server.address().port;
      proxy.url = `http://127.0.0.1:${proxy.port}`;
      ready();
    }));
  proxy.close = () =>
    new Promise((closed) => {
      proxy.server.close(closed);
      proxy.server.closeAllConnections();
    });
  await proxy.listen();
  return proxy;
}
