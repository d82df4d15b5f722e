import type { OwnerConsents, OwnerPage } from '#libs/contracts/screens/owner';
import type { ScreenWords } from '../../words/Speak.js';
import { readMoney } from './money.js';

export type YesNo = 'yes' | 'no';

/** What has been chosen on the sheet so far. A purpose is `sedation`, `sendAll`, `statistics` or a study's id. */
export interface ConsentSheet {
  choices: Partial<Record<string, YesNo>>;
  resuscitate?: YesNo;
  limit?: string;
  number?: string;
  collectors?: string;
  signature: { signatureSvg?: string; typedName?: string };
}

export const blankSheet: ConsentSheet = { choices: {}, signature: {} };

export type SheetProblems = Partial<Record<'choices' | 'resuscitate' | 'limit' | 'number' | 'collectors' | 'signature', string>>;
export type ReadSheet = { request: OwnerConsents; problems: null } | { request: null; problems: SheetProblems };

/** The sheet as a request, or everything that is missing before it can be signed. */
export function readSheet(sheet: ConsentSheet, page: OwnerPage, t: ScreenWords): ReadSheet {
  const problems: SheetProblems = {};
  const { sedation, sendAll, statistics } = sheet.choices;
  if (!Object.values(sheet.choices).some(Boolean)) problems.choices = t('Nothing is decided yet. Say yes or no to at least one of them; what you leave open stays open.');
  const emergency = sedation === 'yes' ? readEmergency(sheet, problems, t) : undefined;
  const { signatureSvg, typedName } = sheet.signature;
  if (!signatureSvg && !typedName?.trim()) problems.signature = t('Your signature is missing. Draw it, or write your name.');
  if (Object.keys(problems).length > 0) return { request: null, problems };
  return {
    problems: null,
    request: {
      ...(sedation && page.visit ? { visit: page.visit.id, sedation: { answer: sedation, ...(emergency ? { emergency } : {}) } } : {}),
      studies: page.consents.studies.flatMap(({ study }) => {
        const answer = sheet.choices[study];
        return answer ? [{ study, answer }] : [];
      }),
      ...(sendAll ? { sendAll } : {}),
      ...(statistics ? { statistics } : {}),
      ...(signatureSvg ? { signatureSvg } : {}),
      typedName: typedName?.trim() || page.signer.name,
    },
  };
}

function readEmergency({ resuscitate, limit = '', number = '', collectors = '' }: ConsentSheet, problems: SheetProblems, t: ScreenWords) {
  const limitMinor = readMoney(limit);
  const people = collectors.split('\n').map((line) => line.trim()).filter(Boolean);
  if (!resuscitate) problems.resuscitate = t('Say yes or no, so that nobody has to guess.');
  if (limitMinor === undefined) problems.limit = t('Write an amount like 500 or 500.00, without signs between the thousands.');
  if (number.trim().length < 3) problems.number = t('A number is needed that is answered on that day.');
  if (people.length === 0) problems.collectors = t('Name at least one person.');
  if (people.length > 5) problems.collectors = t('At most five people, one on each line.');
  return resuscitate && limitMinor !== undefined ? { resuscitate, limitMinor, number: number.trim(), collectors: people } : undefined;
}
