import path from 'node:path';
import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { openFileStore } from '#libs/platform/files/open-file-store';
import { Limits } from '#libs/platform/limits/limits';
import { openSecretBox } from '#libs/platform/secrets/open-secret-box';
import { installOwnStudies } from '#libs/platform/settings/own-studies';
import { readSettings } from '#libs/platform/settings/settings';
import { createApi } from './app.js';
import { Deps } from './deps.js';

const settings = readSettings();
installOwnStudies(settings.studiesFile);
const db = new Db(settings.database.app ?? settings.database.owner);
const deps = new Deps(db, systemClock, await openFileStore(settings), new Limits({ pool: db.pool }), await openSecretBox(settings), settings);
const log = (error: unknown, request: string) => console.error(new Date().toISOString(), request, error);
const api = await createApi({ deps, web: path.resolve(import.meta.dirname, '../../web'), log });
await api.listen(settings.listen.port, settings.listen.host);
