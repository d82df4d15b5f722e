import pg from 'pg';
import { lineFault, PATIENCE_MS } from './line-fault.js';

/** The least version whose role grants can be given without inheriting them. */
const LEAST_VERSION = 16;

export async function databaseFault(url: string): Promise<string | undefined> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: PATIENCE_MS });
  client.on('error', () => {}); // the same error rejects the call below
  try {
    await client.connect();
    const { rows } = await client.query<{ version: number }>(`SELECT current_setting('server_version_num')::int / 10000 AS version`);
    const version = rows[0]?.version ?? 0;
    return version < LEAST_VERSION ? `the server is PostgreSQL ${version}; version ${LEAST_VERSION} or later is needed.` : undefined;
  } catch (error) {
    return inWords(error, url);
  } finally {
    await client.end().catch(() => {}); // a line that never came up cannot be hung up
  }
}

function inWords(error: unknown, url: string): string {
  const { username, pathname } = new URL(url);
  const [login, name] = [decodeURIComponent(username), decodeURIComponent(pathname.slice(1))];
  // PostgreSQL manual, appendix A: 28P01 and 28000 refuse the login, 3D000 knows no such database
  switch ((error as { code?: string }).code) {
    case '28P01':
    case '28000':
      return `the server refuses the login "${login}"; check its password and that it may connect from here.`;
    case '3D000':
      return `the server has no database "${name}"; create it (CREATE DATABASE ${name}) or name another.`;
    case '53300':
      return 'the server has no connection left; allow more (max_connections) or stop what holds them.';
    default:
      return lineFault(error, 'PostgreSQL server', url) ?? `the database cannot be used: ${(error as Error).message}.`;
  }
}
