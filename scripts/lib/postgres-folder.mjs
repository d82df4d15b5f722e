import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { canEnter } from './postgres-account.mjs';

/**
 * Where a cluster lives: the folder itself, or, where the server's account
 * cannot get there, one below /var/lib that the folder remembers.
 */
export function clusterFolder(folder, account) {
  fs.mkdirSync(folder, { recursive: true });
  const place = canEnter(account, folder) ? folder : elsewhere(folder);
  fs.mkdirSync(place, { recursive: true, mode: 0o700 });
  if (account.uid !== undefined) fs.chownSync(place, account.uid, account.gid);
  return place;
}

function elsewhere(folder) {
  const note = path.join(folder, 'kept-in');
  if (!fs.existsSync(note)) fs.writeFileSync(note, `/var/lib/cotyla-${crypto.randomBytes(6).toString('hex')}\n`);
  return fs.readFileSync(note, 'utf8').trim();
}
