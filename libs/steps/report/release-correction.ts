import { randomUUID } from 'node:crypto';
import { shortDay } from '#libs/words/days';
import { said } from '#libs/words/said';
import { wordsOnPaper } from '#libs/words/words';
import type { CorrectionLetter } from '#libs/documents/snapshots';
import { sayToOwners } from '../messages/say-to-owner.js';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { addressees } from './addressees.js';
import { letterBase } from './letter-base.js';
import { storeDocument } from './store-document.js';

/** Tells everybody who got the letter that it does not hold; names no other dog, owner or person. */
export const releaseCorrection = useCase('releaseCorrection', async (work, on) => {
  const wrong = work.facts('letterReleased').filter((f) => f.study === on && f.kind === 'result').at(-1);
  if (!wrong) throw new StepError('NOT_AT_THIS_STEP');
  const letter = randomUUID();
  const to = await addressees(work);
  const serial = (wrong.detail?.serial as string | undefined) ?? null;
  for (const person of to) {
    const base = await letterBase(work, on, person);
    const letterOf = wrong.at.slice(0, 10);
    const t = wordsOnPaper(person.language);
    const dog = base.dog.callName;
    const snapshot: CorrectionLetter = {
      ...base, kind: 'correction', check: null,
      corrects: { letterOf, wrong: t('Our letter of {day} gave a result that does not belong to {dog}.', { day: shortDay(person.language, letterOf), dog }), holds: t('{dog} has no result for this study yet.', { dog }), serial },
    };
    const document = await storeDocument(work, { kind: 'letter', named: said('Correction, letter to {name}', { name: person.name }), snapshot, subject: letter, forOwner: true });
    if (person.channel === 'mail') await sayToOwners(work, { once: `letter:${letter}`, people: [person.id], kind: 'correction', template: 'correction', data: { dog, study: on }, documents: [document], subject: letter });
  }
  return [{ type: 'letterReleased', study: on, letter, kind: 'correction', to: to.map((p) => p.id), detail: { names: to.map((p) => p.name) } }];
});
