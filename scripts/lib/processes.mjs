import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

function ps(pid, column) {
  return execFileSync('ps', ['-o', `${column}=`, '-p', String(pid)], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
}

/** What `ask` finds out about a process, or '' when the process is gone. */
function orGone(ask) {
  try {
    return ask();
  } catch {
    return '';
  }
}

/** The command line of a process; empty when it is gone or a zombie. */
export function commandLine(pid) {
  return orGone(() => (process.platform === 'linux' ? fs.readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ') : ps(pid, 'args')));
}

/**
 * When a process began; empty when it is gone or a zombie. The number of a
 * process passes to a stranger sooner or later; number and birth together do not.
 */
export function birthOf(pid) {
  return orGone(() => {
    if (process.platform !== 'linux') return ps(pid, 'lstart');
    const fields = fs.readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\) /s, '').split(' ');
    return fields[0] === 'Z' ? '' : fields[19];
  });
}
