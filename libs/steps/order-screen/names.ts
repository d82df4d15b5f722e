import { roleNames, type Role } from '#libs/contracts/common';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { studyName } from '#libs/register/spoken-names';
import type { Work } from '../record/work.js';
import type { ScreenSource } from './screen-source.js';

type Facts = Pick<Work, 'facts' | 'evaluation' | 'order'>;

/** Words for the ids that holds and facts carry: people, studies, views, centres, practices, and who is there today for a role. */
export function namesOf(source: Pick<ScreenSource, 'dog' | 'staff' | 'directory'>, { facts, evaluation, order }: Facts): Record<string, string> {
  const names: Record<string, string> = {};
  for (const s of source.staff) names[s.id] = s.name;
  for (const p of source.dog.people) names[p.person.id] = p.person.name;
  for (const q of source.directory) names[q.id] = q.name;
  for (const [id, c] of Object.entries(order.centres ?? {})) names[id] = c.name;
  for (const s of Object.values(evaluation.studies)) {
    const protocol = findProtocol(s.protocol, s.version);
    names[s.id] = studyName(s);
    for (const v of protocol?.views ?? []) names[v.code] = t.known(v.shortLabel);
  }
  const booked = facts('visitBooked').at(-1)?.detail ?? {};
  for (const [role, field] of [['vet', 'vetName'], ['nurse', 'nurseName'], ['radiographer', 'operatorName']] as const) {
    const name = booked[field];
    if (typeof name === 'string') names[role] = name;
  }
  const owner = source.dog.people.find((p) => p.role === 'owner' && !p.until)?.person.name;
  if (owner) names.owner = owner;
  return names;
}

export const roleWord = (role: string): string => t.known(role in roleNames ? roleNames[role as Role] : role === 'queue' ? 'the program' : role);
