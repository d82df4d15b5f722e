import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { roleNames } from '#libs/contracts/common';
import { newStaff, type PracticeScreen } from '#libs/contracts/register';
import { hashPassword } from '#libs/platform/passwords/password';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { parseInput } from '../parse-input.js';
import { badInput } from '../refusal.js';
import { managersOnly, practiceRoles } from '../who-may.js';
import { orAlreadyThere } from './already-there.js';
import { changePractice } from './change-practice.js';

export const MAIL_TAKEN = 'Somebody signs in with this mail address already. Choose another one.';

/** Somebody who works here and signs in with mail address and password. Nobody makes a scheme lead or a reader of a centre this way. */
export async function addStaff(deps: RegisterDeps, actor: Actor, input: z.input<typeof newStaff>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newStaff, input);
  const strange = wanted.roles.find((role) => !practiceRoles.some((own) => own === role));
  if (strange) throw badInput('roles', t('A {strange} does not belong to a practice. Leave that role out.', { strange: t.known(roleNames[strange]) }));
  const passwordHash = await hashPassword(wanted.password);
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const id = randomUUID();
    const data = { id, schemeId: practice.schemeId, practiceId: practice.id, name: wanted.name, email: wanted.email.toLowerCase(), passwordHash, roles: [...new Set(wanted.roles)] };
    // Only what this role of the database may read comes back: the hash stays inside.
    await orAlreadyThere(tx.staff.create({ data, select: { id: true } }), 'email', MAIL_TAKEN);
    await noteChange(tx, actor, 'addStaff', id, { roles: data.roles });
  });
}
