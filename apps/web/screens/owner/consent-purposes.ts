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
  return [
    ...(sedation ? [{ key: 'sedation', purpose: 'sedation' as const, ...sedation }] : []),
    ...studies.map((s) => ({ key: s.study, purpose: 'study' as const, subject: s.study, title: `${s.name}, read by ${s.centre}`, text: s.text, version: s.version, answered: s.answered })),
    { key: 'sendAll', purpose: 'sendAll', title: 'Every film taken is sent', ...sendAll },
    { key: 'statistics', purpose: 'statistics', title: 'Counting in the picture of the breed', ...statistics },
  ];
}
