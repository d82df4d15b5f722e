export const visitSteps = ['wanted', 'booked', 'admitted', 'sedated', 'imaged', 'recovered'] as const;
export const visitEnds = ['home', 'cancelled', 'missed', 'turnedAway', 'died'] as const;
/** From least to most advanced. */
export const studySteps = [
  'rejected', 'asked', 'imaging', 'ready', 'sealed', 'sent', 'withCentre', 'appealed', 'answered', 'accepted', 'released',
] as const;
export const studyEnds = ['reported', 'ended'] as const;
export const orderEnds = ['atVisit', 'cancelled', 'closed', 'empty', 'none'] as const;

export type OpenVisitStep = (typeof visitSteps)[number];
export type OpenStudyStep = (typeof studySteps)[number];
export type VisitStep = OpenVisitStep | (typeof visitEnds)[number];
export type StudyStep = OpenStudyStep | (typeof studyEnds)[number];
export type OrderStep = OpenStudyStep | (typeof orderEnds)[number];

const openVisit = new Set<string>(visitSteps);
const openStudy = new Set<string>(studySteps);
export const isOpenVisit = (step: VisitStep): step is OpenVisitStep => openVisit.has(step);
export const isOpenStudy = (step: StudyStep): step is OpenStudyStep => openStudy.has(step);
