import { spawn } from 'node:child_process';
import { root } from './root.mjs';

const PATIENCE = 20_000;

/** Starts one of the program's processes in a group of its own, so that Ctrl-C reaches only the one who stops them in order. */
export function startChild(name, script, env, { stdio = ['ignore', 'inherit', 'inherit'] } = {}) {
  const child = spawn(process.execPath, ['--enable-source-maps', script], { cwd: root, env, stdio, detached: true });
  const ended = new Promise((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('exit', (code, signal) => resolve(signal ? `was ended by ${signal}` : `ended with exit code ${code}`));
  });
  const stop = async () => {
    child.kill('SIGTERM');
    const late = setTimeout(() => child.kill('SIGKILL'), PATIENCE);
    await ended;
    clearTimeout(late);
  };
  return { name, pid: child.pid, ended, stop };
}
