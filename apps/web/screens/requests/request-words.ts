import type { DataRequest, RequestKind } from '#libs/contracts/requests';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../words/t.js';

export const kindWords: Record<RequestKind, { name: PageSentence; asks: PageSentence }> = {
  access: { name: 'Access', asks: 'wants to have everything that is kept' },
  correction: { name: 'Correction', asks: 'says that something is wrong' },
  restriction: { name: 'Restriction', asks: 'wants the data kept and not used' },
  erasure: { name: 'Erasure', asks: 'wants to be erased' },
  objection: { name: 'Objection', asks: 'does not want to be in the breed’s statistics' },
};

export const kindOptions = (Object.keys(kindWords) as RequestKind[]).map((id) => ({ id, name: kindWords[id].name, hint: kindWords[id].asks }));

const eventWords: Record<string, PageSentence> = {
  verified: 'Made sure of the person', extended: 'More time taken', exported: 'Zip made', restricted: 'Restricted', restrictionLifted: 'Restriction lifted',
  objected: 'Taken out of statistics', erased: 'Erased', noted: 'Note', done: 'Closed as done', refused: 'Closed as refused',
};
export const eventWord = (type: string) => (eventWords[type] ? t(eventWords[type]) : type);

/** What is to be done next, in the order in which it has to be. */
export function nextOf(request: DataRequest): 'verify' | 'act' | 'close' | 'none' {
  if (request.closed) return 'none';
  if (!request.verified) return 'verify';
  const done = { access: request.events.some((e) => e.type === 'exported'), correction: false, restriction: request.restricted, erasure: request.person.erased, objection: request.objected }[request.kind];
  return done || request.kind === 'correction' ? 'close' : 'act';
}
