import { execFileSync, spawnSync } from 'node:child_process';

function lookUp(name) {
  const ask = (flag) => Number(execFileSync('id', [flag, name], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }));
  try {
    return { uid: ask('-u'), gid: ask('-g') };
  } catch {
    return undefined;
  }
}

/** PostgreSQL refuses to run as root: then it runs as another account, else as whoever we are ({}). */
export function serverAccount() {
  if (process.getuid?.() !== 0) return {};
  const account = lookUp('postgres') ?? lookUp('nobody');
  if (!account) throw new Error('PostgreSQL does not run as root, and there is neither an account postgres nor nobody. Start as an ordinary user.');
  return account;
}

/** Whether the account can enter a folder: one below /root, say, is closed to everyone but root. */
export function canEnter(account, folder) {
  if (account.uid === undefined) return true;
  return spawnSync('test', ['-x', folder], { ...account, cwd: '/' }).status === 0;
}
