import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { openFileStore } from '#libs/platform/files/open-file-store';
import { installOwnStudies } from '#libs/platform/settings/own-studies';
import { readSettings } from '#libs/platform/settings/settings';
import { startGateway } from './gateway.js';
import { readTls } from './read-tls.js';

/** An image that is on its way may still arrive. */
const STOP_MS = 15_000;

const settings = readSettings();
installOwnStudies(settings.studiesFile);
const log = (words: string, error?: unknown) => console.error(new Date().toISOString(), 'gateway', words, ...(error === undefined ? [] : [error]));
const db = new Db(settings.database.app ?? settings.database.owner);
const deps = { db, clock: systemClock, files: await openFileStore(settings), publicUrl: settings.publicUrl };
const { tls, ...listen } = settings.gateway;
const gateway = await startGateway({ deps, ...listen, tls: tls && (await readTls(tls)), log });
console.log(`gateway ready on port ${gateway.port}${gateway.tlsPort ? `, and over TLS on port ${gateway.tlsPort}` : ''}`);

let stopping = false;
for (const signal of ['SIGTERM', 'SIGINT'] as const) {
  process.on(signal, () => {
    if (stopping) return;
    stopping = true;
    void gateway.close(STOP_MS).then(() => db.close()).finally(() => process.exit(0));
  });
}
