import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { newPerson } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import { badInput } from '../refusal.js';

export type PersonEntry = z.output<typeof newPerson>;
export interface Known { id: string; name: string }

/** Who is to get mail needs an address for it; so does who is to get letters. */
export function reachable(entry: PersonEntry, path: string): void {
  const at = (field: string) => (path ? `${path}.${field}` : field);
  if (entry.channel === 'mail' && !entry.email) throw badInput(at('email'), t('A mail address is needed to send mail. Write it, or choose post or nothing.'));
  if (entry.channel === 'post' && !entry.address) throw badInput(at('address'), t('An address is needed to send letters. Write it, or choose mail or nothing.'));
}

export const personColumns = (entry: PersonEntry) => ({
  name: entry.name, latinName: entry.latinName ?? null, email: entry.email ?? null, phone: entry.phone ?? null, address: entry.address || null, channel: entry.channel, language: entry.language,
});

export async function insertPerson(tx: Tx, actor: Actor, entry: PersonEntry, path: string): Promise<Known> {
  reachable(entry, path);
  const id = randomUUID();
  await tx.person.create({ data: { id, practiceId: actor.practice, ...personColumns(entry) } });
  return { id, name: entry.name };
}

/** Somebody in this practice's own register; anybody else is answered as not there. */
export async function ownPerson(tx: Tx, actor: Actor, id: string, path: string): Promise<Known> {
  const row = await tx.person.findFirst({ where: { id, practiceId: actor.practice, erasedAt: null }, select: { id: true, name: true } });
  if (!row) throw badInput(path, t('This person is not in your register.'));
  return row;
}
