import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildServer } from './build-server.mjs';
import { deployMigrations } from './deploy-migrations.mjs';
import { startPostgres } from './embedded-postgres.mjs';
import { generateClient } from './generate-client.mjs';
import { embeddedDatabase } from './prepare-database.mjs';
import { root } from './root.mjs';
import { childEnvironment, dataFolder } from './start-environment.mjs';

const load = (file) => import(pathToFileURL(path.join(root, 'dist/libs', file)));

/** Database and file store as a start with the same options and settings would use them, the embedded server brought up if it does not run. */
export async function withStoredData({ empty, migrate }, work) {
  await generateClient();
  await buildServer();
  const folder = dataFolder({ empty });
  fs.mkdirSync(folder, { recursive: true, mode: 0o711 });
  const postgres = process.env.DATABASE_URL ? undefined : await startPostgres({ folder: path.join(folder, 'pg') });
  try {
    const url = process.env.DATABASE_URL ?? (await embeddedDatabase(postgres, folder));
    if (migrate) await deployMigrations(url);
    const { readSettings } = await load('platform/settings/settings.js');
    const { openFileStore } = await load('platform/files/open-file-store.js');
    const settings = readSettings(childEnvironment({ url, folder, demo: false, port: 4180 }));
    return await work({ databaseUrl: url, files: await openFileStore(settings), folder, settings, load });
  } finally {
    if (postgres && !postgres.found) await postgres.stop();
  }
}

export const megabytes = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;
