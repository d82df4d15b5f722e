import type { Standing } from '#libs/contracts/standing';
import {
  CERTIFICATE_TEMPLATE_VERSION,
  CONSENT_COPY_TEMPLATE_VERSION,
  DAY_SHEET_TEMPLATE_VERSION,
  GOING_HOME_TEMPLATE_VERSION,
  LETTER_TEMPLATE_VERSION,
  type AmendedLetter,
  type CertificateSnapshot,
  type ConsentCopySnapshot,
  type CorrectionLetter,
  type DaySheetSnapshot,
  type DogOnPaper,
  type FilmsRejectedLetter,
  type GoingHomeSnapshot,
  type PracticeOnPaper,
  type ResultLetter,
  type StudyOnPaper,
} from './snapshots.js';

/** Invented people, dogs, breeds and numbers, for tests only. */

export const practice: PracticeOnPaper = {
  name: 'Weirside Animal Practice',
  addressLines: ['3 Lock Lane', 'Dellin'],
  phone: '0470 21 00',
};

export const brannoch: DogOnPaper = {
  callName: 'Brannoch',
  registeredName: 'Brannoch of the Long Reach',
  breed: 'Aldra Water Hound',
  sex: 'male',
  birth: { earliest: '2025-10-02', latest: '2025-10-02' },
  transponder: '999000001407308',
  studBookNumber: 'AW 2025-0312',
};

/** The ranges are invented; a real one comes with the protocol and its source. */
export const laxity: StudyOnPaper = {
  title: 'Hips, laxity',
  protocol: 'hip laxity by stress radiography',
  protocolVersion: '4',
  criteria: null,
  centre: 'the reading centre at Threnfold',
  reader: 'reader 14',
  readOn: '2026-11-20',
  imagedOn: '2026-11-11',
  meaning: 'The number says how far the thigh bone can be moved out of its socket. 0 means not at all.',
  joints: [
    {
      joint: 'hip',
      side: 'left',
      finding: {
        kind: 'value', value: '0.38', unit: '', words: 'moves out by a little over a third of the ball’s half width',
        also: [], flags: [], secondLook: { lower: '0.31', upper: '0.45', source: 'an invented figure, for this sample' },
      },
    },
    {
      joint: 'hip',
      side: 'right',
      finding: {
        kind: 'value', value: '0.44', unit: '', words: 'a little further',
        also: [], flags: ['Signs of arthritis were seen.'], secondLook: { lower: '0.37', upper: '0.51', source: 'an invented figure, for this sample' },
      },
    },
  ],
  dogResult: '0.44, the looser hip speaks for the dog',
  comment: null,
  viewsMissing: [],
};

export const extendedHips: StudyOnPaper = {
  title: 'Hips, extended view',
  protocol: 'extended-view hip grading',
  protocolVersion: '4',
  criteria: 'criteria of 2022',
  centre: 'the reading centre at Threnfold',
  reader: 'reader 14',
  readOn: '2026-11-20',
  imagedOn: '2026-11-11',
  meaning: 'The grade runs from A to E. It says how well ball and socket fit with the legs stretched.',
  joints: [
    {
      joint: 'hip',
      side: 'left',
      finding: { kind: 'value', value: 'grade B', unit: '', words: 'ball and socket fit nearly', also: ['Norberg angle 103°'], flags: [], secondLook: null },
    },
    { joint: 'hip', side: 'right', finding: { kind: 'none', code: 'ROTATION', reason: 'not readable: the hips were turned' } },
  ],
  dogResult: 'at least grade B, one hip could not be read',
  comment: null,
  viewsMissing: [],
};

export const elbows: StudyOnPaper = {
  ...extendedHips,
  title: 'Elbows',
  protocol: 'elbow arthrosis grading',
  protocolVersion: '2',
  criteria: null,
  meaning: 'The grade runs from 0 to 3. It says how much arthritis is seen in the elbow.',
  joints: (['left', 'right'] as const).map((side, grade) => ({
    joint: 'elbow', side,
    finding: { kind: 'value', value: `grade ${grade}`, unit: '', words: grade === 0 ? 'no arthritis seen' : 'a little arthritis seen', also: ['no primary lesion seen'], flags: [], secondLook: null },
  })),
  dogResult: 'grade 1, the worse elbow speaks for the dog',
  viewsMissing: [{ view: 'craniocaudal, right', reason: 'Brannoch was waking up.' }],
};

