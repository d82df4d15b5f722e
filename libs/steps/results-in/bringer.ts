import type { Scope } from '#libs/platform/database/db';
import type { Actor } from '../record/actor.js';

/** Who brings readings of a centre: its computer, a reader, the scheme’s lead, or the desk of a practice. */
export interface Bringer {
  id: string;
  name: string;
  /** As the audit names it. */
  role: 'centre' | 'reader' | 'lead' | 'desk';
  centre: string;
  way: 'file' | 'message' | 'fhir';
  /** Somebody of a practice, who sees that practice’s orders; all others see the packages that the centre was sent. */
  actor: Actor | null;
}

export const eyesOf = ({ actor, centre }: Bringer): Scope => (actor ? { practice: actor.practice } : { centre });
