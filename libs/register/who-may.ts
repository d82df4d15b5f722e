import { roleNames, type Role as StaffRole } from '#libs/contracts/common';
import type { Role } from '#libs/pathway/facts';
import type { Actor } from './actor.js';
import { StepError } from './refusal.js';

export const practiceRoles = ['desk', 'nurse', 'radiographer', 'vet', 'manager'] as const satisfies (Role & StaffRole)[];

/** Whoever works in the practice. */
export const staffOnly = (actor: Actor): void => only(actor, practiceRoles, 'Only people who work in the practice do this.');

export const managersOnly = (actor: Actor): void => only(actor, ['manager'], `Only a ${roleNames.manager} changes the practice’s register.`);

export const vetsOnly = (actor: Actor): void => only(actor, ['vet'], `Only a ${roleNames.vet} of the practice approves a text.`);

function only(actor: Actor, roles: readonly Role[], words: string): void {
  if (!actor.roles.some((role) => roles.includes(role))) throw new StepError('NOT_YOUR_ROLE', words);
}
