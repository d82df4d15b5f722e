import type { z } from 'zod';
import { prices, type PracticeScreen } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { parseInput } from '../parse-input.js';
import { managersOnly } from '../who-may.js';
import { badInput } from '../refusal.js';
import { changePractice } from './change-practice.js';

/** From now on; an estimate that was accepted keeps its lines. */
export async function setPrices(deps: RegisterDeps, actor: Actor, input: z.input<typeof prices>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(prices, input);
  return changePractice(deps, actor, async ({ tx, practice }) => {
    const scheme = await tx.scheme.findUniqueOrThrow({ where: { id: practice.schemeId }, select: { currency: true } });
    // Centres' fees are in the scheme's money, and an estimate adds them up.
    if (wanted.currency !== scheme.currency) throw badInput('currency', t('Prices are in {currency}, like the fees of the centres.', { currency: scheme.currency }));
    const before = await tx.practice.findUniqueOrThrow({ where: { id: practice.id }, select: { prices: true } });
    await tx.practice.update({ where: { id: practice.id }, data: { prices: wanted }, select: { id: true } });
    await noteChange(tx, actor, 'setPrices', practice.id, { before: before.prices, after: wanted });
  });
}
