import type { Protocol, Side, View } from './types.js';

const flexed = (side: Side): View => ({
  code: side === 'left' ? 'mlFlexedLeft' : 'mlFlexedRight',
  label: `Elbow, ${side}, bent, from the side`,
  shortLabel: `Elbow, ${side}, bent`,
  side,
  required: true,
  checklist: [
    `${side === 'left' ? 'Left' : 'Right'} elbow on the plate, bent as far as the dog lets it rest`,
    'Both parts of the humeral condyle lie over each other',
    'Anconeal process free of the humerus',
    'Side marker in the picture',
  ],
});

const craniocaudal = (side: Side): View => ({
  code: side === 'left' ? 'ccLeft' : 'ccRight',
  label: `Elbow, ${side}, from the front, turned in`,
  shortLabel: `Elbow, ${side}, front`,
  side,
  required: false,
  checklist: ['Leg stretched forward and turned inward', 'Inner coronoid process can be seen', 'Side marker in the picture'],
});

export const elbow: Protocol[] = [
  {
    code: 'elbow',
    version: '1',
    changes: 'First version.',
    invented: false,
    name: 'Elbow grading',
    deskName: 'Elbows',
    region: 'elbow',
    views: [flexed('left'), flexed('right'), craniocaudal('left'), craniocaudal('right')],
    joints: ['left', 'right'],
    value: {
      kind: 'grade',
      name: 'grade',
      grades: [
        { code: '0', words: 'no signs of arthrosis' },
        { code: 'BL', words: 'borderline: small changes of unclear meaning' },
        { code: '1', words: 'mild arthrosis: bone spurs under 2 mm' },
        { code: '2', words: 'moderate arthrosis: bone spurs of 2 to 5 mm, or signs that point to a primary lesion' },
        { code: '3', words: 'severe arthrosis: bone spurs over 5 mm, or an evident primary lesion' },
      ],
    },
    findings: [
      {
        code: 'primaryLesion',
        kind: 'choice',
        label: 'Primary lesion',
        words: 'A loose or ununited piece of bone or cartilage, or a step in the joint, as the cause of arthrosis.',
        choices: [
          { code: 'absent', words: 'none seen' },
          { code: 'suspected', words: 'suspected', gradeAtLeast: '2' },
          { code: 'evident', words: 'evident', gradeAtLeast: '3' },
        ],
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
      { code: 'position', words: 'the elbow lay turned, so the joint could not be graded' },
      { code: 'notBent', words: 'the elbow was not bent far enough' },
      { code: 'exposure', words: 'the picture was too light or too dark' },
      { code: 'blurred', words: 'the dog moved, so the picture was not sharp' },
      { code: 'notImaged', words: 'no picture of this joint could be taken' },
    ],
    dog: { worse: 'higher', worseWords: 'the worse elbow', oneJoint: 'incomplete' },
    youngest: { months: 12 },
    olderBreeds: [],
    repeatAfterDays: 180,
    needsAccreditation: false,
    equipment: ['xray'],
    consentText: 'elb-1',
    issuer: { practiceMayCertify: true, words: 'A practice with a delegation of the scheme prints the certificate; any other prints a statement of a screening result.' },
    repeatability: { known: false, reason: 'A grade is a step and not a measure. We have no published figure for how often two elbow readers differ.' },
    statistics: { counts: 'firstAccepted', words: 'The first accepted reading of each dog counts, never the best.' },
    sources: [
      { what: 'Grades 0 to 3 by size of bone spurs, borderline between 0 and 1', citation: 'International Elbow Working Group; Tellhelm, Amort, Ondreka, WSAVA Congress 2014; EJCAP 2012;22(4)' },
      { what: 'Primary lesion absent, suspected, evident: at least 0, 2, 3', citation: 'Hazewinkel, WSAVA Congress 2014; EJCAP 2012;22(4). One national scheme differs, so a lower grade is asked about and not refused' },
      { what: 'Bent view from the side of both elbows required, view from the front recommended', citation: 'International Elbow Working Group, read in copies' },
      { what: 'The worse elbow is the dog’s grade, never a sum', citation: 'secondary: a dissertation on the grading of 1994' },
      { what: 'Youngest age 12 months', citation: 'secondary: a national list, 12 months for all breeds' },
      { what: 'Repeat after 180 days', citation: 'our own choice, no source' },
    ],
  },
];
