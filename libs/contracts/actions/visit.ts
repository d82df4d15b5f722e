import { z } from 'zod';
import { answer, id, localTime, phone, question, sentence } from '../common.js';
import { statedSize } from '../film-size.js';
import { day, field, nothing, pickOne, pickSome, why, yes } from './fields.js';

const transponders = field(z.array(z.string().trim().max(24)).max(3), 'Numbers read');

/** Drug as the vet writes it; the program computes and shows, and proposes nothing. */
export const drugLine = z.object({
  drug: z.string().trim().min(1, 'Which drug?').max(120),
  route: z.string().trim().min(1, 'Which route?').max(60),
  dose: z.number().positive(),
  doseUnit: z.enum(['mg/kg', 'µg/kg', 'mg/m²', 'µg/m²']),
  concentration: z.number().positive(),
  concentrationUnit: z.enum(['mg/mL', 'µg/mL']),
  /** Only for a dose per m²: the constant that the vet's own handbook takes the body surface with. */
  surfaceConstant: z.union([z.literal(10), z.literal(10.1)]).optional(),
  resolutionMl: z.union([z.literal(0.01), z.literal(0.05), z.literal(0.1), z.literal(0.5)]),
});
export type DrugLine = z.infer<typeof drugLine>;

const signature = { signerRole: field(z.enum(['owner', 'agent']), 'Signs as'), authority: pickOne('authorities', 'Stored authority of the agent').optional(), signatureSvg: z.string().max(40_000).optional(), typedName: z.string().trim().max(200).optional() };

export const sedationConsent = z.object({
  answer: field(answer.exclude(['unknown']), 'Agrees to the sedation'),
  signer: pickOne('people', 'Who signs'),
  ...signature,
  emergency: z
    .object({
      resuscitate: field(z.enum(['yes', 'no']), 'In an emergency, try to revive'),
      limitMinor: field(z.int().min(0), 'Spending limit without asking, in cents'),
      number: field(phone, 'Number answered today'),
      collectors: field(z.array(z.string().trim().min(1).max(120)).min(1).max(5), 'Who may collect the dog'),
    })
    .optional(),
});

const coordinate = z.number({ error: 'A point has no place in the picture. Set it again.' });
export const mark = z.object({
  kind: z.string().max(20),
  side: z.enum(['left', 'right']).optional(),
  points: z.array(z.object({ x: coordinate, y: coordinate })).max(24, 'A circle takes 24 points at most. Remove some.'),
});

