import { sayToOwners } from '../messages/say-to-owner.js';
import { useCase } from '../record/use-case.js';
import { storeDocument } from '../report/store-document.js';
import { goingHomeSnapshot } from './going-home-snapshot.js';

/** Printed for the hand and mailed too; who explained it to whom is part of it. Without it no dog goes home. */
export const giveSheet = useCase('giveSheet', async (work, on, input) => {
  const snapshot = await goingHomeSnapshot(work, on, input.to);
  const document = await storeDocument(work, { kind: 'goingHome', name: 'Going-home sheet', snapshot, subject: on, forOwner: true });
  await sayToOwners(work, { once: `going-home:${on}`, kind: 'goingHome', template: 'goingHome', data: { dog: snapshot.dog.callName, call: snapshot.call.phone, visit: on }, documents: [document], subject: on });
  return [{ type: 'sheetGiven', visit: on, document, to: input.to }];
});
