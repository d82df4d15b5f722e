import type { OwnerPage } from '#libs/contracts/screens/owner';
import { asLanguage } from '#libs/words/languages';
import type { Words } from '#libs/words/words';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { isOpenStudy } from '#libs/pathway/steps';
import { studyConsentText } from '../consent/study-consent-text.js';
import type { Work } from '../record/work.js';

export interface OwnerText { kind: string; version: string; title: string; body: string; language: string; id: string; by: string | null }

/** Each purpose with the text in force and what was answered to it; null where nothing was. */
export function consentsOf(work: Pick<Work, 'facts' | 'evaluation' | 'order'>, visit: string | undefined, texts: OwnerText[], t: Words): OwnerPage['consents'] {
  const { facts, evaluation, order } = work;
  const rules = order.rules.practices[order.practice]!;
  const text = (kind: string, version: string) => texts.find((t) => t.kind === kind && t.version === version);
  const answered = (purpose: string, subject: (f: { visit?: string; study?: string }) => boolean): string | null => {
    const given = facts('consentGiven').filter((f) => f.purpose === purpose && subject(f)).at(-1);
    const back = facts('consentWithdrawn').filter((f) => f.purpose === purpose && subject(f)).at(-1);
    return !given ? null : back && back.rec >= given.rec ? 'taken back' : given.answer;
  };
  const sendAll = text('consentSendAll', rules.sendAllText);
  const statistics = text('consentStatistics', rules.statisticsText);
  const sedation = text('consentSedation', rules.sedationText);
  return {
    sedation: visit && sedation ? { answered: answered('sedation', (f) => f.visit === visit), title: sedation.title, text: sedation.body, version: sedation.version, language: asLanguage(sedation.language) } : null,
    studies: Object.values(evaluation.studies).filter((s) => isOpenStudy(s.step)).map((s) => {
      const protocol = findProtocol(s.protocol, s.version);
      const centre = order.centres[s.centre]?.name ?? '';
      return { study: s.id, name: t.known(protocol?.name ?? s.protocol), centre, answered: answered('study', (f) => f.study === s.id), text: protocol ? studyConsentText(protocol, centre, t) : '', version: protocol?.consentText ?? '' };
    }),
    sendAll: { answered: answered('sendAll', () => true), text: sendAll?.body ?? '', version: rules.sendAllText, language: asLanguage(sendAll?.language) },
    statistics: { answered: answered('statistics', () => true), text: statistics?.body ?? '', version: rules.statisticsText, language: asLanguage(statistics?.language) },
  };
}
