import { buffer } from 'node:stream/consumers';
import { fromBufferPromise } from 'yauzl';

/** Every file of a zip, by its name. */
export async function unzip(content: Buffer): Promise<Map<string, Buffer>> {
  const zip = await fromBufferPromise(content, { lazyEntries: true });
  const files = new Map<string, Buffer>();
  for await (const entry of zip.eachEntry()) files.set(entry.fileName, await buffer(await zip.openReadStreamPromise(entry)));
  return files;
}
