import { useCase } from '../record/use-case.js';

/** So that a dog is not put to sleep for a study that could then not be imaged. */
export const leaveStudyOut = useCase('leaveStudyOut', (_work, on, input) => [{ type: 'studyLeftOut', visit: on, study: input.study, why: input.why }]);
