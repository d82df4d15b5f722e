import { z } from 'zod';
import { answer, sentence } from '../common.js';
import { day, field, nothing, pickOne, pickSome, why, yes } from './fields.js';

/** Actions on the order as a whole. Their names are the pathway's. */
export const orderActions = {
  addStudy: z.object({ protocol: field(z.string().max(60), 'Study', { pick: 'protocols' }), centre: pickOne('centres', 'Grading centre') }),
  namePayer: z.object({ payer: pickOne('people', 'Who pays') }),
  confirmAddressees: z.object({ people: pickSome('people', 'Who gets the result') }),
  nameSigners: z.object({ rule: field(z.enum(['any', 'all']), 'Whose yes is needed', { help: 'All: each owner and co-owner in the register signs every consent.' }) }),
  chooseLetterTime: z.object({ person: pickOne('people', 'Who wants it'), anyTime: yes('Letters may come at any time, also at night and before a free day') }),
  cancelOrder: z.object({ why }),
  openVisit: z.object({
    studies: pickSome('studies', 'For which studies'),
    reason: field(z.enum(['missingViews', 'rejected', 'lost', 'first']), 'Why another visit'),
    restUntil: day('Rest until', 'Set by the vet; leave empty when no rest is needed').optional(),
    payer: pickOne('people', 'Who pays for this visit').optional(),
  }),
  offerReferral: z.object({ to: pickOne('practices', 'To which practice'), expires: day('Answer by'), ownerAgreed: yes('The owner agrees that the record is shared') }),
  acceptReferral: nothing,
  closeReferral: z.object({ answer: field(z.enum(['declined', 'takenBack']), 'What'), why }),
  recordTransfer: z.object({ day: day('Sold on'), buyerName: field(sentence.max(200), 'New owner'), buyerEmail: field(z.email().max(254), 'Mail address of the new owner').optional() }),
  agreeTransfer: z.object({ party: field(z.enum(['seller', 'buyer']), 'Who says yes') }),
  handOver: z.object({ to: pickOne('practices', 'To which practice'), ownerAgreed: yes('The owner agrees') }),
  recordDeath: z.object({ day: day('Died on'), inCare: yes('In our care'), cause: field(sentence.max(300), 'Cause, as far as known') }),
  recordHarm: z.object({ what: field(sentence, 'What happened') }),
  nameCaseOwner: z.object({ person: pickOne('staff', 'Who speaks with the family') }),
  liftSilence: z.object({ why }),
  liftLegalHold: z.object({ why, second: pickOne('staff', 'Second person') }),
  erasePerson: z.object({ person: pickOne('people', 'Whose data') }),
  answerStatistics: z.object({ answer: field(answer.exclude(['unknown']), 'Use in the breed’s statistics'), signer: pickOne('people', 'Who says so') }),
};
