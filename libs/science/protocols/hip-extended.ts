import type { Protocol } from './types.js';
import { vdExtended } from './vd-extended.js';

const letters = [
  ['A', 'no signs of hip dysplasia'],
  ['B', 'nearly as it should be'],
  ['C', 'mild changes'],
  ['D', 'moderate changes'],
  ['E', 'severe changes'],
] as const;

/** A letter without a number stands between its two sub-grades: the reader did not say which. */
const grades = letters.flatMap(([letter, words]) => [
  { code: `${letter}1`, words },
  { code: letter, words },
  { code: `${letter}2`, words },
]);

export const hipExtended: Protocol[] = [
  {
    code: 'hipExtended',
    version: '1',
    changes: 'First version.',
    invented: false,
    name: 'Hip grading on the extended view',
    deskName: 'Hips, extended',
    region: 'hip',
    views: [vdExtended],
    joints: ['left', 'right'],
    value: { kind: 'grade', name: 'grade', grades },
    findings: [
      {
        code: 'criteria',
        kind: 'choice',
        label: 'Criteria of',
        words: 'The year of the criteria the reader used. An older grade is never restated under newer criteria.',
        choices: [
          { code: '1991', words: 'criteria of 1991' },
          { code: '2022', words: 'criteria of 2022' },
        ],
        requiredWithValue: true,
        sameOnBothSides: true,
      },
      {
        code: 'norbergAngle',
        kind: 'number',
        label: 'Norberg angle',
        words: 'Recorded beside the grade. No grade follows from an angle alone.',
        unit: '°',
        decimals: 1,
        min: 40,
        max: 140,
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
      { code: 'position', words: 'the dog lay turned, so the joint could not be graded' },
      { code: 'exposure', words: 'the picture was too light or too dark' },
      { code: 'cutOff', words: 'a part of the joint was outside the picture' },
      { code: 'blurred', words: 'the dog moved, so the picture was not sharp' },
      { code: 'notImaged', words: 'no picture of this joint could be taken' },
    ],
    dog: { worse: 'higher', worseWords: 'the worse hip', oneJoint: 'atLeast' },
    youngest: { months: 12 },
    olderBreeds: [
      {
        breeds: ['Bullmastiff', 'Mastiff', 'Neapolitan Mastiff', 'Pyrenean Mastiff', 'Spanish Mastiff', 'Tibetan Mastiff', 'Great Dane', 'Newfoundland', 'Pyrenean Mountain Dog', 'St Bernard'],
        youngest: { months: 18 },
        source: 'FCI rules, workshop of 18 March 2006: 18 months for very large breeds; the breeds from a national list (secondary), the mastiffs spelled out by us',
      },
    ],
    repeatAfterDays: 180,
    needsAccreditation: false,
    equipment: ['xray'],
    consentText: 'ext-1',
    issuer: { practiceMayCertify: true, words: 'A practice with a delegation of the scheme prints the certificate; any other prints a statement of a screening result.' },
    repeatability: {
      known: false,
      reason: 'A grade is a step and not a measure. Two readers often agree and sometimes differ by one step (kappa 0.37 among 62 readers, Vet Rec 2017;180:357).',
    },
    statistics: {
      counts: 'firstAccepted',
      words: 'The first accepted reading of each dog counts, never the best. Grades under different criteria are not put together.',
    },
    sources: [
      { what: 'Grades A to E with sub-grades', citation: 'FCI Scientific Commission, classification of 1991/1999 (Brass), read in copies; revised at Copenhagen in May 2022' },
      { what: 'Youngest age 12 months, 18 for very large breeds', citation: 'FCI rules, Copenhagen workshop of 18 March 2006' },
      { what: "The worse hip gives the dog's grade", citation: 'secondary: pages that compare national systems' },
      { what: 'Positioning', citation: 'Flückiger. EJCAP 2007;17(2):135-140' },
      { what: 'No grade from an angle', citation: 'copies of the criteria contradict each other on the angle of grade C; B overlaps A and C by design' },
      { what: 'Angle taken from 40 to 140 degrees; repeat after 180 days', citation: 'our own choice, no source' },
    ],
  },
];
