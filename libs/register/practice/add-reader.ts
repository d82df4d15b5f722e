import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { newReader, type PracticeScreen } from '#libs/contracts/register';
import { hashPassword } from '#libs/platform/passwords/password';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { notFound, StepError } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { MAIL_TAKEN } from './add-staff.js';
import { orAlreadyThere } from './already-there.js';
import { changePractice } from './change-practice.js';

/** Somebody who reads films at a centre and signs in there. */
export async function addReader(deps: RegisterDeps, actor: Actor, centre: string, input: z.input<typeof newReader>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newReader, input);
  knownId(centre);
  const passwordHash = await hashPassword(wanted.password);
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const at = await tx.centre.findFirst({ where: { id: centre, schemeId: practice.schemeId }, select: { registeredBy: true } });
    if (!at) throw notFound();
    // A reader sees the packages of every practice that sends there.
    if (at.registeredBy !== actor.practice) throw new StepError('NOT_YOUR_ROLE', 'This centre was not registered by your practice. Its readers are added by whoever registered it.');
    const id = randomUUID();
    // A practice does not see who works at a centre, so the new row is not read back.
    const insert = tx.$executeRaw`INSERT INTO staff (id, scheme_id, centre_id, name, email, password_hash, roles)
      VALUES (${id}::uuid, ${practice.schemeId}::uuid, ${centre}::uuid, ${wanted.name}, ${wanted.email.toLowerCase()}, ${passwordHash}, ARRAY['reader'])`;
    await orAlreadyThere(insert, 'email', MAIL_TAKEN);
    await noteChange(tx, actor, 'addReader', id, { centre });
  });
}
