import type { ScreenSentence } from '#libs/words/de/screen';
import type { Language } from '#libs/words/languages';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { ScreenWords } from '../../words/Speak.js';
import type { Purpose } from './undone.js';

/** One thing to decide. `key` is its place on the sheet; a study has its own. */
export interface AskedPurpose {
  key: string;
  purpose: Purpose;
  subject?: string;
  title: string;
  text: string;
  version: string;
  /** In which it is written. */
  language: Language;
  answered: string | null;
}

export function purposesOf({ consents, language }: Pick<OwnerPage, 'consents' | 'language'>, t: ScreenWords): AskedPurpose[] {
  const { sedation, studies, sendAll, statistics } = consents;
  const all: AskedPurpose[] = [
    ...(sedation ? [{ key: 'sedation', purpose: 'sedation' as const, ...sedation }] : []),
    ...studies.map((s) => ({ key: s.study, purpose: 'study' as const, subject: s.study, title: t('{study}, read by {centre}', { study: s.name, centre: s.centre }), text: s.text, version: s.version, language, answered: s.answered })),
    { key: 'sendAll', purpose: 'sendAll', title: t('Every film taken is sent'), ...sendAll },
    { key: 'statistics', purpose: 'statistics', title: t('Counting in the picture of the breed'), ...statistics },
  ];
  return all.filter((p) => p.text !== '' && (p.answered !== null || p.purpose !== 'sendAll' || studies.length > 0));
}

/** Nothing is asked of an owner whose dog has no visit ahead and who is not waited for: the dog may have died. */
export const mayAsk = (page: OwnerPage) => page.visit !== null || page.toDo.length > 0;

export const saidWords = (answered: string | null): ScreenSentence => (answered === 'yes' ? 'you said yes' : answered === 'no' ? 'you said no' : 'you took your yes back');
