import type { z } from 'zod';
import { newEquipment, type PracticeScreen } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, existingDay, parseInput } from '../parse-input.js';
import { StepError } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

/** A device and the day until which its latest check holds; that day may be past, and then no study is booked on it. */
export async function addEquipment(deps: RegisterDeps, actor: Actor, input: z.input<typeof newEquipment>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newEquipment, input);
  const checkedUntil = asDate(existingDay('checkedUntil', wanted.checkedUntil));
  return changePractice(deps, actor, async ({ tx, practice }) => {
    if (await tx.equipment.findFirst({ where: { practiceId: practice.id, name: wanted.name }, select: { id: true } }))
      throw new StepError('ALREADY_THERE', t('There is a device named {wanted} already. Add its new check to it, or give this one another name.', { wanted: wanted.name }));
    const device = await tx.equipment.create({ data: { ...wanted, checkedUntil, practiceId: practice.id } });
    await noteChange(tx, actor, 'addEquipment', device.id, { checkedUntil: wanted.checkedUntil });
  });
}
