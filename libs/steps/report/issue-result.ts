import { randomBytes, randomUUID } from 'node:crypto';
import { shortDay } from '#libs/words/days';
import type { AmendedLetter, ResultLetter } from '#libs/documents/snapshots';
import { certificateSerial, SERIAL_BYTES } from '#libs/science/identifiers/certificate-serial';
import { said } from '#libs/words/said';
import { wordsOnPaper, type Words } from '#libs/words/words';
import { sayToOwners } from '../messages/say-to-owner.js';
import type { Stated, Work } from '../record/work.js';
import { standingOf } from '../standing/standing-of.js';
import { inCommon } from '../record/owners-language.js';
import { protocolOf } from '../result/check-joints.js';
import { acceptedReferral } from '../referral/open-referral.js';
import { tellPractice } from '../referral/tell-practice.js';
import { acceptedResult } from './accepted-result.js';
import { addressees } from './addressees.js';
import { certificateSnapshot, type Certified } from './certificate-snapshot.js';
import { earlierOnPaper } from './earlier-on-paper.js';
import { disagree, letterBase, stillOut, type Addressee } from './letter-base.js';
import { checkAddress } from './on-paper.js';
import { storeDocument } from './store-document.js';
import { studyOnPaper } from './study-on-paper.js';

/**
 * Letter and certificate of one accepted result, frozen now and mailed after the commit. An earlier certificate
 * of the study no longer stands and says so on its page; nothing of it is deleted.
 */
export async function issueResult(work: Work, study: string, result: string, only?: string[]): Promise<Stated> {
  const letter = randomUUID();
  const to = await addressees(work, only);
  const standing = await standingOf(work, study, result);
  const { certificate, serial, earlier } = (await issuedCertificate(work, study, result)) ?? (await newCertificate(work, { study, result, language: inCommon(to.map((p) => p.language)) }));
  const dog = await work.tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
  for (const person of to) {
    const t = wordsOnPaper(person.language);
    const paper = { ...studyOnPaper(work, study, result, t), ...(await earlierOnPaper(work, study, to.map((p) => p.id), t)), standing };
    const snapshot = await resultLetter(work, study, person, serial, paper, earlier);
    const document = await storeDocument(work, { kind: 'letter', named: said('{study}, letter to {name}', { study: said(protocolOf(work, study).deskName), name: person.name }), snapshot, subject: letter, forOwner: true });
    if (person.channel === 'mail') await sayToOwners(work, { once: `letter:${letter}`, people: [person.id], kind: 'result', template: 'result', data: { dog: dog.callName, study }, documents: [document, certificate], subject: letter });
  }
  await tellOtherPractice(work, letter);
  return { type: 'letterReleased', study, letter, kind: 'result', result, to: to.map((p) => p.id), detail: { serial, standing, names: to.map((p) => p.name), channels: to.map((p) => p.channel) } };
}

/** After a referral the result is both practices’: the one that did not release it is told. */
async function tellOtherPractice(work: Work, letter: string): Promise<void> {
  const referral = acceptedReferral(work);
  const other = referral && [referral.to, work.order.practice].find((practice) => practice !== work.actor.practice);
  if (other) await tellPractice(work, other, { once: `referral-result:${letter}`, template: 'referralResult', data: {} });
}

interface Certificate { certificate: string; serial: string; earlier: Earlier | null }

/** A letter that goes again, because the first did not arrive, brings the same certificate: nothing was amended. */
async function issuedCertificate({ tx, facts }: Work, study: string, result: string): Promise<Certificate | null> {
  const serial = facts('letterReleased').findLast((f) => f.study === study && f.result === result)?.detail?.serial;
  if (typeof serial !== 'string') return null;
  const { id } = await tx.document.findUniqueOrThrow({ where: { serial }, select: { id: true } });
  const earlier = await tx.document.findFirst({ where: { replacedBy: id }, orderBy: { at: 'desc' }, select: { id: true, serial: true, at: true, state: true } });
  return { certificate: id, serial, earlier };
}

async function newCertificate(work: Work, certified: Omit<Certified, 'serial'>): Promise<Certificate> {
  const { study } = certified;
  const serial = certificateSerial(randomBytes(SERIAL_BYTES));
  const earlier = await earlierCertificate(work, study);
  const certificate = await storeDocument(work, { kind: 'certificate', named: said('{study}, result sheet', { study: said(protocolOf(work, study).deskName) }), snapshot: await certificateSnapshot(work, { ...certified, serial }), serial, subject: study, forOwner: true });
  // A withdrawn paper stays withdrawn, whatever follows it.
  if (earlier) await work.tx.document.update({ where: { id: earlier.id }, data: { ...(earlier.state === 'valid' ? { state: 'amended' } : {}), replacedBy: certificate } });
  return { certificate, serial, earlier };
}

interface Earlier { id: string; serial: string | null; at: Date; state: string }

async function earlierCertificate({ tx, order }: Work, study: string): Promise<Earlier | null> {
  return tx.document.findFirst({ where: { orderId: order.id, kind: 'certificate', subject: study, state: { in: ['valid', 'withdrawn'] }, replacedBy: null }, orderBy: { at: 'desc' }, select: { id: true, serial: true, at: true, state: true } });
}

async function resultLetter(work: Work, study: string, to: Addressee, serial: string, paper: ResultLetter['studies'][number], earlier: Earlier | null): Promise<ResultLetter | AmendedLetter> {
  const t = wordsOnPaper(to.language);
  const letter = { ...(await letterBase(work, study, to)), studies: [paper], stillOut: stillOut(work, study, t), disagree: disagree(work, study, t), check: { serial, address: checkAddress(work) } };
  if (!earlier) return { ...letter, kind: 'result' };
  const letterOf = earlier.at.toISOString().slice(0, 10);
  return { ...letter, kind: 'amended', replaces: { letterOf, why: `${newReading(work, study, earlier, t)} ${t('It replaces the one in our letter of {day}.', { day: shortDay(to.language, letterOf) })}`, serial: earlier.serial } };
}

function newReading(work: Work, study: string, earlier: Earlier, t: Words): string {
  if (earlier.state === 'withdrawn') return t('The result in our earlier letter was taken back, as we wrote to you. Here is the result of these pictures.');
  const result = acceptedResult(work, study);
  const second = work.facts('resultArrived').find((f) => f.result === result)?.reading === 'second';
  return second ? t('Another reader has read the same pictures, without the first reading. As was said beforehand, this second reading stands, whichever way it went.') : t('The centre has sent a new reading of the same pictures.');
}