const letterBase = {
  templateVersion: LETTER_TEMPLATE_VERSION,
  paper: 'A4' as const,
  lang: 'en' as const,
  issuedAt: '2026-11-24T11:20:00+01:00',
  practice,
  orderNumber: 'AR26-00417-9',
  addressee: { name: 'Ilse Morwen', lines: ['Long Reach 12', 'Upper Aldra'] },
  dog: brannoch,
  visit: {
    date: '2026-11-11', place: 'our practice in Dellin', askedBy: 'You asked us for them.', rest: 'sedation' as const,
    exposures: 4, allSent: true, goingHomeSheet: true,
  },
  contact: { name: 'Ruan Tiedt', role: 'vet', phone: '0470 21 00', hours: 'weekdays 8 to 18', outOfHours: 'At night the same number finds the vet on call.' },
  nextSteps: ['For the hips: nothing now. No new picture is needed.'],
  whoSees: { others: [], statistics: { answer: 'yes' as const, on: '2026-11-09' } },
};

export const resultLetter: ResultLetter = {
  ...letterBase,
  kind: 'result',
  studies: [laxity],
  stillOut: [{ title: 'Elbows', words: 'The right elbow lay turned on the film. It needs a new picture, and you get a second letter.' }],
  disagree: { how: 'Another reader sees the same pictures and not the first number. What that reader finds then stands.', until: '2027-01-24', cost: '58.00 marks' },
  check: { serial: '7QK2-M9XD-VT4F', address: 'weirside.example/check' },
};

/** The invented breed of the samples, as it was counted on an invented day. */
const placed: Standing = {
  kind: 'place', from: 7, to: 13, n: 612, warning: false, breed: 'Aldra Water Hound', age: 'at 12 to 23 months', frozenOn: '2026-01-01', fromYear: 2019, toYear: 2025, unsent: 61,
  senders: { litter: 41, chosen: 571 }, ends: { low: 'tightest', high: 'loosest', of: 'hips' }, halvesOneIn: 9, source: 'an invented figure, for this sample',
};

export const placedLetter: ResultLetter = { ...resultLetter, studies: [{ ...laxity, standing: placed }] };

export const fewLetter: ResultLetter = { ...resultLetter, studies: [{ ...laxity, standing: { ...placed, from: 4, to: 4, n: 44, warning: true, unsent: 3, senders: null } }] };

export const longLetter: ResultLetter = {
  ...resultLetter,
  paper: 'LETTER',
  addressee: {
    name: 'Dr. Wilhelmina Oosterhuizen-Vandersluys and Bartholomew Featherstonehaugh-Kjellström',
    lines: ['The Old Lockkeeper’s House, Upper Mill Stair', '14 Lower Aldra Embankment', 'Threnfold-under-Weir'],
  },
  dog: {
    ...brannoch, callName: 'רקס', registeredName: 'Sir Bartholomew’s Quicksilver Thunderstruck-by-Moonlight of the Upper Long Reach', sex: 'female',
    birth: { earliest: '2024-01-01', latest: '2024-03-31' }, transponder: null,
  },
  studies: [{ ...laxity, standing: { ...placed, from: 1, to: 20, unsent: 900 } }, { ...extendedHips, standing: { kind: 'none', why: 'noValue', region: 'hip', n: null } }, elbows],
  stillOut: [],
  whoSees: { others: ['the practice in Karsby that asked for the pictures'], statistics: { answer: 'no', on: '2026-11-09' } },
};

export const amendedLetter: AmendedLetter = {
  ...resultLetter,
  kind: 'amended',
  replaces: { letterOf: '2026-11-24', why: 'The centre looked again at the right hip and changed its number.', serial: '4HT8-QZ2N-K7WD' },
};

export const correctionLetter: CorrectionLetter = {
  ...letterBase,
  kind: 'correction',
  corrects: {
    letterOf: '2026-11-24', wrong: 'It gave a number that does not belong to Brannoch.',
    holds: 'Brannoch has no result yet. A new letter comes when there is one.', serial: '4HT8-QZ2N-K7WD',
  },
  check: null,
};

