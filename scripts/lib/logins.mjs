import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import pg from 'pg';

const ROLES = { app: 'cotyla_api', worker: 'cotyla_worker' };

/** The passwords of the restricted logins, made once and kept for this machine's account alone. */
export function keptPasswords(folder) {
  const file = path.join(folder, 'logins.json');
  if (!fs.existsSync(file)) {
    const password = () => crypto.randomBytes(24).toString('base64url');
    fs.writeFileSync(file, JSON.stringify({ app: password(), worker: password() }), { mode: 0o600 });
  }
  return JSON.parse(fs.readFileSync(file, 'utf8'));
}

/** The owner's address, but as one of the restricted logins. */
function addressOf(ownerUrl, role, password) {
  const url = new URL(ownerUrl);
  url.username = role;
  url.password = password;
  return url.href;
}

/** Gives the restricted logins, which the migrations made, these passwords; answers their addresses. */
export async function setLogins(ownerUrl, passwords) {
  const client = new pg.Client(ownerUrl);
  await client.connect();
  try {
    for (const [kind, role] of Object.entries(ROLES)) {
      const sql = `ALTER ROLE ${client.escapeIdentifier(role)} LOGIN PASSWORD ${client.escapeLiteral(passwords[kind])}`;
      await client.query(sql);
    }
  } catch (error) {
    throw new Error(`The restricted database logins could not be set: ${error.message}. Apply the migrations first, as a login that may create roles.`, { cause: error });
  } finally {
    await client.end();
  }
  return { app: addressOf(ownerUrl, ROLES.app, passwords.app), worker: addressOf(ownerUrl, ROLES.worker, passwords.worker) };
}
