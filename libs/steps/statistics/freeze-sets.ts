import { createHash, randomUUID } from 'node:crypto';
import { nextSet } from '#libs/science/population/next-set';
import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '../record/step-deps.js';
import { setContent, type CountedDog } from './set-content.js';

interface Group { schemeId: string; protocol: string; pool: string; breed: string; ageBand: string }
interface Scheme { id: string; zone: string }

export interface Frozen { frozen: number; waiting: number }

/**
 * Freezes a set of every breed that may have a new one, by the rule of `nextSet`; the others keep theirs, with its
 * date. The run itself is kept too: when, by whom, how many.
 */
export async function freezeSets(deps: StepDeps, byName: string): Promise<Frozen> {
  const schemes = await deps.db.system('freeze sets', (tx) => tx.scheme.findMany({ select: { id: true, zone: true } }));
  const total: Frozen = { frozen: 0, waiting: 0 };
  for (const scheme of schemes) {
    const done = await freezeScheme(deps, scheme, byName);
    total.frozen += done.frozen;
    total.waiting += done.waiting;
  }
  return total;
}

/** One group a transaction; the run is written down last, so one that was broken off is done again. */
async function freezeScheme(deps: StepDeps, scheme: Scheme, byName: string): Promise<Frozen> {
  const now = deps.clock.now();
  const [id, day] = [randomUUID(), localDay(now.toISOString(), scheme.zone)];
  const groups = await deps.db.system('freeze sets', (tx) => tx.countingRow.findMany({
    where: { schemeId: scheme.id, state: 'counted' }, distinct: ['pool', 'breed', 'ageBand'], select: { schemeId: true, protocol: true, pool: true, breed: true, ageBand: true }, orderBy: [{ breed: 'asc' }, { pool: 'asc' }, { ageBand: 'asc' }],
  }));
  let frozen = 0;
  for (const group of groups) if (await deps.db.system('freeze a set', (tx) => freezeGroup(tx, group, { id, day }))) frozen++;
  const done = { frozen, waiting: groups.length - frozen };
  await deps.db.system('freeze sets', (tx) => tx.referenceFreeze.create({ data: { id, schemeId: scheme.id, day: new Date(day), at: now, byName, ...done } }));
  return done;
}

async function freezeGroup(tx: Tx, group: Group, run: { id: string; day: string }): Promise<boolean> {
  // Nothing is counted and no other set is frozen meanwhile.
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended('counting', 0))`;
  const counted = await tx.countingRow.findMany({ where: { ...group, state: 'counted' } });
  const dogs = counted.map((row): CountedDog => ({ dog: row.dogId, reading: row.reading!, bornYear: row.bornYear, imagedYear: row.imagedYear, sender: row.sender, dogValue: row.dogValue!, leftValue: row.leftValue!, rightValue: row.rightValue! }));
  const before = await tx.referenceSet.findFirst({ where: group, orderBy: { seq: 'desc' }, select: { id: true } });
  const members = before && (await tx.referenceMember.findMany({ where: { setId: before.id }, select: { dogId: true, reading: true } }));
  const next = nextSet(dogs, members?.map((m) => ({ dog: m.dogId, reading: m.reading })), (dog) => createHash('sha256').update(run.id + dog).digest('hex'));
  if (next.kind === 'waits') return false;
  const unsent = await tx.countingRow.count({ where: { schemeId: group.schemeId, protocol: group.protocol, breed: group.breed, ageBand: group.ageBand, state: 'unsent' } });
  const content = setContent(group.pool, next.members);
  const set = await tx.referenceSet.create({
    data: { ...group, freezeId: run.id, frozenOn: new Date(run.day), n: next.members.length, counts: content.counts, parts: content.parts as object, unsent, fromYear: content.fromYear, toYear: content.toYear }, select: { id: true },
  });
  await tx.referenceMember.createMany({ data: next.members.map((m) => ({ setId: set.id, dogId: m.dog, reading: m.reading })) });
  if (before) await tx.referenceMember.deleteMany({ where: { setId: before.id } });
  return true;
}
