import path from 'node:path';
import { root } from './root.mjs';

/** Where this start keeps what is its own: the demo and a start with --empty never share data. */
export function dataFolder({ empty }) {
  return path.resolve(root, process.env.DATA_FOLDER || path.join('.data', empty ? 'own' : 'demo'));
}

/** The restricted logins when the environment names both. */
export function givenLogins({ APP_DATABASE_URL: app, WORKER_DATABASE_URL: worker }) {
  return app && worker ? { app, worker } : undefined;
}

/** What the processes are told; an undefined value is not passed on. */
export function childEnvironment({ url, logins, demo, folder, port, gatewayPort = 11_112 }) {
  return {
    ...process.env,
    NODE_ENV: 'production',
    DATABASE_URL: url,
    APP_DATABASE_URL: logins?.app,
    WORKER_DATABASE_URL: logins?.worker,
    DATA_FOLDER: folder,
    DEMO: demo ? '1' : '0',
    HOST: process.env.HOST || '127.0.0.1',
    PORT: String(port),
    GATEWAY_PORT: String(gatewayPort),
    PUBLIC_URL: process.env.PUBLIC_URL || `http://127.0.0.1:${port}`,
  };
}

/** The address at which this machine itself reaches the api. */
export function localUrl({ HOST, PORT }) {
  const host = ['0.0.0.0', '::'].includes(HOST) ? '127.0.0.1' : HOST;
  return `http://${host.includes(':') ? `[${host}]` : host}:${PORT}`;
}
