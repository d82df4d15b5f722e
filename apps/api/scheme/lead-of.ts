import { StepError } from '#libs/steps/record/step-error';
import type { Lead } from '#libs/steps/scheme/scheme-screen';
import type { Principal } from '../session/principal.js';

/** A lead may also work in a practice; the role decides. */
export function leadOf(who: Principal): Lead {
  if (!who.scheme || !who.staff || !who.roles.includes('lead')) throw new StepError('NOT_YOUR_ROLE');
  return { id: who.staff, name: who.name, scheme: who.scheme };
}
