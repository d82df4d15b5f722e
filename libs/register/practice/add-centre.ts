import type { z } from 'zod';
import { newCentre, type PracticeScreen } from '#libs/contracts/register';
import { holidaysOf } from '#libs/science/holidays';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { oneAtATime } from '../one-at-a-time.js';
import { asField, existingDay, parseInput } from '../parse-input.js';
import { badInput, StepError } from '../refusal.js';
import { managersOnly } from '../who-may.js';
import { changePractice } from './change-practice.js';

type Wanted = z.output<typeof newCentre>;

/** A grading centre, for every practice of the scheme. */
export async function addCentre(deps: RegisterDeps, actor: Actor, input: z.input<typeof newCentre>): Promise<PracticeScreen> {
  managersOnly(actor);
  const wanted = parseInput(newCentre, input);
  refuseWhatCannotBe(wanted, deps.clock.now());
  return changePractice(deps, actor, async ({ tx, practice }) => {
    await oneAtATime(tx, practice.schemeId, `centre ${wanted.name.toLowerCase()}`);
    if (await tx.centre.findFirst({ where: { schemeId: practice.schemeId, name: { equals: wanted.name, mode: 'insensitive' } }, select: { id: true } }))
      throw new StepError('ALREADY_THERE', t('There is a centre named {wanted} already.', { wanted: wanted.name }));
    const row = await tx.centre.create({ data: { ...wanted, region: wanted.region ?? null, schemeId: practice.schemeId } });
    await noteChange(tx, actor, 'addCentre', row.id);
  });
}

function refuseWhatCannotBe({ zone, region, holidays, protocols }: Wanted, now: Date): void {
  if (!isZone(zone)) throw badInput('zone', t('“{zone}” is no time zone. Write it like Europe/Vienna.', { zone }));
  if (region !== undefined) asField('region', () => holidaysOf(region, [now.getUTCFullYear()]));
  holidays.forEach((day, i) => existingDay(`holidays.${i}`, day));
  const unknown = protocols.find((code) => !currentProtocols().some((p) => p.code === code));
  if (unknown !== undefined) throw badInput('protocols', t('“{unknown}” is no study that is installed here. Choose from the list.', { unknown }));
}

function isZone(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone !== '';
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
