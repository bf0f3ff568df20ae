/** Calls that must not compile: should the contract's types stop refusing one, `tsc` says that its directive is unused. Never run. */

import type { Lodeswing } from "./client.js";

export async function wrong(service: Lodeswing): Promise<void> {
  const release = { x: -70, y: 30 };
  // @ts-expect-error: the member is durationS
  await service.trace({ layoutId: "lay-1", release, duration: 20 });
  // @ts-expect-error: a release has a place
  await service.trace({ layoutId: "lay-1", release: { x: -70 } });
  // @ts-expect-error: numbers are numbers
  await service.trace({ layoutId: "lay-1", release, thin: "0.1" });
  // @ts-expect-error: a path may be trusted all the way, and then there is no such time
  (await service.trace({ layoutId: "lay-1", release })).value.trustedUntilS.toFixed(1);
}
