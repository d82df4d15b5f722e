import { useCase } from '../record/use-case.js';
import { openReferral } from './open-referral.js';

export const closeReferral = useCase('closeReferral', (work, _on, input) => [{ type: 'referralAnswered', referral: openReferral(work), answer: input.answer, why: input.why }]);
