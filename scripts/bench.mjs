import { parseArgs } from 'node:util';
import { installPackages } from './lib/install.mjs';

const USAGE = `Usage: npm run bench [-- OPTIONS] [NAME …]
  --json FILE  keep the rows: name, value, unit, ratio
  --clone      also measure from a fresh clone to the first page; takes minutes, and the network
  NAME         only benches whose file name holds NAME`;

try {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { json: { type: 'string' }, clone: { type: 'boolean', default: false }, help: { type: 'boolean' } } });
  if (values.help) console.log(USAGE);
  else {
    await installPackages();
    const { runBenches } = await import('./lib/run-benches.mjs');
    await runBenches({ names: positionals, json: values.json, clone: values.clone });
  }
} catch (error) {
  console.error(error.code?.startsWith('ERR_PARSE_ARGS') ? `${error.message}\n${USAGE}` : error.stack);
  process.exitCode = 1;
}
process.exit();