export const rejectedLetter: FilmsRejectedLetter = {
  ...letterBase,
  kind: 'films-rejected',
  rejected: {
    centre: 'The reading centre at Threnfold', on: '2026-11-20',
    studies: [{ title: 'Hips, extended view', reasons: ['the hips were turned', 'one knee is outside the picture'] }],
  },
  cost: 'You pay nothing for the new pictures.',
  nextSteps: ['Choose a day with us, not before 2 December.'],
};

const tarn: DogOnPaper = {
  callName: 'Tarn', registeredName: 'Tarn of Mill Stair', breed: 'Sornish Setter', sex: 'female',
  birth: { earliest: '2024-02-02', latest: '2024-02-02' }, transponder: '999000001402551', studBookNumber: 'SS 2024-1187',
};

/** Without its code, which tests sign with a key of their own. */
export const certificate: CertificateSnapshot = {
  templateVersion: CERTIFICATE_TEMPLATE_VERSION,
  paper: 'A4',
  lang: 'en',
  issuedAt: '2026-10-30T10:05:00+01:00',
  practice,
  title: { as: 'certificate', issuer: 'Reading centre, Threnfold', scheme: 'Aldra Basin scheme', delegatedUntil: '2027-12-31' },
  dog: tarn,
  transponderReadBy: { name: 'S. Adler', place: 'Dellin' },
  identifiedBy: null,
  imagedOn: '2026-10-09',
  rest: 'sedation',
  earlierOperation: 'none, as the owner states',
  studies: [{ ...elbows, viewsMissing: [] }, extendedHips].map((study) => ({ ...study, imagedOn: '2026-10-09', readOn: '2026-10-28' })),
  signed: { by: 'the centre’s reader 14', on: '2026-10-29' },
  serial: '4HT8-QZ2N-K7WD',
  checkAddress: 'weirside.example/check',
  code: '',
};

export const statement: CertificateSnapshot = {
  ...certificate,
  paper: 'LETTER',
  title: { as: 'statement', issuerOfOriginal: 'Kennel Union of the Upper Aldra', originalAttached: true },
  dog: {
    ...tarn, registeredName: longLetter.dog.registeredName, breed: 'Threnfold Shepherd, long-haired variety of the Upper Aldra',
    transponder: null, studBookNumber: null, birth: { earliest: '2024-01-01', latest: '2024-03-31' },
  },
  transponderReadBy: null,
  identifiedBy: 'tattoo KB 114, read by S. Adler',
  studies: [{ ...laxity, imagedOn: '2026-10-09' }, ...certificate.studies],
};

export const goingHome: GoingHomeSnapshot = {
  templateVersion: GOING_HOME_TEMPLATE_VERSION,
  paper: 'A4',
  lang: 'en',
  issuedAt: '2026-11-25T10:20:00+01:00',
  practice,
  dog: { ...brannoch, callName: 'Tolle', registeredName: null },
  date: '2026-11-25',
  sleep: { rest: 'sedation', from: '2026-11-25T08:54:00+01:00', until: '2026-11-25T09:40:00+01:00', reversed: true, recoveredAt: '2026-11-25T10:15:00+01:00' },
  pictures: 'His pictures are done.',
  text: {
    normal: 'Sleepy, wobbly and quiet **until about 20:00**. A bare patch on the leg, perhaps a small bruise.',
    whatToDo: [
      'Warm, quiet room, with you.', 'No stairs and no jumping.', 'Never alone in the car.', 'Water when he stands well.',
      'A small meal after 17:00.', 'No tablets of your own.', 'Pets and children apart.', 'Short walk tomorrow, on lead.',
    ].map((line) => `- ${line}`).join('\n'),
    callAtOnce: [
      'cannot be woken,', 'breathes hard or noisily,', 'has pale, blue or grey gums,', 'falls down or has a fit,',
      'vomits again and again,', 'has a swollen belly,', 'bleeds,', 'is very sleepy after 20:00,',
    ].map((line) => `- ${line}`).join('\n'),
    version: '3',
    approvedBy: { name: 'Ruan Tiedt', role: 'vet' },
    approvedOn: '2026-09-02',
  },
  call: { phone: '0470 21 00', when: 'Day and night, now:' },
  resultWhen: 'What the pictures show comes by letter, in about three weeks.',
  explainedBy: { name: 'Lio Sand', role: 'nurse' },
  explainedTo: { name: 'Anselm Rook', role: 'owner' },
  explainedAt: '2026-11-25T10:25:00+01:00',
};

