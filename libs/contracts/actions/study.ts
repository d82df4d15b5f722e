import { z } from 'zod';
import { answer, joint, sentence, sha256 } from '../common.js';
import { statedSize } from '../film-size.js';
import { day, field, nothing, pickOne, pickSome, why, yes } from './fields.js';

const studyConsent = z.object({
  answer: field(answer.exclude(['unknown']), 'Agrees'),
  signer: pickOne('people', 'Who signs'),
  signerRole: field(z.enum(['owner', 'agent']), 'Signs as'),
  authority: pickOne('authorities', 'Stored authority of the agent').optional(),
  signatureSvg: z.string().max(40_000).optional(),
  typedName: z.string().trim().max(200).optional(),
});

export const enteredResult = z.object({
  ref: field(z.string().trim().min(1).max(60), 'The centre’s own number for this reading'),
  channel: field(z.enum(['page', 'file', 'post', 'webhook', 'phone']), 'How it came'),
  joints: z.array(joint).min(1).max(8),
  dogNumber: field(z.string().trim().max(40), 'Transponder on the reading').optional(),
  readOn: day('Read on').optional(),
  readBy: field(z.string().trim().min(1).max(200), 'Read by').optional(),
  comment: field(z.string().trim().max(2000), 'Comment').optional(),
  scan: sha256.optional(),
});

/** Technique as the console shows it; all optional, none is judged here. */
export const technique = z.object({ kv: z.number().min(20).max(150).optional(), mas: z.number().min(0).max(500).optional(), distanceCm: z.number().min(50).max(250).optional(), exposureIndex: z.number().optional(), deviationIndex: z.number().optional() });

export const studyActions = {
  consentStudy: studyConsent,
  consentSendAll: studyConsent,
  withdrawStudy: z.object({ purpose: field(z.enum(['study', 'sendAll']), 'Which yes is taken back').default('study'), why: field(sentence, 'Why').optional() }),
  seeProtocolChange: nothing,
  endStudy: z.object({ reason: field(z.enum(['ownerDecided', 'notRepeated', 'centreClosed', 'notPossible']), 'Reason'), note: field(sentence, 'Note').optional() }),
  decideAfterDeath: z.object({ goOn: yes('The study goes on') }),
  takeView: z.object({
    view: field(z.string().max(40), 'View', { pick: 'views' }),
    serves: pickSome('studies', 'For which studies'),
    image: sha256,
    people: pickSome('staff', 'Who was in the room'),
    technique: technique.default({}),
    marker: field(z.enum(['L', 'R', 'both', 'none']), 'Side marker seen in the image'),
    size: statedSize.optional(),
  }),
  judgeView: z.object({ exposure: pickOne('exposures', 'Film'), verdict: field(z.enum(['accept', 'retake', 'undecided']), 'Verdict'), reasons: field(z.array(z.string().max(60)).max(8), 'Reasons', { pick: 'reasons' }).default([]) }),
  settleViews: z.object({ why }),
  seal: nothing,
  send: nothing,
  sealSupplement: nothing,
  resolveSend: z.object({ send: pickOne('sends', 'Which sending'), arrived: yes('It arrived') }),
  acknowledge: z.object({ send: pickOne('sends', 'Which sending').optional() }),
  rejectFilms: z.object({ views: pickSome('views', 'Which views'), reasons: field(z.array(sentence.max(200)).min(1).max(8), 'Reasons') }),
  enterResult: enteredResult,
  recordCause: z.object({ cause: field(z.enum(['unpaid', 'bounced', 'closed', 'lost', 'noAnswer']), 'Cause') }),
  clearCause: z.object({ cause: field(z.enum(['unpaid', 'bounced', 'closed', 'lost', 'noAnswer']), 'Cause') }),
  recordAutoReply: z.object({ note: field(sentence, 'What it says').optional() }),
  takeChase: z.object({ person: pickOne('staff', 'Who looks after it'), lookAgain: day('Look again on') }),
  changeCentre: z.object({ centre: pickOne('centres', 'Grading centre') }),
  keyResult: z.object({ result: pickOne('results', 'Reading'), joints: z.array(joint).min(1).max(8) }),
  explainResult: z.object({ result: pickOne('results', 'Reading'), why }),
  refuseResult: z.object({ result: pickOne('results', 'Reading'), reason: field(z.enum(['otherDog', 'implausible', 'sentTwice']), 'Reason') }),
  askWhichStands: z.object({}),
  settleConflict: z.object({ keep: pickOne('results', 'Which reading stands, as the centre says'), saidBy: field(z.string().trim().min(1, 'Say who at the centre said so.').max(120), 'Who at the centre said so'), why }),
  acceptResult: z.object({ result: pickOne('results', 'Reading') }),
  setPhoneFirst: z.object({ until: day('Call by') }),
  recordCall: z.object({ reached: yes('The owner was reached') }),
  releaseLetter: nothing,
  releaseAgain: nothing,
  releaseCorrection: nothing,
  releaseFilmsRejected: z.object({ cost: field(sentence.max(300), 'What the new pictures cost, in words for the owner') }),
  withdrawResult: z.object({ result: pickOne('results', 'Reading'), reason: field(z.enum(['otherDog', 'centreTookBack']), 'Reason') }),
  recordOutcome: z.object({ letter: pickOne('letters', 'Letter'), to: pickOne('people', 'To'), outcome: field(z.enum(['delivered', 'bounced', 'unknown']), 'Outcome') }),
  resolveLetter: z.object({ letter: pickOne('letters', 'Letter'), to: pickOne('people', 'To'), arrived: yes('It arrived') }),
  askAppeal: z.object({ result: pickOne('results', 'Reading'), asker: pickOne('people', 'Who asks') }),
  closeAppeal: z.object({ reason: field(z.enum(['ownerDecided', 'notPossible']), 'Reason') }),
  tellCentre: nothing,
  tellOfNote: z.object({
    note: pickOne('notes', 'Of which films'),
    how: field(z.enum(['phone', 'mail']), 'How the centre was told'),
    whom: field(z.string().trim().min(1, 'Say who at the centre was told.').max(120), 'Who at the centre was told'),
  }),
};
