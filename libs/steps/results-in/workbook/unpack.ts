import { buffer } from 'node:stream/consumers';
import { crc32 } from 'node:zlib';
import { fromBufferPromise, type Entry, type ZipFile } from 'yauzl';
import { said } from '#libs/words/said';
import { damaged, Unreadable } from './unreadable.js';

/** Far more than 500 rows of readings need, and little enough to be read at once. */
const MOST_PARTS = 200;
const MOST_BYTES = 5_000_000;

/** The text of a part of a workbook by its name; undefined where it has none of that name. */
export type Parts = (name: string) => Promise<string | undefined>;

/** What the zip says of its parts is believed only as far as it keeps within the limits: unpacking stops at the size that was told. */
export async function unpack(bytes: Uint8Array): Promise<Parts> {
  const { zip, entries } = await orDamaged(() => listed(bytes));
  return async (name) => {
    const entry = entries.get(name.toLowerCase());
    return entry && orDamaged(() => textOf(zip, entry));
  };
}

async function listed(bytes: Uint8Array): Promise<{ zip: ZipFile; entries: Map<string, Entry> }> {
  const zip = await fromBufferPromise(Buffer.from(bytes), { lazyEntries: true });
  const entries = new Map<string, Entry>();
  let size = 0;
  for await (const entry of zip.eachEntry()) {
    size += entry.uncompressedSize;
    if (entries.size === MOST_PARTS || size > MOST_BYTES) throw new Unreadable(said('The workbook is too large inside: at most 5 MB unpacked and 200 parts are read. Copy the rows alone into a new workbook, or save them as CSV, and send that file.'));
    const name = entry.fileName.toLowerCase();
    // Two programs could read two different things.
    if (entries.has(name)) throw damaged();
    entries.set(name, entry);
  }
  return { zip, entries };
}

async function textOf(zip: ZipFile, entry: Entry): Promise<string> {
  const content = await buffer(await zip.openReadStreamPromise(entry));
  if (crc32(content) !== entry.crc32) throw damaged();
  return new TextDecoder('utf-8', { fatal: true }).decode(content);
}

async function orDamaged<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw error instanceof Unreadable ? error : damaged();
  }
}
