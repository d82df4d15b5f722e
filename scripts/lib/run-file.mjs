import fs from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { birthOf } from './processes.mjs';

const PATIENCE = 5000;

const identify = (pid) => ({ pid, birth: birthOf(pid) });
const isStillThere = ({ pid, birth }) => birth !== '' && birthOf(pid) === birth;

async function end(process_) {
  for (let waited = 0; isStillThere(process_); waited += 100) {
    if (waited === 0) process.kill(process_.pid, 'SIGTERM');
    if (waited === PATIENCE) process.kill(process_.pid, 'SIGKILL');
    await pause(100);
  }
}

/** Refuses when another start is at work with this data; ends what a killed one left running and tells how many. */
export async function takeOver(file) {
  if (!fs.existsSync(file)) return 0;
  const { start, children, url } = JSON.parse(fs.readFileSync(file, 'utf8'));
  if (isStillThere(start)) throw new Error(`It is running already${url ? ` at ${url}` : ''}. Stop that one first: Ctrl-C there, or kill ${start.pid}`);
  const orphans = children.filter(isStillThere);
  await Promise.all(orphans.map(end));
  return orphans.length;
}

export function writeRunFile(file, { children, url }) {
  const half = `${file}.new`;
  fs.writeFileSync(half, JSON.stringify({ start: identify(process.pid), children: children.map(({ pid }) => identify(pid)), url }));
  fs.renameSync(half, file); // a reader never meets half a file
}
