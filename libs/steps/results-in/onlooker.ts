import { t } from '#libs/words/spoken';
import type { Tx } from '#libs/platform/database/db';
import { staffOnly } from '#libs/register/who-may';
import type { Reader } from '../reader-page/reader.js';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, StepError } from '../record/step-error.js';
import type { Lead } from '../scheme/scheme-screen.js';
import type { Bringer } from './bringer.js';

/** Whose page of readings it is: somebody's of a practice, of a centre, or the scheme's lead's, who sees what each centre sees. */
export type Onlooker = { practice: Actor } | { reader: Reader } | { lead: Lead };

export interface Centre { id: string; name: string; registeredBy: string | null }

/** Centres whose readings this person may bring. */
export async function centresOf({ db }: StepDeps, who: Onlooker): Promise<Centre[]> {
  if ('reader' in who) return [{ id: who.reader.centre, name: who.reader.centreName, registeredBy: null }];
  const all = (tx: Tx) => tx.centre.findMany({ where: 'lead' in who ? { schemeId: who.lead.scheme } : {}, select: { id: true, name: true, registeredBy: true }, orderBy: { name: 'asc' } });
  return 'lead' in who ? db.outside(all) : db.practice(who.practice.practice, all);
}

/** Everything under this person's eyes, one pair of eyes after the other until one has done it. */
export async function look<T>(deps: StepDeps, who: Onlooker, work: (tx: Tx) => Promise<T>): Promise<T[]> {
  if ('practice' in who) {
    staffOnly(who.practice);
    return [await deps.db.practice(who.practice.practice, work)];
  }
  const seen: T[] = [];
  for (const { id } of await centresOf(deps, who)) seen.push(await deps.db.centre(id, work));
  return seen;
}

export const brings = (who: Onlooker): boolean => !('practice' in who) || who.practice.roles.includes('desk');

/** A file is brought by the desk, by the centre's own readers or by the scheme's lead. */
export async function bringerOf(deps: StepDeps, who: Onlooker, centre: string | undefined): Promise<Bringer> {
  if (!brings(who)) throw new StepError('NOT_YOUR_ROLE', t('A file of readings is brought by the front desk.'));
  const at = 'reader' in who ? who.reader.centre : centre;
  if (!at) throw badInput('centre', t('Choose the centre whose readings these are.'));
  if (!(await centresOf(deps, who)).some((c) => c.id === at)) throw badInput('centre', t('This centre is not known. Choose one from the list.'));
  const of = (person: { id: string; name: string }) => ({ id: person.id, name: person.name, centre: at, way: 'file' as const });
  if ('practice' in who) return { ...of(who.practice), role: 'desk', actor: who.practice };
  return 'reader' in who ? { ...of(who.reader), role: 'reader', actor: null } : { ...of(who.lead), role: 'lead', actor: null };
}

export const personOf = (who: Onlooker): { id: string; name: string; role: string; practice: string | null } =>
  'practice' in who ? { ...who.practice, role: who.practice.roles[0] ?? 'none' } : 'reader' in who ? { id: who.reader.id, name: who.reader.name, role: 'reader', practice: null } : { id: who.lead.id, name: who.lead.name, role: 'lead', practice: null };
