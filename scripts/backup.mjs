import path from 'node:path';
import { parseArgs } from 'node:util';
import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';

const USAGE = `Usage: npm run backup -- FOLDER [--empty]
  FOLDER   a new folder for this backup: rows, films and papers, and a manifest of hashes
  --empty  of the data of "npm start -- --empty"; else of the demo, or of what DATABASE_URL and the file settings name`;

try {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { empty: { type: 'boolean', default: false } } });
  if (positionals.length !== 1) throw new Error(USAGE);
  await installPackages();
  const { withStoredData, megabytes } = await import('./lib/stored-data.mjs');
  const folder = path.resolve(positionals[0]);
  await withStoredData({ empty: values.empty, migrate: false }, async ({ databaseUrl, files, load }) => {
    const { backUp, sizeOf } = await load('platform/backup/back-up.js');
    const manifest = await backUp({ databaseUrl, files, folder, now: new Date() });
    const rows = manifest.tables.reduce((sum, t) => sum + t.rows, 0);
    say(`Backed up ${rows} rows of ${manifest.tables.length} tables and ${manifest.files.length} files, ${megabytes(await sizeOf(manifest, folder))}, to ${folder}.`);
    say('It holds personal data and the scheme’s signing key: keep it as safe as the server.');
    say('The key that seals passwords and secrets is not in it: keep a copy of that apart from the backups (docs/backup.md).');
  });
} catch (error) {
  console.error(error.code?.startsWith('ERR_PARSE_ARGS') ? `${error.message}\n${USAGE}` : error.message);
  process.exitCode = 1;
}
process.exit();
