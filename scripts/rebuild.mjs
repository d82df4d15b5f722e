import { parseArgs } from 'node:util';
import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';

const USAGE = `Usage: npm run rebuild [-- --empty]
  Counts the statistics of all breeds anew from the facts and says what differed.
  --empty  of the data of "npm start -- --empty"; else of the demo, or of what DATABASE_URL names`;

try {
  const { values } = parseArgs({ options: { empty: { type: 'boolean', default: false } } });
  await installPackages();
  const { withStoredData } = await import('./lib/stored-data.mjs');
  await withStoredData({ empty: values.empty, migrate: false }, async ({ databaseUrl, settings, load }) => {
    const { installOwnStudies } = await load('platform/settings/own-studies.js');
    const { Db } = await load('platform/database/db.js');
    const { rebuildStatistics } = await load('steps/statistics/rebuild-statistics.js');
    const { rebuiltWords } = await load('steps/statistics/rebuilt-words.js');
    installOwnStudies(settings.studiesFile);
    const db = new Db(settings.database.worker ?? databaseUrl, { connections: 2 });
    try {
      for (const line of rebuiltWords(await rebuildStatistics({ db, clock: { now: () => new Date() }, publicUrl: settings.publicUrl }))) say(line);
    } finally {
      await db.close();
    }
  });
} catch (error) {
  console.error(error.code?.startsWith('ERR_PARSE_ARGS') ? `${error.message}\n${USAGE}` : error.message);
  process.exitCode = 1;
}
process.exit();
