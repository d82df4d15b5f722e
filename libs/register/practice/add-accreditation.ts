import type { z } from 'zod';
import { newAccreditation, type PracticeScreen } from '#libs/contracts/register';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, existingDay, parseInput } from '../parse-input.js';
import { badInput } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

/** Who may take the views of a study, from when to when, and on what evidence. An extension is another row. */
export async function addAccreditation(deps: RegisterDeps, actor: Actor, input: z.input<typeof newAccreditation>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newAccreditation, input);
  const [from, until] = [existingDay('from', wanted.from), existingDay('until', wanted.until)];
  if (until < from) throw badInput('until', t('The last day lies before the first one.'));
  if (!currentProtocols().some((p) => p.code === wanted.protocol)) throw badInput('protocol', t('This study is not installed here. Choose one of the list.'));
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const who = await tx.staff.findFirst({ where: { id: wanted.staff, practiceId: practice.id, active: true }, select: { name: true, roles: true } });
    if (!who) throw badInput('staff', t('This person does not work in your practice.'));
    if (!who.roles.some((role) => role === 'radiographer' || role === 'vet')) throw badInput('staff', t('{who} is neither a radiographer nor a vet, and so takes no views here.', { who: who.name }));
    const row = await tx.accreditation.create({ data: { practiceId: practice.id, staffId: wanted.staff, protocol: wanted.protocol, from: asDate(from), until: asDate(until), evidence: wanted.evidence } });
    await noteChange(tx, actor, 'addAccreditation', row.id, { staff: wanted.staff, protocol: wanted.protocol, from, until });
  });
}
