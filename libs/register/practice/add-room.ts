import { t } from '#libs/words/spoken';
import type { z } from 'zod';
import { newRoom, type PracticeScreen } from '#libs/contracts/register';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { parseInput } from '../parse-input.js';
import { managersOnly } from '../who-may.js';
import { orAlreadyThere } from './already-there.js';
import { changePractice } from './change-practice.js';

export async function addRoom(deps: RegisterDeps, actor: Actor, input: z.input<typeof newRoom>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newRoom, input);
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const room = await orAlreadyThere(tx.room.create({ data: { ...wanted, practiceId: practice.id } }), 'name', t('There is a room named {wanted} already.', { wanted: wanted.name }));
    await noteChange(tx, actor, 'addRoom', room.id);
  });
}
