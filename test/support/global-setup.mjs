import path from 'node:path';
import { startPostgres } from '../../scripts/lib/embedded-postgres.mjs';
import { root } from '../../scripts/lib/root.mjs';
import { prepareTestServer } from '../../scripts/lib/test-server.mjs';

/** One fast server for every run in this checkout, with a migrated template to clone. */
export default async function globalSetup() {
  const folder = path.join(root, '.data/test-pg');
  const postgres = await startPostgres({ folder, fast: true });
  const { told, release } = await prepareTestServer(postgres, folder);
  process.env.TEST_SERVER = JSON.stringify(told);
  globalThis.releaseTestServer = release;
}
