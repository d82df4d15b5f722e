import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { root } from './root.mjs';
import { say } from './say.mjs';

function packagesOf(file) {
  return JSON.parse(fs.readFileSync(path.join(root, file), 'utf8')).packages;
}

/**
 * npm writes node_modules/.package-lock.json last, so an installation that was
 * cut short has none; one made by hand is recognised as well.
 */
function missingPackage() {
  if (!fs.existsSync(path.join(root, 'node_modules/.package-lock.json'))) return 'nothing is installed yet';
  const wanted = packagesOf('package-lock.json');
  const present = packagesOf('node_modules/.package-lock.json');
  for (const [name, { version, integrity, optional, devOptional }] of Object.entries(wanted)) {
    if (name === '') continue;
    if (!present[name]) {
      if (!optional && !devOptional) return `${name} is missing`;
    } else if (present[name].version !== version || present[name].integrity !== integrity) {
      return `${name} has another version than package-lock.json`;
    }
  }
  return undefined;
}

/** Brings node_modules to what package-lock.json says; does nothing when it is right. */
export async function installPackages() {
  const reason = missingPackage();
  if (!reason) return;
  say(`Installing packages (${reason}); this takes about a minute …`);
  const heartbeat = setInterval(() => say('… still installing packages'), 15_000);
  const how = await npmCi();
  clearInterval(heartbeat);
  if (how) throw new Error(`npm ci did not finish (${how}). Check the network and the free disk space, then run the command again.`);
  say('Packages installed.');
}

/** Undefined when all went well, else how it ended. */
function npmCi() {
  const npm = process.env.npm_execpath;
  const [command, first] = npm ? [process.execPath, [npm]] : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
  // Warnings are left out: some packages ask for a newer Node than they need.
  const child = spawn(command, [...first, 'ci', '--loglevel=error'], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], shell: command.endsWith('.cmd') });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('close', (code, signal) => resolve(code === 0 ? undefined : (signal ?? `exit code ${code}`)));
  });
}