const rows: [string, string, string, string][] = [
  ['10:30', 'Sedge', 'Aldra Water Hound', 'Hanne Birk'], ['10:45', 'Pilot', 'Marsh Mastiff', 'Corvin Dahl'],
  ['11:00', 'Juniper', 'Upland Pointer', 'Teres Vint'], ['11:15', 'Rill', 'Threnfold Shepherd', 'Amo Kestner'],
  ['11:30', 'Quicksilver-by-Moonlight', 'Threnfold Shepherd, long-haired', 'Wilhelmina Oosterhuizen-Vandersluys'],
  ['11:45', 'Lark', 'Dellin Ratter', 'Osk Ferrand'], ['12:00', 'Hazel', 'Sornish Setter', 'Nell Abbery'],
];

export const daySheet: DaySheetSnapshot = {
  templateVersion: DAY_SHEET_TEMPLATE_VERSION,
  paper: 'A4',
  lang: 'en',
  issuedAt: '2026-11-25T10:27:00+01:00',
  practice,
  date: '2026-11-25',
  printedBy: 'Marit Oskar',
  visits: rows.map(([time, callName, breed, owner], at) => ({
    time,
    dog: { callName, breed, transponder: at === 2 ? null : `99900000141802${at}` },
    owner: { name: owner, phone: '0470 33 07' },
    studies: at % 2 ? ['hips', 'elbows'] : ['laxity'],
    room: 'Room 1',
    staff: ['Adler', 'Tiedt', 'Sand'],
    steps: ['done', at === 3 ? 'hold' : 'done', 'open', 'open', 'open', 'open', 'open'],
    waitsFor: at === 3 ? { what: 'Consent missing.', how: 'Owner signs, before 11:15' } : null,
  })),
};

export const consentCopy: ConsentCopySnapshot = {
  templateVersion: CONSENT_COPY_TEMPLATE_VERSION,
  paper: 'A4',
  lang: 'en',
  issuedAt: '2026-11-09T14:12:00+01:00',
  practice,
  orderNumber: 'AR26-00417-9',
  dog: brannoch,
  signer: { name: 'Ilse Morwen', role: 'owner', authority: null },
  explainedBy: { name: 'Ruan Tiedt', role: 'vet' },
  purposes: [
    {
      title: 'Sedation', text: 'Brannoch gets medicine to sleep while the pictures are taken. It carries a small risk. A vet stays with him.',
      textVersion: '5', answer: 'yes', cannotBeUndone: 'Once he sleeps, the medicine cannot be taken back. It can be ended early.',
      details: [['If his heart stops', 'try to bring him back'], ['Spending limit', '300.00 marks'], ['Number answered today', '0470 33 07'], ['May collect him', 'Jon Morwen']],
      withdrawnAt: null,
    },
    {
      title: 'Sending every film taken', text: 'Every picture that is taken goes to the reading centre, also one that looks bad.',
      textVersion: '2', answer: 'yes', cannotBeUndone: 'What has been sent cannot be called back.', details: [], withdrawnAt: null,
    },
    {
      title: 'Use in the breed’s statistics', text: 'The reading may be used in the breed’s figures, without your name.',
      textVersion: '2', answer: 'no', cannotBeUndone: 'What has been printed stays printed.', details: [], withdrawnAt: null,
    },
  ],
  signature: {
    signedAt: '2026-11-09T14:12:00+01:00',
    how: 'by link, after the code sent to 0470 33 07',
    drawn: {
      width: 300, height: 100,
      strokes: [
        [[20, 70], [30, 30], [36, 22], [38, 40], [34, 72], [46, 60], [52, 66], [60, 58], [66, 68], [78, 56]],
        [[100, 70], [110, 28], [122, 66], [134, 28], [146, 70], [160, 58], [172, 66], [186, 54], [200, 64], [240, 60]],
      ],
    },
  },
};