export const visitActions = {
  book: z.object({ day: day('Day'), start: field(localTime, 'Time'), minutes: field(z.int().min(15).max(240), 'Minutes'), room: pickOne('rooms', 'Room'), operator: pickOne('operators', 'Operator'), nurse: pickOne('nurses', 'Monitoring nurse'), vet: pickOne('vets', 'Vet') }),
  cancelVisit: z.object({ side: field(z.enum(['owner', 'practice']), 'Who cancels'), why }),
  recordMissed: nothing,
  admit: z.object({
    weightKg: field(z.number().min(0.5).max(120), 'Weight today, kg'),
    bodyCondition: field(z.int().min(1).max(9), 'Body condition, 1 to 9'),
    fastedHours: field(z.number().min(0).max(72), 'Hours without food'),
    medicines: field(z.string().trim().max(400), 'Medicines today').optional(),
    /** Said when the weight is far from the last one. */
    weighedAgain: yes('Weighed again').optional(),
  }),
  acceptEstimate: z.object({ payer: pickOne('people', 'Accepted by'), how: field(z.enum(['phone', 'paper', 'link']), 'How'), totalMinor: z.int().min(0) }),
  giveAnswers: z.object({ stage: field(z.enum(['booking', 'reminder', 'admission']), 'Asked at'), answers: z.partialRecord(question, answer), notes: z.partialRecord(question, z.string().trim().max(300)).default({}) }),
  judgeAnswers: z.object({ go: yes('The visit can go on'), until: day('Not before').optional(), why }),
  checkFitness: nothing,
  leaveStudyOut: z.object({ study: pickOne('studies', 'Study'), why }),
  consentSedation: sedationConsent,
  withdrawSedation: z.object({ why: field(sentence, 'Why').optional() }),
  turnAway: z.object({ reason: field(z.enum(['unwell', 'identity', 'unfit', 'ownerDecided', 'emergency']), 'Reason'), note: field(sentence, 'Note').optional() }),
  scanDog: z.object({ place: field(z.enum(['admission', 'table']), 'Where'), numbers: transponders, passes: field(z.int().min(1).max(9), 'Passes').optional(), readers: field(z.int().min(1).max(5), 'Readers used').optional() }),
  settleIdentity: z.object({ why }),
  examine: z.object({ statusClass: field(z.int().min(1).max(5), 'Physical status class, I to V'), reason: field(sentence, 'Reason, needed for class III').optional(), findings: field(z.string().trim().max(1000), 'Heart, lungs, temperature, findings').optional() }),
  signPlan: z.object({ kind: field(z.enum(['first', 'topUp']), 'Plan'), vetPresent: yes('I am the vet here today'), weightKg: field(z.number().min(0.5).max(120), 'For today’s weight, kg'), drugs: z.array(drugLine).min(1).max(8) }),
  startSedation: z.object({ plan: pickOne('plans', 'Signed plan') }),
  topUp: z.object({ plan: pickOne('plans', 'Signed plan') }),
  endImaging: nothing,
  stopImaging: z.object({ woke: yes('The dog woke').optional() }),
  recordReading: z.object({
    device: field(z.string().max(40), 'Device').default('desk'),
    n: z.int().min(0).optional(),
    heartRate: field(z.int().min(0).max(400), 'Heart beats a minute').optional(),
    breaths: field(z.int().min(0).max(200), 'Breaths a minute').optional(),
    spo2: field(z.int().min(0).max(100), 'Oxygen saturation, %').optional(),
    temperature: field(z.number().min(25).max(45), 'Temperature, °C').optional(),
    gums: field(z.string().max(60), 'Gum colour').optional(),
    note: field(z.string().trim().max(400), 'Note').optional(),
  }),
  recordDrug: z.object({ event: field(z.enum(['drawn', 'given', 'discarded', 'reversal']), 'What'), drug: field(z.string().trim().min(1).max(120), 'Drug'), batch: field(z.string().trim().min(1).max(60), 'Batch'), amountMl: field(z.number().positive().max(100), 'Amount, mL'), route: field(z.string().trim().max(60), 'Route').optional() }),
  recordEvent: z.object({ what: field(sentence, 'What happened') }),
  signRecovery: z.object({ signs: field(z.array(z.enum(['awake', 'stands', 'swallows', 'warm', 'gums', 'breathing', 'comfortable'])).min(3, 'At least three signs.'), 'Recovery signs') }),
  giveSheet: z.object({ to: field(z.string().trim().min(1).max(120), 'Explained to') }),
  sendHome: z.object({ with: field(z.string().trim().min(1).max(120), 'Collected by') }),
  assignFilm: z.object({ exposure: pickOne('exposures', 'Film'), serves: pickSome('studies', 'For which studies') }),
  stateSize: z.object({ exposure: pickOne('exposures', 'Film'), size: statedSize.optional() }),
  disownFilm: z.object({ exposure: pickOne('exposures', 'Film'), reason: field(z.enum(['otherDog', 'testFilm']), 'Reason') }),
  markFilm: z.object({ exposure: pickOne('exposures', 'Film'), marks: z.array(mark).max(24, 'These are more marks than a film has.') }),
  logRoom: z.object({ exposure: pickOne('exposures', 'Film'), people: pickSome('staff', 'Who was in the room') }),
};
export const consentFields = { ...signature, signer: id };
