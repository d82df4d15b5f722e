import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './root.mjs';

const load = (file) => import(pathToFileURL(path.join(root, 'dist/libs/platform/settings', file)));

/** Refuses wrong settings, and what they name but cannot be reached, before anything is started. */
export async function checkSettings(env) {
  const { readSettings } = await load('settings.js');
  const { checkReachable } = await load('reachable.js');
  const { installOwnStudies } = await load('own-studies.js');
  const settings = readSettings(env);
  installOwnStudies(settings.studiesFile);
  await checkReachable(settings);
}
