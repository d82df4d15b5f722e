import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { root } from './root.mjs';
import { say } from './say.mjs';

/** Runs Jest with these arguments, prints what was skipped and why, and counts. */
export async function runJest(args) {
  const report = path.join(root, '.cache', `jest-${process.pid}.json`);
  const jest = path.join(root, 'node_modules/jest/bin/jest.js');
  const child = spawn(process.execPath, ['--experimental-vm-modules', '--no-warnings=ExperimentalWarning', jest, '--json', `--outputFile=${report}`, ...args], {
    cwd: root,
    // With --json Jest prints the report itself to stdout, and all else to stderr.
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, NODE_ENV: 'test' },
  });
  const [code, signal] = await once(child, 'close');
  if (!fs.existsSync(report)) throw new Error(`Jest ended early (${signal ?? `exit code ${code}`}).`);
  const result = JSON.parse(fs.readFileSync(report, 'utf8'));
  fs.rmSync(report);
  printSkipped(result);
  return count(result, code);
}

function printSkipped({ testResults }) {
  const skipped = testResults.flatMap(({ assertionResults }) => assertionResults).filter(({ status }) => ['pending', 'todo'].includes(status));
  // A reason stands in a title, once for all the tests below it.
  const names = new Set(skipped.map(({ ancestorTitles, title }) => [...ancestorTitles, title].find((t) => t.includes('skipped:')) ?? [...ancestorTitles, title].join(' › ')));
  for (const name of names) say(`Skipped: ${name}`);
}

function count(result, code) {
  // A file that could not be run holds no tests, and still is a failure.
  let failed = result.numFailedTests + result.numRuntimeErrorTestSuites;
  if (code !== 0 && failed === 0) {
    say(`Jest ended with exit code ${code} although no test failed.`);
    failed = 1;
  }
  return { passed: result.numPassedTests, failed, skipped: result.numPendingTests + result.numTodoTests };
}
