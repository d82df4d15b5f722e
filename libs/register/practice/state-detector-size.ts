import type { z } from 'zod';
import { detectorSize } from '#libs/contracts/film-size';
import type { PracticeScreen } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { badInput, notFound } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

/** How large a detector's pixels are, or that it is no longer known. Films that were taken before keep the size that they were given. */
export async function stateDetectorSize(deps: RegisterDeps, actor: Actor, device: string, input: z.input<typeof detectorSize>): Promise<PracticeScreen> {
  managersOnly(actor);
  const { pixelMm } = parseInput(detectorSize, input);
  return changePractice(deps, actor, async ({ tx, practice, now }) => {
    const found = await tx.equipment.findFirst({ where: { id: knownId(device), practiceId: practice.id }, select: { kind: true } });
    if (!found) throw notFound();
    if (found.kind !== 'xray') throw badInput('pixelMm', t('Only an X-ray machine or detector has pixels.'));
    await tx.detectorSize.create({ data: { practiceId: practice.id, equipmentId: device, pixelMm, at: now, by: actor.id, byName: actor.name } });
    await noteChange(tx, actor, 'stateDetectorSize', device, { pixelMm });
  });
}
