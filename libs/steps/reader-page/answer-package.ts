import { randomUUID } from 'node:crypto';
import type { ActionInput, ActionName } from '#libs/contracts/actions/all';
import type { ReaderResult } from '#libs/contracts/screens/reader';
import { act } from '../act.js';
import type { StepDeps } from '../record/step-deps.js';
import { protocolOf } from '../result/check-joints.js';
import type { Work } from '../record/work.js';
import { noteAtReader } from './note-at-reader.js';
import { readPackage, type ReaderPackage } from './packages.js';
import type { Reader } from './reader.js';

/**
 * The reader's one way into an order: only for a package that was sent to this centre, and only these three answers.
 * It acts with the eyes of the order's practice and hands nothing of the order back.
 */
async function answer<A extends ActionName, T>(deps: StepDeps, reader: Reader, id: string, action: A, input: ActionInput<A>, name: string, then: (work: Work, p: ReaderPackage) => Promise<T>): Promise<T> {
  const p = await readPackage(deps, reader, id);
  const actor = { id: reader.id, name, roles: ['reader' as const], practice: p.practiceId };
  return act(deps, actor, p.orderId, action, { key: randomUUID(), on: p.studyId, input: input as Record<string, unknown> }, (work) => then(work, p));
}

export async function acknowledgePackage(deps: StepDeps, reader: Reader, id: string): Promise<void> {
  const p = await readPackage(deps, reader, id);
  if (p.state === 'new') await answer(deps, reader, id, 'acknowledge', {}, reader.name, () => Promise.resolve());
}

export async function rejectPackage(deps: StepDeps, reader: Reader, id: string, input: ActionInput<'rejectFilms'>): Promise<void> {
  await answer(deps, reader, id, 'rejectFilms', input, reader.name, () => Promise.resolve());
}

export async function resultOfPackage(deps: StepDeps, reader: Reader, id: string, input: ReaderResult): Promise<void> {
  const number = (await readPackage(deps, reader, id)).summary.number;
  const ref = input.ref ?? number;
  await answer(deps, reader, id, 'enterResult', { ref, channel: 'page', joints: input.joints, ...(input.comment ? { comment: input.comment } : {}) }, input.signedBy, (work, p) =>
    noteAtReader(work, { package: p.id, centre: reader.centre }, protocolOf(work, p.studyId), { ref, joints: input.joints, comment: input.comment, signedBy: input.signedBy }));
}
