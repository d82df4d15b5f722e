import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';

const USAGE = `Usage: npm run restore -- FOLDER [--empty] [--tombstones FILE]
  FOLDER             a backup; compared with its manifest before anything is written
  --empty            into the data of "npm start -- --empty"; else into the demo's place, or what DATABASE_URL and the file settings name
  --tombstones FILE  who was erased after this backup was made: tombstones.jsonl of the lost data folder or of a later backup.
                     The one in the data folder is always read. May be given several times.`;

try {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { empty: { type: 'boolean', default: false }, tombstones: { type: 'string', multiple: true, default: [] } } });
  if (positionals.length !== 1) throw new Error(USAGE);
  const missing = values.tombstones.find((file) => !fs.existsSync(file));
  if (missing) throw new Error(`${missing} is not there. Name the file again, or leave it out if nobody was erased since.`);
  await installPackages();
  const { withStoredData } = await import('./lib/stored-data.mjs');
  await withStoredData({ empty: values.empty, migrate: true }, async ({ databaseUrl, files, folder, settings, load }) => {
    const { restore } = await load('platform/backup/restore.js');
    const { tombstoneFile } = await load('platform/backup/tombstones.js');
    const { manifest, erasedAgain } = await restore({ databaseUrl, files, folder: path.resolve(positionals[0]), tombstones: [tombstoneFile(folder), ...values.tombstones.map((file) => path.resolve(file))] });
    const rows = manifest.tables.reduce((sum, t) => sum + t.rows, 0);
    say(`Restored ${rows} rows of ${manifest.tables.length} tables and ${manifest.files.length} files, as of ${manifest.madeAt}.`);
    if (erasedAgain) say(`${erasedAgain} ${erasedAgain === 1 ? 'person' : 'people'} erased after that moment ${erasedAgain === 1 ? 'is' : 'are'} erased here too.`);
    const { openSecretBox } = await load('platform/secrets/open-secret-box.js');
    const { lostSecrets } = await load('platform/secrets/lost-secrets.js');
    const lost = await lostSecrets(databaseUrl, await openSecretBox(settings));
    if (lost.secrets) say(`${lost.secrets} of its secrets cannot be read: they were sealed with the key ${lost.keys.join(', ')}, which is not here. Bring that key back, or enter them anew (docs/backup.md).`);
    say('Start the program: it finds all that is due. Everybody signs in again.');
  });
} catch (error) {
  console.error(error.code?.startsWith('ERR_PARSE_ARGS') ? `${error.message}\n${USAGE}` : error.message);
  process.exitCode = 1;
}
process.exit();
