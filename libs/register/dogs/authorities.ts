import type { z } from 'zod';
import { newAuthority, type Authority } from '#libs/contracts/people';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, existingDay, knownId, parseInput, pastDay } from '../parse-input.js';
import { ownPerson } from '../people/write-person.js';
import { practiceDay } from '../practice-day.js';
import { badInput, notFound } from '../refusal.js';
import { staffOnly } from '../who-may.js';
import { ownDog } from './dog-in.js';

type Rows = { rows: Authority[] };

/** Who may say yes for an owner of this dog, and to what. */
export function listAuthorities(deps: RegisterDeps, actor: Actor, dog: string): Promise<Rows> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    if (!(await tx.dog.findUnique({ where: { id: knownId(dog) }, select: { id: true } }))) throw notFound();
    return authoritiesIn(tx, dog);
  });
}

/** An owner's authority for somebody else, from the paper or the mail in which it was given. */
export function addAuthority(deps: RegisterDeps, actor: Actor, dog: string, input: z.input<typeof newAuthority>): Promise<Rows> {
  staffOnly(actor);
  const wanted = parseInput(newAuthority, input);
  return deps.db.practice(actor.practice, async (tx) => {
    await ownDog(tx, actor, dog);
    const from = pastDay('from', wanted.from, await practiceDay(tx, actor, deps.clock.now()));
    const until = existingDay('until', wanted.until);
    if (until < from) throw badInput('until', t('The last day lies before the first one.'));
    const agent = await ownPerson(tx, actor, wanted.agent, 'agent');
    const owner = await ownPerson(tx, actor, wanted.owner, 'owner');
    if (agent.id === owner.id) throw badInput('agent', t('An owner needs no authority for themselves.'));
    const owns = await tx.dogRole.findFirst({ where: { dogId: dog, personId: owner.id, role: { in: ['owner', 'coOwner'] }, until: null }, select: { id: true } });
    if (!owns) throw badInput('owner', t('{owner} does not own this dog. Only an owner gives an authority.', { owner: owner.name }));
    const row = await tx.authority.create({ data: { practiceId: actor.practice, dogId: dog, agentId: agent.id, ownerId: owner.id, covers: wanted.covers, from: asDate(from), until: asDate(until), evidence: wanted.evidence, at: deps.clock.now() } });
    const known = await tx.dogRole.findFirst({ where: { dogId: dog, personId: agent.id, role: 'agent', until: null }, select: { id: true } });
    if (!known) await tx.dogRole.create({ data: { practiceId: actor.practice, dogId: dog, personId: agent.id, role: 'agent', from: asDate(from) } });
    await noteChange(tx, actor, 'addAuthority', dog, { authority: row.id });
    return authoritiesIn(tx, dog);
  });
}

/** Taken back before its last day; what was said by it until now stands. */
export function endAuthority(deps: RegisterDeps, actor: Actor, dog: string, authority: string): Promise<Rows> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    await ownDog(tx, actor, dog);
    const ended = await tx.authority.updateMany({ where: { id: knownId(authority), dogId: dog, endedAt: null }, data: { endedAt: deps.clock.now() } });
    if (ended.count === 0) throw notFound();
    await noteChange(tx, actor, 'endAuthority', dog, { authority });
    return authoritiesIn(tx, dog);
  });
}

async function authoritiesIn(tx: Tx, dog: string): Promise<Rows> {
  return {
    rows: await tx.$queryRaw<Authority[]>`
      SELECT u.id, u.agent_id AS agent, a.name AS "agentName", u.owner_id AS owner, o.name AS "ownerName", u.covers, u.valid_from::text AS from, u.valid_until::text AS until, u.evidence, u.ended_at IS NOT NULL AS ended
      FROM authority u JOIN person a ON a.id = u.agent_id JOIN person o ON o.id = u.owner_id WHERE u.dog_id = ${dog}::uuid ORDER BY u.at DESC`,
  };
}
