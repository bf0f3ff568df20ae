/** Results kept on the device. A store is four functions, so that an app may put its own database behind it; here it is a folder. */

import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** What came for an address, as it came. */
export interface Kept {
  /** What was asked: an address, or a posted body with its address. */
  asked: string;
  /** For people: what it is. */
  title: string;
  keptAt: string;
  contentType: string;
  etag: string | undefined;
  /** It says of itself that it never changes. */
  immutable: boolean;
  /** Where the result lies for good. */
  location: string | undefined;
  /** The layout's notes on safety, and whether a limit is passed. */
  notes: string | undefined;
  bytes: Uint8Array<ArrayBuffer>;
}

export interface Store {
  find(asked: string): Promise<Kept | undefined>;
  keep(kept: Kept): Promise<void>;
  list(): Promise<Kept[]>;
}

/** One file for what is said of a result and its bytes together: it is written whole under another name first, so it is there or it is not. */
export class FolderStore implements Store {
  readonly #folder: string;
  #writes = 0;

  constructor(folder: string) {
    this.#folder = folder;
  }

  async find(asked: string): Promise<Kept | undefined> {
    return this.#read(fileOf(asked));
  }

  async keep(kept: Kept): Promise<void> {
    await mkdir(this.#folder, { recursive: true });
    const { bytes, ...said } = kept;
    const half = join(this.#folder, `${process.pid}-${this.#writes++}.part`);
    await writeFile(half, Buffer.concat([Buffer.from(JSON.stringify(said) + "\n"), bytes]));
    await rename(half, join(this.#folder, fileOf(kept.asked)));
  }

  async list(): Promise<Kept[]> {
    const names = await readdir(this.#folder).catch(() => []);
    const all = await Promise.all(names.filter((name) => name.endsWith(".kept")).map((name) => this.#read(name)));
    return all.filter((kept) => kept !== undefined).sort((a, b) => a.keptAt.localeCompare(b.keptAt));
  }

  async #read(name: string): Promise<Kept | undefined> {
    const file = await readFile(join(this.#folder, name)).catch(() => undefined);
    if (file === undefined) return undefined;
    const end = file.indexOf(0x0a);
    const said = JSON.parse(file.toString("utf8", 0, end)) as Omit<Kept, "bytes">;
    return { ...said, bytes: new Uint8Array(file.subarray(end + 1)) };
  }
}

/** A file's name by what was asked: no text of the network becomes a path. */
function fileOf(asked: string): string {
  return createHash("sha256").update(asked).digest("hex") + ".kept";
}
