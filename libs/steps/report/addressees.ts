import { asLanguage } from '#libs/words/languages';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import type { Addressee } from './letter-base.js';

/** Who gets the result now, read anew from the register; who wants none gets none. */
export async function addressees(work: Work, only?: string[]): Promise<Addressee[]> {
  const named = ([...work.facts('orderOpened'), ...work.facts('addresseesConfirmed')].at(-1)?.addressees ?? []).filter((a) => a.channel !== 'none' && (!only || only.includes(a.person)));
  const people = await work.tx.person.findMany({ where: { id: { in: named.map((a) => a.person) } }, select: { id: true, name: true, email: true, address: true, language: true } });
  const to = named.flatMap(({ person, channel }) => people.filter((p) => p.id === person).map((p) => ({ ...p, language: asLanguage(p.language), channel: channel === 'mail' && p.email ? ('mail' as const) : ('post' as const) })));
  if (to.length === 0) throw new StepError('HELD', 'Nobody is named to get the letter. Say first who gets it.');
  return to;
}
