import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { root } from './root.mjs';

/** Every file below a folder (or the file itself), relative to the checkout, in a fixed order. */
export function filesBelow(relative) {
  const whole = path.join(root, relative);
  if (!fs.existsSync(whole)) return [];
  if (fs.statSync(whole).isFile()) return [relative];
  return fs
    .readdirSync(whole, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .sort();
}

export function hashOf(files) {
  const hash = crypto.createHash('sha256').update(process.version);
  for (const file of files) hash.update(`\0${file}\0`).update(fs.readFileSync(path.join(root, file)));
  return hash.digest('hex');
}

/** Does the work only when the inputs differ from those of the last finished work, or its output is gone. */
export async function whenChanged({ name, files, output, work }) {
  const stamp = path.join(root, '.cache', `${name}.stamp`);
  const now = hashOf(files);
  if (fs.existsSync(path.join(root, output)) && fs.existsSync(stamp) && fs.readFileSync(stamp, 'utf8') === now) return false;
  fs.rmSync(stamp, { force: true });
  await work();
  fs.mkdirSync(path.dirname(stamp), { recursive: true });
  fs.writeFileSync(stamp, now);
  return true;
}
