import { say } from '../messages/say.js';
import type { Work } from '../record/work.js';

export type IncidentKind = 'wrongDogTold' | 'wrongDogHeld';

export const incidentWords: Record<IncidentKind, string> = {
  wrongDogTold: 'A result that belonged to another dog had been told in a letter. It was withdrawn.',
  wrongDogHeld: 'A result that belonged to another dog arrived. It was found before a letter went out.',
};

/** For the practice's manager, by mail and on the order, and for the scheme lead, who sees kind and day. Says nothing of the other dog. */
export async function openIncident({ tx, order, actor, now }: Work, { study, kind }: { study: string; kind: IncidentKind }): Promise<void> {
  const incident = await tx.incident.create({ data: { orderId: order.id, practiceId: order.practice, studyId: study, kind, openedAt: now, openedBy: actor.name }, select: { id: true } });
  const managers = await tx.staff.findMany({ where: { practiceId: order.practice, active: true, roles: { has: 'manager' } }, orderBy: { name: 'asc' }, select: { id: true, name: true, email: true } });
  for (const { id, name, email } of managers) {
    await say(tx, { once: `incident:${incident.id}:${id}`, kind: 'incident', template: 'incident', order: order.id, practice: order.practice, subject: incident.id, to: { name, email }, data: { accession: order.accession, words: incidentWords[kind] } });
  }
}
