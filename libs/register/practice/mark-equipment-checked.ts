import { z } from 'zod';
import { localDay } from '#libs/contracts/common';
import type { PracticeScreen } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, existingDay, knownId, parseInput } from '../parse-input.js';
import { badInput, notFound } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

export const equipmentChecked = z.object({ checkedUntil: localDay });

export async function markEquipmentChecked(deps: RegisterDeps, actor: Actor, device: string, input: z.input<typeof equipmentChecked>): Promise<PracticeScreen> {
  managersOnly(actor);
  const { checkedUntil } = parseInput(equipmentChecked, input);
  existingDay('checkedUntil', checkedUntil);
  return changePractice(deps, actor, async ({ tx, practice, today }) => {
    const before = await tx.equipment.findFirst({ where: { id: knownId(device), practiceId: practice.id }, select: { checkedUntil: true } });
    if (!before) throw notFound();
    if (checkedUntil < today) throw badInput('checkedUntil', t('{checkedUntil} is past. Write the day until which the new check holds.', { checkedUntil }));
    await tx.equipment.update({ where: { id: device }, data: { checkedUntil: asDate(checkedUntil) } });
    await noteChange(tx, actor, 'markEquipmentChecked', device, { before: before.checkedUntil.toISOString().slice(0, 10), checkedUntil });
  });
}
