import { randomUUID } from 'node:crypto';
import type { ActionName } from '#libs/contracts/actions/all';
import type { OwnerConsents, OwnerPage } from '#libs/contracts/screens/owner';
import type { Answer, Question } from '#libs/contracts/common';
import { decide } from '#libs/pathway/decide';
import { isOpenStudy } from '#libs/pathway/steps';
import { act } from '../act.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { workOn } from '../record/work.js';
import { ownerActor, type Owner } from './owner.js';
import { readOwnerPage } from './read-owner-page.js';
import { refuseOutsider } from './sides-of-a-sale.js';

/** The owner's words go the same way as everybody's; each consent is a fact of its own, at the version it was read at. */
async function say(deps: StepDeps, owner: Owner, action: ActionName, on: string, input: Record<string, unknown>): Promise<void> {
  const page = await readOwnerPage(deps, owner);
  refuseOutsider(page, action);
  await act(deps, ownerActor(owner), owner.order, action, { key: randomUUID(), version: page.version, on, input }, () => Promise.resolve());
}

export async function ownerGivesAnswers(deps: StepDeps, owner: Owner, input: { visit: string; answers: Partial<Record<Question, Answer>>; notes: Partial<Record<Question, string>> }): Promise<OwnerPage> {
  await say(deps, owner, 'giveAnswers', input.visit, { stage: 'reminder', answers: input.answers, notes: input.notes });
  return readOwnerPage(deps, owner);
}

export async function ownerAcceptsEstimate(deps: StepDeps, owner: Owner, input: { visit: string; totalMinor: number }): Promise<OwnerPage> {
  await say(deps, owner, 'acceptEstimate', input.visit, { payer: owner.person, how: 'link', totalMinor: input.totalMinor });
  return readOwnerPage(deps, owner);
}

export async function ownerConsents(deps: StepDeps, owner: Owner, input: OwnerConsents): Promise<OwnerPage> {
  const signed = { signer: owner.person, signerRole: 'owner', typedName: input.typedName, ...(input.signatureSvg ? { signatureSvg: input.signatureSvg } : {}) };
  const { sendAll } = (await readOwnerPage(deps, owner)).consents;
  if (input.sedation && input.visit) await say(deps, owner, 'consentSedation', input.visit, { ...signed, ...input.sedation });
  for (const { study, answer } of input.studies) await say(deps, owner, 'consentStudy', study, { ...signed, answer });
  // A yes that is given again does not concern films that are with the reader already.
  if (input.sendAll) for (const study of await openStudies(deps, owner, sendAll.answered !== input.sendAll)) await say(deps, owner, 'consentSendAll', study, { ...signed, answer: input.sendAll });
  if (input.statistics) await say(deps, owner, 'answerStatistics', owner.order, { answer: input.statistics, signer: owner.person });
  return readOwnerPage(deps, owner);
}

/** All open studies, or those of which it can still be said whether every film is sent. */
async function openStudies(deps: StepDeps, owner: Owner, all: boolean): Promise<string[]> {
  return deps.db.practice(owner.practice, async (tx) => {
    const order = await readOrder(tx, owner.order);
    if (!order) throw notFound();
    const { evaluation } = workOn(tx, deps.clock.now(), ownerActor(owner), order, deps.publicUrl);
    const open = Object.values(evaluation.studies).filter((s) => isOpenStudy(s.step)).map((s) => s.id);
    return open.filter((id) => all || decide(evaluation, 'consentSendAll', { scope: 'study', id }, 'owner').allowed);
  });
}

export async function ownerWithdraws(deps: StepDeps, owner: Owner, input: { purpose: 'sedation' | 'study' | 'sendAll' | 'statistics'; subject?: string | undefined; why?: string | undefined }): Promise<OwnerPage> {
  const page = await readOwnerPage(deps, owner);
  const why = input.why ? { why: input.why } : {};
  if (input.purpose === 'sedation') await say(deps, owner, 'withdrawSedation', input.subject ?? page.visit?.id ?? owner.order, why);
  else if (input.purpose === 'statistics') await say(deps, owner, 'answerStatistics', owner.order, { answer: 'no', signer: owner.person });
  else for (const study of input.subject ? [input.subject] : page.consents.studies.map((s) => s.study)) await say(deps, owner, 'withdrawStudy', study, { purpose: input.purpose, ...why });
  return readOwnerPage(deps, owner);
}

export async function ownerAppeals(deps: StepDeps, owner: Owner, { study, result }: { study: string; result: string }): Promise<OwnerPage> {
  await say(deps, owner, 'askAppeal', study, { result, asker: owner.person });
  return readOwnerPage(deps, owner);
}

/** The yes to sharing what comes of the pictures, after the dog was sold. */
export async function ownerAgreesTransfer(deps: StepDeps, owner: Owner): Promise<OwnerPage> {
  const { transfer } = await readOwnerPage(deps, owner);
  if (!transfer || transfer.said) throw new StepError('NOT_AT_THIS_STEP', transfer ? 'You have said yes already.' : 'Nothing waits for your yes: no sale of this dog is written down.');
  await say(deps, owner, 'agreeTransfer', owner.order, { party: transfer.party });
  return readOwnerPage(deps, owner);
}

export async function ownerChoosesLetterTime(deps: StepDeps, owner: Owner, { anyTime }: { anyTime: boolean }): Promise<OwnerPage> {
  await say(deps, owner, 'chooseLetterTime', owner.order, { person: owner.person, anyTime });
  return readOwnerPage(deps, owner);
}
