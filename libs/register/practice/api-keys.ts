import type { z } from 'zod';
import { newKey, type Keys } from '#libs/contracts/integrations';
import { newToken } from '#libs/platform/passwords/token';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { notFound } from '../refusal.js';
import { managersOnly } from '../who-may.js';

/** So that a key that lies about somewhere says whose it is. */
export const KEY_BEGINS = 'cotyla_';

type Deps = RegisterDeps & { publicUrl: string };

/** The keys by which other programs read what is this practice's. */
export function readKeys(deps: Deps, actor: Actor): Promise<Keys> {
  managersOnly(actor);
  return deps.db.practice(actor.practice, (tx) => keysIn(tx, deps, actor));
}

/** The key is in this answer and nowhere else: only its hash is kept. */
export async function makeKey(deps: Deps, actor: Actor, input: z.input<typeof newKey>): Promise<Keys> {
  managersOnly(actor);
  const { name, scopes } = parseInput(newKey, input);
  const { token, hash } = newToken();
  return deps.db.practice(actor.practice, async (tx) => {
    const [row] = await tx.$queryRaw<{ id: string }[]>`INSERT INTO api_key (practice_id, name, hash, scopes, at, by, by_name)
      VALUES (${actor.practice}::uuid, ${name}, ${hash}, ${[...new Set(scopes)]}::text[], ${deps.clock.now()}, ${actor.id}, ${actor.name}) RETURNING id`;
    await noteChange(tx, actor, 'makeKey', row!.id, { key: name, scopes });
    return { ...(await keysIn(tx, deps, actor)), made: { name, key: `${KEY_BEGINS}${token}` } };
  });
}

/** From now on it opens nothing. */
export async function endKey(deps: Deps, actor: Actor, key: string): Promise<Keys> {
  managersOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const count = await tx.$executeRaw`UPDATE api_key SET ended_at = ${deps.clock.now()}, ended_by_name = ${actor.name} WHERE id = ${knownId(key)}::uuid AND practice_id = ${actor.practice}::uuid AND ended_at IS NULL`;
    if (count === 0) throw notFound();
    await noteChange(tx, actor, 'endKey', key);
    return keysIn(tx, deps, actor);
  });
}

async function keysIn(tx: Tx, { publicUrl }: Deps, { practice }: Actor): Promise<Keys> {
  const rows = await tx.$queryRaw<(Omit<Keys['rows'][number], 'at' | 'lastUsed'> & { at: Date; lastUsed: Date | null })[]>`
    SELECT id, name, scopes, at, by_name AS by, last_used_at AS "lastUsed" FROM api_key WHERE practice_id = ${practice}::uuid AND ended_at IS NULL ORDER BY at, id`;
  return { rows: rows.map((row) => ({ ...row, at: row.at.toISOString(), lastUsed: row.lastUsed?.toISOString() ?? null })), address: `${publicUrl}/fhir`, made: null };
}
