import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import { speakingIn } from '#libs/words/spoken';
import { act } from '../act.js';
import { noteAtReader } from '../reader-page/note-at-reader.js';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import type { Kept } from './answer-of.js';
import type { Bringer } from './bringer.js';
import { checkStated, isMeant, type Meant } from './check-stated.js';
import type { Found } from './find-package.js';
import { isStated, type Read, type Stated } from './stated.js';

export interface Taken { kept: Kept; found: Found | undefined }

/** One reading to its order, whole or not at all, where it waits for the vet like one from the reader's page. */
export async function takeOne(deps: StepDeps, bringer: Bringer, read: Read): Promise<Taken> {
  if (!isStated(read)) return { found: undefined, kept: { place: read.place, number: '', outcome: 'notTaken', told: read.told, asks: [] } };
  const { place, reading: { number } } = read;
  const checked = await checkStated(deps, bringer, read);
  const not = (told: Tellable[]): Taken => ({ found: checked.found, kept: { place, number, outcome: 'notTaken', told, asks: [] } });
  if (!isMeant(checked)) return not(checked.told);
  try {
    // What the order refuses is kept too, so it is said in no reader's language.
    return { found: checked.found, kept: { place, number, ...(await speakingIn('en', () => enter(deps, bringer, read, checked))) } };
  } catch (error) {
    // What the order refuses is told in its own words; what broke inside is not this reading's fault and stops everything.
    if (error instanceof StepError) return not([...new Set([error.message, ...(error.more.fields ?? []).map((f) => f.message)])].map((words) => said(words) as Tellable));
    throw error;
  }
}

function enter(deps: StepDeps, bringer: Bringer, { reading }: Stated, { found, protocol, joints, key, asks }: Meant): Promise<Omit<Kept, 'place' | 'number'>> {
  const { number: ref, readBy, readOn, dogNumber, comment } = reading;
  const input = { ref, readBy, channel: bringer.way === 'file' ? 'file' : 'webhook', joints, ...(readOn && { readOn }), ...(dogNumber && { dogNumber }), ...(comment && { comment }) };
  const actor: Actor = bringer.actor ?? { id: bringer.id, name: bringer.name, roles: ['reader'], practice: found.practiceId };
  return act(deps, actor, found.orderId, 'enterResult', { key, on: found.studyId, input }, async (work, again) => {
    if (again) return { outcome: 'alreadyThere', told: [replaced(work, key) ? said('This reading came before, and a later one under the same number has taken its place. If this one is to stand, send it under a new number.') : said('This reading is there already; nothing was taken twice.')], asks: [] };
    await noteAtReader(work, { package: found.id, centre: bringer.centre }, protocol, { ref, joints, comment, signedBy: readBy });
    return { outcome: 'taken', told: [said('It waits for a veterinarian of the practice.')], asks };
  });
}

function replaced({ facts }: Work, key: string): boolean {
  const all = facts('resultArrived');
  const at = all.findIndex((f) => f.id === key);
  return all.slice(at + 1).some((f) => f.study === all[at]!.study && f.ref === all[at]!.ref);
}
