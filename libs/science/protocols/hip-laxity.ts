import type { Protocol, View } from './types.js';
import { vdExtended } from './vd-extended.js';

const COMMON = 'common practice, no source';

const compression: View = {
  code: 'vdCompression',
  label: 'Compression, from below',
  shortLabel: 'Compression',
  side: 'both',
  required: true,
  checklist: [
    'Dog on its back, thighs as in standing, knees bent',
    'Both femoral heads pushed gently into their sockets',
    'Pelvis level: both openings of the pelvis equally wide',
    'Rims of both heads and both sockets can be followed',
    'Side marker in the picture',
  ],
  load: 'By hand or holder, towards the midline',
};

const distraction: View = {
  code: 'vdDistraction',
  label: 'Distraction, from below',
  shortLabel: 'Distraction',
  side: 'both',
  required: true,
  checklist: [
    'Dog on its back, thighs as in standing, knees bent',
    'Device between the thighs, level and close to the pelvis',
    'Steady push while the exposure is made; no hand in the beam',
    'Pelvis level: both openings of the pelvis equally wide',
    'Rims of both heads and both sockets can be followed',
    'Side marker in the picture',
  ],
  device: 'distractionDevice',
  load: 'Outward over the device; its kind and setting are recorded',
};

const version1: Protocol = {
  code: 'hipLaxity',
  version: '1',
  changes: 'First version.',
  invented: false,
  name: 'Hip laxity by stress radiography',
  deskName: 'Hips, laxity',
  region: 'hip',
  views: [vdExtended, compression, distraction],
  joints: ['left', 'right'],
  value: {
    kind: 'number',
    name: 'distraction index',
    unit: '',
    decimals: 2,
    min: 0,
    max: 2,
    rangeReason:
      'The index is a distance divided by the radius of the femoral head, so it cannot be below 0; at 2.00 the head would lie wholly outside the place it had.',
    askAbove: { value: 1.12, reason: 'Above 1.12, the highest value in the published studies this row rests on.' },
  },
  findings: [
    {
      code: 'arthrosis',
      kind: 'yesNo',
      label: 'Signs of arthrosis',
      words: 'Signs of arthrosis were seen. The value stays; it is not compared with other dogs.',
      keepsOutOfStandings: true,
    },
    {
      code: 'operated',
      kind: 'yesNo',
      label: 'Joint operated on',
      words: 'The joint has been operated on. The result is for its treatment and is not compared with other dogs.',
      keepsOutOfStandings: true,
    },
  ],
  noValue: [
    { code: 'gasInJoint', words: 'there was gas in the joint, which makes a hip look looser than it is' },
    { code: 'position', words: 'the dog lay turned, so the joint could not be measured' },
    { code: 'rimNotSeen', words: 'the edges of the joint could not be followed' },
    { code: 'jointChanged', words: 'the joint has changed its shape too much to be measured' },
    { code: 'exposure', words: 'the picture was too light or too dark' },
    { code: 'notImaged', words: 'no picture of this joint could be taken' },
  ],
  dog: { worse: 'higher', worseWords: 'the looser hip', oneJoint: 'atLeast' },
  youngest: { days: 112 },
  olderBreeds: [],
  repeatAfterDays: 180,
  needsAccreditation: true,
  equipment: ['xray', 'distractionDevice'],
  consentText: 'lax-1',
  issuer: { practiceMayCertify: false, words: 'The reading centre issues the certificate; the practice prints a statement of a screening result.' },
  repeatability: {
    known: true,
    sd: 0.15,
    icc: 0.94,
    n: 31,
    words:
      'From 31 dogs placed and X-rayed four times each: correlations from 0.85 to 0.94, of which 0.94 is used because 208 hips X-rayed with two devices differed by no more (limits -0.09 to 0.09).',
    citation:
      'ICC: Smith et al. Am J Vet Res 1997;58:1076-1077. SD 0.15: Arq Bras Med Vet Zootec 2020;72(4), 230 hips. Two devices: Front Vet Sci 2020;7:491',
  },
  statistics: {
    counts: 'firstAccepted',
    words: 'The first accepted reading of each dog counts, never the best. A second reading after an appeal takes its place, whichever way it goes.',
  },
  sources: [
    { what: 'Index: displacement of the head divided by its radius', citation: 'Vet Comp Orthop Traumatol 2020, introduction; primary Smith, Biery, Gregor. J Am Vet Med Assoc 1990;196:59-70 (from memory)' },
    { what: 'Three radiographs', citation: COMMON },
    { what: 'Looser hip speaks for the dog', citation: 'Ginja et al. Acta Vet Hung 2008;56:303-312' },
    { what: 'Highest published value 1.12', citation: 'Ginja et al. Acta Vet Hung 2008;56:303-312, 215 dogs, worse hip 0.15-1.12' },
    { what: 'Gas in the joint: index .08 higher on that side', citation: 'LaFond et al. J Am Vet Med Assoc 1997;210:1294-1297, 279 of 6,649 dogs' },
    { what: 'Youngest age 16 weeks', citation: 'from memory; at 4 months measured by Taroni et al. Vet Comp Orthop Traumatol 2018;31:445-451; at 6.5-9 weeks not reliable, Vet Radiol Ultrasound 2000;41' },
    { what: 'Repeat after 180 days', citation: 'our own choice, no source' },
    { what: 'Refused above 2.00', citation: 'our own choice, no source' },
  ],
};

const version2: Protocol = {
  ...version1,
  version: '2',
  changes: 'A joint with gas is X-rayed again after a day at the earliest. A new reason says that the device lay off centre. The consent text names both.',
  noValue: [
    ...version1.noValue.map((reason) => (reason.code === 'gasInJoint' ? { ...reason, waitDays: 1 } : reason)),
    { code: 'deviceOffCentre', words: 'the device lay off centre, so the two hips were not pushed alike' },
  ],
  consentText: 'lax-2',
  sources: [...version1.sources, { what: 'Gas: again after 24 hours or later', citation: COMMON }],
};

export const hipLaxity: Protocol[] = [version1, version2];
