import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';

/** Names of everything that a slot occupies, kept in the fact as they are today; what is not the practice's own is refused. */
export async function slotNames(tx: Tx, slot: { room: string; operator: string; nurse: string; vet: string }): Promise<Record<string, string>> {
  const room = await tx.room.findUnique({ where: { id: slot.room }, select: { name: true } });
  const people = await tx.staff.findMany({ where: { id: { in: [slot.operator, slot.nurse, slot.vet] }, active: true }, select: { id: true, name: true } });
  const name = (id: string, what: string) => people.find((p) => p.id === id)?.name ?? refuse(what);
  if (!room) throw badInput('slot.room', t('This room is not in your practice.'));
  return { roomName: room.name, operatorName: name(slot.operator, 'operator'), nurseName: name(slot.nurse, 'nurse'), vetName: name(slot.vet, 'vet') };
}

function refuse(what: string): never {
  throw badInput(`slot.${what}`, t('This person does not work in your practice.'));
}
