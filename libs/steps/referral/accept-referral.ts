import { useCase } from '../record/use-case.js';
import { openReferral } from './open-referral.js';

export const acceptReferral = useCase('acceptReferral', (work) => [{ type: 'referralAnswered', referral: openReferral(work), answer: 'accepted' }]);
