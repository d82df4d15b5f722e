import fs from 'node:fs';
import { parseArgs } from 'node:util';
import { installPackages } from './lib/install.mjs';

const USAGE = `Usage: npm run bench:faults [-- OPTIONS]
  --rounds N    walks of the straight road, each with something killed on the way (20)
  --seed S      what is killed, and when; printed, so that a run can be repeated
  --seconds N   ends after the round that is under way then (900)
  --people N    people at once when the rounds are over (200); 0 leaves them out
  --crowd-seconds N  how long they are there (60)
  --json FILE   keep the rows: name, value, unit`;

const options = { rounds: { type: 'string', default: '20' }, seed: { type: 'string' }, seconds: { type: 'string', default: '900' }, people: { type: 'string', default: '200' }, 'crowd-seconds': { type: 'string', default: '60' }, json: { type: 'string' }, help: { type: 'boolean' } };

try {
  const { values } = parseArgs({ options });
  if (values.help) console.log(USAGE);
  else {
    await installPackages();
    const { benchFaults } = await import('./lib/bench-faults.mjs');
    const seed = Number(values.seed ?? Math.floor(Math.random() * 1e6));
    const { rows, wrong } = await benchFaults({ rounds: Number(values.rounds), seed, limitSeconds: Number(values.seconds), crowd: { people: Number(values.people), seconds: Number(values['crowd-seconds']) } });
    if (values.json) fs.writeFileSync(values.json, `${JSON.stringify(rows, null, 2)}\n`);
    for (const one of wrong) console.error(`  wrong: ${one}`);
    process.exitCode = wrong.length ? 1 : 0;
  }
} catch (error) {
  console.error(error.code?.startsWith('ERR_PARSE_ARGS') ? `${error.message}\n${USAGE}` : error.stack);
  process.exitCode = 1;
}
process.exit();
