import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { newReader, type PracticeScreen } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import { hashPassword } from '#libs/platform/passwords/password';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { notFound, StepError } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { MAIL_TAKEN } from './add-staff.js';
import { orAlreadyThere } from './already-there.js';
import { changePractice } from './change-practice.js';

/** Tells the centre, at its own address, that somebody is to read there. */
export type InviteReader = (tx: Tx, invited: { staff: string; centre: string; name: string; email: string }) => Promise<void>;

/** Somebody who is to read films at a centre; the account is shut until the centre's own mail has been answered. */
export async function addReader(deps: RegisterDeps, actor: Actor, centre: string, input: z.input<typeof newReader>, invite: InviteReader): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newReader, input);
  knownId(centre);
  const nobodys = await hashPassword(randomUUID());
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const at = await tx.centre.findFirst({ where: { id: centre, schemeId: practice.schemeId }, select: { registeredBy: true } });
    if (!at) throw notFound();
    // A reader sees the packages of every practice that sends there.
    if (at.registeredBy !== actor.practice) throw new StepError('NOT_YOUR_ROLE', t('This centre was not registered by your practice. Its readers are added by whoever registered it.'));
    const id = randomUUID();
    // A practice does not see who works at a centre, so the new row is not read back.
    const insert = tx.$executeRaw`INSERT INTO staff (id, scheme_id, centre_id, name, email, password_hash, roles, active)
      VALUES (${id}::uuid, ${practice.schemeId}::uuid, ${centre}::uuid, ${wanted.name}, ${wanted.email.toLowerCase()}, ${nobodys}, ARRAY['reader'], false)`;
    await orAlreadyThere(insert, 'email', MAIL_TAKEN);
    await invite(tx, { staff: id, centre, name: wanted.name, email: wanted.email });
    await noteChange(tx, actor, 'addReader', id, { centre });
  });
}
