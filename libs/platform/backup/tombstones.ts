import { mkdir, open, readFile, rename } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';

/** One line of the file: ids and a moment, nothing of the person. */
const tombstone = z.object({ person: z.uuid(), practice: z.uuid(), at: z.iso.datetime() });
export type Tombstone = z.infer<typeof tombstone>;

export const tombstoneFile = (dataFolder: string): string => path.join(dataFolder, 'tombstones.jsonl');

/** None where there is no such file. A line that cannot be read stops everything: a person would come back unnoticed. */
export async function readTombstones(file: string): Promise<Tombstone[]> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '';
    throw error;
  });
  return text.split('\n').filter(Boolean).map((line, i) => parseLine(file, line, i + 1));
}

function parseLine(file: string, line: string, number: number): Tombstone {
  try {
    return tombstone.parse(JSON.parse(line));
  } catch (error) {
    throw new Error(`Line ${number} of ${file} is not a tombstone. Mend the line or take the file from another copy; without it somebody who was erased would come back.`, { cause: error });
  }
}

/** Adds what is not there; no line is ever taken out. The file is whole at every moment. */
export async function keepTombstones(file: string, more: Tombstone[]): Promise<void> {
  const known = await readTombstones(file);
  const all = [...new Map([...known, ...more].map((t) => [t.person, t])).values()];
  if (all.length === known.length) return;
  await mkdir(path.dirname(file), { recursive: true });
  const handle = await open(`${file}.new`, 'w', 0o640);
  try {
    await handle.writeFile(all.map((t) => `${JSON.stringify(t)}\n`).join(''));
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(`${file}.new`, file);
}
