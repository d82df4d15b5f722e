import fs from 'node:fs';
import path from 'node:path';
import { buildServer } from './build-server.mjs';
import { buildWeb } from './build-web.mjs';
import { checkSettings } from './check-settings.mjs';
import { startChild } from './children.mjs';
import { choosePort, USUAL, USUAL_GATEWAY } from './choose-port.mjs';
import { startPostgres } from './embedded-postgres.mjs';
import { generateClient } from './generate-client.mjs';
import { waitForHealth } from './health.mjs';
import { keep } from './kept.mjs';
import { decideContent, embeddedDatabase, fillDemo, prepareDatabase } from './prepare-database.mjs';
import { takeOver, writeRunFile } from './run-file.mjs';
import { say } from './say.mjs';
import { printSignIns } from './sign-ins.mjs';
import { childEnvironment, dataFolder, givenLogins, localUrl } from './start-environment.mjs';
import { supervise } from './supervise.mjs';

const PROCESSES = { api: 'dist/apps/api/main.js', worker: 'dist/apps/worker/main.js', gateway: 'dist/apps/gateway/main.js' };

/** From installed packages to a running program; returns when it has been told to stop. */
export async function launch(options, { running, stop }) {
  const folder = dataFolder(options);
  const runFile = path.join(folder, 'run.json');
  fs.mkdirSync(folder, { recursive: true, mode: 0o711 }); // others may pass through, PostgreSQL's account among them, but not look
  await endOrphans(runFile);
  await build();
  if (stop.aborted) return;

  const postgres = process.env.DATABASE_URL ? undefined : await startEmbedded(folder, running);
  const url = postgres ? await embeddedDatabase(postgres, folder) : process.env.DATABASE_URL;
  const { env, demo } = await prepare({ url, options, folder });
  if (stop.aborted) return;

  const noteChildren = () => writeRunFile(runFile, { children, url: env.PUBLIC_URL });
  const children = Object.entries(PROCESSES).map(([name, script]) => keep(() => startChild(name, script, env), { say, onStart: noteChildren }));
  running.push(...children);
  noteChildren();
  const watched = postgres ? [...children, { name: 'embedded PostgreSQL', ended: postgres.untilGone().then(() => 'ended') }] : children;
  await supervise(watched, stop, async (signal) => {
    await waitForHealth(localUrl(env), signal);
    if (signal.aborted) return;
    // What ended before it was ever up has a reason that time does not cure.
    for (const child of children) child.trust();
    announce(env, demo);
  });
}

async function endOrphans(runFile) {
  const orphans = await takeOver(runFile);
  if (orphans) say(`Ended ${orphans} process${orphans === 1 ? '' : 'es'} that an earlier start left running.`);
  writeRunFile(runFile, { children: [] });
}

async function build() {
  if (await generateClient()) say('Generated the database client.');
  const [server, web] = await Promise.all([buildServer(), buildWeb()]);
  if (server || web) say(`Built ${[server && 'the server', web && 'the web app'].filter(Boolean).join(' and ')}.`);
}

async function startEmbedded(folder, running) {
  const postgres = await startPostgres({ folder: path.join(folder, 'pg') });
  running.push({ name: 'PostgreSQL', stop: postgres.stop });
  say('The embedded PostgreSQL is up.');
  return postgres;
}

/** The database as this version wants it, the demo in it if it is to be, and what the processes are told. */
async function prepare({ url, options, folder }) {
  const given = givenLogins(process.env);
  const asked = options.port ?? (process.env.PORT || undefined);
  const askedGateway = options.gatewayPort ?? (process.env.GATEWAY_PORT || undefined);
  const told = { url, logins: given, folder, port: asked ?? USUAL, gatewayPort: askedGateway ?? USUAL_GATEWAY };
  await checkSettings(childEnvironment({ ...told, demo: false }));
  const { demo, fill } = await decideContent({ url, empty: options.empty });
  await checkSettings(childEnvironment({ ...told, demo }));
  const port = await choosePort(asked);
  const gatewayPort = await choosePort(askedGateway, { usual: USUAL_GATEWAY, option: '--gateway-port' });
  const logins = await prepareDatabase({ url, fill, folder, given });
  const env = childEnvironment({ url, logins, demo, folder, port, gatewayPort });
  if (fill) await fillDemo(url, env);
  return { env, demo };
}

function announce(env, demo) {
  say(`Ready: ${env.PUBLIC_URL}`);
  say(`X-ray machines: port ${env.GATEWAY_PORT} of ${env.GATEWAY_HOST || env.HOST}.`);
  if (demo) printSignIns(env.DATA_FOLDER);
  console.log('\nCtrl-C stops it.');
}
