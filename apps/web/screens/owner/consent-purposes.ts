import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { Purpose } from './undone.js';

/** One thing to decide. `key` is its place on the sheet; a study has its own. */
export interface AskedPurpose {
  key: string;
  purpose: Purpose;
  subject?: string;
  title: string;
  text: string;
  version: string;
  answered: string | null;
}

export function purposesOf({ consents }: OwnerPage): AskedPurpose[] {
  const { sedation, studies, sendAll, statistics } = consents;
  const all: AskedPurpose[] = [
    ...(sedation ? [{ key: 'sedation', purpose: 'sedation' as const, ...sedation }] : []),
    ...studies.map((s) => ({ key: s.study, purpose: 'study' as const, subject: s.study, title: `${s.name}, read by ${s.centre}`, text: s.text, version: s.version, answered: s.answered })),
    { key: 'sendAll', purpose: 'sendAll', title: 'Every film taken is sent', ...sendAll },
    { key: 'statistics', purpose: 'statistics', title: 'Counting in the picture of the breed', ...statistics },
  ];
  return all.filter((p) => p.text !== '' && (p.answered !== null || p.purpose !== 'sendAll' || studies.length > 0));
}

/** Nothing is asked of an owner whose dog has no visit ahead and who is not waited for: the dog may have died. */
export const mayAsk = (page: OwnerPage) => page.visit !== null || page.toDo.length > 0;

export const saidWords = (answered: string | null) => (answered === 'yes' || answered === 'no' ? `you said ${answered}` : 'you took your yes back');
