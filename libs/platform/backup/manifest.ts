import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What a backup holds, so that nothing can be missing or changed unnoticed. */
export const manifest = z.object({
  format: z.literal(1),
  madeAt: z.iso.datetime(),
  postgres: z.string(),
  migrations: z.array(z.object({ name: z.string(), checksum: z.string() })),
  tables: z.array(z.object({ name: z.string(), columns: z.array(z.string()), rows: z.int(), sha256 })),
  sequences: z.array(z.object({ name: z.string(), last: z.string(), called: z.boolean() })),
  files: z.array(z.object({ sha256, bytes: z.int() })),
});
export type Manifest = z.infer<typeof manifest>;

const FILE = 'manifest.json';
const SEAL = 'manifest.sha256';
export const TOMBSTONES = 'tombstones.jsonl';
export const tableFile = (folder: string, table: string): string => path.join(folder, 'tables', `${table}.copy`);
export const filesFolder = (folder: string): string => path.join(folder, 'files');

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Written last, and its seal after it: a folder without one is a backup that was cut short. */
export async function writeManifest(folder: string, content: Manifest): Promise<void> {
  const text = `${JSON.stringify(content, null, 1)}\n`;
  await writeFile(path.join(folder, FILE), text);
  await writeFile(path.join(folder, SEAL), `${hashOf(text)}  ${FILE}\n`);
}

export async function readManifest(folder: string): Promise<Manifest> {
  const read = (name: string) => readFile(path.join(folder, name), 'utf8').catch((error: unknown) => {
    throw new Error(`${folder} is not a finished backup: ${name} cannot be read.`, { cause: error });
  });
  const text = await read(FILE);
  if (!(await read(SEAL)).startsWith(hashOf(text))) throw new Error(`The manifest in ${folder} is not as it was written. Take another copy of this backup.`);
  const parsed = manifest.safeParse(JSON.parse(text));
  if (!parsed.success) throw new Error(`The backup in ${folder} was made by another version of this program. Use that version to restore it.`);
  return parsed.data;
}
