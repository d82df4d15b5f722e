import type { Protocol } from './types.js';
import { vdExtended } from './vd-extended.js';

const INVENTED = 'invented for the demonstration, no source';

export const hipLoaded: Protocol[] = [
  {
    code: 'hipLoaded',
    version: '1',
    changes: 'First version.',
    invented: true,
    name: 'Hip shift under a set load (invented)',
    deskName: 'Hips, loaded',
    region: 'hip',
    views: [
      vdExtended,
      {
        code: 'vdLoaded',
        label: 'Loaded, from below',
        shortLabel: 'Loaded',
        side: 'both',
        required: true,
        checklist: [
          'Dog on its back in the load frame, thighs upright',
          'The frame shows its set load on both sides',
          'Pelvis level: both openings of the pelvis equally wide',
          'The scale of the frame lies in the picture',
          'Side marker in the picture',
        ],
        device: 'loadFrame',
        load: 'Along the thigh, as set on the frame; the setting is recorded',
      },
    ],
    joints: ['left', 'right'],
    value: {
      kind: 'number',
      name: 'shift under load',
      unit: 'mm',
      decimals: 1,
      min: 0,
      max: 30,
      rangeReason: 'A shift cannot be below 0, and the load frame stops at 30 mm.',
    },
    findings: [
      {
        code: 'arthrosis',
        kind: 'yesNo',
        label: 'Signs of arthrosis',
        words: 'Signs of arthrosis were seen. The value stays; it is not compared with other dogs.',
        keepsOutOfStandings: true,
      },
    ],
    noValue: [
      { code: 'loadNotHeld', words: 'the frame did not hold its load' },
      { code: 'position', words: 'the dog lay turned, so the joint could not be measured' },
      { code: 'notImaged', words: 'no picture of this joint could be taken' },
    ],
    dog: { worse: 'higher', worseWords: 'the hip that shifts further', oneJoint: 'incomplete' },
    youngest: { days: 140 },
    olderBreeds: [],
    repeatAfterDays: 180,
    needsAccreditation: true,
    equipment: ['xray', 'loadFrame'],
    consentText: 'loa-1',
    issuer: { practiceMayCertify: false, words: 'The reading centre issues the certificate; the practice prints a statement of a screening result.' },
    repeatability: { known: false, reason: 'Nobody has measured yet how far two examinations of the same dog differ in this protocol.' },
    statistics: { counts: 'firstAccepted', words: 'The first accepted reading of each dog counts, never the best.' },
    sources: [{ what: 'The whole protocol: views, range, ages, intervals', citation: INVENTED }],
  },
];
