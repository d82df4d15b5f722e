import { roleNames, type Role as StaffRole } from '#libs/contracts/common';
import type { Role } from '#libs/pathway/facts';
import { t } from '#libs/words/spoken';
import type { Actor } from './actor.js';
import { StepError } from './refusal.js';

export const practiceRoles = ['desk', 'nurse', 'radiographer', 'vet', 'manager'] as const satisfies (Role & StaffRole)[];

/** Whoever works in the practice. */
export const staffOnly = (actor: Actor): void => only(actor, practiceRoles, () => t('Only people who work in the practice do this.'));

export const managersOnly = (actor: Actor): void => only(actor, ['manager'], () => t('Only a {manager} changes the practice’s register.', { manager: t.known(roleNames.manager) }));

export const vetsOnly = (actor: Actor): void => only(actor, ['vet'], () => t('Only a {vet} of the practice approves a text.', { vet: t.known(roleNames.vet) }));

function only(actor: Actor, roles: readonly Role[], words: () => string): void {
  if (!actor.roles.some((role) => roles.includes(role))) throw new StepError('NOT_YOUR_ROLE', words());
}
