import { said } from '#libs/words/said';
import { sayToOwners } from '../messages/say-to-owner.js';
import { useCase } from '../record/use-case.js';
import { storeDocument } from '../report/store-document.js';
import type { Work } from '../record/work.js';
import { goingHomeSnapshot } from './going-home-snapshot.js';
import { missingViews } from './missing-views.js';

/** Printed for the hand and mailed too; who explained it to whom is part of it. Without it no dog goes home. */
export const giveSheet = useCase('giveSheet', async (work, on, input) => {
  const snapshot = await goingHomeSnapshot(work, on, input.to);
  const document = await storeDocument(work, { kind: 'goingHome', named: said('Going-home sheet'), snapshot, subject: on, forOwner: true });
  await sayToOwners(work, { once: `going-home:${on}`, kind: 'goingHome', template: 'goingHome', data: { dog: snapshot.dog.callName, call: snapshot.call.phone, visit: on, ...whatIsMissing(work, on) }, documents: [document], subject: on });
  return [{ type: 'sheetGiven', visit: on, document, to: input.to }];
});

/** Imaging that ended early is told at once, with what was not taken; the result says it again. */
function whatIsMissing(work: Work, visit: string): { missing?: string[]; woke?: boolean } {
  const how = work.facts('imagingEnded').find((f) => f.visit === visit)?.how;
  if (how !== 'stopped' && how !== 'woke') return {};
  const missing = missingViews(work, visit);
  return missing.length > 0 ? { missing, woke: how === 'woke' } : {};
}
