import { spawn } from 'node:child_process';
import path from 'node:path';

/** Runs a command to its end and gives what it printed; fails with its title and the end of its output. */
export function run(command, args, { title = path.basename(command), ...options } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'], ...options });
    let output = '';
    child.stdout?.setEncoding('utf8').on('data', (text) => (output += text));
    child.stderr?.setEncoding('utf8').on('data', (text) => (output += text));
    child.on('error', (error) => reject(new Error(`${title} could not be started: ${error.message}`, { cause: error })));
    child.on('close', (code, signal) => {
      if (code === 0) return resolve(output);
      const tail = output.trimEnd().split('\n').slice(-40).join('\n');
      reject(new Error(`${title} failed (${signal ?? `exit code ${code}`})${tail && `:\n${tail}`}`));
    });
  });
}
