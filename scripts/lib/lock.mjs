import fs from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

function takeLock(file) {
  try {
    fs.writeFileSync(file, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    return false;
  }
}

function holderIsGone(file) {
  try {
    const pid = Number(fs.readFileSync(file, 'utf8'));
    // An empty file is one that its holder is writing at this moment.
    return pid > 0 && !isAlive(pid);
  } catch (error) {
    if (error.code === 'ENOENT') return false;
    throw error;
  }
}

/** Lets one process at a time do the work; a lock left by a killed process is taken over. */
export async function withLock(file, work) {
  while (!takeLock(file)) {
    if (holderIsGone(file)) fs.rmSync(file, { force: true });
    else await pause(100);
  }
  try {
    return await work();
  } finally {
    fs.rmSync(file, { force: true });
  }
}
