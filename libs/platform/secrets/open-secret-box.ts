import { randomBytes, randomUUID } from 'node:crypto';
import { link, mkdir, readFile, unlink, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Settings } from '../settings/settings.js';
import { parseKeys } from './parse-keys.js';
import { KEY_BYTES, SecretBox } from './secret-box.js';

/** By the keys in SECRETS_KEY, or by those of a file in the data folder, which the first process that starts makes. */
export async function openSecretBox({ secrets }: Pick<Settings, 'secrets'>): Promise<SecretBox> {
  const given = secrets.keys ?? (await readOrMake(secrets.keyFile));
  const keys = parseKeys(given);
  if (!keys) throw new Error(`${secrets.keyFile} holds no key that secrets could be sealed with. Bring the file back as it was; without it they are entered anew: then move the file away, and the next start makes another.`);
  return new SecretBox(keys);
}

async function readOrMake(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
  await mkdir(path.dirname(file), { recursive: true, mode: 0o711 });
  const whole = `${file}.${randomUUID()}`;
  await writeFile(whole, `${randomBytes(KEY_BYTES).toString('base64')}\n`, { mode: 0o600, flag: 'wx', flush: true });
  // whole or not at all, and never over one that another process has made meanwhile
  await link(whole, file).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EEXIST') throw error;
  });
  await unlink(whole);
  return readFile(file, 'utf8');
}
