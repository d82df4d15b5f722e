import { randomUUID } from 'node:crypto';
import { said } from '#libs/words/said';
import { wordsOnPaper, type Sentence, type Words } from '#libs/words/words';
import type { FilmsRejectedLetter } from '#libs/documents/snapshots';
import { listWords } from '#libs/documents/words';
import { localDay } from '#libs/pathway/zones';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { sayToOwners } from '../messages/say-to-owner.js';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Work } from '../record/work.js';
import { addressees } from './addressees.js';
import { letterBase } from './letter-base.js';
import { zoneOf } from './on-paper.js';
import { storeDocument } from './store-document.js';

/** Tells the owner that the centre asks for pictures again: which, why, what comes next and what it costs. Nobody is blamed. */
export const releaseFilmsRejected = useCase('releaseFilmsRejected', async (work, on, input) => {
  const letter = randomUUID();
  const to = await addressees(work);
  for (const person of to) {
    const t = wordsOnPaper(person.language);
    const base = await letterBase(work, on, person);
    const snapshot: FilmsRejectedLetter = { ...base, rejected: rejectedOf(work, on, t), cost: input.cost, nextSteps: nextSteps(work, on).map((step) => t(step)), kind: 'films-rejected' };
    const document = await storeDocument(work, { kind: 'letter', named: said('Pictures again, letter to {name}', { name: person.name }), snapshot, subject: letter, forOwner: true });
    if (person.channel === 'mail') await sayToOwners(work, { once: `letter:${letter}`, people: [person.id], kind: 'filmsRejected', template: 'filmsRejected', data: { dog: base.dog.callName, study: on }, documents: [document], subject: letter });
  }
  return [{ type: 'letterReleased', study: on, letter, kind: 'filmsRejected', to: to.map((p) => p.id), detail: { names: to.map((p) => p.name) } }];
});

function rejectedOf(work: Work, study: string, t: Words): FilmsRejectedLetter['rejected'] {
  const standing = work.evaluation.studies[study]!;
  const rejection = work.facts('filmsRejected').filter((f) => f.study === study).at(-1);
  if (!rejection) throw new StepError('NOT_AT_THIS_STEP');
  const sent = work.facts('packageSent').find((f) => f.send === rejection.send);
  const protocol = findProtocol(standing.protocol, standing.version);
  const views = rejection.views.map((code) => protocol?.views.find((v) => v.code === code)?.label ?? code).map((view) => t.known(view));
  const reasons = rejection.reasons.map((reason) => reason.trim().replace(/\.$/, ''));
  return {
    centre: work.order.centres[sent?.centre ?? standing.centre]?.name ?? t('The reading centre'),
    on: localDay(rejection.at, zoneOf(work)),
    studies: [{ title: t.known(protocol?.deskName ?? standing.protocol), reasons: [listWords(views, t.language), ...reasons] }],
  };
}

function nextSteps(work: Work, study: string): Sentence[] {
  const visit = Object.values(work.evaluation.visits).find((v) => v.step === 'booked' && v.studies.includes(study));
  const rest = work.facts('visitOpened').filter((f) => f.studies.includes(study)).at(-1)?.restUntil;
  const booked: Sentence = visit ? 'The new visit is booked. You have a mail with the day, and everything is asked of you again.' : 'We call you to agree whether and when the pictures are taken again.';
  return [booked, ...(rest && !visit ? (['Your dog rests for some days first; we say how many.'] as const) : []), 'The pictures that were taken are kept.'];
}
