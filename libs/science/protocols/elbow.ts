import type { Finding, GradeRule, Protocol, Side, View } from './types.js';

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

const version1: Protocol = {
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
};

const spurs: Finding = {
  code: 'osteophytes',
  kind: 'choice',
  label: 'Bone spurs, the largest',
  words: 'The size of the largest new bone at the edges of the joint.',
  bindsGrade: true,
  choices: [
    { code: 'none', words: 'none seen' },
    { code: 'under2', words: 'under 2 mm', gradeAtLeast: '1' },
    { code: 'from2to5', words: '2 to 5 mm', gradeAtLeast: '2' },
    { code: 'over5', words: 'over 5 mm', gradeAtLeast: '3' },
  ],
};

const sclerosis: Finding = {
  code: 'sclerosis',
  kind: 'choice',
  label: 'Denser bone at the coronoid process',
  words: 'Denser bone at the base of the coronoid process.',
  choices: [
    { code: 'none', words: 'none seen' },
    { code: 'patternSeen', words: 'some, the fine pattern of the bone still seen', gradeAtLeast: '1' },
    { code: 'patternGone', words: 'plain, the fine pattern of the bone no longer seen', gradeAtLeast: '2' },
  ],
};

const lesionAt = (code: string, label: string, words: string): Finding => ({
  code, kind: 'yesNo', label, words, onlyWith: { finding: 'primaryLesion', answers: ['suspected', 'evident'] },
});

const step: Finding = { code: 'step', kind: 'number', label: 'Step between radius and ulna', words: 'How far the joint surfaces of radius and ulna stand apart.', unit: 'mm', decimals: 1, min: 0, max: 20 };

const [primaryLesion, operated] = version1.findings as [Finding, Finding];

const version2: Protocol = {
  ...version1,
  version: '2',
  changes: 'Beside the grade of each elbow there is room for the size of the largest bone spurs, for denser bone, for which primary lesion it is and for a step in the joint. The grades and the films are the same.',
  value: { ...(version1.value as GradeRule), shownBy: ['osteophytes', 'sclerosis', 'primaryLesion'] },
  findings: [
    spurs,
    sclerosis,
    primaryLesion,
    lesionAt('coronoid', 'Lesion of the coronoid process', 'The lesion lies at the coronoid process, the inner edge of the joint.'),
    lesionAt('anconeal', 'Lesion of the anconeal process', 'The lesion lies at the anconeal process, the tip of bone at the back of the joint.'),
    lesionAt('osteochondrosis', 'Osteochondrosis', 'The lesion is osteochondrosis, a loosened piece of cartilage or bone at the end of the upper arm bone.'),
    step,
    operated,
  ],
  sources: [
    ...version1.sources,
    { what: 'Largest spurs under 2 mm, 2 to 5 mm, over 5 mm: at least grade 1, 2, 3; exactly 2 mm and exactly 5 mm belong to 2 to 5 mm', citation: 'Tellhelm, Amort, Ondreka, WSAVA Congress 2014; Ondreka, WSAVA Congress 2015; EJCAP 2012;22(4)' },
    { what: 'Grade from the worse of arthrosis and primary lesion, so a higher grade than the spurs alone is never refused', citation: 'EJCAP 2012;22(4): a suspected coronoid process alone would be 2, spurs over 5 mm make it 3' },
    { what: 'Denser bone with its fine pattern seen, or gone: grade 1, 2', citation: 'Tellhelm, Amort, Ondreka, WSAVA Congress 2014, read in a copy that is cut off, so a lower grade is asked about and not refused' },
    { what: 'Primary lesions: coronoid process, anconeal process, osteochondrosis', citation: 'International Elbow Working Group, read in copies; Hazewinkel, WSAVA Congress 2014' },
    { what: 'The step is recorded and no grade follows from it: one centre has 2 above 2 mm, another table 2 from 3 mm and 3 above 5 mm', citation: 'secondary: a reading centre; the other table from memory' },
    { what: 'A step above 20 mm is refused', citation: 'our own choice, no source' },
  ],
};

export const elbow: Protocol[] = [version1, version2];
